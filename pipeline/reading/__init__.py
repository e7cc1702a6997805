"""Words in, facts out: the grammar of a farrier's speech."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pipeline.reading.reader import Reader

__all__ = ["Reader"]


def __getattr__(name: str) -> object:
    """The reader loads a grammar library; whoever compares two names by sound does not wait for it."""
    if name == "Reader":
        from pipeline.reading.reader import Reader

        return Reader
    raise AttributeError(name)
