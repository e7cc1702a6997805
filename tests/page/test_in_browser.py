"""From the printed address to the end of the evening in a real Chromium, at a desk and on a phone."""

from __future__ import annotations

from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.keeping.own_words import own_words
from pipeline.record import Status
from tests.page.browsing import CHROMIUM, DESKTOP, NARROW, PHONE, Window, enter, served, window
from tests.page.conftest import status_of

pytestmark = pytest.mark.skipif(CHROMIUM is None, reason="no Chromium here; Debian has it in the package chromium")

PATHS = (
    "/day/2026-05-12", "/day/2026-05-11", "/days", "/visit/1", "/visit/3", "/review/v1-f2", "/review/v1-g1",
    "/review/v3-h", "/search?words=puncture", "/search?horse=nobody", "/review",
)  # fmt: skip
# Waits until some of the sound has been heard.
_PLAYS = """
new Promise(function (done) {
  const audio = document.querySelector(".sound audio");
  (function look() { if (audio.currentTime > 0.2) { done(true); } else { setTimeout(look, 50); } })();
})
"""


def press(at: Window, name: str) -> None:
    """Press a button and wait for the page that follows."""
    with at.page.expect_navigation():
        at.page.get_by_role("button", name=name, exact=True).click()


def heading(at: Window) -> str:
    """The question that is asked, or how the evening ended."""
    return at.page.get_by_role("heading", level=1).text_content() or ""


def play(at: Window) -> None:
    """Tap the large button; the sound comes in parts and plays to its end."""
    button = at.page.locator(".sound button").first
    with at.page.expect_response(lambda answer: "/sound/" in answer.url) as got:
        button.click()
    assert (got.value.status, got.value.headers["content-type"]) == (206, "audio/wav")
    assert at.value(_PLAYS) is True
    button.click()
    assert at.value("document.querySelector('.sound audio').paused") is True


def learn_what_was_said(at: Window, said: str, offer: str) -> None:
    """Answer the next stretch of unclear words, and say yes to what is offered then."""
    while (at.page.get_by_role("heading", name="Words to look at")).count() == 0:
        with at.page.expect_navigation():
            ask = at.page.get_by_role("button", name="skipped question")
            (ask if ask.count() else at.page.get_by_role("button", name="Skip for now")).first.click()
    at.page.get_by_label("What was said, with its foot").fill(said)
    press(at, "Add it")
    assert offer in at.page.locator("main").inner_text()
    assert at.faults() == []
    press(at, "Yes, learn it")


@pytest.mark.parametrize("size", [DESKTOP, PHONE], ids=["desktop", "phone"])
def test_an_evening_from_the_address_to_all_done(size: tuple[int, int], book: Path) -> None:
    with served(book) as address, window(size) as at:
        at.page.goto(address)
        assert at.faults() == []
        enter(at, address)
        press(at, "Review this day")
        assert at.page.locator(".progress").inner_text().startswith("1 of 4")
        asked = heading(at)
        play(at)

        # Correct by typing, take it back, correct by a choice: what sounds like nothing of it teaches nothing.
        while heading(at) != "lame":
            press(at, "Skip for now")
        at.page.get_by_text("It is something else").click()
        at.page.get_by_label("What it is instead").fill("sound")
        press(at, "This is right")
        assert status_of(book, 2)[0][1] == "sound"
        press(at, "Take back the last answer")
        assert (heading(at), status_of(book, 2)[0][1]) == ("lame", "lame")
        press(at, "sound")
        assert status_of(book, 2) == [(None, "sound", Status.PRESENT, False)]
        assert at.page.get_by_role("button", name="Yes, learn it").count() == 0

        # Say what was said where the words were unclear, and learn the mishearing.
        learn_what_was_said(at, "left fore, thrush in the sulcus", "Read “thruss” as thrush from now on?")
        assert [(word.form, word.canonical) for word in own_words(book)] == [("thruss", "thrush")]

        # The rest as it stands, what was skipped too.
        while (ask := at.page.get_by_role("button", name="skipped question")).count() or heading(at) != "All done":
            with at.page.expect_navigation():
                (ask if ask.count() else at.page.locator("button.main")).first.click()
        told = at.page.locator("main").inner_text()
        assert "4 questions are answered; every answer is kept." in told
        assert "Learned tonight\n“thruss” is read as thrush from the next memo on." in told
        assert at.faults() == []
        assert (asked != "", at.complaints) == (True, [])
    with Store.open(book) as store:
        assert [
            visit.id for visit in store.visits_on(store.visit(1).visit.date) for f in visit.facts if f.fact.flagged
        ] == []


def test_every_page_is_clean_for_axe_and_wide_enough_for_the_smallest_phone(book: Path) -> None:
    with served(book) as address, window(NARROW) as at:
        enter(at, address)
        origin = address.partition("/enter")[0]
        found = {}
        for path in PATHS:
            at.page.goto(origin + path)
            at.value("document.querySelectorAll('details').forEach(function (one) { one.open = true; })")
            found[path] = at.faults()
        assert {path: faults for path, faults in found.items() if faults} == {}
        assert at.complaints == []


def test_the_keyboard_alone_is_enough_and_focus_starts_on_the_question(book: Path) -> None:
    with served(book) as address, window(DESKTOP) as at:
        at.page.goto(address)
        at.page.keyboard.press("Tab")  # to the content
        at.page.keyboard.press("Tab")
        at.page.keyboard.press("Enter")
        at.page.wait_for_url("**/day/*")
        at.page.goto(address.partition("/enter")[0] + "/review/v1-f2")
        assert at.value("document.activeElement.tagName") == "H1"
        at.page.keyboard.press("Enter")  # twice by mistake: nothing is answered
        at.page.keyboard.press("Space")
        assert status_of(book, 1)[1][3] is True
        reached = []
        for _ in range(6):
            at.page.keyboard.press("Tab")
            reached.append(at.value("document.activeElement.textContent.trim()"))
        assert reached[0].startswith("▶ Play the words (")
        assert "Right: left fore, right fore: shoe size 3" in reached
        while at.value("document.activeElement.textContent.trim()") != "Right: left fore, right fore: shoe size 3":
            at.page.keyboard.press("Shift+Tab")
        with at.page.expect_navigation():
            at.page.keyboard.press("Enter")
        assert status_of(book, 1)[1][3] is False


@pytest.mark.parametrize("size", [DESKTOP, NARROW], ids=["desktop", "phone"])
def test_where_another_horse_came_in_is_said_and_taken_back(size: tuple[int, int], two_horses: Path) -> None:
    with served(two_horses) as address, window(size) as at:
        enter(at, address)
        press(at, "Review this day")
        assert heading(at) == "horse from “Grey mare next” on: Larkspur"
        play(at)
        at.value("document.querySelectorAll('details').forEach(function (one) { one.open = true; })")
        assert at.faults() == []
        at.page.locator("#start").select_option("Thrush in the left fore.")
        at.page.locator("#part").select_option("Rowan")
        press(at, "This part is its own")
        said = at.page.locator("main").inner_text()
        assert "From “Thrush in the left fore.” on it is Rowan: left fore: thrush, right hind: corn." in said
        press(at, "Take back the last answer")
        assert heading(at) == "horse from “Grey mare next” on: Larkspur"
        press(at, "This part is Figaro")
        assert at.complaints == []
    with Store.open(two_horses) as store:
        assert [kept.fact.value for kept in store.visits_of("Figaro")[0].facts] == ["thrush", "corn"]
        assert [kept.fact.value for kept in store.visit(4).facts] == ["trim"]
