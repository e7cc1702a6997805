"""What was learnt as the file that hearing adds to its weights: a few levels a number, a scale for each rank."""

from __future__ import annotations

import io
import zlib
from collections.abc import Mapping, Sequence
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from pipeline.hearing.adapter import row_order
from tests.bench.adapter.weights import whole_numbers

# Of each matrix by its name: A (rank, in) and B (rank, out); the matrix becomes W + B transposed times A.
Factors = Mapping[str, tuple[NDArray[np.float32], NDArray[np.float32]]]

# The largest whole number of a factor. 23 levels for each rank lose some 0.8 % of a factor's energy.
MOST = 11
# From this share of the mean energy on a product of a row of A and one of B has all levels. A weaker one has fewer, so
# that rounding costs none more than it costs the strong ones: reverse water-filling (Cover and Thomas 2006, "Elements
# of Information Theory", 2nd edition, section 10.3.3; the section from memory).
_STRONG, _LEAST = 1.5, 2


def energies(factors: Factors) -> dict[str, NDArray[np.float32]]:
    """The energy of each product of a row of A and one of B, by its matrix: (rank,)."""
    return {name: (a**2).sum(axis=1) * (b**2).sum(axis=1) for name, (a, b) in factors.items()}


def levels(factors: Factors) -> dict[str, NDArray[np.int64]]:
    """The largest whole number of each product's rows, by its matrix: (rank,), ``MOST`` of those that are strong."""
    own = energies(factors)
    told = np.concatenate(list(own.values()))
    strong = _STRONG * float(told[told > 0].mean()) if (told > 0).any() else 1.0
    return {
        name: np.ceil(MOST * np.sqrt(of_it / strong)).clip(_LEAST, MOST).astype(np.int64) for name, of_it in own.items()
    }


def rounded(factors: Factors) -> Factors:
    """The factors as the file will have them."""
    most = levels(factors)
    return {name: (_rounded(a, most[name]), _rounded(b, most[name])) for name, (a, b) in factors.items()}


def _rounded(factor: NDArray[np.float32], most: NDArray[np.int64]) -> NDArray[np.float32]:
    numbers, scale = _in_levels(factor, most)
    return np.asarray(numbers * scale[:, None].astype(np.float32))


def _in_levels(factor: NDArray[np.float32], most: NDArray[np.int64]) -> tuple[NDArray[np.int8], NDArray[np.float16]]:
    """The whole numbers of a factor and the scale of each rank, which 16 bits tell closely enough."""
    numbers, scale = whole_numbers(factor, most)
    return numbers, scale.astype(np.float16)


def at_strength(factors: Factors, strength: float) -> Factors:
    """The factors whose product is ``strength`` times that of these."""
    return {name: (a, np.asarray(b * np.float32(strength))) for name, (a, b) in factors.items()}


def export(factors: Factors, out: Path) -> None:
    """Write the factors as ``pipeline.hearing.adapter.add`` reads them; the file appears only when it is whole."""
    names, most = sorted(factors), levels(factors)
    sides = [[_in_levels(factor, most[name]) for factor in factors[name]] for name in names]
    shapes = np.array([(b.shape[1], a.shape[1]) for a, b in map(factors.__getitem__, names)], np.int32)
    scales = np.array([[scale for _, scale in both] for both in sides], np.float16)
    rows = [row for both in sides for numbers, _ in both for row in numbers]
    out.parent.mkdir(parents=True, exist_ok=True)
    part = out.with_name(f"{out.name}.part")
    part.write_bytes(packed(names, shapes, scales, rows))
    part.replace(out)


def packed(
    names: Sequence[str], shapes: NDArray[np.int32], scales: NDArray[np.float16], rows: Sequence[NDArray[np.int8]]
) -> bytes:
    """The file: what is told of the matrices, and their rows by scale, each in a zlib stream of its own.

    Nothing repeats in what was learnt, so that of its numbers only how often each comes is counted: of 1.92 million
    0.90 MB are left, 1.14 with repeats looked for.
    """
    archive = io.BytesIO()
    np.savez(archive, allow_pickle=False, names=np.array(names), shapes=shapes, scales=scales)
    stream = zlib.compressobj(9, memLevel=9, strategy=zlib.Z_HUFFMAN_ONLY)
    numbers = b"".join(rows[at].tobytes() for at in row_order(scales))
    return zlib.compress(archive.getvalue(), 9) + stream.compress(numbers) + stream.flush()
