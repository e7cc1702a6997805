"""From every released version to the present one: nothing is lost, and a step is done whole or not at all."""

from __future__ import annotations

import os
import signal
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from pipeline.errors import StoreError
from pipeline.keeping import Store, schema
from pipeline.keeping.schema import statements
from tests.keeping import released


def corrected(store: Store) -> Store:
    """Every kind of table of the present version is used."""
    seen = store.visit(1).revision
    fact = store.visit(1).facts[0]
    seen = store.accept(fact.id, seen=seen).revision
    store.drop(fact.id, seen=seen)
    store.undo()
    return store


@pytest.mark.parametrize("version", released.VERSIONS)
def test_a_released_store_keeps_all_it_held(version: int, tmp_path: Path) -> None:
    path = released.unpack(version, tmp_path / "book")
    before = released.content(path)
    assert released.version_of(path) == version
    with Store.open(path.parent) as store:
        assert released.content(path) == before
        assert (released.version_of(path), [p for p in store.problems() if "recording" not in p]) == (
            schema.SCHEMA_VERSION, [],
        )  # fmt: skip
        assert store.counts() == {"memos": 12, "visits": 13, "facts": 222, "horses": 17, "flagged": 13}
        corrected(store)
        assert [p for p in store.problems() if "recording" not in p] == []


@pytest.mark.parametrize("version", released.VERSIONS)
def test_a_released_store_has_its_corrections_in_history(version: int, tmp_path: Path) -> None:
    path = released.unpack(version, tmp_path / "book")
    with Store.open(path.parent) as store:
        entries = store.history()
        assert [(e.who, e.table, e.column, e.change) for e in entries[:3]] == [
            ("Ann", "horses", "owner", None), ("Ann", "visits", "horse_match", None), ("Ann", "visits", "horse", None),
        ]  # fmt: skip
        assert store.visit(1).visit.notes == "Asked for a call."
        assert (store.visit(1).memo.reading, {fact.settled for fact in store.visit(1).facts}) == (1, {False})


@pytest.mark.parametrize("version", released.VERSIONS)
def test_an_upgraded_store_has_the_tables_of_a_new_one(version: int, tmp_path: Path) -> None:
    upgraded = released.unpack(version, tmp_path / "old")
    Store.open(upgraded.parent).close()
    Store.open(tmp_path / "new").close()
    tables = "SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY type, name"
    with closing(sqlite3.connect(upgraded)) as one, closing(sqlite3.connect(tmp_path / "new" / "clinchbook.db")) as two:
        assert one.execute(tables).fetchall() == two.execute(tables).fetchall()


def broken_at(step: int, number: int, instead: str) -> tuple[str, ...]:
    """The ladder with one statement of one step replaced."""
    parts = list(statements(schema.MIGRATIONS[step]))
    parts.insert(number, instead)
    return (*schema.MIGRATIONS[:step], "".join(parts), *schema.MIGRATIONS[step + 1 :])


@pytest.mark.parametrize("step", range(1, len(schema.MIGRATIONS)))
def test_an_error_at_any_statement_leaves_the_version_before(
    step: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = released.unpack(1, tmp_path / "book")
    with monkeypatch.context() as before:
        before.setattr(schema, "MIGRATIONS", schema.MIGRATIONS[:step])
        before.setattr(schema, "SCHEMA_VERSION", step)
        Store.open(path.parent).close()
    whole = released.everything(path)
    for number in range(len(list(statements(schema.MIGRATIONS[step]))) + 1):
        with monkeypatch.context() as patched:
            patched.setattr(schema, "MIGRATIONS", broken_at(step, number, "SELECT no_such_function();\n"))
            with pytest.raises(StoreError):
                Store.open(path.parent)
        assert released.everything(path) == whole, number
    with Store.open(path.parent) as store:
        assert [p for p in store.problems() if "recording" not in p] == []


@pytest.mark.skipif(not hasattr(os, "fork"), reason="this system cannot fork")
@pytest.mark.parametrize("step", range(1, len(schema.MIGRATIONS)))
def test_a_power_cut_at_any_statement_leaves_one_version_or_the_other(
    step: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = released.content(released.unpack(1, tmp_path / "book"))
    count = len(list(statements(schema.MIGRATIONS[step])))
    for number in {*range(0, count, 5), count - 1, count}:
        path = released.unpack(1, tmp_path / f"book{number}")
        with monkeypatch.context() as patched:
            patched.setattr(schema, "MIGRATIONS", broken_at(step, number, "SELECT cut_the_power();\n"))
            assert died_in(path.parent, patched) == signal.SIGKILL
        assert released.version_of(path) == step
        assert released.content(path) == before
        with Store.open(path.parent) as store:
            assert [p for p in store.problems() if "recording" not in p] == []
        assert released.content(path) == before


def died_in(folder: Path, patched: pytest.MonkeyPatch) -> int:
    """Open the store in a child whose power is cut inside the step; returns the signal that ended it."""
    connect = sqlite3.connect

    def connecting(path: Path, timeout: float, factory: type[sqlite3.Connection]) -> sqlite3.Connection:
        connection = connect(path, timeout=timeout, factory=factory)
        # A small cache: the rows of the step are on the disk already when the power goes.
        connection.execute("PRAGMA cache_size=5")
        connection.create_function("cut_the_power", 0, lambda: os.kill(os.getpid(), signal.SIGKILL))
        return connection

    child = os.fork()
    if child == 0:
        patched.setattr("pipeline.keeping.database.sqlite3.connect", connecting)
        try:
            Store.open(folder)
        finally:
            os._exit(0)
    _, status = os.waitpid(child, 0)
    return os.WTERMSIG(status) if os.WIFSIGNALED(status) else 0
