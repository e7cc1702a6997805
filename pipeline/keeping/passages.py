"""Search in what was said: stretches of transcripts and notes that hold the wanted words."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Sequence
from datetime import date

from pipeline.keeping.asking import Where, match_expression, rows, visit_conditions, words_of
from pipeline.keeping.seen import Passage, Wanted
from pipeline.terms import Status

_WORD = re.compile(r"\w+")
_AROUND = 60  # characters of a passage on either side of the word that was found

# The visits' numbers and days are sorted alone; the texts are read for those that are listed.
_PASSAGES = """
WITH newest AS MATERIALIZED (
    SELECT visits.id FROM {index} JOIN {table} ON {table}.id = {index}.rowid {join}
    WHERE {index} MATCH ? AND {where} ORDER BY visits.date DESC, visits.id LIMIT ?
)
SELECT visits.id AS visit, visits.date, coalesce(horses.name, visits.horse_heard) AS horse, {column} AS text,
    memos.id AS memo
FROM newest JOIN visits ON visits.id = newest.id JOIN memos ON memos.id = visits.memo
LEFT JOIN horses ON horses.id = visits.horse ORDER BY visits.date DESC, visits.id
"""
_NOTES = ("notes", "visits.notes", "visit_words", "visits", "")
_TRANSCRIPT = ("transcript", "memos.transcript", "memo_words", "memos", "JOIN visits ON visits.memo = memos.id")


def find_passages(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> list[Passage]:
    """Stretches of notes and transcripts that hold every wanted word, of the visits that fit;
    more than ``wanted.limit`` of them say that there are more.

    Unless absent facts are wanted, a word that a memo says only to deny it finds nothing there.
    """
    expression = match_expression(wanted.words)
    if expression is None:
        return []
    where = Where()
    visit_conditions(where, wanted, horse_ids)
    tokens = words_of(wanted.words)
    hides_absent = bool(wanted.statuses) and Status.ABSENT.value not in wanted.statuses
    found: list[Passage] = []
    for name, column, index, table, join in (_NOTES, _TRANSCRIPT):
        sql = _PASSAGES.format(column=column, index=index, table=table, join=join, where=where.sql)
        for row in rows(connection, sql, [expression, *where.parameters, wanted.limit + 1]):
            denied = _denied_spans(connection, row["memo"]) if name == "transcript" and hides_absent else []
            places = [_place_of(token, row["text"], denied) for token in tokens]
            if all(place is not None for place in places):
                text = _around(row["text"], min(place for place in places if place is not None))
                found.append(Passage(row["visit"], date.fromisoformat(row["date"]), row["horse"], text, name))
    return found


def _denied_spans(connection: sqlite3.Connection, memo_id: int) -> list[tuple[int, int]]:
    sql = """SELECT facts.span_start, facts.span_end FROM visits JOIN facts_in_full AS facts ON facts.visit = visits.id
             WHERE visits.memo = ? AND facts.status = 'absent'"""
    return [(row["span_start"], row["span_end"]) for row in rows(connection, sql, [memo_id])]


def _place_of(token: str, text: str, denied: Sequence[tuple[int, int]]) -> int | None:
    """Where ``token`` first stands outside what was denied; 0 when it cannot be located, None when only denied."""
    starts = [match.start() for match in _WORD.finditer(text) if match.group().casefold() == token]
    if not starts:
        return 0
    return next((start for start in starts if not any(low <= start < high for low, high in denied)), None)


def _around(text: str, place: int) -> str:
    low, high = max(0, place - _AROUND), min(len(text), place + _AROUND)
    low = text.rfind(" ", 0, low) + 1 if low else 0
    high = text.find(" ", high) if text.find(" ", high) >= 0 else len(text)
    # Notes are a sentence a line without its full stop.
    words = text[low:high].replace("\n", "; ")
    return f"{'…' if low else ''}{words}{'…' if high < len(text) else ''}"
