"""A pair named behind what it has: "left front reset as well, six nails, five slims, both of them"."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS, Groups
from pipeline.reading.talk import Segment, Talk

_COUNTED = frozenset({"nails", "nail_size", "shoe_size"})  # told foot by foot, unless "both of them" is right behind


def widen_to_both(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """Give what stands right before "both of them" to the pair, where it was taken for the foot in hand."""
    for position, segment in enumerate(sentence):
        both = segment.having("feet", "pair_in_hand")
        alone = len(both) == 1 and both[0].end - both[0].start == segment.end - segment.start
        if not alone or segment.drafts or not groups[segment.index]:
            continue
        pair = groups[segment.index][0].feet
        slots = SETUP_SLOTS
        for before in reversed(sentence[:position]):
            if groups[before.index] or not before.drafts or before.horse != segment.horse:
                break
            for draft in [d for d in before.drafts if d.slot in slots and d.foot_carried]:
                if set(draft.feet or ()) < set(pair):
                    draft.feet = pair
                    draft.note("foot: both of them")
            slots = SETUP_SLOTS - _COUNTED
