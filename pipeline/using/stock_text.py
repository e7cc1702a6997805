"""The order list as a table, as rows and as values."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from pipeline.using.cells import csv_text
from pipeline.using.columns import table
from pipeline.using.stock import Stock, StockLine
from pipeline.using.values import as_values
from pipeline.using.wording import SIGN, day_words

CSV_COLUMNS = (
    "list", "from", "to", "kind", "what", "fronts", "hinds", "number", "size_or_type_from_before",
    "new_or_reset_not_said", "not_looked_at",
)  # fmt: skip


def stock_lines(stock: Stock) -> list[str]:
    """What was used, and what is foreseen, each as a table of 80 columns with what its numbers rest on."""
    visits = f"{stock.visits_due} visit{'' if stock.visits_due == 1 else 's'} due"
    lines = [f"Used from {day_words(stock.since)} to {day_words(stock.until)}", *_table(stock.used), ""]
    lines += [f"Foreseen to {day_words(stock.due_until)}, {visits}, if every shod foot gets a new shoe"]
    lines += [*_table(stock.foreseen), *_legend([*stock.used, *stock.foreseen])]
    if stock.not_known:
        have = "has no set-up on record and is" if stock.not_known == 1 else "have no set-up on record and are"
        lines.append(f"{stock.not_known} of the horses due {have} not in it.")
    return lines


def stock_csv(stock: Stock) -> str:
    """Both lists as rows under CSV_COLUMNS."""
    lists = (
        ("used", stock.since, stock.until, stock.used),
        ("foreseen", stock.until, stock.due_until, stock.foreseen),
    )
    return csv_text(CSV_COLUMNS, (_row(name, start, end, line) for name, start, end, lines in lists for line in lines))


def _row(name: str, start: date, end: date, line: StockLine) -> list[str | int]:
    numbers = (line.fronts, line.hinds, line.number, line.assumed, line.unsure, line.flagged)
    return [name, start.isoformat(), end.isoformat(), line.kind, line.what, *numbers]


def stock_json(stock: Stock) -> dict[str, object]:
    """Both lists as JSON values."""
    values = as_values(stock)
    assert isinstance(values, dict)
    return values


def _table(lines: Sequence[StockLine]) -> list[str]:
    if not lines:
        return ["Nothing, as far as this book goes."]
    rows = [
        (
            line.kind,
            line.what,
            *map(_n, (line.fronts, line.hinds, line.number, line.assumed, line.unsure, line.flagged)),
        )
        for line in lines
    ]
    head = ("kind", "what", "fronts", "hinds", "all", "before", "unsaid", SIGN)
    return table(head, rows, wrapped=1, right=(2, 3, 4, 5, 6, 7))


def _n(number: int) -> str:
    return str(number) if number else "-"


def _legend(lines: Sequence[StockLine]) -> list[str]:
    """What the last columns count, as far as they count anything."""
    legend = []
    if any(line.assumed for line in lines):
        legend.append("before: size, type or number taken from an earlier visit.")
    if any(line.unsure for line in lines):
        legend.append("unsaid: whether the shoe is new or reset was not said.")
    if any(line.flagged for line in lines):
        legend.append(f"{SIGN}: not looked at yet.")
    return legend
