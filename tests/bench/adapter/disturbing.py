"""A reading as it may sound in a yard: another pitch, a room, noise, a phone's codec, a narrow band, clipped, faint."""

from __future__ import annotations

import numpy as np

from tests.bench.adapter.din import Talker, din
from tests.bench.hearing.conditions import at_ratio, through_codec
from tests.bench.hearing.noises import RATE, Sound

_MOST = round(29.5 * RATE)
_PITCHED_SHARE, _PITCH_SPREAD, _PITCHES = 0.5, 0.1, (0.8, 1.22)
_ROOM_SHARE, _ROOM_S = 0.25, (0.08, 0.5)  # how long a room takes to fall silent, by 60 dB
_NOISE_SHARE, _RATIOS_DB = 0.75, (2, 28)
_CODEC_SHARES = {"amr": 0.06, "opus": 0.04}
_NARROW_SHARE, _LOWEST_HZ, _HIGHEST_HZ = 0.15, (60, 350), (3000, 5000)
_CLIPPED_SHARE, _CLIPPED_AT = 0.1, 0.3
_PEAKS = (0.05, 0.95)


def disturbed(clean: Sound, random: np.random.Generator, talker: Talker) -> Sound:
    """The reading under disturbances drawn from ``random``, 16 kHz, between -1 and 1, at most 29.5 s."""
    sound = clean
    if random.random() < _PITCHED_SHARE:
        drawn = float(np.clip(random.normal(1, _PITCH_SPREAD), *_PITCHES))
        sound = faster(sound, max(drawn, len(sound) / _MOST))  # nothing that is said may be cut off
    if random.random() < _ROOM_SHARE:
        sound = in_a_room(sound, random)
    if random.random() < _NOISE_SHARE:
        sound = at_ratio(sound, din(len(sound), random, talker), random.uniform(*_RATIOS_DB))
    sound = _coded(sound, random.random())[:_MOST]
    if random.random() < _NARROW_SHARE:
        sound = between(sound, random.uniform(*_LOWEST_HZ), random.uniform(*_HIGHEST_HZ))
    if random.random() < _CLIPPED_SHARE:
        sound = sound.clip(-_CLIPPED_AT, _CLIPPED_AT)
    return np.asarray(sound / max(float(np.abs(sound).max()), 1e-4) * random.uniform(*_PEAKS))


def faster(sound: Sound, times: float) -> Sound:
    """Played faster and higher by ``times``; below 1 slower and lower."""
    return np.asarray(np.interp(np.arange(int(len(sound) / times)) * times, np.arange(len(sound)), sound))


def in_a_room(sound: Sound, random: np.random.Generator) -> Sound:
    """With an echo of noise that dies away, as long as the sound was."""
    falls_s = random.uniform(*_ROOM_S)
    time = np.arange(int(RATE * falls_s)) / RATE
    echo = random.standard_normal(len(time)) * 10 ** (-3 * time / falls_s) * random.uniform(0.02, 0.12)
    echo[0] = 1
    padded = 1 << (len(sound) + len(echo)).bit_length()
    return np.fft.irfft(np.fft.rfft(sound, padded) * np.fft.rfft(echo, padded), padded)[: len(sound)]


def between(sound: Sound, lowest_hz: float, highest_hz: float) -> Sound:
    """Nothing of it below and above these."""
    padded = 1 << len(sound).bit_length()
    spectrum, hz = np.fft.rfft(sound, padded), np.fft.rfftfreq(padded, 1 / RATE)
    return np.fft.irfft(spectrum * ((hz > lowest_hz) & (hz < highest_hz)), padded)[: len(sound)]


def _coded(sound: Sound, drawn: float) -> Sound:
    """Through one of the codecs, or none, by a number from 0 to 1."""
    for name, share in _CODEC_SHARES.items():
        if drawn < share:
            return through_codec(sound, name)
        drawn -= share
    return sound
