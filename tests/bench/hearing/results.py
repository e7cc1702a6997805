"""Tables on the screen, and their rows behind the earlier ones in ``results``."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path

from pipeline import __version__

RESULTS = Path(__file__).resolve().parents[1] / "results"


def print_table(columns: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    """A Markdown table."""
    print("| " + " | ".join(columns) + " |\n|" + " --- |" * len(columns))
    for row in rows:
        print("| " + " | ".join(row) + " |")


def add_rows(name: str, columns: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    """Put the rows, with day and version, behind those of earlier runs."""
    path = RESULTS / f"{name}.csv"
    new = not path.exists()
    with path.open("a", encoding="utf-8", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        if new:
            out.writerow(["day", "version", *columns])
        out.writerows([f"{datetime.now(UTC):%Y-%m-%d}", __version__, *row] for row in rows)
