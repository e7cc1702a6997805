"""A back-up holds every row and every recording, is brought up to date, and never harms what is there."""

from __future__ import annotations

import os
import signal
import sqlite3
import stat
import subprocess
import sys
import threading
import time
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import BackupError, StoreBusyError, StoreError, StoreNewerError
from pipeline.keeping import Store, backing_up, copying
from pipeline.keeping.copying import copy_database
from pipeline.keeping.own_words import forget_word
from pipeline.keeping.restoring import Restored
from pipeline.record import RosterHorse, Visit
from tests.keeping.saving import everything, full_store, restored

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


pytestmark = pytest.mark.usefixtures("nothing_left_behind")


@pytest.fixture
def full(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """A store with something of every kind."""
    return full_store(yard, store, trimmed)


def test_every_row_and_recording_comes_back(yard: Yard, full: Store, target: Path, tmp_path: Path) -> None:
    done = full.back_up(target)
    assert (done.memos, done.copied, done.there_before, done.taken_out, done.problems) == (2, 2, 0, 0, ())
    put_back = restored(target, tmp_path / "new" / "book")
    assert put_back == Restored(tmp_path / "new" / "book", 2)
    expected = everything(yard.folder)
    assert len(expected["facts"]) == 5
    assert everything(target) == expected
    assert everything(tmp_path / "new" / "book") == expected
    with Store.open(tmp_path / "new" / "book", create=False) as again:
        assert again.visit(1).visit == full.visit(1).visit
        assert again.history() == full.history()
        assert again.problems(deep=True) == []
        assert again.identity == full.identity


def test_what_is_there_already_is_not_copied_again(yard: Yard, full: Store, target: Path, trimmed: Visit) -> None:
    full.back_up(target)
    old = {path: path.stat().st_mtime_ns for path in (target / "originals").rglob("*.m4a")}
    yard.keep(full, trimmed)
    forget_word(yard.folder, "porridge frog")
    done = full.back_up(target)
    assert (done.memos, done.copied, done.there_before) == (3, 1, 2)
    assert {path: path.stat().st_mtime_ns for path in old} == old
    assert everything(target) == everything(yard.folder)


def test_the_store_knows_when_it_was_last_saved_and_where_to(full: Store, target: Path, tmp_path: Path) -> None:
    assert full.last_back_up() is None
    full.back_up(target)
    first = full.last_back_up()
    assert first is not None
    assert first[1] == target
    assert abs((datetime.now(UTC) - first[0]).total_seconds()) < 600
    with pytest.raises(BackupError):
        full.back_up(full.folder)
    assert full.last_back_up() == first
    restored(target, tmp_path / "new")
    with Store.open(tmp_path / "new") as again:
        assert again.last_back_up() is None


def test_a_damaged_copy_in_the_back_up_is_made_good(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    next((target / "originals").rglob("*.m4a")).write_bytes(b"rotten")
    assert full.back_up(target).copied == 1
    assert everything(target) == everything(yard.folder)


def test_what_was_forgotten_leaves_the_back_up(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    full.forget(full.plan_forgetting_memo(1))
    assert full.back_up(target).taken_out == 1
    assert len(list((target / "originals").rglob("*.m4a"))) == 1
    assert everything(target) == everything(yard.folder)


def test_a_lost_recording_is_told_and_the_rest_is_saved(yard: Yard, full: Store, target: Path) -> None:
    full.memo(1).original.unlink()
    full.memo(2).original.write_bytes(b"other sound")
    done = full.back_up(target)
    assert done.problems == (
        "The recording of full.m4a is missing.",
        "The recording of memo1.m4a is no longer what was kept.",
    )
    put_back = restored(target, yard.folder.with_name("again"))
    assert put_back.problems == ("The recording of full.m4a is missing.", "The recording of memo1.m4a is missing.")
    with Store.open(yard.folder.with_name("again")) as again:
        assert len(again.visit(1).visit.facts) == 4


def test_a_back_up_keeps_the_recording_that_the_store_lost(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    full.memo(1).original.unlink()
    assert full.back_up(target).problems == ()
    assert len(list((target / "originals").rglob("*.m4a"))) == 2


def test_everything_is_for_this_user_alone(yard: Yard, full: Store, target: Path, tmp_path: Path) -> None:
    before = os.umask(0)
    try:
        full.back_up(target)
        full.archive(tmp_path / "book.zip", "eight signs")
        restored(target, tmp_path / "again")
    finally:
        os.umask(before)
    if os.name != "posix":
        return
    assert stat.S_IMODE((tmp_path / "book.zip").stat().st_mode) == 0o600
    for folder in (target, tmp_path / "again"):
        modes = {stat.S_IMODE(path.stat().st_mode) for path in folder.rglob("*") if path.is_file()}
        assert modes == {0o600}
        assert {stat.S_IMODE(path.stat().st_mode) for path in [folder, *folder.rglob("*")] if path.is_dir()} == {0o700}


def test_others_may_write_meanwhile(yard: Yard, full: Store, target: Path, trimmed: Visit) -> None:
    stop = threading.Event()
    kept: list[tuple[int, int]] = []

    def writing() -> None:
        with Store.open(yard.folder) as other:
            while not stop.is_set() or not kept:
                kept.append(other.add_horses([RosterHorse(name=f"Horse {len(kept)}")]))
                time.sleep(0.002)  # others come to their turn too

    writer = threading.Thread(target=writing)
    writer.start()
    try:
        for _ in range(5):
            full.back_up(target)
    finally:
        stop.set()
        writer.join()
    assert restored(target, yard.folder.with_name("again")).problems == ()
    full.back_up(target)
    assert everything(target) == everything(yard.folder)


def test_a_restless_store_is_copied_in_one_go(
    yard: Yard, full: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(copying, "_PAGES", 1)
    usual = copying._Patience.__call__
    calls: list[int] = []

    def disturbed(self: copying._Patience, status: int, left: int, total: int) -> None:
        calls.append(left)
        with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other, other:
            other.execute("UPDATE waiting SET tries = tries + 1")
        usual(self, status, left, total)

    monkeypatch.setattr(copying._Patience, "__call__", disturbed)
    copy_database(full._database.conn, tmp_path / "copy.db")
    assert calls[0] == calls[1]
    assert len(calls) == 5
    assert copying.contents_of(tmp_path / "copy.db").counts == copying.row_counts(full._database.conn)


def test_a_store_that_is_held_is_busy(yard: Yard, full: Store, target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    full.back_up(target)
    monkeypatch.setattr(backing_up, "_PATIENCE_MS", 50)
    before = everything(target)
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        with Store.open(yard.folder, busy_s=0.05) as second:
            other.execute("BEGIN EXCLUSIVE")
            with pytest.raises(StoreBusyError):
                second.back_up(target)
        other.execute("ROLLBACK")
    assert everything(target) == before


@pytest.mark.parametrize("step", ["copy_database", "contents_of", "copy_originals", "copy_own_words"])
def test_a_failing_step_leaves_the_old_back_up(
    yard: Yard, full: Store, target: Path, trimmed: Visit, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    full.back_up(target)
    before = everything(target)
    yard.keep(full, trimmed)

    def failing(*_: object) -> None:
        raise BackupError("The disk went away.")

    monkeypatch.setattr(f"pipeline.keeping.backing_up.{step}", failing)
    with pytest.raises(BackupError):
        full.back_up(target)
    now = everything(target)
    assert {name: now[name] for name in before} == before
    assert [path.name for path in target.iterdir() if path.name.startswith(".")] == [".clinchbook-lock"]


def test_a_folder_with_other_things_is_refused(full: Store, target: Path) -> None:
    (target / "originals").mkdir(parents=True)
    (target / "originals" / "my songs.m4a").write_bytes(b"song")
    full.back_up(target)
    assert (target / "originals" / "my songs.m4a").is_file()
    other = target.with_name("stick")
    other.mkdir()
    (other / "letters.txt").write_text("Dear farrier", encoding="utf-8")
    with pytest.raises(BackupError, match=r"holds other things \(letters.txt\)"):
        full.back_up(other)
    assert [path.name for path in other.iterdir()] == ["letters.txt"]


def test_the_back_up_of_another_store_is_left_alone(yard: Yard, full: Store, target: Path, tmp_path: Path) -> None:
    full.back_up(target)
    before = everything(target)
    with Store.open(tmp_path / "other") as other, pytest.raises(BackupError, match="another store"):
        other.back_up(target)
    assert everything(target) == before


def test_a_back_up_that_knows_more_is_left_alone(
    yard: Yard, full: Store, target: Path, tmp_path: Path, trimmed: Visit
) -> None:
    full.back_up(target)
    older = tmp_path / "older"
    restored(target, older)
    yard.keep(full, trimmed)
    full.back_up(target)
    with Store.open(older) as old, pytest.raises(BackupError, match="holds 1 memos that this store lacks"):
        old.back_up(target)
    assert everything(target) == everything(yard.folder)


@pytest.mark.parametrize("place", [".", "copy", ".."])
def test_a_back_up_inside_the_store_or_around_it_is_refused(yard: Yard, full: Store, place: str) -> None:
    with pytest.raises(BackupError, match="one in the other"):
        full.back_up(yard.folder / place)


def test_a_later_back_up_is_refused(yard: Yard, full: Store, target: Path, tmp_path: Path) -> None:
    full.back_up(target)
    with closing(sqlite3.connect(target / "clinchbook.db")) as later:
        later.execute("PRAGMA user_version=99")
    with pytest.raises(StoreNewerError):
        restored(target, tmp_path / "again")
    assert not (tmp_path / "again").exists()


def test_two_back_ups_into_one_folder_wait_for_each_other(full: Store, target: Path) -> None:
    full.back_up(target)
    (target / ".clinchbook-left.part").write_bytes(b"what an interrupted back-up left")
    with closing(sqlite3.connect(target / ".clinchbook-lock")) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StoreBusyError, match=r"Another back-up into .* is running"):
            full.back_up(target)
        other.execute("ROLLBACK")
    assert (target / ".clinchbook-left.part").is_file()
    full.back_up(target)
    assert not (target / ".clinchbook-left.part").exists()


def test_a_damaged_back_up_is_not_written_over(full: Store, target: Path) -> None:
    full.back_up(target)
    (target / "clinchbook.db").write_bytes(b"rubbish" * 1000)
    with pytest.raises(BackupError, match="is damaged; name another folder"):
        full.back_up(target)


def test_a_recording_that_cannot_be_written_is_a_sentence(
    yard: Yard, full: Store, target: Path, trimmed: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full_disk(*_: object) -> None:
        try:
            raise OSError(28, "No space left on device")
        except OSError as error:
            raise StoreError("The memo cannot be copied.") from error

    monkeypatch.setattr(copying, "keep_exactly", full_disk)
    with pytest.raises(BackupError) as refused:
        full.back_up(target)
    assert str(refused.value) == f"The recording of full.m4a cannot be copied to {target}: No space left on device."


KILLED = """
import os, signal, sys
from pathlib import Path
from pipeline.keeping import Store, backing_up

def die(*_):
    os.kill(os.getpid(), signal.SIGKILL)

setattr(backing_up, sys.argv[3], die)
with Store.open(Path(sys.argv[1])) as store:
    store.back_up(Path(sys.argv[2]))
"""


@pytest.mark.skipif(os.name != "posix", reason="only there can a program be killed so")
@pytest.mark.parametrize("step", ["contents_of", "copy_original", "copy_own_words", "sync_folder", "_tidy"])
def test_a_killed_back_up_leaves_a_whole_one(yard: Yard, full: Store, target: Path, trimmed: Visit, step: str) -> None:
    full.back_up(target)
    before = everything(target)
    yard.keep(full, trimmed)
    source = Path(copying.__file__).resolve().parents[2]
    command = [sys.executable, "-c", KILLED, str(yard.folder), str(target), step]
    ended = subprocess.run(command, env={**os.environ, "PYTHONPATH": str(source)}, timeout=60)
    assert ended.returncode == -signal.SIGKILL
    now = everything(target)
    placed = step in ("sync_folder", "_tidy")
    assert now["memos"] == (everything(yard.folder) if placed else before)["memos"]
    assert restored(target, yard.folder.with_name("again")).problems == ()
    full.back_up(target)
    assert everything(target) == everything(yard.folder)
