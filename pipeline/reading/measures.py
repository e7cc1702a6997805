"""What each number counts: sizes, nails, angles, lengths, grades, scores and degrees of wedge.

Every number is tried against the rules in order; what no rule takes stays unread and is flagged if a count or size
word stands beside it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from fractions import Fraction

from pipeline.reading.days_ago import counted_from
from pipeline.reading.fitted_hot import OUT_THERE
from pipeline.reading.lengths import MM_PER_UNIT, likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.moved_numbers import MovedNumbers, counted_value
from pipeline.reading.nail_numbers import FEWEST, MOST, NailNumbers
from pipeline.reading.number_context import ANGLES, LENGTHS, SCORES, Frame
from pipeline.reading.numbers import Number
from pipeline.reading.other_counts import counts_other_things
from pipeline.reading.shoe_numbers import ShoeNumbers
from pipeline.reading.shoeing_line import feet_meant, feet_of, line_before, told_of
from pipeline.reading.talk import Segment
from pipeline.reading.times import coming_back
from pipeline.reading.worn_numbers import WornNumbers
from pipeline.record import HORSE_SLOTS, Status

# Before a bare number these say what the thing counted last came to.
_MOVED_FROM = frozenset({"up", "down", "dropped", "improved", "risen", "eased", "crept", "slid", "nails"})
_SAID = frozenset({
    "was", "is", "'s", "at", "to", "a", "an", "so", "say", "said", "wrote", "reads", "read", "got", "gets", "took",
    "takes", "held", "holds", "needed",
})  # fmt: skip


_IN_UNITS = {slot: MM_PER_UNIT if slot in LENGTHS else {"degree": Fraction(1)} for slot in (*LENGTHS, *ANGLES)}
_OF_THE_BODY = ("body_condition", "cresty_neck")
_FEWEST_NAILS = 2  # fewer hold no shoe
_MOST_NAILS = 10
_USED = frozenset({"used", "had", "took", "was", "were", "put", "drove", "got", "ran"})
_WAS_SO = re.compile(
    r"(where |(,|and|but) (?!it was))((he|she|it|they|there|we|i) )?(was|were|had|'d|used to (be|have))( had| on)?$"
)
_SO = frozenset({"was", "were", "had", "'d", "be", "have", "on"})  # the last words of these
_SIDED = frozenset({"on", "up", "down", "to", "in"})
_Rule = Callable[[Segment, Mention, Number], bool]
_AGAIN = 2
_OF_ELSE = frozenset(
    {"year", "years", "horses", "head", "miles", "minutes", "dollars", "euro", "euros", "quid", "pounds", "people"}
)
_IT_IS = frozenset((*led, it, be) for led in ((), ("and",), ("but",)) for it in ("it", "that") for be in ("'s", "is"))
_MORE = frozenset({"more", "small", "little", "big"})
_AT_IT = frozenset({"on", "in", "the"})
_PART = 8  # tokens from one part of the nails to the other
_SKIPPED = 3  # segments between a foot and the number that was looked up meanwhile


class MeasureReader(NailNumbers, ShoeNumbers, MovedNumbers, WornNumbers):
    """Reads the numbers of one memo."""

    def read(self) -> None:
        """Add a draft for every number that counts something."""
        rules: tuple[_Rule, ...] = (
            self._in_turn,
            self._moved,
            self._more_or_less,
            self._was_before,
            self._part_of_the_nails,
            self._grade_out_of,
            self._wedge_or_angle,
            self._length,
            self._one_a_foot,
            self._nail_size,
            self._nails,
            self._nails_left,
            self._score,
            self._graded_since,
            self._as_well,
            self._size,
            self._worn_size,
            self._elliptic,
        )
        horse = -1
        for segment in self._talk.segments:
            if segment.horse != horse:
                headed = self._frame is not None and self._frame.heading and self._frame.sentence == segment.sentence
                self._frame, horse = self._frame if headed else None, segment.horse
            for mention in list(segment.mentions):
                if "measures" in mention.readings:
                    self._open_frame(segment, mention)
                number = mention.number
                if number is None or mention.dropped or mention.start in self._used:
                    continue
                if self._is_time(mention) or self._long_ago(mention):
                    continue
                self._count(rules, segment, mention, number)
            if len(segment.drafts) > 1:
                segment.drafts.sort(key=lambda d: (d.start, d.end))
        self._count_the_other()

    def _count(self, rules: Iterable[_Rule], segment: Segment, mention: Mention, number: Number) -> None:
        """Give the number to the first rule that takes it."""
        for rule in rules:
            if rule(segment, mention, number):
                self._of_before(segment, mention)
                return
        self._leave(segment, mention)

    def _in_turn(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Near fore, toe angle fifty, heel angle forty. Off fore, fifty two and forty one.": in their order."""
        frame = self._frame
        if frame is None or frame.slot not in _IN_UNITS or not 0 <= segment.sentence - frame.sentence <= 1:
            return False
        told = [d for s in self._talk.sentence(segment.sentence - 1) for d in s.drafts if d.slot in _IN_UNITS]
        said = [m for s in self._sentence(segment) for m in s.mentions if not m.dropped]
        numbers, feet = [m for m in said if m.number], [m for m in said if m.get("feet")]
        again = len(told) == len(numbers) == len({d.slot for d in told}) > 1 and len(feet) == 1
        plain = all(m.number or m.readings.keys() <= {"feet", "units", "fillers"} for m in said)
        if not (again and plain) or feet[0].start > numbers[0].start:
            return False
        unit = self._unit(mention)[0]
        of_unit = [d.slot for d in told if unit in _IN_UNITS[d.slot]]
        slot = of_unit[0] if len(of_unit) == 1 else told[numbers.index(mention)].slot
        if unit not in (None, *_IN_UNITS[slot]):
            return False
        mm = _IN_UNITS[slot][unit] if unit else likely_unit(slot, number)
        self._set_frame(slot, segment, mm)
        return self._add(segment, slot, number.value * mm, mention)

    def _said_to_be(self, mention: Mention) -> bool:
        """ "I'd say five", "call it five"."""
        called = self._words[mention.start - 2 : mention.start] in (["call", "it"], ["make", "it"], ["say", "it"])
        return called or self._words[mention.start - 1] in _SAID

    def _elliptic(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """A bare number beside a foot counts what the last one counted."""
        frame = self._frame = self._named_since(segment, mention) or self._frame
        again = {"too", "also", "well"} & set(self._words[mention.start : segment.end])
        if frame is None or _drove(frame.slot, mention) or segment.sentence - frame.sentence > (_AGAIN if again else 1):
            return False  # "six nails … Off fore was loose so I reset it, seven in that as well"
        if coming_back(self._talk, mention) or (self._words[mention.start - 1] == "grade" and frame.slot not in SCORES):
            return False  # "six nails. He was a grade two on the right front"
        if (frame.slot in HORSE_SLOTS and segment.having("feet")) or self._weeks_told(segment, frame):
            return False  # "rotation, six degrees on the left and four on the right" is no grade
        if self._of_another_thing(frame, mention, number):
            return False
        after = self._after(mention, _MORE)  # "two more corns"
        risen = self._risen(mention)
        said = risen or self._said_to_be(mention)
        there = self._words[mention.end : mention.end + 1] == ["there"]
        now = (said or there) and frame.sentence == segment.sentence
        blocked = self._counts_otherwise(segment, mention, number, after)
        score = frame.slot in SCORES and (
            number.article or said or bool(segment.having("times", "history") or segment.having("times", "today"))
        )
        repeated = mention.stands_for is not None or self._words[mention.start - 1] in ("also", "too")
        name = self._talk.mention_ending(mention.start)
        dealt = frame.heading and frame.slot in SCORES and name is not None and name.get("horse") is not None
        if not blocked and dealt:  # "condition, Mulga six, Drover four"
            return self._add(segment, frame.slot, number.value, mention)
        now = now or self._timed(segment, mention) or self._before_foot(segment, mention)
        now = now or self._under_size(segment, mention, frame)
        if blocked or not (segment.having("feet") or score or repeated or now or self._behind_foot(segment)):
            return False
        if frame.slot == "shoe_size" and self._nailed_next(segment, mention, number):
            frame.slot = "nails"
        value = counted_value(frame.slot, number, frame.unit)
        if frame.slot in ANGLES and not 30 <= number.value <= 75:
            return False
        frame.sentence = segment.sentence
        added = self._add(segment, frame.slot, value, mention) or self._other_score(segment, mention, number)
        if added:
            segment.drafts[-1].note("elliptic")
            segment.drafts[-1].status = Status.HISTORY if risen else Status.PRESENT
        return added

    def _of_another_thing(self, frame: Frame, mention: Mention, number: Number) -> bool:
        """ "The toe was eighty-five and the heel was forty-two"; "two out of five. I'd two hours in traffic"."""
        part = self._before(mention) if frame.slot == "toe_length" else None
        other = frame.slot in SCORES and counts_other_things(self._talk, mention, number)
        return other or (part is not None and part.get("zones") == "heel")

    def _counts_otherwise(self, segment: Segment, mention: Mention, number: Number, after: Mention | None) -> bool:
        """Whether what stands behind the number, or what was told of its feet before, says that it counts anew."""
        counted = after is not None and after.is_any(("measures", "units", "findings", "work", "pads"))
        counted = counted or not _OF_ELSE.isdisjoint(self._words[mention.end : mention.end + 1])
        counted = counted or not OUT_THERE.isdisjoint(self._words[mention.end + 2 : mention.end + 3])
        return counted or self._wedged_already(segment, mention, number)

    def _wedged_already(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Two degree wedges. A two in front, a one behind.": the degrees of these feet were told, so it is a size."""
        frame = self._frame
        if frame is None or frame.slot != "wedge" or mention.stands_for is not None:
            return False
        sized = number.article or number.plural or bool(number.aughts) or frame.sentence < segment.sentence
        if not sized:
            return False
        line = line_before(self._talk, segment)
        return feet_meant(segment, line) <= feet_of(told_of(segment, line, mention.start, "wedge"))

    def _nailed_next(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Size five in front and four behind, seven in front, six behind": both ends sized, the rest are nails."""
        plain = number.value.denominator == 1 and not (number.plural or number.article or number.aughts)
        if not plain or mention.stands_for is not None or not FEWEST <= number.value <= MOST:
            return False
        near = [s for s in self._talk.segments if 0 <= segment.sentence - s.sentence <= 1 and s.horse == segment.horse]
        told = [d for s in near for d in s.drafts if d.start < mention.start]
        sized = {m.readings["feet"] for d in told if d.slot == "shoe_size" for m in d.segment.having("feet")}
        feet = {m.readings["feet"] for m in segment.having("feet")}
        return len(sized) > 1 and bool(feet) and feet <= sized and not any(d.slot == "nails" for d in told)

    def _named_since(self, segment: Segment, mention: Mention) -> Frame | None:
        """ "Body condition five, crest nothing much, make it a two": the score named last, which had no number yet."""
        if self._frame is None or self._frame.slot not in ("body_condition", "cresty_neck"):
            return None
        heads = [m for s in self._sentence(segment) for m in s.having("measures") if m.end <= mention.start]
        last = heads[-1].get("measures") if heads else None
        other = last in ("body_condition", "cresty_neck") and last != self._frame.slot
        return Frame(str(last), None, segment.sentence) if other else None

    def _was_before(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Size two, up from a one and a half": no size of today, whatever the rules for sizes make of it."""
        told = self._frame is not None and self._frame.sentence == segment.sentence
        if not told or not self._risen(mention) or self._unit(mention)[0] in ("inch", "cm", "mm"):
            return False  # "up from half an inch" has its own
        return self._elliptic(segment, mention, number)

    def _of_before(self, segment: Segment, mention: Mention) -> None:
        """ "54 degrees, up from 51 degrees", "up from three inches": with its unit too it is what it was before."""
        own = [
            d
            for d in segment.drafts
            if d.start == mention.start and d.slot in (*ANGLES, *LENGTHS, "nails", "shoe_size")
        ]
        for draft in own if len(own) == 1 and self._risen(mention) else ():  # "up from 48 to 51" tells both
            draft.status = Status.HISTORY

    def _weeks_told(self, segment: Segment, frame: Frame) -> bool:
        """ "Condition seven. They asked for eight weeks and I said six"; not "he was an eight in May"."""
        told = frame.slot in _OF_THE_BODY and frame.sentence != segment.sentence
        if not told or segment.having("times", "history"):
            return False
        return any(m.get("units") == "week" for s in self._sentence(segment) for m in s.mentions)

    def _risen(self, mention: Mention) -> bool:
        """ "51, up from 48", "condition five, down from a seven": what it was before."""
        at = mention.start - 1
        at -= self._words[at] in ("a", "an", "the")
        if at < 1 or self._words[at] != "from":
            return self._was_so(mention, at + 1)
        told = self._talk.mention_ending(at)  # "down to a five from a seven"
        feet = [m for m in self._talk.having("feet") if m.end == at]
        if feet and self._frame is not None and self._frame.slot == "lameness":
            at = feet[0].start - 1 - (self._words[feet[0].start - 1] == "the")
            graded = self._talk.mention_ending(at)  # "down to one out of five on the near fore from three"
            return self._words[at] in ("on", "in") and graded is not None and graded.start in self._used
        return self._words[at - 1] in _MOVED_FROM or (told is not None and told.start in self._used)

    def _was_so(self, mention: Mention, end: int) -> bool:
        """ "Five nails now, was six", "six where it had eight": what was counted, beside today's."""
        if self._words[end - 1] not in _SO or self._frame is None or mention.stands_for:
            return False
        led = _WAS_SO.search(" ".join(self._words[max(0, end - 6) : end]))
        if led is None or not self._frame.slot.endswith(("nails", "size")):
            return False
        segment = self._talk.segment_at(mention.start)
        opened = self._talk.sentence(segment.sentence)[0].start if segment is not None else end
        if not any(m.start in self._used for m in self._talk.starting_in(opened, end)):
            return False  # "off fore, he had seven nails": today's, of a foot that had none counted
        return not any(m.get("feet") for m in self._talk.starting_in(mention.end, mention.end + 4))

    def _other_score(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Condition seven, crest a three. He was an eight in May": too much for the one, so it is the other."""
        frame = self._frame
        if frame is None or frame.slot != "cresty_neck":
            return False
        near = [s for s in self._talk.segments[: segment.index] if s.sentence >= segment.sentence - 1]
        told = any(d.slot == "body_condition" for s in near if s.horse == segment.horse for d in s.drafts)
        return told and self._add(segment, "body_condition", number.value, mention)

    def _part_of_the_nails(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Seven nails, four on the good side and three on the bad": two parts that make up the count just said."""
        if _SIDED.isdisjoint(self._words[mention.end : mention.end + 1]) or number.out_of is not None:
            return False
        drafts = [d for s in self._sentence(segment) for d in s.drafts if d.end <= mention.start]
        if not drafts or drafts[-1].slot != "nails":
            return False
        other = next(
            (m for m in self._talk.starting_in(mention.end, mention.end + _PART) if m.number and not m.dropped), None
        )
        sided = "side" in self._words[mention.end : mention.end + _PART]
        if other is None or other.number is None or not sided:
            return False
        if number.value + other.number.value != drafts[-1].value:
            return False
        self._used.add(other.start)
        return True

    def _timed(self, segment: Segment, mention: Mention) -> bool:
        """ "Toe length was ninety four last time, eighty nine today": the same thing measured at another time."""
        frame = self._frame
        if frame is not None and frame.slot == "nails" and self._nails_then(segment, mention):
            return True
        if frame is None or frame.slot not in (*ANGLES, *LENGTHS, "nails"):
            return False
        if frame.sentence != segment.sentence and not self._it_is_now(segment, mention, frame):
            return False
        told = ("history",) if frame.slot == "nails" else ("today", "history", "recent")
        times = [m for m in segment.mentions if m.get("times") in told]
        return any(counted_from(self._talk, m, mention.end) == mention.end or m.end == mention.start for m in times)

    def _it_is_now(self, segment: Segment, mention: Mention, frame: Frame) -> bool:
        """ "Last time the heel angle was 42. It's 45 today": what was measured before, in the sentence behind it."""
        led = tuple(self._words[segment.start : mention.start])
        return led in _IT_IS and segment.sentence - frame.sentence == 1 and segment.joined_by("start")

    def _nails_then(self, segment: Segment, mention: Mention) -> bool:
        """ "Six nails in each. Last time I used eight", "he had eight last time": the nails of an earlier time."""
        number = mention.number
        few = number is not None and not number.plural and number.value <= _MOST_NAILS
        return few and bool(segment.having("times", "history")) and self._words[mention.start - 1] in _USED

    def _under_size(self, segment: Segment, mention: Mention, frame: Frame) -> bool:
        """ "Nail size, fives": the number alone behind the comma of its heading."""
        alone = (mention.start, mention.end) == (segment.start, segment.end) and frame.heading
        head = self._talk.mention_ending(segment.start - 1)
        return (
            alone
            and frame.slot in ("nail_size", "shoe_size")
            and head is not None
            and head.get("measures") == frame.slot
        )

    def _behind_foot(self, segment: Segment) -> bool:
        """Whether a foot stands alone before: "right front, three and three eighths", "off fore, where is it, 84"."""
        for before in reversed(self._talk.segments[max(0, segment.index - _SKIPPED) : segment.index]):
            told = before.drafts or any(m.number for m in before.mentions)
            if before.sentence != segment.sentence or told:
                return False
            if before.having("feet"):
                return True
        return False

    def _before_foot(self, segment: Segment, mention: Mention) -> bool:
        """ "Heel angle forty five, left front. Forty seven, right front.": the number and the foot, each alone."""
        behind = self._talk.segments[segment.index + 1 : segment.index + 2]
        alone = (mention.start, mention.end) == (segment.start, segment.end) and segment.joined_by("start")
        if not alone or not behind or behind[0].delimiter != "," or behind[0].sentence != segment.sentence:
            return False
        named = {i for m in behind[0].having("feet") for i in range(m.start, m.end)}
        return (
            bool(named) and {self._words[i] for i in range(behind[0].start, behind[0].end) if i not in named} <= _AT_IT
        )


def _drove(slot: str, mention: Mention) -> bool:
    """ "He jumped when I drove one in the off hind": so few nails hold no shoe."""
    number = mention.number
    return slot == "nails" and mention.stands_for is None and number is not None and number.value < _FEWEST_NAILS
