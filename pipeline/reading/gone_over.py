"""A plan to go over to something else is for the feet that have its like: "mesh pads … we'll go to full pads"."""

from __future__ import annotations

from pipeline.reading.talk import Draft, Feet, Talk

_WORN = frozenset({"pad", "wedge", "shoe_type", "packing"})
_OVER = frozenset({"go", "going", "move", "switch", "change", "step", "swap", "over"})
_TO = frozenset({"to", "into", "for"})
_REACH = 6
_IT = frozenset({"it", "that", "there"})


def feet_gone_over(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """The feet on which the same kind of thing was told last, where the plan names none and they are not in hand."""
    segment = draft.segment
    ahead = talk.words[max(segment.start, draft.start - _REACH) : draft.start]
    led = any(ahead[i] in _OVER and ahead[i + 1] in _TO for i in range(len(ahead) - 1))
    pointed = _IT & set(talk.words[draft.end : segment.end])
    if draft.slot not in _WORN or not led or pointed:
        return None
    if not any(s.having("plans") for s in talk.sentence(segment.sentence)):
        return None
    earlier = [s for s in talk.segments[: segment.index] if s.horse == segment.horse and s.sentence < segment.sentence]
    told = [d.feet for s in earlier for d in s.drafts if d.slot == draft.slot and d.feet and not d.dropped]
    return told[-1] if told and not set(told[-1]) & set(hand or told[-1]) else None
