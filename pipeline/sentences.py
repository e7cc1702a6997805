"""Sentences put together for a line."""

from __future__ import annotations

from collections.abc import Iterable


def in_a_row(sentences: Iterable[str]) -> str:
    """Sentences behind one another; what does not end in a mark of its own is parted by a semicolon."""
    told = ""
    for sentence in sentences:
        parted = "" if not told else " " if told.endswith((".", "?", "!")) else "; "
        told += parted + sentence
    return told
