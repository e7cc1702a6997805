"""Which stretches of a memo are told of which horse: from where its name is said to where another is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings
from pipeline.record import FlagKind, Visit


@dataclass(frozen=True)
class Part:
    """The tokens ``[first, last)``; the first is that of the name, or 0 where the horse is not named."""

    first: int
    last: int


class Parts:
    """The parts of one memo by horse, as the names of the horses that were read divide it."""

    def __init__(self, around: Surroundings, names: SpokenNames, visits: Sequence[Visit]) -> None:
        read = {visit.horse.lower() for visit in visits if visit.horse}
        named = {one.first: one.horse.lower() for one in names.said if one.sure and one.horse.lower() in read}
        for visit in visits:
            for quote in (flag.quote for flag in visit.flags if flag.kind is FlagKind.HORSE and flag.quote):
                for first in _said(around, quote):
                    named.setdefault(first, (visit.horse or "").lower())
        self._named = dict(sorted(named.items()))
        self._end = len(around.tokens)

    @property
    def names(self) -> Sequence[int]:
        """The tokens at which a horse that was read is named, in order."""
        return list(self._named)

    def of(self, horse: str | None) -> list[Part]:
        """The parts of one horse; of one whose name is nowhere, what stands before the first name."""
        name = (horse or "").lower()
        ends = [*list(self._named)[1:], self._end]
        own = [
            Part(first, last) for (first, said), last in zip(self._named.items(), ends, strict=False) if said == name
        ]
        return own or [Part(0, next(iter(self._named), self._end))]

    def named(self, horse: str | None) -> list[int]:
        """The tokens at which one horse is named."""
        return [first for first, said in self._named.items() if said == (horse or "").lower()]


def _said(around: Surroundings, quote: str) -> list[int]:
    """Where the words of a name are said that was taken for another: "Neeve" for Niamh."""
    name = [token.text.removesuffix("'s") for token in Surroundings(quote).tokens if token.text[0].isalnum()]
    words = [token.text.removesuffix("'s") for token in around.tokens]
    return [at for at in range(len(words) - len(name) + 1) if name and words[at : at + len(name)] == name]
