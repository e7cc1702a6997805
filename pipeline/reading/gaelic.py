"""Irish and Scottish Gaelic names, spelled as an English ear writes them: Niamh, Neev; Dearbhla, Darvla; Aoife, Eefa.

The spelling rules are from memory: lenited b and m sound v, d and g between vowels fall silent, s beside e or i is sh.
"""

from __future__ import annotations

import re
from functools import lru_cache

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


@lru_cache(maxsize=4096)
def as_sounded(name: str) -> str | None:
    """A Gaelic name, in small letters without marks, as it sounds to an English ear; None for any other name."""
    if not _GAELIC.search(name):
        return None
    for pattern, heard in _SOUNDS:
        name = pattern.sub(heard, name)
    return name
