"""Whether the store is whole: the database, its word index, and the recordings beside it."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.keeping.forgetting import unfinished, word_indexes
from pipeline.keeping.originals import sha256_of

if TYPE_CHECKING:
    from sqlite_utils import Database

# A memo that was taken in from another store's record may never have had its recording here.
RECORDINGS = """
SELECT stored_path, sha256, file_name, EXISTS (
    SELECT 1 FROM history
    WHERE in_table = 'memos' AND in_row = memos.id AND in_column = 'taken_in' AND new LIKE '%without its recording'
) AS came_without
FROM memos ORDER BY id
"""


def problems(database: Database, folder: Path, deep: bool) -> list[str]:
    """One sentence for everything that is wrong; an empty list for a whole store.

    The recordings are looked for, and with ``deep`` read and hashed again.
    """
    found = database_problems(database)
    if unfinished(database):
        found.append("A removal was interrupted; finish it with: clinchbook forget --finish.")
    return found + recording_problems(database, folder, deep)


def database_problems(database: Database) -> list[str]:
    """What is wrong with the database alone."""
    found = [f"The database is damaged: {row['integrity_check']}." for row in _bad_pages(database)]
    broken_links = list(database.query("PRAGMA foreign_key_check"))
    if broken_links:
        found.append(f"{len(broken_links)} rows of the database point to rows that are gone.")
    indexes = word_indexes(database)
    found.extend(f"The word index {name} does not fit the records." for name in indexes if not _fits(database, name))
    if not _days_fit(database):
        found.append("The index of days, fact_days, does not fit the records.")
    return found


def recording_problems(database: Database, folder: Path, deep: bool) -> list[str]:
    """A sentence for every recording that is missing from ``folder`` or, when ``deep``, not what was kept."""
    found = []
    for row in database.query(RECORDINGS):
        path = folder / row["stored_path"]
        if row["came_without"] and not path.exists():
            continue
        sentence = _recording_problem(path, row["sha256"], deep)
        if sentence:
            found.append(f"The recording of {row['file_name']} {sentence}.")
    return found


def _bad_pages(database: Database) -> list[dict[str, str]]:
    return [row for row in database.query("PRAGMA integrity_check") if row["integrity_check"] != "ok"]


def _fits(database: Database, name: str) -> bool:
    try:
        # Rank 1 also compares the index with the rows that it was made from.
        database.execute(f"INSERT INTO {name} ({name}, rank) VALUES ('integrity-check', 1)")
    except sqlite3.DatabaseError as error:
        if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_CORRUPT:
            raise
        return False
    return True


def _days_fit(database: Database) -> bool:
    if not database.execute("SELECT 1 FROM sqlite_master WHERE name = 'fact_days_now'").fetchone():
        return True  # a store of an earlier version, such as a back-up has
    counts = database.execute(
        "SELECT (SELECT count(*) FROM fact_days_now), (SELECT count(*) FROM fact_days)"
    ).fetchone()
    sql = "SELECT 1 FROM (SELECT * FROM fact_days_now EXCEPT SELECT * FROM fact_days) LIMIT 1"
    return counts[0] == counts[1] and database.execute(sql).fetchone() is None


def _recording_problem(path: Path, sha256: str, deep: bool) -> str | None:
    if not path.is_file():
        return "is missing from the store"
    if not deep:
        return None
    try:
        return None if sha256_of(path) == sha256 else "is no longer what was kept"
    except OSError:
        return "cannot be read"
