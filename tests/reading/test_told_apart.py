"""Feet told one by one and then meant together, a whole side of the horse, and the feet that are everywhere else.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_two_feet_told_one_by_one_are_the_two_meant = reads(
    [
        (
            "Left front was sprung, right hind worn through. New shoes on those two, size one, the other two reset.",
            [
                "LF shoe_state sprung",
                "LF+RH shoe_size 1",
                "LF+RH work new_shoe",
                "RF+LH work reset",
                "RH shoe_state worn",
            ],
        ),
        (
            "Near hind's lost a shoe, off fore's loose. New ones on both, the others reset.",
            ["LF+RH work reset", "LH shoe_state lost", "RF shoe_state loose", "RF+LH work new_shoe"],
        ),
        (
            "Left hind has a corn. Right front has a bruise. Both of those got leather pads.",
            ["LH finding corn", "RF finding bruise", "RF+LH pad leather"],
        ),
        (
            "Thrush in the left front, a corn in the left hind. Iodine in these two.",
            ["LF finding thrush", "LF+LH treatment iodine", "LH finding corn"],
        ),
        (
            "Corn in the near fore. Off hind, thrush. Hardener on the pair of them.",
            ["LF finding corn", "LF+RH treatment hardener", "RH finding thrush"],
        ),
        (
            "Left front, heat. Right front, heat. Poulticed both.",
            ["LF+RF finding heat", "LF+RF treatment poultice"],
        ),
        (
            "Left front loose, right hind loose. Left hind, thrush. Iodine in both hinds.",
            ["LF+RH shoe_state loose", "LH finding thrush", "LH+RH treatment iodine"],
        ),
    ],
    "Tansy. {}",
)


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("Five nails in the left front, six everywhere else.", ["LF nails 5", "RF+LH+RH nails 6"]),
        ("Left hind only took five nails, everywhere else got seven.", ["LF+RF+RH nails 7", "LH nails 5"]),
        ("Four nails in the off fore, six elsewhere.", ["LF+LH+RH nails 6", "RF nails 4"]),
        ("Size one in the right front, aughts every place else.", ["LF+LH+RH shoe_size 0", "RF shoe_size 1"]),
        ("Thrush in the near fore, none anywhere else.", ["LF finding thrush", "RF+LH+RH finding thrush absent"]),
        ("Crack in the right hind, no cracks anywhere else.", ["LF+RF+LH finding crack absent", "RH finding crack"]),
        (
            "Reset everywhere else, new shoe on the left hind. He's been shod elsewhere till now.",
            ["LF+RF+RH work reset", "LH work new_shoe"],
        ),
    ],
)
def test_everywhere_else_is_the_feet_that_were_not_named(read: Read, said: str, facts: list[str]) -> None:
    assert [f for f in told(read(f"Tansy. Left hind trimmed. {said}", "Tansy")[0]) if "trim" not in f] == facts


test_a_whole_side_stands_against_the_other = reads(
    [
        (
            "Flared at the lateral quarter on both near side feet, no flare on the off side.",
            ["LF+LH finding flare @lateral_quarter", "RF+RH finding flare absent"],
        ),
        (
            "Thrush in the off side feet, none on the near side.",
            ["LF+LH finding thrush absent", "RF+RH finding thrush"],
        ),
        (
            "Corns in both left feet, nothing like it on the right side.",
            ["LF+LH finding corn", "RF+RH finding corn absent"],
        ),
        (
            "The near side feet have thrush, the off side feet don't.",
            ["LF+LH finding thrush", "RF+RH finding thrush absent"],
        ),
        ("Near side both flared, off side no flare.", ["LF+LH finding flare", "RF+RH finding flare absent"]),
        (
            "Bruise in both right feet. Not on the left side though.",
            ["LF+LH finding bruise absent", "RF+RH finding bruise"],
        ),
        ("Heat in both the off feet, no heat near side.", ["LF+LH finding heat absent", "RF+RH finding heat"]),
        ("Flare in the left front, no flare on the off side.", ["LF finding flare", "RF finding flare absent"]),
        ("Thrush in the near feet, off side dry.", ["LF+LH finding thrush"]),
    ],
    "Tansy. {}",
)

test_all_three = reads(
    [
        ("Trimmed the left hind, six nails in all three.", ["LF+RF+RH nails 6", "LH work trim"]),
        ("Pulled the left hind. Six nails in all three.", ["LF+RF+RH nails 6", "LH work removed"]),
        ("Reset three, left hind bare, six nails in all three.", ["LF+RF+RH nails 6", "LF+RF+RH work reset"]),
        ("Reset three, near fore barefoot.", ["LF work trim", "RF+LH+RH work reset"]),
        ("Fronts and right hind reset, six nails in all three.", ["LF+RF+RH nails 6", "LF+RF+RH work reset"]),
        (
            "Three feet have thrush, not the off hind. Iodine in all three.",
            ["LF+RF+LH finding thrush", "LF+RF+LH treatment iodine"],
        ),
    ],
    "Tally. {}",
)
