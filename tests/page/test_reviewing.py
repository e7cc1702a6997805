"""Every answer by a form, as a browser without scripts sends it; conflicts and mistakes show the question anew."""

from __future__ import annotations

import re
import sqlite3
from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.record import Status
from tests.page.conftest import LOST, Browser, MakeBrowser, status_of

SIZE, PRESENT = "v1-f2", Status.PRESENT


def begin(browser: Browser, day: str = "2026-05-12") -> str:
    """Start the review of a day; returns the first page's words."""
    assert browser.post("/review", {"day": day}).headers["Location"] == "/review"
    return browser.get("/review").words


def asked(browser: Browser) -> str:
    """The key of the question that is asked now."""
    found = re.search(r'action="/review/(v[^"]+)"', browser.get("/review").text)
    return found.group(1) if found else ""


def test_the_question_comes_with_its_words_reason_and_sound(inside: Browser) -> None:
    page = inside.get(f"/review/{SIZE}")
    assert "Left fore" not in page.words.partition("What is right?")[0].partition("Hester,")[0]
    assert "left fore, right fore: shoe size 3 The word “three” was hard to hear." in page.words
    assert "<mark>Size three</mark> on both fronts." in page.text
    assert re.search(r'src="/sound/1/\d+-\d+\.wav"', page.text)
    # Focus starts on the question, never on an answer.
    assert re.findall(r"<[^>]*autofocus[^>]*>", page.text) == ['<h1 tabindex="-1" autofocus>']


def test_the_review_begins_with_the_newest_day_and_goes_on_to_the_others(inside: Browser) -> None:
    assert "1 of 4" in inside.get("/review").words
    while key := asked(inside):
        inside.answer(key, "right")
    assert "All done 4 questions are answered" in inside.get("/review").words
    inside.post("/review", {"do": "all"})
    assert "1 of 2" in inside.get("/review").words


def test_progress_counts_answers_and_skips(inside: Browser) -> None:
    assert "1 of 4" in begin(inside)
    inside.post(f"/review/{asked(inside)}", {"do": "skip"})
    assert "2 of 4" in inside.get("/review").words
    inside.answer(asked(inside), "right")
    assert "3 of 4" in inside.get("/review").words


def test_a_question_opened_from_a_visit_is_not_counted_in_a_review_that_does_not_hold_it(inside: Browser) -> None:
    page = inside.get(f"/review/{SIZE}")
    assert not re.search(r"\d of \d", page.words)
    assert "<progress" not in page.text
    begin(inside)
    assert "1 of 4" in inside.get(f"/review/{asked(inside)}").words


def test_a_field_is_accepted_on_all_its_feet(inside: Browser, book: Path) -> None:
    answer = inside.answer(SIZE, "right")
    assert (answer.status, answer.headers["Location"]) == (303, "/review")
    assert status_of(book, 1)[1:] == [("LF", "3", PRESENT, False), ("RF", "3", PRESENT, False)]
    assert "Right: left fore, right fore: shoe size 3." in inside.get("/review").words
    assert "Right: left fore, right fore" not in inside.get("/review").words  # said once


def test_a_choice_is_taken_by_what_it_says(inside: Browser, book: Path) -> None:
    assert inside.answer(SIZE, "choice", choice="left fore, right fore: shoe size 3.5").status == 303
    assert [fact[1] for fact in status_of(book, 1)[1:]] == ["3.5", "3.5"]
    assert inside.answer("v2-f4", "choice", choice="something else").status == 409
    assert status_of(book, 2) == [(None, "lame", PRESENT, True)]


def test_a_typed_value_is_read_as_a_memo_is(inside: Browser, book: Path) -> None:
    inside.answer(SIZE, "type", text="double aught")
    assert [fact[1] for fact in status_of(book, 1)[1:]] == ["00", "00"]


@pytest.mark.parametrize(
    ("do", "form", "sentence"),
    [
        ("type", {"text": "seventy"}, "“seventy” is no shoe size"),
        ("type", {"text": " "}, "Nothing was typed; nothing was changed."),
        ("type", {"text": "3" * 501}, "That is too long; 500 letters are enough for one answer."),
        ("feet", {"feet": "XX"}, "Choose the foot."),
        ("move", {"horse": "999"}, "Choose the horse."),
        ("move", {"horse": "1"}, "It stands at Hester already."),
        ("missed", {"text": "good morning"}, "is not understood"),
        ("day", {"text": "2026-05-10"}, "This is no answer to what is asked here."),
        ("dance", {}, "The form did not say what to do; nothing was changed."),
    ],
)
def test_an_answer_that_cannot_be_shows_its_question_again(
    do: str, form: dict[str, str], sentence: str, inside: Browser, book: Path
) -> None:
    before = status_of(book, 1)
    answer = inside.answer(SIZE, do, **form)
    assert (answer.status, sentence in answer.words) == (422, True)
    assert "left fore, right fore: shoe size 3" in answer.words
    assert status_of(book, 1) == before


def test_what_was_typed_is_not_lost_by_a_mistake(inside: Browser) -> None:
    for do, summary in (("type", "It is something else"), ("missed", "Something was missed here")):
        page = inside.answer(SIZE, do, text="seventy <b>").text
        assert page.count('value="seventy &lt;b&gt;"') == 1
        assert re.findall(r"<details open>\s*<summary>([^<]*)", page) == [summary]
    assert "<details open>" not in inside.get(f"/review/{SIZE}").text


def test_not_said_other_feet_other_horse(inside: Browser, book: Path) -> None:
    inside.answer(SIZE, "feet", feet="hinds")
    assert [fact[0] for fact in status_of(book, 1)[1:]] == ["LH", "RH"]
    inside.post("/undo", {})
    inside.answer(SIZE, "move", named="Figaro")
    assert status_of(book, 4) == [("LF", "3", PRESENT, False), ("RF", "3", PRESENT, False)]
    inside.post("/undo", {})
    inside.answer(SIZE, "not_said")
    assert status_of(book, 1) == [("LF", "puncture", PRESENT, False)]


def test_what_was_missed_is_added_and_the_question_stays(inside: Browser, book: Path) -> None:
    answer = inside.answer(SIZE, "missed", text="left fore, mild thrush")
    assert answer.headers["Location"] == f"/review/{SIZE}"
    assert "Added: left fore: thrush (mild)." in inside.get(f"/review/{SIZE}").words
    assert status_of(book, 1)[-1] == ("LF", "thrush", PRESENT, False)


def test_undo_asks_the_same_question_first(inside: Browser, book: Path) -> None:
    begin(inside)
    first = asked(inside)
    inside.answer(first, "right")
    second = asked(inside)
    assert second != first
    inside.post("/undo", {})
    page = inside.get("/review").words
    assert asked(inside) == first
    assert "it is asked again. 1 of 4" in page
    with Store.open(book) as store:
        assert len(store.changes(1)) + len(store.changes(2)) >= 2  # both the answer and its taking back are written


def test_undo_with_nothing_to_take_back_is_a_sentence(inside: Browser) -> None:
    inside.post("/undo", {})
    assert "There is no change by this hand left to take back." in inside.get("/review").words


def test_whose_visit_it_was(inside: Browser, book: Path) -> None:
    assert "1 of 2" in begin(inside, "2026-05-11")
    assert "Hester (Quince Farm)" in inside.get("/review/v3-h").words
    inside.answer("v3-h", "horse", horse="1")
    with Store.open(book) as store:
        horse = store.visit(3).horse
    assert horse is not None
    assert horse.name == "Hester"
    page = inside.get("/review").words
    assert "This was Hester. Is Hester called “Hesta”, or is it heard so? Yes, learn it Not yet" in page
    inside.post("/learn", {"do": "yes"})
    assert "Learned: " in inside.get("/review").words
    while key := asked(inside):
        inside.answer(key, "right")
    done = inside.get("/review").words
    assert "All done" in done
    assert "Learned tonight" in done
    with Store.open(book) as store:
        assert store.horse("Hesta").name == "Hester"


def test_a_new_horse_joins_the_roster(inside: Browser, book: Path) -> None:
    assert inside.answer("v3-h", "new_horse", text="hester", place="Quince Farm").status == 422
    inside.answer("v3-h", "new_horse", text="Hesta", place="Sedge Yard")
    with Store.open(book) as store:
        assert store.horse("Hesta").horse.place == "Sedge Yard"


def test_not_yet_learns_nothing(inside: Browser, book: Path) -> None:
    inside.answer("v3-h", "horse", horse="1")
    inside.post("/learn", {"do": "no"})
    assert "Yes, learn it" not in inside.get("/review").words
    with Store.open(book) as store:
        assert store.learned_names() == []


SECOND = "v4-p3"


def standing(book: Path) -> dict[str, list[str | float]]:
    """What stands of every horse of the memo in which another horse came in."""
    with Store.open(book) as store:
        visits = [store.visit(number) for number in store.memo(3).visit_ids]
        return {visit.horse.name: [kept.fact.value for kept in visit.facts] for visit in visits if visit.horse}


def test_the_part_behind_a_place_goes_to_the_horse_he_names_and_comes_back(
    at_the_door: MakeBrowser, two_horses: Path
) -> None:
    browser = at_the_door(two_horses)
    browser.enter()
    words = begin(browser, "2026-05-13")
    assert asked(browser) == SECOND
    assert "horse from “Grey mare next” on: Larkspur" in words
    assert "That part: left fore: thrush; right hind: corn" in words
    assert "Right: Larkspur all through" in words
    assert (
        "The other horse comes in with Grey mare next. Thrush in the left fore. Corn, right hind. This part is Figaro"
        in words
    )
    browser.answer(SECOND, "split", horse="3", start=str(LOST.index("Grey")))
    assert standing(two_horses) == {"Larkspur": ["trim"], "Figaro": ["thrush", "corn"]}
    assert "From “Grey mare next” on it is Figaro: left fore: thrush, right hind: corn." in browser.get("/review").words
    browser.post("/undo", {})
    assert asked(browser) == SECOND
    assert standing(two_horses) == {"Larkspur": ["trim", "thrush", "corn"]}


@pytest.mark.parametrize(
    ("do", "form", "stands"),
    [
        ("split", {"horse": "3"}, {"Larkspur": ["trim"], "Figaro": ["thrush", "corn"]}),
        (
            "split",
            {"named": "Rowan", "start": str(LOST.index("Corn"))},
            {"Larkspur": ["trim", "thrush"], "Rowan": ["corn"]},
        ),
        ("new_horse", {"text": "Juniper"}, {"Larkspur": ["trim"], "Juniper": ["thrush", "corn"]}),
        ("horse", {"horse": "3"}, {"Figaro": ["trim", "thrush", "corn"]}),
        ("right", {}, {"Larkspur": ["trim", "thrush", "corn"]}),
    ],
)
def test_every_answer_to_where_another_horse_came_in(
    do: str, form: dict[str, str], stands: dict[str, list[str]], at_the_door: MakeBrowser, two_horses: Path
) -> None:
    browser = at_the_door(two_horses)
    browser.enter()
    assert browser.answer(SECOND, do, **form).status == 303
    assert standing(two_horses) == stands
    assert browser.get(f"/review/{SECOND}").status == 404


@pytest.mark.parametrize(
    ("form", "status", "sentence"),
    [
        ({"horse": "4"}, 422, "It stands at Larkspur already; say that it is the same horse."),
        ({"horse": ""}, 422, "Choose the horse."),
        ({"named": "Nobody"}, 404, "No horse called Nobody is in the store."),
        ({"horse": "3", "start": "2"}, 409, "Somebody changed this visit since you saw it."),
        ({"horse": "3", "start": "there"}, 409, "Somebody changed this visit since you saw it."),
    ],
)
def test_a_bad_answer_to_it_is_one_sentence_and_moves_nothing(
    form: dict[str, str], status: int, sentence: str, at_the_door: MakeBrowser, two_horses: Path
) -> None:
    browser = at_the_door(two_horses)
    browser.enter()
    got = browser.answer(SECOND, "split", **form)
    assert (got.status, sentence in got.words) == (status, True)
    assert standing(two_horses) == {"Larkspur": ["trim", "thrush", "corn"]}


def test_what_was_skipped_is_asked_at_the_end(inside: Browser) -> None:
    begin(inside)
    keys = []
    while key := asked(inside):
        keys.append(key)
        inside.post(f"/review/{key}", {"do": "skip"})
    assert "Done, but for what was skipped Nothing waits for an answer on this day." in inside.get("/review").words
    inside.post("/review", {"do": "skipped"})
    assert asked(inside) == keys[0]
    assert len(keys) == 4


def test_a_conflict_shows_the_question_as_it_stands_now(inside: Browser, book: Path) -> None:
    seen = re.search(r'name="seen" value="(\d+)"', inside.get(f"/review/{SIZE}").text)
    assert seen is not None
    with Store.open(book) as store:  # another reviewer, meanwhile
        visit = store.visit(1)
        store.correct(visit.fact_ids[2], {"value": "4"}, seen=visit.revision, who="Another")
    answer = inside.post(f"/review/{SIZE}", {"do": "not_said", "seen": seen.group(1)})
    assert answer.status == 409
    assert "Somebody changed this visit since you saw it. Here is the question as it stands now" in answer.words
    assert "left fore: shoe size 3 The word" in answer.words
    assert status_of(book, 1)[1:] == [("LF", "3", PRESENT, True), ("RF", "4", PRESENT, False)]
    again = re.search(r'name="seen" value="(\d+)"', answer.text)
    assert again is not None
    assert inside.post(f"/review/{SIZE}", {"do": "right", "seen": again.group(1)}).status == 303


def test_an_answer_to_a_question_that_is_gone_goes_on(inside: Browser) -> None:
    inside.answer(SIZE, "right")
    inside.get("/review")
    assert inside.post(f"/review/{SIZE}", {"do": "right", "seen": "0"}).headers["Location"] == "/review"
    assert "This question has been answered." in inside.get("/review").words


def test_a_busy_store_is_one_sentence_and_nothing_is_lost(inside: Browser, book: Path) -> None:
    inside.desk.busy_s = 0.05
    other = sqlite3.connect(book / "clinchbook.db", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    try:
        answer = inside.answer(SIZE, "type", text="double aught")
    finally:
        other.execute("ROLLBACK")
        other.close()
    assert (answer.status, "Another program is writing to the store" in answer.words) == (503, True)
    assert 'value="double aught"' in answer.text
    assert inside.answer(SIZE, "type", text="double aught").status == 303
