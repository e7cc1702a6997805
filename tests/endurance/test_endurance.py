"""The short form of every part, each in a process of its own, and whether the parts can fail at all."""

from __future__ import annotations

import os
import re
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.record import RosterHorse
from tests.endurance import network, power_cuts, reviews, system_calls, together
from tests.endurance.outcome import CannotRunError, Outcome
from tests.endurance.tracing import ROOT, Call, calls, needs_strace
from tests.endurance.yard import keep, spoken, with_roster

# Part and how many cases each of its outcomes must at least have tried.
PARTS = {
    "order": [3],
    "kills": [20, 20],
    "reviews": [20],
    "together": [50],
    "faults": [30, 10],
    "calls": [9],
    "power": [100],
    "disks": [6, 6, 44],
    "sounds": [65, 20],
    "texts": [200, 0],
    "lists": [50, 100, 50, 50],
    "network": [4],
}

pytestmark = pytest.mark.skipif(os.name != "posix", reason="forks, signals and mounts are those of POSIX systems")


@pytest.mark.parametrize("part", PARTS)
def test_a_part_finds_nothing(part: str) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "tests.endurance", "--part", part, "--seed", "7"],
        cwd=ROOT, env={**os.environ, "PYTHONPATH": str(ROOT)}, capture_output=True, text=True, timeout=300,
    )  # fmt: skip
    if "not run, " in done.stdout:
        pytest.skip(done.stdout.strip())
    assert done.returncode == 0, done.stdout + done.stderr
    cases = [int(number) for number in re.findall(r": (\d+) cases, 0 failures", done.stdout)]
    assert len(cases) == len(PARTS[part])
    assert all(tried >= least for tried, least in zip(cases, PARTS[part], strict=True)), done.stdout


@pytest.fixture
def strace() -> None:
    """Skip with the reason where programs cannot be traced."""
    try:
        needs_strace()
    except CannotRunError as reason:
        pytest.skip(str(reason))


def unsynced(log: Path) -> list[Call]:
    """The calls as those of a program that never syncs a recording."""
    return [call for call in calls(log) if call.name != "fsync"]


def test_a_half_answer_and_one_that_is_only_told_would_be_noticed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    desk, outcome = reviews.Desk(tmp_path, "7"), Outcome("reviews")
    desk.answer_s = 1.0

    def half(folder: Path, evening: str, pipe: int) -> None:
        with Store.open(folder) as store:
            store.add_horses([RosterHorse(name="Foal z")])
        os.write(pipe, b"writes\nbegin 0\n" * 4)
        time.sleep(60)

    def only_told(folder: Path, evening: str, pipe: int) -> None:
        os.write(pipe, b"begin 0\nsaid Right: sole.\n" + b"writes\nbegin 1\n" * 4)
        time.sleep(60)

    monkeypatch.setattr(reviews, "_answer_all", half)
    desk.kill(outcome)
    monkeypatch.setattr(reviews, "_answer_all", only_told)
    desk.kill(outcome)
    assert "an answer is half there or gone: horses holds [(4, 'Foal z'" in outcome.failures[0]
    assert any("answers came out as ['Right: sole.'] and, not killed, as [" in failure for failure in outcome.failures)


def test_a_lost_update_would_be_noticed(tmp_path: Path) -> None:
    with_roster(tmp_path / "book")
    with Store.open(tmp_path / "book") as store:
        number = keep(store, spoken(tmp_path, 1))[0]
        fact = store.visit(number).fact_ids[0]
        for finding in ("keratoma", "canker"):
            store.correct(fact, {"value": finding}, seen=store.visit(number).revision)
    with closing(sqlite3.connect(tmp_path / "book" / "clinchbook.db")) as database:
        assert together.broken_chains(database) == []
        database.execute("DROP TRIGGER facts_value_written_down")
        database.execute("UPDATE facts SET value = 'flare' WHERE id = ?", [fact])
        lost = f"value of facts {fact} is flare, but the last correction made it canker"
        assert together.broken_chains(database) == [lost]


def test_a_call_to_another_machine_would_be_noticed() -> None:
    outside = "7 connect(3, {sa_family=AF_INET, sin_port=htons(443)}, 16) = -1 EINPROGRESS"
    inside = '7 connect(3, {sa_family=AF_UNIX, sun_path="/run/x"}, 110) = -1 ENOENT'
    own = '7 bind(3, {sa_family=AF_INET6, sin6_port=htons(0), inet_pton(AF_INET6, "::1", &sin6_addr)}, 28) = 0'
    assert network.calls_outside("\n".join((inside, outside, own))) == [outside]


@pytest.mark.usefixtures("strace")
def test_a_recording_that_is_never_synced_would_be_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(system_calls, "calls", lambda log: iter(unsynced(log)))
    wrong = system_calls.order().failures
    assert "fresh store False: the recording is not synced between its last byte and its name" in wrong
    assert "fresh store False: the folder of the recording is not synced before the transaction" in wrong
    monkeypatch.setattr(power_cuts, "calls", lambda log: iter(unsynced(log)))
    lost = power_cuts.run(1, 20, 1).failures
    assert any("is no longer what was kept" in failure or "is missing from the store" in failure for failure in lost)
