"""Whatever is put in: one sentence on stderr, an exit code of its own, no traceback, and nothing kept is lost."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import (
    ClinchbookError,
    DateError,
    FileEmptyError,
    FileMissingError,
    NotFoundError,
    NotSoundError,
    RosterError,
    SettingsError,
    StoreError,
    StoreNewerError,
    TextError,
    WeightsError,
)

if TYPE_CHECKING:
    from tests.cli.conftest import Ended, FakeHearer, MakeMemo, Run


def assert_one_sentence(ended: Ended, error: type[ClinchbookError], *words: str) -> None:
    """One line on stderr with all of ``words``, the error's exit code, and nothing on stdout."""
    lines = [line for line in ended.err.splitlines() if not line.startswith("Memos: ")]
    assert len(lines) == 1, ended.err
    assert all(word in lines[0] for word in words), lines[0]
    assert lines[0].endswith((".", "?"))
    assert ended.code == error.exit_code
    assert "Traceback" not in ended.err
    assert ended.out == ""


def test_missing_file(run: Run, hearer: FakeHearer, tmp_path: Path) -> None:
    assert_one_sentence(run("ingest", tmp_path / "gone.m4a"), FileMissingError, "gone.m4a")
    assert hearer.heard == []


def test_empty_file(run: Run, hearer: FakeHearer, tmp_path: Path) -> None:
    (tmp_path / "empty.m4a").touch()
    assert_one_sentence(run("ingest", tmp_path / "empty.m4a"), FileEmptyError, "empty.m4a")


def test_text_renamed_to_a_sound(run: Run, hearer: FakeHearer, tmp_path: Path) -> None:
    (tmp_path / "note.m4a").write_text("left fore, thrush", encoding="utf-8")
    assert_one_sentence(run("ingest", tmp_path / "note.m4a"), NotSoundError, "note.m4a", "plain text")
    assert hearer.heard == []


@pytest.mark.parametrize("day", ["yesterday", "2026-02-30", "02/03/2026", ""])
def test_wrong_date(run: Run, day: str) -> None:
    assert_one_sentence(run("extract", "--date", day, given=b"Thrush."), DateError, repr(day), "YYYY-MM-DD")


def test_text_that_is_not_utf8(run: Run, tmp_path: Path) -> None:
    (tmp_path / "memo.txt").write_bytes(b"Bramble.\nThrush in the left hind \xe9.\n")
    assert_one_sentence(run("extract", tmp_path / "memo.txt"), TextError, "memo.txt line 2", "UTF-8")


def test_stdin_that_is_not_utf8(run: Run) -> None:
    assert_one_sentence(run("extract", "-", given=b"\xff\xfe"), TextError, "stdin", "UTF-8")


def test_text_without_words(run: Run) -> None:
    assert_one_sentence(run("extract", given=b" \n"), FileEmptyError, "no words")


def test_roster_with_a_horse_twice(run: Run, tmp_path: Path) -> None:
    (tmp_path / "horses.csv").write_text("name,place\nBramble,River barn\nbramble,river barn\n", encoding="utf-8")
    ended = run("roster", "import", tmp_path / "horses.csv")
    assert_one_sentence(ended, RosterError, "horses.csv", "line 2", "line 3")


def test_horse_without_a_name(run: Run) -> None:
    assert_one_sentence(run("roster", "add", " "), RosterError, "name")


def test_store_that_cannot_be_written(run: Run, hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path) -> None:
    (tmp_path / "store").write_text("not a folder", encoding="utf-8")
    ended = run("ingest", make_memo("a.wav"), "--store", tmp_path / "store")
    assert_one_sentence(ended, StoreError, "store")
    assert (tmp_path / "store").read_text(encoding="utf-8") == "not a folder"


def test_store_of_a_later_version(run: Run, hearer: FakeHearer, make_memo: MakeMemo, tmp_path: Path) -> None:
    store = tmp_path / "store"
    assert run("roster", "add", "Bramble", "--store", store).code == 0
    with sqlite3.connect(store / "clinchbook.db") as database:
        database.execute("PRAGMA user_version = 999")
    database.close()
    before = (store / "clinchbook.db").read_bytes()
    assert_one_sentence(run("ingest", make_memo("a.wav"), "--store", store), StoreNewerError, "later")
    assert (store / "clinchbook.db").read_bytes() == before


def test_unknown_model(run: Run, make_memo: MakeMemo) -> None:
    make_memo("a.wav", seed=1)
    folder = make_memo("b.wav", seed=2).parent
    assert_one_sentence(run("ingest", folder, "--model", "no-such-model"), WeightsError, "no-such-model")


def test_setting_outside_what_is_allowed(run: Run, make_memo: MakeMemo) -> None:
    assert_one_sentence(run("ingest", make_memo("a.wav"), "--beam", "0"), SettingsError, "beam")


def test_setting_of_the_environment(run: Run, make_memo: MakeMemo, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("CLINCHBOOK_THREADS", "many")
    assert_one_sentence(run("ingest", make_memo("a.wav")), SettingsError, "CLINCHBOOK_THREADS", "many")


def test_looking_into_a_store_that_is_not_there(run: Run, tmp_path: Path) -> None:
    ended = run("roster", "list", "--store", tmp_path / "none")
    assert_one_sentence(ended, FileMissingError, "no store")
    assert not (tmp_path / "none").exists()


def test_visit_that_is_not_there(run: Run) -> None:
    assert run("roster", "add", "Bramble").code == 0
    assert_one_sentence(run("show", "77"), NotFoundError, "77")


def test_horse_that_is_not_there(run: Run) -> None:
    assert run("roster", "add", "Bramble").code == 0
    assert_one_sentence(run("export", "Brambel"), NotFoundError, "Brambel")


@pytest.mark.parametrize(
    "arguments",
    [
        ["ingest"],
        ["ingest", "a.wav", "--roster", "b.csv"],
        ["ingest", "--jsonl", "b.jsonl"],
        ["ingest", "a.wav", "--dry-run", "--jsonl", "b.jsonl"],
        ["extract", "--json", "--explain"],
        ["extract", "a.txt", "--jsonl", "b.jsonl"],
        ["export", "Bramble", "--format", "docx"],
        ["show", "first"],
    ],
    ids=" ".join,
)
def test_options_that_do_not_go_together(run: Run, arguments: list[str]) -> None:
    ended = run(*arguments)
    assert ended.code == 2
    assert ended.out == ""
    assert ended.err.count("\n") == 1
    assert ended.err.endswith(f" See clinchbook {arguments[0]} --help.\n")


@pytest.mark.parametrize(
    ("command", "sentence"),
    [
        ("show first", "VISIT is a whole number; 'first' will not do. See clinchbook show --help."),
        ("due --weeks 1000", "--weeks is a whole number from 0 to 520; 1000 will not do. See clinchbook due --help."),
        ("search --limit 0", "--limit is a whole number of at least 1; 0 will not do. See clinchbook search --help."),
        (
            "export Bramble --format docx",
            "--format is one of html, pdf, csv, json, md; 'docx' will not do. See clinchbook export --help.",
        ),
        ("show", "VISIT is missing. See clinchbook show --help."),
        ("show 1 2", "That is more than the command takes (2). See clinchbook show --help."),
        ("sarch thrush", "No such command 'sarch'. Did you mean 'search', 'watch'? See clinchbook --help."),
        (
            "search --feet LF",
            "There is no option --feet. Did you mean --foot or --where? See clinchbook search --help.",
        ),
        ("--store x show 1", "There is no option --store. Options go behind the command. See clinchbook --help."),
        ("search --foot", "--foot wants something behind it."),
    ],
)
def test_a_command_line_that_cannot_be_understood(run: Run, command: str, sentence: str) -> None:
    ended = run(*command.split())
    assert (ended.code, ended.out, ended.err) == (2, "", f"{sentence}\n")


def test_a_group_without_a_command_shows_its_help(run: Run) -> None:
    ended = run("roster")
    assert ended.code == 2
    assert "Take a list of horses from a CSV file." in ended.out + ended.err


@pytest.mark.skipif(os.name != "posix", reason="signals and closed pipes are those of POSIX")
class TestInAProcessOfItsOwn:
    """Ctrl-C and closed pipes end quietly."""

    def test_a_closed_pipe_is_no_error(self, tmp_path: Path) -> None:
        lines = tmp_path / "roster.csv"
        lines.write_text(
            "name,place\n" + "".join(f"Horse {number},{'far ' * 500}\n" for number in range(100)), encoding="utf-8"
        )
        clinchbook = f"{sys.executable} -m pipeline.cli"
        store = tmp_path / "store"
        subprocess.run(f"{clinchbook} roster import {lines} --store {store}", shell=True, check=True, timeout=60)
        piped = f"{clinchbook} roster list --store {store} | head -1; exit ${{PIPESTATUS[0]}}"
        done = subprocess.run(["bash", "-c", piped], capture_output=True, text=True, timeout=60)
        assert done.stderr == ""
        assert done.stdout.count("\n") == 1
        assert done.returncode == 141

    def test_ctrl_c_ends_a_watch_cleanly(self, tmp_path: Path) -> None:
        watching = subprocess.Popen(
            [sys.executable, "-m", "pipeline.cli", "watch", str(tmp_path), "--store", str(tmp_path / "store")],
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        assert watching.stderr is not None
        assert watching.stderr.readline().startswith("Watching ")
        time.sleep(0.2)
        watching.send_signal(signal.SIGINT)
        out, err = watching.communicate(timeout=30)
        assert (watching.returncode, out, err) == (0, "", "Watching ended. Memos: 0 kept.\n")


def test_every_error_has_an_exit_code_of_its_own() -> None:
    def tree(error: type[ClinchbookError]) -> list[type[ClinchbookError]]:
        return [error, *(below for child in error.__subclasses__() for below in tree(child))]

    codes = [error.exit_code for error in tree(ClinchbookError) if error.__module__ == "pipeline.errors"]
    assert len(codes) == len(set(codes))
    assert not {0, 2} & set(codes)


def test_trouble_with_a_file_names_the_file(run: Run, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    def refuse(*_: object) -> bytes:
        raise PermissionError(13, "Permission denied", "memo.txt")

    reading: Callable[..., bytes] = refuse
    monkeypatch.setattr(Path, "read_bytes", reading)
    ended = run("extract", tmp_path / "memo.txt")
    assert ended.code == 1
    assert ended.err == f"{tmp_path / 'memo.txt'} cannot be read: permission denied.\n"
