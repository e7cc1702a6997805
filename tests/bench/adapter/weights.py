"""The base weights as arrays, rounded as they are when the recogniser computes in eight bits."""

from __future__ import annotations

from math import prod
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from pipeline.hearing.adapter import arrays

Arrays = dict[str, NDArray[np.float32]]


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
    numbers, scale = whole_numbers(matrix)
    return np.asarray(numbers.astype(np.float32) * scale[:, None])


def whole_numbers(matrix: NDArray[np.float32]) -> tuple[NDArray[np.int8], NDArray[np.float32]]:
    """The whole numbers of a matrix (row, column) and the scale of each row; a row of nothing has the scale 1."""
    largest = np.abs(matrix).max(axis=1)
    scale = np.where(largest > 0, largest / 127, 1).astype(np.float32)
    return np.rint(matrix / scale[:, None]).astype(np.int8), scale
