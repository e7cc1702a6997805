"""Where a memo's words stand in its text."""

from __future__ import annotations

import pytest

from pipeline.judging.surroundings import Surroundings


@pytest.mark.parametrize("text", ["İİİ Sable, left front, thrush.", "Straße. Sable’s ﬁne, ½ an inch"])
def test_every_token_stands_where_its_letters_are(text: str) -> None:
    found = [(token.text, text[token.start : token.end]) for token in Surroundings(text).tokens]
    assert ("sable", "Sable") in [(token.removesuffix("'s"), said.removesuffix("’s")) for token, said in found]
    assert [token for token, _ in found] == [said.lower().replace("’", "'") for _, said in found]
