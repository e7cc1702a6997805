"""Speech that the recording cuts off, and speech for which no words came."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from pipeline.hearing.decode import SAMPLE_RATE, Samples, decode
from pipeline.hearing.edges import cut_off, passed_over, speech_stretches
from pipeline.hearing.intake import take_in
from pipeline.record import FlagKind

DEMO = Path(__file__).resolve().parents[2] / "demo_audio"


def loud(*parts: tuple[float, float]) -> Samples:
    """A hum made of (seconds, amplitude) parts."""
    pieces = [np.sin(np.arange(int(seconds * SAMPLE_RATE)) * 0.1) * level for seconds, level in parts]
    return np.concatenate(pieces).astype(np.float32)


def test_speech_at_both_edges_is_flagged() -> None:
    flags = cut_off(loud((3, 0.5)), [(0.0, 3.0)])
    assert [flag.kind for flag in flags] == [FlagKind.SOUND, FlagKind.SOUND]
    assert ["starts in the middle" in flag.reason for flag in flags] == [True, False]
    assert [flag.start for flag in flags] == [0.0, 3.0]


def test_a_quiet_edge_is_no_cut() -> None:
    assert cut_off(loud((0.1, 0.01), (3, 0.5), (0.1, 0.01)), [(0.0, 3.2)]) == []


def test_a_noise_at_the_edge_that_is_not_speech_is_no_cut() -> None:
    assert cut_off(loud((4, 0.5)), [(1.0, 3.0)]) == []
    assert cut_off(loud((4, 0.5)), []) == []


def test_speech_without_words_is_flagged_with_its_seconds() -> None:
    (flag,) = passed_over([(0.0, 10.0)], [(0.0, 3.0), (2.5, 4.0), (6.0, 10.0)])
    assert flag.kind == FlagKind.UNCLEAR_SPEECH
    assert (flag.start, flag.end) == (4.0, 6.0)


def test_speech_covered_by_words_is_not_flagged() -> None:
    assert passed_over([(0.0, 4.0), (6.0, 7.0)], [(0.2, 2.0), (3.0, 4.0)]) == []
    assert len(passed_over([(0.0, 4.0)], [])) == 1


def test_minutes_of_noise_and_silence_hold_no_speech() -> None:
    noise = (np.random.default_rng(1).standard_normal(60 * SAMPLE_RATE) * 0.1).astype(np.float32)
    assert speech_stretches(noise) == []
    assert speech_stretches(np.zeros(10 * SAMPLE_RATE, np.float32)) == []


def test_speech_over_a_telephone_is_speech() -> None:
    """300 to 3400 Hz (the band of a telephone line; value from memory) of a memo of the demo."""
    with take_in(DEMO / "2026-05-12_09-21-40.wav") as memo:
        samples = decode(memo, 60).samples
    spectrum = np.fft.rfft(samples)
    hz = np.fft.rfftfreq(len(samples), 1 / SAMPLE_RATE)
    spectrum[(hz < 300) | (hz > 3400)] = 0
    narrow = np.fft.irfft(spectrum, len(samples)).astype(np.float32)
    whole, kept = (sum(end - start for start, end in speech_stretches(sound)) for sound in (samples, narrow))
    assert kept > 0.9 * whole
