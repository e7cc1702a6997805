"""A watched folder: a memo is taken in once, and only when its file has stopped growing."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from pipeline.cli.settling import Settling
from pipeline.errors import FileMissingError, NoSpeechError, StoreBusyError
from pipeline.keeping import Store
from pipeline.keeping.own_words import add_word
from pipeline.vocabulary import load_vocabulary

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@dataclass
class Clock:
    """A clock that only moves when told."""

    now_s: float = 0.0

    def __call__(self) -> float:
        """The time in seconds."""
        return self.now_s


class TestSettling:
    """Which files are complete."""

    def test_a_file_is_handed_out_once_it_has_kept_still(self, tmp_path: Path) -> None:
        memo, clock = tmp_path / "a.m4a", Clock()
        memo.write_bytes(b"1")
        settling = Settling(5, clock)
        assert settling.ready([memo]) == []
        clock.now_s = 4.9
        assert settling.ready([memo]) == []
        assert settling.growing() == [memo]
        clock.now_s = 5
        assert settling.ready([memo]) == [memo]
        assert settling.ready([memo]) == []
        assert settling.growing() == []

    def test_growing_starts_the_wait_anew(self, tmp_path: Path) -> None:
        memo, clock = tmp_path / "a.m4a", Clock()
        memo.write_bytes(b"1")
        settling = Settling(5, clock)
        settling.ready([memo])
        clock.now_s = 4
        memo.write_bytes(b"12")
        assert settling.ready([memo]) == []
        clock.now_s = 8
        assert settling.ready([memo]) == []
        clock.now_s = 9
        assert settling.ready([memo]) == [memo]

    def test_a_file_that_changes_later_is_handed_out_again(self, tmp_path: Path) -> None:
        memo, clock = tmp_path / "a.m4a", Clock()
        memo.write_bytes(b"1")
        settling = Settling(0, clock)
        assert settling.ready([memo]) == [memo]
        memo.write_bytes(b"123")
        assert settling.ready([memo]) == [memo]

    def test_a_file_is_handed_out_again_when_that_is_asked(self, tmp_path: Path) -> None:
        memo, clock = tmp_path / "a.m4a", Clock()
        memo.write_bytes(b"1")
        settling = Settling(5, clock)
        settling.ready([memo])
        clock.now_s = 5
        assert settling.ready([memo]) == [memo]
        settling.again(memo)
        settling.again(tmp_path / "another.m4a")
        clock.now_s = 9
        assert settling.ready([memo]) == []
        clock.now_s = 10
        assert settling.ready([memo]) == [memo]

    def test_a_file_that_vanishes_is_forgotten(self, tmp_path: Path) -> None:
        settling = Settling(0)
        assert settling.ready([tmp_path / "gone.m4a"]) == []
        assert settling.growing() == []


def test_one_sweep_keeps_what_is_there(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path
) -> None:
    make_memo("1.wav", seed=1)
    folder = make_memo("2.wav", seed=2).parent
    ended = run("watch", folder, "--once", "--settle", "0.01")
    assert ended.code == 0
    assert ended.err.splitlines() == [f"Looking through {folder}.", "Memos: 2 kept."]
    again = run("watch", folder, "--once", "--settle", "0.01")
    assert again.err.splitlines()[-1] == "Memos: 0 kept, 2 kept before already."
    with Store.open(own_surroundings, create=False) as store:
        assert len(store.memos()) == 2


def test_a_sweep_with_a_bad_memo_ends_with_its_code(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    make_memo("1.wav", seed=1)
    folder = make_memo("2 silent.wav", seed=2).parent
    ended = run("watch", folder, "--once", "--settle", "0")
    assert ended.code == NoSpeechError.exit_code
    assert ended.err.splitlines()[-1] == "Memos: 1 kept, 1 could not be taken in."


def test_a_folder_that_is_not_there(run: Run, tmp_path: Path) -> None:
    ended = run("watch", tmp_path / "none", "--once")
    assert (ended.code, ended.out) == (FileMissingError.exit_code, "")
    assert ended.err == f"There is no file or folder {tmp_path / 'none'}.\n"


def test_own_words_that_change_count_from_the_next_memo_on(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = make_memo("1.wav", seed=1)
    looks: list[float] = []

    def between_looks(_: float) -> None:
        looks.append(_)
        if len(looks) == 2:
            add_word(own_surroundings, "findings", "thrush", "porridge frog")
            make_memo("2.wav", seed=2)
        elif len(looks) == 4:
            (own_surroundings / "words" / "findings.csv").write_text("no vocabulary", encoding="utf-8")
            make_memo("3.wav", seed=3)
        elif len(looks) == 6:
            raise KeyboardInterrupt

    monkeypatch.setattr("pipeline.cli.watching.time.sleep", between_looks)
    ended = run("watch", first.parent, "--settle", "0")
    assert ended.code == 0
    with Store.open(own_surroundings) as store:
        first_words, second_words, third_words = (memo.vocabulary for memo in store.memos())
    assert first_words == load_vocabulary().version
    assert hearer.learned == [second_words]
    assert second_words == third_words != first_words
    told = ended.err.splitlines()
    assert told[1] == "Your own words changed; they count from the next memo on."
    assert told[2].startswith("In your own words in ")
    assert told[2].endswith(" Your words stay as they were before.")
    assert told[3] == "Watching ended. Memos: 3 kept."


def test_a_memo_is_tried_again_while_another_program_holds_the_store(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    memo = make_memo("1.wav", seed=1)
    Store.open(own_surroundings).close()
    real_open, real_keep = Store.open, Store.keep
    looks: list[float] = []
    keeps: list[Store] = []

    def between_looks(_: float) -> None:
        looks.append(_)
        if len(looks) == 6:
            raise KeyboardInterrupt

    def opening(folder: Path, create: bool = True, busy_s: float = 5.0) -> Store:
        if len(looks) == 0:
            raise StoreBusyError("Another program is writing to the store.")
        return real_open(folder, create, busy_s)

    def keeping(store: Store, *given: Any, **named: Any) -> list[int]:
        keeps.append(store)
        if len(keeps) == 1:
            raise StoreBusyError("Another program is writing to the store.")
        return real_keep(store, *given, **named)

    monkeypatch.setattr("pipeline.cli.watching.time.sleep", between_looks)
    monkeypatch.setattr(Store, "open", opening)
    monkeypatch.setattr(Store, "keep", keeping)
    ended = run("watch", memo.parent, "--settle", "0")
    assert ended.err.splitlines() == [
        f"Watching {memo.parent}.",
        "Another program is writing to the store. The memos are tried again.",
        f"{memo}: Another program is writing to the store. It is tried again.",
        "Watching ended. Memos: 1 kept.",
    ]
    with real_open(own_surroundings) as store:
        assert (len(store.memos()), store.waiting()) == (1, [])


def test_a_folder_that_is_away_for_a_while_is_waited_for(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = make_memo("1.wav", seed=1).parent
    looks: list[float] = []

    def between_looks(_: float) -> None:
        looks.append(_)
        if len(looks) == 2:
            folder.rename(folder.with_name("pulled out"))
        elif len(looks) == 5:
            folder.with_name("pulled out").rename(folder)
            make_memo("2.wav", seed=2)
        elif len(looks) == 8:
            raise KeyboardInterrupt

    monkeypatch.setattr("pipeline.cli.watching.time.sleep", between_looks)
    ended = run("watch", folder, "--settle", "0")
    away = f"{folder} cannot be read just now; its memos are taken in when it is back."
    assert ended.err.splitlines() == [f"Watching {folder}.", away, "Watching ended. Memos: 2 kept."]
