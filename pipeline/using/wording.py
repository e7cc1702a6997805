"""A fact in a farrier's words, and text made harmless for a screen."""

from __future__ import annotations

import re
import unicodedata
from datetime import date

from pipeline.terms import Said, Status

SIGN = "(!)"  # marks what a person must look at; a sign, since colour alone may not be seen
FOOT_NAMES = {"LF": "left fore", "RF": "right fore", "LH": "left hind", "RH": "right hind", None: "whole horse"}
FOUND_SLOTS = frozenset(
    {
        "finding", "tester", "pulse", "shoe_state", "lameness", "obel", "body_condition", "cresty_neck", "gait",
        "manner", "nail_line",
    }
)  # fmt: skip
MEASURE_UNITS = {
    "toe_length": "mm", "heel_height": "mm", "sole_depth": "mm", "hoof_width": "mm",
    "wedge": "°", "toe_angle": "°", "heel_angle": "°", "next_visit_weeks": "weeks",
}  # fmt: skip
_MEASURES = frozenset({"toe_length", "heel_height", "sole_depth", "hoof_width", "toe_angle", "heel_angle"})
_NAMED_ALONE = frozenset({"finding", "shoe_type", "shoe_material", "work", "packing", "treatment", "gait", "manner"})
_SAID = {
    Status.PRESENT: "{}",
    Status.ABSENT: "no {}",
    Status.SUSPECTED: "perhaps {}",
    Status.RESOLVED: "{}: gone now",
    Status.HISTORY: "{}: at an earlier time",
    Status.PLANNED: "{}: planned",
}
_WHOLE = {
    "lameness": "lameness grade {} of 5 (AAEP)",
    "obel": "laminitis grade {} of 4 (Obel)",
    "body_condition": "body condition {} of 9 (Henneke)",
    "cresty_neck": "cresty neck {} of 5 (Carter)",
    "nails": "{} nail{s}",
    "nail_size": "nail size {}",
    "shoe_size": "shoe size {}",
    "next_visit_weeks": "next visit in {} week{s}",
    "tester": "hoof testers: {}",
    "pulse": "digital pulse {}",
    "shoe_state": "shoe {}",
    "nail_line": "nail line {}",
    "clips": "{} clips",
    "pad": "{} pad",
    "wedge": "wedge {}°",
}
_DIRECTION_SIGNS = re.compile("[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]")


def number_words(value: float) -> str:
    """A number without needless digits: 6, 88.9."""
    return f"{value:g}"


def weeks_words(weeks: float | None) -> str:
    """``1 week``, ``6 weeks``, ``6.5 weeks``; none is ``0 weeks``."""
    return f"{number_words(weeks or 0)} week{'' if weeks == 1 else 's'}"


def day_words(day: date) -> str:
    """``13 Apr 2026``."""
    return f"{day.day} {day:%b %Y}"


def fact_words(fact: Said) -> str:
    """What a fact says, without its foot: ``thrush (sulcus, mild)``, ``no thrush``, ``shoe size 00``."""
    value = fact.value.replace("_", " ") if isinstance(fact.value, str) else number_words(fact.value)
    slot = fact.slot.replace("_", " ")
    if fact.slot == "vet":
        said = "need for the vet" if fact.status is Status.ABSENT else "vet should look"
    elif fact.slot in _WHOLE:
        said = _WHOLE[fact.slot].format(value, s="" if fact.value == 1 else "s")
    elif fact.slot in _MEASURES:
        unit = MEASURE_UNITS[fact.slot]
        said = f"{slot} {value}{unit}" if unit == "°" else f"{slot} {value} {unit}"
    else:
        said = value if fact.slot in _NAMED_ALONE else f"{slot} {value}"
    where = [part.replace("_", " ") for part in (fact.zone, fact.severity and fact.severity.value) if part]
    said = f"{said} ({', '.join(where)})" if where else said
    planned_anyway = fact.slot in ("vet", "next_visit_weeks") and fact.status is Status.PLANNED
    return said if planned_anyway else _SAID[fact.status].format(said)


def clock(seconds: float) -> str:
    """A position in a memo: 75.4 is ``1:15``."""
    return f"{int(seconds) // 60}:{int(seconds) % 60:02d}"


def harmless(text: str) -> str:
    """``text`` without control and writing-direction characters, which could rewrite a screen; line ends stay."""
    if text.isprintable():  # so is nearly all that is ever said, and a long record holds much of it
        return text
    text = _DIRECTION_SIGNS.sub("", text)
    return "".join("\ufffd" if unicodedata.category(sign) == "Cc" and sign not in "\n\t" else sign for sign in text)
