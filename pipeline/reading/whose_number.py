"""A number that is said to be another horse's: "Buck's a condition seven, no, eight, it's Tally that's the seven"."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.roster_names import HorseTalk, NameSpan
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import HORSE_SLOTS

_IS_THE = (
    ["'s", "the"], ["is", "the"], ["was", "the"], ["that", "'s", "the"], ["that", "is", "the"], ["who", "'s", "the"],
    ["who", "is", "the"], ["has", "the"], ["that", "has", "the"], ["'s", "a"], ["is", "a"], ["was", "a"],
    ["that", "'s"], ["got", "the"],
)  # fmt: skip
_COUNTS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9}
_SCORES = HORSE_SLOTS - {"manner", "vet"}


def draft_whose_number(talk: Talk, found: HorseTalk) -> None:
    """A draft for the horse that a number just said is given to, of the kind that the numbers before it were."""
    for span in found.spans:
        number = _the_number(talk, span)
        if number is None:
            continue
        segment = talk.segment_at(number)
        said = _last_score(talk, segment, span) if segment is not None else None
        if segment is None or said is None:
            continue
        value, end = _value(talk, number)
        if value is None or end != segment.end:
            continue
        for own in segment.drafts:
            own.drop("another horse's number")
        draft = Draft(said.slot, value, segment, number, end)
        draft.evidence.update(range(number, end))
        draft.note(f"{said.slot}: said to be this horse's")
        segment.drafts.append(draft)
        segment.horse, segment.moved = span.horse, True


def _the_number(talk: Talk, span: NameSpan) -> int | None:
    """The token of a number right behind "Tally's the", "Tally that's the"."""
    for form in _IS_THE:
        at = span.end + len(form)
        if talk.words[span.end : at] == form and _value(talk, at)[0] is not None:
            return at
    return None


def _value(talk: Talk, at: int) -> tuple[Fraction | None, int]:
    """The number at the token and the token behind it; "the four" is a number here, not four feet."""
    for mention in talk.mentions:
        if mention.start == at and mention.number is not None:
            return mention.number.value, mention.end
    count = _COUNTS.get(talk.words[at]) if at < len(talk.words) else None
    return (Fraction(count), at + 1) if count is not None else (None, at)


def _last_score(talk: Talk, segment: Segment, span: NameSpan) -> Draft | None:
    """The last score of another horse said in this sentence."""
    before = [s for s in talk.sentence(segment.sentence) if s.index < segment.index and s.horse != span.horse]
    scores = [d for s in before for d in s.drafts if d.slot in _SCORES and not isinstance(d.value, str)]
    return scores[-1] if scores else None
