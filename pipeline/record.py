"""The typed record: what a memo becomes. These models are the contract that every step shares.

Lengths are millimetres, angles degrees, intervals weeks, sound positions seconds from the start of the memo.
Text spans are half-open ``[start, end)`` character offsets into the transcript.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field, model_validator

# The closed sets belong to the contract; they live apart so that a query need not load the models.
from pipeline.terms import EITHER_SLOTS as EITHER_SLOTS
from pipeline.terms import FEET as FEET
from pipeline.terms import HORSE_SLOTS as HORSE_SLOTS
from pipeline.terms import NUMBER_SLOTS as NUMBER_SLOTS
from pipeline.terms import SHOE_SIZES as SHOE_SIZES
from pipeline.terms import SIZED_SLOTS as SIZED_SLOTS
from pipeline.terms import SLOTS as SLOTS
from pipeline.terms import WORDED_SLOTS as WORDED_SLOTS
from pipeline.terms import ZONES as ZONES
from pipeline.terms import Foot as Foot
from pipeline.terms import Severity as Severity
from pipeline.terms import Status as Status
from pipeline.terms import nail_size_value as nail_size_value
from pipeline.terms import shoe_size_value as shoe_size_value
from pipeline.terms import value_problem as value_problem


class HorseMatch(StrEnum):
    """How sure the horse's name is."""

    KNOWN = "known"
    NEW = "new"
    UNCLEAR = "unclear"


class MatchKind(StrEnum):
    """How a word of the trade was matched."""

    EXACT = "exact"  # the canonical name itself
    VARIANT = "variant"  # another spoken form from the vocabulary
    SOUND_ALIKE = "sound_alike"  # what a recogniser tends to write instead
    VERIFIED = "verified"  # a sound-alike that the audio confirmed
    IMPLIED = "implied"  # follows from another fact of the same statement


class Strict(BaseModel):
    """Base of every record model: unknown keys are errors, so that a typo cannot drop a fact."""

    # What was said never gets into an error message, and so never into a log.
    model_config = ConfigDict(extra="forbid", hide_input_in_errors=True)


SURE_SUPPORT = -1.5  # nats; below, a person is asked to listen


class Word(Strict):
    """One recognised word: its slice of the transcript, its seconds and the recogniser's probability.

    ``heard`` is what the recogniser wrote at first where the sound bears out a word of the trade instead; ``support``
    says how far, in nats (``SURE_SUPPORT`` and above is sure).
    """

    text: str
    start: int
    end: int
    start_s: float
    end_s: float
    probability: float
    heard: str | None = None
    support: float | None = None


class Transcript(Strict):
    """What was said. ``words`` is empty for typed text, which has no sound behind it."""

    text: str
    words: list[Word] = []

    @property
    def heard(self) -> bool:
        """Whether a recogniser wrote this, rather than a person."""
        return bool(self.words)

    def words_of(self, start: int, end: int) -> list[Word]:
        """The words that overlap the character span ``[start, end)``."""
        return [word for word in self.words if word.start < end and word.end > start]

    def seconds_of(self, start: int, end: int) -> tuple[float, float] | tuple[None, None]:
        """Start and end seconds of a character span; ``(None, None)`` without sound."""
        words = self.words_of(start, end)
        return (words[0].start_s, words[-1].end_s) if words else (None, None)


SECOND_READER = "second reader: "  # how the rule begins by which a fact was put right


class Fact(Strict):
    """One thing said, in the trade's terms, with the words and the seconds that it came from."""

    foot: Foot | None
    slot: str
    value: str | float
    zone: str | None = None
    status: Status = Status.PRESENT
    severity: Severity | None = None
    confidence: float = Field(default=1.0, ge=0, le=1)
    flagged: bool = False
    reasons: list[str] = []
    quote: str = ""
    start: float | None = None
    end: float | None = None
    span: tuple[int, int] = (0, 0)
    match: MatchKind = MatchKind.EXACT
    rules: list[str] = []

    @property
    def put_right(self) -> bool:
        """Whether it was read as of today, and the second reader took it for another time."""
        return any(rule.startswith(SECOND_READER) for rule in self.rules)

    @model_validator(mode="after")
    def _check_slot(self) -> Fact:
        told = vars(self)  # quicker than a model's own look at each
        zone, slot = told["zone"], told["slot"]
        if zone is not None and zone not in ZONES:
            raise ValueError(f"{zone!r} is not a zone")
        if slot in HORSE_SLOTS and told["foot"] is not None:
            raise ValueError(f"{slot} belongs to the horse, not to a foot")
        problem = value_problem(slot, told["value"])
        if problem:
            raise ValueError(problem)
        return self


class FlagKind(StrEnum):
    """What a person must look at and no fact carries."""

    HORSE = "horse"
    NOT_UNDERSTOOD = "not_understood"
    CONTRADICTION = "contradiction"
    UNCLEAR_SPEECH = "unclear_speech"
    DATE = "date"
    SOUND = "sound"


class Flag(Strict):
    """A doubt that belongs to a stretch of the memo rather than to one fact."""

    kind: FlagKind
    reason: str
    quote: str = ""
    start: float | None = None
    end: float | None = None
    span: tuple[int, int] = (0, 0)


class Visit(Strict):
    """What was found and done at one horse.

    ``place`` tells namesakes apart and is no part of the printed record: the store knows where a horse stands.
    """

    horse: str | None
    horse_match: HorseMatch
    place: str | None = Field(default=None, exclude=True)
    date: date
    facts: list[Fact] = []
    flags: list[Flag] = []
    notes: str = ""


class Memo(Strict):
    """The recording itself. ``recorded_from`` names where the time was taken from."""

    path: str | None = None
    sha256: str | None = None
    seconds: float | None = None
    recorded_at: datetime | None = None
    recorded_from: str | None = None
    container: str | None = None


class MemoRecord(Strict):
    """One memo with everything read from it: the object that ``--json`` prints."""

    id: str | None = None
    memo: Memo
    transcript: str
    visits: list[Visit] = []
    cautions: list[str] = []
    flags: list[Flag] = []


class RosterHorse(Strict):
    """A horse that the farrier looks after. ``other`` keeps whatever columns his list had besides."""

    name: str
    owner: str | None = None
    place: str | None = None
    also_called: list[str] = []
    other: dict[str, str] = {}
