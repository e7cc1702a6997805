"""What is said once and meant of another foot too."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "too": ("Thrush in the left hind, right hind too.", ["LH+RH finding thrush"]),
    "as well": ("Flare on the near fore, off fore as well.", ["LF+RF finding flare"]),
    "same": ("Left front has a corn, right front the same.", ["LF+RF finding corn"]),
    "none in": ("Thrush in the left hind, none in the right.", ["LH finding thrush", "RH finding thrush absent"]),
    "not the": (
        "Toe crack in the left front, not the right front.",
        ["LF finding crack @toe", "RF finding crack absent"],
    ),
    "same size": ("Size two on the fronts, same size behind.", ["LF+RF+LH+RH shoe_size 2"]),
    "ditto": (
        "Left front new shoe, size two, six nails. Right front ditto.",
        ["LF+RF work new_shoe", "LF+RF shoe_size 2", "LF+RF nails 6"],
    ),
    "doubt copied": ("Possible corn in the left front, right front too.", ["LF+RF finding corn suspected"]),
    "denial copied": ("No heat in the left front, right front the same.", ["LF+RF finding heat absent"]),
    "tester copied": (
        "Testers positive on the left front, nothing on the right.",
        ["LF tester positive", "RF tester none"],
    ),
    "and the": ("Thrush in the left front, and the right hind.", ["LF+RH finding thrush"]),
    "one in": ("Bruise in the near fore and another one in the off fore.", ["LF+RF finding bruise"]),
    "so has": ("Left front has thrush, so has the right.", ["LF+RF finding thrush"]),
    "so does": ("Left front has thrush and so does the right front.", ["LF+RF finding thrush"]),
    "as does": ("Left front has thrush, as does the right front.", ["LF+RF finding thrush"]),
    "so is": ("Left front is underrun, so is the right.", ["LF+RF finding underrun_heels"]),
    "also": ("Rim pads on the left front, also on the right front.", ["LF+RF pad rim"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_the_same_stuff = reads(
    [
        (
            "Thrush, off hind, moderate. Copper sulphate. Near hind, thrush, mild, in the frog, same stuff.",
            ["LH finding thrush @frog ~mild", "LH+RH treatment copper_sulfate", "RH finding thrush ~moderate"],
        ),
        ("Oakum under the near fore pad. Off fore, pad, same stuff.", ["LF+RF packing oakum"]),
        ("Iodine on the near hind, and the same treatment on the off hind.", ["LH+RH treatment iodine"]),
        ("Same stuff every time with her. Corn in the near fore.", ["LF finding corn"]),
    ],
    "Tansy. {}",
)

test_the_place_of_the_other = reads(
    [
        (
            "Thrush, left hind, in the sulcus, severe, and, uh, right hind too, in the commissure, moderate.",
            ["LH finding thrush @sulcus ~severe", "RH finding thrush @commissure ~moderate"],
        ),
        (
            "Near hind has a crack at the toe, off hind as well, at the quarter.",
            ["LH finding crack @toe", "RH finding crack @quarter"],
        ),
        ("A bruise in the near fore, off fore too, at the heel.", ["LF finding bruise", "RF finding bruise @heel"]),
        # no place of its own
        (
            "Bruise in the left front at the heel, right front too, moderate.",
            ["LF finding bruise @heel", "RF finding bruise @heel ~moderate"],
        ),
        (
            "Flare in the left front at the quarter, right front too, iodine on the frog.",
            ["LF+RF finding flare @quarter", "RF treatment iodine"],
        ),
    ],
    "Tally. {}",
)

test_what_was_only_thought_repeats_nothing = reads(
    [
        (
            "Left front has a flare, mild, and the right front, I thought there was a crack but it's not, "
            "so no crack in the right front.",
            ["LF finding flare ~mild", "RF finding crack absent"],
        ),
        (
            "A corn in the near fore, and the off fore, I thought I saw a bruise, but no bruise in the off fore.",
            ["LF finding corn", "RF finding bruise absent"],
        ),
        (
            "Thrush in the left hind, and the right hind, I soaked them.",
            ["LH+RH finding thrush", "LH+RH treatment soak"],
        ),
    ]
)

test_the_place_of_what_is_measured = reads(
    [
        (
            "The corn he had in the near fore's gone. Off fore toe, eighty-five, no, eighty-seven mil long.",
            ["LF finding corn resolved", "RF toe_length 87"],
        ),
        (
            "That crack in the near fore's grown out. Off fore toe, eighty five mil.",
            ["LF finding crack resolved", "RF toe_length 85"],
        ),
        (
            "No heat in the near fore. Off fore toe, eighty-five mil long.",
            ["LF finding heat absent", "RF toe_length 85"],
        ),
        ("Bruise in the near fore at the heel. Off fore, toe.", ["LF finding bruise @heel", "RF finding bruise @toe"]),
        ("Bruise in the near fore. Off fore toe, mild.", ["LF finding bruise", "RF finding bruise @toe ~mild"]),
    ],
    "Tally. {}",
)

test_a_foot_behind_and_that_heads_a_finding_of_its_own = reads(
    [
        (
            "Thrush in the off hind. Iodine in that one. Oh, and the near fore, quarter crack.",
            ["LF finding crack @quarter", "RH finding thrush", "RH treatment iodine"],
        ),
        (
            "I resected that off fore. And the near hind, flare, mild.",
            ["LH finding flare ~mild", "RF treatment resection"],
        ),
        (
            "Six nails in the off fore. Oh, and the near fore, quarter crack.",
            ["LF finding crack @quarter", "RF nails 6"],
        ),
        (
            "Iodine in the off fore. And the near hind, copper sulfate.",
            ["LH treatment copper_sulfate", "RF treatment iodine"],
        ),
        (
            "Corn in the off fore. Oh, and the near hind, quarter crack.",
            ["LH finding crack @quarter", "RF finding corn"],
        ),
        (
            "Full pad in the off fore, reset. And the near fore, a bruise.",
            ["LF finding bruise", "RF pad full", "RF work reset"],
        ),
        ("Pulse raised in the off fore. And the near fore, normal.", ["RF pulse raised"]),
        # the foot repeats what was told
        ("I resected that off fore. And the near hind.", ["RF+LH treatment resection"]),
        ("Reset the off fore. And the near fore, six nails.", ["LF nails 6", "LF+RF work reset"]),
        ("Thrush in the off fore. Oh, and the near hind, mild.", ["LH finding thrush ~mild", "RF finding thrush"]),
        ("I resected that off fore, and the near hind.", ["RF+LH treatment resection"]),
    ],
    "Tally. {}",
)
