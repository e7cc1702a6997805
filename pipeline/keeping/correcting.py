"""What a correction does to the rows, inside the change that the caller began.

The record's own models decide what a fact may say, so that nothing gets in by hand that could not have been read.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, TypedDict

from pydantic import ValidationError

from pipeline.errors import CorrectionError, NotFoundError
from pipeline.judging.asked_place import asked_place
from pipeline.keeping.database import insert_row, update_row
from pipeline.keeping.names import name_key
from pipeline.keeping.raw import RawRow
from pipeline.keeping.rows import Columns, fact_columns, fact_of
from pipeline.record import Fact, FlagKind, Foot, HorseMatch, MatchKind, Severity, Status, Transcript

if TYPE_CHECKING:
    from sqlite_utils import Database

BY_HAND = "entered by hand"  # the rule of a fact that no rule found
_CORRECTED = ("foot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons")

_FACT = """
SELECT facts.*, visits.memo, memos.reading AS memo_reading FROM facts
JOIN visits ON visits.id = facts.visit JOIN memos ON memos.id = visits.memo WHERE facts.id = ?
"""


class FactFields(TypedDict, total=False):
    """What may be corrected in a fact; a key that is left out stays as it is, None takes a zone or a foot away."""

    foot: Foot | None
    value: str | float
    zone: str | None
    status: Status
    severity: Severity | None


def fact_row(database: Database, fact_id: int) -> RawRow:
    """The row of a fact of the reading that stands, with ``memo``.

    Raises NotFoundError, or CorrectionError for a fact of another reading.
    """
    row = next(iter(database.query(_FACT, [fact_id])), None)
    if row is None:
        raise NotFoundError(f"There is no fact {fact_id} in the store.")
    if row["reading"] is not None and row["reading"] != row["memo_reading"]:
        raise CorrectionError(f"Fact {fact_id} is of an earlier reading of its memo; correct the present one.")
    return row


def flag_row(database: Database, flag_id: int) -> RawRow:
    """The row of a flag of the reading that stands; raises NotFoundError, CorrectionError as ``fact_row`` does."""
    sql = (
        "SELECT flags.*, memos.reading AS memo_reading FROM flags JOIN memos ON memos.id = flags.memo WHERE flags.id=?"
    )
    row = next(iter(database.query(sql, [flag_id])), None)
    if row is None:
        raise NotFoundError(f"There is no flag {flag_id} in the store.")
    if row["reading"] != row["memo_reading"]:
        raise CorrectionError(f"Flag {flag_id} is of an earlier reading of its memo.")
    return row


def checked(fact: Fact, fields: FactFields) -> Fact:
    """The fact with these fields, as a person stands for it: sure, without a flag. Raises CorrectionError."""
    unknown = fields.keys() - FactFields.__annotations__.keys()
    if unknown:
        raise CorrectionError(f"{min(unknown)!r} of a fact is not corrected by hand.")
    if isinstance(fields.get("value"), bool):
        raise CorrectionError("This cannot be kept: a value is a word or a number, not yes or no.")
    sure = {"confidence": 1.0, "flagged": False, "reasons": []}
    try:
        return Fact.model_validate({**fact.model_dump(), **sure, **fields})
    except ValidationError as error:
        raise CorrectionError(_sentence(error)) from error


def settle_fact(database: Database, row: RawRow, fields: FactFields) -> None:
    """Write what a person says of a fact; with no fields he says that it is right. Raises CorrectionError."""
    columns = fact_columns(checked(fact_of(row), fields), row["visit"], row["position"])
    update_row(database, "facts", row["id"], {**{name: columns[name] for name in _CORRECTED}, "settled": 1})


def drop_fact(database: Database, row: RawRow) -> None:
    """A person says that this was not said; the fact stays, and stands no more."""
    update_row(database, "facts", row["id"], {"stands": 0, "settled": 1})


def restore_fact(database: Database, row: RawRow) -> None:
    """A person says that a dropped fact was said after all."""
    settle_fact(database, row, {})
    update_row(database, "facts", row["id"], {"stands": 1})


def move_fact(database: Database, row: RawRow, visit: RawRow) -> None:
    """Put a fact under another visit of its memo; raises CorrectionError for a visit of another memo."""
    if visit["memo"] != row["memo"]:
        raise CorrectionError(
            f"Visit {visit['id']} is of another memo; a fact stays with the memo that it was said in."
        )
    columns: Columns = {"visit": visit["id"], "position": next_position(database, row["memo"])}
    update_row(
        database, "facts", row["id"], {**columns, "settled": 1, "flagged": 0, "reasons": "[]", "confidence": 1.0}
    )


def enter_fact(database: Database, fact: Fact, visit: RawRow, transcript: Transcript, change: int) -> int:
    """Add a fact that was missed, and return its number. A span that is given must be true of the transcript.

    Raises CorrectionError for a span or quote that the transcript does not hold.
    """
    said = _with_words(fact, transcript)
    position = next_position(database, visit["memo"])
    columns = fact_columns(said, visit["id"], position)
    return insert_row(database, "facts", {**columns, "reading": None, "settled": 1, "change": change})


def enter_visit(database: Database, memo_id: int, horse_id: int, day: date, change: int) -> int:
    """Add a visit that was missed in a memo, and return its number."""
    sql = "SELECT coalesce(max(position), -1) + 1 FROM visits WHERE memo = ?"
    row: Columns = {
        "memo": memo_id,
        "position": int(database.execute(sql, [memo_id]).fetchone()[0]),
        "horse": horse_id,
        "horse_match": HorseMatch.KNOWN.value,
        "date": day.isoformat(),
        "change": change,
    }
    return insert_row(database, "visits", row)


def assign_visit(database: Database, visit_id: int, horse_id: int) -> None:
    """Give a visit to a horse; its questions about the horse are answered with that, but for where another comes in."""
    update_row(database, "visits", visit_id, {"horse": horse_id, "horse_match": HorseMatch.KNOWN.value})
    sql = "SELECT id, reason FROM flags WHERE visit = ? AND kind = ? AND settled = 0"
    for row in list(database.query(sql, [visit_id, FlagKind.HORSE.value])):
        if asked_place(row["reason"]) is None:
            update_row(database, "flags", row["id"], {"settled": 1})


def next_position(database: Database, memo_id: int) -> int:
    """A position that no fact of the memo has, behind all of them."""
    sql = """SELECT coalesce(max(facts.position), -1) + 1 FROM facts
             JOIN visits ON visits.id = facts.visit WHERE visits.memo = ?"""
    return int(database.execute(sql, [memo_id]).fetchone()[0])


def heard_columns(name: str | None) -> Columns:
    """The columns of a visit that hold the horse's name as heard."""
    return {"horse_heard": name, "heard_key": None if name is None else name_key(name)}


def _with_words(fact: Fact, transcript: Transcript) -> Fact:
    """The fact as entered by hand, with the seconds of its words where it names them."""
    start, end = fact.span
    quote = transcript.text[start:end]
    if not 0 <= start <= end <= len(transcript.text) or (end > start and fact.quote not in ("", quote)):
        raise CorrectionError("The words that this fact names are not in the memo.")
    if end == start and fact.quote:
        start = transcript.text.find(fact.quote)
        if start < 0:
            raise CorrectionError(f"“{fact.quote}” is not in the memo.")
        start, end, quote = start, start + len(fact.quote), fact.quote
    seconds = transcript.seconds_of(start, end) if end > start else (None, None)
    words = {"quote": quote, "span": (start, end), "start": seconds[0], "end": seconds[1]}
    entered = {"match": MatchKind.EXACT, "rules": [BY_HAND]}
    return checked(fact.model_copy(update={**words, **entered}), {})


def _sentence(error: ValidationError) -> str:
    first = error.errors()[0]
    said = first["msg"].removeprefix("Value error, ")
    field = str(first["loc"][0]).replace("_", " ") if first["loc"] else ""
    return f"This cannot be kept: {field} {said[0].lower() + said[1:]}." if field else f"This cannot be kept: {said}."
