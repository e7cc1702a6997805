"""``python -m tests.endurance [--full] [--part NAME ...] [--seed N]``: run the parts and say what came of them.

Ends with 1 when anything failed. A full run is written into results.csv. A part that this machine cannot run says why.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # a process that forks must have one thread

from pipeline import __version__
from tests.endurance import (
    disks,
    faults,
    killing,
    lists,
    network,
    power_cuts,
    reviews,
    sounds,
    system_calls,
    texts,
    together,
)
from tests.endurance.outcome import CannotRunError, Outcome, remember


@dataclass(frozen=True)
class Part:
    """A part by its name, in its short and its full form; each takes the seed."""

    name: str
    short: Callable[[int], list[Outcome]]
    full: Callable[[int], list[Outcome]]


PARTS = (
    Part("order", lambda seed: [system_calls.order()], lambda seed: [system_calls.order()]),
    Part("kills", lambda seed: killing.run(20, seed), lambda seed: killing.run(1000, seed)),
    Part("reviews", lambda seed: reviews.run(20, seed), lambda seed: reviews.run(1000, seed)),
    Part("together", lambda seed: together.run(1, seed), lambda seed: together.run(25, seed)),
    Part("faults", lambda seed: faults.run(13), lambda seed: faults.run(1)),
    Part("calls", lambda seed: [system_calls.each(150)], lambda seed: [system_calls.each(1)]),
    Part("power", lambda seed: [power_cuts.run(seed, 8, 1)], lambda seed: [power_cuts.run(seed, 1, 8)]),
    Part("disks", lambda seed: disks.run(320), lambda seed: disks.run(8)),
    Part("sounds", lambda seed: sounds.run(5, seed), lambda seed: sounds.run(500, seed)),
    Part("texts", lambda seed: texts.run(200, 0, seed), lambda seed: texts.run(100_000, 5, seed)),
    Part("lists", lambda seed: lists.run(30, 7, seed), lambda seed: lists.run(5000, 1, seed)),
    Part("network", lambda seed: network.run(False), lambda seed: network.run(True)),
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run what was chosen."""
    parser = argparse.ArgumentParser(prog="python -m tests.endurance", description=__doc__)
    parser.add_argument("--full", action="store_true", help="everything at full length, remembered in results.csv")
    parser.add_argument("--part", action="append", choices=[part.name for part in PARTS], help="only this part")
    parser.add_argument("--seed", type=int, default=int(time.time()), help="random choices follow from this number")
    chosen = parser.parse_args(arguments)
    outcomes = []
    for part in PARTS:
        if chosen.part is None or part.name in chosen.part:
            outcomes += _run(part, chosen.full, chosen.seed)
    if chosen.full:
        parts = "".join(f" --part {name}" for name in chosen.part or ())
        remember(outcomes, f"python -m tests.endurance --full{parts} --seed {chosen.seed}", __version__)
    return int(any(outcome.failures for outcome in outcomes))


def _run(part: Part, full: bool, seed: int) -> list[Outcome]:
    began = time.monotonic()
    try:
        outcomes = (part.full if full else part.short)(seed)
    except CannotRunError as reason:
        print(f"{part.name}: not run, {reason}", flush=True)
        return []
    for outcome in outcomes:
        remarks = f" ({'; '.join(outcome.remarks)})" if outcome.remarks else ""
        print(f"{outcome.part}: {outcome.cases} cases, {len(outcome.failures)} failures{remarks}", flush=True)
        for failure in outcome.failures[:50]:
            print(f"    {failure}", flush=True)
    print(f"    seed {seed}, {time.monotonic() - began:.0f} s", flush=True)
    return outcomes


if __name__ == "__main__":
    sys.exit(main())
