"""The order in which a memo reaches the disk, and every single system call of it failing or being the last."""

from __future__ import annotations

import os
import shutil
import signal
import tempfile
from collections.abc import Sequence
from functools import partial
from pathlib import Path

from pipeline.errors import ClinchbookError
from pipeline.keeping import Store
from pipeline.keeping.database import WRITTEN
from pipeline.keeping.originals import original_name
from tests.endurance.apart import Caught
from tests.endurance.keep_one import ACKNOWLEDGED, do
from tests.endurance.outcome import Outcome
from tests.endurance.tracing import Call, calls, needs_strace, program, run_attached, run_traced
from tests.endurance.yard import keep, spoken, wholeness, with_roster

# What a disk may answer to each call, and the end of the program right before it.
_TROUBLES = ("error=EIO", "error=ENOSPC", "signal=KILL")
_REFUSED = "refused: "


def order() -> Outcome:
    """The recording lies whole and named on the disk before the transaction starts; the journal before the database."""
    needs_strace()
    outcome = Outcome("order of writes")
    for fresh in (False, True):
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            traced = _traced(Path(named), "keep", fresh)
            outcome.cases += 1
            outcome.failures += [f"fresh store {fresh}: {wrong}" for wrong in wrong_order(traced, Path(named) / "book")]
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        outcome.cases += 1
        outcome.failures += _left_copy_is_settled(Path(named))
    return outcome


def each(every: int) -> Outcome:
    """Each ``every``-th call on the store is made to fail in each way, and to be the program's last."""
    needs_strace()
    outcome = Outcome("system calls failing")
    for task, fresh in (("keep", False), ("keep", True), ("assign", False)):
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            begun, folder = Path(named) / "begun", Path(named) / "tried"
            prepare(begun, fresh)
            for _ in range(2):  # the first time loads what the task needs, once for all children
                book, traced = folder / "book", _watched(begun, folder, task)
            for call in [call for call in traced if any(map(book.__eq__, _above(call)))][::every]:
                for trouble in _TROUBLES:
                    outcome.cases += 1
                    words = f"{task}{' in a fresh store' if fresh else ''}, {trouble} at {call.name} {call.ordinal}"
                    wrong = _with_trouble(begun, folder, task, call, trouble)
                    outcome.failures += [f"{words}: {problem}" for problem in wrong]
    return outcome


def wrong_order(traced: Sequence[Call], book: Path) -> list[str]:
    """What is wrong with the order in which these calls put a memo into the store ``book``."""
    rename = next((n for n, call in enumerate(traced) if call.name == "rename" and call.answer == 0), None)
    if rename is None:
        return ["the recording is never renamed"]
    part, named = traced[rename].paths[-2:]
    journal = book / "clinchbook.db-journal"
    written = [n for n, call in enumerate(traced) if call.name == "write" and call.paths[:1] == [part]]
    begun = next(n for n, call in enumerate(traced) if n > rename and call.name == "openat" and journal in call.paths)
    file = book / "clinchbook.db"
    database = [n for n, call in enumerate(traced) if n > begun and call.name == "pwrite64" and file in call.paths]
    gone = next(n for n, call in enumerate(traced) if n > begun and call.name == "unlink" and journal in call.paths)
    told = next(n for n, call in enumerate(traced) if ACKNOWLEDGED.encode() in b"".join(call.texts))
    wanted = {
        "the recording is not synced between its last byte and its name": _synced(traced, part, written[-1], rename),
        "the folder of the recording is not synced before the transaction": _synced(
            traced, named.parent, rename, begun
        ),
        "the originals are not synced before the transaction": _synced(traced, named.parent.parent, rename, begun),
        "the journal is not synced before the database is written": _synced(traced, journal, begun, database[0]),
        "the database is not synced before the journal goes": _synced(traced, file, database[-1], gone),
        "the folder is not synced after the journal went, before it is acknowledged": _synced(traced, book, gone, told),
    }
    return [problem for problem, right in wanted.items() if not right]


def _left_copy_is_settled(folder: Path) -> list[str]:
    """A copy of an earlier run that was stopped right after its renaming is made to last before it is relied on."""
    book, memo = folder / "book", spoken(folder, 2)
    prepare(folder, False)
    copy = book / original_name(memo.sha256, memo.path.name)
    copy.parent.mkdir()
    copy.write_bytes(memo.path.read_bytes())
    run_traced(folder / "calls", program("keep", folder))
    traced = list(calls(folder / "calls"))
    journal = book / "clinchbook.db-journal"
    begun = next(n for n, call in enumerate(traced) if call.name == "openat" and journal in call.paths)
    way = (copy.parent, copy.parent.parent, book)
    return [f"{path} is not synced before a left copy is used" for path in way if not _synced(traced, path, -1, begun)]


def _synced(traced: Sequence[Call], path: Path, after: int, before: int) -> bool:
    between = traced[after + 1 : before]
    return any(call.name in ("fsync", "fdatasync") and path in call.paths and call.answer == 0 for call in between)


def prepare(folder: Path, fresh: bool) -> None:
    """A store with one memo in ``folder``, or with ``fresh`` none at all."""
    folder.mkdir(exist_ok=True)
    if not fresh:
        with_roster(folder / "book")
        with Store.open(folder / "book") as store:
            keep(store, spoken(folder, 1))


def _traced(folder: Path, task: str, fresh: bool) -> list[Call]:
    prepare(folder, fresh)
    log = folder / "calls"
    done = run_traced(log, program(task, folder))
    assert done.returncode == 0, done.stderr
    return list(calls(log))


def _above(call: Call) -> list[Path]:
    return [above for path in call.paths for above in (path, *path.parents)]


def _as_begun(begun: Path, folder: Path) -> None:
    shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(begun, folder)


def _watched(begun: Path, folder: Path, task: str) -> list[Call]:
    """The calls of the task in a copy of what was prepared."""
    _as_begun(begun, folder)
    do(task, folder)
    _as_begun(begun, folder)
    done = run_attached(folder / "calls", partial(_tell, task, folder))
    assert done.written == ACKNOWLEDGED, done.written
    return list(calls(folder / "calls"))


def _tell(task: str, folder: Path, pipe: int) -> None:
    """Do it and say so; a problem is a sentence, and anything else a traceback."""
    with Caught() as caught:
        try:
            do(task, folder)
            told = ACKNOWLEDGED
        except ClinchbookError as error:
            told = f"{_REFUSED}{error}"
    os.write(pipe, (caught.trouble or told).encode())


def _with_trouble(begun: Path, folder: Path, task: str, call: Call, trouble: str) -> list[str]:
    """One run in which this call is answered with trouble, and a second one without."""
    _as_begun(begun, folder)
    option = f"inject={call.name}:{trouble}:when={call.ordinal}"
    ended = run_attached(folder / "calls", partial(_tell, task, folder), "-e", option)
    acknowledged, killed = ended.written == ACKNOWLEDGED, ended.signal == signal.SIGKILL
    wrong = []
    hit = killed if trouble == "signal=KILL" else "(INJECTED)" in (folder / "calls").read_text(encoding="ascii")
    if not hit:
        wrong.append("the call did not come, so that nothing was tried")
    if not (acknowledged or killed or ended.written.startswith(_REFUSED)):
        wrong.append(f"no sentence: {ended.written.strip().splitlines()[-1:]}")
    told = ended.written == f"{_REFUSED}{WRITTEN}"  # it is there, and whether it lasts is said to be unsure
    wrong += _state(folder, task, must=acknowledged or told, may=acknowledged or told or killed)
    try:
        do(task, folder)
    except ClinchbookError as error:
        wrong.append(f"the next run says “{error}”")
    return wrong + _state(folder, task, must=True, may=True)


def _state(folder: Path, task: str, must: bool, may: bool) -> list[str]:
    """What is wrong with the store, when the task must, or may, be done."""
    if not must and not (folder / "book" / "clinchbook.db").exists():
        return []
    memos = [spoken(folder, 1), spoken(folder, 2)]
    with Store.open(folder / "book") as store:
        wrong = wholeness(store, memos)
        done = is_done(store, folder, task)
    if must and not done:
        wrong.append("it was acknowledged and is not there")
    if done and not may:
        wrong.append("it was refused and is there all the same")
    return wrong


def is_done(store: Store, folder: Path, task: str) -> bool:
    """Whether the store shows the task's work."""
    if task == "keep":
        return store.has(spoken(folder, 2).sha256)
    memos = store.memos()
    return bool(memos) and memos[0].record.visits[0].horse == "Tansy"
