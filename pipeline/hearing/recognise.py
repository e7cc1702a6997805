"""A memo file becomes a transcript: every word with its place in the text, its seconds and its probability."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from pathlib import Path
from typing import Any

from faster_whisper import WhisperModel

from pipeline.errors import NoSpeechError, WeightsError
from pipeline.hearing.adapter import adapted
from pipeline.hearing.bias import MANNER, PROMPT_TOKENS, bias_forms, bias_prompt, in_manner
from pipeline.hearing.decode import Samples, Sound, decode
from pipeline.hearing.edges import cut_off, passed_over, speech
from pipeline.hearing.intake import Intake, take_in
from pipeline.hearing.language import not_english
from pipeline.hearing.listening import ListeningPipeline
from pipeline.hearing.pieces import mended
from pipeline.hearing.recorded import RecordedAt, recorded_at
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.sieve import Segment, SpokenWord, sieve, unsure_stretches
from pipeline.hearing.telling import TellingPipeline, english_of
from pipeline.hearing.verified import Replacement
from pipeline.hearing.weights import takes_adapter, weights_folder, weights_version
from pipeline.hearing.wordings import Wordings
from pipeline.record import Flag, Memo, Transcript, Word
from pipeline.vocabulary import Vocabulary

_BATCH = 4  # stretches decoded together; more needs more memory and gains little on a few cores


@dataclass(frozen=True)
class Heard:
    """What was heard in one memo; its file is only read, never changed."""

    memo: Memo
    transcript: Transcript
    flags: list[Flag] = field(default_factory=list)


_PAUSE_MS = 160  # a silence that ends a stretch


class Recogniser:
    """Speech recognition behind one class; the model is loaded with the first memo, once."""

    def __init__(self, settings: HearingSettings, vocabulary: Vocabulary) -> None:
        self._settings = settings
        self._vocabulary = vocabulary
        self._known: tuple[str, ...] = ()

    @property
    def version(self) -> str:
        """The name and digest of the weights; raises WeightsError."""
        return weights_version(self._settings.model, self._settings.allow_download, self._settings.adapter)

    def learn(self, vocabulary: Vocabulary) -> None:
        """Listen for these words from the next memo on; the weights stay loaded."""
        self._vocabulary = vocabulary

    def know(self, words: Iterable[str]) -> None:
        """Leave these words (places, owners) as they are heard: they are no misheard words of the trade."""
        self._known = tuple(words)

    def hear(self, path: Path | str, names: Sequence[str] = (), recorded: date | None = None) -> Heard:
        """Check, decode and recognise one memo. ``names`` are the roster's; ``recorded`` overrides every other date.

        Raises the errors of ``take_in`` and ``decode``, NoSpeechError for silence and noise, and WeightsError.
        """
        with take_in(path) as memo:
            sound = decode(memo, self._settings.max_minutes)
            when = recorded_at(memo.path.name, sound.metadata, memo.modified_at, recorded)
        threshold, stretches = speech(sound.samples)
        if self._settings.vad and not stretches:
            raise NoSpeechError(f"Nobody speaks in {memo.path.name}: it is silence or noise.")
        prompt = self._prompt(names)
        segments = self._segments(sound.samples, prompt, names, threshold)
        if not segments:
            raise NoSpeechError(f"No words could be heard in {memo.path.name}.")
        kept, dropped = sieve(segments, prompt)
        transcript = transcript_of(kept)
        flags = [*sound.flags, *when.flags, *cut_off(sound.samples, stretches), *dropped]
        covered = [(word.start_s, word.end_s) for segment in segments for word in segment.words]
        flags += passed_over(stretches, covered)
        flags += not_english(kept, transcript) or unsure_stretches(transcript.text, transcript.words)
        return Heard(_memo(memo, sound, when), transcript, flags)

    @cached_property
    def _model(self) -> Any:
        settings = self._settings
        source = weights_folder(settings.model, settings.allow_download)
        try:
            model = WhisperModel(
                source,
                files=adapted(Path(source)) if settings.adapter and takes_adapter(settings.model) else None,
                device=settings.device,
                compute_type=settings.compute_type,
                cpu_threads=settings.threads or cores(),
                local_files_only=not settings.allow_download,
            )
            model.hf_tokenizer = mended(model.hf_tokenizer)
            return model
        except (RuntimeError, ValueError, OSError) as error:
            raise WeightsError(
                f"The recogniser cannot be started with the model {settings.model!r}: {error}."
            ) from error

    def _prompt(self, names: Sequence[str]) -> str:
        if not self._settings.bias:
            return ""
        room = PROMPT_TOKENS - self._count_tokens(MANNER)
        return in_manner(bias_prompt(bias_forms(self._vocabulary), names, self._count_tokens, room))

    def _count_tokens(self, text: str) -> int:
        return len(self._model.hf_tokenizer.encode(" " + text, add_special_tokens=False).ids)

    def _segments(self, samples: Samples, prompt: str, names: Sequence[str], threshold: float) -> list[Segment]:
        """Recognise stretch by stretch between silences, so that no window ends inside a word.

        Half-minute windows that follow the recogniser's own time stamps were measured to lose whole sentences as soon
        as there is a prompt; stretches between silences, decoded without time stamps, lost none.
        """
        options: dict[str, Any] = {
            "language": "en",
            "beam_size": self._settings.beam_size,
            "temperature": 0.0,  # the same memo gives the same words
            "hotwords": prompt or None,
            "word_timestamps": True,
            "condition_on_previous_text": False,
        }
        if not self._settings.vad:
            # a window that the recogniser takes for silence would else be skipped without a trace
            found, _ = self._model.transcribe(samples, no_speech_threshold=None, **options)
            english = english_of(self._model, samples)
            return [_segment(item, english=english) for item in found if item.words]
        pauses = {"threshold": threshold, "min_silence_duration_ms": _PAUSE_MS}
        if not self._settings.verify:
            plain = TellingPipeline(self._model)
            found, _ = plain.transcribe(samples, batch_size=_BATCH, vad_parameters=pauses, **options)
            stretches = list(found)
            told = zip(stretches, plain.english, strict=True)
            return [_segment(item, english=english) for item, english in told if item.words]
        pipeline = ListeningPipeline(self._model, Wordings(self._vocabulary, names, self._known))
        found, _ = pipeline.transcribe(samples, batch_size=_BATCH, vad_parameters=pauses, **options)
        stretches = list(found)
        triples = zip(stretches, pipeline.replacements, pipeline.english, strict=True)
        return [_segment(item, replacements, english) for item, replacements, english in triples if item.words]


def cores() -> int:
    """How many cores this process may use, which may be fewer than the machine has."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def transcript_of(segments: Iterable[Segment]) -> Transcript:
    """Join the words of ``segments`` with single spaces, each with its half-open slice of the text."""
    text = ""
    words = []
    for spoken in (word for segment in segments for word in segment.words):
        bare = spoken.text.strip()
        if not bare:
            continue
        if text and spoken.text[0].isspace():
            text += " "
        start, text = len(text), text + bare
        words.append(
            Word(
                text=bare,
                start=start,
                end=len(text),
                start_s=spoken.start_s,
                end_s=max(spoken.start_s, spoken.end_s),
                probability=spoken.probability,
                heard=spoken.heard,
                support=spoken.support,
            )
        )
    return Transcript(text=text, words=words)


def _segment(item: Any, replacements: Sequence[Replacement] = (), english: float | None = None) -> Segment:
    words = []
    at = 0
    for word in item.words:
        start, at = at, at + len(word.word)
        instead = next((r for r in replacements if r.start < at and start < r.end), None)
        words.append(
            SpokenWord(
                word.word,
                round(float(word.start), 2),
                round(float(word.end), 2),
                round(float(word.probability), 4),
                instead.heard if instead else None,
                instead.support if instead else None,
            )
        )
    return Segment(
        words=tuple(words),
        start_s=float(item.start),
        end_s=float(item.end),
        avg_logprob=float(item.avg_logprob),
        no_speech_prob=float(item.no_speech_prob),
        compression_ratio=float(item.compression_ratio),
        english=english,
    )


def _memo(memo: Intake, sound: Sound, when: RecordedAt) -> Memo:
    return Memo(
        path=str(memo.path),
        sha256=memo.sha256,
        seconds=round(sound.seconds, 2),
        recorded_at=when.moment,
        recorded_from=when.source,
        container=memo.container.name,
    )
