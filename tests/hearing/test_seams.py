"""A long memo is heard in stretches: no sample of speech is lost or heard twice where they meet, and no word either."""

from __future__ import annotations

import wave
from collections.abc import Sequence
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from faster_whisper.feature_extractor import FeatureExtractor

from pipeline.hearing.decode import SAMPLE_RATE, Samples, decode
from pipeline.hearing.intake import take_in
from pipeline.hearing.listening import ListeningPipeline
from pipeline.hearing.recognise import Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.record import Transcript
from pipeline.vocabulary import load_vocabulary
from tests.hearing.test_listening import SPOKEN

DEMO = Path(__file__).resolve().parents[2] / "demo_audio"
TEN_MINUTES = 600 * SAMPLE_RATE
LONGEST = 30 * SAMPLE_RATE  # what the recogniser hears at once


@pytest.fixture(scope="module")
def sentence() -> Samples:
    """Nine seconds of speech."""
    with take_in(SPOKEN) as memo:
        return decode(memo, 60).samples


def joined(sentence: Samples, pauses_s: Sequence[float]) -> Samples:
    """The sentence again and again, with these pauses behind each."""
    parts = [part for pause in pauses_s for part in (sentence, np.zeros(int(pause * SAMPLE_RATE), dtype=np.float32))]
    return np.concatenate(parts)


def write(path: Path, samples: Samples) -> Path:
    with wave.open(str(path), "wb") as file:
        file.setparams((1, 2, SAMPLE_RATE, 0, "NONE", "not compressed"))
        file.writeframes((samples.clip(-1, 1) * 32767).astype("<i2").tobytes())
    return path


def test_every_sample_of_speech_in_ten_minutes_is_heard_once(
    sentence: Samples, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    pauses = [0.1, 0.3, 0.7, 1.5, 4.0]
    memo = joined(sentence, pauses * (TEN_MINUTES // (len(joined(sentence, pauses))) + 1))[:TEN_MINUTES]
    quiet = np.random.default_rng(1).normal(0, 2e-4, len(memo)).astype(np.float32)  # so that no two samples are alike
    path = write(tmp_path / "long.wav", memo + quiet)
    heard: list[Samples] = []

    def features(self: Any, waveform: Samples, *rest: Any, **more: Any) -> Any:
        heard.append(waveform)
        return np.zeros((80, 101), dtype=np.float32)

    monkeypatch.setattr(FeatureExtractor, "__call__", features)
    monkeypatch.setattr(ListeningPipeline, "forward", lambda self, features, *rest: [[] for _ in features])
    recogniser = Recogniser(HearingSettings(), load_vocabulary())
    with take_in(path) as taken:
        samples = decode(taken, 60).samples
    recogniser._segments(samples, "", [], 0.5)

    assert max(map(len, heard)) <= LONGEST
    places = where(samples, heard)
    assert all(one[1] <= other[0] for one, other in pairwise(places))  # in order, none twice
    left_out = np.ones(len(samples), dtype=bool)
    for start, end in places:
        left_out[start:end] = False
    loudest = float(np.sqrt(np.mean(sentence**2)))
    assert float(np.sqrt(np.mean(samples[left_out] ** 2))) < 0.01 * loudest  # what nobody heard is silence
    assert sum(end - start for start, end in places) + int(left_out.sum()) == len(samples)


def where(samples: Samples, heard: Sequence[Samples]) -> list[tuple[int, int]]:
    """The places of the heard stretches in the memo; a stretch that leaves silence out has several."""
    places, at = [], 0
    for stretch in heard:
        position = 0
        while position < len(stretch):
            start = find(samples, stretch[position : position + 64], at)
            rest = min(len(stretch) - position, len(samples) - start)
            differs = np.flatnonzero(samples[start : start + rest] != stretch[position : position + rest])
            length = int(differs[0]) if len(differs) else rest
            places.append((start, start + length))
            position, at = position + length, start + length
    return places


def find(samples: Samples, few: Samples, at: int) -> int:
    """Where these samples stand at ``at`` or behind it; -1 would be sound that the memo does not have."""
    for start in at + np.flatnonzero(samples[at:] == few[0]):
        if np.array_equal(samples[start : start + len(few)], few):
            return int(start)
    raise AssertionError("something was heard that is not in the memo, or out of its order")


def bare(transcript: Transcript) -> list[str]:
    """The words in small letters without marks, which may differ by what stands around them."""
    return [word.text.strip(".,?!;:").lower() for word in transcript.words]


def test_no_word_is_lost_or_doubled_at_a_seam(tmp_path: Path) -> None:
    recogniser = Recogniser(HearingSettings(), load_vocabulary())
    sounds: list[Samples] = []
    parts: list[list[str]] = []
    for name in ("New Recording 44.m4a", "Recording_0093.3gp"):
        with take_in(DEMO / name) as memo:
            sounds.append(decode(memo, 60).samples)
        parts.append(bare(recogniser.hear(DEMO / name).transcript))
    told = recogniser.hear(write(tmp_path / "both.wav", np.concatenate(sounds))).transcript
    seam = len(parts[0])
    assert len(bare(told)) == seam + len(parts[1])
    assert bare(told)[seam - 6 : seam + 6] == parts[0][-6:] + parts[1][:6]
    assert all(one.start_s <= other.start_s for one, other in pairwise(told.words))
