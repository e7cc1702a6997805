"""Snippets: just the seconds asked for, for this user's eyes and ears alone."""

from __future__ import annotations

import io
import os
import stat
import wave
from pathlib import Path

import numpy as np
import pytest

from pipeline.errors import FileMissingError
from pipeline.hearing.snippets import Snippets


def ramp(path: Path, seconds: int = 3) -> Path:
    """A WAV whose loudness tells its second: 0.1, 0.2, 0.3."""
    samples = np.repeat(np.arange(1, seconds + 1) * 3277, 16_000).astype("<i2")
    with wave.open(str(path), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(16_000)
        sound.writeframes(samples.tobytes())
    return path


def samples_of(sound: bytes) -> np.ndarray[tuple[int], np.dtype[np.int16]]:
    """The samples of a WAV."""
    with wave.open(io.BytesIO(sound)) as opened:
        assert (opened.getnchannels(), opened.getsampwidth(), opened.getframerate()) == (1, 2, 16_000)
        return np.frombuffer(opened.readframes(opened.getnframes()), dtype="<i2")


def test_only_the_seconds_asked_for(tmp_path: Path) -> None:
    cut = samples_of(Snippets().wav(ramp(tmp_path / "memo.wav"), 1.0, 2.0))
    assert len(cut) == 16_000
    assert int(cut.min()) == pytest.approx(6554, abs=2)
    assert int(cut.max()) == pytest.approx(6554, abs=2)


@pytest.mark.parametrize(("start", "end", "length"), [(-0.4, 0.5, 8_000), (2.5, 9.0, 8_000), (9.0, 10.0, 0)])
def test_the_edges_of_a_memo(tmp_path: Path, start: float, end: float, length: int) -> None:
    assert len(samples_of(Snippets().wav(ramp(tmp_path / "memo.wav"), start, end))) == length


def test_a_recording_is_decoded_once_for_many_snippets(tmp_path: Path) -> None:
    snippets, memo = Snippets(), ramp(tmp_path / "memo.wav")
    first = snippets.wav(memo, 0, 1)
    memo.unlink()
    assert snippets.wav(memo, 0, 1) == first
    with pytest.raises(FileMissingError):
        Snippets().wav(memo, 0, 1)


def test_a_snippet_is_for_this_user_alone_and_replaces_nothing(tmp_path: Path) -> None:
    target = tmp_path / "snippet.wav"
    before = os.umask(0)
    try:
        Snippets().write(ramp(tmp_path / "memo.wav"), 0, 1, target)
    finally:
        os.umask(before)
    assert stat.S_IMODE(target.stat().st_mode) == 0o600
    with pytest.raises(FileExistsError):
        Snippets().write(tmp_path / "memo.wav", 0, 1, target)
