"""Weights are joined once, in one step, checked, and built anew when damaged; two processes do no harm."""

from __future__ import annotations

import hashlib
import os
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from pipeline.errors import WeightsError
from pipeline.hearing import weights
from pipeline.hearing.weights import BASE, Joined, check_weights, joined_folder, weights_folder, weights_version

PARTS = (b"first half, " * 5000, b"second half")


@pytest.fixture
def model(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Joined:
    """A small model in two installed packages, and a cache of its own."""
    for number, part in enumerate(PARTS, start=1):
        data = tmp_path / "site" / f"invented_weights_part{number}" / "data"
        data.mkdir(parents=True)
        (data.parent / "__init__.py").write_text("raise RuntimeError('never imported')\n")
        (data / f"model.bin.part{number}").write_bytes(part)
        for name in ("config.json", "tokenizer.json"):
            (data / name).write_text("{}")
    monkeypatch.syspath_prepend(str(tmp_path / "site"))
    monkeypatch.setenv("CLINCHBOOK_CACHE", str(tmp_path / "cache"))
    whole = b"".join(PARTS)
    return Joined(
        name="invented",
        packages=("invented_weights_part1", "invented_weights_part2"),
        parts=("data/model.bin.part1", "data/model.bin.part2"),
        companions=("data/config.json", "data/tokenizer.json"),
        sha256=hashlib.sha256(whole).hexdigest(),
        size=len(whole),
    )


def test_joined_once_without_importing(model: Joined, tmp_path: Path) -> None:
    folder = joined_folder(model)
    assert folder.is_relative_to(tmp_path / "cache")
    assert (folder / "model.bin").read_bytes() == b"".join(PARTS)
    assert sorted(path.name for path in folder.iterdir()) == [
        "checked.sha256", "config.json", "model.bin", "tokenizer.json",
    ]  # fmt: skip
    assert "invented_weights_part1" not in sys.modules
    before = (folder / "model.bin").stat().st_ino
    assert joined_folder(model) == folder
    assert (folder / "model.bin").stat().st_ino == before


@pytest.mark.parametrize("damage", ["short", "marker", "gone", "no tokenizer"])
def test_a_damaged_cache_is_built_anew(model: Joined, damage: str) -> None:
    folder = joined_folder(model)
    if damage == "short":
        (folder / "model.bin").write_bytes(b"short")
    elif damage == "marker":
        (folder / "checked.sha256").write_text("0" * 64)
    elif damage == "gone":
        (folder / "model.bin").unlink()
    else:
        (folder / "tokenizer.json").unlink()
    joined_folder(model)
    assert (folder / "model.bin").read_bytes() == b"".join(PARTS)
    assert (folder / "tokenizer.json").read_text() == "{}"


def test_a_deep_check_finds_damage_of_the_same_size(model: Joined, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(weights, "BASE", model)
    folder = joined_folder(model)
    (folder / "model.bin").write_bytes(b"x" * model.size)
    check_weights("invented", deep=True)
    assert (folder / "model.bin").read_bytes() == b"".join(PARTS)


def test_damaged_packages_leave_nothing_behind(model: Joined, tmp_path: Path) -> None:
    (tmp_path / "site" / "invented_weights_part2" / "data" / "model.bin.part2").write_bytes(b"second hale")
    with pytest.raises(WeightsError, match="damaged: install"):
        joined_folder(model)
    left = [path.name for path in (tmp_path / "cache").rglob("*") if path.is_file()]
    assert sorted(left) == ["config.json", "tokenizer.json"]


def test_many_at_once_all_get_whole_weights(model: Joined) -> None:
    def join(_: int) -> str:
        return hashlib.sha256((joined_folder(model) / "model.bin").read_bytes()).hexdigest()

    with ThreadPoolExecutor(8) as pool:
        assert set(pool.map(join, range(16))) == {model.sha256}


def test_only_old_leftovers_are_swept(model: Joined) -> None:
    folder = joined_folder(model)
    old, young = folder / ".model.bin.old", folder / ".model.bin.young"
    old.touch()
    young.touch()
    os.utime(old, (time.time() - 7200,) * 2)
    (folder / "checked.sha256").unlink()
    joined_folder(model)
    assert (old.exists(), young.exists()) == (False, True)


def test_a_missing_package_is_named(model: Joined, tmp_path: Path) -> None:
    (tmp_path / "site" / "invented_weights_part2").rename(tmp_path / "site" / "elsewhere")
    with pytest.raises(WeightsError, match="package invented_weights_part2 is missing"):
        joined_folder(model)


def test_a_cache_that_cannot_be_written_is_a_sentence(
    model: Joined, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "file").touch()
    monkeypatch.setenv("CLINCHBOOK_CACHE", str(tmp_path / "file"))
    with pytest.raises(WeightsError, match="cannot be put into"):
        joined_folder(model)


def test_a_folder_is_taken_as_it_is_when_whole(tmp_path: Path) -> None:
    for name in ("model.bin", "config.json"):
        (tmp_path / name).write_bytes(b"{}")
    with pytest.raises(WeightsError, match=r"tokenizer\.json is missing"):
        weights_folder(str(tmp_path))
    (tmp_path / "tokenizer.json").write_bytes(b"{}")
    assert weights_folder(str(tmp_path)) == str(tmp_path)
    assert weights_version(str(tmp_path)) == f"{tmp_path.name}-{hashlib.sha256(b'{}').hexdigest()[:12]}"


def test_any_other_name_only_when_a_download_is_allowed() -> None:
    with pytest.raises(WeightsError, match="not allowed unless you ask"):
        weights_folder("small.en")
    assert weights_folder("small.en", allow_download=True) == "small.en"
    assert weights_version("small.en", allow_download=True) == "small.en"


def test_the_shipped_base_model_is_whole(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("CLINCHBOOK_CACHE", str(tmp_path))
    adapter = hashlib.sha256(weights.ADAPTER.read_bytes()).hexdigest()
    assert check_weights(deep=True) == f"base-{BASE.sha256[:12]}+{adapter[:8]}"
    assert check_weights(deep=True, adapter=False) == f"base-{BASE.sha256[:12]}"
    path = Path(weights_folder()) / "model.bin"
    assert path.stat().st_size == 145217532
    assert hashlib.sha256(path.read_bytes()).hexdigest() == BASE.sha256
