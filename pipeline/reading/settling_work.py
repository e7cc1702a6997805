"""What work says twice: shoes taken off and left off leave the foot bare, shoes put back unlost were reset."""

from __future__ import annotations

from pipeline.reading.talk import Draft
from pipeline.record import Status

LEFT_BARE = "work: said to be left bare"
SAME_BACK = "work: the same shoes back on"
_JUST = 1  # sentences from the shoes taken off to the bare feet


def settle_bare(drafts: list[Draft]) -> None:
    """ "Pulled his shoes, leaving him bare": taken off and left off, with no word of a trim."""
    off = [d for d in drafts if d.slot == "work" and d.value == "removed" and d.status is Status.PRESENT]
    for bare in [d for d in drafts if LEFT_BARE in d.rules and d.status is Status.PRESENT] if off else ():
        near = [d for d in off if 0 <= bare.segment.sentence - d.segment.sentence <= _JUST and d.start < bare.start]
        if any(set(bare.feet or ()) <= set(d.feet or ()) for d in near):
            bare.drop("taken off and left off")


def back_on_without_loss(drafts: list[Draft]) -> None:
    """ "The fronts went back on": several shoes of which none was lost were reset."""
    lost = [d for d in drafts if d.slot == "shoe_state" and d.value == "lost"]
    unplaced = any(not d.feet for d in lost)
    gone = {foot for d in lost for foot in d.feet or ()}
    for draft in drafts:
        several = len(draft.feet or ()) > 1 and not lost
        same = SAME_BACK in draft.rules and bool(draft.feet) and not unplaced and gone.isdisjoint(draft.feet or ())
        if draft.slot == "work" and draft.value == "put_back" and (several or same):
            draft.value = "reset"
