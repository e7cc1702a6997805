"""What came from another store's record, beside back-ups, removals, readings again and the waiting list."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import CorrectionError
from pipeline.keeping import Looking, Store, Wanted
from pipeline.keeping.restoring import restore
from pipeline.using.export import Request, choice_of, export_all, export_horse
from pipeline.using.interchange import read_record, take_in

WHOLE = Request("json", choice_of(date(2026, 5, 12)))
WITH_SOUND = Request("json", choice_of(date(2026, 5, 12)), with_audio=True)


@pytest.fixture
def other(tmp_path: Path) -> Iterator[Store]:
    """Another farrier's store, empty."""
    with Store.open(tmp_path / "other") as opened:
        yield opened


def brought(store: Store, path: Path, horse: str | None = None, request: Request = WHOLE) -> Path:
    """The store's record, or that of one horse, in a file."""
    path.write_bytes(export_all(store, request) if horse is None else export_horse(store, horse, request))
    return path


def bytes_of(folder: Path) -> bytes:
    """Everything that lies in a folder, in lower case."""
    return b"\n".join(path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()).lower()


def test_a_back_up_does_not_ask_for_recordings_that_never_came(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "all.json"))
    target, again = tmp_path / "stick", tmp_path / "again"
    done = other.back_up(target)
    assert (done.memos, done.copied, done.there_before, done.problems) == (2, 0, 0, ())
    assert restore(target, again, passphrase=lambda: "").problems == ()
    with Store.open(again) as opened:
        assert export_all(opened, WHOLE) == export_all(other, WHOLE)
        assert opened.problems(deep=True) == []


def test_a_back_up_saves_recordings_that_came_along(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "all.json", request=WITH_SOUND))
    assert other.back_up(tmp_path / "stick").copied == 2
    other.memo(1).original.unlink()
    assert other.problems() == ["The recording of march.m4a is missing from the store."]
    assert other.back_up(tmp_path / "second").problems == ("The recording of march.m4a is missing.",)


def test_an_encrypted_back_up_does_not_ask_for_them_either(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "all.json"))
    done = other.archive(tmp_path / "saved.zip", "a sentence that is long enough")
    assert (done.memos, done.copied, done.problems) == (2, 0, ())
    put_back = restore(tmp_path / "saved.zip", tmp_path / "again", passphrase=lambda: "a sentence that is long enough")
    assert put_back.problems == ()


def test_what_was_taken_in_is_removed_for_good_like_all_else(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "all.json", request=WITH_SOUND))
    other.forget(other.plan_forgetting_horse("Bramble", whole_memos=True), whole_memos=True)
    assert [horse.name for horse in other.horses()] == ["Sorrel", "Teasel"]
    found = bytes_of(tmp_path / "other")
    assert [word for word in (b"bramble", b"a. fern", b"march.m4a", b"his hat", b"all.json") if word in found] == []
    assert [entry.table for entry in other.history()] == []
    assert other.problems(deep=True) == []


def test_the_words_of_a_memo_that_a_horse_was_removed_from_do_not_go_out(store: Store, tmp_path: Path) -> None:
    store.forget(store.plan_forgetting_horse("Sorrel"))
    record = read_record(brought(store, tmp_path / "all.json", request=WITH_SOUND))
    april = record.memos[1]
    assert (april.whole, april.transcript, april.words, april.sound) == (False, "", [], None)
    assert record.memos[0].whole
    assert "Sorrel" not in (tmp_path / "all.json").read_text(encoding="utf-8")


def test_a_memo_that_came_without_its_words_is_not_read_again(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "bramble.json", "Bramble"))
    april = next(memo for memo in other.memos() if memo.file_name == "april.m4a")
    assert other.not_to_read() == {april.id}
    with pytest.raises(CorrectionError, match="came from another store in part, without its words"):
        other.read_again(april.id, april.record, seen=1, vocabulary="later")
    assert len(other.visit(april.visit_ids[0]).visit.facts) == 5


def found(folder: Path, *asked: tuple[str, str]) -> list[tuple[str | None, str, str | float]]:
    """Horse, day and value of what a search finds."""
    with Looking.open(folder) as looking:
        hits = looking.search(Wanted(values=asked)).facts
    return [(hit.horse, hit.date.isoformat(), hit.fact.value) for hit in hits]


def test_what_was_taken_in_is_found_like_all_else(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, brought(store, tmp_path / "all.json"))
    assert found(tmp_path / "other", ("finding", "abscess"), ("gait", "sound")) == [
        ("Bramble", "2026-04-13", "abscess"),
        ("Sorrel", "2026-04-13", "sound"),
    ]
    april = other.visits_of("Bramble")[-1]
    other.drop(april.fact_ids[1], seen=april.revision)
    assert found(tmp_path / "other", ("finding", "abscess")) == []
    other.forget(other.plan_forgetting_horse("Sorrel"))
    assert found(tmp_path / "other", ("gait", "sound")) == []
    assert other.problems(deep=True) == []


def test_a_memo_that_waits_is_off_the_list_once_it_was_taken_in(store: Store, other: Store, tmp_path: Path) -> None:
    other.wait(tmp_path / "here.m4a", store.memo(1).record.memo.sha256, "It could not be read.")
    other.wait(tmp_path / "there.m4a", "a" * 64, "It could not be read.")
    take_in(other, brought(store, tmp_path / "all.json"))
    assert [waiting.path.name for waiting in other.waiting()] == ["there.m4a"]
