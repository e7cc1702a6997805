"""A CSV file that a spreadsheet may open, and its cells."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence

Cell = str | float | int | None

# The wide forms are formula signs to some spreadsheets too.
_DANGEROUS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")


def csv_text(columns: Sequence[str], rows: Iterable[Iterable[Cell]]) -> str:
    """Rows under their columns as RFC 4180 has them; every cell is safe to open."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(columns)
    writer.writerows([spreadsheet_safe(cell) for cell in row] for row in rows)
    return out.getvalue()


def spreadsheet_safe(value: Cell) -> str | float | int:
    """A value as a cell: text that a spreadsheet would run is made plain text by an apostrophe in front, and
    what is so or not is yes or no."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float) and value.is_integer():
        return int(value)
    if not isinstance(value, str):
        return value
    plain = value.replace("\x00", "")
    # Some spreadsheets pass over white space before they look for a formula.
    return f"'{plain}" if plain.lstrip(" \n").startswith(_DANGEROUS) else plain
