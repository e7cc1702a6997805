"""A small invented book with real sound in it, and a browser without a socket."""

from __future__ import annotations

import hashlib
import math
import re
import shutil
import struct
import wave
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime
from html import unescape
from pathlib import Path

import pytest
from flask.testing import FlaskClient

from pipeline.judging.asked_place import asks_from, of_fact_from
from pipeline.keeping import Store
from pipeline.page.app import make_app
from pipeline.page.desk import Desk
from pipeline.page.gate import Gate
from pipeline.reading import Reader
from pipeline.record import (
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    Memo,
    MemoRecord,
    RosterHorse,
    Status,
    Transcript,
    Visit,
    Word,
)
from pipeline.vocabulary import load_vocabulary

HOST = "127.0.0.1:8437"
DAY = date(2026, 5, 12)
SAID = "Hester. Left front thruss in the sulcus, puncture in the sole. Size three on both fronts. Rowan was lane."
SECONDS = 6.0


@dataclass(frozen=True)
class Answer:
    """What the server sent back."""

    status: int
    text: str
    data: bytes
    headers: dict[str, str]

    @property
    def words(self) -> str:
        """The text of the page without its markup, spaces made single."""
        return " ".join(unescape(re.sub(r"<[^>]*>", " ", self.text)).split())


@dataclass
class Browser:
    """Speaks to the application as a browser does; knows the form key once it is in."""

    client: FlaskClient
    gate: Gate
    host: str = HOST
    headers: dict[str, str] = field(default_factory=dict)

    def get(self, path: str, **headers: str) -> Answer:
        """A page, without following where it leads."""
        return self._ask("GET", path, headers, None)

    def post(self, path: str, form: dict[str, str], **headers: str) -> Answer:
        """A form of ours, sent."""
        return self._ask("POST", path, headers, {"form_key": self.gate.form_key, **form})

    def bare(self, method: str, path: str, form: dict[str, str] | None = None, **headers: str) -> Answer:
        """A request with nothing added."""
        return self._ask(method, path, headers, form)

    @property
    def desk(self) -> Desk:
        """What the pages work with."""
        found = self.client.application.extensions["clinchbook"]
        assert isinstance(found, Desk)
        return found

    def enter(self) -> Answer:
        """Exchange the token."""
        return self._ask("POST", "/enter", {}, {"token": self.gate.token or ""})

    def answer(self, key: str, do: str, **form: str) -> Answer:
        """Answer a question as its page now asks it."""
        seen = re.search(r'name="seen" value="(\d+)"', self.get(f"/review/{key}").text)
        return self.post(f"/review/{key}", {"do": do, "seen": seen.group(1) if seen else "", **form})

    def _ask(self, method: str, path: str, headers: dict[str, str], form: dict[str, str] | None) -> Answer:
        named = {**self.headers, **{name.replace("_", "-"): value for name, value in headers.items()}}
        got = self.client.open(path, method=method, base_url=f"http://{self.host}", headers=named, data=form)
        with got:
            text = got.get_data(as_text=True) if (got.mimetype or "").startswith("text/") else ""
            return Answer(got.status_code, text, got.get_data(), dict(got.headers))


def spanned(text: str, quote: str) -> dict[str, object]:
    """Quote, span and seconds of a fact, a tenth of a second a character."""
    start = text.index(quote)
    span = (start, start + len(quote))
    return {"quote": quote, "span": span, "start": span[0] * SECONDS / len(text), "end": span[1] * SECONDS / len(text)}


def heard(text: str) -> Transcript:
    """A transcript whose words are spread evenly over SECONDS."""
    each = SECONDS / max(1, len(text))
    words = [
        Word(
            text=m.group(), start=m.start(), end=m.end(), start_s=m.start() * each, end_s=m.end() * each,
            probability=0.9,
        )
        for m in re.finditer(r"\S+", text)
    ]  # fmt: skip
    return Transcript(text=text, words=words)


def tone(path: Path, seed: int) -> None:
    """SECONDS of a tone, so that there is something to cut: a tenth of a second again and again."""
    tenth = b"".join(struct.pack("<h", int(9000 * math.sin(at * (300 + seed) / 2000))) for at in range(1600))
    with wave.open(str(path), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(16000)
        sound.writeframes(tenth * int(SECONDS * 10))


def hester() -> Visit:
    """Two doubtful fields, a puncture that nobody doubts, and a stretch that was not understood."""
    return Visit(
        horse="Hester",
        horse_match=HorseMatch.KNOWN,
        date=DAY,
        facts=[
            Fact.model_validate({"foot": "LF", "slot": "finding", "value": "puncture", "zone": "sole",
                                 **spanned(SAID, "puncture in the sole")}),
            *(
                Fact.model_validate({"foot": foot, "slot": "shoe_size", "value": "3", "flagged": True,
                                     "confidence": 0.5, "reasons": ["the word “three” was hard to hear"],
                                     **spanned(SAID, "Size three")})
                for foot in ("LF", "RF")
            ),
        ],
        flags=[
            Flag.model_validate({"kind": FlagKind.NOT_UNDERSTOOD, "reason": "these words were not understood",
                                 **spanned(SAID, "thruss in the sulcus")}),
        ],
        notes="Stood <b>well</b>.",
    )  # fmt: skip


def rowan() -> Visit:
    """A horse of another name in the same memo, lame by a mishearing."""
    lame = {"foot": None, "slot": "gait", "value": "lame", "flagged": True, "confidence": 0.6}
    fact = Fact.model_validate({**lame, "reasons": ["heard “lane”, read as lame"], **spanned(SAID, "lane")})
    return Visit(horse="Rowan", horse_match=HorseMatch.KNOWN, date=DAY, facts=[fact])


LOST = "Larkspur, trimmed all four. Grey mare next. Thrush in the left fore. Corn, right hind."


def larkspur() -> Visit:
    """A visit in which another horse may have come in."""
    doubt = {"confidence": 0.5, "flagged": True, "reasons": [of_fact_from("Grey mare next")]}
    place = spanned(LOST, "Grey mare next.")
    return Visit(
        horse="Larkspur",
        horse_match=HorseMatch.KNOWN,
        date=date(2026, 5, 13),
        facts=[
            Fact.model_validate({"foot": "LF", "slot": "work", "value": "trim", **spanned(LOST, "trimmed")}),
            Fact.model_validate({"foot": "LF", "slot": "finding", "value": "thrush", **doubt,
                                 **spanned(LOST, "Thrush in the left fore")}),
            Fact.model_validate({"foot": "RH", "slot": "finding", "value": "corn", **doubt,
                                 **spanned(LOST, "Corn, right hind")}),
        ],
        flags=[
            Flag.model_validate({"kind": FlagKind.HORSE, "reason": asks_from("Grey mare next", ""), **place,
                                 "quote": ""}),
        ],
    )  # fmt: skip


def nameless() -> Visit:
    """A visit that belongs to nobody, on the day before."""
    fact = Fact(foot="LH", slot="work", value="trim", quote="Trimmed", span=(0, 7))
    flag = Flag(kind=FlagKind.HORSE, reason="No horse is called Hesta", quote="Hesta")
    return Visit(
        horse="Hesta", horse_match=HorseMatch.UNCLEAR, date=date(2026, 5, 11), facts=[fact], flags=[flag],
    )  # fmt: skip


def keep(store: Store, folder: Path, name: str, text: str, visits: list[Visit]) -> list[int]:
    """Keep one invented memo with its sound; returns its visits' numbers."""
    path = folder / name
    tone(path, sum(name.encode()))
    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    recorded = datetime(2026, 5, 12, 9, 30)
    memo = Memo(path=str(path), sha256=digest, seconds=SECONDS, recorded_at=recorded, recorded_from="container")
    return store.keep(MemoRecord(memo=memo, transcript=text, visits=visits), heard(text), path)


@pytest.fixture(scope="session")
def reader() -> Reader:
    """The real reader, loaded once."""
    return Reader(load_vocabulary())


@pytest.fixture(scope="session")
def book_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The store of ``book``, made once; never changed."""
    place = tmp_path_factory.mktemp("page")
    folder = place / "book"
    with Store.open(folder) as store:
        store.add_horses(
            [RosterHorse(name="Hester", owner="A. Fern", place="Quince Farm"), RosterHorse(name="Rowan"),
             RosterHorse(name="Figaro"), RosterHorse(name="Larkspur")]
        )  # fmt: skip
        keep(store, place, "may.wav", SAID, [hester(), rowan()])
        keep(store, place, "earlier.wav", "Trimmed Hesta all round.", [nameless()])
    return folder


@pytest.fixture
def book(book_once: Path, tmp_path: Path) -> Path:
    """A store: visit 1 Hester and 2 Rowan on 12 May, 3 nobody's on 11 May; four horses on the roster."""
    return shutil.copytree(book_once, tmp_path / "book")


@pytest.fixture
def two_horses(book: Path) -> Path:
    """The store with a visit more: 4 Larkspur on 13 May, with another horse in it perhaps."""
    with Store.open(book) as store:
        keep(store, book.parent, "lost.wav", LOST, [larkspur()])
    return book


MakeBrowser = Callable[[Path], Browser]


@pytest.fixture
def at_the_door(reader: Reader) -> MakeBrowser:
    """A browser in front of a store's page, not yet in."""

    def making(folder: Path) -> Browser:
        gate = Gate(frozenset({HOST, "localhost:8437"}))
        app = make_app(Desk(folder, load_vocabulary(), gate, "Reviewer", reader))
        return Browser(app.test_client(), gate)

    return making


@pytest.fixture
def inside(at_the_door: MakeBrowser, book: Path) -> Browser:
    """A browser that came in."""
    browser = at_the_door(book)
    assert browser.enter().status == 303
    return browser


def status_of(folder: Path, visit: int) -> list[tuple[str | None, str | float, Status, bool]]:
    """The facts of a visit: foot, value, status, flagged."""
    with Store.open(folder, create=False) as store:
        return [(f.foot, f.value, f.status, f.flagged) for f in store.visit(visit).visit.facts]
