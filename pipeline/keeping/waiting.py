"""The waiting list: memos that could not be taken in, each with the reason, until they are kept or dropped.

All functions work inside the transaction of the caller.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.keeping.database import insert_row
from pipeline.keeping.names import keepable
from pipeline.keeping.rows import as_json

if TYPE_CHECKING:
    from sqlite_utils import Database


@dataclass(frozen=True)
class Waiting:
    """A memo that waits: where it lies, its hash when it could be read, the day that was given for it, and why."""

    id: int
    path: Path
    sha256: str | None
    day: date | None
    reason: str
    since: datetime
    last_tried: datetime
    tries: int


def full_path(path: Path) -> str:
    """The path as the list holds it: absolute, so that it is found again from any folder."""
    return keepable(str(path.absolute()))


def put(database: Database, path: Path, sha256: str | None, day: date | None, reason: str, now: str) -> None:
    """Put a memo on the list; one that is on it already gets the new reason and one try more.

    A day that was given stays until another is given.
    """
    given = day.isoformat() if day else None
    where = full_path(path)
    done = database.execute(
        "UPDATE waiting SET sha256 = coalesce(?, sha256), day = coalesce(?, day), reason = ?, last_tried = ?, "
        "tries = tries + 1 WHERE path = ?",
        [sha256, given, keepable(reason), now, where],
    )
    if done.rowcount == 0:
        row = {"path": where, "sha256": sha256, "day": given, "reason": keepable(reason)}
        insert_row(database, "waiting", {**row, "since": now, "last_tried": now})


def take_off(database: Database, sha256: str, path: Path | None = None) -> None:
    """Take a sound off the list, wherever it lay, and whatever lay at ``path``: it is kept now."""
    where = None if path is None else full_path(path)
    database.execute("DELETE FROM waiting WHERE sha256 = ? OR path = ?", [sha256, where])


def drop(database: Database, numbers: Sequence[int]) -> None:
    """Take the entries of these numbers off the list."""
    database.execute("DELETE FROM waiting WHERE id IN (SELECT value FROM json_each(?))", [as_json(list(numbers))])


def all_waiting(database: Database) -> list[Waiting]:
    """The whole list, in the order in which the memos were first tried."""
    return [
        Waiting(
            id=row["id"],
            path=Path(row["path"]),
            sha256=row["sha256"],
            day=date.fromisoformat(row["day"]) if row["day"] else None,
            reason=row["reason"],
            since=datetime.fromisoformat(row["since"]),
            last_tried=datetime.fromisoformat(row["last_tried"]),
            tries=row["tries"],
        )
        for row in database.query("SELECT * FROM waiting ORDER BY id")
    ]
