"""How often something was said: by month, year, horse, owner, place, foot, zone or value."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from typing import NamedTuple

from pipeline.keeping.asking import rows
from pipeline.keeping.finding import of_a_horse, search_conditions
from pipeline.keeping.seen import Wanted

_KEYS = {
    "month": ("substr(visits.date, 1, 7)", "key"),
    "year": ("substr(visits.date, 1, 4)", "key"),
    "horse": (
        "coalesce(facts.horse, 'unknown horse') || CASE WHEN facts.horse_id IS NULL THEN ' (?)' "
        "WHEN facts.place IS NULL THEN '' ELSE ', ' || facts.place END",
        "visits DESC, key",
    ),
    "owner": ("coalesce(facts.owner, 'no owner known')", "visits DESC, key"),
    "place": ("coalesce(facts.place, 'no place known')", "visits DESC, key"),
    "foot": (
        "coalesce(facts.foot, 'horse')",
        "CASE key WHEN 'LF' THEN 1 WHEN 'RF' THEN 2 WHEN 'LH' THEN 3 WHEN 'RH' THEN 4 ELSE 5 END",
    ),
    "zone": ("coalesce(facts.zone, 'no zone said')", "visits DESC, key"),
    "value": ("facts.slot || ' ' || facts.value", "visits DESC, key"),
    "status": ("facts.status", "visits DESC, key"),
}
COUNTED_BY = tuple(_KEYS)


class Count(NamedTuple):
    """How many facts, visits and horses share a key; ``suspected`` of the facts are only suspected, and ``flagged`` are
    not looked at yet."""

    key: str
    facts: int
    suspected: int
    visits: int
    horses: int
    flagged: int


def count_facts(connection: sqlite3.Connection, wanted: Wanted, by: str, horse_ids: Sequence[int]) -> list[Count]:
    """The facts that hold all of what is wanted, counted by one of COUNTED_BY; the limit does not apply."""
    key, order = _KEYS[by]
    where = search_conditions(wanted, horse_ids, by_value=not of_a_horse(wanted))
    sql = (
        f"SELECT {key} AS key, count(*) AS facts, sum(facts.status = 'suspected') AS suspected, "
        "count(DISTINCT facts.visit) AS visits, "
        "count(DISTINCT facts.horse_id) AS horses, sum(facts.flagged) AS flagged "
        "FROM facts_in_full AS facts JOIN visits ON visits.id = facts.visit "
        f"WHERE {where.sql} GROUP BY 1 ORDER BY {order}"
    )
    found = rows(connection, sql, where.parameters)
    return [
        Count(str(row["key"]), *(row[name] for name in ("facts", "suspected", "visits", "horses", "flagged")))
        for row in found
    ]
