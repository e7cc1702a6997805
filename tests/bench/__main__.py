"""Every measurement under one command: ``python -m tests.bench`` lists them, with their names behind it they run.

Each runs as a process of its own and adds rows to its history. What stands behind ``--`` goes to the bench named:
``python -m tests.bench silent -- --sound DIR``. ``--readme`` brings the README's figures up to date with what was
measured last. Figures of time want a machine that has little else to do.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

from tests.bench.history import RESULTS, rows_of

ENDURANCE = Path(__file__).resolve().parents[1] / "endurance" / "results.csv"


class Bench(NamedTuple):
    """A measurement: what Python is given, what it measures, where its rows go, and what it needs besides."""

    module: str
    measures: str
    history: Path
    arguments: tuple[str, ...] = ()
    needs: str = ""


def _csv(name: str) -> Path:
    return RESULTS / f"{name}.csv"


BENCHES = {
    "reading": Bench("tests.bench.reading", "facts and time of open, kept and generated memos", _csv("reading")),
    "generator": Bench("tests.bench.reading", "the generated memos alone", _csv("reading"), ("generator",)),
    "marks": Bench("tests.bench.marks", "facts of the open memos when stops and commas are misheard", _csv("marks")),
    "profile": Bench("tests.bench.profile", "the demo day from its sound: facts, time of each step", _csv("profile")),
    "startup": Bench("tests.bench.startup", "help, version, search and brief beside Python's start", _csv("startup")),
    "store": Bench("tests.bench.store", "search, brief, due and stock over 100,000 visits", _csv("store")),
    "chores": Bench("tests.bench.chores", "back-up, review and removal among 20,000 visits", _csv("chores")),
    "export": Bench("tests.bench.export", "each form of export of 200 visits", _csv("export")),
    "pages": Bench("tests.bench.pages", "the review's pages, 20 and 20,000 visits", _csv("pages")),
    "evening": Bench("tests.bench.evening", "answers and keys that the demo day's review takes", _csv("evening")),
    "silent": Bench("tests.bench.silent", "what is flagged, and what stays wrong unseen", _csv("silent")),
    "wheel": Bench("tests.bench.wheel", "the weight of the wheel", _csv("wheel")),
    "branches": Bench(
        "tests.bench.branches",
        "the share of branches that the tests take",
        _csv("branches"),
        needs="pytest --cov before",
    ),
    "phrases": Bench("tests.bench.phrases", "numbers and intervals beside three libraries", _csv("phrases")),
    "negation": Bench("tests.bench.negation", "denials beside a published NegEx", _csv("negation"), needs="negspacy"),
    "judging": Bench("tests.bench.judging", "loads and silent errors of each level of care", _csv("judging")),
    "second_reader": Bench(
        "tests.bench.second_reader",
        "wrong facts among those that the second reader finds least likely",
        _csv("second_reader"),
        needs="memos that nobody knows: --unknown FILE",
    ),
    "hearing": Bench(
        "tests.bench.hearing", "words, names and facts from sound", _csv("hearing"), needs="spoken memos: --voices DIR"
    ),
    "speed": Bench(
        "tests.bench.hearing.speed",
        "ingest beside plain faster-whisper",
        _csv("hearing_speed"),
        needs="spoken memos: --sound DIR",
    ),
    "archive": Bench(
        "tests.bench.hearing.archive",
        "a long archive on a graphics card",
        _csv("hearing_archive"),
        needs="a folder of memos and a card",
    ),
    "long": Bench(
        "tests.bench.hearing.long",
        "an hour as one memo: memory, words lost or doubled",
        _csv("hearing_long"),
        needs="an archive's folder",
    ),
    "adapter": Bench(
        "tests.bench.adapter",
        "the trade's adapter learnt anew: losses held out",
        _csv("adapter"),
        needs="torch, --voices DIR",
    ),
    "endurance": Bench(
        "tests.endurance", "kills, faults, power cuts, damage", ENDURANCE, ("--full",), "strace, root, some hours"
    ),
}


def main(given: Sequence[str] | None = None) -> int:
    """List, run, or write the README's figures; 1 when a bench failed."""
    mine, passed_on = _split(list(sys.argv[1:] if given is None else given))
    parser = argparse.ArgumentParser(
        prog="python -m tests.bench", description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("names", nargs="*", metavar="NAME", help=", ".join(BENCHES))
    parser.add_argument("--all", action="store_true", help="run every bench that needs nothing but this machine")
    parser.add_argument("--readme", action="store_true", help="write the README's figures from the last rows")
    chosen = parser.parse_args(mine)
    if unknown := [name for name in chosen.names if name not in BENCHES]:
        parser.error(f"there is no bench {unknown[0]}; there are {', '.join(BENCHES)}")
    if passed_on and len(chosen.names) != 1:
        parser.error("what stands behind -- is for one bench; name it")
    names = chosen.names or [name for name in BENCHES if chosen.all and _alone(name)]
    if not names and not chosen.readme:
        print(listing())
    failed = [name for name in names if not run(name, passed_on)]
    if chosen.readme:
        from tests.bench.readme import write

        write()
    for name in failed:
        print(f"The bench {name} failed.", file=sys.stderr)
    return 1 if failed else 0


def _split(given: list[str]) -> tuple[list[str], list[str]]:
    at = given.index("--") if "--" in given else len(given)
    return given[:at], given[at + 1 :]


def _alone(name: str) -> bool:
    """Whether ``--all`` runs it: not what needs more than this project, nor what another bench measures as well."""
    return not BENCHES[name].needs and name != "generator"


def run(name: str, more: Sequence[str] = ()) -> bool:
    """Run one bench; whether it ended well."""
    bench = BENCHES[name]
    print(f"== {name}", flush=True)
    return subprocess.run([sys.executable, "-m", bench.module, *bench.arguments, *more]).returncode == 0


def listing() -> str:
    """A line a bench: its name, when it was last run and with which version, what it measures, what it needs."""
    lines = []
    for name, bench in BENCHES.items():
        needs = f" (needs {bench.needs})" if bench.needs else ""
        lines.append(f"{name:<10} {_last_run(bench):<17} {bench.measures}{needs}")
    return "\n".join(lines)


def _last_run(bench: Bench) -> str:
    """The day and the version of the last row."""
    rows = rows_of(bench.history)
    if not rows:
        return "never run"
    return " ".join(rows[-1][column] for column in ("day", "date", "when", "version") if column in rows[-1])


if __name__ == "__main__":
    sys.exit(main())
