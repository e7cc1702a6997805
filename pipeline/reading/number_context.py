"""What stands around a number: measure words before it, units behind it, and what was counted last.

Shared ground of the rules in nail_numbers.py, shoe_numbers.py and body_numbers.py.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import value_problem

LENGTHS = ("toe_length", "heel_height", "sole_depth", "hoof_width")
ANGLES = ("toe_angle", "heel_angle")
UNPLACED = "a number that could not be placed"
SCORES = ("body_condition", "cresty_neck", "obel", "lameness")
# A heading such as "Sizes, fronts are two, hinds are one" opens a frame without a number beside it.
_HEADINGS = ("shoe_size", "nail_size", "body_condition", "cresty_neck", "nails")
# Little words that may stand between a measure word and its number.
LIGHT = frozenset({
    "a", "an", "the", "of", "is", "'s", "are", "at", "about", "was", "were", "came", "comes", "to", "in", "on", "with",
    "just", "around", "roughly", "measured", "measures", "measuring", "reading", "reads", "still", "now", "only", "got",
    "has", "had", "it", "he", "she", "they", "'re", "for", "out", "down", "up", "by", ",", "uh", "um", "er", "erm",
    ":", "say", "be", "being", "score", "scored", "scores", "grade", "grades", "graded", "maybe", "like", "give", "or",
    "take", "nearly", "almost", "approximately", "call", "him", "her", "i", "'d", "make", "come", "that", "and", "his",
    "both", "there", "today", "again", "exactly", "solid", "good", "big", "full", "speak",
})  # fmt: skip
CHANGING = frozenset({
    "dropped", "slipped", "slid", "fallen", "fell", "gone", "went", "come", "came", "crept", "eased", "risen", "rose",
    "improved", "moved", "changed",
})  # fmt: skip
_HEADING = frozenset({
    "the", "his", "her", "then", "now", "so", "and", "first", "measured", "measuring", "for", "here", "are", "on",
    "next",
})  # fmt: skip
# A bare number from the one to the other may as well be degrees; common practice, no source.
_ANGLE_FROM, _ANGLE_TO = 30, 69
_TOE_FROM, _TOE_TO = 44, 62  # degrees of a toe on a sound foot; common practice, no source
NO_ANGLE = "degrees, but not of which angle"
_TURNS = frozenset({"visits", "rounds", "shoeings", "trips", "cycles", "goes", "times"})
LONG_TIMES = frozenset({
    "year", "years", "spring", "springs", "summer", "summers", "fall", "falls", "autumn", "autumns", "winter",
    "winters", "season", "seasons", "month", "months", "week", "weeks", "day", "days",
})  # fmt: skip


LEAST_NAIL_SIZE = 3  # nails below size three hold no horse shoe; common practice, no source
_TO_A_FOOT = 1  # tokens from a size to the foot: "in the hinds"
PUT_RIGHT = "put right in the same sentence"
_AHEAD = 8  # tokens from a measure word to its number: "crest not much to speak of, call it a one"
_FURTHER = frozenset({"more", "extra", "full"})
_OF_TIME = frozenset({"day", "week", "fortnight", "month"})
_OF_A = frozenset({"of", "an", "a"})
_NAILED_WITH = 5  # tokens
_SIZE = frozenset({"size", "sizes"})
_LITTLE = frozenset({"fillers", "horse_cues"})
_OF_NAILS = frozenset({
    "in", "on", "for", "the", "his", "her", "of", ",", ":", "are", "is", "'s", "were", "was", "i", "we", "used", "use",
    "put", "drove", "all", "this", "time", "today", "just", "being", "both",
})  # fmt: skip


@dataclass
class Frame:
    """The last thing counted, which a bare number behind a foot still counts ("off fore forty").

    ``unit`` is in millimetres for a length, None while none was said.
    """

    slot: str
    unit: Fraction | None
    sentence: int
    heading: bool = False


def may_be_a_toe(number: Number) -> bool:
    """Whether so many degrees are likely those of a toe."""
    return _TOE_FROM <= number.value <= _TOE_TO


class NumberContext:
    """The numbers of one memo with their neighbours; the rules build on it."""

    def __init__(self, talk: Talk) -> None:
        self._talk = talk
        self._words = talk.words
        self._frame: Frame | None = None
        self._used: set[int] = set()
        # Looked up once for a number, since many rules ask: no mention changes while the numbers are read.
        self._ahead: dict[Mention, Mention | None] = {}
        self._behind: dict[tuple[Mention, frozenset[str]], Mention | None] = {}

    def _sentence(self, segment: Segment) -> list[Segment]:
        return [s for s in self._talk.sentence(segment.sentence) if s.horse == segment.horse]

    def _before(self, mention: Mention) -> Mention | None:
        """The measure word before the number with only light words between."""
        if mention not in self._ahead:
            self._ahead[mention] = self._look_ahead(mention)
        return self._ahead[mention]

    def _look_ahead(self, mention: Mention) -> Mention | None:
        index = mention.start
        for _ in range(_AHEAD):
            found = self._talk.mention_ending(index)
            if found is not None and found.is_any(("measures", "zones", "totals", "pads")):
                sized = found.get("measures") in ("shoe_size", "nail_size")
                return None if sized and self._apart(found.end, mention.start) else found
            index -= 1
            if index < 0 or not (self._words[index] in LIGHT or self._changed_to(index)):
                break
        return self._before(mention.stands_for) if mention.stands_for is not None else None

    def _pondered(self, mention: Mention) -> Mention | None:
        """ "Body condition, oh, five": what is scored, before a sigh."""
        at = mention.start
        while at and self._words[at - 1] in (",", "oh", "well", "ah"):
            at -= 1
        head = self._talk.mention_ending(at)
        return head if head is not None and head.get("measures") in SCORES and self._unit(mention)[0] is None else None

    def _given(self, place: Mention) -> bool:
        """Whether the place has a number of its own ahead of it: "48 degrees at the toe and 42 degrees at the heel"."""
        last = self._talk.mention_ending(place.start - 2)
        led = self._words[place.start - 2 : place.start] == ["at", "the"]
        return led and last is not None and (last.number is not None or last.get("units") == "degree")

    def _beside_angles(self, segment: Segment, before: Mention | None) -> bool:
        """ "Fifty at the heel, three inches long": it is the toe that is so long."""
        frame = self._frame
        angled = frame is not None and frame.slot in ANGLES and frame.sentence == segment.sentence
        return angled and (before is None or self._given(before))

    def _of_a_finding(self, segment: Segment) -> bool:
        """ "A crack at the heel, an inch long": no measure of the foot, in words of its own."""
        told = [m.readings["findings"] for s in self._sentence(segment) for m in s.having("findings")]
        return bool(told) and "long_toe" not in told and not any(m.get("measures") in LENGTHS for m in segment.mentions)

    def _headed_by_nails(self, segment: Segment, at: int) -> bool:
        """ "Nails in front are fives", "the nails I used on Tally were fives": whether a size at the token is theirs.

        They are not counted, and only feet or a name stand between. Also what a shoe was nailed on with.
        """
        first = self._talk.sentence(segment.sentence)[0].start
        if self._words[at - 1] == "with" and "nailed" in self._words[max(first, at - _NAILED_WITH) : at]:
            return True
        while at > first:
            told = self._talk.mention_ending(at)
            if told is not None and told.get("measures") == "nails":
                counted = self._talk.mention_ending(told.start)
                return counted is None or counted.number is None
            if told is not None and told.is_any(("feet", "horse")):
                at = told.start
            elif self._words[at - 1] in _OF_NAILS:
                at -= 1
            else:
                return False
        return False

    def _other_feet_nails(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Number six nails in the fronts and number five in the hinds": the same word of size, before another foot.

        Where the sentence sized the shoes too, the second size may be theirs.
        """
        drafts = [d for s in self._sentence(segment) if s.index <= segment.index for d in s.drafts]
        if not drafts or drafts[-1].slot != "nail_size" or any(d.slot == "shoe_size" for d in drafts):
            return False
        foot = next((m for m in segment.having("feet") if mention.end <= m.start <= mention.end + _TO_A_FOOT), None)
        led = self._words[drafts[-1].start - 1] == self._words[mention.start - 1]
        nailed = self._words[drafts[-1].end - 1] in ("nails", "nail")
        return led and nailed and foot is not None and number.value >= LEAST_NAIL_SIZE

    def _changed_to(self, index: int) -> bool:
        """ "His condition has slipped to four": the word for a change, right before "to"."""
        return self._words[index] in CHANGING and self._words[index + 1 : index + 2] in (["to"], ["down"], ["up"])

    def _apart(self, start: int, end: int) -> bool:
        """A comma parts a size word from its number, unless it only holds a filler: "size, uh, one"."""
        between = set(self._words[start:end])
        return "," in between and not between & {"uh", "um", "er", "erm"}

    def _after(self, mention: Mention, light: frozenset[str] = frozenset()) -> Mention | None:
        """The mention right behind the number, after at most a few light words."""
        if (mention, light) not in self._behind:
            self._behind[mention, light] = self._look_behind(mention, light)
        return self._behind[mention, light]

    def _look_behind(self, mention: Mention, light: frozenset[str]) -> Mention | None:
        index = mention.end
        for _ in range(3):
            found = self._talk.mention_starting(index)
            if found is not None and not found.readings.keys() <= _LITTLE:
                return found
            if index >= len(self._words) or self._words[index] not in light:
                break
            index += 1
        return self._after(mention.stands_for, light) if mention.stands_for is not None else None

    def _unit(self, mention: Mention) -> tuple[str | None, Mention | None]:
        after = self._after(mention, _OF_A)
        if after is not None and after.get("units"):
            return after.readings["units"], after
        if mention.end < len(self._words) and self._words[mention.end] == '"':
            return "inch", None
        return None, None

    def _is_time(self, mention: Mention) -> bool:
        plain = _FURTHER.isdisjoint(self._words[mention.end : mention.end + 1])  # not "in two more weeks"
        after = None if plain else self._talk.mention_starting(mention.end + 1)
        unit = after.get("units") if after is not None else self._unit(mention)[0]
        return unit in _OF_TIME

    def _long_ago(self, mention: Mention) -> bool:
        """ "Two years ago": a word of an earlier time stands right behind the number."""
        after = self._talk.mention_starting(mention.end)
        return after is not None and after.get("times") is not None and self._words[after.start] in LONG_TIMES | _TURNS

    def _add(
        self, segment: Segment, slot: str, value: str | Fraction, mention: Mention, end: int | None = None
    ) -> bool:
        problem = value_problem(slot, value if isinstance(value, str) else float(value))
        if problem:
            return False
        end = max(end or 0, mention.end)  # "a half inch, no, three eighths": the unit stands before
        draft = Draft(slot, value, segment, mention.start, end, mention.match)
        draft.evidence.update(range(mention.start, end))
        head = self._before(mention)
        if head is not None and head.is_any(("measures",)):
            draft.evidence.update(head.literal)
        draft.note(f"{slot}: from the number")
        if slot == "lameness" and (begun := self._begun_in(segment, mention)) is not segment:
            draft.note("elliptic")  # on the foot of the grade that it stands for
            if begun.sentence == segment.sentence:
                draft.note(PUT_RIGHT)
        if slot in (*ANGLES, *LENGTHS) and self._second(segment, mention, slot):
            self._talk.unread.append((mention.start, mention.end, UNPLACED))
        segment.drafts.append(draft)
        self._used.add(mention.start)
        return True

    def _begun_in(self, segment: Segment, mention: Mention) -> Segment:
        """The segment of the number that this one stands for: "lame, grade three. Well, I'd call it two"."""
        begun = mention.stands_for
        return (self._talk.segment_at(begun.start) if begun is not None else None) or segment

    def _scored_then(self, segment: Segment) -> bool:
        """ "Condition seven. She was an eight last time.": the score just told, at an earlier time."""
        frame = self._frame
        if frame is None or frame.slot not in ("body_condition", "cresty_neck"):
            return False
        near = segment.sentence - frame.sentence == 1
        elsewhere = segment.having("feet") or any(m.get("measures") for m in segment.mentions)
        return near and not elsewhere and bool(segment.having("times", "history"))

    def _leave(self, segment: Segment, mention: Mention) -> None:
        before, after = self._before(mention), self._after(mention)
        counting = [m for m in (before, after) if m is not None and m.is_any(("measures",))]
        if (counting and not (mention.number and mention.number.fraction)) or self._second(segment, mention):
            self._talk.unread.append((mention.start, mention.end, UNPLACED))

    def _second(self, segment: Segment, mention: Mention, slot: str | None = None) -> bool:
        """ "Angles in front, fifty and fifty two": which foot has the second of two measures is not told."""
        if self._words[mention.start - 1] != "and":
            return False
        ahead = self._talk.mention_ending(mention.start - 1)
        told = [d for s in self._talk.sentence(segment.sentence) for d in s.drafts if d.slot in (*ANGLES, *LENGTHS)]
        told = [d for d in told if slot in (None, d.slot)]
        return ahead is not None and any(d.start == ahead.start and d.end == ahead.end for d in told)

    def _open_frame(self, segment: Segment, mention: Mention) -> None:
        slot = mention.get("measures")
        if slot is None:
            return
        if (
            (slot in (*ANGLES, *LENGTHS) and len(mention.literal) > 1)
            or (slot in ("toe_angle", "toe_length") and mention.get("zones") is None)
            or (slot == "hoof_width" and self._words[mention.start] in ("width", "widths"))
        ):
            unit = None
            if self._frame is not None and self._frame.slot in LENGTHS and slot in LENGTHS:
                unit = self._frame.unit
            self._frame = Frame(slot, unit, segment.sentence)
        elif slot in LENGTHS and self._lengths_ahead(segment, mention):
            self._frame = Frame(slot, None, segment.sentence, heading=True)
        elif self._sizes_ahead(mention) and not any(d.start < mention.start < d.end for d in segment.drafts):
            self._frame = Frame(mention.readings["measures"], Fraction(1), segment.sentence, heading=True)

    def _sizes_ahead(self, mention: Mention) -> bool:
        """ "Sizes, fronts are two, hinds are one", "nail size on both fronts, five": the size word stands first."""
        follower = self._words[mention.end] if mention.end < len(self._words) else "."
        if mention.get("measures") not in _HEADINGS:
            return False
        return follower in (",", ":") or (self._words[mention.end - 1] in _SIZE and self._foot_follows(mention.end))

    def _foot_follows(self, at: int) -> bool:
        """Whether a foot stands there, or behind "on" and "the"."""
        for _ in range(3):
            foot = self._talk.mention_starting(at)
            if foot is not None and foot.get("feet"):
                return True
            if at >= len(self._words) or self._words[at] not in _OF_NAILS:
                return False
            at += 1
        return False

    def _lengths_ahead(self, segment: Segment, mention: Mention) -> bool:
        """ "Toes. Left front ninety, right front ninety two.": a part alone, and behind it a foot with a length."""
        rest = {self._words[i] for i in range(segment.start, segment.end) if i not in mention.literal}
        behind = self._talk.segments[segment.index + 1 : segment.index + 2]
        if not rest <= _HEADING or not behind or behind[0].horse != segment.horse:
            return False
        feet, numbers = behind[0].having("feet"), [m for m in behind[0].mentions if m.number and not m.dropped]
        if not feet or not numbers or set(self._words[behind[0].start : feet[0].start]) - LIGHT:
            return False
        number = numbers[0].number
        measured = self._unit(numbers[0])[0] in ("inch", "mm", "cm")
        told = self._unit(numbers[0])[0] is None and number is not None and not _ANGLE_FROM <= number.value <= _ANGLE_TO
        return measured or (told and self._after(numbers[0]) is None)

    def _set_frame(self, slot: str, segment: Segment, unit: Fraction = Fraction(1)) -> None:
        self._frame = Frame(slot, unit, segment.sentence)
