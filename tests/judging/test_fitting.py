"""Fitting the model: doubts never raise trust, left-out memos are left out, and scaling calibrates."""

from __future__ import annotations

import numpy as np
import pytest

from tests.bench.judging.fitting import Example, fit, left_out, platt


def examples() -> list[Example]:
    """Four hundred facts of forty memos, made so that an odd value helps and a late fact harms."""
    rng = np.random.default_rng(3)
    found = []
    for number in range(400):
        odd, late = float(rng.random() < 0.5), float(rng.random() < 0.5)
        wrong = rng.random() < 0.3 - 0.25 * odd + 0.3 * late
        numbers = {name: value for name, value in (("value odd", odd), ("late", late)) if value}
        found.append(Example(numbers, not wrong, f"memo {number // 10}"))
    return found


def test_a_doubt_that_seems_to_help_is_given_no_weight() -> None:
    model = fit(examples())
    assert "value odd" not in model.weights
    assert model.weights["late"] > 0.5


def test_a_penalty_holds_the_weights_down() -> None:
    assert 0 < fit(examples(), penalty=500).weights["late"] < fit(examples(), penalty=1).weights["late"]


def test_a_memo_is_scored_by_a_model_that_never_saw_it() -> None:
    found = examples()
    found += [Example({"slot work": 1.0}, False, "memo of its own") for _ in range(50)]
    scores = left_out(found, folds=5)
    assert fit(found).scores(found)[-1] > scores[-1] + 1  # unseen, its slot says nothing


def test_scaling_makes_the_mean_chance_the_share_that_is_wrong() -> None:
    found = examples()
    scores = 3 * left_out(found) + 1
    scale, shift = platt(scores, found)
    chances = 1 / (1 + np.exp(-(scale * scores + shift)))
    assert float(chances.mean()) == pytest.approx(np.mean([not one.right for one in found]), abs=1e-3)
    assert 0 < scale < 1


def test_facts_of_a_misnamed_visit_teach_nothing() -> None:
    found = examples()
    named = left_out(found, folds=5)
    strangers = [Example({"late": 1.0}, True, "memo of a wrong name", named=False) for _ in range(200)]
    assert left_out([*found, *strangers], folds=5)[: len(found)].mean() == pytest.approx(named.mean(), abs=0.1)
