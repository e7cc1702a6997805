"""Fixed turns of words, looked up by their first two: a memo is held only against those that could begin there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import ClassVar, TypeVar

Thing = TypeVar("Thing")
# What begins with one word, in its order: by its second word, with what is of one word; "": this alone.
_Begun = dict[str, list[Thing]]


class Sayings:
    """Some turns of words ("it 's back": tokens with blanks between them), in the order in which they are tried."""

    made = 0
    _all: ClassVar[dict[str, _Begun[Sayings]]] = {}

    def __init__(self, *forms: str) -> None:
        self.forms = [form.split() for form in forms]
        Sayings.made += 1
        self._by_first: dict[str, _Begun[list[str]]] = {}
        for words in self.forms:
            _begin(self._by_first.setdefault(words[0], {"": []}), words, words)
            _begin(self._all.setdefault(words[0], {"": []}), words, self)
        self.first_words = frozenset(self._by_first)

    @classmethod
    def beginning(cls, words: Sequence[str]) -> dict[Sayings, list[int]]:
        """The tokens at which each of all that were made may begin, by its first two words."""
        found: dict[Sayings, list[int]] = {}
        for index, begun in enumerate(map(cls._all.get, words)):
            if begun is not None:
                behind = words[index + 1] if index + 1 < len(words) else ""
                for sayings in begun[behind] if behind in begun else begun[""]:
                    found.setdefault(sayings, []).append(index)
        return found

    def at(self, words: Sequence[str], index: int) -> list[str]:
        """The words of the first that stands at the token; none where none does, nor behind the last token."""
        near = words[index : index + 2]
        if not near or near[0] not in self._by_first:
            return []
        begun = self._by_first[near[0]]
        for form in begun[near[-1]] if near[-1] in begun else begun[""]:
            if words[index : index + len(form)] == form:
                return form
        return []

    def said_in(self, words: Sequence[str]) -> bool:
        """Whether one of them stands anywhere in the words."""
        return next(self.within(words, 0, len(words)), None) is not None

    def within(self, words: Sequence[str], start: int, end: int) -> Iterator[tuple[int, list[str]]]:
        """Each token in ``[start, end)`` where one of them begins, with its words, from left to right."""
        if self.first_words.isdisjoint(words[start:end]):
            return
        for index in range(start, min(end, len(words))):
            if words[index] in self._by_first and (form := self.at(words, index)):
                yield index, form


def _begin(begun: _Begun[Thing], words: list[str], thing: Thing) -> None:
    """Take in one more under its words, behind those that are there; each once."""
    told = [begun.setdefault(words[1], [*begun[""]])] if len(words) > 1 else begun.values()
    for things in told:
        if things[-1:] != [thing]:
            things.append(thing)


def said_whole(*forms: str) -> frozenset[tuple[str, ...]]:
    """The tokens of each form ("it was n't"), for a segment that is such a turn of words and nothing more."""
    return frozenset(tuple(form.split()) for form in forms)
