"""What was changed in a visit, as a person reads it and as a program does."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import datetime

from pipeline.keeping import ChangeKind, HistoryEntry, PastChange, VisitHistory
from pipeline.record import Fact
from pipeline.using.wording import FOOT_NAMES, fact_words, harmless

_KINDS = {
    ChangeKind.CORRECT: "corrected",
    ChangeKind.ACCEPT: "confirmed",
    ChangeKind.DROP: "dropped",
    ChangeKind.RESTORE: "restored",
    ChangeKind.MOVE: "moved",
    ChangeKind.ADD: "added",
    ChangeKind.VISIT: "corrected the visit",
    ChangeKind.NEW_VISIT: "added a visit",
    ChangeKind.DROP_VISIT: "dropped the visit",
    ChangeKind.RESTORE_VISIT: "restored the visit",
    ChangeKind.ASSIGN: "said whose visit it was",
    ChangeKind.LOOK: "looked at a flag",
    ChangeKind.REREAD: "read the memo again",
    ChangeKind.UNDO: "took back",
}
# What follows from the change itself, and what only the store needs.
_UNSAID = frozenset({"position", "confidence", "flagged", "reasons", "settled", "heard_key"})
_COLUMNS = {
    "horse_match": "how sure the horse is",
    "horse_heard": "the name as heard",
    "recorded_at": "time of recording",
    "recorded_from": "source of that time",
}


def history_lines(history: VisitHistory) -> list[str]:
    """One line a change with when (local time), who and why, and under it what stood before and after."""
    lines = [f"{_when(history.kept_at)}  visit {history.visit_id} was kept"]
    for past in history.past:
        why = f" ({harmless(past.why)})" if past.why else ""
        lines.append(f"{_when(past.at)}  {harmless(past.who)} {_what(past)}{why}")
        lines += [f"    {harmless(line)}" for line in _details(history, past)]
    return lines


def history_json(history: VisitHistory) -> dict[str, object]:
    """The history as JSON values, every column included; times are UTC."""
    return {
        "visit": history.visit_id,
        "kept_at": history.kept_at.isoformat(),
        "facts": {str(number): fact.model_dump(mode="json") for number, fact in history.facts.items()},
        "changes": [_change_json(past) for past in history.past],
    }


def _change_json(past: PastChange) -> dict[str, object]:
    change = past.change
    return {
        "at": past.at.isoformat(),
        "who": past.who,
        "why": past.why,
        "change": change and change.id,
        "kind": change and change.kind.value,
        "undoes": change and change.undoes,
        "added": {str(number): fact.model_dump(mode="json") for number, fact in past.added},
        "entries": [
            {"table": e.table, "row": e.row, "column": e.column, "old": e.old, "new": e.new} for e in past.entries
        ],
    }


def _what(past: PastChange) -> str:
    if past.change is None:
        return "changed"
    number = f"change {past.change.id}"
    if past.change.undoes is not None:
        return f"took back change {past.change.undoes} as {number}"
    return f"{_KINDS[past.change.kind]}, {number}"


def _details(history: VisitHistory, past: PastChange) -> Iterator[str]:
    for _, fact in past.added:
        yield f"{_named(fact)}: entered by hand"
    said: set[int] = set()
    for entry in past.entries:
        if entry.table == "facts":
            fact = history.facts[entry.row]
            if entry.column not in _UNSAID:
                yield f"{_named(fact)}: {_step(entry)}"
            elif entry.column == "settled" and _only_settled(past, entry.row) and entry.row not in said:
                said.add(entry.row)
                yield f"{_named(fact)}: {'settled' if entry.new else 'no longer settled'}"
        elif (entry.table, entry.column) == ("flags", "visit"):
            yield f"flag, {_step(entry)}: {history.flags[entry.row]}"
        elif entry.table == "flags":
            yield f"flag {'looked at' if entry.new else 'to look at again'}: {history.flags[entry.row]}"
        elif (entry.table, entry.column) == ("visits", "horse"):
            yield f"horse: {_horse(history, entry.old)} → {_horse(history, entry.new)}"
        elif entry.column not in _UNSAID:
            yield _step(entry)


def _horse(history: VisitHistory, number: str | float | None) -> str:
    if not isinstance(number, (int, float)):
        return "nobody yet"
    return history.horses.get(int(number), f"horse {number:g}, no longer known")


def _only_settled(past: PastChange, row: int) -> bool:
    return all(e.column in _UNSAID for e in past.entries if (e.table, e.row) == ("facts", row))


def _step(entry: HistoryEntry) -> str:
    if entry.column == "stands":
        return "stands again" if entry.new else "stands no more"
    if entry.table == "memos" and entry.column in ("reading", "hearing"):
        return f"{entry.column} {_value(entry.old)} → {_value(entry.new)}"
    return f"{_COLUMNS.get(entry.column, entry.column.replace('_', ' '))}: {_value(entry.old)} → {_value(entry.new)}"


def _value(value: str | float | None) -> str:
    if value is None:
        return "nothing"
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False) if not value or "\n" in value else value.replace("_", " ")
    return f"{value:g}"


def _named(fact: Fact) -> str:
    return f"{FOOT_NAMES[fact.foot]}: {fact_words(fact)}"


def _when(moment: datetime) -> str:
    return moment.astimezone().strftime("%Y-%m-%d %H:%M:%S")
