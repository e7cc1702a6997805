"""The base weights as arrays, rounded as they are when the recogniser computes in eight bits."""

from __future__ import annotations

from math import prod
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from pipeline.hearing.adapter import arrays

Arrays = dict[str, NDArray[np.float32]]
_EIGHT_BITS = 127  # the largest whole number


def read(folder: Path) -> Arrays:
    """Every array of the model in ``folder`` by its name.

    What is learnt must help the weights that hear, and those are rounded: each row of a matrix to whole numbers up to
    127 (CTranslate2 4.8.5, ``docs/quantization.md``); the convolutions and the rest stay as they are.
    """
    model = bytearray((folder / "model.bin").read_bytes())
    found = {}
    for name, (start, shape) in arrays(model):
        values = np.frombuffer(model, np.float16, prod(shape), start).reshape(shape).astype(np.float32)
        found[name] = in_eight_bits(values) if name.endswith("/weight") and len(shape) == 2 else values
    return found


def in_eight_bits(matrix: NDArray[np.float32]) -> NDArray[np.float32]:
    """The matrix with every row rounded to one of 255 values, the largest kept."""
    return in_levels(matrix, _EIGHT_BITS)


def in_levels(matrix: NDArray[np.float32], most: int) -> NDArray[np.float32]:
    """The matrix with every row rounded to whole multiples, up to ``most``, of a ``most``-th of its largest number."""
    numbers, scale = whole_numbers(matrix, most)
    return np.asarray(numbers.astype(np.float32) * scale[:, None])


def whole_numbers(
    matrix: NDArray[np.float32], most: int | NDArray[np.int64] = _EIGHT_BITS
) -> tuple[NDArray[np.int8], NDArray[np.float32]]:
    """The whole numbers (row, column) of a matrix, from -``most`` to ``most``, and the scale of each row.

    A row of nothing has the scale 1; ``most``, one for all rows or one for each, is 127 at most.
    """
    largest = np.abs(matrix).max(axis=1)
    scale = np.where(largest > 0, largest / most, 1).astype(np.float32)
    return np.rint(matrix / scale[:, None]).astype(np.int8), scale
