"""One of several feet: the side that is told, or none, and then which it is is asked."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

ASKED = "Heard that one of several is meant, but not which."

test_its_side_is_told = reads([
    ("Tally. Left hind has thrush. One of the fronts too, the left.", ["LF+LH finding thrush"]),
    ("Tally. Right hind, corn, and one of the fronts as well, the right one.", ["RF+RH finding corn"]),
    ("Tally. Loose on the left hind and one of the fronts, the right.", ["RF+LH shoe_state loose"]),
    ("Tally. Bruises in the hinds and one of the fronts, left.", ["LF+LH+RH finding bruise"]),
    ("Tally. Had to reset one of the hinds, the near.", ["LH work reset"]),
    ("Tally. One of the hinds is flared, it's the right.", ["RH finding flare"]),
    ("Tally. Each one of the fronts has a corn.", ["LF+RF finding corn"]),
    ("Tally. Steel on the fronts, eight nails to a fore shoe.", ["LF+RF nails 8", "LF+RF shoe_material steel"]),
    ("Reset Tally's hinds with road nails in.", ["LH+RH traction road_nails", "LH+RH work reset"]),
    ("Tally. Not one of the hinds had thrush.", ["LH+RH finding thrush absent"]),
    ("Tally. New shoes, size one front, size aught hind.",
     ["LF+RF shoe_size 1", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 0"]),
    # a foot of that end, and nothing else, heads it
    ("Tally. Near fore, dropped a front shoe.", ["LF shoe_state lost"]),
    ("Tally. Right hind, she's just thrown a hind shoe.", ["RH shoe_state lost"]),
    ("Tally. Off fore, he'd lost one front shoe.", ["RF shoe_state lost"]),
])  # fmt: skip

WHICH = {
    "One of the fronts is loose.": ["- shoe_state loose"],
    "Thrush in one of the hinds.": ["- finding thrush"],
    "Bruise in one front.": ["- finding bruise"],
    "One hind loose.": ["- shoe_state loose"],
    "Left hind, thrush. One of the fronts has it too.": ["LH finding thrush"],
    "One of the fronts was sprung, so reset both.": ["- shoe_state sprung", "LF+RF work reset"],
    "Reset one of the fronts.": [],
    "No thrush in one of the hinds.": [],
    "Near hind, corn. He lost a front shoe.": ["- shoe_state lost", "LH finding corn"],
    "Near fore, thrush. Lost a front shoe.": ["- shoe_state lost", "LF finding thrush"],
    "Off hind, lost a front shoe.": ["- shoe_state lost"],
}


@pytest.mark.parametrize("text", WHICH)
def test_which_of_them_is_asked(read: Read, text: str) -> None:
    (visit,) = read(text, *NAMES)
    assert told(visit) == WHICH[text]
    assert ASKED in [flag.reason for flag in visit.flags]


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("The hinds were, one was loose and one was fine.", ["- shoe_state loose"]),
        ("The fronts were, one was sprung and the other was good.", ["- shoe_state sprung"]),
        ("Of the fronts one was loose and one was all right.", ["- shoe_state loose"]),
        ("Fronts, one has thrush and one is clean.", ["- finding thrush"]),
        ("Reset in front. One was loose.", ["- shoe_state loose", "LF+RF work reset"]),
        ("Thrush in both hinds, one severe.", ["LH+RH finding thrush"]),
        ("Cracks on both fronts, one is bad.", ["LF+RF finding crack"]),
        ("Thrush in both hinds, severe in one and mild in the other.", ["LH+RH finding thrush"]),
        ("Cracks in both fronts, bad in one of them.", ["LF+RF finding crack"]),
        ("Both fronts loose, lost one.", ["- shoe_state lost", "LF+RF shoe_state loose"]),
        ("Reset in front, eight nails in one and six in the other.", ["- nails 6", "- nails 8", "LF+RF work reset"]),
        ("Hinds, a wedge on one and a leather pad on the other.", ["- pad leather", "- pad wedge"]),
        (
            "Toe length on the fronts, eighty in one and eighty five in the other.",
            ["- toe_length 80", "- toe_length 85"],
        ),
        ("Fronts, one's got thrush and the other a corn.", ["- finding corn", "- finding thrush"]),
        (
            "Reset in front. One took six nails and the other took seven.",
            ["- nails 6", "- nails 7", "LF+RF work reset"],
        ),
        ("Iodine in one hind and peroxide in the other.", ["- treatment antiseptic", "- treatment iodine"]),
        ("White line disease behind, one of them mild.", ["LH+RH finding white_line_disease"]),
    ],
)
def test_which_was_the_one_is_asked(read: Read, text: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {text}", *NAMES)
    assert told(visit) == facts
    assert [flag.reason for flag in visit.flags].count(ASKED) == 1


test_the_one_is_told_or_none_is_meant = reads([
    ("Tally. Hinds. One has thrush, the left.", ["LH finding thrush"]),
    ("Tally. Fronts, one lost, one loose, near fore and off fore respectively.",
     ["LF shoe_state lost", "RF shoe_state loose"]),
    ("Tally. Both fronts were loose, one badly.", ["LF+RF shoe_state loose"]),
    ("Tally. Hinds new, one loose clench.", ["LH+RH work new_shoe"]),
    ("Tally. Trimmed. He stands on one leg and rests on the other.", ["LF+RF+LH+RH work trim"]),
    ("Tally. Left front, lost one.", ["LF shoe_state lost"]),
    ("Tally. Trimmed. One of the dogs bit the other.", ["LF+RF+LH+RH work trim"]),
    ("Tally. Hinds, a corn in the left one and thrush in the other.", ["LH finding corn", "RH finding thrush"]),
    ("Tally. Thrush in both hinds, mild.", ["LH+RH finding thrush ~mild"]),
    ("Tally. Lame on both fronts, one out of five.", ["LF+RF lameness 1"]),
])  # fmt: skip
