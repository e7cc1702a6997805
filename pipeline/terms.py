"""The trade's closed sets: feet, places on the foot, slots and their values. No models, so that it loads at once.

Lengths are millimetres, angles degrees, intervals weeks.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Literal, Protocol

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
        inside = isinstance(value, (int, float)) and low <= value <= high
        return None if inside else f"{slot} {value!r} is outside {low:g} to {high:g}"
    return f"{slot!r} is no slot"


class Said(Protocol):
    """A fact as far as it can be told: the record's own model, or a row of the store."""

    @property
    def foot(self) -> str | None:
        """One of FEET, or None for the whole horse."""

    @property
    def slot(self) -> str:
        """One of SLOTS."""

    @property
    def value(self) -> str | float:
        """Canonical for the slot."""

    @property
    def zone(self) -> str | None:
        """One of ZONES."""

    @property
    def status(self) -> Status:
        """How it was asserted."""

    @property
    def severity(self) -> Severity | None:
        """How bad it is, when that was said."""

    @property
    def flagged(self) -> bool:
        """Whether a person must still look at it."""
