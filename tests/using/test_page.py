"""The page: self-contained, harmless, each fact linked to its words."""

from __future__ import annotations

import base64
import re
from dataclasses import dataclass, field
from datetime import date
from html.parser import HTMLParser
from xml.etree import ElementTree

import pytest

from pipeline.keeping import Store
from pipeline.record import FEET, Fact, Flag, FlagKind, HorseMatch, RosterHorse, Status, Visit
from pipeline.using.export import Request, choice_of, export_horse, visits_of
from pipeline.using.handover import handover
from pipeline.using.page import as_page
from tests.using.conftest import Keep
from tests.using.hostile import HOSTILE_TEXTS

DAY = date(2026, 5, 12)
ALLOWED = {
    "html", "head", "meta", "title", "style", "body", "main", "header", "section", "footer", "h1", "h2", "h3", "p",
    "a", "ul", "ol", "li", "dl", "dt", "dd", "div", "span", "strong", "q", "table", "thead", "tbody", "tr", "th", "td",
    "svg", "g", "path", "polyline", "polygon", "rect", "text", "use", "clippath", "defs", "audio",
}  # fmt: skip


@dataclass
class Seen(HTMLParser):
    """Collects what a page is made of."""

    tags: list[str] = field(default_factory=list)
    attributes: list[tuple[str, str, str]] = field(default_factory=list)
    words: list[str] = field(default_factory=list)

    def __post_init__(self) -> None:
        super().__init__(convert_charrefs=True)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes.extend((tag, name, value or "") for name, value in attrs)

    def handle_data(self, data: str) -> None:
        self.words.append(data)


def seen(page: str) -> Seen:
    """What the page is made of."""
    parser = Seen()
    parser.feed(page)
    parser.close()
    return parser


def page_of(store: Store, horse: str = "Bramble", audience: str = "owner") -> str:
    """A horse's page."""
    return export_horse(store, horse, Request("html", choice_of(DAY, audience))).decode("utf-8")


@pytest.fixture
def long_known(store: Store, keep_memo: Keep) -> Store:
    """Bramble once more, so that there are two days of measures, and an answer to the testers."""
    facts = [
        Fact(foot="LF", slot="toe_length", value=86.0),
        Fact(foot="LF", slot="tester", value="mild", zone="toe", quote="mild across the toe", start=1.0, end=2.0),
        Fact(foot="RF", slot="finding", value="thrush", zone="frog", status=Status.SUSPECTED),
        Fact(foot=None, slot="lameness", value=2.0),
    ]
    visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 5, 25), facts=facts)
    keep_memo(store, "may.m4a", "Bramble again.", [visit])
    return store


@pytest.mark.parametrize("audience", ["owner", "vet"])
@pytest.mark.parametrize("text", HOSTILE_TEXTS)
def test_no_text_becomes_anything_but_text(empty: Store, keep_memo: Keep, text: str, audience: str) -> None:
    name = " ".join(text.replace("\x00", "").split())[:190]
    empty.add_horses([RosterHorse(name=name, owner=text, place="Ford", also_called=[text], other={text[:50]: text})])
    fact = Fact(foot="LF", slot="finding", value="corn", quote=text, reasons=[text], flagged=True, start=1.0, end=2.0)
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=text, quote=text)
    visit = Visit(horse=name, horse_match=HorseMatch.KNOWN, date=DAY, facts=[fact], flags=[flag], notes=text)
    keep_memo(empty, "hostile.m4a", text, [visit])
    page = page_of(empty, name, audience)
    parts = seen(page)
    assert set(parts.tags) <= ALLOWED
    assert [name for _, name, _ in parts.attributes if name.startswith("on") or name == "srcdoc"] == []
    addresses = [value for _, name, value in parts.attributes if name in ("href", "src", "xlink:href", "action")]
    assert [value for value in addresses if not value.startswith("#")] == []
    assert not re.search("[\x00-\x08\x0b-\x1f\x7f\u202a-\u202e]", page)


@pytest.mark.parametrize("audience", ["owner", "vet"])
def test_nothing_outside_the_page_is_asked_for(long_known: Store, audience: str) -> None:
    parts = seen(page_of(long_known, audience=audience))
    assert set(parts.tags) <= ALLOWED
    policies = [value for tag, name, value in parts.attributes if tag == "meta" and name == "content"]
    assert policies[0].startswith("default-src 'none'")
    assert "script-src" not in policies[0]
    linked = [value for _, name, value in parts.attributes if name in ("href", "src", "xlink:href")]
    assert all(value.startswith("#") for value in linked)


def test_each_fact_leads_to_its_words(long_known: Store) -> None:
    parts = seen(page_of(long_known, audience="vet"))
    leads = {value[1:] for tag, name, value in parts.attributes if tag == "a" and name == "href"}
    places = {value for tag, name, value in parts.attributes if tag == "li" and name == "id"}
    assert leads == places == {f"q{number}" for number in range(1, 8)}
    assert "Seedy toe in the left hind, mild" in parts.words


def test_its_sound_lies_in_the_page(long_known: Store) -> None:
    horse = long_known.horse("Bramble")
    asked: list[tuple[int, float, float]] = []

    def clip(visit: object, start_s: float, end_s: float) -> bytes:
        asked.append((getattr(visit, "id", 0), start_s, end_s))
        return b"sound"

    told = handover(horse, visits_of(long_known, horse), [], choice_of(DAY), clip)
    parts = seen(as_page(told))
    sources = [value for tag, name, value in parts.attributes if tag == "audio" and name == "src"]
    assert sources == [f"data:audio/mpeg;base64,{base64.b64encode(b'sound').decode()}"] * 3
    assert sorted(asked) == [(1, 4.5, 6.0), (1, 75.0, 76.0), (4, 1.0, 2.0)]


def test_a_vet_sees_the_scale_the_testers_and_every_correction(long_known: Store) -> None:
    long_known._database.execute("UPDATE pen SET who = 'nora', why = 'listened again'")
    long_known._database.execute("UPDATE facts SET severity = 'moderate' WHERE id = 2")
    long_known._database.conn.commit()
    words = " ".join(" ".join(seen(page_of(long_known, audience="vet")).words).split())
    assert "Lameness, AAEP grade 0 to 5" in words
    assert "American Association of Equine Practitioners" in words
    assert "Hoof testers, the last answer at each place" in words
    assert "2026-05-25 hoof testers: mild (toe)" in words
    assert "left hind: white line disease (moderate): severity mild moderate listened again" in words
    assert "nora" in words
    assert "toe length 86 mm (before: toe length 88.9 mm on 13 April 2026)" in words


def test_an_owner_reads_plain_words_and_when_to_expect_the_farrier(long_known: Store) -> None:
    words = " ".join(" ".join(seen(page_of(long_known)).words).split())
    assert "Next visit: about 13 April 2026, 6 weeks after 2 March 2026." in words
    assert "A soft and smelly decay of the frog and the grooves beside it." in words
    assert "Pick the feet out every day" in words
    assert "1 fact of this record has not been reviewed by a person yet" in words
    assert "laminitis is an emergency" in words
    assert "before:" not in words


def test_each_foot_is_drawn_and_so_is_each_trend(long_known: Store) -> None:
    page = page_of(long_known, audience="vet")
    labels = [value for tag, name, value in seen(page).attributes if tag == "svg" and name == "aria-label"]
    feet = [f"{name} from below, toe up" for name in ("Left fore", "Right fore", "Left hind", "Right hind")]
    assert [label.partition(":")[0] for label in labels[: len(FEET)]] == feet
    assert labels[0] == "Left fore from below, toe up: 1 hoof testers: mild (toe)"
    assert labels[-1] == "Toe length through time: Left fore 88.9 to 86"
    for drawing in re.findall(r"<svg.*?</svg>", page, re.DOTALL):
        ElementTree.fromstring(drawing)


def test_the_same_record_gives_the_same_page(long_known: Store) -> None:
    assert page_of(long_known, audience="vet") == page_of(long_known, audience="vet")
