"""Writing files whole or not at all."""

from __future__ import annotations

import os
import re
import tempfile
import unicodedata
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from pipeline.errors import ClinchbookError, FileMissingError

_LONGEST = 80
# Names that Windows keeps for devices.
_DEVICES = frozenset({"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10))})


def write_whole(path: Path, text: str) -> None:
    """Write ``text`` as UTF-8; as ``write_all`` for one file."""
    write_all({path: text.encode("utf-8")})


def write_all(files: Mapping[Path, bytes]) -> list[Path]:
    """Write all files under temporary names, then rename them; returns their paths.

    Nothing is renamed before every file is on the disk, so that an error in writing leaves all old files as they were.
    Raises FileMissingError when a folder is not there and ClinchbookError when a file cannot be written.
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


def _written(path: Path, data: bytes) -> Path:
    if not path.parent.is_dir():
        raise FileMissingError(f"There is no folder {path.parent} to write {path.name} into.")
    part: Path | None = None
    if path.is_dir():
        raise ClinchbookError(f"{path} is a folder; name a file.")
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
