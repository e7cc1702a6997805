"""What a search found, as a table for a person and as values for a program."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice
from typing import TYPE_CHECKING

from pipeline.keeping.seen import Found, FoundFact, Passage
from pipeline.sentences import in_a_row
from pipeline.terms import Status
from pipeline.using.cells import Cell, csv_text
from pipeline.using.columns import plain, row_lines, table
from pipeline.using.wording import SIGN, fact_words

if TYPE_CHECKING:
    from pipeline.keeping.counting import Count

_SENSES = {
    Status.PRESENT: "Seen or done",
    Status.SUSPECTED: "Only suspected",
    Status.RESOLVED: "Gone",
    Status.HISTORY: "Said of an earlier time",
    Status.PLANNED: "Planned",
    Status.ABSENT: "Denied",
}
CSV_COLUMNS = (
    "date", "horse", "assigned", "owner", "place", "visit", "foot", "slot", "value", "zone", "status", "severity",
    "in_words", "confidence", "flagged", "reasons", "quote", "start_s", "end_s", "memo_file",
)  # fmt: skip


def found_lines(found: Found) -> list[str]:
    """A table of 80 columns, a find a row: day, horse, foot (``--`` for the whole horse), what was said, the visit.

    What was seen, only suspected, said to be gone, planned or denied stands apart, each newest first. ``(?)`` after a
    horse's name marks a visit that is not assigned to a horse yet, ``(!)`` a fact that nobody has looked at yet.
    """
    senses = {status: [_fact_row(hit) for hit in found.facts if hit.fact.status is status] for status in _SENSES}
    groups = {_SENSES[status]: rows for status, rows in senses.items() if rows}
    if found.passages:
        groups["Other words of memos and notes"] = [_passage_row(passage) for passage in found.passages]
    if not groups:
        return []
    rows = [row for rows in groups.values() for row in rows]
    head, *told = row_lines(("date", "horse", "foot", "what was said", "visit"), rows, wrapped=3, right=(4,))
    lines, rest = list(head), iter(told)
    for name, rows in groups.items():
        lines += [name] if len(groups) > 1 else []
        lines += [line for own in islice(rest, len(rows)) for line in own]
    return lines


def found_json(found: Found) -> dict[str, object]:
    """The finds as JSON values: ``facts``, ``passages``, and ``more`` when the limit cut them off."""
    return {
        "facts": [_fact_json(hit) for hit in found.facts],
        "passages": [_passage_json(passage) for passage in found.passages],
        "more": found.more,
    }


def found_csv(found: Found) -> str:
    """The facts found, one a row under CSV_COLUMNS; passages are words of no fact and are not in it."""
    return csv_text(CSV_COLUMNS, map(_cells, found.facts))


def _cells(hit: FoundFact) -> tuple[Cell, ...]:
    fact = hit.fact
    return (
        hit.date.isoformat(), hit.horse, hit.assigned, hit.owner, hit.place, hit.visit_id,
        fact.foot, fact.slot, fact.value, fact.zone, fact.status.value, fact.severity and fact.severity.value,
        fact_words(fact), fact.confidence, fact.flagged, in_a_row(fact.reasons), fact.quote,
        fact.start, fact.end, hit.file_name,
    )  # fmt: skip


def count_lines(counts: Sequence[Count], by: str) -> list[str]:
    """A table of counts: how many of the facts are only suspected, and how many nobody has looked at yet."""
    rows = [
        tuple(map(str, (count.key, count.facts, count.suspected, count.visits, count.horses, count.flagged)))
        for count in counts
    ]
    head = (by, "facts", "perhaps", "visits", "horses", f"not looked at {SIGN}")
    return table(head, rows, wrapped=0, right=(1, 2, 3, 4, 5)) if rows else []


def count_json(counts: Sequence[Count], by: str) -> dict[str, object]:
    """The counts as JSON values."""
    return {"by": by, "counts": [_count_values(count) for count in counts]}


def count_csv(counts: Sequence[Count], by: str) -> str:
    """The counts as rows."""
    columns = (by, "facts", "suspected", "visits", "horses", "flagged")
    return csv_text(columns, (_count_values(count).values() for count in counts))


def _count_values(count: Count) -> dict[str, str | int]:
    return {
        "key": count.key,
        "facts": count.facts,
        "suspected": count.suspected,
        "visits": count.visits,
        "horses": count.horses,
        "flagged": count.flagged,
    }


def _fact_row(hit: FoundFact) -> tuple[str, ...]:
    horse = f"{hit.horse or 'unknown horse'}{'' if hit.assigned else ' (?)'}"
    sign = f"{SIGN} " if hit.fact.flagged else ""
    return (hit.date.isoformat(), horse, hit.fact.foot or "--", f"{sign}{fact_words(hit.fact)}", str(hit.visit_id))


def _passage_row(passage: Passage) -> tuple[str, ...]:
    said = f"{passage.where}: {plain(passage.text)}"
    return (passage.date.isoformat(), passage.horse or "unknown horse", "", said, str(passage.visit_id))


def _fact_json(hit: FoundFact) -> dict[str, object]:
    return {
        **hit.fact.as_json(),
        "visit": hit.visit_id,
        "date": hit.date.isoformat(),
        "horse": hit.horse,
        "assigned": hit.assigned,
        "owner": hit.owner,
        "place": hit.place,
        "file_name": hit.file_name,
    }


def _passage_json(passage: Passage) -> dict[str, object]:
    return {
        "visit": passage.visit_id,
        "date": passage.date.isoformat(),
        "horse": passage.horse,
        "where": passage.where,
        "text": passage.text,
    }
