"""Every container is decoded to 16 kHz mono of the right length; what is missing or damaged is said."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import av
import numpy as np
import pytest

from pipeline.errors import DamagedSoundError, NoSoundTrackError, TooLongError
from pipeline.hearing.decode import Sound, decode
from pipeline.hearing.intake import take_in
from pipeline.record import FlagKind

from .conftest import KINDS, MakeSound


def heard(path: Path, max_minutes: float = 60) -> Sound:
    with take_in(path) as memo:
        return decode(memo, max_minutes)


@pytest.mark.parametrize("kind", KINDS)
def test_every_container_gives_the_tone(make_sound: MakeSound, kind: str) -> None:
    sound = heard(make_sound(kind, seconds=3))
    assert sound.samples.dtype == np.float32
    assert sound.seconds == pytest.approx(3, abs=0.15)
    assert sound.flags == []
    spectrum = np.abs(np.fft.rfft(sound.samples[8000:24000]))
    assert abs(int(spectrum.argmax()) - 440) <= 2
    assert 0.1 < float(np.abs(sound.samples[8000:24000]).max()) < 0.5


def test_hand_built_wide_band_amr_is_decoded(tmp_path: Path) -> None:
    """Frames of type 0 (6.6 kbit/s, 17 bytes of speech bits each, RFC 4867) last 20 ms."""
    path = tmp_path / "wide.amr"
    path.write_bytes(b"#!AMR-WB\n" + (b"\x04" + bytes(17)) * 100)
    assert heard(path).seconds == pytest.approx(2, abs=0.05)


@pytest.mark.parametrize("kind", ["aac.m4a", "alac.m4a", "memo.3gp"])
def test_cut_off_before_its_index_is_damaged(make_sound: MakeSound, kind: str) -> None:
    path = make_sound(kind, seconds=20)
    path.write_bytes(path.read_bytes()[: path.stat().st_size // 2])
    with pytest.raises(DamagedSoundError, match="cut off"):
        heard(path)


@pytest.mark.parametrize("kind", ["memo.wav", "memo.flac", "memo.caf", "memo.mp3"])
def test_half_a_file_is_flagged(make_sound: MakeSound, kind: str) -> None:
    path = make_sound(kind, seconds=20)
    path.write_bytes(path.read_bytes()[: path.stat().st_size // 2])
    sound = heard(path)
    assert 5 < sound.seconds < 13
    assert {flag.kind for flag in sound.flags} == {FlagKind.SOUND}
    assert "20 seconds long" in sound.flags[0].reason


@pytest.mark.parametrize("kind", ["aac.m4a", "memo.flac"])
def test_a_damaged_middle_is_never_silent(make_sound: MakeSound, kind: str) -> None:
    path = make_sound(kind, seconds=20)
    data = bytearray(path.read_bytes())
    third = len(data) // 3
    data[third : 2 * third] = np.random.default_rng(3).bytes(third)
    path.write_bytes(data)
    sound = heard(path)
    assert sound.broken_packets > 0 or sound.seconds < 19
    assert {flag.kind for flag in sound.flags} == {FlagKind.SOUND}


def test_a_movie_without_sound_has_no_sound_track(tmp_path: Path) -> None:
    path = tmp_path / "silent.mp4"
    with av.open(str(path), "w", format="mp4") as container:
        stream = container.add_stream("mpeg4", rate=10)
        stream.width, stream.height, stream.pix_fmt = 64, 64, "yuv420p"
        for _ in range(5):
            frame = av.VideoFrame.from_ndarray(np.zeros((64, 64, 3), np.uint8), format="rgb24")
            container.mux(stream.encode(frame))
        container.mux(stream.encode(None))
    with pytest.raises(NoSoundTrackError, match="no sound track"):
        heard(path)


def test_a_container_of_nothing_is_damaged(tmp_path: Path) -> None:
    path = tmp_path / "nothing.flac"
    path.write_bytes(b"fLaC" + bytes(200))
    with pytest.raises(DamagedSoundError):
        heard(path)


def test_the_cap_is_checked_while_decoding(make_sound: MakeSound) -> None:
    assert heard(make_sound("opus.ogg", seconds=7), max_minutes=0.12).seconds == pytest.approx(7, abs=0.1)
    with pytest.raises(TooLongError, match=r"longer than 0\.1 minutes"):
        heard(make_sound("opus.ogg", seconds=7), max_minutes=0.1)


def test_hours_in_a_small_file_never_fill_memory(make_sound: MakeSound) -> None:
    path = make_sound("memo.flac", seconds=3 * 3600, amplitude=0)
    assert path.stat().st_size < 3_000_000
    script = (
        "import resource, sys\n"
        "from pipeline.errors import TooLongError\n"
        "from pipeline.hearing.decode import decode\n"
        "from pipeline.hearing.intake import take_in\n"
        "before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss\n"
        "try:\n"
        "    with take_in(sys.argv[1]) as memo: decode(memo, 10)\n"
        "except TooLongError: print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before)\n"
    )
    result = subprocess.run([sys.executable, "-c", script, str(path)], capture_output=True, text=True, check=True)
    assert int(result.stdout) < 120_000  # kilobytes; ten minutes at 16 kHz are 38 400
