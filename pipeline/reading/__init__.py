"""Words in, facts out: the grammar of a farrier's speech."""

from pipeline.reading.reader import Reader

__all__ = ["Reader"]
