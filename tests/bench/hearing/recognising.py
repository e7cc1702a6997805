"""Recognisers side by side, each memo heard once: what was heard is kept beside the sound.

A transcript is kept under the hash of the sound, of the configuration with its words and names, of the weights and of
the code that hears, so that scoring again is instant and no change of any of them is overlooked.
"""

from __future__ import annotations

import json
import os
import time
from collections.abc import Sequence
from functools import cached_property
from hashlib import sha256
from importlib.metadata import version
from pathlib import Path
from typing import Any, Literal, Protocol

from pydantic import BaseModel, ConfigDict

import pipeline.hearing
from pipeline.errors import NoSpeechError
from pipeline.hearing.recognise import Heard, Recogniser, transcript_of
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.sieve import Segment, SpokenWord
from pipeline.hearing.weights import weights_folder
from pipeline.record import Flag, Memo, Transcript
from pipeline.vocabulary import Vocabulary
from tests.bench.hearing.conditions import seconds_of

PLAIN, UNBIASED, UNVERIFIED, UNADAPTED, OURS = "plain", "unbiased", "unverified", "unadapted", "ours"
CONFIGURATIONS = (PLAIN, UNBIASED, UNVERIFIED, UNADAPTED, OURS)
Device = Literal["cpu", "cuda"]
DEVICES: tuple[Device, ...] = ("cpu", "cuda")
_HEARING = Path(pipeline.hearing.__file__).resolve().parent


class Hearing(BaseModel):
    """What a configuration heard in one file; no words when nobody speaks.

    ``work_s`` is the core seconds that it took, None on a graphics card, whose work is not the processor's.
    """

    model_config = ConfigDict(frozen=True)

    ear: str
    memo: Memo
    transcript: Transcript
    flags: list[Flag]
    work_s: float | None


class Ear(Protocol):
    """One configuration of the recogniser."""

    name: str
    device: Device

    def identity(self, names: Sequence[str]) -> str:
        """All that decides what is heard, apart from the sound."""

    def load(self) -> None:
        """Load the weights, so that their time is not counted as hearing."""

    def hear(self, path: Path, names: Sequence[str]) -> Heard:
        """The words of a file; none when nobody speaks."""


class PlainEar:
    """faster-whisper as it comes, all its defaults, but English, int8 and words with their times."""

    name = PLAIN

    def __init__(self, threads: int, device: Device = "cpu") -> None:
        self.device = device
        self._threads = threads

    def identity(self, names: Sequence[str]) -> str:
        """The version of the library, and the device unless it is the processor."""
        told = f"faster-whisper {version('faster-whisper')} ctranslate2 {version('ctranslate2')}"
        return told if self.device == "cpu" else f"{told} {self.device}"

    @cached_property
    def _model(self) -> Any:
        from faster_whisper import WhisperModel

        return WhisperModel(weights_folder("base"), device=self.device, compute_type="int8", cpu_threads=self._threads)

    def load(self) -> None:
        """Load the weights."""
        _ = self._model

    def hear(self, path: Path, names: Sequence[str]) -> Heard:
        """The words, each with its seconds and probability."""
        import ctranslate2

        ctranslate2.set_random_seed(0)  # unsure windows are decoded again by chance
        found, _ = self._model.transcribe(str(path), language="en", word_timestamps=True)
        return Heard(memo_of(path), transcript_of([_segment(item) for item in found]))


class OwnEar:
    """This project's recogniser with its settings, with the trade's words and the names as bias or without."""

    def __init__(self, name: str, settings: HearingSettings, vocabulary: Vocabulary) -> None:
        self.name = name
        self.device: Device = "cuda" if settings.device == "cuda" else "cpu"
        self._settings = settings
        self._vocabulary = vocabulary
        self._recogniser = _Loadable(settings, vocabulary)

    def identity(self, names: Sequence[str]) -> str:
        """Settings, code, weights, and the names and the vocabulary where they are listened for."""
        settings = self._settings.model_dump(exclude={"threads"})
        told = [list(names), self._vocabulary.version] if self._settings.bias or self._settings.verify else []
        return json.dumps([settings, told, hearing_code(), self._recogniser.version])

    def load(self) -> None:
        """Load the weights."""
        self._recogniser.load()

    def hear(self, path: Path, names: Sequence[str]) -> Heard:
        """The words, none for silence and noise."""
        try:
            return self._recogniser.hear(path, names)
        except NoSpeechError:
            return Heard(memo_of(path), Transcript(text=""))


class _Loadable(Recogniser):
    """The recogniser of this project, whose weights can be loaded before the first memo."""

    def load(self) -> None:
        """Load the weights."""
        _ = self._model


def _segment(item: Any) -> Segment:
    words = tuple(SpokenWord(w.word, float(w.start), float(w.end), float(w.probability)) for w in item.words)
    return Segment(words, float(item.start), float(item.end), item.avg_logprob, item.no_speech_prob,
                   item.compression_ratio)  # fmt: skip


def hearing_code() -> str:
    """A digest of the code that hears."""
    digest = sha256()
    for path in sorted(_HEARING.glob("*.py")):
        digest.update(path.name.encode() + path.read_bytes())
    return digest.hexdigest()[:16]


def ears(names: Sequence[str], vocabulary: Vocabulary, threads: int, device: Device = "cpu") -> list[Ear]:
    """The configurations by name; ``threads`` changes the time alone."""
    own = HearingSettings(threads=threads, device=device)
    bare = own.model_copy(update={"adapter": False})
    known: dict[str, Ear] = {
        PLAIN: PlainEar(threads, device),
        UNBIASED: OwnEar(UNBIASED, bare.model_copy(update={"bias": False, "verify": False}), vocabulary),
        UNVERIFIED: OwnEar(UNVERIFIED, bare.model_copy(update={"verify": False}), vocabulary),
        UNADAPTED: OwnEar(UNADAPTED, bare, vocabulary),
        OURS: OwnEar(OURS, own, vocabulary),
    }
    return [known[name] for name in names]


class Listener:
    """Hears through an ear, or remembers what that ear heard before."""

    def __init__(self, ear: Ear, kept: Path) -> None:
        self.ear = ear
        self._kept = kept

    def hear(self, path: Path, names: Sequence[str]) -> Hearing:
        """What the ear hears in the file; the work is that of the time when it was heard."""
        key = sha256(path.read_bytes()).hexdigest() + self.ear.name + self.ear.identity(names)
        place = self._kept / f"{sha256(key.encode()).hexdigest()[:32]}.json"
        if place.exists():
            return Hearing.model_validate_json(place.read_text(encoding="utf-8"))
        self.ear.load()
        start = time.process_time()
        heard = self.ear.hear(path, names)
        work_s = round(time.process_time() - start, 3) if self.ear.device == "cpu" else None
        told = Hearing(ear=self.ear.name, memo=heard.memo, transcript=heard.transcript, flags=heard.flags,
                       work_s=work_s)  # fmt: skip
        self._kept.mkdir(parents=True, exist_ok=True)
        part = place.with_suffix(f".{os.getpid()}.part")
        part.write_text(told.model_dump_json(), encoding="utf-8")
        part.replace(place)
        return told


def memo_of(path: Path) -> Memo:
    """A WAV file as a memo, undated."""
    return Memo(path=str(path), sha256=sha256(path.read_bytes()).hexdigest(), seconds=round(seconds_of(path), 3))
