"""Sounds made on the spot, in every container that memos come in."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

import av
import numpy as np
import pytest

# name -> (muxer, encoder, sample rate)
KINDS = {
    "memo.wav": ("wav", "pcm_s16le", 44100),
    "memo.flac": ("flac", "flac", 48000),
    "memo.mp3": ("mp3", "libmp3lame", 44100),
    "aac.m4a": ("ipod", "aac", 44100),
    "alac.m4a": ("ipod", "alac", 44100),
    "memo.caf": ("caf", "pcm_s16le", 44100),
    "opus.ogg": ("ogg", "libopus", 48000),
    "memo.webm": ("webm", "libopus", 48000),
    "memo.3gp": ("3gp", "aac", 16000),
    "nb.amr": ("amr", "libopencore_amrnb", 8000),
}

MakeSound = Callable[..., Path]


@pytest.fixture
def make_sound(tmp_path: Path) -> MakeSound:
    """A function ``(kind, seconds, metadata, stream_metadata, name, amplitude)`` that writes a tone."""

    def make(
        kind: str,
        seconds: float = 3.0,
        metadata: Mapping[str, str] | None = None,
        stream_metadata: Mapping[str, str] | None = None,
        name: str | None = None,
        amplitude: float = 0.3,
    ) -> Path:
        muxer, encoder, rate = KINDS[kind]
        path = tmp_path / (name or kind)
        with av.open(str(path), "w", format=muxer) as container:
            container.metadata.update(metadata or {})
            stream = container.add_stream(encoder, rate=rate, layout="mono")
            assert isinstance(stream, av.AudioStream)
            stream.metadata.update(stream_metadata or {})
            if encoder == "libopencore_amrnb":
                stream.bit_rate = 12200
            _encode(container, stream, seconds, rate, amplitude)
        return path

    return make


def _encode(
    container: av.container.OutputContainer, stream: av.AudioStream, seconds: float, rate: int, amplitude: float
) -> None:
    block = rate
    fifo = av.AudioFifo()
    for start in range(0, int(seconds * rate), block):
        length = min(block, int(seconds * rate) - start)
        tone = amplitude * np.sin(2 * np.pi * 440 * (np.arange(length) + start) / rate)
        frame = av.AudioFrame.from_ndarray((tone * 32767).astype(np.int16)[None, :], format="s16", layout="mono")
        frame.sample_rate, frame.pts = rate, start
        fifo.write(frame)
        while piece := fifo.read(stream.codec_context.frame_size or length):
            container.mux(stream.encode(_converted(stream, piece)))
    if rest := fifo.read():
        container.mux(stream.encode(_converted(stream, rest)))
    container.mux(stream.encode(None))


def _converted(stream: av.AudioStream, frame: av.AudioFrame) -> av.AudioFrame:
    resampler = av.AudioResampler(format=stream.codec_context.format, layout="mono", rate=frame.sample_rate)
    return resampler.resample(frame)[0]
