"""Where on the foot, and how bad: said with the fact, and with no other."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "sulcus": ("Thrush in the central sulcus of the left hind.", ["LH finding thrush @sulcus"]),
    "not to treatment": (
        "Right hind thrush in the sulcus, iodine on it.",
        ["RH finding thrush @sulcus", "RH treatment iodine"],
    ),
    "seedy toe has none": ("Seedy toe in the left front.", ["LF finding white_line_disease"]),
    "inside heel": ("Corn in the left front, inside heel.", ["LF finding corn @medial_heel"]),
    "outside quarter flare": ("Right hind has a flare on the outside quarter.", ["RH finding flare @lateral_quarter"]),
    "quarter crack": ("Quarter crack on the off hind.", ["RH finding crack @quarter"]),
    "toe crack severity": ("Bad toe crack on the near fore.", ["LF finding crack @toe ~severe"]),
    "heel bulb": ("Heat in the heel bulb of the left hind.", ["LH finding heat @heel_bulb"]),
    "coronary band": (
        "Abscess broke out at the coronary band on the right front.",
        ["RF finding abscess @coronary_band"],
    ),
    "commissure": ("Thrush in the lateral commissure, left front.", ["LF finding thrush @commissure"]),
    "medial quarter": ("Medial quarter crack in the left front.", ["LF finding crack @medial_quarter"]),
    "bruised sole": ("Bruising at the toe on both fronts.", ["LF+RF finding bruise @toe"]),
    "zone with testers": ("Testers positive across the left front heels.", ["LF tester positive @heel"]),
    "severe": ("Severe thrush in the right hind frog.", ["RH finding thrush @frog ~severe"]),
    "moderate": ("Moderate flare on the left hind.", ["LH finding flare ~moderate"]),
    "a touch of": ("A touch of thrush in the near hind.", ["LH finding thrush ~mild"]),
    "white line bruise": ("Bruising in the white line of the right front.", ["RF finding bruise @white_line"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_a_place_said_more_exactly = reads(
    [
        (
            "White line disease in the right front, clear up into the quarter, outside quarter that is, moderate.",
            ["RF finding white_line_disease @lateral_quarter ~moderate"],
        ),
        ("Corn in the near fore at the heel, inside heel I mean.", ["LF finding corn @medial_heel"]),
        (
            "Crack in the off fore at the toe, the quarter is flared.",
            ["RF finding crack @toe", "RF finding flare @quarter"],
        ),
    ],
    "Tansy. {}",
)


test_a_place_a_foot_and_one_degree_for_both = reads(
    [
        (
            "Tally. Bruise in both fronts, toe on the left, heel on the right, both of them bad.",
            ["LF finding bruise @toe ~severe", "RF finding bruise @heel ~severe"],
        ),
        (
            "Tally. A corn in the left front and a bruise in the right front, both slight.",
            ["LF finding corn ~mild", "RF finding bruise ~mild"],
        ),
        (
            "Tally. A corn in the left front and a bruise in the right front, slight.",
            ["LF finding corn", "RF finding bruise ~mild"],
        ),
        (
            "Tally. Heel cracks in both fronts, outside heel on the left, inside heel on the right.",
            ["LF finding crack @lateral_heel", "RF finding crack @medial_heel"],
        ),
    ]
)

test_for_a_bit_is_no_degree = reads(
    [
        ("He eased off forging for a bit.", ["- gait forge"]),
        ("He was short strided for a bit last month.", ["- gait short_stride history"]),
        ("Iodine on the near hind for a bit of thrush.", ["LH finding thrush ~mild", "LH treatment iodine"]),
        ("A bit of forging.", ["- gait forge ~mild"]),
    ],
    "Tally. {}",
)

test_how_much_was_done = reads(
    [
        ("Toes are long in front, been bringing them back a bit.", ["LF+RF finding long_toe"]),
        ("Both fores long in the toe, been bringing them back a little each time.", ["LF+RF finding long_toe"]),
        ("Long toes in front, brought them back a touch.", ["LF+RF finding long_toe"]),
        ("Flare on the left fore, dressed it back a bit.", ["LF finding flare"]),
        ("Flare on the left fore, took a bit off. Trimmed.", ["LF finding flare", "LF work trim"]),
        ("He'd laminitis, had been backing the toes up a bit each time.", ["- finding laminitis"]),
        ("Corn in the near fore, mild, pared it out a bit.", ["LF finding corn ~mild"]),
        ("Long toes in front, a bit.", ["LF+RF finding long_toe ~mild"]),
        ("Flare on the left fore, a bit. Took it off.", ["LF finding flare ~mild"]),
        ("Thrush has come back a bit in the left hind.", ["LH finding thrush ~mild"]),
        ("Long toes in front, been bringing them back, they're still a bit long.", ["LF+RF finding long_toe ~mild"]),
        ("Thrush in both hinds, bad near, mild off.", ["LH finding thrush ~severe", "RH finding thrush ~mild"]),
    ],
    "Tally. {}",
)


test_pared_a_bit_more = reads(
    [
        (
            "Near fore, when I'd pared a bit more it was a corn, at the medial heel, moderate.",
            ["LF finding corn @medial_heel ~moderate"],
        ),
        ("Near fore, when I'd pared it a bit further it was a corn.", ["LF finding corn"]),
        ("When I'd dug a little deeper it was a corn, near fore, mild.", ["LF finding corn ~mild"]),
        ("Near fore, a corn, a bit more than the off fore.", ["LF finding corn ~mild"]),
        ("Near fore, I pared it and found a bit of a corn.", ["LF finding corn ~mild"]),
    ],
    "Tansy. {}",
)
