"""The store as it was: the present rows with every later correction rolled back, and the corrections themselves."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError
from pipeline.keeping import changes, reading_back
from pipeline.keeping.changes import Change
from pipeline.keeping.database import plain_errors
from pipeline.keeping.kept import HistoryEntry, KeptVisit
from pipeline.keeping.opened import OpenedStore
from pipeline.keeping.raw import Raw, RawRow, horse_rows, put_together, raw_of
from pipeline.keeping.rows import fact_of
from pipeline.record import Fact

if TYPE_CHECKING:
    from sqlite_utils import Database


@dataclass(frozen=True)
class PastChange:
    """One decision and what it wrote. ``change`` is None for what a roster list or another program changed.

    ``added`` are the facts that it entered, with their numbers, as they were entered.
    """

    at: datetime
    who: str
    why: str
    change: Change | None
    entries: tuple[HistoryEntry, ...]
    added: tuple[tuple[int, Fact], ...] = ()


@dataclass(frozen=True)
class VisitHistory:
    """All that was changed in a visit since it was kept, oldest first.

    ``facts`` are all facts that are or were in it, by number, as they were read or entered; ``flags`` the reasons of
    its flags and of its memo's, ``horses`` the names of the horses that it was said to be of.
    """

    visit_id: int
    kept_at: datetime
    past: tuple[PastChange, ...]
    facts: dict[int, Fact]
    flags: dict[int, str]
    horses: dict[int, str]


class PastStates(OpenedStore):
    """What was changed, and what stood at a moment."""

    def history_of(self, visit_id: int) -> VisitHistory:
        """Every change to a visit, its facts, its flags and its memo; NotFoundError for an unknown visit."""
        with plain_errors(self.folder):
            return visit_history(self._database, visit_id)

    def visit_at(self, visit_id: int, when: datetime) -> KeptVisit:
        """A visit as it stood at ``when``, with the changes of that second; local time unless it says otherwise.

        Its revision is the present one: nothing is corrected in the past. Raises NotFoundError for an unknown visit
        and for a moment before it was kept.
        """
        with plain_errors(self.folder):
            return visit_at(self._database, self.folder, visit_id, when.astimezone(UTC))


def visit_at(database: Database, folder: Path, visit_id: int, when: datetime) -> KeptVisit:
    """A visit as it stood at ``when``; raises NotFoundError when it was not kept by then."""
    memo_id = int(reading_back.visit_row(database, visit_id)["memo"])
    raw = raw_of(database, [memo_id])
    _roll_back(database, raw, when)
    _take_out_later(raw, {change.id for change in changes.changes_of_memo(database, memo_id) if change.at > when})
    memo = raw.memos[memo_id]
    if datetime.fromisoformat(memo["kept_at"]) > when or visit_id not in raw.visits:
        raise NotFoundError(f"Visit {visit_id} was not kept yet at that time.")
    memo.update(_wording(database, memo))
    (built,) = put_together(raw, folder)
    return next(visit for visit in built.visits if visit.id == visit_id)


def visit_history(database: Database, visit_id: int) -> VisitHistory:
    """All that was changed in a visit; raises NotFoundError for an unknown one."""
    visit = reading_back.visit_row(database, visit_id)
    raw = raw_of(database, [visit["memo"]])
    moved = reading_back.history_of_rows(database, "facts", list(raw.facts))
    were_here = _went_through(moved, visit_id)
    facts = {number: row for number, row in raw.facts.items() if row["visit"] == visit_id or number in were_here}
    asked_here = _went_through(reading_back.history_of_rows(database, "flags", list(raw.flags)), visit_id)
    flags = {n: row for n, row in raw.flags.items() if row["visit"] in (None, visit_id) or n in asked_here}
    entries = [
        *(entry for entry in moved if entry.row in facts),
        *reading_back.history_of_rows(database, "visits", [visit_id]),
        *reading_back.history_of_rows(database, "flags", list(flags)),
        *reading_back.history_of_rows(database, "memos", [visit["memo"]]),
    ]
    for entry in sorted(moved, key=lambda entry: -entry.id):
        if entry.row in facts:
            facts[entry.row][entry.column] = entry.old
    return VisitHistory(
        visit_id=visit_id,
        kept_at=datetime.fromisoformat(raw.memos[visit["memo"]]["kept_at"]),
        past=tuple(_past(database, visit_id, entries, facts)),
        facts={number: fact_of(row) for number, row in facts.items()},
        flags={number: row["reason"] for number, row in flags.items()},
        horses=_horse_names(database, entries),
    )


def _went_through(entries: list[HistoryEntry], visit_id: int) -> set[int]:
    """The rows that were moved into a visit or out of it."""
    return {entry.row for entry in entries if entry.column == "visit" and visit_id in (entry.old, entry.new)}


def _horse_names(database: Database, entries: list[HistoryEntry]) -> dict[int, str]:
    told = [(entry.old, entry.new) for entry in entries if (entry.table, entry.column) == ("visits", "horse")]
    numbers = json.dumps([number for pair in told for number in pair if number is not None])
    sql = "SELECT id, name FROM horses WHERE id IN (SELECT value FROM json_each(?))"
    return {row["id"]: row["name"] for row in database.query(sql, [numbers])}


def _past(database: Database, visit_id: int, entries: list[HistoryEntry], facts: dict[int, RawRow]) -> list[PastChange]:
    found: list[tuple[int, PastChange]] = []
    by_change = sorted(entries, key=lambda entry: (entry.change or 0, entry.id))
    written = {key: tuple(group) for key, group in groupby(by_change, key=lambda entry: entry.change) if key}
    for change in changes.changes_of_visit(database, visit_id):
        added = tuple(
            (number, fact_of(row))
            for number, row in facts.items()
            if row["change"] == change.id and row["reading"] is None
        )
        past = PastChange(change.at, change.who, change.why, change, written.get(change.id, ()), added)
        first = min((entry.id for entry in past.entries), default=0)
        found.append((first, past))
    alone = sorted((entry for entry in entries if entry.change is None), key=lambda entry: entry.id)
    for (at, who, why), group in groupby(alone, key=lambda entry: (entry.at, entry.who, entry.why)):
        together = tuple(group)
        found.append((together[0].id, PastChange(at, who, why, None, together)))
    return [past for _, past in sorted(found, key=lambda one: (one[1].at, one[0]))]


def _roll_back(database: Database, raw: Raw, when: datetime) -> None:
    """Give every row what it held at ``when``; horses last, since the visits say which horses they were."""
    for table, rows in (("memos", raw.memos), ("visits", raw.visits), ("facts", raw.facts), ("flags", raw.flags)):
        _undo_later(database, table, rows, when)
    raw.horses = horse_rows(database, raw.visits.values())
    _undo_later(database, "horses", raw.horses, when)


def _undo_later(database: Database, table: str, rows: dict[int, RawRow], when: datetime) -> None:
    for entry in reversed(reading_back.history_of_rows(database, table, list(rows))):
        if entry.at > when:
            rows[entry.row][entry.column] = entry.old


def _take_out_later(raw: Raw, later: set[int]) -> None:
    raw.visits = {number: row for number, row in raw.visits.items() if row["change"] not in later}
    raw.facts = {
        number: row for number, row in raw.facts.items() if row["change"] not in later and row["visit"] in raw.visits
    }
    raw.flags = {number: row for number, row in raw.flags.items() if row["visit"] is None or row["visit"] in raw.visits}


def _wording(database: Database, memo: RawRow) -> RawRow:
    """The wording and the versions of the reading that stood."""
    sql = "SELECT transcript, words, weights FROM hearings WHERE memo = ? AND number = ?"
    hearing = next(iter(database.query(sql, [memo["id"], memo["hearing"]])), {})
    reading = "SELECT vocabulary FROM readings WHERE memo = ? AND number = ?"
    return {**hearing, **next(iter(database.query(reading, [memo["id"], memo["reading"]])))}
