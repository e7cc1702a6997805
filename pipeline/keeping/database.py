"""The connection: opened safely, its errors turned into sentences, its transactions whole or not at all."""

from __future__ import annotations

import os
import sqlite3
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import ModuleType
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError, StoreBusyError, StoreError, StoreUnsureError

if sys.platform != "win32":
    import fcntl

if TYPE_CHECKING:
    from sqlite_utils import Database

EXTRA = 3  # PRAGMA synchronous: also the folder is synced when the rollback journal goes

WRITTEN = (
    "This is written into the store, but the disk gave an error; after a power cut it may be gone: look before you "
    "enter it again."
)

_SENTENCES = {
    sqlite3.SQLITE_READONLY: "The store in {folder} may only be read, not written.",
    sqlite3.SQLITE_CANTOPEN: "The store in {folder} cannot be opened.",
    sqlite3.SQLITE_NOTADB: "{folder} holds a clinchbook.db that is no database of clinchbook.",
    sqlite3.SQLITE_CORRUPT: "The store in {folder} is damaged; take the last back-up.",
    sqlite3.SQLITE_FULL: "The disk is full; nothing new was kept in {folder}.",
    sqlite3.SQLITE_IOERR: "The disk gave an error at the store in {folder}; nothing new was kept.",
    sqlite3.SQLITE_PERM: "The store in {folder} may not be opened by this user.",
    sqlite3.SQLITE_CONSTRAINT: "The store in {folder} refused an entry that breaks its rules ({error}).",
}


def open_database(path: Path, busy_s: float) -> Database:
    """Connect to the file at ``path``, created 0600 if need be; wait ``busy_s`` seconds for another program.

    Raises StoreError or StoreBusyError.
    """
    with plain_errors(path.parent):
        if not path.exists():
            path.touch(mode=0o600)
        connection = sqlite3.connect(path, timeout=busy_s, factory=_Connection)
        try:
            connection.opened = (path, _identity(path))
            database = _wrapped(connection)
            _settle(database, path.parent)
        except BaseException:
            connection.close()
            raise
    return database


class _Connection(sqlite3.Connection):
    """A connection that knows which file it opened: its path, and the file's own number there."""

    opened: tuple[Path, tuple[int, int]]


@contextmanager
def plain_errors(folder: Path) -> Iterator[None]:
    """Turn what the database or the disk complains of into one sentence (StoreError, StoreBusyError).

    A number too large for the database is one that nothing in the store has: NotFoundError.
    """
    try:
        yield
    except sqlite3.Error as error:
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & 0xFF
        if code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise StoreBusyError(f"Another program is writing to the store in {folder}; try again soon.") from error
        sentence = _SENTENCES.get(code, "The store in {folder} cannot be used ({error}).")
        raise StoreError(sentence.format(folder=folder, error=error)) from error
    except OSError as error:
        reason = error.strerror or type(error).__name__
        raise StoreError(f"The store in {folder} cannot be used: {reason}.") from error
    except OverflowError as error:
        raise NotFoundError("There is no such number in the store; it is larger than any.") from error


@contextmanager
def writing(database: Database, written: str = WRITTEN) -> Iterator[None]:
    """One transaction that takes the write lock at once; any error but StoreUnsureError leaves nothing of it.

    That one says ``written``: all is there, but the disk gave an error in the end. Raises StoreError when the file is
    no longer where it was opened, so that nothing is written into a drive that was taken out, or into a store that
    was set aside.
    """
    check_in_place(database)
    database.execute("BEGIN IMMEDIATE")
    try:
        yield
        check_in_place(database)
        _commit(database, written)
    except BaseException:
        _take_back(database)
        raise


def _commit(database: Database, written: str) -> None:
    """End the transaction. One error alone comes after the end: the journal is gone, so that all is written, but its
    folder could not be synced (unixDelete in SQLite's os_unix.c gives this code for nothing else)."""
    try:
        database.execute("COMMIT")
    except sqlite3.OperationalError as error:
        if getattr(error, "sqlite_errorcode", None) != sqlite3.SQLITE_IOERR_DIR_FSYNC:
            raise
        raise StoreUnsureError(written) from error


def check_in_place(database: Database) -> None:
    """Raise StoreError when another file, or none, lies where this database was opened."""
    connection = database.conn
    if not isinstance(connection, _Connection):
        return
    path, identity = connection.opened
    try:
        same = _identity(path) == identity
    except FileNotFoundError:
        same = False
    if not same:
        raise StoreError(
            f"The store in {path.parent} was moved, replaced or taken away (a drive pulled out?) while it was in use; "
            "nothing new was kept."
        )


def _identity(path: Path) -> tuple[int, int]:
    status = path.stat()
    return status.st_dev, status.st_ino


def _take_back(database: Database) -> None:
    """End a transaction that failed. A connection that cannot even do that is closed: left open, it would hold the
    lock and show its reader what was never kept."""
    if not database.conn.in_transaction:
        return
    try:
        database.execute("ROLLBACK")
    except sqlite3.Error:
        database.conn.close()


def insert_row(database: Database, table: str, row: Mapping[str, str | float | int | None]) -> int:
    """Insert one row and return its number. Table and columns are the project's own words, never a user's."""
    names = ", ".join(f'"{name}"' for name in row)
    marks = ", ".join("?" * len(row))
    cursor = database.execute(f"INSERT INTO {table} ({names}) VALUES ({marks})", list(row.values()))
    return int(cursor.lastrowid or 0)


def update_row(database: Database, table: str, row_id: int, columns: Mapping[str, str | float | int | None]) -> None:
    """Set columns of one row. Table and columns are the project's own words, never a user's."""
    names = ", ".join(f'"{name}" = ?' for name in columns)
    database.execute(f"UPDATE {table} SET {names} WHERE id = ?", [*columns.values(), row_id])


def sync_file(handle: int) -> None:
    """Make the bytes of an open file survive a power cut."""
    # macOS: there fsync leaves them in the drive's own memory (its manual page fsync(2); from memory).
    full = getattr(fcntl, "F_FULLFSYNC", None) if sys.platform != "win32" else None
    if full is not None:
        with suppress(OSError):  # a share or a stick that knows no such thing
            fcntl.fcntl(handle, full)
            return
    os.fsync(handle)


def sync_folder(folder: Path) -> None:
    """Make a rename inside ``folder`` survive a power cut, where the system can."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _wrapped(connection: sqlite3.Connection) -> Database:
    with without("numpy", "pandas"):
        from sqlite_utils import Database
    return Database(connection, execute_plugins=False)


class _Absent:
    """A finder of modules that says of a few packages that they are not installed."""

    def __init__(self, names: frozenset[str]) -> None:
        self.names = names

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        """Refuse the named packages and leave every other to the next finder."""
        if fullname in self.names:
            raise ModuleNotFoundError(f"{fullname} is not needed here", name=fullname)
        return None


@contextmanager
def without(*names: str) -> Iterator[None]:
    """Hide packages that a library loads while it is imported and that are not needed here.

    sqlite-utils loads numpy only to know its column types, of which the store keeps none, and fpdf2 for pictures that
    are made of dots; loading it takes a tenth of a second.
    """
    absent = _Absent(frozenset(names))
    sys.meta_path.insert(0, absent)
    try:
        yield
    finally:
        sys.meta_path.remove(absent)


def _settle(database: Database, folder: Path) -> None:
    database.execute("PRAGMA foreign_keys=ON")
    database.execute("PRAGMA fullfsync=ON")  # macOS only, as in sync_file
    journal = str(database.execute("PRAGMA journal_mode=DELETE").fetchone()[0])
    database.execute(f"PRAGMA synchronous={EXTRA}")
    settled = database.execute("PRAGMA synchronous").fetchone()[0]
    foreign_keys = database.execute("PRAGMA foreign_keys").fetchone()[0]
    if (journal, settled, foreign_keys) != ("delete", EXTRA, 1):
        raise StoreError(f"The store in {folder} cannot be made safe against a power cut on this system.")
