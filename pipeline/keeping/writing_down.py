"""What is written into the store, inside the transaction that the caller opened."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pipeline.keeping.database import insert_row
from pipeline.keeping.horses import assign
from pipeline.keeping.rows import Columns, fact_columns, flag_columns, memo_columns, visit_columns
from pipeline.record import Flag, MemoRecord, Transcript, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database


def write_memo(
    database: Database,
    record: MemoRecord,
    transcript: Transcript,
    file_name: str,
    stored_path: str,
    columns: Columns,
) -> list[int]:
    """Write a memo with its visits, facts and flags; return the visits' row numbers in order."""
    row = {**memo_columns(record, transcript, file_name, stored_path), **columns}
    memo_id = insert_row(database, "memos", row)
    _write_flags(database, record.flags, memo_id, None)
    return [_write_visit(database, visit, memo_id, position) for position, visit in enumerate(record.visits)]


def take_pen(database: Database, who: str, why: str, change: int | None = None) -> None:
    """Say who writes from here on, why, and as part of which change; the triggers copy it into history."""
    database.execute("UPDATE pen SET who = ?, why = ?, change = ?", [who, why, change])


def _write_visit(database: Database, visit: Visit, memo_id: int, position: int) -> int:
    assignment = assign(database, visit, memo_id)
    decided = visit.model_copy(update={"horse_match": assignment.match})
    visit_id = insert_row(database, "visits", visit_columns(decided, memo_id, position, assignment.horse_id))
    for place, fact in enumerate(visit.facts):
        insert_row(database, "facts", fact_columns(fact, visit_id, place))
    flags = [*visit.flags, assignment.flag] if assignment.flag else visit.flags
    _write_flags(database, flags, memo_id, visit_id)
    return visit_id


def _write_flags(database: Database, flags: list[Flag], memo_id: int, visit_id: int | None) -> None:
    for position, flag in enumerate(flags):
        insert_row(database, "flags", flag_columns(flag, memo_id, visit_id, position))
