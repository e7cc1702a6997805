"""``export`` and ``import`` on the command line."""

from __future__ import annotations

import csv
import io
import json
import wave
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import RecordError, RosterError, SettingsError

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def kept(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    """One visit of Bramble with thrush in the left hind."""
    added = run("roster", "add", "Bramble", "--owner", "A. Fern", "--place", "River barn", "--ueln", "372414+1234567")
    assert added.code == 0
    assert run("ingest", make_memo("a.wav")).code == 0


@pytest.mark.usefixtures("kept")
class TestExport:
    """A record goes out."""

    def test_for_people_on_the_screen(self, run: Run) -> None:
        ended = run("export", "Bramble", "--dated", "2026-05-12")
        assert (ended.code, ended.err) == (0, "")
        assert ended.out.startswith("# Bramble\n")
        assert "thrush" in ended.out
        assert "UELN: 372414001234567" in ended.out
        assert "Made on 12 May 2026 with clinchbook" in ended.out

    def test_for_tables_into_a_file(self, run: Run, tmp_path: Path) -> None:
        target = tmp_path / "bramble.csv"
        ended = run("export", "Bramble", "--format", "csv", "--out", target)
        columns = tmp_path / "bramble-columns.csv"
        assert (ended.code, ended.out, ended.err) == (0, "", f"Written: {target}, {columns}\n")
        rows = list(csv.DictReader(io.StringIO(target.read_text(encoding="utf-8-sig"))))
        assert [(row["horse"], row["foot"], row["value"]) for row in rows] == [("Bramble", "LH", "thrush")]
        assert columns.is_file()

    def test_for_programs(self, run: Run) -> None:
        exported = json.loads(run("export", "Bramble", "--format", "json").out)
        assert exported["memos"][0]["visits"][0]["facts"][0]["quote"] == "Thrush"

    @pytest.mark.parametrize("form", ["html", "pdf"])
    @pytest.mark.parametrize("reader", ["owner", "vet"])
    def test_to_read(self, run: Run, tmp_path: Path, form: str, reader: str) -> None:
        target = tmp_path / f"bramble.{form}"
        assert run("export", "Bramble", "--format", form, "--for", reader, "--out", target).code == 0
        assert target.read_bytes().startswith(b"%PDF-" if form == "pdf" else b"<!DOCTYPE html>")

    def test_with_its_sound(self, run: Run, tmp_path: Path) -> None:
        memo, target = tmp_path / "long.wav", tmp_path / "bramble.html"
        with wave.open(str(memo), "wb") as sound:
            sound.setparams((1, 2, 16000, 0, "NONE", "not compressed"))
            sound.writeframes(b"\x01\x02" * 16000 * 5)
        assert run("ingest", memo).code == 0
        assert run("export", "Bramble", "--format", "html", "--with-audio", "--out", target).code == 0
        assert "data:audio/mpeg;base64," in target.read_text(encoding="utf-8")

    def test_the_whole_store(self, run: Run, tmp_path: Path) -> None:
        assert json.loads(run("export", "--all", "--format", "json").out)["horses"][0]["name"] == "Bramble"
        assert run("export", "--all", "--format", "html", "--redact", "--out", tmp_path).code == 0
        assert "A. Fern" not in (tmp_path / "horse-1.html").read_text(encoding="utf-8")

    @pytest.mark.parametrize(
        ("arguments", "sentence"),
        [
            ([], "Name one horse, or give --all"),
            (["Bramble", "--all"], "Name one horse, or give --all"),
            (["Bramble", "--format", "pdf"], "pdf is no text for the screen"),
            (["Bramble", "--with-audio"], "The sound can go along with --format html or json only"),
            (["Bramble", "--format", "html", "--with-audio", "--redact"], "a voice says names"),
            (["--all", "--format", "html"], "name a folder with --out"),
        ],
    )
    def test_what_cannot_be_had_is_said(self, run: Run, arguments: list[str], sentence: str) -> None:
        ended = run("export", *arguments)
        assert (ended.code, ended.out) == (SettingsError.exit_code, "")
        assert sentence in ended.err

    def test_a_folder_that_is_not_there(self, run: Run, tmp_path: Path) -> None:
        ended = run("export", "Bramble", "--out", tmp_path / "none" / "bramble.md")
        assert (ended.code, ended.out) == (3, "")
        assert "There is no folder" in ended.err


@pytest.mark.usefixtures("kept")
class TestImport:
    """A record comes in."""

    def test_it_comes_into_another_store_once(self, run: Run, tmp_path: Path) -> None:
        file, other = tmp_path / "bramble.json", tmp_path / "other"
        assert run("export", "Bramble", "--format", "json", "--out", file).code == 0
        assert run("import", file, "--store", other).out == "1 horse, 1 memo, 1 visit taken in.\n"
        assert run("import", file, "--store", other).out == "Nothing new: all of it is here already.\n"
        assert "thrush" in run("show", "1", "--store", other).out

    def test_a_conflict_takes_nothing(self, run: Run, tmp_path: Path) -> None:
        file, other = tmp_path / "bramble.json", tmp_path / "other"
        run("export", "Bramble", "--format", "json", "--out", file)
        run("roster", "add", "Bramble", "--owner", "B. Holt", "--place", "River barn", "--store", other)
        refused = run("import", file, "--store", other)
        assert (refused.code, refused.out) == (RecordError.exit_code, "")
        assert "owner: here B. Holt, there A. Fern" in refused.err
        assert run("import", file, "--horses", "mine", "--store", other).code == 0
        assert "B. Holt" in run("roster", "list", "--store", other).out

    def test_no_store_is_made_for_a_file_that_is_no_record(self, run: Run, tmp_path: Path) -> None:
        file = tmp_path / "text.json"
        file.write_text("{}")
        refused = run("import", file, "--store", tmp_path / "other")
        assert (refused.code, refused.out) == (RecordError.exit_code, "")
        assert refused.err == "text.json is no record that clinchbook exported with --format json.\n"
        assert not (tmp_path / "other").exists()


def test_a_wrong_number_adds_no_horse(run: Run) -> None:
    refused = run("roster", "add", "Bramble", "--microchip", "1234")
    assert (refused.code, refused.out) == (RosterError.exit_code, "")
    assert refused.err == "Bramble: the microchip '1234' has 4 digits, not 15.\n"
