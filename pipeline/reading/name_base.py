"""What every way of finding a horse's name shares: the memo, the roster, and where a name begins and ends."""

from __future__ import annotations

from collections.abc import Sequence
from operator import attrgetter

from pipeline.reading.name_words import NAME_FOLLOWERS, NEVER_NAMES
from pipeline.reading.once import Once
from pipeline.reading.roster_names import HorseTalk
from pipeline.reading.sounds import likeness
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import RosterHorse

KNOWN_LIKENESS = 0.78
_MARGIN = 0.04
_START = attrgetter("start")
_NAMED = frozenset({"horse"})
_NEW_AHEAD, _NEW_BEHIND = 20, 6  # tokens from "new one" to the name, and from the name to it


class NameBase:
    """The names of one memo, found so far in ``found``."""

    def __init__(
        self,
        talk: Talk,
        roster: Sequence[RosterHorse],
        exact: list[tuple[int, int, RosterHorse]],
        common: frozenset[str] = frozenset(),
        heard: bool = False,
    ) -> None:
        """``common`` are words in small letters that are no name by themselves; ``heard`` is false for typed text."""
        self._talk = talk
        self._common = common
        self._heard = heard
        self._cased = any(talk.tokens.large)
        self._roster = roster
        self._exact = exact
        self.found = HorseTalk()

    def _sentence_start(self, index: int) -> int:
        while index > 0 and self._talk.words[index - 1] not in SENTENCE_ENDS:
            index -= 1
        return index

    def _sort(self) -> None:
        self.found.spans.sort(key=_START)

    @Once
    def _strange(self) -> list[int]:
        """The capitalised words that mean nothing else: what may be a name."""
        return [at for at, large in enumerate(self._talk.tokens.large) if large and self._means_nothing(at)]

    def _means_nothing(self, at: int) -> bool:
        """Whether the word is none of the grammar, nor of the trade, nor one that is never a name."""
        tokens = self._talk.tokens
        return not tokens.little[at] and tokens.lowers[at] not in NEVER_NAMES and self._unknown(at)

    def _only_openers(self, index: int) -> bool:
        """Whether nothing but "okay", "then", "on to" and the like stands before the name in its sentence."""
        start = self._sentence_start(index)
        allowed: set[int] = set()
        for mention in self._talk.starting_in(start, index):
            if mention.is_any(("horse_cues", "fillers", "taking_back")):
                allowed.update(mention.literal)
        light = (",", "and", "then", "so", "is", "'s", "a", "an", "the", "there", "of", "to", "i", "forgot")
        return all(i in allowed or self._talk.words[i] in light for i in range(start, index))

    def _name_end(self, start: int, called: bool = False) -> int:
        """A name is one capitalised word, or two in a row; in text without capitals one word.

        Behind "called" a large word is the name's, be it "May" or "April"; not in "the owner called Monday".
        """
        tokens = self._talk.tokens
        if start >= len(tokens) or tokens.marks[start]:
            return start
        if tokens.lowers[start] in NEVER_NAMES and not (called and any(tokens.large[start + 1 : start + 2])):
            return start
        if not self._cased:
            return start + 1
        if not tokens.large[start]:
            return start
        end = start + 1
        while (
            end < len(tokens)
            and end - start < 3
            and tokens.large[end]
            and (called or not tokens.little[end])
            and tokens.lowers[end] != "i"
        ):
            end += 1
        return end

    def _new_is_the_horse(self, start: int) -> None:
        """In "there's a new one, name of Kestrel" and "Kestrel, new one" the new one is a horse, not a shoe."""
        for mention in self._talk.having("horse_cues", "new"):
            behind = start <= mention.start < start + _NEW_BEHIND
            same = not SENTENCE_ENDS & set(self._talk.words[start : mention.start])
            if start - _NEW_AHEAD < mention.start < start or (behind and same):
                mention.readings.pop("work", None)

    def _text(self, start: int, end: int) -> str:
        return self._talk.tokens.said(start, end)

    def _unknown(self, index: int) -> bool:
        """Whether the token is no word of the trade or of the grammar."""
        return not [m for m in self._talk.holding(index) if not m.readings.keys() <= _NAMED]

    def _follows_like_name(self, index: int) -> bool:
        return index >= len(self._talk.words) or self._talk.words[index] in NAME_FOLLOWERS

    def _is_place(self, start: int) -> bool:
        return (
            self._talk.words[start - 1] in ("the", "at", "from", "in", "near", "down", "over")
            and self._talk.words[start - 1] != "is"
        )

    def _best(self, text: str) -> tuple[RosterHorse, float] | None:
        scored = sorted(
            ((max(likeness(text, name) for name in (h.name, *h.also_called)), h) for h in self._roster),
            key=lambda p: -p[0],
        )
        if not scored or scored[0][0] < KNOWN_LIKENESS:
            return None
        rival = next((score for score, h in scored[1:] if h.name != scored[0][1].name), 0.0)
        return (scored[0][1], scored[0][0]) if scored[0][0] - rival >= _MARGIN else None
