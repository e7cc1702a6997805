"""How alike two names are, by spelling and by sound, also Gaelic ones as an English ear writes them: Niamh, Neev.

The Gaelic rules are from memory: lenited b and m sound v, d and g between vowels fall silent, s beside e or i is sh.
"""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

import jellyfish
from rapidfuzz import fuzz

_SHORTEST, _CUT_OFF = 3, 4  # letters that a short name has at least, and that it leaves out at most
_SHORTENED = 0.8
_LETTERS = re.compile(r"[^a-z]")
_GAELIC = re.compile(
    r"bh|mh|dh|fh|ao|uai|ionn|ainn|oirs|isin$|isli|io[bdfs]|eoi|iar|^ci[aeo]|^si[on]|^sea[mn]|^sile$|^eime|idh|aigh|ichea"
)
# In this order; each is a pattern and what an English ear hears.
_SOUNDS = tuple(
    (re.compile(pattern), heard)
    for pattern, heard in (
        (r"^mh|bhf|bh|mh", "v"),
        (r"aidh$|aigh$|idh$|igh$", "ee"),
        (r"iadh$", "ia"),
        (r"adh(?=[^aeiou])", "y"),
        (r"(?<=[aeiou])(?:dh|gh)", ""),
        (r"fh", ""),
        (r"th$", ""),
        (r"th", "h"),
        (r"s(?=[ei])|(?<=i)s(?=[^aou])|(?<=ir)s", "sh"),
        (r"ch", "k"),
        (r"c", "k"),
        (r"aoi|ao", "ee"),
        (r"ia(?=.)|io", "ee"),
        (r"uai|ua", "oo"),
        (r"(?<=sh)ea", "ay"),
        (r"ea|ai", "a"),
        (r"eo|oi", "o"),
        (r"ui", "i"),
        (r"ei", "e"),
        (r"in$", "een"),
        (r"e$", "a"),
    )
)


@lru_cache(maxsize=8192)
def sound_code(name: str) -> str:
    """The Metaphone code (Philips 1990) of a name, spaces left out."""
    return str(jellyfish.metaphone(_LETTERS.sub("", name.lower())))


def _short_for(one: str, other: str) -> bool:
    """ "Fia" for Fiadh, "Star" for Starling: the first of the two begins the second."""
    return len(one) >= _SHORTEST and other.startswith(one) and len(other) - len(one) <= _CUT_OFF


def _plain(name: str) -> str:
    """Small letters only, marks left out: "Róisín" is roisin."""
    return _LETTERS.sub("", unicodedata.normalize("NFD", name.lower()))


def likeness(one: str, other: str) -> float:
    """0-1: the better of spelling alone and of spelling and Metaphone code together.

    A Gaelic name is also compared as it sounds: "Neeve" is Niamh.
    """
    a, b = _plain(one), _plain(other)
    if not a or not b:
        return 0.0
    if a == b:
        return 1.0
    if _short_for(a, b):
        return _SHORTENED
    sounded = [(as_sounded(a), b), (a, as_sounded(b))]
    return max(_alike(x, y) for x, y in [(a, b), *sounded] if x is not None and y is not None)


def _alike(a: str, b: str) -> float:
    spelling = fuzz.ratio(a, b) / 100
    sound = fuzz.ratio(sound_code(a), sound_code(b)) / 100
    return max(spelling, 0.45 * spelling + 0.55 * sound) * 0.99


@lru_cache(maxsize=4096)
def as_sounded(name: str) -> str | None:
    """A Gaelic name, in small letters without marks, as it sounds to an English ear; None for any other name."""
    if not _GAELIC.search(name):
        return None
    for pattern, heard in _SOUNDS:
        name = pattern.sub(heard, name)
    return name
