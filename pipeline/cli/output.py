"""Results on stdout: JSON for machines, tables for people. Rich loads when the first table is made."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from pipeline.sentences import capital, in_a_row

if TYPE_CHECKING:
    from rich.console import Console
    from rich.table import Table

    from pipeline.record import Fact, Flag, MemoRecord, Visit

LOOK = "(!)"  # marks what a person must look at, as a visit's own page does; colour alone may not be seen


def print_json(value: Mapping[str, object]) -> None:
    """One JSON object on one line of stdout."""
    sys.stdout.write(json.dumps(value, ensure_ascii=False) + "\n")


def console() -> Console:
    """The console for results; it honours NO_COLOR and never colours a pipe."""
    from rich.console import Console

    return Console(highlight=False)


def error_console() -> Console:
    """The console for progress."""
    from rich.console import Console

    return Console(stderr=True, highlight=False)


def print_record(record: MemoRecord) -> None:
    """A memo's visits as tables."""
    from pipeline.using.wording import harmless

    out = console()

    def line(text: str, style: str | None = None) -> None:
        out.print(harmless(text), style=style, markup=False, soft_wrap=True)

    for visit in record.visits:
        line(visit_title(visit), "bold")
        if visit.facts:
            out.print(_fact_table(visit.facts))
        if visit.notes:
            line(f"Notes: {visit.notes}")
        for flag in visit.flags:
            line(flag_words(flag))
    for flag in record.flags:
        line(flag_words(flag))
    for caution in record.cautions:
        line(f"Caution: {caution}")


def visit_title(visit: Visit) -> str:
    """A visit's heading: horse and day, with a word on how sure the name is."""
    match = {"known": "", "new": " (new horse)", "unclear": f" {LOOK} name unclear"}[visit.horse_match]
    return f"{visit.horse or 'No name heard'}{match}, {visit.date.isoformat()}"


def flag_words(flag: Flag) -> str:
    """A doubt, the words that it is about and where they are in the memo, on one line."""
    from pipeline.using.wording import clock

    at = f" at {clock(flag.start)}" if flag.start is not None else ""
    return f"{LOOK} {capital(flag.reason)}" + (f" (“{flag.quote}”{at})" if flag.quote else at)


def counted(number: int, thing: str, things: str | None = None) -> str:
    """A number and its noun: "1 fact", "2 facts"."""
    return f"{number} {thing if number == 1 else things or f'{thing}s'}"


def _fact_table(facts: Iterable[Fact]) -> Table:
    from rich.table import Table
    from rich.text import Text

    from pipeline.using.wording import fact_words, harmless

    table = Table(box=None, pad_edge=False, header_style="dim")
    for heading in ("", "foot", "fact", "words"):
        table.add_column(heading)
    for fact in facts:
        cells = [
            LOOK if fact.flagged else "",
            fact.foot or "",
            fact_words(fact),
            in_a_row([fact.quote, *fact.reasons]),
        ]
        table.add_row(*(Text(harmless(cell)) for cell in cells))
    return table
