"""Search inside the store: by what the facts say, and by free words through the full-text index."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING

from pipeline.keeping.kept import Found, Passage, Wanted
from pipeline.keeping.names import name_key
from pipeline.keeping.rows import found_of
from pipeline.record import Status

if TYPE_CHECKING:
    from sqlite_utils import Database

Parameter = str | float | int

_WORD = re.compile(r"\w+")
_AROUND = 60  # characters of a passage on either side of the word that was found

_PASSAGES = """
SELECT visits.id AS visit, visits.date, coalesce(horses.name, visits.horse_heard) AS horse, {column} AS text,
    memos.id AS memo
FROM {index} JOIN {table} ON {table}.id = {index}.rowid {join}
LEFT JOIN horses ON horses.id = visits.horse
WHERE {index} MATCH ? AND visits.stands = 1 AND {where} ORDER BY visits.date DESC, visits.id LIMIT ?
"""
_NOTES = ("notes", "visits.notes", "visit_words", "visits", "JOIN memos ON memos.id = visits.memo")
_TRANSCRIPT = ("transcript", "memos.transcript", "memo_words", "memos", "JOIN visits ON visits.memo = memos.id")


@dataclass
class _Where:
    """Conditions joined by AND, with their parameters."""

    parts: list[str] = field(default_factory=list)
    parameters: list[Parameter] = field(default_factory=list)

    def add(self, condition: str, *parameters: Parameter) -> None:
        self.parts.append(condition)
        self.parameters.extend(parameters)

    def one_of(self, column: str, values: Sequence[Parameter]) -> None:
        if values:
            self.add(f"{column} IN ({','.join('?' * len(values))})", *values)

    @property
    def sql(self) -> str:
        return " AND ".join(self.parts) or "1"


def match_expression(words: Sequence[str]) -> str | None:
    """A full-text query in which every word is quoted, so that no punctuation is an operator; None without words."""
    tokens = [token for word in words for token in _WORD.findall(word)]
    return " ".join(f'"{token}"' for token in tokens) if tokens else None


def find_facts(database: Database, wanted: Wanted, horse_ids: Sequence[int]) -> Found:
    """The facts that hold all of what is wanted, newest visit first, at most ``wanted.limit``."""
    where = _fact_conditions(wanted)
    _visit_conditions(where, wanted, horse_ids, horse="horse_id")
    if wanted.words:
        expression = match_expression(wanted.words)
        if expression is None:
            return Found()
        where.add("id IN (SELECT rowid FROM fact_words WHERE fact_words MATCH ?)", expression)
    sql = f"SELECT * FROM facts_in_full WHERE {where.sql} ORDER BY date DESC, visit, position LIMIT ?"
    facts = [found_of(row) for row in database.query(sql, [*where.parameters, wanted.limit + 1])]
    return Found(facts=facts[: wanted.limit], more=len(facts) > wanted.limit)


def find_passages(database: Database, wanted: Wanted, horse_ids: Sequence[int]) -> list[Passage]:
    """Stretches of notes and transcripts that hold every wanted word, of the visits that fit;
    more than ``wanted.limit`` of them say that there are more.

    Unless absent facts are wanted, a word that a memo says only to deny it finds nothing there.
    """
    expression = match_expression(wanted.words)
    if expression is None:
        return []
    where = _Where()
    _visit_conditions(where, wanted, horse_ids, horse="visits.horse", prefix="visits.")
    tokens = [token.casefold() for word in wanted.words for token in _WORD.findall(word)]
    found: list[Passage] = []
    for name, column, index, table, join in (_NOTES, _TRANSCRIPT):
        sql = _PASSAGES.format(column=column, index=index, table=table, join=join, where=where.sql)
        for row in database.query(sql, [expression, *where.parameters, wanted.limit + 1]):
            denied = _denied_spans(database, row["memo"]) if name == "transcript" and _hides_absent(wanted) else []
            places = [_places_of(token, row["text"], denied) for token in tokens]
            if all(place is not None for place in places):
                text = _around(row["text"], min(place for place in places if place is not None))
                found.append(Passage(row["visit"], date.fromisoformat(row["date"]), row["horse"], text, name))
    return found


def _fact_conditions(wanted: Wanted) -> _Where:
    where = _Where()
    where.one_of("slot", wanted.slots)
    where.one_of("zone", wanted.zones)
    where.one_of("status", wanted.statuses)
    if wanted.values:
        where.add(
            "(" + " OR ".join("(slot = ? AND value = ?)" for _ in wanted.values) + ")",
            *(part for pair in wanted.values for part in pair),
        )
    if wanted.feet:
        feet = [foot for foot in wanted.feet if foot is not None]
        whole = ["foot IS NULL"] if None in wanted.feet else []
        named = [f"foot IN ({','.join('?' * len(feet))})"] if feet else []
        where.add(f"({' OR '.join(whole + named)})", *feet)
    if wanted.flagged is not None:
        where.add("flagged = ?", int(wanted.flagged))
    return where


def _visit_conditions(where: _Where, wanted: Wanted, horse_ids: Sequence[int], horse: str, prefix: str = "") -> None:
    if wanted.horse is not None:
        marks = ",".join("?" * len(horse_ids))
        heard = f"({horse} IS NULL AND {prefix}heard_key = ?)"
        where.add(f"({horse} IN ({marks}) OR {heard})", *horse_ids, name_key(wanted.horse))
    if wanted.owner is not None:
        where.add(f"{horse} IN (SELECT id FROM horses WHERE instr(name_key(owner), ?) > 0)", name_key(wanted.owner))
    if wanted.place is not None:
        where.add(f"{horse} IN (SELECT id FROM horses WHERE instr(place_key, ?) > 0)", name_key(wanted.place))
    if wanted.since is not None:
        where.add(f"{prefix}date >= ?", wanted.since.isoformat())
    if wanted.until is not None:
        where.add(f"{prefix}date <= ?", wanted.until.isoformat())


def _hides_absent(wanted: Wanted) -> bool:
    return bool(wanted.statuses) and Status.ABSENT.value not in wanted.statuses


def _denied_spans(database: Database, memo_id: int) -> list[tuple[int, int]]:
    sql = "SELECT span_start, span_end FROM facts_in_full WHERE memo = ? AND status = 'absent'"
    return [(row["span_start"], row["span_end"]) for row in database.query(sql, [memo_id])]


def _places_of(token: str, text: str, denied: Sequence[tuple[int, int]]) -> int | None:
    """Where ``token`` first stands outside what was denied; 0 when it cannot be located, None when only denied."""
    starts = [match.start() for match in _WORD.finditer(text) if match.group().casefold() == token]
    if not starts:
        return 0
    return next((start for start in starts if not any(low <= start < high for low, high in denied)), None)


def _around(text: str, place: int) -> str:
    low, high = max(0, place - _AROUND), min(len(text), place + _AROUND)
    low = text.rfind(" ", 0, low) + 1 if low else 0
    high = text.find(" ", high) if text.find(" ", high) >= 0 else len(text)
    return f"{'…' if low else ''}{text[low:high]}{'…' if high < len(text) else ''}"
