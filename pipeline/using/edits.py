"""Corrections in words: who changed what, when and why."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from pipeline.keeping import KeptVisit, Leaving
from pipeline.keeping.decided import Decided
from pipeline.keeping.record_file import ChangeOnFile
from pipeline.record import Fact
from pipeline.using.wording import FOOT_NAMES, fact_words

# Spellings for comparing and weights of evidence mean nothing to a reader.
_INNER = frozenset({"name_key", "place_key", "confidence", "reasons", "heard_key"})
_COLUMNS = {
    "horse_match": "how sure the horse's name is",
    "flagged": "to be looked at",
    "settled": "confirmed by a person",
    "horse": "whose visit it was",
}
_STANDS = "in the record"
_YES_OR_NO = frozenset({"flagged", "settled"})


@dataclass(frozen=True)
class Edit:
    """One correction. ``about`` says of what, as it stands now; old and new are in words."""

    at: datetime
    who: str
    about: str
    column: str
    old: str
    new: str
    why: str

    @property
    def told(self) -> str:
        """The correction in a sentence: ``corn: entered by hand``, ``shoe size 2: value from 1 to 2``."""
        if self.column == _STANDS:
            return f"{self.about}: {self.new.partition(', ')[2]}"
        return f"{self.about}: {self.column} from {self.old} to {self.new}"


def edits(leaving: Leaving, visits: Sequence[KeptVisit], redact: bool) -> list[Edit]:
    """The corrections to these visits and their facts, those that were entered by hand and those that were dropped,
    oldest first; redacted, without who, why and notes."""
    made = [*_corrections(leaving.history, leaving.memo_rows, visits, redact), *map(_decision, leaving.decided)]
    made = [replace(edit, who="", why="") for edit in made] if redact else made
    return sorted(made, key=lambda edit: edit.at)


def _decision(decided: Decided) -> Edit:
    about = _fact_about(decided.visit, decided.fact.fact)
    old, new = ("yes", "no, dropped") if decided.dropped else ("no", "yes, entered by hand")
    return Edit(decided.at, decided.who, about, _STANDS, old, new, decided.why)


def _corrections(
    history: Sequence[ChangeOnFile], memo_rows: Sequence[int], visits: Sequence[KeptVisit], redact: bool
) -> list[Edit]:
    memos = [[visit for visit in visits if visit.memo.id == row] for row in memo_rows]
    found = []
    for change in history:
        if change.what not in ("visit", "fact") or change.column in _INNER or (redact and change.column == "notes"):
            continue
        about = _about(change, memos)
        if about:
            column = _COLUMNS.get(change.column, change.column.replace("_", " "))
            old, new = _words(change.column, change.old), _words(change.column, change.new)
            found.append(Edit(change.at, change.who, about, column, old, new, change.why))
    return found


def _about(change: ChangeOnFile, memos: Sequence[Sequence[KeptVisit]]) -> str | None:
    if change.memo is None or change.visit is None or change.memo >= len(memos):
        return None
    in_order = sorted(memos[change.memo], key=lambda visit: visit.memo.visit_ids.index(visit.id))
    visit = in_order[change.visit]
    return _visit_about(visit) if change.fact is None else _fact_about(visit, visit.visit.facts[change.fact])


def _visit_about(visit: KeptVisit) -> str:
    return f"visit of {visit.visit.date.isoformat()}"


def _fact_about(visit: KeptVisit, fact: Fact) -> str:
    return f"{_visit_about(visit)}, {FOOT_NAMES[fact.foot]}: {fact_words(fact)}"


def _words(column: str, value: str | float | None) -> str:
    if column == "horse":
        return "nobody yet" if value is None else "this horse"
    if column in _YES_OR_NO:
        return "yes" if value else "no"
    if value is None:
        return "nothing"
    return value.replace("_", " ") if isinstance(value, str) else f"{value:g}"
