"""The chance that a fact is wrong, from all its evidence: a logistic model that is shipped as plain numbers.

``model.json`` holds the weights towards being wrong, and towards being so in horse, foot or "no"; for typed and for
heard memos Platt's scaling of both and, for each level of care, the doubt above which a fact is flagged, what that came
to on the memos that it was chosen on, and what it promises.
``python -m tests.bench.judging --train`` writes it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass, fields
from enum import StrEnum
from functools import lru_cache
from importlib.resources import files
from math import ceil, exp
from typing import Any

GRAVER = 2  # a wrong horse, foot or "no" counts twice: half as many are promised to stay unseen


class Care(StrEnum):
    """How much is put before a person: the stricter, the more, and the less is wrong in silence."""

    STRICT = "strict"
    USUAL = "usual"
    FAST = "fast"


@dataclass(frozen=True)
class Level:
    """One level of care on the facts that it was chosen on, as shares of all facts, and what it promises of new memos.

    A fact is flagged when its doubt is above ``flag_above``. ``expected`` is the most that is wrong unseen on average,
    ``grave_expected`` so in horse, foot or "no", ``bound`` the most that is wrong with 95 % confidence.
    """

    flag_above: float
    flagged: float
    silent: float
    expected: float
    grave_expected: float
    bound: float


@dataclass(frozen=True)
class Odds:
    """Weights by the name of the number, and Platt's scaling."""

    weights: Mapping[str, float]
    bias: float
    scale: float
    shift: float

    def chance(self, numbers: Mapping[str, float]) -> float:
        """The chance (0-1) of what the weights point to, for evidence as numbers (``encoding.py``)."""
        score = self.bias + sum(self.weights.get(name, 0.0) * value for name, value in numbers.items())
        return 1 / (1 + exp(-max(-30.0, min(30.0, self.scale * score + self.shift))))

    def parts(self, numbers: Mapping[str, float]) -> dict[str, float]:
        """How much each number adds to the log-odds."""
        parts = {name: self.weights.get(name, 0.0) * value for name, value in numbers.items()}
        return {name: part for name, part in parts.items() if part}


@dataclass(frozen=True)
class Model:
    """The odds that a fact is wrong, and that its horse, foot or "no" is; and the levels of care."""

    wrong: Odds
    grave: Odds
    levels: Mapping[Care, Level]
    facts: int
    memos: int

    def doubt(self, numbers: Mapping[str, float], care: Care) -> tuple[float, dict[str, float] | None]:
        """The chance that a fact is wrong, and what adds to its doubt where a level of care flags it, else None.

        The doubt is that chance, or ``GRAVER`` times the one of a wrong horse, foot or "no", whichever is more.
        """
        wrong, grave = self.wrong.chance(numbers), GRAVER * self.grave.chance(numbers)
        if max(wrong, grave) <= self.levels[care].flag_above:
            return wrong, None
        return wrong, (self.wrong if wrong >= grave else self.grave).parts(numbers)


def cost_of(care: Care) -> str:
    """What a level of care came to on memos that the model had not seen, in one sentence."""
    models = shipped()
    told = [
        f"of {name} facts {_percent(level.flagged)} were put before a person and {_percent(level.silent)} stayed wrong "
        f"unseen (in new memos at most {_at_most(level.expected)} on average, with the wrong horse, foot or “no” "
        f"{_at_most(level.grave_expected)}; with 95 % confidence at most {_at_most(level.bound)}; chosen on "
        f"{models[kind].memos} memos)"
        for kind, name in (("heard", "heard"), ("typed", "typed"))
        for level in (models[kind].levels[care],)
    ]
    return f"--review {care.value}: {told[0]}; {told[1]}."


def _percent(share: float) -> str:
    return f"{100 * share:.1f} %"


def _at_most(share: float) -> str:
    """Rounded up, so that no more is promised than holds."""
    return f"{ceil(1000 * share - 1e-9) / 10:.1f} %"


@lru_cache(maxsize=1)
def shipped() -> Mapping[str, Model]:
    """The models by kind of memo, ``typed`` and ``heard``."""
    told = json.loads((files("pipeline.judging") / "model.json").read_text(encoding="utf-8"))
    return {kind: _model(told, told[kind]) for kind in ("typed", "heard")}


def _model(shared: dict[str, Any], told: dict[str, Any]) -> Model:
    levels = {
        Care(name): Level(**{field.name: level[field.name] for field in fields(Level)})
        for name, level in told["levels"].items()
    }
    wrong, grave = (Odds(**shared[of], **told[of]) for of in ("wrong", "grave"))
    return Model(wrong, grave, levels, told["facts"], told["memos"])
