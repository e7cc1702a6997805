"""A pair, or its second foot, behind what was done: "six nails, both of them", "… and the left front with six"."""

from __future__ import annotations

from pipeline.reading.foot_groups import COUNTED, SETUP_SLOTS, Groups, setup_only
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.record import FEET

_SHOD = frozenset({"work", "shoe_type", "shoe_material"})
_WITH = (["with"], ["in"])
_AHEAD = frozenset({"the", "his", "her", "on", "in", "and"})


def widen_to_both(talk: Talk, sentence: Sentence, groups: Groups) -> None:
    """Give what stands right before "both of them" or "both plain" to the pair, where it was of the foot in hand."""
    for position, segment in enumerate(sentence if "feet" in sentence.classes else ()):
        if position:
            _widen_to_second(talk, sentence[position - 1], segment, groups)
        if not groups[segment.index] or (segment.drafts and position != 1):
            continue
        both = segment.having("feet", "pair_in_hand")
        alone = len(both) == 1 and both[0].end - both[0].start == segment.end - segment.start
        heading = len(both) == 1 and both[0].start == segment.start and setup_only(segment) and position == 1
        if (segment.drafts and not heading) or not (alone or heading):
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
            slots = SETUP_SLOTS - COUNTED  # told foot by foot, unless "both of them" is right behind


def _widen_to_second(talk: Talk, first: Segment, second: Segment, groups: Groups) -> None:
    """ "I reset the right front with five nails and the left front with six": what was done, on the second foot too."""
    if not second.drafts or second.own_clause or any(d.slot not in COUNTED for d in second.drafts):
        return
    one, other = groups[first.index], groups[second.index]
    if len(one) != 1 or len(other) != 1 or one[0].anaphor or other[0].anaphor or first.horse != second.horse:
        return
    led = set(talk.words[second.start : other[0].start]) <= _AHEAD and second.joined_by("and", ", and", ",")
    link = talk.words[other[0].end : other[0].end + 1]
    if not led or link not in _WITH or talk.words[one[0].end : one[0].end + 1] != link:
        return
    for draft in [d for d in first.drafts if d.slot in _SHOD and d.end <= one[0].start and d.feet == one[0].feet]:
        draft.feet = tuple(foot for foot in FEET if foot in one[0].feet or foot in other[0].feet)
        draft.note("foot: and the second, with its own number")
