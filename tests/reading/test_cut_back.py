"""Diseased horn cut back or opened up is a resection; an abscess opened up is drained."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        "Tally. Seedy toe in the off hind, moderate, cut that back and put iodine on it.",
        ["RH finding white_line_disease ~moderate", "RH treatment iodine", "RH treatment resection"],
    ),
    (
        "Tally. White line disease in the left hind. Cut it back to good horn, copper sulfate on it.",
        ["LH finding white_line_disease", "LH treatment copper_sulfate", "LH treatment resection"],
    ),
    (
        (
            "Tally. White line disease at the toe in the left hind, opened it up with a "
            "resection and copper sulfate on it."
        ),
        ["LH finding white_line_disease @toe", "LH treatment copper_sulfate", "LH treatment resection"],
    ),
    (
        "Tally. White line disease, left front. Opened it up and packed it with copper sulfate.",
        ["LF finding white_line_disease", "LF treatment copper_sulfate", "LF treatment resection"],
    ),
    (
        "Tally. Seedy toe in the near fore. Opened it up back to sound horn, and put iodine on.",
        ["LF finding white_line_disease", "LF treatment iodine", "LF treatment resection"],
    ),
    ("Tally. Keratoma in the off fore, cut it all out.", ["RF finding keratoma", "RF treatment resection"]),
    (
        "Tally. Seedy toe in both fores, pared those well back, iodine on them.",
        ["LF+RF finding white_line_disease", "LF+RF treatment iodine", "LF+RF treatment resection"],
    ),
    (
        "Tally. Canker in the near hind frog, dug it out and bandaged it.",
        ["LH finding canker @frog", "LH treatment bandage", "LH treatment resection"],
    ),
    ("Tally. Abscess in the right front, opened it up and drained it.", ["RF finding abscess", "RF treatment drained"]),
    ("Tally. Abscess in the right front, opened it up with the knife.", ["RF finding abscess", "RF treatment drained"]),
    (
        "Tally. Seedy toe in the near fore. Abscess in the off fore, opened it up.",
        ["LF finding white_line_disease", "RF finding abscess", "RF treatment drained"],
    ),
    ("Tally. Toe was long on both fores so I cut that back.", ["LF+RF finding long_toe"]),
    ("Tally. Flare on the off hind, cut it back.", ["RH finding flare"]),
    ("Tally. Cut back the toes on both fores. Seedy toe in the near hind.", ["LH finding white_line_disease"]),
]
test_cut_back = reads(CASES)

test_how_long_at_the_toe = reads(
    [
        ("The left front's three and a half inches long at the toe.", ["LF toe_length 88.9"]),
        (
            "Near fore was ninety two mil long at the toe last time and it's eighty six now.",
            ["LF toe_length 86", "LF toe_length 92 history"],
        ),
        (
            "Off fore was four inches long at the toe last time, and today that same foot measures three and a half.",
            ["RF toe_length 101.6 history", "RF toe_length 88.9"],
        ),
        ("Left front is long at the toe, about four inches.", ["LF finding long_toe", "LF toe_length 101.6"]),
        ("Left front is long at the toe, four inches today.", ["LF finding long_toe", "LF toe_length 101.6"]),
        ("Left front is long at the toe.", ["LF finding long_toe"]),
        ("Left front is long at the toe, a crack four inches up.", ["LF finding crack", "LF finding long_toe"]),
    ],
    "Tally. {}",
)

test_a_puncture_opened_with_nothing_run_out = reads(
    [
        (
            "Puncture in the near hind. I opened it a little, and bandaged it.",
            ["LH finding puncture", "LH treatment bandage"],
        ),
        (
            "Puncture in the near hind, I opened it up and it drained well.",
            ["LH finding puncture", "LH treatment drained"],
        ),
        ("An abscess in the off fore, opened it up.", ["RF finding abscess", "RF treatment drained"]),
    ]
)

test_a_long_toe_taken_down_to_its_length = reads(
    [
        (
            "Long toes in front. Got the left front down to three and three eighths inches, the right front to three.",
            ["LF toe_length 85.7", "LF+RF finding long_toe", "RF toe_length 76.2"],
        ),
        (
            "Tansy. Long toes in front. Brought the off fore back to eighty five millimetres.",
            ["LF+RF finding long_toe", "RF toe_length 85"],
        ),
        ("Flare on the near fore. Took it back to three and a half inches.", ["LF finding flare"]),
        (
            "Long toes in front. Heel height on the near fore down to two inches.",
            ["LF heel_height 50.8", "LF+RF finding long_toe"],
        ),
    ]
)
