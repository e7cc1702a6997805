"""Stores as released versions left them: the demo's words, read and kept by that version, with some corrections.

``v1.db.gz`` was made by clinchbook 0.1.0: twelve memos, thirteen visits, a roster, two visits assigned by Ann and Ben,
an owner changed by a roster, and two facts and a note corrected by another program under Ann's name.
``v5.db.gz`` is that store as the tables of version 5 held it.
"""

from __future__ import annotations

import gzip
import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).with_name("released")
VERSIONS = (1, 5)

# What version 1 held, in an order of its own: read with the tables' own names, by any later version too.
_WORDS = {
    "memos": "id, given_id, sha256, path, file_name, stored_path, container, seconds, recorded_at, recorded_from,"
    " kept_at, transcript, words, weights, vocabulary",
    "horses": "id, name, name_key, owner, place, place_key, also_called, other, from_memo",
    "visits": "id, memo, position, horse, horse_heard, heard_key, horse_match, date, notes",
    "facts": "id, visit, position, foot, slot, value, zone, status, severity, confidence, flagged, reasons, quote,"
    " start_s, end_s, span_start, span_end, match, rules",
    "flags": "id, memo, visit, position, kind, reason, quote, start_s, end_s, span_start, span_end",
    "history": "id, at, who, in_table, in_row, in_column, old, new, why",
    "facts_in_full": "id, slot, value, date, horse, owner, place, file_name, memo, horse_id, heard_key, horse_match",
    "to_review": "visit, date, horse, foot, slot, value, zone, status, reasons, quote",
}


def unpack(version: int, folder: Path) -> Path:
    """Put the store of a released version into ``folder``, without its recordings; returns the database's path."""
    folder.mkdir(mode=0o700, exist_ok=True)
    path = folder / "clinchbook.db"
    path.write_bytes(gzip.decompress((FOLDER / f"v{version}.db.gz").read_bytes()))
    return path


def content(path: Path) -> dict[str, list[tuple[Any, ...]]]:
    """All that version 1 can hold, by table."""
    with closing(sqlite3.connect(path)) as raw:
        return {
            table: raw.execute(f"SELECT {columns} FROM {table} ORDER BY {columns}").fetchall()
            for table, columns in _WORDS.items()
        }


def version_of(path: Path) -> int:
    """The version of the tables in a database."""
    with closing(sqlite3.connect(path)) as raw:
        return int(raw.execute("PRAGMA user_version").fetchone()[0])


def everything(path: Path) -> list[str]:
    """Every table, trigger, view and index with its text, and every row: two equal stores give the same."""
    with closing(sqlite3.connect(path)) as raw:
        return [str(row) for row in raw.execute("SELECT type, name, sql FROM sqlite_master ORDER BY name")] + [
            f"{table} {row}" for table in _WORDS for row in raw.execute(f"SELECT * FROM {table} ORDER BY 1")
        ]
