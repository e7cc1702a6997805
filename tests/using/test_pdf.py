"""The PDF: real text, page numbers, a title, the same bytes for the same record."""

from __future__ import annotations

import io
import logging
from datetime import date

import pypdf
import pytest

from pipeline.keeping import Store
from pipeline.record import FEET, Fact, HorseMatch, RosterHorse, Visit
from pipeline.using.export import Request, choice_of, export_horse
from tests.using.conftest import Keep
from tests.using.hostile import HOSTILE_TEXTS

DAY = date(2026, 5, 12)


def pdf_of(store: Store, horse: str = "Bramble", audience: str = "vet") -> bytes:
    """A horse's PDF."""
    return export_horse(store, horse, Request("pdf", choice_of(DAY, audience)))


def words_of(data: bytes) -> str:
    """The PDF's text with single spaces."""
    return " ".join(" ".join(page.extract_text() for page in pypdf.PdfReader(io.BytesIO(data)).pages).split())


@pytest.mark.parametrize("audience", ["owner", "vet"])
def test_it_tells_the_record_in_text_that_can_be_searched(store: Store, audience: str) -> None:
    words = words_of(pdf_of(store, audience=audience))
    for told in (
        "Bramble", "A. Fern", "a record, not a diagnosis", "laminitis is an emergency", "toe length 88.9 mm",
        "white line disease (mild)", "double could be triple", "“Seedy toe in the left hind, mild”", "page 1 of",
        "about 13 April 2026, 6 weeks after 2 March 2026", "=SUM(A1) he said, *twice*, about his hat",
    ):  # fmt: skip
        assert told in words


def test_its_title_names_horse_reader_and_day(store: Store) -> None:
    metadata = pypdf.PdfReader(io.BytesIO(pdf_of(store))).metadata
    assert metadata is not None
    assert metadata.title == "Bramble: hoof record for the vet, 12 May 2026"
    assert str(metadata.creation_date) == "2026-05-12 00:00:00+00:00"


def test_the_same_record_gives_the_same_bytes(store: Store) -> None:
    assert pdf_of(store) == pdf_of(store)


def test_accents_and_signs_of_the_trade_are_letters_in_it(empty: Store, keep_memo: Keep) -> None:
    empty.add_horses([RosterHorse(name="Łukasz Ó Bróga", owner="Zoë Ŵynne", place="Ágnes tanya")])
    facts = [
        Fact(foot="LF", slot="toe_angle", value=49.5, quote="forty-nine ½ °"),
        Fact(foot="LF", slot="toe_length", value=88.9),
    ]
    visit = Visit(horse="Łukasz Ó Bróga", horse_match=HorseMatch.KNOWN, date=DAY, facts=facts)
    keep_memo(empty, "a.m4a", "Łukasz.", [visit])
    words = words_of(pdf_of(empty, "Łukasz Ó Bróga"))
    assert all(told in words for told in ("Łukasz Ó Bróga", "Zoë Ŵynne", "Ágnes tanya", "½ °", "49.5°"))


@pytest.mark.parametrize("text", HOSTILE_TEXTS)
def test_no_text_breaks_it(empty: Store, keep_memo: Keep, text: str) -> None:
    name = " ".join(text.replace("\x00", "").split())[:190]
    empty.add_horses([RosterHorse(name=name, owner=text, place=text)])
    fact = Fact(foot="LF", slot="finding", value="corn", quote=text, reasons=[text], flagged=True)
    keep_memo(
        empty, "h.m4a", text, [Visit(horse=name, horse_match=HorseMatch.KNOWN, date=DAY, facts=[fact], notes=text)]
    )
    data = pdf_of(empty, name)
    assert "corn" in words_of(data)
    # No action but turning to a page of its own, and nothing that runs.
    assert [key for key in (b"/JavaScript", b"/JS", b"/URI", b"/Launch", b"/EmbeddedFile") if key in data] == []


def test_many_visits_turn_pages_that_are_counted(
    empty: Store, keep_memo: Keep, caplog: pytest.LogCaptureFixture
) -> None:
    for month in range(1, 13):
        facts = [
            Fact(foot=foot, slot=slot, value=value, quote=f"{slot} {month}")
            for foot in FEET
            for slot, value in (("toe_length", 80.0 + month), ("finding", "thrush"), ("shoe_size", "00"))
        ]
        visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2025, month, 3), facts=facts)
        keep_memo(empty, f"{month}.m4a", "Bramble.", [visit])
    with caplog.at_level(logging.WARNING):
        reader = pypdf.PdfReader(io.BytesIO(pdf_of(empty)))
    count = len(reader.pages)
    assert count > 2
    for number, page in enumerate(reader.pages, start=1):
        assert f"page {number} of {count}" in page.extract_text()
    assert caplog.records == []
    assert [str(item.title) for item in reader.outline if isinstance(item, pypdf.generic.Destination)] == [
        "The feet on 3 December 2025", "Measures and grades", "Foot by foot through time", "Visits", "Corrections",
        "What was said",
    ]  # fmt: skip
