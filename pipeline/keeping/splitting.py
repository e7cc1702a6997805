"""One visit taken apart at a place: what is told there is another horse's, or the same horse's after all.

A reader that suspects a lost name asks about the place and flags every fact of the part behind it. The answer is one
change about that flag: ``move`` to another visit, or ``accept``. A later reading finds the part again by its words or
seconds, so that what it reads there goes the same way.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import TYPE_CHECKING

from pipeline.errors import CorrectionError
from pipeline.judging.agreement import disagreements
from pipeline.judging.asked_place import AskedPlace, asked_place
from pipeline.keeping import carrying, changes, reading_back
from pipeline.keeping.changes import About, ChangeKind
from pipeline.keeping.correcting import enter_visit, flag_row, next_position
from pipeline.keeping.database import update_row
from pipeline.keeping.raw import RawRow
from pipeline.keeping.rows import Columns, as_json, fact_of, transcript_of
from pipeline.record import FlagKind, Transcript

if TYPE_CHECKING:
    from sqlite_utils import Database

_ANSWERED = """
SELECT changes.*, (
    SELECT new FROM history WHERE change = changes.id AND in_table = 'facts' AND in_column = 'visit' LIMIT 1
) AS into_visit FROM changes
WHERE memo = ? AND id > ? AND kind IN ('move', 'accept') AND flag IS NOT NULL
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id) ORDER BY id
"""
_FACTS = "SELECT * FROM facts WHERE visit = ? AND (reading IS NULL OR reading = ?) ORDER BY position"
_FLAGS = "SELECT * FROM flags WHERE visit = ? AND reading = ? ORDER BY position, id"


@dataclass(frozen=True)
class Part:
    """What is told at a place that was asked about: the characters ``[first, last)`` of a wording of the memo.

    It was asked from ``place`` on; a person may have said that the other horse came in later.
    """

    asked: AskedPlace
    place: int
    first: int
    last: int

    def holds(self, row: RawRow) -> bool:
        """Whether a fact or flag was said there; one without words was said nowhere."""
        return self.first <= int(row["span_start"]) < min(self.last, int(row["span_end"]))


@dataclass(frozen=True)
class Answered:
    """A part, the visit that it was read in, and the one that it went to; None when it stayed."""

    part: Part
    visit: int
    into: int | None


def part_of(database: Database, flag: RawRow) -> Part:
    """The part that a flag asks about: to the next name, or the next fact that was not doubted with the others.

    Raises CorrectionError for a flag that asks about no such place.
    """
    asked = asked_place(flag["reason"]) if flag["kind"] == FlagKind.HORSE.value else None
    if asked is None:
        raise CorrectionError("This does not ask where another horse comes in.")
    if asked.before:
        return Part(asked, 0, 0, flag["span_end"])
    sql = """SELECT facts.* FROM facts JOIN visits ON visits.id = facts.visit
             WHERE visits.memo = ? AND facts.reading = ? AND span_end > span_start"""
    rows = list(database.query(sql, [flag["memo"], flag["reading"]]))
    read = [told.read for told in carrying.told(database, rows)]
    doubted = [row for row in read if asked.of_fact in json.loads(row["reasons"])]
    reached = max((row["span_end"] for row in doubted), default=flag["span_start"])
    others = [row["span_start"] for row in read if row["span_start"] >= reached and row not in doubted]
    text = _wording(database, flag["memo"], flag["reading"]).text
    last = min([*others, *_names(database, flag["memo"], text, reached), len(text)])
    return Part(asked, flag["span_start"], flag["span_start"], last)


@dataclass(frozen=True)
class Whose:
    """The horse that is told of at the place of a flag, and from which character on if not from the place itself."""

    flag: int
    horse: int
    start: int | None = None


def split(database: Database, visit: RawRow, whose: Whose, at: str) -> None:
    """Give what is told at the place of a flag to another horse: to its visit in the same memo, or to a new one.

    Raises CorrectionError for its own horse, for a start that is not there, and when nothing that is told there stands.
    """
    flag, horse_id = _open_flag(database, visit, whose.flag), whose.horse
    part = _from(part_of(database, flag), whose.start)
    if visit["horse"] == horse_id:
        raise CorrectionError("That is the horse it stands at already; say that it is the same horse.")
    told = [row for row in database.query(_FACTS, [visit["id"], flag["reading"]]) if part.holds(row)]
    standing = sorted((row for row in told if row["stands"]), key=lambda row: row["reading"] is None)
    if not standing:
        raise CorrectionError("Nothing that is told there stands any more; say that it is the same horse.")
    about = About(visit["memo"], visit["id"], standing[0]["id"], whose.flag, place=part.first)
    change = changes.begin(database, ChangeKind.MOVE, about, at)
    into = visit_at(database, visit["memo"], horse_id)
    if into is None:
        new = enter_visit(database, visit["memo"], horse_id, date.fromisoformat(visit["date"]), change)
        into = reading_back.visit_row(database, new)
    text = _wording(database, visit["memo"], flag["reading"]).text
    notes = {row["id"]: row["notes"] for row in (visit, into)}
    _go(database, Answered(part, visit["id"], into["id"]), flag["reading"])
    for number, lines in notes_apart(text, notes, [Answered(part, visit["id"], into["id"])]).items():
        update_row(database, "visits", number, {"notes": lines})


def same_horse(database: Database, visit: RawRow, flag_id: int, at: str) -> None:
    """What is told at the place of a flag is the same horse's: nobody is asked whose its facts are."""
    flag = _open_flag(database, visit, flag_id)
    part = part_of(database, flag)
    told = list(database.query(_FACTS, [visit["id"], flag["reading"]]))
    doubted = [row["id"] for row in told if part.asked.of_fact in json.loads(row["reasons"])]
    about = About(visit["memo"], visit["id"], doubted[0] if doubted else None, flag_id)
    changes.begin(database, ChangeKind.ACCEPT, about, at)
    _go(database, Answered(part, visit["id"], None), flag["reading"])


def visit_at(database: Database, memo_id: int, horse_id: int) -> RawRow | None:
    """The visit at a horse in a memo, the last one if there are several."""
    sql = "SELECT * FROM visits WHERE memo = ? AND horse = ? AND stands = 1 ORDER BY id DESC LIMIT 1"
    return next(iter(database.query(sql, [memo_id, horse_id])), None)


def answered(database: Database, memo_id: int, words: Transcript, since: int = 0) -> list[Answered]:
    """What was said of such places after the change ``since`` and not taken back, found in these words, oldest first.

    A part of which these words know nothing is left out: it is asked about anew.
    """
    found = []
    for row in list(database.query(_ANSWERED, [memo_id, since])):
        flag = next(iter(database.query("SELECT * FROM flags WHERE id = ?", [row["flag"]])))
        asked = _from(part_of(database, flag), row["place"])
        part = _found_in(asked, _wording(database, memo_id, flag["reading"]), words)
        if part is not None and (row["kind"] == ChangeKind.ACCEPT.value or row["into_visit"] is not None):
            found.append(Answered(part, row["visit"], row["into_visit"]))
    return found


def go_again(database: Database, told: Iterable[Answered], reading: int) -> None:
    """Let what a reading has read at these places go where a person said."""
    for one in told:
        _go(database, one, reading)


def notes_apart(text: str, notes: Mapping[int, str], told: Iterable[Answered]) -> dict[int, str]:
    """The notes of visits after the lines that were said at these places have gone along; in the order of ``told``."""
    apart = dict(notes)
    for one in told:
        if one.into is None or one.visit not in apart:
            continue
        stay, go = _lines(text, apart[one.visit], one.part)
        apart[one.visit] = "\n".join(stay)
        apart[one.into] = "\n".join(filter(None, [apart.get(one.into, ""), *go]))
    return apart


def flags_as_read(database: Database, flags: Iterable[RawRow]) -> dict[int, int | None]:
    """The visit that each of these flags was raised in, by the flag's number."""
    visits: dict[int, int | None] = {row["id"]: row["visit"] for row in flags}
    for entry in reversed(reading_back.history_of_rows(database, "flags", list(visits))):
        if entry.column == "visit" and entry.old is not None:
            visits[entry.row] = int(entry.old)
    return visits


def _from(part: Part, start: int | None) -> Part:
    if start is None:
        return part
    if not part.place <= start < part.last:
        raise CorrectionError("The other horse cannot come in there; choose a place in what is asked about.")
    return replace(part, first=start)


def _open_flag(database: Database, visit: RawRow, flag_id: int) -> RawRow:
    flag = flag_row(database, flag_id)
    if flag["visit"] != visit["id"] or flag["settled"]:
        raise CorrectionError(f"Flag {flag_id} is not open in visit {visit['id']}.")
    return flag


def _go(database: Database, told: Answered, reading: int) -> None:
    """Move what is told at the place, ask no more whose it is, and answer the question of that place."""
    part, reasons = told.part, {told.part.asked.of_fact}
    for flag in list(database.query(_FLAGS, [told.visit, reading])):
        asked = asked_place(flag["reason"]) if flag["kind"] == FlagKind.HORSE.value else None
        if asked and asked.before == part.asked.before and (asked.before or flag["span_start"] == part.place):
            reasons.add(asked.of_fact)
            update_row(database, "flags", flag["id"], {"settled": 1})
        elif told.into is not None and part.holds(flag):
            update_row(database, "flags", flag["id"], {"visit": told.into})
    memo = reading_back.visit_row(database, told.visit)["memo"]
    for row in list(database.query(_FACTS, [told.visit, reading])):
        columns = _without(row, reasons)
        if told.into is not None and part.holds(row):
            columns |= {"visit": told.into, "position": next_position(database, memo)}
        if columns:
            update_row(database, "facts", row["id"], columns)
    if told.into is not None:
        _end_contradictions(database, told.visit, told.into, reading)


def _without(row: RawRow, reasons: set[str]) -> Columns:
    """A fact without these reasons; it is no longer doubtful when there was no other."""
    before = json.loads(row["reasons"])
    left = [reason for reason in before if reason not in reasons]
    if left == before:
        return {}
    return {"reasons": as_json(left), "flagged": int(bool(left))}


def _end_contradictions(database: Database, visit: int, into: int, reading: int) -> None:
    """Facts of two horses contradict each other no more; what is still against something of its own horse stays so."""
    sides = {number: _standing(database, number, reading) for number in (visit, into)}
    against = {number: _contradicted(rows) for number, rows in sides.items()}
    for flag in list(database.query(_FLAGS, [visit, reading])):
        carriers = {
            number: [row for row in rows if flag["reason"] in json.loads(row["reasons"])]
            for number, rows in sides.items()
        }
        if flag["kind"] != FlagKind.CONTRADICTION.value or flag["settled"] or not carriers[into]:
            continue
        still = {number: [row for row in rows if row["id"] in against[number]] for number, rows in carriers.items()}
        for number, rows in carriers.items():
            for row in rows:
                if row not in still[number]:
                    now = _fact_now(database, row["id"])
                    update_row(database, "facts", row["id"], _without(now, {flag["reason"]}))
        if not still[visit]:
            update_row(database, "flags", flag["id"], {"visit": into} if still[into] else {"settled": 1})


def _standing(database: Database, visit: int, reading: int) -> list[RawRow]:
    return [row for row in database.query(_FACTS, [visit, reading]) if row["stands"]]


def _fact_now(database: Database, fact_id: int) -> RawRow:
    """The row of a fact as it is now."""
    return next(iter(database.query("SELECT * FROM facts WHERE id = ?", [fact_id])))


def _contradicted(rows: Sequence[RawRow]) -> set[int]:
    """The facts of one visit that something else in it speaks against, by number."""
    facts = [fact_of(row) for row in rows]
    against = {id(fact) for group, _ in disagreements(facts) for fact in group}
    return {row["id"] for row, fact in zip(rows, facts, strict=True) if id(fact) in against}


def _wording(database: Database, memo_id: int, reading: int) -> Transcript:
    """The words that a reading was made of."""
    sql = """SELECT transcript, words FROM hearings JOIN readings USING (memo)
             WHERE memo = ? AND readings.number = ? AND hearings.number = readings.hearing"""
    row = next(iter(database.query(sql, [memo_id, reading])), None)
    return transcript_of(row or next(iter(database.query("SELECT * FROM memos WHERE id = ?", [memo_id]))))


def _names(database: Database, memo_id: int, text: str, start: int) -> list[int]:
    """Where behind ``start`` a horse is named that was read in the memo, in whichever of its names."""
    sql = """SELECT horse_heard, name, also_called FROM visits LEFT JOIN horses ON horses.id = visits.horse
             WHERE visits.memo = ? AND horse_heard <> ''"""
    names: set[str] = set()
    for row in database.query(sql, [memo_id]):
        names |= {row["horse_heard"], row["name"] or "", *json.loads(row["also_called"] or "[]")} - {""}
    if not names:
        return []
    said = re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, sorted(names)))})(?!\w)", re.IGNORECASE)
    return [match.start() for match in said.finditer(text, start)]


def _lines(text: str, notes: str, part: Part) -> tuple[list[str], list[str]]:
    """The lines of notes that stay and those that were said at the place; they stand in the order of the words."""
    stay: list[str] = []
    go: list[str] = []
    at = 0
    for line in notes.split("\n") if notes else []:
        start = text.find(line, at)
        at = max(at, start + len(line))
        (go if line and part.first <= start < part.last else stay).append(line)
    return stay, go


def _found_in(part: Part, old: Transcript, new: Transcript) -> Part | None:
    """The part in another wording, by its seconds; None when they are not known."""
    if old.text == new.text:
        return part
    place, first, last = (_at(at, old, new) for at in (part.place, part.first, part.last))
    return None if place is None or first is None or last is None else Part(part.asked, place, first, last)


def _at(place: int, old: Transcript, new: Transcript) -> int | None:
    if place <= 0 or place >= len(old.text):
        return 0 if place <= 0 else len(new.text)
    begin, _ = old.seconds_of(place, len(old.text))
    if begin is None or not new.words:
        return None
    behind = (word.start for word in new.words if (word.start_s + word.end_s) / 2 >= begin)
    return next(behind, len(new.text))
