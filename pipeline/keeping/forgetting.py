"""Removing for good: the one way by which rows leave the store, and everything that goes with them.

The triggers that refuse are taken down and put up again inside the one transaction that removes, so that no other
program ever meets the store without them; those that keep derived tables in step stay and do their work. What points
to a removed row goes too, table by table along the foreign keys; the word indexes are made anew, because they would
keep the words; files go after the transaction, and ``removing`` remembers them until they are gone and the database
file is rewritten without its free pages.
"""

from __future__ import annotations

import glob
import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pipeline.errors import NotFoundError
from pipeline.keeping.database import insert_row, sync_folder
from pipeline.keeping.kept import KeptHorse
from pipeline.keeping.location import PART_PREFIX
from pipeline.keeping.names import name_key
from pipeline.keeping.originals import clear_parts
from pipeline.keeping.rows import as_json
from pipeline.keeping.waiting import full_path

if TYPE_CHECKING:
    from sqlite_utils import Database

Doomed = dict[str, set[int]]
_GIVEN = "(SELECT value FROM json_each(?))"  # the numbers of a list that is handed over as JSON

# Links that are loosened instead of followed: a horse outlives the memo that first named it, the pen every change, and
# a fact of a later reading the fact of an earlier one that it came from.
LOOSENED = {("horses", "from_memo"): "memos", ("pen", "change"): "changes", ("facts", "origin"): "facts"}
# Links that hold a change: one that entered or read what stays is emptied, not removed.
HOLDING = (("facts", "change"), ("visits", "change"), ("readings", "change"), ("changes", "undoes"))


@dataclass(frozen=True)
class SharedMemo:
    """A memo that also holds another horse, so that its sound and words stay."""

    id: int
    file_name: str


@dataclass(frozen=True)
class Plan:
    """What a removal takes away (row numbers), and the memos whose sound and words would stay."""

    horse: KeptHorse | None
    memos: frozenset[int]
    visits: frozenset[int]
    facts: int
    shared: tuple[SharedMemo, ...] = ()


@dataclass(frozen=True)
class Forgotten:
    """What a removal took away, and what it could not reach.

    ``elsewhere`` are the files outside the store that the memos came from and that are still there; ``still_named``
    are memos of the store whose words or names still hold the horse's name, ``other_tables`` other tables that do, and
    ``waiting`` waiting files named so.
    """

    memos: int
    visits: int
    facts: int
    horses: int
    shared: tuple[SharedMemo, ...] = ()
    elsewhere: tuple[Path, ...] = ()
    still_named: tuple[SharedMemo, ...] = ()
    other_tables: tuple[str, ...] = ()
    waiting: tuple[Path, ...] = ()


def plan_horse(database: Database, horse: KeptHorse, whole_memos: bool) -> Plan:
    """The removal of a horse with its visits; memos that hold only this horse go whole, or all with ``whole_memos``."""
    own = _numbers(database, "SELECT id FROM visits WHERE horse = ?", horse.id)
    memos = _numbers(database, "SELECT DISTINCT memo AS id FROM visits WHERE horse = ?", horse.id)
    # A visit that no longer stands is no other horse's.
    mixed = f"SELECT DISTINCT memo AS id FROM visits WHERE horse IS NOT ? AND stands = 1 AND memo IN {_GIVEN}"
    with_others = _numbers(database, mixed, horse.id, as_json(sorted(memos)))
    if whole_memos:
        plan = _plan_memos(database, memos)
        return Plan(horse, plan.memos, plan.visits, plan.facts)
    return Plan(
        horse, frozenset(memos - with_others), frozenset(own), _facts_of(database, own), _files(database, with_others)
    )


def plan_memo(database: Database, memo_id: int) -> Plan:
    """The removal of one whole memo; raises NotFoundError."""
    if not _numbers(database, "SELECT id FROM memos WHERE id = ?", memo_id):
        raise NotFoundError(f"There is no memo {memo_id} in the store.")
    return _plan_memos(database, {memo_id})


def remove(database: Database, plan: Plan, now: str) -> Forgotten:
    """Remove what the plan names, inside the caller's transaction; the files are left to ``finish``."""
    doomed: Doomed = {"memos": set(plan.memos), "visits": set(plan.visits)}
    doomed["horses"] = _nobody_else_s(database, plan) | ({plan.horse.id} if plan.horse else set())
    rows = list(database.query(f"SELECT sha256, path FROM memos WHERE id IN {_GIVEN}", [_json(plan.memos)]))
    elsewhere = tuple(Path(row["path"]) for row in rows if row["path"] and Path(row["path"]).is_file())
    database.execute("PRAGMA defer_foreign_keys=ON")
    _follow_links(database, doomed)
    touched = set(doomed.get("changes", ()))
    held = _held_changes(database, doomed)
    doomed["changes"] -= held
    with _without_refusals(database):
        _forget_lessons(database, touched)
        _empty_changes(database, held, doomed)
        for table, numbers in doomed.items():
            _delete(database, table, numbers)
        _forget_waiting(database, rows)
        _index_anew(database)
    for memo in plan.shared:
        database.execute("INSERT OR IGNORE INTO partly_forgotten (memo) VALUES (?)", [memo.id])
    for sha256 in ["", *(row["sha256"] for row in rows)]:
        database.execute("INSERT OR IGNORE INTO removing (sha256) VALUES (?)", [sha256])
    taken = {table: len(doomed.get(table, ())) for table in ("memos", "visits", "facts", "horses")}
    insert_row(database, "removed", {"at": now, **taken})
    counts = (taken["memos"], taken["visits"], taken["facts"], taken["horses"])
    forgotten = Forgotten(*counts, shared=plan.shared, elsewhere=elsewhere)
    return _with_names_left(database, forgotten, plan.horse) if plan.horse else forgotten


def is_partly_forgotten(database: Database, memo_id: int) -> bool:
    """Whether a horse was removed from this memo while its words stayed."""
    return bool(_numbers(database, "SELECT memo AS id FROM partly_forgotten WHERE memo = ?", memo_id))


def partly_forgotten(database: Database) -> set[int]:
    """The memos that a horse was removed from while their words stayed."""
    return _numbers(database, "SELECT memo AS id FROM partly_forgotten")


def unfinished(database: Database) -> list[str]:
    """The hashes of recordings still to remove; an empty one stands for the rewriting of the database."""
    return [row["sha256"] for row in database.query("SELECT sha256 FROM removing")]


def remove_files(database: Database, folder: Path) -> None:
    """Unlink every file of the store named after a removed hash, under the write lock of the caller; raises OSError.

    Copies of the whole database that an interrupted back-up left, and half copies of recordings, go too: they may
    hold what is removed.
    """
    clear_parts(folder)
    clear_parts(folder)
    gone = {sha256 for sha256 in unfinished(database) if sha256}
    kept = {row["sha256"] for row in database.query("SELECT sha256 FROM memos")}
    for path in list(folder.rglob("*")):
        named = path.name[:64]
        if ((named in gone and named not in kept) or path.name.startswith(PART_PREFIX)) and path.is_file():
            path.unlink()
            sync_folder(path.parent)


def _json(numbers: frozenset[int] | set[int]) -> str:
    return as_json(sorted(numbers))


def _numbers(database: Database, sql: str, *values: int | str) -> set[int]:
    return {row["id"] for row in database.query(sql, list(values))}


def _plan_memos(database: Database, memos: set[int]) -> Plan:
    visits = _numbers(database, f"SELECT id FROM visits WHERE memo IN {_GIVEN}", _json(memos))
    return Plan(None, frozenset(memos), frozenset(visits), _facts_of(database, visits))


def _facts_of(database: Database, visits: set[int]) -> int:
    return len(_numbers(database, f"SELECT id FROM facts WHERE visit IN {_GIVEN}", _json(visits)))


def _files(database: Database, memos: set[int]) -> tuple[SharedMemo, ...]:
    rows = database.query(f"SELECT id, file_name FROM memos WHERE id IN {_GIVEN} ORDER BY id", [_json(memos)])
    return tuple(SharedMemo(row["id"], row["file_name"]) for row in rows)


def _nobody_else_s(database: Database, plan: Plan) -> set[int]:
    """Horses that only these memos brought: no other visit, and nothing that a person said of them since."""
    sql = f"""
        SELECT id FROM horses WHERE from_memo IN {_GIVEN} AND owner IS NULL AND place IS NULL
        AND NOT EXISTS (SELECT 1 FROM visits WHERE visits.horse = horses.id AND visits.id NOT IN {_GIVEN})
        AND NOT EXISTS (SELECT 1 FROM history WHERE in_table = 'horses' AND in_row = horses.id)
    """
    return _numbers(database, sql, _json(plan.memos), _json(plan.visits))


def other_copies(folder: Path) -> list[Path]:
    """Stores beside this one that were set aside by a restore, or left by one that was interrupted: whole copies."""
    beside = [*folder.parent.glob(f"{glob.escape(folder.name)}.set-aside-*"), *folder.parent.glob(f"{PART_PREFIX}*")]
    return sorted(path for path in beside if path.is_dir())


def links(database: Database) -> list[tuple[str, str, str]]:
    """Every foreign key of the store: the table and column that point, and the table pointed to."""
    sql = """
        SELECT tables.name, linked."from" AS "column", linked."table" AS parent
        FROM sqlite_master AS tables JOIN pragma_foreign_key_list(tables.name) AS linked
        WHERE tables.type = 'table' ORDER BY tables.name, linked."from"
    """
    return [(row["name"], row["column"], row["parent"]) for row in database.query(sql)]


def _follow_links(database: Database, doomed: Doomed) -> None:
    """Add whatever points to a doomed row, until nothing more is found."""
    known, grown = links(database), True
    while grown:
        grown = False
        for table, column, parent in known:
            if (table, column) in LOOSENED or (table, column) in HOLDING or not doomed.get(parent):
                continue
            sql = f'SELECT rowid AS id FROM "{table}" WHERE "{column}" IN {_GIVEN}'
            found = _numbers(database, sql, _json(doomed[parent]))
            grown = grown or not found <= doomed.get(table, set())
            doomed.setdefault(table, set()).update(found)


def _held_changes(database: Database, doomed: Doomed) -> set[int]:
    """The changes that would go although something that stays was entered or read by them."""
    held: set[int] = set()
    going = doomed.setdefault("changes", set())
    while True:
        more: set[int] = set()
        for table, column in HOLDING:
            gone = doomed.get(table, set()) - (held if table == "changes" else set())
            sql = f'SELECT "{column}" AS id FROM "{table}" WHERE "{column}" IN {_GIVEN} AND id NOT IN {_GIVEN}'
            more |= _numbers(database, sql, _json(going), _json(gone))
        if more <= held:
            return held
        held |= more


def _empty_changes(database: Database, held: set[int], doomed: Doomed) -> None:
    """Take out of changes that must stay what they say of what goes: the reason, and what they were about."""
    database.execute(f"UPDATE changes SET why = '' WHERE id IN {_GIVEN}", [_json(held)])
    for column, parent in (("visit", "visits"), ("fact", "facts"), ("flag", "flags")):
        sql = f"UPDATE changes SET {column} = NULL WHERE id IN {_GIVEN} AND {column} IN {_GIVEN}"
        database.execute(sql, [_json(held), _json(doomed.get(parent, set()))])
    database.execute(f"UPDATE history SET why = '' WHERE change IN {_GIVEN}", [_json(held)])


def _delete(database: Database, table: str, numbers: set[int]) -> None:
    given = _json(numbers)
    for (other, column), parent in LOOSENED.items():
        if parent == table:
            database.execute(f'UPDATE "{other}" SET "{column}" = NULL WHERE "{column}" IN {_GIVEN}', [given])
    database.execute(f"DELETE FROM history WHERE in_table = ? AND in_row IN {_GIVEN}", [table, given])
    database.execute(f'DELETE FROM "{table}" WHERE rowid IN {_GIVEN}', [given])


def _forget_lessons(database: Database, changes: set[int]) -> None:
    """What was misheard there goes with the words. No foreign key leads to it, and the number of a change that is gone
    may be another's one day."""
    database.execute(f"DELETE FROM lessons WHERE change IN {_GIVEN}", [_json(changes)])


def _forget_waiting(database: Database, rows: list[dict[str, Any]]) -> None:
    for row in rows:
        where = full_path(Path(row["path"])) if row["path"] else None
        database.execute("DELETE FROM waiting WHERE sha256 = ? OR path = ?", [row["sha256"], where])


@contextmanager
def _without_refusals(database: Database) -> Iterator[None]:
    sql = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND sql LIKE '%RAISE(%' ORDER BY rowid"
    triggers = list(database.query(sql))
    for trigger in triggers:
        database.execute(f'DROP TRIGGER "{trigger["name"]}"')
    yield  # an error rolls the caller's transaction back, triggers and all
    for trigger in triggers:
        database.execute(trigger["sql"])


def word_indexes(database: Database) -> list[str]:
    """The names of the store's full-text tables."""
    sql = "SELECT name FROM sqlite_master WHERE type = 'table' AND sql LIKE 'CREATE VIRTUAL TABLE%fts5%' ORDER BY name"
    return [row["name"] for row in database.query(sql)]


def _index_anew(database: Database) -> None:
    for name in word_indexes(database):
        database.execute(f"INSERT INTO {name} ({name}) VALUES ('rebuild')")


# Where a name may still stand that is no trace of the removed horse: other horses, the trade's words that a horse may
# be called after, what a fact quotes from the words that are looked through as a whole, and lists that are looked
# through on their own.
_NOT_LOOKED_THROUGH = frozenset({"horses", "facts", "fact_days", "waiting", "removing", "identity", "last_back_up"})


def _with_names_left(database: Database, forgotten: Forgotten, horse: KeptHorse) -> Forgotten:
    """Find the name in what stays: memo by memo, and by table for what belongs to no memo."""
    memos: set[int] = set()
    tables: set[str] = set()
    for table in _tables(database) - _NOT_LOOKED_THROUGH:
        for row in database.query(f'SELECT * FROM "{table}"'):
            if not _names(horse).search(name_key("\n".join(text for text in row.values() if isinstance(text, str)))):
                continue
            memo = row["id"] if table == "memos" else row.get("memo")
            if memo is None:
                tables.add(table)
            else:
                memos.add(memo)
    paths = (Path(row["path"]) for row in database.query("SELECT path FROM waiting ORDER BY id"))
    return replace(
        forgotten,
        still_named=_files(database, memos),
        other_tables=tuple(sorted(tables)),
        waiting=tuple(path for path in paths if _names(horse).search(name_key(str(path)))),
    )


def _tables(database: Database) -> set[str]:
    """The store's own tables, without those that make up its word indexes."""
    rows = database.query("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'")
    return {row["name"] for row in rows if not row["name"].startswith("sqlite_")}


def _names(horse: KeptHorse) -> re.Pattern[str]:
    forms = [re.escape(name_key(name)) for name in (horse.name, *horse.horse.also_called) if name_key(name)]
    return re.compile(rf"(?<![^\W_])(?:{'|'.join(forms)})(?![^\W_])")
