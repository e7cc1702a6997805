"""A size between two sizes that follow each other, and what is no such size; nails told beside their size.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told


@pytest.mark.parametrize(
    ("said", "size"),
    [
        ("Fronts are new, size double aught to an aught.", "00-0"),
        ("New shoes in front, size nought to a one.", "0-1"),
        ("He takes an aught to a one in front.", "0-1"),
        ("Size one to two on the fronts.", "1-2"),
        ("Fronts size two to a three.", "2-3"),
        ("New shoes in front, a one going on a two.", "1-2"),
        ("Fronts size 00 to 0.", "00-0"),
        ("New shoes in front, she's a triple aught to double aught.", "000-00"),
        ("Size a one and a half to a two in front.", "1.5-2"),
        ("Fronts are size one heading for a two.", "1-2"),
        ("Fronts somewhere between an aught and a one.", "0-1"),
        ("Size ones to the fronts.", "1"),
        ("Gone up a size to a two in front.", "2"),
    ],
)
def test_a_size_told_by_its_neighbours(read: Read, said: str, size: str) -> None:
    assert [f for f in told(read(f"Tansy. {said}", "Tansy")[0]) if "work" not in f] == [f"LF+RF shoe_size {size}"]


test_nails_beside_their_size_or_what_they_hold = reads(
    [
        (
            "Reset the fronts with five slims, seven in the left front and six in the right front.",
            ["LF nails 7", "LF+RF nail_size 5 slim", "LF+RF work reset", "RF nails 6"],
        ),
        (
            "Hinds reset on six slims, eight in the near and seven in the off.",
            ["LH nails 8", "LH+RH nail_size 6 slim", "LH+RH work reset", "RH nails 7"],
        ),
        (
            "Reset in front with five slims, six nails left, seven right.",
            ["LF nails 6", "LF+RF nail_size 5 slim", "LF+RF work reset", "RF nails 7"],
        ),
        (
            "All four reset. Five slims in front, six behind.",
            ["LF+RF nail_size 5 slim", "LF+RF+LH+RH work reset", "LH+RH nail_size 6"],
        ),
        (
            "Near hind's nailed back on with six; the off hind is a new one, size two, seven nails.",
            ["LH nails 6", "LH work put_back", "RH nails 7", "RH shoe_size 2", "RH work new_shoe"],
        ),
        ("Nailed the near fore on with six, off fore with seven.", ["LF nails 6", "RF nails 7"]),
        ("Hinds are on with eight.", ["LH+RH nails 8"]),
        ("New shoes in front. Hung them on with six.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
        ("Left front reset with six, and the right front with seven.", ["LF nails 6", "LF work reset", "RF nails 7"]),
    ],
    "Tansy. {}",
)

test_the_nearer_of_the_two = reads(
    [
        (
            "Steel in front, between a one and a two, closer to two if you ask me, but I write it in between.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 1-2"],
        ),
        (
            "Rims on the hinds, between an aught and a one, nearer the one.",
            ["LH+RH shoe_size 0-1", "LH+RH shoe_type rim"],
        ),
        ("Size between a three and a four in front, twos behind.", ["LF+RF shoe_size 3-4", "LH+RH shoe_size 2"]),
    ],
    "Tansy. {}",
)


test_half_a_size_ahead_of_the_nails = reads(
    [
        (
            "New bar shoes on both fronts, aluminum, one and a half, two nails a side.",
            ["LF+RF nails 4", "LF+RF shoe_material aluminum", "LF+RF shoe_size 1.5", "LF+RF shoe_type bar",
             "LF+RF work new_shoe"],
        ),
        ("Reset both hinds, two and a half, six nails each.",
         ["LH+RH nails 6", "LH+RH shoe_size 2.5", "LH+RH work reset"]),
        # behind the nails, or where nails are made so, it is none
        ("Reset both fronts, six nails each, one and a half.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("Reset both fronts, three and a half, six nails each.", ["LF+RF nails 6", "LF+RF work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_from_nought = reads(
    [
        (
            "New in front, size nought to one, quarter clips.",
            ["LF+RF clips quarter", "LF+RF shoe_size 0-1", "LF+RF work new_shoe"],
        ),
        ("Up a size from nought to one in front.", ["LF+RF shoe_size 0 history", "LF+RF shoe_size 1"]),
        ("Corn near fore. He ought to be seen in six weeks.", ["- next_visit_weeks 6 planned", "LF finding corn"]),
    ],
    "Tansy. {}",
)

test_noughts_said_once_for_both = reads(
    [
        (
            "Got new ones behind, plain steel, between a single and a double aught.",
            ["LH+RH shoe_material steel", "LH+RH shoe_size 00-0", "LH+RH shoe_type plain", "LH+RH work new_shoe"],
        ),
        ("New shoes behind, between a double and a triple aught.", ["LH+RH shoe_size 000-00", "LH+RH work new_shoe"]),
        ("Fronts reset, between single and double nought.", ["LF+RF shoe_size 00-0", "LF+RF work reset"]),
        ("Fronts reset, between a double and a single aught.", ["LF+RF shoe_size 00-0", "LF+RF work reset"]),
        ("Fronts reset, between an aught and a double.", ["LF+RF shoe_size 00-0", "LF+RF work reset"]),
        ("Fronts reset, between a single aught and a double aught.", ["LF+RF shoe_size 00-0", "LF+RF work reset"]),
        ("Fronts reset, between a single aught and a one.", ["LF+RF shoe_size 0-1", "LF+RF work reset"]),
        ("Fronts reset, he's between sizes, double aught.", ["LF+RF shoe_size 00", "LF+RF work reset"]),
        ("Fronts single aught, hinds double aught.", ["LF+RF shoe_size 0", "LH+RH shoe_size 00"]),
    ],
    "Tansy. {}",
)
