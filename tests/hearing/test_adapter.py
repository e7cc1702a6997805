"""The trade's adapter: W becomes W + BA, nothing else changes, and what does not fit is refused."""

from __future__ import annotations

import io
import struct
import zlib
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from pipeline.errors import WeightsError
from pipeline.hearing import weights
from pipeline.hearing.adapter import adapted, add
from pipeline.hearing.adapter import factors as factors_of
from pipeline.hearing.weights import ADAPTER, weights_folder, weights_version

WEIGHT = np.array([[1, 2, 3], [4, 5, 6]], np.float16)
BIAS = np.array([0.5, 0.25], np.float16)


def model(**arrays: NDArray[np.float16]) -> bytearray:
    """A model.bin of these arrays; a double underscore in a name stands for a slash."""

    def text(told: str) -> bytes:
        return struct.pack("<H", len(told) + 1) + told.encode() + b"\0"

    head = struct.pack("<I", 6) + text("WhisperSpec") + struct.pack("<II", 3, len(arrays))
    parts = [
        text(name.replace("__", "/"))
        + struct.pack(f"<B{array.ndim}IBI", array.ndim, *array.shape, 4, array.nbytes)
        + array.tobytes()
        for name, array in arrays.items()
    ]
    return bytearray(head + b"".join(parts) + struct.pack("<I", 0))


def told(name: str, out: int = 2, width: int = 3) -> bytes:
    """What an adapter of rank 2 tells of one matrix: A has the scales 0.5 and 0.75, B 0.25 and 0.125."""
    file = io.BytesIO()
    scales = np.array([[[0.5, 0.75], [0.25, 0.125]]], np.float32)
    np.savez(file, allow_pickle=False, names=np.array([name]), shapes=np.array([[out, width]], np.int32), scales=scales)
    return file.getvalue()


def factors(name: str, out: int = 2, width: int = 3) -> bytes:
    """An adapter of rank 2 for one matrix: A is 2 and 4 times its scales, B 3 and 6, in every place; lowest first."""
    numbers = np.repeat(np.array([6, 3, 2, 4], np.int8), [out, out, width, width])
    return zlib.compress(told(name, out, width)) + zlib.compress(numbers.tobytes())


def test_the_product_of_the_factors_is_added_to_its_matrix_alone() -> None:
    sound = model(layer__weight=WEIGHT, layer__bias=BIAS, other__weight=WEIGHT)
    add(sound, factors("layer/weight"))
    # by hand: A is 1 and 3, B is 0.75 and 0.75, 1 * 0.75 + 3 * 0.75 = 3 everywhere
    assert sound == model(layer__weight=WEIGHT + np.float16(3), layer__bias=BIAS, other__weight=WEIGHT)


@pytest.mark.parametrize(
    "adapter",
    [
        pytest.param(factors("missing/weight"), id="no such matrix"),
        pytest.param(factors("layer/weight", out=3), id="too high"),
        pytest.param(factors("layer/weight", width=4), id="too wide"),
        pytest.param(factors("layer/bias"), id="no matrix"),
        pytest.param(factors("layer/weight")[:-30], id="cut off"),
        pytest.param(factors("layer/weight") + b"more", id="more behind it"),
        pytest.param(zlib.compress(told("layer/weight")), id="no numbers"),
        pytest.param(zlib.compress(told("layer/weight")) + zlib.compress(b"\1" * 9), id="numbers missing"),
        pytest.param(zlib.compress(told("layer/weight")) + zlib.compress(b"\1" * 11), id="a number too many"),
        pytest.param(b"no archive", id="no archive"),
        pytest.param(b"", id="empty"),
    ],
)
def test_an_adapter_that_does_not_fit_is_refused(adapter: bytes) -> None:
    with pytest.raises(WeightsError, match="does not fit these weights"):
        add(model(layer__weight=WEIGHT, layer__bias=BIAS), adapter)


def test_an_adapter_with_a_damaged_byte_is_refused() -> None:
    whole = factors("layer/weight")
    for at in range(len(whole)):
        damaged = bytearray(whole)
        damaged[at] ^= 0xFF
        with pytest.raises(WeightsError, match="does not fit these weights"):
            add(model(layer__weight=WEIGHT), bytes(damaged))


def test_an_archive_with_a_damaged_byte_is_refused_or_read() -> None:
    whole, refused = told("layer/weight"), 0
    numbers = factors("layer/weight")[len(zlib.compress(whole)) :]
    for at in range(len(whole)):
        damaged = bytearray(whole)
        damaged[at] ^= 0xFF
        try:
            add(
                model(layer__weight=WEIGHT), zlib.compress(damaged) + numbers
            )  # no byte may raise anything but WeightsError
        except WeightsError:
            refused += 1
    assert len(whole) / 3 < refused < len(whole)  # times and flags in the archive's own lists do no harm


def test_weights_that_are_cut_off_are_refused() -> None:
    with pytest.raises(WeightsError, match="does not fit these weights"):
        add(model(layer__weight=WEIGHT, layer__bias=BIAS)[:40], factors("layer/weight"))


def test_the_shipped_adapter_fits_the_base_weights_and_changes_a_little_of_all_their_layers() -> None:
    folder = Path(weights_folder())
    before, after = (folder / "model.bin").read_bytes(), adapted(folder)
    assert sorted(after) == ["config.json", "model.bin", "tokenizer.json", "vocabulary.txt"]
    assert len(after["model.bin"]) == len(before)
    assert after["model.bin"] != before
    shipped = list(factors_of(ADAPTER.read_bytes()))
    assert {len(a) for _, a, _ in shipped} == {len(b) for _, _, b in shipped} == {16}  # the rank
    assert len({name for name, _, _ in shipped}) == 6 * 4 + 6 * 7  # of a layer that hears, of one that writes
    assert (folder / "model.bin").read_bytes() == before


def test_a_missing_adapter_is_told_in_a_sentence(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(weights, "ADAPTER", tmp_path / "adapter.npz.z")
    with pytest.raises(WeightsError, match="adapter is missing: install clinchbook again"):
        weights_version()
    assert weights_version(adapter=False) == "base-d01c3014881c"


def test_the_version_tells_whether_the_adapter_is_added() -> None:
    plain, told = weights_version(adapter=False), weights_version()
    assert told.startswith(f"{plain}+")
    assert len(told) == len(plain) + 9
