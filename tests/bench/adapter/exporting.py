"""What was learnt as the file that hearing adds to its weights: a few levels a number, a scale for each rank."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tests.bench.adapter.weights import in_levels, whole_numbers

# Of each matrix by its name: A (rank, in) and B (rank, out); the matrix becomes W + B transposed times A.
Factors = Mapping[str, tuple[NDArray[np.float32], NDArray[np.float32]]]

# The largest whole number of a factor. 23 levels for each rank lose some 0.8 % of a factor's energy, and let twice the
# ranks into hardly more bytes than 255 levels took.
MOST = 11


def rounded(factors: Factors) -> Factors:
    """The factors as the file will have them."""
    return {name: (in_levels(a, MOST), in_levels(b, MOST)) for name, (a, b) in factors.items()}


def at_strength(factors: Factors, strength: float) -> Factors:
    """The factors whose product is ``strength`` times that of these."""
    return {name: (a, np.asarray(b * np.float32(strength))) for name, (a, b) in factors.items()}


def export(factors: Factors, out: Path) -> None:
    """Write the factors as ``pipeline.hearing.adapter.add`` reads them; the file appears only when it is whole."""
    kept: dict[str, NDArray[np.int8] | NDArray[np.float32]] = {}
    for name in sorted(factors):
        for side, factor in zip("ab", factors[name], strict=True):
            kept[f"{name}/{side}"], kept[f"{name}/{side}/scale"] = whole_numbers(factor, MOST)
    out.parent.mkdir(parents=True, exist_ok=True)
    part = out.with_name(f"{out.name}.part")
    with part.open("wb") as file:
        np.savez_compressed(file, allow_pickle=False, **kept)
    part.replace(out)
