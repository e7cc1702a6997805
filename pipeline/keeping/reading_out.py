"""What leaves the store with a record: memos with the visits that may go out, and the corrections made to them."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from pipeline.keeping import reading_back
from pipeline.keeping.decided import Decided, decided
from pipeline.keeping.forgetting import partly_forgotten
from pipeline.keeping.kept import HistoryEntry, KeptHorse, KeptVisit
from pipeline.keeping.record_file import ChangeOnFile, HorseOnFile, MemoOnFile, VisitOnFile
from pipeline.record import FlagKind, Memo

if TYPE_CHECKING:
    from sqlite_utils import Database

# Written down when a memo came from another store's record; it tells of this store alone, so it never goes out.
TAKEN_IN = "taken_in"
IN_PART = "in part, "  # of a memo whose other visits and transcript stayed where it came from
# What goes out of the history. A wording that another hearing replaced may speak of other horses, and stays.
_COLUMNS = {
    "memos": frozenset({"recorded_at", "recorded_from"}),
    "horses": frozenset({"name", "name_key", "owner", "place", "place_key", "also_called", "other"}),
    "visits": frozenset({"horse", "horse_match", "date", "notes"}),
    "facts": frozenset(
        {"foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons", "settled"}
    ),
}
_WHAT = {"memos": "memo", "horses": "horse", "visits": "visit", "facts": "fact"}


@dataclass(frozen=True)
class Leaving:
    """What goes out, in an order that does not depend on the store; ``memo_rows`` are the rows of the memos,
    ``decided`` the facts that a person entered or dropped, which no file carries."""

    horses: list[HorseOnFile]
    memos: list[MemoOnFile]
    history: list[ChangeOnFile]
    memo_rows: list[int]
    decided: list[Decided]


def leaving(
    database: Database, horses: Sequence[KeptHorse], visits: Sequence[KeptVisit], since: date | None = None
) -> Leaving:
    """The record of these horses with these visits, of which those before ``since`` stay."""
    places = {horse.id: number for number, horse in enumerate(horses)}
    by_memo: dict[int, list[KeptVisit]] = {}
    for visit in visits:
        if since is None or visit.visit.date >= since:
            by_memo.setdefault(visit.memo.id, []).append(visit)
    ordered = sorted(by_memo.values(), key=lambda kept: (min(v.visit.date for v in kept), _sha256(kept[0])))
    heard = _heard(database, ordered)
    # What is left of a memo whose other horse was removed goes out as any other part does: without its words.
    in_part = memos_in_part(database) | partly_forgotten(database)
    memos = [_memo(kept, places, heard, kept[0].memo.id not in in_part) for kept in ordered]
    rows = {_sha256(kept[0]): kept[0].memo.id for kept in ordered}
    named = {row: sha256 for sha256, row in rows.items()}
    on_file = [
        HorseOnFile(**horse.horse.model_dump(), first_named_in=named.get(horse.from_memo or 0)) for horse in horses
    ]
    changes = _Naming(places, ordered).changes(database)
    by_hand = decided(database, (visit for kept in ordered for visit in kept))
    return Leaving(on_file, memos, changes, [kept[0].memo.id for kept in ordered], by_hand)


def memos_in_part(database: Database) -> set[int]:
    """The memos of which only some visits, and no words, came from another store."""
    sql = "SELECT in_row FROM history WHERE in_table = 'memos' AND in_column = ? AND new LIKE ?"
    return {row["in_row"] for row in database.query(sql, [TAKEN_IN, f"{IN_PART}%"])}


def _sha256(visit: KeptVisit) -> str:
    return visit.memo.record.memo.sha256 or ""


def _heard(database: Database, memos: Sequence[Sequence[KeptVisit]]) -> dict[int, tuple[int, str | None]]:
    ids = json.dumps([visit.id for kept in memos for visit in kept])
    sql = "SELECT id, position, horse_heard FROM visits WHERE id IN (SELECT value FROM json_each(?))"
    rows = database.query(sql, [ids])
    return {row["id"]: (row["position"], row["horse_heard"]) for row in rows}


def _memo(
    kept: list[KeptVisit], places: Mapping[int, int], heard: Mapping[int, tuple[int, str | None]], came_whole: bool
) -> MemoOnFile:
    memo = kept[0].memo
    whole = came_whole and len(kept) == len(memo.visit_ids)
    flags = memo.record.flags
    if not whole:
        flags = [
            flag.model_copy(update={"quote": ""}) for flag in flags if flag.kind in (FlagKind.DATE, FlagKind.SOUND)
        ]
    kept = sorted(kept, key=lambda visit: heard[visit.id][0])
    return MemoOnFile(
        id=memo.record.id,
        memo=Memo(**{**memo.record.memo.model_dump(), "path": memo.file_name}),
        transcript=memo.record.transcript if whole else "",
        visits=[_visit(visit, places, *heard[visit.id]) for visit in kept],
        flags=flags,
        whole=whole,
        words=memo.transcript.words if whole else [],
        kept_at=memo.kept_at,
        weights=memo.weights,
        vocabulary=memo.vocabulary,
    )


def _visit(kept: KeptVisit, places: Mapping[int, int], position: int, heard_as: str | None) -> VisitOnFile:
    return VisitOnFile(
        **{name: value for name, value in kept.visit if name in VisitOnFile.model_fields},
        of_horse=places.get(kept.horse.id) if kept.horse else None,
        position=position,
        heard_as=heard_as,
    )


class _Naming:
    """Names the rows of the history by their places in the file."""

    def __init__(self, horses: Mapping[int, int], memos: Sequence[Sequence[KeptVisit]]) -> None:
        self.horses = horses
        self.rows: dict[tuple[str, int], dict[str, int]] = {
            ("horses", row): {"horse": number} for row, number in horses.items()
        }
        for number, kept in enumerate(memos):
            self.rows["memos", kept[0].memo.id] = {"memo": number}
            in_order = sorted(kept, key=lambda visit: kept[0].memo.visit_ids.index(visit.id))
            for place, visit in enumerate(in_order):
                where = {"memo": number, "visit": place}
                self.rows["visits", visit.id] = where
                self.rows.update({("facts", row): {**where, "fact": which} for which, row in enumerate(visit.fact_ids)})

    def changes(self, database: Database) -> list[ChangeOnFile]:
        """The corrections of what goes out, oldest first; the history of what does not is not read."""
        by_table: dict[str, list[int]] = {}
        for table, row in self.rows:
            by_table.setdefault(table, []).append(row)
        entries = [
            entry
            for table, rows in by_table.items()
            for entry in reading_back.history_of_rows(database, table, rows)
            if entry.column in _COLUMNS[table]
        ]
        return [self._change(entry) for entry in sorted(entries, key=lambda entry: entry.id)]

    def _change(self, entry: HistoryEntry) -> ChangeOnFile:
        of_horse = entry.table == "visits" and entry.column == "horse"
        return ChangeOnFile.model_validate(
            {
                "at": entry.at,
                "who": entry.who,
                "what": _WHAT[entry.table],
                **self.rows[entry.table, entry.row],
                "column": entry.column,
                "old": self._horse(entry.old) if of_horse else entry.old,
                "new": self._horse(entry.new) if of_horse else entry.new,
                "why": entry.why,
            }
        )

    def _horse(self, row: str | float | None) -> float | None:
        return self.horses.get(int(row)) if row is not None else None
