"""Decisions of one review, taken together: one statement may stand on four feet, and is settled on all or none."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.keeping import changes, correcting, horses, reading_back, splitting, undoing
from pipeline.keeping.changes import About, Change, ChangeKind
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.database import plain_errors, update_row
from pipeline.keeping.kept import KeptHorse
from pipeline.keeping.lessons import LessonStep, WordLesson, write_lesson
from pipeline.keeping.opened import OpenedStore, login_name
from pipeline.keeping.rows import transcript_of
from pipeline.record import Fact, RosterHorse

if TYPE_CHECKING:
    from sqlite_utils import Database

    from pipeline.keeping.raw import RawRow


@dataclass(frozen=True)
class AcceptFact:
    """The fact is right as it stands."""

    fact: int


@dataclass(frozen=True)
class CorrectFact:
    """The fact is right with these fields instead."""

    fact: int
    fields: FactFields


@dataclass(frozen=True)
class DropFact:
    """The fact was not said."""

    fact: int


@dataclass(frozen=True)
class MoveFact:
    """The fact belongs to another horse: to its visit in the same memo, opened if there is none yet."""

    fact: int
    horse: KeptHorse


@dataclass(frozen=True)
class AddFact:
    """A fact that was missed."""

    said: Fact


@dataclass(frozen=True)
class AssignHorse:
    """Whose visit it was."""

    horse: KeptHorse


@dataclass(frozen=True)
class AssignNewHorse:
    """It was the visit of a horse that joins the roster with this."""

    horse: RosterHorse


@dataclass(frozen=True)
class SplitVisit:
    """What is told at the place that a flag asks about belongs to another horse, on the roster or new to it: to its
    visit in the same memo, opened if there is none yet. ``start`` is the character at which it comes in, if later."""

    flag: int
    horse: KeptHorse | RosterHorse
    start: int | None = None


@dataclass(frozen=True)
class SameHorse:
    """What is told at the place that a flag asks about is the same horse's."""

    flag: int


@dataclass(frozen=True)
class SetDay:
    """The day of all visits of the memo."""

    day: date


@dataclass(frozen=True)
class LookedAt:
    """A flag that no fact carries was looked at."""

    flag: int


Decision = (
    AcceptFact
    | CorrectFact
    | DropFact
    | MoveFact
    | AddFact
    | AssignHorse
    | AssignNewHorse
    | SplitVisit
    | SameHorse
    | SetDay
    | LookedAt
)


class Deciding(OpenedStore):
    """Several changes as one action of a person: one transaction, one moment, taken back together."""

    def decide(
        self,
        visit_id: int,
        decisions: Sequence[Decision],
        *,
        seen: int,
        who: str | None = None,
        why: str = "reviewed",
        shows: WordLesson | None = None,
    ) -> int:
        """Write all decisions about one visit, or none; returns the visit's revision then.

        ``seen`` is the revision of the visit that he had before him, ``shows`` a mishearing that is seen in them.
        Raises StoreConflictError when the visit was changed since, CorrectionError for what no record can hold,
        NotFoundError for a row that is not there.
        """
        at = datetime.now(UTC).isoformat(timespec="microseconds")  # one moment: what is taken back together
        with self._writing(who, why):
            row = reading_back.visit_row(self._database, visit_id)
            if row["revision"] != seen:
                raise StoreConflictError(
                    f"Visit {visit_id} was changed by somebody else since it was looked at; here it is as it is now."
                )
            for decision in decisions:
                _write(self._database, row, decision, at)
            if shows is not None:
                change = self._database.execute("SELECT change FROM pen").fetchone()[0]
                write_lesson(self._database, shows, LessonStep.SEEN, change)
            return int(reading_back.visit_row(self._database, visit_id)["revision"])

    def undo_action(self, *, who: str | None = None, why: str = "taken back") -> list[Change]:
        """Take back the last action of this hand, all its changes together; returns them, newest first.

        Raises CorrectionError when there is none, StoreConflictError when somebody has built upon it since.
        """
        with self._writing(who, why):
            count = _last_action(self._database)
            return undoing.take_back(self._database, count, None, datetime.now(UTC).isoformat(timespec="microseconds"))

    def last_action(self, *, who: str | None = None) -> list[Change]:
        """The changes of the last action of this hand that still stands, newest first; [] when there is none."""
        sql = f"SELECT * FROM changes WHERE {_STANDING} ORDER BY id DESC LIMIT 50"
        with plain_errors(self.folder):
            rows = list(self._database.query(sql, {"who": who or login_name()}))
        return [changes.change_of(row) for row in rows if (row["at"], row["memo"]) == (rows[0]["at"], rows[0]["memo"])]


_STANDING = """who = :who AND kind NOT IN ('undo', 'reread')
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)"""


def _last_action(database: Database) -> int:
    who = database.execute("SELECT who FROM pen").fetchone()[0]
    sql = f"SELECT at, memo FROM changes WHERE {_STANDING} ORDER BY id DESC LIMIT 500"
    rows = database.execute(sql, {"who": who}).fetchall()
    if rows and "." not in rows[0][0]:  # a single change: its moment is told to the second and may be another's too
        return 1
    return next((number for number, row in enumerate(rows) if row != rows[0]), len(rows)) or 1


def _write(database: Database, visit: RawRow, decision: Decision, at: str) -> None:
    if isinstance(decision, SplitVisit | SameHorse):
        _take_apart(database, visit, decision, at)
        return
    if isinstance(decision, MoveFact) and splitting.visit_at(database, visit["memo"], decision.horse.id) is None:
        opened = changes.begin(database, ChangeKind.NEW_VISIT, About(visit["memo"], visit["id"]), at)
        correcting.enter_visit(database, visit["memo"], decision.horse.id, date.fromisoformat(visit["date"]), opened)
    if isinstance(decision, AssignNewHorse):  # before the change begins: taken back, the horse stays on the roster
        decision = AssignHorse(KeptHorse(horses.add_one(database, decision.horse), decision.horse))
    if isinstance(decision, LookedAt) and correcting.flag_row(database, decision.flag)["settled"]:
        return  # naming the horse has answered it a moment ago, in this same action
    kind, about = _about(visit, decision)
    change = changes.begin(database, kind, about, at)
    _WRITERS[type(decision)](database, visit, decision, change)
    # Whose visit it was may be confirmed: a later reading keeps it then.
    if not isinstance(decision, AssignHorse) and not changes.changed_anything(database, change):
        raise CorrectionError("Nothing changes by this: it stands like that already.")


def _take_apart(database: Database, visit: RawRow, decision: SplitVisit | SameHorse, at: str) -> None:
    if isinstance(decision, SameHorse):
        splitting.same_horse(database, visit, decision.flag, at)
        return
    horse = decision.horse  # a new one joins before the change begins: taken back, it stays on the roster
    number = horse.id if isinstance(horse, KeptHorse) else horses.add_one(database, horse)
    splitting.split(database, visit, splitting.Whose(decision.flag, number, decision.start), at)


def _about(visit: RawRow, decision: Decision) -> tuple[ChangeKind, About]:
    fact = getattr(decision, "fact", None)
    flag = getattr(decision, "flag", None)
    return _KINDS[type(decision)], About(visit["memo"], visit["id"], fact, flag)


def _standing(database: Database, visit: RawRow, fact_id: int) -> RawRow:
    row = correcting.fact_row(database, fact_id)
    if row["visit"] != visit["id"] or not row["stands"]:
        raise CorrectionError(f"Fact {fact_id} does not stand in visit {visit['id']}.")
    return row


def _accept(database: Database, visit: RawRow, decision: AcceptFact, change: int) -> None:
    correcting.settle_fact(database, _standing(database, visit, decision.fact), {})


def _correct(database: Database, visit: RawRow, decision: CorrectFact, change: int) -> None:
    correcting.settle_fact(database, _standing(database, visit, decision.fact), decision.fields)


def _drop(database: Database, visit: RawRow, decision: DropFact, change: int) -> None:
    correcting.drop_fact(database, _standing(database, visit, decision.fact))


def _move(database: Database, visit: RawRow, decision: MoveFact, change: int) -> None:
    there = splitting.visit_at(database, visit["memo"], decision.horse.id)
    if there is not None:
        correcting.move_fact(database, _standing(database, visit, decision.fact), there)


def _add(database: Database, visit: RawRow, decision: AddFact, change: int) -> None:
    memo = reading_back.memo_row(database, int(visit["memo"]))
    if memo is not None:
        correcting.enter_fact(database, decision.said, visit, transcript_of(memo), change)


def _assign(database: Database, visit: RawRow, decision: AssignHorse, change: int) -> None:
    correcting.assign_visit(database, visit["id"], decision.horse.id)


def _set_day(database: Database, visit: RawRow, decision: SetDay, change: int) -> None:
    for row in list(database.query("SELECT id FROM visits WHERE memo = ? AND stands = 1", [visit["memo"]])):
        update_row(database, "visits", row["id"], {"date": decision.day.isoformat()})


def _look(database: Database, visit: RawRow, decision: LookedAt, change: int) -> None:
    flag = correcting.flag_row(database, decision.flag)
    if flag["memo"] != visit["memo"] or flag["visit"] not in (None, visit["id"]):
        raise CorrectionError(f"Flag {decision.flag} does not belong to visit {visit['id']}.")
    update_row(database, "flags", decision.flag, {"settled": 1})


_Writer = Callable[..., None]
_WRITERS: dict[type, _Writer] = {
    AcceptFact: _accept,
    CorrectFact: _correct,
    DropFact: _drop,
    MoveFact: _move,
    AddFact: _add,
    AssignHorse: _assign,
    SetDay: _set_day,
    LookedAt: _look,
}
_KINDS: dict[type, ChangeKind] = {
    AcceptFact: ChangeKind.ACCEPT,
    CorrectFact: ChangeKind.CORRECT,
    DropFact: ChangeKind.DROP,
    MoveFact: ChangeKind.MOVE,
    AddFact: ChangeKind.ADD,
    AssignHorse: ChangeKind.ASSIGN,
    SetDay: ChangeKind.VISIT,
    LookedAt: ChangeKind.LOOK,
}
