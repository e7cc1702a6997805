"""Disks that are full, read-only, locked, forbidden or pulled out, and clocks that are wrong."""

from __future__ import annotations

import ctypes
import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from pipeline.errors import ClinchbookError, StoreBusyError, StoreError
from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import Ingest
from pipeline.keeping import Store
from pipeline.vocabulary import load_vocabulary
from tests.endurance.apart import run_apart, start
from tests.endurance.commands import NOBODY, Ended, TableHearer, command, loaded_reader, wav
from tests.endurance.outcome import CannotRunError, Outcome
from tests.endurance.yard import with_roster

_PAGE = 4096
_DISK_KIB = 2048
_CLONE_NEWNS = 0x00020000  # linux/sched.h


def run(step_kib: int) -> list[Outcome]:
    """Every trouble once; the full disk with each ``step_kib`` of room."""
    if sys.platform != "linux" or os.geteuid() != 0:
        raise CannotRunError("only root may mount the small disks that this needs, and only on Linux")
    ending = run_apart(lambda: _run_in_own_mounts(step_kib), seconds=3600)
    if ending.trouble:
        raise CannotRunError(ending.trouble.strip().splitlines()[-1])
    outcomes: list[Outcome] = ending.value
    return outcomes


def _run_in_own_mounts(step_kib: int) -> list[Outcome]:
    if ctypes.CDLL(None, use_errno=True).unshare(_CLONE_NEWNS):
        raise CannotRunError("mounts of its own are not allowed here")
    _mount("--make-rprivate", "/")
    loaded_reader()
    outcomes = [Outcome("disk full"), Outcome("store out of reach"), Outcome("wrong clock")]
    for outcome, part in zip(outcomes, (_full_disk, _out_of_reach, _wrong_clock), strict=True):
        part(outcome, step_kib)
    return outcomes


def _mount(*arguments: str | Path) -> None:
    done = subprocess.run(["mount", *map(str, arguments)], capture_output=True, text=True)
    if done.returncode:
        raise CannotRunError(f"mount says: {done.stderr.strip()}")


@contextmanager
def small_disk(kib: int = _DISK_KIB) -> Iterator[Path]:
    """A disk of this size, mounted in a folder of its own; others may enter."""
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        Path(named).chmod(0o755)
        _mount("-t", "tmpfs", "-o", f"size={kib}k,mode=755", "tmpfs", named)
        try:
            yield Path(named)
        finally:
            subprocess.run(["umount", "-l", named], check=False, capture_output=True)


@contextmanager
def memos() -> Iterator[Path]:
    """A folder on the ordinary disk with two recordings that everybody may read."""
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        folder = Path(named)
        folder.chmod(0o755)
        wav(folder / "2026-03-02 first.wav", 1)
        wav(folder / "2026-03-03 second.wav", 2)
        yield folder


def book_with_one(disk: Path, folder: Path) -> Path:
    """A store on the disk that knows the horses and keeps the first recording."""
    book = disk / "book"
    with_roster(book)
    done = command("ingest", folder / "2026-03-02 first.wav", "--store", book)
    assert done.code == 0, done.told()
    return book


def intact(book: Path, kept: int) -> list[str]:
    """What is wrong with a store that must be whole and keep so many memos."""
    with Store.open(book) as store:
        wrong = store.problems(deep=True)
        count = store.counts()["memos"]
    return wrong + ([] if count == kept else [f"{count} memos are kept instead of {kept}"])


def _full_disk(outcome: Outcome, step_kib: int) -> None:
    for task in ("ingest", "roster add", "a new store"):
        for room in range(0, 640, step_kib):
            outcome.cases += 1
            outcome.failures += [f"{task} with {room} KiB of room: {wrong}" for wrong in _with_room(task, room)]


def _with_room(task: str, room_kib: int) -> list[str]:
    with small_disk() as disk, memos() as folder:
        book = disk / "book" if task == "a new store" else book_with_one(disk, folder)
        before = 0 if task == "a new store" else 1
        second = folder / "2026-03-03 second.wav"
        arguments = {"roster add": ["roster", "add", "Fennel"]}.get(task, ["ingest", str(second)])
        _fill(disk, room_kib)
        ended = command(*arguments, "--store", book)
        (disk / "ballast").unlink()
        wrong = []
        if ended.code and not ended.refused_with_a_sentence(11):
            wrong.append(ended.told())
        if "roster" not in arguments and (book.is_dir() or before):
            wrong += intact(book, before + (ended.code == 0))
        again = command(*arguments, "--store", book)
        if again.code:
            wrong.append(f"with room again: {again.told()}")
        return wrong + intact(book, before + (task != "roster add"))


def _fill(disk: Path, room_kib: int) -> None:
    with (disk / "ballast").open("wb") as ballast, suppress(OSError):
        while True:
            os.write(ballast.fileno(), bytes(_PAGE))
    size = (disk / "ballast").stat().st_size
    os.truncate(disk / "ballast", max(0, size - room_kib * 1024))


def _out_of_reach(outcome: Outcome, step_kib: int) -> None:
    for trouble in (_read_only_disk, _read_only_for_this_user, _forbidden, _locked, _pulled_out, _a_file_in_its_place):
        outcome.cases += 1
        with small_disk() as disk, memos() as folder:
            book = book_with_one(disk, folder)
            name = trouble.__name__.strip("_").replace("_", " ")
            outcome.failures += [f"{name}: {wrong}" for wrong in trouble(disk, book, folder)]


def _expect(ended: Ended, *codes: int) -> list[str]:
    return [] if ended.refused_with_a_sentence(*codes) else [ended.told()]


def _readable(book: Path, as_nobody: bool = False) -> list[str]:
    """What was kept must be found and shown where it may only be read."""
    wrong = []
    for arguments in (("search", "thrush"), ("show", "1"), ("export", "Bramble", "--format", "md")):
        ended = command(*arguments, "--store", book, as_nobody=as_nobody)
        if ended.code or "hrush" not in ended.out:
            wrong.append(f"{arguments[0]}: {ended.told()}")
    checked = command("check", "--store", book, as_nobody=as_nobody)
    if checked.trouble or "damaged" in checked.out or "does not fit" in checked.out:
        wrong.append(f"check: {checked.told()} {checked.out}")
    return wrong


def _read_only_disk(disk: Path, book: Path, folder: Path) -> list[str]:
    _mount("-o", "remount,ro", disk)
    wrong = _expect(command("ingest", folder, "--store", book), 11) + _readable(book)
    _mount("-o", "remount,rw", disk)
    return wrong + intact(book, 1)


def _read_only_for_this_user(disk: Path, book: Path, folder: Path) -> list[str]:
    book.chmod(0o755)
    (book / "clinchbook.db").chmod(0o644)
    ended = command("ingest", folder, "--store", book, as_nobody=True)
    return _expect(ended, 11) + _readable(book, as_nobody=True) + intact(book, 1)


def _forbidden(disk: Path, book: Path, folder: Path) -> list[str]:
    wrong = []
    for arguments in (("ingest", folder), ("search", "thrush"), ("roster", "list"), ("check",)):
        wrong += _expect_no_trouble(command(*arguments, "--store", book, as_nobody=True))
    (folder / "2026-03-03 second.wav").chmod(0)
    os.chown(book, NOBODY, NOBODY)
    for path in book.rglob("*"):
        os.chown(path, NOBODY, NOBODY)
    ended = command("ingest", folder, "--store", book, as_nobody=True)
    wrong += [] if "no permission" in ended.err and ended.code else [f"a memo that may not be read: {ended.told()}"]
    return wrong + intact(book, 1)


def _expect_no_trouble(ended: Ended) -> list[str]:
    """Refused in words; ``check`` tells its findings on stdout, and ends with 1 where the weights are forbidden too."""
    said = ended.err + ended.out
    right = not ended.trouble and ended.code in (1, 11, 20) and "ermission" in said
    return [] if right and "Traceback" not in said else [ended.told()]


def _locked(disk: Path, book: Path, folder: Path) -> list[str]:
    def hold(pipe: int) -> None:
        with Store.open(book) as store:
            store._database.execute("BEGIN IMMEDIATE")
            os.write(pipe, b"held")
            time.sleep(60)

    holder = start(hold)
    os.read(holder.pipe, 4)
    ended = command("ingest", folder, "--store", book)
    found = command("search", "thrush", "--store", book)
    holder.kill()
    holder.wait()
    wrong = _expect(ended, 13)
    wrong += [] if found.code == 0 and "hrush" in found.out else [f"search meanwhile: {found.told()}"]
    return wrong + intact(book, 1) + _after(book, folder)


def _after(book: Path, folder: Path) -> list[str]:
    again = command("ingest", folder, "--store", book)
    return ([] if again.code == 0 else [f"afterwards: {again.told()}"]) + intact(book, 2)


def _pulled_out(disk: Path, book: Path, folder: Path) -> list[str]:
    """A drive that goes while the store on it is open; its contents are looked at through a second mount."""
    place = folder / "stick"
    place.mkdir()
    _mount("--bind", disk, place)
    wrong = []
    with Store.open(place / "book") as store:
        subprocess.run(["umount", "-l", str(place)], check=True)
        for name, work in _WRITINGS.items():
            try:
                work(store, folder)
            except StoreBusyError as error:
                wrong.append(f"{name}: called busy: {error}")
            except StoreError as error:
                wrong += [] if "taken away" in str(error) else [f"{name}: {error}"]
            except ClinchbookError as error:
                wrong.append(f"{name}: {error}")
            else:
                wrong.append(f"{name} was acknowledged")
    left = [path.name for path in place.rglob("*")]
    return wrong + ([f"{left} lies where the drive was"] if left else []) + intact(book, 1) + _after(book, folder)


def _keep_second(store: Store, folder: Path) -> None:
    Ingest(HearingSettings(), load_vocabulary(), hearer=TableHearer()).keep(folder / "2026-03-03 second.wav", store)


_WRITINGS: dict[str, Callable[[Store, Path], object]] = {
    "keeping": _keep_second,
    "assigning": lambda store, folder: store.assign(1, store.horse("Tansy")),
    "adding horses": lambda store, folder: store.add_horses([]),
}


def _a_file_in_its_place(disk: Path, book: Path, folder: Path) -> list[str]:
    shutil.move(book, disk / "aside")
    book.write_text("no folder")
    wrong = []
    for arguments in (("ingest", folder), ("roster", "add", "Fennel"), ("search", "thrush")):
        wrong += _expect(command(*arguments, "--store", book), 3, 11)
    return wrong + intact(disk / "aside", 1)


_YEAR_S = 365.2425 * 86400
# Times of change as wrong clocks and broken cards write them, in seconds since 1970.
_TIMES = (
    0,
    1,
    -1,
    -(70 * _YEAR_S),
    -(400 * _YEAR_S),
    68 * _YEAR_S,
    200 * _YEAR_S,
    8029 * _YEAR_S,
    8040 * _YEAR_S,
    2.0**40,
    2.0**50,
)


def _wrong_clock(outcome: Outcome, step_kib: int) -> None:
    for seconds in _TIMES:
        for name in ("memo.wav", "memo 1904-01-01.wav", "memo 2999-12-31.wav", "memo 0001-01-01.wav"):
            outcome.cases += 1
            with small_disk() as disk:
                path = wav(disk / name, 3)
                with suppress(OSError, OverflowError):
                    os.utime(path, (seconds, seconds))
                ended = command("ingest", path, "--store", disk / "book", "--json")
                wrong = [] if ended.code == 0 and not ended.trouble else [ended.told()]
                wrong += [] if ended.code or '"kind": "date"' in ended.out else ["the date is not flagged"]
            outcome.failures += [f"{name} changed at {seconds:.0f}: {problem}" for problem in wrong]
