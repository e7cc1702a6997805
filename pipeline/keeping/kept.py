"""What comes out of the store: rows as typed objects."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from pipeline.record import MemoRecord, RosterHorse, Transcript, Visit


@dataclass(frozen=True)
class KeptHorse:
    """A horse of the store. ``from_memo`` is the memo that first named it; None when it came from a roster."""

    id: int
    horse: RosterHorse
    from_memo: int | None = None

    @property
    def name(self) -> str:
        """The horse's name."""
        return self.horse.name


@dataclass(frozen=True)
class KeptMemo:
    """A memo as kept: its record without the cautions, its words, and where its original lies."""

    id: int
    record: MemoRecord
    transcript: Transcript
    file_name: str
    original: Path
    kept_at: datetime
    visit_ids: tuple[int, ...] = ()
    weights: str | None = None
    vocabulary: str | None = None


@dataclass(frozen=True)
class KeptVisit:
    """A visit as kept, with its horse (None while unassigned), its memo, and the row of each fact, in order."""

    id: int
    visit: Visit
    horse: KeptHorse | None
    memo: KeptMemo
    fact_ids: tuple[int, ...] = ()


@dataclass(frozen=True)
class HistoryEntry:
    """One correction: what stood in a row's column before, what after, who and why."""

    at: datetime
    who: str
    table: str
    row: int
    column: str
    old: str | float | None
    new: str | float | None
    why: str
