"""One reader for every test of reading; building its matchers takes a second."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary, load_vocabulary
from tests.reading.telling import told

Read = Callable[..., list[Visit]]
DAY = date(2026, 4, 14)
NAMES = ("Tally", "Buck", "Sable", "Tansy")  # on the roster of every case of ``reads``


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


def reads(cases: Sequence[tuple[str, list[str]]], form: str = "{}") -> Callable[..., None]:
    """A test a case: the text, put into ``form``, is one visit, and its facts are these lines (``telling.py``)."""

    @pytest.mark.parametrize(("text", "facts"), cases, ids=[text for text, _ in cases])
    def test(read: Read, text: str, facts: list[str]) -> None:
        (visit,) = read(form.format(text), *NAMES)
        assert told(visit) == facts

    return test
