"""``--review`` changes how much is put before a person, says what it costs, and never changes a fact."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Run

TALK = (
    "Bramble. Off fore the wall is gone soft at the toe, I took the shoe off it and it can stay that way. "
    "Thrush there as well, and a bit behind. Six nails the other side. "
    "Set of ones, six nails, bar the off hind, that got five."
)


@pytest.fixture
def talk(tmp_path: Path) -> Path:
    path = tmp_path / "talk.txt"
    path.write_text(TALK, encoding="utf-8")
    return path


def read(run: Run, talk: Path, *more: str) -> tuple[list[tuple[object, ...]], set[int], str]:
    """The facts, the places of those that are flagged, and what was said beside them."""
    ended = run("extract", talk, "--json", "--date", "2026-03-02", *more)
    assert ended.code == 0
    facts = [fact for visit in json.loads(ended.out)["visits"] for fact in visit["facts"]]
    told: list[tuple[object, ...]] = [(fact["foot"], fact["slot"], fact["value"], fact["status"]) for fact in facts]
    return told, {number for number, fact in enumerate(facts) if fact["flagged"]}, ended.err


def test_the_stricter_the_more_is_flagged_and_the_facts_stay(run: Run, talk: Path) -> None:
    fast, usual, strict = (read(run, talk, "--review", care) for care in ("fast", "usual", "strict"))
    assert fast[0] == usual[0] == strict[0] != []
    assert fast[1] <= usual[1] <= strict[1]
    assert fast[1] < strict[1]


def test_the_cost_is_told_where_a_level_was_chosen(run: Run, talk: Path) -> None:
    assert read(run, talk)[1:] == (read(run, talk, "--review", "usual")[1], "")
    told = read(run, talk, "--review", "strict")[2]
    assert told.startswith("--review strict: of heard facts ")
    assert told.endswith(" memos).\n")


def test_another_word_is_no_level(run: Run, talk: Path) -> None:
    ended = run("extract", talk, "--review", "lazy")
    assert (ended.code, ended.out) == (2, "")
    assert "--review is one of strict, usual, fast; 'lazy' will not do." in " ".join(ended.err.split())
