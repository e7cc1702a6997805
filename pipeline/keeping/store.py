"""The store as the rest of the project sees it."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from types import TracebackType
from typing import Self

from pipeline.errors import FileMissingError, StoreError
from pipeline.keeping import changes, finding, health, horses, opened, reading_back, writing_down
from pipeline.keeping.changes import Change
from pipeline.keeping.corrections import Corrections
from pipeline.keeping.database import open_database, plain_errors
from pipeline.keeping.days import Days
from pipeline.keeping.deciding import Deciding
from pipeline.keeping.kept import Found, HistoryEntry, KeptHorse, KeptMemo, KeptVisit, Wanted
from pipeline.keeping.lessons import Lessons
from pipeline.keeping.location import DATABASE_NAME, make_private_folder
from pipeline.keeping.names import name_key
from pipeline.keeping.originals import keep_original
from pipeline.keeping.past import PastStates
from pipeline.keeping.readings import Readings
from pipeline.keeping.rows import Columns
from pipeline.keeping.schema import migrate
from pipeline.keeping.to_review import ToReview
from pipeline.record import MemoRecord, RosterHorse, Transcript


class Store(Corrections, Readings, PastStates, Deciding, ToReview, Lessons, Days):
    """A folder with the database of all visits and the original recordings.

    Every method raises StoreError (StoreBusyError when another program holds the store) with one plain sentence, and
    after any error the store is as it was before the call.
    """

    @classmethod
    def open(cls, folder: Path, create: bool = True, busy_s: float = 5.0) -> Self:
        """Open the store in ``folder``, waiting ``busy_s`` seconds for another program that writes.

        With ``create`` a missing store is made; without, it is a FileMissingError. Raises StoreNewerError for a store
        of a later version and StoreError for a file that is no store.
        """
        path = folder / DATABASE_NAME
        with plain_errors(folder):
            if not create and not path.is_file():
                raise FileMissingError(f"There is no store in {folder} yet; it is made when the first memo is kept.")
            make_private_folder(folder)
            database = open_database(path, busy_s)
            try:
                migrate(database, folder)
                database.register_function(name_key, deterministic=True)
            except BaseException:
                database.close()
                raise
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
            stored = keep_original(self.folder, sha256, original)
            columns: Columns = {"kept_at": opened.now(), "weights": weights, "vocabulary": vocabulary}
            with self._writing("", "a memo was kept"):
                # Another program may have kept it since.
                if reading_back.memo_row(self._database, sha256) is not None:
                    return []
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

    def unassigned(self) -> list[KeptVisit]:
        """The visits that belong to no horse yet, oldest first."""
        with plain_errors(self.folder):
            return reading_back.visits_of(self._database, self.folder, None)

    def search(self, wanted: Wanted) -> Found:
        """The facts that hold all that is wanted and, when only words are wanted of them, passages with those words.

        Raises NotFoundError for a horse that neither the roster nor any visit knows.
        """
        with plain_errors(self.folder):
            ids = [] if wanted.horse is None else self._ids_for_search(wanted.horse)
            found = finding.find_facts(self._database, wanted, ids)
            about_facts = wanted.slots or wanted.values or wanted.feet or wanted.zones or wanted.flagged is not None
            if not wanted.words or about_facts:
                return found
            passages = finding.find_passages(self._database, wanted, ids)
            return Found(found.facts, passages[: wanted.limit], found.more or len(passages) > wanted.limit)

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

    def _ids_for_search(self, name: str) -> list[int]:
        ids = [horse.id for horse in horses.horses_called(self._database, name)]
        if not ids and not reading_back.heard(self._database, name):
            ids = [horses.the_horse_called(self._database, name).id]  # says which names are close
        return ids
