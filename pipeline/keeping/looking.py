"""Looking into the store: a connection that cannot write, opened without what keeping a memo needs."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from datetime import date
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from pipeline.errors import FileMissingError
from pipeline.keeping import visiting
from pipeline.keeping.asking import horse_ids_called, rows
from pipeline.keeping.database import plain_errors
from pipeline.keeping.location import DATABASE_NAME, no_store_sentence
from pipeline.keeping.names import name_key
from pipeline.keeping.schema import APPLICATION_ID, SCHEMA_VERSION
from pipeline.keeping.seen import Found, SeenHorse, SeenVisit, ShodVisit, Wanted
from pipeline.keeping.visiting import LastSeen

if TYPE_CHECKING:
    from pipeline.keeping.counting import Count


class Looking:
    """The store as queries see it: nothing is ever written through it.

    Every method raises StoreError (StoreBusyError when another program is writing) with one plain sentence.
    """

    def __init__(self, connection: sqlite3.Connection, folder: Path) -> None:
        self._connection = connection
        self.folder = folder

    @classmethod
    def open(cls, folder: Path, busy_s: float = 5.0) -> Self:
        """Open the store in ``folder`` to look into it, waiting ``busy_s`` seconds for another program that writes.

        A store of an earlier version is brought up to date first, and what a power cut left half-done is undone.
        Raises FileMissingError without a store, StoreNewerError for one of a later version, StoreError for none.
        """
        path = folder / DATABASE_NAME
        if not path.is_file():
            raise FileMissingError(no_store_sentence(folder))
        with plain_errors(folder):
            connection = _ready(path, busy_s)
            if connection is None:
                _settle(folder, busy_s)
                connection = _read_only(path, busy_s)
            connection.create_function("name_key", 1, name_key, deterministic=True)
        return cls(connection, folder)

    def close(self) -> None:
        """Let go of the store."""
        self._connection.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def search(self, wanted: Wanted) -> Found:
        """The facts that hold all that is wanted and, when only words are wanted of them, passages with those words.

        Raises NotFoundError for a horse that neither the roster nor any visit knows.
        """
        with plain_errors(self.folder):
            return search(self._connection, wanted)

    def count(self, wanted: Wanted, by: str) -> list[Count]:
        """The facts that hold all that is wanted, counted by one of COUNTED_BY; errors as in ``search``."""
        from pipeline.keeping.counting import count_facts

        with plain_errors(self.folder):
            return count_facts(self._connection, wanted, by, _ids_for_search(self._connection, wanted.horse))

    def horse(self, name: str, place: str | None = None) -> SeenHorse:
        """The one horse of this name or other name; NotFoundError when there is none or several."""
        with plain_errors(self.folder):
            return visiting.the_horse(self._connection, name, place)

    def visits_of(self, horse: SeenHorse) -> list[SeenVisit]:
        """All visits of a horse with what stands of them, oldest first."""
        with plain_errors(self.folder):
            return visiting.visits_of(self._connection, horse)

    def horses_on(self, day: date) -> list[SeenHorse]:
        """The horses that were seen on a day, by place and name."""
        with plain_errors(self.folder):
            return visiting.horses_on(self._connection, day)

    def seen_count(self, place: str | None = None) -> int:
        """How many horses were ever seen, at ``place`` if one is given."""
        with plain_errors(self.folder):
            return visiting.seen_count(self._connection, place)

    def last_seen(self, since: date | None = None, place: str | None = None) -> list[LastSeen]:
        """Every horse that was seen ``since``, with its last day and what was said then of the next visit."""
        with plain_errors(self.folder):
            return visiting.last_seen(self._connection, since, place)

    def days_of(self, horse_ids: Sequence[int]) -> dict[int, list[date]]:
        """The days on which each of these horses was seen, oldest first."""
        with plain_errors(self.folder):
            return visiting.days_of(self._connection, horse_ids)

    def horse_ids_between(self, since: date, until: date, place: str | None = None) -> list[int]:
        """The horses that were seen from ``since`` to ``until``, both included."""
        with plain_errors(self.folder):
            return visiting.horse_ids_between(self._connection, since, until, place)

    def facts_on_feet(
        self, horse_ids: Sequence[int], slots: Sequence[str], statuses: Sequence[str], since: date, until: date
    ) -> Iterator[ShodVisit]:
        """Visits of these horses, horse by horse and oldest first, with their feet's facts of these slots and statuses
        alone."""
        with plain_errors(self.folder):
            yield from visiting.facts_on_feet(self._connection, horse_ids, slots, statuses, since, until)

    def unassigned_count(self, horse: SeenHorse | None = None) -> int:
        """How many visits belong to no horse yet; with a horse, how many of those were heard under its names."""
        with plain_errors(self.folder):
            return visiting.unassigned_count(self._connection, horse)


def search(connection: sqlite3.Connection, wanted: Wanted) -> Found:
    """What ``Looking.search`` finds, on a connection that knows ``name_key``."""
    from pipeline.keeping.finding import find_facts  # the due list and the brief need none of it

    ids = _ids_for_search(connection, wanted.horse)
    found = find_facts(connection, wanted, ids)
    about_facts = (
        wanted.slots or wanted.values or wanted.feet or wanted.zones or wanted.compared or wanted.flagged is not None
    )
    if not wanted.words or about_facts:
        return found
    from pipeline.keeping.passages import find_passages

    said = find_passages(connection, wanted, ids)
    return Found(found.facts, said[: wanted.limit], found.more or len(said) > wanted.limit)


def _ids_for_search(connection: sqlite3.Connection, name: str | None) -> list[int]:
    if name is None:
        return []
    ids = horse_ids_called(connection, name)
    heard = "SELECT 1 FROM visits WHERE horse IS NULL AND heard_key = ? AND stands = 1 LIMIT 1"
    if not ids and next(rows(connection, heard, [name_key(name)]), None) is None:
        visiting.the_horse(connection, name)  # says which names are close
    return ids


def _read_only(path: Path, busy_s: float) -> sqlite3.Connection:
    return sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", timeout=busy_s, uri=True)


def _ready(path: Path, busy_s: float) -> sqlite3.Connection | None:
    """A connection to a store of this very version with nothing half-done in it; None for any other."""
    connection = _read_only(path, busy_s)
    try:
        mark = connection.execute("PRAGMA application_id").fetchone()[0]
        version = connection.execute("PRAGMA user_version").fetchone()[0]
    except sqlite3.OperationalError as error:
        connection.close()
        if error.sqlite_errorcode & 0xFF in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise
        return None
    except sqlite3.DatabaseError:
        connection.close()
        raise
    if (mark, version) == (APPLICATION_ID, SCHEMA_VERSION):
        return connection
    connection.close()
    return None


def _settle(folder: Path, busy_s: float) -> None:
    """Let the store itself look after what is older, half-done or not ours: it knows what to do and what to say."""
    from pipeline.keeping.store import Store

    Store.open(folder, create=False, busy_s=busy_s).close()
