"""Values said in an order: "toe angles 53 and 51, left and right front", "LF RF LH RH, sizes two, two, one, one".

Things told in an order too: "a corn and a bruise, near fore and off fore respectively".
Also the foot that a number leaves half said: "eight nails front, six back", "five inches left front, five the other".
"""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.bare_sides import PAIRS, SIDES
from pipeline.reading.lengths import likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import ANGLES, LENGTHS, NO_ANGLE, may_be_a_toe
from pipeline.reading.sayings import Sayings
from pipeline.reading.size_ranges import plain, size_name
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind, value_problem

IN_ORDER = "foot: in the order said"
_SLOTS = frozenset({*ANGLES, *LENGTHS, "shoe_size", "nails", "nail_size"})
_BETWEEN = frozenset({",", "and", "then"})
_AGAIN = Sayings("same order", "that order", "respectively", "in order")
_COUNTED = frozenset({"nails", "shoe_size"})
_OF_A_FOOT, _LEAST_NAILS = _SLOTS - {"nail_size"}, 5
_SEVERAL = frozenset({*PAIRS, "all"})
_MM = {"inch": Fraction(254, 10), "mm": Fraction(1), "cm": Fraction(10)}
_BACK_WORDS = frozenset({"back", "hind", "rear"})
_SHORT = _BACK_WORDS | {"other"}
_CLOSING = (",", "and", "but", "", *SENTENCE_ENDS)
_MARKS = SENTENCE_ENDS | {",", "and"}
_LED_BY = _MARKS | {"are", "were", "in", "with"}
_TWO, _LINE = 2, 2  # sentences of one shoeing
_THINGS = frozenset({
    "finding", "shoe_state", "work", "shoe_type", "shoe_material", "pad", "packing", "clips", "traction", "treatment",
})  # fmt: skip
_UNITS = frozenset({"degrees", "millimetres", "mil", "mm", "inches", "inch", "cm", "centimetres"})
_SHOES, _BARE = frozenset({"work", "shoe_type", "shoe_material"}), frozenset({"trim", "removed"})
_BETWEEN_NUMBERS = _BETWEEN | _UNITS
_BETWEEN_NAILS = _BETWEEN_NUMBERS | {"nails"}
_OTHERS = frozenset({"other", "other_front", "other_hind"})
_ENDS = {"front": ("LF", "RF"), "fore": ("LF", "RF"), "fronts": ("LF", "RF"), "fores": ("LF", "RF")}
_ENDS |= {"hind": ("LH", "RH"), "hinds": ("LH", "RH"), "back": ("LH", "RH"), "backs": ("LH", "RH")}


def mark_short_feet(talk: Talk) -> None:
    """Make a foot of "six back" behind a number of the fronts, and of "five the other one" behind a foot's."""
    for number in [m for m in talk.mentions if m.number is not None] if talk.says(_SHORT) else ():
        unit = talk.mention_starting(number.end)
        at = unit.end if unit is not None and unit.get("units") in _MM else number.end
        if _SHORT.isdisjoint(talk.words[at : at + 2]):
            continue
        before = [m for m in talk.mentions if m.get("feet") and m.end <= number.start]
        foot = before[-1] if before and not SENTENCE_ENDS & set(talk.words[before[-1].end : number.start]) else None
        words = [*talk.words[at : at + 4], "", "", "", ""]
        name, end = None, at
        if words[0] in _BACK_WORDS and words[1] in _CLOSING and foot is not None and foot.get("feet") == "fronts":
            name, end = "hinds", at + 1
        elif words[:2] == ["the", "other"] and foot is not None and foot.get("feet") in FEET:
            one = words[2] in ("one", "foot", "side")
            name, end = ("other", at + 2 + one) if words[2 + one] in _CLOSING else (None, at)
        if name is not None and talk.claimed().isdisjoint(range(at, end)):
            talk.mentions.append(Mention(at, end, tuple(range(at, end)), {"feet": name}, MatchKind.VARIANT))
    talk.in_order()


def draft_in_order(talk: Talk) -> None:
    """A draft for each number of a row, on its own foot; the numbers are used up."""
    sentences = talk.sentences()
    rows = [_row(talk, sentence) for sentence in sentences]
    if max(map(len, rows), default=0) < _TWO:
        return
    order: Feet = ()
    horse = -1
    again = talk.tells(_AGAIN)  # else the feet of a row stand in its own sentence
    for sentence, row in zip(sentences, rows, strict=True):
        if not again and len(row) < _TWO:
            continue
        order = order if sentence[0].horse == horse else ()
        horse = sentence[0].horse
        named = _order_of(talk, sentence) or (_sides_in_turn(talk, sentence) if len(row) == _TWO else ())
        feet = named if len(named) == len(row) else order
        head = _head(sentence, row) or _likely_angle(talk, sentence, row)
        if head is not None and len(feet) == len(row) and (feet is named or _again(talk, sentence)):
            for number, foot in zip(row, feet, strict=True):
                _add(sentence, row, number, head, (foot,))
        elif len(row) >= _TWO and not named:
            _deal_ends(talk, sentence, row, head)
            _deal_pair(talk, sentence, row, head)
        order = named or _told_one_by_one(sentence) or _named_in_turn(sentence) or order


def _deal_ends(talk: Talk, sentence: list[Segment], row: list[Mention], head: str | None) -> None:
    """ "New shoes fronts and hinds, sizes two and one", "reset all round. Nails fives and fours.": each end its own.

    Which foot has which of "new in front, sizes two and one" is asked.
    """
    first, second = row[0].number, row[1].number
    if first is None or second is None or talk.words[row[0].end] != "and":
        return
    plural = first.plural and second.plural and abs(first.value - second.value) <= 1  # "twos and fives" may be nails
    sizes = head in (None, "shoe_size") and talk.words[row[0].start - 1] == "sizes"
    row, more = row[:_TWO], row[_TWO:]  # "sizes two and one, six nails each"
    nails = head == "nails" and not plural  # "fronts reset, hinds new, six and seven nails"
    if not (plural or sizes or nails) or any(talk.mention_starting(m.end) is None for m in more):
        return
    led, behind = talk.words[row[0].start - 1], talk.words[row[1].end : row[1].end + 1]
    ahead = talk.mention_ending(row[0].start)
    the = led == "the" and plural  # "kept the fives and sixes": of the shoes or of the nails?
    if not the and led not in _LED_BY and (ahead is None or "horse_cues" in ahead.readings):
        return
    if talk.mention_starting(row[1].end) is None and not _MARKS.issuperset(behind):  # "ones and twos in the box"
        return
    horse = [s for s in talk.segments if s.horse == sentence[0].horse and s.index < sentence[0].index]
    before = [s for s in horse if s.sentence >= sentence[0].sentence - _LINE]
    near = sentence if any(s.having("feet") for s in sentence) else [*before, *sentence]
    feet = [m for s in near for m in s.having("feet")]
    names = [n for m in feet for n in (_ends_said(talk, m) or str(m.get("feet")).split("+"))]
    done = {str(d.value) for s in [*before, *sentence] for d in s.drafts if d.slot in _SHOES}
    unnamed = not names and not any(s.having("feet") for s in horse)
    ends = ["fronts", "hinds"] if unnamed or names == ["all"] else names
    if not done or done & _BARE:
        return
    if nails and (sorted(names) != ["fronts", "hinds"] or min(first.value, second.value) < _LEAST_NAILS):
        return
    if the or sorted(ends) != ["fronts", "hinds"]:
        talk.unread.append((row[0].start, row[1].end, "two sizes, but not of which feet"))
        row[0].dropped = row[1].dropped = True
        return
    sized = any(s.having("measures", "shoe_size") for s in horse)
    of_nails = plural and not sizes and (head in ("nails", "nail_size") or (head is None and sized))
    slot = "nails" if nails else "nail_size" if of_nails else "shoe_size"
    for number, end in zip(row, ends, strict=True):
        _add(sentence, row, number, slot, _ENDS[end])


def _deal_pair(talk: Talk, sentence: list[Segment], row: list[Mention], head: str | None) -> None:
    """ "Fronts, six and seven nails", "toe angles in front 50 and 52": the left's and the right's; whose is asked.

    Four and three nails may be those of the two sides of one foot.
    """
    first, second = row[0].number, row[-1].number
    if first is None or second is None or row[0].dropped or len(row) != _TWO or head not in _OF_A_FOOT:
        return
    least = _LEAST_NAILS if head == "nails" else 0  # "an inch and a half" is one length
    if head in _COUNTED and "and" not in talk.words[row[0].end : row[1].start]:
        return  # "size five, six nails"
    if first.plural or second.plural or first.value == second.value or min(first.value, second.value) < least:
        return
    if head in LENGTHS and second.value < 1:
        return
    own = [m for s in sentence for m in s.having("feet")]
    told = [m for s in talk.segments if s.horse == sentence[0].horse for m in s.having("feet")]
    names = {str(m.get("feet")) for m in own or [m for m in told if m.end <= row[0].start][-1:]}
    if len(names) != 1 or not names <= _SEVERAL or talk.mention_starting(row[1].end) in own:
        return
    talk.unread.append((row[0].start, row[1].end, "a number for each foot, but not which is whose"))
    pair = PAIRS.get(names.pop())
    for number, side in zip(row, "LR", strict=True):
        number.dropped = True
        if pair is not None:
            _add(sentence, row, number, str(head), (side + pair,))


def _ends_said(talk: Talk, pair: Mention) -> list[str]:
    """ "Fronts and hinds", "back and front": the ends of all four feet in the order said."""
    words = talk.words[pair.start : pair.end]
    said = [words[0], words[-1]] if words[1:2] == ["and"] and words[0] in _ENDS and words[-1] in _ENDS else []
    return ["fronts" if "LF" in _ENDS[word] else "hinds" for word in said]


def deal_in_order(talk: Talk) -> None:
    """ "One lost, one loose, near fore and off fore in that order": to each foot its own, not all to both.

    A part that opens with "one" counts for a foot though nothing is told in it ("one perfectly all right").
    """
    for sentence in talk.sentences() if talk.tells(_AGAIN) else ():
        feet = _groups_of(talk, sentence) if _again(talk, sentence) else []
        every = {foot for one in feet for foot in one}
        dealt: list[list[Draft]] = []
        for segment in sentence:
            drafts = [d for d in segment.drafts if not d.dropped and d.slot in _THINGS and set(d.feet or ()) == every]
            if drafts or (talk.words[segment.start] == "one" and not segment.drafts):
                dealt.append(drafts)
        if len(dealt) != len(feet) or len(feet) < _TWO:
            continue
        for drafts, one in zip(dealt, feet, strict=True):
            for draft in drafts:
                draft.feet = one
                draft.note(IN_ORDER)


def _groups_of(talk: Talk, sentence: list[Segment]) -> list[Feet]:
    """The feet of a row one by one, or its pairs: "fronts and hinds respectively"."""
    for pair in [m for s in sentence for m in s.having("feet", "all")]:
        if ends := _ends_said(talk, pair):
            return [_ENDS[end] for end in ends]
    return [(foot,) for foot in _order_of(talk, sentence)]


def _sides_in_turn(talk: Talk, sentence: list[Segment]) -> Feet:
    """ "Heel height, both fores, 38. Toe length, near then off, 80 and 78": sides of the pair named before."""
    told = [m for m in talk.having("feet") if m.get("feet") in PAIRS]
    at = sentence[0].start
    for foot in [m for s in sentence for m in s.having("feet") if m.get("feet") in FEET]:
        other = talk.words[foot.end : foot.end + _TWO]
        side = SIDES.get(other[1]) if len(other) == _TWO and other[0] in _BETWEEN else None
        named, last = str(foot.get("feet")), foot.end + _TWO == sentence[-1].end
        if last and side is not None and side != named[0]:
            return (named, side + named[1])  # "left front then right"
    while at + _TWO < sentence[-1].end:
        first, joint, second = talk.words[at : at + _TWO + 1]
        sides = {SIDES.get(first), SIDES.get(second)} - {None}
        free = not any(m.get("feet") and not str(m.get("feet")).startswith("bare_") for m in talk.holding(at + _TWO))
        if len(sides) == _TWO and joint in _BETWEEN and free:
            near = [m for m in told if m.end <= at or m.start - at - _TWO in (1, 2, 3)]
            own = [m for m in near if sentence[0].start <= m.start < sentence[-1].end]
            pair = (own or near)[-1:]
            return tuple(SIDES[side] + PAIRS[str(pair[0].get("feet"))] for side in (first, second)) if pair else ()
        at += 1
    return ()


def _named_in_turn(sentence: list[Segment]) -> Feet:
    """ "A bar shoe on the near fore and a plain one on the other fore": the feet in the order of what they got."""
    told: list[str] = []
    for name in [str(m.get("feet")) for s in sentence if s.drafts for m in s.having("feet")]:
        if name in FEET and name not in told:
            told.append(name)
        elif name in _OTHERS and len(told) == 1:
            told.append(("R" if told[0][0] == "L" else "L") + told[0][1])
        elif name not in (*told, "in_hand"):
            return ()
    return tuple(told) if len(told) > 1 else ()


def _again(talk: Talk, sentence: list[Segment]) -> bool:
    """ "In the same order": whether the sentence says that its feet are those of before."""
    return any(_AGAIN.within(talk.words, sentence[0].start, sentence[-1].end))


def _order_of(talk: Talk, sentence: list[Segment]) -> Feet:
    """The feet of a row without numbers between: "LF RF LH RH", "left and right front", "left then right, fronts"."""
    feet = [m for s in sentence for m in s.having("feet")]
    for index, first in enumerate(feet):
        words = talk.words[first.start : first.end]
        sides = [SIDES[word] for word in words if word in SIDES]
        pair = PAIRS.get(str(first.get("feet")))
        if pair is not None and len(set(sides)) == _TWO:
            return tuple(side + pair for side in sides)
        joined = str(first.get("feet")).split("+")
        if len(joined) > 1 and all(name in FEET for name in joined):
            return tuple(joined)
        row = [first]
        for second in feet[index + 1 :]:
            if set(talk.words[row[-1].end : second.start]) <= _BETWEEN:
                row.append(second)
        names = [str(m.get("feet")) for m in row]
        if len(row) > 1 and all(name in FEET for name in names):
            return tuple(names)
        end = PAIRS.get(names[-1])
        if len(row) > _TWO and end is not None and all(name.startswith("bare_") for name in names[:-1]):
            return tuple(name[-1] + end for name in names[:-1])
    return ()


def _told_one_by_one(sentence: list[Segment]) -> Feet:
    """The feet of "toe length three left front, three and a half right front", in their order."""
    told = [str(m.get("feet")) for s in sentence for m in s.having("feet") if any(o.number for o in s.mentions)]
    told = list(dict.fromkeys(told))
    if len(told) == _TWO and told[0] in FEET and told[1].startswith("bare_"):
        told[1] = told[1][-1] + told[0][1]
    return tuple(told) if len(told) > 1 and all(name in FEET for name in told) else ()


def _row(talk: Talk, sentence: list[Segment]) -> list[Mention]:
    """The longest run of numbers with only commas and "and" between, also "six nails and seven respectively"."""
    numbers = [m for s in sentence for m in s.mentions if m.number is not None and not m.dropped]
    if len(numbers) < _TWO:
        return numbers
    runs: list[list[Mention]] = []
    again = talk.tells(_AGAIN) and _again(talk, sentence)
    for number in numbers:
        gap = set(talk.words[runs[-1][-1].end : number.start]) if runs else set()
        nails = again or ("and" in gap and number.number is not None and not number.number.plural)
        if runs and gap <= (_BETWEEN_NAILS if nails else _BETWEEN_NUMBERS):
            runs[-1].append(number)
        else:
            runs.append([number])
    return max(runs, key=len, default=[])


def _head(sentence: list[Segment], row: list[Mention]) -> str | None:
    """What a row counts: the measure word said last before it, or right behind it."""
    if len(row) < _TWO:
        return None
    heads = [m for s in sentence for m in s.mentions if m.get("measures") in _SLOTS]
    before = [m for m in heads if m.end <= row[0].start]
    behind = [m for m in heads if m.start in (row[-1].end, row[0].end)]
    if before and any(m.start == row[-1].end and m.get("measures") != before[-1].get("measures") for m in behind):
        return None  # "left front and right front new, size one, five nails": a number each of two things
    found = (before or behind)[-1:]
    return found[0].get("measures") if found else None


def _likely_angle(talk: Talk, sentence: list[Segment], row: list[Mention]) -> str | None:
    """ "Fronts, fifty and fifty two degrees": so many are likely their toes', which is asked."""
    unit = talk.mention_starting(row[-1].end) if len(row) > 1 else None
    degrees = unit is not None and unit.get("units") == "degree" and any(s.having("feet") for s in sentence)
    if not degrees or not all(m.number is not None and may_be_a_toe(m.number) for m in row):
        return None
    talk.unread.append((row[0].start, row[-1].end, NO_ANGLE))
    return "toe_angle"


def _add(sentence: list[Segment], row: list[Mention], mention: Mention, slot: str, feet: Feet) -> None:
    number = mention.number
    if number is None:
        return
    told = {m.start: _MM[str(m.get("units"))] for s in sentence for m in s.mentions if m.get("units") in _MM}
    unit = told.get(mention.end) or told.get(row[-1].end) or likely_unit(slot, number)
    value: str | Fraction = number.value * (unit if slot in LENGTHS else 1)
    if slot in ("shoe_size", "nail_size"):
        value = size_name(number) if slot == "shoe_size" else plain(number.value)
    if value_problem(slot, value if isinstance(value, str) else float(value)):
        return
    segment = next(s for s in sentence if s.start <= mention.start < s.end)
    draft = Draft(slot, value, segment, mention.start, mention.end, mention.match)
    draft.feet = feet
    draft.evidence.update(mention.literal)
    draft.note(IN_ORDER)
    segment.draft(draft)
    mention.dropped = True
