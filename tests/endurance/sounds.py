"""Damaged and hostile sound files of every container, through the real decoder, in bounded memory and time."""

from __future__ import annotations

import itertools
import os
import random
import struct
import tempfile
from functools import partial
from pathlib import Path

import av
import numpy as np

from pipeline.errors import ClinchbookError
from pipeline.hearing.decode import decode
from pipeline.hearing.intake import take_in
from pipeline.hearing.recorded import recorded_at
from tests.endurance.apart import run_apart
from tests.endurance.damage import damaged_bytes
from tests.endurance.outcome import Outcome

# name -> (muxer, encoder, sample rate): what phones and recorders write
KINDS = {
    "memo.wav": ("wav", "pcm_s16le", 16000),
    "adpcm.wav": ("wav", "adpcm_ima_wav", 22050),
    "memo.flac": ("flac", "flac", 16000),
    "memo.mp3": ("mp3", "libmp3lame", 16000),
    "aac.m4a": ("ipod", "aac", 16000),
    "alac.m4a": ("ipod", "alac", 16000),
    "memo.caf": ("caf", "pcm_s16le", 16000),
    "opus.ogg": ("ogg", "libopus", 48000),
    "flac.ogg": ("ogg", "flac", 16000),
    "memo.webm": ("webm", "libopus", 48000),
    "memo.3gp": ("3gp", "aac", 16000),
    "amr.3gp": ("3gp", "libopencore_amrnb", 8000),
    "memo.amr": ("amr", "libopencore_amrnb", 8000),
}
_RATES = (0, 1, 7, 8000, 4_000_000_000)
_CHANNELS = (0, 1, 2, 255, 65535)
_BITS = (0, 1, 4, 8, 16, 24, 64, 65535)
_FORMATS = (0, 1, 2, 3, 6, 7, 0x11, 0x50, 0x55, 0xFF, 0xFFFE)
_SECONDS = 2.0
_LIMIT_S = 20.0
_MEMORY = 1 << 30  # bytes of addresses beyond those that the parent has; ten minutes of sound are 38 MB
_MINUTES = 10.0


def run(files: int, seed: int) -> list[Outcome]:
    """``files`` damaged files of each container; none may end in anything but sound or a sentence."""
    return [_damaged(files, seed), _odd_headers(max(1, 500 // files))]


def _odd_headers(every: int) -> Outcome:
    """WAV headers with every mixture of impossible rates, channels, bits and formats."""
    outcome = Outcome("odd WAV headers")
    mixtures = list(itertools.product(_RATES, _CHANNELS, _BITS, _FORMATS))
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        path = Path(named) / "odd.wav"
        for rate, channels, bits, form in mixtures[::every]:
            align = channels * bits // 8 & 0xFFFF
            head = struct.pack("<HHIIHH", form, channels, rate, rate * align & 0xFFFFFFFF, align, bits)
            sound = b"data" + struct.pack("<I", 40_000) + random.Random(rate).randbytes(40_000)
            body = b"WAVEfmt " + struct.pack("<I", len(head)) + head + sound
            path.write_bytes(b"RIFF" + struct.pack("<I", len(body)) + body)
            outcome.cases += 1
            ending = run_apart(partial(hear, path), seconds=_LIMIT_S, memory=_MEMORY)
            words = f"rate {rate}, channels {channels}, bits {bits}, format {form}"
            outcome.expect(not ending.trouble, f"{words}: {ending.trouble.strip()[-300:]}")
    return outcome


def _damaged(files: int, seed: int) -> Outcome:
    outcome = Outcome("damaged sound", remarks=[f"seed {seed}"])
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        folder = Path(named)
        for kind in KINDS:
            whole = _whole(folder, kind)
            endings: dict[str, int] = {}
            for number in range(files):
                chance = random.Random(f"{seed} {kind} {number}")
                path = folder / f"damaged {kind}"
                path.write_bytes(damaged_bytes(whole, chance))
                outcome.cases += 1
                ending = run_apart(partial(hear, path), seconds=_LIMIT_S, memory=_MEMORY)
                if ending.trouble:
                    said = ending.trouble.strip().splitlines()[-1]
                    outcome.failures.append(f"{kind} {number} of seed {seed}: {said}")
                endings[str(ending.value)] = endings.get(str(ending.value), 0) + 1
            outcome.expect(len(endings) > 1 or files < 20, f"all damaged {kind} ended alike: {endings}")
    return outcome


def hear(path: Path) -> str:
    """Take in and decode as the recogniser does; how that ended: "sound", or the name of the error with a sentence.

    To be called in a process of its own: what its libraries write on stderr must be no traceback either.
    """
    said = os.memfd_create("stderr")
    os.dup2(said, 2)
    ended = _heard(path)
    os.lseek(said, 0, os.SEEK_SET)
    words = os.read(said, 100_000)
    assert b"Traceback" not in words, words
    return ended


def _heard(path: Path) -> str:
    try:
        with take_in(path) as memo:
            sound = decode(memo, _MINUTES)
            recorded_at(path.name, sound.metadata, memo.modified_at)
    except ClinchbookError as error:
        if not str(error).endswith("."):
            raise
        return type(error).__name__
    assert sound.samples.dtype == np.float32
    assert bool(np.isfinite(sound.samples).all())
    assert sound.samples.size == 0 or float(np.abs(sound.samples).max()) <= 1
    return "sound"


def _whole(folder: Path, kind: str) -> bytes:
    muxer, encoder, rate = KINDS[kind]
    path = folder / kind
    with av.open(str(path), "w", format=muxer) as container:
        container.metadata["creation_time"] = "2026-03-02T14:05:00Z"
        container.metadata["title"] = "Bramble"
        stream = container.add_stream(encoder, rate=rate, layout="mono")
        assert isinstance(stream, av.AudioStream)
        if encoder == "libopencore_amrnb":
            stream.bit_rate = 12200
        count = int(_SECONDS * rate)
        tone = 8000 * np.sin(np.arange(count) * 2 * np.pi * 440 / rate)
        frame = av.AudioFrame.from_ndarray(tone.astype(np.int16)[None, :], format="s16", layout="mono")
        frame.sample_rate, frame.pts = rate, 0
        resampler = av.AudioResampler(
            format=stream.codec_context.format,
            layout="mono",
            rate=rate,
            frame_size=stream.codec_context.frame_size or 0,
        )
        for piece in [*resampler.resample(frame), *resampler.resample(None)]:
            container.mux(stream.encode(piece))
        container.mux(stream.encode(None))
    return path.read_bytes()
