"""All that a store holds, and putting a back-up in its place."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.keeping import Store
from pipeline.keeping.own_words import add_word
from pipeline.keeping.restoring import Restored, restore
from pipeline.record import RosterHorse, Transcript, Visit
from tests.keeping.conftest import Yard
from tests.keeping.test_keep import full_record

if TYPE_CHECKING:
    from collections.abc import Sequence


def everything(folder: Path) -> dict[str, Sequence[object]]:
    """Every row of every table but that of the last back-up, every recording's bytes, and every own word."""
    found: dict[str, Sequence[object]] = {}
    with closing(sqlite3.connect(folder / "clinchbook.db")) as raw:
        for (name,) in raw.execute("SELECT name FROM sqlite_master WHERE type = 'table' AND name <> 'last_back_up'"):
            found[name] = raw.execute(f'SELECT * FROM "{name}" ORDER BY 1, 2').fetchall() if _ordered(raw, name) else []
    for part in ("originals", "words"):
        for path in sorted((folder / part).rglob("*")):
            if path.is_file():
                found[path.relative_to(folder).as_posix()] = path.read_bytes()
    return found


def _ordered(raw: sqlite3.Connection, name: str) -> bool:
    return len(raw.execute(f'PRAGMA table_info("{name}")').fetchall()) > 1


def no_passphrase() -> str:
    """A passphrase that nobody should ask for."""
    raise AssertionError("asked for a passphrase")


def restored(source: Path, folder: Path, *, replace: bool = False) -> Restored:
    """Restore a back-up that needs no passphrase."""
    return restore(source, folder, replace=replace, passphrase=no_passphrase)


def full_store(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """A store with two memos, a correction, a removal, a waiting memo and an own word."""
    path = yard.recording("full.m4a")
    store.keep(full_record(yard, path), Transcript(text="Bramble. Left fore, bad thrush."), path)
    yard.keep(store, trimmed)
    yard.keep(store, trimmed)
    store.add_horses([RosterHorse(name="Sorrel")])
    store.assign(2, store.horse("Sorrel"), why="to see it in history")
    store.add_horses([RosterHorse(name="Bramble", owner="B. Fern", place="River barn")])
    store.forget(store.plan_forgetting_memo(3))
    store.wait(yard.memos / "quiet.m4a", None, "Nobody speaks.")
    add_word(yard.folder, "findings", "thrush", "porridge frog")
    return store
