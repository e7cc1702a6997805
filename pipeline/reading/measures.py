"""What each number counts: sizes, nails, angles, lengths, grades, scores and degrees of wedge.

Every number is tried against the rules in order; what no rule takes stays unread and is flagged if a count or size
word stands beside it. Inches are turned into millimetres (1 in = 25.4 mm exactly; international inch, 1959).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import SHOE_SIZES, value_problem

MM_PER_UNIT = {"inch": Fraction(254, 10), "mm": Fraction(1), "cm": Fraction(10)}
_LENGTHS = ("toe_length", "heel_height", "sole_depth", "hoof_width")
_ANGLES = ("toe_angle", "heel_angle")
_LENGTH_OF = {"toe": "toe_length", "heel": "heel_height", "sole": "sole_depth"}
_ANGLE_OF = {"toe": "toe_angle", "heel": "heel_angle"}
_SCORES = ("body_condition", "cresty_neck", "obel", "lameness")
_LIGHT = frozenset(
    ["a", "an", "the", "of", "is", "'s", "are", "at", "about", "was", "were", "came", "comes", "to", "in", "on", "with", "just", "around", "roughly", "measured", "measures", "measuring", "reading", "reads", "still", "now", "only", "got", "has", "had", "it", "he", "she", "they", "'re", "for", "out", "down", "up", "by", ",", "uh", "um", "say", "say's", "be", "being", "around", "score", "scored", "grade", "grades", "graded", "maybe", "like", "give", "or", "take", "nearly", "almost", "approximately", "call", "him", "her", "i", "'d", "i'd", "make", "come", "out", "that", "and", "his", "her", "both", "there", "today", "again", "exactly", "solid", "good", "big", "full"]
)
_NOT_LIGHT_AFTER = frozenset({",", "and", "it", "he", "she", "they", "to", "with", "for"})


@dataclass
class _Frame:
    """The last thing counted, which a bare number behind a foot still counts ("off fore forty")."""

    slot: str
    unit: Fraction
    sentence: int


class MeasureReader:
    """Reads the numbers of one memo."""

    def __init__(self, talk: Talk) -> None:
        self._talk = talk
        self._words = talk.words
        self._frame: _Frame | None = None
        self._used: set[int] = set()

    def read(self) -> None:
        """Add a draft for every number that counts something."""
        rules: tuple[Callable[[Segment, Mention, Number], bool], ...] = (
            self._grade_out_of, self._wedge_or_angle, self._length, self._nail_size, self._nails, self._score,
            self._size, self._elliptic,
        )  # fmt: skip
        horse = -1
        for segment in self._talk.segments:
            if segment.horse != horse:
                self._frame, horse = None, segment.horse
            for mention in list(segment.mentions):
                self._open_frame(segment, mention)
                number = mention.number
                if number is None or mention.dropped or mention.start in self._used or self._is_time(mention):
                    continue
                if not any(rule(segment, mention, number) for rule in rules):
                    self._leave(segment, mention)
            segment.drafts.sort(key=lambda d: (d.start, d.end))

    # -- neighbours ------------------------------------------------------------------------------------------------

    def _sentence(self, segment: Segment) -> list[Segment]:
        return [s for s in self._talk.sentence(segment.sentence) if s.horse == segment.horse]

    def _before(self, mention: Mention) -> Mention | None:
        """The measure word before the number with only light words between."""
        index = mention.start
        for _ in range(7):
            found = self._talk.mention_ending(index)
            if found is not None and found.is_any(("measures", "zones", "totals", "pads")):
                apart = "," in self._words[found.end : mention.start] and found.get("measures") in (
                    "shoe_size",
                    "nail_size",
                )
                return None if apart else found
            index -= 1
            if index < 0 or self._words[index] not in _LIGHT:
                break
        return self._before(mention.stands_for) if mention.stands_for is not None else None

    def _after(self, mention: Mention, light: frozenset[str] = frozenset()) -> Mention | None:
        """The mention right behind the number, after at most a few light words."""
        index = mention.end
        for _ in range(3):
            found = self._talk.mention_starting(index)
            if found is not None and set(found.readings) - {"fillers", "horse_cues"}:
                return found
            if index >= len(self._words) or self._words[index] not in light:
                break
            index += 1
        return self._after(mention.stands_for, light) if mention.stands_for is not None else None

    def _unit(self, mention: Mention) -> tuple[str | None, Mention | None]:
        after = self._after(mention, frozenset({"of", "an", "a"}))
        if after is not None and after.get("units"):
            return after.readings["units"], after
        if mention.end < len(self._words) and self._words[mention.end] == '"':
            return "inch", None
        return None, None

    def _is_time(self, mention: Mention) -> bool:
        return self._unit(mention)[0] in ("day", "week", "fortnight", "month")

    def _add(
        self, segment: Segment, slot: str, value: str | Fraction, mention: Mention, end: int | None = None
    ) -> bool:
        problem = value_problem(slot, value if isinstance(value, str) else float(value))
        if problem:
            return False
        draft = Draft(slot, value, segment, mention.start, end or mention.end, mention.match)
        draft.evidence.update(range(mention.start, end or mention.end))
        head = self._before(mention)
        if head is not None and head.is_any(("measures",)):
            draft.evidence.update(head.literal)
        draft.note(f"{slot}: from the number")
        segment.drafts.append(draft)
        self._used.add(mention.start)
        return True

    def _leave(self, segment: Segment, mention: Mention) -> None:
        before, after = self._before(mention), self._after(mention)
        counting = [m for m in (before, after) if m is not None and m.is_any(("measures",))]
        if counting and not (mention.number and mention.number.fraction):
            self._talk.unread.append((mention.start, mention.end, "a number that could not be placed"))

    def _open_frame(self, segment: Segment, mention: Mention) -> None:
        slot = mention.get("measures")
        if (
            (slot in (*_ANGLES, *_LENGTHS)
            and len(mention.literal) > 1)
            or (slot in ("toe_angle", "toe_length")
            and mention.get("zones") is None
            and slot)
        ):
            unit = Fraction(1)
            if self._frame is not None and self._frame.slot in _LENGTHS and slot in _LENGTHS:
                unit = self._frame.unit
            self._frame = _Frame(slot, unit, segment.sentence)
        elif self._sizes_ahead(mention):
            self._frame = _Frame(mention.readings["measures"], Fraction(1), segment.sentence)

    def _sizes_ahead(self, mention: Mention) -> bool:
        """ "Sizes, fronts are two, hinds are one": the size word stands alone at first."""
        follower = self._words[mention.end] if mention.end < len(self._words) else "."
        return mention.get("measures") in (
            "shoe_size",
            "nail_size",
            "body_condition",
            "cresty_neck",
            "nails",
        ) and follower in (",", ":")

    def _set_frame(self, slot: str, segment: Segment, unit: Fraction = Fraction(1)) -> None:
        self._frame = _Frame(slot, unit, segment.sentence)

    # -- rules, in order -------------------------------------------------------------------------------------------

    def _grade_out_of(self, segment: Segment, mention: Mention, number: Number) -> bool:
        if number.out_of is None:
            return False
        grade = number.value * number.out_of if number.fraction else number.value
        heads = [m.get("measures") for s in self._sentence(segment) for m in s.mentions]
        slot = "lameness"
        for score in ("cresty_neck", "body_condition", "obel"):
            before = self._before(mention)
            if (before is not None and before.get("measures") == score) or (score in heads and number.out_of != 5):
                slot = score
        if number.fraction and slot == "lameness" and not self._lame_near(segment) and "lameness" not in heads:
            return False
        end = mention.end
        after = self._after(mention)
        if slot == "lameness" and after is not None and after.get("gaits") == "lame":
            end = after.end
        self._set_frame(slot, segment)
        return self._add(segment, slot, grade, mention, end)

    def _lame_near(self, segment: Segment) -> bool:
        return any(m.get("gaits") == "lame" for s in self._sentence(segment) for m in s.mentions)

    def _wedge_or_angle(self, segment: Segment, mention: Mention, number: Number) -> bool:
        unit, unit_mention = self._unit(mention)
        before = self._before(mention)
        if unit == "degree":
            end = unit_mention.end if unit_mention else mention.end
            if any(m.get("findings") == "rotation" and abs(m.start - end) <= 4 for m in segment.mentions):
                self._used.add(mention.start)
                return True
            if self._wedged(segment, mention, end):
                self._set_frame("wedge", segment)
                return self._add(segment, "wedge", number.value, mention, end)
            slot = self._angle_slot(segment, before, mention)
            if slot is None:
                return False
            self._set_frame(slot, segment)
            return self._add(segment, slot, number.value, mention, end)
        if unit is None and before is not None and before.get("measures") in _ANGLES and number.value >= 20:
            slot = before.readings["measures"]
            self._set_frame(slot, segment)
            return self._add(segment, slot, number.value, mention)
        angle_frame = self._frame is not None and self._frame.slot in _ANGLES
        zone = before.get("zones") if before else None
        if unit is None and angle_frame and zone in _ANGLE_OF and 30 <= number.value <= 75:
            self._set_frame(_ANGLE_OF[zone], segment)
            return self._add(segment, _ANGLE_OF[zone], number.value, mention)
        return False

    def _wedged(self, segment: Segment, mention: Mention, end: int) -> bool:
        near = [m for m in segment.mentions if m.get("pads") == "wedge" and -4 <= m.start - end <= 3]
        return bool(near) or (
            self._frame is not None
            and self._frame.slot == "wedge"
            and mention.number is not None
            and mention.number.value < 10
        )

    def _angle_slot(self, segment: Segment, before: Mention | None, mention: Mention) -> str | None:
        if before is not None and before.get("measures") in _ANGLES:
            return before.readings["measures"]
        if before is not None and before.get("zones") in _ANGLE_OF:
            return _ANGLE_OF[before.readings["zones"]]
        after = self._after(self._unit_mention(mention), frozenset({"of", "at", "on", "the", "in"}))
        if after is not None and after.get("measures") in _ANGLES:
            return after.readings["measures"]
        if after is not None and after.get("zones") in _ANGLE_OF:
            return _ANGLE_OF[after.readings["zones"]]
        heads = [m.readings["measures"] for m in segment.mentions if m.get("measures") in _ANGLES]
        if heads:
            return heads[-1]
        if self._frame is not None and self._frame.slot in _ANGLES and segment.sentence - self._frame.sentence <= 1:
            return self._frame.slot
        return None

    def _unit_mention(self, mention: Mention) -> Mention:
        return self._unit(mention)[1] or mention

    def _length(self, segment: Segment, mention: Mention, number: Number) -> bool:
        unit, unit_mention = self._unit(mention)
        if unit is None and self._measured_without_unit(mention, number):
            mm = self._frame.unit if self._frame is not None and self._frame.slot in _LENGTHS else _likely_unit(number)
            slot = self._before(mention)
            return slot is not None and self._add(segment, slot.readings["measures"], number.value * mm, mention)
        if unit not in MM_PER_UNIT:
            return False
        value, end = number.value, unit_mention.end if unit_mention else mention.end + 1
        more = self._inch_and(end)
        if more is not None and unit == "inch":
            value, end = value + more[0], more[1]
            self._used.add(more[2])
        slot = self._length_slot(segment, mention, end)
        if slot is None:
            return False
        self._set_frame(slot, segment, MM_PER_UNIT[unit])
        return self._add(segment, slot, value * MM_PER_UNIT[unit], mention, end)

    def _measured_without_unit(self, mention: Mention, number: Number) -> bool:
        """ "Heel height forty" behind a length that had its unit."""
        before = self._before(mention)
        named = before is not None and before.get("measures") in _LENGTHS and before.get("zones") is None
        return named and number.aughts is None and number.out_of is None

    def _inch_and(self, end: int) -> tuple[Fraction, int, int] | None:
        """ "Three inches and three eighths", "an inch and a half": the part behind the unit."""
        index = end + 1 if end < len(self._words) and self._words[end] == "and" else end
        found = next((m for m in self._talk.mentions if m.start == index and m.number and m.number.fraction), None)
        if found is None or found.number is None or index == end:
            return None
        return found.number.value, found.end, found.start

    def _length_slot(self, segment: Segment, mention: Mention, end: int) -> str | None:
        before = self._before(mention)
        if before is not None and before.get("measures") in _LENGTHS:
            return before.readings["measures"]
        after = self._after(Mention(end, end, (), {}), frozenset({"of", "at", "the", "in", "high", "long"}))
        if after is not None and after.get("measures") in _LENGTHS:
            return after.readings["measures"]
        heads = [m for m in segment.mentions if m.get("measures") in _LENGTHS and m.start < mention.start]
        named = [m for m in heads if len(m.literal) > 1 or m.get("zones") is None]
        if named or heads:
            return (named or heads)[-1].readings["measures"]
        later = [m for m in segment.mentions if m.get("measures") in _LENGTHS and m.get("zones") is None]
        if later:
            return later[0].readings["measures"]
        if self._frame is not None and self._frame.slot in _LENGTHS and segment.sentence - self._frame.sentence <= 1:
            return self._frame.slot
        return None

    def _nail_size(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before, after = self._before(mention), self._after(mention)
        if number.value.denominator == 2 and after is not None and after.get("measures") == "nails":
            self._set_frame("nail_size", segment)  # nobody drives half a nail
            return self._add(segment, "nail_size", _plain(number.value), mention, after.end)
        sized = before is not None and before.get("measures") in ("shoe_size", "nail_size")
        slim = after is not None and after.get("measures") == "slim"
        nails = after is not None and after.get("measures") == "nails"
        nail_cue = before is not None and (
            before.get("measures") == "nail_size"
            or self._nail_word_before(before)
            or self._after_nails(segment, before)
        )
        nail_cue = nail_cue or (number.plural and self._plural_after_nails(segment))
        if number.aughts is not None or not (slim or (sized and nails) or nail_cue):
            return False
        end = after.end if (slim or nails) and after is not None else mention.end
        self._set_frame("nail_size", segment)
        return self._add(segment, "nail_size", _plain(number.value) + (" slim" if slim else ""), mention, end)

    def _nail_word_before(self, before: Mention) -> bool:
        """ "Nails size five", "nails are number five": the size word itself follows the nails."""
        if before.get("measures") != "shoe_size":
            return False
        head = self._talk.mention_ending(before.start) or self._talk.mention_ending(before.start - 1)
        return head is not None and head.get("measures") == "nails"

    def _plural_after_nails(self, segment: Segment) -> bool:
        """ "Eight nails to a shoe, sevens": a plural right after the nails of a sized shoe."""
        drafts = [d for s in self._sentence(segment) if s.index <= segment.index for d in s.drafts]
        own = [d for s in self._talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
        return bool(drafts) and drafts[-1].slot == "nails" and any(d.slot == "shoe_size" for d in own)

    def _after_nails(self, segment: Segment, before: Mention) -> bool:
        """ "Three nails a side, size five": a size said right after the nails, when the shoe has its size, is theirs."""
        if (
            before.get("measures") != "shoe_size"
            or self._frame is None
            or self._frame.slot not in ("nails", "nail_size")
        ):
            return False
        if self._frame.sentence != segment.sentence and self._frame.slot == "nails":
            return False
        own = [s for s in self._talk.segments[: segment.index + 1] if s.horse == segment.horse]
        drafts = [d for s in own for d in s.drafts]
        return bool(drafts) and drafts[-1].slot in ("nails", "nail_size") and any(d.slot == "shoe_size" for d in drafts)

    def _nails(self, segment: Segment, mention: Mention, number: Number) -> bool:
        if number.aughts is not None or number.value.denominator != 1:
            return False
        outside = self._two_sides(segment, mention, number)
        if outside is not None:
            return outside
        after = self._after(mention)
        if after is None:
            return self._nails_after_head(segment, mention, number)
        if after.get("measures") == "nails" and number.value < 2:
            return False  # one nail holds no shoe: "one nail sat close"
        if after.get("measures") == "nails":
            side = self._after(after)
            doubled = side is not None and side.get("totals") == "each_side"
            end = side.end if doubled and side is not None else after.end
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value * (2 if doubled else 1), mention, end)
        if after.get("totals") == "each_side":
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value * 2, mention, after.end)
        if after.get("totals") == "each" and not self._sized(mention):
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value, mention, after.end)
        return self._nails_after_head(segment, mention, number)

    def _sized(self, mention: Mention) -> bool:
        before = self._before(mention)
        return before is not None and before.get("measures") in ("shoe_size", "nail_size")

    def _nails_after_head(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before = self._before(mention)
        if before is None or before.get("measures") != "nails" or number.plural or number.value > 12:
            return False
        self._set_frame("nails", segment)
        return self._add(segment, "nails", number.value, mention)

    def _two_sides(self, segment: Segment, mention: Mention, number: Number) -> bool | None:
        """ "Four outside and three inside" is seven nails."""
        first = self._after(mention, frozenset({"nails", "nail", "on", "the"}))
        if first is None or first.get("totals") not in ("outside", "inside"):
            first = self._skip_nails(first)
            if first is None:
                return None
        following = next((m for m in self._talk.mentions if m.number and m.start >= first.end and not m.dropped), None)
        if following is None or following.start - first.end > 3 or following.number is None:
            return None
        second = self._after(following, frozenset({"nails", "nail", "on", "the"}))
        second = (
            second if second is not None and second.get("totals") in ("outside", "inside") else self._skip_nails(second)
        )
        if second is None or second.get("totals") == first.get("totals"):
            return None
        self._used.add(following.start)
        self._set_frame("nails", segment)
        return self._add(segment, "nails", number.value + following.number.value, mention, second.end)

    def _skip_nails(self, mention: Mention | None) -> Mention | None:
        if mention is None or mention.get("measures") != "nails":
            return None
        side = self._after(mention, frozenset({"on", "the"}))
        return side if side is not None and side.get("totals") in ("outside", "inside") else None

    def _score(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before = self._before(mention)
        slot = before.get("measures") if before is not None else None
        if slot == "grade":
            slot = self._grade_slot(segment, mention)
        after = self._after(mention)
        scored = self._after(mention, frozenset({"on", "for", "the", "in"}))
        if slot is None and scored is not None and scored.get("measures") in ("body_condition", "cresty_neck"):
            slot = scored.readings["measures"]
        if slot is None and after is not None and after.get("gaits") == "lame" and self._graded_before(mention):
            slot = "lameness"
        if slot not in _SCORES:
            return False
        self._set_frame(slot, segment)
        return self._add(segment, slot, number.value, mention)

    def _graded_before(self, mention: Mention) -> bool:
        return mention.start > 0 and self._words[mention.start - 1] in ("grade", "a", "about")

    def _grade_slot(self, segment: Segment, mention: Mention) -> str | None:
        heads = [m.get("measures") for s in self._sentence(segment) for m in s.mentions if m.start < mention.end + 4]
        for slot in ("obel", "cresty_neck", "body_condition"):
            if slot in heads:
                return slot
        if self._lame_near(segment) or "lameness" in heads:
            return "lameness"
        laminitic = any(m.get("findings") == "laminitis" for s in self._sentence(segment) for m in s.mentions)
        return "obel" if laminitic else None

    def _size(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before, after = self._before(mention), self._after(mention)
        cued = before is not None and before.get("measures") == "shoe_size"
        nail_frame = (
            self._frame is not None and self._frame.slot == "nail_size" and self._frame.sentence == segment.sentence
        )
        if nail_frame and not cued and number.aughts is None:
            return False
        if before is not None and before.get("measures") in ("body_condition", "cresty_neck"):
            return False
        between = self._between(mention, number)
        if between is not None:
            self._set_frame("shoe_size", segment)
            return self._add(segment, "shoe_size", between[0], mention, between[1])
        aught = number.aughts is not None and number.aughts > 0 and (cued or self._words[mention.start] != "zero")
        pair = mention.start > 1 and self._words[mention.start - 2 : mention.start] == ["pair", "of"]
        shoe = after is not None and after.is_any(("shoe_types", "shoe_materials")) and number.value <= 12
        noun = number.article or number.plural or pair
        framed = noun and self._shoe_talk(segment, mention) and not self._counts_something(mention)
        if not (cued or aught or pair or framed or (shoe and noun)):
            return False
        self._set_frame("shoe_size", segment)
        return self._add(segment, "shoe_size", size_name(number), mention)

    def _counts_something(self, mention: Mention) -> bool:
        after = self._after(mention)
        return after is not None and after.is_any(("units", "measures", "gaits", "findings", "pads"))

    def _shoe_talk(self, segment: Segment, mention: Mention) -> bool:
        """Whether shoes are spoken of in the sentence, so that "a one" is a size."""
        if self._frame is not None and self._frame.slot in ("body_condition", "cresty_neck", "lameness", "obel"):
            return self._frame.sentence != segment.sentence and mention.stands_for is None
        kinds = ("shoe_types", "shoe_materials", "work", "pads", "clips")
        sentence = self._sentence(segment)
        sized = any(
            m.get("measures") in ("shoe_size", "nails") or (m.number and m.number.aughts)
            for s in sentence
            for m in s.mentions
        )
        return (
            sized
            or any(m.is_any(kinds) for s in sentence for m in s.mentions)
            or (self._frame is not None and self._frame.slot == "shoe_size")
        )

    def _between(self, mention: Mention, number: Number) -> tuple[str, int] | None:
        """ "Between an aught and a one" is "0-1", smaller first."""
        low = max(0, mention.start - 4)
        if "between" not in self._words[low : mention.start]:
            return None
        following = next(
            (m for m in self._talk.mentions if m.number and m.start >= mention.end and not m.dropped), None
        )
        if following is None or following.number is None or following.start - mention.end > 3:
            return None
        names = sorted((size_name(number), size_name(following.number)), key=_size_order)
        self._used.add(following.start)
        return "-".join(names), following.end

    def _elliptic(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """A bare number beside a foot counts what the last one counted."""
        frame = self._frame
        if frame is None or segment.sentence - frame.sentence > 1:
            return False
        after = self._after(mention)
        said = self._words[mention.start - 1] in ("was", "is", "'s", "at", "to", "a", "an")
        now = said and frame.sentence == segment.sentence
        blocked = after is not None and after.is_any(("measures", "units", "findings", "work", "pads"))
        score = frame.slot in _SCORES and (number.article or said)
        repeated = mention.stands_for is not None or self._words[mention.start - 1] in ("also", "too")
        if blocked or not (segment.having("feet") or score or repeated or now or self._behind_foot(segment)):
            return False
        if frame.slot in ("shoe_size", "nail_size"):
            value: str | Fraction = size_name(number) if frame.slot == "shoe_size" else _plain(number.value)
        else:
            value = number.value * frame.unit
        if frame.slot in _ANGLES and not 30 <= number.value <= 75:
            return False
        frame.sentence = segment.sentence
        added = self._add(segment, frame.slot, value, mention)
        if added:
            segment.drafts[-1].note("elliptic")
        return added

    def _behind_foot(self, segment: Segment) -> bool:
        """Whether the segment before names a foot and nothing else: "right front, three and three eighths"."""
        before = self._talk.segments[segment.index - 1] if segment.index else None
        if before is None or before.sentence != segment.sentence:
            return False
        return bool(before.having("feet")) and not before.drafts and not any(m.number for m in before.mentions)


def _likely_unit(number: Number) -> Fraction:
    """Inches for a small number, millimetres for a large one; no hoof is fifteen inches long."""
    return MM_PER_UNIT["inch"] if number.value < 15 else MM_PER_UNIT["mm"]


def size_name(number: Number) -> str:
    """The canonical shoe size of a number: aughts as noughts, half sizes with a point."""
    return "0" * number.aughts if number.aughts else _plain(number.value)


def _size_order(name: str) -> int:
    return SHOE_SIZES.index(name) if name in SHOE_SIZES else len(SHOE_SIZES)


def _plain(value: Fraction) -> str:
    return str(value.numerator) if value.denominator == 1 else f"{float(value):g}"
