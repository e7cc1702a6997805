"""Scoring facts against gold: a fact is right when foot, slot, value and status are all right (numbers within 1 %)."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.record import Fact, Visit

GoldFact = list[Any]  # [foot, slot, value, status, zone, severity]
_WORDED = frozenset({"shoe_size", "nail_size"})  # "00" and "0" are different shoes, never the same number


@dataclass
class Score:
    """Counts over memos; ``inverted`` are facts kept with their sense turned round."""

    right: int = 0
    gold: int = 0
    said: int = 0
    visits: int = 0
    horses: int = 0
    zones: int = 0
    perfect: int = 0
    memos: int = 0
    inverted: int = 0

    @property
    def f1(self) -> float:
        """Harmonic mean of precision and recall."""
        return 2 * self.right / (self.gold + self.said) if self.gold + self.said else 0.0


def load_gold(path: Path) -> list[dict[str, Any]]:
    """The gold memos of a JSON Lines file."""
    return [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines() if line.strip()]


def score(pairs: Iterable[tuple[dict[str, Any], Sequence[Visit]]]) -> Score:
    """Score the visits read from each gold memo."""
    total = Score()
    for gold, visits in pairs:
        wrong_before = total.gold + total.said - 2 * total.right
        unpaired = list(visits)
        for wanted in gold["visits"]:
            named = next((v for v in unpaired if (v.horse or "").lower() == (wanted["horse"] or "").lower()), None)
            total.visits += 1
            total.horses += named is not None
            chosen = named or (unpaired[0] if unpaired else None)
            if chosen is not None:
                unpaired.remove(chosen)
            _score_visit(total, wanted["facts"], list(chosen.facts) if chosen else [])
        total.said += sum(len(v.facts) for v in unpaired)
        total.memos += 1
        total.perfect += total.gold + total.said - 2 * total.right == wrong_before
    return total


def _score_visit(total: Score, gold: list[GoldFact], facts: list[Fact]) -> None:
    total.gold += len(gold)
    total.said += len(facts)
    left = list(facts)
    for foot, slot, value, status, zone, _ in gold:
        hits = [
            f for f in left if (f.foot, f.slot, f.status) == (foot, slot, status) and same_value(slot, f.value, value)
        ]
        hit = next((f for f in hits if f.zone == zone), hits[0] if hits else None)
        if hit is not None:
            left.remove(hit)
            total.right += 1
            total.zones += hit.zone == zone
    total.inverted += sum(_inverted(fact, gold) for fact in left)


def same_value(slot: str, one: object, other: object) -> bool:
    """Whether two values of a slot are one: numbers within 1 %, words but for their case."""
    if slot not in _WORDED and isinstance(one, int | float) and isinstance(other, int | float):
        return abs(one - other) <= 0.01 * max(abs(one), abs(other), 1e-9)
    return str(one).lower() == str(other).lower()


def _inverted(fact: Fact, gold: list[GoldFact]) -> bool:
    """Whether gold has the same fact with the opposite sense: denied as present, another time as today's."""
    opposite = {"present": ("absent", "history", "planned"), "absent": ("present", "suspected")}.get(fact.status, ())
    return any(
        (g[0], g[1]) == (fact.foot, fact.slot) and same_value(g[1], fact.value, g[2]) and g[3] in opposite for g in gold
    )
