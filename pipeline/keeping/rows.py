"""Between the record's models and the store's rows, both ways."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import datetime
from typing import Any

from pydantic import TypeAdapter

from pipeline.keeping.kept import HistoryEntry, KeptFact, KeptFlag, KeptHorse
from pipeline.keeping.names import keepable, name_key
from pipeline.record import Fact, Flag, Memo, MemoRecord, RosterHorse, Transcript, Visit, Word

Row = Mapping[str, Any]
Columns = dict[str, str | float | int | None]
_WORDS = TypeAdapter(list[Word])  # reads a memo's words at once, a hundred of them in the time of three


def as_json(value: object) -> str:
    """Compact JSON that keeps letters as they are."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def memo_columns(record: MemoRecord, transcript: Transcript, file_name: str, stored_path: str) -> Columns:
    """The row of a memo, but for when and by which versions it was kept."""
    memo = record.memo
    return {
        "given_id": record.id,
        "sha256": memo.sha256,
        "path": None if memo.path is None else keepable(memo.path),
        "file_name": keepable(file_name),
        "stored_path": stored_path,
        "container": memo.container,
        "seconds": memo.seconds,
        "recorded_at": memo.recorded_at.isoformat() if memo.recorded_at else None,
        "recorded_from": memo.recorded_from,
        "transcript": record.transcript,
        "words": words_json(transcript),
    }


def words_json(transcript: Transcript) -> str:
    """The words of a transcript as the store keeps them."""
    return as_json([word.model_dump(mode="json") for word in transcript.words])


def memo_of(row: Row) -> Memo:
    """The recording behind a row of ``memos``."""
    return Memo(
        path=row["path"],
        sha256=row["sha256"],
        seconds=row["seconds"],
        recorded_at=datetime.fromisoformat(row["recorded_at"]) if row["recorded_at"] else None,
        recorded_from=row["recorded_from"],
        container=row["container"],
    )


def transcript_of(row: Row) -> Transcript:
    """The words behind a row of ``memos``."""
    return Transcript(text=row["transcript"], words=_WORDS.validate_json(row["words"]))


def visit_columns(visit: Visit, memo_id: int, position: int, horse_id: int | None) -> Columns:
    """The row of a visit."""
    return {
        "memo": memo_id,
        "position": position,
        "horse": horse_id,
        "horse_heard": visit.horse,
        "heard_key": None if visit.horse is None else name_key(visit.horse),
        "horse_match": visit.horse_match.value,
        "date": visit.date.isoformat(),
        "notes": visit.notes,
    }


def fact_columns(fact: Fact, visit_id: int, position: int) -> Columns:
    """The row of a fact; a number is always kept as a real."""
    return {
        "visit": visit_id,
        "position": position,
        "foot": fact.foot,
        "slot": fact.slot,
        "value": fact.value if isinstance(fact.value, str) else float(fact.value),
        "zone": fact.zone,
        "status": fact.status.value,
        "severity": fact.severity.value if fact.severity else None,
        "confidence": float(fact.confidence),
        "flagged": int(fact.flagged),
        "reasons": as_json(fact.reasons),
        "quote": fact.quote,
        "start_s": fact.start,
        "end_s": fact.end,
        "span_start": fact.span[0],
        "span_end": fact.span[1],
        "match": fact.match.value,
        "rules": as_json(fact.rules),
    }


def fact_of(row: Row) -> Fact:
    """The fact behind a row of ``facts``."""
    same = ("foot", "slot", "value", "zone", "status", "severity", "confidence", "quote", "match")
    return Fact(
        **{name: row[name] for name in same},
        flagged=bool(row["flagged"]),
        reasons=_texts(row["reasons"]),
        start=row["start_s"],
        end=row["end_s"],
        span=(row["span_start"], row["span_end"]),
        rules=_texts(row["rules"]),
    )


def _texts(kept: str) -> list[str]:
    """A list of texts kept as JSON; most are empty, and need no reader of JSON."""
    return [] if kept == "[]" else list(json.loads(kept))


def kept_fact_of(row: Row) -> KeptFact:
    """The fact behind a row of ``facts``, with what a person decided about it."""
    return KeptFact(
        id=row["id"],
        visit_id=row["visit"],
        fact=fact_of(row),
        stands=bool(row["stands"]),
        settled=bool(row["settled"]),
        by_hand=row["reading"] is None,
    )


def flag_columns(flag: Flag, memo_id: int, visit_id: int | None, position: int) -> Columns:
    """The row of a flag; ``visit_id`` None for a doubt of the whole memo."""
    return {
        "memo": memo_id,
        "visit": visit_id,
        "position": position,
        "kind": flag.kind.value,
        "reason": flag.reason,
        "quote": flag.quote,
        "start_s": flag.start,
        "end_s": flag.end,
        "span_start": flag.span[0],
        "span_end": flag.span[1],
    }


def flag_of(row: Row) -> Flag:
    """The flag behind a row of ``flags``."""
    return Flag(
        kind=row["kind"],
        reason=row["reason"],
        quote=row["quote"],
        start=row["start_s"],
        end=row["end_s"],
        span=(row["span_start"], row["span_end"]),
    )


def kept_flag_of(row: Row) -> KeptFlag:
    """The flag behind a row of ``flags``, with its row."""
    return KeptFlag(row["id"], flag_of(row), row["visit"])


def horse_columns(horse: RosterHorse) -> Columns:
    """The row of a horse."""
    return {
        "name": horse.name,
        "name_key": name_key(horse.name),
        "owner": horse.owner,
        "place": horse.place,
        "place_key": name_key(horse.place),
        "also_called": as_json(horse.also_called),
        "other": as_json(horse.other),
    }


def horse_of(row: Row) -> KeptHorse:
    """The horse behind a row of ``horses``."""
    horse = RosterHorse(
        name=row["name"],
        owner=row["owner"],
        place=row["place"],
        also_called=json.loads(row["also_called"]),
        other=json.loads(row["other"]),
    )
    return KeptHorse(row["id"], horse, row["from_memo"])


def history_of(row: Row) -> HistoryEntry:
    """The correction behind a row of ``history``."""
    return HistoryEntry(
        at=datetime.fromisoformat(row["at"]),
        who=row["who"],
        table=row["in_table"],
        row=row["in_row"],
        column=row["in_column"],
        old=row["old"],
        new=row["new"],
        why=row["why"],
        change=row["change"],
        id=row["id"],
    )
