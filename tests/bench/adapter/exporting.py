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


def rounded(factors: Factors) -> Factors:
    """The factors as the file will have them."""
    return {name: (_rounded(a), _rounded(b)) for name, (a, b) in factors.items()}


def _rounded(factor: NDArray[np.float32]) -> NDArray[np.float32]:
    numbers, scale = _in_levels(factor)
    return np.asarray(numbers * scale[:, None].astype(np.float32))


def _in_levels(factor: NDArray[np.float32]) -> tuple[NDArray[np.int8], NDArray[np.float16]]:
    """The whole numbers of a factor and the scale of each rank, which 16 bits tell closely enough."""
    numbers, scale = whole_numbers(factor, MOST)
    return numbers, scale.astype(np.float16)


def at_strength(factors: Factors, strength: float) -> Factors:
    """The factors whose product is ``strength`` times that of these."""
    return {name: (a, np.asarray(b * np.float32(strength))) for name, (a, b) in factors.items()}


def export(factors: Factors, out: Path) -> None:
    """Write the factors as ``pipeline.hearing.adapter.add`` reads them; the file appears only when it is whole."""
    names = sorted(factors)
    sides = [[_in_levels(factor) for factor in factors[name]] for name in names]
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
