"""The working state of one memo while it is read: segments of speech and drafts of facts."""

from __future__ import annotations

import math
from collections.abc import Callable, Container, Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import chain
from typing import TypeVar

from pipeline.reading.mentions import LITTLE_WORDS, PLACE, Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.tokens import Tokens
from pipeline.record import MatchKind, Severity, Status

Feet = tuple[str, ...]
Key = TypeVar("Key")
Thing = TypeVar("Thing")


def grouped(pairs: Iterable[tuple[Key, Thing]]) -> dict[Key, list[Thing]]:
    """The things by their keys, in order. Most are alone under theirs: a list of one is made quicker than added to."""
    things: dict[Key, list[Thing]] = {}
    for key, thing in pairs:
        if key in things:
            things[key].append(thing)
        else:
            things[key] = [thing]
    return things


def by_class(mentions: Iterable[Mention]) -> dict[str, list[Mention]]:
    """The mentions by each class of words that they may belong to."""
    return grouped([(name, mention) for mention in mentions for name in mention.readings])


def by_start(mentions: Iterable[Mention]) -> dict[int, list[Mention]]:
    """The mentions by their first token."""
    return grouped([(mention.start, mention) for mention in mentions])


def by_sentence(segments: Iterable[Segment]) -> dict[int, list[Segment]]:
    """The segments by their sentence."""
    return grouped([(segment.sentence, segment) for segment in segments])


@dataclass(eq=False, slots=True)
class Segment:
    """A stretch between commas and conjunctions, in tokens ``[start, end)``.

    ``delimiter`` is what stood before it ("start", ",", "and", ", and", "but" …). ``own_clause`` is true when it
    has a verb or subject of its own, so that time and doubt said elsewhere in the sentence do not reach it. ``named``
    are its mentions by class, those that were dropped among them.
    """

    index: int
    sentence: int
    start: int
    end: int
    delimiter: str
    mentions: list[Mention] = field(default_factory=list)
    drafts: list[Draft] = field(default_factory=list)
    horse: int = -1
    own_clause: bool = False
    past: bool = False
    present: bool = False
    moved: bool = False
    named: dict[str, list[Mention]] = field(default_factory=dict)

    def having(self, name: str, canonical: str | None = None) -> list[Mention]:
        """The segment's mentions that may belong to the class ``name`` (with that canonical name)."""
        found: list[Mention] = []
        if name not in self.named:
            return found
        for mention in self.named[name]:
            if mention.dropped or name not in mention.readings:
                continue
            if canonical is None or mention.readings[name] == canonical:
                found.append(mention)
        return found

    def draft(self, draft: Draft) -> None:
        """Take in a draft at its place in the order of the words."""
        self.drafts.append(draft)
        self.drafts.sort(key=lambda d: (d.start, d.end))

    @property
    def kept(self) -> list[Draft]:
        """The segment's drafts that are not dropped."""
        return [draft for draft in self.drafts if not draft.dropped]

    def joined_by(self, *words: str) -> bool:
        """Whether the segment follows one of these delimiters."""
        return self.delimiter in words


class Sentence(list[Segment]):
    """The segments of one sentence, with the words between its first and its last and the classes these may belong to.

    What a rule waits for is asked here once, instead of segment by segment: whether it ``lacks`` all of the words, or
    says any of them. Not for marks.
    """

    def __init__(self, segments: Iterable[Segment] = (), words: Iterable[str] = ()) -> None:
        super().__init__(segments)
        self.words = frozenset(words)
        self.lacks: Callable[[frozenset[str]], bool] = self.words.isdisjoint
        self.classes: frozenset[str] = frozenset().union(*[segment.named for segment in self])

    def says(self, words: frozenset[str]) -> bool:
        """Whether any of the words stands in the sentence."""
        return not self.lacks(words)


@dataclass(eq=False, slots=True)
class Draft:
    """A fact in the making. ``start`` and ``end`` are tokens; ``feet`` stays None until it is resolved.

    ``horses`` are those that the fact is told of where the segment's own is not meant.
    """

    slot: str
    value: str | Fraction
    segment: Segment
    start: int
    end: int
    match: MatchKind = MatchKind.VARIANT
    feet: Feet | None = None
    horses: tuple[int, ...] | None = None
    zone: str | None = None
    severity: Severity | None = None
    status: Status = Status.PRESENT
    dropped: bool = False
    foot_guessed: bool = False
    foot_carried: bool = False
    corrects: bool = False
    rules: list[str] = field(default_factory=list)
    evidence: set[int] = field(default_factory=set)

    def kept_value(self) -> str | float:
        """The value as it is kept: a number to one decimal, a half upwards (a quarter of an inch is 6.4 mm)."""
        if isinstance(self.value, str):
            return self.value
        if self.value.denominator == 1:
            return float(self.value)
        return math.floor(self.value * 10 + Fraction(1, 2)) / 10

    def note(self, rule: str) -> None:
        """Remember which rule decided something, for the explain view."""
        if rule not in self.rules:
            self.rules.append(rule)

    def drop(self, rule: str) -> None:
        """Take the draft out, keeping the reason."""
        self.dropped = True
        self.note(rule)


@dataclass(eq=False, slots=True)
class Talk:
    """One memo: its tokens, mentions, segments and the drafts read so far.

    ``left_out`` are the feet of "all but the left hind" that a following "that one" means, ``across`` a front and a
    hind that were named together and of which "the front one" is one, ``single_out`` the foot that "the other three"
    are not; ``roles`` holds, token by token, what a little
    word does in a clause: "past", "present", "action", "subject" or "determiner". ``putting_right`` are the first
    tokens of names that only say whose a statement was; the talk goes on about the horse before.
    """

    tokens: Tokens
    words: list[str]
    mentions: list[Mention]
    roles: list[str | None] = field(default_factory=list)
    segments: list[Segment] = field(default_factory=list)
    left_out: Feet | None = None
    across: Feet | None = None
    single_out: Feet | None = None
    putting_right: set[int] = field(default_factory=set)
    _said: frozenset[str] = frozenset()
    _places: dict[str, list[int]] | None = None
    _begun: dict[Sayings, list[int]] = field(default_factory=dict)
    _looked: int = 0  # how many of them there were
    _turns: dict[Sayings, bool] = field(default_factory=dict)
    _grouped: tuple[list[Segment], dict[int, Sentence]] | None = None
    _starting: dict[int, list[Mention]] = field(default_factory=dict)
    _ending: dict[int, list[Mention]] = field(default_factory=dict)
    _named: dict[str, list[Mention]] = field(default_factory=dict)
    _holding: dict[int, list[Mention]] = field(default_factory=dict)
    _placed: int = -1  # how many mentions were there when they were last found by place, and by class
    _classed: int = -1
    unread: list[tuple[int, int, str]] = field(default_factory=list)
    _ordered: int = 0

    def __post_init__(self) -> None:
        """The mentions come in the order of their places; of the words only marks are ever read otherwise."""
        self._ordered = len(self.mentions)
        self._said = frozenset(self.words)

    def says(self, words: frozenset[str]) -> bool:
        """Whether the memo has any of the words: what a rule asks that waits for one of them. Not for marks."""
        return not self._said.isdisjoint(words)

    def tells(self, *sayings: Sayings) -> bool:
        """Whether any of the fixed turns of words stands in the memo, each of which is looked for once."""
        if self._looked < Sayings.made:
            self._begun, self._looked = Sayings.beginning(self.words), Sayings.made
        begun = self._begun
        for turns in sayings:
            if turns in begun:
                if turns not in self._turns:
                    self._turns[turns] = next(self._stand(turns), None) is not None
                if self._turns[turns]:
                    return True
        return False

    def turns(self, turns: Sayings) -> Iterator[tuple[int, list[str]]]:
        """Each token where one of the fixed turns of words begins, with its words, from left to right."""
        return self._stand(turns) if self.tells(turns) else iter(())

    def _stand(self, turns: Sayings) -> Iterator[tuple[int, list[str]]]:
        for index in self._begun[turns]:
            if form := turns.at(self.words, index):
                yield index, form

    def where(self, words: frozenset[str]) -> list[int]:
        """The tokens at which one of the words stands, in order. Not for marks."""
        said = self._said & words
        if not said:
            return []
        if self._places is None:
            self._places = grouped(zip(self.words, range(len(self.words)), strict=True))
        if len(said) == 1:
            return self._places[next(iter(said))]
        return sorted(chain.from_iterable([self._places[word] for word in said]))

    @property
    def drafts(self) -> list[Draft]:
        """All drafts that still stand, in order."""
        return [d for segment in self.segments for d in segment.drafts if not d.dropped]

    def plays(self, role: str, start: int, end: int) -> list[int]:
        """The tokens in ``[start, end)`` that play a role in the clause."""
        return [index for index in range(start, min(end, len(self.roles))) if self.roles[index] == role]

    def claimed(self) -> set[int]:
        """The tokens that belong to a mention of more than a little word."""
        return {i for m in self.mentions if not m.readings.keys() <= LITTLE_WORDS for i in m.literal}

    def words_beside(self, segment: Segment, told: Container[int]) -> set[str]:
        """The words of a segment at other tokens than those told."""
        return {self.words[i] for i in range(segment.start, segment.end) if i not in told}

    def segment_at(self, index: int) -> Segment | None:
        """The segment that holds the token ``index``; none holds a joiner or a mark."""
        return next((s for s in self.segments if s.start <= index < s.end), None)

    def sentence(self, number: int) -> Sentence:
        """The segments of one sentence; the list is the memo's own, not to be changed."""
        told = self._by_sentence()
        return told[number] if number in told else Sentence()

    def sentences(self) -> list[Sentence]:
        """All sentences in order; the lists are the memo's own, not to be changed."""
        return list(self._by_sentence().values())

    def _by_sentence(self) -> dict[int, Sentence]:
        if self._grouped is None or self._grouped[0] is not self.segments:
            told = by_sentence(self.segments)
            sentences = {number: Sentence(s, self.words[s[0].start : s[-1].end]) for number, s in told.items()}
            self._grouped = (self.segments, sentences)
        return self._grouped[1]

    def mention_ending(self, index: int) -> Mention | None:
        """The mention whose last token is ``index - 1``."""
        if len(self.mentions) != self._placed:
            self._place()
        if index in self._ending:
            for mention in self._ending[index]:
                if not mention.dropped:
                    return mention
        return None

    def mention_starting(self, index: int) -> Mention | None:
        """The mention whose first token is ``index``."""
        if len(self.mentions) != self._placed:
            self._place()
        if index in self._starting:
            for mention in self._starting[index]:
                if not mention.dropped:
                    return mention
        return None

    def starting(self) -> dict[int, list[Mention]]:
        """The mentions by their first token, those that were dropped among them; the talk's own, not to be changed."""
        if len(self.mentions) != self._placed:
            self._place()
        return self._starting

    def changed(self) -> None:
        """Say that a mention has moved or belongs to a class that it did not: they are looked through anew."""
        self._placed = self._classed = -1

    def _place(self) -> None:
        self._starting = by_start(self.mentions)
        self._ending = grouped([(mention.end, mention) for mention in self.mentions])
        self._placed = len(self.mentions)

    def in_order(self, *, moved: bool = False) -> None:
        """Put the mentions in the order of their places, where one was added since they last were, or has moved."""
        if moved or len(self.mentions) != self._ordered:
            self.mentions.sort(key=PLACE)
            self._ordered = len(self.mentions)
            self.changed()

    def having(self, name: str, canonical: str | None = None) -> list[Mention]:
        """The memo's mentions that may belong to the class ``name`` (with that canonical name)."""
        if len(self.mentions) != self._classed:
            self._named, self._classed = by_class(self.mentions), len(self.mentions)
        found: list[Mention] = []
        if name not in self._named:
            return found
        for mention in self._named[name]:
            if mention.dropped or name not in mention.readings:
                continue
            if canonical is None or mention.readings[name] == canonical:
                found.append(mention)
        return found

    def holding(self, index: int) -> list[Mention]:
        """The mentions that claim the token; only once their places are fixed."""
        return self._holding.get(index, [])

    def starting_in(self, start: int, end: int) -> list[Mention]:
        """The mentions whose first token lies in ``[start, end)``, in order; only once their places are fixed."""
        near = self._starting
        return [mention for index in range(start, end) if index in near for mention in near[index]]

    def fix_places(self) -> None:
        """Say that no mention changes its place any more, nor gains a class: by place, too, they are found at once."""
        self.starting()
        self._holding = grouped([(index, mention) for mention in self.mentions for index in mention.literal])

    def close(self) -> None:
        """Part the drafts from their segments, each of which holds the other: the collector finds nothing to do."""
        for segment in self.segments:
            segment.drafts.clear()
