"""Text to spaCy tokens. Hyphens between letters and curly marks are levelled one for one, so offsets stay true."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

import spacy
from spacy.language import Language
from spacy.tokens import Doc

_LETTER_HYPHEN = re.compile(r"(?<=[A-Za-z])-(?=[A-Za-z])")
_LEVELLED = str.maketrans(
    {"’": "'", "‘": "'", "“": '"', "”": '"', "—": ",", "–": ",", "…": ",", "\n": " ", "\t": " ", "‑": "-"}
)
SENTENCE_ENDS = frozenset(".?!")


@lru_cache(maxsize=1)
def language() -> Language:
    """A blank English pipeline: the tokenizer and its exceptions, no statistical model to download."""
    return spacy.blank("en")


def level(text: str) -> str:
    """``text`` with look-alike marks made equal; same length, so that spans hold for both."""
    return _LETTER_HYPHEN.sub(" ", text.translate(_LEVELLED))


def tokenize(text: str) -> Doc:
    """The tokens of ``text``; ``token.idx`` is the offset in the original text."""
    return language().make_doc(level(text))


def form_tokens(form: str) -> list[str]:
    """A vocabulary form in lower-case tokens, split just as transcripts are; ``...`` stays one token."""
    parts = []
    for piece in re.split(r"(\.\.\.)", form):
        if piece == "...":
            parts.append("...")
        else:
            parts.extend(token.lower_ for token in language().make_doc(level(piece)) if not token.is_space)
    return parts


def lower_tokens(tokens: Iterable[str]) -> list[str]:
    """Lower-case copies."""
    return [token.lower() for token in tokens]
