"""The store's tables, and the way from one version of them to the next.

A version's statements never change once released: a later shape is a later version. Closed sets that cannot grow
(feet, statuses) are checked here too; the trade's words grow, so they are checked by the record's models alone.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import StoreError, StoreNewerError
from pipeline.keeping.database import writing
from pipeline.keeping.schema_v1 import VERSION_1
from pipeline.keeping.schema_v2 import VERSION_2
from pipeline.keeping.schema_v3 import VERSION_3
from pipeline.keeping.schema_v4 import VERSION_4
from pipeline.keeping.schema_v5 import VERSION_5
from pipeline.keeping.schema_v6 import VERSION_6
from pipeline.keeping.schema_v7 import VERSION_7
from pipeline.keeping.schema_v8 import VERSION_8

if TYPE_CHECKING:
    from sqlite_utils import Database

MIGRATIONS: tuple[str, ...] = (VERSION_1, VERSION_2, VERSION_3, VERSION_4, VERSION_5, VERSION_6, VERSION_7, VERSION_8)
SCHEMA_VERSION = len(MIGRATIONS)
APPLICATION_ID = 0x436C6E42  # marks the file as clinchbook's own: "ClnB"


def migrate(database: Database, folder: Path) -> None:
    """Bring the store to the present version, one transaction a step.

    Raises StoreNewerError for a store of a later version and StoreError for another program's database.
    """
    _check_ours(database, folder)
    while (version := _version(database)) < SCHEMA_VERSION:
        with writing(database, f"The disk gave an error while the store in {folder} was made ready; try again."):
            # Another program may have taken the step while this one waited for the lock.
            if _version(database) == version:
                for statement in statements(MIGRATIONS[version]):
                    database.execute(statement)
                database.execute(f"PRAGMA application_id={APPLICATION_ID}")
                database.execute(f"PRAGMA user_version={version + 1}")
    if version > SCHEMA_VERSION:
        raise StoreNewerError(f"The store in {folder} was written by a later clinchbook; please update clinchbook.")


def statements(script: str) -> Iterator[str]:
    """The statements of a script one by one: run together, Python would commit the transaction around them first."""
    statement = ""
    for line in script.splitlines(keepends=True):
        statement += line
        if sqlite3.complete_statement(statement):
            yield statement
            statement = ""
    if statement.strip():
        yield statement


def _version(database: Database) -> int:
    return int(database.execute("PRAGMA user_version").fetchone()[0])


def _check_ours(database: Database, folder: Path) -> None:
    # The tables first: another clinchbook that makes them meanwhile will have set its mark by then.
    tables = database.execute("SELECT count(*) FROM sqlite_master").fetchone()[0]
    mark = database.execute("PRAGMA application_id").fetchone()[0]
    if mark != APPLICATION_ID and (tables or mark):
        raise StoreError(f"{folder} holds a clinchbook.db that is another program's database.")
