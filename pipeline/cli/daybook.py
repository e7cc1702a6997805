"""A day at a glance: who was seen, what was kept, what wants a look, what it took."""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from rich.box import ROUNDED
from rich.console import Console
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from pipeline.cli.output import LOOK, console, counted, flag_words
from pipeline.ingest import Outcome
from pipeline.record import FEET, Fact, Flag, MemoRecord, Status, Visit
from pipeline.sentences import capital, in_a_row
from pipeline.using.wording import clock, fact_words, harmless

SHOWN_LOOKS = 2  # doubts of a visit that the day's page shows; the visit's own page has them all


@dataclass(frozen=True)
class Day:
    """What became of a day's memos; ``took_s`` is the time it took in seconds."""

    outcomes: Sequence[Outcome]
    took_s: float
    store: Path

    def records(self) -> Iterator[tuple[Path, MemoRecord]]:
        """The memos that were kept, each with its file."""
        return ((outcome.path, outcome.record) for outcome in self.outcomes if outcome.record)

    def visits(self) -> Iterator[tuple[int, Path, Visit]]:
        """The visits that were kept, each with its number and its file."""
        for outcome in self.outcomes:
            if outcome.record:
                for number, visit in zip(outcome.visit_ids, outcome.record.visits, strict=True):
                    yield number, outcome.path, visit


def print_day(day: Day) -> None:
    """Print the day: a table of visits, what wants a look, cautions, counts, and what to try next."""
    out = console()
    out.print(_visits_table(day))
    _print_looks(out, day)
    _print_cautions(out, day)
    out.print(_took(day), markup=False)
    _print_next(out, day)


def _visits_table(day: Day) -> Table:
    table = Table(title="The day's visits", box=ROUNDED, title_style="bold", title_justify="left")
    table.add_column("visit", justify="right")
    for heading in ("horse", "feet", "found and done"):
        table.add_column(heading)
    table.add_column("facts", justify="right")
    table.add_column("look", justify="right")
    for number, _, visit in day.visits():
        looks = _looks(visit)
        table.add_row(
            str(number),
            Text(harmless(_horse(visit))),
            _feet(visit.facts),
            Text(_gist(visit.facts)),
            str(len(visit.facts)),
            f"{looks} {LOOK}" if looks else "-",
        )
    return table


def _horse(visit: Visit) -> str:
    name = visit.horse or "no name heard"
    return name if visit.horse_match == "known" else f"{name} ({visit.horse_match.value})"


def _feet(facts: Sequence[Fact]) -> str:
    feet = [foot for foot in FEET if any(fact.foot == foot for fact in facts)]
    return "all four" if len(feet) == len(FEET) else " ".join(feet)


def _gist(facts: Sequence[Fact]) -> str:
    """Findings and work of today, each once, in the order said; "?" marks what is only suspected."""
    told = [fact for fact in facts if fact.slot in ("finding", "work") and fact.status in _TODAY]
    words = (str(fact.value).replace("_", " ") + ("?" if fact.status is Status.SUSPECTED else "") for fact in told)
    return ", ".join(dict.fromkeys(words))


_TODAY = (Status.PRESENT, Status.SUSPECTED)


def _looks(visit: Visit) -> int:
    return sum(fact.flagged for fact in visit.facts) + len(visit.flags)


def _print_looks(out: Console, day: Day) -> None:
    rows = [row for number, _, visit in day.visits() for row in _visit_looks(number, visit)]
    rows += [(path.name, _sound_looks(record.flags)) for path, record in day.records() if record.flags]
    rows += [(outcome.path.name, str(outcome.problem)) for outcome in day.outcomes if outcome.problem]
    if not rows:
        return
    out.print(f"\nWhat wants a look {LOOK}", style="bold", markup=False)
    grid = Table.grid(padding=(0, 1), pad_edge=True)
    for where, what in rows:
        grid.add_row(Text(harmless(where)), Text(harmless(what)))
    out.print(grid)


def _visit_looks(number: int, visit: Visit) -> list[tuple[str, str]]:
    """A visit's first doubts, a row each; what is the same on several feet is said once."""
    feet: dict[str, list[str]] = {}
    for fact in visit.facts:
        if fact.flagged:
            feet.setdefault(f"{fact_words(fact)}: {in_a_row(fact.reasons)}", []).append(fact.foot or "")
    doubts = [flag_words(flag).removeprefix(LOOK).strip() for flag in visit.flags]
    doubts += [" ".join([*filter(None, dict.fromkeys(where)), words]) for words, where in feet.items()]
    shown = doubts[:SHOWN_LOOKS]
    if len(doubts) > SHOWN_LOOKS:
        shown.append(f"and {len(doubts) - SHOWN_LOOKS} more: show {number}")
    return [(f"visit {number}" if place == 0 else "", doubt) for place, doubt in enumerate(shown)]


def _sound_looks(flags: Sequence[Flag]) -> str:
    """How many stretches of a memo want to be listened to, and where they start; other doubts in full."""
    at = [clock(flag.start) for flag in flags if flag.start is not None]
    stretches = [f"{counted(len(at), 'stretch', 'stretches')} to listen to, at {', '.join(at)}"] if at else []
    return "; ".join([*stretches, *(capital(flag.reason) for flag in flags if flag.start is None)])


def _print_cautions(out: Console, day: Day) -> None:
    cautions = dict.fromkeys(caution for _, record in day.records() for caution in record.cautions)
    if cautions:
        out.print("\nCautions", style="bold")
    for caution in cautions:
        out.print(Padding(Text(caution), (0, 0, 0, 2)))


def _took(day: Day) -> str:
    visits = list(day.visits())
    facts = sum(len(visit.facts) for _, _, visit in visits)
    horses = len({visit.horse for _, _, visit in visits if visit.horse})
    looks = sum(_looks(visit) for _, _, visit in visits) + sum(len(record.flags) for _, record in day.records())
    sound_s = sum(record.memo.seconds or 0 for _, record in day.records())
    memos = sum(1 for _ in day.records())
    kept = f"{counted(horses, 'horse')}, {counted(len(visits), 'visit')}, {counted(facts, 'fact')} kept"
    return (
        f"\n{counted(memos, 'memo')} ({sound_s / 60:.1f} min of sound) in {day.took_s:.0f} s: "
        f"{kept}, {looks} to look at."
    )


def _print_next(out: Console, day: Day) -> None:
    visits = list(day.visits())
    if not visits:
        return
    command = _command()
    number = max(visits, key=lambda numbered: len(numbered[2].facts))[0]
    named = next((visit.horse for _, _, visit in visits if visit.horse_match == "known" and visit.horse), None)
    out.print("\nTry next", style="bold")
    out.print(f"  {command} show {number} --store {day.store}", markup=False, soft_wrap=True)
    out.print(f"  {command} search thrush --store {day.store}", markup=False, soft_wrap=True)
    if named:
        out.print(f'  {command} export "{named}" --format md --store {day.store}', markup=False, soft_wrap=True)


def _command() -> str:
    """How this very program is called from here."""
    if shutil.which("clinchbook"):
        return "clinchbook"
    called = Path(sys.argv[0])
    if called.name == "__main__.py":
        return "python -m pipeline.cli"
    with suppress(ValueError):  # on another drive of Windows
        return os.path.relpath(called)
    return str(called)
