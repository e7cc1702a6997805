"""Made noise of a working yard, from numpy alone: a diesel idling, a hammer on an anvil, wind.

Every sound is a mono float array at ``rate`` samples a second, scaled to unit power. Frequencies, decays and rhythm
are made up by ear, not measured from any machine.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Sound = NDArray[np.float64]

FIRING_HZ = 27.0  # pulses of a four-cylinder engine turning over slowly
STRIKES_PER_S = 1.4
ANVIL_PARTIALS = ((1370.0, 0.25, 1.0), (2890.0, 0.18, 0.7), (4310.0, 0.12, 0.5), (6150.0, 0.07, 0.3))  # Hz, s, share


def yard(samples: int, rate: int, seed: int) -> Sound:
    """Diesel, anvil and wind together: shape ``(samples,)``, unit power; the same seed gives the same noise."""
    rng = np.random.default_rng(seed)
    mixed = 0.75 * diesel(samples, rate, rng) + 0.45 * anvil(samples, rate, rng) + 0.5 * wind(samples, rate, rng)
    return unit_power(mixed)


def diesel(samples: int, rate: int, rng: np.random.Generator) -> Sound:
    """An idling engine: a wavering low hum and, in time with it, bursts of clatter up to 3 kHz."""
    seconds = np.arange(samples) / rate
    waver = 1 + 0.02 * np.sin(2 * np.pi * 0.3 * seconds) + 0.01 * np.sin(2 * np.pi * 1.1 * seconds)
    phase = 2 * np.pi * np.cumsum(FIRING_HZ * waver) / rate
    hum = sum((np.sin(order * phase) / order for order in range(1, 13)), np.zeros(samples))
    bursts = np.clip(np.sin(phase), 0, None) ** 4
    clatter = shaped(rng.standard_normal(samples), rate, 300.0, 3000.0) * bursts
    return unit_power(unit_power(hum) + 0.6 * unit_power(clatter))


def anvil(samples: int, rate: int, rng: np.random.Generator) -> Sound:
    """Hammer blows that ring and die away, now and then with a pause of two beats."""
    struck = np.zeros(samples)
    at_s = 0.4
    while at_s * rate < samples:
        start = int(at_s * rate)
        seconds = np.arange(min(samples - start, rate)) / rate
        blow = rng.uniform(0.6, 1.0)
        for hertz, decay_s, share in ANVIL_PARTIALS:
            ring = np.sin(2 * np.pi * hertz * seconds + rng.uniform(0, 2 * np.pi))
            struck[start : start + len(seconds)] += blow * share * ring * np.exp(-seconds / decay_s)
        beats = 3 if rng.random() < 0.2 else 1
        at_s += beats / STRIKES_PER_S * rng.uniform(0.92, 1.08)
    return unit_power(struck)


def wind(samples: int, rate: int, rng: np.random.Generator) -> Sound:
    """Low rushing that swells and falls over a few seconds."""
    gusts = shaped(rng.standard_normal(samples), rate, 0.05, 0.6)
    swell = np.exp(0.7 * gusts / (float(np.std(gusts)) + 1e-12))
    return unit_power(shaped(rng.standard_normal(samples), rate, 60.0, 700.0) * swell)


def shaped(sound: Sound, rate: int, low_hz: float, high_hz: float) -> Sound:
    """Keep the band from ``low_hz`` to ``high_hz``, falling off 12 dB an octave on both sides."""
    spectrum = np.fft.rfft(sound)
    hertz = np.maximum(np.fft.rfftfreq(len(sound), 1 / rate), 1e-3)
    gain = 1 / (1 + (low_hz / hertz) ** 2) / (1 + (hertz / high_hz) ** 2)
    return np.asarray(np.fft.irfft(spectrum * gain, len(sound)), dtype=np.float64)


def unit_power(sound: Sound) -> Sound:
    """Scale to a mean square of 1; silence stays silence."""
    power = float(np.mean(sound**2))
    return sound / np.sqrt(power) if power > 0 else sound
