"""What is kept, shown, found and assigned."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotFoundError, RosterError, SettingsError
from pipeline.keeping import Store

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def kept(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    """One visit of Bramble with thrush in the left hind."""
    assert run("roster", "add", "Bramble", "--owner", "A. Fern", "--place", "River barn").code == 0
    assert run("ingest", make_memo("a.wav")).code == 0


@pytest.mark.usefixtures("kept")
class TestShow:
    """One visit."""

    def test_for_people(self, run: Run) -> None:
        out = run("show", "1").out
        assert all(words in out for words in ("Bramble", "A. Fern", "left hind", "thrush", "a.wav"))
        assert max(map(len, out.splitlines())) <= 80

    def test_for_machines(self, run: Run) -> None:
        shown = json.loads(run("show", "1", "--json").out)
        assert (shown["horse"], shown["facts"][0]["value"], shown["roster"]["owner"]) == (
            "Bramble",
            "thrush",
            "A. Fern",
        )

    def test_without_colour_in_a_pipe(self, run: Run) -> None:
        assert "\x1b" not in run("show", "1").out


@pytest.mark.usefixtures("kept")
class TestSearch:
    """Over all visits."""

    @pytest.mark.parametrize(
        "arguments",
        [
            ["thrush"],
            ["--finding", "thrush"],
            ["--foot", "near hind", "--since", "2026-03-02"],
            ["--value", "thrush", "--slot", "finding", "--owner", "fern", "--until", "2026-03-02"],
            ["--horse", "Bramble", "--sure"],
        ],
        ids=" ".join,
    )
    def test_what_is_there_is_found(self, run: Run, arguments: list[str]) -> None:
        ended = run("search", *arguments)
        assert (ended.code, ended.err) == (0, "")
        lines = ended.out.splitlines()
        assert lines[1].split() == ["2026-03-02", "Bramble", "LH", "thrush", "1"]

    @pytest.mark.parametrize(
        "arguments",
        [["--foot", "LF"], ["--since", "2026-03-03"], ["--status", "absent"], ["canker"], ["--flagged"]],
        ids=" ".join,
    )
    def test_what_is_not_there_is_not_found(self, run: Run, arguments: list[str]) -> None:
        ended = run("search", *arguments)
        assert (ended.code, ended.out, ended.err) == (0, "", "Nothing found.\n")

    def test_for_machines(self, run: Run) -> None:
        found = json.loads(run("search", "thrush", "--json").out)
        assert [(fact["visit"], fact["foot"], fact["value"]) for fact in found["facts"]] == [(1, "LH", "thrush")]

    def test_more_than_asked_for_is_said(self, run: Run, make_memo: MakeMemo) -> None:
        assert run("ingest", make_memo("b.wav", seed=2)).code == 0
        ended = run("search", "--finding", "thrush", "--limit", "1")
        assert len(ended.out.splitlines()) == 2
        assert ended.err == "There is more; these are the first 1.\n"

    def test_a_foot_that_is_none(self, run: Run) -> None:
        ended = run("search", "--foot", "fifth")
        assert (ended.code, ended.out) == (SettingsError.exit_code, "")
        assert "'fifth' is no foot" in ended.err


class TestAssign:
    """Whose visit it was."""

    @pytest.mark.usefixtures("kept")
    def test_a_visit_is_given_to_another_horse(self, run: Run, own_surroundings: Path) -> None:
        assert run("roster", "add", "Bracken").code == 0
        assert run("assign", "1", "Bracken").out == "Visit 1 belongs to Bracken now.\n"
        assert "    horse: Bramble → Bracken\n" in run("history", "1").out
        with Store.open(own_surroundings, create=False) as store:
            assert [visit.id for visit in store.visits_of("Bracken")] == [1]
            assert store.visits_of("Bramble") == []

    @pytest.mark.usefixtures("kept")
    def test_a_horse_that_is_not_there(self, run: Run) -> None:
        ended = run("assign", "1", "Nobody")
        assert (ended.code, ended.out) == (NotFoundError.exit_code, "")


class TestRoster:
    """The horses."""

    def test_import_then_list(self, run: Run, tmp_path: Path) -> None:
        horses = tmp_path / "horses.csv"
        horses.write_text("name,owner,place,also_called,colour\nBramble,A. Fern,River barn,Bram;Bee,bay\nClover,,,,\n")
        assert run("roster", "import", horses).out == "2 added, 0 brought up to date.\n"
        assert run("roster", "list").out == "Bramble (also Bram, Bee)  A. Fern  River barn\nClover\n"
        listed = [json.loads(line) for line in run("roster", "list", "--json").out.splitlines()]
        assert listed[0]["other"] == {"colour": "bay"}

    def test_a_list_without_a_horse(self, run: Run, tmp_path: Path, own_surroundings: Path) -> None:
        (tmp_path / "horses.csv").write_text("name,owner\n,\n")
        ended = run("roster", "import", tmp_path / "horses.csv")
        assert (ended.code, ended.out) == (RosterError.exit_code, "")
        assert ended.err == "horses.csv names its columns, but no horse.\n"
        assert not own_surroundings.exists()

    def test_adding_twice_brings_up_to_date(self, run: Run) -> None:
        assert run("roster", "add", "Bramble").out == "Bramble added.\n"
        again = run("roster", "add", "Bramble", "--owner", "A. Fern")
        assert again.out == "Bramble was known already and is brought up to date.\n"
        assert run("roster", "list").out == "Bramble  A. Fern\n"
