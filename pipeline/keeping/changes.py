"""Changes: one decision each, under whose name every row of history stands that it made."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import TYPE_CHECKING, Any

from pipeline.keeping.database import insert_row

if TYPE_CHECKING:
    from sqlite_utils import Database


class ChangeKind(StrEnum):
    """What a change was about."""

    CORRECT = "correct"  # a field of a fact
    ACCEPT = "accept"  # a fact confirmed as it stands, or that the same horse is told of at the place of a flag
    DROP = "drop"  # a fact that was not said
    RESTORE = "restore"  # a dropped fact that was said after all
    MOVE = "move"  # a fact, or all that is told at the place of a flag, to another visit of its memo
    ADD = "add"  # a fact that was missed
    VISIT = "visit"  # a visit's day or notes
    NEW_VISIT = "new_visit"  # a visit that was missed
    DROP_VISIT = "drop_visit"  # a visit that was none
    RESTORE_VISIT = "restore_visit"  # a dropped visit that was one after all
    ASSIGN = "assign"  # whose visit it was
    LOOK = "look"  # a flag that somebody has looked at
    REREAD = "reread"  # a memo read again, or that taken back
    UNDO = "undo"  # another change taken back


@dataclass(frozen=True)
class Noted:
    """A change that was written: its number, and the revision that its visit has now."""

    change: int
    revision: int


@dataclass(frozen=True)
class NotedFact(Noted):
    """A change that entered a fact: also the fact's number."""

    fact: int


@dataclass(frozen=True)
class NotedVisit(Noted):
    """A change that entered a visit: also the visit's number."""

    visit: int


@dataclass(frozen=True)
class Change:
    """One decision: when, whose, why, and what it was about. ``undoes`` is the change that it took back."""

    id: int
    at: datetime
    who: str
    why: str
    kind: ChangeKind
    memo: int
    visit: int | None = None
    fact: int | None = None
    flag: int | None = None
    undoes: int | None = None


@dataclass(frozen=True)
class About:
    """What a change is about, as row numbers; ``place`` is a character of the memo."""

    memo: int
    visit: int | None = None
    fact: int | None = None
    flag: int | None = None
    undoes: int | None = None
    place: int | None = None


def begin(database: Database, kind: ChangeKind, about: About, at: str) -> int:
    """Write a change under the name that holds the pen, and let the pen name it; returns its number."""
    who, why = database.execute("SELECT who, why FROM pen").fetchone()
    row = {
        "at": at,
        "who": who,
        "why": why,
        "kind": kind.value,
        "memo": about.memo,
        "visit": about.visit,
        "fact": about.fact,
        "flag": about.flag,
        "undoes": about.undoes,
        "place": about.place,
    }
    change = insert_row(database, "changes", row)
    database.execute("UPDATE pen SET change = ?", [change])
    return change


def changed_anything(database: Database, change: int) -> bool:
    """Whether the change wrote a row of history, or entered a fact or a visit."""
    sql = """SELECT EXISTS (SELECT 1 FROM history WHERE change = :change)
             OR EXISTS (SELECT 1 FROM facts WHERE change = :change)
             OR EXISTS (SELECT 1 FROM visits WHERE change = :change)"""
    return bool(database.execute(sql, {"change": change}).fetchone()[0])


def change_of(row: dict[str, Any]) -> Change:
    """The change behind a row of ``changes``."""
    return Change(
        id=row["id"],
        at=datetime.fromisoformat(row["at"]),
        who=row["who"],
        why=row["why"],
        kind=ChangeKind(row["kind"]),
        memo=row["memo"],
        visit=row["visit"],
        fact=row["fact"],
        flag=row["flag"],
        undoes=row["undoes"],
    )


def changes_of_memo(database: Database, memo_id: int) -> list[Change]:
    """The changes of a memo, oldest first."""
    return [change_of(row) for row in database.query("SELECT * FROM changes WHERE memo = ? ORDER BY id", [memo_id])]


def changes_of_visit(database: Database, visit_id: int) -> list[Change]:
    """The changes made in a visit, to its memo, or by moving a fact in or out, oldest first."""
    sql = """SELECT * FROM changes WHERE memo = (SELECT memo FROM visits WHERE id = :visit) AND (
                 visit = :visit OR visit IS NULL
                 OR id IN (SELECT change FROM visits WHERE id = :visit)
                 OR EXISTS (
                     SELECT 1 FROM history WHERE history.change = changes.id AND in_table = 'facts'
                     AND in_column = 'visit' AND :visit IN (old, new)
                 )
             ) ORDER BY id"""
    return [change_of(row) for row in database.query(sql, {"visit": visit_id})]
