"""Phrases of the vocabulary without a gap, found in one walk over a memo's words, longer and shorter ones alike."""

from __future__ import annotations

from collections.abc import Iterator, Sequence


class Phrases:
    """The phrases of one vocabulary; of forms with the same words the one that was added last is told."""

    def __init__(self) -> None:
        # Every beginning of a phrase, its words joined by blanks; the form where a phrase ends there, else None.
        self._begun: dict[str, str | None] = {}

    def add(self, form: str, words: Sequence[str]) -> None:
        """``words`` are the tokens of ``form``, one or more, without blanks in them."""
        for end in range(1, len(words)):
            self._begun.setdefault(" ".join(words[:end]))
        self._begun[" ".join(words)] = form

    def find(self, words: Sequence[str]) -> Iterator[tuple[str, int, int]]:
        """Every form that stands in the words, with its tokens ``[start, end)``."""
        begun = self._begun
        for start, word in enumerate(words):
            said, end = word, start + 1
            while said in begun:
                form = begun[said]
                if form is not None:
                    yield form, start, end
                if end == len(words):
                    break
                said, end = f"{said} {words[end]}", end + 1
