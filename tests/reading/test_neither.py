"""Two things denied in one word.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_neither_denies_both = reads(
    [
        (
            "I looked for a corn and a bruise in the near fore and there's neither.",
            ["LF finding bruise absent", "LF finding corn absent"],
        ),
        (
            "I looked for a corn and a bruise in the near fore, there's neither.",
            ["LF finding bruise absent", "LF finding corn absent"],
        ),
        (
            "Checked every foot for thrush and for heat and came up with neither.",
            ["LF+RF+LH+RH finding heat absent", "LF+RF+LH+RH finding thrush absent"],
        ),
        (
            "Checked the fronts for heat and swelling, found neither.",
            ["LF+RF finding heat absent", "LF+RF finding swelling absent"],
        ),
        (
            "Searched the left front for an abscess and a puncture, neither there.",
            ["LF finding abscess absent", "LF finding puncture absent"],
        ),
        (
            "Thrush and canker in the hinds, I checked, and there's no sign of either.",
            ["LH+RH finding canker absent", "LH+RH finding thrush absent"],
        ),
        (
            "I felt for ringbone and sidebone in both fores and he has neither.",
            ["LF+RF finding ringbone absent", "LF+RF finding sidebone absent"],
        ),
        (
            "Checked for thrush or heat in the hinds and couldn't find either.",
            ["LH+RH finding heat absent", "LH+RH finding thrush absent"],
        ),
        (
            "Looked for heat and swelling in the left front. Neither.",
            ["LF finding heat absent", "LF finding swelling absent"],
        ),
        (
            "Looked for heat and swelling in the left front, neither.",
            ["LF finding heat absent", "LF finding swelling absent"],
        ),
        ("Heat or swelling in the near fore? Neither.", ["LF finding heat absent", "LF finding swelling absent"]),
        (
            "There's neither heat nor swelling in the left front.",
            ["LF finding heat absent", "LF finding swelling absent"],
        ),
    ]
)

test_neither_of_them_bad_leaves_them_there = reads(
    [
        ("Off hind has thrush and a corn, and neither of them bad.", ["RH finding corn", "RH finding thrush"]),
        ("Off hind has thrush and a corn, neither severe.", ["RH finding corn", "RH finding thrush"]),
    ]
)

test_what_was_told_before_the_looking_stays = reads(
    [
        (
            "Near fore crack at the toe, had the testers on and looked for heat and an abscess. Neither.",
            ["LF finding abscess absent", "LF finding crack @toe", "LF finding heat absent"],
        ),
        (
            "A crack in the right front. Checked the left hind for a bruise and a corn, neither to be found.",
            ["LH finding bruise absent", "LH finding corn absent", "RF finding crack"],
        ),
        (
            "Checked both hinds for thrush and canker, found neither, there's a crack in the left hind.",
            ["LH finding crack", "LH+RH finding canker absent", "LH+RH finding thrush absent"],
        ),
        (
            "Left hind has thrush in the frog, and there's neither heat nor pus.",
            ["LH finding abscess absent", "LH finding heat absent", "LH finding thrush @frog"],
        ),
    ]
)

test_neither_foot_has_it = reads(
    [
        (
            "Left front has thrush and so has the right. Neither of them has any heat.",
            ["LF+RF finding heat absent", "LF+RF finding thrush"],
        ),
        (
            "Fronts flat soled, and a corn in the off one. Neither one has a bruise.",
            ["LF+RF finding bruise absent", "LF+RF finding flat_sole", "RF finding corn"],
        ),
        ("A corn and a bruise in the off fore. Neither one is bad.", ["RF finding bruise", "RF finding corn"]),
    ],
    "Tansy. {}",
)

test_the_other_has_neither = reads(
    [
        (
            "Left hind has thrush and canker, and the right hind has neither.",
            ["LH finding canker", "LH finding thrush", "RH finding canker absent", "RH finding thrush absent"],
        ),
        (
            "Near fore has flare, moderate, and a bruise. The off fore has neither.",
            ["LF finding bruise", "LF finding flare ~moderate", "RF finding bruise absent", "RF finding flare absent"],
        ),
        (
            "Off hind has a corn. The near has neither heat nor swelling.",
            ["LH finding heat absent", "LH finding swelling absent", "RH finding corn"],
        ),
        ("Corn in the near fore. The off fore has neither shoe nor pad.", ["LF finding corn"]),
        ("Off fore has a corn. The other one in front has none.", ["LF finding corn absent", "RF finding corn"]),
        ("Near hind has thrush, the other one behind hasn't any.", ["LH finding thrush", "RH finding thrush absent"]),
        (
            "Scratches on every leg bar the near fore, and there's none on that one.",
            ["LF finding scratches absent", "RF+LH+RH finding scratches"],
        ),
        ("Corn in the bar of the off fore.", ["RF finding corn @bar"]),
        (
            "Thrush in the near hind. Copper sulphate in the other hind as well as that one.",
            ["LH finding thrush", "LH+RH treatment copper_sulfate"],
        ),
        (
            "Thrush in the near fore. Iodine in the off hind as well as that one.",
            ["LF finding thrush", "LF+RH treatment iodine"],
        ),
    ],
    "Tansy. {}",
)
