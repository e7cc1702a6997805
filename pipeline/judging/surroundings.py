"""A memo's words as judging sees them: where each sentence ends, and which words warn that something may be otherwise.

What the words mean is the reader's matter; here it only counts that they were said close by.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache

from pipeline.record import FEET, Word
from pipeline.vocabulary import Vocabulary, load_vocabulary

_TOKEN = re.compile(r"[a-z0-9½¼¾][a-z0-9'’½¼¾/%°-]*|[.?!,;:…]+")
_ENDS = frozenset(".?!…")
# Words of a clause that stand in nearly every sentence and are in no list of the trade.
_COMMON = frozenset(
  [
    "a", "an", "the", "of", "on", "in", "and", "is", "it", "he", "she", "at", "there", "i", "some", "so", "to",
    "that", "this", "his", "her", "him", "with", "for", "was", "were", "be", "been", "are", "am", "they", "them",
    "we", "you", "my", "me", "but", "or", "if", "as", "by", "from", "up", "down", "out", "off", "over", "then",
    "than", "when", "what", "which", "who", "where", "how", "all", "any", "both", "each", "one", "two", "three",
    "four", "do", "did", "does", "done", "had", "has", "have", "having", "not", "no", "can", "could", "would",
    "will", "won't", "don't", "didn't", "got", "get", "go", "going", "went", "put", "see", "saw", "said", "say",
    "says", "just", "only", "very", "too", "also", "now", "today", "still", "well", "right", "left", "back", "it's",
    "that's", "he's", "she's", "there's", "i'm", "i'll", "i've", "i'd", "he'd", "she'd", "you'd", "they're",
    "we'll", "isn't", "ain't", "wasn't",
  ]
)  # fmt: skip
_JOINERS = frozenset({"and", "the", "a", "on", "in", "of"})
_BARE_CUES = frozenset({"no", "nah", "naw", "about", "call it", "make it", "pardon", "rather", "wrong"})


@dataclass(frozen=True)
class Token:
    """A word or a mark, with its characters in the text."""

    text: str
    start: int
    end: int


@dataclass(frozen=True)
class Cues:
    """Phrases that warn, by kind; every word that some list knows; the words for feet, and which feet they name."""

    phrases: Mapping[str, frozenset[tuple[str, ...]]]
    known: frozenset[str]
    feet: frozenset[str]
    named: Mapping[tuple[str, ...], frozenset[str]]


@lru_cache(maxsize=1)
def shipped_cues() -> Cues:
    """The cues of the shipped vocabulary."""
    return cues_of(load_vocabulary())


def cues_of(vocabulary: Vocabulary) -> Cues:
    """Gather the cues from a vocabulary."""
    taking_back = vocabulary.spoken("taking_back")
    kinds = {
        "correction": [form for form, kind in taking_back.items() if kind in ("repair", "strike", "other_horse")],
        "doubt": [form for form, kind in vocabulary.spoken("doubts").items() if kind != "pseudo"],
        "plan": list(vocabulary.spoken("plans")),
        "earlier": [form for form, kind in vocabulary.spoken("times").items() if kind == "history"],
        "denial": [form for form, kind in vocabulary.spoken("denials").items() if kind != "pseudo"],
    }
    known = {word for entries in vocabulary.classes.values() for e in entries for f in e.spoken for word in f.split()}
    feet = {word for form in vocabulary.spoken("feet") for word in form.split()} & _FOOT_WORDS
    named = {
        tuple(form.split()): _GROUPS.get(foot, frozenset({foot})) for form, foot in vocabulary.spoken("feet").items()
    }
    return Cues({kind: _phrases(forms) for kind, forms in kinds.items()}, frozenset(known), frozenset(feet), named)


_FOOT_WORDS = frozenset(
  [
    "fore", "fores", "front", "fronts", "hind", "hinds", "lf", "rf", "lh", "rh", "behind", "four", "other",
    "others", "near", "off", "left", "right", "feet", "foot",
  ]
)  # fmt: skip


_GROUPS = {
    "fronts": frozenset({"LF", "RF"}),
    "hinds": frozenset({"LH", "RH"}),
    "lefts": frozenset({"LF", "LH"}),
    "rights": frozenset({"RF", "RH"}),
    "all": frozenset(FEET),
}


def _small(text: str) -> str:
    """The text in small letters, each in its place: "İ" has two of them, which would move all behind it."""
    return "".join(small if len(small := letter.lower()) == 1 else letter for letter in text)


def bare(word: Word) -> str:
    """A word without the marks around it, in small letters."""
    return word.text.strip(" ,.?!").lower()


_NUMBERS = frozenset(
    ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "half"]
)


def is_number(word: str) -> bool:
    """Whether a word is a number, in digits or letters."""
    return word[:1].isdigit() or word in _NUMBERS


def _phrases(forms: Iterable[str]) -> frozenset[tuple[str, ...]]:
    return frozenset(tuple(form.split()) for form in forms if "..." not in form)


class Surroundings:
    """One memo's words; every place is counted in tokens."""

    def __init__(self, text: str, cues: Cues | None = None) -> None:
        self._cues = cues or shipped_cues()
        self.tokens = [Token(m.group().replace("’", "'"), m.start(), m.end()) for m in _TOKEN.finditer(_small(text))]
        self._starts = [token.start for token in self.tokens]
        self._words = [token.text for token in self.tokens]
        self._sentence = self._number_sentences()
        self._cue_at = {kind: self._find(phrases) for kind, phrases in self._cues.phrases.items()}
        self._cue_at["correction"] = [place for place in self._cue_at["correction"] if self._corrects(*place)]
        self._feet_at = [i for i, word in enumerate(self._words) if word in self._cues.feet]

    def _number_sentences(self) -> list[int]:
        numbers, now = [], 0
        for token in self.tokens:
            numbers.append(now)
            now += token.text[0] in _ENDS
        return numbers

    def _find(self, phrases: frozenset[tuple[str, ...]]) -> list[tuple[int, int]]:
        longest = max((len(phrase) for phrase in phrases), default=0)
        found, i = [], 0
        while i < len(self._words):
            size = next((n for n in range(longest, 0, -1) if tuple(self._words[i : i + n]) in phrases), 0)
            if size:
                found.append((i, i + size))
            i += max(1, size)
        return found

    def _corrects(self, start: int, end: int) -> bool:
        """ "No" and a few more only take back between marks: "size one, no, two", never "no thrush"."""
        if " ".join(self._words[start:end]) not in _BARE_CUES:
            return True
        before = self._words[start - 1] if start else "."
        after = self._words[end] if end < len(self._words) else "."
        return not before[0].isalnum() and not after[0].isalnum()

    def place(self, span: tuple[int, int]) -> tuple[int, int]:
        """The tokens of a span of characters, at least one where there are any."""
        first = bisect_left(self._starts, span[0])
        last = bisect_left(self._starts, max(span[1], span[0] + 1))
        return first, max(last, first + 1)

    def before(self, kind: str, first: int) -> int | None:
        """Words from the last cue of a kind that begins before ``first``; None without one."""
        ends = [end for start, end in self._cue_at[kind] if start < first]
        return max(0, first - ends[-1]) if ends else None

    def after(self, kind: str, last: int) -> int | None:
        """Words from ``last`` to the next cue of a kind; None without one."""
        return next((start - last for start, _ in self._cue_at[kind] if start >= last), None)

    def within(self, kind: str, first: int, last: int) -> bool:
        """Whether a cue of a kind begins in ``[first, last)``."""
        return any(first <= start < last for start, _ in self._cue_at[kind])

    def cue_words(self, kind: str, first: int, last: int, reach: int) -> str | None:
        """The cue of a kind nearest to ``[first, last)`` within ``reach`` words, as it was said."""
        near = [(max(start - last, first - end, 0), start, end) for start, end in self._cue_at[kind]]
        near = [one for one in near if one[0] <= reach]
        if not near:
            return None
        _, start, end = min(near)
        return " ".join(self._words[start:end])

    def sentences_from(self, place: int, other: int) -> int:
        """How many sentences lie between two places."""
        return abs(self._sentence[min(place, len(self._sentence) - 1)] - self._sentence[other])

    def foot_before(self, last: int) -> int | None:
        """Words from the last word of a foot that begins before ``last``; None when no foot was said yet."""
        behind = [place for place in self._feet_at if place < last]
        return last - 1 - behind[-1] if behind else None

    def sentence_of(self, place: int) -> tuple[int, int]:
        """The tokens of the sentence that holds ``place``."""
        if not self.tokens:
            return 0, 0
        number = self._sentence[min(place, len(self._sentence) - 1)]
        return bisect_left(self._sentence, number), bisect_left(self._sentence, number + 1)

    def unknown(self, first: int, last: int) -> list[str]:
        """The words in ``[first, last)`` that no list of the trade and none of common little words knows."""
        words = self._words[first:last]
        return [w for w in words if w[0].isalpha() and w not in self._cues.known and w not in _COMMON]

    def unlisted(self, places: Iterable[int]) -> list[str]:
        """The words at these places that no list of the trade knows, common little words among them."""
        return [self._words[place] for place in places if self._words[place] not in self._cues.known]

    def feet_named(self, first: int, last: int) -> frozenset[str]:
        """The feet that are named in ``[first, last)`` by side and end, or all four; "the other" names none."""
        named = [self._cues.named[tuple(self._words[start:end])] for start, end in self.feet_words(first, last)]
        return frozenset(FEET) & frozenset().union(*named)

    def feet_words(self, first: int, last: int) -> list[tuple[int, int]]:
        """The places in ``[first, last)`` of words that stand for feet, "all four" and "the other" among them."""
        found = []
        at, longest = first, max(map(len, self._cues.named), default=0)
        while at < last:
            reach = range(min(longest, last - at), 0, -1)
            size = next((n for n in reach if tuple(self._words[at : at + n]) in self._cues.named), 0)
            if size:
                found.append((at, at + size))
            at += max(1, size)
        return found

    @cached_property
    def named_feet(self) -> list[tuple[int, int, frozenset[str]]]:
        """Every place of words for feet in the memo with the feet that they name; "the other" names none."""
        found = self.feet_words(0, len(self.tokens))
        return [(start, end, self._cues.named[tuple(self._words[start:end])] & frozenset(FEET)) for start, end in found]

    def unread(self, first: int, last: int, read: Collection[int]) -> int:
        """How many words in ``[first, last)`` belong to no fact (``read`` are the places of facts), joiners aside."""
        free = [self._words[i] for i in range(first, last) if i not in read]
        return sum(1 for word in free if word[0].isalpha() and word not in _JOINERS)
