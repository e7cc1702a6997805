"""One person's review of a store: questions out, answers in. The terminal and the page both stand on this."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property

from pipeline.errors import CorrectionError, NotFoundError, StoreError
from pipeline.judging.asked_place import asked_place
from pipeline.keeping import KeptHorse, Store
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.deciding import (
    AcceptFact,
    AddFact,
    AssignHorse,
    AssignNewHorse,
    CorrectFact,
    Decision,
    DropFact,
    LookedAt,
    MoveFact,
    SameHorse,
    SetDay,
    SplitVisit,
)
from pipeline.keeping.lessons import WordLesson
from pipeline.keeping.to_review import SPOT_CHECK
from pipeline.record import Fact, FlagKind, Foot, HorseMatch, RosterHorse
from pipeline.sentences import capital
from pipeline.using.review import learning
from pipeline.using.review.choices import Choice, choices_of
from pipeline.using.review.follow_up import gone_or_there
from pipeline.using.review.items import Item, ItemKind, place_words, with_feet
from pipeline.using.review.nearest import Near, nearest
from pipeline.using.review.questions import carrying
from pipeline.using.review.queue import items_of, keys, queue
from pipeline.using.review.surroundings import (
    Clip,
    LastTime,
    Start,
    Words,
    clip_of,
    last_time,
    starts_there,
    told_there,
    words_of,
)
from pipeline.using.review.typed import TextReader, read_facts, read_value
from pipeline.vocabulary import Vocabulary

_OF_HORSE = (ItemKind.HORSE, ItemKind.SECOND_HORSE)
_MOST_TOLD = 6  # fields that an answer tells one by one
_KEY = re.compile(r"v([0-9]{1,15})-")


@dataclass(frozen=True)
class Shown:
    """A question with all that goes with it."""

    item: Item
    words: Words
    clip: Clip | None
    choices: list[Choice]
    horses: list[Near]
    last: LastTime | None
    there: list[str] = field(default_factory=list)  # what is told where another horse may have come in
    starts: list[Start] = field(default_factory=list)  # and with which sentence that may have been


@dataclass(frozen=True)
class Done:
    """What an answer did, in a sentence; what it could teach; and what was learned by it.

    ``answered`` is False when the question itself is still open.
    """

    says: str
    lesson: learning.Lesson | None = None
    learned: str | None = None
    answered: bool = True

    @property
    def offer(self) -> str | None:
        """The question whether to learn at once."""
        return learning.offer(self.lesson) if self.lesson else None


@dataclass
class Review:
    """A review under one name. Every answer is written at once; nothing is ever decided unasked.

    Every answer raises StoreConflictError when somebody changed the visit since the item was made (show it anew),
    CorrectionError for an answer that no record can hold, and StoreError; nothing is changed then.
    """

    store: Store
    vocabulary: Vocabulary
    who: str | None = None
    given_reader: TextReader | None = None
    learned: list[str] = field(default_factory=list)
    _taught: list[tuple[int, learning.Lesson]] = field(default_factory=list)

    @cached_property
    def reader(self) -> TextReader:
        """The reader of memos, for what is typed; it loads with the first typed answer."""
        from pipeline.reading import Reader

        return self.given_reader or Reader(self.vocabulary)

    def open_keys(self, day: date | None = None) -> list[str]:
        """The keys of all open questions, or of those of one day, in their order; quick however many there are."""
        return keys(self.store, day)

    def queue(self, day: date | None = None) -> list[Item]:
        """All open questions, or those of one day, in their order."""
        return list(queue(self.store, day))

    def each(self) -> Iterator[Item]:
        """All open questions in their order, one by one, without waiting for the last."""
        return queue(self.store)

    def item(self, key: str) -> Item:
        """The open question of this key as it is now; NotFoundError once it is answered."""
        visit = _KEY.match(key)
        found = items_of(self.store, self.store.visit(int(visit.group(1)))) if visit else []
        for item in found:
            if item.key == key:
                return item
        raise NotFoundError("This question has been answered.")

    def show(self, item: Item) -> Shown:
        """The question with its words, sound, choices and the last visit's value."""
        last = last_time(self.store, item)
        horses = nearest(self.store, item) if item.kind in _OF_HORSE else []
        choices = choices_of(item, self.vocabulary, last) or gone_or_there(self.store, item)
        there, starts = told_there(self.store, item), starts_there(self.store, item)
        return Shown(item, words_of(item), clip_of(item), choices, horses, last, there, starts)

    def accept(self, item: Item) -> Done:
        """It is right as it stands; a flag was looked at and nothing is missing."""
        if item.kind is ItemKind.HORSE:
            if item.visit.horse is None:
                raise CorrectionError("Say which horse it was, or that it is left without one.")
            return self._horse_confirmed(item, item.visit.horse)
        if item.kind is ItemKind.SECOND_HORSE:
            horse = item.visit.horse
            return self._decide(item, [], f"Right: it is {horse.name} all through." if horse else "The same horse.")
        decisions: list[Decision] = [AcceptFact(kept.id) for kept in item.facts]
        says = "Looked at: nothing to add." if item.kind is ItemKind.WORDS else f"Right: {item.as_read()}."
        return self._decide(item, decisions, says)

    def choose(self, item: Item, choice: Choice) -> Done:
        """One of the choices that were shown is right."""
        if choice.feet:
            return self.set_feet(item, choice.feet)
        if choice.adds:
            return self._decide(item, [AddFact(fact) for fact in choice.adds], f"Added: {choice.says}.")
        if not choice.keeps:
            return self.correct(item, choice.fields)
        decisions: list[Decision] = [
            AcceptFact(kept.id) if kept.id in choice.keeps else DropFact(kept.id) for kept in item.facts
        ]
        return self._decide(item, decisions, f"Right: {choice.says}.")

    def correct(self, item: Item, fields: FactFields) -> Done:
        """These fields are right instead, on every foot of the item."""
        fact = _field(item)
        decisions: list[Decision] = [CorrectFact(kept.id, fields) for kept in item.facts]
        after = fact.model_copy(update=dict(fields))
        lesson = learning.from_value(fact, after, self.vocabulary)
        return self._decide(item, decisions, f"Corrected: {with_feet(after, item.feet)}.", lesson)

    def correct_typed(self, item: Item, text: str) -> Done:
        """The value is what was typed, read as a memo is read: ``double aught``, ``3 1/2 inches``."""
        value = read_value(_field(item).slot, text, self.vocabulary, self.reader)
        return self.correct(item, FactFields(value=value))

    def drop(self, item: Item) -> Done:
        """It was not said at all."""
        if not item.facts:
            raise CorrectionError("There is no field here that could be taken out.")
        return self._decide(item, [DropFact(kept.id) for kept in item.facts], f"Not said: {item.as_read()}.")

    def set_feet(self, item: Item, feet: Sequence[Foot | None]) -> Done:
        """It was said of these feet; (None,) is the whole horse."""
        fact, wanted = _field(item), list(dict.fromkeys(feet))
        here = [kept for kept in item.facts if kept.fact.foot in wanted]
        missing = [foot for foot in wanted if foot not in item.feet]
        elsewhere = [kept for kept in item.facts if kept.fact.foot not in wanted]
        decisions: list[Decision] = [AcceptFact(kept.id) for kept in here]
        for kept in elsewhere:
            decisions.append(CorrectFact(kept.id, FactFields(foot=missing.pop(0))) if missing else DropFact(kept.id))
        decisions += [AddFact(fact.model_copy(update={"foot": foot})) for foot in missing]
        return self._decide(item, decisions, f"Corrected: {with_feet(fact, tuple(wanted))}.")

    def move(self, item: Item, horse: KeptHorse) -> Done:
        """It was said of another horse; a visit at that horse is opened in the same memo when there is none."""
        _field(item)
        if item.visit.horse and item.visit.horse.id == horse.id:
            raise CorrectionError(f"It stands at {horse.name} already.")
        decisions: list[Decision] = [MoveFact(kept.id, horse) for kept in item.facts]
        return self._decide(item, decisions, f"Moved to {horse.name}: {item.as_read()}.")

    def add(self, item: Item, text: str) -> Done:
        """This was missed here: ``left fore, mild thrush``. A stretch of unclear words is answered by it."""
        facts = read_facts(text, self.reader, item.visit.visit.date)
        words = {"span": item.span, "quote": ""}
        decisions: list[Decision] = [AddFact(fact.model_copy(update=words)) for fact in facts]
        added = ", ".join(dict.fromkeys(with_feet(fact, (fact.foot,)) for fact in facts))
        if item.kind is ItemKind.WORDS:
            lesson = learning.from_rewording(_quote(item), text, self.vocabulary)
            return self._decide(item, decisions, f"Added: {added}.", lesson)
        # The question itself is still to be answered, and the words that were meant are among those of no fact.
        lesson = learning.from_missed(item.visit.visit.notes.splitlines(), text, self.vocabulary)
        return replace(self._answered_with(item, decisions, "missed", f"Added: {added}.", lesson), answered=False)

    def assign(self, item: Item, horse: KeptHorse) -> Done:
        """It was this horse's visit, all of it."""
        _must_be(item, *_OF_HORSE)
        if item.visit.horse and item.visit.horse.id == horse.id and item.visit.visit.horse_match is HorseMatch.KNOWN:
            return self._horse_confirmed(item, horse)
        return self._decide(item, [AssignHorse(horse)], f"This was {horse.name}.", self._name_lesson(item, horse))

    def split(self, item: Item, horse: KeptHorse, start: int | None = None) -> Done:
        """What is told at this place is another horse's: it goes to that horse's visit in the memo, or opens one.

        ``start`` is where the horse comes in, when it is later than the question has it (``Shown.starts``).
        """
        _must_be(item, ItemKind.SECOND_HORSE)
        if item.visit.horse and item.visit.horse.id == horse.id:
            raise CorrectionError(f"It stands at {horse.name} already; say that it is the same horse.")
        lesson = learning.from_name(horse, item.heard_name(), self.vocabulary)
        return self._split(item, SplitVisit(item.flags[0].id, horse, start), horse.name, lesson)

    def _split(self, item: Item, decision: SplitVisit, name: str, lesson: learning.Lesson | None = None) -> Done:
        there = told_there(self.store, item, decision.start)
        told = ", ".join([*there[:_MOST_TOLD], *([f"{len(there) - _MOST_TOLD} more"] if there[_MOST_TOLD:] else [])])
        later = [one.says for one in starts_there(self.store, item)[1:] if one.at == decision.start]
        place = f"from “{later[0]}” on" if later else place_words(item.place) if item.place else ""
        return self._answered_with(item, [decision], "reviewed", f"{capital(place)} it is {name}: {told}.", lesson)

    def new_horse(self, item: Item, name: str, place: str | None = None, start: int | None = None) -> Done:
        """It was a horse that is not on the roster yet. Raises CorrectionError for a name that is there already."""
        _must_be(item, *_OF_HORSE)
        wanted = " ".join(name.split())
        if any(kept.name.casefold() == wanted.casefold() and kept.horse.place == place for kept in self.store.horses()):
            raise CorrectionError(f"{wanted} is on the roster already; choose it there.")
        self.item(item.key)  # still open: no horse is made for a question that somebody has answered
        horse = RosterHorse(name=wanted, place=place)
        if item.kind is ItemKind.SECOND_HORSE:
            return self._split(item, SplitVisit(item.flags[0].id, horse, start), f"{wanted}, a new horse")
        return self._decide(item, [AssignNewHorse(horse)], f"{wanted} is a new horse.")

    def no_horse(self, item: Item) -> Done:
        """It is none of these: the visit stays without a horse, and is asked no more."""
        _must_be(item, ItemKind.HORSE)
        if not item.flags:
            raise CorrectionError("Say which horse it was, or skip it.")
        looked_at = [LookedAt(flag.id) for flag in item.flags]
        return self._answered_with(item, looked_at, "reviewed", "Left without a horse.", None)

    def set_day(self, item: Item, text: str) -> Done:
        """The memo is of this day (YYYY-MM-DD). Raises CorrectionError for what is no day."""
        _must_be(item, ItemKind.DAY)
        try:
            day = date.fromisoformat(text.strip())
        except ValueError as error:
            raise CorrectionError(f"“{text.strip()}” is no day; write it as YYYY-MM-DD, such as 2026-03-02.") from error
        return self._decide(item, [SetDay(day)], f"The day is {day.isoformat()}.")

    def undo(self) -> Done:
        """Take back the last answer of this name that still stands, whenever it was given, and what it taught."""
        changes = self.store.undo_action(who=self.who)
        gone = {change.id for change in changes}
        lessons: list[learning.Lesson] = [*self.store.learned_in(gone)]
        for change, lesson in [taught for taught in self._taught if taught[0] in gone]:
            lessons += [] if lesson in lessons else [lesson]
            self._taught.remove((change, lesson))
            self.learned.pop()
        stays = [lesson for lesson in lessons if not learning.unlearn(self.store, lesson)]
        whose = self.store.visit(changes[0].visit) if changes[0].visit else None
        name = f" at {whose.horse.name}" if whose and whose.horse else ""
        return Done(f"Taken back{name}; it is asked again.{''.join(map(learning.still_learned, stays))}")

    def learn(self, lesson: learning.Lesson) -> str:
        """Learn it at once, because he says so; returns a sentence. Raises VocabularyError when it may not be."""
        change = self._last_change()
        said = learning.learn(self.store, lesson, change)
        self._note_learned(lesson, said, change)
        return said

    def _horse_confirmed(self, item: Item, horse: KeptHorse) -> Done:
        lesson = self._name_lesson(item, horse)
        return self._decide(item, [AssignHorse(horse)], f"Right: this was {horse.name}.", lesson)

    def _name_lesson(self, item: Item, horse: KeptHorse) -> learning.Lesson | None:
        """What the name as heard teaches; a word within the visit that may be another's is no name of this one."""
        heard = "" if item.kind is ItemKind.SECOND_HORSE else item.heard_name()
        return learning.from_name(horse, heard, self.vocabulary)

    def _decide(
        self, item: Item, decisions: Sequence[Decision], says: str, lesson: learning.Lesson | None = None
    ) -> Done:
        """Write an answer with all that it answers besides, and see what it teaches."""
        whole = [*decisions, *_answered(item)]
        why = SPOT_CHECK if item.spot_check else "reviewed"
        return self._answered_with(item, whole, why, says, lesson)

    def _answered_with(
        self, item: Item, decisions: Sequence[Decision], why: str, says: str, lesson: learning.Lesson | None
    ) -> Done:
        """Write it whole; then learn what it teaches when that is due, or offer it when it may be learned."""
        if lesson is not None and not learning.may_be_learned(self.store, lesson, self.vocabulary):
            lesson = None
        shows = lesson if isinstance(lesson, WordLesson) else None
        self.store.decide(item.visit.id, decisions, seen=item.seen, who=self.who, why=why, shows=shows)
        if lesson is None:
            return Done(says)
        change = self._last_change()
        said = learning.learn_if_due(self.store, lesson, change)
        if said is None:
            return Done(says, lesson)
        self._note_learned(lesson, said, change)
        return Done(says, learned=said)

    def _last_change(self) -> int | None:
        """The number of the last change of this name; None when it cannot be told just now."""
        with suppress(StoreError):  # the answer is kept by then, and must not look as if it was not
            return next((change.id for change in self.store.last_action(who=self.who)), None)
        return None

    def _note_learned(self, lesson: learning.Lesson, said: str, change: int | None) -> None:
        self.learned.append(said)
        if change is not None:
            self._taught.append((change, lesson))


def _must_be(item: Item, *kinds: ItemKind) -> None:
    """An answer to another question would answer this one's flags unread."""
    if item.kind not in kinds:
        raise CorrectionError("This is no answer to what is asked here.")


def _field(item: Item) -> Fact:
    if item.fact is None:
        raise CorrectionError("There is no field here that could be corrected.")
    return item.fact


def _quote(item: Item) -> str:
    return item.flags[0].flag.quote if item.flags else ""


def _answered(item: Item) -> list[Decision]:
    """What is answered with this item: its own flags, and contradictions of which it holds the last field.

    Whoever says whose the whole visit was, or that it is one horse, says it of every field that was doubted for that.
    """
    own = [flag.id for flag in item.flags]
    decided = {kept.id for kept in item.facts}
    for flag in item.visit.flags:
        left = {kept.id for kept in carrying(item.visit.facts, flag)}
        if flag.flag.kind is FlagKind.CONTRADICTION and flag.id not in own and left and left <= decided:
            own.append(flag.id)
    places = {flag.id for flag in item.flags if asked_place(flag.flag.reason)}
    return [SameHorse(flag) if flag in places else LookedAt(flag) for flag in own]
