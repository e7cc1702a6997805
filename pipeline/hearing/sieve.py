"""What a recogniser wrote that nobody said, and what it wrote without being sure: dropped or flagged, never silent."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pipeline.record import Flag, FlagKind, Word

# The recogniser's own limits for speech that it made up (Radford et al. 2022, "Robust Speech Recognition via
# Large-Scale Weak Supervision", section 4.5; the place and the figures from memory).
_LOW_LOGPROB, _NO_SPEECH, _COMPRESSION = -1.0, 0.6, 2.4
# Below this hardly a word is right, whatever the recogniser says of speech: chosen by judgement, not measured.
_HOPELESS_LOGPROB = -1.5
_UNSURE_MEAN, _UNSURE_WORDS = 0.45, 3
_LOOP_REPEATS = 4
_RECITED_WORDS = 9

# What recognisers of this kind write into silence and noise, having learnt from subtitles (from memory).
_STOCK = re.compile(
    r"(thanks?( you)?( so much| very much)?( for watching| for listening)?( everyone| guys)?|you|bye( bye)?"
    r"|(please )?(like and )?subscribe.*|i ll see you (in the )?next (time|video)|see you next time"
    r"|subtitles? by .*|captions? by .*|transcribed by .*|music|applause|silence|blank audio|www .*)"
)
_STOCK_SPEECH_PROB = 0.2


@dataclass(frozen=True)
class SpokenWord:
    """A word as the recogniser gave it; ``text`` keeps its leading space, seconds count from the memo's start.

    ``heard`` is what stood there before the sound was weighed again, ``support`` how far it bears the new word out.
    """

    text: str
    start_s: float
    end_s: float
    probability: float
    heard: str | None = None
    support: float | None = None


@dataclass(frozen=True)
class Segment:
    """A stretch of recognised speech with the recogniser's own doubts; ``english`` is the chance that it is that."""

    words: tuple[SpokenWord, ...]
    start_s: float
    end_s: float
    avg_logprob: float
    no_speech_prob: float
    compression_ratio: float
    english: float | None = None

    @property
    def text(self) -> str:
        """The words as one line."""
        return "".join(word.text for word in self.words).strip()


def sieve(segments: Iterable[Segment], prompt: str = "") -> tuple[list[Segment], list[Flag]]:
    """Split into segments to keep and flags (UNCLEAR_SPEECH, with seconds and quote) for those that were left out."""
    kept, flags = [], []
    for segment in segments:
        if not segment.text:
            continue
        doubt = made_up(segment, prompt)
        if doubt is None:
            kept.append(segment)
            continue
        reason = f"something was heard here, but {doubt}; it was left out"
        flags.append(
            Flag(
                kind=FlagKind.UNCLEAR_SPEECH,
                reason=reason,
                quote=segment.text,
                start=segment.start_s,
                end=segment.end_s,
            )
        )
    return kept, flags


def made_up(segment: Segment, prompt: str = "") -> str | None:
    """Why nobody is likely to have said this segment, in plain words; None for speech."""
    text = plain(segment.text)
    if segment.avg_logprob < _LOW_LOGPROB and segment.no_speech_prob > _NO_SPEECH:
        return "it does not sound like speech"
    if segment.avg_logprob < _HOPELESS_LOGPROB:
        return "hardly a word could be made out"
    if segment.compression_ratio > _COMPRESSION or _loops(text.split()):
        return "the same words come over and over"
    if _STOCK.fullmatch(text) and (segment.no_speech_prob > _STOCK_SPEECH_PROB or "watching" in text):
        return "it is what recognisers write into silence"
    if recites(text, plain(prompt)):
        return "it only recites the list of expected words"
    return None


def unsure_stretches(text: str, words: Sequence[Word]) -> list[Flag]:
    """Flags for every run of at least three words whose probability, averaged over three, stays below 0.45."""
    runs: list[tuple[int, int]] = []
    for first in range(len(words) - _UNSURE_WORDS + 1):
        window = words[first : first + _UNSURE_WORDS]
        if sum(word.probability for word in window) / _UNSURE_WORDS >= _UNSURE_MEAN:
            continue
        if runs and first <= runs[-1][1]:
            runs[-1] = (runs[-1][0], first + _UNSURE_WORDS)
        else:
            runs.append((first, first + _UNSURE_WORDS))
    return [_unsure(text, words[first:last]) for first, last in runs]


def repeats(text: str) -> bool:
    """Whether the same words come over and over."""
    packed = zlib.compress(text.encode())
    return len(text.encode()) > _COMPRESSION * len(packed) or _loops(plain(text).split())


def recites(text: str, prompt: str) -> bool:
    """Whether ``text`` (plain words) holds nine or more words in a row exactly as ``prompt`` has them."""
    words, padded = text.split(), f" {prompt} "
    starts = range(len(words) - _RECITED_WORDS + 1)
    return any(f" {' '.join(words[start : start + _RECITED_WORDS])} " in padded for start in starts)


def plain(text: str) -> str:
    """Lower-case words with single spaces and no punctuation."""
    return " ".join(re.findall(r"[a-z0-9]+", text.lower()))


def _loops(words: Sequence[str]) -> bool:
    """Whether a phrase of one to eight words comes at least four times in a row (a single word six times)."""
    for size in range(1, 9):
        needed = size * ((_LOOP_REPEATS + 2 if size == 1 else _LOOP_REPEATS) - 1)
        run = 0
        for index in range(size, len(words)):
            run = run + 1 if words[index] == words[index - size] else 0
            if run >= needed:
                return True
    return False


def _unsure(text: str, words: Sequence[Word]) -> Flag:
    start, end = words[0].start, words[-1].end
    return Flag(
        kind=FlagKind.UNCLEAR_SPEECH,
        reason="these words could not be made out with any certainty",
        quote=text[start:end],
        start=words[0].start_s,
        end=words[-1].end_s,
        span=(start, end),
    )
