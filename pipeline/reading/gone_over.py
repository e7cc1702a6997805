"""A plan to go over to something else is for the feet that have its like: "mesh pads … we'll go to full pads"."""

from __future__ import annotations

from pipeline.reading.talk import Draft, Feet, Talk

_WORN = frozenset({"pad", "wedge", "shoe_type", "packing"})
_OVER = frozenset({"go", "going", "move", "switch", "change", "step", "swap", "over", "bump", "put", "drop", "bring"})
_TO = frozenset({"to", "into", "for"})
_UP = frozenset({"up", "down", "back", "over", "on", "him", "her", "them", "straight", "right"})
_REACH = 8
_IT = frozenset({"it", "that", "there"})


def feet_gone_over(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """The feet on which the same kind of thing was told last, where the plan names none and they are not in hand."""
    segment = draft.segment
    ahead = talk.words[max(segment.start, draft.start - _REACH) : draft.start]
    led = _leads_over(ahead)
    pointed = _IT & set(talk.words[draft.end : segment.end])
    if draft.slot not in _WORN or not led or pointed:
        return None
    if not any(s.having("plans") for s in talk.sentence(segment.sentence)):
        return None
    earlier = [s for s in talk.segments[: segment.index] if s.horse == segment.horse and s.sentence < segment.sentence]
    told = [d.feet for s in earlier for d in s.drafts if d.slot == draft.slot and d.feet and not d.dropped]
    return told[-1] if told and not set(told[-1]) & set(hand or told[-1]) else None


def _leads_over(ahead: list[str]) -> bool:
    """ "Go to", "go up to", "step him down to"."""
    for at in [i for i, word in enumerate(ahead) if word in _OVER]:
        beyond = at + 1
        while beyond < len(ahead) and ahead[beyond] in _UP:
            beyond += 1
        if ahead[beyond : beyond + 1] and ahead[beyond] in _TO:
            return True
    return False
