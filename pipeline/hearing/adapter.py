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

    ``adapter`` is two zlib streams. The first is an npz archive of three arrays: the ``names`` of the matrices; their
    ``shapes`` (matrix, 2), out and in; and the ``scales`` (matrix, 2, rank) of A and of B. The second holds the rows of
    all factors, whole numbers of eight bits, by ``row_order``. Raises what reading a damaged archive raises.
    """
    told, rest = _stream(adapter)
    numbers, behind = _stream(rest)
    if behind:
        raise ValueError("more than two streams")
    with np.load(io.BytesIO(told)) as kept:
        names, shapes, scales = kept["names"], kept["shapes"], kept["scales"]
    order = row_order(scales)
    widths = np.repeat(shapes[:, ::-1], scales.shape[2], axis=1).ravel()
    pieces = np.split(np.frombuffer(numbers, np.int8), np.cumsum(widths[order]))
    if pieces.pop().size:
        raise ValueError("more numbers than rows")
    rows = [pieces[at] for at in np.argsort(order)]
    for name, (of_a, of_b) in zip(names, scales, strict=True):
        a, b, rows = rows[: len(of_a)], rows[len(of_a) : 2 * len(of_a)], rows[2 * len(of_a) :]
        yield str(name), _scaled(a, of_a), _scaled(b, of_b)


def _scaled(rows: list[NDArray[np.int8]], scales: NDArray[np.floating]) -> NDArray[np.float32]:
    return np.stack(rows).astype(np.float32) * scales[:, None].astype(np.float32)


def row_order(scales: NDArray[np.floating]) -> NDArray[np.intp]:
    """How the rows of all factors lie in the file: by their scales, since rows of like scales spread alike."""
    return np.argsort(scales.ravel(), kind="stable")


def _stream(data: bytes) -> tuple[bytes, bytes]:
    """What the zlib stream at the beginning holds, and what lies behind it."""
    stream = zlib.decompressobj()
    inside = stream.decompress(data)
    if not stream.eof:
        raise EOFError
    return inside, stream.unused_data


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
