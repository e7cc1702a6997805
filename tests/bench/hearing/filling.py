"""Many files heard in several processes at once, so that the rows find them heard already."""

from __future__ import annotations

import multiprocessing
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from pipeline.vocabulary import load_vocabulary
from tests.bench.hearing.recognising import Device, Listener, ears

Job = tuple[Path, tuple[str, ...]]  # a file, and the names that are listened for in it
_listeners: dict[str, Listener] = {}


def fill(jobs: Sequence[Job], names: Sequence[str], kept: Path, device: Device, processes: int) -> None:
    """Hear every file through every configuration of ``names``; what was heard is kept in ``kept``.

    Every process uses one core, and has its own copy of the weights for each configuration.
    """
    longest_first = sorted(set(jobs), key=lambda job: job[0].stat().st_size, reverse=True)
    work = [(name, *job) for job in longest_first for name in names]
    spawned = multiprocessing.get_context("spawn")  # a forked recogniser hangs
    with ProcessPoolExecutor(processes, spawned, initializer=_begin, initargs=(names, kept, device)) as pool:
        list(pool.map(_hear, work))


def _begin(names: Sequence[str], kept: Path, device: Device) -> None:
    _listeners.update((ear.name, Listener(ear, kept)) for ear in ears(names, load_vocabulary(), 1, device))


def _hear(work: tuple[str, Path, tuple[str, ...]]) -> None:
    name, path, names = work
    _listeners[name].hear(path, list(names))
