"""Trends: the axes have round marks, every number lies where it belongs, and each foot has a look of its own."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise
from xml.etree import ElementTree

import pytest

from pipeline.using.measures import Measure
from pipeline.using.plots import trend_svg
from pipeline.using.trends import HEIGHT, WIDTH, day_marks, trend

FIRST = date(2026, 1, 5)


def measure(*rows: Sequence[float | None], columns: tuple[str | None, ...] = ("LF",), weeks: int = 6) -> Measure:
    """Toe lengths every so many weeks."""
    days = [FIRST + timedelta(weeks=weeks * number) for number in range(len(rows))]
    return Measure("toe_length", "Toe length", "mm", None, list(columns), list(zip(days, map(list, rows), strict=True)))


def marks_upwards(one: Measure) -> list[str]:
    """The words at the upright axis, from below."""
    return [words.text for words in trend(one).words if words.anchor == "end"][1:]


@pytest.mark.parametrize(
    ("least", "most", "marks"),
    [
        (85.0, 95.0, ["84", "86", "88", "90", "92", "94", "96"]),
        (48.0, 51.0, ["48", "49", "50", "51"]),
        (88.9, 89.4, ["88.9", "89", "89.1", "89.2", "89.3", "89.4"]),
        (50.0, 50.0, ["49", "49.5", "50", "50.5", "51"]),
        (5.0, 120.0, ["0", "25", "50", "75", "100", "125"]),
    ],
)
def test_the_upright_axis_has_round_numbers_around_what_was_measured(
    least: float, most: float, marks: list[str]
) -> None:
    assert marks_upwards(measure([least], [most])) == marks


def test_a_grade_has_the_steps_of_its_scale() -> None:
    grades = Measure("lameness", "Lameness", "", (0.0, 5.0), [None], measure([1.0], [2.0]).rows)
    assert marks_upwards(grades) == ["0", "1", "2", "3", "4", "5"]
    assert trend(grades).words[0].text == "grade"


@pytest.mark.parametrize(
    ("first", "last", "names"),
    [
        (date(2026, 1, 5), date(2026, 1, 12), "2026-01-05 2026-01-07 2026-01-09 2026-01-11"),
        (date(2026, 1, 5), date(2026, 1, 6), "2026-01-05 2026-01-06"),
        (date(2026, 1, 5), date(2026, 5, 12), "2026-02 2026-03 2026-04 2026-05"),
        (date(2025, 3, 9), date(2026, 2, 8), "2025-05 2025-07 2025-09 2025-11 2026-01"),
        (date(2023, 11, 20), date(2026, 2, 8), "2024 2025 2026"),
        (date(2006, 1, 2), date(2025, 12, 31), "2008 2010 2012 2014 2016 2018 2020 2022 2024"),
    ],
)
def test_the_axis_of_days_has_years_months_or_days(first: date, last: date, names: str) -> None:
    assert [name for _, name in day_marks(first, last)] == names.split()


def test_numbers_lie_where_they_belong_and_gaps_are_passed_over() -> None:
    drawing = trend(measure([84.0, 90.0], [None, 91.0], [94.0, 90.0], columns=("LF", "RH")))
    left, right = [line for line in drawing.lines if line.width == 1.4][:2]
    (x_0, y_0), (x_2, y_2) = left.points
    assert [round(x) for x, _ in right.points] == [round(x_0), round((x_0 + x_2) / 2), round(x_2)]
    assert (round(y_0), round(y_2)) == (158, 30)
    low, high = right.points[0][1], right.points[1][1]
    assert round(low - high, 6) == round((158 - 30) / 10, 6)


def test_every_foot_is_told_by_colour_dash_and_marker() -> None:
    drawing = trend(measure([84.0, 85, 86, 87], [85.0, 86, 87, 88], columns=("LF", "RF", "LH", "RH")))
    looks = {(line.colour, line.dash) for line in drawing.lines if line.width == 1.4}
    assert len(looks) == len({colour for colour, _ in looks}) == len({dash for _, dash in looks}) == 4
    assert [words.text for words in drawing.words[-4:]] == ["Left fore", "Right fore", "Left hind", "Right hind"]
    assert len({(shape.colour, len(shape.points)) for shape in drawing.shapes}) == 4


def test_so_many_days_have_no_markers() -> None:
    assert trend(measure(*([85.0 + number % 3] for number in range(40)))).shapes != []
    assert trend(measure(*([85.0 + number % 3] for number in range(41)))).shapes == []


@pytest.mark.parametrize("weeks", [1, 6, 60])
def test_all_of_it_lies_on_the_paper_and_no_words_on_each_other(weeks: int) -> None:
    drawing = trend(measure(*([85.0 + number, 90.0] for number in range(9)), columns=("LF", "RH"), weeks=weeks))
    points = [point for line in drawing.lines for point in line.points]
    points += [point for shape in drawing.shapes for point in shape.points]
    assert all(0 <= x <= WIDTH and 0 <= y <= HEIGHT for x, y in points)
    below = [(words.x, 0.56 * 9 * len(words.text)) for words in drawing.words if words.anchor == "middle"]
    assert all(x + wide / 2 <= WIDTH + 0.01 for x, wide in below)
    assert all(x + wide / 2 < other - more / 2 for (x, wide), (other, more) in pairwise(below))


def test_its_svg_is_well_formed_says_what_it_shows_and_takes_the_page_s_colour() -> None:
    svg = trend_svg(measure([88.9], [86.0]))
    root = ElementTree.fromstring(svg)
    assert root.attrib["aria-label"] == "Toe length through time: Left fore 88.9 to 86"
    texts = root.iter("{http://www.w3.org/2000/svg}text")
    assert {text.attrib["fill"] for text in texts} == {"currentColor"}
