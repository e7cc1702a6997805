"""What was measured at an earlier time, in the order of today's: "they were 90 and 91 in August"."""

from __future__ import annotations

from pipeline.reading.days_ago import time_words
from pipeline.reading.lengths import MM_PER_UNIT, likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status, value_problem

_THEY_WERE = Sayings("they were", "those were", "these were", "it was", "that was", "they read", "i had them at")
_MEASURED = frozenset({*ANGLES, *LENGTHS})
_LIGHT = frozenset({
    "and", ",", "in", "at", "on", "back", "the", "about", "around", "a", "an", "only", "just", "last", "when", "i",
    "was", "were", "here", "of", "this", "year",
})  # fmt: skip
_OF_BOTH = frozenset({"both", "each", "alike", "all"})
_NEAR = 1  # sentences from today's measures
_REACH = 12  # tokens from "they were" to the time


def draft_measures_then(talk: Talk) -> None:
    """One earlier measure for each of today's, said in their order behind "they were"."""
    if not talk.tells(_THEY_WERE):
        return
    for segment in list(talk.segments):
        for at, form in list(_THEY_WERE.within(talk.words, segment.start, segment.end)):
            said = _said(talk, segment, at + len(form))
            told = time_words(talk, segment.having("times"))
            led = [i for i in range(segment.start, at) if i not in told]
            if len(led) > _NEAR + 1 or not said or not _timed(talk, segment, said[-1].end):
                continue
            today = _today(talk, segment)
            if len(said) == len(today) == 1 and _both(talk, segment):
                today = _today(talk, segment, _NEAR + 1)  # "Near fore's fifty. Off fore's fifty too. They were both …"
            if len(said) == 1 and len(today) > 1 and _both(talk, segment):
                said = said * len(today)
            if len(today) == len(said) and len({d.slot for d in today}) == 1:
                for number, draft in zip(said, today, strict=True):
                    _draft(talk, number, draft)


def _both(talk: Talk, segment: Segment) -> bool:
    """ "In March they were ninety-four, both": one number of all that was measured today."""
    near = talk.words[segment.start : talk.sentence(segment.sentence)[-1].end]
    return not _OF_BOTH.isdisjoint(near)


def _said(talk: Talk, segment: Segment, start: int) -> list[Mention]:
    """The numbers behind "they were", to the time that closes them, with nothing else of the trade between."""
    numbers: list[Mention] = []
    for mention in talk.starting_in(start, start + _REACH):
        here = talk.segment_at(mention.start)
        if here is None and talk.words[mention.start] in _LIGHT:
            continue  # the "and" between two numbers
        if here is None or here.sentence != segment.sentence or mention.get("times") in ("history", "recent"):
            break
        if mention.number is not None and not mention.dropped:
            between = talk.words[numbers[-1].end if numbers else start : mention.start]
            if set(between) - _LIGHT - {"mil", "mm", "millimetres", "degrees", "inches", "inch"}:
                return []
            numbers.append(mention)
        elif not mention.get("units") and mention.get("fillers") is None and mention.get("feet") != "pair_in_hand":
            return []
    free = not any(
        d.start <= m.start < d.end for s in talk.sentence(segment.sentence) for d in s.drafts for m in numbers
    )
    return numbers if free else []


def _timed(talk: Talk, segment: Segment, end: int) -> bool:
    """Whether an earlier time stands right behind the numbers, or opens the sentence."""
    first = talk.sentence(segment.sentence)[0].start
    times = [m for name in ("history", "recent") for m in talk.having("times", name)]
    times = [m for m in times if first <= m.start < end + _REACH]
    times = [m for m in times if (h := talk.segment_at(m.start)) is not None and h.sentence == segment.sentence]
    both = {
        i for m in talk.having("feet", "pair_in_hand") for i in range(m.start, m.end)
    }  # "…, the both of them, in May"
    return any(
        m.end <= segment.end or {talk.words[i] for i in range(end, m.start) if i not in both} <= _LIGHT for m in times
    )


def _today(talk: Talk, segment: Segment, back: int = _NEAR) -> list[Draft]:
    """Today's measures told last: of one kind, a foot each, in the sentence or the one before."""
    near = [s for s in talk.segments[: segment.index + 1] if s.horse == segment.horse]
    told = [d for s in near if segment.sentence - s.sentence <= back for d in s.drafts if d.slot in _MEASURED]
    told = [d for d in told if not d.dropped]
    return [d for d in told if d.slot == told[-1].slot and d.feet] if told else []


def _draft(talk: Talk, number: Mention, today: Draft) -> None:
    segment = talk.segment_at(number.start)
    if segment is None or number.number is None:
        return
    unit = talk.mention_starting(number.end)
    said = MM_PER_UNIT.get(str(unit.get("units"))) if unit is not None and today.slot in LENGTHS else None
    value = number.number.value * (said or likely_unit(today.slot, number.number))
    if value_problem(today.slot, float(value)):
        return
    draft = Draft(today.slot, value, segment, number.start, number.end, number.match, feet=today.feet)
    draft.status = Status.HISTORY
    draft.evidence.update(number.literal)
    draft.note(f"{today.slot}: as it was then")
    segment.draft(draft)
