"""``forget`` asks, removes, and says what it could not reach."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotFoundError
from pipeline.keeping import Store

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def memo(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> Path:
    """A memo of Bramble that is kept."""
    path = make_memo("a.wav")
    assert run("ingest", path).code == 0
    return path


def test_a_horse_is_removed_after_asking(run: Run, memo: Path, own_surroundings: Path) -> None:
    ended = run("forget", "--horse", "Bramble", given=b"y\n")
    assert ended.code == 0
    assert ended.out.splitlines()[0] == (
        "This removes for good: Bramble, 1 visit with 1 fact, 1 recording with the words heard in it."
    )
    assert ended.out.splitlines()[-1].endswith("Removed for good: 1 horse, 1 recording, 1 visit, 1 fact.")
    assert ended.err.splitlines() == [
        f"{memo} lies outside the store and stays; delete it, or it will be taken in again.",
        "Back-ups and exports made before still hold it; the next back-up into the same folder will not.",
    ]
    assert [path.name for path in own_surroundings.rglob("*.wav")] == []
    with Store.open(own_surroundings, create=False) as store:
        assert store.counts() == {"memos": 0, "visits": 0, "facts": 0, "horses": 0, "flagged": 0}


@pytest.mark.parametrize("answer", [b"n\n", b""], ids=["no", "no answer"])
def test_without_a_yes_nothing_is_removed(run: Run, memo: Path, own_surroundings: Path, answer: bytes) -> None:
    ended = run("forget", "--memo", "1", given=answer)
    assert ended.code == 1
    assert ended.out.endswith("Nothing was removed.\n")
    with Store.open(own_surroundings, create=False) as store:
        assert store.counts()["memos"] == 1


def test_scripts_say_yes_beforehand(run: Run, memo: Path) -> None:
    ended = run("forget", "--memo", "1", "--yes")
    assert (ended.code, ended.out) == (0, "Removed for good: 1 horse, 1 recording, 1 visit, 1 fact.\n")


def test_an_unknown_horse_is_a_sentence(run: Run, memo: Path) -> None:
    ended = run("forget", "--horse", "Brambel", "--yes")
    assert ended.code == NotFoundError.exit_code
    assert ended.err == "No horse called Brambel is in the store. Did you mean Bramble?\n"


@pytest.mark.parametrize(
    "arguments",
    [[], ["--horse", "Bramble", "--memo", "1"], ["--memo", "1", "--place", "here"], ["--finish", "--memo=1"]],
)
def test_nonsense_is_refused(run: Run, memo: Path, arguments: list[str]) -> None:
    assert run("forget", *arguments, "--yes").code == 2


def test_where_a_memo_lay_is_known_from_any_folder(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    path = make_memo("a.wav")
    monkeypatch.chdir(path.parent)
    assert run("ingest", "a.wav").code == 0
    monkeypatch.chdir(tmp_path)
    assert run("forget", "--memo", "1", "--yes").err.startswith(f"{path} lies outside the store and stays")


def test_a_removal_can_be_finished(run: Run, memo: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupted(*_: object) -> None:
        raise OSError(5, "Input/output error")

    with monkeypatch.context() as patched:
        patched.setattr("pipeline.keeping.forgetting.remove_files", interrupted)
        assert run("forget", "--memo", "1", "--yes").code == 11
    assert run("forget", "--finish").out == "The interrupted removal is finished.\n"
    assert run("forget", "--finish").out == "No removal was interrupted.\n"
