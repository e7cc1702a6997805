"""Whether a memo is spoken in English: a recogniser that listens for English writes English of anything it hears."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from pipeline.record import Flag, FlagKind, Transcript

if TYPE_CHECKING:
    from pipeline.hearing.sieve import Segment

NOT_ENGLISH = "This does not sound like English; nothing that was read here can be trusted."
# Of 17 English takes in five voices, nine of them in noise at 5 dB, the least was 0.89; of 10 in German, French,
# Spanish and Italian by a natural voice the most was 0.002, of 10 in seven languages by a robotic one 0.44.
_HALF = 0.5
_STRETCH_BELOW, _STRETCH_S = 0.1, 5.0  # a stretch alone is judged only where it is long, and only where it is clear


def not_english(segments: Sequence[Segment], transcript: Transcript) -> list[Flag]:
    """A flag of kind UNCLEAR_SPEECH for the whole memo, or one for every long stretch in another language."""
    told = [(segment, segment.english) for segment in segments if segment.english is not None]
    seconds = sum(_length(segment) for segment, _ in told)
    if not transcript.words or seconds <= 0:
        return []
    if sum(_length(segment) * english for segment, english in told) / seconds < _HALF:
        return [_flag(transcript, transcript.words[0].start_s, transcript.words[-1].end_s)]
    return [
        _flag(transcript, segment.words[0].start_s, segment.words[-1].end_s)
        for segment, english in told
        if english < _STRETCH_BELOW and _length(segment) >= _STRETCH_S
    ]


def _length(segment: Segment) -> float:
    return segment.end_s - segment.start_s


def _flag(transcript: Transcript, start_s: float, end_s: float) -> Flag:
    words = [word for word in transcript.words if start_s <= word.start_s <= end_s]
    span = (words[0].start, words[-1].end) if words else (0, 0)
    quote = transcript.text[span[0] : span[1]]
    return Flag(kind=FlagKind.UNCLEAR_SPEECH, reason=NOT_ENGLISH, quote=quote, start=start_s, end=end_s, span=span)
