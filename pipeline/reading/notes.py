"""What no slot takes: sentences kept word for word, and trade words that were heard but not understood."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import chain

from pipeline.reading.leftovers import leftovers
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Flag, FlagKind, Transcript


def notes_of(transcript: Transcript, talk: Talk, sentences: list[list[Segment]], told: Iterable[Draft]) -> str:
    """The sentences of one horse in which nothing, or not all, was taken into a fact."""
    read = {draft.segment for draft in told}
    kept = []
    for parts in sentences:
        if not all(segment in read or _says_nothing(talk, segment) for segment in parts):
            start, end = talk.tokens.span(parts[0].start, parts[-1].end)
            kept.append(transcript.text[start:end].strip())
    return "\n".join(kept)


def _says_nothing(talk: Talk, segment: Segment) -> bool:
    """Names, greetings and bare places say nothing that a fact does not carry."""
    marks, little = talk.tokens.marks, talk.tokens.little
    large = [i for i in range(segment.start, segment.end) if not (marks[i] or little[i])]
    told = {i for m in segment.mentions if not m.readings.keys() <= {"not_facts"} for i in m.literal} if large else ()
    return all(i in told for i in large)


def not_understood(transcript: Transcript, talk: Talk, sentences: list[list[Segment]]) -> list[Flag]:
    """Flags for numbers beside a count or size word, and testers without an answer, that became no fact."""
    flags = [_flagged(transcript, talk, *left) for left in leftovers(talk, sentences)]
    testers = talk.having("tester_heads")
    for segment in chain.from_iterable(sentences) if testers or talk.unread else ():
        for start, end, what in talk.unread:
            if segment.start <= start < segment.end:
                flags.append(_flag(transcript, talk, segment, start, end, f"Heard {what}."))
        for head in segment.having("tester_heads") if testers else ():
            sentence = talk.sentence(segment.sentence)
            if not any(d.slot == "tester" for s in sentence for d in s.drafts):
                flags.append(
                    _flag(
                        transcript,
                        talk,
                        segment,
                        head.start,
                        head.end,
                        "The hoof testers are named, but no answer to them was understood.",
                    )
                )
    return flags


def _flag(transcript: Transcript, talk: Talk, segment: Segment, start: int, end: int, reason: str) -> Flag:
    return _flagged(transcript, talk, segment.start, segment.end, reason)


def _flagged(transcript: Transcript, talk: Talk, start: int, end: int, reason: str) -> Flag:
    span = talk.tokens.span(start, end)
    seconds = transcript.seconds_of(*span)
    quote = transcript.text[span[0] : span[1]]
    return Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=reason, quote=quote, start=seconds[0], end=seconds[1], span=span)
