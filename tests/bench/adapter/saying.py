"""The readings' sound on disk: spoken a few sentences at a time, joined with pauses; what is there is kept."""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import numpy as np

from tests.bench.adapter.disturbing import faster
from tests.bench.adapter.voices import Reading
from tests.bench.hearing.conditions import read_wav, write_wav
from tests.bench.hearing.noises import RATE, Sound
from tests.bench.hearing.speaking import BRITISH, Spoken, needed, speak

LONGEST_S = 29.5  # the recogniser hears half a minute at once
_TOGETHER = (1, 1, 2, 3)  # sentences that keep the voice's own pauses between them
_PAUSES_S = (0.05, 0.6)
_AUDIBLE = 0.01  # of the loudest sample; quieter ends are cut off
_BEFORE, _BEHIND = RATE // 20, RATE // 10  # samples that are left there
_PEAK = 0.7
_AT_ONCE = 40  # readings between two that are whole on the disk


def path_of(reading: Reading, sound: Path) -> Path:
    """Where a reading lies below the folder ``sound``."""
    return sound / "adapter" / f"{reading.key}.wav"


def say(said: Sequence[Reading], sound: Path, voices: Path | None, processes: int = 1) -> None:
    """Speak the readings that are not there yet, in ``processes`` at once.

    Raises ClinchbookError when some are missing and there are no voices, or these cannot speak.
    """
    missing = [reading for reading in said if not path_of(reading, sound).exists()]
    if missing:
        _say_missing(missing, sound, needed(voices, sound / "adapter"), processes)


def _say_missing(missing: Sequence[Reading], sound: Path, voices: Path, processes: int) -> None:
    # Voice by voice, so that each process loads few of them.
    by_voice = sorted(missing, key=lambda reading: (reading.voice, reading.key))
    slices = [by_voice[at : at + _AT_ONCE] for at in range(0, len(by_voice), _AT_ONCE)]
    with ThreadPoolExecutor(processes) as pool:
        list(pool.map(lambda some: _say_some(some, sound, voices), slices))


def _say_some(some: Sequence[Reading], sound: Path, voices: Path) -> None:
    parts = {reading: list(pieces(reading, sound)) for reading in some}
    speak([piece for pieces_of in parts.values() for piece in pieces_of], voices)
    for reading, spoken in parts.items():
        said = [faster(read_wav(piece.path), reading.depth) for piece in spoken]
        whole = joined(said, random.Random(f"pauses {reading.key}"))
        write_wav(path_of(reading, sound), whole, RATE)
        for piece in spoken:
            piece.path.unlink()


def pieces(reading: Reading, sound: Path) -> Iterator[Spoken]:
    """A reading in parts of one to three sentences, each with a file of its own."""
    drawn = random.Random(f"pieces {reading.key}")
    left = list(reading.window.sentences)
    number = 0
    while left:
        count = drawn.choice(_TOGETHER)
        path = path_of(reading, sound).with_name(f"{reading.key}-{number}.wav")
        voice = reading.voice + BRITISH if reading.british else reading.voice
        yield Spoken(" ".join(left[:count]), voice, path, reading.speed / reading.depth)
        left, number = left[count:], number + 1


def joined(parts: Sequence[Sound], drawn: random.Random) -> Sound:
    """The parts one behind the other, each with its silent ends cut off and a pause behind it."""
    whole = [sound for part in parts for sound in (trimmed(part), np.zeros(round(RATE * drawn.uniform(*_PAUSES_S))))]
    together = np.concatenate(whole)
    return np.asarray(together * (_PEAK / max(float(np.abs(together).max()), 1e-6)))


def trimmed(sound: Sound) -> Sound:
    """Without the silence before and behind, but for a twentieth and a tenth of a second."""
    loud = np.flatnonzero(np.abs(sound) > _AUDIBLE * np.abs(sound).max(initial=0.0))
    return sound[max(0, loud[0] - _BEFORE) : loud[-1] + _BEHIND] if len(loud) else sound[:0]
