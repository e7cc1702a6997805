"""Memos that could not be taken in wait, are tried again, and leave the list when they are kept or dropped."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import FileMissingError, NoSpeechError, NotFoundError, NotSoundError, StoreError
from pipeline.keeping import Store
from tests.cli.conftest import FakeHeard, FakeHearer

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tests.cli.conftest import MakeMemo, Run


def speak(path: Path) -> Path:
    """Give a silent memo's sound a name in which the fake hearer hears words."""
    return path.rename(path.with_name(path.name.replace("silent", "spoken")))


def test_a_memo_that_fails_waits_with_its_reason(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path
) -> None:
    memo = make_memo("silent.wav")
    assert run("ingest", memo, "--date", "2026-01-31").code == NoSpeechError.exit_code
    with Store.open(own_surroundings, create=False) as store:
        (entry,) = store.waiting()
    assert (entry.id, entry.path, entry.reason) == (1, memo, "Nobody speaks in silent.wav.")
    assert (entry.day, entry.tries, entry.since) == (date(2026, 1, 31), 1, entry.last_tried)
    assert entry.sha256 is not None
    told = run("waiting")
    assert told.out.startswith(f"1  {memo}  since 20")
    assert told.out.endswith(", 1 try: Nobody speaks in silent.wav.\n")
    assert (
        told.err
        == "Try them again with: clinchbook ingest --again\nTake one off the list with: clinchbook waiting --drop N\n"
    )


def test_trying_again_takes_only_those_that_wait(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch, own_surroundings: Path
) -> None:
    memo = make_memo("silent.wav", seed=1)
    make_memo("other.wav", seed=2)
    monkeypatch.chdir(memo.parent)
    assert run("ingest", "silent.wav", "--date", "2026-01-31").code == NoSpeechError.exit_code
    assert run("ingest", "--again").code == NoSpeechError.exit_code
    with Store.open(own_surroundings, create=False) as store:
        assert [(entry.tries, entry.day) for entry in store.waiting()] == [(2, date(2026, 1, 31))]
    monkeypatch.setattr(FakeHearer, "hear", _hears_all(FakeHearer.hear))
    ended = run("ingest", "--again")
    asked = "  (!) A new horse, heard as “Bramble”; is that its name? (“Bramble” at 0:00)\n"
    assert (ended.code, ended.out) == (0, "visit 1: Bramble (new horse), 2026-01-31: 1 fact\n" + asked)
    assert ended.err == "Memos: 1 kept.\n1 doubt to look at: clinchbook review puts it before you.\n"
    assert run("ingest", "--again").err == "No memo waits.\n"
    assert run("waiting").err == "No memo waits.\n"


def _hears_all(hear: object) -> object:
    def hearing(self: FakeHearer, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> FakeHeard:
        spoken = path.with_name("spoken.wav")
        spoken.write_bytes(path.read_bytes())
        assert callable(hear)
        heard = hear(self, spoken, names, recorded)
        assert isinstance(heard, FakeHeard)
        return heard

    return hearing


def test_a_day_given_now_overrules_the_day_given_then(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch
) -> None:
    run("ingest", make_memo("silent.wav"), "--date", "2026-01-31")
    monkeypatch.setattr(FakeHearer, "hear", _hears_all(FakeHearer.hear))
    assert ", 2026-02-01:" in run("ingest", "--again", "--date", "2026-02-01").out


def test_a_folder_and_those_that_wait_are_each_tried_once(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = make_memo("silent.wav", seed=1).parent
    monkeypatch.chdir(folder.parent)
    run("ingest", folder.name)
    make_memo("new.wav", seed=2)
    hearer.heard.clear()
    run("ingest", folder.name, "--again")
    assert sorted(name for name, _ in hearer.heard) == ["new.wav", "silent.wav"]


def test_the_same_sound_kept_under_another_name_no_longer_waits(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo
) -> None:
    memo = make_memo("silent.wav")
    run("ingest", memo)
    assert run("ingest", speak(memo)).code == 0
    assert run("waiting").err == "No memo waits.\n"


def test_a_sound_kept_before_no_longer_waits(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path
) -> None:
    memo = make_memo("a.wav")
    run("ingest", memo)
    with Store.open(own_surroundings) as store:
        store.wait(memo, None, "It could not be read.")
    assert "kept before already" in run("ingest", "--again").err
    assert run("waiting").err == "No memo waits.\n"


def test_a_file_that_is_gone_still_waits_and_says_so(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    memo = make_memo("silent.wav")
    run("ingest", memo)
    memo.unlink()
    ended = run("ingest", "--again")
    assert ended.code == FileMissingError.exit_code
    assert ended.err.splitlines()[0] == f"There is no file {memo}."
    entry = json.loads(run("waiting", "--json").out)
    assert (entry["number"], entry["tries"], entry["reason"]) == (1, 2, f"There is no file {memo}.")


def test_a_file_that_is_no_sound_waits_too(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    letter = make_memo("letter.m4a")
    letter.write_text("Dear farrier", encoding="utf-8")
    assert run("ingest", letter).code == NotSoundError.exit_code
    assert "letter.m4a is not a recording" in run("waiting").out


def test_a_person_drops_what_need_not_be_heard(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path
) -> None:
    first = make_memo("1 silent.wav", seed=1)
    make_memo("2 silent.wav", seed=2)
    run("ingest", first.parent)
    refused = run("waiting", "--drop", "1", "--drop", "7")
    assert refused.code == NotFoundError.exit_code
    assert refused.err == "Nothing on the waiting list has the number 7.\n"
    ended = run("waiting", "--drop", "1")
    assert ended.code == 0
    assert ended.err.splitlines()[0] == f"{first} no longer waits."
    assert first.is_file()
    with Store.open(own_surroundings, create=False) as store:
        assert [entry.id for entry in store.waiting()] == [2]


def test_dropping_takes_the_copy_that_a_failed_try_left(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept, failed = make_memo("1.wav", seed=1), make_memo("2.wav", seed=2)
    assert run("ingest", kept).code == 0

    def failing(*_: object) -> None:
        raise StoreError("The disk is full.")

    with monkeypatch.context() as patched:
        patched.setattr("pipeline.keeping.writing_down.write_memo", failing)
        assert run("ingest", failed).code == StoreError.exit_code
    assert len(list((own_surroundings / "originals").rglob("*.wav"))) == 2
    with Store.open(own_surroundings) as store:
        store.wait(kept, store.memo(1).record.memo.sha256, "An older try failed.")
    assert run("waiting", "--drop", "1", "--drop", "2").code == 0
    with Store.open(own_surroundings) as store:
        assert list((own_surroundings / "originals").rglob("*.wav")) == [store.memo(1).original]
        assert store.problems(deep=True) == []
    assert failed.is_file()


@pytest.mark.parametrize(
    ("trouble", "sentence"),
    [
        (MemoryError(), "There is not enough memory to hear 1.wav."),
        (OSError(5, "Input/output error"), "1.wav cannot be taken in: Input/output error."),
        (RuntimeError("Bramble had thrush"), "The recogniser gave up on 1.wav."),
    ],
    ids=["memory", "disk", "engine"],
)
def test_whatever_stops_one_memo_the_others_go_on(
    run: Run,
    hearer: FakeHearer,
    make_memo: MakeMemo,
    monkeypatch: pytest.MonkeyPatch,
    own_surroundings: Path,
    trouble: Exception,
    sentence: str,
) -> None:
    usual = FakeHearer.hear

    def hear(self: FakeHearer, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> FakeHeard:
        if path.name == "1.wav":
            raise trouble
        return usual(self, path, names, recorded)

    monkeypatch.setattr(FakeHearer, "hear", hear)
    make_memo("1.wav", seed=1)
    ended = run("ingest", make_memo("2.wav", seed=2).parent)
    assert ended.code == 1
    assert ended.out.count("visit ") == 1
    assert ended.err.splitlines()[0] == sentence
    with Store.open(own_surroundings, create=False) as store:
        assert [entry.reason for entry in store.waiting()] == [sentence]
        assert store.problems(deep=True) == []


def test_trying_again_does_not_go_with_keeping_nothing(run: Run, hearer: FakeHearer) -> None:
    ended = run("ingest", "--again", "--dry-run")
    assert ended.code == 2
    assert "--again keeps what it hears" in " ".join(ended.err.split())
