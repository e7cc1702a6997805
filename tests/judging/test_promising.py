"""The bounds and the calibration error of the bench, by hand."""

from __future__ import annotations

import numpy as np
import pytest

from tests.bench.judging.promising import (
    betting_p_value,
    bound,
    calibration_error,
    interval,
    memo_losses,
    p_value,
)


def test_no_error_in_299_promises_one_per_cent_and_298_do_not() -> None:
    # 0.99 ** 299 = 0.0495 and 0.99 ** 298 = 0.0500..., the rule of three made exact (Hanley and Lippman-Hand 1983,
    # If nothing goes wrong, is everything all right?, JAMA 249:1743-1745).
    assert p_value(np.zeros(299), 0.01) == pytest.approx(0.99**299)
    assert p_value(np.zeros(299), 0.01) < 0.05 < p_value(np.zeros(298), 0.01)


def test_a_mean_at_the_risk_or_above_promises_nothing() -> None:
    assert p_value(np.array([0.0, 0.2]), 0.1) == 1.0
    assert bound(np.ones(50)) == 1.0


def test_betting_by_hand() -> None:
    # The first stake is 0.9 / (1 - 0.5) = 1.8, which is below the other limit sqrt(2 log 20 / (1 * 0.25 / 1)) = 4.9.
    assert betting_p_value(np.array([0.0]), 0.5) == pytest.approx(1 / (1 + 1.8 * 0.5))
    assert betting_p_value(np.array([1.0]), 0.5) == 1.0


def test_a_promise_grows_with_memos_and_is_hardly_ever_broken() -> None:
    assert bound(np.zeros(400)) < bound(np.zeros(100)) < bound(np.zeros(40))
    rng = np.random.default_rng(7)
    broken = sum(bound((rng.random(60) < 0.1) * rng.random(60)) < 0.05 for _ in range(200))
    assert broken <= 10  # the mean loss is 0.05: 5 % of 200


def test_a_memo_is_one_loss_and_the_order_does_not_depend_on_the_losses() -> None:
    one = memo_losses([True, False, False, True], ["a", "b", "a", "a"])
    other = memo_losses([False, True, False, False], ["a", "b", "a", "a"])
    assert sorted(one) == [0.0, pytest.approx(2 / 3)]
    assert [loss > 0 for loss in one] == [loss == 0 for loss in other]


def test_the_calibration_error_by_hand() -> None:
    # Guo et al. 2017, equation 5: |B| / n times |accuracy - confidence|, summed over the bins. Two facts at 0.05 of
    # which none is wrong, two at 0.25 of which one is: 2/4 * 0.05 + 2/4 * 0.25.
    assert calibration_error([False, False, True, False], [0.05, 0.05, 0.25, 0.25]) == pytest.approx(0.15)
    assert calibration_error([True], [1.0]) == 0.0
    assert calibration_error([], []) == 0.0


def test_the_interval_of_memos_that_are_all_alike_is_a_point() -> None:
    assert interval([1, 1, 1], [4, 4, 4]) == (0.25, 0.25)
    low, high = interval([0, 2, 0, 2], [4, 4, 4, 4])
    assert low < 0.25 < high
