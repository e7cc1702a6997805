"""The rows of some memos as the tables hold them, and the typed objects that they make.

Rows are loaded for many memos at once, five queries for all of them, and put together afterwards: what stands is
decided here, so that the rows of an earlier day can be put together by the same rules.
"""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pipeline.keeping.kept import KeptFact, KeptFlag, KeptHorse, KeptMemo, KeptVisit
from pipeline.keeping.rows import horse_of, kept_fact_of, kept_flag_of, memo_of, transcript_of
from pipeline.record import HorseMatch, MemoRecord, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database

RawRow = dict[str, Any]
_AT_ONCE = 500  # memos whose rows are loaded together


@dataclass
class Raw:
    """The rows of some memos, keyed by row number, in the order of the record."""

    memos: dict[int, RawRow]
    visits: dict[int, RawRow]
    facts: dict[int, RawRow]
    flags: dict[int, RawRow]
    horses: dict[int, RawRow]


@dataclass(frozen=True)
class Built:
    """A memo and all its visits, those included that no longer stand."""

    memo: KeptMemo
    visits: list[KeptVisit]


def built_memos(database: Database, folder: Path, memo_ids: Sequence[int]) -> Iterator[Built]:
    """The memos of these numbers, in their order; a number that is not there is passed over."""
    for start in range(0, len(memo_ids), _AT_ONCE):
        some = memo_ids[start : start + _AT_ONCE]
        by_id = {built.memo.id: built for built in put_together(raw_of(database, some), folder)}
        yield from (by_id[memo_id] for memo_id in some if memo_id in by_id)


def raw_of(database: Database, memo_ids: Sequence[int]) -> Raw:
    """The rows of these memos. Visits come before facts: a revision is never younger than the facts seen with it."""
    wanted = [json.dumps(list(memo_ids))]
    of_memos = "IN (SELECT value FROM json_each(?))"
    visits = f"SELECT * FROM visits WHERE memo {of_memos} ORDER BY memo, position"
    facts = f"""SELECT facts.* FROM facts JOIN visits ON visits.id = facts.visit
                WHERE visits.memo {of_memos} ORDER BY facts.visit, facts.position"""
    raw = Raw(
        memos=_keyed(database.query(f"SELECT * FROM memos WHERE id {of_memos} ORDER BY id", wanted)),
        visits=_keyed(database.query(visits, wanted)),
        facts=_keyed(database.query(facts, wanted)),
        flags=_keyed(database.query(f"SELECT * FROM flags WHERE memo {of_memos} ORDER BY position, id", wanted)),
        horses={},
    )
    raw.horses = horse_rows(database, raw.visits.values())
    return raw


def horse_rows(database: Database, visits: Iterable[RawRow]) -> dict[int, RawRow]:
    """The rows of the horses that these visits belong to."""
    ids = sorted({visit["horse"] for visit in visits if visit["horse"] is not None})
    return _keyed(
        database.query("SELECT * FROM horses WHERE id IN (SELECT value FROM json_each(?))", [json.dumps(ids)])
    )


def put_together(raw: Raw, folder: Path) -> list[Built]:
    """Memos and visits from their rows; facts and flags of another reading are left out."""
    visits_of: dict[int, list[RawRow]] = defaultdict(list)
    for visit in raw.visits.values():
        visits_of[visit["memo"]].append(visit)
    facts_of = _facts_by_visit(raw)
    flags_of = _flags_by_place(raw)
    built = []
    for row in raw.memos.values():
        memo_flags = flags_of[row["id"], None]
        found = [
            _visit_of(visit, raw, facts_of[visit["id"]], flags_of[row["id"], visit["id"]])
            for visit in visits_of[row["id"]]
        ]
        memo = _memo_of(row, [visit for visit in found if visit.stands], memo_flags, folder)
        built.append(Built(memo, [visit.under(memo) for visit in found]))
    return built


@dataclass(frozen=True)
class _Parts:
    """A visit before its memo is known."""

    id: int
    visit: Visit
    horse: KeptHorse | None
    revision: int
    facts: tuple[KeptFact, ...]
    dropped: tuple[KeptFact, ...]
    flags: tuple[KeptFlag, ...]
    stands: bool

    def under(self, memo: KeptMemo) -> KeptVisit:
        return KeptVisit(
            id=self.id,
            visit=self.visit,
            horse=self.horse,
            memo=memo,
            fact_ids=tuple(fact.id for fact in self.facts),
            revision=self.revision,
            facts=self.facts,
            dropped=self.dropped,
            flags=self.flags,
            stands=self.stands,
        )


def _keyed(rows: Iterable[RawRow]) -> dict[int, RawRow]:
    return {row["id"]: row for row in rows}


def _facts_by_visit(raw: Raw) -> dict[int, list[KeptFact]]:
    grouped: dict[int, list[KeptFact]] = defaultdict(list)
    for row in sorted(raw.facts.values(), key=lambda fact: (fact["visit"], fact["position"])):
        memo = raw.memos[raw.visits[row["visit"]]["memo"]]
        if row["reading"] is None or row["reading"] == memo["reading"]:
            grouped[row["visit"]].append(kept_fact_of(row))
    return grouped


def _flags_by_place(raw: Raw) -> dict[tuple[int, int | None], list[KeptFlag]]:
    grouped: dict[tuple[int, int | None], list[KeptFlag]] = defaultdict(list)
    for row in raw.flags.values():
        if row["reading"] == raw.memos[row["memo"]]["reading"] and not row["settled"]:
            grouped[row["memo"], row["visit"]].append(kept_flag_of(row))
    return grouped


def _visit_of(row: RawRow, raw: Raw, facts: Sequence[KeptFact], flags: Sequence[KeptFlag]) -> _Parts:
    horse = horse_of(raw.horses[row["horse"]]) if row["horse"] in raw.horses else None
    standing = tuple(fact for fact in facts if fact.stands)
    visit = Visit(
        horse=horse.name if horse else row["horse_heard"],
        horse_match=HorseMatch(row["horse_match"]),
        date=date.fromisoformat(row["date"]),
        facts=[fact.fact for fact in standing],
        flags=[flag.flag for flag in flags],
        notes=row["notes"],
    )
    dropped = tuple(fact for fact in facts if not fact.stands)
    return _Parts(row["id"], visit, horse, row["revision"], standing, dropped, tuple(flags), bool(row["stands"]))


def _memo_of(row: RawRow, visits: Sequence[_Parts], flags: Sequence[KeptFlag], folder: Path) -> KeptMemo:
    record = MemoRecord(
        id=row["given_id"],
        memo=memo_of(row),
        transcript=row["transcript"],
        visits=[visit.visit for visit in visits],
        flags=[flag.flag for flag in flags],
    )
    return KeptMemo(
        id=row["id"],
        record=record,
        transcript=transcript_of(row),
        file_name=row["file_name"],
        original=folder / row["stored_path"],
        kept_at=datetime.fromisoformat(row["kept_at"]),
        visit_ids=tuple(visit.id for visit in visits),
        weights=row["weights"],
        vocabulary=row["vocabulary"],
        reading=row["reading"],
        flags=tuple(flags),
    )
