"""A correction, a reading again or its taking back is written whole or not at all, and two hands lose nothing."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from datetime import date
from typing import TYPE_CHECKING, Any

import pytest

from pipeline.errors import StoreConflictError, StoreError
from pipeline.keeping import Store
from pipeline.keeping.deciding import AssignNewHorse, DropFact
from pipeline.keeping.lessons import WordLesson
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit
from tests.keeping import released

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Thrush, six nails."
THRUSH = Fact(foot="LF", slot="finding", value="thrush", quote="Thrush", span=(9, 15))
NAILS = Fact(foot="LF", slot="nails", value=6.0, quote="six nails", span=(17, 26))
CALLS = ("correct", "add", "move", "undo", "reread", "take back", "answer", "name")


def visit(*facts: Fact) -> Visit:
    """A visit at Bramble."""
    return Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=list(facts))


@contextmanager
def failing_at(store: Store, number: int, monkeypatch: pytest.MonkeyPatch) -> Iterator[list[str]]:
    """Let the disk fail at one of the statements from here on; gives the statements so far."""
    run: list[str] = []
    database = store._database
    execute = database.execute

    def executing(sql: str, parameters: Any = None) -> sqlite3.Cursor:
        if sql != "ROLLBACK":
            run.append(sql)
        if len(run) == number + 1 and sql != "ROLLBACK":
            raise sqlite3.OperationalError("disk I/O error")
        return execute(sql, parameters)

    with monkeypatch.context() as patched:
        patched.setattr(database, "execute", executing)
        yield run


def prepared(yard: Yard, store: Store, call: str) -> Callable[[], object]:
    """A store in which a call is due, and the call."""
    yard.keep(store, visit(THRUSH, NAILS), visit(), text=TEXT)
    seen = store.accept(1, seen=0).revision
    record = MemoRecord(memo=Memo(), transcript=TEXT, visits=[visit(NAILS), visit()])
    if call == "take back":
        assert store.read_again(1, record, seen=1, vocabulary="words 2") == 2
    calls: dict[str, Callable[[], object]] = {
        "correct": lambda: store.correct(2, {"value": 7.0}, seen=seen),
        "add": lambda: store.add_fact(1, Fact(foot="RF", slot="nails", value=7.0), seen=seen),
        "move": lambda: store.move(2, 2, seen=seen),
        "undo": lambda: store.undo(),
        "reread": lambda: store.read_again(
            1, record, seen=1, vocabulary="words 2", heard=Transcript(text=TEXT + " Good.")
        ),
        "take back": lambda: store.take_reading_back(1),
        "answer": lambda: store.decide(
            1,
            [AssignNewHorse(RosterHorse(name="Fennel")), DropFact(2)],
            seen=seen,
            shows=WordLesson("findings", "thrush", "thruss"),
        ),
        "name": lambda: store.call_also(1, "Brambel"),
    }
    return calls[call]


@pytest.mark.parametrize("call", CALLS)
def test_an_error_at_any_statement_leaves_all_as_it_was(
    call: str, yard: Yard, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    due = prepared(yard, store, call)
    path = yard.folder / "clinchbook.db"
    before = released.everything(path)
    for number in range(1000):
        with failing_at(store, number, monkeypatch) as run:
            try:
                due()
            except StoreError:
                assert released.everything(path) == before, run[-1]
                continue
        break
    assert number > 5
    assert released.everything(path) != before
    assert store.problems() == []


def test_of_two_hands_that_saw_the_same_one_is_told_to_look_again(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(THRUSH, NAILS), text=TEXT)

    def correcting(who: str) -> bool:
        with Store.open(yard.folder, busy_s=30.0) as own:
            try:
                own.correct(1, {"value": "corn" if who == "Ann" else "bruise"}, seen=0, who=who)
            except StoreConflictError:
                return False
            return True

    with ThreadPoolExecutor(2) as hands:
        done = dict(zip(("Ann", "Ben"), hands.map(correcting, ("Ann", "Ben")), strict=True))
    assert sorted(done.values()) == [False, True]
    winner = next(who for who, first in done.items() if first)
    assert store.visit(1).visit.facts[0].value == {"Ann": "corn", "Ben": "bruise"}[winner]
    assert {entry.who for entry in store.history()} == {winner}


def test_many_hands_that_look_again_lose_nothing(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(THRUSH, NAILS), text=TEXT)

    def adding(number: int) -> int:
        with Store.open(yard.folder, busy_s=60.0) as own:
            while True:
                try:
                    fact = Fact(foot="RF", slot="toe_angle", value=40.0 + number)
                    return own.add_fact(1, fact, seen=own.visit(1).revision, who=f"hand {number}").fact
                except StoreConflictError:
                    continue

    with ThreadPoolExecutor(4) as hands:
        added = list(hands.map(adding, range(8)))
    angles = [fact.fact.value for fact in store.visit(1).facts if fact.id in added]
    assert sorted(map(float, angles)) == [40.0 + number for number in range(8)]
    assert sorted(change.who for change in store.changes(1)) == [f"hand {number}" for number in range(8)]


@pytest.mark.parametrize(
    "sql",
    [
        "INSERT INTO changes (at, who, why, kind, memo) VALUES ('2026-03-02T12:00:00', 'A', '', 'wish', 1)",
        "INSERT INTO changes (at, who, why, kind, memo) VALUES ('noon', 'A', '', 'accept', 1)",
        "INSERT INTO changes (at, who, why, kind, memo) VALUES ('2026-03-02T12:00:00', '', '', 'accept', 1)",
        "INSERT INTO changes (at, who, why, kind, memo) VALUES ('2026-03-02T12:00:00', 'A', '', 'undo', 1)",
        "INSERT INTO readings (memo, number, hearing, made_at) VALUES (1, 2, 1, '')",
        "INSERT INTO readings (memo, number, hearing, made_at) VALUES (1, 0, 1, '')",
        "INSERT INTO hearings (memo, number, transcript, words) VALUES (1, 1, '', 'six nails')",
        "UPDATE facts SET stands = 2",
        "UPDATE facts SET settled = 'yes'",
        "UPDATE visits SET stands = 2",
        "UPDATE flags SET settled = 2",
    ],
)
def test_the_new_tables_refuse_what_no_record_can_hold(yard: Yard, store: Store, sql: str) -> None:
    doubtful = visit(THRUSH).model_copy(update={"flags": [Flag(kind=FlagKind.SOUND, reason="?")]})
    yard.keep(store, doubtful, text=TEXT)
    with pytest.raises(sqlite3.IntegrityError, match=r"CHECK|cannot store"):
        store._database.execute(sql)


@pytest.mark.parametrize("table", ["changes", "readings", "hearings"])
def test_what_was_decided_is_only_added_to(yard: Yard, store: Store, table: str) -> None:
    prepared(yard, store, "reread")()
    columns = [row["name"] for row in store._database.query(f"SELECT name FROM pragma_table_info('{table}')")]
    for sql in (
        f"DELETE FROM {table}",
        *(f"UPDATE {table} SET {column} = {column}" for column in columns),
        f"INSERT OR REPLACE INTO {table} SELECT * FROM {table}",
    ):
        with pytest.raises(sqlite3.IntegrityError, match=r"only added to|nothing kept is"):
            store._database.execute(sql)
