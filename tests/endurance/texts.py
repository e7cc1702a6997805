"""Damaged memos through the whole of reading and judging: never a traceback, in bounded time and memory."""

from __future__ import annotations

import json
import random
import time
from dataclasses import dataclass
from datetime import date
from functools import cache, partial
from pathlib import Path

from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import Ingest
from pipeline.record import MemoRecord, RosterHorse
from pipeline.vocabulary import load_vocabulary
from tests.endurance.apart import Caught, run_apart
from tests.endurance.damage import damaged_text
from tests.endurance.outcome import Outcome

CORPUS = Path(__file__).resolve().parents[1] / "corpus"
DAY = date(2026, 3, 2)
_BATCH = 500
_MEMORY = 1 << 30
_SLOWEST_S = 10.0  # a memo takes some milliseconds; a machine in other use may take a hundred times as long
_LONG_WORDS = 9000  # an hour of steady talk at 150 words a minute


@dataclass(frozen=True)
class Memos:
    """The open memos of the corpora and every name on their rosters."""

    texts: list[str]
    roster: list[RosterHorse]


@cache
def memos() -> Memos:
    """The memos that damage starts from; never the kept ones."""
    lines = [
        json.loads(line)
        for path in sorted(CORPUS.glob("open_*.jsonl"))
        for line in path.read_text(encoding="utf-8").splitlines()
    ]
    names = dict.fromkeys(name for line in lines for name in line["roster"])
    return Memos([line["text"] for line in lines], [RosterHorse(name=name) for name in names])


@cache
def reading() -> Ingest:
    """The reader behind the one way in; loaded once, before any child is made."""
    loaded = Ingest(HearingSettings(), load_vocabulary())
    loaded.read_text(memos().texts[0], memos().roster[:8], DAY)
    return loaded


def run(count: int, long: int, seed: int) -> list[Outcome]:
    """Read ``count`` damaged memos and ``long`` memos of an hour."""
    outcome = Outcome("damaged texts", remarks=[f"seed {seed}"])
    reading()
    for first in range(0, count, _BATCH):
        numbers = range(first, min(first + _BATCH, count))
        ending = run_apart(partial(_batch, numbers, seed), seconds=_SLOWEST_S * 30, memory=_MEMORY)
        outcome.cases += len(numbers)
        outcome.failures += ending.value or []
        outcome.expect(not ending.trouble, f"texts {first} and after: {ending.trouble.strip()[-300:]}")
    return [outcome, _long_memos(long, seed)]


def _batch(numbers: range, seed: int) -> list[str]:
    return [problem for number in numbers for problem in _one(number, seed)]


def _one(number: int, seed: int) -> list[str]:
    chance = random.Random(f"{seed} text {number}")
    text = damaged_text(memos().texts, chance)
    roster = chance.sample(memos().roster, chance.choice((0, 1, 8, 40)))
    began = time.monotonic()
    with Caught() as caught:
        wrong = wrong_record(text, reading().read_text(text, roster, DAY))
    if caught.trouble:
        wrong = [caught.trouble.strip()[-400:]]
    if time.monotonic() - began > _SLOWEST_S:
        wrong.append(f"took {time.monotonic() - began:.0f} s")
    return [f"text {number} of seed {seed}, {text[:300]!r}: {problem}" for problem in wrong]


def wrong_record(text: str, record: MemoRecord) -> list[str]:
    """What no record may be, whatever was said."""
    wrong = []
    facts = [fact for visit in record.visits for fact in visit.facts]
    if MemoRecord.model_validate_json(record.model_dump_json()) != record:
        wrong.append("the record does not survive being written as JSON")
    for fact in facts:
        start, end = fact.span
        if not 0 <= start <= end <= len(text) or fact.quote != text[start:end]:
            wrong.append(f"{fact.slot} {fact.value} quotes {fact.quote!r} where {text[start:end]!r} stands")
        if fact.flagged != bool(fact.reasons):
            wrong.append(f"{fact.slot} {fact.value} is flagged {fact.flagged} for {fact.reasons}")
    if not record.visits:
        wrong.append("no visit at all")
    return wrong


def _long_memos(count: int, seed: int) -> Outcome:
    outcome = Outcome("memos of an hour", count)
    for number in range(count):
        chance = random.Random(f"{seed} long {number}")
        words: list[str] = []
        while len(words) < _LONG_WORDS:
            words += damaged_text(memos().texts, chance).split()
        text = " ".join(words[:_LONG_WORDS])
        limit = 12 * _SLOWEST_S
        ending = run_apart(partial(_read_long, text), seconds=limit, memory=_MEMORY)
        problems = [*(ending.value or []), *([ending.trouble.strip()[-300:]] if ending.trouble else [])]
        outcome.failures += [f"long memo {number} of seed {seed}: {problem}" for problem in problems]
    return outcome


def _read_long(text: str) -> list[str]:
    return wrong_record(text, reading().read_text(text, memos().roster, DAY))
