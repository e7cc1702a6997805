"""A removal that fails, is killed or meets another program: all of it or nothing, and it is finished later."""

from __future__ import annotations

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from sqlite_utils import Database

from pipeline.errors import StoreBusyError, StoreError
from pipeline.keeping import Store, forgetting
from pipeline.record import Visit
from tests.keeping.conftest import Yard
from tests.keeping.quillon import bytes_of, keep_secret, shape, visit_of, with_quillon

if TYPE_CHECKING:
    from collections.abc import Callable


@pytest.fixture
def quillon(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """The store with Bramble's memo, and Quillon with traces everywhere."""
    return with_quillon(yard, store, trimmed)


def test_a_plan_that_no_longer_fits_removes_nothing(yard: Yard, quillon: Store) -> None:
    plan = quillon.plan_forgetting_horse("Quillon")
    keep_secret(yard, quillon, visit_of("Quillon"), sound=b"another sound" * 100)
    with pytest.raises(StoreError, match="changed meanwhile; nothing was removed"):
        quillon.forget(plan)
    assert len(quillon.visits_of("Quillon")) == 2


def test_an_error_in_the_middle_removes_nothing(yard: Yard, quillon: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    before, counts = shape(yard.folder), quillon.counts()
    plan = quillon.plan_forgetting_horse("Quillon")

    def failing(*_: object) -> None:
        raise sqlite3.OperationalError("out of luck")

    monkeypatch.setattr(forgetting, "_index_anew", failing)
    with pytest.raises(StoreError):
        quillon.forget(plan)
    assert (shape(yard.folder), quillon.counts()) == (before, counts)
    assert quillon.problems(deep=True) == []
    assert not quillon.finish_forgetting()


def test_an_error_at_any_statement_removes_all_or_nothing(
    yard: Yard, quillon: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    before, counts = shape(yard.folder), quillon.counts()
    plan, refused, done = quillon.plan_forgetting_horse("Quillon"), 0, False
    while not done:
        with monkeypatch.context() as patched:
            patched.setattr(Database, "execute", Counted(Database.execute, fails_at=refused + 1))
            try:
                quillon.forget(plan)
                done = True
            except StoreError:
                refused += 1
        done = quillon.finish_forgetting() or done
        assert done or quillon.counts() == counts
    assert refused > 50
    assert b"quillon" not in bytes_of(yard.folder)
    assert shape(yard.folder) == before
    assert quillon.problems(deep=True) == []


KILLED = """
import os, signal, sys
from pathlib import Path
from sqlite_utils import Database
from pipeline.keeping import Store

calls, usual = 0, Database.execute

def counting(self, sql, *values):
    global calls
    calls += 1
    if calls == int(sys.argv[2]):
        os.kill(os.getpid(), signal.SIGKILL)
    return usual(self, sql, *values)

with Store.open(Path(sys.argv[1])) as store:
    plan = store.plan_forgetting_horse("Quillon")
    Database.execute = counting
    store.forget(plan)
"""


@pytest.mark.skipif(os.name != "posix", reason="only there can a program be killed so")
@pytest.mark.parametrize("share", [0.05, 0.2, 0.4, 0.6, 0.8, 0.93, 0.96, 0.98, 1])
def test_a_killed_removal_removes_all_or_nothing(yard: Yard, quillon: Store, share: float) -> None:
    before, kept = shape(yard.folder), quillon.visit(1)
    statement = max(1, round(share * statements_of_a_removal(yard.folder, yard.folder.with_name("copy"))))
    source = Path(forgetting.__file__).resolve().parents[2]
    command = [sys.executable, "-c", KILLED, str(yard.folder), str(statement)]
    ended = subprocess.run(command, env={**os.environ, "PYTHONPATH": str(source)}, timeout=60)
    assert ended.returncode == -signal.SIGKILL
    with Store.open(yard.folder) as again:
        if again.counts()["memos"] == 2:
            assert not again.finish_forgetting()
            again.forget(again.plan_forgetting_horse("Quillon"))
        else:
            assert again.finish_forgetting()
        assert again.visit(1) == kept
        assert again.problems(deep=True) == []
    assert b"quillon" not in bytes_of(yard.folder)
    assert shape(yard.folder) == before


def statements_of_a_removal(folder: Path, copy: Path) -> int:
    """How many statements remove Quillon, counted on a copy of the store."""
    shutil.copytree(folder, copy)
    counted = Counted(Database.execute)
    with Store.open(copy) as store, pytest.MonkeyPatch.context() as patched:
        plan = store.plan_forgetting_horse("Quillon")
        patched.setattr(Database, "execute", counted)
        store.forget(plan)
    return counted.calls


class Counted:
    """In place of Database.execute: counts the statements and fails at one of them."""

    def __init__(self, usual: Callable[..., sqlite3.Cursor], fails_at: int = 0) -> None:
        self.usual, self.fails_at, self.calls = usual, fails_at, 0

    def __get__(self, database: Database, owner: type[Database]) -> Callable[..., sqlite3.Cursor]:
        """The method of one database."""
        return partial(self, database)

    def __call__(self, database: Database, sql: str, *values: Any) -> sqlite3.Cursor:
        """Execute a statement, or fail; taking back and putting down always work."""
        self.calls += 1
        if self.calls == self.fails_at and sql not in ("COMMIT", "ROLLBACK"):
            raise sqlite3.OperationalError("the disk went away")
        return self.usual(database, sql, *values)


def test_a_removal_that_was_interrupted_is_finished_later(yard: Yard, quillon: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("SELECT 1 FROM horses")
        plan = quillon.plan_forgetting_horse("Quillon")
        with pytest.MonkeyPatch.context() as patched:
            patched.setattr(forgetting, "remove_files", _interrupted)
            with pytest.raises(StoreError):
                quillon.forget(plan)
    assert b"quillon-sound" in bytes_of(yard.folder)
    assert any("interrupted" in problem for problem in quillon.problems())
    assert quillon.finish_forgetting()
    assert b"quillon" not in bytes_of(yard.folder)
    assert quillon.problems(deep=True) == []
    assert not quillon.finish_forgetting()


def _interrupted(*_: object) -> None:
    raise OSError("the disk went away")


def test_a_busy_store_is_left_alone(yard: Yard, quillon: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("BEGIN IMMEDIATE")
        with Store.open(yard.folder, busy_s=0.05) as second:
            plan = second.plan_forgetting_horse("Quillon")
            with pytest.raises(StoreBusyError):
                second.forget(plan)
        other.execute("ROLLBACK")
    assert len(quillon.visits_of("Quillon")) == 1


def test_the_same_sound_kept_again_meanwhile_is_not_taken_from_it(yard: Yard, quillon: Store) -> None:
    original = quillon.memo(2).original
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(forgetting, "remove_files", _interrupted)
        with pytest.raises(StoreError):
            quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    keep_secret(yard, quillon, visit_of("Bramble"))
    assert quillon.finish_forgetting()
    assert original.is_file()
    assert quillon.problems(deep=True) == []
