"""Degrees of rotation told foot by foot: "no rotation in the right front, nine degrees in the left front"."""

from __future__ import annotations

from pipeline.reading.drafting import add_draft
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Talk

_MOST = 30  # degrees; more is an angle of the hoof; common practice, no source
_ROTATION = frozenset({"rotation", "rotated", "rotating"})
_DEGREES = frozenset({"degree", "degrees"})
_LIGHT = frozenset({
    "in", "on", "of", "the", "his", "her", "about", "maybe", "only", "films", "x-rays", "xrays", "xray", "x", "-",
    "ray", "rays", "film", "radiographs", "by", "to", "has", "'s", "is", "got", "was", "degrees", "degree", "and",
})  # fmt: skip


def draft_rotations(talk: Talk) -> None:
    """A rotation for every foot that is told with its degrees behind the word in the same sentence."""
    for sentence in talk.sentences() if talk.says(_ROTATION) else ():
        said = [m for s in sentence for m in s.having("findings", "rotation")]
        if not said:
            continue
        for segment in [s for s in sentence if s.start > said[0].start and not s.drafts]:
            degrees = _degrees(talk, segment)
            if degrees is not None and _measured(talk, sentence, said[0]):
                draft = add_draft(segment, "finding", "rotation", degrees)
                draft.note("rotation: so many degrees")


def _degrees(talk: Talk, segment: Segment) -> Mention | None:
    """The number of a segment that holds nothing but it and a foot."""
    numbers = [m for m in segment.mentions if m.number is not None and not m.dropped]
    feet = segment.having("feet")
    if len(numbers) != 1 or not feet or numbers[0].number is None or not 0 < numbers[0].number.value <= _MOST:
        return None
    told = {i for m in (*numbers, *feet) for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, told)
    return numbers[0] if rest <= _LIGHT else None


def _measured(talk: Talk, sentence: list[Segment], rotation: Mention) -> bool:
    """Whether degrees are spoken of behind the word, or in "nine degrees of rotation" itself."""
    named = not _DEGREES.isdisjoint(talk.words[max(0, rotation.start - 2) : rotation.end])
    return named or any(m.get("units") == "degree" and m.start > rotation.start for s in sentence for m in s.mentions)
