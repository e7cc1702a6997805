"""Which visit of a new reading is which of the former one, and whether anything was read differently at all."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

from pipeline.keeping.carrying import KEPT, Told
from pipeline.keeping.names import name_key
from pipeline.keeping.raw import Raw, RawRow
from pipeline.keeping.rows import fact_columns
from pipeline.keeping.splitting import Answered, notes_apart
from pipeline.record import MemoRecord, Visit

_READ = ("foot", "slot", "value", "zone", "status", "severity", "flagged", "reasons", "quote", "span_start", "span_end")


@dataclass(frozen=True)
class Said:
    """What a person said of the visits of a memo: (visit, column) of what he decided, the visits that he alone knows
    of, and to whom he gave a part of one."""

    decided: set[tuple[int, str]] = field(default_factory=set)
    by_hand: set[int] = field(default_factory=set)
    parts: Sequence[Answered] = ()


def visits_to_match(raw: Raw, said: Said) -> list[RawRow]:
    """The visits that stand, then those that a person dropped: a reader that finds these again finds nothing new."""
    rows = [visit for visit in raw.visits.values() if visit["stands"] or (visit["id"], "stands") in said.decided]
    return sorted(rows, key=lambda visit: not visit["stands"])


def matching_visits(
    visits: Sequence[Visit], rows: Sequence[RawRow], facts: Sequence[RawRow], by_hand: Collection[int]
) -> list[RawRow | None]:
    """For each visit the row that it had until now, or None for one that was missed until now.

    The same name comes first, then the most words in common, then what is left of both, when that is one visit each.
    A visit that a person entered is only found when no other one has these words: it may hold most of them by now.
    """
    left = {row["id"]: row for row in rows}
    found: list[RawRow | None] = [None] * len(visits)
    for number, visit in enumerate(visits):
        named = [row for row in left.values() if row["heard_key"] and row["heard_key"] == name_key(visit.horse)]
        if named:
            found[number] = left.pop(named[0]["id"])
    for entered in (False, True):
        for number, visit in enumerate(visits):
            some = [row_id for row_id in left if (row_id in by_hand) is entered]
            if found[number] is None and some:
                shared = {row_id: _shared_words(visit, [f for f in facts if f["visit"] == row_id]) for row_id in some}
                best = max(shared, key=lambda row_id: shared[row_id])
                if shared[best] > 0:
                    found[number] = left.pop(best)
    unmatched = [number for number, row in enumerate(found) if row is None]
    read = [row for row in left.values() if row["id"] not in by_hand]
    if len(unmatched) == 1 == len(read):
        found[unmatched[0]] = read[0]
    return found


def reads_the_same(
    record: MemoRecord, raw: Raw, reading: int, before: Sequence[Told], said: Said, raised_in: Mapping[int, int | None]
) -> bool:
    """Whether a new reading says what the present one said when it was read; certainty aside.

    ``raised_in`` are the visits that the flags were raised in, by number.
    """
    rows = [row for row in visits_to_match(raw, said) if row["id"] not in said.by_hand]
    places = matching_visits(record.visits, rows, [told.read for told in before], said.by_hand)
    if len(places) != len(rows) or None in places:
        return False
    notes = {row["id"]: visit.notes for visit, row in zip(record.visits, places, strict=True) if row is not None}
    notes = notes_apart(record.transcript, notes, said.parts)
    for visit, row in zip(record.visits, places, strict=True):
        if row is None or name_key(visit.horse) != (row["heard_key"] or ""):
            return False
        if (row["id"], "notes") not in said.decided and notes[row["id"]] != row["notes"]:
            return False
        if _flags_of(visit) - _flags_in(raw, row["id"], reading, raised_in):
            return False
        new = [tuple(fact_columns(fact, 0, 0)[name] for name in _READ) for fact in visit.facts]
        read = [told.read for told in before if told.read["visit"] == row["id"] and told.read["rules"] != KEPT]
        old = [tuple(fact[name] for name in _READ) for fact in read]
        if sorted(map(repr, new)) != sorted(map(repr, old)):
            return False
    return True


def _shared_words(visit: Visit, facts: Sequence[RawRow]) -> int:
    spans = [(fact["span_start"], fact["span_end"]) for fact in facts]
    return sum(
        max(0, min(fact.span[1], end) - max(fact.span[0], start)) for fact in visit.facts for start, end in spans
    )


def _flags_of(visit: Visit) -> set[tuple[str, str]]:
    return {(flag.reason, flag.quote) for flag in visit.flags}


def _flags_in(raw: Raw, visit_id: int, reading: int, raised_in: Mapping[int, int | None]) -> set[tuple[str, str]]:
    flags = [flag for flag in raw.flags.values() if flag["reading"] == reading and raised_in[flag["id"]] == visit_id]
    return {(flag["reason"], flag["quote"]) for flag in flags}
