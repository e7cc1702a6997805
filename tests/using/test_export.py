"""A record to hand on: whole, of one horse alone, and harmless to open."""

from __future__ import annotations

import csv
import io
import json
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import ClinchbookError, FileMissingError, NotFoundError, SettingsError
from pipeline.keeping import KeptHorse, Store
from pipeline.record import Fact, Flag, FlagKind, MemoRecord, RosterHorse
from pipeline.using.export import COLUMNS, as_csv, export_horse, export_to
from pipeline.using.files import write_whole
from pipeline.using.markdown import own_flags, plain_markdown


def rows(text: str) -> list[dict[str, str]]:
    """The rows of a CSV text by column."""
    return list(csv.DictReader(io.StringIO(text, newline="")))


def test_json_holds_every_visit_as_a_contract_object(store: Store) -> None:
    data = json.loads(export_horse(store, "Bramble", "json"))
    records = [MemoRecord.model_validate(memo) for memo in data["memos"]]
    assert data["horse"]["owner"] == "A. Fern"
    assert [record.visits for record in records] == [[store.visit(1).visit], [store.visit(2).visit]]
    assert [record.memo.path for record in records] == ["march.m4a", "april.m4a"]
    assert records[0].transcript == store.memo(1).record.transcript


@pytest.mark.parametrize("form", ["json", "csv", "md"])
def test_another_owners_horse_stays_out(store: Store, form: str) -> None:
    assert "Sorrel" not in export_horse(store, "Bramble", form)
    assert "Bramble" not in export_horse(store, "Sorrel", form)


def test_csv_is_one_fact_a_row_with_numbers_as_numbers(store: Store) -> None:
    table = rows(export_horse(store, "bram", "csv"))
    assert tuple(table[0]) == COLUMNS
    assert len(table) == 9
    by_slot = {row["slot"]: row for row in table}
    assert (by_slot["nails"]["value"], by_slot["toe_length"]["value"], by_slot["toe_length"]["unit"]) == (
        "6",
        "88.9",
        "mm",
    )
    assert (by_slot["shoe_size"]["value"], by_slot["shoe_size"]["in_words"]) == ("00", "shoe size 00")
    assert (by_slot["shoe_size"]["flagged"], by_slot["shoe_size"]["reasons"]) == ("yes", "double could be triple")
    assert table[0]["status"] == "absent"


@pytest.mark.parametrize("start", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "\n=1", "＝1", "-2+3"])
def test_no_cell_of_text_is_a_formula(store: Store, start: str) -> None:
    kept = store.visit(2)
    hostile = Fact(foot="LF", slot="finding", value="corn", quote=start, reasons=[start], start=-0.5, end=1.0)
    visit = kept.visit.model_copy(update={"facts": [hostile]})
    horse = KeptHorse(1, RosterHorse(name=start, owner=start, place=start))
    (row,) = rows(as_csv(horse, [type(kept)(kept.id, visit, horse, kept.memo)]))
    assert {row[column] for column in ("horse", "owner", "place", "quote", "reasons")} == {f"'{start}"}
    assert row["start_s"] == "-0.5"


def test_markdown_tells_each_foot_through_time(store: Store) -> None:
    page = export_horse(store, "Bramble", "md")
    left_fore = page.split("## Left fore\n\n")[1].split("\n\n")[0].splitlines()
    assert left_fore == [
        "- **2026-03-02**: no thrush",
        "- **2026-04-13**: laminitis; 6 nails; toe length 88.9 mm",
    ]
    left_hind = page.split("## Left hind\n\n")[1].split("\n\n")[0]
    assert left_hind == (
        "- **2026-03-02**: white line disease (mild); shoe size 00 (! to be looked at: double could be triple)"
    )
    assert "a record, not a diagnosis" in page
    assert page.index("## Cautions") < page.index("## Left fore")
    assert "Notes: =SUM(A1) he said, \\*twice\\*, about his hat" in page


def test_markdown_of_a_horse_without_visits_says_so(store: Store) -> None:
    page = export_horse(store, "Teasel", "md")
    assert "No visit of this horse has been kept yet." in page
    assert "Cautions" not in page


def test_words_never_become_markup() -> None:
    assert plain_markdown("<b>*x*</b>\n# [a](b) | c") == r"\<b\>\*x\*\</b\> \# \[a\](b) \| c"


def test_an_unknown_horse_or_form_is_said(store: Store) -> None:
    with pytest.raises(NotFoundError, match="Did you mean Bramble"):
        export_horse(store, "Brambel", "json")
    with pytest.raises(SettingsError, match="json, csv, md"):
        export_horse(store, "Bramble", "pdf")


def test_a_file_is_written_whole_in_place_of_the_old_one(store: Store, tmp_path: Path) -> None:
    path = tmp_path / "bramble.csv"
    path.write_text("old")
    export_to(store, "Bramble", "csv", path)
    assert path.read_bytes().decode("utf-8") == export_horse(store, "Bramble", "csv")
    assert [file.name for file in tmp_path.iterdir() if file.name.startswith(".clinchbook")] == []


def test_a_failed_write_leaves_the_old_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def failing(handle: int) -> None:
        raise OSError(28, "No space left on device")

    path = tmp_path / "old.md"
    path.write_text("old")
    monkeypatch.setattr("os.fsync", failing)
    with pytest.raises(ClinchbookError, match=r"old\.md cannot be written"):
        write_whole(path, "new")
    assert path.read_text() == "old"
    assert list(tmp_path.iterdir()) == [path]


def test_a_missing_folder_is_said(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError, match="no folder"):
        write_whole(tmp_path / "none" / "x.md", "x")


def test_a_horse_at_one_of_two_places_is_chosen_by_place(store: Store) -> None:
    store.add_horses([RosterHorse(name="Bramble", place="Ford")])
    with pytest.raises(NotFoundError, match="say the place"):
        export_horse(store, "Bramble", "csv")
    assert len(rows(export_horse(store, "Bramble", "csv", place="River barn"))) == 9
    assert rows(export_horse(store, "Bramble", "csv", place="ford")) == []
    assert store.visit(1).visit.date == date(2026, 3, 2)


def test_doubts_of_a_shared_memo_go_out_without_its_words(store: Store) -> None:
    kept = store.visit(2)
    flags = [
        Flag(kind=FlagKind.SOUND, reason="cut off at the end", quote="Sorrel"),
        Flag(kind=FlagKind.UNCLEAR_SPEECH, reason="Sorrel kicked", quote="Sorrel kicked"),
    ]
    record = kept.memo.record.model_copy(update={"flags": flags})
    doubtful = replace(kept, memo=replace(kept.memo, record=record))
    assert [(flag.reason, flag.quote) for flag in own_flags(doubtful)] == [("cut off at the end", "")]
    alone = record.model_copy(update={"visits": [kept.visit]})
    assert own_flags(replace(kept, memo=replace(kept.memo, record=alone))) == flags
