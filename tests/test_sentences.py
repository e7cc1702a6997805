"""Sentences put together for a line."""

from __future__ import annotations

import pytest

from pipeline.sentences import in_a_row


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
