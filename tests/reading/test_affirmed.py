"""What is said of another foot: there too, there in another degree, not there."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "does": (
        "No thrush in the left hind but the right hind does.",
        ["LH finding thrush absent", "RH finding thrush"],
    ),
    "has it": (
        "No flare on the left pair, right pair has it, lateral.",
        ["LF+LH finding flare absent", "RF+RH finding flare @lateral"],
    ),
    "graded": (
        "Thrush in the sulcus, near fore moderate, off fore severe.",
        ["LF finding thrush @sulcus ~moderate", "RF finding thrush ~severe"],
    ),
    "as well mild": (
        "Off hind, mud fever, moderate. Near hind as well, only that one's mild.",
        ["LH finding scratches ~mild", "RH finding scratches ~moderate"],
    ),
    "had one": (
        "Toe crack in the near hind. The off hind had one last year and it's gone.",
        ["LH finding crack @toe", "RH finding crack resolved"],
    ),
    "same shoes": (
        "Left front, corn. Back in his same shoes up front.",
        ["LF finding corn", "LF+RF work reset"],
    ),
    "none either": (
        "Sidebone, none, either fore.",
        ["LF+RF finding sidebone absent"],
    ),
    "large": (
        "No cracks anywhere. Well, there's one in the left hind, at the toe.",
        ["LF+RF+RH finding crack absent", "LH finding crack @toe"],
    ),
    "then denied": (
        "I was thinking laminitis. No laminitis.",
        ["- finding laminitis absent"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)
