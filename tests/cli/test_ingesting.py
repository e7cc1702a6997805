"""Sound in, visits kept: folders, duplicates, dry runs, JSON, and what Ingest promises to others."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NoSpeechError, NotSoundError
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.weights import weights_version
from pipeline.ingest import Ingest, sound_files, spoken_names
from pipeline.keeping import Store
from pipeline.record import HorseMatch, MemoRecord, RosterHorse, Transcript, Visit
from pipeline.vocabulary import load_vocabulary

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


def test_a_memo_is_kept_with_its_original(run: Run, hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path) -> None:
    memo = make_memo("a.wav")
    ended = run("ingest", memo, "--store", tmp_path / "store")
    assert ended.code == 0
    asked = "  (!) A new horse, heard as “Bramble”; is that its name? (“Bramble” at 0:00)\n"
    assert ended.out == "visit 1: Bramble (new horse), 2026-03-02: 1 fact\n" + asked
    with Store.open(tmp_path / "store", create=False) as store:
        kept = store.visit(1)
    assert kept.visit.facts[0].value == "thrush"
    assert kept.visit.facts[0].start == 1.0
    assert kept.memo.original.read_bytes() == memo.read_bytes()
    assert kept.memo.weights == weights_version()
    assert re.fullmatch(r"base-d01c3014881c\+[0-9a-f]{8}", kept.memo.weights)
    assert kept.memo.vocabulary == load_vocabulary().version


def test_the_same_sound_twice_adds_nothing_and_wakes_no_model(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo
) -> None:
    assert run("ingest", make_memo("a.wav")).code == 0
    hearer.heard.clear()
    again = run("ingest", make_memo("copy of a.wav"))
    assert again.code == 0
    assert "kept before already" in again.err
    assert again.out == ""
    assert hearer.heard == []


def test_one_bad_file_does_not_stop_the_rest(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path
) -> None:
    make_memo("1.wav", seed=1)
    make_memo("2 silent.wav", seed=2)
    folder = make_memo("3.wav", seed=3).parent
    ended = run("ingest", folder)
    assert ended.code == NoSpeechError.exit_code
    assert ended.out.count("visit ") == 2
    assert ended.err.splitlines()[0].endswith("Nobody speaks in 2 silent.wav.")
    assert ended.err.splitlines()[1:] == [
        "Memos: 2 kept, 1 could not be taken in.",
        "1 doubt to look at: clinchbook review puts it before you.",
        "Memos: 1 waiting; see clinchbook waiting, try again with clinchbook ingest --again.",
    ]
    with Store.open(own_surroundings, create=False) as store:
        assert [memo.file_name for memo in store.memos()] == ["1.wav", "3.wav"]


def test_a_folder_without_sound_is_told(run: Run, tmp_path: Path) -> None:
    (tmp_path / "photos").mkdir()
    (tmp_path / "photos" / "list.txt").write_text("Bramble")
    ended = run("ingest", tmp_path / "photos")
    assert (ended.code, ended.out) == (0, "")
    assert ended.err == f"No sound file lies in {tmp_path / 'photos'}.\nMemos: 0 kept.\n"


def test_different_troubles_end_with_the_common_code(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    folder = make_memo("1 silent.wav", seed=1).parent
    (folder / "2.m4a").write_text("words", encoding="utf-8")
    ended = run("ingest", folder)
    assert {NoSpeechError.exit_code, NotSoundError.exit_code} == {9, 5}
    assert ended.code == 1


def test_the_roster_is_listened_for(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    assert run("roster", "add", "Bramble", "--also-called", "Bram").code == 0
    ended = run("ingest", make_memo("a.wav"))
    assert ended.out == "visit 1: Bramble, 2026-03-02: 1 fact\n"
    assert hearer.heard == [("a.wav", ("Bramble", "Bram"))]


def test_the_date_given_overrules(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    assert ", 2026-01-31:" in run("ingest", make_memo("a.wav"), "--date", "2026-01-31").out


def test_json_is_one_record_a_line(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    make_memo("1.wav", seed=1)
    folder = make_memo("2 silent.wav", seed=2).parent
    first, second = map(json.loads, run("ingest", folder, "--json").out.splitlines())
    assert first.pop("visit_ids") == [1]
    assert MemoRecord.model_validate(first).visits[0].horse == "Bramble"
    failed = MemoRecord.model_validate(second)
    assert failed.visits == []
    assert failed.flags[0].reason == "Nobody speaks in 2 silent.wav."
    assert failed.memo.path is not None
    assert failed.memo.path.endswith("2 silent.wav")


def test_a_dry_run_keeps_nothing(run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path) -> None:
    ended = run("ingest", make_memo("a.wav"), "--dry-run")
    assert ended.code == 0
    assert "thrush" in ended.out
    assert not own_surroundings.exists()


def test_a_dry_run_takes_its_roster_from_a_file(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path
) -> None:
    (tmp_path / "horses.csv").write_text("name\nBramble\n", encoding="utf-8")
    ended = run("ingest", make_memo("a.wav"), "--dry-run", "--json", "--roster", tmp_path / "horses.csv")
    assert MemoRecord.model_validate_json(ended.out).visits[0].horse_match is HorseMatch.KNOWN


def test_a_dry_run_takes_its_roster_from_the_store(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    assert run("roster", "add", "Bramble").code == 0
    assert run("ingest", make_memo("a.wav"), "--dry-run", "--json").code == 0
    assert hearer.heard == [("a.wav", ("Bramble",))]


def test_lines_of_audio_are_answered_in_order(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path
) -> None:
    make_memo("a.wav", seed=1, folder=tmp_path / "audio")
    elsewhere = make_memo("b.wav", seed=2)
    lines = tmp_path / "memos.jsonl"
    requests = [
        {"id": "one", "date": "2026-02-01", "roster": ["Bramble"], "audio": "audio/a.wav", "visits": []},
        {"id": "two", "roster": [], "audio": str(elsewhere)},
        {"id": "three", "roster": [], "audio": "audio/gone.wav"},
    ]
    lines.write_text("\n".join(map(json.dumps, requests)), encoding="utf-8")
    ended = run("ingest", "--dry-run", "--json", "--jsonl", lines)
    records = [MemoRecord.model_validate_json(line) for line in ended.out.splitlines()]
    assert [record.id for record in records] == ["one", "two", "three"]
    assert records[0].visits[0].horse_match is HorseMatch.KNOWN
    assert [record.visits[0].date for record in records[:2]] == [date(2026, 2, 1), date(2026, 3, 2)]
    assert (records[2].visits, len(records[2].flags)) == ([], 1)
    assert "memos.jsonl line 3" in ended.err
    assert ended.code == 3


class TestSoundFiles:
    """Which files of a folder are memos."""

    def test_by_ending_or_by_content_and_in_order(self, make_memo: MakeMemo) -> None:
        folder = make_memo("b.wav").parent
        make_memo("memo without an ending", seed=1)
        make_memo("a.WAV", seed=2, folder=folder / "deeper")
        make_memo(".hidden.wav", seed=3)
        (folder / "roster.csv").write_text("name\n", encoding="utf-8")
        (folder / "c.m4a").touch()
        found = [path.relative_to(folder).as_posix() for path in sound_files([folder])]
        assert found == ["b.wav", "c.m4a", "deeper/a.WAV", "memo without an ending"]

    def test_a_file_that_is_named_is_taken_once_whatever_it_is(self, make_memo: MakeMemo, tmp_path: Path) -> None:
        named = tmp_path / "notes.txt"
        named.touch()
        memo = make_memo("a.wav")
        assert sound_files([named, memo.parent, memo]) == [named, memo]

    def test_the_store_is_left_out(self, make_memo: MakeMemo, tmp_path: Path) -> None:
        memo = make_memo("a.wav")
        make_memo("kept.wav", seed=1, folder=tmp_path / "memos" / "store" / "originals")
        assert sound_files([memo.parent], leave_out=tmp_path / "memos" / "store") == [memo]


def test_every_name_of_a_horse_is_listened_for_once() -> None:
    roster = [RosterHorse(name="Bramble", also_called=["Bram", "Bee"]), RosterHorse(name="Bee")]
    assert spoken_names(roster) == ["Bramble", "Bram", "Bee"]


def test_typed_text_becomes_a_record_without_seconds(hearer: FakeHearer) -> None:
    record = Ingest(HearingSettings(), load_vocabulary()).read_text("Bramble. Thrush.", [], date(2026, 3, 2))
    assert record.memo.sha256 is None
    assert record.transcript == "Bramble. Thrush."
    assert (record.visits[0].facts[0].start, record.visits[0].facts[0].quote) == (None, "Thrush")


def test_a_memo_that_another_program_kept_meanwhile_is_said_to_be_kept(
    hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    memo = make_memo("a.wav")
    ingest = Ingest(HearingSettings(), load_vocabulary())
    with Store.open(tmp_path / "store") as store:
        assert ingest.keep(memo, store).visit_ids == [1]
        monkeypatch.setattr(store, "has", lambda sha256: False)
        second = ingest.keep(memo, store)
        assert (second.already_kept, second.visit_ids, second.record) == (True, [], None)
        assert len(store.memos()) == 1


def test_a_list_of_horses_is_asked_for_when_nobody_knows_whose_it_was(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch
) -> None:
    from tests.cli.conftest import FakeReader

    wanted = "No horse is known yet; names are heard far better with a list: clinchbook roster import horses.csv"
    read = FakeReader.read

    def nobody(self: FakeReader, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        unclear = {"horse": None, "horse_match": HorseMatch.UNCLEAR}
        return [visit.model_copy(update=unclear) for visit in read(self, transcript, roster, day)]

    monkeypatch.setattr(FakeReader, "read", nobody)
    assert wanted in run("ingest", make_memo("1.wav", seed=1)).err.splitlines()
    assert run("roster", "add", "Sorrel").code == 0
    assert wanted not in run("ingest", make_memo("2.wav", seed=2)).err.splitlines()
