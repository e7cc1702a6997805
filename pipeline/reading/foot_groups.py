"""The feet named in each segment, in order, and the foot that stays in hand."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.no_foot import is_no_foot, the_lot, told_of_in_passing
from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.pointed_out import both_across, is_across, of_the_two
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.reading.whole_horse import shod_so_far, the_shod
from pipeline.record import FEET

COUNTED = frozenset({"nails", "nail_size", "shoe_size"})  # told foot by foot
SETUP_SLOTS = frozenset({
    "work", "shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "nails", "nail_size", "clips",
    "traction", "nail_line",
})  # fmt: skip
_PAIR = 2
_MEASURED = frozenset({*ANGLES, *LENGTHS})
_LED_TO_FOOT = frozenset({"the", "in", "on", "his", "her", "its", "of"})
_OTHERS = {"other_three": 1, "other_two": 2}  # how many feet they are not
_NONE = frozenset({"none", "n't", "not", "nothing", "clean", "clear", "free", "never", "no"})
_HANDLING = frozenset({"picked", "pick", "lifted", "lift", "near", "handled", "up", "looked", "done"})


@dataclass
class FootGroup:
    """Feet named at the token ``start``; ``anaphor`` when they were only pointed at ("that foot")."""

    start: int
    end: int
    feet: Feet
    anaphor: bool = False


Groups = dict[int, list[FootGroup]]


def one_of_several(draft: Draft, feet: Feet | None) -> Draft:
    """The part of a draft on some of its feet, as a draft of its own; the draft itself when it has no others."""
    same = [
        d
        for d in draft.segment.drafts
        if (d.slot, d.value) == (draft.slot, draft.value) and feet is not None and set(feet) <= set(d.feet or ())
    ]
    draft = same[0] if same else draft
    if feet is None or draft.feet is None or not set(feet) < set(draft.feet):
        return draft
    part = replace(draft, feet=feet, rules=[*draft.rules, "foot: one of several"], evidence=set(draft.evidence))
    draft.feet = tuple(foot for foot in draft.feet if foot not in feet)
    draft.segment.drafts.append(part)
    return part


def _where_left_out(talk: Talk, segment: Segment, mention: Mention) -> list[FootGroup]:
    """ "Eight nails apiece bar the near hind where I could only get six in"."""
    if talk.left_out is None or "-" not in str(mention.get("feet")):
        return []
    where = next((i for i in range(mention.end, segment.end) if talk.words[i] in ("where", "which")), None)
    return [FootGroup(where, where + 1, talk.left_out)] if where is not None else []


def _of_the_one_left_out(talk: Talk, segment: Segment) -> bool:
    """ "Eight a foot bar the near hind, six there", "…, that got six", "… where I could only get six in"."""
    words = talk.words[segment.start : segment.end]
    if words[0] in ("which", "where", "that") and _NONE & set(words):
        return True  # "flare on every foot bar the near hind, which hasn't any"
    before = talk.segments[segment.index - 1].drafts if segment.index else []
    answered = {d.slot: d.value for d in before if d.slot in ("tester", "pulse")}
    if any(d.value != answered.get(d.slot, d.value) for d in segment.drafts):
        return True  # "testers clear all round bar the near hind, mild at the toe"
    if any(d.value == "new_shoe" and talk.words[d.end - 1] in ("one", "shoe") for d in segment.drafts):
        return True  # "same shoes back on bar the left hind, I'd a new one made"
    return bool(segment.drafts) and (words[0] in ("that", "which", "where", "it") or words[-1] == "there")


def groups_of(
    talk: Talk, segment: Segment, hand: Feet | None, named: bool = False
) -> tuple[list[FootGroup], Feet | None]:
    found, began = list[FootGroup](), hand
    for mention in segment.having("feet") if "feet" in segment.named else ():
        name = mention.readings["feet"]
        working = any(d.slot == "work" for d in segment.drafts)
        counted = mention.get("totals") is not None and hand is not None
        counted = counted and any(m.number is not None for m in segment.mentions)  # "six nails each foot": in hand
        counted = counted and not (name == "in_hand" and talk.left_out)
        in_passing = name == "all" and told_of_in_passing(talk, segment, mention)
        if counted or in_passing or (is_no_foot(talk, mention) and not (working and the_lot(talk, mention))):
            continue
        if talk.words[mention.end - 1] == "anything" and not _looked_over(talk, segment, mention):
            continue  # "he hasn't stood on anything"
        feet = of_the_two(talk, segment, mention, hand) or both_across(talk, name, hand)
        feet = feet or _by_what_was_done(talk, segment, mention, working)
        feet = feet or (_without_it(segment, talk) if name == "other_three" else None)
        feet = feet or (talk.left_out or _the_single_one(talk, mention) if name == "in_hand" else None)
        feet = feet or resolve(name, began if _beside(talk, mention) else hand)
        if feet is None:
            continue
        talk.across = feet if is_across(feet) else talk.across if set(feet) <= set(talk.across or ()) else None
        if name != "in_hand":
            talk.single_out = _one_without(feet) if name == "other_three" else None
            talk.left_out = resolve(name.split("-", 1)[1], hand) if "-" in name else None
        anaphor = name in ("in_hand", "pair_in_hand")
        found.append(FootGroup(mention.start, mention.end, feet, anaphor))
        found += _where_left_out(talk, segment, mention)
        told = segment.drafts or name not in _OTHERS
        hand = feet if told and not ((named or len(found) > 1) and _not_this(talk, mention)) else hand
    if not found and named and talk.left_out and _of_the_one_left_out(talk, segment):
        found.append(FootGroup(segment.start, segment.start, talk.left_out, True))
        hand = talk.left_out if segment.drafts else hand
    waiting = [d for d in segment.drafts if not named or (d.slot == "finding" and d.value == "club_foot")]
    only_pointed = waiting and all(group.anaphor and _of_it(talk, segment, group) for group in found)
    for draft in waiting if only_pointed else ():
        feet = _spoken_of_before(talk, segment, draft)
        if feet is not None:  # "if that thrush isn't gone we'll use iodine on it": the thrush tells which foot
            found = [FootGroup(draft.start, draft.end, feet)]
            hand = feet
    return found, hand


def _of_it(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """ "If the thrush isn't gone … on it", "if the corn's no better he'll go in a bar shoe on that foot"."""
    if talk.words[group.end - 1] not in ("that", "foot", "one") or not segment.having("plans", "condition"):
        return talk.words[group.end - 1] == "it"
    return len(segment.drafts) > 1 and any(d.slot == "finding" for d in segment.drafts)


def _beside(talk: Talk, mention: Mention) -> bool:
    """ "In the other hind as well as that one": the foot in hand before the other was named."""
    return mention.get("feet") == "in_hand" and talk.words[mention.start - 2 : mention.start] == ["well", "as"]


def _not_this(talk: Talk, foot: Mention) -> bool:
    """ "A corn in the right front, not the left. Testers strong.": the talk stays with the foot that has it."""
    at = foot.start
    while talk.words[at - 1] in _LED_TO_FOOT:
        at -= 1
    return talk.words[at - 1] == "not" and talk.words[foot.end : foot.end + 1] != ["either"]


def _by_what_was_done(talk: Talk, segment: Segment, mention: Mention, working: bool) -> Feet | None:
    """ "The other three", "the three with shoes", "the lot's steel": which they are, the work told before says."""
    name = mention.readings["feet"]
    if name in _OTHERS:
        return _rest(talk, segment, name) if working else None
    if name in ("shod_three", "shod_feet"):
        return the_shod(talk, segment, name)
    return _lot_of_shoes(talk, segment, mention) if name == "all" else None


def _one_without(feet: Feet) -> Feet | None:
    rest = tuple(foot for foot in FEET if foot not in feet)
    return rest if len(rest) == 1 else None


def _the_single_one(talk: Talk, mention: Mention) -> Feet | None:
    """ "The off fore shoe stays off, the other three are reset. That foot gets a pad": the foot that stood alone."""
    return talk.single_out if talk.words[mention.end - 1] in ("foot", "leg", "one") else None


def _looked_over(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "No flares on anything" tells of the feet, "he's not stood on anything" does not."""
    trod = talk.words[mention.start - 1] in ("stood", "stand", "stands", "standing", "trod", "stepped", "step", "tread")
    alone = segment.end - segment.start == mention.end - mention.start  # "no thrush, on anything"
    return not trod and (alone or bool(segment.drafts) or bool(segment.having("denials")))


def _lot_of_shoes(talk: Talk, segment: Segment, mention: Mention) -> Feet | None:
    """ "New shoe left front, right front reset. The lot's steel": the lot of the shoes, not of the feet."""
    stuff = bool(segment.drafts) and all(d.slot == "shoe_material" for d in segment.drafts)
    return shod_so_far(talk, segment) or None if stuff and the_lot(talk, mention) else None


def _rest(talk: Talk, segment: Segment, name: str) -> Feet | None:
    """ "Other three reset", "the remaining pair trimmed": those that were not worked on, when one or two were."""
    drafts = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
    worked = {foot for d in drafts if d.slot == "work" and not d.dropped for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot not in worked) if len(worked) == _OTHERS[name] else None


def _without_it(segment: Segment, talk: Talk) -> Feet | None:
    """ "Crack in the off fore … the near fore is contracted. No cracks in the other three": all but the cracked one."""
    found = next((d for d in segment.drafts if d.slot == "finding"), None)
    if found is None:
        return None
    told = [s for s in talk.segments[: segment.index] if s.horse == segment.horse and not s.having("denials")]
    same = [d for s in told for d in s.drafts if (d.slot, d.value) == (found.slot, found.value) and not d.dropped]
    there = {foot for d in same for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot not in there) if len(there) == 1 else None


def _spoken_of_before(talk: Talk, segment: Segment, draft: Draft) -> Feet | None:
    """ "That crack" is the crack of before, on the foot where it was."""
    if draft.slot not in ("finding", "shoe_type"):
        return None
    before = talk.words[max(0, draft.start - 2) : draft.start]
    turned = "into" in before and before[-1:] in (["a"], ["an"])  # "if it does turn into an abscess"
    pointed = draft.slot == "finding" and (before[-1:] in (["that"], ["this"], ["the"]) or turned)
    if not pointed and not (draft.slot == "shoe_type" and before in (["in", "the"], ["on", "the"], ["under", "the"])):
        return None
    if _foot_alone_behind(segment, talk):
        return None
    told = [d for s in talk.segments[: segment.index] for d in s.drafts if s.horse == segment.horse and d.feet]
    told = [d for d in told if (d.slot, d.value) == (draft.slot, draft.value)]
    told = [d for d in told if not _said_not_to_be(d)] or told
    if not told:
        return None
    draft.note("refers back")
    return told[-1].feet


def _foot_alone_behind(segment: Segment, talk: Talk) -> bool:
    """ "He had the canker in January as well, right hind", "wedges, five degrees, both fores"."""
    for behind in talk.segments[segment.index + 1 :]:
        if behind.delimiter != "," or behind.sentence != segment.sentence:
            return False
        if named := behind.having("feet"):
            return (named[0].start, named[0].end) == (behind.start, behind.end) and not behind.drafts
    return False


def _said_not_to_be(earlier: Draft) -> bool:
    """ "The left hind has no canker": the canker that is spoken of later is that of another foot."""
    return any(m.end == earlier.start for m in earlier.segment.having("denials", "before"))


def contrasted(sentence: list[Segment], groups: dict[int, list[FootGroup]], hand: Feet | None = None) -> Feet | None:
    """After "number two up front and number one behind" the shoeing of all of them is in hand again."""
    footed = [groups[s.index] for s in sentence if groups[s.index]]
    if len(footed) < _PAIR and (not footed or len(footed[0]) != _PAIR):
        return None
    told = _told_of(sentence, groups)
    named = [s for s in sentence if s.index in told and s.horse == sentence[-1].horse]
    if named and len(groups[named[-1].index]) == _PAIR and setup_only(named[-1]):
        one, other = (g.feet for g in groups[named[-1].index])
        if len(one) == len(other) == _PAIR and not set(one) & set(other):
            return tuple(foot for foot in FEET if foot in one or foot in other)  # "2s front 1 1/2 hind"
    if len(named) < 2:
        return None
    first, second = named[-2], named[-1]
    shared = ({d.slot for d in told[first.index]} & {d.slot for d in told[second.index]} & SETUP_SLOTS) - {"work"}
    one, other = groups[first.index][-1].feet, groups[second.index][-1].feet
    if not shared or set(one) & set(other) or any(d.slot not in SETUP_SLOTS for d in told[second.index]):
        return None
    both = tuple(foot for foot in FEET if foot in one or foot in other)
    if min(len(one), len(other)) >= _PAIR:
        return both
    # "reset in front. Seven nails in the left front, six in the right": counted foot by foot, the pair is in hand
    pairs = [hand, *(g.feet for s in named[:-2] for g in groups[s.index])]
    shod = all(setup_only(s) for s in sentence[sentence.index(second) :] if s.drafts)
    return both if shod and shared <= COUNTED and len(both) == _PAIR and both in pairs else None


def _told_of(sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> dict[int, list[Draft]]:
    """What each segment with a foot tells, by index; of "the off fore took, let me see, a two" what stands behind."""
    told: dict[int, list[Draft]] = {}
    for position, segment in enumerate(sentence):
        if not groups[segment.index]:
            continue
        drafts = segment.drafts
        for behind in sentence[position + 1 :]:
            if drafts or groups[behind.index] or not behind.joined_by(","):
                break
            drafts = behind.drafts
        if drafts:
            told[segment.index] = drafts
    return told


def setup_only(segment: Segment) -> bool:
    return bool(segment.drafts) and all(d.slot in SETUP_SLOTS for d in segment.drafts)


def of_itself(draft: Draft, later: Segment) -> bool:
    """ "Six per shoe, nail line low on the right front", "quarter clips, and trimmed behind": no list with it."""
    lines = draft.slot != "nail_line" and all(d.slot == "nail_line" for d in later.drafts)
    trims = draft.slot in SETUP_SLOTS - {"work"} and all(d.value == "trim" for d in later.drafts)
    return lines or trims


def left_alone(talk: Talk, segment: Segment) -> bool:
    """ "… boots on them, never touched the hinds": the feet that nothing was done to."""
    if segment.drafts:
        return False
    words = set(talk.words[segment.start : segment.end])
    touched = {"touched", "touch", "bothered"} & words and {"not", "n't", "never", "was"} & words
    told = {i for m in segment.having("feet") for i in m.literal}
    rest = talk.words_beside(segment, told)
    handled = _HANDLING & rest and {"not", "n't", "never"} & rest
    return bool(touched or handled or {"alone", "untouched"} & words or "left" in rest)


def passed_over(talk: Talk, sentence: Sentence, groups: Groups, before: Feet | None) -> Feet | None:
    """ "I did the fronts, never touched the hinds. New shoes": the feet before, for what is put on behind."""
    behind = [d for s in talk.sentence(sentence[0].sentence + 1) for d in s.drafts][:1]
    if not behind or not (behind[0].slot in SETUP_SLOTS or behind[0].slot == "treatment"):
        return None
    named = [s for s in sentence if groups[s.index]]
    if not left_alone(talk, named[-1]):
        return None
    return groups[named[-2].index][-1].feet if named[1:] else before


def held_over(sentence: list[Segment], later: Segment, draft: Draft) -> list[Draft]:
    """ "Between a double aught and an aught in front": the size begun before that ends with the foot."""
    if later.drafts or not later.joined_by("and"):
        return []
    told = range(later.start, later.end)
    held = [d for s in sentence if s.start < later.start for d in s.drafts if not d.evidence.isdisjoint(told)]
    return held if draft not in held and all(d.slot in SETUP_SLOTS for d in (*held, draft)) else []


def number_taken_back(talk: Talk, segment: Segment) -> bool:
    """Whether the number that stood in a segment was put right behind it."""
    return not segment.drafts and any(
        m.dropped and m.number is not None for m in talk.starting_in(segment.start, segment.end)
    )


def united(
    sentence: list[Segment],
    later: Segment,
    groups: dict[int, list[FootGroup]],
    draft: Draft,
    held: set[str] | None = None,
) -> Feet:
    """ "New shoes, size two in front, size one behind": a set-up word that leads reaches all feet named."""
    feet = list(groups[later.index][0].feet)
    slots = held or {d.slot for d in later.drafts}
    if draft.slot in SETUP_SLOTS and draft.slot not in slots:
        for segment in sentence[sentence.index(later) + 1 :]:
            if groups[segment.index] and {d.slot for d in segment.drafts} & slots:
                feet.extend(groups[segment.index][0].feet)
    return tuple(f for f in FEET if f in feet)


def in_one_breath(first: Segment, later: Segment, draft: Draft) -> bool:
    """ "He has long toes and a broken back axis in both fronts": two findings, one verb, and nothing between them."""
    found = [d.slot for d in (*first.drafts, *later.drafts)] == ["finding", "finding"]
    denied = bool(first.having("denials", "before")) != bool(later.having("denials", "before"))
    near = draft.end == first.end and later.drafts[0].start - later.start <= 1
    return found and not denied and near and later.joined_by("and")


def listed_alike(talk: Talk, first: Segment, later: Segment, found: FootGroup, draft: Draft) -> bool:
    """ "Toe angle 52, heel angle 48 on the near fore", "soaked and bandaged the off fore": one list.

    Not where the foot in hand was being measured: "Near fore, toe angle 52. Heel angle 48, toe length 80 on the off".
    """
    slots = {d.slot for d in later.drafts}
    if found.anaphor or later.drafts[0].start > found.start:
        return False
    if draft.slot in _MEASURED and slots <= _MEASURED - {draft.slot}:
        before = [s for s in talk.segments[: first.index] if s.sentence == first.sentence - 1]
        return not any(d.slot in _MEASURED for s in before for d in s.drafts)
    bare = (draft.start, draft.end) == (first.start, first.end) and first.joined_by("start", ",")
    return bare and draft.slot == "treatment" and slots == {"treatment"} and later.joined_by("and", ",", ", and")
