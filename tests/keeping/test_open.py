"""Opening a store: made privately, settled against power cuts, refused with a sentence when it is not ours."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from platformdirs import user_data_dir

from pipeline.errors import FileMissingError, StoreBusyError, StoreError, StoreNewerError
from pipeline.keeping import STORE_VARIABLE, Store, schema, store_folder
from pipeline.keeping.database import open_database
from pipeline.record import RosterHorse

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


def test_the_folder_given_wins_then_the_variable_then_the_users_own(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv(STORE_VARIABLE, str(tmp_path / "named"))
    assert store_folder(tmp_path / "given") == tmp_path / "given"
    assert store_folder() == tmp_path / "named"
    monkeypatch.setenv(STORE_VARIABLE, "  ")
    assert store_folder() == Path(user_data_dir("clinchbook", appauthor=False))


def test_a_later_store_is_refused_and_left_alone(yard: Yard) -> None:
    yard.open().close()
    path = yard.folder / "clinchbook.db"
    with closing(sqlite3.connect(path)) as later:
        later.execute(f"PRAGMA user_version={schema.SCHEMA_VERSION + 1}")
    before = path.read_bytes()
    with pytest.raises(StoreNewerError, match="later clinchbook"):
        yard.open()
    assert path.read_bytes() == before


@pytest.mark.parametrize("content", [b"this is a letter, no database" * 50, b"SQLite format 3\x00" + b"\xff" * 4096])
def test_a_file_that_is_no_database_is_refused_and_left_alone(yard: Yard, content: bytes) -> None:
    yard.folder.mkdir()
    path = yard.folder / "clinchbook.db"
    path.write_bytes(content)
    with pytest.raises(StoreError):
        yard.open()
    assert path.read_bytes() == content


def test_another_programs_database_is_refused(yard: Yard) -> None:
    yard.folder.mkdir()
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("CREATE TABLE songs (title TEXT)")
    with pytest.raises(StoreError, match="another program's"):
        yard.open()


def test_a_file_in_place_of_the_folder_is_refused(yard: Yard) -> None:
    yard.folder.write_text("not a folder")
    with pytest.raises(StoreError, match="folder"):
        yard.open()
    with pytest.raises(StoreError, match="folder"):
        Store.open(yard.folder / "deeper")


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="root may write everywhere")
def test_a_read_only_folder_is_refused(yard: Yard) -> None:
    yard.folder.mkdir(mode=0o500)
    with pytest.raises(StoreError):
        yard.open()


def test_a_store_that_may_only_be_read_says_so(yard: Yard) -> None:
    with yard.open() as store:
        store._database.execute("PRAGMA query_only=ON")
        with pytest.raises(StoreError, match="only be read"):
            store.add_horses([RosterHorse(name="Sorrel")])


def test_a_missing_store_is_not_made_when_it_is_only_read(yard: Yard) -> None:
    with pytest.raises(FileMissingError, match="no store"):
        Store.open(yard.folder, create=False)
    assert not yard.folder.exists()


def test_a_store_that_another_program_holds_is_busy(yard: Yard, store: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("BEGIN IMMEDIATE")
        with Store.open(yard.folder, busy_s=0.05) as second, pytest.raises(StoreBusyError, match="Another program"):
            second.add_horses([RosterHorse(name="Sorrel")])
        other.execute("ROLLBACK")
    assert [horse.name for horse in store.roster()] == ["Bramble"]


def test_every_connection_is_settled_against_a_power_cut(yard: Yard) -> None:
    yard.open().close()
    database = open_database(yard.folder / "clinchbook.db", 1.0)
    settings = [database.execute(f"PRAGMA {name}").fetchone()[0] for name in ("journal_mode", "synchronous")]
    links = database.execute("PRAGMA foreign_keys").fetchone()[0]
    database.close()
    assert (settings, links) == (["delete", 3], 1)


def test_a_journal_that_cannot_be_settled_is_refused(yard: Yard) -> None:
    yard.open().close()
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("PRAGMA journal_mode=WAL")
        other.execute("SELECT count(*) FROM horses").fetchone()
        with pytest.raises(StoreError):
            Store.open(yard.folder, busy_s=0.05)


def test_a_migration_that_fails_leaves_no_half_store(yard: Yard, monkeypatch: pytest.MonkeyPatch) -> None:
    broken = schema.MIGRATIONS[0] + "CREATE TABLE horses (id INTEGER) STRICT;"
    with monkeypatch.context() as patched:
        patched.setattr(schema, "MIGRATIONS", (broken,))
        with pytest.raises(StoreError):
            yard.open()
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as raw:
        assert raw.execute("SELECT count(*) FROM sqlite_master").fetchone() == (0,)
    with yard.open() as store:
        assert store.problems() == []


def test_every_own_table_is_strict(store: Store) -> None:
    rows = store._database.query("SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND type = 'table'")
    strict = {row["name"]: row["strict"] for row in rows if not row["name"].startswith("sqlite_")}
    assert set(strict) >= {
        "memos",
        "horses",
        "visits",
        "facts",
        "flags",
        "history",
        "pen",
        "changes",
        "readings",
        "hearings",
    }
    assert set(strict.values()) == {1}


def test_opening_a_store_loads_no_heavy_library(yard: Yard) -> None:
    program = (
        "import sys; from pathlib import Path; from pipeline.keeping import Store; "
        "Store.open(Path(sys.argv[1])).close(); "
        "print(sorted({'numpy', 'pandas', 'spacy', 'av', 'faster_whisper', 'onnxruntime'} & set(sys.modules)))"
    )
    source = Path(schema.__file__).resolve().parents[2]
    ended = subprocess.run(
        [sys.executable, "-c", program, str(yard.folder)],
        capture_output=True, text=True, check=True, env={**os.environ, "PYTHONPATH": str(source)},
    )  # fmt: skip
    assert ended.stdout.strip() == "[]"
