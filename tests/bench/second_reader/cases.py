"""A pytest plugin that keeps what the reader read in every test that passed, for the second reader to learn from:
``python -m pytest tests/reading tests/facts -p tests.bench.second_reader.cases --cases FILE``.
"""

from __future__ import annotations

import json
from collections.abc import Generator, Sequence
from datetime import date
from pathlib import Path

import pytest

from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript, Visit

_READ: list[tuple[str, list[Visit]]] = []
_KEEP = {"horse": True, "horse_match": True, "date": True, "facts": True}
# They read memos that are learnt from anyway, or that nobody looks at, and words thrown together at random.
_LEFT_OUT = ("corpus", "generator", "misheard", "properties")


def pytest_addoption(parser: pytest.Parser) -> None:
    """Where the cases go."""
    parser.addoption("--cases", type=Path, required=True)


def pytest_configure(config: pytest.Config) -> None:
    """Begin the file anew, and have every reading told here too."""
    config.getoption("--cases").write_text("", encoding="utf-8")
    read = Reader.read

    def telling(self: Reader, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        visits = read(self, transcript, roster, day)
        _READ.append((transcript.text, visits))
        return visits

    pytest.MonkeyPatch().setattr(Reader, "read", telling)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Keep the readings of a test that passed."""
    report = yield
    if call.when == "call" and report.passed and not any(name in item.nodeid for name in _LEFT_OUT):
        with item.config.getoption("--cases").open("a", encoding="utf-8") as out:
            for text, visits in _READ:
                told = [visit.model_dump(mode="json", include=_KEEP) for visit in visits]
                out.write(json.dumps({"text": text, "visits": told}) + "\n")
    if call.when == "teardown":
        _READ.clear()
    return report
