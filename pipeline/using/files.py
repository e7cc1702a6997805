"""Writing a file whole or not at all."""

from __future__ import annotations

import os
import tempfile
from contextlib import suppress
from pathlib import Path

from pipeline.errors import ClinchbookError, FileMissingError


def write_whole(path: Path, text: str) -> None:
    """Write ``text`` as UTF-8 under a temporary name, then rename; an old file stays until the new one is whole.

    Raises FileMissingError when the folder is not there and ClinchbookError when it cannot be written.
    """
    if not path.parent.is_dir():
        raise FileMissingError(f"There is no folder {path.parent} to write {path.name} into.")
    part: Path | None = None
    try:
        handle, temporary = tempfile.mkstemp(prefix=".clinchbook-", dir=path.parent)
        part = Path(temporary)
        with os.fdopen(handle, "w", encoding="utf-8", newline="") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except (OSError, ValueError) as error:
        raise ClinchbookError(f"{path} cannot be written.") from error
    finally:
        if part is not None:
            with suppress(OSError):
                part.unlink(missing_ok=True)
