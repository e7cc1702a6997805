"""Where the store lies: a folder that holds one database and the original recordings."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

from pipeline.errors import StoreError
from pipeline.keeping.database import sync_folder

STORE_VARIABLE = "CLINCHBOOK_STORE"
DATABASE_NAME = "clinchbook.db"
ORIGINALS_NAME = "originals"
PART_PREFIX = ".clinchbook-"  # how the names of files and folders begin that are only work in progress


def store_folder(explicit: Path | None = None) -> Path:
    """The store's folder: the one given, else $CLINCHBOOK_STORE, else the user's data folder. Nothing is created."""
    if explicit is not None:
        return explicit.expanduser()
    named = os.environ.get(STORE_VARIABLE, "").strip()
    if named:
        return Path(named).expanduser()
    from platformdirs import user_data_dir

    return Path(user_data_dir("clinchbook", appauthor=False))


def is_store(folder: Path) -> bool:
    """Whether a folder holds a database of that name."""
    return (folder / DATABASE_NAME).is_file()


def no_store_sentence(folder: Path) -> str:
    """That there is no store yet, how one comes about, and how another is named."""
    return (
        f"There is no store in {folder} yet; clinchbook ingest or clinchbook roster import makes one there, "
        f"--store or {STORE_VARIABLE} names another."
    )


def make_private_folder(folder: Path) -> None:
    """Create ``folder`` and its missing parents, each for this user alone (0700) and to last; raises StoreError.

    A folder that is there already keeps the rights its owner gave it.
    """
    missing = [path for path in (folder, *folder.parents) if not path.exists()]
    try:
        for path in reversed(missing):
            path.mkdir(mode=0o700, exist_ok=True)
            with suppress(PermissionError):  # a folder of somebody else's that may be written but not read
                sync_folder(path.parent)
    except OSError as error:
        raise StoreError(f"The folder {folder} cannot be made: {error.strerror or type(error).__name__}.") from error
    except ValueError as error:
        raise StoreError(f"The folder {folder} cannot be made: no folder can have this name.") from error
    if not folder.is_dir():
        raise StoreError(f"{folder} is no folder.")
