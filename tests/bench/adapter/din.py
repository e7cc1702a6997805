"""Noises to learn in, drawn anew each time: hiss, rumble, bands, blows, hums, and other readings at once.

They are models, and none of the noises that the hearing bench reports on: those have figures of their own
(``tests/bench/hearing/noises.py``), and their voices say what is learnt from nowhere.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np

from tests.bench.hearing.noises import RATE, Sound, from_a_place, weighted

Talker = Callable[[], Sound]  # some reading, each time another
_LEAST = 1e-6


def din(length: int, random: np.random.Generator, talker: Talker) -> Sound:
    """``length`` samples of one of the noises, its root mean square 1."""
    kinds: Sequence[Callable[[], Sound]] = (
        lambda: random.standard_normal(length),
        lambda: rumble(length, random),
        lambda: rumble(length, random),
        lambda: band(length, random),
        lambda: blows(length, random),
        lambda: hum(length, random),
        lambda: chatter(length, random, talker),
        lambda: chatter(length, random, talker),
    )
    return unit(kinds[int(random.integers(len(kinds)))]())


def rumble(length: int, random: np.random.Generator) -> Sound:
    """Noise that falls with the frequency to a power of 0.3 to 1.6; in three of five cases it swells and drops."""
    power, lowest = random.uniform(0.3, 1.6), random.uniform(20, 120)
    sound = shaped(length, random, lambda hz: (hz > lowest) / (hz + 20) ** power)
    if random.random() < 0.6:
        slowest = random.uniform(0.3, 2.0)
        swell = unit(shaped(length, random, lambda hz: 1.0 * ((hz > 0) & (hz < slowest))))
        sound = sound * np.exp(random.uniform(0.3, 1.3) * swell)
    return sound


def band(length: int, random: np.random.Generator) -> Sound:
    """Noise around one frequency."""
    centre, width = random.uniform(200, 5000), random.uniform(100, 2000)
    return shaped(length, random, lambda hz: np.exp(-(((hz - centre) / width) ** 2)))


def blows(length: int, random: np.random.Generator) -> Sound:
    """The same blow over and over, a click and two to six tones that die away, with rests between."""
    time = np.arange(RATE) / RATE
    blow = random.uniform(0.3, 2) * random.standard_normal(RATE) * np.exp(-time / random.uniform(0.001, 0.03))
    for _ in range(int(random.integers(2, 7))):
        tone = np.sin(2 * np.pi * random.uniform(300, 6000) * time)
        blow += random.uniform(0.1, 1) * tone * np.exp(-time / random.uniform(0.02, 0.5))
    sound = 1e-3 * random.standard_normal(length + RATE)
    at, gap = random.uniform(0, RATE / 2), random.uniform(0.25, 1.5) * RATE
    while at < length:
        sound[int(at) : int(at) + RATE] += random.uniform(0.4, 1) * blow
        at += gap * random.uniform(0.85, 1.2)
        if random.random() < 0.15:
            at += RATE * random.uniform(0.5, 3)
    return sound[:length]


def hum(length: int, random: np.random.Generator) -> Sound:
    """A tone of 15 to 130 Hz that wavers, its multiples, and noise that beats with it."""
    lowest, power = random.uniform(15, 130), random.uniform(0.4, 1.4)
    waver = unit(shaped(length, random, lambda hz: 1.0 * (hz < 3)))
    phase = 2 * np.pi * lowest * (np.arange(length) / RATE + 0.002 * waver)
    multiples = [k for k in range(1, int(random.integers(8, 40))) if k * lowest < 7000]
    tones = sum((np.sin(k * phase + random.uniform(0, 6)) / k**power for k in multiples), np.zeros(length))
    beating = unit(shaped(length, random, lambda hz: 1.0 * ((hz > 300) & (hz < 3000))))
    sharpness = random.choice([0, 4, 8])
    return np.asarray(unit(tones) + random.uniform(0.1, 0.8) * beating * np.maximum(np.sin(phase), 0) ** sharpness)


def chatter(length: int, random: np.random.Generator, talker: Talker) -> Sound:
    """Two to six other readings at once, nearly equally loud, each from a place of its own."""
    sound = np.zeros(length)
    for _ in range(int(random.integers(2, 7))):
        said = unit(from_a_place(talker(), length, random))
        sound += random.uniform(0.5, 1) * said
    return sound


def shaped(length: int, random: np.random.Generator, gain: Callable[[Sound], Sound]) -> Sound:
    """White noise whose spectrum is weighted by ``gain`` of the frequency in Hz."""
    padded = 1 << max(length - 1, 1).bit_length()  # quick to transform
    return weighted(random.standard_normal(padded), gain)[:length]


def unit(sound: Sound) -> Sound:
    """The same sound with a root mean square of 1."""
    return np.asarray(sound / max(float(np.sqrt(np.mean(sound**2))), _LEAST))
