"""Readings of open memos and of what was heard of them by readers that lack some rules, for the second reader.

The reader itself is seldom wrong in memos that it knows, so what it reads there holds hardly anything that is not so.
One that lacks a few of its rules, drawn at random, takes back nothing, overlooks a "no" or takes a foot from elsewhere,
as it does where no rule knows a turn; gold tells what of that is wrong.
"""

from __future__ import annotations

import importlib
import pkgutil
import random
import signal
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from functools import lru_cache
from multiprocessing import Pool
from types import FunctionType, ModuleType
from typing import Any

import pipeline.reading
from pipeline.reading import Reader
from pipeline.record import Transcript, Visit
from pipeline.vocabulary import load_vocabulary
from tests.bench.judging.examples import read
from tests.bench.judging.gathering import heard_readings, open_memos
from tests.facts.scoring import score

ROUNDS = 20  # so often every memo is read
_SHARES = (0.003, 0.006, 0.01, 0.015, 0.02)  # of the rules that are lacking
_LEAST = 0.6  # F1 of a reading that is kept: below, nothing can be learnt of how talk is read
_TOGETHER = 100  # memos that are read by one reader
_LONGEST_S = 5  # a reader that lacks what ends a loop
Answer = Callable[..., Any]
# What a rule says that is lacking, by the beginning of what it returns.
_NOTHING: tuple[tuple[str, Answer], ...] = (
    ("list[", lambda *given, **named: []),
    ("Iterator", lambda *given, **named: iter(())),
    ("set[", lambda *given, **named: set()),
    ("frozenset[", lambda *given, **named: frozenset()),
)


@dataclass(frozen=True)
class Part:
    """Memos ``[first, last)``, open ones or what was heard, that one reader reads; ``seed`` draws what it lacks."""

    seed: int
    heard: bool
    first: int
    last: int


Lacking = tuple[dict[str, Any], str, list[Visit]]  # gold, text, visits


def readings(rounds: int = ROUNDS, processes: int = 2) -> Iterator[Lacking]:
    """Every reading once that is good enough to learn from."""
    seen: set[tuple[str, str, str]] = set()
    with Pool(processes, maxtasksperchild=1) as pool:  # a process each, since what was changed is kept nowhere
        for part, found in pool.imap(_read, _parts(rounds)):
            for place, told in found:
                gold, transcript = _memos(part.heard)[place]
                key = (gold["id"], transcript.text, "".join(told))
                if key not in seen:
                    seen.add(key)
                    yield gold, transcript.text, [Visit.model_validate_json(visit) for visit in told]


def _parts(rounds: int) -> list[Part]:
    parts: list[Part] = []
    for _ in range(rounds):
        for heard in (False, True):
            count = len(_memos(heard))
            for first in range(0, count, _TOGETHER):
                parts.append(Part(len(parts), heard, first, min(count, first + _TOGETHER)))
    return parts


@lru_cache(maxsize=2)
def _memos(heard: bool) -> list[tuple[dict[str, Any], Transcript]]:
    if heard:
        return [(one.take.gold, one.take.transcript) for one in heard_readings()]
    return [(gold, Transcript(text=gold["text"])) for gold in open_memos().values()]


def _read(part: Part) -> tuple[Part, list[tuple[int, list[str]]]]:
    reader = Reader(load_vocabulary())
    _leave_out(part.seed)
    signal.signal(signal.SIGALRM, _too_long)
    found = []
    for place in range(part.first, part.last):
        gold, transcript = _memos(part.heard)[place]
        visits: Sequence[Visit] = []
        with suppress(Exception):  # a rule that relies on one that is lacking may fail in any way
            signal.alarm(_LONGEST_S)
            try:
                visits = read(reader, gold, transcript)
            finally:
                signal.alarm(0)
        if visits and score([(gold, visits)]).f1 >= _LEAST:
            found.append((place, [visit.model_dump_json(exclude={"flags", "notes"}) for visit in visits]))
    return part, found


def _too_long(number: int, frame: object) -> None:
    raise TimeoutError


def _leave_out(seed: int) -> None:
    """Put what says nothing in the place of some rules, wherever they are used by name."""
    draw = random.Random(seed)
    share = draw.choice(_SHARES)
    modules = reading_modules()
    for rule, nothing in rules(modules):
        if draw.random() < share:
            for module in modules:
                for name in [name for name, value in vars(module).items() if value is rule]:
                    setattr(module, name, nothing)


def reading_modules() -> list[ModuleType]:
    """All modules that read."""
    names = (found.name for found in pkgutil.walk_packages(pipeline.reading.__path__, "pipeline.reading."))
    return [importlib.import_module(name) for name in names]


def rules(modules: Sequence[ModuleType]) -> list[tuple[FunctionType, Answer]]:
    """Every function that can be done without, in a fixed order, with what says nothing in its place."""
    found = []
    for module in modules:
        for _, value in sorted(vars(module).items()):
            if isinstance(value, FunctionType) and value.__module__ == module.__name__:
                nothing = _nothing(str(value.__annotations__.get("return", "")))
                if nothing is not None:
                    found.append((value, nothing))
    return found


def _nothing(returned: str) -> Answer | None:
    if returned == "bool":
        return lambda *given, **named: False
    if returned == "None" or returned.endswith("| None"):
        return lambda *given, **named: None
    return next((nothing for start, nothing in _NOTHING if returned.startswith(start)), None)
