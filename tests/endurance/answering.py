"""An invented yard with all kinds of questions, and a reviewer whose answers follow from a number alone."""

from __future__ import annotations

import hashlib
import random
from collections.abc import Callable, Sequence
from datetime import date, timedelta
from functools import cache, partial
from pathlib import Path

from pipeline.errors import CorrectionError, NotFoundError, StoreBusyError, StoreConflictError, VocabularyError
from pipeline.judging import judge
from pipeline.keeping import Store
from pipeline.reading import Reader
from pipeline.record import FEET, Flag, FlagKind, Memo, MemoRecord, RosterHorse, Transcript, Word
from pipeline.using.review import Done, Item, ItemKind, Review
from pipeline.vocabulary import load_vocabulary

WHO = "Ann"
ROSTER = (RosterHorse(name="Hester", place="Quince Farm"), RosterHorse(name="Rowan"), RosterHorse(name="Figaro"))
_MISSED = ("left fore, mild thrush", "right hind, six nails", "left hind, corn")
# What was said, words that were hard to hear, and a stretch that could not be made out.
_SAID: tuple[tuple[str, tuple[str, ...], str], ...] = (
    ("Hester. On the left front, thruss in the sulcus.", (), "thruss in the sulcus"),
    ("Rohand. First one stood quiet. Trimmed all four.", (), ""),
    ("Hester. Left hind has fresh at the toe. Bruise on the right fore, mild.", ("mild",), ""),
    ("Figaro. New shoes in front, size three, six nails each, and he stood quiet.", ("three", "six"), ""),
    ("Hester. On the left front, toe angle 48 degrees. Left front toe angle 52 degrees.", (), ""),
    ("Figaro. Heat in the left fore. Testers positive at the toe. Then Rowan, corn in the off hind.", ("corn",), ""),
    ("Rowan. Trimmed her and toe length is 92 millimetres. Back in six weeks.", ("weeks",), ""),
)
_REFUSED = (CorrectionError, StoreConflictError, StoreBusyError, NotFoundError, VocabularyError)
Answer = Callable[[], Done]


@cache
def reader() -> Reader:
    """The real reader, loaded once."""
    return Reader(load_vocabulary())


def make_yard(folder: Path, memos: int) -> None:
    """A store of so many memos that were read and judged, some on each of a few days."""
    with Store.open(folder / "book") as store:
        store.add_horses(ROSTER, who=WHO)
        for number in range(memos):
            keep_memo(store, folder, number)


def keep_memo(store: Store, folder: Path, number: int) -> str:
    """Read, judge and keep memo ``number``, the same each time; returns its hash."""
    said, unsure, unclear = _SAID[number % len(_SAID)]
    day = date(2026, 3, 2) + timedelta(days=number // 4)
    transcript = _transcript(said, unsure)
    flags = [_flag(transcript, FlagKind.UNCLEAR_SPEECH, unclear)] if unclear else []
    if number % 5 == 0:
        flags.append(_flag(transcript, FlagKind.DATE, ""))
    path = folder / f"memo {number}.m4a"
    path.write_bytes(random.Random(f"answered {number}").randbytes(2000))
    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    visits = judge(reader().read(transcript, list(ROSTER), day), transcript)
    memo = Memo(path=str(path), sha256=digest, seconds=20.0)
    store.keep(MemoRecord(memo=memo, transcript=said, visits=visits, flags=flags), transcript, path)
    return digest


def _transcript(said: str, unsure: Sequence[str]) -> Transcript:
    words, at = [], 0
    for number, word in enumerate(said.split()):
        at = said.index(word, at)
        sure = 0.2 if word.strip(".,") in unsure else 0.95
        begin = number / 2
        words.append(Word(text=word, start=at, end=at + len(word), start_s=begin, end_s=begin + 0.4, probability=sure))
        at += len(word)
    return Transcript(text=said, words=words)


def _flag(transcript: Transcript, kind: FlagKind, quote: str) -> Flag:
    at = transcript.text.index(quote)
    return Flag(kind=kind, reason="this is not sure", quote=quote, span=(at, at + len(quote)))


class Reviewer:
    """One evening at a store. What answer ``number`` is follows from ``seed`` and from what stands in the store.

    ``given`` counts the answers that were kept, each a single action.
    """

    def __init__(self, store: Store, seed: str, who: str = WHO) -> None:
        self.review = Review(store, load_vocabulary(), who, reader())
        self.seed = seed
        self.given = 0
        self.keys = self.review.open_keys()
        random.Random(seed).shuffle(self.keys)

    def answer(self, number: int) -> str:
        """Give it, and return what was said of it; an answer that is refused says why."""
        chance = random.Random(f"{self.seed} {number}")
        try:
            if chance.random() < 0.2 or not self.keys:  # with nothing left to ask, the evening takes answers back
                said = [self.review.undo().says]
                self.given += 1
                return said[0]
            done = self._done(self.review.item(self.keys[number % len(self.keys)]), chance)
            self.given += 1
            said = [done.says, done.learned or ""]
            if done.lesson is not None and chance.random() < 0.5:
                said.append(self.review.learn(done.lesson))
            return " ".join(said)
        except _REFUSED as refused:
            return str(refused)

    def _done(self, item: Item, chance: random.Random) -> Done:
        review, horse = self.review, chance.choice(self.review.store.horses())
        answers: list[Answer] = [lambda: review.accept(item), lambda: review.add(item, chance.choice(_MISSED))]
        if item.facts:
            answers.append(lambda: review.drop(item))
        answers += [partial(review.choose, item, choice) for choice in review.show(item).choices[:4]]
        if item.kind in (ItemKind.FIELD, ItemKind.SPOT_CHECK):
            feet = chance.sample(FEET, chance.randint(1, 3))
            answers += [lambda: review.set_feet(item, feet), lambda: review.move(item, horse)]
        if item.kind is ItemKind.HORSE:
            new = f"Foal {chance.choice('abcdefgh')}"
            answers = [answers[0], *[lambda: review.assign(item, horse)] * 3, lambda: review.no_horse(item)]
            answers += [lambda: review.new_horse(item, new, "Quince Farm")] * 2
        if item.kind is ItemKind.DAY:
            answers.append(lambda: review.set_day(item, "2026-03-05"))
        return chance.choice(answers)()
