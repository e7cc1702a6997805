"""What was said stays; what is corrected is written down, whoever corrects it."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotFoundError
from pipeline.keeping import Store
from pipeline.record import HorseMatch, RosterHorse, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


def changed(yard: Yard, sql: str) -> None:
    """Run a statement as another program would."""
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute(sql)
        other.commit()


def test_a_changed_owner_is_written_down_with_who_and_why(store: Store) -> None:
    assert store.add_horses([RosterHorse(name="Bramble", place="River barn", owner="B. Reed")], who="Ann") == (0, 1)
    (entry,) = store.history()
    assert (entry.who, entry.table, entry.column, entry.old, entry.new, entry.why) == (
        "Ann", "horses", "owner", "A. Fern", "B. Reed", "roster",
    )  # fmt: skip


def test_an_assigned_visit_is_written_down(yard: Yard, store: Store, trimmed: Visit) -> None:
    unclear = trimmed.model_copy(update={"horse": "Brindle", "horse_match": HorseMatch.UNCLEAR})
    (visit_id,) = yard.keep(store, unclear)
    store.assign(visit_id, store.horse("Bramble"), who="Ann")
    kept = store.visit(visit_id)
    assert (kept.visit.horse, kept.visit.horse_match) == ("Bramble", HorseMatch.KNOWN)
    changes = {(entry.column, entry.old, entry.new) for entry in store.history()}
    assert changes == {("horse", None, 1), ("horse_match", "unclear", "known")}
    with pytest.raises(NotFoundError, match="visit 99"):
        store.assign(99, store.horse("Bramble"))


def test_a_correction_by_another_program_is_written_down_too(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    changed(yard, "UPDATE facts SET status = 'absent'")
    (entry,) = store.history()
    assert (entry.who, entry.table, entry.column, entry.old, entry.new) == (
        "unknown", "facts", "status", "present", "absent",
    )  # fmt: skip


def test_a_corrected_fact_is_found_by_its_new_words(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    changed(yard, "UPDATE facts SET value = 'reset'")
    changed(yard, "UPDATE visits SET notes = 'a hat was eaten'")
    assert store.problems() == []


@pytest.mark.parametrize(
    "sql",
    [
        "UPDATE history SET who = 'nobody'",
        "DELETE FROM history",
        "INSERT OR REPLACE INTO history SELECT id, at, 'me', in_table, in_row, in_column, 0, 0, why, 0 FROM history",
        "INSERT OR REPLACE INTO visits SELECT id, memo, 9, NULL, '', '', 'new', date, notes, 1, NULL, 9 FROM visits",
        "INSERT OR REPLACE INTO facts (visit, position, slot, value, status, confidence, flagged, reasons, quote,"
        " span_start, span_end, match, rules)"
        " SELECT visit, position, slot, 'reset', status, 1, 0, '[]', '', 0, 0, match, '[]' FROM facts",
        "UPDATE OR REPLACE facts SET position = 0 WHERE position = 1",
        "UPDATE OR REPLACE horses SET name_key = 'bramble', place_key = 'river barn' WHERE name = 'Sorrel'",
        "DELETE FROM memos",
        "DELETE FROM visits",
        "DELETE FROM facts",
        "DELETE FROM flags",
        "DELETE FROM horses",
        "DELETE FROM pen",
        "UPDATE memos SET transcript = 'something else'",
        "UPDATE memos SET words = '[1]'",
        "UPDATE memos SET stored_path = 'originals/ab/x.m4a'",
        "UPDATE facts SET quote = 'never said'",
        "UPDATE visits SET horse_heard = 'never said'",
        "UPDATE flags SET reason = 'none'",
        "UPDATE memos SET reading = 2",
        "UPDATE memos SET hearing = 2",
        "UPDATE memos SET vocabulary = 'other words'",
        "UPDATE facts SET reading = NULL",
        "UPDATE readings SET made_at = ''",
        "DELETE FROM readings",
        "UPDATE visits SET revision = revision - 1",
    ],
)
def test_what_was_kept_is_neither_deleted_nor_rewritten(yard: Yard, store: Store, trimmed: Visit, sql: str) -> None:
    doubtful = trimmed.model_copy(update={"horse_match": HorseMatch.NEW, "facts": trimmed.facts * 2})
    yard.keep(store, doubtful)
    store.add_horses([RosterHorse(name="Bramble", place="River barn", owner="B. Reed"), RosterHorse(name="Sorrel")])
    before = (store.history(), store.memos(), store.horses())
    with pytest.raises(sqlite3.IntegrityError):
        changed(yard, sql)
    assert (store.history(), store.memos(), store.horses()) == before


@pytest.mark.parametrize(
    "sql",
    [
        "UPDATE facts SET foot = 'XX'",
        "UPDATE facts SET status = 'perhaps'",
        "UPDATE facts SET confidence = 1.5",
        "UPDATE facts SET value = 6",
        "UPDATE facts SET flagged = 2",
        "UPDATE visits SET date = 'Monday'",
        "UPDATE visits SET horse_match = 'sure'",
        "UPDATE horses SET name = ''",
        "UPDATE horses SET also_called = 'Bram; Bramley'",
    ],
)
def test_the_tables_refuse_what_no_record_can_hold(yard: Yard, store: Store, trimmed: Visit, sql: str) -> None:
    yard.keep(store, trimmed)
    with pytest.raises(sqlite3.IntegrityError, match="CHECK"):
        changed(yard, sql)


def test_a_visit_needs_its_memo_and_its_horse(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
        store._database.execute("UPDATE visits SET horse = 99")
