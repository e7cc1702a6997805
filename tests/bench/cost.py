"""What a run of Python costs, as a process of its own."""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import time
from collections.abc import Mapping
from typing import NamedTuple, TypeVar

Key = TypeVar("Key")


class Cost(NamedTuple):
    """Milliseconds of the processor, and of the clock."""

    processor: float
    clock: float


def cost(*command: str, may_end: int = 0) -> Cost:
    """What one run of Python with these arguments takes; raises CalledProcessError when it ends otherwise than with 0
    or ``may_end``."""
    before, began = resource.getrusage(resource.RUSAGE_CHILDREN), time.monotonic()
    ended = subprocess.run([sys.executable, *command], capture_output=True, env=surroundings())
    if ended.returncode != may_end:
        ended.check_returncode()
    clock, after = time.monotonic() - began, resource.getrusage(resource.RUSAGE_CHILDREN)
    processor = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return Cost(processor * 1000, clock * 1000)


def taking_turns(tried: Mapping[Key, tuple[str, ...]], rounds: int) -> dict[Key, list[Cost]]:
    """What each of the runs costs, round by round, so that other work on the machine weighs on all of them alike."""
    costs: dict[Key, list[Cost]] = {key: [] for key in tried}
    for _ in range(rounds):
        for key, command in tried.items():
            costs[key].append(cost(*command))
    return costs


def least(costs: list[Cost]) -> Cost:
    """The least processor time and the least clock time."""
    return Cost(min(one.processor for one in costs), min(one.clock for one in costs))


def surroundings() -> dict[str, str]:
    """This process's variables; compiled modules are kept, as they are where the program is installed."""
    return {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
