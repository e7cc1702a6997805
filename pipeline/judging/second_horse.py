"""Whether a second horse's part has begun though no name was read, so that all of it would go to the horse before.

Each sign has its points; where enough of them meet in one sentence, the question is raised. Points and limits were
chosen on the memos of the open corpora, each with a horse's name taken out or put wrong, so as to flag less than one
fact in a hundred of memos whose names are right. No memo was kept from that choice.
And hints between a name and a fact that another horse has come in: it is described, or named by an odd word.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from pipeline.judging.asked_place import may_be_name
from pipeline.judging.horses_counted import horses_counted, turned
from pipeline.judging.naming import slot_name, the_feet
from pipeline.judging.parts import Part, Parts
from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings
from pipeline.judging.told_again import WorkTold, slots_again
from pipeline.judging.weeks_told import WeeksTold
from pipeline.record import Fact, Transcript, Visit

_COUNTED, _WORK_AGAIN, _MORE_WORK, _TURNED, _NAMED_WEEKS = 3, 2, 2, 2, 2
_SHARED_WEEKS, _AGAIN, _STRANGE, _NEXT, _WEEKS_BEFORE = 1, 1, 1, 1, 1
_ENOUGH_HEARD, _ENOUGH_TYPED = 3, 4  # a name is seldom lost in typed text
_SURER = 1  # points above enough from which a later place is believed rather than the first
_ENOUGH_BEFORE_NAME = 2  # of 834 memos 9 tell something before the first name, none with two points
_FEWEST = 3  # facts of a visit
_HEAD, _TURN, _FAR = 4, 3, 6  # words of a sentence in which the next horse is turned to; that may stand before a name
_TURNS = frozenset({"then", "next", "now", "last", "second", "third", "number", "also", "other"})
_SAME_PLACE = re.compile(r"\bsame (?:barn|yard|place|owner|stable|people|farm)\b")
_LEADS = frozenset({"then", "now", "next", "and", "so", "okay", "right", "um", "uh", "well", "last", "one", "up", "is"})
_BEHIND_NAME = frozenset(
    {"is", "has", "was", "had", "got", "gets", "came", "lost", "wants", "needs", "stood", "next", "then", ",", "."}
)

Placed = tuple[int, Fact]  # a fact with its first token


class Sign(NamedTuple):
    """A piece of evidence: its points, and what it is in words; a lesser one has none."""

    points: int
    told: str = ""


@dataclass(frozen=True)
class Seam:
    """The tokens ``[first, last)`` that may be told of another horse, and what speaks for it, in words.

    Where ``unnamed``, they stand before the first name, at ``last``.
    """

    first: int
    last: int
    points: int
    signs: tuple[str, ...]
    unnamed: bool = False


class SecondHorse:
    """Looks through one memo for horses whose names were not read."""

    def __init__(
        self, around: Surroundings, transcript: Transcript, names: SpokenNames, visits: Sequence[Visit]
    ) -> None:
        self._around = around
        self._words = [token.text for token in around.tokens]
        self._enough = _ENOUGH_HEARD if transcript.heard else _ENOUGH_TYPED
        self._names = names
        self._parts = Parts(around, names, visits)
        self._read = sum(bool(visit.facts) for visit in visits)
        self._work = WorkTold(around)
        self._weeks = WeeksTold(around, self._parts.names)
        self._count, self._counted = horses_counted(transcript.text)

    def seams(self, visit: Visit) -> list[Seam]:
        """What of a visit may be another horse's, at most one stretch in each part of it."""
        placed = [(self._around.place(fact.span)[0], fact) for fact in visit.facts]
        if len(placed) < _FEWEST:
            return []
        if self._named_twice(visit):
            sign = f"“{visit.horse} and {visit.horse}” is heard"
            return [Seam(0, len(self._words), self._enough, (sign,))]
        unnamed = self._before_name(visit, placed)
        found = [] if unnamed is None else [unnamed]
        missing = self._count - self._read - len(found)
        for part in self._parts.of(visit.horse):
            places = list(self._within(part, visit, placed, missing))
            surer = [place for place in places if place.points >= self._enough + _SURER]
            found += (surer or places)[:1]
        return found

    def _within(self, part: Part, visit: Visit, placed: Sequence[Placed], missing: int) -> Iterator[Seam]:
        of_memo = list(self._of_memo(visit, missing))
        alike = self._names.mistaken_for(visit.horse)
        for first, end in self._sentences(part, named_too=alike is not None):
            before = [one for one in placed if one[0] < first]
            behind = [one for one in placed if first <= one[0] < part.last]
            if not before or not behind or (part.last < end and part.last - first < _FAR) or _only_weeks(behind, end):
                continue
            told = [Part(other.first, min(other.last, first)) for other in self._parts.of(visit.horse)]
            signs = [
                *of_memo,
                *self._of_work(told, Part(first, part.last), placed),
                *_of_facts(before, behind),
                *self._of_words(Part(part.first, first), Part(first, part.last)),
                *self._of_head(first, end),
            ]
            points = sum(sign.points for sign in signs)
            if points >= self._enough:
                yield Seam(first, part.last, points, _told(signs))

    def _before_name(self, visit: Visit, placed: Sequence[Placed]) -> Seam | None:
        """What is told before any horse is named, though the one that is named first is told of as well."""
        named = self._parts.named(visit.horse)
        if not named or named[0] != self._parts.names[0]:
            return None
        first, end = self._around.sentence_of(named[0])
        last = next((at for at in self._parts.names if at >= end), len(self._words))
        before = [one for one in placed if one[0] < first]
        behind = [one for one in placed if first <= one[0] < last]
        if not before or not behind:
            return None
        signs = [
            *self._of_count(self._count - self._read),
            *self._of_work([Part(0, first)], Part(first, last), placed),
            *_of_facts(before, behind),
            *self._of_words(Part(0, first), Part(first, last)),
        ]
        points = sum(sign.points for sign in signs)
        return Seam(0, first, points, _told(signs), unnamed=True) if points >= _ENOUGH_BEFORE_NAME else None

    def _sentences(self, part: Part, named_too: bool) -> Iterator[tuple[int, int]]:
        """The sentences that begin in a part, but not with its name unless it may have been heard for another."""
        at = part.first
        while at < part.last:
            start, end = self._around.sentence_of(at)
            if start > part.first or (start == part.first and named_too) or not self._parts.names:
                yield start, end
            at = max(end, at + 1)

    def _of_memo(self, visit: Visit, missing: int) -> Iterator[Sign]:
        yield from self._of_count(missing)
        if self._read == 1 and self._weeks.by_name(self._parts.named(visit.horse)):
            yield Sign(_NAMED_WEEKS, f"the weeks are told for {visit.horse} by name")
        if self._weeks.of_several():
            yield Sign(_SHARED_WEEKS, "weeks are told for several horses")

    def _named_twice(self, visit: Visit) -> bool:
        """ "Bertie and Bertie": one of the two is another horse."""
        ends = [at + len((visit.horse or "").split()) for at in self._parts.named(visit.horse)]
        return any(self._words[end : end + 1] == ["and"] and end + 1 in self._parts.named(visit.horse) for end in ends)

    def _of_count(self, missing: int) -> Iterator[Sign]:
        if missing > 0:
            yield Sign(_COUNTED, f"“{self._counted}” is said, and fewer horses were read")

    def _of_work(self, told: Sequence[Part], behind: Part, placed: Sequence[Placed]) -> Iterator[Sign]:
        before = self._work.within(told, placed)
        again = self._work.within([behind], placed)
        both = [foot for foot in before if foot in again and before[foot] != {"removed"}]  # pulled, then trimmed
        if both:
            points = _WORK_AGAIN + (_MORE_WORK if len(both) > 1 else 0)
            yield Sign(points, f"the work on {the_feet(both)} is told once more")

    def _of_words(self, told: Part, behind: Part) -> Iterator[Sign]:
        """What is said since the horse's name, and from here on."""
        if turned(self._words[told.first : told.last], self._words[behind.first : behind.last]):
            yield Sign(_TURNED, "“he” and “she” change")
        previous = self._around.sentence_of(max(0, told.last - 1))[0]
        if self._weeks.within(max(previous, told.first), told.last):
            yield Sign(_WEEKS_BEFORE, "the weeks are told just before")

    def _of_head(self, first: int, end: int) -> Iterator[Sign]:
        words = [at for at in range(first, end) if self._words[at][0].isalnum()]
        turns = _TURNS.intersection(self._words[at] for at in words[:_TURN] if at < first + _HEAD)
        if turns or _SAME_PLACE.search(" ".join(self._words[first:end])):
            yield Sign(_NEXT)
        lead = next((at for at in words if self._words[at] not in _LEADS), None)
        if words and self._strange(words[0]):
            yield Sign(_STRANGE, self._named_like(words[0]))
        elif lead is not None and self._strange(lead) and self._stands_as_name(lead):
            yield Sign(_STRANGE, self._named_like(lead))

    def _strange(self, at: int) -> bool:
        return at not in self._parts.names and bool(self._around.unknown(at, at + 1))

    def _stands_as_name(self, at: int) -> bool:
        """ "Solar's just a trim", "gold, her heels are long"."""
        behind = self._words[at + 1] if at + 1 < len(self._words) else "."
        return self._words[at].endswith("'s") or behind in _BEHIND_NAME

    def _named_like(self, at: int) -> str:
        word = self._words[at].removesuffix("'s")
        return may_be_name(word.capitalize())


def _of_facts(before: Sequence[Placed], behind: Sequence[Placed]) -> Iterator[Sign]:
    slots = slots_again([fact for _, fact in before], [fact for _, fact in behind])
    if slots:
        verb = "are" if slots[0].endswith("s") and slots[0] != "lameness" else "is"
        yield Sign(_AGAIN, f"the {slot_name(slots[0])} {verb} told once more")


def _only_weeks(behind: Sequence[Placed], end: int) -> bool:
    """Whether a sentence tells nothing but the weeks, with which a horse's part ends rather than begins."""
    slots = {fact.slot for place, fact in behind if place < end}
    return slots == {"next_visit_weeks"}


def _told(signs: Sequence[Sign]) -> tuple[str, ...]:
    return tuple(sign.told for sign in sorted(signs, key=lambda sign: -sign.points) if sign.told)


# What a horse is called that has no name yet: common practice, no source.
_KINDS = frozenset(
    [
        "mare", "gelding", "cob", "donkey", "pony", "foal", "filly", "colt", "stallion", "hunter", "yearling",
        "youngster", "mule", "grey", "gray", "chestnut", "bay", "roan", "piebald", "skewbald", "dun", "palomino",
    ]
)  # fmt: skip
_DESCRIBED_WITHIN = 25  # words behind a horse's name from which its description is no longer told
_SHORT = 3  # words of a sentence that may be nothing but a name
_TURNED_TO = frozenset({"now", "next", "then"})
MOST = 3


def described(around: Surroundings, name: int, fact: int) -> bool:
    """Whether a horse is described far behind the name that begins at one token and before the fact at another."""
    return any(token.text in _KINDS for token in around.tokens[name + _DESCRIBED_WITHIN + 1 : fact])


def name_like(around: Surroundings, name: int, fact: int) -> int:
    """How many times (0-3) something between the two may be a name: "Now weka.", "Buck different fours." """
    return min(sum(1 for _ in _name_like(around, name + _SHORT, fact)), MOST)


def _name_like(around: Surroundings, first: int, fact: int) -> Iterator[int]:
    at = first
    while at < fact:
        start, end = around.sentence_of(at)
        words = [place for place in range(start, end) if around.tokens[place].text[0].isalnum()]
        short = start > first and 0 < len(words) <= _SHORT
        turned = start >= first and bool(words) and around.tokens[words[0]].text in _TURNED_TO
        if (short and around.unknown(start, end)) or (turned and around.unknown(words[0] + 1, words[0] + 3)):
            yield start
        at = max(end, at + 1)
