"""Writing files whole or not at all."""

from __future__ import annotations

import mmap
import os
import re
import tempfile
import unicodedata
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from pipeline.errors import ClinchbookError, FileMissingError

_LONGEST = 80
_MARK = b"clinchbook"  # stands in every file that is written here, whatever its form
_DATABASE = b"SQLite format 3"
# Names that Windows keeps for devices.
_DEVICES = frozenset({"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10))})


def write_whole(path: Path, text: str) -> None:
    """Write ``text`` as UTF-8; as ``write_all`` for one file."""
    write_all({path: text.encode("utf-8")})


def write_all(files: Mapping[Path, bytes]) -> list[Path]:
    """Write all files under temporary names, then rename them; returns their paths.

    Nothing is renamed before every file is on the disk, so that an error in writing leaves all old files as they were.
    Raises FileMissingError when a folder is not there and ClinchbookError when a file cannot be written, or would
    take the place of one that clinchbook has not written: a list of horses is lost so by one wrong name.
    """
    parts: dict[Path, Path] = {}
    try:
        for path, data in files.items():
            parts[path] = _written(path, data)
        for path, part in parts.items():
            try:
                part.replace(path)
            except OSError as error:
                raise ClinchbookError(f"{path} cannot be written.") from error
    finally:
        for part in parts.values():
            with suppress(OSError):
                part.unlink(missing_ok=True)
    return list(files)


def file_name(text: str) -> str:
    """``text`` as a file name without ending that every system allows: letters, digits and hyphens."""
    plain = unicodedata.normalize("NFKC", text).casefold()
    name = re.sub(r"[^\w]+", "-", plain).strip("-_")[:_LONGEST].strip("-_")
    return f"horse-{name}".rstrip("-") if not name or name in _DEVICES else name


def _ours(path: Path) -> bool:
    """Whether nothing is lost when ``path`` is written: it is not there, is empty, or was written here before."""
    try:
        if not path.is_file() or not path.stat().st_size:
            return True
        with path.open("rb") as file, mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ) as old:
            return old.find(_MARK) >= 0 and old[: len(_DATABASE)] != _DATABASE
    except (OSError, ValueError):
        return True  # whether it can be written is found out by writing


def _written(path: Path, data: bytes) -> Path:
    if not path.parent.is_dir():
        raise FileMissingError(f"There is no folder {path.parent} to write {path.name} into.")
    part: Path | None = None
    if path.is_dir():
        raise ClinchbookError(f"{path} is a folder; name a file.")
    if not _ours(path):
        raise ClinchbookError(f"{path} is there already and was not written by clinchbook; name another file.")
    try:
        handle, temporary = tempfile.mkstemp(prefix=".clinchbook-", dir=path.parent)
        part = Path(temporary)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
    except (OSError, ValueError) as error:
        if part is not None:
            with suppress(OSError):
                part.unlink(missing_ok=True)
        raise ClinchbookError(f"{path} cannot be written.") from error
    return part
