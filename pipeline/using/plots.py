"""A measure through time as an SVG element for a page."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from pipeline.using.measures import Measure
from pipeline.using.trends import HEIGHT, WIDTH, WORD_SIZE, Drawing, Line, Point, Shape, Words, trend
from pipeline.using.wording import number_words


def trend_svg(measure: Measure) -> str:
    """The drawing of a measure with a trend; axes and words have the colour of the words around it."""
    drawing: Drawing = trend(measure)
    label = escape(f"{measure.name} through time: {_ends(measure)}", quote=True)
    parts = [
        f'<svg role="img" aria-label="{label}" xmlns="http://www.w3.org/2000/svg" '
        f'viewBox="0 0 {WIDTH:g} {HEIGHT:g}" width="{WIDTH:g}pt" height="{HEIGHT:g}pt" '
        f'font-family="sans-serif" font-size="{WORD_SIZE:g}">',
        *map(_line, drawing.lines),
        *map(_shape, drawing.shapes),
        *map(_words, drawing.words),
        "</svg>",
    ]
    return "\n".join(parts)


def _ends(measure: Measure) -> str:
    told = []
    for position, name in enumerate(measure.column_names):
        numbers = [number for _, row in measure.rows if (number := row[position]) is not None]
        told.append(f"{name} {number_words(numbers[0])} to {number_words(numbers[-1])}")
    return "; ".join(told)


def _line(line: Line) -> str:
    dash = f' stroke-dasharray="{line.dash[0]:g} {line.dash[1]:g}"' if line.dash else ""
    faint = ' stroke-opacity="0.2"' if line.faint else ""
    stroke = f'stroke="{line.colour or "currentColor"}" stroke-width="{line.width:g}"'
    return f'<polyline points="{_points(line.points)}" fill="none" {stroke}{dash}{faint}/>'


def _shape(shape: Shape) -> str:
    return f'<polygon points="{_points(shape.points)}" fill="{shape.colour}"/>'


def _words(words: Words) -> str:
    anchor = "" if words.anchor == "start" else f' text-anchor="{words.anchor}"'
    return f'<text x="{words.x:.1f}" y="{words.y:.1f}" fill="currentColor"{anchor}>{escape(words.text)}</text>'


def _points(points: Sequence[Point]) -> str:
    return " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
