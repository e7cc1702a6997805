"""Text to spaCy tokens. Hyphens between letters and curly marks are levelled one for one, so offsets stay true."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, cast

import spacy
from spacy.language import Language
from spacy.tokens import Doc

_LETTER_HYPHEN = re.compile(r"(?<=[A-Za-z])-(?=[A-Za-z])")
_PLAIN_WORDS = re.compile(r"[a-z]+(?: [a-z]+)*")
_LEVELLED = str.maketrans(
    {"’": "'", "‘": "'", "“": '"', "”": '"', "—": ",", "–": ",", "…": ",", "\n": " ", "\t": " ", "‑": "-"}
)
# Words clipped in speech, read as the whole word.
_CLIPPED = {"'em": "them", "em": "them", "'cause": "because", "cos": "because", "'til": "till", "til": "till"}
_PROPERTIES: list[int | str] = ["IDX", "LENGTH", "LOWER", "NORM", "IS_PUNCT", "IS_STOP"]
SENTENCE_ENDS = frozenset(".?!")


@lru_cache(maxsize=1)
def language() -> Language:
    """A blank English pipeline: the tokenizer and its exceptions, no statistical model to download."""
    return spacy.blank("en")


def level(text: str) -> str:
    """``text`` with look-alike marks made equal; same length, so that spans hold for both."""
    return _LETTER_HYPHEN.sub(" ", text.translate(_LEVELLED))


@dataclass(frozen=True)
class Tokens:
    """A text in tokens, each property a list token by token: asking spaCy for them one at a time is slow.

    ``words`` are what is matched (lower case, clipped words whole), ``texts`` as written, ``lowers`` these in lower
    case; ``starts`` and ``ends`` are offsets in the original text. ``large`` says which begin with a capital, ``marks``
    which are punctuation, ``little`` which are words of the grammar alone. ``doc`` is for spaCy's matchers.
    """

    doc: Doc
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


def tokenize(text: str) -> Tokens:
    """The tokens of ``text``."""
    levelled = level(text)
    doc = language().make_doc(levelled)
    starts, lengths, lower, norm, marks, little = doc.to_array(_PROPERTIES).T.tolist()
    ends = [start + length for start, length in zip(starts, lengths, strict=True)]
    texts = [levelled[start:end] for start, end in zip(starts, ends, strict=True)]
    lowers = [text.lower() for text in texts]
    words = [_CLIPPED.get(word, word) for word in lowers]
    for index, word in enumerate(words):
        if norm[index] != lower[index] or word != lowers[index]:
            doc[index].norm_ = word  # else the tokenizer's own norm: "not" for "n't"
    large = [text[:1].isupper() for text in texts]
    return Tokens(
        doc, levelled, words, texts, lowers, starts, ends, large, list(map(bool, marks)), list(map(bool, little))
    )


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
