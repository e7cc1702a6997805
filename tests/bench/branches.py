"""What share of the branches the tests took: ``python -m tests.bench.branches [--check]``, after ``pytest --cov``.

Reads what was measured into ``.coverage`` (pyproject.toml, section tool.coverage) and ends with 1 when fewer than 92 %
of the branches were taken; the floor there holds for statements and branches together. The files with the most branches
left are named. A row goes to ``results/branches.csv``; ``--check`` only looks.
"""

from __future__ import annotations

import argparse
import json
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from coverage import Coverage
from coverage.exceptions import NoDataError

from tests.bench.history import add_rows, print_rows

ROOT = Path(__file__).resolve().parents[2]
COLUMNS = ("statements", "branches", "taken", "share", "target")
LEAST = 0.92
NAMED = 10


def measured(data: Path) -> dict[str, Any]:
    """What coverage tells of its data, as JSON; raises NoDataError when nothing was measured."""
    coverage = Coverage(data_file=str(data), config_file=str(ROOT / "pyproject.toml"))
    coverage.load()
    with tempfile.TemporaryDirectory() as temporary:
        out = Path(temporary) / "coverage.json"
        coverage.json_report(outfile=str(out))
        told: dict[str, Any] = json.loads(out.read_text(encoding="utf-8"))
    return told


def share(summary: dict[str, int]) -> float:
    """The share of branches that were taken; all of none."""
    return summary["covered_branches"] / summary["num_branches"] if summary["num_branches"] else 1.0


def most_left(told: dict[str, Any]) -> list[tuple[int, str]]:
    """The files with the most branches that no test took, and how many."""
    left = [(file["summary"]["missing_branches"], name) for name, file in told["files"].items()]
    return sorted((pair for pair in left if pair[0]), reverse=True)[:NAMED]


def main(given: Sequence[str] | None = None) -> int:
    """Print the share and what is left; 1 when it is too small or was never measured."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.branches", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("--check", action="store_true", help="only look, and remember nothing")
    parser.add_argument("--data", type=Path, default=ROOT / ".coverage", metavar="FILE", help="default: .coverage")
    chosen = parser.parse_args(given)
    try:
        told = measured(chosen.data)
    except NoDataError:
        print(f"Nothing was measured into {chosen.data}: run pytest --cov first.", file=sys.stderr)
        return 1
    total = told["totals"]
    taken = share(total)
    rows = [(total["num_statements"], total["num_branches"], total["covered_branches"], f"{taken:.4f}", f">= {LEAST}")]
    print_rows(COLUMNS, rows)
    for number, name in most_left(told):
        print(f"{number:4} branches left in {name}")
    if not chosen.check:
        add_rows("branches", COLUMNS, rows)
    if taken < LEAST:
        print(f"The tests take {taken:.1%} of the branches, and must take {LEAST:.0%}.", file=sys.stderr)
    return 0 if taken >= LEAST else 1


if __name__ == "__main__":
    sys.exit(main())
