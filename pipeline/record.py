"""The typed record: what a memo becomes. These models are the contract that every step shares.

Lengths are millimetres, angles degrees, intervals weeks, sound positions seconds from the start of the memo.
Text spans are half-open ``[start, end)`` character offsets into the transcript.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field, model_validator

Foot = Literal["LF", "RF", "LH", "RH"]
FEET: tuple[Foot, ...] = ("LF", "RF", "LH", "RH")


class Status(StrEnum):
    """How a fact was asserted."""

    PRESENT = "present"
    ABSENT = "absent"
    SUSPECTED = "suspected"
    RESOLVED = "resolved"
    HISTORY = "history"
    PLANNED = "planned"


class Severity(StrEnum):
    """Three classes; a severity word is kept as its class."""

    MILD = "mild"
    MODERATE = "moderate"
    SEVERE = "severe"


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


ZONES = (
    "toe", "heel", "quarter", "medial_quarter", "lateral_quarter", "medial_heel", "lateral_heel", "medial", "lateral",
    "frog", "commissure", "sulcus", "bar", "sole", "wall", "white_line", "coronary_band", "heel_bulb",
)  # fmt: skip

SHOE_SIZES = (
    "0000", "000", "00", "0",
    *(f"{n}{half}" for n in range(1, 12) for half in ("", ".5")), "12",
)  # fmt: skip

# Slots whose value is one of a closed set. The order of shoe sizes is common practice, no source.
WORDED_SLOTS: dict[str, tuple[str, ...]] = {
    "finding": (
        "thrush", "white_line_disease", "white_line_separation", "flare", "crack", "abscess", "bruise", "corn",
        "sheared_heels", "contracted_heels", "underrun_heels", "long_toe", "club_foot", "laminitis", "rotation",
        "thin_sole", "flat_sole", "dropped_sole", "weak_wall", "wall_loss", "growth_rings", "canker", "keratoma",
        "puncture", "heat", "imbalance", "broken_back_axis", "broken_forward_axis", "close_nail", "quicked",
        "scratches", "swelling", "sidebone", "ringbone", "navicular",
    ),
    "tester": ("none", "mild", "positive", "moderate", "strong"),
    "pulse": ("normal", "raised", "bounding"),
    "shoe_type": (
        "plain", "rim", "bar", "straight_bar", "egg_bar", "heart_bar", "wide_web", "half_round", "rocker_toe",
        "rolled_toe", "racing_plate", "glue_on", "trailer", "tip", "boot",
    ),
    "shoe_material": ("steel", "aluminum", "plastic", "rubber"),
    "work": ("trim", "reset", "new_shoe", "removed", "put_back"),
    "shoe_state": ("lost", "loose", "sprung", "worn"),
    "pad": ("full", "rim", "mesh", "half_mesh", "wedge", "leather", "frog_support", "pour_in"),
    "packing": ("impression_material", "putty", "oakum", "pine_tar", "silicone"),
    "treatment": (
        "copper_sulfate", "iodine", "antiseptic", "resection", "drained", "soak", "poultice", "hardener", "bandage",
    ),
    "nail_line": ("low", "good"),
    "clips": ("toe", "quarter", "side"),
    "traction": ("studs", "borium", "road_nails"),
    "gait": ("sound", "lame", "overreach", "forge", "interfere", "short_stride"),
    "manner": ("quiet", "fidgety", "sedated", "dangerous"),
    "vet": ("referral",),
}  # fmt: skip

# Slots whose value is a number: (least, most) that can be written down at all; judging knows narrower limits.
NUMBER_SLOTS: dict[str, tuple[float, float]] = {
    "wedge": (0, 20),
    "nails": (1, 20),
    "toe_angle": (10, 90),
    "heel_angle": (10, 90),
    "toe_length": (10, 300),
    "heel_height": (1, 200),
    "sole_depth": (0.5, 60),
    "hoof_width": (20, 400),
    "lameness": (0, 5),  # AAEP grades 0-5
    "obel": (1, 4),  # Obel 1948, grades 1-4
    "body_condition": (1, 9),  # Henneke et al. 1983, Equine Vet J 15:371-372
    "cresty_neck": (0, 5),  # Carter et al. 2009, Vet J 179:204-210
    "next_visit_weeks": (0.1, 104),
}
SIZED_SLOTS = ("shoe_size", "nail_size")
SLOTS = (*WORDED_SLOTS, *SIZED_SLOTS, *NUMBER_SLOTS)

# Facts about the horse as a whole, and facts that may be about either.
HORSE_SLOTS = frozenset({"obel", "body_condition", "cresty_neck", "manner", "next_visit_weeks", "vet"})
EITHER_SLOTS = frozenset({"gait", "lameness", "finding"})


def shoe_size_value(text: str) -> bool:
    """Whether ``text`` is a canonical shoe size: ``"00"``, ``"1.5"`` or two neighbours such as ``"00-0"``."""
    if text in SHOE_SIZES:
        return True
    low, dash, high = text.partition("-")
    if not dash or low not in SHOE_SIZES or high not in SHOE_SIZES:
        return False
    return SHOE_SIZES.index(low) < SHOE_SIZES.index(high)


def nail_size_value(text: str) -> bool:
    """Whether ``text`` is a canonical nail size: ``"5"``, ``"4.5"`` or ``"5 slim"``."""
    number = text.removesuffix(" slim")
    whole, _, half = number.partition(".")
    return whole.isdigit() and 1 <= int(whole) <= 16 and half in ("", "5")


class Strict(BaseModel):
    """Base of every record model: unknown keys are errors, so that a typo cannot drop a fact."""

    # What was said never gets into an error message, and so never into a log.
    model_config = ConfigDict(extra="forbid", hide_input_in_errors=True)


class Word(Strict):
    """One recognised word: its slice of the transcript, its seconds and the recogniser's probability."""

    text: str
    start: int
    end: int
    start_s: float
    end_s: float
    probability: float


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

    @model_validator(mode="after")
    def _check_slot(self) -> Fact:
        if self.zone is not None and self.zone not in ZONES:
            raise ValueError(f"{self.zone!r} is not a zone")
        if self.foot is not None and self.slot in HORSE_SLOTS:
            raise ValueError(f"{self.slot} belongs to the horse, not to a foot")
        problem = value_problem(self.slot, self.value)
        if problem:
            raise ValueError(problem)
        return self


def value_problem(slot: str, value: str | float) -> str | None:
    """Say what is wrong with ``value`` in ``slot``, or None when it is canonical."""
    if slot in WORDED_SLOTS:
        return None if value in WORDED_SLOTS[slot] else f"{value!r} is no {slot}"
    if slot == "shoe_size":
        return None if isinstance(value, str) and shoe_size_value(value) else f"{value!r} is no shoe size"
    if slot == "nail_size":
        return None if isinstance(value, str) and nail_size_value(value) else f"{value!r} is no nail size"
    if slot in NUMBER_SLOTS:
        low, high = NUMBER_SLOTS[slot]
        inside = isinstance(value, int | float) and low <= value <= high
        return None if inside else f"{slot} {value!r} is outside {low:g} to {high:g}"
    return f"{slot!r} is no slot"


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
