"""Hints that another horse has come in since a name was said."""

from __future__ import annotations

import pytest

from pipeline.judging.second_horse import described, name_like
from pipeline.judging.surroundings import Surroundings

LONG = "Marigold. Left fore trimmed, right fore trimmed, left hind trimmed, right hind trimmed, no thrush in any, "


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (LONG + "sound and quiet and easy. The grey mare next. Thrush.", True),
        (LONG + "sound and quiet and easy. Thrush.", False),
        ("Marigold, the grey mare. Thrush.", False),
    ],
)
def test_a_horse_described_far_behind_a_name_is_told(text: str, expected: bool) -> None:
    around = Surroundings(text)
    assert described(around, 0, len(around.tokens) - 2) is expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Marigold, trimmed all four. Weka. Thrush.", 1),
        ("Marigold, trimmed all four. Now weka has got a bit of a crack. Thrush.", 1),
        ("Marigold, trimmed all four. Then weka, kea. Kaka. Thrush.", 2),
        ("Marigold, trimmed all four. Left fore. Thrush.", 0),
        ("Marigold, trimmed all four. Weka has got a bit of a crack. Thrush.", 0),
        ("Weka. Marigold, trimmed all four. Thrush.", 0),
    ],
)
def test_words_that_may_be_a_name_are_counted(text: str, expected: int) -> None:
    around = Surroundings(text)
    first = next(place for place, token in enumerate(around.tokens) if token.text == "marigold")
    assert name_like(around, first, len(around.tokens) - 2) == expected
