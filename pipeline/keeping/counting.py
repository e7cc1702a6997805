"""How often something was said: by month, year, horse, owner, place, foot, zone or value."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from typing import NamedTuple

from pipeline.keeping.asking import Where, compared_alone, of_a_horse, rows
from pipeline.keeping.finding import day_of_value, pairs_of, search_conditions
from pipeline.keeping.seen import Wanted

_HORSE = "horse, CASE WHEN horse IS NULL THEN visit END"


class _Key(NamedTuple):
    """How facts are counted by one thing: the columns of ``fact_days`` that keep its groups apart, what a group is
    called, in words of the group's first row and of its horse, and the order of the groups."""

    columns: str
    name: str
    order: str = "visits DESC, key"


_KEYS = {
    "month": _Key("month", "printf('%04d-%02d', month / 100, month % 100)", "key"),
    "year": _Key("month / 100", "printf('%04d', month / 100)", "key"),
    "horse": _Key(
        _HORSE,
        "coalesce(horses.name, visits.horse_heard, 'unknown horse') || CASE WHEN horses.id IS NULL THEN ' (?)' "
        "WHEN horses.place IS NULL THEN '' ELSE ', ' || horses.place END",
    ),
    "owner": _Key(_HORSE, "coalesce(horses.owner, 'no owner known')"),
    "place": _Key(_HORSE, "coalesce(horses.place, 'no place known')"),
    "foot": _Key(
        "foot",
        "coalesce(foot, 'horse')",
        "CASE key WHEN 'LF' THEN 1 WHEN 'RF' THEN 2 WHEN 'LH' THEN 3 WHEN 'RH' THEN 4 ELSE 5 END",
    ),
    "zone": _Key("zone", "coalesce(zone, 'no zone said')"),
    "value": _Key("slot, value", "slot || ' ' || value"),
    "status": _Key("status", "status"),
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
    """The facts that hold all of what is wanted, counted by one of COUNTED_BY; the limit does not apply.

    Groups are counted by their columns, without a look at any other table, and named afterwards. No visit is in two
    groups of one name that have not the same horse, so that their counts add up.
    """
    key = _KEYS[by]
    where = _through_their_days(connection, wanted) or _through_the_facts(wanted, horse_ids)
    sql = f"""WITH counted AS MATERIALIZED (
        SELECT slot, value, month, visit, foot, zone, status, horse, count(*) AS facts,
            count(*) FILTER (WHERE status = 'suspected') AS suspected, count(DISTINCT visit) AS visits,
            count(DISTINCT horse) AS horses, sum(flagged) AS flagged
        FROM fact_days WHERE {where.sql} GROUP BY {key.columns}
    )
    SELECT {key.name} AS key, sum(counted.facts) AS facts, sum(counted.suspected) AS suspected,
        sum(counted.visits) AS visits, sum(counted.horses) AS horses, sum(counted.flagged) AS flagged
    FROM counted LEFT JOIN horses ON horses.id = counted.horse
    LEFT JOIN visits ON counted.horse IS NULL AND visits.id = counted.visit
    GROUP BY 1 ORDER BY {key.order}"""
    return [
        Count(str(row["key"]), *(row[name] for name in ("facts", "suspected", "visits", "horses", "flagged")))
        for row in rows(connection, sql, where.parameters)
    ]


def _through_their_days(connection: sqlite3.Connection, wanted: Wanted) -> Where | None:
    where = day_of_value(connection, wanted)
    if where is None:
        return None
    if wanted.values or compared_alone(wanted):
        pairs = pairs_of(connection, wanted)
        either = " OR ".join(["slot = ? AND value = ?"] * len(pairs)) or "0"
        where.add(f"({either})", *(part for pair in pairs for part in pair))
    else:
        where.one_of("slot", wanted.slots)
    return where


def _through_the_facts(wanted: Wanted, horse_ids: Sequence[int]) -> Where:
    """What is wanted, when the facts themselves must be asked: their rows in ``fact_days``, by their whole key."""
    where = search_conditions(wanted, horse_ids, by_value=not of_a_horse(wanted))
    fitting = (
        "SELECT facts.slot, facts.value, CAST(substr(visits.date, 1, 4) || substr(visits.date, 6, 2) AS INTEGER), "
        "CAST(substr(visits.date, 9) AS INTEGER), visits.id, facts.id "
        f"FROM facts_in_full AS facts JOIN visits ON visits.id = facts.visit WHERE {where.sql}"
    )
    return Where([f"(slot, value, month, day, visit, fact) IN ({fitting})"], where.parameters)
