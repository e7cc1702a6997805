"""Measures through time as small drawings: which lines, places and words, before they become a page or a PDF.

A plotting library took 0.6 s of processor time to load and draw four of them, a third of what a whole record may
take. Feet are told apart by marker and dash as well as by colour (Okabe and Ito 2008, Color universal design), and the
table beside each drawing says the same in numbers.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from math import ceil, cos, floor, log10, pi, sin
from typing import NamedTuple

from pipeline.using.measures import Measure
from pipeline.using.wording import number_words

WIDTH, HEIGHT = 460.0, 178.0  # points
WORD_SIZE = 9.0
_LEFT, _RIGHT, _TOP, _BOTTOM = 34.0, 452.0, 30.0, 158.0
_LETTER = 0.56 * WORD_SIZE  # about the width of one; only the room between words depends on it
_CROWDED = 40  # days; beyond, markers would hide the lines
_TICKS = 6  # at most, on either axis
Point = tuple[float, float]


class Line(NamedTuple):
    """Points joined by a line; ``colour`` None is that of words, ``faint`` a rule in the background, ``dash`` the
    length of a dash and of the gap behind it, None for an unbroken line."""

    points: tuple[Point, ...]
    width: float
    colour: str | None = None
    dash: tuple[float, float] | None = None
    faint: bool = False


class Shape(NamedTuple):
    """A filled shape with straight sides."""

    points: tuple[Point, ...]
    colour: str


class Words(NamedTuple):
    """Words on one line; ``x`` is their start, middle or end."""

    x: float
    y: float
    text: str
    anchor: str = "start"


class Drawing(NamedTuple):
    """A drawing of WIDTH by HEIGHT points, y downwards."""

    lines: list[Line]
    shapes: list[Shape]
    words: list[Words]


class _Look(NamedTuple):
    colour: str
    corners: tuple[Point, ...]  # of its marker, around (0, 0)
    dash: tuple[float, float] | None


_ROUND = tuple((2.1 * cos(pi * step / 6), 2.1 * sin(pi * step / 6)) for step in range(12))
_LOOKS: dict[str | None, _Look] = {
    "LF": _Look("#0072B2", _ROUND, None),
    "RF": _Look("#D55E00", ((-1.9, -1.9), (1.9, -1.9), (1.9, 1.9), (-1.9, 1.9)), (6.0, 2.5)),
    "LH": _Look("#009E73", ((0.0, -2.4), (2.3, 1.8), (-2.3, 1.8)), (12.0, 3.0)),
    "RH": _Look("#CC79A7", ((0.0, -2.6), (2.6, 0.0), (0.0, 2.6), (-2.6, 0.0)), (1.5, 2.5)),
    None: _Look("#0072B2", _ROUND, None),
}


def trend(measure: Measure) -> Drawing:
    """The drawing of a measure that has a trend."""
    drawing = Drawing([], [], [Words(_LEFT, _TOP - 7, measure.unit or "grade", "end")])
    numbers = [number for _, row in measure.rows for number in row if number is not None]
    low, high, marks = _rising(measure.scale, min(numbers), max(numbers))
    first, last = measure.rows[0][0], measure.rows[-1][0]

    def at(day: date, number: float) -> Point:
        across = (day - first).days / (last - first).days
        return _LEFT + 5 + across * (_RIGHT - _LEFT - 10), _BOTTOM - (number - low) / (high - low) * (_BOTTOM - _TOP)

    for mark in marks:
        _, y = at(first, mark)
        drawing.lines.append(Line(((_LEFT, y), (_RIGHT, y)), 0.5, faint=True))
        drawing.words.append(Words(_LEFT - 4, y + 3, number_words(mark), "end"))
    for day, name in day_marks(first, last):
        x, _ = at(day, low)
        drawing.lines.append(Line(((x, _TOP), (x, _BOTTOM)), 0.5, faint=True))
        room = len(name) * _LETTER / 2
        drawing.words.append(Words(min(x, WIDTH - room), _BOTTOM + 13, name, "middle"))
    drawing.lines.append(Line(((_LEFT, _TOP), (_LEFT, _BOTTOM), (_RIGHT, _BOTTOM)), 0.8))
    for place, foot in enumerate(measure.columns):
        points = tuple(at(day, number) for day, row in measure.rows if (number := row[place]) is not None)
        _draw(drawing, _LOOKS[foot], points, with_markers=len(measure.rows) <= _CROWDED)
    if len(measure.columns) > 1:
        _tell_apart(drawing, measure, with_markers=len(measure.rows) <= _CROWDED)
    return drawing


def _draw(drawing: Drawing, look: _Look, points: tuple[Point, ...], with_markers: bool) -> None:
    drawing.lines.append(Line(points, 1.4, look.colour, look.dash))
    if with_markers:
        drawing.shapes.extend(Shape(tuple((x + dx, y + dy) for dx, dy in look.corners), look.colour) for x, y in points)


def _tell_apart(drawing: Drawing, measure: Measure, with_markers: bool) -> None:
    """Which line is which foot's, above the drawing."""
    names = measure.column_names
    x = (_LEFT + _RIGHT - sum(len(name) * _LETTER + 44 for name in names)) / 2
    for foot, name in zip(measure.columns, names, strict=True):
        look = _LOOKS[foot]
        drawing.lines.append(Line(((x, 9.0), (x + 26, 9.0)), 1.4, look.colour, look.dash))
        if with_markers:
            drawing.shapes.append(Shape(tuple((x + 13 + dx, 9 + dy) for dx, dy in look.corners), look.colour))
        drawing.words.append(Words(x + 30, 12, name))
        x += len(name) * _LETTER + 44


def _rising(scale: tuple[float, float] | None, least: float, most: float) -> tuple[float, float, list[float]]:
    """Where the upright axis begins and ends, and its marks: a scale's own steps, else round numbers."""
    if scale is not None:
        low, high = scale
        return low - 0.3, high + 0.3, [float(number) for number in range(int(low), int(high) + 1)]
    if most == least:
        least, most = least - 1, most + 1
    step = _round_step((most - least) / (_TICKS - 1))
    low, high = floor(least / step) * step, ceil(most / step) * step
    count = round((high - low) / step)
    return low, high, [round(low + number * step, 6) for number in range(count + 1)]


def _round_step(least: float) -> float:
    """The smallest of 1, 2, 2.5 and 5 times a power of ten that is not below ``least``."""
    power = 10.0 ** floor(log10(least))
    return next(times * power for times in (1, 2, 2.5, 5, 10) if times * power >= least * (1 - 1e-9))


def day_marks(first: date, last: date) -> Iterator[tuple[date, str]]:
    """The marks of the axis of days: years, else months, else the days themselves."""
    for years in (1, 2, 5, 10, 20):
        marks = _first_days(first, last, 12 * years)
        if years == 1 and len(marks) < 3:
            break
        if len(marks) <= 2 * _TICKS:
            yield from ((day, str(day.year)) for day in marks)
            return
    for months in (1, 2, 3, 6):
        marks = _first_days(first, last, months)
        if months == 1 and len(marks) < 2:
            break
        if len(marks) <= _TICKS:
            yield from ((day, f"{day:%Y-%m}") for day in marks)
            return
    days = (last - first).days
    for step in range(0, days + 1, -(-days // (_TICKS - 1))):
        day = first + timedelta(days=step)
        yield day, day.isoformat()


def _first_days(first: date, last: date, months: int) -> Sequence[date]:
    """The first day of every so many months, counted from a January, that lies between two days."""
    begun = first.year * 12 + first.month - 1
    ended = last.year * 12 + last.month - 1
    counts = range(-(-begun // months) * months, ended + 1, months)
    days = [date(count // 12, count % 12 + 1, 1) for count in counts]
    return [day for day in days if first <= day <= last]
