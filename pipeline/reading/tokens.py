"""Text to spaCy tokens. Hyphens between letters and curly marks are levelled one for one, so offsets stay true."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate, chain
from operator import add
from typing import Any, NamedTuple, cast

import spacy
from spacy.language import Language

_LETTER_HYPHEN = re.compile(r"(?<=[A-Za-z])-(?=[A-Za-z])")
_PLAIN_WORDS = re.compile(r"[a-z]+(?: [a-z]+)*")
_PLAIN_WORD = re.compile(r"([A-Za-z]*[a-z])([,.?!;:]?)")
_LEVELLED = str.maketrans(
    {"’": "'", "‘": "'", "“": '"', "”": '"', "—": ",", "–": ",", "…": ",", "\n": " ", "\t": " ", "‑": "-"}
)
# Words clipped in speech, read as the whole word.
_CLIPPED = {"'em": "them", "em": "them", "'cause": "because", "cos": "because", "'til": "till", "til": "till"}
_PROPERTIES: list[int | str] = ["IDX", "LENGTH", "IS_PUNCT", "IS_STOP"]
SENTENCE_ENDS = frozenset(".?!")
NOT = frozenset({"not", "n't", "never"})  # what turns a verb round


@lru_cache(maxsize=1)
def language() -> Language:
    """A blank English pipeline: the tokenizer and its exceptions, no statistical model to download."""
    return spacy.blank("en")


def level(text: str) -> str:
    """``text`` with look-alike marks made equal; same length, so that spans hold for both."""
    plain = text.isascii() and "\n" not in text and "\t" not in text
    levelled = text if plain else text.translate(_LEVELLED)
    return _LETTER_HYPHEN.sub(" ", levelled) if "-" in levelled else levelled


@dataclass(frozen=True)
class Tokens:
    """A text in tokens, each property a list token by token: asking spaCy for them one at a time is slow.

    ``words`` are what is matched (lower case, clipped words whole), ``texts`` as written, ``lowers`` these in lower
    case; ``starts`` and ``ends`` are offsets in the original text. ``large`` says which begin with a capital, ``marks``
    which are punctuation, ``little`` which are words of the grammar alone.
    """

    text: str
    words: list[str]
    texts: list[str]
    lowers: list[str]
    starts: list[int]
    ends: list[int]
    large: list[bool]
    marks: list[bool]
    little: list[bool]

    def __len__(self) -> int:
        return len(self.words)

    def said(self, start: int, end: int) -> str:
        """The text of the tokens ``[start, end)``, with look-alike marks made equal."""
        end = min(end, len(self.words))
        return self.text[slice(*self.span(start, end))] if start < end else ""

    def span(self, start: int, end: int) -> tuple[int, int]:
        """Where the tokens ``[start, end)``, one or more, stand in the text."""
        return self.starts[start], self.ends[end - 1]


class _Token(NamedTuple):
    """One token of a stretch of text and what ``Tokens`` tells of it; ``start`` and ``end`` count from the stretch."""

    word: str
    text: str
    lower: str
    start: int
    end: int
    large: bool
    mark: bool
    little: bool


def tokenize(text: str) -> Tokens:
    """The tokens of ``text``."""
    levelled = level(text)
    found, offsets = _placed(levelled)
    columns = zip(*found, strict=True) if found else ((),) * len(_Token._fields)
    words, texts, lowers, starts, ends, large, marks, little = map(list, columns)
    starts, ends = list(map(add, starts, offsets)), list(map(add, ends, offsets))
    return Tokens(levelled, words, texts, lowers, starts, ends, large, marks, little)


def _placed(text: str) -> tuple[list[_Token], list[int]]:
    """The tokens of a text, and where the stretch of each begins; spaCy, too, splits each stretch by itself."""
    pieces = text.split(" ")
    if pieces != text.split():  # rows of blanks and other white space have tokens of their own
        tokens = _split(text)
        return list(tokens), [0] * len(tokens)
    splits = list(map(_split_word, pieces))
    begins = accumulate([length + 1 for length in map(len, pieces)], initial=0)
    return list(chain.from_iterable(splits)), [at for at, split in zip(begins, splits, strict=False) for _ in split]


def _split(text: str) -> tuple[_Token, ...]:
    """The tokens of a text as spaCy splits it."""
    properties = language().make_doc(text).to_array(_PROPERTIES).tolist()
    return tuple(_token(text, start, start + length, mark, little) for start, length, mark, little in properties)


def _token(text: str, start: int, end: int, mark: int, little: int) -> _Token:
    told = text[start:end]
    lower = told.lower()
    return _Token(_CLIPPED.get(lower, lower), told, lower, start, end, told[:1].isupper(), bool(mark), bool(little))


@lru_cache(maxsize=16384)  # the same come again with every memo
def _split_word(piece: str) -> tuple[_Token, ...]:
    """The tokens of a stretch without blanks; of a plain word and its mark without spaCy, which takes its time."""
    plain = _PLAIN_WORD.fullmatch(piece)
    if plain is None or not _exceptions().isdisjoint((piece, plain[1])):
        return _split(piece)
    end = len(plain[1])
    word = _token(piece, 0, end, False, plain[1].lower() in language().Defaults.stop_words)
    return (word, _token(piece, end, end + 1, True, False)) if plain[2] else (word,)


@lru_cache(maxsize=1)
def _exceptions() -> frozenset[str]:
    """What the tokenizer splits, or joins, by a rule of its own: "cannot", "dont"."""
    return frozenset(cast(Any, language().tokenizer).rules)


def form_tokens(form: str) -> list[str]:
    """A vocabulary form in lower-case tokens, split just as transcripts are; ``...`` stays one token."""
    return list(_form_tokens(form))


@lru_cache(maxsize=4096)  # a roster's names come again with every memo
def _form_tokens(form: str) -> tuple[str, ...]:
    words = form.split()
    if _PLAIN_WORDS.fullmatch(form) and _exceptions().isdisjoint(words):
        return tuple(_CLIPPED.get(word, word) for word in words)  # nothing to split: most forms and names
    parts: list[str] = []
    for piece in re.split(r"(\.\.\.)", form):
        if piece == "...":
            parts.append("...")
        else:
            parts.extend(word for word in tokenize(piece).words if not word.isspace())
    return tuple(parts)
