"""Short pieces of a recording, cut from the original to go with the words that were heard there."""

from __future__ import annotations

import io
from pathlib import Path

import av
import numpy as np
from av.audio.frame import AudioFrame
from av.audio.stream import AudioStream

from pipeline.hearing.decode import SAMPLE_RATE, Samples, decode
from pipeline.hearing.intake import take_in

PAD_S = 0.4  # before and behind, so that a word's edges are heard
BITS_PER_SECOND = 24_000  # speech at 16 kHz: about 3 kB a second
_FRAME = 576  # samples of one MPEG-2 layer III frame at 16 kHz (ISO/IEC 13818-3)


class Clipper:
    """One recording, decoded once. Raises what ``take_in`` and ``decode`` raise."""

    def __init__(self, path: Path, max_minutes: float = 60) -> None:
        with take_in(path) as memo:
            self.samples = decode(memo, max_minutes).samples

    def clip(self, start_s: float, end_s: float) -> bytes:
        """The MP3 (mono, 16 kHz) from ``start_s`` to ``end_s`` seconds with PAD_S around it; empty beyond the end."""
        first = max(0, int((start_s - PAD_S) * SAMPLE_RATE))
        return as_mp3(self.samples[first : max(first, int((end_s + PAD_S) * SAMPLE_RATE))])


def as_mp3(samples: Samples) -> bytes:
    """Samples (float32 in [-1, 1], 16 kHz) as an MP3 without any tag; b"" of no samples."""
    if not len(samples):
        return b""
    out = io.BytesIO()
    with av.open(out, mode="w", format="mp3", options={"id3v2_version": "0", "write_xing": "0"}) as container:
        stream = container.add_stream("libmp3lame", rate=SAMPLE_RATE, layout="mono")
        if not isinstance(stream, AudioStream):
            raise TypeError("an audio codec makes an audio stream")
        stream.bit_rate = BITS_PER_SECOND
        whole = (samples * 32767).astype(np.int16)
        for position in range(0, len(whole), _FRAME):
            frame = AudioFrame.from_ndarray(whole[position : position + _FRAME][None, :], format="s16", layout="mono")
            frame.sample_rate = SAMPLE_RATE
            frame.pts = position
            container.mux(stream.encode(frame))
        container.mux(stream.encode(None))
    return out.getvalue()
