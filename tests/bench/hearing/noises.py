"""Noises of a farrier's day, made by numpy from a seed: wind, hammer on anvil, a diesel at idle, other voices.

All are mono at 16 kHz, about 0.1 root mean square, and differ with the seed. They are models, not recordings.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
import numpy.typing as npt

Sound = npt.NDArray[np.floating[Any]]

RATE = 16_000
_LEVEL = 0.1
_MICROPHONE_HZ = 50.0  # below this the microphone of a phone hears little; common practice, no source
_WIND_HZ = 400.0
# A bar that is free at both ends rings at these multiples (Fletcher and Rossing 1998, The Physics of Musical
# Instruments, 2nd ed., section 2.17); that an anvil does so too is assumed.
_PARTIALS = (1.0, 2.756, 5.404, 8.933)
_FIRING_HZ = 25.0  # four cylinders, four strokes, 750 revolutions a minute: two ignitions a revolution


def noise(name: str, seconds: float, seed: int, talkers: list[Sound] | None = None) -> Sound:
    """``seconds`` of the named noise; "voices" needs ``talkers``, the speech that babbles."""
    random = np.random.default_rng(seed)
    length = round(seconds * RATE)
    if name == "voices":
        return _level(babble(talkers or [], length, random))
    return _level({"wind": wind, "hammer": hammer, "diesel": diesel}[name](length, random))


def wind(length: int, random: np.random.Generator) -> Sound:
    """Brown noise, weaker still above 400 Hz, that swells and drops in gusts of some seconds."""
    brown = weighted(random.standard_normal(length), _brown)
    gusts = weighted(random.standard_normal(length), lambda hz: 1.0 * ((hz > 0) & (hz < 0.6)))
    return np.asarray(brown * np.exp(1.2 * gusts / max(float(gusts.std()), 1e-9)))


def _brown(hz: Sound) -> Sound:
    return np.asarray((hz > _MICROPHONE_HZ) / np.maximum(hz, 1) / (1 + (hz / _WIND_HZ) ** 2))


def hammer(length: int, random: np.random.Generator) -> Sound:
    """Rows of two to eight blows, about two a second, each a click and a ring of metal; quiet between the rows."""
    sound = np.zeros(length + 2 * RATE)
    at = random.uniform(0, 1)
    while at * RATE < length:
        for _ in range(int(random.integers(2, 9))):
            start = int(at * RATE)
            if start < length:
                blow = _blow(random)
                sound[start : start + len(blow)] += blow
            at += random.normal(0.48, 0.05)
        at += random.uniform(1, 4)
    return sound[:length] + 1e-4 * random.standard_normal(length)


def _blow(random: np.random.Generator) -> Sound:
    time = np.arange(RATE) / RATE
    lowest = random.uniform(900, 1300)
    ring = sum(
        np.sin(2 * np.pi * lowest * ratio * time + random.uniform(0, 6)) * np.exp(-time / (0.25 / (1 + number))) / ratio
        for number, ratio in enumerate(_PARTIALS)
        if lowest * ratio < RATE / 2
    )
    click = random.standard_normal(RATE) * np.exp(-time / 0.003)
    strength = random.uniform(0.5, 1.0)
    return np.asarray(strength * (ring + 1.5 * click))


def diesel(length: int, random: np.random.Generator) -> Sound:
    """A hum of 25 ignitions a second and their multiples, with knocking; the speed wavers a little."""
    time = np.arange(length) / RATE
    waver = weighted(random.standard_normal(length), lambda hz: 1.0 * (hz < 2))
    phase = 2 * np.pi * _FIRING_HZ * (time + 0.002 * waver / max(float(np.abs(waver).max()), 1e-9))
    orders = [k for k in range(1, 41) if k * _FIRING_HZ > _MICROPHONE_HZ]
    hum = sum(np.sin(k * phase + random.uniform(0, 6)) / k**0.7 for k in orders)
    knock = weighted(random.standard_normal(length), lambda hz: 1.0 * ((hz > 600) & (hz < 2500)))
    return np.asarray(hum + 0.5 * knock / float(knock.std()) * np.maximum(np.sin(phase), 0) ** 8)


def babble(talkers: list[Sound], length: int, random: np.random.Generator) -> Sound:
    """All talkers at once, equally loud, each over and over from a place of its own."""
    if not talkers:
        raise ValueError("other voices need talkers")
    mixed = np.zeros(length)
    for talker in talkers:
        mixed += _level(from_a_place(talker, length, random))
    return mixed


def from_a_place(sound: Sound, length: int, random: np.random.Generator) -> Sound:
    """``length`` samples of the sound, over and over from a place that is drawn."""
    looped = np.tile(sound, length // len(sound) + 2)
    start = int(random.integers(len(sound)))
    return looped[start : start + length]


def weighted(white: Sound, gain: Callable[[Sound], Sound]) -> Sound:
    """White noise whose spectrum is weighted by ``gain`` of the frequency in Hz."""
    spectrum = np.fft.rfft(white) * gain(np.fft.rfftfreq(len(white), 1 / RATE))
    return np.asarray(np.fft.irfft(spectrum, len(white)))


def _level(sound: Sound) -> Sound:
    """The same sound at the common loudness."""
    return np.asarray(sound * (_LEVEL / max(float(np.sqrt(np.mean(sound**2))), 1e-9)))
