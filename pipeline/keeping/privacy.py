"""Who else on this machine can get at the store."""

from __future__ import annotations

import os
import stat
from collections.abc import Iterator
from pathlib import Path


def open_to_others(folder: Path) -> list[str]:
    """A sentence for everything of the store that other users of this machine may read or change; [] where none may.

    A folder that only this user may enter shields all that lies in it. Where the system knows no such rights (Windows
    keeps its own), nothing is said.
    """
    if os.name != "posix" or not _open_bits(folder):
        return []
    said = [f"Other users of this machine can look into {folder}; chmod 700 makes it yours alone."]
    loose = sum(1 for path in _files(folder) if _open_bits(path))
    if loose:
        said.append(f"{'1 file' if loose == 1 else f'{loose} files'} in it can be read or changed by others.")
    return said


def _files(folder: Path) -> Iterator[Path]:
    return (path for path in folder.rglob("*") if path.is_file() and not path.is_symlink())


def _open_bits(path: Path) -> int:
    try:
        return stat.S_IMODE(path.stat().st_mode) & 0o077
    except OSError:
        return 0
