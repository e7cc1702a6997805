"""A record to hand on: whole, of one horse alone, and written as a whole."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import ClinchbookError, FileMissingError, NotFoundError, SettingsError
from pipeline.keeping import Store
from pipeline.record import Flag, FlagKind, RosterHorse
from pipeline.using.export import FORMS, Request, choice_of, export_all, export_all_to, export_horse, export_horse_to
from pipeline.using.files import file_name, write_all, write_whole
from pipeline.using.markdown import plain_markdown
from pipeline.using.visits import own_flags

DAY = date(2026, 5, 12)


def text(store: Store, horse: str, form: str, audience: str = "owner", place: str | None = None) -> str:
    """A record as text."""
    return export_horse(store, horse, Request(form, choice_of(DAY, audience)), place).decode("utf-8")


@pytest.mark.parametrize("form", ["json", "csv", "md", "html"])
@pytest.mark.parametrize("audience", ["owner", "vet"])
def test_another_owners_horse_stays_out(store: Store, form: str, audience: str) -> None:
    bramble = text(store, "Bramble", form, audience)
    assert not [word for word in ("Sorrel", "C. Lind", "Hill yard", "Keeps kicking") if word in bramble]
    assert not [word for word in ("Bramble", "A. Fern", "River barn") if word in text(store, "Sorrel", form, audience)]


@pytest.mark.parametrize("form", ["json", "csv", "md", "html"])
def test_every_form_carries_its_day_its_program_and_what_it_is_not(store: Store, form: str) -> None:
    record = text(store, "Bramble", form)
    assert "a record, not a diagnosis" in record
    assert "2026-05-12" in record or "12 May 2026" in record
    assert "laminitis is an emergency" in record
    assert "double could be triple" in record


def test_markdown_tells_each_foot_through_time(store: Store) -> None:
    page = text(store, "Bramble", "md")
    left_fore = page.split("## Left fore\n\n")[1].split("\n\n")[0].splitlines()
    assert left_fore == [
        r"- **2026-03-02**: no thrush \[1\]",
        r"- **2026-04-13**: laminitis \[2\]; 6 nails; toe length 88.9 mm",
    ]
    left_hind = page.split("## Left hind\n\n")[1].split("\n\n")[0]
    assert left_hind == (
        r"- **2026-03-02**: white line disease (mild) \[5\]; shoe size 00 "
        r"(! not reviewed yet: double could be triple) \[6\]"
    )
    assert page.index("## Cautions") < page.index("## Left fore")
    assert "Notes:\n\n- =SUM(A1) he said, \\*twice\\*, about his hat" in page


def test_markdown_of_a_horse_without_visits_says_so(store: Store) -> None:
    page = text(store, "Teasel", "md")
    assert "No visit of this horse has been kept yet." in page
    assert "Cautions" not in page


def test_visits_before_a_day_stay_out(store: Store) -> None:
    for form in ("json", "csv", "md", "html"):
        request = Request(form, choice_of(DAY, "vet", since=date(2026, 4, 1)))
        record = export_horse(store, "Bramble", request).decode("utf-8")
        assert "2026-04-13" in record
        assert "2026-03-02" not in record.replace("2026-03-02T14:05:00", "")  # when the April memo was recorded
    request = Request("md", choice_of(DAY, since=date(2026, 6, 1)))
    assert "No visit of this horse has been kept since that day." in export_horse(store, "Bramble", request).decode()


def test_words_never_become_markup() -> None:
    assert plain_markdown("<b>*x*</b>\n# [a](b) | c") == r"\<b\>\*x\*\</b\> \# \[a\](b) \| c"


def test_an_unknown_horse_form_or_reader_is_said(store: Store) -> None:
    with pytest.raises(NotFoundError, match="Did you mean Bramble"):
        text(store, "Brambel", "json")
    with pytest.raises(SettingsError, match="html, pdf, csv, json, md"):
        text(store, "Bramble", "doc")
    with pytest.raises(SettingsError, match="owner and vet"):
        choice_of(DAY, "judge")


@pytest.mark.parametrize("form", ["pdf", "csv", "md"])
def test_sound_goes_along_where_it_can_be_heard_alone(form: str) -> None:
    with pytest.raises(SettingsError, match="--format html or json only"):
        Request(form, choice_of(DAY), with_audio=True).check()


def test_a_voice_is_never_redacted() -> None:
    with pytest.raises(SettingsError, match="a voice says names"):
        Request("html", choice_of(DAY, redact=True), with_audio=True).check()


def test_a_file_is_written_whole_in_place_of_the_old_one(store: Store, tmp_path: Path) -> None:
    path = tmp_path / "bramble.md"
    path.write_text("Made with clinchbook 0.0.1.")
    request = Request("md", choice_of(DAY))
    assert export_horse_to(store, "Bramble", request, path) == [path]
    assert path.read_bytes() == export_horse(store, "Bramble", request)
    assert [file.name for file in tmp_path.iterdir() if file.name.startswith(".clinchbook")] == []


def test_a_failed_write_leaves_every_old_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    synced: list[int] = []

    def failing(handle: int) -> None:
        synced.append(handle)
        if len(synced) == 2:
            raise OSError(28, "No space left on device")

    old, other = tmp_path / "old.csv", tmp_path / "old-columns.csv"
    old.write_text("old, by clinchbook")
    monkeypatch.setattr("os.fsync", failing)
    with pytest.raises(ClinchbookError, match=r"old-columns\.csv cannot be written"):
        write_all({old: b"new", other: b"new"})
    assert old.read_text() == "old, by clinchbook"
    assert list(tmp_path.iterdir()) == [old]


@pytest.mark.parametrize("form", FORMS)
def test_every_form_takes_the_place_of_its_own_file(store: Store, tmp_path: Path, form: str) -> None:
    path = tmp_path / f"bramble.{form}"
    for day in (DAY, DAY.replace(year=DAY.year + 1)):
        export_horse_to(store, "Bramble", Request(form, choice_of(day, redact=True)), path)
        written = path.read_bytes()
    assert export_horse_to(store, "Bramble", Request(form, choice_of(DAY)), path)
    assert path.read_bytes() != written


@pytest.mark.parametrize("theirs", [b"name,owner\nBramble,A. Fern\n", b"SQLite format 3\0 clinchbook"])
def test_a_file_that_somebody_else_wrote_is_left_alone(store: Store, tmp_path: Path, theirs: bytes) -> None:
    path = tmp_path / "horses.csv"
    path.write_bytes(theirs)
    with pytest.raises(ClinchbookError, match=r"horses\.csv is there already and was not written by clinchbook"):
        export_horse_to(store, "Bramble", Request("csv", choice_of(DAY)), path)
    assert (path.read_bytes(), list(tmp_path.glob("*-columns.csv")), list(tmp_path.glob(".*"))) == (theirs, [], [])
    path.write_bytes(b"")  # nothing is lost with an empty file
    assert export_horse_to(store, "Bramble", Request("csv", choice_of(DAY)), path)


def test_a_missing_folder_or_a_folder_in_the_way_is_said(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError, match="no folder"):
        write_whole(tmp_path / "none" / "x.md", "x")
    (tmp_path / "x.md").mkdir()
    with pytest.raises(ClinchbookError, match=r"x\.md is a folder; name a file"):
        write_whole(tmp_path / "x.md", "x")


def test_a_horse_at_one_of_two_places_is_chosen_by_place(store: Store) -> None:
    store.add_horses([RosterHorse(name="Bramble", place="Ford")])
    with pytest.raises(NotFoundError, match="say the place"):
        text(store, "Bramble", "csv")
    assert text(store, "Bramble", "csv", place="River barn").count("\r\n") == 10
    assert text(store, "Bramble", "csv", place="ford").count("\r\n") == 1


def test_doubts_of_a_shared_memo_go_out_without_its_words(store: Store) -> None:
    kept = store.visit(2)
    flags = [
        Flag(kind=FlagKind.SOUND, reason="cut off at the end", quote="Sorrel"),
        Flag(kind=FlagKind.UNCLEAR_SPEECH, reason="Sorrel kicked", quote="Sorrel kicked"),
    ]
    record = kept.memo.record.model_copy(update={"flags": flags})
    doubtful = replace(kept, memo=replace(kept.memo, record=record))
    assert [(flag.reason, flag.quote) for flag in own_flags(doubtful)] == [("cut off at the end", "")]
    alone = replace(kept.memo, record=record, visit_ids=(kept.id,))
    assert own_flags(replace(kept, memo=alone)) == flags


class TestWholeStore:
    """All horses at once."""

    @pytest.mark.parametrize("form", ["html", "pdf", "md"])
    def test_one_file_a_horse(self, store: Store, tmp_path: Path, form: str) -> None:
        store.add_horses([RosterHorse(name="../Bramble", place="River barn")])
        folder = tmp_path / "records"
        folder.mkdir()
        written = export_all_to(store, Request(form, choice_of(DAY)), folder)
        names = [
            f"{name}.{form}" for name in ("bramble-river-barn", "bramble-river-barn-2", "sorrel-hill-yard", "teasel")
        ]
        assert sorted(path.name for path in folder.iterdir()) == sorted(names)
        assert sorted(path.name for path in written) == sorted(names)

    def test_a_folder_is_needed(self, store: Store, tmp_path: Path) -> None:
        with pytest.raises(FileMissingError, match="There is no folder"):
            export_all_to(store, Request("html", choice_of(DAY)), tmp_path / "none")
        with pytest.raises(SettingsError, match="name a folder with --out"):
            export_all(store, Request("html", choice_of(DAY)))

    def test_one_table(self, store: Store) -> None:
        table = export_all(store, Request("csv", choice_of(DAY))).decode("utf-8")
        assert table.count("\r\n") == 11
        assert "Sorrel" in table

    def test_one_json(self, store: Store) -> None:
        data = json.loads(export_all(store, Request("json", choice_of(DAY))))
        assert [horse["name"] for horse in data["horses"]] == ["Bramble", "Sorrel", "Teasel"]
        assert [len(memo["visits"]) for memo in data["memos"]] == [1, 2]
        assert all(memo["whole"] and memo["transcript"] for memo in data["memos"])

    def test_every_form_is_named(self) -> None:
        assert FORMS == ("html", "pdf", "csv", "json", "md")


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("Łukasz Ó Bróga", "łukasz-ó-bróga"),
        ("../../etc/passwd", "etc-passwd"),
        ("con", "horse-con"),
        ("💥", "horse"),
        ("a\x00b\nc", "a-b-c"),
        ("x" * 300, "x" * 80),
    ],
)
def test_a_name_becomes_a_file_name_of_any_system(name: str, expected: str) -> None:
    assert file_name(name) == expected
