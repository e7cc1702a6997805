"""Search inside the store: by what the facts say, and by free words through the full-text index.

However many facts fit, only as many are read as are asked for. Which way leads to them soonest depends on what is
asked: a horse's own visits, the words' index, the days of a value (``fact_days``), or the visits day by day.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from datetime import date
from heapq import merge
from itertools import islice

from pipeline.keeping.asking import (
    Parameter,
    Where,
    compared_alone,
    fact_conditions,
    marks,
    match_expression,
    rows,
    visit_conditions,
)
from pipeline.keeping.names import name_key
from pipeline.keeping.seen import Found, FoundFact, Wanted, seen_fact
from pipeline.terms import Status

_BATCH = 500
_FACTS_A_VISIT = 20  # about; only the way to the facts depends on it
_FULL = "SELECT facts.* FROM facts_in_full AS facts"


def find_facts(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Found:
    """The facts that hold all of what is wanted, newest visit first, at most ``wanted.limit``."""
    if wanted.words and match_expression(wanted.words) is None:
        return Found()
    found = list(islice(_facts(connection, wanted, horse_ids), wanted.limit + 1))
    found.sort(key=lambda row: (row["visit"], row["position"]))
    found.sort(key=lambda row: row["date"], reverse=True)
    facts = [found_of(row) for row in found[: wanted.limit]]
    return Found(facts=facts, more=len(found) > wanted.limit)


def found_of(row: sqlite3.Row) -> FoundFact:
    """A search's find behind a row of ``facts_in_full``."""
    return FoundFact(
        fact=seen_fact(row),
        visit_id=row["visit"],
        date=date.fromisoformat(row["date"]),
        horse=row["horse"],
        owner=row["owner"],
        place=row["place"],
        assigned=row["horse_id"] is not None,
        file_name=row["file_name"],
    )


def search_conditions(wanted: Wanted, horse_ids: Sequence[int], by_value: bool = False) -> Where:
    """All that is wanted, in a query over ``facts_in_full AS facts`` and ``visits``.

    Unless the query is to go ``by_value``, the facts come from elsewhere (their visit, their number) and the plus sign
    keeps SQLite from running through every fact of a value at each of those.
    """
    where = Where()
    fact_conditions(where, wanted, "facts" if by_value else "+facts")
    visit_conditions(where, wanted, horse_ids)
    expression = match_expression(wanted.words)
    if expression is not None:
        where.add("facts.id IN (SELECT rowid FROM fact_words WHERE fact_words MATCH ?)", expression)
    return where


def of_a_horse(wanted: Wanted) -> bool:
    """Whether only some horses are asked about."""
    return wanted.horse is not None or wanted.owner is not None or wanted.place is not None


def _facts(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterator[sqlite3.Row]:
    """The facts that fit, newest day first."""
    if wanted.words:
        return _by_words(connection, wanted, horse_ids)
    has_value = wanted.values or wanted.slots or compared_alone(wanted)
    if has_value and not (of_a_horse(wanted) and _few_visits(connection, wanted, horse_ids)):
        return _by_value(connection, wanted, horse_ids)
    return _by_visit(connection, wanted, horse_ids)


def _few_visits(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> bool:
    """Whether reading all facts of the horses' visits is less than reading the value's newest until enough are theirs.

    With a share of the visits, about limit / share facts of the value are read, against some twenty a visit.
    """
    where = Where()
    visit_conditions(where, wanted, horse_ids)
    theirs = connection.execute(f"SELECT count(*) FROM visits WHERE {where.sql}", where.parameters).fetchone()[0]
    everyone = connection.execute("SELECT max(id) FROM visits").fetchone()[0] or 0
    return bool(_FACTS_A_VISIT * theirs * theirs < wanted.limit * everyone)


def _by_words(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterator[sqlite3.Row]:
    where = search_conditions(wanted, horse_ids)
    # The numbers and days are sorted alone; what belongs to a fact is read for those that are listed.
    sql = (
        "SELECT facts.id FROM facts_in_full AS facts JOIN visits ON visits.id = facts.visit "
        f"WHERE {where.sql} ORDER BY visits.date DESC, facts.id DESC LIMIT ?"
    )
    ids = [row["id"] for row in rows(connection, sql, [*where.parameters, wanted.limit + 1])]
    return _in_full(connection, iter(ids), Where(), wanted.limit)


def _by_visit(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterator[sqlite3.Row]:
    # All visits come from the index of days, and no more of them than it takes; a horse's from that of horses, which
    # the plus sign leaves as the only one.
    day = "+visits.date" if of_a_horse(wanted) else "visits.date"
    where = search_conditions(wanted, horse_ids)
    sql = (
        f"SELECT facts.* FROM visits CROSS JOIN facts_in_full AS facts ON facts.visit = visits.id WHERE {where.sql} "
        f"ORDER BY {day} DESC, visits.id, facts.position LIMIT ?"
    )
    return rows(connection, sql, [*where.parameters, wanted.limit + 1])


def _by_value(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterator[sqlite3.Row]:
    streams = [
        _days_of(connection, slot, value, status, wanted)
        for slot, value in _pairs(connection, wanted)
        for status in wanted.statuses or [status.value for status in Status]
    ]
    ids = (fact for _, fact in merge(*streams, reverse=True))
    return _in_full(connection, ids, search_conditions(wanted, horse_ids), wanted.limit)


def _pairs(connection: sqlite3.Connection, wanted: Wanted) -> list[tuple[str, Parameter]]:
    """Slot and value of the facts that can fit; their conditions are asked again with the facts themselves."""
    if wanted.values:
        return list(dict.fromkeys(pair for pair in wanted.values if not wanted.slots or pair[0] in wanted.slots))
    slots = wanted.slots or tuple(dict.fromkeys(comparison.slot for comparison in wanted.compared))
    return [(slot, value) for slot in slots for value in _values_of(connection, slot)]


def _values_of(connection: sqlite3.Connection, slot: str) -> list[Parameter]:
    """Every value that the store has in a slot: one step of the index a value, however many facts there are."""
    sql = """WITH RECURSIVE found (value) AS (
        SELECT min(value) FROM fact_days WHERE slot = :slot
        UNION ALL
        SELECT (SELECT min(value) FROM fact_days WHERE slot = :slot AND value > found.value)
        FROM found WHERE found.value IS NOT NULL
    ) SELECT value FROM found WHERE value IS NOT NULL"""
    return [value for (value,) in connection.execute(sql, {"slot": slot})]


def _days_of(
    connection: sqlite3.Connection, slot: str, value: Parameter, status: str, wanted: Wanted
) -> Iterator[tuple[str, int]]:
    where = Where()
    where.add("slot = ? AND value = ? AND status = ?", slot, value, status)
    where.feet("foot", wanted.feet)
    if wanted.since is not None:
        where.add("date >= ?", wanted.since.isoformat())
    if wanted.until is not None:
        where.add("date <= ?", wanted.until.isoformat())
    sql = f"SELECT date, fact FROM fact_days WHERE {where.sql} ORDER BY date DESC, fact DESC"
    return iter(connection.execute(sql, where.parameters))


def _in_full(connection: sqlite3.Connection, ids: Iterator[int], where: Where, limit: int) -> Iterator[sqlite3.Row]:
    """The facts of these numbers that fit, in the same order, a batch at a time."""
    join = "JOIN visits ON visits.id = facts.visit" if where.parts else ""
    size = min(limit + 1, _BATCH)
    while batch := list(islice(ids, size)):
        size = _BATCH
        sql = f"{_FULL} {join} WHERE facts.id IN ({marks(batch)}) AND {where.sql}"
        found = {row["id"]: row for row in rows(connection, sql, [*batch, *where.parameters])}
        yield from (found[fact] for fact in batch if fact in found)


def horse_ids_called(connection: sqlite3.Connection, name: str) -> list[int]:
    """The horses of this name, or else those also called so."""
    key = name_key(name)
    exact = "SELECT id FROM horses WHERE name_key = ? ORDER BY place_key"
    called = """SELECT id FROM horses WHERE also_called <> '[]' AND EXISTS (
        SELECT 1 FROM json_each(also_called) WHERE name_key(json_each.value) = ?) ORDER BY name_key, place_key"""
    return next(filter(None, ([row["id"] for row in rows(connection, sql, [key])] for sql in (exact, called))), [])
