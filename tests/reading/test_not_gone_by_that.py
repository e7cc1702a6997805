"""What sounds like gone, put right or worse, and is not: each case was read wrongly once, unasked."""

from __future__ import annotations

from tests.reading.conftest import reads

test_denied_or_of_another_kind = reads(
    [
        ("Abscess near fore, it's not clear today.", ["LF finding abscess"]),
        ("Thrush near hind wasn't dry now.", ["LH finding thrush"]),
        ("Corn near fore. Hinds cold today.", ["LF finding corn"]),
        ("Heat in both fores last time, cold now.", ["LF+RF finding heat resolved"]),
        ("Bruise near fore, resolved. Off fore is worse.", ["LF finding bruise resolved"]),
    ],
    "Tally. {}",
)

test_not_put_right_nor_bidden = reads(
    [
        (
            "Corn in the near fore. Padded it. Actually, it's the off hind, the one with the crack.",
            ["LF finding corn", "RH finding crack"],
        ),
        ("Asked the groom to hold him and dug out the abscess near fore.", ["LF finding abscess"]),
    ],
    "Tally. {}",
)

test_cut_off_at_the_end = reads(
    [
        ("Corn near fore. When Buck", ["LF finding corn"]),
        ("Corn near fore. still a bit left", ["LF finding corn"]),
        ("Testers positive left front and right front", ["LF+RF tester positive"]),
        ("Corn in the right hind too, in the heel. I'd say mild", ["RH finding corn @heel ~mild"]),
    ],
    "Tally. {}",
)

test_capitals_throughout = reads(
    [("BAD THRUSH BOTTOM OF THE FROG NEAR HIND.", ["LH finding thrush @frog ~severe"])], "TALLY. {}"
)
