"""Readings as the network takes them: the sound's spectrum, what stands before, and what is to be written."""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from functools import lru_cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from faster_whisper.feature_extractor import FeatureExtractor
from numpy.typing import NDArray

from pipeline.hearing.recognise import cores
from tests.bench.adapter.course import Course
from tests.bench.adapter.din import din
from tests.bench.adapter.disturbing import disturbed
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.saying import path_of
from tests.bench.adapter.voices import Reading
from tests.bench.adapter.windows import REAL, SEED
from tests.bench.hearing.conditions import read_wav
from tests.bench.hearing.noises import RATE, Sound

IGNORED = -100  # places where it does not matter what is written
_BANDS, _FRAMES, _LEAST_FRAMES, _SPARE_FRAMES = 80, 3000, 1000, 100
_MOST_TOKENS = 448
_WHOLE_SHARE = 0.3  # of the batches fill half a minute; the others are cut short, as hearing cuts them
_NOBODY_SHARE = 0.04  # of the windows are noise in which nothing is said
_NOBODY_S, _NOBODY_LOUD = (2, 25), (0.002, 0.2)
_DEAF_SHARE, _DEAF_BANDS = 0.3, (2, 12)  # spectra with some bands of one level
_PROMPTS = 3  # of a reading
_WITHOUT = 1  # the one of these that a real reading does not get
_SAME_SEEDS = 1_000_000  # those of other talk begin here


class Batch(NamedTuple):
    """Some readings side by side."""

    features: NDArray[np.float32]  # (reading, band, frame of 10 ms)
    tokens: NDArray[np.int64]  # (reading, place)
    targets: NDArray[np.int64]  # (reading, place): the piece behind each, or IGNORED


class Lesson(NamedTuple):
    """What is learnt from at one step: readings to be written, and other talk to be heard as the bare weights do."""

    learnt: Batch
    same: Batch | None


class Batches:
    """Makes batches of readings whose sound lies below ``sound``."""

    def __init__(self, prompts: Prompts, sound: Path, talkers: Sequence[Reading]) -> None:
        """``talkers`` are the readings that chatter in the noise."""
        self._prompts, self._sound, self._talkers = prompts, sound, list(talkers)
        self._spectrum = FeatureExtractor(feature_size=_BANDS)
        self._prompt = lru_cache(maxsize=None)(self._drawn_prompt)

    def plain(self, said: Sequence[Reading], seed: int) -> Batch:
        """The readings as they were spoken."""
        features = [self._spectrum(read_wav(path_of(reading, self._sound))) for reading in said]
        return self._batch(features, [self._line(reading, 0, spoken=True) for reading in said], seed)

    def disturbed(self, said: Sequence[Reading], seed: int) -> Batch:
        """The readings disturbed, each with one of three prompts, nobody speaking in a few."""
        drawn = np.random.default_rng([SEED, seed])
        features, lines = [], []
        for reading in said:
            spoken = drawn.random() >= _NOBODY_SHARE
            sound = self._disturbed(reading, drawn) if spoken else self._nobody(drawn)
            features.append(_deafened(self._spectrum(sound), drawn))
            lines.append(self._line(reading, int(drawn.integers(_PROMPTS)), spoken))
        return self._batch(features, lines, seed)

    def learning(self, said: Sequence[Reading], same: Sequence[Reading], course: Course) -> Iterator[Lesson]:
        """A lesson a step, made ahead in threads; the same ones however many these are. ``same`` may be empty."""
        ahead: list[Future[Lesson]] = []
        turns = in_turns(said, course.readings, course.steps)
        same_turns = in_turns(same, course.same_readings if same else 0, course.steps)
        with ThreadPoolExecutor(cores()) as pool:
            for step, (chosen, others) in enumerate(zip(turns, same_turns, strict=True), 1):
                ahead.append(pool.submit(self._lesson, chosen, others, step))
                if len(ahead) > 2 * cores():
                    yield ahead.pop(0).result()
            for lesson in ahead:
                yield lesson.result()

    def _lesson(self, chosen: Sequence[Reading], others: Sequence[Reading], step: int) -> Lesson:
        same = self.disturbed(others, _SAME_SEEDS + step) if others else None
        return Lesson(self.disturbed(chosen, step), same)

    def _disturbed(self, reading: Reading, drawn: np.random.Generator) -> Sound:
        return disturbed(read_wav(path_of(reading, self._sound)), drawn, lambda: self._talker(drawn))

    def _nobody(self, drawn: np.random.Generator) -> Sound:
        length = round(RATE * drawn.uniform(*_NOBODY_S))
        return np.asarray(din(length, drawn, lambda: self._talker(drawn)) * drawn.uniform(*_NOBODY_LOUD))

    def _talker(self, drawn: np.random.Generator) -> Sound:
        return read_wav(path_of(self._talkers[int(drawn.integers(len(self._talkers)))], self._sound))

    def _drawn_prompt(self, reading: Reading, number: int) -> tuple[int, ...]:
        if reading.window.kind == REAL and number == _WITHOUT:
            return ()
        return tuple(self._prompts.prompt(reading.window, random.Random(f"prompt {number} {reading.key}")))

    def _line(self, reading: Reading, number: int, spoken: bool) -> tuple[list[int], list[int]]:
        """What stands before the words, and the words with the end mark; the end mark alone when nobody speaks."""
        words = self._prompts.encode(reading.window.text) if spoken else []
        return self._prompts.head(self._prompt(reading, number)), [*words, self._prompts.end]

    def _batch(
        self, features: Sequence[NDArray[np.float32]], lines: Sequence[tuple[list[int], list[int]]], seed: int
    ) -> Batch:
        frames = frames_of([spectrum.shape[1] for spectrum in features], random.Random(f"{SEED} {seed}"))
        side_by_side = np.zeros((len(features), _BANDS, frames), np.float32)
        for row, spectrum in zip(side_by_side, features, strict=True):
            row[:, : spectrum.shape[1]] = spectrum[:, :frames]
        return Batch(side_by_side, *written(lines, self._prompts.end))


def written(lines: Sequence[tuple[list[int], list[int]]], end: int) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Tokens and targets of what stands before and what is to be written, filled up behind, 448 places at most.

    Each target is the token behind it; of what stands before nothing is to be learnt.
    """
    longest = min(_MOST_TOKENS, max(len(before) + len(words) - 1 for before, words in lines))
    tokens = np.full((len(lines), longest), end, np.int64)
    targets = np.full((len(lines), longest), IGNORED, np.int64)
    for row, (before, words) in enumerate(lines):
        line = [*before, *words[:-1]][:longest]
        wanted = [*[IGNORED] * (len(before) - 1), *words][:longest]
        tokens[row, : len(line)], targets[row, : len(wanted)] = line, wanted
    return tokens, targets


def frames_of(lengths: Sequence[int], drawn: random.Random) -> int:
    """How many frames a batch has: half a minute, or the longest and a second, ten seconds at least; an even number."""
    if drawn.random() < _WHOLE_SHARE:
        return _FRAMES
    return min(_FRAMES, max(_LEAST_FRAMES, max(lengths) + _SPARE_FRAMES) // 2 * 2)


def in_turns(said: Sequence[Reading], size: int, steps: int) -> Iterator[list[Reading]]:
    """``steps`` handfuls of ``size``: all readings in a drawn order, then all in another one."""
    drawn = random.Random(SEED)
    left: list[Reading] = []
    for _ in range(steps):
        while len(left) < size:
            left += drawn.sample(list(said), len(said))
        yield left[:size]
        left = left[size:]


def _deafened(spectrum: NDArray[np.float32], drawn: np.random.Generator) -> NDArray[np.float32]:
    """Sometimes some bands at the level of all (after Park and others 2019, SpecAugment, arXiv 1904.08779)."""
    if drawn.random() < _DEAF_SHARE:
        width = int(drawn.integers(*_DEAF_BANDS))
        lowest = int(drawn.integers(_BANDS - width))
        spectrum[lowest : lowest + width] = spectrum.mean()
    return spectrum
