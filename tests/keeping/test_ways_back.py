"""Whatever points to a fact, a flag or a visit is found by an index: a removal looks no table through, row by row."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from pipeline.keeping import Store

# Of these a store of many years has hundreds of thousands of rows, or one for every answer that was ever given.
LARGE = ("facts", "visits", "changes", "history")


@pytest.mark.parametrize("table", LARGE)
def test_every_link_of_a_large_table_has_an_index(table: str, tmp_path: Path) -> None:
    Store.open(tmp_path / "store").close()
    with closing(sqlite3.connect(tmp_path / "store" / "clinchbook.db")) as raw:
        columns = [row[3] for row in raw.execute(f"PRAGMA foreign_key_list({table})")]
        plans = {
            column: raw.execute(f"EXPLAIN QUERY PLAN SELECT rowid FROM {table} WHERE {column} = 1").fetchone()[3]
            for column in columns
        }
    assert columns
    assert {column: plan for column, plan in plans.items() if not plan.startswith("SEARCH")} == {}
