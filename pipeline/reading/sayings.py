"""Fixed turns of words, looked up by their first word: a memo is held only against those that could begin there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

# The turns that begin with one word, in their order: by their second word, with those of one word; "": these alone.
_Begun = dict[str, list[list[str]]]


class Sayings:
    """Some turns of words ("it 's back": tokens with blanks between them), in the order in which they are tried."""

    def __init__(self, *forms: str) -> None:
        self.forms = [form.split() for form in forms]
        self._by_first: dict[str, _Begun] = {}
        for words in self.forms:
            _begin(self._by_first.setdefault(words[0], {"": []}), words)
        self.first_words = frozenset(self._by_first)
        self.alone = frozenset(words[0] for words in self.forms if len(words) == 1)
        self.first_two = frozenset((words[0], words[1]) for words in self.forms if len(words) > 1)

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


def _begin(begun: _Begun, words: list[str]) -> None:
    """Take in one more, behind those that it has."""
    if len(words) > 1:
        begun.setdefault(words[1], [*begun[""]]).append(words)
        return
    for forms in begun.values():
        forms.append(words)


def said_whole(*forms: str) -> frozenset[tuple[str, ...]]:
    """The tokens of each form ("it was n't"), for a segment that is such a turn of words and nothing more."""
    return frozenset(tuple(form.split()) for form in forms)
