""" "No, I didn't" takes back what was done, and leaves what was found.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_no_i_did_not = reads(
    [
        (
            "I used iodine on the left hind thrush, no I didn't, I was out, copper sulfate.",
            ["LH finding thrush", "LH treatment copper_sulfate"],
        ),
        (
            "Left hind's got thrush, and I used iodine, no I didn't, I was out, copper sulfate.",
            ["LH finding thrush", "LH treatment copper_sulfate"],
        ),
        (
            "Thrush in the left hind, I put pine tar on it, no, I didn't, iodine.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        ("Corn in the left front, I pricked him, no I didn't.", ["LF finding corn"]),
        (
            "Heat in the off fore, so I poulticed it, no, we didn't, we soaked it.",
            ["RF finding heat", "RF treatment soak"],
        ),
        (
            "Bruise in the left front, put a full pad on it, no I didn't, a rim pad.",
            ["LF finding bruise", "LF pad rim"],
        ),
        (
            "White line separation in the near fore, I resected it. No I didn't, I only packed it with putty.",
            ["LF finding white_line_separation", "LF packing putty"],
        ),
        (
            "Flare on both hinds. I trimmed all four, no I did not, the fronts I reset.",
            ["LF+RF work reset", "LH+RH finding flare"],
        ),
        (
            "Corn in the right front and I put a bar shoe on it, no I didn't, plain shoe.",
            ["RF finding corn", "RF shoe_type plain"],
        ),
        ("Hinds I reset too. No, I didn't, I trimmed them.", ["LH+RH work trim"]),
        ("I saw thrush in the left hind, no I didn't, that was mud.", []),
        ("Thrush in the left hind, iodine on it, scratch that.", []),
    ],
    "Buck. {}",
)

test_a_foot_not_left_as_it_was = reads(
    [
        (
            "Six nails in the near fore. The off fore I left as it was, no I didn't, I reset it.",
            ["LF nails 6", "RF work reset"],
        ),
        (
            "Off fore cast, so I put that same shoe back on. Near fore I left alone, no I didn't, I reset it.",
            ["LF work reset", "RF shoe_state lost", "RF work put_back"],
        ),
        ("Reset the fronts, no I didn't, I trimmed them.", ["LF+RF work trim"]),
    ],
)

test_found_and_no_it_has_not = reads(
    [
        (
            "Right hind was loose so I reset that, and it's got sidebone, no it hasn't, sidebone is the right front.",
            ["RF finding sidebone", "RH shoe_state loose", "RH work reset"],
        ),
        ("The right hind's got a corn, no it hasn't, the corn is in the right front.", ["RF finding corn"]),
        ("Near fore's got a crack at the toe, no, it has not, that's mud.", []),
        (
            "Lost the near hind, the off hind's got seedy toe, no it hasn't, that was last time.",
            ["LH shoe_state lost"],
        ),
        (
            "There's no heat in the near fore, no, it hasn't, and no pulse.",
            ["LF finding heat absent", "LF pulse normal"],
        ),
    ]
)


test_i_take_that_back = reads(
    [
        (
            "Mud fever on the right hind, mild. Body condition five, no, I take that back, six.",
            ["- body_condition 6", "RH finding scratches ~mild"],
        ),
        (
            "Corn in the near fore. Size two in front, no, I'll take that back, a three.",
            ["LF finding corn", "LF+RF shoe_size 3"],
        ),
        (
            "Bruise in the off fore. Trimmed all four. Body condition six, hang on, I take that back, call it a five.",
            ["- body_condition 5", "LF+RF+LH+RH work trim", "RF finding bruise"],
        ),
        ("Corn in the near fore. Thrush in the off hind, no, I take that back.", ["LF finding corn"]),
        ("Toe angle fifty, wait, I'll scratch that, fifty two, left front.", ["LF toe_angle 52"]),
    ]
)
