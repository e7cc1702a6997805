"""One configuration over many takes: heard, read and judged on the one way through the house, then counted."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from pipeline.hearing.recognise import Heard
from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import Ingest, TextReader, spoken_names
from pipeline.record import RosterHorse, Visit
from pipeline.vocabulary import Vocabulary
from tests.bench.hearing.figures import Figures
from tests.bench.hearing.filling import Job
from tests.bench.hearing.making import path_of
from tests.bench.hearing.recognising import Hearing, Listener
from tests.bench.hearing.takes import Take
from tests.bench.hearing.terms import Terms


@dataclass(frozen=True)
class Remembered:
    """A hearer that gives back what was heard already."""

    heard: Hearing

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> Heard:
        """The memo, its words and the doubts about them."""
        return Heard(self.heard.memo, self.heard.transcript, self.heard.flags)


@dataclass(frozen=True)
class Bench:
    """What every configuration shares: the words, the reader, the terms, and where the sound lies."""

    vocabulary: Vocabulary
    reader: TextReader
    terms: Terms
    sound: Path

    def figures(self, takes: Iterable[Take], listener: Listener) -> Figures:
        """Hear, read and count these takes."""
        figures = Figures()
        for take in takes:
            path = path_of(take, self.sound)
            roster = roster_of(take)
            heard = listener.hear(path, spoken_names(roster))
            figures.add(take.memo, heard, self.read(heard, path, roster, take.memo["date"]), self.terms)
            _tell(f"{listener.ear.name}: {figures.files} heard")
        _tell(" " * 40 + "\r")
        return figures

    def read(self, heard: Hearing, path: Path, roster: Sequence[RosterHorse], day: str) -> list[Visit]:
        """The judged visits; none where nothing was heard."""
        if not heard.transcript.text:
            return []
        ingest = Ingest(HearingSettings(), self.vocabulary, hearer=Remembered(heard), reader=self.reader)
        return ingest.read_sound(path, roster, date.fromisoformat(day)).record.visits


def roster_of(take: Take) -> list[RosterHorse]:
    """The horses that the memo may be about."""
    return [RosterHorse(name=name) for name in take.memo["roster"]]


def memo_jobs(takes: Iterable[Take], sound: Path) -> list[Job]:
    """What is to be heard for the rows of these takes."""
    return [(path_of(take, sound), tuple(spoken_names(roster_of(take)))) for take in takes]


def _tell(progress: str) -> None:
    """How far it is, to whoever watches; nothing in a log."""
    if sys.stderr.isatty():
        print(f"\r{progress}", end="", file=sys.stderr, flush=True)
