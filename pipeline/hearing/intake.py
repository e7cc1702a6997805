"""A memo file on its way in: is it there, is it sound by its content, and what is its hash."""

from __future__ import annotations

import hashlib
import os
import stat
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import BinaryIO

from pipeline.errors import ClinchbookError, FileEmptyError, FileMissingError, NotSoundError
from pipeline.hearing.containers import HEAD_BYTES, Container, sniff, what_else

_BLOCK_BYTES = 1 << 20


@dataclass(frozen=True)
class Intake:
    """A memo that is open for reading. ``handle`` is the very file that was hashed; ``modified_at`` is local time."""

    path: Path
    handle: BinaryIO
    size: int
    sha256: str
    container: Container
    modified_at: datetime


@contextmanager
def take_in(path: Path | str) -> Iterator[Intake]:
    """Open a memo, check by its content that it is sound, and hash it; the file is closed when the block ends.

    No decoder sees the file here. Raises FileMissingError, FileEmptyError, NotSoundError for a folder or anything but
    a known container, and ClinchbookError when it may not be read or changes while it is being read.
    """
    path = Path(path)
    with _open(path) as handle:
        status = os.fstat(handle.fileno())
        if status.st_size == 0:
            raise FileEmptyError(f"{path.name} is empty: nothing was recorded into it.")
        head = handle.read(HEAD_BYTES)
        container = sniff(head)
        if container is None:
            raise NotSoundError(f"{path.name} is not a recording but {what_else(head)}.")
        digest = _hash(path, handle, status.st_size)
        yield Intake(path, handle, status.st_size, digest, container, _local_time(status.st_mtime))


def _local_time(seconds: float) -> datetime:
    """Local time of seconds since 1970; 1970 itself for a time that no calendar has, as broken cards write it."""
    try:
        return datetime.fromtimestamp(seconds)
    except (OverflowError, ValueError, OSError):
        return datetime(1970, 1, 1)


def _open(path: Path) -> BinaryIO:
    try:
        mode = path.stat().st_mode
        if stat.S_ISDIR(mode):
            raise NotSoundError(f"{path.name or path} is a folder, not a recording.")
        if not stat.S_ISREG(mode):
            raise NotSoundError(f"{path.name} is not an ordinary file.")
        return path.open("rb")
    except FileNotFoundError as error:
        raise FileMissingError(f"There is no file {path}.") from error
    except (OSError, ValueError) as error:
        raise ClinchbookError(f"{path} cannot be read: {_cause(error)}.") from error


def _cause(error: OSError | ValueError) -> str:
    if isinstance(error, PermissionError):
        return "you have no permission to read it"
    if isinstance(error, OSError) and error.strerror:
        return error.strerror.lower()
    return "its name is not one that a file can have"


def _hash(path: Path, handle: BinaryIO, size: int) -> str:
    """SHA-256 of all bytes as 64 hex digits; leaves ``handle`` at the start."""
    digest, read = hashlib.sha256(), 0
    handle.seek(0)
    try:
        while block := handle.read(_BLOCK_BYTES):
            digest.update(block)
            read += len(block)
    except OSError as error:
        raise ClinchbookError(f"{path} cannot be read to its end: {_cause(error)}.") from error
    if read != size:
        raise ClinchbookError(f"{path.name} changed while it was being read; try again when it is copied completely.")
    handle.seek(0)
    return digest.hexdigest()
