"""The store: schema, migrations, the only SQL of the project, originals and history."""

from pipeline.keeping.changes import Change, ChangeKind, Noted, NotedFact, NotedVisit
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.kept import (
    Found,
    FoundFact,
    HistoryEntry,
    KeptFact,
    KeptFlag,
    KeptHorse,
    KeptMemo,
    KeptVisit,
    Passage,
    Wanted,
)
from pipeline.keeping.location import STORE_VARIABLE, store_folder
from pipeline.keeping.meeting_horses import Prefer
from pipeline.keeping.past import PastChange, VisitHistory
from pipeline.keeping.reading_out import Leaving
from pipeline.keeping.readings import Reading
from pipeline.keeping.store import Store
from pipeline.keeping.taking_in import Taken

__all__ = [
    "STORE_VARIABLE",
    "Change",
    "ChangeKind",
    "FactFields",
    "Found",
    "FoundFact",
    "HistoryEntry",
    "KeptFact",
    "KeptFlag",
    "KeptHorse",
    "KeptMemo",
    "KeptVisit",
    "Leaving",
    "Noted",
    "NotedFact",
    "NotedVisit",
    "Passage",
    "PastChange",
    "Prefer",
    "Reading",
    "Store",
    "Taken",
    "VisitHistory",
    "Wanted",
    "store_folder",
]
