"""Shoes that are counted, "two new shoes", have no size of two; work without a foot leaves the feet named elsewhere."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Tally. Two new shoes in front.", ["LF+RF work new_shoe"]),
    ("Tally. Two new shoes, front, size one.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
    ("Tally. Put two new shoes on behind.", ["LH+RH work new_shoe"]),
    ("Tally. Four new shoes.", ["LF+RF+LH+RH work new_shoe"]),
    ("Tally. Three new shoes and the off hind reset.", ["LF+RF+LH work new_shoe", "RH work reset"]),
    ("Tally. One new shoe on the left front.", ["LF work new_shoe"]),
    ("Tally. Two resets in front and two new shoes behind.", ["LF+RF work reset", "LH+RH work new_shoe"]),
    ("Tally. Two brand new shoes behind, size three.", ["LH+RH shoe_size 3", "LH+RH work new_shoe"]),
    ("Tally. Front shoes two, new shoes.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
    ("Tally. A two new shoe on the left front.", ["LF shoe_size 2", "LF work new_shoe"]),
    (
        "Tally. New shoes, size one, six nails. Hinds trimmed.",
        ["- nails 6", "- shoe_size 1", "LF+RF work new_shoe", "LH+RH work trim"],
    ),
    ("Tally. Reset today. The off hind got a new shoe.", ["LF+RF+LH work reset", "RH work new_shoe"]),
    ("Tally. New shoes and the off hind reset.", ["LF+RF+LH work new_shoe", "RH work reset"]),
]

test_counted_shoes = reads(CASES)
