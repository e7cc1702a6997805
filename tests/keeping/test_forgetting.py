"""Removing a horse or a memo for good: no byte of it stays in the store's folder, and nothing else goes."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, NotFoundError
from pipeline.keeping import Store, forgetting
from pipeline.keeping.deciding import DropFact
from pipeline.keeping.forgetting import Forgotten, SharedMemo
from pipeline.keeping.lessons import WordLesson
from pipeline.record import Fact, HorseMatch, Memo, RosterHorse, Transcript, Visit
from tests.keeping.conftest import Yard
from tests.keeping.quillon import SECRET, bytes_of, keep_secret, rows_of, shape, visit_of, with_quillon

if TYPE_CHECKING:
    pass


@pytest.fixture
def quillon(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """The store with Bramble's memo, and Quillon with traces everywhere."""
    return with_quillon(yard, store, trimmed)


def test_no_byte_of_a_forgotten_horse_stays(yard: Yard, quillon: Store) -> None:
    before, kept = shape(yard.folder), quillon.visit(1)
    sounds = [b"quillon-sound", b"quillon-clip"]
    for secret in (b"quillon", b"quilly", b"perpetua", b"dreadful", *sounds):
        assert secret in bytes_of(yard.folder)
    forgotten = quillon.forget(quillon.plan_forgetting_horse("Quillon", "Gorse end"))
    assert forgotten == Forgotten(memos=1, visits=1, facts=1, horses=1)
    found = bytes_of(yard.folder)
    for secret in (b"quillon", b"quilly", b"perpetua", b"gorse", b"dreadful", b"cross", *sounds):
        assert secret not in found
    assert shape(yard.folder) == before
    assert quillon.visit(1) == kept
    assert quillon.problems(deep=True) == []
    assert [horse.name for horse in quillon.horses()] == ["Bramble"]


def test_what_stays_is_as_it_was(yard: Yard, quillon: Store) -> None:
    quillon.forget(quillon.plan_forgetting_memo(2))
    tables = ("memos", "visits", "facts", "flags", "horses")
    kept = rows_of(yard.folder, tables)
    assert {table: len(rows) for table, rows in kept.items()} == {
        "memos": 1,
        "visits": 1,
        "facts": 1,
        "flags": 0,
        "horses": 2,
    }
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    assert rows_of(yard.folder, tables) == {**kept, "horses": kept["horses"][:1]}


def test_a_note_says_when_and_how_much_but_never_what(yard: Yard, quillon: Store) -> None:
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    (note,) = rows_of(yard.folder, ["removed"])["removed"]
    assert note[0] == 1
    assert str(note[1]).startswith("20")
    assert note[2:] == (1, 1, 1, 1)


def test_nothing_else_may_delete_afterwards(yard: Yard, quillon: Store) -> None:
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as raw:
        for table in ("memos", "horses", "visits", "facts", "removed", "identity"):
            with pytest.raises(sqlite3.IntegrityError):
                raw.execute(f"DELETE FROM {table}")
        with pytest.raises(sqlite3.IntegrityError, match="only added to"):
            raw.execute("UPDATE removed SET memos = 0")


def test_another_horse_in_the_memo_keeps_its_sound(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    record = keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"), name="both.m4a")
    plan = store.plan_forgetting_horse("Quillon")
    assert (plan.memos, plan.visits, plan.facts) == (frozenset(), frozenset({1}), 1)
    forgotten = store.forget(plan)
    shared = (SharedMemo(1, "both.m4a"),)
    assert forgotten == Forgotten(memos=0, visits=1, facts=1, horses=1, shared=shared, still_named=shared)
    memo = store.memo(1)
    assert memo.transcript.text == SECRET
    assert [visit.horse for visit in memo.record.visits] == ["Bramble"]
    assert memo.original.is_file()
    assert store.partly_forgotten() == {1}
    assert record.memo.sha256 is not None
    assert store.has(record.memo.sha256)
    assert store.problems(deep=True) == []


def test_the_whole_memo_goes_when_that_is_said(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"), name="both.m4a")
    forgotten = store.forget(store.plan_forgetting_horse("Quillon", whole_memos=True), whole_memos=True)
    assert forgotten == Forgotten(memos=1, visits=2, facts=2, horses=1)
    assert b"quillon" not in bytes_of(yard.folder)
    assert store.visits_of("Bramble") == []


def test_a_visit_of_nobody_keeps_the_memo_too(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    keep_secret(yard, store, visit_of("Quillon"), visit_of("Somebody", HorseMatch.UNCLEAR), name="both.m4a")
    assert store.plan_forgetting_horse("Quillon").shared == (SharedMemo(1, "both.m4a"),)


def test_other_memos_that_name_the_horse_are_named(yard: Yard, quillon: Store, trimmed: Visit) -> None:
    yard.keep(quillon, trimmed, text="Bramble, calmer than quilly.")
    yard.keep(quillon, trimmed, text="Bramble, quillonlike.")
    quillon.wait(Path("/phone/QUILLON monday.m4a"), None, "Nobody speaks.")
    forgotten = quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    assert forgotten.still_named == (SharedMemo(3, "memo2.m4a"),)
    assert forgotten.waiting == (Path("/phone/QUILLON monday.m4a"),)


def test_a_word_of_the_trade_is_no_trace_of_the_horse_called_after_it(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Thrush")])
    path = yard.recording()
    store.keep(yard.record(path, visit_of("Bramble"), text="Bramble."), Transcript(text="Bramble."), path)
    forgotten = store.forget(store.plan_forgetting_horse("Thrush"))
    assert (forgotten.still_named, forgotten.other_tables) == ((), ())


def test_a_name_in_the_history_of_others_is_told(yard: Yard, quillon: Store, trimmed: Visit) -> None:
    quillon.add_horses(
        [RosterHorse(name="Bramble", owner="P. Sedge", place="River barn")], why="sold by Quillon's owner"
    )
    assert quillon.forget(quillon.plan_forgetting_horse("Quillon")).other_tables == ("history",)


def test_a_fact_moved_to_another_horse_stays_and_its_change_is_emptied(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"), name="both.m4a")
    corn = Fact(foot="RF", slot="finding", value="corn")
    added = store.add_fact(1, corn, seen=store.visit(1).revision, why="Quillon was cross")
    fact_id = store.visit(1).fact_ids[-1]
    store.move(fact_id, visit_id=2, seen=added.revision, why="it was Bramble's")
    before = store.visit(2).visit
    assert [fact.value for fact in before.facts] == ["thrush", "corn"]
    store.forget(store.plan_forgetting_horse("Quillon"))
    assert store.visit(2).visit == before
    assert [change.why for change in store.changes_of_memo(1) if "Quillon" in change.why] == []
    assert store.problems(deep=True) == []


def test_corrections_of_a_forgotten_horse_go_with_it(yard: Yard, quillon: Store) -> None:
    seen = quillon.visit(2).revision
    noted = quillon.correct(quillon.visit(2).fact_ids[0], {"zone": "sulcus"}, seen=seen, why="Perpetua looked again")
    quillon.drop(quillon.visit(2).fact_ids[0], seen=noted.revision, why="Perpetua was wrong")
    quillon.undo()
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    assert b"perpetua" not in bytes_of(yard.folder)
    assert quillon.problems(deep=True) == []
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as raw:
        assert raw.execute("SELECT count(*) FROM changes").fetchone() == (0,)


def test_what_was_misheard_in_a_forgotten_memo_goes_with_it(yard: Yard, quillon: Store) -> None:
    lesson = WordLesson("findings", "thrush", "dreadful thruss")
    numbers = []
    for visit in (1, 2):
        drop = [DropFact(quillon.visit(visit).fact_ids[0])]
        quillon.decide(visit, drop, seen=quillon.visit(visit).revision, shows=lesson)
        numbers.append(quillon.last_action()[0].id)
    assert quillon.times_seen(lesson) == 2
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    assert rows_of(yard.folder, ["lessons"])["lessons"][0][-1] == numbers[0]
    assert quillon.times_seen(lesson) == 1
    # The next change takes the number that is free now; taking it back takes no lesson of another one.
    quillon.assign(1, quillon.horse("Bramble"))
    quillon.undo()
    assert quillon.times_seen(lesson) == 1


def test_a_memo_of_which_a_horse_was_removed_is_not_read_again(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    record = keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"), name="both.m4a")
    store.forget(store.plan_forgetting_horse("Quillon"))
    with pytest.raises(CorrectionError, match="would bring it back"):
        store.read_again(1, record, seen=1, vocabulary=None)
    assert [horse.name for horse in store.horses()] == ["Bramble"]


def test_a_reading_can_be_taken_back_after_a_removal(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon")])
    record = keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"), name="both.m4a")
    fewer = [visit.model_copy(update={"facts": []}) for visit in record.visits]
    assert store.read_again(1, record.model_copy(update={"visits": fewer}), seen=1, vocabulary="later") == 2
    store.forget(store.plan_forgetting_horse("Quillon"))
    assert store.visits_of("Bramble")[0].visit.facts == []
    assert store.take_reading_back(1) == 1
    assert [fact.value for fact in store.visits_of("Bramble")[0].visit.facts] == ["thrush"]
    assert [horse.name for horse in store.horses()] == ["Bramble"]
    assert store.problems(deep=True) == []


def test_what_an_interrupted_back_up_left_goes_too(yard: Yard, quillon: Store) -> None:
    (yard.folder / ".clinchbook-left.part").write_bytes((yard.folder / "clinchbook.db").read_bytes())
    (yard.folder / "originals" / "c9").mkdir(exist_ok=True)
    (yard.folder / "originals" / "c9" / "left.part").write_bytes(b"QUILLON-SOUND")
    quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    assert b"quillon" not in bytes_of(yard.folder)


def test_whole_copies_beside_the_store_are_found(yard: Yard) -> None:
    aside, left = yard.folder.with_name("book.set-aside-2026-03-02"), yard.folder.with_name(".clinchbook-restore-x")
    for path in (aside, left, yard.folder.with_name("book2")):
        path.mkdir()
    assert forgetting.other_copies(yard.folder) == [left, aside]


def test_a_memo_takes_the_horse_that_only_it_named(yard: Yard, store: Store) -> None:
    keep_secret(yard, store, visit_of("Quillon", HorseMatch.NEW))
    assert store.forget(store.plan_forgetting_memo(1)) == Forgotten(memos=1, visits=1, facts=1, horses=1)
    assert [horse.name for horse in store.horses()] == ["Bramble"]
    assert b"quillon" not in bytes_of(yard.folder)


def test_a_horse_seen_again_outlives_its_first_memo(yard: Yard, store: Store) -> None:
    keep_secret(yard, store, visit_of("Quillon", HorseMatch.NEW))
    keep_secret(yard, store, visit_of("Quillon"), sound=b"another sound" * 100)
    assert store.forget(store.plan_forgetting_memo(1)).horses == 0
    horse = store.horse("Quillon")
    assert (horse.from_memo, len(store.visits_of("Quillon"))) == (None, 1)
    assert store.problems(deep=True) == []


def test_files_that_lie_elsewhere_still_are_named_and_left(yard: Yard, store: Store) -> None:
    path = yard.recording()
    store.keep(yard.record(path, visit_of("Bramble")), Transcript(text=SECRET), path)
    store.wait(path, None, "An older try failed.")
    assert store.forget(store.plan_forgetting_memo(1)).elsewhere == (path,)
    assert path.is_file()
    assert store.waiting() == []


def test_a_horse_of_the_roster_alone_goes(yard: Yard, store: Store) -> None:
    assert store.forget(store.plan_forgetting_horse("Bramble")) == Forgotten(memos=0, visits=0, facts=0, horses=1)
    assert b"bramble" not in bytes_of(yard.folder)


def test_what_is_not_there_cannot_be_forgotten(store: Store) -> None:
    with pytest.raises(NotFoundError, match="No horse called Thistle"):
        store.plan_forgetting_horse("Thistle")
    with pytest.raises(NotFoundError, match="There is no memo 7"):
        store.plan_forgetting_memo(7)


def test_every_link_of_the_store_is_known_to_forgetting(store: Store) -> None:
    """A new table must be thought of here: its rows go along these links, or they would outlive what they tell of.

    Those of ``fact_days`` go with their facts, by a trigger.
    """
    assert set(forgetting.links(store._database)) == {
        ("changes", "fact", "facts"),
        ("changes", "flag", "flags"),
        ("changes", "memo", "memos"),
        ("changes", "undoes", "changes"),
        ("changes", "visit", "visits"),
        ("facts", "change", "changes"),
        ("facts", "origin", "facts"),
        ("facts", "visit", "visits"),
        ("flags", "memo", "memos"),
        ("flags", "visit", "visits"),
        ("hearings", "memo", "memos"),
        ("history", "change", "changes"),
        ("horses", "from_memo", "memos"),
        ("partly_forgotten", "memo", "memos"),
        ("pen", "change", "changes"),
        ("readings", "change", "changes"),
        ("readings", "memo", "memos"),
        ("visits", "change", "changes"),
        ("visits", "horse", "horses"),
        ("visits", "memo", "memos"),
    }
    sql = "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%'"
    assert {row["name"] for row in store._database.query(sql)} == {
        "changes", "fact_days", "facts", "flags", "hearings", "history", "horses", "identity", "last_back_up",
        "lessons", "memos",
        "partly_forgotten", "pen", "readings", "removed", "removing", "visits", "waiting",
    }  # fmt: skip


def test_a_memo_without_a_known_path_can_be_forgotten(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)
    nowhere = record.model_copy(update={"memo": Memo(sha256=record.memo.sha256)})
    store.keep(nowhere, Transcript(text=record.transcript), path)
    assert store.forget(store.plan_forgetting_memo(1)).memos == 1


def test_a_fact_moved_to_another_horse_outlives_the_horse_that_it_was_entered_for(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Quillon"), RosterHorse(name="Bramble")])
    keep_secret(yard, store, visit_of("Quillon"), visit_of("Bramble"))
    quillon, bramble = (store.visit(number) for number in store.memo(1).visit_ids)
    entered = Fact(foot="RH", slot="finding", value="corn", quote="", span=(0, 0))
    noted = store.add_fact(quillon.id, entered, seen=quillon.revision, why="Perpetua told me of Quillon")
    store.move(noted.fact, bramble.id, seen=noted.revision, why="it was not Quillon")
    store.forget(store.plan_forgetting_horse("Quillon"))
    kept = store.visit(bramble.id)
    assert ("RH", "corn") in [(fact.fact.foot, fact.fact.value) for fact in kept.facts]
    changes = store._database.execute("SELECT why FROM changes").fetchall()
    assert not any("Quillon" in why for (why,) in changes)
    assert store.problems(deep=True) == []
