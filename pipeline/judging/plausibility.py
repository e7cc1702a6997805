"""Whether a single value can be: narrower limits than the record's own, read from ``limits.csv`` with their sources."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from pipeline.judging.naming import slot_name
from pipeline.record import Fact

# How a value is told where the slot's name is no noun for it.
_SAID = {
    "nails": "a shoe with {value:g} nails",
    "wedge": "a wedge of {value:g} degrees",
    "next_visit_weeks": "a next visit after {value:g} weeks",
    "obel": "an Obel grade of {value:g}",
}


@dataclass(frozen=True)
class Limits:
    """``low``–``high`` is what occurs; outside ``unusual_low``–``unusual_high`` a value is worth a look."""

    low: float
    high: float
    unusual_low: float
    unusual_high: float
    source: str


@lru_cache(maxsize=1)
def load_limits() -> dict[str, Limits]:
    """Slot to limits, from the data file."""
    text = (files("pipeline.judging") / "limits.csv").read_text(encoding="utf-8")
    rows = csv.DictReader(text.splitlines())
    return {
        row["slot"]: Limits(
            float(row["low"]), float(row["high"]), float(row["unusual_low"]), float(row["unusual_high"]), row["source"]
        )
        for row in rows
    }


def implausible(fact: Fact) -> str | None:
    """A sentence when the value is out of the ordinary, else None."""
    limits = load_limits().get(fact.slot)
    if limits is None or isinstance(fact.value, str):
        return None
    said = _SAID.get(fact.slot, "a {name} of {value:g}").format(name=slot_name(fact.slot), value=fact.value)
    said = said[0].upper() + said[1:]
    if not limits.low <= fact.value <= limits.high:
        return f"{said} hardly occurs ({limits.low:g} to {limits.high:g} does); please check."
    if not limits.unusual_low <= fact.value <= limits.unusual_high:
        return f"{said} is unusual; please check."
    return None
