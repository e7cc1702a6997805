"""One foot of a pair put right: "testers strong at the toe on both fores, no, the off fore was only moderate there"."""

from __future__ import annotations

from pipeline.reading.exchanges import said_again, same_count, sentence_end, window
from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import LITTLE_WORDS, Mention
from pipeline.reading.talk import Talk
from pipeline.vocabulary import CLASS_SLOTS

_ANSWERS = ("pulses", "tester_responses", "severities")
_LEAD = frozenset({",", ".", "the", "his", "her", "on", "in", "actually", "well", "uh", "um", "er"})
_WAS = frozenset({
    "are", "is", "'s", "was", "were", "take", "takes", "took", "get", "have", "has", "had", "gave", "me", "got",
    "measured", "came", "up", "out", "at", "more", "like", "only", "just", "really", "a", "an",
})  # fmt: skip
_CLEAN = frozenset({"clean", "clear", "fine", "grand", "okay", "ok", "good", "free"})


def rest_stands(talk: Talk, run: list[Mention]) -> bool:
    """ "Pulse raised in both fronts, no, the right front was normal": what was said stands on the other foot.

    Not "no, it was the off fore, moderate", nor where the same is said again, "no, the off fore was strong there".
    """
    begin = run[-1].end
    end = sentence_end(talk, begin + 1)
    new = [m for m in talk.mentions if begin <= m.start < end and not m.dropped]
    part = next((m for m in new if m.get("feet")), None)
    if part is None or not _LEAD.issuperset(talk.words[begin : part.start]):
        return False
    if _found_clean(talk, part.end):
        whole = [m for m in talk.having("feet") if window(talk, run[0].start) <= m.start and m.end <= run[0].start]
        return bool(whole) and _leave_to_the_rest(talk, whole, part)
    answer = next((m for m in new if m.start >= part.end and not m.readings.keys() <= LITTLE_WORDS), None)
    if answer is None or not _WAS.issuperset(talk.words[part.end : answer.start]):
        return False
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= run[0].start and not m.dropped]
    old, feet = _other_answer(talk, olds, answer), [m for m in olds if m.get("feet")]
    if old is None or not feet:
        return False
    if _all_anew(feet[-1], [m for m in new if m.get("feet")]):
        old.dropped = True
    elif answer.number is not None and any(m.is_any(CLASS_SLOTS) or m.number not in (None, old.number) for m in olds):
        return set(resolve(part.readings["feet"], None) or ()) < set(resolve(feet[-1].readings["feet"], None) or ())
    elif not _leave_to_the_rest(talk, feet, part):
        return False
    if answer.number is None and not any(m.get("zones") for m in new):
        _at_the_same_place(talk, [m for m in olds if m.get("zones")], part, answer)
    if talk.words[run[0].start - 1] == ".":
        talk.words[run[0].start - 1] = ","  # "Testers strong on both. No, sorry, the off fore was moderate."
    return True


def _found_clean(talk: Talk, at: int) -> bool:
    """ "Mild thrush in both hinds, no, the off hind was clean": it stays on the other."""
    while at < len(talk.words) and talk.words[at] in _WAS:
        at += 1
    closed = talk.words[at + 1 : at + 2] in ([","], ["."], ["and"], ["but"], [])
    return closed and not _CLEAN.isdisjoint(talk.words[at : at + 1])


def _at_the_same_place(talk: Talk, places: list[Mention], part: Mention, answer: Mention) -> None:
    """It was only how much that was put right: a word beside the answer stands for the place, as a "there" does."""
    at = answer.end if talk.words[answer.end : answer.end + 1] == ["there"] else answer.start - 1
    if len(places) == 1 and at >= part.end:
        talk.mentions.append(Mention(at, at + 1, (at,), {"zones": places[0].readings["zones"]}))
        talk.in_order()


def _other_answer(talk: Talk, olds: list[Mention], answer: Mention) -> Mention | None:
    """The answer of the pair that this is another one to."""
    if answer.number is not None:
        old = same_count(talk, [m for m in olds if m.number is not None], answer)
        return None if old is None or said_again(old, answer, "number") else old
    told = [m for m in olds if m.is_any(_ANSWERS) and not m.readings.keys().isdisjoint(answer.readings)]
    kinds = [name for name in _ANSWERS if answer.get(name) and told and told[-1].get(name)]
    return told[-1] if kinds and all(told[-1].get(name) != answer.get(name) for name in kinds) else None


def _all_anew(pair: Mention, parts: list[Mention]) -> bool:
    """ "Testers strong on both fores, no, off fore moderate, near fore mild", "no, both were moderate"."""
    named = {foot for m in parts for foot in resolve(m.readings["feet"], None) or ()}
    whole = resolve(pair.readings["feet"], None) or ()
    return parts[0].get("feet") == "pair_in_hand" or (len(whole) > 1 and named.issuperset(whole))


def _leave_to_the_rest(talk: Talk, feet: list[Mention], part: Mention) -> bool:
    """Take the foot out of the pair that was named last; of two that an "and" joins the second goes."""
    whole, named = (resolve(m.readings["feet"], None) or () for m in (feet[-1], part))
    if named and set(named) < set(whole):
        feet[-1].readings["feet"] = "+".join(foot for foot in whole if foot not in named)
        return True
    joined = len(feet) > 1 and set(talk.words[feet[-2].end : feet[-1].start]) <= {"and", "the", "in", "on"}
    if joined and named == whole:
        feet[-1].dropped = True  # "raised in the left front and the right front, no, the right front was normal"
    return joined and named == whole
