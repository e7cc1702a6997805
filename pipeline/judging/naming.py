"""Feet, slots and values in the words of a sentence."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.record import FEET, Fact

_FEET = {"LF": "the left fore", "RF": "the right fore", "LH": "the left hind", "RH": "the right hind"}


def on_foot(foot: str | None) -> str:
    """`` on LF``, or nothing for the whole horse."""
    return f" on {foot}" if foot else ""


def the_foot(foot: str) -> str:
    """The foot in full, with its article."""
    return _FEET[foot]


def plain(fact: Fact) -> str:
    """The value as it is said."""
    return f"{fact.value:g}" if isinstance(fact.value, float) else str(fact.value).replace("_", " ")


def slot_name(slot: str) -> str:
    """The slot as it is said."""
    return slot.replace("_", " ")


def the_feet(feet: Sequence[str]) -> str:
    """Several feet in full: "all four feet", "the left fore and the right fore"."""
    named = [the_foot(foot) for foot in FEET if foot in feet]
    return (
        "all four feet" if len(named) == len(FEET) else " and ".join(filter(None, [", ".join(named[:-1]), named[-1]]))
    )
