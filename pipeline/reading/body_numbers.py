"""Numbers about the horse's body: angles, lengths, wedge degrees, grades and scores."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from pipeline.reading.heads_behind import head_behind
from pipeline.reading.lengths import LARGEST_IN, MM_PER_UNIT, fits, likely_unit
from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import ANGLES, LENGTHS, LIGHT, NO_ANGLE, SCORES, NumberContext, may_be_a_toe
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Segment

_MOST_WEDGE = 12  # degrees; common practice, no source
_MEASURE_OF = {"thin_sole": "sole_depth", "long_toe": "toe_length"}
_MEASURING = frozenset({"measure", "measured", "measures", "measuring", "taped", "calipers", "gauge", "gauged"})
_OF_THE = frozenset({"on", "for", "the", "in"})
_ANGLE_OF = {"toe": "toe_angle", "heel": "heel_angle"}
_MADE_IT = (
    ("make", "it"), ("call", "it"), ("give", "it"), ("give", "him"), ("give", "her"), ("put", "it", "at"), ("it", "'s"),
    ("say",), ("it", "at"), ("that", "'s"), ("mark", "it"), ("grade", "it"), ("score", "it"), ("called", "it"),
    ("maybe",), ("about",), ("around",), ("probably",), ("roughly",),
    ("made", "it"), ("gave", "it"), ("gave", "him"), ("gave", "her"),
)  # fmt: skip
_COMES_TO = frozenset({"is", "'s", "was", "were", "at", "measured", "measures", "reads", "came", "to", ",", ":"})
_DEGREES = ("degree", "degrees")
_TAKEN = frozenset(
    {"them", "it", "those", "that", "both", "toes", "toe", "cut", "dressed", "taken", "brought", "rasped"}
)
_LEAST_ANGLE = 20  # fewer are of a wedge or a rotation
_STEEPEST = 75  # no hoof stands steeper; common practice, no source
_WEATHER = frozenset({
    "out", "outside", "shade", "weather", "heat", "humid", "sweating", "sweat", "sun", "sunshine", "flies", "wind",
    "breeze", "forge", "rain", "barn", "yard", "inside", "hot", "cold", "warm",
})  # fmt: skip


class BodyNumbers(NumberContext):
    """Rules for what is measured and scored on the horse."""

    def _grade_out_of(self, segment: Segment, mention: Mention, number: Number) -> bool:
        if number.out_of is None and mention.stands_for is not None and mention.stands_for.number is not None:
            number = replace(number, out_of=mention.stands_for.number.out_of)  # "two out of five, call it three"
        if number.out_of is None and "between" in self._words[max(0, mention.start - 2) : mention.start]:
            for upper in self._talk.starting_in(mention.end, mention.end + 3):
                if upper.number is not None and upper.number.out_of:
                    number = replace(number, out_of=upper.number.out_of)  # "between a two and a three out of five"
                    self._used.add(upper.start)
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
        behind = self._after(mention, _OF_THE)
        if behind is not None and behind.get("measures") == "cresty_neck":
            slot = "cresty_neck"  # "a four out of five on the crest"
        elif behind is not None and behind.get("feet") and slot in SCORES:
            slot = "lameness"  # "… for the crest and two out of five on the near fore"
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
            if self._wedged(segment, mention, end) or self._wedge_spoken_of(segment, number):
                self._set_frame("wedge", segment)
                if self._told_of_its_own_foot(segment):
                    self._add(segment, "pad", "wedge", mention, end)
                return self._add(segment, "wedge", number.value, mention, end)
            slot = self._angle_slot(segment, before, mention)
            if slot is None:
                return False
            self._set_frame(slot, segment)
            return self._add(segment, slot, number.value, mention, end)
        behind = self._after(mention)
        if unit is None and behind is not None and behind.get("pads") and self._words[behind.start] in _DEGREES:
            self._set_frame("wedge", segment)  # "two degree pads"
            return self._add(segment, "wedge", number.value, mention)
        if unit is None and before is not None and before.get("measures") in ANGLES and number.value >= 20:
            slot = head_behind(self._talk, segment, mention, ANGLES) or before.readings["measures"]
            self._set_frame(slot, segment)
            return self._add(segment, slot, number.value, mention)
        placed = self._angle_at(mention, number) if unit is None else None
        if placed is not None:
            self._set_frame(placed, segment)
            return self._add(segment, placed, number.value, mention)
        angle_frame = self._frame is not None and self._frame.slot in ANGLES
        zone = before.get("zones") if before else None
        if unit is None and angle_frame and zone in _ANGLE_OF and 30 <= number.value <= 75:
            self._set_frame(_ANGLE_OF[zone], segment)
            return self._add(segment, _ANGLE_OF[zone], number.value, mention)
        return False

    def _angle_at(self, mention: Mention, number: Number) -> str | None:
        """ "Last spring he was a 48 at the toe": of a horse whose angles are spoken of."""
        at_the = self._words[mention.end : mention.end + 2] == ["at", "the"]
        if not at_the or self._talk.mention_starting(mention.end + 2) is None or not 40 <= number.value <= 70:
            return None
        if not any(self._talk.having("measures", a) for a in ANGLES) and not self._measured_in_degrees(mention):
            return None
        return _ANGLE_OF.get(self._words[mention.end + 2])

    def _measured_in_degrees(self, mention: Mention) -> bool:
        """ "48 degrees at the toe and 42 at the heel, right front 50 at the toe": the number before it was an angle."""
        segment, frame = self._talk.segment_at(mention.start), self._frame
        near = segment is not None and frame is not None and segment.sentence - frame.sentence <= 1
        return near and frame is not None and frame.slot in ANGLES

    def _wedged(self, segment: Segment, mention: Mention, end: int) -> bool:
        near = [m for m in segment.mentions if m.get("pads") == "wedge" and -4 <= m.start - end <= 3]
        return bool(near) or (
            self._frame is not None
            and self._frame.slot == "wedge"
            and mention.number is not None
            and mention.number.value < 10
        )

    def _told_of_its_own_foot(self, segment: Segment) -> bool:
        """ "Three degree wedge, left front. Right front, two degree.": so many degrees are a wedge on that foot too."""
        before = self._talk.segments[segment.index - 1] if segment.index else segment
        named = segment.having("feet") or (before.having("feet") and not before.having("pads"))
        return bool(named) and not segment.having("pads", "wedge")

    def _wedge_spoken_of(self, segment: Segment, number: Number) -> bool:
        """ "We put wedges. Three degree near fore.": so few degrees are no angle of a hoof."""
        if number.value > _MOST_WEDGE:
            return False
        near = (segment.sentence, segment.sentence - 1, segment.sentence - 2)
        spoken = [m for s in self._talk.segments for m in s.mentions if s.sentence in near and m.get("pads") == "wedge"]
        return bool(spoken)

    def _angle_slot(self, segment: Segment, before: Mention | None, mention: Mention) -> str | None:
        listed = head_behind(self._talk, segment, mention, ANGLES)
        if listed is not None:
            return listed
        if before is not None and before.get("measures") in ANGLES:
            return before.readings["measures"]
        after = self._after(self._unit_mention(mention), frozenset({"of", "at", "on", "the", "in"}))
        behind = _ANGLE_OF.get(after.get("zones") or "") if after is not None else None
        if before is not None and before.get("zones") in _ANGLE_OF:
            given = self._given(before) if behind is not None else False
            return behind if given else _ANGLE_OF[before.readings["zones"]]
        if after is not None and after.get("measures") in ANGLES:
            return after.readings["measures"]
        if after is not None and after.get("zones") in _ANGLE_OF:
            return _ANGLE_OF[after.readings["zones"]]
        heads = [m.readings["measures"] for m in segment.mentions if m.get("measures") in ANGLES]
        if heads:
            return heads[-1]
        if self._of_the_weather(segment, mention):
            return None
        if self._frame is not None and self._frame.slot in ANGLES and segment.sentence - self._frame.sentence <= 1:
            return self._frame.slot
        return self._likely_angle(segment, mention)

    def _likely_angle(self, segment: Segment, mention: Mention) -> str | None:
        """ "Fronts, fifty degrees": so many of a foot are its toe's, which is asked; else only asked about."""
        before = self._talk.segments[segment.index - 1] if segment.index else segment
        headed = before.sentence == segment.sentence and before.having("feet") and not before.drafts
        if mention.number is None or mention.number.value < _LEAST_ANGLE or not (segment.having("feet") or headed):
            return None
        self._talk.unread.append((mention.start, mention.end, NO_ANGLE))
        return "toe_angle" if may_be_a_toe(mention.number) else None

    def _of_the_weather(self, segment: Segment, mention: Mention) -> bool:
        """ "Eighty degrees today and flies everywhere", "ninety degrees out there": no angle, and of no foot."""
        number = mention.number
        if segment.having("feet") or number is None:
            return False
        return number.value > _STEEPEST or bool(_WEATHER & set(self._words[segment.start : segment.end]))

    def _unit_mention(self, mention: Mention) -> Mention:
        return self._unit(mention)[1] or mention

    def _length(self, segment: Segment, mention: Mention, number: Number) -> bool:
        unit, unit_mention = self._unit(mention)
        if number.fraction and self._behind_inch(mention):
            unit, unit_mention, number = "inch", mention, replace(number, value=number.value + 1)
        behind = self._after(mention)
        wide = behind is not None and self._words[behind.start] == "wide"
        if unit is None and not wide and self._measured_without_unit(mention, number):
            head = self._before(mention)
            if head is None:
                return False
            known = self._frame.unit if self._frame is not None and self._frame.slot in LENGTHS else None
            slot = head.readings["measures"]
            mm = known if known and fits(slot, number, known) else likely_unit(slot, number)
            self._set_frame(slot, segment, mm)
            return self._add(segment, slot, number.value * mm, mention)
        told = wide or (behind is not None and len(behind.literal) > 1)
        if unit is None and behind is not None and behind.get("measures") in LENGTHS and told:
            slot = behind.readings["measures"]  # "left front 3 1/4 toe length"
            mm = likely_unit(slot, number)
            self._set_frame(slot, segment, mm)
            return self._add(segment, slot, number.value * mm, mention, behind.end)
        if unit is None and (self._of_the_toe(mention, number) or self._taken_back(segment, mention, number)):
            mm = likely_unit("toe_length", number)
            self._set_frame("toe_length", segment, mm)
            return self._add(segment, "toe_length", number.value * mm, mention)
        if unit not in MM_PER_UNIT:
            return False
        value, end = number.value, unit_mention.end if unit_mention else mention.end + 1
        more = self._inch_and(end)
        if more is not None and unit == "inch":
            value, end = value + more[0], more[1]
            self._used.add(more[2])
        measured = self._length_slot(segment, mention, end)
        if measured is None:
            return False
        self._set_frame(measured, segment, MM_PER_UNIT[unit])
        return self._add(segment, measured, value * MM_PER_UNIT[unit], mention, end)

    def _of_the_toe(self, mention: Mention, number: Number) -> bool:
        """ "The off fore toe was ninety-six": too much for an angle, so its length, whatever was measured last."""
        toe = self._before(mention)
        led = toe is not None and toe.get("zones") == "toe" and set(self._words[toe.end : mention.start]) <= _COMES_TO
        return led and number.out_of is None and not number.plural and number.value > _STEEPEST

    def _taken_back(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Long at the toe. I took them back to ninety": what is left of a toe, too much for an angle or in parts."""
        at = mention.start - 2
        if self._words[at : mention.start] != ["back", "to"] or not (
            at == segment.start or self._words[at - 1] in _TAKEN
        ):
            return False
        part = 2 < number.value < LARGEST_IN["toe_length"][0] and number.value.denominator > 1
        return (part or number.value > _STEEPEST) and not (number.plural or number.article) and self._toes_long(segment)

    def _behind_inch(self, mention: Mention) -> bool:
        """ "Heel height inch and five eighths": a bare inch before the part."""
        led = self._words[mention.start - 2 : mention.start] == ["inch", "and"]
        return led and not any(m.number and m.end == mention.start - 2 for m in self._talk.mentions)

    def _measured_without_unit(self, mention: Mention, number: Number) -> bool:
        """ "Heel height forty" behind a length that had its unit."""
        before = self._before(mention)
        named = before is not None and before.get("measures") in LENGTHS and before.get("zones") is None
        named = named and before is not None and self._words[before.start] != "wide"  # that told the number before it
        return named and number.aughts is None and number.out_of is None

    def _inch_and(self, end: int) -> tuple[Fraction, int, int] | None:
        """ "Three inches and three eighths", "an inch and a half": the part behind the unit."""
        index = end + 1 if end < len(self._words) and self._words[end] == "and" else end
        found = next((m for m in self._talk.starting_in(index, index + 1) if m.number and m.number.fraction), None)
        if found is None or found.number is None or index == end:
            return None
        return found.number.value, found.end, found.start

    def _length_slot(self, segment: Segment, mention: Mention, end: int) -> str | None:
        listed = head_behind(self._talk, segment, mention, LENGTHS)
        if listed is not None:
            return listed
        before = self._before(mention)
        of_what = self._talk.mention_starting(end + 1) if self._words[end : end + 1] == ["of"] else None
        if of_what is not None and of_what.get("measures") in LENGTHS:
            return of_what.readings["measures"]  # "five and a quarter wide, two inches of heel"
        for finding in [d for d in segment.drafts if d.start == end and d.value == "long_toe"]:
            finding.drop("a length")  # "four inches long at the toe"
            return "toe_length"
        if self._words[end : end + 1] == ["long"] and self._beside_angles(segment, before):
            return "toe_length"
        if self._words[end : end + 1] == ["long"] and self._of_a_finding(segment):
            return None
        if before is not None and before.get("measures") in LENGTHS:
            return before.readings["measures"]
        after = self._after(Mention(end, end, (), {}), frozenset({"of", "at", "the", "in", "high", "long"}))
        if after is not None and after.get("measures") in LENGTHS:
            return after.readings["measures"]
        heads = [m for m in segment.mentions if m.get("measures") in LENGTHS and m.start < mention.start]
        named = [m for m in heads if len(m.literal) > 1 or m.get("zones") is None]
        if named or heads:
            return (named or heads)[-1].readings["measures"]
        if any(m.get("findings") == "thin_sole" for s in self._sentence(segment) for m in s.mentions):
            return "sole_depth"  # "thin soles in front, 3/8 of an inch left front"
        if self._words[mention.start - 2 : mention.start] == ["back", "to"] and self._toes_long(segment):
            return "toe_length"  # "toes were long, brought them back to three and a quarter inches"
        told = self._of_what_was_told(segment, mention)
        if told is not None:
            return told
        later = [m for m in segment.mentions if m.get("measures") in LENGTHS and m.get("zones") is None]
        if later:
            return later[0].readings["measures"]
        if self._frame is not None and self._frame.slot in LENGTHS and segment.sentence - self._frame.sentence <= 1:
            return self._frame.slot
        return None

    def _of_what_was_told(self, segment: Segment, mention: Mention) -> str | None:
        """ "Long toes up front. I measured the left front at four inches": of a foot, and what was just spoken of."""
        footed = any(s.having("feet") for s in self._sentence(segment) if s.index <= segment.index)
        unit, number = self._unit(mention)[0], mention.number
        if not footed or number is None or unit is None:
            return None
        near = [s for s in self._talk.segments[: segment.index + 1] if segment.sentence - s.sentence <= 1]
        measuring = [s for s in near if _MEASURING & set(self._words[s.start : s.end])]
        slots = [_MEASURE_OF.get(m.get("findings") or "") for s in near for m in s.mentions]
        slots += [m.get("measures") for s in measuring if s.index < segment.index for m in s.mentions]
        taken = self._words[mention.start - 2 : mention.start] in (["down", "to"], ["back", "to"])
        sure = bool(measuring) or taken or self._of_the_long_toe(segment, mention)
        lengths = [slot for slot in slots if slot in LENGTHS and (slot == "sole_depth" or sure)]
        mm = number.value * MM_PER_UNIT[unit]
        return lengths[-1] if lengths and mm <= LARGEST_IN[lengths[-1]][0] * MM_PER_UNIT["inch"] else None

    def _of_the_long_toe(self, segment: Segment, mention: Mention) -> bool:
        """ "A long toe on the off fore, four inches", "four inches from the hairline": how long it is."""
        unit = self._unit(mention)[1]
        end = unit.end if unit is not None else mention.end
        if self._words[end : end + 1] == ["from"]:
            hair = self._talk.starting_in(end + 1, end + 3)
            return any(m.get("zones") == "coronary_band" for m in hair)
        before = self._talk.segments[segment.index - 1] if segment.index else None
        led = before is not None and before.sentence == segment.sentence and segment.joined_by(",")
        said = {*range(mention.start, end), *(i for m in segment.having("times") for i in m.literal)}
        alone = self._talk.words_beside(segment, said) <= LIGHT
        return led and alone and before is not None and bool(before.having("findings", "long_toe"))

    def _toes_long(self, segment: Segment) -> bool:
        near = [s for s in self._talk.segments if 0 <= segment.sentence - s.sentence <= 1]
        return any(m.get("findings") == "long_toe" for s in near for m in s.mentions)

    def _score(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before = self._before(mention) or self._pondered(mention)
        slot = before.get("measures") if before is not None else None
        after = self._after(mention)
        scored = self._after(mention, _OF_THE)
        body = scored is not None and scored.get("measures") in ("body_condition", "cresty_neck")
        if slot == "grade" and (not body or after is scored):  # not "Obel one, and I scored him a seven for condition"
            slot = self._grade_slot(self._begun_in(segment, mention), mention)
        if slot in (None, "grade") and scored is not None and body:
            slot = scored.readings["measures"]
        if slot is None and after is not None and after.get("gaits") == "lame" and self._graded_before(mention):
            slot = "lameness"
        if slot is None and number.article and self._graded_lame(segment, mention):
            added = self._add(segment, "lameness", number.value, mention)
            segment.drafts[-1].rules += ["elliptic"] if added else []
            return added
        if slot not in SCORES:
            return False
        self._set_frame(slot, segment)
        return self._add(segment, slot, number.value, mention)

    def _graded_lame(self, segment: Segment, mention: Mention) -> bool:
        """ "Lame on the left front, I'd make it a two": of a horse just said to be lame, with nothing else scored."""
        led = tuple(self._words[max(0, mention.start - 3) : mention.start - 1])
        graded = led[-2:] in _MADE_IT or led in _MADE_IT or led[-1:] in _MADE_IT
        closed = self._words[mention.end : mention.end + 1] in ([","], ["."], ["and"], ["but"], ["today"], [])
        near = [s for s in self._talk.segments if 0 <= segment.sentence - s.sentence <= 1 and s.index <= segment.index]
        lame = any(m.get("gaits") == "lame" for s in near if s.horse == segment.horse for m in s.mentions)
        near_words = [m for s in self._sentence(segment) for m in s.mentions]
        if any(m.is_any(("work", "shoe_types", "shoe_materials", "pads")) for m in near_words):
            return False
        scored = self._frame is not None and self._frame.slot in SCORES and self._frame.slot != "lameness"
        return graded and closed and lame and not scored

    def _graded_before(self, mention: Mention) -> bool:
        return mention.start > 0 and self._words[mention.start - 1] in ("grade", "a", "about")

    def _grade_slot(self, segment: Segment, mention: Mention) -> str | None:
        after = self._after(mention)
        if after is not None and after.get("gaits") == "lame":
            return "lameness"
        heads = [m.get("measures") for s in self._sentence(segment) for m in s.mentions if m.start < mention.end + 4]
        for slot in ("obel", "cresty_neck", "body_condition"):
            if slot in heads:
                return slot
        if self._lame_near(segment) or "lameness" in heads:
            return "lameness"
        laminitic = any(m.get("findings") == "laminitis" for s in self._sentence(segment) for m in s.mentions)
        if laminitic:
            return "obel"
        return "lameness" if self._on_a_foot(mention) else None

    def _on_a_foot(self, mention: Mention) -> bool:
        """ "Grade four on it", "grade two on the near fore": what is graded on a foot is how lame it is."""
        said = (mention, mention.stands_for or mention)  # "grade three, no, four on the left front"
        graded = any(m.start > 0 and self._words[m.start - 1] in ("grade", "graded") for m in said)
        behind = next((m for at in said for m in self._talk.starting_in(at.end, at.end + 3) if m.get("feet")), None)
        return graded and any(self._words[m.end : m.end + 1] == ["on"] for m in said) and behind is not None
