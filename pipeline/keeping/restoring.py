"""Putting a back-up back: made whole beside its place, checked, and only then moved there."""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from pipeline.errors import BackupError, FileMissingError, StoreBusyError
from pipeline.keeping.archive import check_archive, read_archive
from pipeline.keeping.backing_up import apart, copy_originals
from pipeline.keeping.copying import (
    Contents,
    contents_of,
    copy_database,
    copy_own_words,
    is_whole,
)
from pipeline.keeping.database import plain_errors, sync_folder
from pipeline.keeping.location import DATABASE_NAME, PART_PREFIX, is_store, make_private_folder


@dataclass(frozen=True)
class Restored:
    """What was put back and where, what was set aside for it, and what the back-up itself lacked."""

    folder: Path
    memos: int
    set_aside: Path | None = None
    problems: tuple[str, ...] = ()


def restore(source: Path, folder: Path, *, replace: bool = False, passphrase: Callable[[], str]) -> Restored:
    """Put a back-up, a folder or an encrypted file, back as the store in ``folder``.

    The passphrase is asked for only when the back-up is encrypted. A store that is there is refused unless
    ``replace``, and is then set aside beside the new one, never deleted. Until the new one is whole nothing is moved.
    Raises FileMissingError, BackupError, PassphraseError, StoreNewerError, StoreError and StoreBusyError.
    """
    if not source.exists():
        raise FileMissingError(f"There is no back-up {source}.")
    if not apart(source, folder):
        raise BackupError(f"{source} and {folder} lie one in the other; choose another place for the store.")
    _check_free(folder, replace)
    make_private_folder(folder.parent)
    with plain_errors(folder), _workplace(folder.parent) as made:
        if source.is_dir():
            contents, problems = _from_folder(source, made)
        else:
            check_archive(source)
            contents, problems = _from_archive(source, made, passphrase())
        set_aside = _put_in_place(made, folder)
    return Restored(folder, len(contents.originals), set_aside, tuple(problems))


def _check_free(folder: Path, replace: bool) -> None:
    if replace or not folder.exists():
        return
    with plain_errors(folder):
        if not folder.is_dir() or any(folder.iterdir()):
            what = "holds a store already" if is_store(folder) else "is not empty"
            raise BackupError(f"{folder} {what}; name another with --store, or set it aside with --replace.")


@contextmanager
def _workplace(parent: Path) -> Iterator[Path]:
    made = Path(tempfile.mkdtemp(prefix=f"{PART_PREFIX}restore-", dir=parent))
    try:
        yield made
    finally:
        shutil.rmtree(made, ignore_errors=True)


def _from_folder(source: Path, made: Path) -> tuple[Contents, list[str]]:
    if not is_store(source):
        raise BackupError(f"{source} is no back-up of clinchbook: it holds no {DATABASE_NAME}.")
    database = made / DATABASE_NAME
    os.close(os.open(database, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    address = f"{(source / DATABASE_NAME).absolute().as_uri()}?mode=ro"
    try:
        with closing(sqlite3.connect(address, uri=True, timeout=5.0)) as saved:
            copy_database(saved, database)
    except sqlite3.DatabaseError as error:
        raise BackupError(f"The database of the back-up {source} is damaged or none of clinchbook's.") from error
    contents = contents_of(database)
    _, problems = copy_originals(contents.recordings(source), source, made)
    copy_own_words(source, made)
    return contents, problems


def _from_archive(source: Path, made: Path, passphrase: str) -> tuple[Contents, list[str]]:
    read_archive(source, made, passphrase)
    if not is_store(made):
        raise BackupError(f"The back-up {source.name} holds no database.")
    contents = contents_of(made / DATABASE_NAME)
    wanted = contents.recordings(made)
    lost = [original for original in wanted if not is_whole(made / original.stored_path, original.sha256)]
    return contents, [f"The recording of {original.file_name} is missing from the back-up." for original in lost]


def _put_in_place(made: Path, folder: Path) -> Path | None:
    set_aside = None
    if folder.is_dir() and not any(folder.iterdir()):
        folder.rmdir()
    elif folder.exists():
        _check_unused(folder)
        set_aside = _free_name(folder)
        folder.rename(set_aside)
    made.rename(folder)
    sync_folder(folder.parent)
    return set_aside


def _check_unused(folder: Path) -> None:
    """Raise StoreBusyError when another program is using the store that is to be set aside."""
    if not is_store(folder):
        return
    with closing(sqlite3.connect(folder / DATABASE_NAME, timeout=1.0)) as old, suppress(sqlite3.DatabaseError):
        try:
            old.execute("BEGIN EXCLUSIVE")
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode & 0xFF == sqlite3.SQLITE_BUSY:
                raise StoreBusyError(f"Another program is using the store in {folder}; end it first.") from error
            raise


def _free_name(folder: Path) -> Path:
    stamp = datetime.now().strftime("%Y-%m-%d-%H%M%S")
    names = (f"{folder.name}.set-aside-{stamp}{more}" for more in ("", *(f"-{n}" for n in range(2, 1000))))
    return next(path for name in names if not (path := folder.with_name(name)).exists())
