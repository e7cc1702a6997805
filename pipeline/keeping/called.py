"""Which horses go by a name."""

from __future__ import annotations

import sqlite3

from pipeline.keeping.asking import rows
from pipeline.keeping.names import name_key


def horse_ids_called(connection: sqlite3.Connection, name: str) -> list[int]:
    """The horses of this name, or else those also called so."""
    key = name_key(name)
    exact = "SELECT id FROM horses WHERE name_key = ? ORDER BY place_key"
    called = """SELECT id FROM horses WHERE also_called <> '[]' AND EXISTS (
        SELECT 1 FROM json_each(also_called) WHERE name_key(json_each.value) = ?) ORDER BY name_key, place_key"""
    return next(filter(None, ([row["id"] for row in rows(connection, sql, [key])] for sql in (exact, called))), [])
