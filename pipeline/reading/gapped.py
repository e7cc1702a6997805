"""Forms with a gap ("heels ... contracted"): their words in order, with one to four others where the dots stand.

A gap never reaches over a mark, an "and" or a "but". The forms are looked up by their first word, so that a memo is
held only against the few that could begin where it says that word.
"""

from __future__ import annotations

from collections.abc import Iterator

from pipeline.reading.tokens import Tokens

GAP = "..."
_GAP_WORDS = 4
_BARRIERS = frozenset({"and", "but"})
Found = tuple[str, int, tuple[int, ...]]  # the form, the token behind it and the tokens of its own words


class GappedForms:
    """The forms with a gap, of one vocabulary."""

    def __init__(self) -> None:
        # By its longest word, which few memos say: its number in order, the form, its words, and those of its own.
        self._by_longest: dict[str, list[tuple[int, str, list[str], frozenset[str]]]] = {}
        self._made = 0

    def add(self, form: str, words: list[str]) -> None:
        """``words`` are the tokens of ``form``, with GAP for the dots; the first is a word."""
        own = frozenset(words) - {GAP}
        self._by_longest.setdefault(max(own, key=len), []).append((self._made, form, words, own))
        self._made += 1

    def find(self, tokens: Tokens) -> Iterator[Found]:
        """Every way in which a form stands in the text."""
        said = frozenset(tokens.words)
        near = [one for word in said & self._by_longest.keys() for one in self._by_longest[word] if one[3] <= said]
        firsts = {words[0] for _, _, words, _ in near}
        near.sort()
        for start in [i for i, word in enumerate(tokens.words) if word in firsts] if near else ():
            for _, form, words, _ in near:
                if words[0] == tokens.words[start]:
                    for end, literal in _matches(tokens, words, start):
                        yield form, end, literal


def _matches(tokens: Tokens, words: list[str], at: int) -> Iterator[tuple[int, tuple[int, ...]]]:
    """Where ``words`` end when they begin at the token ``at``, and the tokens of those that are no gap."""
    said, own = tokens.words, words.index(GAP) if GAP in words else len(words)
    if said[at : at + own] != words[:own]:
        return
    literal, behind = tuple(range(at, at + own)), at + own
    if own == len(words):
        yield behind, literal
        return
    for end in range(behind + 1, min(behind + _GAP_WORDS, len(said)) + 1):
        if tokens.marks[end - 1] or said[end - 1] in _BARRIERS:
            return
        for last, rest in _matches(tokens, words[own + 1 :], end):
            yield last, literal + rest
