"""Lengths and angles as spoken, against an independent converter of units."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from num2words import num2words

from pipeline.reading.lengths import MM_PER_UNIT
from tests.reading.conftest import Read
from tests.reading.telling import told

UNITS: pint.UnitRegistry[float] = pint.UnitRegistry()
MODEST = settings(max_examples=100, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
EIGHTHS = ["", "and an eighth", "and a quarter", "and three eighths", "and a half", "and five eighths",
           "and three quarters", "and seven eighths"]  # fmt: skip


def in_mm(value: Fraction, unit: str) -> float:
    return float(UNITS.Quantity(float(value), unit).to("mm").magnitude)


def only_value(read: Read, text: str, slot: str, foot: str = "LF") -> float:
    (visit,) = read(text)
    (fact,) = visit.facts
    assert (fact.foot, fact.slot) == (foot, slot)
    assert isinstance(fact.value, float)
    return fact.value


def test_an_inch_is_exactly_25_4_mm() -> None:
    """The international inch: 25.4 mm exactly (international yard and pound agreement, 1959)."""
    assert MM_PER_UNIT["inch"] == Fraction(254, 10)
    assert in_mm(Fraction(1), "inch") == pytest.approx(25.4, abs=1e-12)


@given(st.integers(2, 5), st.integers(0, 7))
@MODEST
def test_spoken_inches(read: Read, whole: int, eighths: int) -> None:
    text = f"Left front toe length {' '.join([num2words(whole), EIGHTHS[eighths]]).strip()} inches."
    wanted = in_mm(whole + Fraction(eighths, 8), "inch")
    assert only_value(read, text, "toe_length") == pytest.approx(wanted, abs=0.0501)


@given(st.integers(2, 5), st.integers(1, 7))
@MODEST
def test_inches_said_before_their_eighths(read: Read, whole: int, eighths: int) -> None:
    text = f"Left front toe length {num2words(whole)} inches {EIGHTHS[eighths]}."
    wanted = in_mm(whole + Fraction(eighths, 8), "inch")
    assert only_value(read, text, "toe_length") == pytest.approx(wanted, abs=0.0501)


@given(st.integers(60, 130))
@MODEST
def test_millimetres_stay(read: Read, number: int) -> None:
    for spoken in (num2words(number), str(number)):
        assert only_value(read, f"Near fore toe length {spoken} millimetres.", "toe_length") == number


@given(st.integers(6, 13), st.integers(0, 9))
@MODEST
def test_centimetres(read: Read, whole: int, tenths: int) -> None:
    text = f"Near fore toe length {whole}.{tenths} centimetres."
    wanted = in_mm(whole + Fraction(tenths, 10), "cm")
    assert only_value(read, text, "toe_length") == pytest.approx(wanted, abs=0.0501)


@given(st.integers(35, 65), st.booleans())
@MODEST
def test_degrees_stay_degrees(read: Read, whole: int, half: bool) -> None:
    spoken = num2words(whole) + (" and a half" if half else "")
    wanted = whole + 0.5 * half
    assert only_value(read, f"Left front toe angle {spoken} degrees.", "toe_angle") == wanted
    assert only_value(read, f"Toe angle on the left front {spoken}.", "toe_angle") == wanted


@pytest.mark.parametrize(
    ("said", "weeks"), [("two weeks", 2), ("a fortnight", 2), ("fourteen days", 2), ("28 days", 4)]
)
def test_days_and_fortnights_in_weeks(said: str, weeks: int, read: Read) -> None:
    (visit,) = read(f"Back in {said}.")
    assert told(visit) == [f"- next_visit_weeks {weeks} planned"]
    number = {"two weeks": 14, "a fortnight": 14, "fourteen days": 14, "28 days": 28}[said]
    assert UNITS.Quantity(number, "day").to("week").magnitude == pytest.approx(weeks)
