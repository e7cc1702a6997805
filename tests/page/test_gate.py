"""Nobody comes in without the token, nothing is written from elsewhere, and no page may load what is not ours."""

from __future__ import annotations

from pathlib import Path

import pytest

from pipeline.keeping import Store
from tests.page.conftest import Browser, MakeBrowser, status_of

PAGES = (
    "/", "/day/2026-05-12", "/days", "/visit/1", "/review", "/review/v1-f2", "/search?words=thrush",
    "/sound/1/0-1000.wav", "/nowhere",
)  # fmt: skip
HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; media-src 'self'; "
        "form-action 'self'; frame-ancestors 'none'; base-uri 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "X-Frame-Options": "DENY",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cache-Control": "no-store",
}


@pytest.mark.parametrize("path", PAGES)
def test_nothing_is_told_without_the_cookie(path: str, at_the_door: MakeBrowser, book: Path) -> None:
    browser = at_the_door(book)
    for cookie in ("", "clinchbook-8437=wrong", "clinchbook-8437="):
        answer = browser.get(path, Cookie=cookie)
        assert answer.status == 401
        assert "Hester" not in answer.text
    assert browser.post("/review/v1-f2", {"do": "right", "seen": "0"}).status == 401
    assert browser.bare("POST", "/undo").status == 401


def test_the_token_works_once_and_only_by_the_button(at_the_door: MakeBrowser, book: Path) -> None:
    browser = at_the_door(book)
    token = browser.gate.token or ""
    assert len(token) >= 43  # 256 bits in base64
    for _ in range(2):  # whoever merely looks at the address uses nothing up
        assert browser.get(f"/enter?token={token}").status == 200
    assert browser.bare("POST", "/enter", {"token": "wrong"}).status == 401
    assert browser.bare("POST", "/enter", {"token": token + "é"}).status == 401
    entered = browser.bare("POST", "/enter", {"token": token})
    name, _, rest = entered.headers["Set-Cookie"].partition("=")
    secret, *attributes = [part.strip() for part in rest.split(";")]
    assert (entered.status, entered.headers["Location"], name) == (303, "/", "clinchbook-8437")
    assert sorted(attributes) == ["HttpOnly", "Path=/", "SameSite=Strict"]
    assert secret != token
    assert len(secret) >= 43
    other = Browser(browser.client.application.test_client(), browser.gate)
    assert other.bare("POST", "/enter", {"token": token}).status == 401
    assert other.bare("POST", "/enter", {"token": ""}).status == 401
    assert other.get("/").status == 401
    assert browser.get("/").status == 303


@pytest.mark.parametrize(
    "host",
    ["book.example", "book.example:8437", "127.0.0.1", "127.0.0.1:80", "127.0.0.1:8437.book.example", "[::1]:8437"],
)
def test_a_foreign_name_for_this_machine_is_refused(host: str, inside: Browser) -> None:
    for path in ("/visit/1", "/enter", "/own/page.css"):
        answer = inside.bare("GET", path, Host=host)
        assert (answer.status, "Hester" in answer.text) == (421, False)


def test_both_names_of_this_machine_are_ours(inside: Browser) -> None:
    assert inside.bare("GET", "/own/page.css", Host="LOCALHOST:8437").status == 200


FOREIGN: list[dict[str, str]] = [
    {"Origin": "http://book.example"},
    {"Origin": "http://127.0.0.1:9999"},
    {"Origin": "https://127.0.0.1:8437"},
    {"Origin": "http://127.0.0.1:8437.book.example"},
    {"Origin": "null", "Sec_Fetch_Site": "cross-site"},
    {"Sec_Fetch_Site": "same-site"},
    {"Sec_Fetch_Site": "none"},
    {"Origin": "http://127.0.0.1:8437", "Sec_Fetch_Site": "cross-site"},
]


@pytest.mark.parametrize("headers", FOREIGN, ids=str)
def test_writing_from_elsewhere_is_refused(headers: dict[str, str], inside: Browser, book: Path) -> None:
    before = status_of(book, 1)
    assert inside.post("/review/v1-f2", {"do": "not_said", "seen": "0"}, **headers).status == 403
    assert inside.post("/enter", {"token": "x"}, **headers).status == 403
    assert status_of(book, 1) == before


@pytest.mark.parametrize(
    "headers",
    [{}, {"Origin": "null", "Sec_Fetch_Site": "same-origin"}, {"Origin": "null"}, {"Origin": "http://localhost:8437"}],
    ids=str,
)
def test_our_own_forms_are_taken(headers: dict[str, str], inside: Browser, book: Path) -> None:
    assert inside.post("/review/v1-f2", {"do": "right", "seen": "0"}, **headers).status == 303
    assert status_of(book, 1)[1][3] is False


@pytest.mark.parametrize("key", [None, "", "wrong"])
def test_a_form_without_our_key_is_refused(key: str | None, inside: Browser, book: Path) -> None:
    form = {"do": "right", "seen": "0", **({} if key is None else {"form_key": key})}
    assert inside.bare("POST", "/review/v1-f2", form, Origin="null").status == 403
    with Store.open(book) as store:
        assert store.changes(1) == []


@pytest.mark.parametrize("path", [*PAGES, "/enter", "/own/page.css", "/own/page.js"])
def test_every_answer_carries_the_headers(path: str, inside: Browser, at_the_door: MakeBrowser, book: Path) -> None:
    for browser in (inside, at_the_door(book)):
        answer = browser.get(path)
        assert {name: answer.headers.get(name) for name in HEADERS} == HEADERS
        assert "Server" not in answer.headers


def test_other_methods_and_large_forms_are_refused(inside: Browser) -> None:
    assert inside.bare("PUT", "/visit/1").status == 403  # without our form's key nothing is looked at
    assert inside.post("/visit/1", {}).status == 405
    assert inside.post("/review/v1-f2", {"do": "type", "text": "x" * 70_000}).status == 413


def test_no_page_holds_a_script_a_style_or_an_address_of_its_own(inside: Browser) -> None:
    for path in PAGES[:-2]:
        page = inside.get(path).text
        assert page.count("<script") == page.count('<script src="/own/page.js" defer></script>')
        assert "<style" not in page
        assert " style=" not in page
        assert "http://" not in page.replace('xmlns="http://www.w3.org/2000/svg"', "")
        assert "https://" not in page
