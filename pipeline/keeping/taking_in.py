"""A record of another store, written into this one inside the caller's transaction: all of it or nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import RecordError
from pipeline.keeping import reading_back, waiting
from pipeline.keeping.database import insert_row
from pipeline.keeping.meeting_horses import Meeting
from pipeline.keeping.originals import original_name
from pipeline.keeping.reading_out import IN_PART, TAKEN_IN
from pipeline.keeping.record_file import ChangeOnFile, MemoOnFile, RecordFile, VisitOnFile
from pipeline.keeping.rows import Columns, fact_columns, flag_columns, memo_columns, visit_columns
from pipeline.record import MemoRecord, Transcript, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database

_TABLES = {"memo": "memos", "horse": "horses", "visit": "visits", "fact": "facts"}
WITH_SOUND, WITHOUT_SOUND = "with its recording", "without its recording"


@dataclass(frozen=True)
class Taken:
    """How many horses, memos and visits a record added to the store."""

    horses: int
    memos: int
    visits: int


class TakingIn:
    """Writes one record; ``why`` names where it came from and ``at`` is the present moment in ISO 8601."""

    def __init__(self, database: Database, file: RecordFile, meeting: Meeting, who: str, why: str, at: str) -> None:
        self.database = database
        self.file = file
        self.meeting = meeting
        self.who, self.why, self.at = who, why, at
        # The rows of what was new: only their history comes along.
        self.new: dict[tuple[str, int | None, int | None, int | None], int] = {}

    def write(self, sounds: Sequence[str | None]) -> Taken:
        """Write all of it; ``sounds`` are the memos' stored recordings, None where none came along.

        Raises RecordError when a memo or a visit is kept already and says something else, and for a horse in doubt.
        """
        with_sounds = zip(self.file.memos, sounds, strict=True)
        memos = [self._memo(number, memo, sound) for number, (memo, sound) in enumerate(with_sounds)]
        by_hash = {memo.memo.sha256 or "": row for memo, row in zip(self.file.memos, memos, strict=True)}
        horses = self.meeting.meet(self.file.horses, by_hash)
        for number, horse in enumerate(horses):
            if horse.new:
                self.new["horse", None, None, number] = horse.row
        for number, (memo, row) in enumerate(zip(self.file.memos, memos, strict=True)):
            for place, visit in enumerate(memo.visits):
                self._visit(number, place, visit, row, [horse.row for horse in horses])
        self._history([horse.row for horse in horses])
        kinds = [key[0] for key in self.new]
        return Taken(kinds.count("horse"), kinds.count("memo"), kinds.count("visit"))

    def _memo(self, number: int, memo: MemoOnFile, sound: str | None) -> int:
        sha256 = memo.memo.sha256 or ""
        known = reading_back.memo_row(self.database, sha256)
        if known is not None:
            if memo.whole and known["transcript"] and known["transcript"] != memo.transcript:
                raise RecordError(f"The memo {_name(memo)} is kept already with other words; nothing was taken in.")
            return int(known["id"])
        record = MemoRecord(id=memo.id, memo=memo.memo, transcript=memo.transcript)
        stored = sound or original_name(sha256, _name(memo))
        row = memo_columns(record, Transcript(text=memo.transcript, words=memo.words), _name(memo), stored)
        versions = {"weights": memo.weights, "vocabulary": memo.vocabulary, "kept_at": memo.kept_at.isoformat()}
        memo_id = insert_row(self.database, "memos", {**row, **versions})
        for place, flag in enumerate(memo.flags):
            insert_row(self.database, "flags", flag_columns(flag, memo_id, None, place))
        self.new["memo", number, None, None] = memo_id
        waiting.take_off(self.database, sha256)
        how = ("" if memo.whole else IN_PART) + (WITH_SOUND if sound else WITHOUT_SOUND)
        self._write_down("memos", memo_id, TAKEN_IN, None, how)
        return memo_id

    def _visit(self, number: int, place: int, on_file: VisitOnFile, memo_id: int, horses: Sequence[int]) -> None:
        horse_id = None if on_file.of_horse is None else horses[on_file.of_horse]
        visit = as_visit(on_file)
        sql = "SELECT id FROM visits WHERE memo = ? AND position = ?"
        known = self.database.execute(sql, [memo_id, on_file.position]).fetchone()
        if known is not None:
            self._must_be_same(int(known[0]), visit, horse_id)
            return
        heard = visit.model_copy(update={"horse": on_file.heard_as})
        columns = visit_columns(heard, memo_id, on_file.position, horse_id)
        visit_id = insert_row(self.database, "visits", columns)
        self.new["visit", number, place, None] = visit_id
        for which, fact in enumerate(visit.facts):
            self.new["fact", number, place, which] = insert_row(
                self.database, "facts", fact_columns(fact, visit_id, which)
            )
        for which, flag in enumerate(visit.flags):
            insert_row(self.database, "flags", flag_columns(flag, memo_id, visit_id, which))

    def _must_be_same(self, visit_id: int, visit: Visit, horse_id: int | None) -> None:
        kept = reading_back.visit(self.database, Path(), visit_id)
        same = kept.visit.model_copy(update={"horse": visit.horse}) == visit
        if not same or (kept.horse.id if kept.horse else None) != horse_id:
            whose = visit.horse or "a horse without a name"
            raise RecordError(
                f"The visit of {visit.date.isoformat()} at {whose} is kept already (visit {visit_id}) and says "
                "something else; nothing was taken in."
            )

    def _history(self, horses: Sequence[int]) -> None:
        for change in self.file.history:
            last = change.horse if change.what == "horse" else change.fact
            row = self.new.get((change.what, change.memo, change.visit, last))
            if row is not None:
                self._write_change(change, row, horses)

    def _write_change(self, change: ChangeOnFile, row: int, horses: Sequence[int]) -> None:
        old, new = change.old, change.new
        if change.what == "visit" and change.column == "horse":
            old, new = _horse_row(old, horses), _horse_row(new, horses)
        columns: Columns = {
            "at": change.at.strftime("%Y-%m-%dT%H:%M:%SZ"),
            "who": change.who,
            "in_table": _TABLES[change.what],
            "in_row": row,
            "in_column": change.column,
            "old": old,
            "new": new,
            "why": change.why,
        }
        insert_row(self.database, "history", columns)

    def _write_down(self, table: str, row: int, column: str, old: str | None, new: str) -> None:
        columns: Columns = {
            "at": self.at, "who": self.who, "in_table": table, "in_row": row, "in_column": column,
            "old": old, "new": new, "why": self.why,
        }  # fmt: skip
        insert_row(self.database, "history", columns)


def as_visit(on_file: VisitOnFile) -> Visit:
    """The contract's visit of a visit on file."""
    return Visit.model_validate(on_file.model_dump(exclude={"of_horse", "position", "heard_as"}))


def _name(memo: MemoOnFile) -> str:
    return memo.memo.path or "memo"


def _horse_row(place: str | float | None, horses: Sequence[int]) -> int | None:
    return horses[int(place)] if isinstance(place, int | float) and 0 <= int(place) < len(horses) else None
