"""Text to spaCy tokens. Hyphens between letters and curly marks are levelled one for one, so offsets stay true."""

from __future__ import annotations

import re
from functools import lru_cache

import spacy
from spacy.language import Language
from spacy.tokens import Doc

_LETTER_HYPHEN = re.compile(r"(?<=[A-Za-z])-(?=[A-Za-z])")
_LEVELLED = str.maketrans(
    {"’": "'", "‘": "'", "“": '"', "”": '"', "—": ",", "–": ",", "…": ",", "\n": " ", "\t": " ", "‑": "-"}
)
# Words clipped in speech, read as the whole word.
_CLIPPED = {"'em": "them", "em": "them", "'cause": "because", "cos": "because", "'til": "till", "til": "till"}
SENTENCE_ENDS = frozenset(".?!")


@lru_cache(maxsize=1)
def language() -> Language:
    """A blank English pipeline: the tokenizer and its exceptions, no statistical model to download."""
    return spacy.blank("en")


def level(text: str) -> str:
    """``text`` with look-alike marks made equal; same length, so that spans hold for both."""
    return _LETTER_HYPHEN.sub(" ", text.translate(_LEVELLED))


def tokenize(text: str) -> Doc:
    """The tokens of ``text``; ``token.idx`` is the offset in the original text, ``token.norm_`` what is matched."""
    doc = language().make_doc(level(text))
    for token in doc:
        lower = token.lower_
        token.norm_ = _CLIPPED.get(lower, lower)  # else the tokenizer's own norm: "not" for "n't"
    return doc


def form_tokens(form: str) -> list[str]:
    """A vocabulary form in lower-case tokens, split just as transcripts are; ``...`` stays one token."""
    return list(_form_tokens(form))


@lru_cache(maxsize=4096)  # a roster's names come again with every memo
def _form_tokens(form: str) -> tuple[str, ...]:
    parts: list[str] = []
    for piece in re.split(r"(\.\.\.)", form):
        if piece == "...":
            parts.append("...")
        else:
            parts.extend(token.norm_ for token in tokenize(piece) if not token.is_space)
    return tuple(parts)
