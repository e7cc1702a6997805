"""A list told over again for another foot: "toe fifty three and heel forty eight on the near, toe fifty two … off"."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.foot_groups import FootGroup
from pipeline.reading.talk import Draft, Feet, Segment
from pipeline.record import SIZED_SLOTS

LISTED_BY = frozenset({",", "and", ", and", "plus", ", plus", "&"})


def foot_of_second_list(
    sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], before: FootGroup, draft: Draft
) -> Feet | None:
    """ "Toe angle 53 and heel angle 48 on the near fore, toe angle 52 and heel angle 47 on the off": a second list.

    What was told already of the foot before opens the list of the foot behind; one without numbers only where "and"
    joins the two things: "a corn and a bruise on the near fore, a corn and flare on the off".
    """
    segment = sentence[position]
    same = [d for s in sentence[:position] for d in s.drafts if d.slot == draft.slot and d.feet]
    counted = isinstance(draft.value, Fraction) or draft.slot in SIZED_SLOTS
    headed = segment.having("pulse_heads") or segment.having("tester_heads")
    told = any(set(d.feet or ()) & set(before.feet) and (counted or headed or d.value == draft.value) for d in same)
    joined = counted or (position + 1 < len(sentence) and sentence[position + 1].joined_by("and", "plus", "&"))
    if not told or not joined or segment.own_clause or segment.having("times", "history"):
        return None  # "she took fives in front last year, she's a six now, and a five behind"
    for later in sentence[position + 1 :]:
        if later.delimiter not in LISTED_BY or not later.drafts or later.own_clause:
            return None
        if found := groups[later.index]:
            trailing = later.drafts[-1].start < found[0].start and not found[0].anaphor
            return found[0].feet if trailing and not set(found[0].feet) & set(before.feet) else None
    return None
