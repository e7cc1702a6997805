"""Numbers about the nails: how many hold the shoe, "four outside and three inside", and of which size they are."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.foot_lists import NAMED_FEET
from pipeline.reading.mentions import Mention
from pipeline.reading.nailed import of_a_sized_shoe, size_behind_count
from pipeline.reading.number_context import LEAST_NAIL_SIZE, NumberContext
from pipeline.reading.numbers import Number
from pipeline.reading.shoeing_line import feet_meant, feet_of, line_before, named_feet, put_right_before, told_of
from pipeline.reading.size_ranges import plain
from pipeline.reading.talk import Segment

_TO_THE_SIDE = frozenset({"nails", "nail", "on", "the", "up", "down", "along", "to"})
# Common practice, no source: "four a side, fives" are nails from this size on; "three a side, no, seven": seven in all.
_BIG_NAIL, _MOST_A_SIDE, FEWEST, MOST = 4, 5, 3, 10
_NAILED_WITH, _HELD_BY = (["nailed", "with"], ["held", "with"], ["on", "with"]), (["hanging", "by"], ["on", "by"])
_CLOSING: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["but"], ["in"], ["instead"], ["now"], ["rather"], [";"])
_FAR_ENOUGH = Fraction(3, 2)  # from the shoes' size to that of nails of some of them; common practice, no source
_OF_SHOEING = ("shoe_types", "shoe_materials", "work", "clips", "pads", "traction")
_IN_THE, _BRANCH = 2, range(3, 6)  # words; nails of one side
_WITHIN = frozenset({"in", "on", "to"})
_OF_THE_BODY = ("findings", "gaits", "tester_heads", "pulse_heads", "times")
_OF_SHOES = frozenset({"shoe", "shoes", "plate", "plates"})
_NAILS, _REGULAR = ("nails", "nail_size"), ("regular", "ordinary", "standard")  # nails, beside slims
_SHOES, _UP = _OF_SHOES | {"shod"}, frozenset({"up", "down", "other", "remaining"})


class NailNumbers(NumberContext):
    """Rules for the count and the size of nails."""

    def _nail_size(self, segment: Segment, mention: Mention, number: Number) -> bool:
        if not _OF_SHOES.isdisjoint(self._words[mention.end : mention.end + 1]):
            return False  # "number six nails in front. Behind, number three shoes"
        before, after = self._before(mention), self._after(mention)
        if number.value.denominator == 2 and after is not None and after.get("measures") == "nails":
            self._set_frame("nail_size", segment)  # nobody drives half a nail
            return self._add(segment, "nail_size", plain(number.value), mention, after.end)
        slims = after is not None and after.get("measures") == "slim"
        if number.value.denominator == 2 and before is not None and before.get("measures") == "nails" and not slims:
            self._set_frame("nail_size", segment)  # "nails, three and a half, five in each front"
            return self._add(segment, "nail_size", plain(number.value), mention)
        if number.plural and before is not None and before.get("measures") == "nails":
            self._set_frame("nail_size", segment)  # "nails are three and a halfs"
            size = plain(number.value) + (" slim" if self._slim_ones(mention) else "")
            return self._add(segment, "nail_size", size, mention)
        sized = before is not None and before.get("measures") in ("shoe_size", "nail_size")
        if sized and self._nails_sized(segment, mention):
            return False
        first = mention.stands_for or mention  # "nailed with fours, no, three and a halfs"
        at = before.start if sized and before is not None else first.start
        headed = (sized or number.plural) and number.aughts is None and self._headed_by_nails(segment, at)
        if headed and number.value >= LEAST_NAIL_SIZE:
            self._set_frame("nail_size", segment)
            behind = after is not None and after.get("measures") == "slim"
            size = plain(number.value) + (" slim" if behind or self._slim_ones(mention) else "")
            return self._add(segment, "nail_size", size, mention, after.end if behind and after else mention.end)
        ahead = self._talk.mention_ending(mention.start)
        beside = [one for one in (after, ahead) if one is not None]
        slim = any(one.get("measures") == "slim" for one in beside) or self._slim_ones(mention)
        nails = after is not None and after.get("measures") == "nails"
        nail_cue = self._nail_cue(segment, mention, number, before, sized)
        if number.plural and self._words[mention.end : mention.end + 2] == ["for", "nails"]:
            self._set_frame("nail_size", segment)
            return self._add(segment, "nail_size", plain(number.value), mention, mention.end + 2)
        if number.aughts is not None or not (slim or (sized and nails) or nail_cue):
            return False
        end = max(after.end, mention.end) if (slim or nails) and after is not None else mention.end
        self._set_frame("nail_size", segment)
        return self._add(segment, "nail_size", plain(number.value) + (" slim" if slim else ""), mention, end)

    def _nail_cue(
        self, segment: Segment, mention: Mention, number: Number, before: Mention | None, sized: bool
    ) -> bool:
        """Whether what stands around the number says that it is the size of nails."""
        told = before is not None and (
            before.get("measures") == "nail_size"
            or (number.value >= LEAST_NAIL_SIZE and self._nail_word_before(before))
            or self._after_nails(segment, before, mention)
        )
        told = told or (number.plural and self._plural_after_nails(segment, number))
        old = mention.stands_for  # "size two, six nails, no, eight, eight nails"
        recounted = old is not None and self._after(old) is self._after(mention) is not None
        told = told or (not recounted and self._before_their_count(segment, number))
        if number.plural and number.value >= LEAST_NAIL_SIZE and self._words[mention.start - 1] in _REGULAR:
            told = told or any(m.get("measures") == "slim" for s in self._sentence(segment) for m in s.mentions)
        if not told and number.plural and number.aughts is None:
            told = self._on_sized_feet(segment, mention, number)
        return told or (sized and self._more_nails(segment, mention, number))

    def _more_nails(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "The nails were number sixes behind, number fives in front": nails of other feet, not their shoes."""
        if not number.plural:
            return self._other_feet_nails(segment, mention, number)
        drafts = [d for s in self._sentence(segment) if s.index <= segment.index for d in s.drafts]
        told = bool(drafts) and drafts[-1].slot == "nail_size"
        if not drafts and number.value >= LEAST_NAIL_SIZE and segment.having("feet"):
            return self._nails_told_before(segment)
        return told and _SHOES.isdisjoint(self._words[drafts[-1].end : mention.end + 1])

    def _nails_told_before(self, segment: Segment) -> bool:
        """ "Size one all round. Size four nails in front. Size fives behind": the shoes had their size already."""
        told = [s for s in self._talk.segments[: segment.index] if s.horse == segment.horse]
        near = [d.slot for s in told if s.sentence == segment.sentence - 1 for d in s.drafts]
        sized = any(d.slot == "shoe_size" for s in told for d in s.drafts)
        return sized and near[:1] == ["nail_size"] and "shoe_size" not in near

    def _slim_ones(self, mention: Mention) -> bool:
        """ "Nails were fives, slim ones"; "fives, slims", "number five on both, slims"."""
        foot = self._talk.mention_starting(mention.end) or self._talk.mention_starting(mention.end + 1)
        end = foot.end if foot is not None and foot.get("feet") is not None else mention.end
        if self._words[end : end + 1] != [","]:
            return False
        slim = self._talk.mention_starting(end + 1)
        closes = self._words[slim.end : slim.end + 1] if slim is not None else []
        return slim is not None and slim.get("measures") == "slim" and closes in (["ones"], [","], ["."], [])

    def _nail_word_before(self, before: Mention) -> bool:
        """ "Nails size five", "nails are number five": the size word itself follows the nails."""
        if before.get("measures") != "shoe_size":
            return False
        head = self._talk.mention_ending(before.start)
        if head is None and self._words[before.start - 1] not in (".", "?", "!"):
            head = self._talk.mention_ending(before.start - 1)
        return head is not None and head.get("measures") == "nails"

    def _plural_after_nails(self, segment: Segment, number: Number) -> bool:
        """ "Eight nails to a shoe, sevens": a plural right after the nails of a sized shoe."""
        drafts = [d for s in self._sentence(segment) if s.index <= segment.index for d in s.drafts]
        alone = (segment.start, segment.end) == (number.start, number.end) and segment.joined_by("start")
        if not drafts and (alone or self._words[segment.start] == "they"):  # "Eight nails. Sevens.", "They're sevens."
            before = self._talk.sentence(segment.sentence - 1)
            drafts = [d for s in before if s.horse == segment.horse for d in s.drafts]
        own = [d for s in self._talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
        nailed = bool(drafts) and drafts[-1].slot == "nails"
        return nailed and (any(d.slot == "shoe_size" for d in own) or number.value >= _BIG_NAIL)

    def _before_their_count(self, segment: Segment, number: Number) -> bool:
        """ "Size three, number fives, six apiece": a second size between the shoe's and the count is the nails'."""
        pause = self._words[number.end : number.end + 1] == [","]
        behind = self._talk.mention_starting(number.end + 1) if pause else None
        if behind is None or behind.number is None:
            return False
        drafts = [d.slot for s in self._sentence(segment) for d in s.drafts if d.start < number.start]
        counted = self._talk.mention_starting(behind.end)
        named = counted is not None and (counted.get("totals") is not None or counted.get("measures") == "nails")
        sized = "shoe_size" in drafts[-9 if self._words[number.start - 1] == "used" else -1 :]
        return named and sized and number.value >= LEAST_NAIL_SIZE and not segment.having("feet")

    def _on_sized_feet(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "New shoes, size two. Fives in front, sixes behind.": the shoes of these feet had their size already.

        Where one size was told of more feet, as "threes all round" of "four on the left front", it must be far from it.
        """
        first = mention.stands_for or mention
        home = self._talk.segment_at(first.start) or segment
        if number.value < LEAST_NAIL_SIZE or put_right_before(self._talk, mention, home):
            return False
        line = line_before(self._talk, home)
        sized = told_of(home, line, first.start, "shoe_size")
        own = named_feet(segment) or feet_meant(home, line)
        if not sized or not own <= feet_of(sized):
            return False
        last = next(d for d, feet in reversed(sized) if own & feet)
        narrower = all(own < feet for _, feet in sized)
        single = len(own) == 1 and self._words[mention.end : mention.end + 1] == ["in"]
        size = Fraction(str(last.value).rsplit("-", 1)[-1])  # every nought is none
        if number.value == size:
            return False  # "new sevens in front. Sevens because the sixes were small": the same once more
        return not narrower or single or number.value - size >= _FAR_ENOUGH

    def _nails_sized(self, segment: Segment, mention: Mention) -> bool:
        """ "Number five nails, number three, side clips": nails have one size, so the second is their shoe's."""
        before, after = self._before(mention), self._after(mention)
        worded = after is not None and after.get("measures") in ("nails", "slim")
        if before is None or before.get("measures") != "shoe_size" or worded:
            return False
        if not any(d.slot == "nail_size" for s in self._talk.segments[: segment.index + 1] for d in s.drafts):
            return False
        line = line_before(self._talk, segment)
        own = feet_meant(segment, line)
        told = told_of(segment, line, mention.start, "nail_size", "shoe_size")
        nails = feet_of([(d, feet) for d, feet in told if d.slot == "nail_size"])
        return own <= nails and not own & feet_of([(d, feet) for d, feet in told if d.slot == "shoe_size"])

    def _after_nails(self, segment: Segment, before: Mention, mention: Mention) -> bool:
        """ "Three nails a side, size five": a size right after the nails is theirs."""
        if before.get("measures") != "shoe_size" or self._frame is None or self._frame.slot not in _NAILS:
            return False
        number = mention.number
        small = number is not None and number.value < LEAST_NAIL_SIZE
        alone = mention.end - before.start == segment.end - segment.start - (self._words[segment.start] == "all")
        if small or (self._frame.sentence != segment.sentence and self._frame.slot == "nails" and not alone):
            return False  # "Four nails a side. Size five.": a size alone behind the nails of a sized shoe is theirs
        own = self._talk.segments[: segment.index + 1]
        drafts = [d for s in own if s.horse == segment.horse for d in s.drafts]
        if not drafts or drafts[-1].slot not in _NAILS:
            return False
        return any(d.slot == "shoe_size" for d in drafts) or size_behind_count(self._talk, drafts, before, mention)

    def _nails(self, segment: Segment, mention: Mention, number: Number) -> bool:
        if number.aughts is not None or number.value.denominator != 1:
            return False
        outside = self._two_sides(segment, mention, number)
        if outside is not None:
            return outside
        after = self._past_their_size(self._after(mention)) or self._up_each_side(mention)
        if self._in_a_foot(segment, mention, number):
            return self._counted(segment, mention, number)
        if after is None:
            held = self._held_on_with(mention, number)
            return self._counted(segment, mention, number) if held else self._nails_after_head(segment, mention, number)
        nails = after.get("measures") == "nails" or (after.get("measures") == "slim" and after.start > mention.end)
        if self._words[mention.start - 2 : mention.start] in _HELD_BY or (nails and number.value < 2):
            return False  # "hanging by two nails"; one nail holds no shoe: "one nail sat close"
        if nails:
            side = self._after(after)
            doubled = side is not None and side.get("totals") == "each_side"
            end = side.end if doubled and side is not None else after.end
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value * 2 if doubled else number.value, mention, end)
        if after.get("totals") == "each_side":
            whole = mention.stands_for is not None and number.value > _MOST_A_SIDE
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value if whole else number.value * 2, mention, after.end)
        if after.get("totals") == "each" and not self._sized(mention) and number.value <= MOST:
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value, mention, after.end)
        return self._nails_after_head(segment, mention, number)

    def _held_on_with(self, mention: Mention, number: Number) -> bool:
        """ "Left the shoe on with five", "back on with six and he walked off sound"."""
        before = [w for w in self._words[max(0, mention.start - 4) : mention.start] if w not in ("the", "other")]
        counted = FEWEST <= number.value <= MOST and not number.plural and number.high is None
        return before[-2:] == ["on", "with"] and counted and self._words[mention.end : mention.end + 1] in _CLOSING

    def _counted(self, segment: Segment, mention: Mention, number: Number) -> bool:
        self._set_frame("nails", segment)
        return self._add(segment, "nails", number.value, mention)

    def _past_their_size(self, after: Mention | None) -> Mention | None:
        """ "Two size four nails a side": counted before their size is said."""
        worded = after is not None and after.get("measures") in ("shoe_size", "nail_size")
        size = self._talk.mention_starting(after.end) if worded and after is not None else after
        nails = self._after(size, _WITHIN) if size is not None and size.number is not None else None
        if nails is None or size is None or size.number is None:
            return after
        big = worded or (size.number.plural and size.number.value >= LEAST_NAIL_SIZE)  # "six fives in each foot"
        told = (nails.get("totals") == "each" and big) or nails.get("measures") == "slim"
        return nails if told or (worded and nails.get("measures") == "nails") else after  # "six five slims"

    def _up_each_side(self, mention: Mention) -> Mention | None:
        """ "Three up each side", "four down either side", "the five other nails"."""
        side = self._after(mention, _UP)
        told = side is not None and (side.get("totals") == "each_side" or side.get("measures") == "nails")
        return side if told else None

    def _in_a_foot(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Left that nail out, so five in the left front", "nailed with five in each foot": nails are spoken of."""
        if number.plural or number.article or number.high is not None:
            return False
        foot = next((m for m in segment.having("feet") if 0 <= m.start - mention.end <= _IN_THE), None)
        if foot is None or self._sized(mention) or not FEWEST <= number.value <= MOST:
            return False
        if (led := self._words[mention.end]) != "in":  # "fives everywhere, six on a front"
            return led in ("on", "to") and self._of_that_nail(segment, mention, foot)
        sentence = self._sentence(segment)
        nailed = any(m.get("measures") == "nails" for s in sentence for m in s.mentions)
        sized = any(m.get("measures") == "shoe_size" for s in sentence for m in s.mentions)
        if self._of_that_nail(segment, mention, foot):
            return True
        sizing = (
            self._frame is not None and self._frame.slot == "nail_size" and self._frame.sentence == segment.sentence
        )
        if not sizing and of_a_sized_shoe(self._talk, segment, number.value, foot):
            return True
        led = self._words[mention.start - 1]
        if self._words[mention.start - 2 : mention.start] in _NAILED_WITH or (nailed and led in ("at", "with", "to")):
            return True
        ahead = number.value > FEWEST or any(
            m.get("measures") == "nails" and m.start < mention.start for s in sentence for m in s.mentions
        )
        return nailed and ahead and not sized and not sizing and led in ("so", "and", "makes", "leaves", ",", ".")

    def _of_that_nail(self, segment: Segment, mention: Mention, foot: Mention) -> bool:
        """ "With five slims, seven in the left front": so many of the nails whose size was said for every foot."""
        drafts = [d for s in self._sentence(segment) if s.index <= segment.index for d in s.drafts]
        if not drafts or drafts[-1].slot != "nail_size":
            return False
        between = [m for m in self._talk.having("feet") if drafts[-1].start <= m.start < mention.start]
        if str(foot.get("feet"))[:-1] not in ("L", "R", "bare_"):  # "five slims all round, six in the fronts"
            everywhere = [m for m in between if m.get("feet") == "all"]
            if (
                between != everywhere
                or (foot.get("feet") not in NAMED_FEET and self._words[foot.start] != "each")
                or not (everywhere or self._words[drafts[-1].end - 1].endswith("s"))  # "fives", of every foot
            ):
                return False
            between = []
        return not between and self._words[mention.start - 1] in (",", "and", "so", "with")

    def _sized(self, mention: Mention) -> bool:
        before = self._before(mention)
        return before is not None and before.get("measures") in ("shoe_size", "nail_size")

    def _nails_after_head(self, segment: Segment, mention: Mention, number: Number) -> bool:
        before = self._before(mention)
        if before is None or before.get("measures") != "nails" or number.plural or number.value > 12:
            return False
        return self._counted(segment, mention, number)

    def _two_sides(self, segment: Segment, mention: Mention, number: Number) -> bool | None:
        """ "Four outside and three inside" is seven nails."""
        in_and_out = self._in_and_out(segment, mention, number)
        if in_and_out is not None:
            return in_and_out
        if self._side_and_side(segment, mention, number):
            return True
        first = self._after(mention, _TO_THE_SIDE)
        if first is None or first.get("totals") not in ("outside", "inside"):
            first = self._skip_nails(first)
            if first is None:
                return None
        following = next((m for m in self._talk.mentions if m.number and m.start >= first.end and not m.dropped), None)
        if following is None or following.start - first.end > 3 or following.number is None:
            return None
        second = self._after(following, _TO_THE_SIDE)
        second = (
            second if second is not None and second.get("totals") in ("outside", "inside") else self._skip_nails(second)
        )
        short = "in" if first.get("totals") == "outside" else "out"
        if second is None and self._words[following.end : following.end + 1] == [short]:
            second = Mention(following.end, following.end + 1, (following.end,), {"totals": f"{short}side"})
        if second is None or second.get("totals") == first.get("totals"):
            return None
        self._used.add(following.start)
        self._set_frame("nails", segment)
        added = self._add(segment, "nails", number.value + following.number.value, mention, second.end)
        later = next((s for s in self._talk.segments if s.start <= second.start < s.end), segment)
        if added and later is not segment and later.having("feet") and not segment.having("feet"):
            draft = segment.drafts.pop()  # "three outside and two inside on the hinds"
            draft.segment = later
            later.drafts.append(draft)
        return added

    def _in_and_out(self, segment: Segment, mention: Mention, number: Number) -> bool | None:
        """ "Three in and two out": said short for inside and outside."""
        words = self._words[mention.end : mention.end + 2]
        if not words or words[0] not in ("in", "out"):
            return None
        other = self._talk.mention_starting(mention.end + (2 if words[1:] == ["and"] else 1))
        if other is None or other.number is None:
            return None
        if self._words[other.end : other.end + 1] != ["out" if words[0] == "in" else "in"]:
            return None
        self._used.add(other.start)
        self._set_frame("nails", segment)
        return self._add(segment, "nails", number.value + other.number.value, mention, other.end + 1)

    def _side_and_side(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Reset in front, steel, three and three": as many on the other side, or one fewer."""
        joined = self._words[mention.end : mention.end + 1] == ["and"]
        other = self._talk.mention_starting(mention.end + 1) if joined else None
        if other is None or other.number is None:
            return False
        pair = (number, other.number)
        counted = all(n.value in _BRANCH and not (n.plural or n.article or n.high or n.out_of) for n in pair)
        if not counted or abs(number.value - other.number.value) > 1 or self._headed(mention):
            return False
        behind = self._talk.mention_starting(other.end)
        nails = behind is not None and behind.get("measures") == "nails"
        end = behind.end if behind is not None and nails else other.end
        closed = self._words[end : end + 1] in _CLOSING or self._foot_follows(end)
        if not closed or not (nails or self._shod_here(segment)):
            return False
        self._used.add(other.start)
        self._set_frame("nails", segment)
        return self._add(segment, "nails", number.value + other.number.value, mention, end)

    def _headed(self, mention: Mention) -> bool:
        """Whether a measure word stands before the number, with no comma between."""
        head = self._before(mention)
        return head is not None and "," not in self._words[head.end : mention.start]

    def _shod_here(self, segment: Segment) -> bool:
        """Whether shoes are spoken of in the sentence or the line of short ones before it, and nothing else is."""
        said = [*line_before(self._talk, segment), *self._sentence(segment)]
        if any(m.is_any(_OF_THE_BODY) for s in said for m in s.mentions):
            return False
        return any(m.is_any(_OF_SHOEING) for s in said for m in s.mentions) or any(s.drafts for s in said)

    def _skip_nails(self, mention: Mention | None) -> Mention | None:
        if mention is None or mention.get("measures") != "nails":
            return None
        side = self._after(mention, _TO_THE_SIDE)
        return side if side is not None and side.get("totals") in ("outside", "inside") else None
