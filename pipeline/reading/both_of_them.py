"""A pair named behind what it has: "left front reset as well, six nails, five slims, both of them"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.foot_groups import SETUP_SLOTS, Groups
from pipeline.reading.talk import Segment, Talk


def widen_to_both(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """Give what stands right before "both of them" to the pair, where it was taken for the foot in hand."""
    for before, segment in pairwise(sentence):
        both = segment.having("feet", "pair_in_hand")
        alone = len(both) == 1 and both[0].end - both[0].start == segment.end - segment.start
        if not alone or segment.drafts or not groups[segment.index] or before.horse != segment.horse:
            continue
        pair = groups[segment.index][0].feet
        for draft in [
            d for d in before.drafts if d.slot in SETUP_SLOTS and d.foot_carried and not groups[before.index]
        ]:
            if set(draft.feet or ()) < set(pair):
                draft.feet = pair
                draft.note("foot: both of them")
