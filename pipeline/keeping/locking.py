"""One program at a time for what lies beside the database, held by the database's own write lock."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from pipeline.keeping.database import open_database, plain_errors
from pipeline.keeping.location import DATABASE_NAME, make_private_folder
from pipeline.keeping.schema import migrate


@contextmanager
def alone(folder: Path, busy_s: float = 5.0) -> Iterator[None]:
    """Keep every other program from writing to the store in ``folder``, made if need be, while the block runs.

    Waits ``busy_s`` seconds for another program. Raises StoreError and StoreBusyError. The lock goes with the process,
    so that none is left behind by a crash.
    """
    make_private_folder(folder)
    with closing(open_database(folder / DATABASE_NAME, busy_s)) as database:
        with plain_errors(folder):
            migrate(database, folder)
            database.execute("BEGIN IMMEDIATE")
        try:
            yield
        finally:
            database.execute("ROLLBACK")
