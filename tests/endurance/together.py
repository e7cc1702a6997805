"""A watcher that keeps memos, two reviewers and the page at one store at once: nothing lost, nothing half there."""

from __future__ import annotations

import os
import sqlite3
import tempfile
from collections.abc import Callable
from contextlib import closing
from functools import partial
from pathlib import Path
from typing import Any

from pipeline.keeping import Store
from pipeline.page.desk import Desk
from pipeline.page.gate import Gate
from pipeline.vocabulary import load_vocabulary
from tests.endurance.answering import Reviewer, keep_memo, make_yard, reader
from tests.endurance.apart import start
from tests.endurance.outcome import Outcome

_MEMOS = 14  # that are there when all begin, and as many that are kept meanwhile
_ANSWERS = 40  # of each reviewer
_REVIEWERS = ("Ann", "Bea")
_PAGE = "Cleo"


def run(rounds: int, seed: int) -> list[Outcome]:
    """So many rounds; a case is an answer or a memo that was acknowledged."""
    reader()
    load_vocabulary()
    outcome = Outcome("several at once")
    for number in range(rounds):
        with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
            _round(Path(named), f"{seed} {number}", outcome)
    return [outcome]


def _round(folder: Path, seed: str, outcome: Outcome) -> None:
    make_yard(folder, _MEMOS)
    works: dict[str, Callable[[int], None]] = {"watcher": partial(_keep, folder), _PAGE: partial(_page, folder, seed)}
    works |= {who: partial(_review, folder, f"{seed} {who}", who) for who in _REVIEWERS}
    children = {who: start(work) for who, work in works.items()}
    told = {who: child.written().decode().split() for who, child in children.items()}
    for who, child in children.items():
        status = child.wait()
        outcome.expect(status == 0, f"{seed}: {who} ended with status {status}")
    with Store.open(folder / "book") as store:
        wrong = store.problems(deep=True)
        wrong += [f"memo {sha256} was acknowledged and is gone" for sha256 in told["watcher"] if not store.has(sha256)]
    with closing(sqlite3.connect(folder / "book" / "clinchbook.db")) as database:
        for who in (*_REVIEWERS, _PAGE):
            sql = "SELECT count(DISTINCT at) FROM changes WHERE who = ?"
            kept = database.execute(sql, [who]).fetchone()[0]
            given = int("".join(told[who]) or -1)
            outcome.cases += given
            if kept != given:
                wrong.append(f"{who} was told that {given} answers are kept, and {kept} are there")
        wrong += broken_chains(database)
    outcome.cases += len(told["watcher"])
    outcome.failures += [f"{seed}: {problem}" for problem in wrong]


def broken_chains(database: sqlite3.Connection) -> list[str]:
    """Where history and what stands do not fit: each correction begins with what the one before it left, and what
    stands is what the last one left. An update that was lost leaves a gap."""
    wrong = []
    last: dict[tuple[str, int, str], Any] = {}
    for number, table, row, column, old, new in database.execute(
        "SELECT id, in_table, in_row, in_column, old, new FROM history ORDER BY id"
    ):
        where = (table, row, column)
        if where in last and last[where] != old:
            wrong.append(f"entry {number} of history says that {where} was {old}, but it was {last[where]}")
        last[where] = new
    for (table, row, column), new in last.items():
        now = database.execute(f'SELECT "{column}" FROM "{table}" WHERE id = ?', [row]).fetchone()[0]
        if now != new:
            wrong.append(f"{column} of {table} {row} is {now}, but the last correction made it {new}")
    return wrong


def _keep(folder: Path, pipe: int) -> None:
    for number in range(_MEMOS, 2 * _MEMOS):
        with Store.open(folder / "book", busy_s=60) as store:
            os.write(pipe, f"{keep_memo(store, folder, number)}\n".encode())


def _review(folder: Path, seed: str, who: str, pipe: int) -> None:
    with Store.open(folder / "book") as store:
        reviewer = Reviewer(store, seed, who)
        for number in range(_ANSWERS):
            reviewer.answer(number)
    os.write(pipe, str(reviewer.given).encode())


def _page(folder: Path, seed: str, pipe: int) -> None:
    """As the page does it: the store is opened anew for every answer."""
    desk = Desk(folder / "book", load_vocabulary(), Gate(frozenset()), _PAGE, reader())
    with desk.review() as review:
        reviewer = Reviewer(review.store, f"{seed} {_PAGE}", _PAGE)
    for number in range(_ANSWERS):
        with desk.review() as review:
            reviewer.review = review
            reviewer.answer(number)
    os.write(pipe, str(reviewer.given).encode())
