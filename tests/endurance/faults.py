"""An error at every statement and every file operation of the store: all or nothing, and the next try picks up."""

from __future__ import annotations

import builtins
import errno
import io
import os
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Any
from unittest import mock

from pipeline.errors import ClinchbookError
from pipeline.keeping import Store
from pipeline.keeping.database import _Connection
from pipeline.keeping.deciding import AcceptFact, AssignNewHorse
from pipeline.keeping.lessons import WordLesson
from pipeline.keeping.originals import clear_parts
from pipeline.keeping.own_words import own_words
from pipeline.record import RosterHorse, Status
from pipeline.using.review import learning
from tests.endurance.apart import Caught
from tests.endurance.outcome import Outcome
from tests.endurance.yard import Spoken, keep, spoken, wholeness, with_roster

LESSON = WordLesson("findings", "thrush", "thruss")
NEW_OWNER = [RosterHorse(name="Bramble", place="River barn", owner="B. Reed"), RosterHorse(name="Fennel")]
# Where Python itself touches files: every one of these is made to fail, once and from then on.
_FILE_OPERATIONS = (
    (os, "open"), (os, "fsync"), (os, "fdopen"), (os, "replace"), (os, "rename"), (os, "mkdir"), (os, "unlink"),
    (os, "stat"), (os, "fstat"), (io, "open"), (builtins, "open"), (sqlite3, "connect"),
)  # fmt: skip


class Fault:
    """Counts steps and fails at one of them, or at that one and all that follow."""

    def __init__(self, at: int | None, lasting: bool, make: Callable[[], Exception]) -> None:
        self.at = at
        self.lasting = lasting
        self.make = make
        self.steps: list[str] = []
        self.on = False

    def step(self, name: str) -> None:
        """One step; raises the fault when its turn has come."""
        if not self.on:
            return
        self.steps.append(name)
        here = len(self.steps) - 1
        # The end of a savepoint around a query writes nothing, so that no lasting trouble of a disk can reach it.
        later = self.lasting and not name.startswith(("RELEASE", "ROLLBACK TO"))
        if self.at is not None and (here == self.at or (later and here > self.at)):
            raise self.make()


@contextmanager
def faulty_statements(fault: Fault) -> Iterator[None]:
    """Every connection made inside counts its statements with ``fault``."""

    class Connection(_Connection):
        def execute(self, sql: str, *rest: Any) -> sqlite3.Cursor:
            fault.step(" ".join(sql.split())[:60])
            return super().execute(sql, *rest)

        def executescript(self, sql: str) -> sqlite3.Cursor:
            fault.step("a script")
            return super().executescript(sql)

        def executemany(self, sql: str, *rest: Any) -> sqlite3.Cursor:
            fault.step(" ".join(sql.split())[:60])
            return super().executemany(sql, *rest)

    real = sqlite3.connect

    def connect(path: Any, **named: Any) -> sqlite3.Connection:
        opened: sqlite3.Connection = real(path, **{**named, "factory": Connection})
        return opened

    with mock.patch.object(sqlite3, "connect", connect):
        yield


@contextmanager
def faulty_files(fault: Fault) -> Iterator[None]:
    """Every file operation of Python's own that is made inside counts with ``fault``."""
    patches = []
    for module, name in _FILE_OPERATIONS:
        real = getattr(module, name)

        def counted(*given: Any, _real: Any = real, _name: str = name, **named: Any) -> Any:
            fault.step(f"{_name} {str(given[0])[-30:]}")
            return _real(*given, **named)

        patches.append(mock.patch.object(module, name, counted))
    for patch in patches:
        patch.start()
    try:
        yield
    finally:
        for patch in patches:
            patch.stop()


@dataclass(frozen=True)
class Task:
    """Something that is done to a store, and whether it was; ``changes_facts`` of the memo that was kept before."""

    name: str
    do: Callable[[Store, Spoken], object]
    done: Callable[[Store, Spoken], bool]
    changes_facts: bool = False


def _first_visit(store: Store) -> int:
    return store.memos()[0].visit_ids[0]


def _assign(store: Store, memo: Spoken) -> None:
    store.assign(_first_visit(store), store.horse("Tansy"), who="Ann")


def _correct(store: Store, memo: Spoken) -> None:
    visit = store.visit(_first_visit(store))
    if visit.visit.facts[0].status is Status.SUSPECTED:
        return  # a correction that changes nothing is refused
    store.correct(visit.fact_ids[0], {"status": Status.SUSPECTED}, seen=visit.revision, who="Ann")


def _is_corrected(store: Store, memo: Spoken) -> bool:
    return store.visit(_first_visit(store)).visit.facts[0].status is Status.SUSPECTED


def _name_new_horse(store: Store, memo: Spoken) -> None:
    visit = store.visit(_first_visit(store))
    if not _is_new_horse_s(store, memo):
        decisions = (AssignNewHorse(RosterHorse(name="Fennel", place="River barn")), AcceptFact(visit.fact_ids[0]))
        store.decide(visit.id, decisions, seen=visit.revision, who="Ann", shows=LESSON)


def _is_new_horse_s(store: Store, memo: Spoken) -> bool:
    """Whether the horse, its visit and the mishearing are there; AssertionError when only some of them are."""
    there = {
        "Fennel" in [kept.name for kept in store.horses()],
        store.visit(_first_visit(store)).visit.horse == "Fennel",
        store.visit(_first_visit(store)).facts[0].settled,
        store.times_seen(LESSON) == 1,
    }
    assert len(there) == 1, "an answer is half there"
    return there == {True}


def _learn(store: Store, memo: Spoken) -> None:
    if not _has_learned(store, memo):
        learning.learn(store, LESSON)


def _has_learned(store: Store, memo: Spoken) -> bool:
    return [word.form for word in own_words(store.folder)] == [LESSON.form]


def _has_new_owner(store: Store) -> bool:
    names = {kept.name: kept.horse.owner for kept in store.horses()}
    return (names["Bramble"], "Fennel" in names) == ("B. Reed", True)


TASKS = (
    Task("keep a memo", keep, lambda store, memo: store.has(memo.sha256)),
    Task("add horses", lambda store, memo: store.add_horses(NEW_OWNER), lambda store, memo: _has_new_owner(store)),
    Task("correct a fact", _correct, _is_corrected, changes_facts=True),
    Task("assign a visit", _assign, lambda store, memo: store.visit(_first_visit(store)).visit.horse == "Tansy"),
    Task("name a new horse", _name_new_horse, _is_new_horse_s, changes_facts=True),
    Task("learn a word", _learn, _has_learned),
)


def run(every: int) -> list[Outcome]:
    """Fail at every ``every``-th step of each task, in each way."""
    statements, files = Outcome("faults at statements"), Outcome("faults at file operations")
    errors = {"I/O": _disk_error, "full": _full_error}
    for task in TASKS:
        for name, make in errors.items():
            _all_steps(statements, task, faulty_statements, make, name, every)
        for code in (errno.EIO, errno.ENOSPC, errno.EACCES):
            _all_steps(files, task, faulty_files, partial(OSError, code, os.strerror(code)), str(code), every)
    return [statements, files]


def _disk_error() -> Exception:
    error = sqlite3.OperationalError("disk I/O error")
    error.sqlite_errorcode = sqlite3.SQLITE_IOERR_WRITE
    return error


def _full_error() -> Exception:
    error = sqlite3.OperationalError("database or disk is full")
    error.sqlite_errorcode = sqlite3.SQLITE_FULL
    return error


Faulty = Callable[[Fault], Any]


def _all_steps(
    outcome: Outcome, task: Task, faulty: Faulty, make: Callable[[], Exception], error: str, every: int
) -> None:
    counting = Fault(None, False, make)
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        _one(outcome, task, faulty, counting, Path(named), f"{task.name}, no fault")
    for at in range(0, len(counting.steps), every):
        for lasting in (False, True):
            if lasting and counting.steps[at].startswith(("RELEASE", "ROLLBACK TO")):
                continue
            fault = Fault(at, lasting, make)
            words = f"{task.name}, {error} at {counting.steps[at]}{' and after' if lasting else ''}"
            with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
                _one(outcome, task, faulty, fault, Path(named), words)
            outcome.cases += 1


def _one(outcome: Outcome, task: Task, faulty: Faulty, fault: Fault, folder: Path, words: str) -> None:
    """One fault in a fresh store, then the same task again in the store that was open all the time."""
    memos = [spoken(folder, 1), spoken(folder, 2)]
    unchanged = memos[1:] if task.changes_facts else memos
    book = folder / "book"
    with_roster(book)
    with Store.open(book) as store:
        keep(store, memos[0])
    ended = "done"
    with faulty(fault):
        store = Store.open(book)
        fault.on = True
        with Caught() as caught:
            try:
                task.do(store, memos[1])
            except ClinchbookError as error:
                ended = str(error)
        fault.on = False
    if caught.trouble:
        ended = caught.trouble.strip().splitlines()[-1]
        outcome.failures.append(f"{words}: {ended} instead of a sentence")
    with store:
        with Store.open(book) as other:  # as another program sees it
            stands = task.done(other, memos[1])
            unsure = ended.endswith("after a power cut they may be as before.")  # done, and said that it may not last
            outcome.expect(
                stands == (ended == "done" or unsure), f"{words}: ended with “{ended}”, but done is {stands}"
            )
            outcome.failures += [f"{words}: {problem}" for problem in wholeness(other, unchanged)]
        try:
            task.do(store, memos[1])
        except ClinchbookError as error:
            closed = "closed database" in str(error) and fault.lasting
            outcome.expect(closed, f"{words}: the next try in the same store ended with “{error}”")
    with Store.open(book) as other:
        if not task.done(other, memos[1]):
            task.do(other, memos[1])
        outcome.expect(task.done(other, memos[1]), f"{words}: the next try did not do it")
        outcome.failures += [f"{words}, next try: {problem}" for problem in wholeness(other, unchanged)]
        clear_parts(book)
        left = [path.name for path in book.rglob("*") if path.name.endswith((".part", "-journal"))]
        outcome.expect(not left, f"{words}: {left} was left behind")
