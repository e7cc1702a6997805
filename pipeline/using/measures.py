"""What was measured and graded, through time: the numbers behind the trend drawings and their tables."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from pipeline.keeping import KeptVisit
from pipeline.record import EITHER_SLOTS, FEET, HORSE_SLOTS, Status
from pipeline.using.wording import FOOT_NAMES, MEASURE_UNITS

_MEASURED = {
    "toe_angle": "Toe angle",
    "heel_angle": "Heel angle",
    "toe_length": "Toe length",
    "heel_height": "Heel height",
    "sole_depth": "Sole depth",
    "hoof_width": "Hoof width",
    "wedge": "Wedge",
    "lameness": "Lameness, AAEP grade 0 to 5",
    "obel": "Laminitis, Obel grade 1 to 4",
    "body_condition": "Body condition, Henneke 1 to 9",
    "cresty_neck": "Cresty neck, Carter 0 to 5",
}
_RANGES = {"lameness": (0.0, 5.0), "obel": (1.0, 4.0), "body_condition": (1.0, 9.0), "cresty_neck": (0.0, 5.0)}


@dataclass(frozen=True)
class Measure:
    """One measure: its unit ("" for a grade), the scale's ends if it has any, and per day the number of each foot.

    ``columns`` are the feet in order, None for the whole horse; a day's row has None where nothing was measured.
    """

    slot: str
    name: str
    unit: str
    scale: tuple[float, float] | None
    columns: list[str | None]
    rows: list[tuple[date, list[float | None]]]

    @property
    def column_names(self) -> list[str]:
        """The columns' headings."""
        none = "Whole horse" if self.slot in HORSE_SLOTS | EITHER_SLOTS else "No foot said"
        return [FOOT_NAMES[column].capitalize() if column else none for column in self.columns]

    @property
    def has_trend(self) -> bool:
        """Whether there are two days to draw a line between."""
        return len(self.rows) > 1


def measures(visits: Sequence[KeptVisit]) -> list[Measure]:
    """Every measure of which something was found at a visit, in a fixed order."""
    found: dict[str, dict[date, dict[str | None, float]]] = {}
    for visit in visits:
        for fact in visit.visit.facts:
            if fact.slot in _MEASURED and fact.status is Status.PRESENT and isinstance(fact.value, int | float):
                by_day = found.setdefault(fact.slot, {})
                by_day.setdefault(visit.visit.date, {})[fact.foot] = float(fact.value)
    return [_measure(slot, found[slot]) for slot in _MEASURED if slot in found]


def _measure(slot: str, by_day: dict[date, dict[str | None, float]]) -> Measure:
    feet = {foot for row in by_day.values() for foot in row}
    columns: list[str | None] = [foot for foot in (*FEET, None) if foot in feet]
    rows = [(day, [by_day[day].get(foot) for foot in columns]) for day in sorted(by_day)]
    return Measure(slot, _MEASURED[slot], MEASURE_UNITS.get(slot, ""), _RANGES.get(slot), columns, rows)
