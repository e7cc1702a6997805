"""A memo read again: a reading beside the one that stood, with every decision of a person carried over to it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from itertools import islice
from typing import TYPE_CHECKING

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.judging.asked_place import asked_place
from pipeline.keeping import carrying, changes, reading_back, splitting, undoing
from pipeline.keeping.changes import About, ChangeKind
from pipeline.keeping.correcting import heard_columns, next_position
from pipeline.keeping.database import insert_row, update_row
from pipeline.keeping.horses import assign
from pipeline.keeping.raw import Raw, RawRow, raw_of
from pipeline.keeping.rows import (
    Columns,
    fact_columns,
    flag_columns,
    flag_of,
    transcript_of,
    visit_columns,
    words_json,
)
from pipeline.keeping.same_visits import Said, matching_visits, reads_the_same, visits_to_match
from pipeline.record import Flag, FlagKind, MemoRecord, Transcript, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database

# What a person said of a visit and did not take back; version 1 knew no changes, only their history.
_DECIDED = """
SELECT in_row, in_column FROM history LEFT JOIN changes ON changes.id = history.change
WHERE in_table = 'visits' AND in_row IN (SELECT id FROM visits WHERE memo = :memo)
AND (changes.id IS NULL OR changes.kind IN ('visit', 'drop_visit', 'restore_visit'))
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)
UNION
SELECT visit, 'horse' FROM changes WHERE memo = :memo AND kind = 'assign'
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)
UNION
SELECT visits.id, 'horse' FROM visits JOIN changes ON changes.id = visits.change
WHERE visits.memo = :memo AND changes.kind IN ('new_visit', 'move') AND visits.stands = 1
"""
# The visits that a person entered and no reading has heard of; one that came from another store has no change of its
# own, but a horse of which nobody heard the name.
_BY_HAND = """
SELECT visits.id FROM visits LEFT JOIN changes ON changes.id = visits.change
WHERE visits.memo = :memo AND visits.stands = 1 AND visits.horse_heard IS NULL AND (
    changes.kind IN ('new_visit', 'move') OR visits.change IS NULL AND visits.horse IS NOT NULL AND NOT EXISTS (
        SELECT 1 FROM history WHERE in_table = 'visits' AND in_row = visits.id AND in_column = 'horse'
    )
)
"""


_OF_READING = """
SELECT facts.* FROM facts JOIN visits ON visits.id = facts.visit
WHERE visits.memo = ? AND facts.reading = ? ORDER BY facts.id
"""


@dataclass(frozen=True)
class Versions:
    """By what a memo was read: the version of the words, and that of the weights when it was heard again too."""

    vocabulary: str | None
    weights: str | None = None


@dataclass
class Again:
    """A reading in the making."""

    database: Database
    memo: RawRow
    raw: Raw
    number: int
    change: int
    said: Said = field(default_factory=Said)
    raised_in: dict[int, int | None] = field(default_factory=dict)  # the visit of each flag, as it was read

    @property
    def facts(self) -> list[RawRow]:
        """The facts of the reading that stood until now."""
        return [fact for fact in self.raw.facts.values() if fact["reading"] == self.memo["reading"]]

    @property
    def by_hand(self) -> list[RawRow]:
        """The facts that a person entered."""
        return [fact for fact in self.raw.facts.values() if fact["reading"] is None]


def read_again(
    database: Database, memo: RawRow, record: MemoRecord, heard: Transcript | None, by: Versions, at: str
) -> int | None:
    """Put a new reading in place of the one that stands and return its number; None when it reads the same.

    ``heard`` is the wording when the memo was heard again, else None. Nothing is lost: the former reading stays.
    """
    raw = raw_of(database, [memo["id"]])
    if heard is not None and (heard, by.weights) == (transcript_of(memo), memo["weights"]):
        heard = None
    before = carrying.told(database, [fact for fact in raw.facts.values() if fact["reading"] == memo["reading"]])
    said = _said(database, memo["id"], heard or transcript_of(memo))
    raised_in = splitting.flags_as_read(database, raw.flags.values())
    if heard is None and reads_the_same(record, raw, memo["reading"], before, said, raised_in):
        return None
    change = changes.begin(database, ChangeKind.REREAD, About(memo["id"]), at)
    number = _next(database, "readings", memo["id"])
    again = Again(database, memo, raw, number, change, said, raised_in)
    hearing = memo["hearing"] if heard is None else _new_hearing(again, heard, by.weights)
    reading: Columns = {"hearing": hearing, "made_at": at, "vocabulary": by.vocabulary, "change": change}
    insert_row(database, "readings", {"memo": memo["id"], "number": number, **reading})
    found = _write_visits(again, record, before, same_words=heard is None)
    _write_flags(again, None, _memo_flags(again, record, heard))
    _stand(database, memo["id"], number)
    splitting.go_again(database, said.parts, number)
    _part_notes(again, found, (heard or transcript_of(memo)).text)
    _carry(again, before, heard, set(found))
    _let_go(again, set(found))
    return number


def take_back(database: Database, memo: RawRow, at: str) -> int:
    """Let the reading before the present one stand again, with what was decided since; returns its number.

    Raises CorrectionError for a memo that was read once.
    """
    row = _reading(database, memo["id"], memo["reading"])
    if row["change"] is None:
        raise CorrectionError(f"Memo {memo['id']} stands as it was first read; there is nothing to take back.")
    sql = "SELECT old FROM history WHERE change = ? AND in_table = 'memos' AND in_column = 'reading'"
    number = int(database.execute(sql, [row["change"]]).fetchone()[0])
    raw = raw_of(database, [memo["id"]])
    change = changes.begin(database, ChangeKind.UNDO, About(memo["id"], undoes=row["change"]), at)
    again = Again(database, memo, raw, number, change)
    undoing.restore(database, row["change"], only="visits", where_unchanged=True)
    _stand(database, memo["id"], number)
    other = _reading(database, memo["id"], number)["hearing"] != memo["hearing"]
    now = transcript_of(_memo_row(database, memo["id"]))
    splitting.go_again(database, splitting.answered(database, memo["id"], now, since=row["change"]), number)
    words = now if other else None
    into = carrying.Into(number, change)
    former = list(database.query(_OF_READING, [memo["id"], number]))
    carrying.carry(database, _decided_since(again, row["change"]), carrying.told(database, former), words, into)
    for visit in raw.visits.values():
        if visit["change"] == row["change"] and not _held(database, visit["id"], number):
            update_row(database, "visits", visit["id"], {"stands": 0})
    return number


def check_reading(memo: RawRow, seen: int) -> None:
    """Raises StoreConflictError when the memo was read again since."""
    if memo["reading"] != seen:
        raise StoreConflictError(f"Memo {memo['id']} was read again by somebody else meanwhile; nothing was changed.")


def _said(database: Database, memo_id: int, words: Transcript) -> Said:
    """What a person said of the visits of a memo, its parts found in the words that are read now."""
    memo = {"memo": memo_id}
    by_hand = {row["id"] for row in database.query(_BY_HAND, memo)}
    decided = {(row["in_row"], row["in_column"]) for row in database.query(_DECIDED, memo)}
    decided |= {(number, "horse") for number in by_hand}
    return Said(decided, by_hand, splitting.answered(database, memo_id, words))


def _write_visits(
    again: Again, record: MemoRecord, before: Sequence[carrying.Told], same_words: bool
) -> dict[int, str]:
    """Write the new reading's visits, facts and flags; returns the visits that it found, by number, with its notes."""
    rows_before = visits_to_match(again.raw, again.said)
    places = matching_visits(record.visits, rows_before, again.facts, again.said.by_hand)
    # Numbers that no row has, below those of all rows.
    fresh: list[RawRow] = [
        {**fact_columns(fact, -1, 0), "id": -number, "origin": None}
        for number, fact in enumerate((fact for visit in record.visits for fact in visit.facts), start=1)
    ]
    origin = carrying.origins(before, [carrying.Told(row, row) for row in fresh], same_words)
    rows = iter(fresh)
    found = {}
    for visit, row in zip(record.visits, places, strict=True):
        visit_id, doubts = _new_visit(again, visit) if row is None else _same_visit(again, visit, row)
        first = next_position(again.database, again.memo["id"])
        for place, new in enumerate(islice(rows, len(visit.facts)), start=first):
            own = {"visit": visit_id, "position": place, "reading": again.number, "origin": origin.get(new["id"])}
            insert_row(again.database, "facts", {**{k: v for k, v in new.items() if k != "id"}, **own})
        _write_flags(again, visit_id, [*visit.flags, *doubts])
        found[visit_id] = visit.notes
    return found


def _part_notes(again: Again, found: dict[int, str], text: str) -> None:
    """Let the notes of the visits that were taken apart go along, but not those that a person wrote."""
    for visit_id, notes in splitting.notes_apart(text, found, again.said.parts).items():
        if found.get(visit_id) != notes and (visit_id, "notes") not in again.said.decided:
            update_row(again.database, "visits", visit_id, {"notes": notes})


def _new_visit(again: Again, visit: Visit) -> tuple[int, list[Flag]]:
    assignment = assign(again.database, visit, again.memo["id"])
    decided = visit.model_copy(update={"horse_match": assignment.match, "date": _day(again, visit)})
    sql = "SELECT coalesce(max(position), -1) + 1 FROM visits WHERE memo = ?"
    position = int(again.database.execute(sql, [again.memo["id"]]).fetchone()[0])
    columns = visit_columns(decided, again.memo["id"], position, assignment.horse_id)
    doubts = [assignment.flag] if assignment.flag else []
    return insert_row(again.database, "visits", {**columns, "change": again.change}), doubts


def _same_visit(again: Again, visit: Visit, row: RawRow) -> tuple[int, list[Flag]]:
    """Write into a visit what is heard of it now; its day stays, and so does whatever a person said of it."""
    columns: Columns = heard_columns(visit.horse)
    doubts: list[Flag] = []
    if (row["id"], "horse") not in again.said.decided:
        assignment = assign(again.database, visit, again.memo["id"])
        columns |= {"horse": assignment.horse_id, "horse_match": assignment.match.value}
        doubts = [assignment.flag] if assignment.flag else []
    if (row["id"], "notes") not in again.said.decided:
        columns["notes"] = visit.notes
    update_row(again.database, "visits", row["id"], columns)
    return row["id"], doubts


def _day(again: Again, visit: Visit) -> date:
    days = [row["date"] for row in again.raw.visits.values()]
    return date.fromisoformat(days[0]) if days else visit.date


def _memo_flags(again: Again, record: MemoRecord, heard: Transcript | None) -> list[Flag]:
    """The doubts about the whole memo: those of the hearing stay with it, those of the day with the memo."""
    old = [
        flag_of(row)
        for row in again.raw.flags.values()
        if row["visit"] is None and row["reading"] == again.memo["reading"]
    ]
    if heard is None:
        return old
    return [flag for flag in old if flag.kind is FlagKind.DATE] + [
        f for f in record.flags if f.kind is not FlagKind.DATE
    ]


def _write_flags(again: Again, visit_id: int | None, flags: Sequence[Flag]) -> None:
    settled = [row for row in again.raw.flags.values() if row["settled"] and row["reading"] == again.memo["reading"]]
    for position, flag in enumerate(flags):
        columns = {**flag_columns(flag, again.memo["id"], visit_id, position), "reading": again.number}
        of_visit = flag.kind is FlagKind.HORSE and asked_place(flag.reason) is None
        answered = of_visit and (visit_id, "horse") in again.said.decided
        looked_at = any(
            (again.raised_in[row["id"]], row["kind"], row["quote"], row["reason"])
            == (columns["visit"], columns["kind"], columns["quote"], columns["reason"])
            for row in settled
        )
        insert_row(again.database, "flags", {**columns, "settled": int(answered or looked_at)})


def _carry(again: Again, before: Sequence[carrying.Told], heard: Transcript | None, found: set[int]) -> None:
    new = list(again.database.query(_OF_READING, [again.memo["id"], again.number]))
    carrying.set_aside_doubles(again.database, again.by_hand, new)
    into = carrying.Into(again.number, again.change, frozenset(again.said.by_hand - found))
    carrying.carry(again.database, before, carrying.told(again.database, new), heard, into)


def _decided_since(again: Again, change: int) -> list[carrying.Told]:
    """The facts of the reading that is taken back about which a person decided something after it was made."""
    numbers = [fact["id"] for fact in again.facts]
    entries = reading_back.history_of_rows(again.database, "facts", numbers)
    later = {entry.row for entry in entries if entry.change != change}
    return carrying.told(again.database, [fact for fact in again.facts if fact["id"] in later])


def _let_go(again: Again, found: set[int]) -> None:
    """A visit that is no longer found stands no more, unless a person put something into it."""
    for visit in again.raw.visits.values():
        spoken_of = any(row == visit["id"] for row, _ in again.said.decided)
        if visit["id"] in found or spoken_of or not visit["stands"]:
            continue
        if not _held(again.database, visit["id"], again.number):
            update_row(again.database, "visits", visit["id"], {"stands": 0})


def _held(database: Database, visit_id: int, reading: int) -> bool:
    sql = "SELECT 1 FROM facts WHERE visit = ? AND stands = 1 AND (reading IS NULL OR reading = ?)"
    return database.execute(sql, [visit_id, reading]).fetchone() is not None


def _new_hearing(again: Again, heard: Transcript, weights: str | None) -> int:
    """Keep the wording beside the one until now, and return its number."""
    memo, database = again.memo, again.database
    old: Columns = {"transcript": memo["transcript"], "words": memo["words"], "weights": memo["weights"]}
    new: Columns = {"transcript": heard.text, "words": words_json(heard), "weights": weights}
    if database.execute("SELECT 1 FROM hearings WHERE memo = ?", [memo["id"]]).fetchone() is None:
        insert_row(database, "hearings", {"memo": memo["id"], "number": memo["hearing"], **old})
    sql = "SELECT number FROM hearings WHERE memo = ? AND transcript = ? AND words = ? AND weights IS ?"
    before = database.execute(sql, [memo["id"], *new.values()]).fetchone()
    if before is not None:
        return int(before[0])
    number = _next(database, "hearings", memo["id"])
    insert_row(database, "hearings", {"memo": memo["id"], "number": number, **new})
    return number


def _stand(database: Database, memo_id: int, number: int) -> None:
    """Let a reading stand: the memo takes its wording and its versions."""
    reading = _reading(database, memo_id, number)
    columns: Columns = {"reading": number, "hearing": reading["hearing"], "vocabulary": reading["vocabulary"]}
    sql = "SELECT transcript, words, weights FROM hearings WHERE memo = ? AND number = ?"
    hearing = next(iter(database.query(sql, [memo_id, reading["hearing"]])), {})
    update_row(database, "memos", memo_id, {**columns, **hearing})


def _reading(database: Database, memo_id: int, number: int) -> RawRow:
    sql = "SELECT * FROM readings WHERE memo = ? AND number = ?"
    return next(iter(database.query(sql, [memo_id, number])))


def _memo_row(database: Database, memo_id: int) -> RawRow:
    return next(iter(database.query("SELECT * FROM memos WHERE id = ?", [memo_id])))


def _next(database: Database, table: str, memo_id: int) -> int:
    return int(database.execute(f"SELECT max(number) + 1 FROM {table} WHERE memo = ?", [memo_id]).fetchone()[0])
