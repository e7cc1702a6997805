"""The mean of two adapters: ``python -m tests.bench.adapter.averaging ONE OTHER --out FILE [--without N]``.

What two adapters of the same weights, learnt from other sound, add to each matrix, half and half, as one adapter of
the same rank: "averaging weights of multiple models fine-tuned with different hyperparameter configurations often
improves accuracy and robustness" (Wortsman, Ilharco, Gadre and others 2022, "Model soups", arXiv 2203.05482, abstract).
The nearest product of that rank is the singular value decomposition cut off behind it (Eckart and Young 1936, "The
approximation of one matrix by another of lower rank", Psychometrika 1:211-218). ``--without`` leaves out the weakest of
its products of one row and one column, of all matrices; the mean of an adapter with itself leaves them out of that.
"""

from __future__ import annotations

import argparse
import sys
import zipfile
import zlib
from collections.abc import Sequence
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from pipeline.errors import ClinchbookError
from pipeline.hearing.adapter import factors
from tests.bench.adapter.exporting import Factors, energies, export
from tests.bench.ending import ended

Factor = NDArray[np.float32]
_WRONG = (OSError, EOFError, zipfile.BadZipFile, zlib.error, KeyError, IndexError, ValueError)


def mean(one: Factors, other: Factors) -> tuple[Factors, float]:
    """The mean of both, and which share of its energy is left at their rank.

    Raises ValueError when they do not change the same matrices, or not at the same rank.
    """
    if _shapes(one) != _shapes(other):
        raise ValueError("other matrices, or another rank")
    found, left, all_of_it = {}, 0.0, 0.0
    for name, (a, b) in one.items():
        beside_a, beside_b = other[name]
        halves = np.vstack([b, beside_b]) * np.float32(0.5)
        found[name], strengths = _cut(np.vstack([a, beside_a]), halves, len(a))
        left += float((strengths[: len(a)] ** 2).sum())
        all_of_it += float((strengths**2).sum())
    return found, left / all_of_it if all_of_it else 1.0


def _shapes(of: Factors) -> dict[str, tuple[tuple[int, ...], ...]]:
    return {name: (a.shape, b.shape) for name, (a, b) in of.items()}


def _cut(a: Factor, b: Factor, rank: int) -> tuple[tuple[Factor, Factor], Factor]:
    """The factors of ``rank`` whose product is nearest to that of ``a`` and ``b``, and all its singular values."""
    inwards, left = np.linalg.qr(a.T)
    outwards, right = np.linalg.qr(b.T)
    u, strengths, v = np.linalg.svd(right @ left.T)
    roots = np.sqrt(strengths[:rank])
    low_a = (roots[:, None] * v[:rank]) @ inwards.T
    low_b = (outwards @ (u[:, :rank] * roots)).T
    return (low_a.astype(np.float32), low_b.astype(np.float32)), strengths


def without_weakest(factors: Factors, count: int) -> tuple[Factors, float]:
    """The factors without their ``count`` weakest products of a row of A and one of B, and the energy left (0-1).

    Of one matrix the rows are at right angles to each other, as ``mean`` gives them, so that energies add up.
    """
    ranked = sorted(
        (float(energy), name, at) for name, own in energies(factors).items() for at, energy in enumerate(own)
    )
    found = {name: (a.copy(), b.copy()) for name, (a, b) in factors.items()}
    for _, name, at in ranked[:count]:
        for factor in found[name]:
            factor[at] = 0
    all_of_it = sum(energy for energy, _, _ in ranked)
    left = sum(energy for energy, _, _ in ranked[count:])
    return found, left / all_of_it if all_of_it else 1.0


def read_adapter(path: Path) -> Factors:
    """The factors in a file; raises ClinchbookError when it is no adapter."""
    try:
        return {name: (a, b) for name, a, b in factors(path.read_bytes())}
    except _WRONG as error:
        raise ClinchbookError(f"No adapter can be read from {path}.") from error


def run(chosen: argparse.Namespace) -> None:
    """Write the mean and tell how much of it is left."""
    one, other = (read_adapter(path) for path in (chosen.one, chosen.other))
    try:
        found, left = mean(one, other)
    except ValueError as error:
        raise ClinchbookError("The two adapters were not learnt for the same matrices at the same rank.") from error
    found, kept = without_weakest(found, chosen.without)
    try:
        export(found, chosen.out)
    except OSError as error:
        raise ClinchbookError(f"The adapter cannot be written to {chosen.out}.") from error
    print(f"The mean is in {chosen.out}, with {left * kept:.1%} of its energy.")


def main(given: Sequence[str] | None = None) -> int:
    """Average; 1, with one sentence, when something cannot be read or written."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.adapter.averaging", description=__doc__)
    for name in ("one", "other"):
        parser.add_argument(name, type=Path, metavar=name.upper(), help="an adapter, as tests.bench.adapter writes it")
    parser.add_argument("--without", type=int, metavar="N", default=0, help="how many of its weakest products go")
    parser.add_argument("--out", type=Path, metavar="FILE", required=True, help="where the mean is written")
    return ended(lambda: run(parser.parse_args(given)))


if __name__ == "__main__":
    sys.exit(main())
