"""How much harm an error does, and how doubtful a thing is: the order of the review. The table says why."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from functools import lru_cache
from importlib.resources import files
from typing import Protocol

from pipeline.record import EITHER_SLOTS, HORSE_SLOTS, FlagKind
from pipeline.terms import Said

_ANY = "*"
_UNFOOTED = HORSE_SLOTS | EITHER_SLOTS


class Weighed(Said, Protocol):
    """A fact as far as its harm and doubt go."""

    @property
    def confidence(self) -> float:
        """The probability that it is right as written."""

    @property
    def rules(self) -> Sequence[str]:
        """The rules that decided it."""


@lru_cache(maxsize=1)
def weights() -> dict[str, tuple[float, float | None]]:
    """By value, slot or kind of flag: the harm (1-10) that an error does, and for a flag the doubt (0-1)."""
    text = (files("pipeline.using.review") / "harm.csv").read_text(encoding="utf-8")
    rows = csv.DictReader(text.splitlines())
    return {row["subject"]: (float(row["weight"]), float(row["doubt"]) if row["doubt"] else None) for row in rows}


def fact_score(fact: Weighed) -> float:
    """Harm times doubt of a fact; a fact whose foot is not sure does the harm of the wrong foot at least."""
    table = weights()
    harm = next(table[key][0] for key in (str(fact.value), fact.slot, _ANY) if key in table)
    if foot_in_doubt(fact):
        harm = max(harm, table["foot"][0])
    return harm * (1 - fact.confidence)


def flag_score(kind: FlagKind) -> float:
    """Harm times doubt of a flag of this kind that no fact carries."""
    subject = "horse" if kind is FlagKind.HORSE else kind.value
    harm, doubt = weights()[subject]
    return harm * (doubt or 0)


def horse_score() -> float:
    """Harm times doubt of a visit that belongs to nobody."""
    harm, doubt = weights()["horse"]
    return harm * (doubt or 0)


def foot_in_doubt(fact: Weighed) -> bool:
    """Whether no foot was said where one belongs."""
    unplaced = fact.foot is None and fact.slot not in _UNFOOTED
    return unplaced or "foot: not said" in fact.rules
