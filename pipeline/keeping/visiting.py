"""Horses and their visits as the brief, the due list and the order list need them."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from datetime import date
from itertools import chain, groupby
from operator import itemgetter
from typing import NamedTuple

from pipeline.errors import NotFoundError
from pipeline.keeping.asking import STANDING, Parameter, Where, horse_ids_called, marks, rows
from pipeline.keeping.names import at, name_key
from pipeline.keeping.seen import (
    FACT_COLUMNS,
    SEVERITIES,
    STATUSES,
    FootFact,
    SeenHorse,
    SeenVisit,
    ShodVisit,
    seen_fact,
)
from pipeline.sentences import did_you_mean

_FACTS = """visits CROSS JOIN memos ON memos.id = visits.memo CROSS JOIN facts ON facts.visit = visits.id"""
_HORSE = "SELECT id, name, owner, place FROM horses"


class LastSeen(NamedTuple):
    """When a horse was last seen, and what that visit said of the next: the earliest of its intervals, in weeks.

    ``weeks_flagged`` says that a person must still look at that interval.
    """

    horse: SeenHorse
    visit_id: int
    date: date
    weeks: float | None
    weeks_flagged: bool


def the_horse(connection: sqlite3.Connection, name: str, place: str | None = None) -> SeenHorse:
    """The one horse of this name or other name; raises NotFoundError when there is none or several."""
    called = [_horse(row) for row in _by_id(connection, horse_ids_called(connection, name))]
    found = called if place is None else [horse for horse in called if name_key(horse.place) == name_key(place)]
    if len(found) == 1:
        return found[0]
    if not found and called:
        raise NotFoundError(f"No horse called {name} stands {at(place)}, only {_places(called)}.")
    if not found:
        raise NotFoundError(f"No horse called {name} is in the store.{_hint(connection, name)}")
    places = _places(found)
    raise NotFoundError(f"{len(found)} horses are called {name} ({places}); say the place too.")


def visits_of(connection: sqlite3.Connection, horse: SeenHorse) -> list[SeenVisit]:
    """All visits of a horse with what stands of them, oldest first."""
    visits = [
        (row["id"], date.fromisoformat(row["date"]))
        for row in rows(
            connection, "SELECT id, date FROM visits WHERE horse = ? AND stands = 1 ORDER BY date, id", [horse.id]
        )
    ]
    sql = f"""SELECT {FACT_COLUMNS}, facts.visit FROM {_FACTS}
              WHERE visits.horse = ? AND {STANDING} ORDER BY visits.date, visits.id, facts.position"""
    by_visit = {
        visit: tuple(map(seen_fact, facts))
        for visit, facts in groupby(connection.execute(sql, [horse.id]), key=itemgetter(-1))
    }
    return [SeenVisit(visit, day, horse, by_visit.get(visit, ())) for visit, day in visits]


def horses_on(connection: sqlite3.Connection, day: date) -> list[SeenHorse]:
    """The horses that were seen on a day, by place and name."""
    sql = f"""{_HORSE} WHERE id IN (SELECT horse FROM visits WHERE date = ? AND horse IS NOT NULL AND stands = 1)
              ORDER BY place_key, name_key"""
    return [_horse(row) for row in rows(connection, sql, [day.isoformat()])]


def unassigned_count(connection: sqlite3.Connection, horse: SeenHorse | None = None) -> int:
    """How many visits belong to no horse yet; of those, how many were heard under a horse's names, if one is given."""
    if horse is None:
        return int(connection.execute("SELECT count(*) FROM visits WHERE horse IS NULL AND stands = 1").fetchone()[0])
    sql = """SELECT count(*) FROM visits WHERE horse IS NULL AND stands = 1 AND heard_key IN (
        SELECT name_key FROM horses WHERE id = :horse
        UNION SELECT name_key(json_each.value) FROM horses, json_each(also_called) WHERE horses.id = :horse)"""
    return int(connection.execute(sql, {"horse": horse.id}).fetchone()[0])


def seen_count(connection: sqlite3.Connection, place: str | None = None) -> int:
    """How many horses were ever seen, at ``place`` if one is given."""
    # Asked horse by horse, as there are fifty visits to one.
    where = Where(["EXISTS (SELECT 1 FROM visits WHERE visits.horse = horses.id AND visits.stands = 1)"])
    if place is not None:
        where.add("instr(place_key, ?) > 0", name_key(place))
    sql = f"SELECT count(*) FROM horses WHERE {where.sql}"
    return int(connection.execute(sql, where.parameters).fetchone()[0])


def last_seen(connection: sqlite3.Connection, since: date | None, place: str | None = None) -> list[LastSeen]:
    """Every horse that was seen, once, with its last day and what was said then; seen ``since``, at ``place``."""
    where = _of_a_horse(place)
    if since is not None:
        # A horse seen since that day: its last day is the same whether older visits are counted or not.
        where.add("date >= ?", since.isoformat())
    sql = f"""WITH latest AS MATERIALIZED (
        SELECT horse, max(date) AS date FROM visits WHERE {where.sql} GROUP BY horse
    ), said AS MATERIALIZED (
        SELECT latest.horse, min(facts.value) AS weeks, max(facts.flagged) AS doubt FROM latest
        CROSS JOIN visits ON visits.horse = latest.horse AND visits.date = latest.date
        CROSS JOIN memos ON memos.id = visits.memo
        CROSS JOIN facts INDEXED BY facts_of_the_next_visit ON facts.visit = visits.id
        WHERE facts.slot = 'next_visit_weeks' AND facts.status = 'planned' AND {STANDING} GROUP BY latest.horse
    )
    SELECT horses.id, horses.name, horses.owner, horses.place, latest.date, said.weeks, said.doubt,
        (SELECT max(id) FROM visits WHERE visits.horse = latest.horse AND visits.date = latest.date
            AND visits.stands = 1) AS visit
    FROM latest JOIN horses ON horses.id = latest.horse LEFT JOIN said ON said.horse = latest.horse"""
    return [
        LastSeen(_horse(row), row["visit"], date.fromisoformat(row["date"]), row["weeks"], bool(row["doubt"]))
        for row in rows(connection, sql, where.parameters)
    ]


def days_of(connection: sqlite3.Connection, horse_ids: Sequence[int]) -> dict[int, list[date]]:
    """The days on which each of these horses was seen, oldest first, each once."""
    found: dict[int, list[date]] = {}
    for some in _batches(horse_ids):
        theirs = f"horse IN ({marks(some)}) AND stands = 1"
        sql = f"SELECT DISTINCT horse, date FROM visits WHERE {theirs} ORDER BY horse, date"
        for horse, day in connection.execute(sql, some):
            found.setdefault(horse, []).append(date.fromisoformat(day))
    return found


def facts_on_feet(
    connection: sqlite3.Connection,
    horse_ids: Sequence[int],
    slots: Sequence[str],
    statuses: Sequence[str],
    since: date,
    until: date,
) -> Iterator[ShodVisit]:
    """The visits of these horses from ``since`` to ``until``, horse by horse and oldest first, with the facts of these
    slots and statuses that are of a foot; visits without any are left out."""
    for some in _batches(horse_ids):
        sql = f"""SELECT visits.id, visits.date, visits.horse, facts.foot, facts.slot, facts.value, facts.zone,
                      facts.status, facts.severity, facts.flagged FROM {_FACTS}
                  WHERE visits.horse IN ({marks(some)}) AND visits.date BETWEEN ? AND ?
                      AND +facts.slot IN ({marks(slots)}) AND +facts.status IN ({marks(statuses)})
                      AND facts.foot IS NOT NULL AND {STANDING}
                  ORDER BY visits.horse, visits.date, visits.id, facts.position"""
        found = connection.execute(sql, [*some, since.isoformat(), until.isoformat(), *slots, *statuses])
        for visit, told in groupby(found, key=itemgetter(0)):
            first = next(told)
            facts = tuple(
                FootFact(foot, slot, value, zone, STATUSES[status], SEVERITIES[severity], bool(flagged))
                for _, _, _, foot, slot, value, zone, status, severity, flagged in chain((first,), told)
            )
            yield ShodVisit(visit, date.fromisoformat(first[1]), first[2], facts)


def horse_ids_between(connection: sqlite3.Connection, since: date, until: date, place: str | None = None) -> list[int]:
    """The horses that were seen from ``since`` to ``until``, at ``place`` if one is given."""
    where = _of_a_horse(place)
    where.add("date BETWEEN ? AND ?", since.isoformat(), until.isoformat())
    sql = f"SELECT DISTINCT horse FROM visits WHERE {where.sql} ORDER BY horse"
    return [horse for (horse,) in connection.execute(sql, where.parameters)]


def _of_a_horse(place: str | None) -> Where:
    where = Where(["horse IS NOT NULL", "stands = 1"])
    if place is not None:
        where.add("horse IN (SELECT id FROM horses WHERE instr(place_key, ?) > 0)", name_key(place))
    return where


def _places(horses: Sequence[SeenHorse]) -> str:
    return ", ".join(at(horse.place) for horse in horses)


def _hint(connection: sqlite3.Connection, name: str) -> str:
    spoken = [row["name"] for row in rows(connection, "SELECT name FROM horses")]
    called = "SELECT value AS name FROM horses, json_each(also_called) WHERE also_called <> '[]'"
    known = {name_key(other): other for other in (*spoken, *(row["name"] for row in rows(connection, called)))}
    return did_you_mean(name_key(name), known)


def _by_id(connection: sqlite3.Connection, horse_ids: Sequence[int]) -> Iterator[sqlite3.Row]:
    for some in _batches(horse_ids):
        yield from rows(connection, f"{_HORSE} WHERE id IN ({marks(some)}) ORDER BY name_key, place_key", some)


def _batches(ids: Sequence[int], size: int = 500) -> Iterator[list[Parameter]]:
    for start in range(0, len(ids), size):
        yield list(ids[start : start + size])


def _horse(row: sqlite3.Row) -> SeenHorse:
    return SeenHorse(row["id"], row["name"], row["owner"], row["place"])
