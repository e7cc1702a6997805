"""What came off for something else: "out of bar shoes and into wide webs", "was three degrees, it's two now".

What stood until today is said of an earlier time; what took its place stands.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.sayings import Sayings
from pipeline.reading.settling_work import LEFT_BARE
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

_COME_OFF = frozenset({"shoe_type", "pad", "wedge", "packing", "traction"})
_OFF_OR_CLIPS = _COME_OFF | {"clips"}
_SET = frozenset({"clips", "shoe_material", "shoe_size"})
_THEN_AND_NOW = (
    _COME_OFF
    | {"pulse", "tester", "shoe_size", "shoe_material", "nails", "nail_size", "clips", *ANGLES, *LENGTHS}
    | {"obel", "lameness", "body_condition", "cresty_neck"}
)
_HAVE_COME = frozenset(
    {"came", "come", "comes", "coming", "went", "gone", "had", "have", "has", "are", "were", "is", "was", "all", "both"}
    | {"got", "left", "staying", "stayed", "taken", "pulled", "whipped", "now", "that", "'re", "'s"}
)
_PLACES = frozenset({"front", "back", "behind", "in", "there", "here"})
_LED = frozenset({"the", "a", "an", "his", "her", "those", "them", "old", "their"})
_EXCHANGED = frozenset({"swapped", "swap", "changed", "change", "exchanged", "traded", "switched", "replaced", "moved"})
_FOR = frozenset({"for", "to", "with", "over", "into"})
_PULL = frozenset({"pull", "pulling", "strip", "whip", "remove"})
_TAKE = frozenset({"take", "taking", "have", "get", "slip", "whip"})
_CAME = frozenset({"in", "on", "off", "here", "down", "over", "up", "wearing", "wore", "to", "with"})
_ARRIVED = frozenset({"came", "shipped", "arrived", "turned", "landed"})
# Without one nothing came off for something else.
_COMING = _EXCHANGED | _PULL | _ARRIVED | {"out", "off", "from", "had", "been", "worn", "since", "pulled", "removed"}
_HAD = frozenset({"had", "'d", "wore", "was", "were"})
_GONE_TO = frozenset({(go, to) for go in ("gone", "went", "go", "over", "back") for to in ("to", "into", "with")})
_LEAVING = frozenset(
    {(go, to) for go in ("home", "left", "gone", "leaves", "leaving", "back", "away") for to in ("in", "with")}
)
_THEN = frozenset({"then"})
_DEGREES = (("wedge", "pad"), ("pad", "wedge"))
_HAD_HAD = frozenset({("'d", "had"), ("had", "had"), ("'d", "been"), ("had", "been"), ("'d", "worn")})
_HAD_HAD |= {("was", "wearing"), ("were", "wearing")}
_THOSE, _IS_OUT = frozenset({"those", "them", "these"}), frozenset({"'s", "is", "came", "come", "'re", "are"})
_NEAR = 5
_CHANGED = "changed for something else"
_WHEN_CAME = Sayings(*(f"when {he} {came}" for he in ("he", "she", "i") for came in ("came", "arrived", "got here")))
_TAKEN_OUT = frozenset({("took", "out"), ("took", "off"), ("pulled", "out"), ("whipped", "out")})


def changed_over(talk: Talk, sentence: Sentence) -> None:
    """Give what came off today, and the value of before, to an earlier time."""
    drafts = [d for s in sentence for d in s.drafts]
    if not drafts:
        return
    coming, past = sentence.says(_COMING), sentence.says(_THEN) or any(s.past for s in sentence)
    for position, segment in enumerate(sentence if coming or past else ()):
        for draft in [d for d in segment.drafts if d.status is Status.PRESENT and not d.dropped]:
            off = (coming or segment.past) and draft.slot in _COME_OFF and _has_come_off(talk, sentence, draft)
            off = off or (coming and draft.slot in _SET and _left(talk, sentence, draft))
            off = off or (past and draft.slot in _OFF_OR_CLIPS and _gone_to(talk, sentence, draft))
            bare = LEFT_BARE in draft.rules and coming and "came" in talk.words[segment.start : draft.start]
            if bare and _sent_home(talk, sentence, draft):
                draft.drop("as it came")
            then = past and draft.slot in _THEN_AND_NOW
            then = then and (_as_it_was(talk, draft) or _then(talk, sentence, position, draft))
            if off or then:
                later = None if draft.feet else _later(_with_next(talk, sentence, draft), draft)
                draft.feet = later.feet if later else draft.feet
                draft.status = Status.HISTORY
                draft.note(_CHANGED)
        for draft in [d for d in segment.drafts if d.status is Status.PLANNED and d.slot in _COME_OFF]:
            if _exchanged(talk, sentence, draft):
                draft.drop("to be changed for something else")  # "I'll change the mesh pads to full pads"
            elif coming and _to_be_taken_off(talk, draft):
                _take_off(talk, sentence, draft)
    for segment in sentence if "shoe_states" in sentence.classes and "shoe_types" in sentence.classes else ():
        _worn_out(talk, segment)
    for first, second in pairwise(drafts):
        degrees = second.start - first.end <= 1 and (first.slot, second.slot) in _DEGREES
        if degrees and Status.HISTORY in (first.status, second.status):
            first.status = second.status = Status.HISTORY


def _has_come_off(talk: Talk, sentence: Sentence, draft: Draft) -> bool:
    ways = (_left, _came_in, _out_of_those, _since_then)
    return _came_off(talk, draft) or any(way(talk, sentence, draft) for way in ways)


def _as_it_was(talk: Talk, draft: Draft) -> bool:
    """ "He came out of egg bars, size two they were": told of what came off."""
    segment = draft.segment
    before = talk.segments[segment.index - 1].drafts if segment.index else []
    was = talk.words[segment.end - 2 : segment.end] in (["they", "were"], ["it", "was"])
    return was and any(_CHANGED in d.rules for d in before)


def _worn_out(talk: Talk, segment: Segment) -> None:
    """ "The egg bars were worn out, so I put new straight bars on": the old ones are of before, on the same feet."""
    found = [d for d in segment.drafts if d.slot == "shoe_state"]
    olds = [d for d in segment.drafts if d.slot == "shoe_type" and d.status is Status.PRESENT]
    near = [s for s in talk.segments[segment.index + 1 :] if s.sentence - segment.sentence <= 1]
    later = [d for s in near if s.horse == segment.horse for d in s.drafts if d.feet and not d.dropped]
    kind = next((d for d in later if d.slot == "shoe_type"), None)
    new = any(d.value == "new_shoe" and kind is not None and d.feet == kind.feet for d in later)
    if len(olds) != 1 or not found or not new or kind is None or kind.value == olds[0].value:
        return
    for draft in [d for d in (*olds, *found) if not d.feet]:
        draft.feet = kind.feet
    if set(olds[0].feet or ()) & set(kind.feet or ()):
        olds[0].status = Status.HISTORY
        olds[0].note(_CHANGED)


def _came_off(talk: Talk, draft: Draft) -> bool:
    """ "Wedge pads out and rim pads in", "full pads came out", "bar shoes coming off the fronts"."""
    segment, at, passed, came = draft.segment, draft.end, 0, False
    while at < segment.end and passed < _NEAR:
        foot = next((m for m in segment.mentions if m.get("feet") and m.start == at), None)
        if foot is None and talk.words[at] in ("out", "off"):
            return came or talk.words[at] == "off" or not _PLACES & set(talk.words[at + 1 : at + 2])
        same = next((d for d in segment.drafts if d.start == at and d.slot in _COME_OFF), None)
        if foot is None and same is None and talk.words[at] not in _HAVE_COME:
            return False
        came = came or (foot is None and same is None)
        at = foot.end if foot is not None else same.end if same is not None else at + 1
        passed += 1
    return False


def _gone_to(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "He had quarter clips and pulled one, so he's gone to toe clips", "she had egg bars and I went to plain"."""
    later = _later(sentence, draft)
    if later is None or _HAD.isdisjoint(talk.words[draft.segment.start : draft.start]):
        return False
    between = talk.words[draft.end : later.start]
    return any(pair in _GONE_TO for pair in pairwise(between[-_NEAR:]))


def _to_be_taken_off(talk: Talk, draft: Draft) -> bool:
    """ "I'll pull those tips", "I'd take the wedges out": what is on today, and is not to be put on."""
    begin = draft.start
    while begin > draft.segment.start and talk.words[begin - 1] in _LED:
        begin -= 1
    verb, led = talk.words[begin - 1], begin < draft.start
    if talk.words[begin - 2 : begin] == ["out", "of"] and begin - 2 > draft.segment.start:
        return True  # "then we'll take him out of the wedges"
    behind = talk.words[draft.end : draft.end + 1]
    off = behind in (["off"], ["out"])
    return led and ((verb in _PULL and behind not in (["on"], ["over"], ["back"])) or (verb in _TAKE and off))


def _take_off(talk: Talk, sentence: list[Segment], draft: Draft) -> None:
    """Plan the shoes that are on to be removed, unless others are to go on; of pads no slot says so."""
    others = [d for s in sentence for d in s.drafts if d.start > draft.start and d.slot in ("work", draft.slot)]
    left = "of" in talk.words[max(0, draft.start - 2) : draft.start]  # "out of the bar shoes": into what, is not said
    if draft.slot != "shoe_type" or left or any(d.value != draft.value and not d.dropped for d in others):
        draft.drop("to be taken off")
        return
    before = [d for s in talk.segments[: draft.segment.index + 1] if s.horse == draft.segment.horse for d in s.drafts]
    worn = [d for d in before if (d.slot, d.value, d.status) == (draft.slot, draft.value, Status.PRESENT) and d.feet]
    draft.feet = worn[-1].feet if worn else draft.feet
    draft.slot, draft.value = "work", "removed"
    draft.note("work: to be taken off")


def _left(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "Out of bar shoes", "off with the wedges", "from egg bars to straight bars", "swapped the wedges for rims"."""
    begin = draft.start
    while begin > draft.segment.start and talk.words[begin - 1] in _LED:
        begin -= 1
    led, before = talk.words[begin - 2 : begin], talk.words[max(sentence[0].start, begin - _NEAR) : begin]
    if led in (["out", "of"], ["off", "with"]) and "made" not in before:
        return True
    end = begin - (talk.words[begin - 1] == "and")  # it stands between two segments, and may stand in one
    joined = [d for s in sentence for d in s.drafts if d.end == end and d.slot in _COME_OFF]
    if joined and talk.words[end] == "and":
        return _left(talk, sentence, joined[0])
    taken = led[-1:] in (["pulled"], ["removed"]) or tuple(led) in _TAKEN_OUT
    if taken and draft.slot != "shoe_type" and "back" not in talk.words[draft.end : sentence[-1].end]:
        return True  # "took out the wedges"
    return _exchanged(talk, sentence, draft)


def _since_then(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "In an egg bar since March, plain today": worn until today."""
    later = _later(sentence, draft) if "since" in talk.words[draft.end : draft.segment.end] else None
    return later is not None and bool(later.segment.having("times", "today"))


def _out_of_those(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "She won in racing plates in front, and she's out of those now": the last thing told before the pronoun."""
    for segment in [s for s in sentence if s.start >= draft.end and not s.drafts]:
        for at in range(segment.start + 2, segment.end - 1):
            pronoun = talk.words[at + 1 : at + 2] == ["of"] and not _THOSE.isdisjoint(talk.words[at + 2 : at + 3])
            if talk.words[at] == "out" and pronoun and talk.words[at - 1] in _IS_OUT:
                told = [d for s in sentence for d in s.drafts if d.slot in _COME_OFF and d.end <= segment.start]
                return bool(told) and told[-1] is draft
    return False


def _exchanged(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "From egg bars to straight bars", "swap the wedges for rims": whether another thing takes its place."""
    later = _later(sentence, draft)
    if later is None:
        return False
    begin = draft.start
    while begin > draft.segment.start and talk.words[begin - 1] in _LED:
        begin -= 1
    before = talk.words[max(sentence[0].start, begin - _NEAR) : begin]
    given_up = before[-1:] == ["from"] or bool(_EXCHANGED & set(before))
    return given_up and bool(_FOR & set(talk.words[draft.end : later.start + 1]))  # "… to leather"


def _came_in(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "She came off the track in racing plates, now it's rolled toes": what it came in, where another was put on.

    So is "he'd had boots in front since the summer. I put tips on the fores".
    """
    pads = [d for s in sentence for d in s.drafts if d.slot == "pad" and d.end == draft.start - 1]
    if draft.slot == "packing" and pads:  # "in full pads and silicone"
        return _came_in(talk, sentence, pads[0])
    before = talk.words[draft.segment.start : draft.start]
    had = any(pair in _HAD_HAD for pair in pairwise(before))
    if not had and not _HAD.isdisjoint(before):  # "he had racing plates on the fores when he came"
        had = next(_WHEN_CAME.within(talk.words, draft.end, draft.segment.end), None) is not None
    came = next((i for i, word in enumerate(before) if word in _ARRIVED), None)
    if came is not None and _sent_home(talk, sentence, draft):
        return True
    if not had and (came is None or not _CAME & set(before[came + 1 : came + 2]) or "out" in before):
        return False
    later = _later(_with_next(talk, sentence, draft), draft)
    return later is not None and not later.segment.having("plans")  # "next time rim pads": these are on today


def _with_next(talk: Talk, sentence: list[Segment], draft: Draft) -> list[Segment]:
    """The sentence and the next one, as far as it is of the same horse."""
    here = draft.segment
    return [*sentence, *(s for s in talk.sentence(here.sentence + 1) if s.horse == here.horse)]


def _sent_home(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "He came in with leather pads, went home in plain shoes", "came barefoot, left in egg bars"."""
    here = draft.segment
    for segment in sentence:
        leaving = any(pair in _LEAVING for pair in pairwise(talk.words[segment.start : segment.end]))
        if segment.start >= draft.end and leaving and any(d.slot in _COME_OFF for d in segment.drafts):
            return segment.horse == here.horse
    return False


def _later(sentence: list[Segment], draft: Draft) -> Draft | None:
    """The next thing of its kind on one of its feet that is another."""
    drafts = [d for s in sentence for d in s.drafts if d.start > draft.start and d.slot == draft.slot and not d.dropped]
    others = [d for d in drafts if d.value != draft.value and d.feet]
    return next((d for d in others if not draft.feet or set(d.feet or ()) & set(draft.feet)), None)


def _then(talk: Talk, sentence: list[Segment], position: int, draft: Draft) -> bool:
    """ "Was three degrees, it's two now", "bounding then, normal now": a value of before beside today's."""
    segment = sentence[position]
    then = talk.words[segment.end - 1] == "then" or segment.past
    if not then or segment.present:
        return False
    following = talk.sentence(segment.sentence + 1) if segment is sentence[-1] else []
    following = [s for s in following if s.horse == segment.horse and s.having("times", "today")]
    for later in [*sentence[position + 1 :], *following]:
        today = later.having("times", "today") or {"now", "today"} & set(talk.words[later.start : later.end])
        other = [d for d in later.drafts if d.slot == draft.slot and d.value != draft.value and not d.dropped]
        same = [d for d in other if d.feet == draft.feet or set(d.feet or ()) & set(draft.feet or ())]
        if same and today and not later.past:
            return True
    return False
