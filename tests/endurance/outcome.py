"""What one part of a run came to, and the table that remembers full runs."""

from __future__ import annotations

import csv
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

RESULTS = Path(__file__).resolve().parent / "results.csv"
_COLUMNS = ("date", "version", "part", "cases", "failures", "command")


class CannotRunError(Exception):
    """This machine lacks what a part needs; the message says what."""


@dataclass
class Outcome:
    """How many cases a part tried, and a sentence for each that went wrong."""

    part: str
    cases: int = 0
    failures: list[str] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)

    def expect(self, right: bool, failure: str) -> None:
        """Remember a failure unless ``right``."""
        if not right:
            self.failures.append(failure)


def remember(outcomes: list[Outcome], command: str, version: str, path: Path = RESULTS) -> None:
    """Add one line a part to the table of full runs."""
    fresh = not path.exists()
    with path.open("a", encoding="utf-8", newline="") as file:
        rows = csv.writer(file, lineterminator="\n")
        if fresh:
            rows.writerow(_COLUMNS)
        for outcome in outcomes:
            today = datetime.now(UTC).date().isoformat()
            rows.writerow([today, version, outcome.part, outcome.cases, len(outcome.failures), command])
