"""Small helps of the frames: capitals, the words that stand for "...", degree words inside a form."""

from __future__ import annotations

import re
from dataclasses import dataclass

from tests.generator.facts import OPEN, Gold

_DEGREE = re.compile(
    r"\b(bit|little|touch|very|slight\w*|small|mild\w*|too|badly|bad|really|severe\w*|light|fairly|pretty|quite|minor|"
    r"hairline|hair line|surface|superficial|strong\w*|acute|paper|deep|poor|hot|extensive|partial|low grade)\b"
)
_CAPITALS = re.compile(
    r"\b(i|january|february|april|june|july|august|september|october|november|december|christmas|easter|thanksgiving|"
    r"monday|tuesday|wednesday|thursday|friday|saturday|sunday|(?<=in )(?:march|may))\b"
)
_MANY = re.compile(
    r"\b(shoes|them|those|they|they're|pair|feet|both|ones|trims|resets|removes|refits|forelegs|walls)\b"
)


@dataclass(frozen=True)
class Framed:
    """The sentences of a frame and what they say."""

    text: str
    facts: tuple[Gold, ...]


def sentence(text: str) -> str:
    """A capital in front and a full stop behind, and capitals where English has them within."""
    text = _CAPITALS.sub(lambda match: match[0][0].upper() + match[0][1:], text)
    return f"{text[0].upper()}{text[1:]}."


def filled(form: str, filling: str = "really") -> str:
    """The form with plain words in the place of its "..."."""
    return form.replace("...", filling)


def degree(form: str) -> str | None:
    """The severity of a form with no degree word said beside it: none, or open when the form holds such a word."""
    return OPEN if _DEGREE.search(form) else None


def plural(form: str) -> bool:
    """Whether a form speaks of more than one shoe or foot."""
    return bool(_MANY.search(form))
