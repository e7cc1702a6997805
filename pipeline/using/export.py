"""A horse's record to hand on: JSON for programs, CSV for tables, Markdown for people."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable, Sequence
from pathlib import Path

from pipeline.errors import SettingsError
from pipeline.judging import cautions
from pipeline.keeping import KeptHorse, KeptVisit, Store
from pipeline.record import Fact, Memo, MemoRecord
from pipeline.using.files import write_whole
from pipeline.using.markdown import DISCLAIMER, as_markdown, own_flags
from pipeline.using.wording import MEASURE_UNITS, fact_words

COLUMNS = (
    "horse", "owner", "place", "date", "visit", "foot", "slot", "value", "unit", "zone", "status", "severity",
    "in_words", "confidence", "flagged", "reasons", "quote", "start_s", "end_s", "memo_file", "memo_sha256",
)  # fmt: skip
# The wide forms are formula signs to some spreadsheets too.
_DANGEROUS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")


def export_horse(store: Store, horse: str, form: str, place: str | None = None) -> str:
    """A horse's whole record as text in ``json``, ``csv`` or ``md``.

    Raises NotFoundError for a horse that is unknown or one of several, SettingsError for another form.
    """
    if form not in FORMS:
        raise SettingsError(f"{form!r} is no form of export; known are {', '.join(FORMS)}.")
    kept = store.horse(horse, place)
    return FORMS[form](kept, store.visits_of(kept.name, kept.horse.place or ""))


def export_to(store: Store, horse: str, form: str, path: Path, place: str | None = None) -> None:
    """Write a horse's record to ``path``, whole or not at all; errors as in ``export_horse`` and ``write_whole``."""
    write_whole(path, export_horse(store, horse, form, place))


def as_json(horse: KeptHorse, visits: Sequence[KeptVisit]) -> str:
    """The horse and one contract object a visit, oldest first.

    Other horses of the same memo stay out, and so does a transcript that they share: a record goes to one owner.
    """
    record = {
        "horse": horse.horse.model_dump(mode="json"),
        "note": DISCLAIMER,
        "memos": [_own_record(visit).model_dump(mode="json") for visit in visits],
    }
    return json.dumps(record, ensure_ascii=False, indent=2) + "\n"


def as_csv(horse: KeptHorse, visits: Sequence[KeptVisit]) -> str:
    """One fact a row under ``COLUMNS``; text that a spreadsheet would run is made plain text by an apostrophe."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for visit in visits:
        for fact in visit.visit.facts:
            writer.writerow([_cell(value) for value in _row(horse, visit, fact)])
    return out.getvalue()


FORMS: dict[str, Callable[[KeptHorse, Sequence[KeptVisit]], str]] = {
    "json": as_json,
    "csv": as_csv,
    "md": as_markdown,
}


def _own_record(kept: KeptVisit) -> MemoRecord:
    record = kept.memo.record
    shared = len(record.visits) > 1
    memo = Memo(**{**record.memo.model_dump(), "path": kept.memo.file_name})
    return MemoRecord(
        id=record.id,
        memo=memo,
        transcript="" if shared else record.transcript,
        visits=[kept.visit],
        cautions=cautions(kept.visit.facts),
        flags=own_flags(kept),
    )


def _row(horse: KeptHorse, kept: KeptVisit, fact: Fact) -> list[str | float | int | None]:
    return [
        horse.name,
        horse.horse.owner,
        horse.horse.place,
        kept.visit.date.isoformat(),
        kept.id,
        fact.foot,
        fact.slot,
        fact.value,
        MEASURE_UNITS.get(fact.slot),
        fact.zone,
        fact.status.value,
        fact.severity.value if fact.severity else None,
        fact_words(fact),
        round(fact.confidence, 4),
        "yes" if fact.flagged else "no",
        "; ".join(fact.reasons),
        fact.quote,
        fact.start,
        fact.end,
        kept.memo.file_name,
        kept.memo.record.memo.sha256,
    ]


def _cell(value: str | float | int | None) -> str | float | int:
    if value is None:
        return ""
    if isinstance(value, float) and value.is_integer():
        return int(value)
    if not isinstance(value, str):
        return value
    plain = value.replace("\x00", "")
    # Some spreadsheets pass over white space before they look for a formula.
    return f"'{plain}" if plain.lstrip(" \n").startswith(_DANGEROUS) else plain
