"""Why a memo was read as it was: every span with its rules, what was said and not kept, and what each cue changed.

What a cue reached is found by experiment, not by retelling the rules: the memo is read once more with that cue passed
over, and the difference is what the cue did.
"""

from __future__ import annotations

from collections.abc import Sequence
from copy import copy, deepcopy
from dataclasses import dataclass
from datetime import date

from spacy.tokens import Doc

from pipeline.reading.mentions import Mention, MentionFinder
from pipeline.reading.reader import Reader
from pipeline.reading.settling import settle
from pipeline.reading.talk import Draft, Talk
from pipeline.record import Fact, RosterHorse, Transcript, Visit

# Classes of words that say how something is meant, and what a cue of each is called.
CUE_CLASSES = {
    "denials": "denial",
    "doubts": "doubt",
    "times": "time",
    "plans": "plan",
    "resolutions": "gone",
    "taking_back": "repair",
    "asides": "aside",
}
_ANY_DAY = date(2000, 1, 1)  # no rule looks at the day

FactKey = tuple[str | None, str, str | float, str | None]
Said = tuple[str, str | None, str | None]  # status, zone, severity


@dataclass(frozen=True)
class SpanRow:
    """One thing read from the characters ``span`` of the transcript; ``why`` says why it was not kept, if so."""

    words: str
    span: tuple[int, int]
    horse: str | None
    foot: str | None
    slot: str
    value: str | float
    zone: str | None
    severity: str | None
    status: str
    confidence: float | None
    match: str
    rules: tuple[str, ...]
    why: str | None = None


@dataclass(frozen=True)
class Effect:
    """A fact that is not what it would be without the cue; None is no such fact. Each side is status, zone, severity."""

    foot: str | None
    slot: str
    value: str | float
    now: Said | None
    without: Said | None


@dataclass(frozen=True)
class CueRow:
    """A cue, its canonical name in its class ("before", "after", "pseudo" …), and all that it changed."""

    words: str
    span: tuple[int, int]
    kind: str
    name: str
    effects: tuple[Effect, ...]


@dataclass(frozen=True)
class Explanation:
    """Everything in the order said."""

    kept: tuple[SpanRow, ...]
    dropped: tuple[SpanRow, ...]
    cues: tuple[CueRow, ...]


def explain(
    reader: Reader, transcript: Transcript, roster: Sequence[RosterHorse], visits: Sequence[Visit]
) -> Explanation:
    """Explain ``visits``, which ``reader`` read from this transcript with this roster (and which may be judged)."""
    ear = _Ear(reader.finder_of(transcript))
    talk, _ = _hearing_with(reader, ear).parse(transcript, roster)
    kept = [_kept_row(visit.horse, fact) for visit in visits for fact in visit.facts]
    dropped = [*_dropped_rows(transcript, talk, kept), *_taken_back(transcript, talk)]
    cues = [
        _cue_row(reader, transcript, roster, visits, talk.doc, mention, name)
        for mention in ear.heard
        for name in CUE_CLASSES
        if name in mention.readings
    ]
    return Explanation(tuple(sorted(kept, key=_place)), tuple(sorted(dropped, key=_place)), tuple(cues))
