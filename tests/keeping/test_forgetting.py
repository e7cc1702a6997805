"""Removing a horse or a memo for good: no byte of it stays in the store's folder, and nothing else goes."""

from __future__ import annotations

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from sqlite_utils import Database

from pipeline.errors import CorrectionError, NotFoundError, StoreBusyError, StoreError
from pipeline.keeping import Store, forgetting
from pipeline.keeping.deciding import DropFact
from pipeline.keeping.forgetting import Forgotten, SharedMemo
from pipeline.keeping.lessons import WordLesson
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit, Word
from tests.keeping.conftest import DAY, Yard

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

SECRET = "Quillon. Left fore, dreadful thrush in the sulcus, owner Perpetua Vane was cross."


def visit_of(horse: str, match: HorseMatch = HorseMatch.KNOWN) -> Visit:
    """A visit with a fact, a flag and notes that all name the horse."""
    fact = Fact(foot="LF", slot="finding", value="thrush", quote=f"{horse} dreadful thrush", span=(0, 7))
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=f"{horse}: not understood", quote=f"{horse} was cross")
    return Visit(horse=horse, horse_match=match, date=DAY, facts=[fact], flags=[flag], notes=f"{horse} was cross.")


def keep_secret(yard: Yard, store: Store, *visits: Visit, name: str = "quillon.m4a", sound: bytes = b"") -> MemoRecord:
    """Keep a memo about Quillon whose sound has bytes of its own; the file it came from is deleted."""
    path = yard.recording(name)
    path.write_bytes(sound or b"QUILLON-SOUND-" * 4000)
    record = yard.record(path, *visits, text=SECRET)
    words = [Word(text="Quillon.", start=0, end=8, start_s=0.0, end_s=0.5, probability=0.9)]
    store.keep(record, Transcript(text=SECRET, words=words), path)
    path.unlink()
    return record


def bytes_of(folder: Path) -> bytes:
    """Everything that lies in a folder, names and contents, in lower case."""
    parts = [
        part for path in sorted(folder.rglob("*")) for part in (str(path.relative_to(folder)).encode(), _read(path))
    ]
    return b"\n".join(parts).lower()


def _read(path: Path) -> bytes:
    return path.read_bytes() if path.is_file() else b""


def shape(folder: Path) -> list[tuple[str, str]]:
    """Every table, index, view and trigger of the store."""
    with closing(sqlite3.connect(folder / "clinchbook.db")) as raw:
        return sorted(raw.execute("SELECT name, coalesce(sql, '') FROM sqlite_master"))


def rows_of(folder: Path, tables: Iterable[str]) -> dict[str, list[tuple[object, ...]]]:
    """The rows of some tables."""
    with closing(sqlite3.connect(folder / "clinchbook.db")) as raw:
        return {table: raw.execute(f"SELECT * FROM {table} ORDER BY 1").fetchall() for table in tables}


@pytest.fixture
def quillon(yard: Yard, store: Store, trimmed: Visit) -> Store:
    """The store with Bramble's memo, and Quillon with a memo, corrections and an own clip."""
    yard.keep(store, trimmed)
    store.add_horses([RosterHorse(name="Quillon", owner="Perpetua Vane", place="Gorse end", also_called=["Quilly"])])
    store.add_horses([RosterHorse(name="Quillon", owner="Perpetua Vane-Holt", place="Gorse end")])
    record = keep_secret(yard, store, visit_of("Quillon"))
    store.assign(2, store.horse("Bramble"), why="a slip")
    store.assign(2, store.horse("Quillon"), why="Perpetua Vane says so")
    clips = yard.folder / "clips"
    clips.mkdir(mode=0o700)
    (clips / f"{record.memo.sha256}-1.wav").write_bytes(b"QUILLON-CLIP")
    return store


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


def test_a_plan_that_no_longer_fits_removes_nothing(yard: Yard, quillon: Store) -> None:
    plan = quillon.plan_forgetting_horse("Quillon")
    keep_secret(yard, quillon, visit_of("Quillon"), sound=b"another sound" * 100)
    with pytest.raises(StoreError, match="changed meanwhile; nothing was removed"):
        quillon.forget(plan)
    assert len(quillon.visits_of("Quillon")) == 2


def test_an_error_in_the_middle_removes_nothing(yard: Yard, quillon: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    before, counts = shape(yard.folder), quillon.counts()
    plan = quillon.plan_forgetting_horse("Quillon")

    def failing(*_: object) -> None:
        raise sqlite3.OperationalError("out of luck")

    monkeypatch.setattr(forgetting, "_index_anew", failing)
    with pytest.raises(StoreError):
        quillon.forget(plan)
    assert (shape(yard.folder), quillon.counts()) == (before, counts)
    assert quillon.problems(deep=True) == []
    assert not quillon.finish_forgetting()


def test_an_error_at_any_statement_removes_all_or_nothing(
    yard: Yard, quillon: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    before, counts = shape(yard.folder), quillon.counts()
    plan, refused, done = quillon.plan_forgetting_horse("Quillon"), 0, False
    while not done:
        with monkeypatch.context() as patched:
            patched.setattr(Database, "execute", Counted(Database.execute, fails_at=refused + 1))
            try:
                quillon.forget(plan)
                done = True
            except StoreError:
                refused += 1
        done = quillon.finish_forgetting() or done
        assert done or quillon.counts() == counts
    assert refused > 50
    assert b"quillon" not in bytes_of(yard.folder)
    assert shape(yard.folder) == before
    assert quillon.problems(deep=True) == []


KILLED = """
import os, signal, sys
from pathlib import Path
from sqlite_utils import Database
from pipeline.keeping import Store

calls, usual = 0, Database.execute

def counting(self, sql, *values):
    global calls
    calls += 1
    if calls == int(sys.argv[2]):
        os.kill(os.getpid(), signal.SIGKILL)
    return usual(self, sql, *values)

with Store.open(Path(sys.argv[1])) as store:
    plan = store.plan_forgetting_horse("Quillon")
    Database.execute = counting
    store.forget(plan)
"""


@pytest.mark.skipif(os.name != "posix", reason="only there can a program be killed so")
@pytest.mark.parametrize("share", [0.05, 0.2, 0.4, 0.6, 0.8, 0.93, 0.96, 0.98, 1])
def test_a_killed_removal_removes_all_or_nothing(yard: Yard, quillon: Store, share: float) -> None:
    before, kept = shape(yard.folder), quillon.visit(1)
    statement = max(1, round(share * statements_of_a_removal(yard.folder, yard.folder.with_name("copy"))))
    source = Path(forgetting.__file__).resolve().parents[2]
    command = [sys.executable, "-c", KILLED, str(yard.folder), str(statement)]
    ended = subprocess.run(command, env={**os.environ, "PYTHONPATH": str(source)}, timeout=60)
    assert ended.returncode == -signal.SIGKILL
    with Store.open(yard.folder) as again:
        if again.counts()["memos"] == 2:
            assert not again.finish_forgetting()
            again.forget(again.plan_forgetting_horse("Quillon"))
        else:
            assert again.finish_forgetting()
        assert again.visit(1) == kept
        assert again.problems(deep=True) == []
    assert b"quillon" not in bytes_of(yard.folder)
    assert shape(yard.folder) == before


def statements_of_a_removal(folder: Path, copy: Path) -> int:
    """How many statements remove Quillon, counted on a copy of the store."""
    shutil.copytree(folder, copy)
    counted = Counted(Database.execute)
    with Store.open(copy) as store, pytest.MonkeyPatch.context() as patched:
        plan = store.plan_forgetting_horse("Quillon")
        patched.setattr(Database, "execute", counted)
        store.forget(plan)
    return counted.calls


class Counted:
    """In place of Database.execute: counts the statements and fails at one of them."""

    def __init__(self, usual: Callable[..., sqlite3.Cursor], fails_at: int = 0) -> None:
        self.usual, self.fails_at, self.calls = usual, fails_at, 0

    def __get__(self, database: Database, owner: type[Database]) -> Callable[..., sqlite3.Cursor]:
        """The method of one database."""
        return partial(self, database)

    def __call__(self, database: Database, sql: str, *values: Any) -> sqlite3.Cursor:
        """Execute a statement, or fail; taking back and putting down always work."""
        self.calls += 1
        if self.calls == self.fails_at and sql not in ("COMMIT", "ROLLBACK"):
            raise sqlite3.OperationalError("the disk went away")
        return self.usual(database, sql, *values)


def test_a_removal_that_was_interrupted_is_finished_later(yard: Yard, quillon: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("SELECT 1 FROM horses")
        plan = quillon.plan_forgetting_horse("Quillon")
        with pytest.MonkeyPatch.context() as patched:
            patched.setattr(forgetting, "remove_files", _interrupted)
            with pytest.raises(StoreError):
                quillon.forget(plan)
    assert b"quillon-sound" in bytes_of(yard.folder)
    assert any("interrupted" in problem for problem in quillon.problems())
    assert quillon.finish_forgetting()
    assert b"quillon" not in bytes_of(yard.folder)
    assert quillon.problems(deep=True) == []
    assert not quillon.finish_forgetting()


def _interrupted(*_: object) -> None:
    raise OSError("the disk went away")


def test_a_busy_store_is_left_alone(yard: Yard, quillon: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("BEGIN IMMEDIATE")
        with Store.open(yard.folder, busy_s=0.05) as second:
            plan = second.plan_forgetting_horse("Quillon")
            with pytest.raises(StoreBusyError):
                second.forget(plan)
        other.execute("ROLLBACK")
    assert len(quillon.visits_of("Quillon")) == 1


def test_the_same_sound_kept_again_meanwhile_is_not_taken_from_it(yard: Yard, quillon: Store) -> None:
    original = quillon.memo(2).original
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(forgetting, "remove_files", _interrupted)
        with pytest.raises(StoreError):
            quillon.forget(quillon.plan_forgetting_horse("Quillon"))
    keep_secret(yard, quillon, visit_of("Bramble"))
    assert quillon.finish_forgetting()
    assert original.is_file()
    assert quillon.problems(deep=True) == []


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
