"""Denied at a distance, gone away, and none on the other foot: in Scots too.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_nothing_of_the_kind = reads(
    [
        (
            "There's a quarter crack in the near fore. Nothing in the off fore by way of cracks.",
            ["LF finding crack @quarter", "RF finding crack absent"],
        ),
        ("Nothing in the near hind by way of thrush.", ["LH finding thrush absent"]),
        ("Nothing on the off fore in the way of a crack.", ["RF finding crack absent"]),
        ("Not a thing in the right hind in the line of thrush.", ["RH finding thrush absent"]),
        (
            "Thrush in the left hind. Nothing in the right hind as regards thrush.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        ("Nothing in the hinds worth calling thrush.", ["LH+RH finding thrush absent"]),
        ("Nothing in either hind you'd call thrush.", ["LH+RH finding thrush absent"]),
        ("Nothing behind that I'd call thrush.", ["LH+RH finding thrush absent"]),
        ("Nothing in front in the shape of a crack.", ["LF+RF finding crack absent"]),
        (
            "Nothing to see in the off fore by way of heat or swelling.",
            ["RF finding heat absent", "RF finding swelling absent"],
        ),
        ("Nothing in the off fore but a crack at the toe.", ["RF finding crack @toe"]),
        ("Nothing in the off fore apart from thrush.", ["RF finding thrush"]),
        ("Nothing in the off fore, thrush in the near fore.", ["LF finding thrush"]),
        ("Nothing in the off fore except a small crack.", ["RF finding crack ~mild"]),
        ("Nothing in the hinds today, corn in the off fore.", ["RF finding corn"]),
        ("Nothing unusual in the off fore, bit of thrush.", ["RF finding thrush ~mild"]),
        ("I didn't find anything in the off fore in the way of bruising.", ["RF finding bruise absent"]),
        ("Nothing behind like thrush.", ["LH+RH finding thrush absent"]),
        ("Not much in the off fore by way of a crack.", ["RF finding crack"]),
    ],
    "Tansy. {}",
)

test_what_is_away_is_gone = reads(
    [
        ("The off hind, the canker's away, clean out of the frog.", ["RH finding canker resolved @frog"]),
        ("The thrush is away in the left hind.", ["LH finding thrush resolved"]),
        ("The left hind, thrush is away altogether.", ["LH finding thrush resolved"]),
        ("The corn in the off fore's away.", ["RF finding corn resolved"]),
        ("The bruise is away now, off fore.", ["RF finding bruise resolved"]),
        ("That flare is away, near fore.", ["LF finding flare resolved"]),
        ("Had thrush in the left hind, and that's away.", ["LH finding thrush resolved"]),
        ("Canker in the off hind last time, it's away now.", ["RH finding canker resolved"]),
        ("The heat is away out of the near fore.", ["LF finding heat resolved"]),
        ("The swelling's away from the near hind.", ["LH finding swelling resolved"]),
        ("The owner's away this week, thrush in the left hind.", ["LH finding thrush"]),
        ("Thrush in the left hind, she's away on holiday so I'll treat it.", ["LH finding thrush"]),
        ("The vet's away, abscess in the left hind.", ["LH finding abscess"]),
        ("He's away, thrush in the left hind.", ["LH finding thrush"]),
    ],
    "Tansy. {}",
)

test_none_on_the_other_foot_in_other_words = reads(
    [
        ("Canker in the off hind. Near hind hasnae any.", ["LH finding canker absent", "RH finding canker"]),
        ("Thrush in the off hind, the near hind hasn't any.", ["LH finding thrush absent", "RH finding thrush"]),
        ("Thrush in the off hind, near hind hasn't got any.", ["LH finding thrush absent", "RH finding thrush"]),
        ("The corn in the off fore, near fore doesn't have any.", ["LF finding corn absent", "RF finding corn"]),
        ("Thrush in both hinds, fronts haven't any.", ["LF+RF finding thrush absent", "LH+RH finding thrush"]),
        ("Thrush in the near hind. Off hind hasn't a bit.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Thrush in the near hind. The off has nane.", ["LH finding thrush", "RH finding thrush absent"]),
        (
            "White line disease in the near fore. Off fore doesn't have it.",
            ["LF finding white_line_disease", "RF finding white_line_disease absent"],
        ),
        ("Six nails in the near fore, off fore doesn't have any clips.", ["LF nails 6"]),
    ],
    "Tansy. {}",
)
