"""The store: schema, migrations, the only SQL of the project, originals and history."""

from pipeline.keeping.kept import Found, FoundFact, HistoryEntry, KeptHorse, KeptMemo, KeptVisit, Passage, Wanted
from pipeline.keeping.location import STORE_VARIABLE, store_folder
from pipeline.keeping.store import Store

__all__ = [
    "STORE_VARIABLE",
    "Found",
    "FoundFact",
    "HistoryEntry",
    "KeptHorse",
    "KeptMemo",
    "KeptVisit",
    "Passage",
    "Store",
    "Wanted",
    "store_folder",
]
