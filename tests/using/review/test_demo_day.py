"""A scripted reviewer who knows what was said works through the demo day with single keys; every key is counted."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from pipeline.cli.playing import Player
from pipeline.cli.review_keys import KeyReview, Terminal
from pipeline.keeping import Store
from pipeline.reading import Reader
from pipeline.record import Fact
from pipeline.using.review import Item, ItemKind, Review
from pipeline.using.review.choices import choices_of
from pipeline.vocabulary import load_vocabulary

DEMO = Path(__file__).resolve().parents[3] / "demo_audio"
MOST_KEYS, MOST_ACTIONS = 3, 60
Said = tuple[str | None, str, str | float, str]


def said_of(fact: Fact) -> Said:
    """What a fact says, as gold is compared: foot, slot, value, status."""
    value = fact.value if isinstance(fact.value, str) else round(float(fact.value), 1)
    return fact.foot, fact.slot, value, fact.status.value


def gold() -> dict[str, list[tuple[str, set[Said]]]]:
    """By file name, each visit's horse and what was truly said of it."""
    memos: dict[str, list[tuple[str, set[Said]]]] = {}
    for line in (DEMO / "gold.jsonl").read_text(encoding="utf-8").splitlines():
        memo: dict[str, Any] = json.loads(line)
        memos[memo["audio"]] = [
            (v["horse"], {(f, s, x if isinstance(x, str) else round(float(x), 1), t) for f, s, x, t, *_ in v["facts"]})
            for v in memo["visits"]
        ]
    return memos


@dataclass
class Scripted:
    """Answers each question by what was truly said; ``keys`` holds the keys of every question, lines aside."""

    review: Review
    truth: dict[str, list[tuple[str, set[Said]]]] = field(default_factory=gold)
    waiting: list[str] = field(default_factory=list)
    typed: str = ""
    keys: list[list[str]] = field(default_factory=list)
    right: list[bool] = field(default_factory=list)

    def key(self) -> str:
        """The next key; a new question is thought over once."""
        if not self.waiting:
            items = self.review.queue()
            if not items:
                return "q"
            self.waiting = self.decide(items[0])
            self.keys.append(list(self.waiting))
        return self.waiting.pop(0)

    def line(self, asked: str) -> str:
        """What is typed."""
        return self.typed

    def decide(self, item: Item) -> list[str]:
        """The keys that answer this question: the clip is played first, then one answer."""
        horse, said = self.said_at(item)
        if item.kind is ItemKind.HORSE:
            if horse is None:
                return ["p", "o"]
            self.typed = horse
            names = [near.horse.name for near in self.review.show(item).horses]
            return ["p", str(names.index(horse) + 1) if horse in names else "h"]
        if item.kind in (ItemKind.WORDS, ItemKind.DAY, ItemKind.SECOND_HORSE):  # no horse of that day lost its name
            return ["p", "a"]
        right = {said_of(kept.fact) for kept in item.facts} <= said
        self.right.append(right)
        return ["p", "a" if right else self.correction(item, said)]

    def correction(self, item: Item, said: set[Said]) -> str:
        """A choice that is true, else the true value typed, else not said."""
        for number, choice in enumerate(choices_of(item, self.review.vocabulary, None), start=1):
            if choice.keeps:
                if {said_of(kept.fact) for kept in item.facts if kept.id in choice.keeps} <= said:
                    return str(number)
            elif choice.feet:
                one = item.facts[0].fact
                if {said_of(one.model_copy(update={"foot": foot})) for foot in choice.feet} <= said:
                    return str(number)
            elif {said_of(k.fact.model_copy(update=dict(choice.fields))) for k in item.facts} <= said:
                return str(number)
        fact = item.facts[0].fact
        values = {value for foot, slot, value, _ in said if (foot, slot) == (fact.foot, fact.slot)}
        if len(values) == 1 and item.kind is not ItemKind.CHOICE:
            self.typed = str(values.pop())
            return "c"
        return "n"

    def said_at(self, item: Item) -> tuple[str | None, set[Said]]:
        """The horse and the facts that were said in this visit."""
        visits = self.truth[item.visit.memo.file_name]
        name = item.visit.horse.name if item.visit.horse else None
        return next(((h, s) for h, s in visits if h == name), visits[0])


@dataclass(frozen=True)
class Evening:
    """What the scripted reviewer did, and what the terminal told."""

    scripted: Scripted
    keys: KeyReview
    told: list[str]
    wrong_before: int
    wrong_after: int
    flagged_after: int


@pytest.fixture(scope="module")
def evening(demo_folder: Path, reader: Reader, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Evening]:
    folder = tmp_path_factory.mktemp("evening") / "store"
    shutil.copytree(demo_folder, folder)
    with worked_through(folder, reader) as evening:
        yield evening


@contextmanager
def worked_through(folder: Path, reader: Reader) -> Iterator[Evening]:
    """Let the scripted reviewer answer everything in a store of the demo day."""
    told: list[str] = []
    with Store.open(folder) as store, Player() as player:
        before = errors_left(store)
        scripted = Scripted(Review(store, load_vocabulary(), "Reviewer", reader))
        keys = KeyReview(scripted.review, Terminal(scripted.key, scripted.line, told.append), player)
        keys.run()
        yield Evening(scripted, keys, told, before, errors_left(store), store.counts()["flagged"])


def errors_left(store: Store) -> int:
    """The fields that stand and were not said."""
    truth, wrong = gold(), 0
    for memo in store.memos():
        for visit in (store.visit(number) for number in memo.visit_ids):
            name = visit.horse.name if visit.horse else None
            said = next((s for h, s in truth[memo.file_name] if h == name), truth[memo.file_name][0][1])
            wrong += sum(said_of(kept.fact) not in said for kept in visit.facts)
    return wrong


def test_the_whole_day_takes_few_actions_and_few_keys(evening: Evening, capsys: pytest.CaptureFixture[str]) -> None:
    pressed = [len(keys) for keys in evening.scripted.keys]
    with capsys.disabled():
        print(f"\nscripted review of the demo day: {evening.keys.answered} actions, {sum(pressed)} keys with playing")
    assert len(pressed) == evening.keys.answered
    assert evening.keys.answered < MOST_ACTIONS
    assert max(pressed) <= MOST_KEYS
    assert evening.told[-1].splitlines()[1].startswith("All done.")
    assert evening.scripted.review.queue() == []


def test_a_field_that_is_right_takes_one_action(evening: Evening) -> None:
    assert sum(evening.scripted.right) >= 12
    fields = [keys for keys in evening.scripted.keys if keys == ["p", "a"]]
    assert len(fields) >= sum(evening.scripted.right)


def test_the_record_is_truer_afterwards(evening: Evening) -> None:
    assert evening.flagged_after == 0
    assert evening.wrong_after < evening.wrong_before / 2


def test_every_line_fits_a_terminal_of_80_columns(evening: Evening) -> None:
    asked = [text for text in evening.told if "lie in" not in text]  # a path is never cut
    assert max(len(line) for text in asked for line in text.splitlines()) <= 80


def test_progress_is_told(evening: Evening) -> None:
    asked = [text.splitlines()[1] for text in evening.told if text.startswith("-") and "p play" in text]
    total = evening.keys.answered
    # That it is one horse all through answers two fields at that place too, of which nothing else was doubted.
    assert asked[0].startswith(f"1 of {total + 2} ")
    assert asked[-1].startswith(f"{total} of {total} ")
