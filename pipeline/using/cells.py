"""Cells of a CSV file that a spreadsheet may open."""

from __future__ import annotations

# The wide forms are formula signs to some spreadsheets too.
_DANGEROUS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")


def spreadsheet_safe(value: str | float | int | None) -> str | float | int:
    """A value as a cell: text that a spreadsheet would run is made plain text by an apostrophe in front."""
    if value is None:
        return ""
    if isinstance(value, float) and value.is_integer():
        return int(value)
    if not isinstance(value, str):
        return value
    plain = value.replace("\x00", "")
    # Some spreadsheets pass over white space before they look for a formula.
    return f"'{plain}" if plain.lstrip(" \n").startswith(_DANGEROUS) else plain
