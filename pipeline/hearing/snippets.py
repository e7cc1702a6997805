"""A few seconds of a recording as a WAV, to be listened to and thrown away."""

from __future__ import annotations

import io
import os
import wave
from pathlib import Path

import numpy as np

from pipeline.hearing.clips import Clipper
from pipeline.hearing.decode import SAMPLE_RATE


class Snippets:
    """Cuts snippets; the recording that was cut last stays decoded. Raises what ``take_in`` and ``decode`` raise."""

    def __init__(self) -> None:
        self._last: tuple[Path, Clipper] | None = None

    def wav(self, recording: Path, start_s: float, end_s: float) -> bytes:
        """Mono 16-bit WAV at 16 kHz from ``start_s`` to ``end_s`` seconds of a recording, nothing around it."""
        if self._last is None or self._last[0] != recording:
            self._last = recording, Clipper(recording)
        samples = self._last[1].samples[max(0, int(start_s * SAMPLE_RATE)) : max(0, int(end_s * SAMPLE_RATE))]
        out = io.BytesIO()
        with wave.open(out, "wb") as sound:
            sound.setnchannels(1)
            sound.setsampwidth(2)
            sound.setframerate(SAMPLE_RATE)
            sound.writeframes((samples * 32767).astype(np.dtype("<i2")).tobytes())
        return out.getvalue()

    def write(self, recording: Path, start_s: float, end_s: float, target: Path) -> None:
        """Write the WAV to a new file that only this user may read; raises OSError when ``target`` is there already."""
        sound = self.wav(recording, start_s, end_s)
        handle = os.open(target, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(sound)
