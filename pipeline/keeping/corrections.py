"""Corrections by a person: each one transaction under his name, in history, and never over what he has not seen."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from typing import TYPE_CHECKING

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.keeping import changes, correcting, opened, reading_back, undoing
from pipeline.keeping.changes import About, Change, ChangeKind, Noted, NotedFact, NotedVisit
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.database import plain_errors, update_row
from pipeline.keeping.kept import KeptHorse
from pipeline.keeping.names import keepable
from pipeline.keeping.opened import OpenedStore
from pipeline.keeping.rows import Columns, transcript_of
from pipeline.record import Fact

if TYPE_CHECKING:
    from pipeline.keeping.raw import RawRow


class Corrections(OpenedStore):
    """What a person may change.

    ``seen`` is the revision of the visit that he had before him. When somebody changed the visit since, the call
    raises StoreConflictError and changes nothing: look again, then decide. ``who`` is the login name unless given.
    Every method also raises NotFoundError for a row that is not there, CorrectionError for what no record can hold
    and for a change that changes nothing, and StoreError; after any error the store is as it was.
    """

    def correct(
        self, fact_id: int, fields: FactFields, *, seen: int, who: str | None = None, why: str = "corrected"
    ) -> Noted:
        """Set fields of a fact; whoever corrects a fact stands for the whole of it, so that its flag is gone."""
        if not fields:
            raise CorrectionError("A correction must say what is right instead.")
        with self._changing_fact(ChangeKind.CORRECT, fact_id, seen, who, why) as (change, row):
            correcting.settle_fact(self._database, row, fields)
            return self._noted(change, row["visit"])

    def accept(self, fact_id: int, *, seen: int, who: str | None = None, why: str = "confirmed") -> Noted:
        """Confirm a fact as it stands: its flag is gone, and a later reading keeps it."""
        with self._changing_fact(ChangeKind.ACCEPT, fact_id, seen, who, why) as (change, row):
            correcting.settle_fact(self._database, row, {})
            return self._noted(change, row["visit"])

    def drop(self, fact_id: int, *, seen: int, who: str | None = None, why: str = "not said") -> Noted:
        """Say that a fact was not said: it is kept, and stands no more."""
        with self._changing_fact(ChangeKind.DROP, fact_id, seen, who, why) as (change, row):
            correcting.drop_fact(self._database, row)
            return self._noted(change, row["visit"])

    def restore(self, fact_id: int, *, seen: int, who: str | None = None, why: str = "said after all") -> Noted:
        """Let a dropped fact stand again."""
        with self._changing_fact(ChangeKind.RESTORE, fact_id, seen, who, why, standing=False) as (change, row):
            correcting.restore_fact(self._database, row)
            return self._noted(change, row["visit"])

    def move(
        self,
        fact_id: int,
        visit_id: int,
        *,
        seen: int,
        seen_there: int | None = None,
        who: str | None = None,
        why: str = "of another horse",
    ) -> Noted:
        """Move a fact to another visit of its memo; ``seen_there`` is that visit's revision. Returns the former's."""
        with self._changing_fact(ChangeKind.MOVE, fact_id, seen, who, why) as (change, row):
            there = reading_back.visit_row(self._database, visit_id)
            _check_seen(there, seen_there)
            correcting.move_fact(self._database, row, there)
            return self._noted(change, row["visit"])

    def add_fact(
        self, visit_id: int, fact: Fact, *, seen: int, who: str | None = None, why: str = "missed"
    ) -> NotedFact:
        """Add a fact that was missed, marked as entered by hand.

        Its ``quote`` or its ``span`` may name the words of the memo that it stands in; seconds follow from them.
        """
        with self._changing(ChangeKind.ADD, visit_id, seen, who, why) as (change, row):
            memo = reading_back.memo_row(self._database, int(row["memo"]))
            if memo is None:
                raise CorrectionError(f"Visit {visit_id} has no memo.")
            fact_id = correcting.enter_fact(self._database, fact, row, transcript_of(memo), change)
            noted = self._noted(change, visit_id)
            return NotedFact(noted.change, noted.revision, fact_id)

    def add_visit(
        self, visit_id: int, horse: KeptHorse, *, seen: int, who: str | None = None, why: str = "missed"
    ) -> NotedVisit:
        """Add a visit at another horse to the memo of ``visit_id``, on the same day; facts are moved to it then.

        Returns the new visit's revision and number.
        """
        with self._changing(ChangeKind.NEW_VISIT, visit_id, seen, who, why) as (change, row):
            day = date.fromisoformat(row["date"])
            added = correcting.enter_visit(self._database, row["memo"], horse.id, day, change)
            noted = self._noted(change, added)
            return NotedVisit(noted.change, noted.revision, added)

    def correct_visit(
        self,
        visit_id: int,
        *,
        seen: int,
        day: date | None = None,
        notes: str | None = None,
        who: str | None = None,
        why: str = "corrected",
    ) -> Noted:
        """Set a visit's day, its notes, or both; None leaves it as it is."""
        columns: Columns = {}
        if day is not None:
            columns["date"] = day.isoformat()
        if notes is not None:
            columns["notes"] = keepable(notes)
        if not columns:
            raise CorrectionError("A correction must say what is right instead.")
        with self._changing(ChangeKind.VISIT, visit_id, seen, who, why) as (change, _):
            update_row(self._database, "visits", visit_id, columns)
            return self._noted(change, visit_id)

    def drop_visit(self, visit_id: int, *, seen: int, who: str | None = None, why: str = "no visit") -> Noted:
        """Say that there was no such visit: it is kept with all its facts, and stands no more."""
        with self._changing(ChangeKind.DROP_VISIT, visit_id, seen, who, why) as (change, _):
            update_row(self._database, "visits", visit_id, {"stands": 0})
            return self._noted(change, visit_id)

    def restore_visit(
        self, visit_id: int, *, seen: int, who: str | None = None, why: str = "a visit after all"
    ) -> Noted:
        """Let a dropped visit stand again."""
        with self._changing(ChangeKind.RESTORE_VISIT, visit_id, seen, who, why) as (change, _):
            update_row(self._database, "visits", visit_id, {"stands": 1})
            return self._noted(change, visit_id)

    def assign(
        self,
        visit_id: int,
        horse: KeptHorse,
        *,
        seen: int | None = None,
        who: str | None = None,
        why: str = "assigned by hand",
    ) -> Noted:
        """Say whose visit it was, or confirm it; that answers its flags about the horse, and a later reading keeps it.

        Without ``seen`` it is said of any state.
        """
        with self._changing(ChangeKind.ASSIGN, visit_id, seen, who, why, may_confirm=True) as (change, _):
            correcting.assign_visit(self._database, visit_id, horse.id)
            return self._noted(change, visit_id)

    def settle_flag(
        self, flag_id: int, visit_id: int, *, seen: int, who: str | None = None, why: str = "looked at"
    ) -> Noted:
        """Say that a flag which no fact carries has been looked at; ``visit_id`` is where it was seen.

        A flag about the whole memo is seen with any of the memo's visits, and gone from all of them.
        """
        with plain_errors(self.folder):
            correcting.flag_row(self._database, flag_id)
        with self._changing(ChangeKind.LOOK, visit_id, seen, who, why, flag=flag_id) as (change, row):
            flag = correcting.flag_row(self._database, flag_id)
            if flag["memo"] != row["memo"] or flag["visit"] not in (None, visit_id):
                raise CorrectionError(f"Flag {flag_id} does not belong to visit {visit_id}.")
            update_row(self._database, "flags", flag_id, {"settled": 1})
            return self._noted(change, visit_id)

    def undo(
        self, count: int = 1, *, visit_id: int | None = None, who: str | None = None, why: str = "taken back"
    ) -> list[Change]:
        """Take back the last changes of this hand, newest first, at most ``count``; returns what was taken back.

        ``visit_id`` leaves the other memos alone. What was done is never erased: taking back is written down too.
        A change that somebody has built upon since raises StoreConflictError, and nothing is taken back.
        """
        with self._writing(who, why):
            return undoing.take_back(self._database, count, visit_id, opened.now())

    @contextmanager
    def _changing(
        self,
        kind: ChangeKind,
        visit_id: int,
        seen: int | None,
        who: str | None,
        why: str,
        *,
        fact: int | None = None,
        flag: int | None = None,
        may_confirm: bool = False,
    ) -> Iterator[tuple[int, RawRow]]:
        with self._writing(who, why):
            row = reading_back.visit_row(self._database, visit_id)
            _check_seen(row, seen)
            about = About(row["memo"], visit_id, fact, flag)
            change = changes.begin(self._database, kind, about, opened.now())
            yield change, row
            if not may_confirm and not changes.changed_anything(self._database, change):
                raise CorrectionError("Nothing changes by this: it stands like that already.")

    @contextmanager
    def _changing_fact(
        self, kind: ChangeKind, fact_id: int, seen: int, who: str | None, why: str, standing: bool = True
    ) -> Iterator[tuple[int, RawRow]]:
        with plain_errors(self.folder):
            row = correcting.fact_row(self._database, fact_id)
        with self._changing(kind, row["visit"], seen, who, why, fact=fact_id) as (change, _):
            row = correcting.fact_row(self._database, fact_id)  # as it is now that nobody else can write
            if bool(row["stands"]) is not standing:
                state = "dropped" if standing else "standing"
                raise CorrectionError(f"Fact {fact_id} is {state} already.")
            yield change, row

    def _noted(self, change: int, visit_id: int) -> Noted:
        return Noted(change, int(reading_back.visit_row(self._database, visit_id)["revision"]))


def _check_seen(visit: RawRow, seen: int | None) -> None:
    if seen is not None and visit["revision"] != seen:
        raise StoreConflictError(
            f"Visit {visit['id']} was changed by somebody else since it was looked at; look again before changing it."
        )
