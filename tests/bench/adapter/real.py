"""Real prompts: what a professional speaker says, to be heard with the adapter as without it.

Nobody wrote down what is said in them: their text is what the bare weights write, shown no prompt.
"""

from __future__ import annotations

import random
import wave
from collections.abc import Callable, Sequence
from functools import cache
from hashlib import sha256
from pathlib import Path

import av
import numpy as np
from faster_whisper import WhisperModel
from faster_whisper.audio import decode_audio

from pipeline.errors import ClinchbookError
from pipeline.hearing.recognise import cores
from pipeline.hearing.weights import weights_folder
from tests.bench.adapter.saying import path_of
from tests.bench.adapter.voices import Reading
from tests.bench.adapter.windows import REAL, SEED, Window, sentences_of
from tests.bench.hearing.conditions import seconds_of, write_wav
from tests.bench.hearing.noises import RATE, Sound

_LENGTHS_S = (1.2, 25)
_BEAM = 5

Writer = Callable[[Sound], str]  # writes what is said in sound of 16 kHz


def bare_weights() -> Writer:
    """The base weights without the adapter, shown no prompt."""
    model = WhisperModel(weights_folder(), device="cpu", compute_type="int8", cpu_threads=cores())

    def write(heard: Sound) -> str:
        found, _ = model.transcribe(
            heard.astype(np.float32),
            language="en",
            beam_size=_BEAM,
            temperature=0.0,
            condition_on_previous_text=False,
        )
        return " ".join(segment.text.strip() for segment in found)

    return write


def real_readings(
    folder: Path,
    sound: Path,
    rosters: Sequence[tuple[str, ...]],
    limit: int | None = None,
    writer: Callable[[], Writer] = bare_weights,
) -> list[Reading]:
    """The prompts below ``folder`` as readings, ``limit`` at most, each with a drawn roster; without those of no words.

    Their sound is kept below ``sound``, where that of the readings lies, and their texts beside it, so that each is
    heard once. ``writer`` loads what writes them. Raises ClinchbookError when a WAV file cannot be read, or none is of
    a fitting length.
    """
    found = {sha256(path.read_bytes()).hexdigest()[:16]: path for path in sorted(folder.rglob("*.wav")) if _fits(path)}
    if not found:
        raise ClinchbookError(f"There are no WAV files of {_LENGTHS_S[0]} to {_LENGTHS_S[1]} s in {folder}.")
    load = cache(writer)  # only when there is something to write
    real = []
    for take in sorted(found)[:limit]:
        text = _text(take, found[take], sound, load)
        roster = random.Random(f"{SEED} {take}").choice(rosters)
        reading = Reading(Window(REAL, sentences_of(text), roster), REAL, 1.0, take)
        if text and not path_of(reading, sound).exists():
            write_wav(path_of(reading, sound), _sound_of(found[take]), RATE)
        real += [reading] if text else []
    return real


def _text(take: str, path: Path, sound: Path, load: Callable[[], Writer]) -> str:
    """What is said, written once and kept."""
    place = sound / "adapter" / "real" / f"{take}.txt"
    if not place.exists():
        place.parent.mkdir(parents=True, exist_ok=True)
        part = place.with_suffix(".part")
        part.write_text(load()(_sound_of(path)), encoding="utf-8")
        part.replace(place)
    return place.read_text(encoding="utf-8").strip()


def _fits(path: Path) -> bool:
    try:
        return _LENGTHS_S[0] < seconds_of(path) < _LENGTHS_S[1]
    except (EOFError, OSError, wave.Error) as error:
        raise _unreadable(path) from error


def _sound_of(path: Path) -> Sound:
    """Samples at 16 kHz."""
    try:
        return np.asarray(decode_audio(str(path), sampling_rate=RATE), np.float64)
    except (av.FFmpegError, OSError) as error:
        raise _unreadable(path) from error


def _unreadable(path: Path) -> ClinchbookError:
    return ClinchbookError(f"{path} is no WAV file that can be read.")
