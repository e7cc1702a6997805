"""Phrases of the vocabulary without a gap, found in one walk over a memo's words, longer and shorter ones alike."""

from __future__ import annotations

from collections.abc import Iterator, Sequence


class _Node:
    """What may follow some words, and the form that they are when they end here."""

    __slots__ = ("behind", "form")

    def __init__(self) -> None:
        self.behind: dict[str, _Node] = {}
        self.form: str | None = None


class Phrases:
    """The phrases of one vocabulary; of forms with the same words the one that was added last is told."""

    def __init__(self) -> None:
        self._first = _Node()

    def add(self, form: str, words: Sequence[str]) -> None:
        """``words`` are the tokens of ``form``, one or more."""
        node = self._first
        for word in words:
            node = node.behind.setdefault(word, _Node())
        node.form = form

    def find(self, words: Sequence[str]) -> Iterator[tuple[str, int, int]]:
        """Every form that stands in the words, with its tokens ``[start, end)``."""
        for start, node in enumerate(map(self._first.behind.get, words)):
            end = start
            while node is not None:
                end += 1
                if node.form is not None:
                    yield node.form, start, end
                node = node.behind.get(words[end]) if end < len(words) else None
