"""The second opinion: words in their places, and the chances that they give."""

from __future__ import annotations

from math import exp

import pytest

from pipeline.judging.opinion import NOT_SO, Opinion, shipped_opinion, words_around
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Status

TEXT = "Trimmed him. He had thrush there last spring, but none now."


def words(text: str, quote: str, slot: str = "finding") -> set[str]:
    start = text.index(quote)
    return words_around(Surroundings(text), (start, start + len(quote)), slot)


def test_every_word_has_its_place() -> None:
    found = words(TEXT, "thrush")
    assert {"in: thrush", "close before: had", "before: he", "close behind: there", "behind: none"} <= found
    assert {"sentence: thrush", "sentence before: trimmed", "slot: finding"} <= found
    assert not found & {"close behind: none", "before: trimmed", "sentence: trimmed", "behind: thrush"}


def test_chances_by_hand() -> None:
    opinion = Opinion(("present", "history"), (0.0, 0.0), {"before: had": (-10, 10), "in: thrush": (5, 5)})
    chances = opinion.chances({"before: had", "in: thrush", "unheard of"})
    assert chances["history"] == pytest.approx(1 / (1 + exp(-2)))
    assert sum(chances.values()) == pytest.approx(1)


@pytest.mark.parametrize(
    ("text", "quote", "slot", "status"),
    [
        ("Reset both fronts, six nails each.", "Reset", "work", Status.PRESENT),
        ("There was no thrush in either hind.", "thrush", "finding", Status.ABSENT),
        ("If it is no better I will put pads on him next time.", "pads", "pad", Status.PLANNED),
    ],
)
def test_the_shipped_opinion_on_plain_talk(text: str, quote: str, slot: str, status: Status) -> None:
    chances = shipped_opinion().chances(words(text, quote, slot))
    assert max(chances, key=lambda name: chances[name]) == status.value


def test_the_shipped_opinion_knows_every_status_and_none() -> None:
    opinion = shipped_opinion()
    assert list(opinion.statuses) == [*(status.value for status in Status), NOT_SO]
    assert len(opinion.bias) == len(opinion.statuses)
    assert {len(row) for row in opinion.weights.values()} == {len(opinion.statuses)}
