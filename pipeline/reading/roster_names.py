"""The horses of a memo as data, and the roster names that stand in its text as spelled."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass, field

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS
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
    wanted: list[tuple[list[str], RosterHorse]] = []
    for horse in roster:
        wanted.extend((form_tokens(name.lower()), horse) for name in (horse.name, *horse.also_called))
    wanted.sort(key=lambda pair: -len(pair[0]))
    found = _written_apart(tokens, roster, cased=cased)
    used = {index for start, end, _ in found for index in range(start, end)}
    places: dict[str, list[int]] = {}
    first_words = {name[0] for name, _ in wanted if name}
    for index, word in enumerate(words):
        if word in first_words:
            places.setdefault(word, []).append(index)
    for name, horse in wanted:
        for start in places.get(name[0], []) if name else []:
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
            found.append((start, start + len(name), horse))
    return sorted(found, key=lambda f: f[0])


def _written_apart(tokens: Tokens, roster: Sequence[RosterHorse], *, cased: bool) -> list[tuple[int, int, RosterHorse]]:
    """ "June Bug" for Junebug: a name of the roster that is written as two words."""
    words = tokens.words
    whole = {name.lower(): horse for horse in roster for name in (horse.name, *horse.also_called) if " " not in name}
    pairs = ((i, whole.get(words[i] + words[i + 1])) for i in range(len(words) - 1) if tokens.large[i] or not cased)
    return [(index, index + 2, horse) for index, horse in pairs if horse is not None]


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
