"""How much harm an error does, and how doubtful a thing is: the order of the review. The table says why."""

from __future__ import annotations

import csv
from functools import lru_cache
from importlib.resources import files

from pipeline.record import EITHER_SLOTS, HORSE_SLOTS, Fact, Flag, FlagKind

_ANY = "*"


@lru_cache(maxsize=1)
def weights() -> dict[str, tuple[float, float | None]]:
    """By value, slot or kind of flag: the harm (1-10) that an error does, and for a flag the doubt (0-1)."""
    text = (files("pipeline.using.review") / "harm.csv").read_text(encoding="utf-8")
    rows = csv.DictReader(text.splitlines())
    return {row["subject"]: (float(row["weight"]), float(row["doubt"]) if row["doubt"] else None) for row in rows}


def fact_score(fact: Fact) -> float:
    """Harm times doubt of a fact; a fact whose foot is not sure does the harm of the wrong foot at least."""
    table = weights()
    harm = next(table[key][0] for key in (str(fact.value), fact.slot, _ANY) if key in table)
    if foot_in_doubt(fact):
        harm = max(harm, table["foot"][0])
    return harm * (1 - fact.confidence)


def flag_score(flag: Flag) -> float:
    """Harm times doubt of a flag that no fact carries."""
    subject = "horse" if flag.kind is FlagKind.HORSE else flag.kind.value
    harm, doubt = weights()[subject]
    return harm * (doubt or 0)


def horse_score() -> float:
    """Harm times doubt of a visit that belongs to nobody."""
    harm, doubt = weights()["horse"]
    return harm * (doubt or 0)


def foot_in_doubt(fact: Fact) -> bool:
    """Whether no foot was said where one belongs."""
    unplaced = fact.foot is None and fact.slot not in HORSE_SLOTS | EITHER_SLOTS
    return unplaced or "foot: not said" in fact.rules
