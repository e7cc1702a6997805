"""What is read back from the store: memos, visits and history as typed objects."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError
from pipeline.keeping.kept import HistoryEntry, KeptMemo, KeptVisit
from pipeline.keeping.names import name_key
from pipeline.keeping.raw import RawRow, built_memos
from pipeline.keeping.rows import history_of

if TYPE_CHECKING:
    from sqlite_utils import Database

# The facts of memos that were read again and are not of the reading that stands.
_OVERTAKEN = """
SELECT count(*) FROM readings JOIN memos ON memos.id = readings.memo JOIN visits ON visits.memo = memos.id
JOIN facts ON facts.visit = visits.id
WHERE readings.number = (SELECT max(number) FROM readings WHERE memo = memos.id AND number > 1)
AND facts.stands = 1 AND facts.reading <> memos.reading
"""
# The facts of the reading that stands, in visits that do not.
_LET_GO = """
SELECT count(*) FROM visits JOIN memos ON memos.id = visits.memo JOIN facts ON facts.visit = visits.id
WHERE visits.stands = 0 AND facts.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading)
"""


def memo_row(database: Database, key: int | str) -> RawRow | None:
    """The row of a memo by its number (int) or its hash (str), or None."""
    column = "id" if isinstance(key, int) else "sha256"
    return next(iter(database.query(f"SELECT * FROM memos WHERE {column} = ?", [key])), None)


def visit_row(database: Database, visit_id: int) -> RawRow:
    """The row of a visit; raises NotFoundError."""
    row = next(iter(database.query("SELECT * FROM visits WHERE id = ?", [visit_id])), None)
    if row is None:
        raise NotFoundError(f"There is no visit {visit_id} in the store.")
    return row


def memo(database: Database, folder: Path, key: int | str) -> KeptMemo:
    """A memo with all its visits; raises NotFoundError."""
    row = memo_row(database, key)
    if row is None:
        raise NotFoundError(f"There is no memo {key} in the store.")
    return next(built_memos(database, folder, [row["id"]])).memo


def memos(database: Database, folder: Path) -> list[KeptMemo]:
    """Every memo in the order in which it was kept."""
    ids = [row["id"] for row in database.query("SELECT id FROM memos ORDER BY id")]
    return [built.memo for built in built_memos(database, folder, ids)]


def visit(database: Database, folder: Path, visit_id: int) -> KeptVisit:
    """A visit with its horse and memo; raises NotFoundError."""
    return _visits(database, folder, [(visit_id, visit_row(database, visit_id)["memo"])])[0]


def visits_of(database: Database, folder: Path, horse_id: int | None) -> list[KeptVisit]:
    """A horse's visits, oldest first; of None, the visits that belong to no horse."""
    sql = "SELECT id, memo FROM visits WHERE horse IS ? AND stands = 1 ORDER BY date, id"
    return _visits(database, folder, [(row["id"], row["memo"]) for row in database.query(sql, [horse_id])])


def heard(database: Database, name: str) -> bool:
    """Whether an unassigned visit names a horse so."""
    sql = "SELECT 1 FROM visits WHERE horse IS NULL AND heard_key = ? AND stands = 1 LIMIT 1"
    return database.execute(sql, [name_key(name)]).fetchone() is not None


def history(database: Database) -> list[HistoryEntry]:
    """Every correction, oldest first."""
    return [history_of(row) for row in database.query("SELECT * FROM history ORDER BY id")]


def history_of_rows(database: Database, table: str, rows: Sequence[int]) -> list[HistoryEntry]:
    """The corrections of some rows of a table, oldest first."""
    sql = "SELECT * FROM history WHERE in_table = ? AND in_row IN (SELECT value FROM json_each(?)) ORDER BY id"
    return [history_of(row) for row in database.query(sql, [table, json.dumps(list(rows))])]


def counts(database: Database) -> dict[str, int]:
    """How many memos, visits, facts and horses stand, and under ``flagged`` how many facts a person must look at."""

    def counted(sql: str) -> int:
        return int(database.execute(sql).fetchone()[0])

    facts = counted("SELECT count(*) FROM facts WHERE stands = 1")
    return {
        "memos": counted("SELECT count(*) FROM memos"),
        "visits": counted("SELECT count(*) FROM visits WHERE stands = 1"),
        "facts": facts - counted(_OVERTAKEN) - counted(_LET_GO),
        "horses": counted("SELECT count(*) FROM horses"),
        "flagged": counted("SELECT count(*) FROM to_review"),
    }


def _visits(database: Database, folder: Path, wanted: Sequence[tuple[int, int]]) -> list[KeptVisit]:
    """The visits of these (visit, memo) numbers, in their order."""
    memo_ids = sorted({memo_id for _, memo_id in wanted})
    found = {visit.id: visit for built in built_memos(database, folder, memo_ids) for visit in built.visits}
    return [found[visit_id] for visit_id, _ in wanted]
