"""A clean take under a condition: noise at a ratio, a telephone's band, a phone's codec."""

from __future__ import annotations

import io
import wave
from hashlib import sha256
from pathlib import Path
from typing import cast

import av
import numpy as np

from tests.bench.hearing.noises import RATE, Sound, noise
from tests.bench.hearing.takes import CLEAN, FAST, NOISES

# Encoder, container, sample rate in Hz, bits a second.
_CODECS = {"amr": ("libopencore_amrnb", "3gp", 8_000, 12_200), "opus": ("libopus", "ogg", 16_000, 12_000)}
_TELEPHONE_HZ = (300.0, 3400.0)
_FRAME = RATE // 50
_QUIETEST_DB = 30.0  # frames this far below the loudest are pauses, not speech


def disturb(clean: Sound, condition: str, key: str, talkers: list[Sound]) -> tuple[Sound, int]:
    """The sound under ``condition`` and its sample rate; ``key`` decides the noise's seed.

    Noise is added at the ratio of unweighted powers, the speech's taken over the frames in which somebody speaks.
    """
    if condition in (CLEAN, FAST):
        return clean, RATE
    if condition == "telephone":
        return telephone(clean), RATE // 2
    if condition in _CODECS:
        return through_codec(clean, condition), RATE
    name = next(name for name in NOISES if condition.startswith(name))
    seed = int(sha256(f"{name} {key}".encode()).hexdigest()[:8], 16)
    return at_ratio(clean, noise(name, len(clean) / RATE, seed, talkers), float(condition.removeprefix(name))), RATE


def at_ratio(speech: Sound, disturbance: Sound, ratio_db: float) -> Sound:
    """Speech and noise together, scaled down when they would clip."""
    wanted = speech_power(speech) / 10 ** (ratio_db / 10)
    mixed = speech + disturbance[: len(speech)] * np.sqrt(wanted / np.mean(disturbance**2))
    return np.asarray(mixed * min(1.0, 0.98 / float(np.abs(mixed).max())))


def speech_power(speech: Sound) -> float:
    """The mean power of the frames of 20 ms in which there is speech."""
    whole = len(speech) // _FRAME * _FRAME
    powers = (speech[:whole].reshape(-1, _FRAME) ** 2).mean(axis=1)
    return float(powers[powers > powers.max() / 10 ** (_QUIETEST_DB / 10)].mean())


def telephone(sound: Sound) -> Sound:
    """300 to 3400 Hz, sampled at 8 kHz."""
    padded = np.pad(sound, (0, len(sound) % 2))
    spectrum = np.fft.rfft(padded)
    hz = np.fft.rfftfreq(len(padded), 1 / RATE)
    spectrum[(hz < _TELEPHONE_HZ[0]) | (hz > _TELEPHONE_HZ[1])] = 0
    return np.asarray(np.fft.irfft(spectrum, len(padded))[::2])


def through_codec(sound: Sound, name: str) -> Sound:
    """Encoded by a phone's codec and decoded again, at 16 kHz."""
    encoder, container, rate, bits = _CODECS[name]
    file = io.BytesIO()
    with av.open(file, "w", format=container) as out:
        stream = cast(av.AudioStream, out.add_stream(encoder, rate=rate))
        stream.bit_rate = bits
        stream.layout = "mono"
        frame = av.AudioFrame.from_ndarray(_whole_numbers(sound)[None, :], format="s16", layout="mono")
        frame.sample_rate = RATE
        for part in (frame, None):
            out.mux(stream.encode(part))  # which also resamples
    file.seek(0)
    resampler = av.AudioResampler(format="s16", layout="mono", rate=RATE)
    with av.open(file, "r") as again:
        parts = [p for coded in again.decode(audio=0) for p in resampler.resample(coded)] + resampler.resample(None)
    return np.concatenate([part.to_ndarray()[0] for part in parts]) / 32768.0


def read_wav(path: Path) -> Sound:
    """Mono 16-bit samples between -1 and 1."""
    with wave.open(str(path)) as file:
        return np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32768.0


def seconds_of(path: Path) -> float:
    """The length of a WAV file."""
    with wave.open(str(path)) as file:
        return float(file.getnframes() / file.getframerate())


def write_wav(path: Path, sound: Sound, rate: int) -> None:
    """Write mono 16-bit samples; the file appears only when it is whole."""
    part = path.with_suffix(".part")
    with wave.open(str(part), "wb") as file:
        file.setparams((1, 2, rate, 0, "NONE", "not compressed"))
        file.writeframes(_whole_numbers(sound).tobytes())
    part.replace(path)


def _whole_numbers(sound: Sound) -> np.ndarray[tuple[int, ...], np.dtype[np.int16]]:
    return (sound.clip(-1, 1) * 32767).astype("<i2")
