"""Back-ups: a folder laid out as a store is, to be looked into and brought up to date, or one encrypted file."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from pipeline.errors import BackupError, FileMissingError, PassphraseError, StoreNewerError
from pipeline.keeping.archive import LEAST_PASSPHRASE, write_archive
from pipeline.keeping.copying import (
    ORIGINAL_FILE,
    Contents,
    Original,
    contents_of,
    copy_database,
    copy_original,
    copy_own_words,
    is_whole,
    only_back_up,
    own_word_files,
    part_of,
    row_counts,
)
from pipeline.keeping.database import plain_errors, sync_folder
from pipeline.keeping.location import DATABASE_NAME, ORIGINALS_NAME, PART_PREFIX, is_store, make_private_folder
from pipeline.keeping.own_words import WORDS_NAME

_PATIENCE_MS = 20_000
_ONLY_GROWING = ("memos", "visits", "facts", "flags", "horses", "history")  # but for removals
_OURS = frozenset({DATABASE_NAME, ORIGINALS_NAME, WORDS_NAME})


@dataclass(frozen=True)
class BackedUp:
    """What a back-up came to: recordings copied now and there before, those taken out, and what could not be saved."""

    path: Path
    memos: int
    copied: int
    there_before: int
    taken_out: int
    problems: tuple[str, ...] = ()


def back_up(source: sqlite3.Connection, folder: Path, target: Path) -> BackedUp:
    """Bring the back-up in ``target`` up to date, or make it; the old one stays whole until the new one is.

    The database is copied first and put in place last, so that a back-up never names a recording that it lacks.
    Recordings of removed memos go out of it. A recording that the store itself has lost is a problem of the result.
    Raises FileMissingError for a missing folder, BackupError, StoreError and StoreBusyError.
    """
    _check_apart(folder, target)
    if not target.absolute().parent.is_dir():  # made, it would lie on this disk when a stick is not plugged in
        raise FileMissingError(f"There is no folder {target.parent} to put the back-up into; is its disk plugged in?")
    make_private_folder(target)
    _check_ours(target)
    with plain_errors(target), only_back_up(target), part_of(target) as part:
        contents = copy_checked(source, part)
        if is_store(target):
            _check_same_store(contents, _old_contents(target), target)
        recordings = contents.recordings(folder)
        copied, problems = copy_originals(recordings, folder, target)
        copy_own_words(folder, target)
        part.replace(target / DATABASE_NAME)
        sync_folder(target)
        taken_out = _tidy(target, contents)
    whole = len(recordings) - len(problems)
    return BackedUp(target, len(contents.originals), copied, whole - copied, taken_out, tuple(problems))


def encrypted_back_up(source: sqlite3.Connection, folder: Path, target: Path, passphrase: str) -> BackedUp:
    """Write the store into one encrypted file, which must not be there yet.

    Raises FileMissingError for a missing folder, BackupError, PassphraseError, StoreError and StoreBusyError.
    """
    if len(passphrase) < LEAST_PASSPHRASE:
        raise PassphraseError(f"A passphrase needs at least {LEAST_PASSPHRASE} characters; a sentence is better.")
    if target.exists():
        raise BackupError(f"There is a {target} already; give this back-up a name of its own, with its day.")
    if not target.parent.is_dir():
        raise FileMissingError(f"There is no folder {target.parent} to write the back-up into.")
    with plain_errors(folder), part_of(folder) as database:
        contents = copy_checked(source, database)
        recordings = contents.recordings(folder)
        lost = [kept for kept in recordings if not is_whole(folder / kept.stored_path, kept.sha256)]
        missing = set(lost)
        whole = [kept for kept in recordings if kept not in missing]
        members = [(DATABASE_NAME, database)]
        members += [(f"{WORDS_NAME}/{path.name}", path) for path in own_word_files(folder)]
        members += [(kept.stored_path, folder / kept.stored_path) for kept in whole]
        with part_of(target.parent) as part:
            write_archive(part, members, passphrase)
            part.replace(target)
        sync_folder(target.parent)
    problems = tuple(f"The recording of {kept.file_name} is missing or no longer what was kept." for kept in lost)
    return BackedUp(target, len(contents.originals), len(whole), 0, 0, problems)


def copy_checked(source: sqlite3.Connection, part: Path) -> Contents:
    """Copy the database to ``part``, open and check the copy, and compare its rows with the store's."""
    with _waiting_longer(source):
        before = row_counts(source)
        copy_database(source, part)
        contents, after = contents_of(part), row_counts(source)
    if before["removed"] != after["removed"]:  # somebody removed a memo meanwhile, so that rows went as well as came
        return contents
    for name in _ONLY_GROWING:
        rows = contents.counts[name]
        if not before[name] <= rows <= after[name]:
            raise BackupError(f"The copy of the database has {rows} rows of {name} instead of {after[name]}.")
    return contents


@contextmanager
def _waiting_longer(source: sqlite3.Connection) -> Iterator[None]:
    """Let a connection wait longer for other programs than a person would: a back-up has the time."""
    usual = int(source.execute("PRAGMA busy_timeout").fetchone()[0])
    source.execute(f"PRAGMA busy_timeout={_PATIENCE_MS}")
    try:
        yield
    finally:
        source.execute(f"PRAGMA busy_timeout={usual}")


def copy_originals(recordings: Sequence[Original], source: Path, target: Path) -> tuple[int, list[str]]:
    """Copy those that ``target`` lacks; how many were copied, and a sentence for each that could not be."""
    copied, problems = 0, []
    for original in recordings:
        try:
            copied += copy_original(original, source, target)
        except FileMissingError as error:
            problems.append(str(error))
    return copied, problems


def apart(one: Path, other: Path) -> bool:
    """Whether neither folder lies in the other."""
    first, second = one.resolve(), other.resolve()
    return not (first.is_relative_to(second) or second.is_relative_to(first))


def _check_apart(folder: Path, target: Path) -> None:
    if not apart(folder, target):
        raise BackupError(f"{target} and the store {folder} lie one in the other; a back-up belongs on another disk.")


def _check_ours(target: Path) -> None:
    with plain_errors(target):
        others = [path.name for path in target.iterdir() if path.name not in _OURS]
    others = [name for name in others if not name.startswith(PART_PREFIX)]
    if others and not is_store(target):
        raise BackupError(f"{target} holds other things ({min(others)}); name a folder of its own for the back-up.")


def _old_contents(target: Path) -> Contents:
    try:
        return contents_of(target / DATABASE_NAME)
    except StoreNewerError:
        raise
    except BackupError as error:
        raise BackupError(f"The back-up in {target} is damaged; name another folder for a new one.") from error


def _check_same_store(new: Contents, old: Contents, target: Path) -> None:
    if old.identity != new.identity:
        raise BackupError(f"{target} holds the back-up of another store; name a folder of its own for this one.")
    missing = {original.sha256 for original in old.originals} - {original.sha256 for original in new.originals}
    # What was removed on purpose since then may be missing; more than that means that the back-up knows more.
    unexplained = len(missing) - (new.removed - old.removed)
    if unexplained > 0:
        raise BackupError(
            f"The back-up in {target} holds {unexplained} memos that this store lacks, so it was left as it is; name "
            "another folder, or restore it first."
        )


def _tidy(target: Path, contents: Contents) -> int:
    """Take out recordings that the database no longer names; how many."""
    named = {target / original.stored_path for original in contents.originals}
    recordings = [path for path in (target / ORIGINALS_NAME).glob("*/*") if ORIGINAL_FILE.match(path.name)]
    strays = [path for path in recordings if path not in named]
    for path in strays:
        path.unlink()
    return len(strays)
