"""What is taken back counts for nothing, and what stands beside it is kept."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "the same feet too": ("The hinds are size nought. No, the hinds are a one too.", ["LH+RH shoe_size 1"]),
    "another foot too": (
        "Near fore has thrush, mild. Wait, the off fore has it too.",
        ["LF finding thrush ~mild", "RF finding thrush"],
    ),
    "number": ("Left front, six nails, no, seven.", ["LF nails 7"]),
    "make that": ("Six weeks, make that five.", ["- next_visit_weeks 5 planned"]),
    "sorry side": ("Corn in the left front, sorry, right front.", ["RF finding corn"]),
    "I mean": ("Thrush in the left hind, I mean right hind.", ["RH finding thrush"]),
    "UK": ("Near fore, no, off fore has a toe crack.", ["RF finding crack @toe"]),
    "or rather": ("Size two, or rather size three, on the fronts.", ["LF+RF shoe_size 3"]),
    "correction": ("Left front toe angle fifty, correction, fifty two degrees.", ["LF toe_angle 52"]),
    "actually": ("Reset the fronts, actually new shoes on the fronts.", ["LF+RF work new_shoe"]),
    "zone": ("Flare on the left hind, outside quarter, no, inside quarter.", ["LH finding flare @medial_quarter"]),
    "scratch": ("Bar shoes on the fronts. Scratch that. Plain shoes on the fronts.", ["LF+RF shoe_type plain"]),
    "severity": ("Mild thrush in the left hind, no, make that moderate.", ["LH finding thrush ~moderate"]),
    "wait": ("Trimmed the hinds, wait, reset the hinds.", ["LH+RH work reset"]),
    "forget the": ("Thrush in the left hind. Forget the thrush.", []),
    "strike that only one": ("Corn in the left front. Flare on the right front, strike that.", ["LF finding corn"]),
    "real no": ("Left front, no thrush.", ["LF finding thrush absent"]),
    "I tell a lie": ("Eight nails on the fronts, I tell a lie, seven.", ["LF+RF nails 7"]),
    "next sentence": ("Thrush in the left front. No, right front.", ["RF finding thrush"]),
    "pad": ("Leather pads, no, rim pads on the fronts.", ["LF+RF pad rim"]),
    "treatment": ("Iodine, sorry, copper sulphate in the left hind.", ["LH treatment copper_sulfate"]),
    "scratches is a finding": ("Scratches on the left hind.", ["LH finding scratches"]),
    "correct afterwards": ("Size two on the hinds, that should be size one.", ["LH+RH shoe_size 1"]),
    "packing": ("Silicone on the left front, no, putty.", ["LF packing putty"]),
    "status stands": ("No thrush in the left hind, sorry, right hind.", ["RH finding thrush absent"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_nothing_wrong_puts_nothing_right = reads(
    [
        (
            "Reset both fronts, eight nails in each. Reset both hinds, seven in each. Nothing else wrong. Four weeks.",
            ["- next_visit_weeks 4 planned", "LF+RF nails 8", "LF+RF+LH+RH work reset", "LH+RH nails 7"],
        ),
        (
            "Size two in front. I can't see anything wrong, see him in five weeks.",
            ["- next_visit_weeks 5 planned", "LF+RF shoe_size 2"],
        ),
        ("Fronts size two, wrong, three.", ["LF+RF shoe_size 3"]),
    ],
    "Tally. {}",
)

test_his_feet_put_right = reads(
    [
        (
            "New shoes on his hinds, no, excuse me, his fronts, and the hinds got reset.",
            ["LF+RF work new_shoe", "LH+RH work reset"],
        ),
        ("Wedges on her hinds, no, her fronts, and the hinds are trimmed.", ["LF+RF pad wedge", "LH+RH work trim"]),
        ("Trimmed his fronts, sorry, his hinds, the fronts I reset.", ["LF+RF work reset", "LH+RH work trim"]),
        # all feet, and some of them otherwise
        (
            "Size four all round, no, his fronts are four and his hinds are three.",
            ["LF+RF shoe_size 4", "LH+RH shoe_size 3"],
        ),
    ],
    "Tally. {}",
)

test_only_the_same_is_taken_back = reads(
    [
        (
            "Sheared heels, left fore, bad. Right front the same, no, take that back, right front is contracted heels.",
            ["LF finding sheared_heels ~severe", "RF finding contracted_heels"],
        ),
        (
            "Thrush in the near hind. The off hind's the same, no, sorry, the off hind has canker.",
            ["LH finding thrush", "RH finding canker"],
        ),
        (
            "Thrush in the near hind, mild. The off hind's the same, no, worse, severe.",
            ["LH finding thrush ~mild", "RH finding thrush ~severe"],
        ),
    ],
)

test_how_the_slip_came_about = reads(
    [
        (
            "Reset in front, size one, no wait, size two, I had the wrong horse in my head. Three nails a side.",
            ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work reset"],
        ),
        ("Reset in front, size one, no, size two, I was thinking of another horse.",
         ["LF+RF shoe_size 2", "LF+RF work reset"]),
        ("Corn in the left front, no, the right front, I was thinking of the last horse.", ["RF finding corn"]),
        ("Reset in front. Seven nails, sorry, six. I was thinking of the last horse. Side clips.",
         ["LF+RF clips side", "LF+RF nails 6", "LF+RF work reset"]),
        # what was another horse's is none of this one
        ("Reset in front. Size one. I had the wrong horse in my head.", ["LF+RF work reset"]),
        ("Reset in front. Seven nails, sorry, six. That was the last horse. Side clips.",
         ["LF+RF clips side", "LF+RF work reset"]),
        ("Reset in front. Corn in the left hind, no, the right, and six nails in front, that was the last horse.",
         ["LF+RF work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_foot_said_over_begins_what_follows = reads(
    [
        ("Left front keratoma, reset, left front, I mean right front, five nails.",
         ["LF finding keratoma", "LF work reset", "RF nails 5"]),
        ("Near hind crack, trimmed, near hind, sorry, off hind, copper sulphate.",
         ["LH finding crack", "LH work trim", "RH treatment copper_sulfate"]),
        ("Fronts, thrush, reset, fronts, I mean hinds, six nails.",
         ["LF+RF finding thrush", "LF+RF work reset", "LH+RH nails 6"]),
        # it is the foot of what stands before it
        ("Left front corn, reset in the left front, no, right front, six nails.",
         ["LF finding corn", "RF nails 6", "RF work reset"]),
        ("Bruise in the left front. A crack, where was it, left front, no, right hind, mild.",
         ["LF finding bruise", "RH finding crack ~mild"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_on_to_the_other_foot_and_a_pause = reads(
    [
        (
            "Toe angle on the left front is fifty three, and on the right front, hold on, let me read my own writing, "
            "fifty and a half.",
            ["LF toe_angle 53", "RF toe_angle 50.5"],
        ),
        (
            "Toe length on the left fore is eighty, and on the right fore, hang on, where's my note, eighty two.",
            ["LF toe_length 80", "RF toe_length 82"],
        ),
        (
            "Heel angle on the near hind is forty eight, on the off hind, wait, forty seven.",
            ["LH heel_angle 48", "RH heel_angle 47"],
        ),
        ("Toe angle on the left front is fifty three, hold on, fifty and a half.", ["LF toe_angle 50.5"]),
        ("Toe angle on the left front is fifty three, hang on, that's the right front.", ["RF toe_angle 53"]),
    ]
)
