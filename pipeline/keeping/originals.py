"""The original recordings: copied beside the database under their hash, whole or not at all."""

from __future__ import annotations

import hashlib
import os
import re
import tempfile
from contextlib import suppress
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
        keep_exactly(source, target, sha256, original.name)
    return name


def sha256_of(path: Path) -> str:
    """The SHA-256 of a file's bytes, as 64 hexadecimal digits; raises OSError."""
    digest = hashlib.sha256()
    with path.open("rb") as file:
        while block := file.read(_BLOCK):
            digest.update(block)
    return digest.hexdigest()


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
