"""A memo whose first name is lost: "Two today. Trimmed all four. … Then Buck. … Buck in five weeks, Tally in six"."""

from __future__ import annotations

from pipeline.reading.roster_names import HorseTalk, NameSpan
from pipeline.reading.talk import Segment, Talk
from pipeline.vocabulary import CLASS_SLOTS

_SEVERAL = 2
_TOLD = frozenset({*CLASS_SLOTS, "feet", "measures"}) - {"vet"}
_FEWEST = 2  # segments of the beginning that tell something
_TURNING = frozenset({"then", "next", "now", "and", "so", "right", "okay", "up", "is", "was"})
_WEEKLY = frozenset({"week", "fortnight", "month"})


def name_unnamed_head(talk: Talk, found: HorseTalk) -> None:
    """Give what is told before the first name to the one horse of whom else only the next visit is told.

    Only where the first name opens a part of its own, so that it can hardly be the name of what was told before it.
    The horse is noted as guessed, so that it is asked about.
    """
    if len(found.horses) < _SEVERAL or not found.spans:
        return
    name = found.spans[0]
    first = talk.segment_at(name.start)
    if first is None or not _turned_to(talk, first, name):
        return
    before, behind = talk.segments[: first.index], talk.segments[first.index :]
    told = {s.horse for s in behind if _tells(s)}
    waiting = [index for index in range(len(found.horses)) if index not in told]
    if name.horse not in told or len(waiting) != 1 or sum(map(_tells, before)) < _FEWEST:
        return
    if all(_due(talk, span) for span in found.spans if span.horse == waiting[0]):
        for segment in before:
            segment.horse = waiting[0]
        found.horses[waiting[0]].guessed = True


def _tells(segment: Segment) -> bool:
    """Whether anything but the next visit is said in the segment."""
    return any(m.is_any(_TOLD) for m in segment.mentions)


def _turned_to(talk: Talk, segment: Segment, name: NameSpan) -> bool:
    """ "Then Buck.", "Buck then, and she's not well": nothing but words that turn to the next horse stand before it."""
    return set(talk.words[segment.start : name.start]) <= _TURNING


def _due(talk: Talk, span: NameSpan) -> bool:
    """ "Tally six weeks", "one week for Buck, six for Tally": named with nothing but when to come back."""
    segment = talk.segment_at(span.start)
    if segment is None or not any(m.number is not None or m.get("units") for m in segment.mentions):
        return False
    return any(m.get("units") in _WEEKLY for s in talk.sentence(segment.sentence) for m in s.mentions)
