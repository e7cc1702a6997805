"""What is read back from the store: memos, visits and history as typed objects."""

from __future__ import annotations

from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pipeline.errors import NotFoundError
from pipeline.keeping.kept import HistoryEntry, KeptHorse, KeptMemo, KeptVisit
from pipeline.keeping.rows import fact_of, flag_of, history_of, horse_of, memo_of, transcript_of
from pipeline.record import Flag, HorseMatch, MemoRecord, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database

Found = dict[str, Any]


def memo_row(database: Database, key: int | str) -> Found | None:
    """The row of a memo by its number (int) or its hash (str), or None."""
    column = "id" if isinstance(key, int) else "sha256"
    return next(iter(database.query(f"SELECT * FROM memos WHERE {column} = ?", [key])), None)


def memo_ids(database: Database) -> list[int]:
    """The numbers of all memos, in the order in which they were kept."""
    return [row["id"] for row in database.query("SELECT id FROM memos ORDER BY id")]


def memo(database: Database, folder: Path, key: int | str) -> KeptMemo:
    """A memo with all its visits; raises NotFoundError."""
    row = memo_row(database, key)
    if row is None:
        raise NotFoundError(f"There is no memo {key} in the store.")
    visit_ids = _ids(database, "SELECT id FROM visits WHERE memo = ? ORDER BY position", row["id"])
    record = MemoRecord(
        id=row["given_id"],
        memo=memo_of(row),
        transcript=row["transcript"],
        visits=[_visit_and_horse(database, visit_id)[0] for visit_id in visit_ids],
        flags=_flags(database, row["id"], None),
    )
    return KeptMemo(
        id=row["id"],
        record=record,
        transcript=transcript_of(row),
        file_name=row["file_name"],
        original=folder / row["stored_path"],
        kept_at=datetime.fromisoformat(row["kept_at"]),
        visit_ids=tuple(visit_ids),
        weights=row["weights"],
        vocabulary=row["vocabulary"],
    )


def visit(database: Database, folder: Path, visit_id: int) -> KeptVisit:
    """A visit with its horse and memo; raises NotFoundError."""
    row = next(iter(database.query("SELECT memo FROM visits WHERE id = ?", [visit_id])), None)
    if row is None:
        raise NotFoundError(f"There is no visit {visit_id} in the store.")
    found, horse = _visit_and_horse(database, visit_id)
    fact_ids = _ids(database, "SELECT id FROM facts WHERE visit = ? ORDER BY position", visit_id)
    return KeptVisit(visit_id, found, horse, memo(database, folder, row["memo"]), tuple(fact_ids))


def visit_ids_of(database: Database, horse_id: int | None) -> list[int]:
    """The numbers of a horse's visits, oldest first; of None, the visits that belong to no horse."""
    return _ids(database, "SELECT id FROM visits WHERE horse IS ? ORDER BY date, id", horse_id)


def history(database: Database) -> list[HistoryEntry]:
    """Every correction, oldest first."""
    return [history_of(row) for row in database.query("SELECT * FROM history ORDER BY id")]


def counts(database: Database) -> dict[str, int]:
    """How many rows each table of the record has, and under ``flagged`` how many facts a person must look at."""
    tables = ("memos", "visits", "facts", "horses")
    found = {table: int(database.execute(f"SELECT count(*) FROM {table}").fetchone()[0]) for table in tables}
    flagged = database.execute("SELECT count(*) FROM facts WHERE flagged = 1").fetchone()[0]
    return {**found, "flagged": int(flagged)}


def _visit_and_horse(database: Database, visit_id: int) -> tuple[Visit, KeptHorse | None]:
    row = next(iter(database.query("SELECT * FROM visits WHERE id = ?", [visit_id])))
    horses = [horse_of(horse) for horse in database.query("SELECT * FROM horses WHERE id IS ?", [row["horse"]])]
    horse = horses[0] if horses else None
    facts = database.query("SELECT * FROM facts WHERE visit = ? ORDER BY position", [visit_id])
    found = Visit(
        horse=horse.name if horse else row["horse_heard"],
        horse_match=HorseMatch(row["horse_match"]),
        date=date.fromisoformat(row["date"]),
        facts=[fact_of(fact) for fact in facts],
        flags=_flags(database, row["memo"], visit_id),
        notes=row["notes"],
    )
    return found, horse


def _flags(database: Database, memo_id: int, visit_id: int | None) -> list[Flag]:
    sql = "SELECT * FROM flags WHERE memo = ? AND visit IS ? ORDER BY position"
    return [flag_of(row) for row in database.query(sql, [memo_id, visit_id])]


def _ids(database: Database, sql: str, key: int | str | None) -> list[int]:
    return [row["id"] for row in database.query(sql, [key])]
