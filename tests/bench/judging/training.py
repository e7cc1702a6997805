"""Train the model, choose the levels of care, and write both with what they came to on memos that were left out."""

from __future__ import annotations

import csv
import json
from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from functools import cached_property
from math import ceil
from pathlib import Path

import numpy as np

import pipeline.judging
from pipeline.judging.model import GRAVER, Care
from tests.bench.judging.fitting import Array, Example, Fitted, fit, left_out, platt
from tests.bench.judging.promising import bound, calibration_error, expected, memo_losses

MODEL = Path(pipeline.judging.__file__).resolve().parent / "model.json"
HISTORY = Path(__file__).resolve().parents[1] / "results" / "judging.csv"
# What a level of care promises of a new memo, on average over memos: the most of its facts that are wrong and not put
# before a person, and the most that are so of horse, foot or "no". The strict ones are so low that 1 % of wrong facts
# holds with a confidence of 95 % as well.
RISKS = {
    "typed": {Care.STRICT: (0.0045, 0.003), Care.USUAL: (0.006, 0.004), Care.FAST: (0.0085, 0.005)},
    "heard": {Care.STRICT: (0.0045, 0.003), Care.USUAL: (0.0085, 0.005), Care.FAST: (0.015, 0.0075)},
}
COLUMNS = ("when", "kind", "care", "facts", "memos", "wrong", "flagged", "silent", "bound_95", "ece", "auc",
           "expected", "grave", "grave_expected")  # fmt: skip


@dataclass(frozen=True)
class Judged:
    """Examples of one kind with the chances of being wrong, and gravely so, by a model that never saw their memo."""

    kind: str
    examples: Sequence[Example]
    chances: Array
    graver: Array

    @property
    def wrong(self) -> list[bool]:
        """Which of them are wrong."""
        return [not example.right for example in self.examples]

    @cached_property
    def doubts(self) -> Array:
        """Of every example what a level of care is held against; what is always asked is above all."""
        doubts = np.maximum(self.chances, GRAVER * self.graver)
        return np.where([example.asked for example in self.examples], np.inf, doubts)

    def silent(self, above: float) -> list[bool]:
        """Which are wrong and not put before a person when all above a doubt are."""
        return [wrong and bool(doubt <= above) for wrong, doubt in zip(self.wrong, self.doubts, strict=True)]

    def grave(self, above: float) -> list[bool]:
        """Which of those have the wrong horse or foot, or a "no" missed or made up."""
        return [silent and example.grave for silent, example in zip(self.silent(above), self.examples, strict=True)]

    def losses(self, silent: Sequence[bool]) -> Array:
        """Of every memo the share of its facts that are wrong in silence."""
        return memo_losses(silent, [example.memo for example in self.examples])

    def keeping(self, risk: float, grave: float) -> float:
        """The doubt above which the fewest are flagged so that a new memo's losses are at most these on average.

        0, which flags all, where so few memos promise nothing so small.
        """
        places: list[float] = [float(GRAVER), *np.unique(self.doubts[np.isfinite(self.doubts)])[::-1].tolist(), 0.0]
        found = bisect_left(places, True, key=lambda above: self._keeps(above, risk, grave))
        return places[min(found, len(places) - 1)]

    def _keeps(self, above: float, risk: float, grave: float) -> bool:
        losses, graver = self.losses(self.silent(above)), self.losses(self.grave(above))
        return expected(losses) <= risk and expected(graver) <= grave

    def auc(self) -> float:
        """The chance that a wrong fact is doubted more than a right one."""
        from sklearn.metrics import roc_auc_score

        return float(roc_auc_score(self.wrong, self.chances))


@dataclass(frozen=True)
class Trained:
    """Weights of one target, and by kind the slope and shift of Platt's scaling."""

    fitted: Fitted
    scaling: dict[str, tuple[float, float]]


def train(typed: Sequence[Example], heard: Sequence[Example]) -> tuple[dict[str, Trained], list[Judged]]:
    """The weights towards wrong and gravely wrong; and by kind the fresh examples, judged by models without them."""
    everything = [*typed, *heard]
    targets = {"wrong": everything, "grave": [replace(example, right=not example.grave) for example in everything]}
    kinds = {"typed": range(len(typed)), "heard": range(len(typed), len(everything))}
    chances: dict[str, dict[str, Array]] = {}
    trained = {}
    for target, examples in targets.items():
        scores = left_out(examples)
        scaling = {}
        for kind, places in kinds.items():
            fresh = [place for place in places if everything[place].fresh]
            scale, shift = scaling[kind] = platt(scores[fresh], [examples[place] for place in fresh])
            chances.setdefault(kind, {})[target] = 1 / (1 + np.exp(-(scale * scores[fresh] + shift)))
        trained[target] = Trained(fit([example for example in examples if example.named]), scaling)
    judged = [
        Judged(
            kind, [everything[p] for p in places if everything[p].fresh], chances[kind]["wrong"], chances[kind]["grave"]
        )
        for kind, places in kinds.items()
    ]
    return trained, judged


def levels_of(judged: Judged) -> dict[Care, dict[str, float]]:
    """The thresholds of the levels of care with what they come to and what they promise."""
    return {care: _level(judged, judged.keeping(*risks)) for care, risks in RISKS[judged.kind].items()}


def _level(judged: Judged, above: float) -> dict[str, float]:
    silent, grave = judged.silent(above), judged.grave(above)
    return {
        "flag_above": round(above, 4),
        "flagged": round(float(np.mean(judged.doubts > above)), 4),
        "silent": round(float(np.mean(silent)), 4),
        "grave": round(float(np.mean(grave)), 4),
        "expected": _up(expected(judged.losses(silent))),
        "grave_expected": _up(expected(judged.losses(grave))),
        "bound": bound(judged.losses(silent)),
    }


def _up(share: float) -> float:
    """Rounded up to a tenth of a thousandth, so that no more is promised."""
    return ceil(share * 10_000 - 1e-9) / 10_000


def write(trained: dict[str, Trained], found: Sequence[Judged]) -> None:
    """Write ``model.json`` and a row a kind and level into the history."""
    told: dict[str, object] = {"made": datetime.now(UTC).date().isoformat()}
    for target, one in trained.items():
        weights = {name: round(weight, 4) for name, weight in sorted(one.fitted.weights.items())}
        told[target] = {"weights": weights, "bias": round(one.fitted.bias, 4)}
    rows = []
    for judged in found:
        levels = levels_of(judged)
        memos = len({example.memo for example in judged.examples})
        error = round(calibration_error(judged.wrong, [float(c) for c in judged.chances]), 4)
        scaled = {
            target: {"scale": round(scale, 4), "shift": round(shift, 4)}
            for target, (scale, shift) in ((name, one.scaling[judged.kind]) for name, one in trained.items())
        }
        told[judged.kind] = {
            **scaled, "facts": len(judged.examples), "memos": memos, "wrong_facts": sum(judged.wrong),
            "ece": error,
            "levels": {care.value: levels[care] for care in Care},
        }  # fmt: skip
        for care in Care:
            level = levels[care]
            rows.append([told["made"], judged.kind, care, len(judged.examples), memos, sum(judged.wrong),
                         level["flagged"], level["silent"], level["bound"], error, round(judged.auc(), 3),
                         level["expected"], level["grave"], level["grave_expected"]])  # fmt: skip
    MODEL.write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
    fresh = not HISTORY.exists()
    with HISTORY.open("a", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerows([COLUMNS, *rows] if fresh else rows)
