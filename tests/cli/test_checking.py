"""``check`` and ``--version`` say what is right, what is wrong and what to do."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline import __version__
from pipeline.errors import StoreError, WeightsError
from pipeline.vocabulary import load_vocabulary

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def model(tmp_path: Path) -> Path:
    """A folder that looks like a model."""
    folder = tmp_path / "model"
    folder.mkdir()
    for name in ("model.bin", "config.json", "tokenizer.json", "vocabulary.txt"):
        (folder / name).write_bytes(b"{}")
    return folder


def test_version_names_program_weights_and_words(run: Run) -> None:
    ended = run("--version")
    assert ended.code == 0
    expected = [f"clinchbook {__version__}", "weights base-d01c3014881c", f"words {load_vocabulary().version}"]
    assert ended.out.splitlines() == expected


def test_all_is_well(run: Run, model: Path) -> None:
    assert run("roster", "add", "Bramble").code == 0
    ended = run("check", "--model", model)
    assert ended.code == 0
    assert [line.split()[:2] for line in ended.out.splitlines()] == [
        ["ok", "libraries"],
        ["ok", "words"],
        ["ok", "weights"],
        ["ok", "store"],
        ["ok", "review"],
    ]
    assert "whole, with 1 horse and 0 memos" in ended.out


def test_a_store_that_is_not_there_yet_is_no_fault(run: Run, model: Path, own_surroundings: Path) -> None:
    assert "none yet" in run("check", "--model", model).out
    assert not own_surroundings.exists()


def test_missing_weights_are_named_with_what_to_do(run: Run, model: Path) -> None:
    (model / "model.bin").unlink()
    ended = run("check", "--model", model)
    assert ended.code == WeightsError.exit_code
    assert f"WRONG  weights    The folder {model} is no model of the recogniser: model.bin is missing." in ended.out


def test_a_lost_recording_is_found(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, model: Path, own_surroundings: Path
) -> None:
    assert run("ingest", make_memo("a.wav")).code == 0
    next((own_surroundings / "originals").rglob("*.wav")).unlink()
    ended = run("check", "--model", model, "--json")
    findings = {finding["what"]: finding for finding in map(json.loads, ended.out.splitlines())}
    assert (findings["store"]["right"], findings["words"]["right"]) == (False, True)
    assert "a.wav is missing" in findings["store"]["found"]
    assert ended.code == StoreError.exit_code
