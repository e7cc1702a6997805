"""What a measure went from and what it went to: "condition down from a seven to a five".

Also what is counted from the foot before: "eight nails in the near hind, one fewer in the off".
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from pipeline.reading.body_numbers import BodyNumbers
from pipeline.reading.lengths import MM_PER_UNIT, likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import ANGLES, CHANGING, LENGTHS, SCORES
from pipeline.reading.numbers import Number
from pipeline.reading.size_ranges import plain, size_name
from pipeline.reading.talk import Segment
from pipeline.record import SHOE_SIZES, Status

GRADED_SINCE = "graded since"
_GRADED = frozenset({"lameness", "obel"})
_TO_A_SCALE, _WORST = 4, 5
_SCALE_ENDS = frozenset({"to", "of"})
_HORSE = frozenset({"he", "she", "that"})
_BEING = frozenset({"is", "'s"})
_DOWN_TO = (
    ["down", "to"], ["up", "to"], ["back", "to"], ["still", "at"], ["give", "him"], ["give", "her"], ["call", "him"],
    ["call", "her"], ["going", "with"],
)  # fmt: skip
_OF_SHOES = ("work", "shoe_types", "shoe_materials", "pads", "clips")
AS_IT_WAS, AS_IT_IS = "what it went from", "what it went to"
_MOVING = CHANGING | {
    "down", "up", "back", "drop", "going", "go", "coming", "moving", "grown", "grew", "brought", "taken", "took",
    "shortened", "lowered", "raised", "stepped", "lost", "gained", "put",
}  # fmt: skip
_TAKING = frozenset({"took", "take", "taken", "taking", "rasped", "cut", "nipped", "brought", "dressed", "got"})
_SMALL = frozenset({"a", "an", "the", "condition", "score", "size", "grade", "number", "about", "around"})
_ON_TO = _SMALL | {"to", "down", "up", "back", "and", "in", "at", "on", ",", "it", "'s", "is", "now"}
_ON = frozenset({"down", "up", "back"})
_LEAD = 6  # tokens from the word for the change to "from"
_SIZES_BACK = 4  # tokens from "up" to its "half a size"
_STEEPEST = 10  # degrees of a wedge; common practice, no source
_REACH = 9  # tokens from the one number to the other
_SHOD = ("work", "shoe_types", "shoe_materials")
_MORE_OR_LESS = {"fewer": -1, "less": -1, "more": 1, "extra": 1}
_COUNTED_FROM = frozenset({"nails", *ANGLES, *LENGTHS})
_COUNTED_IN = frozenset({*MM_PER_UNIT, "degree", "nails"})
_GOES_ON: tuple[list[str], ...] = (
    ["in"], ["on"], ["for"], ["than"], ["there"], ["at"], [","], ["and"], ["but"], ["."],
    [],
)  # fmt: skip
_MEASURED = frozenset({*ANGLES, *LENGTHS, *SCORES, "shoe_size", "nail_size", "nails"})


class MovedNumbers(BodyNumbers):
    """The rule for both numbers of a change: the first is of an earlier time."""

    def _moved(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Toe angle went from 48 to 51", "down from a seven to a five": of then and of now."""
        reached = self._moved_to(mention, number) if self._led_by_from(segment, mention) else None
        if reached is None:
            return False
        behind, now = reached
        slot = self._slot_moved(segment, mention)
        if slot is None or (slot in ANGLES and not all(30 <= n.value <= 75 for n in (number, now))):
            return False
        unit = next((MM_PER_UNIT[u] for m in (mention, behind) if (u := self._unit(m)[0]) in MM_PER_UNIT), None)
        if not self._add(segment, slot, counted_value(slot, number, unit), mention):
            return False
        segment.drafts[-1].status = Status.HISTORY
        segment.drafts[-1].note(AS_IT_WAS)
        self._set_frame(slot, segment, unit or likely_unit(slot, now))
        own = MM_PER_UNIT.get(str(self._unit(behind)[0]))
        if own is not None and now.fraction and self._behind_inch(behind):
            now = replace(now, value=now.value + 1)  # "from two inches to an inch and three quarters"
        if not self._add(segment, slot, counted_value(slot, now, own or unit), behind):
            return True
        segment.drafts[-1].status = Status.PRESENT
        if slot == "wedge":
            self._add(segment, "pad", "wedge", behind)
        if any(m.get("times") == "history" for m in self._talk.starting_in(mention.end, behind.start)):
            segment.drafts[-1].note(AS_IT_IS)  # "from a seven in the spring to a five"
        return True

    def _on_a_scale(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "On a scale to five, he's a two on the near hind": how lame he is, of which the grade follows."""
        led = self._words[max(0, mention.start - _TO_A_SCALE) : mention.start]
        crest = any(m.get("measures") == "cresty_neck" for s in self._sentence(segment) for m in s.mentions)
        if "scale" not in led or led[-1] not in _SCALE_ENDS or number.value != _WORST or crest:
            return False
        self._set_frame("lameness", segment)
        self._used.add(mention.start)
        return True

    def _graded_since(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Three out of five on Monday. Today she's down to a one on it", "Obel three. Well, she's a two"."""
        if self._on_a_scale(segment, mention, number):
            return True
        frame, at = self._frame, mention.start - 1
        if frame is None or frame.slot not in _GRADED or not number.article or segment.sentence - frame.sentence > 1:
            return False
        name = self._talk.mention_ending(at - 1)
        named = self._words[at - 2] in _HORSE or (name is not None and name.get("horse") is not None)
        being = named and self._words[at - 1] in _BEING
        if not (being or self._words[at - 2 : at] in _DOWN_TO) or not self._closes_grade(mention):
            return False
        if any(
            m.is_any(_OF_SHOES) or m.get("measures") == "shoe_size" for s in self._sentence(segment) for m in s.mentions
        ):
            return False
        if self._words[at - 1] == "with":
            self._settle(segment, frame.slot)
        if not self._add(segment, frame.slot, number.value, mention):
            return False
        segment.drafts[-1].rules += [GRADED_SINCE] if segment.having("feet") else [GRADED_SINCE, "elliptic"]
        frame.sentence = segment.sentence
        return True

    def _settle(self, segment: Segment, slot: str) -> None:
        """ "Between a two and a three out of five. I'm going with a three": no plan."""
        for plan in segment.having("plans"):
            plan.readings.pop("plans")
        for last in [d for s in self._talk.segments[: segment.index + 1] for d in s.drafts if d.slot == slot][-1:]:
            last.drop("settled otherwise")

    def _closes_grade(self, mention: Mention) -> bool:
        """Whether a foot or the end of the statement is behind the grade: "a two on the near hind", "a one today"."""
        behind = self._words[mention.end : mention.end + 1]
        foot = any(m.get("feet") for m in self._talk.starting_in(mention.end, mention.end + 3))
        time = self._talk.mention_starting(mention.end)
        timed = time is not None and time.get("times") is not None
        return foot or timed or behind in ([","], ["."], ["and"], ["but"], [])

    def _more_or_less(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Eight nails in the near hind, one fewer in the off", "the off is two less than that"."""
        frame, told = self._frame, self._talk.mention_starting(mention.end)
        unit = told.get("units") or told.get("measures") if told is not None else None
        at = told.end if told is not None and unit in _COUNTED_IN else mention.end
        if unit is not None and self._only_the_change(segment, mention, at):
            return True
        sign = _MORE_OR_LESS.get(self._words[at]) if at < len(self._words) else None
        if sign is not None and unit == "degree" and frame is not None and frame.slot in LENGTHS:
            before = [d.slot for s in self._talk.segments if s.horse == segment.horse for d in s.drafts]
            angle = next((slot for slot in reversed(before) if slot in ANGLES), frame.slot)
            self._set_frame(angle, segment)  # "two degrees less in January"
            self._used.add(mention.start)
            return True
        if sign is None or frame is None or frame.slot not in _COUNTED_FROM or segment.sentence - frame.sentence > 1:
            return False
        behind = at + 1 + (self._words[at + 1 : at + 2] in (["nail"], ["nails"]))
        if self._words[behind : behind + 1] not in _GOES_ON or segment.having("findings"):
            return False
        own = [d for s in self._talk.segments[: segment.index + 1] if s.horse == segment.horse for d in s.drafts]
        last = next((d for d in reversed(own) if d.slot == frame.slot), None)
        if last is None or isinstance(last.value, str):
            return False
        by = number.value * ((MM_PER_UNIT.get(str(unit)) or frame.unit or 1) if frame.slot in LENGTHS else 1)
        told, footed = self._told_as_well(segment, behind, last.value + sign * by)
        if not segment.having("feet") and (told is None or footed is None):
            return False
        frame.sentence = segment.sentence
        if told is None or footed is None:
            return self._add(segment, frame.slot, last.value + sign * by, mention, behind)
        self._used.update({mention.start, told.start})
        return self._add(footed, frame.slot, last.value + sign * by, told)

    def _only_the_change(self, segment: Segment, mention: Mention, at: int) -> bool:
        """ "Three mil more than last time", "took five mil off": by how much, which is no measure."""
        behind = self._words[at : at + 3]
        if "than" not in behind and "off" not in behind:
            return False
        compared = behind[1:2] == ["than"] and behind[2:] in (["last"], ["before"], ["the"], ["at"], ["it"], ["he"])
        taken = behind[:1] == ["off"] and not _TAKING.isdisjoint(self._words[segment.start : mention.start])
        if taken or (compared and any(m.get("times") for m in self._talk.starting_in(at, at + 6))):
            self._used.add(mention.start)
            return True
        return False

    def _told_as_well(self, segment: Segment, at: int, value: Fraction) -> tuple[Mention | None, Segment | None]:
        """ "Five mil less than that, thirty-seven, on the near fore": what it comes to, and the segment of its foot."""
        while self._words[at : at + 1] and self._words[at] in ("than", "that", ",", "so", "at"):
            at += 1
        told = self._talk.mention_starting(at)
        number = told.number if told is not None else None
        if self._frame is None or number is None or counted_value(self._frame.slot, number, self._frame.unit) != value:
            return None, None
        behind = [s for s in self._sentence(segment) if s.index >= segment.index and s.having("feet")]
        return told, next(iter(behind), None)

    def _led_by_from(self, segment: Segment, mention: Mention) -> bool:
        """Whether a "from" stands before the number, and a word for a change before that or behind the number."""
        at = mention.start - 1
        while at > segment.start and self._words[at] in _SMALL:
            at -= 1
        if at < segment.start or self._words[at] != "from":
            return False
        first = self._talk.sentence(segment.sentence)[0].start
        moving = bool(_MOVING & set(self._words[max(first, at - _LEAD) : at])) or self._resized(first, at)
        return moving or bool(_ON & set(self._words[mention.end : mention.end + _LEAD]))

    def _resized(self, first: int, at: int) -> bool:
        """ "Gone up half a size in front on Tally, from a two to a two and a half": however far before."""
        sizes = [i for i in range(first, at) if self._words[i] in ("size", "sizes")]
        return any(_ON & set(self._words[max(first, i - _SIZES_BACK) : i]) for i in sizes)

    def _moved_to(self, mention: Mention, number: Number) -> tuple[Mention, Number] | None:
        """The number that is reached, and its mention: behind "to", or the upper end of "48 to 51"."""
        if number.high is not None:
            return mention, replace(number, value=number.high, high=None)
        for behind in self._talk.starting_in(mention.end, min(mention.end + _REACH, len(self._words))):
            if behind.number is None or behind.dropped or self._is_time(behind) or self._long_ago(behind):
                continue
            held = {i for m in self._talk.starting_in(mention.end, behind.start) for i in m.literal if self._light(m)}
            between = {self._words[i] for i in range(mention.end, behind.start) if i not in held}
            return (behind, behind.number) if "to" in between and between <= _ON_TO else None
        return None

    def _light(self, mention: Mention) -> bool:
        timed = mention.number is not None and (self._is_time(mention) or self._long_ago(mention))
        return timed or mention.is_any(("units", "times", "fillers")) or mention.get("pads") == "wedge"

    def _slot_moved(self, segment: Segment, mention: Mention) -> str | None:
        """What went from the one to the other: the measure word of the sentence, or what the horse is shod with."""
        if self._unit(mention)[0] == "degree" and mention.number is not None and mention.number.value <= _STEEPEST:
            return "wedge"  # "went from a three degree to a two": no foot has such an angle
        sentence = [m for s in self._sentence(segment) for m in s.mentions if m.start < mention.start]
        heads = [str(m.get("measures")) for m in sentence if m.get("measures") in (*_MEASURED, "grade")]
        slot = heads[-1] if heads else None
        if slot == "shoe_size" and "nails" in heads:
            slot = "nail_size"
        if slot == "nails" and mention.number is not None and mention.number.plural:
            return "nail_size"  # "nails down from sixes to fives"
        if slot == "grade":
            return self._grade_slot(segment, mention)
        if slot is None and any(m.get("gaits") == "lame" for m in sentence):
            return "lameness"
        if slot is None and any(m.is_any(_SHOD) for m in sentence):
            return "shoe_size"
        return slot or self._counted_before(segment, mention)

    def _counted_before(self, segment: Segment, mention: Mention) -> str | None:
        """What was counted last, else the size of a shoe: "moved her up from a one to a two in front"."""
        if self._frame is not None and segment.sentence - self._frame.sentence <= 1:
            return self._frame.slot
        near = [s for s in self._talk.segments[: segment.index] if segment.sentence - s.sentence <= 1]
        lame = any(m.get("gaits") for s in near for m in s.mentions)
        sized = mention.number is not None and size_name(mention.number) in SHOE_SIZES
        return "shoe_size" if sized and segment.having("feet") and not lame else None


def counted_value(slot: str, number: Number, unit: Fraction | None) -> str | Fraction:
    """What a number says of a slot: a size by its name, a length in millimetres, in the likely unit if none is told."""
    if slot == "shoe_size":
        return size_name(number)
    if slot == "nail_size":
        return plain(number.value)
    return number.value * (unit if unit is not None and slot in LENGTHS else likely_unit(slot, number))
