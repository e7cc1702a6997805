"""Sizes and measures compared in words: "toe angle below 48", "sole depth under 3/8 inch", "shoe size above 1".

What is asked becomes a slot, a sign and a bound, each out of a closed set: no word of the user reaches the database.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import combinations

from pipeline.errors import SettingsError
from pipeline.keeping.seen import Comparison
from pipeline.sentences import did_you_mean
from pipeline.terms import NUMBER_SLOTS, SHOE_SIZES, SIZED_SLOTS
from pipeline.vocabulary import Vocabulary

MM_AN_INCH = 25.4
_LENGTHS = frozenset({"toe_length", "heel_height", "sole_depth", "hoof_width"})
_ANGLES = frozenset({"toe_angle", "heel_angle", "wedge"})
_SIGNS = {
    "<": "<", "below": "<", "under": "<", "less than": "<", "smaller than": "<", "shorter than": "<", "lower than": "<",
    "<=": "<=", "=<": "<=", "≤": "<=", "at most": "<=", "no more than": "<=", "not over": "<=", "up to": "<=",
    "=": "=", "==": "=", "is": "=", "exactly": "=", "of": "=",
    "!=": "!=", "<>": "!=", "≠": "!=", "not": "!=", "is not": "!=", "other than": "!=",
    ">=": ">=", "=>": ">=", "≥": ">=", "at least": ">=", "no less than": ">=", "not under": ">=", "from": ">=",
    ">": ">", "above": ">", "over": ">", "more than": ">", "greater than": ">", "bigger than": ">", "longer than": ">",
    "higher than": ">",
}  # fmt: skip
_BETWEEN = re.compile(r"(?P<slot>.+?)\s+between\s+(?P<low>.+?)\s+and\s+(?P<high>.+)")
_SIGN = re.compile(
    r"(?P<slot>[^<>=!≤≥≠]+?)\s*(?P<sign>"
    + "|".join(
        rf"\b{form}\b" if form[0].isalpha() else re.escape(form) for form in sorted(_SIGNS, key=len, reverse=True)
    )
    + r")\s*(?P<bound>[^<>=!≤≥≠]+)"
)
_UNITS = {
    "mm": ("mm", 1.0), "cm": ("mm", 10.0), "inch": ("mm", MM_AN_INCH),
    "degree": ("degrees", 1.0), "week": ("weeks", 1.0), "month": ("weeks", 52 / 12), "fortnight": ("weeks", 2.0),
}  # fmt: skip
_SHORT_UNITS = {"in": "inch", '"': "inch", "″": "inch", "°": "degree"}
_FRACTIONS = {"½": 0.5, "¼": 0.25, "¾": 0.75, "⅛": 0.125, "⅜": 0.375, "⅝": 0.625, "⅞": 0.875}
_AMOUNT = re.compile(
    r"(?P<number>\d+(?:\.\d+)?|\.\d+)?(?:(?:\s+|(?<=\d)-)?(?P<top>\d+)/(?P<bottom>\d+)|\s*(?P<sign>[½¼¾⅛⅜⅝⅞]))?"
    r"\s*(?P<unit>[a-z]+|[\"″°])?\.?"
)
_TEST: dict[str, Callable[[float, float], bool]] = {
    "<": lambda left, right: left < right,
    "<=": lambda left, right: left <= right,
    "=": lambda left, right: left == right,
    "!=": lambda left, right: left != right,
    ">=": lambda left, right: left >= right,
    ">": lambda left, right: left > right,
}


def comparisons(said: str, vocabulary: Vocabulary) -> list[Comparison]:
    """One comparison, or two for "between". Raises SettingsError, saying what was not understood."""
    text = " ".join(said.casefold().split())
    if between := _BETWEEN.fullmatch(text):
        slot = _slot(between["slot"], vocabulary)
        low, high = between["low"], between["high"]
        if not re.search(r"[a-z\"″°]", low):  # "between 3 and 4 inches"
            low += " " + "".join(re.findall(r"[a-z\"″°]+$", high))
        return [_comparison(slot, ">=", low, vocabulary), _comparison(slot, "<=", high, vocabulary)]
    found = _SIGN.fullmatch(text)
    if not found:
        raise SettingsError(f'{said!r} compares nothing; say it like "toe angle below 48" or "shoe size above 1".')
    return [_comparison(_slot(found["slot"], vocabulary), _SIGNS[found["sign"]], found["bound"], vocabulary)]


def _slot(said: str, vocabulary: Vocabulary) -> str:
    name = " ".join(said.replace("_", " ").split())
    forms = vocabulary.spoken("measures") if "measures" in vocabulary.classes else {}
    known = (*NUMBER_SLOTS, *SIZED_SLOTS)
    slot = {other.replace("_", " "): other for other in known}.get(name) or forms.get(name, "")
    slot = "next_visit_weeks" if slot == "weeks" else slot
    if slot not in known:
        names = [other.replace("_", " ") for other in known]
        near = did_you_mean(name, names)
        rest = f".{near}" if near else f"; these can: {', '.join(names)}."
        raise SettingsError(f"{name!r} cannot be compared{rest}")
    return slot


def _comparison(slot: str, sign: str, bound: str, vocabulary: Vocabulary) -> Comparison:
    if slot == "shoe_size":
        return _sized(slot, sign, bound, shoe_size_ranks())
    if slot == "nail_size":
        return _sized(slot, sign, bound, nail_size_ranks())
    return Comparison(slot, sign, bound=_amount(slot, bound.strip(), vocabulary))


def _sized(slot: str, sign: str, bound: str, ranks: dict[str, float]) -> Comparison:
    name = bound.strip()
    if name not in ranks:
        raise SettingsError(f"{name!r} is no {slot.replace('_', ' ')}.")
    return Comparison(slot, sign, among=tuple(size for size, rank in ranks.items() if _TEST[sign](rank, ranks[name])))


def shoe_size_ranks() -> dict[str, float]:
    """Every shoe size to its place in the order of sizes; between two sizes is half-way.

    The order is common practice, no source.
    """
    ranks = {size: float(place) for place, size in enumerate(SHOE_SIZES)}
    between = {f"{low}-{high}": (ranks[low] + ranks[high]) / 2 for low, high in combinations(SHOE_SIZES, 2)}
    return ranks | between


def nail_size_ranks() -> dict[str, float]:
    """Every nail size to its number; slim nails of a size count as that size."""
    numbers = [whole + half for whole in range(1, 17) for half in (0.0, 0.5)]
    return {f"{number:g}{slim}": number for number in numbers for slim in ("", " slim")}


def _amount(slot: str, said: str, vocabulary: Vocabulary) -> float:
    """The bound in the slot's own unit."""
    found = _AMOUNT.fullmatch(said)
    if not found or not (found["number"] or found["bottom"] or found["sign"]):
        raise SettingsError(f"{said!r} is no number; write it like 48, 3.5 inches or 3 1/2 in.")
    amount = float(found["number"] or 0)
    if found["bottom"]:
        amount += float(found["top"]) / (float(found["bottom"]) or float("nan"))
    amount += _FRACTIONS[found["sign"]] if found["sign"] else 0
    return _checked(slot, said, amount * _factor(slot, found["unit"], vocabulary))


def _factor(slot: str, unit: str | None, vocabulary: Vocabulary) -> float:
    if unit is None:
        return 1.0
    spoken = vocabulary.spoken("units") if "units" in vocabulary.classes else {}
    name = _SHORT_UNITS.get(unit) or spoken.get(unit) or unit
    wanted = _unit_of(slot)
    measured, factor = _UNITS.get(name, ("", 0.0))
    if measured != wanted or not wanted:
        counted = f"is counted in {wanted}" if wanted else "has no unit"
        raise SettingsError(f"A {slot.replace('_', ' ')} {counted}; {unit!r} does not fit.")
    return factor


def _unit_of(slot: str) -> str:
    if slot in _LENGTHS:
        return "mm"
    if slot in _ANGLES:
        return "degrees"
    return "weeks" if slot == "next_visit_weeks" else ""


def _checked(slot: str, said: str, bound: float) -> float:
    low, high = NUMBER_SLOTS[slot]
    if low <= bound <= high:
        return round(bound, 3)
    inches = " Say inches if you mean inches." if slot in _LENGTHS and bound < low else ""
    unit = f" {_unit_of(slot)}" if _unit_of(slot) else ""
    name = slot.replace("_", " ")
    raise SettingsError(f"{said!r} is no {name} that can be: they lie between {low:g} and {high:g}{unit}.{inches}")
