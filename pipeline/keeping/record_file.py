"""A record as it goes from one store to another: the models behind the published JSON Schema.

Nothing in it is a row number of a store: a horse, a memo, a visit and a fact are named by their place in the file, so
that the same record reads the same from every store. Units and closed sets are those of ``pipeline.record``.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Annotated, Literal

from pydantic import Field, StringConstraints

from pipeline.record import Fact, Flag, HorseMatch, Memo, RosterHorse, Strict, Word

FORMAT = "clinchbook-record"
VERSION = 1
Sha256 = Annotated[str, StringConstraints(pattern="^[0-9a-f]{64}$")]
# A column of the store, never anything that could be read as SQL.
Column = Annotated[str, StringConstraints(pattern="^[a-z_]{1,40}$")]
Place = Annotated[int, Field(ge=0, le=2**31 - 1)]


class HorseOnFile(RosterHorse):
    """A horse. ``first_named_in`` is the hash of the memo of this file that first named it, if one did."""

    first_named_in: Sha256 | None = None


class VisitOnFile(Strict):
    """A visit of a memo. ``of_horse`` counts the file's horses from 0, None for a visit that belongs to nobody yet;
    ``position`` is the visit's place in its memo, ``heard_as`` the name as it was heard."""

    horse: str | None
    horse_match: HorseMatch
    date: date
    facts: list[Fact] = Field(default_factory=list)
    flags: list[Flag] = Field(default_factory=list)
    notes: str = ""
    of_horse: Place | None
    position: Place
    heard_as: str | None = None


class MemoOnFile(Strict):
    """A memo, read like the memo of the record contract. ``whole`` is false when visits of other horses were left
    out, and with them transcript and words; ``sound`` is the recording in base64, if it was asked for."""

    id: str | None = None
    memo: Memo
    transcript: str
    visits: list[VisitOnFile]
    cautions: list[str] = Field(default_factory=list)
    flags: list[Flag] = Field(default_factory=list)
    whole: bool = True
    words: list[Word] = Field(default_factory=list)
    kept_at: datetime
    weights: str | None = None
    vocabulary: str | None = None
    sound: str | None = None


class ChangeOnFile(Strict):
    """A correction: what stood before and after, who made it and why.

    ``memo`` counts the file's memos, ``visit`` the memo's visits as listed, ``fact`` the visit's facts and ``horse``
    the file's horses, from 0; those that say nothing are None. In the column ``horse`` old and new are horses.
    """

    at: datetime
    who: str
    what: Literal["memo", "horse", "visit", "fact"]
    memo: Place | None = None
    visit: Place | None = None
    fact: Place | None = None
    horse: Place | None = None
    column: Column
    old: str | float | None
    new: str | float | None
    why: str


class RecordFile(Strict):
    """The file. ``since`` is the first day of visits that were asked for; a redacted file cannot be taken in."""

    format: Literal["clinchbook-record"]
    version: Literal[1]
    exported_on: date
    clinchbook: str
    note: str
    redacted: bool = False
    since: date | None = None
    horses: list[HorseOnFile]
    memos: list[MemoOnFile]
    history: list[ChangeOnFile] = Field(default_factory=list)
