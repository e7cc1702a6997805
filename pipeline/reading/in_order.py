"""Values said in an order: "toe angles 53 and 51, left and right front", "LF RF LH RH, sizes two, two, one, one".

Also the foot that a number leaves half said: "eight nails front, six back", "five inches left front, five the other".
"""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.bare_sides import PAIRS, SIDES
from pipeline.reading.body_numbers import likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.sayings import Sayings
from pipeline.reading.size_ranges import plain, size_name
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind, value_problem

IN_ORDER = "foot: in the order said"
_SLOTS = frozenset({*ANGLES, *LENGTHS, "shoe_size", "nails", "nail_size"})
_BETWEEN = frozenset({",", "and", "then"})
_AGAIN = Sayings("same order", "that order", "respectively", "in order")
_MM = {"inch": Fraction(254, 10), "mm": Fraction(1), "cm": Fraction(10)}
_BACK_WORDS = frozenset({"back", "hind", "rear"})
_SHORT = _BACK_WORDS | {"other"}
_CLOSING = (",", "and", "but", "", *SENTENCE_ENDS)
_TWO = 2


def mark_short_feet(talk: Talk) -> None:
    """Make a foot of "six back" behind a number of the fronts, and of "five the other one" behind a foot's."""
    taken = talk.claimed()
    for number in [m for m in talk.mentions if m.number is not None]:
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
        if name is not None and not taken & set(range(at, end)):
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
    for sentence, row in zip(sentences, rows, strict=True):
        order = order if sentence[0].horse == horse else ()
        horse = sentence[0].horse
        named = _order_of(talk, sentence)
        feet = named if len(named) == len(row) else order
        head = _head(sentence, row)
        if head is not None and len(feet) == len(row) and (feet is named or _again(talk, sentence)):
            for number, foot in zip(row, feet, strict=True):
                _add(sentence, row, number, head, foot)
        order = named or _told_one_by_one(sentence) or order


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
    """The longest run of numbers with nothing but commas and "and" between."""
    numbers = [m for s in sentence for m in s.mentions if m.number is not None and not m.dropped]
    runs: list[list[Mention]] = []
    for number in numbers:
        if runs and set(talk.words[runs[-1][-1].end : number.start]) <= _BETWEEN:
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
    behind = [m for m in heads if m.start == row[-1].end]
    found = (before or behind)[-1:]
    return found[0].get("measures") if found else None


def _add(sentence: list[Segment], row: list[Mention], mention: Mention, slot: str, foot: str) -> None:
    number = mention.number
    if number is None:
        return
    units = [m.get("units") for s in sentence for m in s.mentions if m.start == row[-1].end and m.get("units") in _MM]
    unit = _MM[str(units[0])] if units else likely_unit(slot, number)
    value: str | Fraction = number.value * (unit if slot in LENGTHS else 1)
    if slot in ("shoe_size", "nail_size"):
        value = size_name(number) if slot == "shoe_size" else plain(number.value)
    if value_problem(slot, value if isinstance(value, str) else float(value)):
        return
    segment = next(s for s in sentence if s.start <= mention.start < s.end)
    draft = Draft(slot, value, segment, mention.start, mention.end, mention.match)
    draft.feet = (foot,)
    draft.evidence.update(mention.literal)
    draft.note(IN_ORDER)
    segment.draft(draft)
    mention.dropped = True
