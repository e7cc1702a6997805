"""``clinchbook extract --explain``: why a memo was read as it was, in columns of words, none of it told by colour."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from rich.text import Text

from pipeline.cli.output import console
from pipeline.record import FEET
from pipeline.using.wording import harmless

if TYPE_CHECKING:
    from pipeline.reading.explain import CueRow, Effect, Explanation, Said, SpanRow

_LEAST, _MOST = 80, 100  # characters of a line
_INDENT = 6
_COLUMNS = (("foot", 9), ("status", 10), ("slot: value", 32), ("zone", 16), ("severity", 0))
_KINDS = {  # what a cue of some class is when it is not plainly that
    ("denial", "pseudo"): "no denial",
    ("doubt", "pseudo"): "no doubt",
    ("doubt", "sought"): "looked for",
    ("time", "today"): "today",
    ("time", "neutral"): "no time",
    ("plan", "condition"): "condition",
    ("plan", "main"): "plan begins",
}


def print_explanation(explanation: Explanation) -> None:
    """Print what was kept, what was not and why, and what each cue changed."""
    out = console()
    width = min(max(out.width, _LEAST), _MOST)
    for line in explanation_lines(explanation, width):
        heading = bool(line) and line == line.upper()
        out.print(Text(harmless(line), style="bold" if heading else ""), soft_wrap=True)


def explanation_lines(explanation: Explanation, width: int = _LEAST) -> Iterator[str]:
    """The explanation as lines of at most ``width`` characters; headings are in capitals."""
    yield "KEPT"
    yield from _rows(explanation.kept, width)
    yield ""
    yield "SAID AND NOT KEPT"
    yield from _rows(explanation.dropped, width)
    yield ""
    yield "CUES, AND WHAT EACH CHANGED"
    for cue in explanation.cues:
        yield from _cue(cue, width)
    if not explanation.cues:
        yield "none"


def _rows(rows: tuple[SpanRow, ...], width: int) -> Iterator[str]:
    if not rows:
        yield "none"
        return
    yield "".join(name.ljust(room) for name, room in _COLUMNS)
    for feet, row in _by_foot(rows):
        cells = (_feet(feet), row.status, f"{row.slot}: {_value(row.value)}", row.zone, row.severity)
        shown = (_plain(cell).ljust(room) for cell, (_, room) in zip(cells, _COLUMNS, strict=True))
        yield "".join(shown).rstrip()
        yield from _wrapped(f"“{row.words}”", width)
        if row.why:
            yield from _wrapped(f"not kept: {row.why}", width)
        sure = f"sure {row.confidence:.2f}; " if row.confidence is not None else ""
        rules = "; ".join(rule for rule in row.rules if rule != row.why)
        yield from _wrapped(f"{sure}matched: {_plain(row.match)}{'; ' if rules else ''}{rules}", width)


def _by_foot(rows: tuple[SpanRow, ...]) -> Iterator[tuple[list[str], SpanRow]]:
    """Rows that differ in the foot alone are one, with all its feet."""
    together: dict[SpanRow, list[str]] = {}
    for row in rows:
        together.setdefault(replace(row, foot=None), []).extend([row.foot] if row.foot else [])
    for row, feet in together.items():
        yield feet, row


def _cue(cue: CueRow, width: int) -> Iterator[str]:
    kind = _KINDS.get((cue.kind, cue.name), cue.kind)
    words = " and ".join(f"“{words}”" for words in cue.words)
    yield from _wrapped(f"{kind}: {words}{', of which one would do' if len(cue.words) > 1 else ''}", width, 0)
    together: dict[Effect, list[str]] = {}
    for effect in cue.effects:
        together.setdefault(replace(effect, foot=None), []).extend([effect.foot] if effect.foot else [])
    for effect, feet in together.items():
        thing = " ".join([*filter(None, [_feet(feet)]), _plain(effect.slot), _plain(_value(effect.value))])
        yield from _wrapped(f"{thing}: {_said(effect.now)} (without: {_said(effect.without)})", width)
    if not cue.effects:
        yield from _wrapped("changes nothing here", width)


def _feet(feet: list[str]) -> str:
    return "all four" if len(feet) == len(FEET) else " ".join(feet)


def _said(said: Said | None) -> str:
    return ", ".join(_plain(part) for part in said if part) if said else "not kept"


def _plain(cell: str | None) -> str:
    return (cell or "").replace("_", " ")


def _value(value: str | float) -> str:
    return value if isinstance(value, str) else f"{value:g}"


def _wrapped(text: str, width: int, indent: int = _INDENT) -> list[str]:
    return textwrap.wrap(
        " ".join(text.split()), width, initial_indent=" " * indent, subsequent_indent=" " * (indent + 2)
    )
