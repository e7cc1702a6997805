"""Feet that are left out, counted, compared with or named afterwards."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "all but": (
        "Bruises in all but the left hind.",
        ["LF+RF+RH finding bruise"],
    ),
    "bar": (
        "Flare on every foot bar the off fore.",
        ["LF+LH+RH finding flare"],
    ),
    "except with a reset": (
        "New shoes on everything except the right hind.",
        ["LF+RF+LH work new_shoe"],
    ),
    "that one": (
        "Reset all but the right hind. That one got a new shoe.",
        ["LF+RF+LH work reset", "RH work new_shoe"],
    ),
    "those three": (
        "Worn shoes on all but the right hind. New shoes on those three.",
        ["LF+RF+LH shoe_state worn", "LF+RF+LH work new_shoe"],
    ),
    "four counted": (
        "4 resets, six nails each.",
        ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
    ),
    "trimmed four": (
        "Trimmed four, boots on the fronts.",
        ["LF+RF shoe_type boot", "LF+RF+LH+RH work trim"],
    ),
    "all reset": (
        "Size two in front, size one behind. All reset.",
        ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
    ),
    "narrower behind": (
        "He'd lost one in front, the near fore.",
        ["LF shoe_state lost"],
    ),
    "as well as": (
        "The near fore reset as well as the off.",
        ["LF+RF work reset"],
    ),
    "of the right": (
        "Testers on the fronts, a moderate at the toe of the right.",
        ["RF tester moderate @toe"],
    ),
    "afterthought": (
        "I pricked him, near fore that was.",
        ["LF finding quicked"],
    ),
    "compared size": (
        "New shoe on the right hind, same size as the fronts.",
        ["RH work new_shoe"],
    ),
    "behind them": (
        "Full pads on the fores with silicone behind them.",
        ["LF+RF packing silicone", "LF+RF pad full"],
    ),
    "from the foot": (
        "Testers moderate on the near fore, nothing from the off fore.",
        ["LF tester moderate", "RF tester none"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)
