"""Facts and visits made by hand, for tests of judging."""

from __future__ import annotations

from datetime import date

from pipeline.judging import judge
from pipeline.record import Fact, HorseMatch, Transcript, Visit, Word


def fact(slot: str, value: str | float, foot: str | None = "LF", **more: object) -> Fact:
    """A fact with the given fields; present and on the left fore unless said otherwise."""
    return Fact.model_validate({"foot": foot, "slot": slot, "value": value, **more})


def visit(*facts: Fact) -> Visit:
    """A visit of a known horse."""
    return Visit(horse="Marigold", horse_match=HorseMatch.KNOWN, date=date(2026, 4, 14), facts=list(facts))


def judged(*facts: Fact, transcript: Transcript | None = None) -> Visit:
    """The visit after judging; typed text unless a transcript is given."""
    (seen,) = judge([visit(*facts)], transcript or Transcript(text=""))
    return seen


def heard(*words: tuple[str, float]) -> Transcript:
    """A transcript of words with their probabilities, half a second a word."""
    text = " ".join(word for word, _ in words)
    made, at = [], 0
    for number, (word, probability) in enumerate(words):
        seconds = number / 2
        made.append(
            Word(
                text=word,
                start=at,
                end=at + len(word),
                start_s=seconds,
                end_s=seconds + 0.4,
                probability=probability,
            )
        )
        at += len(word) + 1
    return Transcript(text=text, words=made)
