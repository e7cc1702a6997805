"""Power cuts at every point of keeping a memo, replayed from the program's own system calls.

The model is harsher than most file systems: of what was written and not yet synced each write may have reached the
disk or not, in any combination; a name made, changed or taken away lasts only once its folder is synced (after
Pillai et al. 2014, All File Systems Are Not Created Equal, OSDI, 433-448).
"""

from __future__ import annotations

import random
import shutil
import tempfile
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from pipeline.errors import ClinchbookError
from pipeline.keeping import Store
from tests.endurance.keep_one import ACKNOWLEDGED
from tests.endurance.outcome import Outcome
from tests.endurance.system_calls import is_done, prepare
from tests.endurance.tracing import Call, calls, needs_strace, program, run_traced
from tests.endurance.yard import spoken, wholeness


@dataclass
class Step:
    """One change of the disk: of a file's bytes or of a folder's names; ``lasting_at`` is the sync that settles it."""

    at: int
    settled_by: object
    apply: Callable[[Disk], None]
    lasting_at: float = float("inf")


@dataclass
class Disk:
    """Names and bytes: every file and folder by its path, files as numbered contents."""

    names: dict[Path, int | None] = field(default_factory=dict)  # None: a folder
    contents: dict[int, bytearray] = field(default_factory=dict)

    def copied(self) -> Disk:
        """A disk of its own with the same things on it."""
        return Disk(dict(self.names), {number: bytearray(data) for number, data in self.contents.items()})

    def lay_out(self, old: Path, new: Path) -> None:
        """Make everything under ``old`` for real under ``new``; what lies in a folder that is not there is lost."""
        for path, number in sorted(self.names.items()):
            target = new / path.relative_to(old)
            if not target.parent.is_dir():
                continue
            if number is None:
                target.mkdir(exist_ok=True)
            else:
                target.write_bytes(self.contents[number])


def run(seed: int, every: int, tries: int) -> Outcome:
    """Cut the power at each ``every``-th change; ``tries`` random choices of what reached the disk, none and all."""
    needs_strace()
    outcome = Outcome("power cuts", remarks=[f"seed {seed}"])
    for task, fresh in (("keep", False), ("keep", True), ("assign", False)):
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            folder = Path(named).resolve()
            prepare(folder, fresh)
            spoken(folder, 2)
            before = disk_of(folder)
            run_traced(folder / "calls", program(task, folder))
            traced = list(calls(folder / "calls"))
            steps, told = changes(traced, before, folder)
            outcome.expect(bool(steps) and told < len(traced), f"{task} fresh={fresh}: nothing was traced")
            cuts = [*range(0, len(traced) + 1, every), len(traced)]
            points = [n for n in cuts if n == len(traced) or any(step.at == n for step in steps)]
            for at in points:
                chance = random.Random(f"{seed} {task} {fresh} {at}")
                for choice in range(tries + 2):
                    outcome.cases += 1
                    cut = _after_cut(before, steps, at, choice, chance)
                    wrong = _look(cut, folder, task, acknowledged=at > told)
                    outcome.failures += [f"{task} fresh={fresh}, cut at {at}, choice {choice}: {w}" for w in wrong]
    return outcome


def disk_of(folder: Path) -> Disk:
    """What lies under a folder now, all of it lasting."""
    disk = Disk({folder: None})
    for path in folder.rglob("*"):
        disk.names[path] = None if path.is_dir() else len(disk.contents)
        if path.is_file():
            disk.contents[len(disk.contents)] = bytearray(path.read_bytes())
    return disk


def changes(traced: Sequence[Call], before: Disk, folder: Path) -> tuple[list[Step], int]:
    """The changes that the calls made under ``folder``, with the sync that made each last; and when it was told."""
    live = before.copied()
    steps: list[Step] = []
    told = len(traced)
    for at, call in enumerate(traced):
        if call.name == "write" and ACKNOWLEDGED.encode() in b"".join(call.texts):
            told = at
        inside = [path for path in call.paths if path.is_relative_to(folder)]
        if call.answer < 0 or not inside or inside[-1] == folder / "calls":
            continue
        if call.name in ("fsync", "fdatasync"):
            settled = inside[0] if live.names.get(inside[0]) is None else live.names[inside[0]]
            for step in steps:
                if step.settled_by == settled:
                    step.lasting_at = min(step.lasting_at, at)
            continue
        for step in _steps_of(call, at, inside, live):
            step.apply(live)
            steps.append(step)
    return steps, told


def _steps_of(call: Call, at: int, inside: list[Path], live: Disk) -> Iterable[Step]:
    path = inside[-1]
    if call.name == "openat":
        if "O_CREAT" in call.given and path not in live.names:
            yield Step(at, path.parent, _making(path, max(live.contents, default=-1) + 1))
    elif call.name == "mkdir":
        yield Step(at, path.parent, _making(path, None))
    elif call.name == "unlink":
        yield Step(at, path.parent, lambda disk: _take_away(disk, path))
    elif call.name == "rename":
        yield Step(at, path.parent, lambda disk: _rename(disk, inside[0], path))
    elif (number := live.names.get(inside[0])) is not None:
        if call.name == "write":
            offset = len(live.contents[number])
            yield Step(at, number, lambda disk: _write(disk, number, offset, call.texts[-1]))
        elif call.name == "pwrite64":
            yield Step(at, number, lambda disk: _write(disk, number, call.numbers()[-1], call.texts[-1]))
        elif call.name == "ftruncate":
            yield Step(at, number, lambda disk: _truncate(disk, number, call.numbers()[-1]))


def _making(path: Path, number: int | None) -> Callable[[Disk], None]:
    def make(disk: Disk) -> None:
        disk.names[path] = number
        if number is not None:
            disk.contents.setdefault(number, bytearray())

    return make


def _take_away(disk: Disk, path: Path) -> None:
    disk.names.pop(path, None)


def _rename(disk: Disk, old: Path, new: Path) -> None:
    if old in disk.names:
        disk.names[new] = disk.names.pop(old)


def _write(disk: Disk, number: int, offset: int, data: bytes) -> None:
    content = disk.contents.setdefault(number, bytearray())
    content.extend(bytes(max(0, offset - len(content))))
    content[offset : offset + len(data)] = data


def _truncate(disk: Disk, number: int, size: int) -> None:
    content = disk.contents.setdefault(number, bytearray())
    del content[size:]
    content.extend(bytes(size - len(content)))


def _after_cut(before: Disk, steps: Sequence[Step], at: int, choice: int, chance: random.Random) -> Disk:
    """The disk when the power went before call ``at``: choice 0 keeps nothing unsynced, 1 all, others a random part."""
    disk = before.copied()
    # The number of a file that was made must be known even when its name did not last.
    for step in steps:
        if step.at >= at:
            break
        if step.lasting_at < at or choice == 1 or (choice > 1 and chance.random() < 0.5):
            step.apply(disk)
    return disk


def _look(cut: Disk, old: Path, task: str, acknowledged: bool) -> list[str]:
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        folder = Path(named).resolve()
        cut.lay_out(old, folder)
        try:
            with Store.open(folder / "book") as store:
                wrong = wholeness(store, [spoken(folder, 1), spoken(folder, 2)])
                if acknowledged and not is_done(store, folder, task):
                    wrong.append("it was acknowledged and is gone")
        except ClinchbookError as error:
            wrong = [f"the store says “{error}”"]
        shutil.rmtree(folder / "book", ignore_errors=True)
    return wrong
