"""Copies of a whole store: the database as one moment saw it, the recordings by their hash, the user's own words."""

from __future__ import annotations

import os
import re
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

from pipeline.errors import BackupError, FileMissingError, StoreBusyError, StoreError, StoreNewerError
from pipeline.keeping.database import open_database, plain_errors, sync_file, sync_folder
from pipeline.keeping.health import RECORDINGS, database_problems
from pipeline.keeping.location import PART_PREFIX, make_private_folder
from pipeline.keeping.originals import keep_exactly, sha256_of
from pipeline.keeping.own_words import WORDS_NAME
from pipeline.keeping.schema import APPLICATION_ID, SCHEMA_VERSION

ORIGINAL_FILE = re.compile(r"[0-9a-f]{64}")  # how the name of every recording in a store begins
_PAGES = 2048  # copied at a time: others may write between two portions
_PATIENCE = 3  # how often the copy is begun again because somebody wrote, before it holds the store to the end


@dataclass(frozen=True)
class Original:
    """A recording as the database knows it: where it lies in the store, its hash, and the file it came from.

    ``came_without``: its memo was taken in from another store's record, and the recording did not come along.
    """

    stored_path: str
    sha256: str
    file_name: str
    came_without: bool = False


@dataclass(frozen=True)
class Contents:
    """What a copy of the database holds: which store it is of, its recordings, and the rows of every table."""

    identity: str | None
    originals: tuple[Original, ...]
    removed: int
    counts: dict[str, int]

    def recordings(self, folder: Path) -> list[Original]:
        """The recordings that ``folder`` must hold, and those that it holds although their memo came without."""
        return [kept for kept in self.originals if not kept.came_without or (folder / kept.stored_path).exists()]


@contextmanager
def only_back_up(target: Path) -> Iterator[None]:
    """Keep a second back-up out of ``target``; raises StoreBusyError. The lock goes with the process.

    Whatever work in progress lies there then was left by a back-up that was interrupted, and is removed.
    """
    path = target / f"{PART_PREFIX}lock"
    path.touch(mode=0o600)
    with closing(sqlite3.connect(path, timeout=1.0)) as lock:
        try:
            lock.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                raise
            raise StoreBusyError(f"Another back-up into {target} is running; wait for it.") from error
        for left in target.glob(f"{PART_PREFIX}*.part*"):
            left.unlink()
        yield


@contextmanager
def part_of(folder: Path) -> Iterator[Path]:
    """A file of this user's own in ``folder`` for work in progress; gone at the end unless it was renamed."""
    handle, name = tempfile.mkstemp(prefix=PART_PREFIX, suffix=".part", dir=folder)
    os.close(handle)
    part = Path(name)
    try:
        yield part
    finally:
        for left in (part, part.with_name(f"{part.name}-journal")):
            with suppress(OSError):
                left.unlink(missing_ok=True)


def copy_database(source: sqlite3.Connection, target: Path) -> None:
    """Copy the database as it is at one moment while others go on writing, and sync the copy.

    Raises StoreBusyError when another program holds the store all the while.
    """
    with closing(sqlite3.connect(target)) as copy:
        try:
            source.backup(copy, pages=_PAGES, progress=_Patience(), sleep=0.01)
        except _AgainAndAgainError:
            source.backup(copy, pages=-1, progress=_held)
    with target.open("rb+") as file:
        sync_file(file.fileno())


def contents_of(path: Path) -> Contents:
    """Check a copy of the database and tell what it holds.

    Raises StoreNewerError for one of a later clinchbook and BackupError for one that is damaged or none of ours.
    """
    try:
        return _contents(path)
    except (StoreBusyError, StoreNewerError):
        raise
    except StoreError as error:
        raise BackupError(f"The copy of the database in {path.parent} is damaged or none of clinchbook's.") from error


def _contents(path: Path) -> Contents:
    database = open_database(path, 1.0)
    with plain_errors(path.parent), closing(database):
        mark = database.execute("PRAGMA application_id").fetchone()[0]
        if mark != APPLICATION_ID:
            raise StoreError("another program's database")
        if database.execute("PRAGMA user_version").fetchone()[0] > SCHEMA_VERSION:
            raise StoreNewerError("The back-up was written by a later clinchbook; please update clinchbook.")
        problems = database_problems(database)
        if problems:
            raise StoreError(" ".join(problems))
        originals = tuple(
            Original(row["stored_path"], row["sha256"], row["file_name"], bool(row["came_without"]))
            for row in database.query(RECORDINGS)
        )
        known = "identity" in database.table_names()
        identity = database.execute("SELECT store FROM identity").fetchone()[0] if known else None
        removed = database.execute("SELECT coalesce(sum(memos), 0) FROM removed").fetchone()[0] if known else 0
        return Contents(identity, originals, int(removed), row_counts(database.conn))


def row_counts(connection: sqlite3.Connection) -> dict[str, int]:
    """How many rows each table has, all at one moment."""
    sql = "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%'"
    connection.execute("BEGIN")
    try:
        names = sorted(str(name) for (name,) in connection.execute(sql))
        return {name: int(connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0]) for name in names}
    finally:
        connection.execute("ROLLBACK")


def copy_original(original: Original, source: Path, target: Path) -> bool:
    """Copy a recording from one store's folder into another's, hashed; whether it had to be copied.

    One that is there already with the right hash is left. Raises FileMissingError when the source has lost it or holds
    other bytes, BackupError when the copy cannot be written.
    """
    there = target / original.stored_path
    if is_whole(there, original.sha256):
        return False
    here = source / original.stored_path
    if not here.is_file():
        raise FileMissingError(f"The recording of {original.file_name} is missing.")
    if not is_whole(here, original.sha256):
        raise FileMissingError(f"The recording of {original.file_name} is no longer what was kept.")
    make_private_folder(there.parent)
    try:
        with here.open("rb") as file:
            keep_exactly(file, there, original.sha256, original.file_name)
    except StoreError as error:
        reason = error.__cause__.strerror if isinstance(error.__cause__, OSError) else None
        why = f": {reason}" if reason else ""
        raise BackupError(f"The recording of {original.file_name} cannot be copied to {target}{why}.") from error
    return True


def is_whole(path: Path, sha256: str) -> bool:
    """Whether a recording is there with the right bytes."""
    try:
        return path.is_file() and sha256_of(path) == sha256
    except OSError:
        return False


def own_word_files(folder: Path) -> list[Path]:
    """The files of the user's own words."""
    return sorted((folder / WORDS_NAME).glob("*.csv"))


def copy_own_words(source: Path, target: Path) -> None:
    """Bring the user's own words of ``target`` to the state of ``source``, file by file."""
    words = own_word_files(source)
    if words:
        make_private_folder(target / WORDS_NAME)
    for path in words:
        write_private(target / WORDS_NAME / path.name, path.read_bytes())
    for path in own_word_files(target):
        if path.name not in {word.name for word in words}:
            path.unlink()


def write_private(path: Path, data: bytes) -> None:
    """Write a small file whole or not at all, readable by this user alone."""
    with part_of(path.parent) as part:
        with part.open("wb") as file:
            file.write(data)
            file.flush()
            sync_file(file.fileno())
        part.replace(path)
    sync_folder(path.parent)


class _AgainAndAgainError(Exception):
    """The copy was begun anew too often."""


class _Patience:
    """Counts how often a copy was begun anew, which the pages that are left tell."""

    def __init__(self) -> None:
        self.left: int | None = None
        self.begun_anew = 0

    def __call__(self, status: int, left: int, total: int) -> None:
        """Called after each portion; raises _AgainAndAgainError or StoreBusyError."""
        _held(status, left, total)
        if self.left is not None and left >= self.left:
            self.begun_anew += 1
        self.left = left
        if self.begun_anew > _PATIENCE:
            raise _AgainAndAgainError


def _held(status: int, left: int, total: int) -> None:
    if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):  # the connection has waited its time already
        raise StoreBusyError("Another program is writing to the store; try the back-up again soon.")
