"""What it costs to start: ``python -m tests.bench.startup``.

Processor time of whole commands in a small store, beside what Python takes to start at all and to import Typer, the
library of the command line. The commands take turns, round by round; each shows its median, and how many times Python's
own start and Typer's import that is. Rows are added to ``results/startup.csv``.
"""

from __future__ import annotations

import tempfile
from pathlib import Path
from statistics import median

from tests.bench.cost import taking_turns
from tests.bench.history import add_rows, print_rows
from tests.bench.store_maker import LAST_DAY, make_store

ROUNDS = 31
VISITS = 500
COLUMNS = ("what", "visits", "median_ms", "beyond_python_ms", "times_python", "times_typer")
PYTHON, TYPER = "python -c pass", "python -c import typer"
COMMANDS: dict[str, tuple[str, ...]] = {
    "--help": ("--help",),
    "--version": ("--version",),
    "ingest --help": ("ingest", "--help"),
    "search": ("search", "thrush", "--limit", "100"),
    "brief": ("brief", "Bramble 1", "--day", LAST_DAY.isoformat()),
}


def runs(store: Path) -> dict[str, tuple[str, ...]]:
    """What Python is given."""
    found: dict[str, tuple[str, ...]] = {PYTHON: ("-c", "pass"), TYPER: ("-c", "import typer")}
    for name, words in COMMANDS.items():
        where = () if words[-1].startswith("--") else ("--store", str(store))
        found[name] = ("-m", "pipeline.cli", *words, *where)
    return found


def main() -> None:
    """Print the table and add it to the results."""
    with tempfile.TemporaryDirectory() as temporary:
        store = Path(temporary) / "store"
        make_store(store, VISITS)
        costs = taking_turns(runs(store), ROUNDS)
    took = {name: median(cost.processor for cost in each) for name, each in costs.items()}
    rows = [
        (name, VISITS, f"{ms:.1f}", f"{ms - took[PYTHON]:.1f}", f"{ms / took[PYTHON]:.2f}", f"{ms / took[TYPER]:.2f}")
        for name, ms in took.items()
    ]
    print_rows(COLUMNS, rows)
    add_rows("startup", COLUMNS, rows)


if __name__ == "__main__":
    main()
