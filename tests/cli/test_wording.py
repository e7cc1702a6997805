"""The user's own words: added, listed, forgotten, and known to whoever reads or searches that store."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError, VocabularyError

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


def test_a_word_is_added_listed_and_forgotten(run: Run) -> None:
    assert run("words", "add", "findings", "thrush", "porridge frog").out == "“porridge frog” means thrush now.\n"
    assert run("words", "add", "findings", "thrush", "Stinky  frog").out.endswith("meant thrush already.\n")
    listed = json.loads(run("words", "list", "--json").out)
    assert listed == {"class": "findings", "canonical": "thrush", "form": "porridge frog"}
    assert run("words", "forget", "porridge frog").code == 0
    ended = run("words", "list")
    assert (ended.out, ended.err) == ("", "You have added no words of your own yet.\n")


def test_a_search_understands_it(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    assert run("ingest", make_memo("a.wav")).code == 0
    before = run("search", "--finding", "porridge frog")
    assert (before.code, before.out) == (19, "")
    assert run("words", "add", "findings", "thrush", "porridge frog").code == 0
    assert "thrush             1" in run("search", "--finding", "porridge frog").out


def test_check_counts_it(run: Run) -> None:
    shipped = run("check", "--json").out
    assert run("words", "add", "findings", "thrush", "porridge frog").code == 0
    own = run("check", "--json").out

    def entries(out: str) -> int:
        found: str = next(line["found"] for line in map(json.loads, out.splitlines()) if line["what"] == "words")
        return int(found.split()[0])

    assert entries(own) == entries(shipped) + 1


def test_a_meaning_that_there_is_none_of(run: Run) -> None:
    ended = run("words", "add", "findings", "stinkiness", "porridge frog")
    assert (ended.code, ended.out) == (VocabularyError.exit_code, "")


def test_forgetting_what_was_never_added(run: Run) -> None:
    ended = run("words", "forget", "porridge frog")
    assert (ended.code, ended.out) == (NotFoundError.exit_code, "")
