"""What belongs to an earlier time beside today, and what is gone."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "was a four": (
        "Crest score two, was a four.",
        ["- cresty_neck 2", "- cresty_neck 4 history"],
    ),
    "used to": (
        "Crest is a three where it used to be a four.",
        ["- cresty_neck 3", "- cresty_neck 4 history"],
    ),
    "then at the end": (
        "He foundered two years back, Obel two then.",
        ["- finding laminitis history", "- obel 2 history"],
    ),
    "had it as": (
        "Left hind crack at the toe, moderate, I had it as severe last time.",
        ["LH finding crack @toe ~moderate", "LH finding crack history @toe ~severe"],
    ),
    "till spring": (
        "They had racing plates on both fronts till spring.",
        ["LF+RF shoe_type racing_plate history"],
    ),
    "till fall ahead": (
        "They're off the road till fall, borium on the fronts.",
        ["LF+RF traction borium"],
    ),
    "hope": (
        "Corn in the left front, I was hoping it'd be gone.",
        ["LF finding corn"],
    ),
    "chunk": (
        "There's a chunk of hoof gone at the inside quarter of the left front.",
        ["LF finding wall_loss @medial_quarter"],
    ),
    "week back": (
        "She was lame on the near fore a week back and today she's sound.",
        ["- gait sound", "LF gait lame history"],
    ),
    "gone after had been": (
        "The off hind had been swollen at the coronet, the swelling has gone.",
        ["RH finding swelling resolved @coronary_band"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)
