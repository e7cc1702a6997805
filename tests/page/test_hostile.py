"""Names and words made to run, hide or break something are shown as text, on every page and in a real browser."""

from __future__ import annotations

from collections import Counter
from html.parser import HTMLParser
from pathlib import Path

import pytest
from playwright.sync_api import Dialog

from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, RosterHorse, Visit
from pipeline.using.export import Request, choice_of, export_all_to
from tests.page.browsing import CHROMIUM, PHONE, Window, enter, served, window
from tests.page.conftest import DAY, Browser, MakeBrowser, keep
from tests.using.hostile import HOSTILE_TEXTS

PATHS = (
    "/day/2026-05-12", "/days", "/visit/1", "/review", "/review/v1-f1", "/review/v1-g1", "/review/v1-h",
    "/search?words=hostile&status=any", "/search?words=word",
)  # fmt: skip
# What our templates make; anything else came out of a memo.
TAGS = frozenset(
    {
        "html", "head", "meta", "title", "link", "script", "body", "a", "nav", "main", "footer", "section", "div",
        "h1", "h2", "h3", "h4", "p", "ol", "ul", "li", "span", "blockquote", "mark", "q", "code", "br", "details",
        "summary", "form", "input", "button", "label", "select", "option", "progress", "audio", "svg", "path", "rect",
        "text",
    }
)  # fmt: skip

# And of these no more than that.
ONCE = {"script": 1, "meta": 3, "link": 2, "title": 1, "main": 1}


class Looking(HTMLParser):
    """Collects the tags and attributes of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: Counter[str] = Counter()
        self.handlers: list[str] = []
        self.addresses: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note one tag."""
        self.tags[tag] += 1
        self.handlers += [name for name, _ in attrs if name.startswith("on") or name in ("style", "srcdoc")]
        self.addresses += [value or "" for name, value in attrs if name in ("href", "src", "action", "formaction")]


def hostile_visit(text: str) -> Visit:
    """The text wherever a memo's own words can stand."""
    said = f"{text} a word"
    fact = Fact(
        foot="LF", slot="shoe_size", value="3", flagged=True, confidence=0.5, reasons=[text], quote=said,
        span=(0, len(said)), start=0.0, end=1.0,
    )  # fmt: skip
    doubt = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=text, quote=said, start=0.0, end=1.0, span=(0, len(said)))
    whose = Flag(kind=FlagKind.HORSE, reason=text, quote=text)
    return Visit(
        horse=text, horse_match=HorseMatch.UNCLEAR, date=DAY, facts=[fact], flags=[doubt, whose],
        notes=f"hostile {text}",
    )  # fmt: skip


def hostile_book(folder: Path, texts: tuple[str, ...]) -> Path:
    """A store with every text as the name, owner and place of a horse, and in a memo of its own."""
    with Store.open(folder / "book") as store:
        store.add_horses(
            [RosterHorse(name=text, owner=text, place=text, also_called=[text]) for text in texts if text.strip()]
        )
        for number, text in enumerate(texts):
            keep(store, folder, f"memo{number}.wav", f"{text} a word", [hostile_visit(text)])
    return folder / "book"


@pytest.mark.parametrize("text", HOSTILE_TEXTS, ids=lambda text: ascii(text)[:30])
def test_every_page_shows_it_as_text(text: str, tmp_path: Path, at_the_door: MakeBrowser) -> None:
    browser: Browser = at_the_door(hostile_book(tmp_path, (text,)))
    browser.enter()
    for path in PATHS:
        answer = browser.get(path)
        assert answer.status in (200, 404), path
        looking = Looking()
        looking.feed(answer.text)
        assert set(looking.tags) <= TAGS, path
        assert looking.handlers == [], path
        assert all(address.startswith(("/", "#main")) for address in looking.addresses), path
        assert not set(answer.text) & set("\x00\x07\x1b\u202e\u202c"), path


def test_what_is_typed_is_shown_as_text(inside: Browser) -> None:
    for text in HOSTILE_TEXTS:
        for answer in (
            inside.answer("v1-f2", "type", text=text[:400]),
            inside.get("/search?words=" + text[:20].replace("&", "%26").replace("#", "%23").replace("\x00", "")),
        ):
            looking = Looking()
            looking.feed(answer.text)
            assert set(looking.tags) <= TAGS
            assert looking.handlers == []


def dialogs(at: Window) -> list[str]:
    """What any script that runs would say, gathered as it comes."""
    said: list[str] = []

    def note(dialog: Dialog) -> None:
        said.append(dialog.message)
        dialog.dismiss()

    at.page.on("dialog", note)
    return said


@pytest.mark.skipif(CHROMIUM is None, reason="no Chromium here; Debian has it in the package chromium")
def test_nothing_of_it_runs_in_a_browser(tmp_path: Path) -> None:
    book = hostile_book(tmp_path, HOSTILE_TEXTS)
    with served(book) as address, window(PHONE) as at:
        ran = dialogs(at)
        enter(at, address)
        origin = address.partition("/enter")[0]
        visits = [f"/visit/{number + 1}" for number in range(len(HOSTILE_TEXTS))]
        for path in (*PATHS[:4], *visits, *PATHS[-2:]):
            at.page.goto(origin + path)
            # Whatever would run on a hover, a load or a failed picture has had its chance.
            at.page.evaluate_handle("document.body")
            assert at.value("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), path
        elsewhere = [url for _, url in at.fetched if not url.startswith(origin)]
    assert (ran, elsewhere, at.complaints) == ([], [], [])


@pytest.mark.skipif(CHROMIUM is None, reason="no Chromium here; Debian has it in the package chromium")
@pytest.mark.parametrize("audience", ["owner", "vet"])
def test_nothing_of_it_runs_from_an_exported_record(tmp_path: Path, audience: str) -> None:
    with Store.open(hostile_book(tmp_path, HOSTILE_TEXTS), create=False) as store:
        horses = store.horses()
        for number in range(len(HOSTILE_TEXTS)):
            store.assign(number + 1, horses[number % len(horses)])
        (tmp_path / "out").mkdir()
        written = export_all_to(store, Request("html", choice_of(DAY, audience)), tmp_path / "out")
    with window(PHONE) as at:
        ran = dialogs(at)
        for path in written:
            at.page.goto(path.as_uri())
            at.page.evaluate_handle("document.body")
            assert at.value("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), path
        elsewhere = [url for _, url in at.fetched if not url.startswith("file:")]
    assert (len(written), ran, elsewhere, at.complaints) == (len(horses), [], [], [])
