"""One reader for every test of reading; building its matchers takes a second."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary, load_vocabulary

Read = Callable[..., list[Visit]]
DAY = date(2026, 4, 14)


@pytest.fixture(scope="session")
def vocabulary() -> Vocabulary:
    return load_vocabulary()


@pytest.fixture(scope="session")
def reader(vocabulary: Vocabulary) -> Reader:
    return Reader(vocabulary)


@pytest.fixture(scope="session")
def read(reader: Reader) -> Read:
    """Typed text and the roster's names to visits."""

    def run(text: str, *roster: str) -> list[Visit]:
        return reader.read(Transcript(text=text), [RosterHorse(name=name) for name in roster], DAY)

    return run
