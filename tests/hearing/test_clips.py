"""Clips: the right stretch of the recording, padded, small, and without anything else from the file."""

from __future__ import annotations

import wave
from pathlib import Path

import numpy as np
import pytest

from pipeline.errors import DamagedSoundError, FileMissingError, NotSoundError
from pipeline.hearing.clips import PAD_S, Clipper, as_mp3
from pipeline.hearing.decode import SAMPLE_RATE, Samples


@pytest.fixture
def tones(tmp_path: Path) -> Path:
    """Ten seconds of silence with a tone of 440 Hz from second 4 to second 5."""
    sound = np.zeros(10 * SAMPLE_RATE, dtype=np.float32)
    t = np.arange(SAMPLE_RATE) / SAMPLE_RATE
    sound[4 * SAMPLE_RATE : 5 * SAMPLE_RATE] = 0.5 * np.sin(2 * np.pi * 440 * t)
    path = tmp_path / "secret-name.wav"
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(SAMPLE_RATE)
        file.writeframes((sound * 32767).astype("<i2").tobytes())
    return path


def decoded(data: bytes, folder: Path) -> Samples:
    """The samples of a clip."""
    path = folder / "clip.mp3"
    path.write_bytes(data)
    return Clipper(path).samples


def test_it_is_the_stretch_that_was_asked_for_with_a_little_around(tones: Path, tmp_path: Path) -> None:
    clip = decoded(Clipper(tones).clip(4.0, 5.0), tmp_path)
    seconds = len(clip) / SAMPLE_RATE
    assert 1 + 2 * PAD_S <= seconds < 1 + 2 * PAD_S + 0.15  # the codec fills up its last frames
    loud = np.flatnonzero(np.abs(clip) > 0.2) / SAMPLE_RATE
    assert 0.35 < loud[0] < 0.55
    assert 1.3 < loud[-1] < 1.55


def test_it_is_small_and_carries_no_name(tones: Path) -> None:
    data = Clipper(tones).clip(4.0, 5.0)
    assert len(data) < 7000
    assert b"secret" not in data
    assert not data.startswith(b"ID3")
    assert data == Clipper(tones).clip(4.0, 5.0)


def test_the_edges_of_the_recording_are_its_own(tones: Path) -> None:
    clipper = Clipper(tones)
    assert clipper.clip(0.0, 0.5)
    assert clipper.clip(9.8, 30.0)
    assert clipper.clip(20.0, 21.0) == b""
    assert clipper.clip(5.0, 1.0) == b""
    assert as_mp3(np.zeros(0, dtype=np.float32)) == b""


def test_what_is_no_recording_is_said(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError):
        Clipper(tmp_path / "none.wav")
    text = tmp_path / "text.wav"
    text.write_text("no sound")
    with pytest.raises(NotSoundError):
        Clipper(text)
    cut = tmp_path / "cut.flac"
    cut.write_bytes(b"fLaC" + b"\x00" * 100)
    with pytest.raises(DamagedSoundError):
        Clipper(cut)
