"""The trade's terms among the words: which words are the trade's, and which terms and names a text has."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spacy.lang.en.stop_words import STOP_WORDS

from pipeline.vocabulary import Vocabulary
from tests.bench.hearing.words import plain

# Classes whose every form is the trade's; of the talkative ones only the first form of each entry is.
_TECHNICAL = (
    *("findings", "shoe_types", "shoe_materials", "work", "shoe_states", "pads", "packings", "treatments"),
    *("clips", "traction", "feet", "zones", "measures", "tester_heads", "pulse_heads", "nail_line_heads"),
)
_TALKATIVE = ("pulses", "tester_responses", "gaits", "manners", "vet", "warmths")
_LONGEST_FORM = 2  # longer forms are made of everyday words too
_SIZES = ("aught", "aughts", "double", "triple", "quadruple")
# Stop words of English that say which foot or where.
_TRADES = frozenset({"front", "back", "side", "left", "right", *_SIZES})


@dataclass(frozen=True)
class Terms:
    """Trade terms as tuples of levelled words, the longest first for each first word, and the words in them."""

    forms: frozenset[tuple[str, ...]]
    words: frozenset[str]

    def in_text(self, text: Sequence[str]) -> Counter[tuple[str, ...]]:
        """How often each term is in ``text``; the longest wins, and no word belongs to two."""
        return _occurrences(text, self.forms)


def trade_terms(vocabulary: Vocabulary) -> Terms:
    """The terms that facts are made of; their words are those of the short terms, English stop words left out."""
    forms = {plain(form) for name in _TECHNICAL for entry in vocabulary.entries(name) for form in entry.spoken}
    forms |= {plain(entry.spoken[0]) for name in _TALKATIVE for entry in vocabulary.entries(name) if entry.spoken}
    short = {form for form in forms if len(form) <= _LONGEST_FORM}
    words = {word for form in short for word in form if _is_trade(word)} | _TRADES
    return Terms(frozenset(form for form in forms if words.intersection(form)), frozenset(words))


def _is_trade(word: str) -> bool:
    return len(word) > 2 and "'" not in word and word not in STOP_WORDS


def names_in(text: Sequence[str], names: Iterable[str]) -> Counter[tuple[str, ...]]:
    """How often each name of a roster is in ``text``, also with what is short for "is", "has" or belongs to it."""
    told = [word.removesuffix("'s") for word in text]
    forms = (tuple(word.removesuffix("'s") for word in plain(name)) for name in names)
    return _occurrences(told, frozenset(filter(None, forms)))


def recalled(said: Counter[tuple[str, ...]], heard: Counter[tuple[str, ...]]) -> int:
    """How many of what was said were heard."""
    return sum((said & heard).values())


def _occurrences(text: Sequence[str], forms: frozenset[tuple[str, ...]]) -> Counter[tuple[str, ...]]:
    longest = max(map(len, forms), default=0)
    found: Counter[tuple[str, ...]] = Counter()
    at = 0
    while at < len(text):
        here = (tuple(text[at : at + n]) for n in range(min(longest, len(text) - at), 0, -1))
        form = next((f for f in here if f in forms), None)
        if form is not None:
            found[form] += 1
        at += len(form) if form is not None else 1
    return found
