"""The history of the benches: a CSV each below ``results``, where every row has its day and the program's version."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Sequence
from datetime import UTC, datetime
from pathlib import Path

from pipeline import __version__

RESULTS = Path(__file__).resolve().parent / "results"
Row = dict[str, str]


def add_rows(name: str, columns: Sequence[str], rows: Iterable[Sequence[object]], folder: Path = RESULTS) -> None:
    """Put rows behind those of earlier runs; ``columns`` come after ``day`` and ``version``."""
    path = folder / f"{name}.csv"
    new = not path.exists()
    with path.open("a", encoding="utf-8", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        if new:
            out.writerow(["day", "version", *columns])
        out.writerows([f"{datetime.now(UTC):%Y-%m-%d}", __version__, *row] for row in rows)


def rows_of(path: Path) -> list[Row]:
    """All rows of a CSV, the oldest first; none when there is no such file."""
    if not path.exists():
        return []
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def last_rows(rows: Iterable[Row], *key: str) -> dict[tuple[str, ...], Row]:
    """Of the rows that agree in the columns ``key``, the last."""
    return {tuple(row[column] for column in key): row for row in rows}


def print_rows(columns: Sequence[str], rows: Iterable[Sequence[object]]) -> None:
    """A Markdown table."""
    print("| " + " | ".join(columns) + " |\n|" + " --- |" * len(columns))
    for row in rows:
        print("| " + " | ".join(map(str, row)) + " |")
