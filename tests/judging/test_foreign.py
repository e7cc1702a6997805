"""Typed or heard in another language: told once, and whatever was read of it is asked about."""

from __future__ import annotations

import pytest

from pipeline.hearing.language import NOT_ENGLISH
from pipeline.judging import judge
from pipeline.judging.unread import ASKED
from pipeline.record import Flag, FlagKind, Transcript
from tests.judging.making import fact, heard, judged, visit

TEXTS = {
    "German": "Vorne links vier nails auf jeder Seite, hinten rechts ist der Strahl etwas faul.",
    "French": "Devant à gauche le sabot est fendu, four nails de chaque côté, je reviens dans cinq semaines.",
    "Spanish": "Delante lleva herraduras nuevas con four nails, detrás solo lo he recortado.",
    "Dutch": "Links voor is de hoef gescheurd, four nails per ijzer, over zes weken kom ik terug.",
    "Irish": "Tá an chos tosaigh ar chlé go maith, four nails, beidh mé ar ais i gceann sé seachtaine.",
}


@pytest.mark.parametrize("language", TEXTS)
def test_text_in_another_language_is_told_and_asked(language: str) -> None:
    text = TEXTS[language]
    at = text.index("nails")
    seen = judged(fact("nails", 4.0, span=(at - 5, at + 5)), transcript=Transcript(text=text))
    assert [(flag.kind, flag.reason, flag.quote) for flag in seen.flags] == [
        (FlagKind.NOT_UNDERSTOOD, NOT_ENGLISH, text)
    ]
    assert seen.facts[0].flagged
    assert (seen.facts[0].reasons[0], seen.facts[0].confidence <= 0.5) == (ASKED, True)


@pytest.mark.parametrize("text", ["Marigold. Left fore reset, four nails a side, she stood like a rock.", "Dia dhuit"])
def test_english_and_a_greeting_are_not(text: str) -> None:
    assert NOT_ENGLISH not in [flag.reason for flag in judged(transcript=Transcript(text=text)).flags]


def test_what_hearing_told_is_not_told_again_and_reaches_no_further() -> None:
    words = [("Left", 0.9), ("front", 0.9), ("thrush.", 0.9), ("Four", 0.9), ("nails", 0.9), ("gerade.", 0.9)]
    flag = Flag(kind=FlagKind.UNCLEAR_SPEECH, reason=NOT_ENGLISH, quote="Four nails gerade.", span=(19, 37))
    thrush = fact("finding", "thrush", span=(0, 18), rules=["foot: named beside it"])
    (seen,) = judge([visit(thrush, fact("nails", 4.0, span=(19, 29)))], heard(*words), flags=[flag])
    assert [ASKED in one.reasons for one in seen.facts] == [False, True]
    assert NOT_ENGLISH not in [one.reason for one in seen.flags]
