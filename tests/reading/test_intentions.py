"""What was only intended, given up, announced or conditional."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "get away with": (
        "I thought I'd get away with resetting the off fore but it was worn out, so that's new as well.",
        ["RF shoe_state worn", "RF work new_shoe"],
    ),
    "hoped to": (
        "I'd hoped to reset the hinds but they were loose, so new shoes behind.",
        ["LH+RH shoe_state loose", "LH+RH work new_shoe"],
    ),
    "couldn't get away with": (
        "I couldn't get away with a reset on the near hind, so it's a new shoe.",
        ["LH work new_shoe"],
    ),
    "thought about": (
        "I thought about resetting the off fore but it was worn out.",
        ["RF shoe_state worn"],
    ),
    "thought about it": (
        "I thought about it and reset them both in front.",
        ["LF+RF work reset"],
    ),
    "got away with": (
        "I got away with a reset on the near hind.",
        ["LH work reset"],
    ),
    "was going to": (
        "I was going to put straight bars on the fronts, but they're reset.",
        ["LF+RF work reset"],
    ),
    "thought better": (
        "I'd put wedges on the fronts, but thought better of it.",
        [],
    ),
    "wanted": (
        "I wanted toe clips in front and it's quarter clips.",
        ["LF+RF clips quarter"],
    ),
    "meant to reset": (
        "I meant to reset the hinds but they were both sprung.",
        ["LH+RH shoe_state sprung"],
    ),
    "meant to fit": (
        "I meant to fit egg bars in front, so straight bars went on the fronts.",
        ["LF+RF shoe_type straight_bar"],
    ),
    "meant another foot": (
        "Reset the left front. Did I say left front? I meant the right front.",
        ["RF work reset"],
    ),
    "announced": (
        "Next trip's plan first. Leather pads on the fronts. Today, trimmed all four.",
        ["LF+RF pad leather planned", "LF+RF+LH+RH work trim"],
    ),
    "then he": (
        "Once he's right he gets a new shoe on the left front.",
        ["LF work new_shoe planned"],
    ),
    "when": (
        "He overreaches when he's tired.",
        ["- gait overreach"],
    ),
    "honest": (
        "If I'm honest it's a severe crack at the toe of the left front.",
        ["LF finding crack @toe ~severe"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)
