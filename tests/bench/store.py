"""How long search, brief, due and stock take as whole commands, over a store of twenty years.

``python -m tests.bench.store [VISITS]`` makes (or takes from ``--keep FOLDER``) a store of a tenth of VISITS and one of
VISITS (100,000 unless given) and measures, on both, each command as a process of its own: processor and clock time
beyond Python's own start, processor time beyond ``import typer``, and the most memory. The commands take turns, round
by round, and each shows its least: other work on the machine then weighs on all of them alike. Then the store's own
answer beside SQL that was written by hand for the same rows, in turns too, in the same process. Rows are added to
results/store.csv.
"""

from __future__ import annotations

import argparse
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from contextlib import closing
from importlib.metadata import version
from pathlib import Path

from pipeline.keeping import Looking
from pipeline.keeping.finding import FOUND_COLUMNS, found_of
from pipeline.keeping.seen import FoundFact, Wanted
from tests.bench.cost import least, surroundings, taking_turns
from tests.bench.history import add_rows
from tests.bench.store_maker import LAST_DAY, make_store

COLUMNS = ("visits", "what", "figure", "unit", "target")
ROUNDS = 9
REPEATS = 25
TODAY = LAST_DAY.isoformat()
COMMANDS: dict[str, tuple[str, ...]] = {
    "search thrush": ("search", "thrush", "--limit", "100"),
    "search thrush LF 2025": ("search", "thrush", "--foot", "LF", "--since", "2025", "--limit", "100"),
    "search keratoma": ("search", "keratoma"),
    "search --where": ("search", "--where", "toe angle below 46", "--limit", "100"),
    "search thrush --where": ("search", "thrush", "--where", "toe angle below 46", "--limit", "100"),
    "search a place": ("search", "thrush", "--place", "Yard 7", "--limit", "100"),
    "search free words": ("search", "kicks", "dog", "--limit", "100"),
    "search --count month": ("search", "thrush", "--count", "month"),
    "brief": ("brief", "Bramble 1", "--day", TODAY),
    "due": ("due", "--weeks", "1", "--day", TODAY),
    "stock": ("stock", "--day", TODAY),
}
START, LIBRARY = "python -c pass", "python -c import typer"
INDEXED = ("search thrush", "search thrush LF 2025", "search keratoma", "search --where", "brief")


def main() -> int:
    """Print and append the figures."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("visits", nargs="?", type=int, default=100_000)
    parser.add_argument("--keep", type=Path, help="make the stores here, or take those that are here")
    given = parser.parse_args()
    with tempfile.TemporaryDirectory() as temporary:
        folder = given.keep or Path(temporary)
        rows = measure(folder, given.visits)
    add_rows("store", COLUMNS, rows)
    return 0


def measure(folder: Path, visits: int) -> list[tuple[str | int | float, ...]]:
    """All figures, printed as they come: visits, what, figure, unit, target."""
    rows: list[tuple[str | int | float, ...]] = []
    counts = (0, visits // 10, visits)

    def tell(count: int, what: str, figure: float, unit: str, target: str = "") -> None:
        rows.append((count, what, round(figure, 2), unit, target))
        print(f"{count:>7}  {what:52} {figure:>8.2f} {unit:6} {target}", flush=True)

    tried = {(count, name): words for count in counts for name, words in commands(folder, count).items()}
    costs = {key: least(runs) for key, runs in taking_turns(tried, ROUNDS).items()}
    start, library = costs[0, START], costs[0, LIBRARY]
    tell(0, START, start.processor, "ms")
    tell(0, f"{LIBRARY}, {version('typer')}", library.processor, "ms")
    for count in counts[1:]:
        facts, megabytes = contents(folder / str(count))
        tell(count, "the store, facts", facts, "")
        tell(count, "the store, size", megabytes, "MB")
        for name, words in COMMANDS.items():
            cost = costs[count, name]
            tell(count, f"{name}, beyond Python", cost.processor - start.processor, "ms", "<= 150")
            tell(count, f"{name}, beyond Python, by the clock", cost.clock - start.clock, "ms")
            tell(count, f"{name}, beyond typer", cost.processor - library.processor, "ms")
            tell(count, f"{name}, memory", peak(*words, "--store", str(folder / str(count))), "MB")
    answers = {count: {name: answer(folder / str(count), name) for name in ANSWERS} for count in counts[1:]}
    for name in ANSWERS:
        ours, by_hand = answers[visits][name]
        tell(visits, f"{name}: ours", ours * 1000, "ms")
        tell(visits, f"{name}: beside SQL by hand", ours / by_hand, "times", "<= 1.3")
        if wanted_rows(name):
            tell(visits, f"{name}: growth from a tenth", ours / answers[visits // 10][name][0], "times", "<= 1.5")
    for name in INDEXED:
        grown = costs[visits, name].processor / costs[visits // 10, name].processor
        tell(visits, f"{name}: whole command's growth", grown, "times", "<= 1.5")
    return rows


def prepared(folder: Path, visits: int) -> Path:
    """The store of so many visits, made if it is not there."""
    store = folder / str(visits)
    if not (store / "clinchbook.db").exists():
        began = time.monotonic()
        make_store(store, visits)
        print(f"{visits:>7}  made in {time.monotonic() - began:.0f} s", flush=True)
    return store


def contents(store: Path) -> tuple[int, float]:
    """How many facts a store has, and how many MB its database."""
    with closing(sqlite3.connect(store / "clinchbook.db")) as made:
        facts = int(made.execute("SELECT count(*) FROM facts").fetchone()[0])
    return facts, (store / "clinchbook.db").stat().st_size / 2**20


def commands(folder: Path, visits: int) -> dict[str, tuple[str, ...]]:
    """What Python is given for each command on the store of so many visits; without a store, to start at all."""
    if not visits:
        return {START: ("-c", "pass"), LIBRARY: ("-c", "import typer")}
    store = str(prepared(folder, visits))
    return {name: ("-m", "pipeline.cli", *words, "--store", store) for name, words in COMMANDS.items()}


def peak(*words: str) -> float:
    """The most memory of a command in MB, as Linux counts it; not a number elsewhere."""
    done = subprocess.run([sys.executable, "-c", PEAK, *words], check=True, capture_output=True, env=surroundings())
    return int(done.stderr.rsplit(b"PEAK", 1)[1]) / 1024 if sys.platform == "linux" else float("nan")


PEAK = """
import sys
from pipeline.cli import app
try:
    app(sys.argv[1:])
except SystemExit:
    pass
with open("/proc/self/status") as status:
    print("PEAK", [line.split()[1] for line in status if line.startswith("VmHWM")][0], file=sys.stderr)
"""
FULL = f"""SELECT {FOUND_COLUMNS} FROM facts JOIN visits ON visits.id = facts.visit
          JOIN memos ON memos.id = visits.memo LEFT JOIN horses ON horses.id = visits.horse"""
STANDING = "facts.stands = 1 AND visits.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading)"
# What a search wants, and the same rows by hand: with the index of days where there is one to be had.
ANSWERS: dict[str, tuple[Wanted, str]] = {
    "thrush seen, newest 100": (
        Wanted(values=(("finding", "thrush"),), statuses=("present",), limit=100),
        f"""{FULL} WHERE facts.id IN (SELECT fact FROM fact_days WHERE slot = 'finding' AND value = 'thrush'
            AND status = 'present' ORDER BY month DESC, day DESC, visit DESC, fact DESC LIMIT 101)
            ORDER BY visits.date DESC, facts.visit, facts.position""",
    ),
    "keratoma seen, all": (
        Wanted(values=(("finding", "keratoma"),), statuses=("present",)),
        f"""{FULL} WHERE facts.id IN (SELECT fact FROM fact_days WHERE slot = 'finding' AND value = 'keratoma'
            AND status = 'present')
            ORDER BY visits.date DESC, facts.visit, facts.position""",
    ),
    "Bramble 1's findings": (
        Wanted(slots=("finding",), statuses=("present",), horse="Bramble 1"),
        f"""{FULL} WHERE horses.name_key = 'bramble 1' AND +slot = 'finding' AND +status = 'present' AND {STANDING}
            ORDER BY visits.date DESC, facts.visit, facts.position""",
    ),
}


def wanted_rows(name: str) -> bool:
    """Whether the answer has as many rows in a small store as in a large one, so that times may be compared."""
    return ANSWERS[name][0].limit == 100


def answer(store: Path, name: str) -> tuple[float, float]:
    """The least seconds of the store's own answer and of SQL by hand, each down to the same typed rows; raises
    RuntimeError when those differ."""
    wanted, sql = ANSWERS[name]
    with Looking.open(store) as looking, closing(sqlite3.connect(store / "clinchbook.db")) as connection:

        def by_hand() -> list[FoundFact]:
            return [found_of(row) for row in connection.execute(sql).fetchall()[: wanted.limit]]

        def ours() -> list[FoundFact]:
            return looking.search(wanted).facts

        if ours() != by_hand():
            raise RuntimeError(f"{name}: the rows are not the same")
        print(f"{store.name:>7}  {name}: {len(ours())} rows")
        first, second = quickest(ours, by_hand)
        return first, second


def quickest(*works: Callable[[], Sequence[object]]) -> list[float]:
    """The least processor seconds that each of the works took, in turns."""
    taken: list[list[float]] = [[] for _ in works]
    for _ in range(REPEATS):
        for work, seconds in zip(works, taken, strict=True):
            began = time.process_time()
            work()
            seconds.append(time.process_time() - began)
    return [min(seconds) for seconds in taken]


if __name__ == "__main__":
    sys.exit(main())
