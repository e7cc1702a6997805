"""One shoe of a pair, told by its side behind: "he threw a front shoe, the right one", "a hind was loose, the near".

Where no side is told, "thrush in one of the hinds", it is of neither for certain, and is asked about. Or it is one foot
of the end that is named before it: "two out of five in front on the near fore".
"""

from __future__ import annotations

from pipeline.reading.bare_sides import SIDES
from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind

_ENDS = {
    "front": "F", "fore": "F", "hind": "H", "back": "H", "rear": "H", "fronts": "F", "fores": "F", "hinds": "H",
    "backs": "H",
}  # fmt: skip
_LOST = 4  # tokens from "lost" to the shoe: "lost a front shoe"
_SIDES = frozenset({"left", "right", "near", "off"})
_A_SHOE = frozenset({"shoe", "plate"})
ONE_OF = "one_of"
_OWNED = frozenset({"the", "his", "her", "their", "its", "those", "them", "two", "four", "'s", "horse"})
_NOT_ONE = frozenset({"not", "n't", "no", "never", "even", "each", "every", "any", "either", "which", "than"})
_NOT_A_COUNT = frozenset({"size", "number", "a", "the", "by", "nought", "half", "to", "per", "for"})
_BEING = frozenset(
    {"is", "'s", "was", "has", "had", "came", "needed", "needs", "took", "takes", "got", "gets", "wanted", "only"}
)
_WHOLE = ("fronts", "hinds", "all")
_SAID_OF_ALL = "foot: one of several, but not which"
_NEIGHBOUR = Sayings(  # across, or at the other end
    "its neighbour", "its neighbor", "the neighbouring foot", "the neighboring foot", "the one beside it",
    "the one next to it", "the foot beside it", "the foot next to it",
)  # fmt: skip
_NOT_WHICH = "that one of several is meant, but not which"
_ONE, _BARE_ONE = frozenset({"a", "one", "another"}), frozenset({"one"})
_GRADING = frozenset({"is", "was", "'s", "of", "them", "only", "just", "a", "bit", "quite", "looks", "fairly"})
_BEGUN = frozenset({",", "and", "but", "while", "'s", *SENTENCE_ENDS})
_UPON, _FAR = frozenset({"in", "on", "under", "for", "to"}), 14  # tokens from "one" to the end of what is on the other
_GRADED = frozenset({",", ".", "and", "but", ";", "of", "foot", "only"})
_SHOES = frozenset({"shoe", "one", "plate", "foot"})
_LEADING = frozenset({"the", "his", "her", "it", "was", "'s", "that", "is", "being"})
_BEFALLING = frozenset({",", "he", "she", "'s", "'d", "has", "had", "is", "just", "again", "also"})
_CLAUSE_ENDS = frozenset({",", *SENTENCE_ENDS})
_CLOSING = _CLAUSE_ENDS | {"and", "but"}
_BEFELL = frozenset({"findings", "shoe_states", "gaits"})
_AT_THE_END = frozenset({"front", "behind", "back"})  # "in front", "up front", "behind"; not "both fronts"
_PAIRS = {"fronts": "F", "hinds": "H"}


def name_one_of_a_pair(talk: Talk) -> None:
    """Give a bare side the end of the one shoe told of right before it, and take the pair out that was not meant."""
    _sides_alone(talk)
    for side in talk.having("feet"):
        name = side.readings["feet"]
        at = side.start - 1
        while at > 0 and talk.words[at] in _LEADING:
            at -= 1
        if at < 1 or talk.words[at] != "," or not _closes(talk, side):
            continue
        end = _the_one(talk, at)
        if end is None:
            continue
        if name in ("bare_L", "bare_R"):
            side.readings["feet"] = name[-1] + _ENDS[talk.words[end]]
        elif name not in FEET or name[1] != _ENDS[talk.words[end]]:
            continue
        for pair in talk.having("feet"):
            if pair.start <= end < pair.end and pair is not side:
                _name(talk, pair, side, end)


def _sides_alone(talk: Talk) -> None:
    """ "One of the fronts, left": behind that a side alone needs no article."""
    for at in talk.where(_SIDES) if talk.says(_ONE) else ():
        alone = at > 1 and talk.words[at - 1] == "," and talk.words[at + 1 : at + 2] in ([], [","], ["."])
        if alone and talk.mention_starting(at) is None and _the_one(talk, at - 1) is not None:
            side = "bare_L" if talk.words[at] in ("left", "near") else "bare_R"
            talk.mentions.append(Mention(at, at + 1, (at,), {"feet": side}, MatchKind.VARIANT))
    talk.in_order()


def _name(talk: Talk, pair: Mention, side: Mention, end: int) -> None:
    """Of "one of the fronts too, the left" the pair becomes the left front, where it stands; else the side is it."""
    if not _one_of(talk, end):
        pair.dropped = True
        return
    start = max(i for i in range(end) if talk.words[i] == "one")
    for one in [m for m in talk.mentions if start <= m.start < end and m is not pair]:
        one.dropped = True
    pair.readings, pair.start, pair.literal = {"feet": side.readings["feet"]}, start, tuple(range(start, pair.end))
    side.dropped = True
    talk.changed()


def _one_of(talk: Talk, at: int) -> bool:
    """Whether "one of the" leads to the token, and nothing makes it each or none of them."""
    while talk.words[at - 1] in _OWNED:
        at -= 1
    return at > 1 and talk.words[at - 2 : at] == ["one", "of"] and (at == 2 or talk.words[at - 3] not in _NOT_ONE)


def _a_single(talk: Talk, at: int) -> bool:
    """ "One hind shoe", "thrush in one front": a single one, and no size one."""
    if at < 1 or talk.words[at - 1] not in _ONE or talk.words[at - 2] in _NOT_A_COUNT | _NOT_ONE:
        return False
    behind = talk.words[at + 1] if at + 1 < len(talk.words) else "."
    done, state = talk.mention_ending(at - 1), talk.mention_starting(at + 1)
    if done is not None and done.get("work") and behind in _CLOSING and talk.words[at - 1] == "one":
        return True
    if state is not None and state.get("shoe_states"):
        return True
    led = at > 1 and talk.words[at - 2] in ("in", "on") and talk.words[at - 1] != "a"
    return behind in _SHOES or behind in _BEING or (led and behind in _CLAUSE_ENDS)


def mark_one_of_several(talk: Talk) -> None:
    """Note on every "one of the fronts" whose side is not told that it is not both of them."""
    if talk.says(_ONE) and talk.having("shoe_states"):
        _a_shoe(talk)
    for at, form in talk.turns(_NEIGHBOUR):
        for foot in [m for m in talk.having("feet") if at <= m.start < at + len(form)]:
            foot.dropped = True  # "beside it"
        either = {"feet": "all", ONE_OF: "all"}
        talk.mentions.append(Mention(at, at + len(form), tuple(range(at, at + len(form))), either, MatchKind.VARIANT))
    talk.in_order()
    for whole in talk.having("feet") if talk.says(_ONE) else ():
        if whole.readings["feet"] not in _WHOLE:
            continue
        first = next((i for i in range(whole.start, whole.end) if talk.words[i] in _ENDS), whole.start)
        single = first < whole.end and talk.words[first] in _ENDS and _a_single(talk, first)
        if single and _headed(talk, first):
            whole.dropped = True
            continue
        if single:
            _no_size(talk, first)
        if single or (first >= 2 and talk.words[first - 1] in _OWNED | {"of"} and _one_of(talk, first)):
            whole.readings[ONE_OF] = whole.readings["feet"]
            talk.changed()


def _no_size(talk: Talk, end: int) -> None:
    """ "Trimmed one hind": no shoe of size one."""
    for one in [m for m in talk.mentions if m.end == end and m.number is not None]:
        one.dropped = True


def _a_shoe(talk: Talk) -> None:
    """ "Lost a front shoe": one of the fronts, and not the foot in hand, unless that heads it."""
    for at in [i for i in talk.where(_A_SHOE) if i > 1 and talk.words[i - 1] in _ENDS and talk.words[i - 2] in _ONE]:
        lost = any(at - _LOST <= m.start < at for m in talk.having("shoe_states"))
        if lost and not any(m.start < at <= m.end for m in talk.having("feet")) and not _headed(talk, at - 1):
            feet = {"feet": "fronts" if _ENDS[talk.words[at - 1]] == "F" else "hinds"}
            talk.mentions.append(Mention(at - 1, at, (at - 1,), feet, MatchKind.VARIANT))
    talk.in_order()


def _headed(talk: Talk, end: int) -> bool:
    """ "Near fore, he's lost a front shoe": a foot of that end, and nothing more, leads to what befell the shoe."""
    lost = max((m.start for m in talk.having("shoe_states") if m.start < end <= m.end + 1), default=0)
    while lost and talk.words[lost - 1] in _BEFALLING:
        lost -= 1
    foot = talk.mention_ending(lost)
    name = str(foot.get("feet")) if foot is not None else ""
    return name in FEET and name[1] == _ENDS[talk.words[end]]


def take_foot_of_one(talk: Talk) -> None:
    """Keep what is said of one of several without a foot, and ask which it is; work and denials are not kept at all."""
    for mention in talk.having(ONE_OF):
        segment = talk.segment_at(mention.start)
        feet = resolve(mention.readings[ONE_OF], None)
        told = [d for d in segment.drafts if d.feet == feet and not d.dropped] if segment is not None else []
        for draft in told:
            _of_neither(draft)
            if segment is not None and (draft.slot == "work" or segment.having("denials")):
                draft.drop(_SAID_OF_ALL)
        if told:
            talk.unread.append((mention.start, mention.end, _NOT_WHICH))
    for at in talk.where(_BARE_ONE):
        _one_and_the_other(talk, at)
        segment = talk.segment_at(at)
        if segment is not None:
            _graded_alone(talk, segment, at)
            _lost_alone(talk, segment, at)
            _one_alone(talk, segment, at)


def _of_neither(draft: Draft) -> None:
    draft.feet = None
    draft.note(_SAID_OF_ALL)


def _one_alone(talk: Talk, segment: Segment, at: int) -> None:
    """ "The hinds were, one was loose and one was fine", "of the fronts one was sprung": of neither for certain."""
    pair = talk.mention_ending(at)
    if segment.start != at and (pair is None or pair.get("feet") not in _PAIRS):
        return
    told = [d for d in segment.kept if d.slot in ("shoe_state", "finding") and len(d.feet or ()) > 1]
    for draft in [d for d in told if 0 < d.start - at <= _LOST]:
        _of_neither(draft)
        talk.unread.append((at, draft.end, _NOT_WHICH))


def _one_and_the_other(talk: Talk, at: int) -> None:
    """ "Eight nails in one and six in the other", "a wedge on one, leather on the other": on neither for certain."""
    ends = next((i for i in range(at, min(at + _FAR, len(talk.words))) if talk.words[i] in SENTENCE_ENDS), at + _FAR)
    other = next((i for i in range(at + 1, ends - 1) if talk.words[i : i + 2] == ["the", "other"]), None)
    if other is None:
        return
    led = {talk.words[at - 1], talk.words[other - 1]}
    if not led <= _UPON and not led <= _BEGUN:
        return
    last = other if led <= _UPON else ends
    begins = next(i for i in range(at, -1, -1) if i == 0 or talk.words[i - 1] in (",", *SENTENCE_ENDS))
    if any(m.get("feet") in FEET for m in talk.having("feet") if begins <= m.start < ends):
        return
    told = [d for s in talk.segments for d in s.kept if begins <= d.start < last and len(d.feet or ()) > 1]
    for draft in told:
        _of_neither(draft)
        if draft.start == at:  # no size, and no inch
            draft.drop(_SAID_OF_ALL)
    if told:
        talk.unread.append((begins, other + 2, _NOT_WHICH))


def _lost_alone(talk: Talk, segment: Segment, at: int) -> None:
    """ "Both fronts loose, lost one.": of a pair one shoe is lost."""
    if talk.words[at + 1 : at + 2] not in ([","], ["."], []):
        return
    for draft in [d for d in segment.kept if d.slot == "shoe_state" and d.end == at and len(d.feet or ()) > 1]:
        _of_neither(draft)
        talk.unread.append((draft.start, at + 1, _NOT_WHICH))


def _graded_alone(talk: Talk, segment: Segment, at: int) -> None:
    """ "Thrush in both hinds, one severe", "severe in one": the degree is of one of them."""
    near = [m for m in talk.having("severities") if at - 1 <= m.end and m.start <= at + _LOST]
    degree = next((m for m in near if m.start > at or m.end == at - 1), None)
    if degree is None or not _GRADING.issuperset(talk.words[at + 1 : degree.start]):
        return
    if degree.end < at and (talk.words[at - 1] not in ("in", "on") or not _GRADED.issuperset(talk.words[at + 1 :][:1])):
        return
    told = [d for s in talk.sentence(segment.sentence) for d in s.kept if d.slot == "finding" and d.start < at]
    for draft in [d for d in told if d.severity is not None and len(d.feet or ()) > 1]:
        draft.severity = None
        draft.note(_SAID_OF_ALL)
        talk.unread.append((min(at, degree.start), max(at + 1, degree.end), _NOT_WHICH))


def name_the_foot_of_the_end(talk: Talk) -> None:
    """ "One out of five in front on the near fore", "lame behind, on the off hind.": the foot alone is meant.

    So is the one of a side: "a corn in front, on the off side", "lost a shoe behind, left side".
    """
    for at in [i for i in talk.where(_AT_THE_END) if i + 2 < len(talk.words)]:
        comma = talk.words[at + 1] == ","
        on = at + 1 + comma
        led = talk.words[on] in ("on", "in")
        start = on + led
        start += talk.words[start : start + 1] in (["the"], ["his"], ["her"])
        pair, foot = talk.mention_ending(at + 1), talk.mention_starting(start)
        end = _PAIRS.get(str(pair.get("feet"))) if pair is not None else None
        if pair is None or end is None or start >= len(talk.words):
            continue
        name = str(foot.get("feet")) if foot is not None else ""
        if foot is not None and name in FEET:
            if led and name[1] == end and not (comma and not _closes(talk, foot)):
                pair.dropped = True
        elif comma and talk.words[start] in SIDES:
            _on_one_side(talk, pair, SIDES[talk.words[start]] + end, start, led)


def _on_one_side(talk: Talk, pair: Mention, foot: str, at: int, led: bool) -> None:
    """Make the pair the foot of the side behind it, where it tells of what was found and nothing is said of the side.

    Not of "thrush in front, off side mild", nor where the other side follows, "off side, mild, near side, severe".
    """
    words = [*talk.words, "."]
    stop = at + 1 + (words[at + 1] in ("side", "foot", "one"))
    ends = next(i for i in range(at, len(words)) if words[i] in SENTENCE_ENDS)
    sure = words[stop] in _CLOSING if led or words[at + 1] == "side" else words[stop] in SENTENCE_ENDS
    start = next((i for i in range(pair.start, 0, -1) if words[i - 1] in _CLAUSE_ENDS), 0)
    other = next((i for i in range(stop, ends) if SIDES.get(words[i], foot[0]) != foot[0]), None)
    told = {name for m in talk.mentions if start <= m.start < pair.start and not m.dropped for name in m.readings}
    between = any(stop <= m.start < other for m in talk.having("findings")) if other is not None else True
    if sure and between and not told.isdisjoint(_BEFELL) and words[pair.start] not in ("both", "either"):
        for side in talk.having("feet"):
            side.dropped = side.dropped or side.start == at
        pair.readings = {"feet": foot}
        talk.changed()


def _closes(talk: Talk, side: Mention) -> bool:
    """Whether nothing is said of the side itself: "a front shoe, the right one is loose" tells of another."""
    behind = talk.words[side.end] if side.end < len(talk.words) else "."
    return behind in (",", "and", "so", "but", "again", "that", *SENTENCE_ENDS)


def _the_one(talk: Talk, comma: int) -> int | None:
    """The token of "front" or "hind" in "a front shoe", in the clause that the comma closes."""
    for end in range(comma - 1, 0, -1):
        if talk.words[end] in _CLAUSE_ENDS:
            return None
        if talk.words[end] in _ENDS and _one_of(talk, end):
            return end
        if talk.words[end] in _ENDS and talk.words[end - 1] in _ONE:
            behind = talk.words[end + 1]
            verb = behind in _BEING or behind == ","
            return end if behind in _SHOES or verb else None
    return None
