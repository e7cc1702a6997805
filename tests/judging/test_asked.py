"""What is asked about whatever else speaks for a fact, and what is asked about only once."""

from __future__ import annotations

import pytest

from pipeline.judging import judge
from pipeline.judging.confidence import doubts
from pipeline.judging.model import Care
from pipeline.record import Fact, Flag, FlagKind, Transcript
from tests.judging.making import fact, heard, visit


def reasons(found: Fact, transcript: Transcript) -> list[str]:
    (seen,) = judge([visit(found)], transcript, care=Care.FAST)
    return seen.facts[0].reasons


@pytest.mark.parametrize(
    ("words", "found", "hard"),
    [
        ((("Six", 0.39), ("nails.", 0.9)), fact("nails", 6.0, span=(0, 9)), "Six"),
        ((("No", 0.1), ("thrush.", 0.9)), fact("finding", "thrush", status="absent", span=(0, 9)), "No"),
        ((("Off", 0.3), ("hind", 0.9), ("trimmed.", 0.9)), fact("work", "trim", "RH", span=(0, 17)), "Off"),
    ],
)
def test_a_number_a_no_or_a_foot_that_was_hardly_heard_is_always_asked_about(
    words: tuple[tuple[str, float], ...], found: Fact, hard: str
) -> None:
    assert reasons(found, heard(*words)) == [f"The word “{hard}” was hard to hear; please listen."]


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ((("Six", 0.4), ("nails.", 0.1)), fact("nails", 6.0, span=(0, 9))),
        ((("Thrush.", 0.1),), fact("finding", "thrush", span=(0, 6), rules=["foot: named beside it"])),
    ],
)
def test_other_words_are_left_to_the_model(words: tuple[tuple[str, float], ...], found: Fact) -> None:
    assert doubts(found, heard(*words)) == []


def test_words_that_hearing_puts_before_a_person_are_not_asked_about_twice() -> None:
    talk = heard(("Left", 0.9), ("fore", 0.9), ("frush.", 0.9))
    own = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="A foot is named here.", span=(0, 16))
    told = visit().model_copy(update={"flags": [own]})
    unclear = Flag(kind=FlagKind.UNCLEAR_SPEECH, reason="these words could not be made out", span=(10, 16))
    (once,) = judge([told], talk, flags=[unclear])
    (alone,) = judge([told], talk)
    assert (once.flags, alone.flags) == ([], [own])
