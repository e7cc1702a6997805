"""In a memo that was hard to hear throughout more is asked, and in the worst everything."""

from __future__ import annotations

import pytest

from pipeline.judging.features import Clearness, clearness
from pipeline.record import Fact, Transcript
from tests.judging.making import fact, heard, judged

WORDS = (
    *("left", "hind", "has", "thrush", "in", "the", "frog.", "she"),
    *("stood", "like", "a", "rock", "for", "me", "all", "day."),
)


def transcript(probability: float, thrush: float | None = None) -> Transcript:
    return heard(*((word, thrush if word == "thrush" and thrush is not None else probability) for word in WORDS))


THRUSH = fact("finding", "thrush", "LH", span=(14, 20), quote="thrush", rules=["foot: named beside it"])


@pytest.mark.parametrize(
    ("probability", "told"),
    [
        (0.95, Clearness.CLEAR),
        (0.79, Clearness.CLEAR),
        (0.78, Clearness.POOR),
        (0.7, Clearness.POOR),
        (0.69, Clearness.BAD),
    ],
)
def test_the_mean_probability_decides(probability: float, told: Clearness) -> None:
    assert clearness(transcript(probability)) is told


def test_a_few_words_and_typed_text_say_nothing() -> None:
    assert clearness(heard(("thrush", 0.1))) is Clearness.CLEAR
    assert clearness(Transcript(text=" ".join(WORDS))) is Clearness.CLEAR


def flagged(found: Fact, sound: Transcript) -> tuple[bool, list[str]]:
    (one,) = judged(found, transcript=sound).facts
    return one.flagged, one.reasons


def test_in_bad_sound_every_fact_is_asked_about() -> None:
    assert flagged(THRUSH, transcript(0.65)) == (True, ["Much of this memo was hard to hear; please listen."])
    assert flagged(THRUSH, transcript(0.95)) == (False, [])


def test_in_poor_sound_a_word_that_was_hard_to_hear_is_asked_about() -> None:
    assert flagged(THRUSH, transcript(0.75, thrush=0.45)) == (
        True,
        ["The word “thrush” was hard to hear; please listen."],
    )
    assert flagged(THRUSH, transcript(0.75)) == (False, [])
