"""Lengths and their units: what a number is in millimetres whose unit was said, or was not.

Inches are turned into millimetres (1 in = 25.4 mm exactly; international inch, 1959).
"""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.number_context import LENGTHS
from pipeline.reading.numbers import Number

MM_PER_UNIT = {"inch": Fraction(254, 10), "mm": Fraction(1), "cm": Fraction(10)}
# The largest bare number that is read as inches, and as centimetres; common practice, no source.
LARGEST_IN = {
    "toe_length": (Fraction(5), Fraction(15)),
    "heel_height": (Fraction(3), Fraction(9)),
    "hoof_width": (Fraction(8), Fraction(20)),
    "sole_depth": (Fraction(3, 2), Fraction(3, 2)),
}


def fits(slot: str, number: Number, unit: Fraction) -> bool:
    """Whether a length may be in the unit of the one before: "width thirteen centimetres, toe length eighty-five"."""
    inches, centimetres = LARGEST_IN[slot]
    if unit == MM_PER_UNIT["mm"]:
        return number.value > inches
    return number.value <= (inches if unit == MM_PER_UNIT["inch"] else centimetres)


def likely_unit(slot: str, number: Number) -> Fraction:
    """Millimetres in the unit of a length whose unit nobody said: 1 for what is no length.

    No toe is shorter than 20 mm or longer than 5 inches, no sole deeper than an inch and a half; common practice, no
    source.
    """
    if slot not in LENGTHS:
        return Fraction(1)
    inches, centimetres = LARGEST_IN[slot]
    if number.value <= inches:
        return MM_PER_UNIT["inch"]
    return MM_PER_UNIT["cm" if number.value <= centimetres else "mm"]
