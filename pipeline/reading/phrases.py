"""Phrases of the vocabulary without a gap, found in one walk over a memo's words, longer and shorter ones alike."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from pipeline.reading.gapped import Found


class Phrases:
    """The phrases of one vocabulary; of forms with the same words the one that was added last is told."""

    def __init__(self) -> None:
        # Each beginning of a phrase: what may come next, word by word, and under "" the form that ends there.
        self._begun: dict[str, Any] = {}

    def add(self, form: str, words: Sequence[str]) -> None:
        """``words`` are the tokens of ``form``, one or more, none of them empty."""
        begun = self._begun
        for word in words:
            begun = begun.setdefault(word, {})
        begun[""] = form

    def find(self, words: Sequence[str]) -> list[Found]:
        """Every form that stands in the words."""
        found, padded = list[Found](), [*words, " "]  # no phrase goes on with a blank
        for start, begun in enumerate(map(self._begun.get, words)):
            end = start + 1
            while begun:
                if "" in begun:
                    found.append((begun[""], end, (start,) if end == start + 1 else tuple(range(start, end))))
                begun, end = begun.get(padded[end]), end + 1
        return found
