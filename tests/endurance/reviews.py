"""A review killed at random moments: every answer that was acknowledged is there, and none is half there.

Beside the store lies a twin, whose reviewer gives the same answers and is never killed. After each kill both must
hold the same, row by row, history and learned words with it; the answer that was under way may be missing, or be there
whole. What an answer teaches is learned right after it: there alone the kill may fall between the two.
"""

from __future__ import annotations

import os
import random
import shutil
import signal
import sqlite3
import tempfile
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Any
from unittest import mock

from pipeline.keeping import Store, writing_down
from pipeline.keeping.lessons import LessonStep
from pipeline.using.review import learning
from tests.endurance.answering import Reviewer, make_yard, reader
from tests.endurance.apart import Child, start
from tests.endurance.outcome import Outcome

_KILLS_A_STORE = 25
_MEMOS_A_STORE = 63
_STEPS = 4  # a kill falls into one of the first few answers of a program
_MOMENTS = ("at", "kept_at", "made_at")  # columns that no two runs have in common
State = dict[str, list[Any]]


def run(kills: int, seed: int) -> list[Outcome]:
    """Kill ``kills`` reviews; the moments and the answers follow from ``seed``."""
    reader()  # loaded once, for all that are forked
    outcome = Outcome("killed while reviewing")
    desks = []
    for first in range(0, kills, _KILLS_A_STORE):
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            desk = Desk(Path(named), f"{seed} {first}")
            desks.append(desk)
            for _ in range(min(_KILLS_A_STORE, kills - first)):
                desk.kill(outcome)
    counted = {
        name: sum(vars(desk)[name] for desk in desks) for name in ("acknowledged", "writing", "whole", "missing")
    }
    outcome.remarks.append(
        "{acknowledged} answers acknowledged; {writing} kills amid a transaction; of the answers under way "
        "{whole} whole, {missing} not there".format_map(counted)
    )
    return [outcome]


class Desk:
    """A store under review with its twin."""

    def __init__(self, folder: Path, seed: str) -> None:
        self.book, self.twin = folder / "book", folder / "twin"
        self.chance, self.seed = random.Random(seed), seed
        self.kills = self.acknowledged = self.writing = self.whole = self.missing = 0
        make_yard(folder, _MEMOS_A_STORE)
        self._twin_anew()
        with Store.open(self.twin) as store:
            reviewer = Reviewer(store, seed)
            began = time.monotonic()
            for number in range(_STEPS):
                reviewer.answer(number)
            self.answer_s = (time.monotonic() - began) / _STEPS
        self._twin_anew()

    def kill(self, outcome: Outcome) -> None:
        """One program, one kill, and a look at what is left."""
        self.kills += 1
        outcome.cases += 1
        evening = f"{self.seed} {self.kills}"
        told = self._killed(start(lambda pipe: _answer_all(self.book, evening, pipe)), outcome)
        said = [line.partition(" ")[2] for line in told if line.startswith("said ")]
        under_way = len([line for line in told if line.startswith("begin ")]) > len(said)
        self.acknowledged += len(said)
        self.writing += (self.book / "clinchbook.db-journal").exists()
        wrong = self._compared(evening, said, under_way)
        outcome.failures += [f"kill {outcome.cases} (review {evening}): {problem}" for problem in wrong]

    def _killed(self, child: Child, outcome: Outcome) -> list[str]:
        """What it told; the kill falls somewhere into an answer, or into one of the writings that belong to it."""
        sign, most_s = self.chance.choice(((b"begin ", 1.2 * self.answer_s), (b"writes", self.answer_s / 2)))
        wanted, told = self.chance.randint(1, _STEPS), b""
        while told.count(sign) < wanted and (piece := os.read(child.pipe, 4096)):
            told += piece
        time.sleep(self.chance.uniform(0, most_s))
        child.kill()
        told += child.written()
        status = child.wait()
        outcome.expect(status in (0, signal.SIGKILL), f"a program ended by itself with status {status}")
        return told.decode().split("\n")[:-1]  # what follows the last line end was cut off

    def _compared(self, evening: str, said: list[str], under_way: bool) -> list[str]:
        with Store.open(self.book) as store:
            wrong = store.problems(deep=True)
        now = state_of(self.book)
        with Store.open(self.twin) as store:
            reviewer = Reviewer(store, evening)
            again = [reviewer.answer(number) for number in range(len(said))]
            before = state_of(self.twin)
            between: list[State] = []
            if under_way:
                with _looking_between(self.twin, between):
                    reviewer.answer(len(said))
            after = state_of(self.twin)
        if again != said:
            wrong.append(f"answers came out as {said} and, not killed, as {again}")
        if now == after:
            self.whole += under_way
            return wrong
        self.missing += now == before
        if now != before and now not in between:
            wrong += [f"an answer is half there or gone: {told}" for told in _unlike(now, before, after)]
        self._twin_anew()
        return wrong

    def _twin_anew(self) -> None:
        shutil.rmtree(self.twin, ignore_errors=True)
        shutil.copytree(self.book, self.twin)


def _answer_all(folder: Path, evening: str, pipe: int) -> None:
    real = writing_down.take_pen

    def telling(*given: Any) -> None:
        os.write(pipe, b"writes\n")
        real(*given)

    with Store.open(folder) as store, mock.patch.object(writing_down, "take_pen", telling):
        reviewer = Reviewer(store, evening)
        for number in range(200):
            os.write(pipe, f"begin {number}\n".encode())
            os.write(pipe, f"said {reviewer.answer(number)}\n".encode())


@contextmanager
def _looking_between(folder: Path, seen: list[State]) -> Iterator[None]:
    """Look at the store right before something is learned from an answer, and before that is written down."""
    real_note = Store.note_lesson

    def looking(real: Any) -> Any:
        def called(*given: Any) -> Any:
            seen.append(state_of(folder))
            return real(*given)

        return called

    def noting(store: Store, lesson: Any, step: LessonStep, **named: Any) -> None:
        if step is LessonStep.LEARNED:
            seen.append(state_of(folder))
        real_note(store, lesson, step, **named)

    with (
        mock.patch.object(learning, "learn", looking(learning.learn)),
        mock.patch.object(learning, "unlearn", looking(learning.unlearn)),
        mock.patch.object(Store, "note_lesson", noting),
    ):
        yield


def state_of(folder: Path) -> State:
    """All that a store holds, moments aside: the rows of every table, and the words that were learned."""
    state: State = {"words": [(path.name, path.read_text()) for path in sorted((folder / "words").glob("[!.]*"))]}
    with closing(sqlite3.connect(f"file:{folder / 'clinchbook.db'}?mode=ro", uri=True)) as database:
        tables = database.execute("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'")
        for table in sorted(name for (name,) in tables if not name.startswith("sqlite_")):
            rows = database.execute(f'SELECT * FROM "{table}" ORDER BY 1')
            places = [place for place, told in enumerate(rows.description) if told[0] not in _MOMENTS]
            state[table] = [tuple(row[place] for place in places) for row in rows]
        # What was decided in one moment is taken back together.
        state["actions"] = database.execute("SELECT min(id), count(*) FROM changes GROUP BY at ORDER BY 1").fetchall()
    return state


def _unlike(now: State, before: State, after: State) -> list[str]:
    return [
        f"{table} holds {[row for row in now[table] if row not in before[table]]} more "
        f"and lacks {[row for row in before[table] if row not in now[table]]}; "
        f"{[row for row in after[table] if row not in before[table]]} was to come"
        for table in now
        if not now[table] == before[table] == after[table]
    ]
