"""Corrections in words: who changed what, when and why."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from pipeline.keeping import KeptVisit
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


def edits(
    history: Sequence[ChangeOnFile], memo_rows: Sequence[int], visits: Sequence[KeptVisit], redact: bool
) -> list[Edit]:
    """The corrections to these visits and their facts, oldest first; redacted, without who, why and notes.

    ``memo_rows`` are the rows of the memos that ``history`` counts.
    """
    memos = [[visit for visit in visits if visit.memo.id == row] for row in memo_rows]
    found = []
    for change in history:
        if change.what not in ("visit", "fact") or change.column in _INNER or (redact and change.column == "notes"):
            continue
        about = _about(change, memos)
        if about:
            who, why = ("", "") if redact else (change.who, change.why)
            column = _COLUMNS.get(change.column, change.column.replace("_", " "))
            old, new = _words(change.column, change.old), _words(change.column, change.new)
            found.append(Edit(change.at, who, about, column, old, new, why))
    return found


def _about(change: ChangeOnFile, memos: Sequence[Sequence[KeptVisit]]) -> str | None:
    if change.memo is None or change.visit is None or change.memo >= len(memos):
        return None
    in_order = sorted(memos[change.memo], key=lambda visit: visit.memo.visit_ids.index(visit.id))
    visit = in_order[change.visit]
    day = f"visit of {visit.visit.date.isoformat()}"
    if change.fact is None:
        return day
    fact: Fact = visit.visit.facts[change.fact]
    return f"{day}, {FOOT_NAMES[fact.foot]}: {fact_words(fact)}"


def _words(column: str, value: str | float | None) -> str:
    if column == "horse":
        return "nobody yet" if value is None else "this horse"
    if column in _YES_OR_NO:
        return "yes" if value else "no"
    if value is None:
        return "nothing"
    return value.replace("_", " ") if isinstance(value, str) else f"{value:g}"
