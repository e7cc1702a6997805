"""Readings: a kept memo read again, beside what was read before."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from pipeline.errors import CorrectionError, NotFoundError
from pipeline.keeping import forgetting, opened, reading_back, rereading
from pipeline.keeping.database import plain_errors
from pipeline.keeping.opened import OpenedStore
from pipeline.keeping.raw import RawRow
from pipeline.keeping.reading_out import memos_in_part
from pipeline.keeping.rereading import Versions
from pipeline.record import MemoRecord, Transcript


@dataclass(frozen=True)
class Reading:
    """One reading of a memo: its number from 1, when it was made, by which words, and in which wording."""

    number: int
    made_at: datetime
    vocabulary: str | None
    hearing: int
    stands: bool


class Readings(OpenedStore):
    """Reading kept memos again. After any error the store is as it was."""

    def read_again(
        self,
        memo_id: int,
        record: MemoRecord,
        *,
        seen: int,
        vocabulary: str | None,
        heard: Transcript | None = None,
        weights: str | None = None,
        who: str | None = None,
        why: str = "read again",
    ) -> int | None:
        """Let a new reading of a memo stand; returns its number, or None when it says what the present one says.

        ``record`` is what was read now. ``heard`` and ``weights`` are given when the sound was heard again. What a
        person decided is carried over: he keeps what he confirmed, corrected, dropped or entered, and what he stands
        for and the new reading does not find stands with a flag. ``seen`` is the number of the reading that stood
        when this one was begun; StoreConflictError when another one does by now. NotFoundError for an unknown memo,
        CorrectionError for one of which a horse was removed, because its words would bring it back, and for one that
        came from another store without its words.
        """
        with self._writing(who, why):
            memo = self._memo_row(memo_id)
            if forgetting.is_partly_forgotten(self._database, memo_id):
                raise CorrectionError(
                    f"A horse was removed for good from memo {memo_id}; reading it again would bring it back."
                )
            if memo_id in memos_in_part(self._database):
                raise CorrectionError(
                    f"Memo {memo_id} came from another store in part, without its words; it cannot be read again."
                )
            rereading.check_reading(memo, seen)
            by = Versions(vocabulary, weights)
            return rereading.read_again(self._database, memo, record, heard, by, opened.now())

    def take_reading_back(self, memo_id: int, *, who: str | None = None, why: str = "reading taken back") -> int:
        """Let the reading before the present one stand again, with what was decided since; returns its number.

        Raises NotFoundError for an unknown memo and CorrectionError for one that was read once.
        """
        with self._writing(who, why):
            return rereading.take_back(self._database, self._memo_row(memo_id), opened.now())

    def readings(self, memo_id: int) -> list[Reading]:
        """The readings of a memo, oldest first; NotFoundError for an unknown memo."""
        with plain_errors(self.folder):
            stands = self._memo_row(memo_id)["reading"]
            rows = self._database.query("SELECT * FROM readings WHERE memo = ? ORDER BY number", [memo_id])
            return [
                Reading(
                    number=row["number"],
                    made_at=datetime.fromisoformat(row["made_at"]),
                    vocabulary=row["vocabulary"],
                    hearing=row["hearing"],
                    stands=row["number"] == stands,
                )
                for row in rows
            ]

    def not_to_read(self) -> set[int]:
        """The memos that are not read again: a horse was removed from them, or they came without their words."""
        with plain_errors(self.folder):
            return forgetting.partly_forgotten(self._database) | memos_in_part(self._database)

    def memo_numbers(self) -> list[int]:
        """The numbers of all memos, in the order in which they were kept."""
        with plain_errors(self.folder):
            return [row["id"] for row in self._database.query("SELECT id FROM memos ORDER BY id")]

    def memo_number(self, named: str) -> int:
        """The number of the memo that a person names by its number or by its file's name.

        Raises NotFoundError when there is none, or several files of that name.
        """
        with plain_errors(self.folder):
            if named.isdecimal() and reading_back.memo_row(self._database, int(named)):
                return int(named)
            sql = "SELECT id FROM memos WHERE file_name = ? ORDER BY id"
            ids = [row["id"] for row in self._database.query(sql, [named])]
        if len(ids) > 1:
            numbers = ", ".join(str(number) for number in ids)
            raise NotFoundError(f"{len(ids)} memos are called {named}; say which number: {numbers}.")
        if not ids:
            raise NotFoundError(f"There is no memo {named} in the store.")
        return int(ids[0])

    def _memo_row(self, memo_id: int) -> RawRow:
        row = reading_back.memo_row(self._database, memo_id)
        if row is None:
            raise NotFoundError(f"There is no memo {memo_id} in the store.")
        return row
