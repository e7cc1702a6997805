"""The chance that a fact is wrong, from all its evidence: a logistic model that is shipped as plain numbers.

``model.json`` holds the weights, and for typed and for heard memos Platt's scaling and, for each level of care, the
chance above which a fact is flagged, what that came to on the memos that it was chosen on, and what it promises.
``python -m tests.bench.judging --train`` writes it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from importlib.resources import files
from math import exp
from typing import Any

from pipeline.judging.encoding import encode
from pipeline.judging.features import Evidence


class Care(StrEnum):
    """How much is put before a person: the stricter, the more, and the less is wrong in silence."""

    STRICT = "strict"
    USUAL = "usual"
    FAST = "fast"


@dataclass(frozen=True)
class Level:
    """One level of care on the facts that it was chosen on: shares of all facts, and the bound for new memos."""

    flag_above: float
    flagged: float
    silent: float
    bound: float


@dataclass(frozen=True)
class Model:
    """Weights towards wrong by the name of the number, and the levels of care."""

    weights: Mapping[str, float]
    bias: float
    scale: float
    shift: float
    levels: Mapping[Care, Level]
    facts: int
    memos: int

    def wrong(self, evidence: Evidence) -> float:
        """The chance (0-1) that the fact is wrong."""
        score = self.bias + sum(self.weights.get(name, 0.0) * value for name, value in encode(evidence).items())
        return 1 / (1 + exp(-max(-30.0, min(30.0, self.scale * score + self.shift))))

    def parts(self, evidence: Evidence) -> dict[str, float]:
        """How much each number of the evidence adds to the log-odds of being wrong."""
        parts = {name: self.weights.get(name, 0.0) * value for name, value in encode(evidence).items()}
        return {name: part for name, part in parts.items() if part}


def cost_of(care: Care) -> str:
    """What a level of care came to on memos that the model had not seen, in one sentence."""
    models = shipped()
    told = [
        f"of {name} facts {_percent(level.flagged)} were put before a person and {_percent(level.silent)} stayed wrong "
        f"unseen (for new memos at most {_percent(level.bound)}, with 95 % confidence after {models[kind].memos} memos)"
        for kind, name in (("heard", "heard"), ("typed", "typed"))
        for level in (models[kind].levels[care],)
    ]
    return f"--review {care.value}: {told[0]}; {told[1]}."


def _percent(share: float) -> str:
    return f"{100 * share:.1f} %"


@lru_cache(maxsize=1)
def shipped() -> Mapping[str, Model]:
    """The models by kind of memo, ``typed`` and ``heard``."""
    told = json.loads((files("pipeline.judging") / "model.json").read_text(encoding="utf-8"))
    return {kind: _model(told, told[kind]) for kind in ("typed", "heard")}


def _model(shared: dict[str, Any], told: dict[str, Any]) -> Model:
    levels = {
        Care(name): Level(level["flag_above"], level["flagged"], level["silent"], level["bound"])
        for name, level in told["levels"].items()
    }
    return Model(
        weights=shared["weights"],
        bias=shared["bias"],
        scale=told["scale"],
        shift=told["shift"],
        levels=levels,
        facts=told["facts"],
        memos=told["memos"],
    )
