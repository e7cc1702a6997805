"""The store as the rest of the project sees it."""

from __future__ import annotations

import logging
from collections.abc import Sequence
from contextlib import suppress
from datetime import date
from pathlib import Path
from types import TracebackType
from typing import Self

from pipeline.errors import FileMissingError, StoreError
from pipeline.judging.earlier import LastVisit
from pipeline.keeping import (
    before,
    changes,
    health,
    horses,
    looking,
    opened,
    reading_back,
    reading_out,
    waiting,
    writing_down,
)
from pipeline.keeping.changes import Change
from pipeline.keeping.corrections import Corrections
from pipeline.keeping.database import check_in_place, open_database, plain_errors, writing
from pipeline.keeping.days import Days
from pipeline.keeping.deciding import Deciding
from pipeline.keeping.doubted import Doubts
from pipeline.keeping.housekeeping import Housekeeping
from pipeline.keeping.kept import HistoryEntry, KeptHorse, KeptMemo, KeptVisit
from pipeline.keeping.lessons import Lessons
from pipeline.keeping.location import DATABASE_NAME, make_private_folder, no_store_sentence
from pipeline.keeping.meeting_horses import Meeting, Prefer
from pipeline.keeping.names import name_key
from pipeline.keeping.originals import keep_original, originals_or_none, remove_copies
from pipeline.keeping.past import PastStates
from pipeline.keeping.reading_out import Leaving
from pipeline.keeping.readings import Readings
from pipeline.keeping.record_file import RecordFile
from pipeline.keeping.rows import Columns
from pipeline.keeping.schema import migrate
from pipeline.keeping.seen import Found, Wanted
from pipeline.keeping.shares import share_warning
from pipeline.keeping.taking_in import Taken, TakingIn
from pipeline.keeping.to_review import ToReview
from pipeline.record import MemoRecord, RosterHorse, Transcript, Visit


class Store(Corrections, Readings, PastStates, Housekeeping, Deciding, ToReview, Doubts, Lessons, Days):
    """A folder with the database of all visits and the original recordings.

    Every method raises StoreError (StoreBusyError when another program holds the store) with one plain sentence, and
    after any error the store is as it was before the call.
    """

    @classmethod
    def open(cls, folder: Path, create: bool = True, busy_s: float = 5.0) -> Self:
        """Open the store in ``folder``, waiting ``busy_s`` seconds for another program that writes.

        With ``create`` a missing store is made; without, it is a FileMissingError. Raises StoreNewerError for a store
        of a later version and StoreError for a file that is no store. A program that may write is warned, through
        logging, of a store on a network share.
        """
        path = folder / DATABASE_NAME
        with plain_errors(folder):
            if not create and not path.is_file():
                raise FileMissingError(no_store_sentence(folder))
            make_private_folder(folder)
            database = open_database(path, busy_s)
            try:
                migrate(database, folder)
                database.register_function(name_key, deterministic=True)
            except BaseException:
                database.close()
                raise
        if create and (warning := share_warning(folder)):
            logging.getLogger("clinchbook").warning(warning)
        return cls(database, folder)

    def close(self) -> None:
        """Let go of the store."""
        self._database.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def has(self, sha256: str) -> bool:
        """Whether the memo with this hash is kept."""
        with plain_errors(self.folder):
            return reading_back.memo_row(self._database, sha256) is not None

    def keep(
        self,
        record: MemoRecord,
        transcript: Transcript,
        original: Path,
        *,
        weights: str | None = None,
        vocabulary: str | None = None,
    ) -> list[int]:
        """Keep one memo with its visits and its recording, and return the visits' numbers in order.

        The copy of the recording is on the disk, read back and hashed, before the one transaction starts. A memo that
        is kept already adds nothing and returns []. A horse that the memo calls new joins the roster; a visit whose
        horse is unclear stays unassigned.
        """
        sha256 = record.memo.sha256
        if sha256 is None:
            raise StoreError("Only a memo with a recording behind it can be kept.")
        if self.has(sha256):
            return []
        with plain_errors(self.folder):
            check_in_place(self._database)
            stored = keep_original(self.folder, sha256, original)
            columns: Columns = {"kept_at": opened.now(), "weights": weights, "vocabulary": vocabulary}
            with self._writing("", "a memo was kept"):
                # Another program may have kept it since.
                if reading_back.memo_row(self._database, sha256) is not None:
                    return []
                # Another program may have removed the same sound for good since it was copied.
                if not (self.folder / stored).is_file():
                    raise StoreError(f"The copy of {original.name} was removed while it was being kept; keep it again.")
                waiting.take_off(self._database, sha256, original)
                return writing_down.write_memo(self._database, record, transcript, original.name, stored, columns)

    def roster(self) -> list[RosterHorse]:
        """Every horse that a memo may name: of the roster lists and of earlier memos."""
        return [kept.horse for kept in self.horses()]

    def horses(self) -> list[KeptHorse]:
        """Every horse with its row, by name."""
        with plain_errors(self.folder):
            return horses.all_horses(self._database)

    def horse(self, name: str, place: str | None = None) -> KeptHorse:
        """The one horse of this name or other name; NotFoundError when there is none or several."""
        with plain_errors(self.folder):
            return horses.the_horse_called(self._database, name, place)

    def add_horses(self, new: Sequence[RosterHorse], *, who: str | None = None, why: str = "roster") -> tuple[int, int]:
        """Add new horses and update known ones (same name, same place); how many were added and updated."""
        with self._writing(who, why):
            return horses.add_horses(self._database, new)

    def memo(self, key: int | str) -> KeptMemo:
        """A memo by its number or its hash, with all its visits; NotFoundError when it is not there."""
        with plain_errors(self.folder):
            return reading_back.memo(self._database, self.folder, key)

    def memos(self) -> list[KeptMemo]:
        """Every memo in the order in which it was kept."""
        with plain_errors(self.folder):
            return reading_back.memos(self._database, self.folder)

    def counts(self) -> dict[str, int]:
        """How many memos, visits, facts and horses are kept, and how many facts are flagged; quick."""
        with plain_errors(self.folder):
            return reading_back.counts(self._database)

    def visit(self, visit_id: int) -> KeptVisit:
        """A visit by its number; NotFoundError when it is not there."""
        with plain_errors(self.folder):
            return reading_back.visit(self._database, self.folder, visit_id)

    def visits_of(self, horse: str, place: str | None = None) -> list[KeptVisit]:
        """A horse's visits, oldest first; NotFoundError for a horse that is unknown or one of several."""
        with plain_errors(self.folder):
            kept = horses.the_horse_called(self._database, horse, place)
            return reading_back.visits_of(self._database, self.folder, kept.id)

    def last_visit(self, visit: Visit) -> LastVisit | None:
        """What stands of the same horse's last visit before this one; None where horse or visit is not known."""
        with plain_errors(self.folder):
            return before.last_visit(self._database, visit)

    def unassigned(self) -> list[KeptVisit]:
        """The visits that belong to no horse yet, oldest first."""
        with plain_errors(self.folder):
            return reading_back.visits_of(self._database, self.folder, None)

    def search(self, wanted: Wanted) -> Found:
        """The facts that hold all that is wanted and, when only words are wanted of them, passages with those words.

        Raises NotFoundError for a horse that neither the roster nor any visit knows.
        """
        with plain_errors(self.folder):
            return looking.search(self._database.conn, wanted)

    def leaving(self, kept: Sequence[KeptHorse], visits: Sequence[KeptVisit], since: date | None = None) -> Leaving:
        """The record of these horses with these visits, of which those before ``since`` stay out."""
        with plain_errors(self.folder):
            return reading_out.leaving(self._database, kept, visits, since)

    def take_in(
        self,
        record: RecordFile,
        sounds: Sequence[Path | None],
        *,
        prefer: Prefer = Prefer.ASK,
        who: str | None = None,
        why: str = "taken in",
    ) -> Taken:
        """Take in a record of another store, all of it or nothing; ``sounds`` are the memos' recordings, where given.

        What is kept already adds nothing. Raises RecordError for a record that is at odds with the store.
        """
        with plain_errors(self.folder):
            hashes = [memo.memo.sha256 or "" for memo in record.memos]
            with originals_or_none(self.folder, hashes, sounds, self._drop) as stored, self._writing(who, why):
                meeting = Meeting(self._database, prefer)
                by = who or opened.login_name()
                return TakingIn(self._database, record, meeting, by, why, opened.now()).write(stored)

    def _drop(self, hashes: Sequence[str]) -> None:
        """Remove copies of recordings that no memo here has; a store that cannot be written keeps them."""
        with suppress(StoreError), plain_errors(self.folder), writing(self._database):
            for sha256 in hashes:
                if reading_back.memo_row(self._database, sha256) is None:
                    remove_copies(self.folder, sha256)

    def history(self) -> list[HistoryEntry]:
        """Every correction ever made, oldest first."""
        with plain_errors(self.folder):
            return reading_back.history(self._database)

    def changes(self, visit_id: int) -> list[Change]:
        """The changes to a visit and to whatever is or was in it, oldest first; NotFoundError for an unknown visit."""
        with plain_errors(self.folder):
            return changes.changes_of_visit(self._database, visit_id)

    def changes_of_memo(self, memo_id: int) -> list[Change]:
        """The changes to a memo and all its visits, oldest first."""
        with plain_errors(self.folder):
            return changes.changes_of_memo(self._database, memo_id)

    def problems(self, deep: bool = False) -> list[str]:
        """What is wrong with the store, one sentence each; ``deep`` reads every recording again."""
        with plain_errors(self.folder):
            return health.problems(self._database, self.folder, deep)
