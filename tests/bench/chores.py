"""How long the rarer work takes in a large store: ``python -m tests.bench.chores [VISITS]``.

A store of 20,000 visits of which the last month waits for the review, its recordings left out: a back-up, the list of
the review's questions and the removal of the horse with the most memos, as whole commands; and one answer of the review
until the next question is there, inside a running one. Seconds of the processor and of the clock; rows are added to
``results/chores.csv``.
"""

from __future__ import annotations

import argparse
import sqlite3
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from statistics import median

from pipeline.errors import BackupError
from pipeline.keeping import Store
from pipeline.using.review import Review
from pipeline.vocabulary import load_vocabulary
from tests.bench.cost import Cost, cost, least
from tests.bench.history import add_rows, print_rows
from tests.bench.store_maker import LAST_DAY, make_store

COLUMNS = ("visits", "what", "amount", "of", "processor_s", "clock_s", "target_s")
OPEN_SINCE = LAST_DAY - timedelta(days=30)
ANSWERS, ROUNDS, TARGET = 9, 3, "<= 2"
BACK_UP, LIST, ANSWER, FORGET = "back-up", "review, the list", "review, one answer", "forget a horse"
Row = tuple[str | int, ...]


def asked(store: Path, *words: str) -> tuple[str, ...]:
    """What Python is given for a command on this store."""
    return ("-m", "pipeline.cli", *words, "--store", str(store))


def back_up(store: Path, folder: Path) -> Cost:
    """The least that a new back-up costs; that the recordings are not there is told, and no failure here."""
    runs = [asked(store, "backup", str(folder / f"back-up {number}")) for number in range(ROUNDS)]
    return least([cost(*run, may_end=BackupError.exit_code) for run in runs])


def questions(store: Path) -> int:
    """How many questions the review has."""
    with Store.open(store, create=False) as kept:
        return len(Review(kept, load_vocabulary(), "Reviewer").open_keys())


def one_answer(store: Path) -> Cost:
    """The median of an answer until the next question can be shown."""
    with Store.open(store, create=False) as kept:
        review = Review(kept, load_vocabulary(), "Reviewer")
        costs = list(_answers(review))
    return Cost(median(one.processor for one in costs), median(one.clock for one in costs))


def _answers(review: Review) -> Iterator[Cost]:
    item = next(review.each())
    for _ in range(ANSWERS):
        processor, clock = time.process_time(), time.monotonic()
        review.accept(item)
        item = next(review.each())
        review.show(item)
        yield Cost((time.process_time() - processor) * 1000, (time.monotonic() - clock) * 1000)


def busiest_horse(store: Path) -> tuple[str, int]:
    """The horse with the most memos, and how many."""
    with closing(sqlite3.connect(store / "clinchbook.db")) as connection:
        sql = "SELECT horse, count(*) FROM the_visits GROUP BY horse_id ORDER BY 2 DESC, horse LIMIT 1"
        name, memos = connection.execute(sql).fetchone()
    return str(name), int(memos)


def measured(folder: Path, visits: int) -> Iterator[Row]:
    """A row a chore in the order of COLUMNS."""
    store = folder / "store"
    make_store(store, visits, open_since=OPEN_SINCE)
    size = (store / "clinchbook.db").stat().st_size / 2**20
    yield told(visits, BACK_UP, f"{size:.0f}", "MB", back_up(store, folder))
    listed = least([cost(*asked(store, "review", "--no-input")) for _ in range(ROUNDS)])
    yield told(visits, LIST, questions(store), "questions", listed)
    yield told(visits, ANSWER, 1, "answer", one_answer(store))
    name, memos = busiest_horse(store)
    yield told(visits, FORGET, memos, "memos", cost(*asked(store, "forget", "--horse", name, "--yes")))


def told(visits: int, what: str, amount: int | str, of: str, took: Cost) -> Row:
    """One row; seconds."""
    return visits, what, amount, of, f"{took.processor / 1000:.2f}", f"{took.clock / 1000:.2f}", TARGET


def main(given: Sequence[str] | None = None) -> None:
    """Print the table and add it to the results."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.chores", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("visits", nargs="?", type=int, default=20_000)
    with tempfile.TemporaryDirectory() as temporary:
        rows = list(measured(Path(temporary), parser.parse_args(given).visits))
    print_rows(COLUMNS, rows)
    add_rows("chores", COLUMNS, rows)


if __name__ == "__main__":
    main()
