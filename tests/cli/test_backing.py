"""``backup`` and ``restore`` at the command line, with passphrases that never stand in a command."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pyrage
import pytest
from typer.testing import CliRunner

from pipeline.cli import app
from pipeline.errors import BackupError, FileMissingError, PassphraseError
from pipeline.keeping import Store

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, MakeMemo, Run

PASSPHRASE = "the grey cob eats hats"


class Quick:
    """In place of age's slow passphrases."""

    @staticmethod
    def encrypt(key: bytes, passphrase: str) -> bytes:
        """Put the passphrase before the key."""
        return passphrase.encode() + b"|" + key

    @staticmethod
    def decrypt(sealed: bytes, passphrase: str) -> bytes:
        """Give the key back for the passphrase."""
        head, key = sealed.split(b"|")
        if head != passphrase.encode():
            raise pyrage.DecryptError
        return key


@pytest.fixture(autouse=True)
def quick_seal(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the seconds that a real passphrase takes; tests/keeping/test_archive.py takes them."""
    monkeypatch.setattr(pyrage, "passphrase", Quick)


@pytest.fixture
def kept(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    """A store with a memo."""
    assert run("ingest", make_memo("a.wav")).code == 0


def test_a_folder_there_and_back(run: Run, kept: None, tmp_path: Path) -> None:
    ended = run("backup", tmp_path / "disk")
    assert (ended.code, ended.err) == (0, "")
    assert ended.out == f"Saved and checked: 1 memo (1 recording copied) in {tmp_path / 'disk'}.\n"
    again = run("backup", tmp_path / "disk")
    assert again.out == f"Saved and checked: 1 memo (0 recordings copied, 1 there before) in {tmp_path / 'disk'}.\n"
    ended = run("restore", tmp_path / "disk", "--store", tmp_path / "new")
    assert (ended.code, ended.out) == (0, f"Restored 1 memo into {tmp_path / 'new'}.\n")
    assert run("show", "1", "--store", tmp_path / "new").out == run("show", "1").out


def test_a_disk_that_is_not_plugged_in_is_not_made_up(run: Run, kept: None, tmp_path: Path) -> None:
    ended = run("backup", tmp_path / "stick" / "clinchbook")
    assert (ended.code, ended.out) == (FileMissingError.exit_code, "")
    assert ended.err == f"There is no folder {tmp_path / 'stick'} to put the back-up into; is its disk plugged in?\n"
    assert not (tmp_path / "stick").exists()


def test_a_store_is_not_overwritten_but_set_aside(run: Run, kept: None, tmp_path: Path, own_surroundings: Path) -> None:
    run("backup", tmp_path / "disk")
    refused = run("restore", tmp_path / "disk")
    assert refused.code == BackupError.exit_code
    assert refused.err == (
        f"{own_surroundings} holds a store already; name another with --store, or set it aside with --replace.\n"
    )
    ended = run("restore", tmp_path / "disk", "--replace")
    assert ended.code == 0
    aside = Path(ended.out.splitlines()[1].removeprefix("The store that was there is set aside in ").removesuffix("."))
    assert aside.parent == own_surroundings.parent
    with Store.open(aside, create=False) as store:
        assert store.counts()["memos"] == 1


def test_what_is_lost_is_told_with_its_code(run: Run, kept: None, tmp_path: Path, own_surroundings: Path) -> None:
    next((own_surroundings / "originals").rglob("*.wav")).unlink()
    ended = run("backup", tmp_path / "disk")
    assert ended.code == BackupError.exit_code
    assert ended.err == "The recording of a.wav is missing. Its record is in the back-up.\n"
    ended = run("restore", tmp_path / "disk", "--store", tmp_path / "new")
    assert (ended.code, ended.err) == (BackupError.exit_code, "The recording of a.wav is missing.\n")


@pytest.mark.parametrize("way", ["variable", "file", "keyboard"])
def test_an_encrypted_file_there_and_back(
    run: Run, kept: None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, way: str
) -> None:
    words, typed, typed_twice = [], None, None
    if way == "variable":
        monkeypatch.setenv("CLINCHBOOK_PASSPHRASE", PASSPHRASE)
    elif way == "file":
        (tmp_path / "secret").write_text(f"{PASSPHRASE}\nand more\n", encoding="utf-8")
        words = ["--passphrase-file", str(tmp_path / "secret")]
    else:
        typed, typed_twice = f"{PASSPHRASE}\n".encode(), f"{PASSPHRASE}\n{PASSPHRASE}\n".encode()
    ended = run("backup", tmp_path / "book.zip", "--encrypt", *words, given=typed_twice)
    assert ended.code == 0
    assert ended.out.endswith(f"Saved and checked: 1 memo (1 recording copied) in {tmp_path / 'book.zip'}.\n")
    ended = run("restore", tmp_path / "book.zip", "--store", tmp_path / "new", *words, given=typed)
    assert ended.code == 0
    assert PASSPHRASE not in ended.out + ended.err
    assert run("show", "1", "--store", tmp_path / "new").out == run("show", "1").out


def test_a_wrong_passphrase_and_none_are_sentences(
    run: Run, kept: None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    unsaid = run("backup", tmp_path / "book.zip", "--encrypt")
    assert unsaid.code == PassphraseError.exit_code
    assert "No passphrase was given" in unsaid.err
    monkeypatch.setenv("CLINCHBOOK_PASSPHRASE", PASSPHRASE)
    assert run("backup", tmp_path / "book.zip", "--encrypt").code == 0
    monkeypatch.setenv("CLINCHBOOK_PASSPHRASE", "the grey cob eats coats")
    ended = run("restore", tmp_path / "book.zip", "--store", tmp_path / "new")
    assert ended.code == PassphraseError.exit_code
    assert ended.err == "The passphrase does not open this back-up, or the back-up is damaged.\n"
    assert not (tmp_path / "new").exists()


def test_a_file_that_is_no_back_up_is_told_before_a_passphrase_is_asked_for(run: Run, tmp_path: Path) -> None:
    (tmp_path / "list.csv").write_text("name\nBramble\n", encoding="utf-8")
    ended = run("restore", tmp_path / "list.csv", "--store", tmp_path / "new")
    assert (ended.code, ended.out) == (BackupError.exit_code, "")
    assert ended.err == "list.csv is no encrypted back-up of clinchbook, or it is damaged.\n"


@pytest.mark.skipif(os.name != "posix", reason="a session of its own is POSIX")
def test_without_a_terminal_no_passphrase_is_read_aloud(run: Run, kept: None, tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "pipeline.cli", "backup", str(tmp_path / "book.zip"), "--encrypt"],
        stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=60, start_new_session=True,
    )  # fmt: skip
    assert done.returncode == PassphraseError.exit_code
    assert done.stderr == (
        "Passphrase:\nNo passphrase was given: type it, or set CLINCHBOOK_PASSPHRASE, or name a --passphrase-file.\n"
    )


def test_a_passphrase_is_no_argument() -> None:
    for command in ("backup", "restore"):
        told = CliRunner().invoke(app, [command, "--help"]).stdout
        assert "--passphrase-file" in told
        assert "--passphrase " not in told


def test_without_a_store_there_is_nothing_to_save(run: Run, tmp_path: Path) -> None:
    assert run("backup", tmp_path / "disk").code == FileMissingError.exit_code
    assert not (tmp_path / "disk").exists()


@pytest.mark.skipif(os.name != "posix", reason="only there do files have these rights")
def test_a_disk_that_others_read_is_told(run: Run, kept: None, tmp_path: Path) -> None:
    (tmp_path / "disk").mkdir(mode=0o755)
    (tmp_path / "disk").chmod(0o755)
    ended = run("backup", tmp_path / "disk")
    assert ended.code == 0
    assert ended.err == (
        f"Other users of this machine can look into {tmp_path / 'disk'}; chmod 700 makes it yours alone.\n"
        "On a disk that knows no such rights, clinchbook backup --encrypt keeps it from everybody.\n"
    )
