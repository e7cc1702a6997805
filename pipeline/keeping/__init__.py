"""The store: schema, migrations, the only SQL of the project, originals and history.

Names load when they are first used, so that looking things up need not load what keeping a memo needs.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pipeline.keeping.changes import Change, ChangeKind, Noted, NotedFact, NotedVisit
    from pipeline.keeping.correcting import FactFields
    from pipeline.keeping.kept import HistoryEntry, KeptFact, KeptFlag, KeptHorse, KeptMemo, KeptVisit
    from pipeline.keeping.location import STORE_VARIABLE, store_folder
    from pipeline.keeping.looking import Looking
    from pipeline.keeping.meeting_horses import Prefer
    from pipeline.keeping.past import PastChange, VisitHistory
    from pipeline.keeping.reading_out import Leaving
    from pipeline.keeping.readings import Reading
    from pipeline.keeping.seen import Found, FoundFact, Passage, SeenFact, Wanted
    from pipeline.keeping.store import Store
    from pipeline.keeping.taking_in import Taken

_HOMES = {
    "changes": ("Change", "ChangeKind", "Noted", "NotedFact", "NotedVisit"),
    "correcting": ("FactFields",),
    "kept": ("HistoryEntry", "KeptFact", "KeptFlag", "KeptHorse", "KeptMemo", "KeptVisit"),
    "location": ("STORE_VARIABLE", "store_folder"),
    "looking": ("Looking",),
    "meeting_horses": ("Prefer",),
    "past": ("PastChange", "VisitHistory"),
    "reading_out": ("Leaving",),
    "readings": ("Reading",),
    "seen": ("Found", "FoundFact", "Passage", "SeenFact", "Wanted"),
    "store": ("Store",),
    "taking_in": ("Taken",),
}
_HOME_OF = {name: home for home, names in _HOMES.items() for name in names}

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
    "Looking",
    "Noted",
    "NotedFact",
    "NotedVisit",
    "Passage",
    "PastChange",
    "Prefer",
    "Reading",
    "SeenFact",
    "Store",
    "Taken",
    "VisitHistory",
    "Wanted",
    "store_folder",
]


def __getattr__(name: str) -> object:
    """A public name, from the module that it lives in."""
    if name not in _HOME_OF:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_HOME_OF[name]}"), name)
