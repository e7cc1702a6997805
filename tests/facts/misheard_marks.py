"""Marks as a recogniser mishears them: a comma for a full stop, a full stop in the middle of a sentence."""

from __future__ import annotations

import re
from collections.abc import Iterable
from random import Random

_MARK = re.compile(r"([.,?!:;])(\s+)(?=([A-Za-z][\w']*))")
_ALWAYS_LARGE = frozenset({"I", "I'm", "I'd", "I've", "I'll"})


def mishear_marks(text: str, names: Iterable[str], rng: Random, *, stops: float = 0.0, commas: float = 0.0) -> str:
    """The text with that share of its stops written as commas, and of its commas as stops.

    The word behind is written as it would be there: small behind a comma, unless it is one of the ``names`` or "I".
    """
    large = _ALWAYS_LARGE | {word for name in names for word in name.split()}
    told: list[str] = []
    end = 0
    for match in _MARK.finditer(text):
        drawn, word = rng.random(), match[3]
        if match[1] == ",":
            changed, first = drawn < commas, word[0].upper()
        else:
            changed, first = drawn < stops, word[0] if word in large else word[0].lower()
        if changed:
            told += [text[end : match.start()], ". " if match[1] == "," else ", ", first]
            end = match.end() + 1
    return "".join([*told, text[end:]])
