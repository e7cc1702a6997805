"""An invented yard: memos that were never spoken, kept in a store of the test's own."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.record import Fact, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit

DAY = date(2026, 3, 2)


@dataclass
class Yard:
    """Makes recordings in ``memos`` and keeps them in the store in ``folder``."""

    folder: Path
    memos: Path
    made: int = 0

    def open(self) -> Store:
        """The yard's store."""
        return Store.open(self.folder)

    def recording(self, name: str = "memo.m4a") -> Path:
        """A file with bytes that no other recording has."""
        self.made += 1
        path = self.memos / name
        path.write_bytes(f"sound number {self.made}".encode() * 100)
        return path

    def record(self, path: Path, *visits: Visit, text: str = "Bramble, trimmed all four.") -> MemoRecord:
        """The record of one recording."""
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        memo = Memo(path=str(path), sha256=digest, seconds=41.5, recorded_at=datetime(2026, 3, 2, 14, 5))
        return MemoRecord(memo=memo, transcript=text, visits=list(visits))

    def keep(self, store: Store, *visits: Visit, text: str = "Bramble, trimmed all four.") -> list[int]:
        """Keep a new recording with these visits."""
        path = self.recording(f"memo{self.made}.m4a")
        return store.keep(self.record(path, *visits, text=text), Transcript(text=text), path)


@pytest.fixture
def yard(tmp_path: Path) -> Yard:
    """A yard without a store."""
    memos = tmp_path / "memos"
    memos.mkdir()
    return Yard(tmp_path / "book", memos)


@pytest.fixture
def store(yard: Yard) -> Iterator[Store]:
    """The yard's store, with Bramble on the roster."""
    with yard.open() as opened:
        opened.add_horses([RosterHorse(name="Bramble", owner="A. Fern", place="River barn", also_called=["Bram"])])
        yield opened


@pytest.fixture
def trimmed() -> Visit:
    """A plain visit at Bramble."""
    fact = Fact(foot="LF", slot="work", value="trim", quote="trimmed", span=(9, 16))
    return Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=DAY, facts=[fact])


@pytest.fixture
def target(tmp_path: Path) -> Path:
    """Where the back-up goes: a folder still to be made, on a disk that is there."""
    (tmp_path / "disk").mkdir()
    return tmp_path / "disk" / "book"


@pytest.fixture
def nothing_left_behind(tmp_path: Path) -> Iterator[None]:
    """No work in progress is left anywhere."""
    yield
    assert [path for path in tmp_path.rglob(".clinchbook-*") if path.name != ".clinchbook-lock"] == []
