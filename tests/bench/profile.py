"""Where the time of ``clinchbook demo`` goes, and what comes out of it: ``python -m tests.bench.profile``.

The demo runs once in this process, from the sound of its twelve memos to the table of the day; every step is timed
without the steps inside it, and what none of them is goes to the start and the rest. Rows are added to
``results/profile.csv``; what was kept is scored against the demo's gold, as a row of ``results/reading.csv``.
"""

from __future__ import annotations

import io
import sys
import tempfile
import time
from contextlib import redirect_stdout
from pathlib import Path

import psutil

from pipeline import ingest
from pipeline.cli import app, daybook, demonstrate
from pipeline.keeping import Store
from tests.bench.history import add_rows, print_rows
from tests.bench.stopwatch import NOTHING, Spent, Stopwatch

COLUMNS = ("what", "processor_s", "clock_s", "share", "target")
LOADING_EAR, HEARING = "loading the recogniser", "hearing"
LOADING_READER, READING, JUDGING, KEEPING, TABLE = "loading the reader", "reading", "judging", "keeping", "the table"
REST, WHOLE, SOUND = "start and the rest", "the whole demo", "length of the sound"
STEPS = (LOADING_EAR, HEARING, LOADING_READER, READING, JUDGING, KEEPING, TABLE)
MOST_SHARE = 0.10  # of the clock, for whatever is not the recogniser
STORE_CALLS = ("open", "add_horses", "has", "roster", "last_visit", "keep", "visit", "close")
DEMO = Path(__file__).resolve().parents[2] / demonstrate.DEMO_FOLDER


def watch_all(watch: Stopwatch) -> None:
    """Time the steps of a memo's way through the house."""
    watch.watch(ingest, "load_hearer", LOADING_EAR, then=lambda hearer: watch_hearer(watch, type(hearer)))
    watch.watch(ingest, "load_reader", LOADING_READER, then=lambda reader: watch.watch(type(reader), "read", READING))
    watch.watch(ingest.Ingest, "_judged", JUDGING)
    for name in STORE_CALLS:
        watch.watch(Store, name, KEEPING)
    watch.watch(daybook, "print_day", TABLE)


def watch_hearer(watch: Stopwatch, recogniser: type) -> None:
    """The weights load inside the first hearing."""
    from faster_whisper import WhisperModel

    watch.watch(WhisperModel, "__init__", LOADING_EAR)
    watch.watch(recogniser, "hear", HEARING)


def demo_in(folder: Path) -> Spent:
    """Run the demo; what this process took since it was started. Raises RuntimeError when the demo fails."""
    with redirect_stdout(io.StringIO()):
        try:
            app(["demo", "--folder", str(DEMO), "--out", str(folder)])
        except SystemExit as ended:
            if ended.code:
                raise RuntimeError(f"the demo ended with {ended.code}") from ended
    return Spent(time.process_time(), time.time() - psutil.Process().create_time())


def table(watch: Stopwatch, whole: Spent, sound_s: float) -> list[tuple[str, ...]]:
    """A row a step in the order of COLUMNS."""
    known = NOTHING
    for spent in watch.spent.values():
        known = known.more(spent)
    steps = {name: watch.spent.get(name, NOTHING) for name in STEPS} | {REST: whole.less(known)}
    rows = []
    for name, spent in steps.items():
        target = "" if name in (LOADING_EAR, HEARING) else f"<= {MOST_SHARE:.0%}"
        rows.append((name, f"{spent.processor:.2f}", f"{spent.clock:.2f}", f"{spent.clock / whole.clock:.4f}", target))
    rows.append((WHOLE, f"{whole.processor:.2f}", f"{whole.clock:.2f}", "1", ""))
    return [*rows, (SOUND, "", f"{sound_s:.1f}", "", "")]


def score_kept(folder: Path) -> None:
    """Score what the demo kept; the reader's columns tell of the sound, but for the milliseconds a memo."""
    from tests.bench.reading import COLUMNS as READING_COLUMNS
    from tests.bench.reading import scored
    from tests.facts.scoring import load_gold, score

    with Store.open(folder, create=False) as store:
        kept = {memo.file_name: [store.visit(number).visit for number in memo.visit_ids] for memo in store.memos()}
    total = score((memo, kept.get(memo["audio"], [])) for memo in load_gold(DEMO / "gold.jsonl"))
    rows = [("demo, from its sound", *scored(total), "")]
    print_rows(READING_COLUMNS, rows)
    add_rows("reading", READING_COLUMNS, rows)


def main() -> int:
    """Print the tables and add them to the results; 1 when a step other than the recogniser takes too much."""
    watch = Stopwatch()
    watch_all(watch)
    with tempfile.TemporaryDirectory() as temporary:
        whole = demo_in(Path(temporary))
        store = Path(temporary) / "demo-store"
        with Store.open(store, create=False) as kept:
            lengths = [memo.record.memo.seconds or 0.0 for memo in kept.memos()]
        rows = table(watch, whole, sum(lengths))
        print_rows(COLUMNS, rows)
        add_rows("profile", COLUMNS, rows)
        score_kept(store)
    over = [row[0] for row in rows if row[4] and float(row[3]) > MOST_SHARE]
    for name in over:
        print(f"{name} takes more than {MOST_SHARE:.0%} of the demo.", file=sys.stderr)
    return 1 if over else 0


if __name__ == "__main__":
    sys.exit(main())
