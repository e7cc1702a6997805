"""Rows as a plain table of 80 columns: one column takes the room that the others leave, and wraps."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence

from pipeline.using.wording import harmless

WIDTH = 80
_GAP = "  "
_NARROWEST = 16  # the wrapping column keeps at least this
_ELLIPSIS = "…"


def plain(text: str) -> str:
    """``text`` on one line, without what could rewrite a screen."""
    return text if text.isprintable() else harmless(text).replace("\n", " ").replace("\t", " ")


def cut(text: str, width: int) -> str:
    """``text`` in at most ``width`` characters; an ellipsis says that there was more."""
    return text if len(text) <= width else text[: width - 1] + _ELLIPSIS


def table(
    head: Sequence[str], rows: Sequence[Sequence[str]], wrapped: int, right: Sequence[int] = (), widest: int = 22
) -> list[str]:
    """The lines of a table with a heading. Column ``wrapped`` takes the room that is left and wraps; the others are
    cut at ``widest`` characters; columns in ``right`` are set to the right."""
    return [line for lines in row_lines(head, rows, wrapped, right, widest) for line in lines]


def row_lines(
    head: Sequence[str], rows: Sequence[Sequence[str]], wrapped: int, right: Sequence[int] = (), widest: int = 22
) -> list[list[str]]:
    """The same table as the lines of its heading and of every row, so that something may stand between them."""
    cells = [[plain(cell) for cell in row] for row in (head, *rows)]
    widths = [min(widest, max(len(row[place]) for row in cells)) for place in range(len(head))]
    left = WIDTH - sum(one for place, one in enumerate(widths) if place != wrapped) - len(_GAP) * (len(head) - 1)
    longest = max(len(row[wrapped]) for row in cells)
    widths[wrapped] = min(max(left, _NARROWEST), max(longest, 1))
    return [_lines(row, widths, wrapped, right) for row in cells]


def _lines(row: Sequence[str], widths: Sequence[int], wrapped: int, right: Sequence[int]) -> list[str]:
    text = row[wrapped]
    parts = [text] if len(text) <= widths[wrapped] else textwrap.wrap(text, widths[wrapped]) or [""]
    lines = []
    for number, part in enumerate(parts):
        cells = [
            part if place == wrapped else "" if number else cut(cell, widths[place]) for place, cell in enumerate(row)
        ]
        padded = [
            cell.rjust(widths[place]) if place in right else cell.ljust(widths[place])
            for place, cell in enumerate(cells)
        ]
        lines.append(_GAP.join(padded).rstrip())
    return lines
