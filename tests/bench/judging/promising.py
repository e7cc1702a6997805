"""What share of facts is wrong in silence, with bounds that hold for new memos; and how well chances are calibrated.

What is promised on average is ``expected``, conformal risk control. The bound with a confidence is that of Learn then
Test (Angelopoulos et al. 2021, arXiv 2110.01052): a share is promised where the p-value of "the risk is larger" falls
below 5 %: Hoeffding-Bentkus (there, section 2), or betting. The loss of a memo is the share of its facts that are wrong
without a flag; memos are the units because facts of one memo go wrong together.
"""

from __future__ import annotations

from collections.abc import Sequence
from hashlib import sha256
from math import ceil, e, exp, log, sqrt

import numpy as np
import numpy.typing as npt
from scipy.stats import binom

Array = npt.NDArray[np.float64]
LEVEL = 0.05  # the chance that a promise is broken


def memo_losses(silent: Sequence[bool], memos: Sequence[str]) -> Array:
    """For every memo the share of its facts that are wrong in silence, in the order of a digest of the memo's name."""
    by_memo: dict[str, list[bool]] = {}
    for wrong, memo in zip(silent, memos, strict=True):
        by_memo.setdefault(memo, []).append(wrong)
    ordered = sorted(by_memo, key=lambda memo: sha256(memo.encode()).hexdigest())
    return np.array([sum(by_memo[memo]) / len(by_memo[memo]) for memo in ordered])


def expected(losses: Array) -> float:
    """The most that the loss of a new memo is on average, if it is like these, losses in [0, 1].

    Conformal risk control (Angelopoulos et al., arXiv 2208.02814, theorem 1): where a threshold is the lowest load with
    ``(sum + 1) / (n + 1)`` of at most a risk, a new memo's loss under it is at most that risk on average.
    """
    return (float(np.sum(losses)) + 1) / (len(losses) + 1)


def p_value(losses: Array, risk: float) -> float:
    """How likely losses so small are if their mean is larger than ``risk``: Hoeffding-Bentkus, losses in [0, 1]."""
    n, mean = len(losses), float(np.mean(losses))
    if mean >= risk:
        return 1.0
    bentkus = e * float(binom.cdf(ceil(n * mean), n, risk))
    return min(1.0, exp(-n * _divergence(mean, risk)), bentkus)


def _divergence(a: float, b: float) -> float:
    first = a * log(a / b) if a > 0 else 0.0
    return first + ((1 - a) * log((1 - a) / (1 - b)) if a < 1 else 0.0)


def betting_p_value(losses: Array, risk: float) -> float:
    """The same by betting, which gains where losses vary little: Waudby-Smith and Ramdas, arXiv 2010.09686, section 4.

    The losses are taken in the order given, which must not depend on them.
    """
    capital, best, total, spread = 1.0, 1.0, 0.5, 0.25
    for number, loss in enumerate(losses, 1):
        stake = min(sqrt(2 * log(1 / LEVEL) / (len(losses) * spread / number)), 0.9 / (1 - risk))
        capital *= 1 - stake * (float(loss) - risk)
        best = max(best, capital)
        mean = (total + float(loss)) / (number + 1)
        total, spread = total + float(loss), spread + (float(loss) - mean) ** 2
    return 1 / best


def bound(losses: Array, level: float = LEVEL) -> float:
    """The smallest risk, to a thousandth, that is promised at ``level``; 1 when none is.

    Each of the two tests has half the level, so that the better of them may be taken.
    """

    def promised(risk: float) -> bool:
        return min(p_value(losses, risk), betting_p_value(losses, risk)) <= level / 2

    return next((k / 1000 for k in range(1, 1000) if promised(k / 1000)), 1.0)


def interval(parts: Sequence[float], wholes: Sequence[float]) -> tuple[float, float]:
    """The 95 % interval of a share, by drawing the memos anew 2000 times (Efron 1979, Ann Stat 7:1-26)."""
    part, whole = np.array(parts), np.array(wholes)
    drawn = np.random.default_rng(0).integers(0, len(part), (2000, len(part)))
    shares = part[drawn].sum(axis=1) / np.maximum(whole[drawn].sum(axis=1), 1)
    return float(np.quantile(shares, 0.025)), float(np.quantile(shares, 0.975))


def calibration_error(wrong: Sequence[bool], chances: Sequence[float], bins: int = 10) -> float:
    """Expected calibration error: the mean gap of chance and share over equal bins, by size.

    Guo et al. 2017, On calibration of modern neural networks, ICML, section 2.
    """
    places = [min(int(chance * bins), bins - 1) for chance in chances]
    gap = 0.0
    for number in range(bins):
        inside = [i for i, place in enumerate(places) if place == number]
        if inside:
            share = sum(wrong[i] for i in inside) / len(inside)
            gap += abs(share - sum(chances[i] for i in inside) / len(inside)) * len(inside)
    return gap / len(places) if places else 0.0
