"""The night review: what is doubtful, put before a tired man one field at a time, the most harmful first."""

from pipeline.using.review.items import Item, ItemKind
from pipeline.using.review.session import Done, Review

__all__ = ["Done", "Item", "ItemKind", "Review"]
