"""How the store is settled against a power cut, and what stopped programs leave behind."""

from __future__ import annotations

import os
import signal
import sqlite3
from pathlib import Path
from typing import Any
from unittest import mock

import pytest

from pipeline.errors import StoreError, StoreUnsureError
from pipeline.keeping import Store
from pipeline.keeping.database import WRITTEN, _Connection
from pipeline.keeping.originals import clear_parts
from tests.endurance.apart import start
from tests.endurance.faults import NEW_OWNER, Fault, faulty_statements
from tests.endurance.yard import keep, spoken, with_roster


def test_the_open_connection_uses_a_rollback_journal_and_syncs_it_and_its_folder(tmp_path: Path) -> None:
    """EXTRA also syncs the folder once the journal is gone (SQLite release notes 3.11.1, 2016). No write-ahead log:
    from 3.7.0 to 3.51.2 two connections could damage one (Hipp et al., Write-Ahead Logging, sqlite.org).
    """
    with_roster(tmp_path / "book")
    with Store.open(tmp_path / "book") as store:
        asked = [
            store._database.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("journal_mode", "synchronous", "foreign_keys")
        ]
    assert asked == ["delete", 3, 1]


@pytest.mark.skipif(os.name != "posix", reason="needs a signal that cannot be caught")
def test_a_copy_that_a_killed_program_left_goes_with_the_next_memo(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book, memo = tmp_path / "book", spoken(tmp_path, 1)
    with_roster(book)

    def killed(pipe: int) -> None:
        monkeypatch.setattr("os.fsync", lambda handle: os.kill(os.getpid(), signal.SIGKILL))
        monkeypatch.setattr("pipeline.keeping.location.sync_folder", lambda folder: None)
        with Store.open(book) as store:
            keep(store, memo)

    assert start(killed).wait() == signal.SIGKILL
    (left,) = book.rglob("*.part")
    assert left.read_bytes() == memo.path.read_bytes()
    with Store.open(book) as store:
        keep(store, spoken(tmp_path, 2))
        assert list(book.rglob("*.part")) == []
        assert store.problems(deep=True) == []


@pytest.mark.skipif(os.name != "posix", reason="Windows does not let a file in use be removed anyway")
def test_a_copy_that_another_program_is_still_writing_stays(tmp_path: Path) -> None:
    import fcntl

    part = tmp_path / "originals" / "ab" / "busy.part"
    part.parent.mkdir(parents=True)
    part.write_bytes(b"half of a recording")
    with part.open("rb+") as busy:
        fcntl.flock(busy, fcntl.LOCK_EX)
        clear_parts(tmp_path)
        assert part.exists()
    clear_parts(tmp_path)
    assert not part.exists()


def test_a_folder_that_cannot_be_synced_after_the_end_is_no_refusal(tmp_path: Path) -> None:
    error = sqlite3.OperationalError("disk I/O error")
    error.sqlite_errorcode = sqlite3.SQLITE_IOERR_DIR_FSYNC

    class Connection(_Connection):
        def execute(self, sql: str, *given: Any) -> sqlite3.Cursor:
            done = super().execute(sql, *given)
            if sql == "COMMIT":
                raise error
            return done

    Store.open(tmp_path / "book").close()
    with mock.patch("pipeline.keeping.database._Connection", Connection), Store.open(tmp_path / "book") as store:
        with pytest.raises(StoreUnsureError, match=WRITTEN):
            store.add_horses(NEW_OWNER)
        assert len(store.horses()) == 2


def test_a_transaction_that_cannot_be_taken_back_lets_go_of_the_store(tmp_path: Path) -> None:
    """A connection left open would hold the lock, and show as kept what never was."""
    book = tmp_path / "book"
    with_roster(book)
    fault = Fault(2, True, lambda: sqlite3.OperationalError("disk I/O error"))
    with faulty_statements(fault):
        store = Store.open(book)
        fault.on = True
        with pytest.raises(StoreError, match="disk I/O error"):
            store.add_horses(NEW_OWNER)
        fault.on = False
    with pytest.raises(StoreError, match="closed"):
        store.horses()
    with Store.open(book, busy_s=0) as other:
        assert next(kept.horse.owner for kept in other.horses()) == "Owner of Bramble"
        assert other.add_horses(NEW_OWNER) == (1, 1)
