"""Weeks dealt out to several horses in one breath, not all of them by name (those by name: dealt_weeks.py).

"Six, four and eight weeks, same order", "four weeks him, nine the mule", "Buck likewise", "the other two in six".
And a horse named with its weeks and a plan: "back for Tally in two weeks, and then she gets …".
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.roster_names import HorseTalk, NameSpan
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.times import WEEKS_PER_UNIT
from pipeline.reading.whose import COLOURS
from pipeline.record import Status
from pipeline.vocabulary import CLASS_SLOTS

_HE = frozenset({"he", "him", "his", "himself"})
_SHE = frozenset({"she", "her", "hers", "herself"})
HE_AND_SHE = _HE | _SHE
_MALES = frozenset({"gelding", "stallion", "colt", "brother", "lad", "boy"})
_FEMALES = frozenset({"mare", "filly", "sister", "girl", "jenny"})
_NOUNS = HORSE_WORDS | COLOURS | {"donkey", "lad", "lads"}
_SAME = frozenset({"likewise", "ditto", "same"})
_OTHERS = frozenset({"two", "pair", "three", "one", "ones", "lads"})
_BREAKS = frozenset({",", "and", ";", "then", ".", "but"})
_NO_FEET = (
    None, "in_hand", "other_one", "other_two", "other_three", "pair_in_hand", "those_three", "shod_three", "shod_feet",
)  # fmt: skip
_BOOKING = frozenset(
    {"the", "and", "but", "week", "weeks", "for", "on", "in", "at", "is", "goes", "gets", "can", "go", "get", ","}
)
_LONGEST = 26  # weeks
_SEVERAL = 2
_NEAR_A_NAME = 6  # tokens: "Connor the cob", "mule next, goes by Sister"


@dataclass
class _Part:
    """What stands between two commas: whose it is, how many weeks, and whether it is as the one before.

    ``pointed`` is of a pronoun or "the mule", ``described`` of "the mule" alone.
    """

    segment: Segment
    horses: list[int] = field(default_factory=list)
    others: bool = False
    pointed: bool = False
    described: bool = False
    same: bool = False
    weeks: Fraction | None = None
    at: tuple[int, int] = (0, 0)


@dataclass
class _Dealt:
    weeks: Fraction
    horses: list[int]
    part: _Part


def weeks_put_right(talk: Talk, sentence: list[Segment]) -> bool:
    """ "Three weeks on Tally, make that four, and six on Buck": the number that was put right counted weeks."""
    said = talk.starting_in(sentence[0].start, sentence[-1].end)
    units = {m.start for m in said if m.get("units") in WEEKS_PER_UNIT}
    return any(m.number is not None and m.dropped and m.end in units for m in said)


def deal_unnamed_weeks(talk: Talk, found: HorseTalk) -> None:
    """Give every horse its own weeks where a sentence deals them out by order, pronoun, description or likeness."""
    if len(found.horses) < _SEVERAL:
        return
    last: Fraction | None = None
    given: set[int] = set()
    for sentence in talk.sentences():
        told = [d for s in sentence for d in s.drafts]
        if any(d.slot != "next_visit_weeks" for d in told) or _of_the_trade(sentence):
            last, given = None, set()
            continue
        weeks = [d for d in told if d.slot == "next_visit_weeks"]
        dealt = _dealt(talk, found, sentence, last, given)
        if len(dealt) == 1 and dealt[0].part.described and not weeks and not _only_booked(talk, sentence):
            dealt = []
        last = weeks[-1].value if weeks and isinstance(weeks[-1].value, Fraction) else None
        if dealt:
            for draft in weeks:
                draft.drop("dealt out to the horses")
            for one in dealt:
                _add(one)
            last = dealt[-1].weeks
        given = given | _whose(found, sentence, weeks) if last is not None else set()


def _only_booked(talk: Talk, sentence: list[Segment]) -> bool:
    """ "The colt goes four", behind weeks: nothing but the horse, its number and the verb."""
    numbers = {i for s in sentence for m in s.mentions if m.number is not None for i in m.literal}
    rest = {talk.words[i] for i in range(sentence[0].start, sentence[-1].end) if i not in numbers}
    return rest <= _BOOKING | _NOUNS


def _whose(found: HorseTalk, sentence: list[Segment], weeks: list[Draft]) -> set[int]:
    """The horses that the weeks of the sentence are for."""
    start, end = sentence[0].start, sentence[-1].end
    named = {s.horse for s in found.spans if start <= s.start < end} | {h for d in weeks for h in d.horses or ()}
    return named or {d.segment.horse for d in weeks}


def _of_the_trade(sentence: list[Segment]) -> bool:
    """Whether the sentence tells more than weeks; "the other two" are horses here."""
    mentions = [m for s in sentence for m in s.mentions if not m.dropped]
    words = set(CLASS_SLOTS) - {"vet"}
    return any(m.is_any(words) or m.get("feet") not in _NO_FEET for m in mentions)


def _dealt(
    talk: Talk, found: HorseTalk, sentence: list[Segment], last: Fraction | None, given: set[int]
) -> list[_Dealt]:
    start, end = sentence[0].start, sentence[-1].end
    words = talk.words[start:end]
    timed = any(m.get("units") == "week" for s in sentence for m in s.mentions) or last is not None
    if not timed or any(m.get("units") not in (None, "week") for s in sentence for m in s.mentions):
        return []
    parts = _parts(talk, found, sentence)
    counted = [part for part in parts if part.weeks is not None]
    in_order = "order" in words or "respectively" in words or words[-3:-2] == ["did"] or "named" in words
    if in_order and len(counted) == len(found.horses) and not any(p.horses for p in parts):
        return [_Dealt(p.weeks, [i], p) for i, p in enumerate(counted) if p.weeks is not None]
    if not any(p.others or p.pointed or p.same for p in parts):
        return []  # all by name, as elsewhere
    return _by_part(parts, len(found.horses), last, given)


def _by_part(parts: list[_Part], horses: int, last: Fraction | None, given: set[int]) -> list[_Dealt]:
    named = {h for p in parts for h in p.horses} | given
    dealt: list[_Dealt] = []
    waiting: list[int] = []
    for part in parts:
        whose = part.horses + ([i for i in range(horses) if i not in named] if part.others else [])
        value = part.weeks if part.weeks is not None else (last if part.same else None)
        if value is None:
            waiting += whose
            continue
        if whose or waiting:
            dealt.append(_Dealt(value, [*waiting, *whose], part))
        waiting, last = [], value
    everyone = [h for one in dealt for h in one.horses]
    alone = len(parts) == 1 and parts[0].same and bool(everyone)  # "Tally six weeks. Buck likewise."
    alone = alone or (bool(given) and any(p.others for p in parts))  # "Tally's on ten weeks. Other two, six."
    alone = alone or (
        len(parts) == 1 and parts[0].described and len(everyone) == 1
    )  # "Tally goes six weeks. The colt goes four."
    sure = len(set(everyone)) == len(everyone) and not waiting
    return dealt if sure and (len(dealt) >= _SEVERAL or alone) else []


def _parts(talk: Talk, found: HorseTalk, sentence: list[Segment]) -> list[_Part]:
    parts: list[_Part] = []
    for segment in sentence:
        part = _Part(segment)
        at = segment.start
        while at < segment.end:
            if talk.words[at] in _BREAKS:
                parts.append(part)
                part = _Part(segment)
            at = _take(talk, found, part, at)
        parts.append(part)
    return [p for p in parts if p.horses or p.others or p.weeks is not None or p.same]


def _take(talk: Talk, found: HorseTalk, part: _Part, at: int) -> int:
    """Take the word at ``at`` into the part; the token to go on with."""
    word = talk.words[at]
    span = next((s for s in found.spans if s.start == at), None)
    if span is not None:
        part.horses.append(span.horse)
        return span.end
    if any(m.dropped and at in m.literal for m in part.segment.mentions):
        return at + 1
    number = next((m for m in part.segment.mentions if m.start == at and m.number is not None), None)
    behind = talk.words[at + 1 : at + 2]
    if word in ("others", "rest") or (word == "other" and (not behind or behind[0] in _OTHERS | _BREAKS)):
        part.others = True
        return at + 2 if behind and behind[0] in _OTHERS else at + 1
    if number is not None and number.number is not None and number.number.value <= _LONGEST and part.weeks is None:
        part.weeks, part.at = number.number.value, (number.start, number.end)
        return number.end
    if talk.words[at - 1 : at + 1] == ["a", "week"] and part.weeks is None:
        part.weeks, part.at = Fraction(1), (at - 1, at + 1)
    if word in _SAME:
        part.same = True
    if word in _HE | _SHE or (word in _NOUNS and talk.words[at - 1] == "the"):
        horse = described(talk, found, word)
        if horse is not None and horse not in part.horses:
            part.horses.append(horse)
            part.pointed = True
            part.described = word in _NOUNS
    return at + 1


def described(talk: Talk, found: HorseTalk, word: str) -> int | None:
    """The one horse that a pronoun or "the mule" can mean; of two, the one that the other is not."""
    fits = [index for index in range(len(found.horses)) if could_be(talk, found, index, word) is True]
    if len(fits) == 1:
        return fits[0]
    may = [index for index in range(len(found.horses)) if could_be(talk, found, index, word) is not False]
    return may[0] if len(may) == 1 else None


def could_be(talk: Talk, found: HorseTalk, index: int, word: str, leave_out: Segment | None = None) -> bool | None:
    """Whether a word can mean the horse; None when nothing that was said of it, but in ``leave_out``, tells."""
    booking = {s.sentence for s in talk.segments if any(d.slot == "next_visit_weeks" for d in s.drafts)}
    spans = [s for s in found.spans if s.horse == index]
    spans = [s for s in spans if _sentence_of(talk, s) not in booking]  # not "Tally six weeks and the yearling four"
    near = {w for s in spans for w in _around(talk, s)}
    if word in _NOUNS:
        if word in near:
            return True
        other = near & (HORSE_WORDS | COLOURS)
        return False if other else None
    own = [s for s in talk.segments if s.horse == index and s.sentence not in booking and s is not leave_out]
    told = [w for s in own for w in talk.words[s.start : s.end]]
    he = len([w for w in told if w in _HE]) + 2 * len(near & _MALES)
    she = len([w for w in told if w in _SHE]) + 2 * len(near & _FEMALES)
    return None if he == she else (he > she) == (word in _HE)


def _sentence_of(talk: Talk, span: NameSpan) -> int:
    segment = talk.segment_at(span.start)
    return -1 if segment is None else segment.sentence


def _around(talk: Talk, span: NameSpan) -> list[str]:
    """The words near a name, up to the next stop."""
    start, end = span.start, span.end
    while start > max(0, span.start - _NEAR_A_NAME) and talk.words[start - 1] != ".":
        start -= 1
    while end < min(len(talk.words), span.end + _NEAR_A_NAME) and talk.words[end] != ".":
        end += 1
    return talk.words[start:end]


def _add(dealt: _Dealt) -> None:
    segment, (start, end) = dealt.part.segment, dealt.part.at
    if end == 0:
        start, end = segment.start, segment.end
    draft = Draft("next_visit_weeks", dealt.weeks, segment, start, end, status=Status.PLANNED)
    draft.horses = tuple(dealt.horses)
    draft.evidence.update(range(start, end))
    draft.note("next visit: dealt out to the horses")
    segment.draft(draft)


_IT = frozenset({"he", "she", "they", "it", "we", "i", "that", "then"})
_WEEKLY = ("week", "fortnight", "month", "day")


@dataclass
class DueBack:
    """The horse whose weeks were told, in the midst of another's talk, and the segment that told it last."""

    horse: int
    segment: Segment
    planned: bool = False

    def goes_on(self, talk: Talk, segment: Segment) -> bool:
        """Whether the segment plans for that horse: in the same sentence, or in the next if a condition opens it."""
        weeks = any(m.get("units") in _WEEKLY for m in segment.mentions)
        plans = [m for m in segment.mentions if m.get("plans") in ("condition", "before", "main")]
        opened = segment.sentence - self.segment.sentence == 1 and segment.delimiter == "start"
        if opened:
            first = talk.words[segment.start] in ("and", "so")
            told = any(m.get("plans") == "condition" and m.start - segment.start <= first for m in plans)
        else:
            same = segment.sentence == self.segment.sentence
            led = talk.words[segment.start] in _IT and not segment.past
            told = same and (bool(plans) or led or self.planned)
        if not told or (weeks and not plans):
            return False
        self.segment, self.planned = segment, True
        return True
