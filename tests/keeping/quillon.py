"""Quillon, a horse whose every trace can be looked for, and what a store's folder holds."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, MemoRecord, RosterHorse, Transcript, Visit, Word
from tests.keeping.conftest import DAY, Yard

if TYPE_CHECKING:
    from collections.abc import Iterable

SECRET = "Quillon. Left fore, dreadful thrush in the sulcus, owner Perpetua Vane was cross."


def visit_of(horse: str, match: HorseMatch = HorseMatch.KNOWN) -> Visit:
    """A visit with a fact, a flag and notes that all name the horse."""
    fact = Fact(foot="LF", slot="finding", value="thrush", quote=f"{horse} dreadful thrush", span=(0, 7))
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=f"{horse}: not understood", quote=f"{horse} was cross")
    return Visit(horse=horse, horse_match=match, date=DAY, facts=[fact], flags=[flag], notes=f"{horse} was cross.")


def keep_secret(yard: Yard, store: Store, *visits: Visit, name: str = "quillon.m4a", sound: bytes = b"") -> MemoRecord:
    """Keep a memo about Quillon whose sound has bytes of its own; the file it came from is deleted."""
    path = yard.recording(name)
    path.write_bytes(sound or b"QUILLON-SOUND-" * 4000)
    record = yard.record(path, *visits, text=SECRET)
    words = [Word(text="Quillon.", start=0, end=8, start_s=0.0, end_s=0.5, probability=0.9)]
    store.keep(record, Transcript(text=SECRET, words=words), path)
    path.unlink()
    return record


def bytes_of(folder: Path) -> bytes:
    """Everything that lies in a folder, names and contents, in lower case."""
    parts = [
        part for path in sorted(folder.rglob("*")) for part in (str(path.relative_to(folder)).encode(), _read(path))
    ]
    return b"\n".join(parts).lower()


def _read(path: Path) -> bytes:
    return path.read_bytes() if path.is_file() else b""


def shape(folder: Path) -> list[tuple[str, str]]:
    """Every table, index, view and trigger of the store."""
    with closing(sqlite3.connect(folder / "clinchbook.db")) as raw:
        return sorted(raw.execute("SELECT name, coalesce(sql, '') FROM sqlite_master"))


def rows_of(folder: Path, tables: Iterable[str]) -> dict[str, list[tuple[object, ...]]]:
    """The rows of some tables."""
    with closing(sqlite3.connect(folder / "clinchbook.db")) as raw:
        return {table: raw.execute(f"SELECT * FROM {table} ORDER BY 1").fetchall() for table in tables}


def with_quillon(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """The store with Bramble's memo, and Quillon with a memo, corrections and an own clip."""
    yard.keep(store, trimmed)
    store.add_horses([RosterHorse(name="Quillon", owner="Perpetua Vane", place="Gorse end", also_called=["Quilly"])])
    store.add_horses([RosterHorse(name="Quillon", owner="Perpetua Vane-Holt", place="Gorse end")])
    record = keep_secret(yard, store, visit_of("Quillon"))
    store.assign(2, store.horse("Bramble"), why="a slip")
    store.assign(2, store.horse("Quillon"), why="Perpetua Vane says so")
    clips = yard.folder / "clips"
    clips.mkdir(mode=0o700)
    (clips / f"{record.memo.sha256}-1.wav").write_bytes(b"QUILLON-CLIP")
    return store
