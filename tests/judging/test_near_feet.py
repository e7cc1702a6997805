"""Which feet are named in and before the words of a fact."""

from __future__ import annotations

import pytest

from pipeline.judging.several_feet import NearFeet, near_feet
from pipeline.judging.surroundings import Surroundings


def near(text: str, words: str, foot: str | None, *others: str) -> NearFeet:
    start = text.index(words)
    return near_feet(Surroundings(text), (start, start + len(words)), foot, frozenset({foot, *others}))


@pytest.mark.parametrize(
    ("text", "words", "foot", "others", "expected"),
    [
        ("Thrush in the left fore.", "Thrush in the left fore", "LF", (), NearFeet()),
        ("Thrush in the left fore.", "Thrush in the left fore", "RF", (), NearFeet(inside_differs=True)),
        ("Left fore has thrush.", "thrush", "LF", (), NearFeet(sets_before=1)),
        ("Left fore has thrush.", "thrush", "RF", (), NearFeet(set_differs=True, sets_before=1)),
        ("Both fronts have thrush.", "thrush", "LF", ("RF",), NearFeet(sets_before=1)),
        ("Both fronts have thrush.", "thrush", "LF", (), NearFeet(set_differs=True, sets_before=1)),
        ("Left fore trimmed, right hind reset, left fore sound, thrush.", "thrush", "LF", (), NearFeet(sets_before=2)),
        ("Left fore trimmed. Thrush.", "Thrush", "RF", (), NearFeet()),
        ("Left fore has thrush.", "thrush", None, (), NearFeet()),
    ],
)
def test_the_feet_around_a_fact(
    text: str, words: str, foot: str | None, others: tuple[str, ...], expected: NearFeet
) -> None:
    assert near(text, words, foot, *others) == expected
