"""Which feet a name means: groups, bare sides ("the left"), lists of feet, and the foot in hand."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from pipeline.reading.foot_lists import foot_lists, told_by_itself
from pipeline.reading.mentions import Mention
from pipeline.reading.numbers import Number
from pipeline.reading.opening import sentence_start
from pipeline.reading.sayings import Sayings, said_whole
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Feet, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind
from pipeline.vocabulary import CLASS_SLOTS

_GROUPS: dict[str, Feet] = {
    **{foot: (foot,) for foot in FEET},
    "fronts": ("LF", "RF"),
    "hinds": ("LH", "RH"),
    "lefts": ("LF", "LH"),
    "rights": ("RF", "RH"),
    "all": FEET,
}
_PAIR = 2
_FROM_THE_OTHER_END = {"same_front": "F", "same_hind": "H", "cross_front": "F", "cross_hind": "H"}
_ENDS = frozenset({"fronts", "hinds"})
_OF_THE = frozenset({("of", "the"), ("of", "his"), ("of", "her"), ("of",), ("the",), ("his",), ("her",)})
_SIDES = {"L": "lefts", "R": "rights"}
_VERBS = frozenset({
    "is", "'s", "has", "had", "was", "got", "gets", "looks", "are", "were", "have", "does", "did", "needs", "gave",
    "gives", "took", "takes", "showed", "shows", "flinched", "stayed", "reacted", "answered",
})  # fmt: skip
EXCEPT = (
    ["but"], ["bar"], ["except"], ["except", "for"], ["apart", "from"], ["barring"], ["save"], ["excepting"],
    ["not", "counting"], ["other", "than"],
)  # fmt: skip
_BEFORE = frozenset({"before"})
_HAS_HAD = frozenset({"had", "'d", "was", "were", "been", "wore", "used"})
_PUT_ON = ("clips", "shoe_types", "shoe_materials", "pads", "packings", "traction", "work", "number")
_ALL_NEW = Sayings("all new")
_FEET = frozenset({"feet"})
_OWNS = frozenset({"'s", "his", "her", "the", "their"})
_EACH_OF = frozenset(
    {("all", "of"), ("each", "of"), ("any", "of"), ("every", "one", "of"), ("every", "single", "one", "of")}
)
_BOTH_ENDS = said_whole(*(f"{fore} and {hind}" for fore in ("front", "fore") for hind in ("hind", "back", "behind")))
_OF_A_SIDE = frozenset({",", "of", "shoes", "side", "feet", "both"})
_SIDES_ALONE = {"left": "lefts", "near": "lefts", "right": "rights", "off": "rights"}
_AND = (["in"], ["an"])
_TOLD_IN_FULL = frozenset({"both", "left", "right", "near", "off"})
_MERELY = frozenset({"just", "only", "a", "an", "simply", "bit", "of", "some", ":", "taken", "went", "back", "to"})
_TWO_OF = frozenset({"two"})


def mark_counted_feet(talk: Talk) -> None:
    """ "4 resets", "trimmed four", "trim on four", "all reset": the work says that feet are counted."""
    for pair in [*talk.having("feet", "fronts"), *talk.having("feet", "hinds")] if talk.says(_TWO_OF) else ():
        _size_before(talk, pair)
    if talk.says(_BEFORE):
        _before_and_behind(talk)
    _both_ends_of_a_side(talk)
    for work in talk.having("work"):
        for at in range(work.start, work.end - 1):
            if talk.words[at : at + 2] == ["all", "four"] and talk.mention_starting(at) is None:
                talk.mentions.append(Mention(at, at + 2, (at, at + 1), {"feet": "all"}, MatchKind.VARIANT))
        before, behind = talk.mention_ending(work.start), talk.mention_starting(work.end)
        if talk.words[work.end : work.end + 1] == ["on"]:
            behind = talk.mention_starting(work.end + 1)
        four = next((m for m in (before, behind) if m is not None and _is_four(talk, m)), None)
        if four is not None:
            four.number = None
            four.readings = {"feet": "all"}
            talk.changed()
        elif (talk.words[work.start - 1 : work.start] == ["all"] and work.start == 1) or (
            work.start > 1
            and talk.words[work.start - 1] == "all"
            and (talk.words[work.start - 2] == "." or talk.words[work.end : work.end + 1] in EXCEPT)
        ):
            at = work.start - 1
            talk.mentions.append(Mention(at, work.start, (at,), {"feet": "all"}, MatchKind.VARIANT))
    _all_new(talk)
    _all_of_its_feet(talk)
    talk.in_order()


def _before_and_behind(talk: Talk) -> None:
    """ "Quarter clips behind, toe clips before", "shod before and behind": before is in front, where behind is a foot.

    Not behind a verb of the past, "he'd had studs behind, and full pads before".
    """
    for hinds in [m for m in talk.having("feet", "hinds") if talk.words[m.start : m.end] == ["behind"]]:
        start = sentence_start(talk, hinds.start)
        stop = next_mark(talk, hinds.end, SENTENCE_ENDS)
        if _HAS_HAD.isdisjoint(talk.words[start:stop]):
            for at in [i for i in range(start, stop) if _in_front(talk, i, stop)]:
                talk.mentions.append(Mention(at, at + 1, (at,), {"feet": "fronts"}, MatchKind.VARIANT))


def _both_ends_of_a_side(talk: Talk) -> None:
    """ "The left side, front and hind", "front and back on the near side": two feet of one side, not all four."""
    for ends in talk.having("feet", "all"):
        if tuple(talk.words[ends.start : ends.end]) not in _BOTH_ENDS:
            continue
        at = ends.start
        while at > 0 and talk.words[at - 1] in _OF_A_SIDE:
            at -= 1
        told = talk.mention_ending(at)
        side = _SIDES_ALONE.get(talk.words[at - 1]) if at and "side" in talk.words[at : ends.start] else None
        if told is not None and told.get("feet") in ("lefts", "rights"):
            side = told.readings["feet"]
        behind = ends.end + (talk.words[ends.end : ends.end + 1] == [","])
        if talk.words[behind : behind + 2] == ["on", "the"]:
            side = side or _side_behind(talk, behind + 2)
        if side is not None:
            ends.readings["feet"] = side


def _side_behind(talk: Talk, at: int) -> str | None:
    """The side alone at the token, "… on the left", "… on the near side": no foot of its own, nor another's name."""
    bare = talk.mention_starting(at)
    if talk.words[at : at + 1] == [] or (bare is not None and not str(bare.get("feet")).startswith("bare")):
        return None
    if bare is not None:
        bare.dropped = True
    return _SIDES_ALONE.get(talk.words[at])


def _in_front(talk: Talk, at: int, stop: int) -> bool:
    """A "before" that closes what was said of one pair, and begins no time: "before that", "the visit before"."""
    if talk.words[at] != "before" or any(at in m.literal for m in talk.mentions):
        return False
    closed = at + 1 == stop or talk.words[at + 1] in (",", "and")
    told = talk.mention_ending(at)
    return closed and told is not None and told.is_any(_PUT_ON)


def _all_new(talk: Talk) -> None:
    """ "8s in front, 7s behind. All new.": of the fronts and the hinds that were just told of."""
    for at, _ in talk.turns(_ALL_NEW):
        if at < 1 or talk.words[at - 1] != "." or talk.mention_starting(at) is not None:
            continue
        start = sentence_start(talk, at - 1)
        feet = {m.get("feet") for m in talk.mentions if start <= m.start < at}
        if {"fronts", "hinds"} <= feet:
            talk.mentions.append(Mention(at, at + 1, (at,), {"feet": "all"}, MatchKind.VARIANT))


def _all_of_its_feet(talk: Talk) -> None:
    """ "Thrush in all of Tally's feet", "each of his feet": the horse is named in the midst of the four."""
    for at in [i for i in talk.where(_FEET) if i > _PAIR and talk.words[i - 1] in _OWNS]:
        name = talk.mention_ending(at - 1) if talk.words[at - 1] == "'s" else None
        start = name.start if name is not None and name.get("horse") else at - 1
        led = next((n for n in (_PAIR + 1, _PAIR) if tuple(talk.words[max(0, start - n) : start]) in _EACH_OF), 0)
        if led and (name is not None or talk.words[at - 1] != "'s") and talk.mention_starting(start - led) is None:
            span = tuple(i for i in range(start - led, at + 1) if name is None or not name.start <= i < name.end)
            talk.mentions.append(Mention(at, at + 1, span, {"feet": "all"}, MatchKind.VARIANT))


def _size_before(talk: Talk, pair: Mention) -> None:
    """ "Size two fronts, one hinds": the number is the size, not how many feet."""
    sized = talk.mention_ending(pair.start)
    if talk.words[pair.start] != "two" or sized is None or sized.get("measures") != "shoe_size":
        return
    at = pair.start
    pair.start, pair.literal = at + 1, tuple(i for i in pair.literal if i != at)
    two = Number(at, at + 1, Fraction(2))
    talk.mentions.append(Mention(at, at + 1, (at,), {"number": "2"}, MatchKind.VARIANT, two))


def _is_four(talk: Talk, mention: Mention) -> bool:
    number = mention.number
    if number is None or number.value != 4 or number.aughts is not None or number.plural or number.article:
        return False
    counted = talk.mention_starting(mention.end)
    return counted is None or not counted.is_any(("units", "measures", "totals", "feet"))


_ANSWERS = ("tester_responses", "pulses", "severities", "shoe_states")
_FINE = frozenset({"new", "clean", "clear", "fine", "grand", "good"})


def join_feet(talk: Talk) -> None:
    """ "Left front and right hind" is one group, unless the second foot starts a statement of its own."""
    for listed in foot_lists(talk):
        for first, second in pairwise(listed):
            _join(talk, first, second)
    _either_of(talk)
    feet = talk.having("feet")
    for first, second in pairwise(feet):
        between = talk.words[first.end : second.start]
        if (between == [","] and _listed_feet(talk, first, second)) or (
            between in _AND and _one_more(talk, first, second)
        ):
            _join(talk, first, second)
            continue
        if (
            between[:1] not in (["and"], ["or"], ["&"])
            or len(between) > 2
            or set(between[1:]) - {"the", "his", "her", "on", "in"}
        ):
            continue
        after = talk.words[second.end] if second.end < len(talk.words) else ""
        leading = not _told_before(talk, first)
        if not leading and (after in (_VERBS | {"i", "we"}) or _done_otherwise(talk, second)):
            continue
        if not leading and (_answered_behind(talk, first, second) or told_by_itself(talk, first, second)):
            continue
        _join(talk, first, second)


def _done_otherwise(talk: Talk, second: Mention) -> bool:
    """ "New shoe on the near hind and the rest just a trim": what is done or found there stands right behind it."""
    for at in range(second.end, len(talk.words)):
        told = talk.mention_starting(at)
        if told is not None and told.is_any(("work", "findings", "shoe_states")):
            return True
        if talk.words[at] not in _MERELY:
            return False
    return False


def _answered_behind(talk: Talk, first: Mention, second: Mention) -> bool:
    """ "Testers positive left front and right front negative": one before its foot, the other behind its own."""
    told = talk.mention_starting(second.end)
    stop = told.end if told is not None else second.end + 1
    if talk.words[stop : stop + 1] not in ([], ["."], [","], ["but"]):
        return False
    if not _FINE.isdisjoint(talk.words[second.end : second.end + 1]):
        return True
    before = _clause_before(talk, first)
    if told is not None and told.number is not None:
        return any(m.number is not None for m in before)
    return told is not None and any(told.get(name) and m.get(name) for m in before for name in _ANSWERS)


def _either_of(talk: Talk) -> None:
    """ "In either of the fores", "on both of his hinds": one name, not the pair in hand."""
    for first, second in pairwise(talk.having("feet", "pair_in_hand") and talk.having("feet")):
        led = talk.words[first.end - 1] in ("either", "both") and first.get("feet") == "pair_in_hand"
        if led and tuple(talk.words[first.end : second.start]) in _OF_THE and second.get("feet") in _ENDS:
            second.start, second.literal = first.start, tuple(range(first.start, second.end))
            first.dropped = True
            talk.changed()


def _told_before(talk: Talk, foot: Mention) -> bool:
    """ "Cast the near hind and the off hind was loose", "size one on the near fore and the off fore's the bigger".

    Whether a word of the trade stands before the first foot in its clause, so that the second opens another.
    """
    return any(m.is_any(CLASS_SLOTS) or m.number for m in _clause_before(talk, foot))


def _clause_before(talk: Talk, foot: Mention) -> list[Mention]:
    start = foot.start
    while start and talk.words[start - 1] not in (",", *SENTENCE_ENDS):
        start -= 1
    return [m for m in talk.mentions if start <= m.start < foot.start]


def _join(talk: Talk, first: Mention, second: Mention) -> None:
    second.readings["feet"] = f"{first.readings['feet']}+{second.readings['feet']}"
    second.start, second.literal = first.start, tuple(range(first.start, second.end))
    first.dropped = True
    talk.changed()


def _listed_feet(talk: Talk, first: Mention, second: Mention) -> bool:
    """ "Thrush in three of them, left front, left hind, right hind": feet with nothing but commas between."""
    after = talk.words[second.end] if second.end < len(talk.words) else "."
    alone = first.start > 0 and talk.words[first.start - 1] == ","
    return alone and after in (",", ".", "and", "or")


def _one_more(talk: Talk, first: Mention, second: Mention) -> bool:
    """ "Off hind in both fores reset": no foot is in another, so it was an "and" that was said short."""
    one, other = (_GROUPS.get(m.readings["feet"], ()) for m in (first, second))
    told = talk.words[second.start] in _TOLD_IN_FULL and len(second.literal) >= _PAIR
    return told and bool(one) and bool(other) and set(one).isdisjoint(other)


def resolve(name: str, hand: Feet | None) -> Feet | None:
    """The feet that a canonical foot name stands for, given the feet in hand; None when nothing can be pointed at."""
    if "-" in name:
        whole, out = (resolve(part, hand) or () for part in name.split("-", 1))
        return tuple(foot for foot in whole if foot not in out) or None
    if "+" in name:
        return _resolve_joined(name, hand)
    if name in _GROUPS:
        return _GROUPS[name]
    if name.startswith("bare_"):
        pair = _pair_of(hand)
        if pair:
            return (name[-1] + pair,)
        return _whole_side(name[-1], hand)  # front or hind was never said: no foot is better than a guess
    if name.startswith("whole_"):
        return _whole_side(name[-1], hand)
    if name in ("other_front", "other_hind"):
        pair = "F" if name == "other_front" else "H"
        rest = tuple(f for f in (f"L{pair}", f"R{pair}") if f not in (hand or ()))
        return rest if len(rest) == 1 else None
    if hand is None:
        return None
    if name == "in_hand":
        return hand
    if name in ("those_three", "shod_three"):
        return hand if len(hand) > 1 else tuple(foot for foot in FEET if foot not in hand)
    if name == "pair_in_hand":
        pair = _pair_of(hand)
        return (f"L{pair}", f"R{pair}") if pair else hand
    if name == "other":
        return (_across(hand[0]),) if len(hand) == 1 else None
    if name in _FROM_THE_OTHER_END:
        return _from_the_other_end(name, hand)
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


def _whole_side(side: str, hand: Feet | None) -> Feet | None:
    """ "Thrush in both near feet, none on the off side": beside a whole side the other side is whole too."""
    return _GROUPS[_SIDES[side]] if hand in (_GROUPS["lefts"], _GROUPS["rights"]) else None


def _from_the_other_end(name: str, hand: Feet) -> Feet | None:
    """ "The one behind it", "the diagonal hind": told from one foot of the other end, else none can be meant."""
    end = _FROM_THE_OTHER_END[name]
    if len(hand) != 1 or hand[0][1] == end:
        return None
    foot = hand[0] if name.startswith("same") else _across(hand[0])
    return (foot[0] + end,)


def _across(foot: str) -> str:
    return ("R" if foot[0] == "L" else "L") + foot[1]
