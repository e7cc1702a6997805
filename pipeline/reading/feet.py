"""Which foot a fact belongs to: the foot named beside it, the foot still in hand, or the list it stands in."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import EITHER_SLOTS, FEET, HORSE_SLOTS, MatchKind

_GROUPS: dict[str, Feet] = {
    "LF": ("LF",), "RF": ("RF",), "LH": ("LH",), "RH": ("RH",),
    "fronts": ("LF", "RF"), "hinds": ("LH", "RH"), "lefts": ("LF", "LH"), "rights": ("RF", "RH"),
    "all": FEET,
}  # fmt: skip
_SIDES = {"left": "L", "near": "L", "right": "R", "off": "R"}
_PAIRS = {"front": "F", "fore": "F", "hind": "H", "back": "H"}
_VERBS = frozenset(
    {"is", "'s", "has", "had", "was", "got", "gets", "looks", "are", "were", "have", "does", "did", "needs"}
)
_BARE_AFTER = frozenset({"", ",", ".", "and", "but", "is", "'s", "has", "had", "was", "got", "one", "too", "side", "foot", "a",
                         "an", "the", "as", "in", "with", "at", "for", ";", ":", "or", "also", "i", "he", "she", "it"})  # fmt: skip
_BARE_BEFORE = frozenset({"the", "his", "her", "on", "in", "its"})
SETUP_SLOTS = frozenset({
    "work", "shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "nails", "nail_size", "clips",
    "traction", "nail_line",
})  # fmt: skip
_LISTED_BY = frozenset({",", "and", ", and", "plus", ", plus", "&"})


@dataclass
class FootGroup:
    """Feet named at the token ``start``; ``anaphor`` when they were only pointed at ("that foot")."""

    start: int
    end: int
    feet: Feet
    anaphor: bool = False


def mark_bare_sides(talk: Talk) -> None:
    """Make mentions of "the left", "on the right" or "the off" where front or hind was not said."""
    taken = {i for m in talk.mentions if set(m.readings) - {"horse_cues", "fillers"} for i in m.literal}
    for index, word in enumerate(talk.words):
        if word not in _SIDES or index in taken or index == 0:
            continue
        before = talk.words[index - 1]
        after = talk.words[index + 1] if index + 1 < len(talk.words) else ""
        near = word == "near" and after not in (",", ".", "and", "but")
        counted = before in (",", "and", ".") and any(m.number and m.start == index + 1 for m in talk.mentions)
        determined = (
            counted
            or (before in ("the", "his", "her", "its") and not near)
            or (before in _BARE_BEFORE and word in ("left", "right"))
        )
        if (
            determined
            and (counted or after in _BARE_AFTER)
            and not (word == "left" and after in ("it", "him", "her", "the", "a", "an", "with"))
        ):
            end = index + 2 if after in ("one", "foot", "side") else index + 1
            mention = Mention(index, end, (index,), {"feet": f"bare_{_SIDES[word]}"}, MatchKind.VARIANT)
            talk.mentions.append(mention)
    talk.mentions.sort(key=lambda m: (m.start, m.end))


def join_feet(talk: Talk) -> None:
    """ "Left front and right hind" is one group, unless the second foot starts a statement of its own."""
    feet = [m for m in talk.mentions if m.get("feet")]
    for first, second in zip(feet, feet[1:], strict=False):
        between = talk.words[first.end : second.start]
        if between == [","] and _listed_feet(talk, first, second):
            _join(first, second)
            continue
        if (
            between[:1] not in (["and"], ["or"], ["&"])
            or len(between) > 2
            or set(between[1:]) - {"the", "his", "her", "on", "in"}
        ):
            continue
        after = talk.words[second.end] if second.end < len(talk.words) else ""
        leading = first.start == 0 or talk.words[first.start - 1] in (".", ",", "the", "and")
        if after in _VERBS and not leading:
            continue
        _join(first, second)


def _join(first: Mention, second: Mention) -> None:
    second.readings["feet"] = f"{first.readings['feet']}+{second.readings['feet']}"
    second.start, second.literal = first.start, tuple(range(first.start, second.end))
    first.dropped = True


def _listed_feet(talk: Talk, first: Mention, second: Mention) -> bool:
    """ "Thrush in three of them, left front, left hind, right hind": feet with nothing but commas between."""
    after = talk.words[second.end] if second.end < len(talk.words) else "."
    alone = first.start > 0 and talk.words[first.start - 1] == ","
    return alone and after in (",", ".", "and", "or")


def resolve(name: str, hand: Feet | None) -> Feet | None:
    """The feet that a canonical foot name stands for, given the feet in hand; None when nothing can be pointed at."""
    if "+" in name:
        return _resolve_joined(name, hand)
    if name in _GROUPS:
        return _GROUPS[name]
    if name.startswith("bare_"):
        pair = _pair_of(hand)
        return (name[-1] + pair,) if pair else (f"{name[-1]}F", f"{name[-1]}H")
    if name in ("other_front", "other_hind"):
        pair = "F" if name == "other_front" else "H"
        rest = tuple(f for f in (f"L{pair}", f"R{pair}") if f not in (hand or ()))
        return rest if len(rest) == 1 else None
    if hand is None:
        return None
    if name == "in_hand":
        return hand
    if name == "pair_in_hand":
        pair = _pair_of(hand)
        return (f"L{pair}", f"R{pair}") if pair else hand
    if name == "other":
        return (_across(hand[0]),) if len(hand) == 1 else None
    if name in ("other_three", "other_two"):
        rest = tuple(f for f in FEET if f not in hand)
        return rest or None
    return None


def _resolve_joined(name: str, hand: Feet | None) -> Feet | None:
    joined: list[str] = []
    for part in name.split("+"):
        feet = resolve(part, tuple(joined) or hand)
        if feet:
            joined.extend(f for f in feet if f not in joined)
    return tuple(f for f in FEET if f in joined) or None


def _pair_of(hand: Feet | None) -> str | None:
    pairs = {foot[1] for foot in hand or ()}
    return next(iter(pairs)) if len(pairs) == 1 else None


def _across(foot: str) -> str:
    return ("R" if foot[0] == "L" else "L") + foot[1]


def attach_feet(talk: Talk) -> dict[int, list[FootGroup]]:
    """Give every draft its feet, horse by horse; returns the foot groups of each segment by index."""
    groups: dict[int, list[FootGroup]] = {}
    hand: Feet | None = None
    horse = -1
    for sentence in talk.sentences():
        before = hand
        for segment in sentence:
            if segment.horse != horse:
                hand, before, horse = None, None, segment.horse
            found, hand = _groups_of(talk, segment, hand)
            groups[segment.index] = found
        for position, segment in enumerate(sentence):
            same_horse = [s for s in sentence if s.horse == segment.horse]
            _attach_segment(
                talk,
                same_horse,
                same_horse.index(segment),
                groups,
                before if sentence[0].horse == segment.horse or position else None,
            )
        hand = _contrasted(sentence, groups) or hand
    return groups


def _contrasted(sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> Feet | None:
    """After "number two up front and number one behind" the shoeing of all of them is in hand again."""
    named = [s for s in sentence if groups[s.index] and s.drafts and s.horse == sentence[-1].horse]
    if len(named) < 2:
        return None
    first, second = named[-2], named[-1]
    shared = ({d.slot for d in first.drafts} & {d.slot for d in second.drafts} & SETUP_SLOTS) - {"work"}
    one, other = groups[first.index][-1].feet, groups[second.index][-1].feet
    if not shared or set(one) & set(other) or not _setup_only(second) or min(len(one), len(other)) < 2:
        return None
    return tuple(foot for foot in FEET if foot in one or foot in other)


def _groups_of(talk: Talk, segment: Segment, hand: Feet | None) -> tuple[list[FootGroup], Feet | None]:
    found: list[FootGroup] = []
    for mention in segment.mentions:
        name = mention.get("feet")
        if name is None or _compared(talk, mention):
            continue
        feet = _rest(talk, segment) if name == "other_three" else None
        feet = feet or resolve(name, hand)
        if feet is None:
            continue
        anaphor = name in ("in_hand", "pair_in_hand")
        found.append(FootGroup(mention.start, mention.end, feet, anaphor))
        if segment.drafts or name not in ("other_three", "other_two"):
            hand = feet
    for draft in segment.drafts if not found else []:
        feet = _spoken_of_before(talk, segment, draft)
        if feet is not None:
            found.append(FootGroup(draft.start, draft.end, feet))
            hand = feet
    return found, hand


def _rest(talk: Talk, segment: Segment) -> Feet | None:
    """ "Other three reset": the three that were not worked on, when one was."""
    drafts = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
    worked = {foot for d in drafts if d.slot == "work" and not d.dropped for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot not in worked) if len(worked) == 1 else None


def _compared(talk: Talk, mention: Mention) -> bool:
    """ "Match the right", "seen from the front": a foot that is only looked at."""
    if (
        talk.words[mention.start : mention.end] == ["the", "lot"]
        and mention.start
        and talk.words[mention.start - 1] not in (",", ".")
    ):
        return True  # "bandaged the lot" wraps one foot; "steel, the lot" is all four
    after = talk.words[mention.end] if mention.end < len(talk.words) else "."
    if talk.words[mention.start] in ("anywhere", "everywhere") and after not in (
        ",",
        ".",
        "and",
        "but",
        "either",
        "at",
        "on",
        "in",
    ):
        return True  # "I couldn't find anywhere decent to nail"
    before = set(talk.words[max(0, mention.start - 2) : mention.start])
    return bool(before & {"match", "matches", "matching", "like", "than", "unlike", "from", "matched"})


def _spoken_of_before(talk: Talk, segment: Segment, draft: Draft) -> Feet | None:
    """ "That crack" is the crack of before, on the foot where it was."""
    before = talk.words[max(0, draft.start - 2) : draft.start]
    pointed = draft.slot == "finding" and before[-1:] in (["that"], ["this"], ["the"])
    if not pointed and not (draft.slot == "shoe_type" and before in (["in", "the"], ["on", "the"])):
        return None
    for earlier in reversed([d for s in talk.segments[: segment.index] for d in s.drafts if s.horse == segment.horse]):
        if (earlier.slot, earlier.value) == (draft.slot, draft.value) and earlier.feet:
            draft.note("refers back")
            return earlier.feet
    return None


def _attach_segment(
    talk: Talk, sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], hand: Feet | None
) -> None:
    segment = sentence[position]
    own = groups[segment.index]
    for draft in segment.drafts:
        if draft.slot in HORSE_SLOTS:
            draft.feet = ()
            continue
        if own:
            draft.feet = _nearest(draft, segment, own).feet
            draft.note("foot: named beside it")
            continue
        listed = (
            None
            if _statement_only(draft) and _clause_follows(sentence, position)
            else _from_list(sentence, position, groups, hand, draft)
        )
        if listed is not None:
            draft.feet = listed
            draft.note("foot: named at the end of the list")
            continue
        earlier = _earlier_group(sentence, position, groups)
        if draft.slot == "lameness" and ("elliptic" in draft.rules or _same_lameness(sentence, draft)):
            draft.feet = _last_feet(talk, draft)
            continue
        if _statement_only(draft):
            follows = earlier is not None and _same_statement(sentence, position, groups)
            draft.feet = earlier.feet if follows and earlier and draft.value not in _HORSE_GAITS else ()
            continue
        draft.feet = _in_every(talk, draft) or _in_each(
            sentence, draft, earlier.feet if earlier else _shod_before(talk, draft, hand)
        )
        draft.foot_carried = True
        draft.note("foot: still in hand")


def _clause_follows(sentence: list[Segment], position: int) -> bool:
    return position + 1 < len(sentence) and sentence[position + 1].own_clause


def _same_lameness(sentence: list[Segment], draft: Draft) -> bool:
    """ "It's the near fore she's lame on, and I'm calling it two out of five"."""
    return any(d.value == "lame" and d.feet and d.start < draft.start for s in sentence for d in s.drafts)


def _last_feet(talk: Talk, draft: Draft) -> Feet:
    """ "One out of five on it, and back in December it was a three": the foot of the grade before."""
    earlier = [d for s in talk.segments[: draft.segment.index] if s.horse == draft.segment.horse for d in s.drafts]
    graded = [d for d in earlier if (d.slot == draft.slot or d.value == "lame") and d.feet]
    return graded[-1].feet or () if graded else ()


def _shod_before(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "New shoes all round, borium on the hinds. Five nails each": an add-on to some does not narrow the shoeing."""
    if draft.slot not in ("nails", "nail_size") or hand is None:
        return hand
    before = talk.sentence(draft.segment.sentence - 1)
    shod = [d.feet for s in before for d in s.drafts if d.slot == "work" and d.feet and s.horse == draft.segment.horse]
    last = [d.slot for s in before for d in s.drafts if d.feet == hand]
    added = bool(last) and set(last) <= {"traction", "clips", "pad", "packing"}
    return shod[-1] if shod and added and set(hand) < set(shod[-1]) else hand


def _in_every(talk: Talk, draft: Draft) -> Feet | None:
    """ "Eight nails in every shoe": every foot that was shod."""
    if draft.slot not in ("nails", "nail_size") or "every" not in talk.words[draft.start : draft.end + 3]:
        return None
    drafts = [d for s in talk.segments[: draft.segment.index] if s.horse == draft.segment.horse for d in s.drafts]
    shod = {foot for d in drafts if d.slot == "work" and d.value in ("new_shoe", "reset") for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot in shod) or None


def _in_each(sentence: list[Segment], draft: Draft, feet: Feet | None) -> Feet | None:
    """ "Six nails in each", said with one foot in hand, is both of the pair."""
    each = any(m.get("totals") == "each" and m.start < draft.end + 2 for m in draft.segment.mentions)
    if draft.slot != "nails" or feet is None or len(feet) != 1 or not each:
        return feet
    return (f"L{feet[0][1]}", f"R{feet[0][1]}")


def _same_statement(sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]]) -> bool:
    """Whether no new clause starts between the last named foot and this segment."""
    for number in range(position, 0, -1):
        if sentence[number].own_clause:
            return False
        if groups[sentence[number - 1].index]:
            return True
    return False


_HORSE_GAITS = frozenset({"forge", "overreach", "interfere", "short_stride"})


def _statement_only(draft: Draft) -> bool:
    """Gait, lameness and laminitis take a foot only from their own statement."""
    return (draft.slot in EITHER_SLOTS and draft.slot != "finding") or draft.value == "laminitis"


def _nearest(draft: Draft, segment: Segment, own: list[FootGroup]) -> FootGroup:
    """With several feet in one segment: the one before in a foot-first row, else the one that follows."""
    if len(own) == 1:
        return own[0]
    real = [g for g in own if not g.anaphor] or own
    first_fact = min(d.start for d in segment.drafts)
    if real[0].start < first_fact:
        before = [g for g in real if g.start < draft.start]
        return before[-1] if before else real[0]
    after = [g for g in real if g.start >= draft.start]
    return after[0] if after else real[-1]


def _earlier_group(sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]]) -> FootGroup | None:
    named = [s for s in sentence[:position] if groups[s.index]]
    if not named:
        return None
    both = _contrasted(named, groups)
    last = groups[named[-1].index][-1]
    return FootGroup(last.start, last.end, both) if both else last


def _from_list(
    sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]], hand: Feet | None, draft: Draft
) -> Feet | None:
    """Feet named after a list that this draft leads: "corn, bruise and flare on the left front"."""
    if _earlier_group(sentence, position, groups) is not None:
        return _foot_behind(sentence, position, groups)
    for later in sentence[position + 1 :]:
        if later.delimiter not in _LISTED_BY:
            return None
        found = groups[later.index]
        if not found:
            if later.own_clause and later.drafts and not _setup_only(later):
                return None
            continue
        foot_only = not [d for d in later.drafts if d.slot not in HORSE_SLOTS]
        if foot_only:
            return None if later.past or (later.own_clause and later.joined_by("and", ", and")) else found[0].feet
        if not _may_distribute(sentence[position], later, found, hand, draft):
            return None
        return _united(sentence, later, groups, draft)
    return None


def _foot_behind(sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]]) -> Feet | None:
    """ "Strong at the toe, left front, moderate at the toe, right front": each answer has its foot behind it."""
    following = sentence[position + 1] if position + 1 < len(sentence) else None
    if following is None or following.delimiter != "," or following.drafts or not groups[following.index]:
        return None
    first_draft = next((s.index for s in sentence if s.drafts), -1)
    first_foot = next(s.index for s in sentence if groups[s.index])
    return groups[following.index][0].feet if first_draft < first_foot else None


def _setup_only(segment: Segment) -> bool:
    return bool(segment.drafts) and all(d.slot in SETUP_SLOTS for d in segment.drafts)


def _may_distribute(first: Segment, later: Segment, found: list[FootGroup], hand: Feet | None, draft: Draft) -> bool:
    trailing = min(d.start for d in later.drafts) < found[0].start
    if not trailing or found[0].anaphor:
        return False
    if draft.slot in SETUP_SLOTS and all(d.slot in SETUP_SLOTS for d in later.drafts):
        return not any(d.slot == "work" for d in later.drafts)
    if later.own_clause or (first.past or first.present):
        return False
    zoned = bool(first.having("zones"))
    if _leading_denial(first) and _leading_denial(later):
        return True
    if hand is not None:
        return later.joined_by("and") and not zoned and draft.slot == "finding"
    return not zoned or later.joined_by("and")


def _leading_denial(segment: Segment) -> bool:
    """ "No heat, no swelling in the other three feet": two denials in a row share the foot."""
    return any(m.get("denials") == "before" and m.start <= segment.start + 1 for m in segment.mentions)


def _united(sentence: list[Segment], later: Segment, groups: dict[int, list[FootGroup]], draft: Draft) -> Feet:
    """ "New shoes, size two in front, size one behind": a set-up word that leads reaches all feet named."""
    feet = list(groups[later.index][0].feet)
    slots = {d.slot for d in later.drafts}
    if draft.slot in SETUP_SLOTS and draft.slot not in slots:
        for segment in sentence[sentence.index(later) + 1 :]:
            if groups[segment.index] and {d.slot for d in segment.drafts} & slots:
                feet.extend(groups[segment.index][0].feet)
    return tuple(f for f in FEET if f in feet)
