"""Names as they are compared, and text as it can be kept."""

from __future__ import annotations

import unicodedata


def name_key(name: str | None) -> str:
    """The form in which two spellings of one name or place are the same: case, accents' encoding and spaces aside."""
    return " ".join(unicodedata.normalize("NFKC", name or "").casefold().split())


def at(place: str | None) -> str:
    """Where a horse stands, as a sentence says it: ``at Quarry Barn``, ``with no place``."""
    return f"at {place}" if place else "with no place"


def keepable(text: str) -> str:
    """``text`` with the halves of characters that a file name may hold, and UTF-8 may not, replaced."""
    return text.encode("utf-8", "replace").decode("utf-8")
