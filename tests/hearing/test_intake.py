"""What a file is, is told by its content; everything but sound is refused before a decoder opens it."""

from __future__ import annotations

import hashlib
import os
import zipfile
from pathlib import Path

import pytest

from pipeline.errors import ClinchbookError, FileEmptyError, FileMissingError, NotSoundError
from pipeline.hearing.containers import sniff
from pipeline.hearing.intake import take_in

from .conftest import KINDS, MakeSound

NAMES = {
    "memo.wav": "WAV", "memo.flac": "FLAC", "memo.mp3": "MP3", "aac.m4a": "M4A", "alac.m4a": "M4A", "memo.caf": "CAF",
    "opus.ogg": "Ogg", "memo.webm": "WebM", "memo.3gp": "3GP", "nb.amr": "AMR",
}  # fmt: skip

IMPOSTORS = {
    "#EXTM3U\n#EXTINF:10,\n/etc/passwd\n": "a playlist",
    "ffconcat version 1.0\nfile /etc/passwd\n": "a playlist",
    "file '/etc/passwd'\n": "a playlist",
    "[playlist]\nFile1=barn.wav\n": "a playlist",
    "<!DOCTYPE html><html></html>": "a web page",
    "<?xml version='1.0'?><a/>": "an XML document",
    "Bramble, left fore, thrush in the sulcus.": "plain text",
    "": "",
}


@pytest.mark.parametrize("kind", KINDS)
def test_content_names_the_container_whatever_the_ending(make_sound: MakeSound, kind: str) -> None:
    path = make_sound(kind, seconds=0.5, name="renamed.txt")
    with take_in(path) as memo:
        assert memo.container.name == NAMES[kind]
        assert memo.sha256 == hashlib.sha256(path.read_bytes()).hexdigest()
        assert memo.handle.tell() == 0
    assert memo.handle.closed


@pytest.mark.parametrize("text", [text for text in IMPOSTORS if text])
@pytest.mark.parametrize("name", ["memo.m4a", "memo.mp3"])
def test_text_posing_as_sound_is_refused_by_what_it_is(tmp_path: Path, text: str, name: str) -> None:
    path = tmp_path / name
    path.write_text(text)
    with pytest.raises(NotSoundError, match=IMPOSTORS[text]), take_in(path):
        pass


@pytest.mark.parametrize(
    ("head", "what"),
    [
        (b"\x89PNG\r\n\x1a\n" + bytes(50), "a picture"),
        (b"\xff\xd8\xff\xe0\x00\x10JFIF" + bytes(50), "a picture"),
        (b"RIFF\x00\x00\x00\x00WEBPVP8 ", "a picture"),
        (b"\x00\x00\x00\x18ftypheic" + bytes(50), "a picture"),
        (b"RIFF\x00\x00\x00\x00AVI LIST", "a video"),
        (b"%PDF-1.7\n", "a PDF document"),
        (b"\x1f\x8b\x08" + bytes(30), "an archive"),
        (bytes(600), "nothing but zero bytes"),
        (bytes(range(200, 256)) * 4, "a kind that recorders do not write"),
    ],
)
def test_other_files_are_named(tmp_path: Path, head: bytes, what: str) -> None:
    path = tmp_path / "memo.wav"
    path.write_bytes(head)
    with pytest.raises(NotSoundError, match=what), take_in(path):
        pass


def test_an_archive_with_a_memo_inside_is_an_archive(make_sound: MakeSound, tmp_path: Path) -> None:
    path = tmp_path / "memos.m4a"
    with zipfile.ZipFile(path, "w") as archive:
        archive.write(make_sound("memo.wav"))
    with pytest.raises(NotSoundError, match="an archive"), take_in(path):
        pass


def test_missing_empty_and_folder(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError, match="There is no file"), take_in(tmp_path / "gone.wav"):
        pass
    (tmp_path / "empty.wav").touch()
    with pytest.raises(FileEmptyError, match="is empty"), take_in(tmp_path / "empty.wav"):
        pass
    with pytest.raises(NotSoundError, match="is a folder"), take_in(tmp_path):
        pass


def test_a_pipe_is_refused_without_waiting_for_it(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.wav")
    with pytest.raises(NotSoundError, match="no"), take_in(tmp_path / "pipe.wav"):
        pass


def test_a_name_that_no_file_can_have_is_a_sentence() -> None:
    with pytest.raises(ClinchbookError, match="cannot be read"), take_in("bad\0name.wav"):
        pass


def test_one_mp3_frame_header_in_other_bytes_is_not_enough() -> None:
    assert sniff(b"\xff\xfb\x90\x00" + bytes(1000)) is None


def test_a_tag_before_flac_is_still_flac() -> None:
    container = sniff(b"ID3\x04\x00\x00\x00\x00\x00\x05" + bytes(5) + b"fLaC" + bytes(40))
    assert container is not None
    assert container.demuxer == "flac"
