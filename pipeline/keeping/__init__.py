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
from pipeline.keeping.past import PastChange, VisitHistory
from pipeline.keeping.readings import Reading
from pipeline.keeping.store import Store

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
    "Noted",
    "NotedFact",
    "NotedVisit",
    "Passage",
    "PastChange",
    "Reading",
    "Store",
    "VisitHistory",
    "Wanted",
    "store_folder",
]
