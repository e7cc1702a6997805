"""The foot behind a list: of one told over again for another foot, and of one that is denied.

"Toe fifty three and heel forty eight on the near, toe fifty two … off"; "no heat, no corn, no thrush in the off fore".
"""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.foot_alone import told_of_itself
from pipeline.reading.foot_groups import FootGroup
from pipeline.reading.scopes import denied_item
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import FEET, SIZED_SLOTS

LISTED_BY = frozenset({",", "and", ", and", "plus", ", plus", "&"})
_DENIED_BY = LISTED_BY | {"or", "nor", ", or", ", nor"}
_ADDED = frozenset({"pad", "wedge", "clips", "traction", "packing"})
_ALIKE = (_ADDED | {"shoe_type"}, frozenset({"finding"}))
_ONE_A_FOOT = {*SIZED_SLOTS, "nails"}
_KINDS = {"shoe_type", "shoe_material", "pad", "clips"}  # may be two of one foot: "side clips and toe clips behind"
_ANYTHING = frozenset({"anything", "nothing", "none"})


def foot_of_second_list(
    sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], before: FootGroup, draft: Draft
) -> Feet | None:
    """ "Toe angle 53 and heel angle 48 on the near fore, toe angle 52 and heel angle 47 on the off": a second list.

    What was told already of the foot before opens the list of the foot behind; one without numbers only where "and"
    joins the two things: "a corn and a bruise on the near fore, a corn and flare on the off".
    """
    segment = sentence[position]
    if (within := _list_within(sentence, position, groups, before, draft)) is not None:
        return within
    same = [d for s in sentence[:position] for d in s.drafts if d.slot == draft.slot and d.feet]
    if not same or segment.own_clause:
        return None
    counted = isinstance(draft.value, Fraction) or draft.slot in SIZED_SLOTS
    headed = segment.having("pulse_heads") or segment.having("tester_heads")
    told = any(set(d.feet or ()) & set(before.feet) and (counted or headed or d.value == draft.value) for d in same)
    joined = counted or (position + 1 < len(sentence) and sentence[position + 1].joined_by("and", "plus", "&"))
    if not told or not joined or segment.having("times", "history"):
        return None  # "she took fives in front last year, she's a six now, and a five behind"
    for later in sentence[position + 1 :]:
        if later.delimiter not in LISTED_BY or not later.drafts or later.own_clause:
            return None
        if found := groups[later.index]:
            trailing = later.drafts[-1].start < found[0].start and not found[0].anaphor
            return found[0].feet if trailing and not set(found[0].feet) & set(before.feet) else None
    return None


def _list_within(
    sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], before: FootGroup, draft: Draft
) -> Feet | None:
    """ "Reset all four, leather pads and toe clips in front", "trimmed all four, thrush and a bruise in the near fore".

    The list is theirs where an "and" closes it, else that is asked.
    """
    kind = next((kind for kind in _ALIKE if draft.slot in kind and draft.value != "plain"), None)
    for later in sentence[position + 1 :] if kind else ():
        alike = bool(kind and later.drafts) and all(d.slot in kind for d in later.drafts if kind)
        if not alike or later.own_clause or not later.joined_by(*LISTED_BY):
            return None
        if found := groups[later.index]:
            trailing = later.drafts[-1].start < found[0].start and not found[0].anaphor
            whole = draft.slot == "finding" or before.feet == FEET  # not "new in front, pads and putty in the off fore"
            within = trailing and whole and set(found[0].feet) < set(before.feet)
            slots = {d.slot for s in sentence if s.index > later.index for d in s.drafts}  # "quarter clips behind"
            sure = later.joined_by("and", "&") and slots.isdisjoint(d.slot for d in later.drafts)
            draft.foot_guessed = within and not sure  # "thrush, and a bruise in the near fore"
            return found[0].feet if within and not draft.foot_guessed else None
    return None


def with_the_rest(
    talk: Talk, sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], draft: Draft
) -> Feet | None:
    """ "Reset all four with leather pads and toe clips in front": both; of a kind of shoe it is asked."""
    here = sentence[position]
    ahead = groups[here.index][-1]
    done = here.drafts[0].slot == "work" or "shod" in talk.words[here.start : ahead.start]
    if ahead.feet != FEET or not done or "with" not in talk.words[ahead.end : draft.start + 1]:
        return None
    within = _list_within(sentence, position, groups, ahead, draft)
    pads = "pads" in talk.words[draft.end - 1 : draft.end + 1]  # not on one foot
    draft.foot_guessed |= within is not None and (draft.slot not in _ADDED or (pads and len(within) == 1))
    return None if draft.foot_guessed else within


def feet_of_the_rest(
    sentence: list[Segment], later: Segment, found: FootGroup, hand: Feet | None, draft: Draft
) -> Feet | None:
    """ "Five slims, six slims behind": what is told of another foot anew is of the rest in hand, and no list is theirs.

    None where nothing is told anew; none of the feet where it is what the list of the rest opens with, "new shoes, …".
    """
    if later.drafts[0].start - later.start > 1:
        return None  # "started with six nails, finished with seven on the left front"
    hand = None if hand and len(hand) < len(found.feet) else hand  # "thrush in the near fore. Fives, sixes behind"
    rest = tuple(foot for foot in hand or FEET if foot not in found.feet)
    slots = _ONE_A_FOOT | _KINDS if hand and rest and later.joined_by(",") else _ONE_A_FOOT
    leading = [d for s in sentence for d in s.drafts if draft.start <= d.start < later.start and d.slot in slots]
    again = {d.slot for d in leading for anew in later.drafts if d.slot == anew.slot and d.value != anew.value}
    return (rest if draft.slot in again else ()) if again else None


def foot_of_denied_list(
    talk: Talk, sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]]
) -> Feet | None:
    """ "No heat, no corn, thrush or canker in the near hind", "… or anything in the off fore": it is of them all.

    Not where the sentence has a foot ahead that heads what follows: "left front no corn, no heat in the right".
    """
    if not talk.having("denials") or not denied_item(talk, sentence, position):
        return None
    before = next((s for s in reversed(sentence[:position]) if groups[s.index]), None)
    if before is not None and not (before.drafts and before.drafts[0].start < groups[before.index][0].start):
        return None
    for at in range(position + 1, len(sentence)):
        later, found = sentence[at], groups[sentence[at].index]
        if later.delimiter not in _DENIED_BY:
            return None
        if later.drafts and not denied_item(talk, sentence, at):
            return None
        if later.drafts and found:
            return found[0].feet if later.drafts[0].start < found[0].start and not found[0].anaphor else None
        closing = not _ANYTHING.isdisjoint(talk.words[later.start : later.start + 2])
        if not later.drafts and not closing and (at + 1 < len(sentence) or not found):
            return None
        if found:
            return None if not closing and told_of_itself(talk, later, found[0]) else found[0].feet
    return None
