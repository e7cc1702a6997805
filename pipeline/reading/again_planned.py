"""What was on before and is to go on again: "he had leather pads, and if it hardens up they'll go in again"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_WORN = frozenset({"pad", "shoe_type", "traction", "wedge", "packing"})
_THEM = frozenset({"they", "them", "it", "those", "that"})
_AHEAD = frozenset({"'ll", "will", "'d", "would", "may", "might", "could", "going", "can", "to"})
_GOING = frozenset({"go", "going", "put", "be", "come", "use", "fit", "try"})
_AGAIN = frozenset({"again", "back"})
_NOT = frozenset({"not", "n't", "never", "no"})
_NEAR = 1  # sentences from what was worn to the plan


def plan_again(talk: Talk) -> None:
    """A planned draft for each thing worn before that "will go on again"."""
    for segment in talk.segments if talk.says(_AGAIN) else ():
        words = set(talk.words[segment.start : segment.end])
        said = bool(words & _THEM) and bool(words & _AHEAD) and bool(words & _GOING) and bool(words & _AGAIN)
        if not said or words & _NOT or any(d.slot in _WORN and not d.dropped for d in segment.drafts):
            continue
        worn = _worn_before(talk, segment)
        if worn:
            for draft in [d for d in segment.drafts if d.slot == "work"]:
                draft.drop("what was worn before goes on again")
        for draft in worn:
            again = replace(
                draft,
                segment=segment,
                start=segment.start,
                end=segment.end,
                status=Status.PLANNED,
                evidence=set(range(segment.start, segment.end)),
                rules=["planned again", "foot: where it was before"],
            )
            segment.drafts.append(again)


def _worn_before(talk: Talk, segment: Segment) -> list[Draft]:
    """The last kind of thing that the horse is said to have worn, on all feet it was on."""
    near = [s for s in talk.segments[: segment.index] if 0 <= segment.sentence - s.sentence <= _NEAR]
    told = [d for s in near if s.horse == segment.horse for d in s.drafts if not d.dropped and d.slot in _WORN]
    if not told or told[-1].status is not Status.HISTORY:
        return []
    return [d for d in told if d.status is Status.HISTORY and d.segment is told[-1].segment]
