"""The demo's way through the house, over a small folder of its own."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import FileMissingError, StoreError
from pipeline.keeping import Store

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run


@pytest.fixture
def day(make_memo: MakeMemo) -> Path:
    """Two memos and a roster."""
    make_memo("1.wav", seed=1)
    folder = make_memo("2.wav", seed=2).parent
    (folder / "roster.csv").write_text("name,place\nBramble,River barn\n", encoding="utf-8")
    return folder


def test_the_day_is_shown_and_kept(run: Run, hearer: FakeHearer, day: Path, tmp_path: Path) -> None:
    out = tmp_path / "outputs"
    ended = run("demo", "--folder", day, "--out", out)
    assert ended.code == 0
    rows = [line for line in ended.out.splitlines() if "Bramble" in line and "thrush" in line]
    assert len(rows) == 2
    assert "2 memos" in ended.out
    assert "1 horse, 2 visits, 2 facts kept, 0 to look at." in " ".join(ended.out.split())
    assert f"show 1 --store {out / 'demo-store'}" in ended.out.replace("\n", "")
    with Store.open(out / "demo-store", create=False) as store:
        assert len(store.visits_of("Bramble")) == 2


def test_each_demo_starts_afresh(run: Run, hearer: FakeHearer, day: Path, tmp_path: Path) -> None:
    for _ in range(2):
        assert "2 visits, 2 facts kept" in run("demo", "--folder", day, "--out", tmp_path / "outputs").out


def test_what_is_no_store_is_never_cleared_away(run: Run, hearer: FakeHearer, day: Path, tmp_path: Path) -> None:
    mine = tmp_path / "outputs" / "demo-store" / "mine.txt"
    mine.parent.mkdir(parents=True)
    mine.write_text("mine", encoding="utf-8")
    ended = run("demo", "--folder", day, "--out", tmp_path / "outputs")
    assert (ended.code, ended.out) == (StoreError.exit_code, "")
    assert mine.read_text(encoding="utf-8") == "mine"


def test_memos_of_ones_own_are_never_cleared_away(
    run: Run, hearer: FakeHearer, make_memo: MakeMemo, day: Path, tmp_path: Path
) -> None:
    out = tmp_path / "outputs"
    assert run("demo", "--folder", day, "--out", out).code == 0
    mine = make_memo("mine.wav", seed=9, folder=tmp_path / "mine")
    assert run("ingest", mine, "--store", out / "demo-store").code == 0
    ended = run("demo", "--folder", day, "--out", out)
    assert (ended.code, ended.out) == (StoreError.exit_code, "")
    assert ended.err == (
        f"{out / 'demo-store'} holds memos that are not the demo's; move it away or name another --out.\n"
    )
    with Store.open(out / "demo-store", create=False) as store:
        assert len(store.memos()) == 3


def test_a_folder_that_is_not_there(run: Run, tmp_path: Path) -> None:
    ended = run("demo", "--folder", tmp_path / "none")
    assert (ended.code, ended.err) == (FileMissingError.exit_code, f"There is no folder {tmp_path / 'none'}.\n")
