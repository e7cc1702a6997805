"""Where a memo tells when the next visit is, and of whom: a horse's part nearly always ends with it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from pipeline.judging.surroundings import Surroundings

_WORDS = frozenset({"week", "weeks", "fortnight", "month", "months"})
# "Three weeks ago", "every six weeks", "a week old": not of the next visit.
_OF_ANOTHER_TIME = frozenset({"ago", "last", "since", "every", "old", "back", "past", "been", "was", "before"})
_BEFORE, _BEHIND = 4, 3  # words beside the weeks among which those count
_SECOND_THOUGHTS = frozenset({"or", "to", "maybe", "call", "make", "say"})
# A clause that gives weeks and hardly says more: "wise nine", "and eight for the other".
_NUMBER = re.compile(
    r"(?:\S+ ){0,3}(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[2-9]|1[0-2])(?: (?!nails?|grade"
    r"|degrees?|size|side|foot|score|slims)\S+){0,4}"
)
_PARTED = re.compile(r" [,;] | and ")
_BESIDE = 7  # words between a name and its weeks


class WeeksTold:
    """The tokens at which the weeks of a next visit are told in one memo."""

    def __init__(self, around: Surroundings, names: Sequence[int]) -> None:
        self._around, self._names = around, names
        self._words = [token.text for token in around.tokens]
        self._at = [at for at, word in enumerate(self._words) if word in _WORDS and self._of_next(at)]

    def _of_next(self, at: int) -> bool:
        return _OF_ANOTHER_TIME.isdisjoint(self._words[max(0, at - _BEFORE) : at + _BEHIND])

    def within(self, first: int, last: int) -> bool:
        """Whether weeks are told in the tokens ``[first, last)``."""
        return any(first <= at < last for at in self._at)

    def of_several(self) -> bool:
        """Whether one sentence gives more weeks than it names horses that were read: "Toby eight weeks, rain four"."""
        return any(self._numbers(start, end) > max(1, self._named(start, end)) for start, end in self._sentences())

    def by_name(self, named: Sequence[int]) -> bool:
        """Whether a horse is named once more for its weeks, which hardly anybody does who tells of one horse."""
        beside = [(name, at) for name in named[1:] for at in self._at if 0 <= at - name <= _BESIDE]
        return any(self._around.sentence_of(name) == self._around.sentence_of(at) for name, at in beside)

    def _sentences(self) -> Iterator[tuple[int, int]]:
        yield from dict.fromkeys(self._around.sentence_of(at) for at in self._at)

    def _numbers(self, start: int, end: int) -> int:
        words = self._words[start:end]
        if self._around.within("correction", start, end) or not _SECOND_THOUGHTS.isdisjoint(words):
            return 0
        return sum(bool(_NUMBER.fullmatch(clause.strip(" .?!"))) for clause in _PARTED.split(" ".join(words)))

    def _named(self, start: int, end: int) -> int:
        return sum(start <= at < end for at in self._names)
