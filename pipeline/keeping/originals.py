"""The original recordings: copied beside the database under their hash, whole or not at all."""

from __future__ import annotations

import hashlib
import os
import re
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import BinaryIO

from pipeline.errors import FileMissingError, StoreError
from pipeline.keeping.database import sync_folder
from pipeline.keeping.location import ORIGINALS_NAME, make_private_folder

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
            return name
    except OSError as error:
        raise StoreError(f"The copy {target} in the store cannot be read.") from error
    make_private_folder(target.parent)
    try:
        source = original.open("rb")
    except (OSError, ValueError) as error:
        raise FileMissingError(f"The memo {original.name} is no longer there or cannot be read.") from error
    with source:
        _copy(source, target, sha256, original.name)
    return name


@contextmanager
def originals_or_none(folder: Path, hashes: Sequence[str], sounds: Sequence[Path | None]) -> Iterator[list[str | None]]:
    """Copy the recordings that are given into the store; what the block then refuses leaves none of them behind."""
    made: list[Path] = []
    stored: list[str | None] = []
    try:
        for sha256, sound in zip(hashes, sounds, strict=True):
            there = sound is not None and (folder / original_name(sha256, sound.name)).exists()
            stored.append(None if sound is None else keep_original(folder, sha256, sound))
            if sound is not None and not there:
                made.append(folder / original_name(sha256, sound.name))
        yield stored
    except BaseException:
        for path in made:
            with suppress(OSError):
                path.unlink(missing_ok=True)
        raise


def sha256_of(path: Path) -> str:
    """The SHA-256 of a file's bytes, as 64 hexadecimal digits; raises OSError."""
    digest = hashlib.sha256()
    with path.open("rb") as file:
        while block := file.read(_BLOCK):
            digest.update(block)
    return digest.hexdigest()


def _copy(source: BinaryIO, target: Path, sha256: str, file_name: str) -> None:
    part: Path | None = None
    try:
        handle, temporary = tempfile.mkstemp(prefix=target.stem, suffix=_TEMPORARY, dir=target.parent)
        part = Path(temporary)
        with os.fdopen(handle, "wb") as copy:
            while block := source.read(_BLOCK):
                copy.write(block)
            copy.flush()
            os.fsync(copy.fileno())
        if sha256_of(part) != sha256:
            raise StoreError(f"The memo {file_name} changed while it was being kept; keep it again.")
        part.replace(target)
        for changed in (target.parent, target.parent.parent, target.parent.parent.parent):
            sync_folder(changed)
    except OSError as error:
        reason = error.strerror or type(error).__name__
        raise StoreError(f"The memo {file_name} cannot be copied into the store: {reason}.") from error
    finally:
        if part is not None:
            with suppress(OSError):
                part.unlink(missing_ok=True)
