"""What was only intended, given up, announced or conditional."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
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


test_what_is_for_a_season_to_come_or_only_asked_about = reads(
    [
        (
            "Reset in front. Borium, they've been asking, I said in the fall, so that's borium all round in the fall.",
            ["LF+RF work reset", "LF+RF+LH+RH traction borium planned"],
        ),
        (
            "Reset in front. So it's egg bars in front in the winter.",
            ["LF+RF shoe_type egg_bar planned", "LF+RF work reset"],
        ),
        ("Reset in front. Studs, she keeps asking, not on this ground.", ["LF+RF work reset"]),
        (
            "Reset in front. Borium, they've been asking for it, so I put it on.",
            ["LF+RF traction borium", "LF+RF work reset"],
        ),
        ("He had egg bars in front in the winter.", ["LF+RF shoe_type egg_bar history"]),
        ("Egg bars in front in the fall, plain now.", ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"]),
    ],
    "Buck. {}",
)
