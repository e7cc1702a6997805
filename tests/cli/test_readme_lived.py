"""The README's commands, one after the other as a reader would type them, on the demo's day as it was heard once."""

from __future__ import annotations

import os
import re
import shlex
import shutil
from collections.abc import Sequence
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.hearing.intake import take_in
from pipeline.keeping import Store
from pipeline.record import Flag, Memo
from tests.cli.conftest import FakeHeard, FakeHearer
from tests.cli.test_readme import shell_lines
from tests.using.review.conftest import DEMO, heard_memos, transcript_of

if TYPE_CHECKING:
    from tests.cli.conftest import Ended, MakeMemo, Run

STICK = "/media/stick"
# Of this machine rather than of the store (tests/cli/test_checking.py), or serving until Ctrl-C (tests/page).
LEFT_OUT = ("clinchbook check", "clinchbook review --page")
ENDLESS = {"watch": ("--once", "--settle", "0")}


class DayHearer(FakeHearer):
    """Hears in the demo's memos what was heard in them once, and in any other what the fake hearer hears."""

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> FakeHeard:
        known = next((memo for memo in heard_memos() if memo["audio"] == path.name), None)
        if known is None:
            return super().hear(path, names, recorded)
        with take_in(path) as taken:
            memo = Memo(
                path=str(path), sha256=taken.sha256, seconds=known["seconds"],
                recorded_at=datetime.fromisoformat(known["recorded_at"]), recorded_from="container",
            )  # fmt: skip
        return FakeHeard(memo, transcript_of(known), [Flag.model_validate(flag) for flag in known["flags"]])


def calls_in_order() -> list[tuple[str, str | None]]:
    """Every clinchbook command of the README with the text that an ``echo`` before it hands in, or None."""
    calls = []
    for line in shell_lines():
        for command in line.split("&&"):
            given, _, piped = command.rpartition("|")
            call = re.sub(r"^\S*/clinchbook\b", "clinchbook", piped.strip())
            if call.startswith("clinchbook "):
                calls.append((call, shlex.split(given)[1] if given else None))
    return calls


@pytest.fixture
def reader_at_his_desk(monkeypatch: pytest.MonkeyPatch, tmp_path: Path, make_memo: MakeMemo) -> Path:
    """A folder with a list of horses, two new memos and a stick, and the demo's store named as the README says."""
    desk = tmp_path / "desk"
    desk.mkdir()
    shutil.copyfile(DEMO / "roster.csv", desk / "horses.csv")
    make_memo("evening.wav", folder=desk / "memos")
    shutil.copyfile(DEMO / "New Recording 41.m4a", desk / "memos" / "twin.m4a")
    (tmp_path / "stick").mkdir()
    monkeypatch.chdir(desk)
    monkeypatch.setattr("pipeline.ingest.load_hearer", lambda settings, vocabulary: DayHearer())
    monkeypatch.setenv("CLINCHBOOK_STORE", "outputs/demo-store")
    monkeypatch.setenv("CLINCHBOOK_PASSPHRASE", "three rasps and a pritchel")
    return desk


def typed(run: Run, call: str, given: str | None, stick: Path) -> Ended:
    """Run one command of the README; questions are answered with yes."""
    words = shlex.split(call.replace(STICK, str(stick)))[1:]
    return run(*words, *ENDLESS.get(words[0], ()), given=(given or "y\n").encode())


def test_the_readme_names_the_store_that_the_demo_makes() -> None:
    readme = (Path(__file__).resolve().parents[2] / "README.md").read_text(encoding="utf-8")
    assert "`export CLINCHBOOK_STORE=outputs/demo-store`" in readme


@pytest.mark.skipif(os.name != "posix", reason="the README's lines are those of a POSIX shell")
def test_every_command_shown_works_in_its_turn(run: Run, reader_at_his_desk: Path, tmp_path: Path) -> None:
    out: dict[str, str] = {}
    for call, given in calls_in_order():
        if call in LEFT_OUT:
            continue
        ended = typed(run, call, given, tmp_path / "stick")
        assert (call, ended.code, ended.err if ended.code else "") == (call, 0, "")
        out[call] = ended.out + ended.err
    assert "12 horses, 13 visits" in " ".join(out["clinchbook demo"].split())
    assert "thrush (mild)" in out["clinchbook search thrush --foot RH --since 2026-01"]
    assert "white line disease" in out['clinchbook search "seedy toe" --status suspected']
    assert "0 read differently, 13 the same" in out["clinchbook reread --all"]
    assert out["clinchbook import everything.json"] == "Nothing new: all of it is here already.\n"
    written = ["due.ics", "everything.json", "hester-columns.csv", "hester-vet.pdf", "hester.csv", "hester.html"]
    assert sorted(path.name for path in reader_at_his_desk.iterdir() if path.is_file()) == sorted(
        [*written, "horse.pdf", "horses.csv"]
    )
    with Store.open(Path("restored"), create=False) as restored:
        assert len(restored.memos()) == 13
    with Store.open(Path("outputs/demo-store"), create=False) as kept:
        assert len(kept.memos()) == 11  # Hester's and memo 12 are forgotten
        assert "Hester" not in [horse.name for horse in kept.horses()]


def test_the_calls_are_found() -> None:
    assert calls_in_order()[0] == ("clinchbook demo", None)
    assert ("clinchbook extract --json", "Hester. Left front, mild thrush in the sulcus, no heat. Six weeks.") in (
        calls_in_order()
    )
