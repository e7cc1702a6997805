"""The store's upkeep: what waits, what is removed for good, and back-ups."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError, StoreError
from pipeline.keeping import forgetting, horses, reading_back, waiting
from pipeline.keeping.database import insert_row, plain_errors, writing
from pipeline.keeping.forgetting import Forgotten, Plan
from pipeline.keeping.names import keepable
from pipeline.keeping.opened import OpenedStore, now
from pipeline.keeping.originals import remove_copies
from pipeline.keeping.waiting import Waiting

if TYPE_CHECKING:
    from pipeline.keeping.backing_up import BackedUp


class Housekeeping(OpenedStore):
    """The part of ``Store`` that keeps house; same promises as the rest."""

    @property
    def identity(self) -> str:
        """What tells this store and its back-ups from every other store: 32 hexadecimal digits, made once."""
        with plain_errors(self.folder):
            return str(self._database.execute("SELECT store FROM identity").fetchone()[0])

    def back_up(self, target: Path) -> BackedUp:
        """Make or bring up to date the back-up in the folder ``target`` while others go on writing.

        What is there with the right hash is not copied again. Raises BackupError, StoreError and StoreBusyError.
        """
        from pipeline.keeping.backing_up import back_up  # late: only back-ups need what it needs

        with plain_errors(self.folder):
            return self._note_back_up(back_up(self._database.conn, self.folder, target))

    def archive(self, target: Path, passphrase: str) -> BackedUp:
        """Write the whole store into one encrypted file that is not there yet; read back before it gets its name.

        Raises BackupError, FileMissingError for a missing folder, StoreError and StoreBusyError.
        """
        from pipeline.keeping.backing_up import encrypted_back_up

        with plain_errors(self.folder):
            return self._note_back_up(encrypted_back_up(self._database.conn, self.folder, target, passphrase))

    def last_back_up(self) -> tuple[datetime, Path] | None:
        """When this store was last saved, and where to; None when it never was."""
        with plain_errors(self.folder):
            row = self._database.execute("SELECT at, place FROM last_back_up").fetchone()
        return None if row is None else (datetime.fromisoformat(row[0]), Path(row[1]))

    def wait(self, path: Path, sha256: str | None, reason: str, day: date | None = None) -> None:
        """Put a memo that could not be taken in on the waiting list: a sentence why, and the day given for it."""
        with plain_errors(self.folder), writing(self._database):
            waiting.put(self._database, path, sha256, day, reason, now())

    def waiting(self) -> list[Waiting]:
        """The memos that could not be taken in yet, in the order in which they were first tried."""
        with plain_errors(self.folder):
            return waiting.all_waiting(self._database)

    def waits_no_more(self, sha256: str, path: Path) -> None:
        """Take a memo off the waiting list because its sound is kept; quick when nothing waits."""
        with plain_errors(self.folder):
            if waiting.all_waiting(self._database):
                with writing(self._database):
                    waiting.take_off(self._database, sha256, path)

    def stop_waiting(self, numbers: Sequence[int]) -> list[Waiting]:
        """Drop entries from the waiting list, all or none, and return them; NotFoundError for an unknown number.

        A copy of the sound that a failed try left in the store goes too; the file where it lay stays.
        """
        with plain_errors(self.folder), writing(self._database):
            entries = {entry.id: entry for entry in waiting.all_waiting(self._database)}
            unknown = [number for number in numbers if number not in entries]
            if unknown:
                raise NotFoundError(f"Nothing on the waiting list has the number {unknown[0]}.")
            waiting.drop(self._database, numbers)
            dropped = [entries[number] for number in dict.fromkeys(numbers)]
            for sha256 in {entry.sha256 for entry in dropped if entry.sha256}:
                if reading_back.memo_row(self._database, sha256) is None:
                    remove_copies(self.folder, sha256)
        return dropped

    def plan_forgetting_horse(self, name: str, place: str | None = None, whole_memos: bool = False) -> Plan:
        """What removing a horse would take away; NotFoundError for a horse that is unknown or one of several.

        A memo that also holds another horse, or a visit of nobody, stays with its sound and words unless
        ``whole_memos``.
        """
        with plain_errors(self.folder):
            horse = horses.the_horse_called(self._database, name, place)
            return forgetting.plan_horse(self._database, horse, whole_memos)

    def plan_forgetting_memo(self, memo_id: int) -> Plan:
        """What removing one memo would take away; raises NotFoundError."""
        with plain_errors(self.folder):
            return forgetting.plan_memo(self._database, memo_id)

    def forget(self, plan: Plan, whole_memos: bool = False) -> Forgotten:
        """Remove for good what the plan names: rows, word indexes, recordings, clips, and the database's free pages.

        The rows go in one transaction. Whatever then stops the removal of files or the rewriting of the database is
        raised as StoreError or StoreBusyError, and ``finish_forgetting`` goes on from there. Raises StoreError, with
        nothing removed, when the store changed since the plan was made.
        """
        with plain_errors(self.folder):
            self._database.execute("PRAGMA secure_delete=ON")
            with writing(self._database):
                if self._planned_again(plan, whole_memos) != plan:
                    raise StoreError("The store changed meanwhile; nothing was removed. Please ask again.")
                forgotten = forgetting.remove(self._database, plan, now())
        self.finish_forgetting()
        return forgotten

    def finish_forgetting(self) -> bool:
        """Finish a removal that was interrupted; whether there was one. Raises StoreError and StoreBusyError."""
        with plain_errors(self.folder):
            if not forgetting.unfinished(self._database):
                return False
            self._database.execute("PRAGMA secure_delete=ON")
            with writing(self._database):
                forgetting.remove_files(self._database, self.folder)
            self._database.execute("VACUUM")
            with writing(self._database):
                self._database.execute("DELETE FROM removing")
        return True

    def partly_forgotten(self) -> set[int]:
        """The memos of which one horse was removed while their words stayed: they are not to be read again."""
        with plain_errors(self.folder):
            return forgetting.partly_forgotten(self._database)

    def _note_back_up(self, done: BackedUp) -> BackedUp:
        with writing(self._database):
            self._database.execute("DELETE FROM last_back_up")
            place = keepable(str(done.path.absolute()))
            insert_row(self._database, "last_back_up", {"only": 1, "at": now(), "place": place})
        return done

    def _planned_again(self, plan: Plan, whole_memos: bool) -> Plan | None:
        try:
            if plan.horse is None:
                return forgetting.plan_memo(self._database, next(iter(plan.memos)))
            known = {horse.id: horse for horse in horses.all_horses(self._database)}
            return forgetting.plan_horse(self._database, known[plan.horse.id], whole_memos)
        except (NotFoundError, KeyError):
            return None
