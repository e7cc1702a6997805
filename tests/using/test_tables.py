"""The table: one fact a row, numbers that stay numbers, and no cell that a spreadsheet would run."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from pipeline.keeping import KeptHorse, Store
from pipeline.record import Fact, RosterHorse
from pipeline.using.export import Request, choice_of, export_horse, export_horse_to
from pipeline.using.tables import COLUMNS, as_csv, dictionary_csv

CHOICE = choice_of(date(2026, 5, 12))


def rows(text: str) -> list[dict[str, str]]:
    """The rows of a CSV text by column."""
    return list(csv.DictReader(io.StringIO(text, newline="")))


def test_one_fact_a_row_with_numbers_as_numbers(store: Store) -> None:
    table = rows(export_horse(store, "bram", Request("csv", CHOICE)).decode("utf-8"))
    assert tuple(table[0]) == COLUMNS
    assert len(table) == 9
    by_slot = {row["slot"]: row for row in table}
    nails, length, size = by_slot["nails"], by_slot["toe_length"], by_slot["shoe_size"]
    assert (nails["value"], nails["number"], nails["unit"]) == ("6", "6", "")
    assert (length["value"], length["number"], length["unit"]) == ("88.9", "88.9", "mm")
    assert (size["value"], size["number"], size["in_words"]) == ("00", "", "shoe size 00")
    assert (size["flagged"], size["reasons"]) == ("yes", "double could be triple")
    assert (table[0]["status"], table[0]["exported_on"]) == ("absent", "2026-05-12")
    assert "laminitis is an emergency" in by_slot["nails"]["cautions"]
    assert by_slot["next_visit_weeks"]["cautions"] == ""


@pytest.mark.parametrize("start", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "\n=1", "＝1", "-2+3"])
def test_no_cell_of_text_is_a_formula(store: Store, start: str) -> None:
    kept = store.visit(2)
    hostile = Fact(foot="LF", slot="finding", value="corn", quote=start, reasons=[start], start=-0.5, end=1.0)
    visit = kept.visit.model_copy(update={"facts": [hostile]})
    horse = KeptHorse(1, RosterHorse(name=start, owner=start, place=start))
    memo = replace(kept.memo, file_name=start)
    (row,) = rows(as_csv([(horse, [replace(kept, visit=visit, horse=horse, memo=memo)])], CHOICE))
    assert {row[name] for name in ("horse", "owner", "place", "quote", "reasons", "memo_file")} == {f"'{start}"}
    assert row["start_s"] == "-0.5"


def test_identity_stands_in_its_columns(store: Store) -> None:
    other = {"ueln": "25000100155928M", "microchip": "250001234567890"}
    store.add_horses([RosterHorse(name="Bramble", place="River barn", other=other)])
    table = rows(export_horse(store, "Bramble", Request("csv", CHOICE)).decode("utf-8"))
    assert {(row["ueln"], row["microchip"]) for row in table} == {("25000100155928M", "250001234567890")}
    assert {row["identity"] for row in table} == {"UELN 25000100155928M, microchip 250001234567890"}


@pytest.mark.parametrize(
    ("slot", "value", "size"),
    [
        ("shoe_size", "00", "size 00"),
        ("shoe_size", "1-1.5", "size 1-1.5"),
        ("shoe_size", "2", "size 2"),
        ("nail_size", "5 slim", "size 5 slim"),
        ("nails", 6.0, ""),
        ("finding", "corn", ""),
    ],
)
def test_a_size_is_there_as_text_that_is_no_number_and_no_day(
    store: Store, slot: str, value: str | float, size: str
) -> None:
    kept = store.visit(2)
    visit = kept.visit.model_copy(update={"facts": [Fact(foot="LF", slot=slot, value=value)]})
    (row,) = rows(as_csv([(KeptHorse(1, RosterHorse(name="Bramble")), [replace(kept, visit=visit)])], CHOICE))
    assert (row["value"], row["size"], row["identity"]) == (f"{value:g}" if slot == "nails" else value, size, "")


def test_a_file_carries_the_mark_and_its_dictionary(store: Store, tmp_path: Path) -> None:
    path = tmp_path / "bramble.csv"
    written = export_horse_to(store, "Bramble", Request("csv", CHOICE), path)
    assert written == [path, tmp_path / "bramble-columns.csv"]
    assert all(file.read_bytes().startswith(b"\xef\xbb\xbf") for file in written)
    assert path.read_bytes()[3:] == export_horse(store, "Bramble", Request("csv", CHOICE))
    explained = rows(written[1].read_text(encoding="utf-8-sig"))
    assert [row["column"] for row in explained] == [*COLUMNS, "(this table)"]


def test_the_dictionary_explains_every_column() -> None:
    explained = rows(dictionary_csv(CHOICE))
    assert all(row["meaning"] for row in explained)
    assert "Made on 2026-05-12 with clinchbook" in explained[-1]["meaning"]
