"""``brief``, ``due`` and ``stock`` from the command line."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import DateError, FileMissingError, NotFoundError, SettingsError

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def kept(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    """Bramble with thrush in the left hind, six weeks apart."""
    assert run("roster", "add", "Bramble", "--owner", "A. Fern", "--place", "River barn").code == 0
    assert run("ingest", make_memo("a.wav", seed=1), "--date", "2026-01-05").code == 0
    assert run("ingest", make_memo("b.wav", seed=2), "--date", "2026-02-16").code == 0


@pytest.mark.usefixtures("kept")
class TestBrief:
    """Before a visit."""

    def test_for_people(self, run: Run) -> None:
        ended = run("brief", "Bramble", "--day", "2026-04-01")
        assert (ended.code, ended.err) == (0, "")
        assert ended.out.splitlines()[0] == "Bramble  (A. Fern, River barn)"
        assert "Open      LH: thrush, since 5 Jan 2026" in ended.out.splitlines()
        assert ended.out.endswith("A record, not a diagnosis.\n")

    def test_for_machines(self, run: Run) -> None:
        told = json.loads(run("brief", "Bramble", "--day", "2026-04-01", "--json").out)
        assert (told["horse"]["name"], told["visits"], told["due"]["basis"]) == ("Bramble", 2, "rhythm")

    def test_the_round_of_a_day(self, run: Run) -> None:
        assert run("brief", "--day", "2026-02-16").out.splitlines()[1].startswith("Seen 5 Jan 2026, 5.9 weeks ago")
        ended = run("brief", "--day", "2026-02-20")
        assert (ended.code, ended.out) == (NotFoundError.exit_code, "")
        assert ended.err == "No horse was seen on 20 Feb 2026, and none is due by then.\n"

    def test_a_horse_that_is_not_there(self, run: Run) -> None:
        ended = run("brief", "Brambel")
        assert (ended.code, ended.out) == (NotFoundError.exit_code, "")
        assert ended.err == "No horse called Brambel is in the store. Did you mean Bramble?\n"

    @pytest.mark.parametrize("command", ["brief", "export"])
    def test_a_horse_that_stands_elsewhere(self, run: Run, command: str) -> None:
        ended = run(command, "Bramble", "--place", "River")
        assert (ended.code, ended.out) == (NotFoundError.exit_code, "")
        assert ended.err == "No horse called Bramble stands at River, only at River barn.\n"


@pytest.mark.usefixtures("kept")
class TestDue:
    """The next round."""

    def test_for_people(self, run: Run) -> None:
        ended = run("due", "--day", "2026-04-01")
        assert ended.out.splitlines() == [
            "due                      horse    last seen   why then",
            "River barn",
            "2026-03-30  2 days over  Bramble  2026-02-16  own rhythm, 6 weeks over 1 gap",
        ]

    def test_nobody_is_due(self, run: Run) -> None:
        ended = run("due", "--day", "2026-02-20", "--until", "2026-03-01")
        assert ended.out == "No horse is due by 1 Mar 2026.\n"

    def test_for_tables_and_machines(self, run: Run) -> None:
        rows = list(csv.DictReader(io.StringIO(run("due", "--day", "2026-04-01", "--csv").out)))
        assert [(row["horse"], row["due"], row["basis"]) for row in rows] == [("Bramble", "2026-03-30", "rhythm")]
        told = json.loads(run("due", "--day", "2026-04-01", "--weeks", "0", "--json").out)
        assert [horse["overdue_days"] for horse in told["horses"]] == [2]

    def test_a_calendar_file_beside_the_list(self, run: Run, tmp_path: Path) -> None:
        target = tmp_path / "due.ics"
        ended = run("due", "--day", "2026-04-01", "--ics", target)
        assert (ended.code, ended.err) == (0, f"Written: {target}\n")
        text = target.read_text(encoding="utf-8")
        assert "DTSTART;VALUE=DATE:20260401" in text
        assert "Fern" not in text
        assert run("due", "--day", "2026-04-01", "--ics", target, "--owners").code == 0
        assert "Owner: A. Fern" in target.read_text(encoding="utf-8")

    def test_a_list_of_horses_is_never_written_over(self, run: Run, tmp_path: Path) -> None:
        horses = tmp_path / "horses.csv"
        horses.write_text("name\nBramble\n")
        ended = run("due", "--day", "2026-04-01", "--ics", horses)
        assert (ended.code, ended.out, horses.read_text()) == (1, "", "name\nBramble\n")
        assert ended.err == f"{horses} is there already and was not written by clinchbook; name another file.\n"

    @pytest.mark.parametrize(
        ("arguments", "code", "sentence"),
        [
            (["--until", "2026-04-01", "--weeks", "2"], SettingsError.exit_code, "either --until or --weeks"),
            (["--owners"], SettingsError.exit_code, "say --ics FILE too"),
            (["--json", "--csv"], SettingsError.exit_code, "not both at once"),
            (["--day", "2026-04-01", "--until", "2026-03-01"], SettingsError.exit_code, "still to come"),
            (["--until", "soon"], DateError.exit_code, "'soon' is no date"),
        ],
    )
    def test_what_cannot_be_is_said(self, run: Run, arguments: list[str], code: int, sentence: str) -> None:
        ended = run("due", *arguments)
        assert (ended.code, ended.out) == (code, "")
        assert sentence in ended.err

    def test_a_calendar_that_cannot_be_written(self, run: Run, tmp_path: Path) -> None:
        ended = run("due", "--day", "2026-04-01", "--ics", tmp_path / "none" / "due.ics")
        assert (ended.code, ended.out) == (FileMissingError.exit_code, "")


@pytest.mark.usefixtures("kept")
class TestStock:
    """The next order."""

    def test_nothing_on_record(self, run: Run) -> None:
        lines = run("stock", "--since", "2026-01", "--day", "2026-04-01").out.splitlines()
        assert lines == [
            "Used from 1 Jan 2026 to 1 Apr 2026",
            "Nothing, as far as this book goes.",
            "",
            "Foreseen to 13 May 2026, 2 visits due, if every shod foot gets a new shoe",
            "Nothing, as far as this book goes.",
            "1 of the horses due has no set-up on record and is not in it.",
        ]

    def test_for_tables_and_machines(self, run: Run) -> None:
        assert run("stock", "--day", "2026-04-01", "--csv").out.startswith(
            "list,from,to,kind,what,fronts,hinds,number,"
        )
        told = json.loads(run("stock", "--day", "2026-04-01", "--json").out)
        assert (told["visits_due"], told["not_known"]) == (2, 1)


def test_without_a_store(run: Run) -> None:
    for command in ("due", "stock", "brief"):
        ended = run(command)
        assert (ended.code, ended.out) == (FileMissingError.exit_code, "")


@pytest.mark.usefixtures("kept")
class TestSearch:
    """What is new in searching."""

    def test_rows(self, run: Run) -> None:
        rows = list(csv.DictReader(io.StringIO(run("search", "thrush", "--csv").out)))
        assert [(row["date"], row["horse"], row["foot"], row["value"], row["flagged"]) for row in rows] == [
            ("2026-02-16", "Bramble", "LH", "thrush", "no"),
            ("2026-01-05", "Bramble", "LH", "thrush", "no"),
        ]

    def test_counted(self, run: Run) -> None:
        assert run("search", "thrush", "--count", "month").out.splitlines() == [
            "month    facts  perhaps  visits  horses  not looked at (!)",
            "2026-01      1        0       1       1                  0",
            "2026-02      1        0       1       1                  0",
        ]
        told = json.loads(run("search", "thrush", "--count", "horse", "--json").out)
        assert told["counts"] == [
            {"key": "Bramble, River barn", "facts": 2, "suspected": 0, "visits": 2, "horses": 1, "flagged": 0}
        ]
        rows = run("search", "thrush", "--count", "year", "--csv").out.splitlines()
        assert rows == ["year,facts,suspected,visits,horses,flagged", "2026,2,0,2,1,0"]

    @pytest.mark.parametrize(
        ("arguments", "found"),
        [
            (["--since", "2026-02"], 1),
            (["--until", "2026-01"], 1),
            (["--since", "2026", "--until", "2026"], 2),
            (["--until", "2025"], 0),
        ],
    )
    def test_a_day_may_be_a_month_or_a_year(self, run: Run, arguments: list[str], found: int) -> None:
        assert len(json.loads(run("search", "--finding", "thrush", *arguments, "--json").out)["facts"]) == found

    def test_a_comparison_that_compares_nothing(self, run: Run) -> None:
        ended = run("search", "--where", "toe angle")
        assert (ended.code, ended.out) == (SettingsError.exit_code, "")
        assert "compares nothing" in ended.err
