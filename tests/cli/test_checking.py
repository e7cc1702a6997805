"""``check`` and ``--version`` say what is right, what is wrong and what to do."""

from __future__ import annotations

import json
import os
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline import __version__
from pipeline.errors import SettingsError, StoreError, WeightsError
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.weights import weights_version
from pipeline.keeping import Store
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
    expected = [f"clinchbook {__version__}", f"weights {weights_version()}", f"words {load_vocabulary().version}"]
    assert ended.out.splitlines() == expected


def test_version_names_the_weights_that_the_environment_asks_for(
    run: Run, model: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("CLINCHBOOK_ADAPTER", "No")
    assert run("--version").out.splitlines()[1] == f"weights {weights_version(adapter=False)}"
    monkeypatch.setenv("CLINCHBOOK_ADAPTER", "yes")
    assert run("--version").out.splitlines()[1] == f"weights {weights_version()}"
    monkeypatch.setenv("CLINCHBOOK_MODEL", str(model))
    assert run("--version").out.splitlines()[1] == f"weights {weights_version(str(model))}"
    monkeypatch.setenv("CLINCHBOOK_ADAPTER", "perhaps")
    ended = run("--version")
    assert ended.code == SettingsError.exit_code
    assert ended.err == "The setting CLINCHBOOK_ADAPTER is 'perhaps', but it must be yes or no.\n"


def test_version_without_settings_names_what_the_settings_would() -> None:
    settings = HearingSettings()
    assert weights_version(settings.model, settings.allow_download, settings.adapter) == weights_version()


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


def test_memos_that_wait_are_counted_and_no_fault(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, model: Path
) -> None:
    make_memo("1 silent.wav", seed=1)
    run("ingest", make_memo("2 silent.wav", seed=2).parent)
    ended = run("check", "--model", model)
    assert ended.code == 0
    told = ended.out.splitlines()[-1]
    assert told.startswith("look   waiting    2 memos could not be taken in, the first on 20")
    assert told.endswith(": see clinchbook waiting, try again with clinchbook ingest --again")
    finding = json.loads(run("check", "--model", model, "--json").out.splitlines()[-1])
    assert (finding["what"], finding["right"], finding["look"]) == ("waiting", True, True)


@pytest.mark.skipif(os.name != "posix", reason="only there do files have these rights")
def test_a_store_that_others_can_read_is_told(run: Run, model: Path, own_surroundings: Path) -> None:
    run("roster", "add", "Bramble")
    own_surroundings.chmod(0o755)
    (own_surroundings / "clinchbook.db").chmod(0o644)
    ended = run("check", "--model", model)
    assert ended.code == 0
    assert ended.out.splitlines()[-1] == (
        f"look   privacy    Other users of this machine can look into {own_surroundings}; chmod 700 makes it yours "
        "alone. 1 file in it can be read or changed by others."
    )


def test_an_interrupted_removal_is_found(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, model: Path, own_surroundings: Path
) -> None:
    run("ingest", make_memo("a.wav"))
    with Store.open(own_surroundings) as store:
        store._database.execute("INSERT INTO removing VALUES ('')")
    ended = run("check", "--model", model)
    assert ended.code == StoreError.exit_code
    assert ended.out.splitlines()[3] == (
        "WRONG  store      A removal was interrupted; finish it with: clinchbook forget --finish."
    )


@pytest.mark.parametrize("harm", ["missing", "changed"])
def test_a_record_without_its_sound_still_serves(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, model: Path, own_surroundings: Path, harm: str
) -> None:
    run("ingest", make_memo("a.wav"))
    original = next((own_surroundings / "originals").rglob("*.wav"))
    shown = [run("show", "1"), run("search", "thrush"), run("export", "Bramble", "--format", "csv")]
    if harm == "missing":
        original.unlink()
    else:
        original.write_bytes(b"another sound")
    assert [run("show", "1"), run("search", "thrush"), run("export", "Bramble", "--format", "csv")] == shown
    assert [ended.code for ended in shown] == [0, 0, 0]
    ended = run("check", "--model", model, "--deep")
    assert ended.code == StoreError.exit_code
    what = {"missing": "is missing from the store", "changed": "is no longer what was kept"}[harm]
    assert f"The recording of a.wav {what}. What is lost may be in the last back-up of {own_surroundings}." in ended.out


def test_a_damaged_adapter_is_found_by_the_deep_check(
    run: Run, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    damaged = tmp_path / "adapter.npz.z"
    damaged.write_bytes(b"no archive")
    for module in ("adapter", "weights"):
        monkeypatch.setattr(f"pipeline.hearing.{module}.ADAPTER", damaged)
    assert "does not fit" not in run("check").out
    ended = run("check", "--deep")
    assert ended.code == WeightsError.exit_code
    assert "The trade's adapter does not fit these weights: install clinchbook and its weights again." in ended.out


def test_a_store_that_was_not_saved_lately_is_told(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, model: Path, own_surroundings: Path, tmp_path: Path
) -> None:
    run("ingest", make_memo("a.wav"))
    ended = run("check", "--model", model)
    assert ended.code == 0
    assert ended.out.splitlines()[-1] == "look   back-up    this store was never saved: see clinchbook backup"
    run("backup", tmp_path / "disk")
    assert "back-up" not in run("check", "--model", model).out
    with Store.open(own_surroundings) as store:
        long_ago = (datetime.now(UTC) - timedelta(days=15, hours=1)).isoformat(timespec="seconds")
        store._database.execute("UPDATE last_back_up SET at = ?", [long_ago])
    assert run("check", "--model", model).out.splitlines()[-1] == (
        f"look   back-up    the last one is 15 days old, in {tmp_path / 'disk'}: see clinchbook backup"
    )
