"""Fixed turns of words, looked up by their first word: a memo is held only against those that could begin there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence


class Sayings:
    """Some turns of words ("it 's back": tokens with blanks between them), in the order in which they are tried."""

    def __init__(self, *forms: str) -> None:
        self.forms = [form.split() for form in forms]
        self._by_first: dict[str, _Begun] = {}
        for words in self.forms:
            self._by_first.setdefault(words[0], _Begun()).add(words)
        self.first_words = frozenset(self._by_first)
        self.alone = frozenset(words[0] for words in self.forms if len(words) == 1)
        self.first_two = frozenset((words[0], words[1]) for words in self.forms if len(words) > 1)

    def at(self, words: Sequence[str], index: int) -> list[str]:
        """The words of the first that stands at the token; none where none does, nor behind the last token."""
        begun = self._by_first.get(words[index]) if index < len(words) else None
        if begun is None:
            return []
        for form in begun.going_on(words[index + 1]) if index + 1 < len(words) else begun.single:
            if words[index : index + len(form)] == form:
                return form
        return []

    def said_in(self, words: Sequence[str]) -> bool:
        """Whether one of them stands anywhere in the words."""
        begun = self._by_first
        return any(self.at(words, index) for index, word in enumerate(words) if word in begun)

    def within(self, words: Sequence[str], start: int, end: int) -> Iterator[tuple[int, list[str]]]:
        """Each token in ``[start, end)`` where one of them begins, with its words, from left to right."""
        if self.first_words.isdisjoint(words[start:end]):
            return
        for index in range(start, min(end, len(words))):
            if words[index] in self._by_first and (form := self.at(words, index)):
                yield index, form


class _Begun:
    """The turns that begin with one word, in their order: those of one word, and these with those that go on."""

    def __init__(self) -> None:
        self.single: list[list[str]] = []
        self._by_second: dict[str, list[list[str]]] = {}

    def add(self, words: list[str]) -> None:
        """Take in one more, behind those that it has."""
        if len(words) > 1:
            self._by_second.setdefault(words[1], [*self.single]).append(words)
            return
        self.single.append(words)
        for forms in self._by_second.values():
            forms.append(words)

    def going_on(self, second: str) -> list[list[str]]:
        """Those that may stand where the second word does."""
        return self._by_second.get(second, self.single)


def said_whole(*forms: str) -> frozenset[tuple[str, ...]]:
    """The tokens of each form ("it was n't"), for a segment that is such a turn of words and nothing more."""
    return frozenset(tuple(form.split()) for form in forms)
