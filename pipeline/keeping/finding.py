"""Search inside the store: by what the facts say, and by free words through the full-text index.

However many facts fit, only as many are read as are asked for. Which way leads to them soonest depends on what is
asked: a horse's own visits, the words' index, the days of a value (``fact_days``), or the visits day by day.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from heapq import merge
from itertools import islice
from typing import Any

from pipeline.keeping.asking import (
    STANDING,
    Parameter,
    Where,
    by_slot,
    compare,
    compared_alone,
    day_conditions,
    fact_conditions,
    marks,
    match_expression,
    of_a_horse,
    rows,
    visit_conditions,
)
from pipeline.keeping.seen import FACT_COLUMNS, Comparison, Found, FoundFact, Wanted, seen_fact

_BATCH = 500
_FACTS_A_VISIT = 20  # about; only the way to the facts depends on it
# What ``found_of`` takes, and the tables that it comes from: each once, which the view facts_in_full would not do.
FOUND_COLUMNS = f"""{FACT_COLUMNS}, facts.visit, visits.date, coalesce(horses.name, visits.horse_heard), horses.owner,
    horses.place, visits.horse IS NOT NULL, memos.file_name, facts.position"""
_VISIT, _DATE, _POSITION = 17, 18, -1
_Row = tuple[Any, ...]


def find_facts(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Found:
    """The facts that hold all of what is wanted, newest visit first, at most ``wanted.limit``."""
    if wanted.words and match_expression(wanted.words) is None:
        return Found([], [], False)
    found = list(islice(_facts(connection, wanted, horse_ids), wanted.limit + 1))
    found.sort(key=lambda row: (row[_VISIT], row[_POSITION]))
    found.sort(key=lambda row: str(row[_DATE]), reverse=True)
    return Found(list(map(found_of, found[: wanted.limit])), [], len(found) > wanted.limit)


def found_of(row: Sequence[Any]) -> FoundFact:
    """A search's find behind a row of FOUND_COLUMNS."""
    visit, day, horse, owner, place, assigned, file_name, _ = row[_VISIT:]
    return FoundFact(seen_fact(row), visit, date.fromisoformat(day), horse, owner, place, bool(assigned), file_name)


def search_conditions(wanted: Wanted, horse_ids: Sequence[int], by_value: bool = False) -> Where:
    """All that is wanted, in a query over ``facts`` or ``facts_in_full AS facts``, and ``visits``.

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


def day_of_value(connection: sqlite3.Connection, wanted: Wanted) -> Where | None:
    """All that is wanted but slot and value, in a query over ``fact_days`` alone; None when it cannot tell."""
    if wanted.words or wanted.horse is not None:
        return None
    where = Where()
    day_conditions(where, wanted)
    groups = by_slot(wanted.compared)
    if len(groups) == 1 and compared_alone(wanted):
        return where  # the facts themselves are compared
    for slot, group in groups.items():
        values = values_of(connection, slot, group)
        where.add(
            "EXISTS (SELECT 1 FROM fact_days AS other WHERE (other.month, other.day, other.visit) = (fact_days.month, "
            "fact_days.day, fact_days.visit) AND (other.foot IS fact_days.foot OR other.foot IS NULL OR fact_days.foot "
            f"IS NULL) AND other.status = 'present' AND other.slot = ? AND other.value IN ({marks(values)}))",
            slot,
            *values,
        )
    return where


def pairs_of(connection: sqlite3.Connection, wanted: Wanted) -> list[tuple[str, Parameter]]:
    """Slot and value of the facts that can fit, as far as values, slots or comparisons alone say which those are."""
    if wanted.values:
        return list(dict.fromkeys(pair for pair in wanted.values if not wanted.slots or pair[0] in wanted.slots))
    groups = by_slot(wanted.compared)
    alone = compared_alone(wanted)
    return [
        (slot, value)
        for slot in wanted.slots or groups
        for value in values_of(connection, slot, groups[slot] if alone else ())
    ]


def values_of(connection: sqlite3.Connection, slot: str, compared: Sequence[Comparison]) -> list[Parameter]:
    """Every value that the store has in a slot and of which the comparisons hold: one step of the index a value,
    however many facts there are."""
    where = Where(["value IS NOT NULL"])
    compare(where, "value", compared)
    sql = f"""WITH RECURSIVE found (value) AS (
        SELECT min(value) FROM fact_days WHERE slot = ?
        UNION ALL
        SELECT (SELECT min(value) FROM fact_days WHERE slot = ? AND value > found.value)
        FROM found WHERE found.value IS NOT NULL
    ) SELECT value FROM found WHERE {where.sql}"""
    return [value for (value,) in connection.execute(sql, [slot, slot, *where.parameters])]


def _facts(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterable[_Row]:
    """The facts that fit, newest day first."""
    if wanted.words:
        return _by_words(connection, wanted, horse_ids)
    where = day_of_value(connection, wanted) if wanted.values or wanted.slots or compared_alone(wanted) else None
    if where is None or (of_a_horse(wanted) and _few_visits(connection, wanted)):
        return _by_visit(connection, wanted, horse_ids)
    return _by_value(connection, wanted, where)


def _few_visits(connection: sqlite3.Connection, wanted: Wanted) -> bool:
    """Whether reading all facts of the horses' visits is less than reading the value's newest until enough are theirs.

    With a share of the visits, about limit / share facts of the value are read, against some twenty a visit.
    """
    where = Where()
    visit_conditions(where, wanted, ())
    theirs = connection.execute(f"SELECT count(*) FROM visits WHERE {where.sql}", where.parameters).fetchone()[0]
    everyone = connection.execute("SELECT max(id) FROM visits").fetchone()[0] or 0
    return bool(_FACTS_A_VISIT * theirs * theirs < wanted.limit * everyone)


def _by_words(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterator[_Row]:
    where = search_conditions(wanted, horse_ids)
    # The numbers and days are sorted alone; what belongs to a fact is read for those that are listed.
    sql = (
        "SELECT facts.id FROM facts_in_full AS facts JOIN visits ON visits.id = facts.visit "
        f"WHERE {where.sql} ORDER BY visits.date DESC, facts.id DESC LIMIT ?"
    )
    ids = [row["id"] for row in rows(connection, sql, [*where.parameters, wanted.limit + 1])]
    return _in_full(connection, iter(ids), wanted.limit)


def _by_visit(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> Iterable[_Row]:
    # All visits come from the index of days, and no more of them than it takes; a horse's from that of horses, which
    # the plus sign leaves as the only one.
    day = "+visits.date" if of_a_horse(wanted) else "visits.date"
    where = search_conditions(wanted, horse_ids)
    sql = (
        f"SELECT {FOUND_COLUMNS} FROM visits CROSS JOIN memos ON memos.id = visits.memo "
        "CROSS JOIN facts ON facts.visit = visits.id LEFT JOIN horses ON horses.id = visits.horse "
        f"WHERE {STANDING} AND {where.sql} ORDER BY {day} DESC, visits.id, facts.position LIMIT ?"
    )
    return connection.execute(sql, [*where.parameters, wanted.limit + 1])


def _by_value(connection: sqlite3.Connection, wanted: Wanted, where: Where) -> Iterator[_Row]:
    sql = f"""SELECT month, day, visit, fact FROM fact_days WHERE slot = ? AND value = ? AND {where.sql}
              ORDER BY month DESC, day DESC, visit DESC, fact DESC"""
    streams = [connection.execute(sql, [*pair, *where.parameters]) for pair in pairs_of(connection, wanted)]
    newest = streams[0] if len(streams) == 1 else merge(*streams, reverse=True)
    return _in_full(connection, (row[-1] for row in newest), wanted.limit)


def _in_full(connection: sqlite3.Connection, ids: Iterator[int], limit: int) -> Iterator[_Row]:
    """The facts of these numbers, all of them standing, in the same order, a batch at a time."""
    size = min(limit + 1, _BATCH)
    while batch := list(islice(ids, size)):
        sql = (
            f"SELECT {FOUND_COLUMNS} FROM facts CROSS JOIN visits ON visits.id = facts.visit "
            "CROSS JOIN memos ON memos.id = visits.memo LEFT JOIN horses ON horses.id = visits.horse "
            f"WHERE facts.id IN ({marks(batch)})"
        )
        found = {row[0]: row for row in connection.execute(sql, batch)}
        yield from (found[fact] for fact in batch)
