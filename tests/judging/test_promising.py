"""The bounds and the calibration error of the bench, by hand."""

from __future__ import annotations

import numpy as np
import pytest

from tests.bench.judging.fitting import Example
from tests.bench.judging.promising import (
    betting_p_value,
    bound,
    calibration_error,
    expected,
    interval,
    memo_losses,
    p_value,
)
from tests.bench.judging.training import Judged


def test_no_error_in_299_promises_one_per_cent_and_298_do_not() -> None:
    # 0.99 ** 299 = 0.0495 and 0.99 ** 298 = 0.0500..., the rule of three made exact (Hanley and Lippman-Hand 1983,
    # If nothing goes wrong, is everything all right?, JAMA 249:1743-1745).
    assert p_value(np.zeros(299), 0.01) == pytest.approx(0.99**299)
    assert p_value(np.zeros(299), 0.01) < 0.05 < p_value(np.zeros(298), 0.01)


def test_a_mean_at_the_risk_or_above_promises_nothing() -> None:
    assert p_value(np.array([0.0, 0.2]), 0.1) == 1.0
    assert bound(np.ones(50)) == 1.0


def test_what_is_expected_by_hand() -> None:
    # Angelopoulos et al., arXiv 2208.02814, theorem 1: n / (n + 1) times the mean, and B / (n + 1) with B = 1.
    assert expected(np.array([0.0, 0.2, 0.1])) == pytest.approx(3 / 4 * 0.1 + 1 / 4)
    assert expected(np.zeros(99)) == pytest.approx(0.01)


def test_the_lowest_load_that_is_expected_to_keep_a_risk_keeps_it_on_average() -> None:
    # Memos of ten facts, each wrong by its own chance, which is what it is doubted by; the threshold of 100 of them
    # is tried on one more, 400 times: the mean loss is the risk at most.
    rng = np.random.default_rng(11)
    lost = []
    for _ in range(400):
        chances = rng.beta(0.3, 6, size=(101, 10))
        wrong = rng.random(chances.shape) < chances
        thresholds = np.linspace(0, 1, 101)
        losses = [(wrong[:100] & (chances[:100] <= above)).mean(axis=1) for above in thresholds]
        above = max(t for t, loss in zip(thresholds, losses, strict=True) if t == 0 or expected(loss) <= 0.03)
        lost.append((wrong[100] & (chances[100] <= above)).mean())
    assert 0.01 < np.mean(lost) <= 0.03


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


def test_a_level_flags_no_more_than_its_risks_ask_for() -> None:
    # 200 memos of five facts; in memo 0 one fact of a chance of 0.2 is wrong, in memo 1 one of 0.3 with the wrong foot.
    numbers: dict[str, float] = {}
    examples = [
        Example(numbers, not (memo < 2 and place == 0), str(memo), grave=memo == 1 and place == 0)
        for memo in range(200)
        for place in range(5)
    ]
    chances = np.full(1000, 0.01)
    chances[0], chances[5] = 0.2, 0.3
    judged = Judged("typed", examples, chances, np.where(chances == 0.3, 0.25, 0.001))  # the doubt of memo 1 is 0.5
    assert expected(judged.losses(judged.silent(2.0))) == pytest.approx((0.4 + 1) / 201)
    assert judged.keeping(0.0071, 0.0071) == 2.0  # 1.4 / 201 is 0.00697: nothing need be asked
    assert judged.keeping(0.0061, 0.0061) == 0.2  # 1.2 / 201 is 0.00597: the more doubtful of the two
    assert judged.keeping(0.0071, 0.0055) == 0.2  # 1 / 201 is 0.00498: the wrong foot, which is the same one
    assert judged.keeping(0.0055, 0.0055) == 0.01  # both
    assert judged.keeping(0.001, 0.001) == 0.0  # out of reach of 200 memos: all are asked about
