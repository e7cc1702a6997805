"""What comes out of the store: rows as typed objects."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from pipeline.record import Fact, Flag, MemoRecord, RosterHorse, Transcript, Visit


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
class KeptFact:
    """A fact of the store, with what a person decided about it.

    ``stands`` is False for one that a person dropped, ``settled`` True for one that a person confirmed or corrected,
    ``by_hand`` True for one that a person entered; the reader found the others.
    """

    id: int
    visit_id: int
    fact: Fact
    stands: bool = True
    settled: bool = False
    by_hand: bool = False


@dataclass(frozen=True)
class KeptFlag:
    """A flag of the store that no fact carries; ``visit_id`` is None for a doubt about the whole memo."""

    id: int
    flag: Flag
    visit_id: int | None = None


@dataclass(frozen=True)
class KeptMemo:
    """A memo as kept: its record without the cautions, its words, and where its original lies.

    The record holds what stands by the present ``reading`` (1 is the first) and by what a person decided; ``flags``
    are the doubts about the whole memo that nobody has looked at yet, with their rows.
    """

    id: int
    record: MemoRecord
    transcript: Transcript
    file_name: str
    original: Path
    kept_at: datetime
    visit_ids: tuple[int, ...] = ()
    weights: str | None = None
    vocabulary: str | None = None
    reading: int = 1
    flags: tuple[KeptFlag, ...] = ()


@dataclass(frozen=True)
class KeptVisit:
    """A visit as kept, with its horse (None while unassigned), its memo, and the row of each fact, in order.

    ``visit`` holds what stands. ``facts`` are its facts with their rows, in the same order; ``dropped`` those that a
    person said were not said; ``flags`` the doubts of ``visit.flags`` with their rows. ``revision`` grows with every
    change; a correction names the one it saw. ``stands`` is False when a later reading no longer finds the visit.
    """

    id: int
    visit: Visit
    horse: KeptHorse | None
    memo: KeptMemo
    fact_ids: tuple[int, ...] = ()
    revision: int = 0
    facts: tuple[KeptFact, ...] = ()
    dropped: tuple[KeptFact, ...] = ()
    flags: tuple[KeptFlag, ...] = ()
    stands: bool = True


@dataclass(frozen=True)
class HistoryEntry:
    """One correction: what stood in a row's column before, what after, who and why.

    ``change`` is the decision that it belongs to; None for what a roster list or another program changed.
    """

    at: datetime
    who: str
    table: str
    row: int
    column: str
    old: str | float | None
    new: str | float | None
    why: str
    change: int | None = None
    id: int = 0
