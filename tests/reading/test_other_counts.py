"""Numbers that count or number something else than shoes are no sizes."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

NO_SIZE = [
    "he's in a four acre field",
    "on a two-acre lot",
    "a five mile hack at most",
    "a two hour drive out here",
    "a six furlong sprinter",
    "behind a five bar gate",
    "she's a ten hand pony",
    "he's a two year old",
    "it was a two man job",
    "a one time deal",
    "stable number five",
    "number four on my list",
    "number two horse of the day",
    "lot number twelve at the sale",
    "paddock size four acres",
    "the pair of twelve year olds held him",
    "three behind him waiting",
    "two in front of her in the queue",
    "two kids on the front gate",
]
SIZES = {
    "a two": "2",
    "a two with a bit of length": "2",
    "a two this time": "2",
    "a three regular": "3",
    "a one and a half": "1.5",
    "number two": "2",
    "number two on the pair of them": "2",
    "size four today": "4",
}


@pytest.mark.parametrize("said", NO_SIZE)
def test_counts_of_something_else_are_no_sizes(read: Read, said: str) -> None:
    (visit,) = read(f"New shoes in front, {said}.", *NAMES)
    assert told(visit) == ["LF+RF work new_shoe"]


@pytest.mark.parametrize("said", SIZES)
def test_sizes_stay_sizes(read: Read, said: str) -> None:
    (visit,) = read(f"New shoes in front, {said}.", *NAMES)
    assert told(visit) == [f"LF+RF shoe_size {SIZES[said]}", "LF+RF work new_shoe"]


test_an_age_is_no_size = reads(
    [
        (
            "Fronts are size five. Left hind had thrush as a three year old.",
            ["LF+RF shoe_size 5", "LH finding thrush history"],
        ),
        ("Sizes, fronts five. He's four years old.", ["LF+RF shoe_size 5"]),
        ("Sizes, fronts five. The hinds were four last year.", ["LF+RF shoe_size 5", "LH+RH shoe_size 4 history"]),
    ],
    "Tally. {}",
)

test_hours_are_no_grade = reads(
    [
        ("Two out of five on the near fore in March. I'd two hours in the traffic.", ["LF lameness 2 history"]),
        ("Lame, two out of five on the near fore, and three on the off fore.", ["LF lameness 2", "RF lameness 3"]),
    ],
    "Tally. {}",
)
