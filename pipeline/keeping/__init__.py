"""The store: schema, migrations, the only SQL of the project, originals and history."""

from pipeline.keeping.kept import Found, FoundFact, HistoryEntry, KeptHorse, KeptMemo, KeptVisit, Passage, Wanted
from pipeline.keeping.location import STORE_VARIABLE, store_folder
from pipeline.keeping.meeting_horses import Prefer
from pipeline.keeping.reading_out import Leaving
from pipeline.keeping.store import Store
from pipeline.keeping.taking_in import Taken

__all__ = [
    "STORE_VARIABLE",
    "Found",
    "FoundFact",
    "HistoryEntry",
    "KeptHorse",
    "KeptMemo",
    "KeptVisit",
    "Leaving",
    "Passage",
    "Prefer",
    "Store",
    "Taken",
    "Wanted",
    "store_folder",
]
