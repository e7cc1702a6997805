"""The evidence for and against one fact, each piece kept apart; None where there is none.

Probabilities are the recogniser's, 0 to 1; distances are counted in words, times in seconds.

In bad sound a recogniser is surer of its words than it should be. The model of a fact's evidence was fitted on clean
sound, so in poor sound the hand-set rules are asked as well, and where hardly a memo is like this, every fact is put
before a person. The limits are shares of clean memos only: of 80 in six synthetic voices 1 in 20 has a mean word
probability below 0.79 and none below 0.7.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from statistics import mean
from typing import Any

from pipeline.judging.opinion import Opinion, shipped_opinion, words_around
from pipeline.judging.second_horse import described, name_like
from pipeline.judging.second_reader import View, second_reader
from pipeline.judging.several_feet import NearFeet, near_feet
from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings, bare, is_number
from pipeline.record import (
    EITHER_SLOTS,
    HORSE_SLOTS,
    SIZED_SLOTS,
    Fact,
    HorseMatch,
    MatchKind,
    RosterHorse,
    Status,
    Transcript,
    Visit,
)

# Little words that carry no fact; a recogniser is often unsure of them.
LITTLE = frozenset(
    {"a", "an", "the", "of", "on", "in", "and", "is", "it", "he", "she", "at", "there", "i", "some", "so"}
)
_BEFORE_WORDS = 8  # words before a fact among which its foot may have been misheard
_AROUND_WORDS = 3  # words on each side of a fact whose probabilities count as its surroundings
# Rules that look further than the words beside the fact.
FAR_RULES = frozenset({"refers back", "one: the finding before", "elliptic"})
COPY_RULES = frozenset({"the same on another foot", "also on another foot", "none in the other foot"})

_FOOT_RULES = {
    "foot: still in hand": "in_hand",
    "foot: named beside it": "named",
    "foot: named in the next sentence": "next",
    "foot: where it was said to be before": "before",
}


@dataclass(frozen=True)
class Evidence:
    """What is known about one fact besides what it says."""

    slot: str
    status: Status
    match: MatchKind
    foot: str  # how the foot was found: horse, named, list, in_hand, next, before, copied, guessed, none
    far_rule: bool  # read by a rule that looks back further than the words beside it
    words_to_foot: int | None
    sentences_to_foot: int | None
    correction_before: int | None
    correction_after: int | None
    doubt_near: bool
    earlier_near: bool
    plan_near: bool
    denial_near: bool
    unknown_words: int
    unknown_before: int  # among the words just before, whatever sentence they are in
    nought: bool  # a size of nought, which a recogniser that listens for it hears too often
    unread_words: int
    sentence_words: int
    facts_in_sentence: int
    horses: int
    horse: HorseMatch
    position: float
    otherwise: float  # the chance, by the words around, that the status is another or that nothing of it was meant
    as_read: float  # the chance, by the second reader, that it was meant as it was read; 1 where it has none
    of_foot: float  # the same of its foot
    other_name: bool  # another horse's name was said last
    horse_missed: bool  # more horses are spoken of than were read
    work_twice: bool  # two kinds of work on one foot are told of this horse, as if of two horses
    value_odd: bool
    contradicted: bool
    changed: bool
    other_horse_asked: bool  # another horse of the memo is doubtful, and may be the one that is meant
    others_contradicted: int  # of the visit's other facts
    feet: NearFeet
    described: bool  # a horse is described far behind the name of this one
    name_like: int  # short words since the name that may be another one
    # Only of what was heard.
    least: float | None = None
    mean: float | None = None
    least_foot: float | None = None
    around: float | None = None
    memo_mean: float | None = None
    seconds_a_word: float | None = None
    sentence_least: float | None = None
    least_before: float | None = None  # of the words just before
    foot_before: float | None = None  # the probability of the last word of a foot before, or in, the fact's words
    number: float | None = None
    support: float | None = None  # nats; of the word that the sound bears out least among those put for others


@dataclass(frozen=True)
class Found:
    """What judging has found out about a fact by then: an odd value, a contradiction, a jump since the last visit, and
    whether another horse of the memo is asked about, whose words may be among these, and how many other facts of the
    visit are contradicted."""

    value_odd: bool = False
    contradicted: bool = False
    changed: bool = False
    other_horse_asked: bool = False
    others_contradicted: int = 0


def has_words(fact: Fact, transcript: Transcript) -> bool:
    """Whether the words that the fact was read from are there, with their sound if there was any."""
    if fact.span[1] <= fact.span[0] or fact.span[1] > len(transcript.text):
        return False
    return not transcript.heard or bool(transcript.words_of(*fact.span))


def foot_kind(fact: Fact) -> str:
    """How the foot of a fact was found, by the rules that the reader left."""
    rules = set(fact.rules)
    if fact.foot is None:
        return "horse" if fact.slot in HORSE_SLOTS | EITHER_SLOTS else "none"
    if "foot: not said" in rules:
        return "guessed"
    if rules & COPY_RULES:
        return "copied"
    return next((kind for rule, kind in _FOOT_RULES.items() if rule in rules), "list")


def _saying(fact: Fact) -> tuple[tuple[int, int], str, str]:
    return fact.span, fact.slot, str(fact.value)


def _work_twice(visit: Visit) -> bool:
    works = {(fact.foot, fact.value) for fact in visit.facts if fact.slot == "work" and fact.status is Status.PRESENT}
    return len(works) > len({foot for foot, _ in works})


class EvidenceOfMemo:
    """The evidence of every fact of one memo; what they share is found once."""

    def __init__(
        self,
        transcript: Transcript,
        visits: Sequence[Visit],
        roster: Sequence[RosterHorse] = (),
        opinion: Opinion | None = None,
        views: Mapping[int, View] | None = None,
    ) -> None:
        """``opinion`` and ``views``, of the second reader by the fact's id, stand for those of what is shipped."""
        self._transcript = transcript
        self._opinion = opinion or shipped_opinion()
        self.around = Surroundings(transcript.text)
        self.names = SpokenNames(self.around, transcript, visits, roster)
        self._visits = visits
        words = transcript.words
        self._word_at = {word.start: number for number, word in enumerate(words)}
        self._memo_mean = sum(w.probability for w in words) / len(words) if words else None
        self.facts = facts = [fact for visit in visits for fact in visit.facts]
        self.views = second_reader().views(self.around, facts) if views is None else views
        spoken = {(self.around.place(f.span), f.slot, str(f.value)) for f in facts}
        self._told_of: dict[tuple[tuple[int, int], str, str], set[str | None]] = {}
        for fact in facts:
            self._told_of.setdefault(_saying(fact), set()).add(fact.foot)
        self._read = {place for (first, last), _, _ in spoken for place in range(first, last)}
        self._in_sentence = Counter(self.around.sentence_of(first)[0] for (first, _), _, _ in spoken)

    def of(self, fact: Fact, visit: Visit, found: Found) -> Evidence:
        """The evidence of one fact of the visit."""
        around = self.around
        first, last = around.place(fact.span)
        start, end = around.sentence_of(first)
        to_foot = around.foot_before(last)
        name = self.names.own_before(visit.horse, first)
        given: dict[str, Any] = {**vars(found), **self._seen_again(fact), **self._heard(fact)}
        return Evidence(
            slot=fact.slot,
            status=fact.status,
            match=fact.match,
            foot=foot_kind(fact),
            far_rule=bool(FAR_RULES & set(fact.rules)),
            words_to_foot=to_foot,
            sentences_to_foot=None if to_foot is None else around.sentences_from(first, last - 1 - to_foot),
            correction_before=around.before("correction", last),
            correction_after=around.after("correction", last),
            doubt_near=around.within("doubt", start, end),
            earlier_near=around.within("earlier", start, end),
            plan_near=around.within("plan", start, end),
            denial_near=around.within("denial", start, end),
            unknown_words=len(around.unknown(start, end)),
            unknown_before=len(around.unknown(max(0, first - _BEFORE_WORDS), first)),
            nought=fact.slot in SIZED_SLOTS and set(str(fact.value)) <= {"0", "-"},
            unread_words=around.unread(start, end, self._read),
            sentence_words=end - start,
            facts_in_sentence=self._in_sentence[start],
            horses=len(self._visits),
            horse=visit.horse_match,
            position=first / max(1, len(around.tokens)),
            otherwise=1 - self._opinion.chances(words_around(around, fact.span, fact.slot))[fact.status.value],
            other_name=self._other_name(visit, last),
            horse_missed=self.names.more_horses is not None or self.names.alike is not None,
            work_twice=_work_twice(visit),
            feet=near_feet(around, fact.span, fact.foot, frozenset(self._told_of.get(_saying(fact), ()))),
            described=described(around, name, first),
            name_like=name_like(around, name, first),
            **given,
        )

    def _seen_again(self, fact: Fact) -> dict[str, float]:
        view = self.views.get(id(fact))
        if view is None:
            return {"as_read": 1.0, "of_foot": 1.0}
        of_foot = 1.0 if fact.foot is None else view.of_foot(fact.foot)
        return {"as_read": view.of_status(fact.status), "of_foot": of_foot}

    def _other_name(self, visit: Visit, last: int) -> bool:
        before = self.names.before(last)
        return before is not None and before.horse.lower() != (visit.horse or "").lower()

    def _heard(self, fact: Fact) -> dict[str, float | None]:
        words = self._transcript.words_of(*fact.span) if self._transcript.heard else []
        if not words:
            return {}
        telling = [word for word in words if bare(word) not in LITTLE] or words
        feet = [word.probability for word in words if bare(word) in _FOOT_WORDS]
        numbers = [word.probability for word in words if is_number(bare(word))]
        first = self.around.place(fact.span)[0]
        supports = [word.support for word in words if word.support is not None]
        all_words = self._transcript.words
        index = self._word_at[words[0].start]
        near = all_words[max(0, index - _AROUND_WORDS) : index + len(words) + _AROUND_WORDS]
        return {
            "least": min(word.probability for word in telling),
            "mean": _mean(word.probability for word in telling),
            "least_foot": min(feet, default=None),
            "around": _mean(word.probability for word in near),
            "memo_mean": self._memo_mean,
            "seconds_a_word": max(0.0, words[-1].end_s - words[0].start_s) / len(words),
            "sentence_least": self._least(*self.around.sentence_of(self.around.place(fact.span)[0])),
            "least_before": self._least(max(0, first - _BEFORE_WORDS), first),
            "foot_before": self._foot_before(fact),
            "number": min(numbers, default=None),
            "support": min(supports, default=None),
        }

    def _least(self, first: int, last: int) -> float | None:
        """The least probability of the telling words among the tokens in ``[first, last)``."""
        if first >= last:
            return None
        span = (self.around.tokens[first].start, self.around.tokens[last - 1].end)
        words = [word for word in self._transcript.words_of(*span) if bare(word) not in LITTLE]
        return min((word.probability for word in words), default=None)

    def _foot_before(self, fact: Fact) -> float | None:
        last = self.around.place(fact.span)[1]
        away = self.around.foot_before(last)
        if fact.foot is None or away is None:
            return None
        token = self.around.tokens[last - 1 - away]
        return min((word.probability for word in self._transcript.words_of(token.start, token.end)), default=None)


_FOOT_WORDS = frozenset({"left", "right", "near", "off", "front", "fronts", "fore", "fores", "hind", "hinds"})


def _mean(values: Iterable[float]) -> float:
    found = list(values)
    return sum(found) / len(found)


_POOR = 0.79
_BAD = 0.7
_FEWEST = 12  # words; of fewer the mean says little

HARD_TO_HEAR = "Much of this memo was hard to hear; please listen."


class Clearness(Enum):
    """Of a whole memo; typed text is clear."""

    CLEAR = "clear"
    POOR = "poor"
    BAD = "bad"


def clearness(transcript: Transcript) -> Clearness:
    """From the mean probability of the words as the recogniser gave it."""
    if len(transcript.words) < _FEWEST:
        return Clearness.CLEAR
    sure = mean(word.probability for word in transcript.words)
    return Clearness.BAD if sure < _BAD else Clearness.POOR if sure < _POOR else Clearness.CLEAR
