"""The example of every --help, typed as it stands there, in a store that holds the demo's day."""

from __future__ import annotations

import os
import re
import shutil
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotSoundError
from pipeline.reading import Reader
from pipeline.vocabulary import load_vocabulary
from tests.cli.test_help import all_commands
from tests.cli.test_readme_lived import STICK, DayHearer, typed
from tests.using.review.conftest import DEMO, keep_the_demo

if TYPE_CHECKING:
    from tests.cli.conftest import Ended, MakeMemo, Run

# What must have happened before an example can do its work: commands, typed as he would.
BEFORE = {
    "import": [
        "clinchbook export Hester --format json --with-audio --out hester.json",
        "clinchbook forget --horse Hester",
    ],
    "restore": [f"clinchbook backup {STICK}/clinchbook"],
    "waiting": ["clinchbook ingest broken/"],
    "words forget": ['clinchbook words add findings thrush "the rot"'],
}
EXPECTED = {"clinchbook ingest broken/": NotSoundError.exit_code}
# A piece of what the example tells.
TOLD = {
    "": "Memos: 1 kept.",
    "ingest": "2026-03-02: 1 fact",
    "watch": "Memos: 1 kept.",
    "extract": '"thrush"',
    "show": "Figaro Tuesday 12 May 2026 visit 12",
    "search": "thrush (mild)",
    "brief": "Hester",
    "due": "Written: due.ics",
    "stock": "nail size 5 slim 16 - 16",
    "export": "Written: hester.html",
    "import": "1 horse, 1 memo, 1 visit taken in.",
    "assign": "Visit 13 belongs to Pumpkin now.",
    "review": "questions to answer.",
    "reread": "12 memos:",  # whether a horse that was new then is known by now decides over a doubt or two
    "history": "visit 12 was kept",
    "demo": "12 horses, 13 visits",
    "check": "whole, with 17 horses and 12 memos",
    "waiting": "2.wav no longer waits.",
    "forget": "Removed for good: 1 horse",
    "backup": "Saved and checked: 12 memos",
    "restore": "Restored 12 memos",
    "roster": "Hester Nora Pell Quince Farm",
    "roster import": "0 added, 0 brought up to date.",
    "roster add": "Bramble added.",
    "roster list": "Hester Nora Pell Quince Farm",
    "words": "You have added no words of your own yet.",
    "words add": "“the rot” means thrush now.",
    "words list": "You have added no words of your own yet.",
    "words forget": "“the rot” no longer means thrush.",
}


@pytest.fixture(scope="module")
def day(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A store with the demo's day; never changed."""
    folder = tmp_path_factory.mktemp("day") / "store"
    keep_the_demo(folder, Reader(load_vocabulary()))
    return folder


@pytest.fixture
def desk(day: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, make_memo: MakeMemo) -> Path:
    """A folder with a copy of that store, a list of horses, new memos, a phone's folder and a stick; he sits there."""
    desk = tmp_path / "desk"
    shutil.copytree(day, desk / "store")
    shutil.copyfile(DEMO / "roster.csv", desk / "horses.csv")
    make_memo("evening.wav", folder=desk / "memos")
    make_memo("evening.wav", folder=desk / "Sync" / "memos")
    (desk / "broken").mkdir()
    for number in range(3):
        (desk / "broken" / f"{number}.wav").write_bytes(b"RIFF" + bytes([number]))
    (tmp_path / "stick").mkdir()
    monkeypatch.chdir(desk)
    monkeypatch.setenv("HOME", str(desk))
    monkeypatch.setenv("CLINCHBOOK_STORE", str(desk / "store"))
    monkeypatch.setattr("pipeline.ingest.load_hearer", lambda settings, vocabulary: DayHearer())
    return desk


def example_of(words: tuple[str, ...], run: Run) -> str:
    """The example that a --help shows, in one line."""
    shown = " ".join(run(*words, "--help").out.partition("Example: ")[2].split("\n\n")[0].split())
    return re.sub(r"- (?=\w)", "-", shown) if shown.endswith("-") else shown


def type_it(run: Run, example: str, stick: Path) -> Ended:
    """Run an example; ``echo "…" |`` before it is what is handed in."""
    given, _, call = example.rpartition(" | ")
    said = given.removeprefix("echo ").strip('"') if given else None
    return typed(run, os.path.expanduser(call.replace("~", str(Path.home()))), said, stick)


@pytest.mark.skipif(os.name != "posix", reason="the examples are those of a POSIX shell")
@pytest.mark.parametrize("words", all_commands(), ids=" ".join)
def test_the_example_of_every_help_does_its_work(words: tuple[str, ...], run: Run, desk: Path, tmp_path: Path) -> None:
    name, stick = " ".join(words), tmp_path / "stick"
    for before in BEFORE.get(name, []):
        assert (before, type_it(run, before, stick).code) == (before, EXPECTED.get(before, 0))
    ended = type_it(run, example_of(words, run), stick)
    assert (name, ended.code, ended.err if ended.code else "") == (name, 0, "")
    assert TOLD[name] in " ".join((ended.out + ended.err).split())
