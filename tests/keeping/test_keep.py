"""One memo is one transaction: whole, once, and read back as it was."""

from __future__ import annotations

import os
import signal
import sqlite3
import stat
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import FileMissingError, NotFoundError, StoreError
from pipeline.keeping import Store, originals
from pipeline.keeping.rows import fact_columns
from pipeline.record import (
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    MatchKind,
    Memo,
    MemoRecord,
    Severity,
    Status,
    Transcript,
    Visit,
    Word,
)

if TYPE_CHECKING:
    from pipeline.keeping.rows import Columns
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Left fore, bad thrush in the sulcus, six nails."


def full_visit() -> Visit:
    """A visit in which every field of every model says something."""
    said = Fact(
        foot="LF",
        slot="finding",
        value="thrush",
        zone="sulcus",
        status=Status.SUSPECTED,
        severity=Severity.SEVERE,
        confidence=0.625,
        flagged=True,
        reasons=["a low word", "no ›second‹ sign"],
        quote="bad thrush in the sulcus",
        start=1.25,
        end=2.75,
        span=(20, 44),
        match=MatchKind.SOUND_ALIKE,
        rules=["foot in hand", "zone after"],
    )
    whole = Fact(foot=None, slot="body_condition", value=5.5, status=Status.HISTORY, quote="", span=(0, 0))
    nails = Fact(foot="RH", slot="nails", value=6, severity=None)
    size = Fact(foot="RH", slot="shoe_size", value="00")
    flag = Flag(kind=FlagKind.CONTRADICTION, reason="two sizes", quote="six", start=0.5, end=0.75, span=(46, 49))
    return Visit(
        horse="Bramble",
        horse_match=HorseMatch.KNOWN,
        date=date(2026, 3, 2),
        facts=[said, whole, nails, size],
        flags=[flag],
        notes="Ate half a hat.\nThe hat was old.",
    )


def full_record(yard: Yard, path: Path) -> MemoRecord:
    """A record in which every field says something."""
    record = yard.record(path, full_visit(), text=TEXT)
    memo = record.memo.model_copy(update={"recorded_from": "file name", "container": "m4a"})
    flag = Flag(kind=FlagKind.SOUND, reason="cut off at the end", start=40.0, end=41.5)
    return record.model_copy(update={"id": "line 7", "memo": memo, "flags": [flag]})


def words() -> list[Word]:
    """Two words with their seconds."""
    return [
        Word(text="Bramble.", start=0, end=8, start_s=0.1, end_s=0.6, probability=0.91),
        Word(text="Left", start=9, end=13, start_s=0.7, end_s=1.0, probability=0.4375),
    ]


def test_every_field_comes_back_after_reopening(yard: Yard) -> None:
    path = yard.recording()
    record = full_record(yard, path)
    transcript = Transcript(text=TEXT, words=words())
    with yard.open() as store:
        ids = store.keep(record, transcript, path, weights="base d01c", vocabulary="abc123")
    with yard.open() as store:
        kept = store.visit(ids[0])
    assert kept.visit == record.visits[0]
    assert kept.memo.record == record
    assert kept.memo.transcript == transcript
    assert (kept.memo.weights, kept.memo.vocabulary, kept.memo.file_name) == ("base d01c", "abc123", "memo.m4a")
    assert kept.memo.visit_ids == (ids[0],)
    assert len(kept.fact_ids) == len(record.visits[0].facts)
    assert kept.memo.original.read_bytes() == path.read_bytes()
    assert abs((datetime.now(kept.memo.kept_at.tzinfo) - kept.memo.kept_at).total_seconds()) < 600


def test_a_number_comes_back_as_a_number_and_a_size_as_text(yard: Yard, store: Store) -> None:
    facts = store.visit(yard.keep(store, full_visit())[0]).visit.facts
    assert [type(fact.value) for fact in facts] == [str, float, float, str]
    assert [fact.value for fact in facts] == ["thrush", 5.5, 6.0, "00"]


def test_the_same_recording_twice_adds_nothing(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)
    assert record.memo.sha256 is not None
    assert not store.has(record.memo.sha256)
    first = store.keep(record, Transcript(text=record.transcript), path)
    copied = path.rename(path.with_name("another name.m4a"))
    second = store.keep(record, Transcript(text=record.transcript), copied)
    assert (len(first), second) == (1, [])
    assert store.has(record.memo.sha256)
    assert len(store.memos()) == 1
    assert len(store.visits_of("Bramble")) == 1


def test_the_copy_is_private_and_named_by_its_hash(yard: Yard, store: Store, trimmed: Visit) -> None:
    original = store.visit(yard.keep(store, trimmed)[0]).memo.original
    digest = original.stem
    assert original.relative_to(yard.folder).as_posix() == f"originals/{digest[:2]}/{digest}.m4a"
    if os.name == "posix":
        modes = [stat.S_IMODE(path.stat().st_mode) for path in (original, yard.folder / "clinchbook.db", yard.folder)]
        assert modes == [0o600, 0o600, 0o700]


def nothing_kept(store: Store) -> bool:
    """Whether no memo and no horse besides Bramble is in the store, and the store is whole."""
    return not store.memos() and not store.unassigned() and len(store.horses()) == 1 and not store.problems(deep=True)


def test_a_failing_statement_in_the_middle_leaves_nothing(
    yard: Yard, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    def failing_at_the_third(fact: Fact, visit_id: int, position: int) -> Columns:
        columns = fact_columns(fact, visit_id, position)
        return {**columns, "confidence": 7.0} if position == 2 else columns

    path = yard.recording()
    new = full_visit().model_copy(update={"horse": "Sorrel", "horse_match": HorseMatch.NEW})
    record = yard.record(path, new)
    with monkeypatch.context() as patched:
        patched.setattr("pipeline.keeping.writing_down.fact_columns", failing_at_the_third)
        with pytest.raises(StoreError, match="refused an entry"):
            store.keep(record, Transcript(text=record.transcript), path)
    assert nothing_kept(store)
    # The copy that was left is used by the next try.
    assert len(store.keep(record, Transcript(text=record.transcript), path)) == 1
    assert len(list((yard.folder / "originals").rglob("*.m4a"))) == 1


@pytest.mark.parametrize("broken", ["pathlib.Path.replace", "os.fsync", "tempfile.mkstemp"])
def test_a_failing_file_operation_leaves_nothing(
    yard: Yard, store: Store, trimmed: Visit, monkeypatch: pytest.MonkeyPatch, broken: str
) -> None:
    def failing(*arguments: object, **named: object) -> None:
        raise OSError(28, "No space left on device")

    path = yard.recording()
    record = yard.record(path, trimmed)
    with monkeypatch.context() as patched:
        patched.setattr(broken, failing)
        with pytest.raises(StoreError, match="No space left"):
            store.keep(record, Transcript(text=record.transcript), path)
    assert nothing_kept(store)
    assert [file for file in (yard.folder / "originals").rglob("*") if file.is_file()] == []
    assert len(store.keep(record, Transcript(text=record.transcript), path)) == 1


def test_a_recording_that_changed_since_it_was_heard_is_not_kept(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)
    path.write_bytes(b"something else")
    with pytest.raises(StoreError, match="changed while it was being kept"):
        store.keep(record, Transcript(text=record.transcript), path)
    assert nothing_kept(store)


def test_a_broken_copy_of_an_earlier_run_is_replaced(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)
    left = yard.folder / originals.original_name(str(record.memo.sha256), path.name)
    left.parent.mkdir(parents=True)
    left.write_bytes(b"half")
    store.keep(record, Transcript(text=record.transcript), path)
    assert left.read_bytes() == path.read_bytes()


def test_a_recording_that_is_gone_is_a_missing_file(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)
    path.unlink()
    with pytest.raises(FileMissingError, match=r"memo\.m4a"):
        store.keep(record, Transcript(text=record.transcript), path)
    assert nothing_kept(store)


def test_typed_text_has_no_recording_to_keep(store: Store, tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="recording"):
        store.keep(MemoRecord(memo=Memo(), transcript="x"), Transcript(text="x"), tmp_path / "x")


@pytest.mark.parametrize(
    ("name", "ending"),
    [
        ("x.M4A", ".m4a"),
        ("x", ".sound"),
        ("x.exe bad", ".sound"),
        (f"{'n' * 240}.wav", ".wav"),
        ("Bramble 🐴 \u202egpj.ogg", ".ogg"),
        ("x.averylongending", ".sound"),
    ],
)
def test_a_hostile_file_name_never_names_the_copy(
    yard: Yard, store: Store, trimmed: Visit, name: str, ending: str
) -> None:
    path = yard.recording(name)
    record = yard.record(path, trimmed)
    memo = store.visit(store.keep(record, Transcript(text=record.transcript), path)[0]).memo
    assert memo.original.name == f"{record.memo.sha256}{ending}"
    assert memo.file_name == name


@pytest.mark.parametrize(
    "name", ["../../x", "a\x00b", "n" * 300, "Blüte 🐴", "\u202eelbmarB", "'; DROP TABLE horses; --"]
)
def test_a_hostile_horse_name_is_only_a_name(yard: Yard, store: Store, name: str) -> None:
    new = full_visit().model_copy(update={"horse": name, "horse_match": HorseMatch.NEW})
    kept = store.visit(yard.keep(store, new)[0])
    assert kept.visit.horse == name
    assert [visit.id for visit in store.visits_of(name)] == [kept.id]
    assert store.problems() == []
    outside = {path.name for path in yard.folder.parent.iterdir()}
    assert outside == {"book", "memos"}


def test_the_counts_are_of_what_is_kept(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed, full_visit())
    yard.keep(store, trimmed)
    assert store.counts() == {"memos": 2, "visits": 3, "facts": 6, "horses": 1, "flagged": 1}


def test_an_unknown_visit_or_memo_says_so(store: Store) -> None:
    with pytest.raises(NotFoundError, match="visit 99"):
        store.visit(99)
    with pytest.raises(NotFoundError, match="memo 99"):
        store.memo(99)


def test_problems_names_a_recording_that_is_gone_or_changed(yard: Yard, store: Store, trimmed: Visit) -> None:
    original = store.visit(yard.keep(store, trimmed)[0]).memo.original
    original.write_bytes(b"rotten")
    assert store.problems() == []
    assert store.problems(deep=True) == ["The recording of memo0.m4a is no longer what was kept."]
    original.unlink()
    assert store.problems() == ["The recording of memo0.m4a is missing from the store."]


def test_problems_notices_an_index_that_does_not_fit(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, trimmed)
    other = sqlite3.connect(yard.folder / "clinchbook.db")
    other.execute("DROP TRIGGER memos_indexed")
    other.commit()
    other.close()
    yard.keep(store, trimmed)
    assert "The word index memo_words does not fit the records." in store.problems()


def test_after_many_keeps_the_word_index_still_fits(yard: Yard, store: Store) -> None:
    for number in range(40):
        fact = Fact(foot="LF", slot="toe_length", value=80 + number / 4, zone="toe", quote=f"toe {number}")
        visit = Visit(
            horse=f"Horse {number % 7}", horse_match=HorseMatch.NEW, date=date(2026, 3, 2), facts=[fact],
            notes=f"note {number} with an apostrophe's \"quote\"",
        )  # fmt: skip
        yard.keep(store, visit, full_visit(), text=f"memo number {number}")
    assert store.problems(deep=True) == []


KILLED_WHILE_KEEPING = """
import hashlib, os, signal, sys
from datetime import date
from pathlib import Path
from pipeline.keeping import Store, writing_down
from pipeline.record import Fact, Memo, MemoRecord, Transcript, Visit

def killed(fact, visit_id, position):
    os.kill(os.getpid(), signal.SIGKILL)

folder, path = Path(sys.argv[1]), Path(sys.argv[2])
visit = Visit(horse="Sorrel", horse_match="new", date=date(2026, 3, 2), facts=[Fact(foot="LF", slot="nails", value=6)])
memo = Memo(sha256=hashlib.sha256(path.read_bytes()).hexdigest())
writing_down.fact_columns = killed
with Store.open(folder) as store:
    store.keep(MemoRecord(memo=memo, transcript="x", visits=[visit]), Transcript(text="x"), path)
"""


@pytest.mark.skipif(os.name != "posix", reason="needs a signal that cannot be caught")
def test_a_killed_program_leaves_a_whole_store_without_the_memo(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    source = Path(originals.__file__).resolve().parents[2]
    ended = subprocess.run(
        [sys.executable, "-c", KILLED_WHILE_KEEPING, str(yard.folder), str(path)],
        check=False, env={**os.environ, "PYTHONPATH": str(source)},
    )  # fmt: skip
    assert ended.returncode == -signal.SIGKILL
    assert nothing_kept(store)
    record = yard.record(path, trimmed)
    assert store.keep(record, Transcript(text=record.transcript), path) == [1]
    assert store.problems(deep=True) == []


def test_many_at_once_make_one_store_and_keep_a_memo_once(yard: Yard, trimmed: Visit) -> None:
    path = yard.recording()
    record = yard.record(path, trimmed)

    def keeping(_: int) -> list[int]:
        with yard.open() as opened:
            return opened.keep(record, Transcript(text=record.transcript), path)

    with ThreadPoolExecutor(4) as pool:
        kept = sorted(pool.map(keeping, range(4)))
    assert kept == [[], [], [], [1]]
    with yard.open() as opened:
        assert opened.problems(deep=True) == []


def test_a_copy_that_is_removed_meanwhile_is_not_kept_without_its_sound(
    yard: Yard, store: Store, trimmed: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = yard.recording()
    usual = originals.keep_original

    def removed_at_once(folder: Path, sha256: str, original: Path) -> str:
        name = usual(folder, sha256, original)
        (folder / name).unlink()
        return name

    monkeypatch.setattr("pipeline.keeping.store.keep_original", removed_at_once)
    with pytest.raises(StoreError, match=r"memo\.m4a was removed while it was being kept; keep it again"):
        store.keep(yard.record(path, trimmed), Transcript(text="Bramble"), path)
    assert nothing_kept(store)
