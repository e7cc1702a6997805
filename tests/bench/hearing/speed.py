"""The whole of ``ingest`` over a day's folder beside the plain transcription of the same files, in one run.

``python -m tests.bench.hearing.speed [--sound DIR] [--runs N] [--plain-compute TYPE]``. Ten memos of the set ``tune``,
about eight minutes of clean sound, lie in one folder. By turns, each as a process of its own: ``clinchbook ingest``
into a new store with the memos' horses on its roster (loading, hearing, weighing, reading, judging, keeping), and
faster-whisper at its defaults with the same weights (beam 5, no prompt, no words), which loads, transcribes and keeps
nothing. Processor and clock seconds are the operating system's own account of the finished process. Adds to
``results/hearing_speed.csv``: medians over the runs, and the median of the ratios of the pairs.
"""

from __future__ import annotations

import argparse
import os
import resource
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median

from pipeline.hearing.weights import weights_folder
from tests.bench.hearing.conditions import seconds_of
from tests.bench.hearing.making import SOUND, path_of
from tests.bench.hearing.takes import Take, tune_takes
from tests.bench.history import add_rows, print_rows

MEMOS = 10
SECONDS = 480.0
COLUMNS = ("memos", "sound_s", "cores", "runs", "plain_compute", "ingest_cpu_s", "plain_cpu_s", "cpu_ratio",
           "ingest_wall_s", "plain_wall_s", "wall_ratio", "ingest_cpu_per_s", "plain_cpu_per_s")  # fmt: skip
_PLAIN = """
import sys
from faster_whisper import WhisperModel
model = WhisperModel(sys.argv[1], device="cpu", compute_type=sys.argv[2])
for path in sys.argv[3:]:
    segments, _ = model.transcribe(path)
    print("".join(segment.text for segment in segments))
"""


@dataclass(frozen=True)
class Spent:
    """Seconds of the processor and of the clock that a finished command took."""

    cpu_s: float
    wall_s: float


def a_day(takes: Sequence[Take], sound: Path) -> list[Take]:
    """Ten takes of ten memos that are there, whose lengths come to about eight minutes."""
    first = {take.memo["id"]: take for take in takes if path_of(take, sound).exists()}
    day = sorted(first.values(), key=lambda take: abs(seconds_of(path_of(take, sound)) - SECONDS / MEMOS))[:MEMOS]
    if len(day) < MEMOS:
        sys.exit(
            f"There are only {len(day)} memos in {sound}: make them with python -m tests.bench.hearing --make-only."
        )
    return day


def spent(command: Sequence[str], environment: dict[str, str]) -> Spent:
    """Run a command; ends the bench when it fails."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    start = time.monotonic()
    done = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)
    wall_s = time.monotonic() - start
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode:
        sys.exit(f"The command failed: {done.stderr or done.stdout}")
    return Spent(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime, wall_s)


def ingest(folder: Path, horses: Path, work: Path) -> Spent:
    """The whole command into a new store; the roster is laid out before the clock runs."""
    store = Path(tempfile.mkdtemp(dir=work))
    environment = {**os.environ, "CLINCHBOOK_STORE": str(store / "store")}
    command = [sys.executable, "-m", "pipeline.cli"]
    spent([*command, "roster", "import", str(horses)], environment)
    return spent([*command, "ingest", str(folder)], environment)


def plain(folder: Path, compute: str) -> Spent:
    """faster-whisper at its defaults over the same files."""
    files = [str(path) for path in sorted(folder.glob("*.wav"))]
    return spent([sys.executable, "-c", _PLAIN, str(weights_folder("base")), compute, *files], dict(os.environ))


def row(day: float, compute: str, pairs: Sequence[tuple[Spent, Spent]]) -> list[str]:
    """The medians."""
    ours, theirs = ([pair[n] for pair in pairs] for n in (0, 1))
    cpu, other_cpu = median(s.cpu_s for s in ours), median(s.cpu_s for s in theirs)
    cpu_ratio = median(a.cpu_s / b.cpu_s for a, b in pairs)
    wall_ratio = median(a.wall_s / b.wall_s for a, b in pairs)
    figures = [cpu, other_cpu, cpu_ratio, median(s.wall_s for s in ours), median(s.wall_s for s in theirs), wall_ratio,
               cpu / day, other_cpu / day]  # fmt: skip
    told = [str(MEMOS), f"{day:.0f}", str(os.cpu_count()), str(len(pairs)), compute]
    return told + [f"{figure:.3f}" for figure in figures]


def main() -> None:
    """Lay the day out, run both by turns, tell and keep the figures."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.hearing.speed")
    parser.add_argument("--sound", type=Path, metavar="DIR", default=SOUND)
    parser.add_argument("--runs", type=int, default=3, metavar="N", help="pairs of runs (default 3)")
    parser.add_argument("--plain-compute", default="int8", metavar="TYPE", help="faster-whisper's compute type (int8)")
    chosen = parser.parse_args()
    takes = a_day(tune_takes(), chosen.sound)
    with tempfile.TemporaryDirectory() as made:
        work = Path(made)
        folder = work / "day"
        folder.mkdir()
        for number, take in enumerate(takes):
            shutil.copyfile(path_of(take, chosen.sound), folder / f"{number:02}.wav")
        names = sorted({name for take in takes for name in take.memo["roster"]})
        horses = work / "horses.csv"
        horses.write_text("name\n" + "".join(f'"{name}"\n' for name in names), encoding="utf-8")
        day = sum(map(seconds_of, folder.glob("*.wav")))
        pairs = [(ingest(folder, horses, work), plain(folder, chosen.plain_compute)) for _ in range(chosen.runs)]
    rows = [row(day, chosen.plain_compute, pairs)]
    print_rows(COLUMNS, rows)
    add_rows("hearing_speed", COLUMNS, rows)


if __name__ == "__main__":
    main()
