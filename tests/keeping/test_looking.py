"""Looking in: nothing is written, older stores are brought up to date first, what is no store is refused."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from contextlib import closing
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import FileMissingError, StoreBusyError, StoreError, StoreNewerError
from pipeline.keeping import Looking, Store, schema
from pipeline.keeping.schema_v1 import VERSION_1
from pipeline.keeping.seen import Wanted
from pipeline.record import Fact, HorseMatch, RosterHorse, Status, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

FIRST_RELEASE = (
    VERSION_1
    + f"""
PRAGMA application_id={schema.APPLICATION_ID};
PRAGMA user_version=1;
INSERT INTO horses (id, name, name_key, place_key) VALUES (1, 'Bramble', 'bramble', '');
INSERT INTO memos (id, sha256, file_name, stored_path, kept_at, transcript, words)
VALUES (1, '{"a" * 64}', 'a.m4a', 'originals/aa/a.m4a', '2026-03-02T18:00:00+00:00', 'Bramble, thrush.', '[]');
INSERT INTO visits (id, memo, position, horse, horse_heard, heard_key, horse_match, date)
VALUES (1, 1, 0, 1, 'Bramble', 'bramble', 'known', '2026-03-02');
INSERT INTO facts (id, visit, position, foot, slot, value, status, confidence, flagged, reasons, quote, span_start,
    span_end, match, rules)
VALUES (1, 1, 0, 'LF', 'finding', 'thrush', 'present', 0.9, 0, '[]', 'thrush', 9, 15, 'exact', '[]');
"""
)


@pytest.fixture
def first_release(yard: Yard) -> Path:
    """A store as the first release left it."""
    yard.folder.mkdir()
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as made:
        made.executescript(FIRST_RELEASE)
    return yard.folder


def test_a_store_of_the_first_release_is_brought_up_to_date(first_release: Path) -> None:
    with Looking.open(first_release) as looking:
        found = looking.search(Wanted(values=(("finding", "thrush"),), statuses=("present",)))
        assert [(hit.horse, str(hit.date), hit.fact.foot) for hit in found.facts] == [("Bramble", "2026-03-02", "LF")]
    with closing(sqlite3.connect(first_release / "clinchbook.db")) as plain:
        assert plain.execute("PRAGMA user_version").fetchone() == (schema.SCHEMA_VERSION,)
        assert plain.execute("SELECT * FROM fact_days").fetchall() == [
            ("finding", "thrush", 202603, 2, 1, 1, "present", "LF", None, 1, 0)
        ]


def test_a_missing_store_is_said_and_not_made(yard: Yard) -> None:
    with pytest.raises(FileMissingError, match="no store"):
        Looking.open(yard.folder)
    assert not yard.folder.exists()


def test_a_later_store_is_refused(yard: Yard) -> None:
    yard.open().close()
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as later:
        later.execute(f"PRAGMA user_version={schema.SCHEMA_VERSION + 1}")
    with pytest.raises(StoreNewerError, match="later clinchbook"):
        Looking.open(yard.folder)


def test_what_is_no_store_is_refused(yard: Yard) -> None:
    yard.folder.mkdir()
    (yard.folder / "clinchbook.db").write_bytes(b"this is a letter, no database" * 50)
    with pytest.raises(StoreError, match="no database of clinchbook"):
        Looking.open(yard.folder)


def test_looking_leaves_every_byte_as_it_was(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    before = (yard.folder / "clinchbook.db").read_bytes()
    with Looking.open(yard.folder) as looking:
        looking.search(Wanted(words=("trimmed",)))
        looking.visits_of(looking.horse("Bramble"))
    assert (yard.folder / "clinchbook.db").read_bytes() == before
    assert sorted(path.name for path in yard.folder.iterdir()) == ["clinchbook.db", "originals"]


def test_a_store_that_another_program_is_writing_is_busy(yard: Yard, store: Store) -> None:
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreBusyError, match="Another program"):
            Looking.open(yard.folder, busy_s=0.05)
        other.execute("ROLLBACK")


@pytest.mark.parametrize("name", ["a b", "what? 100% #1", "straße"])
def test_the_folder_may_have_any_name(yard: Yard, name: str) -> None:
    folder = yard.folder.parent / name
    Store.open(folder).close()
    with Looking.open(folder) as looking:
        assert looking.seen_count() == 0


def test_the_newest_of_many_come_first_whatever_order_they_were_kept_in(yard: Yard, store: Store) -> None:
    days = ("2026-03-02", "2025-01-07", "2026-05-04", "2024-06-03")
    for day in days:
        fact = Fact(foot="LF", slot="finding", value="thrush")
        yard.keep(
            store,
            Visit.model_validate({"horse": "Bramble", "horse_match": HorseMatch.KNOWN, "date": day, "facts": [fact]}),
        )
    wanted = Wanted(slots=("finding",), statuses=("present",), limit=2)
    with Looking.open(yard.folder) as looking:
        found = looking.search(wanted)
        assert ([str(hit.date) for hit in found.facts], found.more) == (["2026-05-04", "2026-03-02"], True)
        by_day = looking.search(Wanted(limit=3))
        assert [str(hit.date) for hit in by_day.facts] == ["2026-05-04", "2026-03-02", "2025-01-07"]


def test_an_index_of_days_that_does_not_fit_is_a_problem(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    assert store.problems() == []
    store._database.execute("UPDATE fact_days SET foot = 'RH'")
    assert store.problems() == ["The index of days, fact_days, does not fit the records."]


CUT_OFF = """
import os, sqlite3, sys
connection = sqlite3.connect(sys.argv[1])
connection.execute("PRAGMA cache_size=1")
connection.execute("BEGIN IMMEDIATE")
connection.execute("CREATE TABLE half (text)")
connection.executemany("INSERT INTO half VALUES (?)", [("x" * 4000,)] * 500)
os._exit(1)
"""


def test_what_a_power_cut_left_half_done_is_undone_first(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    store.close()
    path = yard.folder / "clinchbook.db"
    assert subprocess.run([sys.executable, "-c", CUT_OFF, str(path)], check=False).returncode == 1
    assert path.with_name("clinchbook.db-journal").stat().st_size > 0
    with Looking.open(yard.folder) as looking:
        assert [visit.id for visit in looking.visits_of(looking.horse("Bramble"))] == [1]
    with closing(sqlite3.connect(path)) as plain:
        assert plain.execute("SELECT count(*) FROM sqlite_master WHERE name = 'half'").fetchone() == (0,)


def test_what_does_not_stand_any_more_is_nowhere(yard: Yard, store: Store) -> None:
    facts = [
        Fact(foot="LF", slot="finding", value="thrush", quote="thrush"),
        Fact(foot="RF", slot="finding", value="thrush", quote="thrush"),
        Fact(foot=None, slot="next_visit_weeks", value=6.0, status=Status.PLANNED),
    ]
    visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=facts)
    yard.keep(store, visit)
    store._database.execute("UPDATE facts SET stands = 0 WHERE id IN (1, 3)")
    seen = (("finding", "thrush"),)
    with Looking.open(yard.folder) as looking:
        ways = (
            Wanted(values=seen), Wanted(slots=("finding",)), Wanted(words=("thrush",)), Wanted(),
            Wanted(values=seen, horse="Bramble"), Wanted(values=seen, place="river"),
        )  # fmt: skip
        assert [[hit.fact.id for hit in looking.search(wanted).facts] for wanted in ways] == [[2]] * len(ways)
        assert [count.facts for count in looking.count(Wanted(values=seen), "month")] == [1]
        assert [fact.id for fact in looking.visits_of(looking.horse("Bramble"))[0].facts] == [2]
        assert [one.weeks for one in looking.last_seen()] == [None]
        bramble = looking.horse("Bramble").id
        told = looking.facts_on_feet([bramble], ("finding",), ("present",), date(2026, 1, 1), date(2026, 12, 31))
        assert [(visit.id, fact.foot) for visit in told for fact in visit.facts] == [(1, "RF")]
    with closing(sqlite3.connect(yard.folder / "clinchbook.db")) as plain:
        assert plain.execute("SELECT fact FROM findings").fetchall() == [(2,)]


def test_a_fact_that_is_moved_or_dropped_is_found_where_it_stands(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Sorrel")])
    day = date(2026, 3, 2)
    thrush = Fact(foot="LF", slot="finding", value="thrush")
    first = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=day, facts=[thrush])
    second = Visit(horse="Sorrel", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 5), facts=[])
    yard.keep(store, first, second)
    wanted = Wanted(values=(("finding", "thrush"),), statuses=("present",))
    kept = store.visit(1)
    store.move(kept.fact_ids[0], 2, seen=kept.revision)
    with Looking.open(yard.folder) as looking:
        assert [(hit.horse, str(hit.date)) for hit in looking.search(wanted).facts] == [("Sorrel", "2026-03-05")]
    assert store.problems() == []
    moved = store.visit(2)
    store.drop(moved.fact_ids[0], seen=moved.revision)
    with Looking.open(yard.folder) as looking:
        assert looking.search(wanted).facts == []
    assert store.problems() == []


def test_a_visit_that_was_dropped_is_no_visit(yard: Yard, store: Store) -> None:
    days = [date(2026, 3, 2), date(2026, 4, 13)]
    for day in days:
        yard.keep(store, Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=day))
    store.drop_visit(2, seen=store.visit(2).revision)
    with Looking.open(yard.folder) as looking:
        assert [visit.id for visit in looking.visits_of(looking.horse("Bramble"))] == [1]
        assert [str(one.date) for one in looking.last_seen()] == ["2026-03-02"]
        assert looking.days_of([looking.horse("Bramble").id]) == {1: [days[0]]}
        assert looking.horses_on(days[1]) == []
