"""How alike two wordings sound, whatever their letters and spaces: "an o com" and "oakum"."""

from __future__ import annotations

import re
from functools import lru_cache

import jellyfish
from rapidfuzz import fuzz

_LETTERS = re.compile(r"[^a-z]")
# Sounds that recognisers mix up most: voiced and unvoiced pairs, and "th".
_LEVELLED = str.maketrans({"0": "T", "J": "X", "V": "F", "B": "P", "D": "T", "G": "K", "Z": "S"})
_BY_CODE = 0.6  # the rest by spelling, which knows vowels


@lru_cache(maxsize=16384)
def spoken_code(wording: str) -> str:
    """The Metaphone code (Philips 1990) of a wording as one word, with voiced and unvoiced consonants alike."""
    code = str(jellyfish.metaphone(letters(wording)))
    if code[:1] in ("A", "E", "I", "O", "U"):
        code = "A" + code[1:]
    return code.translate(_LEVELLED)


@lru_cache(maxsize=16384)
def letters(wording: str) -> str:
    """The lower-case letters alone."""
    return _LETTERS.sub("", wording.lower())


def alike(one: str, other: str) -> float:
    """0-1: mostly by code, partly by spelling; 0 when either has nothing to pronounce."""
    a, b = spoken_code(one), spoken_code(other)
    if not a or not b:
        return 0.0
    return (_BY_CODE * fuzz.ratio(a, b) + (1 - _BY_CODE) * fuzz.ratio(letters(one), letters(other))) / 100
