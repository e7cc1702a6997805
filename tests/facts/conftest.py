"""One reader for all tests of reading: building its matchers takes a second."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript, Visit
from pipeline.vocabulary import load_vocabulary

Read = Callable[..., list[Visit]]


@pytest.fixture(scope="session")
def reader() -> Reader:
    return Reader(load_vocabulary())


@pytest.fixture
def read(reader: Reader) -> Read:
    """Read typed text with a roster of names."""

    def run(text: str, *roster: str) -> list[Visit]:
        return reader.read(Transcript(text=text), [RosterHorse(name=n) for n in roster], date(2026, 5, 12))

    return run
