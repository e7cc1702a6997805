"""An open store: the database, its folder, and the one way to write into it."""

from __future__ import annotations

import getpass
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.keeping import writing_down
from pipeline.keeping.database import plain_errors, writing
from pipeline.keeping.names import keepable

if TYPE_CHECKING:
    from sqlite_utils import Database


class OpenedStore:
    """What all parts of the store share. Nothing outside the store makes one."""

    def __init__(self, database: Database, folder: Path) -> None:
        self._database = database
        self.folder = folder

    @contextmanager
    def _writing(self, who: str | None, why: str) -> Iterator[None]:
        """One transaction under somebody's name; StoreError with one plain sentence when it cannot be."""
        with plain_errors(self.folder), writing(self._database):
            writing_down.take_pen(self._database, keepable(who or login_name()), keepable(why))
            yield
            writing_down.take_pen(self._database, "unknown", "")


def now() -> str:
    """This moment in UTC, to the second, as the store writes it."""
    return datetime.now(UTC).isoformat(timespec="seconds")


def login_name() -> str:
    """Who sits at the machine, as the system knows him."""
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return "unknown"
