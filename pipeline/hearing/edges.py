"""Where people speak in the sound, and whether the recording cuts them off or the recogniser passed over them."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from faster_whisper.vad import VadOptions, get_speech_timestamps

from pipeline.hearing.decode import SAMPLE_RATE, Samples
from pipeline.record import Flag, FlagKind

Stretch = tuple[float, float]

# How sure the detector must be that somebody speaks. In a telephone's band (300 to 3400 Hz) it doubts half of the
# speech: at its own 0.5, 34 % of the words of 24 memos in synthetic voices were wrong, 15 % at 0.25. Elsewhere 0.25
# cuts sentences less well (6.4 % of the words of 80 clean memos, not 5.7 %), and it takes loud hiss for speech.
_SURE, _DOUBTFUL = 0.5, 0.25
_SURE_SHARE = 0.9  # 1 of 380 takes, clean, in noise and through codecs, had a smaller share; 32 of 36 by telephone had

# Tried on 16 synthetic memos: none flagged when whole; cut inside a word, 16 of 16 starts and 14 of 16 ends were.
_EDGE_SECONDS = 0.05  # sound this close to the edge decides
_EDGE_SHARE = 0.3  # of the loudness of speech elsewhere in the memo
_EDGE_REACH_S = 0.15  # speech that ends further from the edge was not cut off
_PASSED_OVER_S = 1.5  # speech without a word for this long is worth a look


def speech(samples: Samples) -> tuple[float, list[Stretch]]:
    """How sure the detector must be in this sound, and each stretch of speech that it then finds; none for noise."""
    sure, doubtful = _stretches(samples, _SURE), _stretches(samples, _DOUBTFUL)
    if sure and _seconds(sure) < _SURE_SHARE * _seconds(doubtful):
        return _DOUBTFUL, doubtful
    return _SURE, sure


def speech_stretches(samples: Samples) -> list[Stretch]:
    """Start and end seconds of each stretch of speech, without padding; empty for silence and noise."""
    return speech(samples)[1]


def _stretches(samples: Samples, threshold: float) -> list[Stretch]:
    options = VadOptions(threshold=threshold, min_silence_duration_ms=300, min_speech_duration_ms=120, speech_pad_ms=0)
    found = get_speech_timestamps(samples, options, sampling_rate=SAMPLE_RATE)
    return [(item["start"] / SAMPLE_RATE, item["end"] / SAMPLE_RATE) for item in found]


def _seconds(stretches: Sequence[Stretch]) -> float:
    return sum(end - start for start, end in stretches)


def cut_off(samples: Samples, stretches: Sequence[Stretch]) -> list[Flag]:
    """Flags of kind SOUND when someone is speaking, loudly enough, at the very first or last moment of the sound."""
    if not stretches:
        return []
    seconds = len(samples) / SAMPLE_RATE
    speech = _loudness(np.concatenate([_slice(samples, start, end) for start, end in stretches]))
    flags = []
    if stretches[0][0] < _EDGE_REACH_S and _loudness(_slice(samples, 0, _EDGE_SECONDS)) > _EDGE_SHARE * speech:
        flags.append(_flag("the recording starts in the middle of speech: its first words may be missing", 0.0))
    last = _slice(samples, seconds - _EDGE_SECONDS, seconds)
    if seconds - stretches[-1][1] < _EDGE_REACH_S and _loudness(last) > _EDGE_SHARE * speech:
        flags.append(_flag("the recording stops in the middle of speech: its last words may be missing", seconds))
    return flags


def passed_over(stretches: Sequence[Stretch], covered: Sequence[Stretch]) -> list[Flag]:
    """Flags of kind UNCLEAR_SPEECH for 1.5 s or more of speech with no word: ``covered`` are the words' seconds."""
    flags = []
    for start, end in stretches:
        position = start
        inside = sorted((first, last) for first, last in covered if first < end and last > start)
        for first, last in [*inside, (end, end)]:
            if first - position >= _PASSED_OVER_S:
                flags.append(_passed_over(position, first))
            position = max(position, last)
    return flags


def _passed_over(start: float, end: float) -> Flag:
    reason = "someone seems to speak here, but no words were made out"
    return Flag(kind=FlagKind.UNCLEAR_SPEECH, reason=reason, start=round(start, 2), end=round(end, 2))


def _flag(reason: str, at: float) -> Flag:
    return Flag(kind=FlagKind.SOUND, reason=reason, start=round(at, 2), end=round(at, 2))


def _slice(samples: Samples, start_s: float, end_s: float) -> Samples:
    return samples[max(0, int(start_s * SAMPLE_RATE)) : int(end_s * SAMPLE_RATE)]


def _loudness(samples: Samples) -> float:
    """Root mean square; 0 for no samples."""
    return float(np.sqrt(np.mean(np.square(samples, dtype=np.float64)))) if len(samples) else 0.0
