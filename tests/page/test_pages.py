"""The day, a visit, the list of days, search and sound: what each tells, and what it answers to nonsense."""

from __future__ import annotations

import io
import wave
from pathlib import Path

import pytest

from pipeline.judging import cautions
from pipeline.keeping import Store
from pipeline.record import Fact, HorseMatch, Visit
from tests.page.conftest import DAY, Browser, MakeBrowser, keep


def test_the_first_page_leads_to_the_newest_day(inside: Browser) -> None:
    answer = inside.get("/")
    assert (answer.status, answer.headers["Location"]) == (303, "/day/2026-05-12")


def test_a_day_lists_its_visits_with_what_is_open(inside: Browser) -> None:
    page = inside.get("/day/2026-05-12")
    assert "Tuesday 12 May 2026 2 visits, 4 questions are open." in page.words
    # Two doubtful fields of Hester count as one question: it is one size on two feet. A spot check joins them.
    assert "Hester puncture Quince Farm, left fore, right fore (!) 3 questions caution" in page.words
    assert "Rowan (!) 1 question" in page.words
    assert 'href="/day/2026-05-11"' in page.text
    earlier = inside.get("/day/2026-05-11")
    assert "Unknown horse (heard: Hesta) trim left hind" in earlier.words
    assert 'href="/day/2026-05-12"' in earlier.text


def test_all_days_are_listed(inside: Browser) -> None:
    assert "Tuesday 12 May 2026 2 visits (!) 3 facts to look at" in inside.get("/days").words
    assert "Monday 11 May 2026 1 visit, 1 without a horse no fact is flagged" in inside.get("/days").words
    assert "2 visits" not in inside.get("/days?before=2026-05-12").words


def test_a_visit_is_told_foot_by_foot(inside: Browser) -> None:
    page = inside.get("/visit/1")
    assert "Hester Tuesday 12 May 2026 A. Fern, Quince Farm" in page.words
    assert "Cautions" in page.words
    assert 'aria-label="Left fore from below, toe up: 1 puncture (sole)"' in page.text
    assert "puncture (sole)" in page.words
    assert "(!) To look at: shoe size 3 the word “three” was hard to hear" in page.words
    assert "Stood <b>well</b>." in page.words  # as text
    assert '<a class="row" href="/review/v1-f2">' in page.text
    assert SAID_START in page.words


SAID_START = "Hester. Left front thruss in the sulcus"


def test_a_question_about_what_can_hurt_carries_its_caution(at_the_door: MakeBrowser, tmp_path: Path) -> None:
    quicked = Fact(
        foot="LF", slot="finding", value="quicked", flagged=True, confidence=0.5, reasons=["hard to hear"]
    )  # fmt: skip
    with Store.open(tmp_path / "book") as store:
        visit = Visit(horse="Hester", horse_match=HorseMatch.NEW, date=DAY, facts=[quicked])
        keep(store, tmp_path, "may.wav", "Quicked him on the left front.", [visit])
    browser = at_the_door(tmp_path / "book")
    browser.enter()
    (caution,) = cautions([quicked])
    assert f"Hard to hear. {caution}" in browser.get("/review/v1-f1").words
    assert caution in browser.get("/visit/1").words


@pytest.mark.parametrize(
    ("path", "status", "sentence"),
    [
        ("/visit/99", 404, "There is no visit 99 in the store."),
        ("/visit/99999999999999999999", 404, "There is no such number in the store"),
        ("/visit/x", 404, "There is no such page."),
        ("/day/2026-02-30", 422, "“2026-02-30” is no day; write it as 2026-05-12."),
        ("/days?before=soon", 422, "“soon” is no day"),
        ("/review/v1-f999", 404, "This question has been answered."),
        ("/review/nonsense", 404, "This question has been answered."),
        ("/own/..%2fapp.py", 404, "There is no such page."),
    ],
)
def test_what_is_not_there_is_one_sentence(path: str, status: int, sentence: str, inside: Browser) -> None:
    answer = inside.get(path)
    assert (answer.status, sentence in answer.words) == (status, True)


def test_a_day_without_a_visit_and_a_store_without_one(
    at_the_door: MakeBrowser, inside: Browser, tmp_path: Path
) -> None:
    assert "No visit of this day is kept." in inside.get("/day/2020-01-01").words
    Store.open(tmp_path / "empty").close()
    browser = at_the_door(tmp_path / "empty")
    browser.enter()
    assert "No visit yet" in browser.get("/").words
    assert "All done Nothing waits for an answer." in browser.get("/review").words


def test_search_finds_as_the_command_does(inside: Browser) -> None:
    assert "1 find. Hester Tuesday 12 May 2026 Left fore: puncture (sole)" in inside.get("/search?words=puncture").words
    assert "Nothing found." in inside.get("/search?words=puncture&foot=RF").words
    assert "Nothing found." in inside.get("/search?words=puncture&status=absent").words
    assert "1 find." in inside.get("/search?words=puncture&status=any&horse=Hester").words
    assert "1 find. Hester Tuesday 12 May 2026, notes Stood <b>well</b>." in inside.get("/search?words=stood").words
    assert "Nothing found. Did you mean puncture" in inside.get("/search?words=punctre").words
    assert "'XX' is no foot" in inside.get("/search?words=puncture&foot=XX").words
    assert "No horse called Hestar is in the store." in inside.get("/search?horse=Hestar").words
    assert "is no status" in inside.get("/search?words=puncture&status=gone").words


def test_a_clip_is_cut_from_the_original(inside: Browser) -> None:
    answer = inside.get("/sound/1/1500-2750.wav")
    assert (answer.status, answer.headers["Content-Type"], answer.headers["Accept-Ranges"]) == (
        200,
        "audio/wav",
        "bytes",
    )
    with wave.open(io.BytesIO(answer.data)) as sound:
        assert (sound.getnchannels(), sound.getframerate(), sound.getnframes()) == (1, 16000, 20_000)


def test_ranges_are_answered_in_part(inside: Browser) -> None:
    whole = inside.get("/sound/1/0-1000.wav").data
    part = inside.get("/sound/1/0-1000.wav", Range="bytes=44-143")
    assert (part.status, part.data) == (206, whole[44:144])
    assert part.headers["Content-Range"] == f"bytes 44-143/{len(whole)}"
    assert inside.get("/sound/1/0-1000.wav", Range="bytes=0-").headers["Content-Length"] == str(len(whole))
    assert inside.get("/sound/1/0-1000.wav", Range="bytes=999999-").status == 416


@pytest.mark.parametrize(
    "path",
    [
        "/sound/9/0-1000.wav", "/sound/1/2000-1000.wav", "/sound/1/6000-7000.wav", "/sound/1/0-130000.wav",
        "/sound/1/-5-1000.wav", "/sound/../book/clinchbook.db", "/sound/1/0-1000", "/sound/1/a-b.wav",
    ],
)  # fmt: skip
def test_no_other_sound_is_served(path: str, inside: Browser) -> None:
    assert inside.get(path).status == 404


def test_a_recording_that_is_gone_is_one_sentence(inside: Browser, book: Path) -> None:
    for original in (book / "originals").rglob("*.wav"):
        original.unlink()
    answer = inside.get("/sound/1/0-1000.wav")
    assert (answer.status, "There is no file" in answer.words) == (404, True)
