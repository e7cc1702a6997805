"""Where the horses' names are said in a memo, whether their visits are read from it or not."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from pipeline.judging.surroundings import Surroundings
from pipeline.reading.sounds import likeness
from pipeline.record import RosterHorse, Transcript, Visit

# Likeness from which a word that is written as a name may be a horse's of the list; a recogniser spells by ear.
_ALIKE, _ALIKE_HEARD = 0.75, 0.6
_MISTAKEN_FOR = 0.79  # likeness of two names from which one is heard for the other
_BESIDE = 7  # words between two names that may be said one for the other
_FEWEST_LETTERS = 3  # of the beginning of a name that stands for it
# "So three today", "Two on the hill road": how many horses there are, at the start of a sentence near the beginning.
_COUNTED = re.compile(
    r"(?:^|[.!?] )(?:(?:so|right|okay|alright|well|uh|um|just),? )*(two|three|four|five|pair|couple) "
    r"(?:of (?:them|em|'em|horses|ponies)|today|tonight|this|horses|ponies|mares|done|here|more|on|at|up|for|from|down"
    r"|over|out)\b"
)
_AT_START = 140  # characters
_MANY = {"two": 2, "three": 3, "four": 4, "five": 5, "pair": 2, "couple": 2}


@dataclass(frozen=True)
class SpokenName:
    """The tokens ``[first, last)`` in which a horse is named, and its name; ``sure`` unless it is only alike."""

    first: int
    last: int
    horse: str
    sure: bool = True


class SpokenNames:
    """Every name said in one memo, in order."""

    def __init__(
        self, around: Surroundings, transcript: Transcript, visits: Sequence[Visit], roster: Sequence[RosterHorse]
    ) -> None:
        self._around, self._text = around, transcript.text
        self._heard = transcript.heard
        self._enough = _ALIKE_HEARD if transcript.heard else _ALIKE
        self._visits = sum(bool(visit.facts) for visit in visits)
        self._read = {visit.horse.lower() for visit in visits if visit.horse}
        names = {visit.horse.lower(): visit.horse for visit in visits if visit.horse}
        for horse in roster:
            names |= {name.lower(): horse.name for name in (horse.name, *horse.also_called)}
        found = [one for name, horse in names.items() for one in self._exact(name, horse)]
        taken = {place for one in found for place in range(one.first, one.last)}
        self._others = [horse.name for horse in roster if horse.name.lower() not in self._read]
        found += self._alike(self._others, taken)
        self.said = sorted(found, key=lambda one: (one.first, -one.last))

    @property
    def alike(self) -> SpokenName | None:
        """The first word that is only alike to a name; None without one."""
        return next((one for one in self.said if not one.sure), None)

    def passed_over(self, horse: str | None, heard: bool) -> SpokenName | None:
        """A horse that is named beside this one and of which nothing was read: "Hopscotch, no, hang on, Hopsack".

        In heard memos anywhere: of 17 known names with another so passed over two were wrong, of 230 without two.
        """
        own = [one.first for one in self.said if one.horse.lower() == (horse or "").lower()]
        others = [one for one in self.said if one.sure and one.horse.lower() not in self._read]
        return next((one for one in others if heard or any(self._beside(one.first, at) for at in own)), None)

    def _beside(self, first: int, other: int) -> bool:
        return abs(first - other) <= _BESIDE and self._around.sentence_of(first) == self._around.sentence_of(other)

    @property
    def more_horses(self) -> str | None:
        """The words that speak of more horses than anything was read of; None without such."""
        found = _COUNTED.search(self._text[:_AT_START].lower())
        return found.group().strip(" .!?") if found and _MANY[found.group(1)] > self._visits else None

    def mistaken_for(self, horse: str | None) -> str | None:
        """A horse of the list that sounds nearly so and of which nothing was read; None for typed text or without."""
        near = max(self._others, key=lambda name: likeness(name, horse or ""), default="")
        return near if self._heard and likeness(near, horse or "") >= _MISTAKEN_FOR else None

    def before(self, last: int) -> SpokenName | None:
        """The name said last before the token ``last``; None without one."""
        return next((one for one in reversed(self.said) if one.first < last), None)

    def own_before(self, horse: str | None, last: int) -> int:
        """The token at which this horse was named last before the token ``last``; 0 where it was not."""
        name = (horse or "").lower()
        return next((one.first for one in reversed(self.said) if one.first <= last and one.horse.lower() == name), 0)

    def _exact(self, name: str, horse: str) -> Iterator[SpokenName]:
        """Where a name is said; one that is a word of the trade too ("Steel") counts only where it is a name."""
        words, tokens = name.split(), self._around.tokens
        for first in range(len(tokens) - len(words) + 1):
            part = tokens[first : first + len(words)]
            said = " ".join(token.text.removesuffix("'s") for token in part)
            if said != name and not (self._heard and said == f"{name}s"):  # "Puffins the worry" is Puffin's
                continue
            inside = first > 0 and tokens[first - 1].text[0].isalnum()
            unlisted = self._around.unknown(first, first + len(words))
            if horse.lower() in self._read or unlisted or (inside and self._written(first)):
                yield SpokenName(first, first + len(words), horse)

    def _alike(self, others: Sequence[str], taken: set[int]) -> Iterator[SpokenName]:
        """Words written as names that no list knows, and that sound like a horse of which nothing was read."""
        own = {word for name in self._read for word in name.split()}
        for place, token in enumerate(self._around.tokens):
            word = token.text.removesuffix("'s")
            if place in taken or word in own or not self._written(place) or not self._around.unknown(place, place + 1):
                continue
            near = max(others, key=lambda name: _likeness(word, name), default=None)
            read = max((_likeness(word, name) for name in self._read), default=0.0)  # "Rowans" is Rowan's, not Roman
            if near is not None and _likeness(word, near) >= max(self._enough, read):
                yield SpokenName(place, place + 1, near, sure=False)

    def _written(self, place: int) -> bool:
        return self._text[self._around.tokens[place].start].isupper()


def _likeness(word: str, name: str) -> float:
    if len(word) >= _FEWEST_LETTERS and name.lower().startswith(word):
        return 1.0
    if len(word) * 2 <= len(name):
        return 0.0  # "Del" is no Teasel: what was heard of a name is not half as long
    return likeness(word, name)
