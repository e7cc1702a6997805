"""Measures through time as a small drawing. matplotlib loads when the first one is made.

Feet are told apart by marker and dash as well as by colour (Okabe and Ito 2008), and the table beside each drawing
says the same in numbers.
"""

from __future__ import annotations

import io
from html import escape
from typing import TYPE_CHECKING, Any

from pipeline.using.measures import Measure
from pipeline.using.wording import number_words

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

_INK = "#123456"  # stands for the page's own colour of words, and is replaced by it
_LINES: dict[str | None, tuple[str, str, str]] = {
    "LF": ("#0072B2", "o", "-"),
    "RF": ("#D55E00", "s", "--"),
    "LH": ("#009E73", "^", "-."),
    "RH": ("#CC79A7", "D", ":"),
    None: ("#0072B2", "o", "-"),
}
_NO_METADATA: dict[str, Any] = dict.fromkeys(("Date", "Creator", "Format", "Type"))
_CROWDED = 40  # days; beyond, markers would hide the lines
_SIZE_IN = (6.4, 2.5)
_SETTINGS: dict[Any, Any] = {
    "date.converter": "concise",
    "svg.hashsalt": "clinchbook",  # the same record gives the same bytes
    "font.family": "sans-serif",
    "font.size": 9,
    "axes.edgecolor": _INK,
    "axes.labelcolor": _INK,
    "xtick.color": _INK,
    "ytick.color": _INK,
    "text.color": _INK,
}


def trend_svg(measure: Measure, ink: str = "currentColor", words_as_shapes: bool = False) -> str:
    """The drawing of a measure with a trend as an SVG element; ``ink`` is the colour of axes and words.

    ``words_as_shapes`` draws the letters, for readers of SVG that know no fonts.
    """
    from matplotlib import rc_context

    out = io.StringIO()
    with rc_context({**_SETTINGS, "svg.fonttype": "path" if words_as_shapes else "none"}):
        _figure(measure).savefig(out, format="svg", transparent=True, metadata=_NO_METADATA)
    svg = out.getvalue()
    svg = svg[svg.index("<svg") :]
    label = escape(f"{measure.name} through time: {_ends(measure)}", quote=True)
    return svg.replace("<svg", f'<svg role="img" aria-label="{label}"', 1).replace(_INK, ink).strip()


def _ends(measure: Measure) -> str:
    told = []
    for position, name in enumerate(measure.column_names):
        numbers = [number for _, row in measure.rows if (number := row[position]) is not None]
        told.append(f"{name} {number_words(numbers[0])} to {number_words(numbers[-1])}")
    return "; ".join(told)


def _figure(measure: Measure) -> Figure:
    from matplotlib.figure import Figure

    figure = Figure(figsize=_SIZE_IN)
    figure.subplots_adjust(left=0.09, right=0.985, bottom=0.12, top=0.88)
    crowded = len(measure.rows) > _CROWDED
    axes = figure.add_subplot()
    for position, (foot, name) in enumerate(zip(measure.columns, measure.column_names, strict=True)):
        points: list[tuple[Any, float]] = [
            (day, number) for day, row in measure.rows if (number := row[position]) is not None
        ]
        colour, marker, dash = _LINES[foot]
        axes.plot(
            [x for x, _ in points], [y for _, y in points],
            color=colour, marker="" if crowded else marker, linestyle=dash, markersize=4, linewidth=1.4, label=name,
        )  # fmt: skip
    axes.set_ylabel(measure.unit or "grade")
    if measure.scale:
        low, high = measure.scale
        axes.set_ylim(low - 0.3, high + 0.3)
        axes.set_yticks(list(range(int(low), int(high) + 1)))
    _dress(axes, len(measure.columns))
    return figure


def _dress(axes: Axes, lines: int) -> None:
    axes.grid(visible=True, color=_INK, alpha=0.2, linewidth=0.5)
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    if lines > 1:
        axes.legend(loc="lower center", bbox_to_anchor=(0.5, 1.0), ncols=lines, frameon=False, handlelength=3)
