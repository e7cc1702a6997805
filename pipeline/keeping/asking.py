"""Questions put to the database: conditions gathered with their parameters, never pasted from a user's words."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterator, Sequence
from datetime import date

from pipeline.keeping.names import name_key
from pipeline.keeping.seen import Comparison, Wanted

Parameter = str | float | int

# What the view facts_in_full asks of a fact, for queries that join its tables themselves, each once.
STANDING = "facts.stands = 1 AND visits.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading)"

_WORD = re.compile(r"\w+")
_SIGNS = frozenset({"<", "<=", "=", "!=", ">=", ">"})


class Where:
    """Conditions joined by AND, with their parameters."""

    def __init__(self, parts: Sequence[str] = (), parameters: Sequence[Parameter] = ()) -> None:
        self.parts = list(parts)
        self.parameters = list(parameters)

    def add(self, condition: str, *parameters: Parameter) -> None:
        """One more condition, which must hold too."""
        self.parts.append(condition)
        self.parameters.extend(parameters)

    def one_of(self, column: str, values: Sequence[Parameter]) -> None:
        """The column must hold one of the values; without any it may hold anything."""
        if len(values) == 1:
            self.add(f"{column} = ?", *values)
        elif values:
            self.add(f"{column} IN ({marks(values)})", *values)

    def feet(self, column: str, feet: Sequence[str | None]) -> None:
        """The foot must be one of these, None being the whole horse."""
        if feet:
            named = [foot for foot in feet if foot is not None]
            whole = [f"{column} IS NULL"] if None in feet else []
            parts = whole + ([f"{column} IN ({marks(named)})"] if named else [])
            self.add(f"({' OR '.join(parts)})", *named)

    @property
    def sql(self) -> str:
        """The condition as SQL."""
        return " AND ".join(self.parts) or "1"


def rows(
    connection: sqlite3.Connection, sql: str, parameters: Sequence[Parameter | None] = ()
) -> Iterator[sqlite3.Row]:
    """The rows of a query, by their columns' names, one after the other."""
    cursor = connection.cursor()
    cursor.row_factory = sqlite3.Row
    return iter(cursor.execute(sql, parameters))


def marks(values: Sequence[object]) -> str:
    """A question mark a value."""
    return ",".join("?" * len(values))


def words_of(texts: Sequence[str]) -> list[str]:
    """The single words of what was asked, in lower case."""
    return [word.casefold() for text in texts for word in _WORD.findall(text)]


def match_expression(words: Sequence[str]) -> str | None:
    """A full-text query in which every word is quoted, so that no punctuation is an operator; None without words."""
    tokens = [token for word in words for token in _WORD.findall(word)]
    return " ".join(f'"{token}"' for token in tokens) if tokens else None


def fact_conditions(where: Where, wanted: Wanted, table: str) -> None:
    """What is wanted of a fact itself, its words aside, in a table or view with the columns of ``facts``."""
    where.one_of(f"{table}.slot", wanted.slots)
    where.one_of(f"{table}.zone", wanted.zones)
    where.one_of(f"{table}.status", wanted.statuses)
    if wanted.values:
        pairs = " OR ".join(f"({table}.slot = ? AND {table}.value = ?)" for _ in wanted.values)
        where.add(f"({pairs})", *(part for pair in wanted.values for part in pair))
    where.feet(f"{table}.foot", wanted.feet)
    if wanted.flagged is not None:
        where.add(f"{table}.flagged = ?", int(wanted.flagged))
    _comparisons(where, wanted, table)


def visit_conditions(where: Where, wanted: Wanted, horse_ids: Sequence[int], table: str = "visits") -> None:
    """What is wanted of a visit that stands: horse, owner, place, days; in a table with the columns of ``visits``."""
    where.add(f"{table}.stands = 1")
    if wanted.horse is not None:
        heard = f"({table}.horse IS NULL AND {table}.heard_key = ?)"
        where.add(f"({table}.horse IN ({marks(horse_ids)}) OR {heard})", *horse_ids, name_key(wanted.horse))
    _whose(where, wanted, f"{table}.horse")
    if wanted.since is not None:
        where.add(f"{table}.date >= ?", wanted.since.isoformat())
    if wanted.until is not None:
        where.add(f"{table}.date <= ?", wanted.until.isoformat())


def day_conditions(where: Where, wanted: Wanted) -> None:
    """What is wanted of a fact and its visit as far as ``fact_days`` tells: all but slot, value, words and horse."""
    where.one_of("zone", wanted.zones)
    where.one_of("status", wanted.statuses)
    where.feet("foot", wanted.feet)
    if wanted.flagged is not None:
        where.add("flagged = ?", int(wanted.flagged))
    _whose(where, wanted, "horse")
    if wanted.since is not None:
        where.add("(month, day) >= (?, ?)", *_month_and_day(wanted.since))
    if wanted.until is not None:
        where.add("(month, day) <= (?, ?)", *_month_and_day(wanted.until))


def _month_and_day(day: date) -> tuple[int, int]:
    return 100 * day.year + day.month, day.day


def _whose(where: Where, wanted: Wanted, column: str) -> None:
    if wanted.owner is not None:
        where.add(f"{column} IN (SELECT id FROM horses WHERE instr(name_key(owner), ?) > 0)", name_key(wanted.owner))
    if wanted.place is not None:
        where.add(f"{column} IN (SELECT id FROM horses WHERE instr(place_key, ?) > 0)", name_key(wanted.place))


def of_a_horse(wanted: Wanted) -> bool:
    """Whether only some horses are asked about."""
    return wanted.horse is not None or wanted.owner is not None or wanted.place is not None


def compared_alone(wanted: Wanted) -> bool:
    """Whether only comparisons say which facts are wanted, so that the compared facts are what is to be listed."""
    return bool(wanted.compared) and not (wanted.slots or wanted.values or wanted.words)


def by_slot(compared: Sequence[Comparison]) -> dict[str, list[Comparison]]:
    """The comparisons of each slot."""
    groups: dict[str, list[Comparison]] = {}
    for comparison in compared:
        groups.setdefault(comparison.slot, []).append(comparison)
    return groups


def compare(where: Where, column: str, group: Sequence[Comparison]) -> None:
    """The column must hold a value of which all comparisons hold."""
    for comparison in group:
        if comparison.among is not None:
            where.add(f"{column} IN ({marks(comparison.among)})", *comparison.among)
        elif comparison.sign in _SIGNS and comparison.bound is not None:
            # Inches were turned into mm on the way in, and their last digits differ.
            where.add(f"round({column}, 3) {comparison.sign} ?", comparison.bound)
        else:
            raise ValueError(f"{comparison!r} compares with nothing")


def _comparisons(where: Where, wanted: Wanted, table: str) -> None:
    """Listed alone, a fact must be one of those compared; and its foot must hold a fact for every slot compared."""
    groups = by_slot(wanted.compared)
    if compared_alone(wanted):
        compared = [_compared(table, slot, group) for slot, group in groups.items()]
        either = " OR ".join(f"({one.sql})" for one in compared)
        where.add(f"({either})", *(part for one in compared for part in one.parameters))
        if len(groups) == 1:
            return
    for slot, group in groups.items():
        other = _compared("other", slot, group)
        where.add(
            f"EXISTS (SELECT 1 FROM facts_in_full AS other WHERE other.visit = {table}.visit AND "
            f"(other.foot IS {table}.foot OR other.foot IS NULL OR {table}.foot IS NULL) AND "
            f"other.status = 'present' AND {other.sql})",
            *other.parameters,
        )


def _compared(table: str, slot: str, group: Sequence[Comparison]) -> Where:
    """What one fact must hold, all comparisons of the group being of its slot."""
    where = Where([f"{table}.slot = ?"], [slot])
    compare(where, f"{table}.value", group)
    return where


def horse_ids_called(connection: sqlite3.Connection, name: str) -> list[int]:
    """The horses of this name, or else those also called so."""
    key = name_key(name)
    exact = "SELECT id FROM horses WHERE name_key = ? ORDER BY place_key"
    called = """SELECT id FROM horses WHERE also_called <> '[]' AND EXISTS (
        SELECT 1 FROM json_each(also_called) WHERE name_key(json_each.value) = ?) ORDER BY name_key, place_key"""
    return next(filter(None, ([row["id"] for row in rows(connection, sql, [key])] for sql in (exact, called))), [])
