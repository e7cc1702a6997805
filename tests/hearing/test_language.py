"""A memo in another language is told, whole or by its long stretches; English in any condition is not."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from pipeline.hearing.language import NOT_ENGLISH, not_english
from pipeline.hearing.recognise import Heard, Recogniser, transcript_of
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.sieve import Segment, SpokenWord
from pipeline.judging import judge
from pipeline.reading import Reader
from pipeline.record import FlagKind, RosterHorse
from pipeline.vocabulary import load_vocabulary

# "Hinten rechts ist der Strahl etwas faul. Vier Nägel auf jeder Seite. In sechs Wochen komme ich wieder."
GERMAN = Path(__file__).with_name("stall.ogg")  # a synthetic voice: Pico's de-DE, Apache-2.0
ENGLISH = Path(__file__).with_name("oakum.ogg")


def segment(text: str, start_s: float, end_s: float, english: float | None) -> Segment:
    """One stretch whose words follow one another evenly."""
    words = text.split()
    step = (end_s - start_s) / len(words)
    spoken = tuple(
        SpokenWord(f" {word}", start_s + i * step, start_s + (i + 1) * step, 0.9) for i, word in enumerate(words)
    )
    return Segment(spoken, start_s, end_s, -0.3, 0.01, 1.4, english)


@pytest.mark.parametrize(
    ("parts", "quotes"),
    [
        ([("four nails each", 0.0, 10.0, 0.99), ("six weeks", 10.0, 12.0, 0.95)], []),
        ([("four nails each", 0.0, 10.0, 0.01), ("six weeks", 10.0, 12.0, 0.95)], ["four nails each six weeks"]),
        ([("left front thrush today", 0.0, 20.0, 0.99), ("vier eggs", 20.0, 26.0, 0.02)], ["vier eggs"]),
        ([("left front thrush today", 0.0, 20.0, 0.99), ("vier", 20.0, 22.0, 0.02)], []),
        ([("four nails each", 0.0, 10.0, None)], []),
    ],
    ids=["English", "another language", "a long stretch of another", "a short one", "nothing known"],
)
def test_what_is_told(parts: list[tuple[str, float, float, float | None]], quotes: list[str]) -> None:
    segments = [segment(*part) for part in parts]
    flags = not_english(segments, transcript_of(segments))
    assert [(flag.kind, flag.reason, flag.quote) for flag in flags] == [
        (FlagKind.UNCLEAR_SPEECH, NOT_ENGLISH, quote) for quote in quotes
    ]


WAYS = {
    "weighed": HearingSettings(),
    "as written": HearingSettings(verify=False),
    "in one piece": HearingSettings(vad=False),
}


@pytest.fixture(scope="module", params=WAYS)
def recogniser(request: pytest.FixtureRequest) -> Recogniser:
    """The shipped weights, in every way of listening."""
    return Recogniser(WAYS[request.param], load_vocabulary())


def told(heard: Heard) -> list[str]:
    """The seconds that are said not to be English."""
    return [flag.quote for flag in heard.flags if flag.reason == NOT_ENGLISH]


def test_of_german_talk_of_the_trade_no_fact_stands_unflagged(recogniser: Recogniser) -> None:
    heard = recogniser.hear(GERMAN, ["Marigold"])
    assert told(heard) == [heard.transcript.text]
    roster = [RosterHorse(name="Marigold")]
    visits = Reader(load_vocabulary()).read(heard.transcript, roster, date(2026, 5, 12))
    seen = judge(visits, heard.transcript, flags=heard.flags, roster=roster)
    facts = [fact for visit in seen for fact in visit.facts]
    assert facts, "the recogniser writes English words of the trade of it: else this tests nothing"
    assert [fact for fact in facts if not fact.flagged or fact.confidence > 0.5] == []


def test_english_is_not_told(recogniser: Recogniser) -> None:
    assert told(recogniser.hear(ENGLISH, ["Marigold"])) == []
