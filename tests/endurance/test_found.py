"""What hostile input once did to a command, and must never do again."""

from __future__ import annotations

import json
import os
import struct
import subprocess
import sys
from contextlib import suppress
from datetime import datetime
from io import BytesIO
from pathlib import Path

import pytest
from typer.testing import CliRunner

from pipeline.cli import app
from pipeline.errors import ClinchbookError, DamagedSoundError, RosterError
from pipeline.hearing.chunks import announced_share
from pipeline.hearing.containers import CAF
from pipeline.hearing.decode import decode
from pipeline.hearing.intake import _local_time, take_in
from pipeline.hearing.readable import Readable
from pipeline.keeping.roster import read_roster
from tests.endurance.commands import wav
from tests.endurance.tracing import ROOT


def odd_wav(path: Path, channels: int) -> Path:
    """A WAV with so many channels that no sound has."""
    head = struct.pack("<HHIIHH", 1, channels, 8000, 8000 * channels, channels, 8)
    body = b"WAVEfmt " + struct.pack("<I", len(head)) + head + b"data" + struct.pack("<I", 40_000) + bytes(40_000)
    path.write_bytes(b"RIFF" + struct.pack("<I", len(body)) + body)
    return path


def test_a_number_of_channels_that_no_sound_has_is_damage(tmp_path: Path) -> None:
    with take_in(odd_wav(tmp_path / "odd.wav", 255)) as memo, pytest.raises(DamagedSoundError, match="is damaged"):
        decode(memo)


def test_a_broken_length_prints_no_traceback(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> None:
    """A chunk of a WAV that says it is longer than any file makes the decoder seek to a place that is none."""
    path = wav(tmp_path / "memo.wav", 1)
    data = bytearray(path.read_bytes())
    for place in range(4, 60, 4):
        broken = bytearray(data)
        broken[place : place + 4] = b"\xff\xff\xff\xff"
        path.write_bytes(broken)
        with suppress(ClinchbookError), take_in(path) as memo:
            decode(memo)
    assert "Traceback" not in capfd.readouterr().err


def test_no_place_that_is_none_is_sought() -> None:
    readable = Readable(BytesIO(b"sound"))
    assert (readable.seek(-1), readable.seek(2), readable.tell(), readable.read(9)) == (-1, 2, 2, b"und")


@pytest.mark.parametrize("length", [2**62, 2**63 - 1])
def test_a_chunk_longer_than_any_file_ends_the_look_for_announced_sound(length: int) -> None:
    data = b"caff" + bytes(4) + b"desc" + length.to_bytes(8, "big") + bytes(100)
    assert announced_share(BytesIO(data), len(data), CAF) == 1.0


def test_a_list_of_very_many_columns_is_told_twice_columns_at_once(tmp_path: Path) -> None:
    path = tmp_path / "horses.csv"
    path.write_text("name," + ",".join(f"c{n}" for n in range(50_000)) + ",c7\nBramble\n")
    with pytest.raises(RosterError, match=r"has the column c7 twice\.$"):
        read_roster(path)


class BadCard(BytesIO):
    """A file whose second half the card no longer gives back."""

    def read(self, size: int | None = -1, /) -> bytes:
        """Bytes of the first half, then an error."""
        if self.tell() > 8000:
            raise OSError(5, "Input/output error")
        return super().read(size)


def test_a_disk_error_in_the_middle_of_a_memo_is_a_sentence_about_this_memo(tmp_path: Path) -> None:
    path = wav(tmp_path / "memo.wav", 1)
    with take_in(path) as memo:
        bad = type(memo)(**{**vars(memo), "handle": BadCard(path.read_bytes())})
        with pytest.raises(ClinchbookError, match=r"memo\.wav cannot be read to its end: input/output error\.$"):
            decode(bad)


@pytest.mark.parametrize("seconds", [2.0**40, 2.0**60, -(2.0**60), float("nan")])
def test_a_time_of_change_that_no_calendar_has_counts_as_none(seconds: float) -> None:
    assert _local_time(seconds) == datetime(1970, 1, 1)


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("9" * 5000, "This is not one JSON object on one line."),
        ('{"id": ' + "9" * 5000 + "}", "This is not one JSON object on one line."),
        ('{"id": "7", "text": "\\ud800 thrush"}', "The line holds half of a character, written as an escape."),
        (
            '{"id": "7", "text": "x", "roster": ["\\ud800"]}',
            "The line holds half of a character, written as an escape.",
        ),
    ],
)
def test_a_line_that_cannot_be_read_is_answered_and_the_others_go_on(tmp_path: Path, line: str, said: str) -> None:
    path = tmp_path / "lines.jsonl"
    path.write_text(f'{line}\n{{"id": "8", "text": "Thrush, left hind."}}\n')
    result = CliRunner().invoke(app, ["extract", "--jsonl", str(path)])
    first, second = map(json.loads, result.stdout.splitlines())
    assert (result.exit_code, result.stderr) == (17, f"lines.jsonl line 1: {said}\n")
    assert (first["visits"], first["flags"][0]["reason"]) == ([], said)
    assert second["id"] == "8"
    assert len(second["visits"]) == 1


def test_a_name_in_another_encoding_is_a_sentence(tmp_path: Path) -> None:
    for arguments in (["roster", "add", "Bl\udcfcte"], ["search", "--horse", "Bl\udcfcte"]):
        result = CliRunner().invoke(app, [*arguments, "--store", str(tmp_path / "book")])
        code, err = result.exit_code, result.stderr
        assert (code, "not UTF-8 text" in err or "There is no store" in err) in ((17, True), (3, True))


def test_a_message_cannot_rewrite_the_screen(tmp_path: Path) -> None:
    path = tmp_path / "a\x1b[2J.wav"
    path.write_text("no sound")
    result = CliRunner().invoke(app, ["ingest", str(path), "--store", str(tmp_path / "book")])
    assert result.exit_code == 5
    assert "\x1b" not in result.stderr
    assert "is not a recording but plain text" in result.stderr


def test_the_library_of_voice_activity_is_told_to_report_nothing() -> None:
    """It is told before it can load, in a process of its own that says otherwise."""
    script = "import pipeline.hearing.edges, os; print(os.environ['ORT_DISABLE_TELEMETRY'])"
    told = subprocess.run(
        [sys.executable, "-c", script],
        env={**os.environ, "PYTHONPATH": str(ROOT), "ORT_DISABLE_TELEMETRY": "0"},
        capture_output=True,
        text=True,
        check=True,
    )
    assert told.stdout == "1\n"
