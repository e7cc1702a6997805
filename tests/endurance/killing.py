"""Programs killed at random moments while they keep and correct: what was acknowledged must be there, whole."""

from __future__ import annotations

import os
import random
import signal
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from pipeline.keeping import Store
from tests.endurance.apart import Child, start
from tests.endurance.outcome import Outcome
from tests.endurance.yard import HORSES, Spoken, keep, spoken, wholeness, with_roster

_KILLS_A_STORE = 20
_MEMOS_A_STORE = 60
_STEPS = 4  # a kill falls somewhere into the first few memos or corrections of a program


def run(kills: int, seed: int) -> list[Outcome]:
    """Kill ``kills`` programs that keep memos and as many that correct; the moments follow from ``seed``."""
    ingest, correct = Outcome("killed while keeping"), Outcome("killed while correcting")
    for first in range(0, kills, _KILLS_A_STORE):
        chance = random.Random(f"{seed} {first}")
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            folder = Path(named)
            yard = Yard(folder, chance)
            for _ in range(min(_KILLS_A_STORE, kills - first)):
                yard.kill_while_keeping(ingest)
            for _ in range(min(_KILLS_A_STORE, kills - first)):
                yard.kill_while_correcting(correct)
    for outcome in (ingest, correct):
        outcome.remarks.append(f"seed {seed}")
    return [ingest, correct]


class Yard:
    """One store, and what its programs have acknowledged so far."""

    def __init__(self, folder: Path, chance: random.Random) -> None:
        self.store = folder / "book"
        self.chance = chance
        self.memos = [spoken(folder, number) for number in range(_MEMOS_A_STORE)]
        self.acknowledged: set[str] = set()
        self.horse_of: dict[int, str] = {}
        with_roster(self.store)
        with Store.open(self.store) as store:
            keep(store, self.memos[0])
            self.keep_s = _seconds(lambda: keep(store, self.memos[1]))
            number, horse = store.memos()[0].visit_ids[0], store.horses()[0]
            self.assign_s = _seconds(lambda: store.assign(number, horse, who="Ann"))

    def kill_while_keeping(self, outcome: Outcome) -> None:
        """One program, one kill, and a look at what is left."""
        told = self._killed(start(lambda pipe: _keep_all(self.store, self.memos, pipe)), self.keep_s, outcome)
        self.acknowledged.update(line.split()[1] for line in told if line.startswith("kept"))
        outcome.cases += 1
        with Store.open(self.store) as store:
            wrong = wholeness(store, self.memos)
            lost = [sha256 for sha256 in sorted(self.acknowledged) if not store.has(sha256)]
        if self.acknowledged >= {memo.sha256 for memo in self.memos}:
            self.memos = [spoken(self.store.parent, len(self.memos) + i) for i in range(_MEMOS_A_STORE)]
        outcome.failures += [f"kill {outcome.cases}: {problem}" for problem in wrong]
        outcome.failures += [f"kill {outcome.cases}: memo {sha256} was acknowledged and is gone" for sha256 in lost]

    def kill_while_correcting(self, outcome: Outcome) -> None:
        """As for keeping; a correction that was acknowledged stands, or the one that was under way after it."""
        plan = [(self.chance.randrange(1 << 30), self.chance.choice(HORSES).name) for _ in range(400)]
        told = self._killed(start(lambda pipe: _correct_all(self.store, plan, pipe)), self.assign_s, outcome)
        done = [(int(number), name) for verb, number, name in map(str.split, told[1:]) if verb == "gave"]
        outcome.cases += 1
        for number, name in done:
            self.horse_of[number] = name
        with Store.open(self.store) as store:
            wrong = wholeness(store, self.memos)
            wrong += self._lost_corrections(store, plan[len(done) : len(done) + 1])
        outcome.failures += [f"kill {outcome.cases}: {problem}" for problem in wrong]

    def _lost_corrections(self, store: Store, under_way: list[tuple[int, str]]) -> list[str]:
        wrong = []
        visits = sorted(_horses_now(store))
        at_work = {visits[pick % len(visits)]: name for pick, name in under_way if visits}
        written = {entry.row: entry.new for entry in store.history() if entry.column == "horse"}
        names = {horse.id: horse.name for horse in store.horses()}
        for number, now in _horses_now(store).items():
            allowed = {self.horse_of.get(number, now), at_work.get(number)}
            if now not in allowed:
                wrong.append(f"visit {number} is {now}'s instead of {self.horse_of.get(number)}'s")
            if number in written and names[int(str(written[number]))] != now:
                wrong.append(f"the history of visit {number} does not end with {now}")
            if number in at_work and now == at_work[number]:
                self.horse_of[number] = str(now)
        return wrong

    def _killed(self, child: Child, step_s: float, outcome: Outcome) -> list[str]:
        first = os.read(child.pipe, 6)  # "ready\n": from here on it keeps
        time.sleep(self.chance.uniform(0, _STEPS * step_s))
        child.kill()
        told = (first + child.written()).decode().split("\n")[:-1]  # what follows the last line end was cut off
        status = child.wait()
        outcome.expect(status in (0, signal.SIGKILL), f"a program ended by itself with status {status}")
        return told


def _seconds(work: Callable[[], object]) -> float:
    began = time.monotonic()
    work()
    return time.monotonic() - began


def _keep_all(folder: Path, memos: list[Spoken], pipe: int) -> None:
    with Store.open(folder) as store:
        os.write(pipe, b"ready\n")
        for memo in memos:
            if not store.has(memo.sha256):
                keep(store, memo)
                os.write(pipe, f"kept {memo.sha256}\n".encode())


def _correct_all(folder: Path, plan: list[tuple[int, str]], pipe: int) -> None:
    with Store.open(folder) as store:
        visits = sorted(_horses_now(store))
        horses = {horse.name: horse for horse in store.horses()}
        os.write(pipe, b"ready\n")
        for pick, name in plan:
            number = visits[pick % len(visits)]
            store.assign(number, horses[name], who="Ann")
            os.write(pipe, f"gave {number} {name}\n".encode())


def _horses_now(store: Store) -> dict[int, str | None]:
    return {
        number: visit.horse
        for memo in store.memos()
        for number, visit in zip(memo.visit_ids, memo.record.visits, strict=True)
    }
