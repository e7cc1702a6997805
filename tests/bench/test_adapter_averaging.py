"""The mean of two adapters: what both add to a matrix, half and half, at the rank that they have."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from pipeline.hearing.weights import ADAPTER
from tests.bench.adapter.averaging import main, mean, read_adapter, without_weakest
from tests.bench.adapter.exporting import Factors, export


def drawn(seed: int, rank: int = 2) -> Factors:
    """Factors of one matrix of seven rows and five columns."""
    random = np.random.default_rng(seed)
    a, b = (random.standard_normal((rank, width)).astype(np.float32) for width in (5, 7))
    return {"layer/weight": (a, b)}


def product(factors: Factors) -> np.ndarray:
    a, b = factors["layer/weight"]
    return b.T @ a


def test_the_mean_of_an_adapter_and_itself_is_itself() -> None:
    found, left = mean(drawn(1), drawn(1))
    assert product(found) == pytest.approx(product(drawn(1)), abs=1e-5)
    assert left == pytest.approx(1)


def test_the_mean_is_half_of_both_when_their_rank_has_room_for_it() -> None:
    (a, b), (c, d) = drawn(1, rank=1)["layer/weight"], drawn(2, rank=1)["layer/weight"]
    nothing = np.zeros_like(a), np.zeros_like(b)
    one, other = (
        {"layer/weight": (np.vstack([low, nothing[0]]), np.vstack([high, nothing[1]]))}
        for low, high in ((a, b), (c, d))
    )
    found, left = mean(one, other)
    assert product(found) == pytest.approx((product(one) + product(other)) / 2, abs=1e-5)
    assert left == pytest.approx(1)


def test_what_is_left_at_the_rank_is_the_nearest_that_there_is() -> None:
    one, other = drawn(1), drawn(2)
    found, left = mean(one, other)
    whole = (product(one) + product(other)) / 2
    singular = np.linalg.svd(whole, compute_uv=False)
    assert np.linalg.norm(whole - product(found)) == pytest.approx(np.linalg.norm(singular[2:]), rel=1e-4)
    assert left == pytest.approx((singular[:2] ** 2).sum() / (singular**2).sum(), rel=1e-4)
    assert 0.5 < left < 1


def test_the_file_of_a_mean_is_read_again(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    files = [tmp_path / name for name in ("one", "other", "mean")]
    for seed, path in enumerate(files[:2]):
        export(drawn(seed), path)
    assert main([str(files[0]), str(files[1]), "--out", str(files[2])]) == 0
    assert capsys.readouterr().out.startswith(f"The mean is in {files[2]}, with ")
    expected, _ = mean(*(read_adapter(path) for path in files[:2]))
    assert product(read_adapter(files[2])) == pytest.approx(product(expected), abs=0.3)  # a few levels a number


def test_adapters_that_do_not_match_and_what_is_none_are_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    wrong, out = tmp_path / "wrong", tmp_path / "out"
    export({"other/weight": drawn(1)["layer/weight"]}, wrong)
    assert main([str(ADAPTER), str(wrong), "--out", str(out)]) == 1
    assert capsys.readouterr().err == "The two adapters were not learnt for the same matrices at the same rank.\n"
    wrong.write_bytes(b"none")
    assert main([str(ADAPTER), str(wrong), "--out", str(out)]) == 1
    assert capsys.readouterr().err == f"No adapter can be read from {wrong}.\n"
    assert not out.exists()


def test_ranks_that_differ_are_no_mean() -> None:
    with pytest.raises(ValueError, match="rank"):
        mean(drawn(1, 2), drawn(1, 3))


def test_the_weakest_products_go() -> None:
    """Three products at right angles of energies 9, 4 and 1, by hand: without one 13 of 14 are left."""
    eye = np.eye(3, dtype=np.float32)
    factors: Factors = {"one": (eye[:2] * np.array([[3], [1]], np.float32), eye[:2]), "two": (eye[:1] * 2, eye[:1])}
    found, left = without_weakest(factors, 1)
    assert left == pytest.approx(13 / 14)
    assert found["one"][1].T @ found["one"][0] == pytest.approx(np.diag([3.0, 0.0, 0.0]))
    assert found["two"][1].T @ found["two"][0] == pytest.approx(np.diag([2.0, 0.0, 0.0]))
    assert without_weakest(factors, 0)[1] == 1


def test_as_many_as_are_asked_for_are_left_out_of_the_file(tmp_path: Path) -> None:
    files = [tmp_path / name for name in ("one", "mean")]
    export(drawn(1), files[0])
    assert main([str(files[0]), str(files[0]), "--out", str(files[1]), "--without", "1"]) == 0
    (a, b) = read_adapter(files[1])["layer/weight"]
    assert sorted([np.any(a, axis=1).sum(), np.any(b, axis=1).sum()]) == [1, 1]
