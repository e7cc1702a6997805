"""What Windows and macOS need, tried with what they would answer; nothing here was run on either."""

from __future__ import annotations

import errno
import io
import os
import sys
from pathlib import Path

import pytest

from pipeline.cli import endings, playing
from pipeline.keeping import database
from pipeline.using.files import file_name


class _Console(io.TextIOWrapper):
    """A stream at a terminal."""

    def isatty(self) -> bool:
        """It is one."""
        return True


def _printed(stream: io.TextIOWrapper, monkeypatch: pytest.MonkeyPatch, windows: bool) -> bytes:
    """The bytes of a row of CSV and a curly quote, after the streams were put right."""
    with monkeypatch.context() as patched:
        patched.setattr(sys, "stdout", stream)
        patched.setattr(sys, "stderr", stream)
        endings._write_what_cannot_be_encoded(windows)
    stream.write("½,Łukasz\r\n")
    stream.flush()
    assert isinstance(stream.buffer, io.BytesIO)
    return stream.buffer.getvalue()


def test_windows_writes_files_and_pipes_as_utf8_with_its_rows_as_they_are(monkeypatch: pytest.MonkeyPatch) -> None:
    stream = io.TextIOWrapper(io.BytesIO(), encoding="cp1252", newline="\r\n")
    assert _printed(stream, monkeypatch, windows=True) == "½,Łukasz\r\n".encode()


def test_elsewhere_and_at_a_terminal_the_encoding_stays(monkeypatch: pytest.MonkeyPatch) -> None:
    stream = io.TextIOWrapper(io.BytesIO(), encoding="cp1252", newline="")
    assert _printed(stream, monkeypatch, windows=False) == b"\xbd,\\u0141ukasz\r\n"
    console = _Console(io.BytesIO(), encoding="cp1252", newline="")
    assert _printed(console, monkeypatch, windows=True) == b"\xbd,\\u0141ukasz\r\n"


def test_a_pipe_that_nobody_reads(monkeypatch: pytest.MonkeyPatch) -> None:
    unnamed = OSError(errno.EINVAL, "Invalid argument")
    assert endings._pipe_is_closed(BrokenPipeError())
    assert not endings._pipe_is_closed(unnamed)
    monkeypatch.setattr(sys, "platform", "win32")
    assert endings._pipe_is_closed(unnamed)
    assert not endings._pipe_is_closed(OSError(errno.EINVAL, "Invalid argument", "a.csv"))


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no such call")
def test_macos_syncs_through_the_drive_and_otherwise_as_it_can(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    asked: list[int] = []
    plain: list[int] = []

    def fcntl(handle: int, what: int) -> int:
        asked.append(what)
        if len(asked) == 2:
            raise OSError(errno.ENOTSUP, "Operation not supported")
        return 0

    monkeypatch.setattr("fcntl.F_FULLFSYNC", 51, raising=False)
    monkeypatch.setattr("fcntl.fcntl", fcntl)
    monkeypatch.setattr(os, "fsync", plain.append)
    with (tmp_path / "a").open("wb") as file:
        handle = file.fileno()
        database.sync_file(handle)
        assert (asked, plain) == ([51], [])
        database.sync_file(handle)
    assert (asked, plain) == ([51, 51], [handle])


def test_a_quote_in_a_folder_is_written_twice_for_powershell() -> None:
    assert playing._quoted(Path("O'Hara/memo.wav")) == "O''Hara/memo.wav"


@pytest.mark.parametrize(
    ("name", "made"),
    [("Con", "horse-con"), ("NUL", "horse-nul"), ("lpt1", "horse-lpt1"), ("A/B: C?", "a-b-c"), ("…", "horse")],
)
def test_no_file_has_a_name_that_windows_keeps(name: str, made: str) -> None:
    assert file_name(name) == made
