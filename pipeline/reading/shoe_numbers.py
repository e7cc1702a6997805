"""Numbers about the shoe: which of them are its size."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import LENGTHS, LONG_TIMES, UNPLACED
from pipeline.reading.numbers import Number
from pipeline.reading.other_counts import counts_other_things, leads_to_foot, numbers_other_things
from pipeline.reading.shoeing_line import alone, feet_meant, feet_of, line_before, named_feet, told_of
from pipeline.reading.size_ranges import SizeRanges, new_on_a_foot, size_name
from pipeline.reading.talk import Segment

_CARRIES = frozenset({"are", "is", "'s", "take", "takes", "get", "gets", "at"})
_LARGEST = 12  # the largest shoe size kept
_SMALL_SIZE = Fraction(7, 2)  # below four a bare number beside feet is no count of nails; common practice, no source
_KINDS = ("shoe_types", "shoe_materials")
_HEADS = (*_KINDS, "measures", "work")
_SHOES = frozenset({"shoes", "plates", "irons", "resets", "trims", "removes", "ones"})
_CLOSED: tuple[list[str], ...] = ([], ["."], [","], ["on"], ["in"], ["and"])
_NEW = (["a", "new"], ["brand", "new"])
_AS_WELL = (["as", "well"], ["too"], ["again"])
_TO_THE_SHARE = 5  # tokens from the size to "one on each"
_WITHIN = frozenset({"in", "on", "to", "for"})
_FIT = frozenset({"small", "big", "large", "tight", "wide", "narrow"})


class ShoeNumbers(SizeRanges):
    """Rules for sizes."""

    def _size(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before, after = self._before(mention), self._after(mention)
        cued = before is not None and before.get("measures") == "shoe_size"
        if self._of_something_else(mention, number, cued=cued):
            return False
        if cued and self._in_a_row(mention):
            return True  # read to its end, or left to others
        here = self._frame is not None and self._frame.sentence == segment.sentence
        framed_by = self._frame.slot if here and self._frame is not None else None
        if framed_by == "nail_size" and not cued and number.aughts is None:
            return False
        wedged = framed_by == "wedge"
        thought = wedged and not cued and self._degrees_thought_of(segment, mention, number)
        if thought and not self._among_shoes(segment):
            return False
        if before is not None and before.get("measures") in ("body_condition", "cresty_neck"):
            return False
        if not cued and self._scored_then(segment):
            return False
        between = self._between(mention, number)
        if between is not None:
            self._set_frame("shoe_size", segment)
            return self._add(segment, "shoe_size", between[0], mention, between[1])
        pair = mention.start > 1 and self._words[mention.start - 2 : mention.start] == ["pair", "of"]
        if not (
            cued
            or pair
            or (number.aughts and (self._words[mention.start] != "zero" or self._among_shoes(segment, mention)))
            or self._framed(segment, mention, number)
            or ((number.article or number.plural) and after is not None and after.is_any(_KINDS) and number.value <= 12)
        ):
            return False
        self._set_frame("shoe_size", segment)
        ranged = self._to_the_next(segment, mention, number)
        if ranged is not None:
            return self._add(segment, "shoe_size", ranged[0], mention, ranged[1])
        return self._add(segment, "shoe_size", size_name(number), mention)

    def _one_a_foot(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Four number fives, one on each foot": the size of shoes; asked where nails, or their size, were told."""
        size = self._after(mention) if number.value in (2, 3, 4) else None
        if size is not None and size.get("measures") == "shoe_size":
            size = self._talk.mention_starting(size.end)
        if size is None or size.number is None or not self._shoes_in_plural(size, size.number):
            return False
        behind = self._talk.starting_in(size.end, size.end + _TO_THE_SHARE)
        one = next((m for m in behind if m.number is not None and m.number.value == 1), size)
        foot = self._after(one, _WITHIN)
        each = foot is not None and (foot.get("totals") == "each" or self._words[foot.start] == "each")
        if one is size or foot is None or not each:
            return False
        self._used.update((mention.start, size.start, one.start))
        line, here = line_before(self._talk, segment), self._sentence(segment)
        told = told_of(segment, line, mention.start, "shoe_size", "nails", "nail_size")
        nailed = any(m.get("measures") == "nails" and m.start < mention.start for s in here for m in s.mentions)
        paired = number.value == 4 or any(len(named_feet(s)) == number.value for s in (*line, *here))
        place = self._talk.mention_starting(foot.end)  # "one in each heel"
        if told or nailed or not paired or (place is not None and place.get("zones")):
            self._talk.unread.append((mention.start, one.end, UNPLACED))
            return True
        self._set_frame("shoe_size", segment)
        self._add(segment, "shoe_size", size_name(size.number), mention, size.end)
        segment.drafts[-1].evidence.add(one.start)
        return True

    def _shoes_in_plural(self, size: Mention, number: Number) -> bool:
        """ "Fives", "double aughts", "five rims", "five shoes"."""
        kind = self._talk.mention_starting(size.end)
        told = (kind is not None and kind.is_any(_KINDS)) or not _SHOES.isdisjoint(self._words[size.end : size.end + 1])
        return told or number.plural or number.aughts is not None

    def _among_shoes(self, segment: Segment, alone: Mention | None = None) -> bool:
        """Whether the sentence names a kind of shoe, the number alone in its segment: "steel, zero, rim shoes"."""
        if alone is not None and (alone.start, alone.end) != (segment.start, segment.end):
            return False
        return any(m.is_any(_KINDS) for s in self._sentence(segment) for m in s.mentions)

    def _framed(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """Whether what stands around the number makes a size of it, without the word."""
        noun = number.article or number.plural
        return (
            (noun and self._shoe_talk(segment, mention) and not self._counts_something(mention))
            or (number.plural and (self._on_a_horse(mention) or self._did_not_fit(mention)))
            or self._beside_feet(segment, mention, number)
            or self._of_the_new_one(mention, number)
            or self._of_a_kind(mention, number)
            or self._alone_behind_shoes(segment, mention, number)
        )

    def _as_well(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Size three in front. Hinds new, steel, three as well": what had that number last."""
        if (
            self._words[mention.end : segment.end] not in _AS_WELL
            or segment.start < mention.start
            or not self._shoes_named(segment, mention)
        ):
            return False
        own = [d for s in self._talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
        last = {d.slot: d.value for d in own if d.slot in ("shoe_size", "nails")}
        told = [slot for slot in last if last[slot] == (size_name(number) if slot == "shoe_size" else number.value)]
        return len(told) == 1 and self._add(segment, told[0], last[told[0]], mention)

    def _degrees_thought_of(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Two degree wedges, I thought about threes but twos are plenty"; not "two degree wedges, twos"."""
        plural = number.plural and number.aughts is None
        return plural and not self._alone_behind_shoes(segment, mention, number)

    def _alone_behind_shoes(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Reset four. Plain. Ones. Six nails.", "steel, two, four nails a side": alone behind shoes not sized yet."""
        if number.value.denominator > 2 or not alone(self._talk, segment, mention) or number.value > _LARGEST:
            return False
        half = number.value.denominator == 2 and number.value < _SMALL_SIZE  # "three and a half" may be the nails'
        sized_form = number.plural or number.article or half
        return (sized_form or self._between_their_words(segment, mention, number)) and self._not_sized_yet(
            segment, mention
        )

    def _between_their_words(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """A number alone between two commas, right behind the kind or stuff of the shoe; small, or nails follow."""
        large = number.value > _SMALL_SIZE and not self._nails_behind(segment, mention)
        if large or not segment.joined_by(",") or mention.end - mention.start < segment.end - segment.start:
            return False
        ahead = self._talk.segments[segment.index - 1]
        behind = self._talk.segments[segment.index + 1 : segment.index + 2]
        listed = bool(behind) and behind[0].sentence == segment.sentence and behind[0].joined_by(",", "and", ", and")
        footed = listed and bool(behind[0].having("feet"))
        return listed and not footed and any(m.is_any(_KINDS) for m in ahead.mentions)

    def _not_sized_yet(self, segment: Segment, mention: Mention) -> bool:
        """Whether the line tells of shoes on these feet, and neither of their size nor of their nails."""
        line = line_before(self._talk, segment)
        shod = told_of(segment, line, mention.start, "work", "shoe_type", "shoe_material")
        sized = told_of(segment, line, mention.start, "shoe_size", "nails", "nail_size")
        return bool(shod) and not feet_meant(segment, line) & feet_of(sized)

    def _of_something_else(self, mention: Mention, number: Number, *, cued: bool) -> bool:
        if cued and self._words[mention.start - 1] == "number" and self._horse_behind(mention):
            return True  # "Number two, Buck."
        if counts_other_things(self._talk, mention, number):
            return True
        return numbers_other_things(self._talk, mention) if cued else self._counts_shoes(mention, number)

    def _of_the_new_one(self, mention: Mention, number: Number) -> bool:
        """ "A new two", "a brand new two", "new two on the left front"."""
        led = self._words[mention.start - 2 : mention.start]
        article = led in _NEW and number.value <= _LARGEST
        return article or new_on_a_foot(self._talk, mention)

    def _of_a_kind(self, mention: Mention, number: Number) -> bool:
        """ "Left front's a plain two, reset, six nails": one shoe, its kind, and its size; not "a plain one"."""
        kind = self._talk.mention_ending(mention.start)
        if kind is None or kind.get("shoe_types") is None or self._words[kind.start - 1] != "a":
            return False
        closed = self._words[mention.end : mention.end + 1] in _CLOSED
        return closed and 1 < number.value <= _LARGEST

    def _counts_shoes(self, mention: Mention, number: Number) -> bool:
        """ "Two new shoes in front", "two resets behind": so many shoes, not their size."""
        behind = self._words[mention.end : mention.end + 3]
        if number.aughts is not None or number.plural or _SHOES.isdisjoint(behind) or number.value not in (2, 3, 4):
            return False
        noun = behind[1:] if behind[0] in ("new", "fresh", "old", "same") else behind
        noun = noun[1:] if behind[:2] == ["brand", "new"] else noun
        if noun[:1] in (["front"], ["hind"], ["fore"], ["back"], ["rear"]):
            noun = noun[1:]  # "the two front shoes"
        return not _SHOES.isdisjoint(noun[:1])

    def _on_a_horse(self, mention: Mention) -> bool:
        """ "Ones on Tally, twos on Buck": the sizes of their shoes."""
        name = self._talk.mention_starting(mention.end + 1)
        led = self._words[mention.end : mention.end + 1] in (["on"], ["for"])
        return led and name is not None and name.get("horse") is not None

    def _did_not_fit(self, mention: Mention) -> bool:
        """ "Sevens because the sixes were too small": shoes are what is too small."""
        behind = self._words[mention.end : mention.end + 4]
        fit = behind[2:3] if behind[1:2] == ["too"] else behind[3:4] if behind[2:3] == ["too"] else []
        return behind[:1] in (["were"], ["are"], ["was"], ["got"], ["'re"]) and bool(_FIT & set(fit))

    def _horse_behind(self, mention: Mention) -> bool:
        at = mention.end + 1 if self._words[mention.end : mention.end + 1] == [","] else mention.end
        name = self._talk.mention_starting(at)
        return name is not None and name.get("horse") is not None

    def _in_a_row(self, mention: Mention) -> bool:
        """ "That's shoe number three this year", "number two she's lost since May": the how manieth, no size."""
        ahead, behind = self._words[max(0, mention.start - 3) : mention.start], self._words[mention.end :][:3]
        if ahead[-1:] != ["number"]:
            return False
        told = ahead[:-1][-1:] in (["shoe"], ["is"], ["'s"], ["makes"], ["was"])
        since = behind[:1] in (["since"], ["already"]) or behind[:2] in (["so", "far"], ["to", "go"], ["to", "date"])
        this = behind[:1] in (["this"], ["in"]) and bool(LONG_TIMES & set(behind[1:]))
        lost = behind[:1] in (["he"], ["she"]) and behind[2:3] in (["lost"], ["had"], ["pulled"], ["thrown"], ["cast"])
        return lost or (told and (since or this or behind[:1] in (["lost"], ["gone"])))

    def _beside_feet(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "8s in front, 6s behind"; "plain steel, fronts one, hinds aught"; "new shoes, one and a half, clips"."""
        if self._counts_something(mention) or number.value.denominator > 2 or number.value > _LARGEST:
            return False
        said = [m for m in segment.mentions if m.get("measures") != "nails" or m.start < mention.start]
        if any(m.is_any(("measures", "units", "times", "gaits", "findings")) for m in said):
            return False
        if self._frame is not None and self._frame.slot in LENGTHS and self._measured_last(segment, mention):
            return False
        footed = self._touches_foot(segment, mention)
        if footed and number.plural:
            return not any(m.get("measures") == "nails" for s in self._sentence(segment) for m in s.mentions)
        small = number.value <= _SMALL_SIZE or bool(number.aughts)
        if footed and number.article and small and not self._graded_near(segment):
            return True  # "left front a two, right front a one and a half"
        half = number.value.denominator == 2 and segment.end - segment.start <= mention.end - mention.start + 1
        half = half or (number.value.denominator == 2 and self._words[mention.end : mention.end + 1] == ["with"])
        if small and footed and self._dealt_in_the_line(segment, mention, number):
            return True
        half = half and (number.value < _SMALL_SIZE or not self._nails_behind(segment, mention))
        return small and (footed or half) and self._shoes_named(segment, mention)

    def _measured_last(self, segment: Segment, mention: Mention) -> bool:
        """ "Toe length after the trim, left front three and a half": a measure heads it, and no shoe stands between."""
        told = [m for s in self._sentence(segment) for m in s.mentions if m.start < mention.start and m.is_any(_HEADS)]
        told = [m for m in told if m.get("work") != "trim"]
        return bool(told) and told[-1].get("measures") in LENGTHS

    def _nails_behind(self, segment: Segment, mention: Mention) -> bool:
        """ "Three and a half, six nails", "steel, five, six nails"; not "six, number five nails"."""
        later = (m for s in self._sentence(segment) for m in s.having("measures") if m.start >= mention.end)
        return next((m.get("measures") for m in later), None) == "nails"

    def _dealt_in_the_line(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Reset four. Steel. Fronts three, hinds two.": sizes that differ, of the shoes just told of."""
        others = [m.number for s in self._sentence(segment) for m in s.mentions if m.number is not None]
        dealt = any(n.value != number.value or n.aughts != number.aughts for n in others)
        return (dealt or number.value.denominator == 2) and self._not_sized_yet(segment, mention)

    def _graded_near(self, segment: Segment) -> bool:
        """Whether a grade is spoken of in this sentence or the one before, which "a two" may be."""
        near = [s for s in self._talk.segments if 0 <= segment.sentence - s.sentence <= 1]
        heads = ("lameness", "obel", "grade", "body_condition", "cresty_neck", "wedge")
        graded = any(
            m.get("measures") in heads or m.get("gaits") or m.get("pads") == "wedge" for s in near for m in s.mentions
        )
        framed = self._frame is not None and self._frame.slot in heads
        return graded or framed

    def _touches_foot(self, segment: Segment, mention: Mention) -> bool:
        if mention.stands_for is not None and self._touches_foot(segment, mention.stands_for):
            return True  # "7s in front, no, 8s"
        start = mention.start - 1 if self._words[mention.start - 1] in _CARRIES else mention.start
        segment = next((s for s in self._sentence(segment) if s.start <= mention.start < s.end), segment)
        feet = [m for m in segment.mentions if m.get("feet")]
        near = (m for m in feet if 0 <= m.start - mention.end <= 2)
        return any(m.end == start for m in feet) or any(leads_to_foot(self._talk, mention, m) for m in near)

    def _shoes_named(self, segment: Segment, mention: Mention) -> bool:
        sentence = self._sentence(segment)
        kinds = ("shoe_types", "shoe_materials", "work")
        nailed = any(m.get("measures") == "nails" and m.start < mention.start for s in sentence for m in s.mentions)
        aught = any(m.number is not None and m.number.aughts for s in sentence for m in s.mentions)
        return not nailed and (aught or any(m.is_any(kinds) for s in sentence for m in s.mentions))

    def _counts_something(self, mention: Mention) -> bool:
        after = self._after(mention)
        return after is not None and after.is_any(("units", "measures", "gaits", "findings", "pads"))

    def _shoe_talk(self, segment: Segment, mention: Mention) -> bool:
        """Whether shoes are spoken of in the sentence, so that "a one" is a size."""
        if {"takes", "wears", "wear", "take", "wore", "wearing"} & set(self._words[segment.start : mention.start]):
            return True  # "he takes a two in front"
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
            or any(d.slot == "work" for s in sentence for d in s.drafts)
            or (self._frame is not None and self._frame.slot == "shoe_size")
        )
