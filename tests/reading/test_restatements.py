"""What is said anew or wrongly at first: the last word stands, and nothing else goes with it."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "i said": (
        "Both fronts reset, six nails. I said six, it was seven in each.",
        ["LF+RF nails 7", "LF+RF work reset"],
    ),
    "did i say": (
        "Near hind has a crack at the toe. Did I say near hind? I meant the off hind.",
        ["RH finding crack @toe"],
    ),
    "medial not lateral": (
        "Left front, bruise at the lateral heel. Medial, not lateral.",
        ["LF finding bruise @medial_heel"],
    ),
    "more than": (
        "Pulse raised in the left front. More than raised, bounding.",
        ["LF pulse bounding"],
    ),
    "not say": (
        "Lame on the near fore, I wouldn't say three, two out of five.",
        ["LF lameness 2"],
    ),
    "not trailers": (
        "New shoes behind, trailers, no, not trailers, plain ones.",
        ["LH+RH shoe_type plain", "LH+RH work new_shoe"],
    ),
    "not the left": (
        "Thrush in the left hind, no, not the left hind, the right hind.",
        ["RH finding thrush"],
    ),
    "backwards": (
        "Puncture in the right hind, in the sole. Poultice on it. I had that backwards, it's the left hind.",
        ["LH finding puncture @sole", "LH treatment poultice"],
    ),
    "begun anew": (
        "Toe length left front three and, three and five eighths inches.",
        ["LF toe_length 92.1"],
    ),
    "within the hundred": (
        "Hoof width on the near fore a hundred and twenty five, no, twenty six millimetres.",
        ["LF hoof_width 126"],
    ),
    "two counts": (
        "Wide webs in front, double aught, uh, five nails.",
        ["LF+RF nails 5", "LF+RF shoe_size 00", "LF+RF shoe_type wide_web"],
    ),
    "eight, sorry": (
        "Straight bars on both fores. Seven nails. Eight, sorry, in each.",
        ["LF+RF nails 8", "LF+RF shoe_type straight_bar"],
    ),
    "call it": (
        "Left front toe angle, call it fifty two degrees.",
        ["LF toe_angle 52"],
    ),
    "assessed": (
        "Last time he was two out of five on the near fore, today I'd call it one out of five.",
        ["- lameness 1", "LF lameness 2 history"],
    ),
    "last word": (
        "Left front toe angle, I read 53 but it was crooked, so 52 degrees.",
        ["LF toe_angle 52"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)


test_a_number_not_to_be_is_taken_back_where_it_was_said = reads(
    [
        (
            "New shoes in front, size two, no, not a two, a three. Right front's the same.",
            ["LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        ("Size aught on the fronts, um, no, not an aught, a one.", ["LF+RF shoe_size 1"]),
        ("Six nails in front, no, not six, seven.", ["LF+RF nails 7"]),
    ],
)
