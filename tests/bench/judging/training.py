"""Train the model, choose the levels of care, and write both with what they came to on memos that were left out."""

from __future__ import annotations

import csv
import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

import numpy as np

import pipeline.judging
from pipeline.judging.model import Care
from tests.bench.judging.fitting import Array, Example, Fitted, fit, left_out, platt
from tests.bench.judging.promising import bound, calibration_error, memo_losses

MODEL = Path(pipeline.judging.__file__).resolve().parent / "model.json"
HISTORY = Path(__file__).resolve().parents[1] / "results" / "judging.csv"
# The share of fresh facts that each level of care may flag, what is always asked included; 0 for that alone. Heard ones
# are of takes in clean sound and at 15 dB, heard and read by the ear and the reader of their day.
LOADS = {
    "typed": {Care.STRICT: 0.24, Care.USUAL: 0.10, Care.FAST: 0.06},
    "heard": {Care.STRICT: 0.30, Care.USUAL: 0.11, Care.FAST: 0.0},
}
COLUMNS = ("when", "kind", "care", "facts", "memos", "wrong", "flagged", "silent", "bound_95", "ece", "auc")


@dataclass(frozen=True)
class Judged:
    """Examples of one kind with the chance of being wrong by a model that never saw their memo."""

    kind: str
    examples: Sequence[Example]
    chances: Array

    @property
    def wrong(self) -> list[bool]:
        """Which of them are wrong."""
        return [not example.right for example in self.examples]

    def flagged(self, above: float) -> list[bool]:
        """Which are put before a person when all above a chance are."""
        return [e.asked or bool(c > above) for e, c in zip(self.examples, self.chances, strict=True)]

    def silent(self, above: float) -> list[bool]:
        """Which are wrong and not put before a person."""
        return [wrong and not flag for wrong, flag in zip(self.wrong, self.flagged(above), strict=True)]

    def losses(self, above: float) -> Array:
        """Of every memo the share of its facts that are wrong in silence."""
        return memo_losses(self.silent(above), [example.memo for example in self.examples])

    def threshold(self, load: float) -> float:
        """The chance above which, with what is always asked, at most ``load`` of the facts are flagged."""
        free = sorted((float(c) for e, c in zip(self.examples, self.chances, strict=True) if not e.asked), reverse=True)
        room = int(load * len(self.examples)) - (len(self.examples) - len(free))
        return free[room] if 0 < room < len(free) else (1.0 if room <= 0 else 0.0)

    def auc(self) -> float:
        """The chance that a wrong fact is doubted more than a right one."""
        from sklearn.metrics import roc_auc_score

        return float(roc_auc_score(self.wrong, self.chances))


def train(typed: Sequence[Example], heard: Sequence[Example]) -> tuple[Fitted, dict[str, tuple[Judged, float, float]]]:
    """The model of all examples; and by kind the fresh ones judged by models that left their memo out, with scaling."""
    everything = [*typed, *heard]
    scores = left_out(everything)
    parts = {"typed": (typed, scores[: len(typed)]), "heard": (heard, scores[len(typed) :])}
    found = {}
    for kind, (known, of_all) in parts.items():
        fresh = [number for number, example in enumerate(known) if example.fresh]
        examples, own = [known[number] for number in fresh], of_all[fresh]
        scale, shift = platt(own, examples)
        chances = 1 / (1 + np.exp(-(scale * own + shift)))
        found[kind] = (Judged(kind, examples, chances), scale, shift)
    return fit([example for example in everything if example.named]), found


def level_of(judged: Judged, care: Care) -> dict[str, float]:
    """The threshold of a level of care with what it comes to."""
    above = judged.threshold(LOADS[judged.kind][care])
    return {
        "flag_above": round(above, 4),
        "flagged": round(float(np.mean(judged.flagged(above))), 4),
        "silent": round(float(np.mean(judged.silent(above))), 4),
        "bound": bound(judged.losses(above)),
    }


def write(model: Fitted, found: dict[str, tuple[Judged, float, float]]) -> None:
    """Write ``model.json`` and a row a kind and level into the history."""
    told: dict[str, object] = {
        "made": datetime.now(UTC).date().isoformat(),
        "weights": {name: round(weight, 4) for name, weight in sorted(model.weights.items())},
        "bias": round(model.bias, 4),
    }
    rows = []
    for kind, (judged, scale, shift) in found.items():
        levels = {care.value: level_of(judged, care) for care in Care}
        memos = len({example.memo for example in judged.examples})
        error = round(calibration_error(judged.wrong, [float(c) for c in judged.chances]), 4)
        told[kind] = {
            "scale": round(scale, 4), "shift": round(shift, 4), "facts": len(judged.examples), "memos": memos,
            "wrong": sum(judged.wrong), "ece": error, "levels": levels,
        }  # fmt: skip
        for care, level in levels.items():
            rows.append([told["made"], kind, care, len(judged.examples), memos, sum(judged.wrong), level["flagged"],
                         level["silent"], level["bound"], error, round(judged.auc(), 3)])  # fmt: skip
    MODEL.write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
    fresh = not HISTORY.exists()
    with HISTORY.open("a", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerows([COLUMNS, *rows] if fresh else rows)
