"""Taking changes back: what stood before stands again, as a change of its own."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.keeping import changes
from pipeline.keeping.changes import About, Change, ChangeKind, change_of
from pipeline.keeping.correcting import next_position
from pipeline.keeping.database import update_row
from pipeline.keeping.raw import RawRow
from pipeline.keeping.rows import Columns

if TYPE_CHECKING:
    from sqlite_utils import Database

Value = str | float | None

# A reading again is taken back by a way of its own.
_LAST = """
SELECT * FROM changes WHERE who = (SELECT who FROM pen) AND kind NOT IN ('undo', 'reread')
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)
AND (:visit IS NULL OR memo = (SELECT memo FROM visits WHERE id = :visit))
ORDER BY id DESC LIMIT :count
"""
_WRITTEN = "SELECT in_table, in_row, in_column, old, new FROM history WHERE change = ? ORDER BY id"
_HELD = """
SELECT 1 FROM facts JOIN visits ON visits.id = facts.visit JOIN memos ON memos.id = visits.memo
WHERE visits.id = ? AND facts.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading)
"""
_MAY_CHANGE = frozenset({"facts", "visits", "flags"})


def take_back(database: Database, count: int, visit_id: int | None, at: str) -> list[Change]:
    """Take back the last ``count`` changes of whoever holds the pen, newest first.

    Raises CorrectionError when there is none, StoreConflictError when one was built upon since.
    """
    if count < 1:
        raise CorrectionError("At least one change is taken back at a time.")
    last = [change_of(row) for row in database.query(_LAST, {"visit": visit_id, "count": count})]
    if not last:
        raise CorrectionError("There is no change by this hand left to take back.")
    for change in last:
        about = About(change.memo, change.visit, change.fact, change.flag, change.id)
        changes.begin(database, ChangeKind.UNDO, about, at)
        _check_reading(database, change)
        restore(database, change.id)
        _take_out_entered(database, change)
    return last


def restore(database: Database, change: int, only: str | None = None, where_unchanged: bool = False) -> None:
    """Let what stood before a change stand again, in the table ``only`` or in all.

    What changed since raises StoreConflictError, or stays as it is by now with ``where_unchanged``.
    """
    rows = [row for row in database.query(_WRITTEN, [change]) if only in (None, row["in_table"])]
    for (table, row_id), columns in _by_row(rows).items():
        now = next(iter(database.query(f"SELECT * FROM {table} WHERE id = ?", [row_id])))
        if where_unchanged:
            columns = {name: values for name, values in columns.items() if now[name] == values[1]}
        if any(now[name] != new for name, (_, new) in columns.items()):
            raise StoreConflictError(
                "What was done then has been changed again since; take the later change back first."
            )
        if not columns:
            continue
        old: Columns = {name: value for name, (value, _) in columns.items()}
        if table == "facts" and "position" in old and _taken(database, {**now, **old}):
            memo = database.execute("SELECT memo FROM visits WHERE id = ?", [now["visit"]]).fetchone()[0]
            old["position"] = next_position(database, memo)
        update_row(database, table, row_id, old)


def _by_row(rows: Iterable[RawRow]) -> dict[tuple[str, int], dict[str, tuple[Value, Value]]]:
    """By table and row, each column with what stood before the first and after the last of these corrections."""
    grouped: dict[tuple[str, int], dict[str, tuple[Value, Value]]] = {}
    for row in rows:
        if row["in_table"] not in _MAY_CHANGE:
            raise CorrectionError("This change cannot be taken back.")
        columns = grouped.setdefault((row["in_table"], row["in_row"]), {})
        first = columns.get(row["in_column"], (row["old"], None))[0]
        columns[row["in_column"]] = (first, row["new"])
    return grouped


def _check_reading(database: Database, change: Change) -> None:
    """A fact of an earlier reading stands nowhere: its change is taken back once that reading stands again."""
    sql = """SELECT 1 FROM facts JOIN visits ON visits.id = facts.visit JOIN memos ON memos.id = visits.memo
             WHERE facts.id = ? AND facts.reading <> memos.reading"""
    if change.fact is not None and database.execute(sql, [change.fact]).fetchone():
        raise StoreConflictError("The memo was read again since; take that back first.")


def _take_out_entered(database: Database, change: Change) -> None:
    for row in list(database.query("SELECT id FROM facts WHERE change = ? AND stands = 1", [change.id])):
        update_row(database, "facts", row["id"], {"stands": 0})
    for row in list(database.query("SELECT id FROM visits WHERE change = ?", [change.id])):
        if database.execute(_HELD, [row["id"]]).fetchone():
            raise StoreConflictError(f"Visit {row['id']} has facts by now; take them back first.")
        update_row(database, "visits", row["id"], {"stands": 0})


def _taken(database: Database, fact: RawRow) -> bool:
    sql = "SELECT 1 FROM facts WHERE visit = ? AND position = ? AND id <> ?"
    return database.execute(sql, [fact["visit"], fact["position"], fact["id"]]).fetchone() is not None
