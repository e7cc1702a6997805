"""A foot put right some sentences later, in so many words, or one of a list alone; and two told across.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_foot_put_right_late = reads(
    [
        (
            "Corn in the near fore. Dug it out and packed it with putty. No, it was the off I had in my hand.",
            ["RF finding corn", "RF packing putty"],
        ),
        ("Corn in the near fore. Dug it out. No, it was the off.", ["RF finding corn"]),
        ("Corn in the near fore. Dug it out. No, the off.", ["RF finding corn"]),
        ("Puncture in the off hind. Packed it. Sorry, near hind.", ["LH finding puncture"]),
        (
            "Puncture in the off hind. Packed it with putty. Wait, no, that was the near hind, the off was grand.",
            ["LH finding puncture", "LH packing putty"],
        ),
        (
            "Abscess in the front left. Drained it. Front right I should say.",
            ["RF finding abscess", "RF treatment drained"],
        ),
        ("Crack in the left front at the toe. That's the off fore I meant.", ["RF finding crack @toe"]),
        ("Crack in the left front at the toe. That's the off I meant.", ["RF finding crack @toe"]),
        (
            "Near fore lost a shoe. Nailed it back on. Sorry, when I say near I mean off.",
            ["RF shoe_state lost", "RF work put_back"],
        ),
        (
            "Thrush in the off hind, pared it right back. Iodine. No, I tell a lie, that was the near hind.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        ("Corn in the near fore. It was the off I dug out last time.", ["LF finding corn"]),
        ("Bruise near fore. Poultice on. No, the off fore's fine.", ["LF finding bruise", "LF treatment poultice"]),
        (
            "Corn in the near fore. Dug it out. No, the off fore has nothing.",
            ["LF finding corn", "RF finding corn absent"],
        ),
        (
            "Corn in the near fore. Trimmed it. Off hind. Thrush.",
            ["LF finding corn", "LF work trim", "RH finding thrush"],
        ),
        (
            "There's thrush in the near hind, did I say near, I mean off hind. Near fore has a corn.",
            ["LF finding corn", "RH finding thrush"],
        ),
    ],
    "Tansy. {}",
)

test_one_of_a_list_alone = reads(
    [
        ("Seedy toe in the left fore and the right fore, no, just the right.", ["RF finding white_line_disease"]),
        ("Thrush in the left hind and the right hind, no, only the left.", ["LH finding thrush"]),
        ("Thrush in the near fore, off fore and near hind, no, just the near hind.", ["LH finding thrush"]),
        ("Thrush in both hinds, no, just the left.", ["LH finding thrush"]),
        ("Thrush in both hinds. Sorry, just the near one.", ["LH finding thrush"]),
        (
            "I reset the hinds, and the left hind has trailers, I mean a trailer, just the left hind.",
            ["LH shoe_type trailer", "LH+RH work reset"],
        ),
        (
            "Pulse normal in the hinds. Heat in the left front and in the right, no, just the left.",
            ["LF finding heat", "LH+RH pulse normal"],
        ),
    ],
    "Tansy. {}",
)

test_front_and_hind_swapped = reads(
    [
        ("Left front's got a corn and left hind's got thrush. Swap those.", ["LF finding thrush", "LH finding corn"]),
        (
            "Left front's got a corn and left hind's got thrush. Swap those, the corn's behind.",
            ["LF finding thrush", "LH finding corn"],
        ),
        ("Bruise left front, corn right hind. Swap those.", ["LF finding corn", "RH finding bruise"]),
        (
            "Size two in front and one behind. Swap those. Reset the hinds.",
            ["LF+RF shoe_size 1", "LH+RH shoe_size 2", "LH+RH work reset"],
        ),
    ],
    "Tansy. {}",
)

test_one_before_its_foot_one_behind = reads(
    [
        ("Testers positive left front and right front negative.", ["LF tester positive", "RF tester none"]),
        ("Testers strong near fore and off fore nothing.", ["LF tester strong", "RF tester none"]),
        ("Testers mild left front and right front strong.", ["LF tester mild", "RF tester strong"]),
        ("Pulse bounding left front and right front normal.", ["LF pulse bounding", "RF pulse normal"]),
        ("Six nails left front and right front seven.", ["LF nails 6", "RF nails 7"]),
        ("Toe angle fifty left front and right front fifty two.", ["LF toe_angle 50", "RF toe_angle 52"]),
        ("Reset near fore and off fore new.", ["LF work reset", "RF work new_shoe"]),
        ("Thrush mild left hind and right hind severe.", ["LH finding thrush ~mild", "RH finding thrush ~severe"]),
        ("Bruise left front and right front clean.", ["LF finding bruise", "RF finding bruise absent"]),
        ("Testers nothing left front and right front.", ["LF+RF tester none"]),
        ("Size two left front and right front six nails.", ["LF+RF nails 6", "LF+RF shoe_size 2"]),
        ("Reset left front and right front six nails.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("Pulse bounding left front and right front.", ["LF+RF pulse bounding"]),
    ],
    "Tansy. {}",
)
