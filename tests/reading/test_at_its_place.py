"""A degree behind two places is of both; one said with each is of that place."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Left hind has thrush in both the frog and the sulcus, bad.",
        ["LH finding thrush @frog ~severe", "LH finding thrush @sulcus ~severe"],
    ),
    (
        "Tally. Left hind has thrush in the frog and the sulcus, severe.",
        ["LH finding thrush @frog ~severe", "LH finding thrush @sulcus ~severe"],
    ),
    (
        "Tally. Bruise at the toe and the heel of the near fore, mild.",
        ["LF finding bruise @heel ~mild", "LF finding bruise @toe ~mild"],
    ),
    (
        "Tally. Bad thrush in the frog and the sulcus of the left hind.",
        ["LH finding thrush @frog ~severe", "LH finding thrush @sulcus ~severe"],
    ),
    (
        "Tally. Off fore, flare at the toe and the lateral quarter, moderate.",
        ["RF finding flare @lateral_quarter ~moderate", "RF finding flare @toe ~moderate"],
    ),
    (
        "Tally. Severe bruise at the toe and the bar of the right front.",
        ["RF finding bruise @bar ~severe", "RF finding bruise @toe ~severe"],
    ),
    (
        "Tally. Thrush in the frog, mild, and in the sulcus, severe, left hind.",
        ["LH finding thrush @frog ~mild", "LH finding thrush @sulcus ~severe"],
    ),
    (
        "Buck. Thrush in the left hind, mild in the frog and severe in the sulcus.",
        ["LH finding thrush @frog ~mild", "LH finding thrush @sulcus ~severe"],
    ),
    (
        "Buck. Flare on the off hind, moderate at the toe and mild at the quarter.",
        ["RH finding flare @quarter ~mild", "RH finding flare @toe ~moderate"],
    ),
    ("Buck. Left front, crack at the toe, mild.", ["LF finding crack @toe ~mild"]),
]

test_at_its_place = reads(CASES)
