"""Sentences put together for a line."""

from __future__ import annotations

import pytest

from pipeline.sentences import capital, did_you_mean, in_a_row, none_such


@pytest.mark.parametrize(
    ("sentences", "line"),
    [
        ([], ""),
        (["Is it all four?"], "Is it all four?"),
        (["Is this right?", "Is this of today?"], "Is this right? Is this of today?"),
        (["out of the ordinary", "please listen."], "out of the ordinary; please listen."),
    ],
)
def test_each_ends_once(sentences: list[str], line: str) -> None:
    assert in_a_row(sentences) == line


@pytest.mark.parametrize(
    ("said", "question"),
    [("brambel", " Did you mean Bramble?"), ("bram", " Did you mean Bramble?"), ("zzz", ""), ("", "")],
)
def test_what_is_spelled_alike_is_offered_once(said: str, question: str) -> None:
    assert did_you_mean(said, {"bramble": "Bramble", "brambl": "Bramble"}) == question


def test_how_alike_it_must_be() -> None:
    assert did_you_mean("month", ["moth"], alike=0.95) == ""
    assert did_you_mean("month", ["moth"]) == " Did you mean moth?"


def test_what_there_is_none_of() -> None:
    assert none_such("zone", "foot", ["fore", "hind"]) == "'zone' is no foot; known are fore, hind."
    assert none_such("fere", "foot", ["fore", "hind"]) == "'fere' is no foot. Did you mean fore?"


def test_a_sentence_begins_with_a_capital() -> None:
    assert capital("the day, says Nora") == "The day, says Nora"
    assert capital("") == ""
