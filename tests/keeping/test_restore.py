"""Putting a back-up in its place harms nothing that is there."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import BackupError, FileMissingError, StoreBusyError
from pipeline.keeping import Store
from pipeline.record import Visit
from tests.keeping.saving import everything, full_store, restored

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


pytestmark = pytest.mark.usefixtures("nothing_left_behind")


@pytest.fixture
def full(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """A store with something of every kind."""
    return full_store(yard, store, trimmed)


def test_a_store_that_is_there_is_not_overwritten(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    before = everything(yard.folder)
    with pytest.raises(BackupError, match=r"holds a store already; .*--replace"):
        restored(target, yard.folder)
    assert everything(yard.folder) == before


def test_a_replaced_store_is_set_aside_whole(yard: Yard, full: Store, target: Path, trimmed: Visit) -> None:
    full.back_up(target)
    yard.keep(full, trimmed)
    full.close()
    before = everything(yard.folder)
    done = restored(target, yard.folder, replace=True)
    assert done.set_aside is not None
    assert done.set_aside.name.startswith("book.set-aside-20")
    assert everything(done.set_aside) == before
    assert everything(yard.folder) == everything(target)


def test_a_damaged_store_can_be_replaced(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    full.close()
    expected = everything(yard.folder)
    (yard.folder / "clinchbook.db").write_bytes(b"rubbish" * 1000)
    assert restored(target, yard.folder, replace=True).set_aside is not None
    assert everything(yard.folder) == expected


def test_a_store_in_use_is_not_replaced(yard: Yard, full: Store, target: Path) -> None:
    full.back_up(target)
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StoreBusyError, match="end it first"):
            restored(target, yard.folder, replace=True)
        other.execute("ROLLBACK")
    assert full.counts()["memos"] == 2


def test_a_folder_of_other_things_is_not_taken(full: Store, target: Path, tmp_path: Path) -> None:
    full.back_up(target)
    (tmp_path / "new").mkdir()
    (tmp_path / "new" / "letter.txt").write_text("Dear farrier", encoding="utf-8")
    with pytest.raises(BackupError, match="is not empty"):
        restored(target, tmp_path / "new")


def test_an_empty_folder_will_do(full: Store, target: Path, tmp_path: Path) -> None:
    full.back_up(target)
    (tmp_path / "new").mkdir()
    assert restored(target, tmp_path / "new").set_aside is None
    assert everything(tmp_path / "new") == everything(target)


def test_nothing_there_is_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError, match="There is no back-up"):
        restored(tmp_path / "none", tmp_path / "new")
    (tmp_path / "empty").mkdir()
    with pytest.raises(BackupError, match="is no back-up of clinchbook"):
        restored(tmp_path / "empty", tmp_path / "new")
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("damage", ["head", "middle", "short", "index"])
def test_a_damaged_database_is_refused(full: Store, target: Path, tmp_path: Path, damage: str) -> None:
    full.back_up(target)
    path = target / "clinchbook.db"
    if damage == "index":
        with closing(sqlite3.connect(path)) as raw, raw:
            raw.execute("INSERT INTO memo_words (memo_words) VALUES ('delete-all')")
    else:
        data = bytearray(path.read_bytes())
        where = {"head": slice(0, 100), "middle": slice(4096, len(data) // 2), "short": slice(5000, None)}[damage]
        data[where] = b"" if damage == "short" else b"\xff" * len(data[where])
        path.write_bytes(bytes(data))
    with pytest.raises(BackupError):
        restored(target, tmp_path / "new")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book", "disk", "memos"]


def test_a_damaged_recording_is_told_and_the_rest_restored(full: Store, target: Path, tmp_path: Path) -> None:
    full.back_up(target)
    (target / full.memo(1).original.relative_to(full.folder)).write_bytes(b"rotten")
    assert restored(target, tmp_path / "new").problems == ("The recording of full.m4a is no longer what was kept.",)


def test_a_store_of_the_first_version_can_be_restored(tmp_path: Path, target: Path) -> None:
    with pytest.MonkeyPatch.context() as patched:
        from pipeline.keeping import schema

        patched.setattr(schema, "MIGRATIONS", schema.MIGRATIONS[:1])
        patched.setattr(schema, "SCHEMA_VERSION", 1)
        Store.open(target).close()
    assert restored(target, tmp_path / "new").memos == 0
    with Store.open(tmp_path / "new") as store:
        assert store.waiting() == []
