"""Where the horses' names are said in a memo, whether their visits are read from it or not."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pipeline.judging.surroundings import Surroundings
from pipeline.record import RosterHorse, Visit


@dataclass(frozen=True)
class SpokenName:
    """The tokens ``[first, last)`` in which a horse is named, and its name in small letters."""

    first: int
    last: int
    horse: str


class SpokenNames:
    """Every name said in one memo, in order."""

    def __init__(self, around: Surroundings, text: str, visits: Sequence[Visit], roster: Iterable[RosterHorse]) -> None:
        names = {(visit.horse or "").lower(): (visit.horse or "").lower() for visit in visits}
        for horse in roster:
            names |= {name.lower(): horse.name.lower() for name in (horse.name, *horse.also_called)}
        names.pop("", None)
        own = {visit.horse.lower() for visit in visits if visit.horse}
        self.said = sorted(
            (one for name, horse in names.items() for one in _places(around, text, name, horse, own)),
            key=lambda one: (one.first, -one.last),
        )

    def before(self, last: int) -> SpokenName | None:
        """The name said last before the token ``last``; None without one."""
        return next((one for one in reversed(self.said) if one.first < last), None)


def _places(around: Surroundings, text: str, name: str, horse: str, own: Iterable[str]) -> Iterable[SpokenName]:
    """Where a name is said; one that is a word of the trade too ("Steel") counts only where it is written as a name."""
    words = name.split()
    tokens = around.tokens
    for first in range(len(tokens) - len(words) + 1):
        part = tokens[first : first + len(words)]
        if [token.text.removesuffix("'s") for token in part] != words:
            continue
        written = text[part[0].start].isupper() and (first > 0 and tokens[first - 1].text[0].isalnum())
        if horse in own or written or around.unknown(first, first + len(words)):
            yield SpokenName(first, first + len(words), horse)
