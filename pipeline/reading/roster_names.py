"""The horses of a memo as data, and the roster names that stand in its text as spelled."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.talk import grouped
from pipeline.reading.tokens import Tokens, form_tokens
from pipeline.record import HorseMatch, RosterHorse

_BEFORE_NAMES = frozenset(
    {".", "then", "next", "okay", "ok", "now", "for", "first", "is", "called", "and", "so", "right"}
)


@dataclass
class NamedHorse:
    """A horse of the memo: roster name or the name as heard.

    ``namesakes`` is true when the roster has several horses of the name and the memo says no place that decides,
    ``guessed`` when what it is told of says no name.
    """

    name: str | None
    match: HorseMatch
    heard: str = ""
    likeness: float = 1.0
    tokens: tuple[int, int] = (0, 0)
    place: str | None = None
    namesakes: bool = False
    guessed: bool = False


@dataclass
class NameSpan:
    """A name at the tokens ``[start, end)`` and the horse that it means."""

    start: int
    end: int
    horse: int
    role: str = "refers"


@dataclass
class HorseTalk:
    """The horses of a memo and the spans that name them."""

    horses: list[NamedHorse] = field(default_factory=list)
    spans: list[NameSpan] = field(default_factory=list)

    def index_of(self, horse: NamedHorse) -> int:
        """The index of this horse, added when it was not named before."""
        for index, other in enumerate(self.horses):
            if other.name is not None and horse.name is not None and other.name.lower() == horse.name.lower():
                return index
        self.horses.append(horse)
        return len(self.horses) - 1


def roster_spans(
    tokens: Tokens, roster: Sequence[RosterHorse], of_feet: Container[str]
) -> list[tuple[int, int, RosterHorse]]:
    """Roster names that stand in the text as spelled, the longest first at each place.

    ``of_feet`` are words of the trade: such a name is taken in small letters only where nothing else can stand.
    """
    words, cased = tokens.words, any(tokens.large)
    wanted, first_words, whole = _spelled(tuple((horse.name, *horse.also_called) for horse in roster))
    found = [(at, at + 2, roster[index]) for at, index in _written_apart(tokens, whole, cased=cased)]
    used = {index for start, end, _ in found for index in range(start, end)}
    places = grouped([(word, at) for at, word in enumerate(words) if word in first_words])
    for name, index in wanted if places else ():
        for start in places.get(name[0], ()):
            span = range(start, start + len(name))
            if words[start : start + len(name)] != name or used.intersection(span):
                continue
            small = cased and not tokens.large[start]
            if small and not (
                _stands_like_name(words, start, start + len(name))
                or _opens_small(words, start, start + len(name), of_feet)
            ):
                continue
            used.update(span)
            found.append((start, start + len(name), roster[index]))
    return sorted(found, key=lambda f: f[0])


@lru_cache(maxsize=256)  # the roster is the same from memo to memo
def _spelled(
    roster: tuple[tuple[str, ...], ...],
) -> tuple[list[tuple[list[str], int]], frozenset[str], dict[str, int]]:
    """The names in tokens with the index of their horse, the longest first; their first words; those of one word."""
    names = [(name.lower(), index) for index, own in enumerate(roster) for name in own]
    wanted = [(words, index) for name, index in names if (words := form_tokens(name))]
    wanted.sort(key=lambda pair: -len(pair[0]))
    return wanted, frozenset(words[0] for words, _ in wanted), {name: i for name, i in names if " " not in name}


def _written_apart(tokens: Tokens, whole: dict[str, int], *, cased: bool) -> list[tuple[int, int]]:
    """ "June Bug" for Junebug: where a name of the roster is written as two words, and the index of its horse."""
    words, large = tokens.words, tokens.large
    pairs = [(i, words[i] + words[i + 1]) for i in range(len(words) - 1) if large[i] or not cased]
    return [(at, whole[pair]) for at, pair in pairs if pair in whole]


def _stands_like_name(words: list[str], start: int, end: int) -> bool:
    """A name that a recogniser wrote small: "Then sorrel.", "five for whiskey."."""
    before = words[start - 1] if start else "."
    if before == "," and start > 1:
        before = words[start - 2]
    after = words[end] if end < len(words) else "."
    return after in (".", ",") and before in _BEFORE_NAMES


def _opens_small(words: list[str], start: int, end: int, of_feet: Container[str]) -> bool:
    """ "…, otter's cast the near hind", "pumpkin next": a word in small letters that opens a horse's part."""
    before = words[start - 1] if start else "."
    if before == "," and words[end : end + 2] == ["'s", "the"] and HORSE_WORDS & set(words[end + 2 : end + 3]):
        return True  # "…, pad's the cob"
    return (
        before in (".", ",")
        and words[start] not in of_feet
        and words[end : end + 1] in (["'s"], ["first"], ["next"], ["again"])
    )


def name_mentions(exact: list[tuple[int, int, RosterHorse]]) -> list[Mention]:
    """Roster names as mentions, so that they claim their words."""
    return [Mention(s, e, tuple(range(s, e)), {"horse": h.name}) for s, e, h in exact]
