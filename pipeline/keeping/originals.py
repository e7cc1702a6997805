"""The original recordings: copied beside the database under their hash, whole or not at all."""

from __future__ import annotations

import hashlib
import os
import re
import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import BinaryIO

from pipeline.errors import FileMissingError, StoreError
from pipeline.keeping.database import sync_file, sync_folder
from pipeline.keeping.location import ORIGINALS_NAME, make_private_folder

if sys.platform != "win32":
    import fcntl

_BLOCK = 1 << 20
_ENDING = re.compile(r"\.[a-z0-9]{1,8}")
_TEMPORARY = ".part"


def original_name(sha256: str, file_name: str) -> str:
    """Where an original lies, relative to the store's folder and with forward slashes."""
    ending = Path(file_name).suffix.lower()
    ending = ending if _ENDING.fullmatch(ending) else ".sound"
    return f"{ORIGINALS_NAME}/{sha256[:2]}/{sha256}{ending}"


def keep_original(folder: Path, sha256: str, original: Path) -> str:
    """Copy ``original`` into the store and return its relative name; the copy is read back and hashed.

    A copy left by an interrupted run is used again when it is whole. Raises FileMissingError when the original is
    gone and StoreError when it changed since it was heard or the copy cannot be written.
    """
    name = original_name(sha256, original.name)
    target = folder / name
    try:
        if target.is_file() and sha256_of(target) == sha256:
            _sync_way_to(target)  # the run that left it may have been stopped before it did
            return name
    except OSError as error:
        raise StoreError(f"The copy {target} in the store cannot be read.") from error
    make_private_folder(target.parent)
    clear_parts(folder)
    try:
        source = original.open("rb")
    except (OSError, ValueError) as error:
        raise FileMissingError(f"The memo {original.name} is no longer there or cannot be read.") from error
    with source:
        keep_exactly(source, target, sha256, original.name)
    return name


@contextmanager
def originals_or_none(
    folder: Path, hashes: Sequence[str], sounds: Sequence[Path | None], drop: Callable[[Sequence[str]], None]
) -> Iterator[list[str | None]]:
    """Copy the recordings that are given into the store; what the block then refuses is given to ``drop`` by its hash.

    Another program may have kept the same sound meanwhile, and rely on the copy: ``drop`` has to look.
    """
    made: list[str] = []
    stored: list[str | None] = []
    try:
        for sha256, sound in zip(hashes, sounds, strict=True):
            there = sound is not None and (folder / original_name(sha256, sound.name)).exists()
            stored.append(None if sound is None else keep_original(folder, sha256, sound))
            if sound is not None and not there:
                made.append(sha256)
        yield stored
    except BaseException:
        drop(made)
        raise


def sha256_of(path: Path) -> str:
    """The SHA-256 of a file's bytes, as 64 hexadecimal digits; raises OSError."""
    digest = hashlib.sha256()
    with path.open("rb") as file:
        while block := file.read(_BLOCK):
            digest.update(block)
    return digest.hexdigest()


def clear_parts(folder: Path) -> None:
    """Remove half copies that stopped programs left in the store; one that a running program still writes stays."""
    for part in (folder / ORIGINALS_NAME).glob(f"*/*{_TEMPORARY}"):
        with suppress(OSError):
            _remove_left(part)


def _remove_left(part: Path) -> None:
    if sys.platform == "win32":  # what is open cannot be removed there, by another program or by this one
        part.unlink()
        return
    with part.open("rb+") as file:
        if _claim(file):
            part.unlink()


def remove_copies(folder: Path, sha256: str) -> None:
    """Unlink every copy of this sound in the store, under the write lock of the caller; raises OSError."""
    place = folder / ORIGINALS_NAME / sha256[:2]
    for path in list(place.glob(f"{sha256}*")):
        path.unlink()
        sync_folder(place)


def keep_exactly(source: BinaryIO, target: Path, sha256: str, file_name: str) -> None:
    """Copy an open file to ``target`` in a store: synced, read back, hashed and only then renamed.

    Raises StoreError when the bytes are not those of ``sha256`` or the copy cannot be written.
    """
    part: Path | None = None
    try:
        copy, part = _new_part(target)
        with copy:
            while block := source.read(_BLOCK):
                copy.write(block)
            copy.flush()
            sync_file(copy.fileno())
            if sha256_of(part) != sha256:
                raise StoreError(f"The memo {file_name} changed while it was being kept; keep it again.")
            if sys.platform == "win32":
                copy.close()  # an open file cannot be renamed there; elsewhere it stays marked until it has its name
            part.replace(target)
        _sync_way_to(target)
    except OSError as error:
        reason = error.strerror or type(error).__name__
        raise StoreError(f"The memo {file_name} cannot be copied into the store: {reason}.") from error
    finally:
        if part is not None:
            with suppress(OSError):
                part.unlink(missing_ok=True)


def _new_part(target: Path) -> tuple[BinaryIO, Path]:
    """A file for a copy in the making, marked as in use until it is closed."""
    while True:
        handle, temporary = tempfile.mkstemp(prefix=target.stem, suffix=_TEMPORARY, dir=target.parent)
        copy = os.fdopen(handle, "wb")
        # Another program may have taken it for a left one before it was marked.
        claimed = True
        with suppress(OSError):  # a file system without such marks
            claimed = _claim(copy)
        if claimed and os.fstat(handle).st_nlink:
            return copy, Path(temporary)
        copy.close()


def _claim(file: BinaryIO) -> bool:
    """Mark an open file as in use; False when another program has. The mark goes when the file is closed.

    Windows needs no mark: a file that is in use cannot be removed there.
    """
    if sys.platform != "win32":
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
    return True


def _sync_way_to(target: Path) -> None:
    for folder in (target.parent, target.parent.parent, target.parent.parent.parent):
        sync_folder(folder)
