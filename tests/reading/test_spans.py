"""Every fact quotes the very words it was read from, in text and in sound."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pipeline.reading import Reader
from pipeline.record import Fact, MatchKind, RosterHorse, Transcript
from tests.reading.conftest import DAY, Read
from tests.reading.spoken import spoken

QUOTES = {
    "Left hind has thrush in the frog.": ["thrush in the frog"],
    "No heat, swelling or thrush in the left hind.": ["No heat", "No heat, swelling", "No heat, swelling or thrush"],
    "Left front, size one, no, make that an aught.": ["size one, no, make that an aught"],
    "See him in six to seven weeks.": ["six to seven weeks"],
    "Near fore reset, three nails a side.": ["reset", "three nails a side"],
    "Possible keratoma in the off fore.": ["Possible keratoma"],
    "Left front toe length three inches and three eighths.": ["toe length three inches and three eighths"],
    "The abscess in the off hind is gone.": ["abscess in the off hind is gone"],
    "Naïve 🐴 horse — left hind’s got thrush.": ["thrush"],
    "He didn't react to the testers on the off fore.": ["didn't react to the testers"],
}


@pytest.mark.parametrize("text", QUOTES)
def test_quote(text: str, read: Read) -> None:
    (visit,) = read(text)
    assert [fact.quote for fact in visit.facts] == QUOTES[text]
    assert [text[slice(*fact.span)] for fact in visit.facts] == QUOTES[text]


def test_seconds_are_those_of_the_words(reader: Reader) -> None:
    (visit,) = reader.read(spoken("Left hind has thrush in the frog."), [], DAY)
    (fact,) = visit.facts
    assert (fact.start, fact.end) == (1.5, 3.4)


def test_typed_text_has_no_seconds(read: Read) -> None:
    (visit,) = read("Left hind has thrush.")
    assert (visit.facts[0].start, visit.facts[0].end) == (None, None)


def test_how_a_word_matched_is_kept(read: Read, reader: Reader) -> None:
    (visit,) = read("Left hind has thrush and seedy toe.")
    assert [(f.value, f.match) for f in visit.facts] == [
        ("thrush", MatchKind.EXACT),
        ("white_line_disease", MatchKind.VARIANT),
    ]
    (heard,) = reader.read(spoken("Left hind, some fresh in the frog."), [], DAY)
    assert [(f.foot, f.value, f.zone, f.match) for f in heard.facts] == [
        ("LH", "thrush", "frog", MatchKind.SOUND_ALIKE)
    ]


MODEST = settings(max_examples=100, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
TRADE_TALK = """left right near off front fore hind fronts hinds all four that foot thrush corn flare crack heat no
    not n't none without maybe suspect last time gone today will if scratch sorry no, wait, make that six aught double
    size nails a side inches degrees toe heel angle length pulse bounding testers nothing positive reset trimmed new
    shoes egg bars pads wedge iodine weeks vet Tansy Fennel . , ? and but 🐴 \x00 ½ 00 3/8 “ ’ — ..."""
TRADE = TRADE_TALK.split()
TEXTS = st.one_of(st.text(max_size=300), st.lists(st.sampled_from(TRADE), max_size=60).map(" ".join))


@given(TEXTS)
@MODEST
def test_whatever_is_said_gives_legal_facts_with_true_quotes(reader: Reader, text: str) -> None:
    for transcript in (Transcript(text=text), spoken(text)):
        visits = reader.read(transcript, [RosterHorse(name="Tansy"), RosterHorse(name="Fennel")], DAY)
        assert visits
        for visit in visits:
            for fact in visit.facts:
                assert text[slice(*fact.span)] == fact.quote
                assert Fact.model_validate(fact.model_dump()) == fact
            for flag in visit.flags:
                assert text[slice(*flag.span)] == flag.quote


def test_a_very_long_memo_is_read_to_its_end(read: Read) -> None:
    filler = "The owner talked about the weather and the hay. " * 400
    (visit,) = read(f"Tansy. {filler}Left hind has thrush.", "Tansy")
    assert [(f.foot, f.value) for f in visit.facts] == [("LH", "thrush")]


def test_a_memo_without_a_single_full_stop(read: Read) -> None:
    (visit,) = read("left hind thrush right hind corn " + "and so on " * 300)
    assert [(f.foot, f.value) for f in visit.facts] == [("LH", "thrush"), ("RH", "corn")]
