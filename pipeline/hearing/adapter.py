"""The trade's adapter: small corrections to the base weights, learnt from the trade's talk in synthetic voices.

Low-rank adaptation (Hu, Shen, Wallis, Allen-Zhu, Li, Wang, Wang and Chen 2021, "LoRA: Low-Rank Adaptation of Large
Language Models", arXiv 2106.09685, section 4.1): a matrix W (out, in) becomes W + BA, with B (out, rank) and A (rank,
in). Both are kept as small whole numbers with a scale for each rank. They are added as the weights are loaded, so that
hearing takes no longer; the installed weights stay as they are. DEVELOPERS.md, section 6, says how they were learnt.
"""

from __future__ import annotations

import io
import struct
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from pipeline.errors import WeightsError
from pipeline.hearing.weights import ADAPTER

_HALF = 4  # CTranslate2's number for floats of 16 bits
# What reading a damaged archive raises, and what a matrix that is not there or has another shape.
_WRONG = (EOFError, RuntimeError, zipfile.BadZipFile, zlib.error, struct.error, KeyError, IndexError, ValueError)
_NOT_FITTING = "The trade's adapter does not fit these weights: install clinchbook and its weights again."


def adapted(folder: Path) -> dict[str, bytes]:
    """The files of the base model in ``folder`` by name, the adapter added to the weights.

    Raises WeightsError when it was not learnt for these weights, and OSError.
    """
    model = bytearray((folder / "model.bin").read_bytes())
    add(model, ADAPTER.read_bytes())
    others = {path.name: path.read_bytes() for path in folder.iterdir() if path.suffix in (".json", ".txt")}
    return {"model.bin": bytes(model), **others}


def add(model: bytearray, adapter: bytes) -> None:
    """Add the factors of ``adapter``, as ``factors`` reads them, to the weights of ``model`` (a model.bin) in place.

    Raises WeightsError when one of them has no matrix of its shape there.
    """
    try:
        places = dict(arrays(model))
        for name, a, b in factors(adapter):
            start, shape = places[name]
            weights = np.frombuffer(model, np.float16, shape[0] * shape[1], start).reshape(shape)
            # in 32 bits: numpy adds floats of 16 bits more slowly, and rounds them twice
            weights[:] = weights.astype(np.float32) + b.T @ a
    except _WRONG as error:
        raise WeightsError(_NOT_FITTING) from error


def factors(adapter: bytes) -> Iterator[tuple[str, NDArray[np.float32], NDArray[np.float32]]]:
    """The name of every matrix that changes, with its A (rank, in) and its B transposed (rank, out).

    ``adapter`` is one zlib stream of an npz archive of four arrays: the ``names`` of the matrices; their ``shapes``
    (matrix, 2), out and in; the ``scales`` (matrix, 2, rank) of A and of B; and the ``numbers``, whole ones of eight
    bits, first of A and then of B, one matrix behind the other. Raises what reading a damaged archive raises.
    """
    with np.load(io.BytesIO(zlib.decompress(adapter))) as kept:
        numbers, scales = kept["numbers"].astype(np.float32), kept["scales"].astype(np.float32)
        at = 0
        for name, widths, scale in zip(kept["names"], kept["shapes"], scales, strict=True):
            into, out = int(widths[1]), int(widths[0])
            a, at = _factor(numbers, at, into, scale[0])
            b, at = _factor(numbers, at, out, scale[1])
            yield str(name), a, b


def _factor(
    numbers: NDArray[np.float32], at: int, width: int, scale: NDArray[np.float32]
) -> tuple[NDArray[np.float32], int]:
    """A factor (rank, width) from the numbers that begin at a place and the scale of each rank; where it ends."""
    end = at + width * len(scale)
    return np.asarray(numbers[at:end].reshape(len(scale), width) * scale[:, None]), end


def arrays(model: bytearray) -> Iterator[tuple[str, tuple[int, tuple[int, ...]]]]:
    """The name, the place and the shape of every array of 16-bit floats in a model.bin.

    Its layout, from CTranslate2's ``specs/model_spec.py`` (4.8.5): the version of the layout; the name of the
    architecture; its revision; the number of arrays; then of each array the name, the shape, the type and the bytes.
    """
    at = 4
    _, at = _text(model, at)
    count = struct.unpack_from("<I", model, at + 4)[0]
    at += 8
    for _ in range(count):
        name, at = _text(model, at)
        dimensions = model[at]
        *shape, kind, length = struct.unpack_from(f"<{dimensions}IBI", model, at + 1)
        at += 1 + 4 * dimensions + 5
        if kind == _HALF:
            yield name, (at, tuple(shape))
        at += length


def _text(model: bytearray, at: int) -> tuple[str, int]:
    """A text that begins with its length and ends in a zero byte, and where it ends."""
    (length,) = struct.unpack_from("<H", model, at)
    return model[at + 2 : at + 1 + length].decode("utf-8"), at + 2 + length
