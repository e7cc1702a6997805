"""Fitting: logistic regression whose doubts may only lower trust, then Platt scaling on memos that were left out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
from scipy.optimize import minimize
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold

from pipeline.judging.encoding import DOUBTS

Array = npt.NDArray[np.float64]
PENALTY = 5.0  # on the squares of the weights; 3 and 10 came to the same on memos that were left out
FOLDS = 10


@dataclass(frozen=True)
class Example:
    """One fact with what is known of it.

    ``numbers`` is its evidence; ``memo`` where it came from, which all voices share; ``asked`` whether it is asked
    about whatever the model says; ``named`` whether its visit goes by a right name: where it does not, every fact is
    wrong for a reason that is none of its own, and the weights learn nothing of it; ``fresh`` whether the reader had
    not been improved with the memo, so that the share of its errors tells what to expect of new ones; ``grave`` whether
    its horse, its foot or a "no" is what is wrong with it.
    """

    numbers: dict[str, float]
    right: bool
    memo: str
    asked: bool = False
    named: bool = True
    fresh: bool = True
    grave: bool = False


@dataclass(frozen=True)
class Fitted:
    """Weights towards wrong by name."""

    weights: dict[str, float]
    bias: float

    def scores(self, examples: Sequence[Example]) -> Array:
        """Log-odds of being wrong before scaling."""
        found = [self.bias + sum(self.weights.get(n, 0.0) * v for n, v in e.numbers.items()) for e in examples]
        return np.array(found)


def fit(examples: Sequence[Example], penalty: float = PENALTY) -> Fitted:
    """The weights that make what happened likeliest, those of ``DOUBTS`` at 0 or above."""
    names = sorted({name for example in examples for name in example.numbers})
    at = {name: number for number, name in enumerate(names)}
    table = np.zeros((len(examples), len(names)))
    for row, example in enumerate(examples):
        for name, value in example.numbers.items():
            table[row, at[name]] = value
    wrong = np.array([not example.right for example in examples], dtype=float)

    def loss(vector: Array) -> tuple[float, Array]:
        scores = table @ vector[1:] + vector[0]
        chance = 1 / (1 + np.exp(-scores))
        value = float(np.sum(np.logaddexp(0, scores) - wrong * scores) + penalty * vector[1:] @ vector[1:] / 2)
        slope = np.concatenate([[np.sum(chance - wrong)], table.T @ (chance - wrong) + penalty * vector[1:]])
        return value, slope

    bounds = [(None, None), *((0.0, None) if name in DOUBTS else (None, None) for name in names)]
    start = np.zeros(len(names) + 1)
    start[0] = np.log(max(wrong.mean(), 1e-6) / (1 - wrong.mean()))
    found = minimize(loss, start, jac=True, method="L-BFGS-B", bounds=bounds, options={"maxiter": 500})
    weights = {name: float(found.x[1 + number]) for name, number in at.items() if abs(found.x[1 + number]) > 1e-4}
    return Fitted(weights, float(found.x[0]))


def left_out(examples: Sequence[Example], penalty: float = PENALTY, folds: int = FOLDS) -> Array:
    """For every example the score of a model that never saw its memo."""
    scores = np.zeros(len(examples))
    memos = [example.memo for example in examples]
    for inside, outside in GroupKFold(folds).split(np.zeros(len(examples)), groups=memos):
        model = fit([examples[i] for i in inside if examples[i].named], penalty)
        scores[outside] = model.scores([examples[i] for i in outside])
    return scores


def platt(scores: Array, examples: Sequence[Example]) -> tuple[float, float]:
    """Slope and shift that turn left-out scores into chances of being wrong.

    Platt 1999, Probabilistic outputs for support vector machines, Advances in Large Margin Classifiers.
    """
    wrong = np.array([not example.right for example in examples])
    found = LogisticRegression(C=1e6).fit(scores.reshape(-1, 1), wrong)
    return float(found.coef_[0][0]), float(found.intercept_[0])
