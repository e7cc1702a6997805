"""The documented views: any SQLite tool may ask them, and the documented questions have these answers."""

from __future__ import annotations

import re
import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.keeping import Store
from tests.using.test_rounds import BRAMBLES, SORRELS

if TYPE_CHECKING:
    from tests.using.conftest import Keep

DEVELOPERS = Path(__file__).resolve().parents[2] / "DEVELOPERS.md"
QUERIES = [
    query.strip()
    for block in re.findall(r"^```sql\n(.*?)^```", DEVELOPERS.read_text(encoding="utf-8"), re.MULTILINE | re.DOTALL)
    for query in block.split(";")
    if query.strip()
]
ANSWERS: dict[str, list[tuple[object, ...]]] = {
    "the_horses": [
        ("Bramble", "A. Fern", "River barn", 4, "2026-04-06"),
        ("Sorrel", "C. Lind", "Hill yard", 3, "2026-03-23"),
        ("Teasel", None, None, 0, None),
    ],
    "the_visits": [(1, "2026-01-05", ""), (2, "2026-01-26", ""), (3, "2026-02-23", ""), (4, "2026-04-06", "")],
    "findings": [("2026-01", 1)],
    "tester_answers": [
        ("2026-01-05", "LF", "heel", "moderate"),
        ("2026-02-23", "LF", "heel", "moderate"),
        ("2026-04-06", "LF", "heel", "none"),
    ],
    "measures": [("2026-01-05", "Bramble", "LF", 47.0)],
    "lost_shoes": [("Bramble", 1)],
    "flagged": [("2026-04-06", "Bramble", "LF", "finding", "corn")],
}


@pytest.fixture
def plain(empty: Store, keep_memo: Keep) -> sqlite3.Connection:
    """A connection as any SQLite tool makes it, to a store with seven visits."""
    for number, visit in enumerate([*BRAMBLES, *SORRELS]):
        keep_memo(empty, f"memo{number}.m4a", f"{visit.horse}.", [visit])
    return sqlite3.connect(f"{(empty.folder / 'clinchbook.db').as_uri()}?mode=ro", uri=True)


def test_the_questions_are_found() -> None:
    assert len(QUERIES) == 10


@pytest.mark.parametrize("query", QUERIES, ids=lambda query: query.splitlines()[0].removeprefix("-- ")[:40])
def test_every_documented_question_has_an_answer(plain: sqlite3.Connection, query: str) -> None:
    with closing(plain):
        assert plain.execute(query).fetchall() != []


@pytest.mark.parametrize("name", ANSWERS)
def test_the_answers_are_these(plain: sqlite3.Connection, name: str) -> None:
    (query,) = [query for query in QUERIES if (f"FROM {name}" in query or f"{name} = 1" in query)]
    with closing(plain):
        assert plain.execute(query).fetchall() == ANSWERS[name]


def test_a_set_up_is_one_row_a_foot(plain: sqlite3.Connection) -> None:
    (query,) = [query for query in QUERIES if "FROM set_ups" in query]
    with closing(plain):
        rows = plain.execute(query).fetchall()
    assert rows[:3] == [
        ("2026-01-05", "LF", "new_shoe", "0", "plain", 6.0, "5", None),
        ("2026-01-05", "LH", "trim", None, None, None, None, None),
        ("2026-01-05", "RF", "new_shoe", "0", "plain", 6.0, "5", None),
    ]
    assert len(rows) == 13


def test_the_views_cannot_be_written(plain: sqlite3.Connection) -> None:
    with closing(plain), pytest.raises(sqlite3.OperationalError):
        plain.execute("UPDATE findings SET finding = 'canker'")
