"""A full stop at a pause does not cut a degree or a place off from what it belongs to."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "a degree alone": ("Left front quarter crack. Mild.", ["LF finding crack @quarter ~mild"]),
    "a place, then a degree": (
        "Near fore bruise. Medial heel. Moderate. Pulse normal.",
        ["LF finding bruise @medial_heel ~moderate", "LF pulse normal"],
    ),
    "a place in a phrase": ("Thrush in the off hind. Down in the sulcus.", ["RH finding thrush @sulcus"]),
    "it is": (
        "White line separation in the right hind. At the toe. It's mild.",
        [
            "RH finding white_line_separation @toe ~mild",
        ],
    ),
    "one foot worse": (
        "Thrush both hinds. Near hind's worse. That one's severe. Off hind mild.",
        ["RH finding thrush ~mild", "LH finding thrush ~severe"],
    ),
    "not to the next finding": (
        "Thrush in the left hind. Mild flare on the right hind.",
        ["LH finding thrush", "RH finding flare ~mild"],
    ),
    "not to work": ("Reset the left hind. Toe.", ["LH work reset"]),
    "a foot with a place is a statement of its own": (
        "Thrush in the left hind. Right hind frog, canker.",
        ["LH finding thrush", "RH finding canker @frog"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)
