"""Feet that are left out of a group, "all but the left hind", and what is denied of all but one.

That is there on the one: "no thrush anywhere bar the left hind".
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from pipeline.reading.copying import AFFIRMED
from pipeline.reading.exchanges import sentence_end
from pipeline.reading.foot_groups import Groups
from pipeline.reading.foot_names import EXCEPT, resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.not_every import ASKED, NOT_EVERY
from pipeline.reading.opening import sentence_start
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import MatchKind, Status

_ONE_OF = "foot: one of several"
_OPENING = frozenset({"bar", "barring", "except", "save", "apart", "excepting"})
_NEAR = 6  # tokens of "only a wee bit in the"
_BUT_FOR = frozenset({"bar", "only", "just", "apart"})
_OF_A_BAR = frozenset({"the", "a", "his", "her", "inside", "outside"})
_EXCEPT_ENDS = frozenset({*(cue[-1] for cue in EXCEPT), "only"})
_TAKES = frozenset({"would", "could", "only", "took", "takes", "got", "gets", "has", "had", "'s", "is", "was", "held"})
_CLAUSE_ENDS = frozenset({",", *SENTENCE_ENDS})
_WAS = frozenset({"'s", "is", "was", "were", "are", "got", "gets", "a"})
_LEADING_IN = frozenset({"the", "for", "on", "in", "his", "her"})
_HAVING = frozenset({"have", "had", "got", "has"})
_WHOLE = frozenset({"all", "everything", "them", "three", "shoe", "foot"})
_WHOLE_FEET = frozenset({"all", "any", "hinds", "fronts"})
_ONE, _THAT_IS = frozenset({"one"}), frozenset({",", "that", "it", "'s", "is", "was"})
_PAIRS = frozenset({"fronts", "hinds"})
_PAIR = 2


def mark_exceptions(talk: Talk) -> None:
    """ "All but the left hind", "every foot bar the off fore": one group, the whole without the foot named."""
    moved = False
    _leave_out(talk)
    for out in talk.having("feet"):
        start = out.start
        while start and talk.words[start - 1] in _LEADING_IN:
            start -= 1
        start = _the_one(talk, start)
        cue = _cue_before(talk, start)
        if cue is None:
            continue
        at = start - len(cue)
        if talk.words[at - 1] == "," and cue != ["but"]:
            at -= 1
        whole = talk.mention_ending(at)
        if (cue != ["but"] and _said_apart(talk, whole, at, out)) or _worked_but(talk, whole, out):
            continue
        if whole is not None and not _within(whole, out):
            continue  # "thrush in both fronts but the hinds are clear"
        found = _the_whole(talk, whole, out, at, cue)
        if found is None:
            continue
        begin, name = found
        for mention in talk.mentions:
            if begin <= mention.start < out.start and mention is not out:
                mention.dropped = True
        _without_its_place(talk, out)
        out.readings = {"feet": f"{name}-{out.readings['feet']}"}
        out.start, out.literal, moved = begin, tuple(range(begin, out.end)), True
        talk.changed()
    _ask_which(talk)
    talk.in_order(moved=moved)


def _the_one(talk: Talk, start: int) -> int:
    """ "Bar one, the near hind", "but one foot, that's the near fore": where the one begins."""
    at = start
    while at and talk.words[at - 1] in _THAT_IS:
        at -= 1
    at -= talk.words[at - 1] == "foot"
    return at - 1 if at < start and talk.words[at - 1] == "one" else start


def _ask_which(talk: Talk) -> None:
    """ "No thrush in any foot bar one.": which is asked."""
    for at in talk.where(_ONE):
        cue = _cue_before(talk, at)
        whole = talk.mention_ending(at - len(cue)) if cue else None
        if whole is not None and whole.get("feet") in _WHOLE_FEET and talk.mention_starting(at + 1) is None:
            whole.readings = {NOT_EVERY: ASKED}
            talk.changed()


def _the_whole(talk: Talk, whole: Mention | None, out: Mention, at: int, cue: list[str]) -> tuple[int, str] | None:
    """Where the feet begin of which one is left out, and their name; none where nothing is left out of anything."""
    if whole is not None and whole.get("feet") in _WHOLE_FEET:
        return whole.start, whole.readings["feet"]
    if whole is not None and whole.get("totals") == "each":
        return None if _counts_anew(talk, out) else (at, _shared_out(talk, out))
    if whole is not None and cue != ["but"] and _found_nowhere_else(talk, whole):
        return at, "all"
    if whole is not None and cue != ["but"] and _worked_all_but(talk, whole):
        return at, _shared_out(talk, out)
    numbered = whole is not None and whole.is_any(("number",)) and whole.number is None
    if talk.words[at - 1] not in _WHOLE or numbered:
        return None
    ahead = talk.mention_ending(at - 1)  # "on any foot but the near hind": "on any" is a form too
    return (ahead.start if ahead is not None and ahead.get("feet") == "all" else at - 1), "all"


def _leave_out(talk: Talk) -> None:
    """ "No thrush bar a bit in the near hind", "… only a touch": "except" for it, and no bar of the foot."""
    for at in talk.where(_BUT_FOR):
        place, start = talk.mention_starting(at), sentence_start(talk, at)
        behind = talk.words[at + 1 : at + 2]
        if behind == ["from"]:
            at, behind = at + 1, talk.words[at + 2 : at + 3]
        bar = talk.words[at] == "bar" and (place and place.end) == at + 1 and talk.words[at - 1] not in _OF_A_BAR
        denied = any(start <= m.start < at for m in talk.having("denials"))
        worked = any(at < m.start < at + 4 for m in talk.having("work"))  # "nothing done bar a trim"
        told = talk.mention_starting(at + 2)
        if told is not None and told.is_any(("shoe_types", "pads", "clips", "traction")):
            continue  # "no bar shoe, only a plain one"
        if worked or behind not in (["a"], ["some"], ["one"]) or not (bar or denied):
            continue
        if (talk.words[at] == "just" or talk.words[at - 1] == ",") and _of_its_own(talk, at):
            continue  # "no corn, only a bruise in the near fore"
        talk.words[at] = "except"
        if talk.words[at - 1] == "apart":
            talk.words[at - 1] = ","
        if place is not None:
            place.dropped = True
    for at in [m.start for m in talk.having("severities") if talk.words[m.start - 1 : m.start + 1] == [",", "a"]]:
        denied = any(sentence_start(talk, at) <= m.start < at for m in talk.having("denials"))
        if denied and not _of_its_own(talk, at) and any(at < m.start < at + _NEAR for m in talk.having("feet")):
            talk.words[at - 1] = "except"  # "no heat anywhere, a touch in the near fore"


def _of_its_own(talk: Talk, at: int) -> bool:
    return any(at < m.start < at + _NEAR for m in talk.mentions if m.is_any(("findings", "gaits")))


def _without_its_place(talk: Talk, out: Mention) -> None:
    """ "No reaction anywhere but the near fore heel": the heel is of the foot that is left out."""
    for place in talk.having("zones"):
        place.dropped = place.dropped or place.start == out.end


def _found_nowhere_else(talk: Talk, told: Mention) -> bool:
    """ "No thrush except in the off fore": a denied finding, and no foot before it in the sentence."""
    start = sentence_start(talk, told.start)
    near = [m for m in talk.mentions if start <= m.start < told.start and not m.dropped]
    denied = any(m.get("denials") == "before" and told.start - m.end <= 1 for m in near)
    return denied and "findings" in told.readings and not any(m.get("feet") for m in near)


def _worked_all_but(talk: Talk, work: Mention) -> bool:
    """ "Same shoes back on, bar the left hind": work with no foot before it in the sentence."""
    start = sentence_start(talk, work.start)
    return "work" in work.readings and not any(start <= m.start < work.start for m in talk.having("feet"))


def _cue_before(talk: Talk, start: int) -> list[str] | None:
    """The words that leave out what stands at the token: "except", "apart from"; "only" before "for"."""
    if not start or talk.words[start - 1] not in _EXCEPT_ENDS:
        return None
    forms = [*EXCEPT, ["only"]] if talk.words[start] == "for" else EXCEPT  # "they all have it only for the near fore"
    return next((c for c in forms if talk.words[start - len(c) : start] == c and start > len(c)), None)


def _said_apart(talk: Talk, ahead: Mention | None, at: int, out: Mention) -> bool:
    """ "Except for the off fore there's thrush in all of them", "they've all got it only for the off fore".

    The whole stands elsewhere in the sentence, with no other foot; "they all" is all four there.
    """
    if ahead is not None and ahead.is_any(("feet", "totals", "number")):
        return False
    start, stop = sentence_start(talk, at), sentence_end(talk, out.end)
    near = [m for m in talk.having("feet") if start <= m.start < stop and m is not out]
    if not near:
        every = next((i for i in range(start, stop - 1) if _they_all(talk, i)), None)
        if every is None:
            return False
        whole = Mention(every, every + 1, (every,), {"feet": "all"}, MatchKind.VARIANT)
        talk.mentions.append(whole)
    elif len(near) == 1 and near[0].get("feet") == "all":
        whole = near[0]
    else:
        return False
    whole.readings["feet"] = f"all-{out.readings['feet']}"
    out.dropped = True
    return True


def _they_all(talk: Talk, at: int) -> bool:
    """ "They all have", "they've all got", "all have it"."""
    owned = talk.words[at] == "all" and talk.words[at + 1] in _HAVING
    return owned and all(at not in m.literal for m in talk.mentions if m.get("feet"))


def _worked_but(talk: Talk, work: Mention | None, out: Mention) -> bool:
    """ "All reset bar the off fore": the work stands between the whole and the foot that is left out."""
    if work is None or work.get("work") is None:
        return False
    at = work.start
    while at and talk.words[at - 1] in _WAS:
        at -= 1
    whole = talk.mention_ending(at)
    if whole is None or whole.get("feet") not in ("all", "fronts", "hinds") or not _within(whole, out):
        return False
    whole.readings["feet"] = f"{whole.readings['feet']}-{out.readings['feet']}"
    out.dropped = True
    return True


def _within(whole: Mention, out: Mention) -> bool:
    """Whether the feet left out are some of a pair that is named, so that they can be an exception to it."""
    pair, left = resolve(str(whole.get("feet")), None), resolve(str(out.get("feet")), None)
    if pair is not None and out.get("feet") == "pair_in_hand":
        return len(pair) > _PAIR  # "I was going to reset the fronts but both were worn"
    return pair is None or left is None or set(left) < set(pair)


def _shared_out(talk: Talk, out: Mention) -> str:
    """ "Eight nails apiece bar the near hind": of all feet, or of the pair that was named just before.

    "Tips in front. Five in each except the off fore": the pair named alone in the sentence before, whose foot it is.
    """
    before = [m for m in talk.having("feet") if m.end <= out.start]
    pair = before[-1].readings["feet"] if before else "all"
    if pair not in _PAIRS:
        return "all"
    stops = [i for i in range(out.start) if talk.words[i] in SENTENCE_ENDS]
    if not stops or before[-1].start > stops[-1]:
        return pair
    last = stops[-2] if len(stops) > 1 else -1
    named = [m for m in before if m.start > last]
    alone = {m.get("feet") for m in named} == {pair} and not any(
        stops[-1] < h.start < out.start for h in talk.having("horse")
    )
    return pair if alone and _within(named[-1], out) else "all"


def _counts_anew(talk: Talk, out: Mention) -> bool:
    """ "Five nails in each, except the near fore would only take four": the foot has its own number in a clause."""
    stop = next_mark(talk, out.end, _CLAUSE_ENDS)
    led = talk.words[out.end : out.end + 1]
    return (
        bool(led) and led[0] in _TAKES and any(m.number is not None for m in talk.mentions if out.end <= m.start < stop)
    )


def except_feet(sentence: Sentence, groups: Groups) -> None:
    """ "Thrush in all of them except the left front"."""
    for before, segment in pairwise(sentence if "except" in sentence.words else ()):
        if segment.delimiter.endswith("except") and groups[segment.index] and not segment.drafts:
            left_out = groups[segment.index][0].feet
            for draft in before.drafts:
                if draft.feet and set(left_out) < set(draft.feet):
                    draft.feet = tuple(foot for foot in draft.feet if foot not in left_out)


def there_where_excepted(talk: Talk, sentence: Sentence) -> None:
    """Add the finding on the feet that its denial leaves out, unless the sentence tells of them itself."""
    graded = "severities" in sentence.classes
    for segment in sentence:
        if graded and (segment.delimiter.endswith("except") or talk.words[segment.start] in _OPENING):
            _there_after_all(sentence, segment)
        if not segment.drafts or "feet" not in segment.named:
            continue
        denied = [d for d in segment.drafts if d.slot == "finding" and d.status is Status.ABSENT and not d.dropped]
        names = [str(m.get("feet")) for m in segment.having("feet") if "-" in str(m.get("feet"))] if denied else []
        left = resolve(names[0].split("-", 1)[1], None) if names else None
        for draft in denied if left else ():
            if not _told(sentence, draft, left or ()) and not set(left or ()) & set(draft.feet or left or ()):
                rules = [*(r for r in draft.rules if r != "denied"), "there on the foot left out"]
                made = replace(draft, feet=left, status=Status.PRESENT, rules=rules, evidence=set(draft.evidence))
                segment.drafts.append(made)
                draft.severity = None  # "no thrush in any foot except the left hind, which is bad in the frog"
                at = max(m.end for m in segment.having("feet"))
                before = any(m.start < at for s in sentence for m in s.having("zones"))
                draft.zone = draft.zone if before else None


def _there_after_all(sentence: list[Segment], segment: Segment) -> None:
    """ "Wasn't any thrush in the hinds, bar a touch in the left": a degree says that it is there."""
    if not segment.having("severities"):
        return
    narrowed = [d for s in sentence if s.index < segment.index for d in s.drafts if d.severity and _ONE_OF in d.rules]
    for draft in [d for d in [*segment.drafts, *narrowed] if d.slot == "finding"]:
        draft.status = Status.PRESENT
        draft.rules = [rule for rule in draft.rules if rule != "denied"]
        draft.note(AFFIRMED)


def _told(sentence: list[Segment], draft: Draft, feet: tuple[str, ...]) -> bool:
    """Whether the same finding is told of the foot by itself: "… bar the left hind, where it was bad"."""
    same = [d for s in sentence for d in s.drafts if (d.slot, d.value) == (draft.slot, draft.value) and d is not draft]
    return any(set(d.feet or ()) & set(feet) for d in same)
