"""Search in what was said: stretches of transcripts and notes that hold the wanted words."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Sequence
from datetime import date
from math import isqrt

from pipeline.keeping.asking import Where, marks, match_expression, of_a_horse, rows, visit_conditions, words_of
from pipeline.keeping.seen import Passage, Wanted
from pipeline.terms import Status

_WORD = re.compile(r"\w+")
_AROUND = 60  # characters of a passage on either side of the word that was found

# The visits' numbers and days are sorted alone; the texts are read for those that are listed.
_PASSAGES = """
WITH newest AS MATERIALIZED (
    SELECT visits.id FROM visits {way}
    WHERE visits.{key} IN (SELECT rowid FROM {index} WHERE {index} MATCH ?) AND {where}
    ORDER BY visits.date DESC, visits.id LIMIT ?
)
SELECT visits.id AS visit, visits.date, coalesce(horses.name, visits.horse_heard) AS horse, {column} AS text,
    memos.id AS memo
FROM newest JOIN visits ON visits.id = newest.id JOIN memos ON memos.id = visits.memo
LEFT JOIN horses ON horses.id = visits.horse ORDER BY visits.date DESC, visits.id
"""
_NOTES = ("notes", "visits.notes", "visit_words", "id")
_TRANSCRIPT = ("transcript", "memos.transcript", "memo_words", "memo")


def find_passages(connection: sqlite3.Connection, wanted: Wanted, horse_ids: Sequence[int]) -> list[Passage]:
    """Stretches of notes and transcripts that hold every wanted word, of the visits that fit, notes first;
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
    for name, column, index, key in (_NOTES, _TRANSCRIPT):
        if len(found) > wanted.limit:
            break
        way = "INDEXED BY visits_by_date" if _many(connection, wanted, index, expression) else ""
        sql = _PASSAGES.format(column=column, index=index, key=key, way=way, where=where.sql)
        listed = list(rows(connection, sql, [expression, *where.parameters, wanted.limit + 1]))
        denied = _denied_spans(connection, listed) if name == "transcript" and hides_absent else {}
        for row in listed:
            places = [_place_of(token, row["text"], denied.get(row["memo"], [])) for token in tokens]
            if all(place is not None for place in places):
                text = _around(row["text"], min(place for place in places if place is not None))
                found.append(Passage(row["visit"], date.fromisoformat(row["date"]), row["horse"], text, name))
    return found


def _many(connection: sqlite3.Connection, wanted: Wanted, index: str, expression: str) -> bool:
    """Whether so many texts hold the words that the newest are found sooner by going through the visits day by day
    than by looking up every visit that has one."""
    if of_a_horse(wanted):
        return False
    everyone = connection.execute("SELECT max(id) FROM visits").fetchone()[0] or 0
    enough = isqrt(wanted.limit * everyone) + 1
    sql = f"SELECT count(*) FROM (SELECT 1 FROM {index} WHERE {index} MATCH ? LIMIT ?)"
    return bool(connection.execute(sql, [expression, enough]).fetchone()[0] == enough)


def _denied_spans(connection: sqlite3.Connection, listed: Sequence[sqlite3.Row]) -> dict[int, list[tuple[int, int]]]:
    """Where each of the memos denies something."""
    memos = [row["memo"] for row in listed]
    sql = f"""SELECT visits.memo, facts.span_start, facts.span_end
              FROM visits CROSS JOIN facts_in_full AS facts ON facts.visit = visits.id
              WHERE visits.memo IN ({marks(memos)}) AND +facts.status = 'absent'"""
    spans: dict[int, list[tuple[int, int]]] = {}
    for memo, low, high in connection.execute(sql, memos):
        spans.setdefault(memo, []).append((low, high))
    return spans


def _place_of(token: str, text: str, denied: Sequence[tuple[int, int]]) -> int | None:
    """Where ``token`` first stands outside what was denied; 0 when it cannot be located, None when only denied."""
    if text.isascii():  # there, disregarding case is the same as folding it, and takes a tenth of the time
        starts = [match.start() for match in re.finditer(rf"\b{re.escape(token)}\b", text, re.IGNORECASE)]
    else:
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
