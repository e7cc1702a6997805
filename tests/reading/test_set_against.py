"""What was not used, given up or only looked out for; the foot put first and set right; what others had said.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_such_words_are_set_against = reads(
    [
        ("Instead of rim pads I used full pads on the fronts.", ["LF+RF pad full"]),
        ("Rather than bar shoes I went plain in front.", ["LF+RF shoe_type plain"]),
        ("Gave up on the wedges in front, plain shoes now.", ["LF+RF pad wedge history", "LF+RF shoe_type plain"]),
        (
            "Stopped using iodine on the left hind, copper sulfate now.",
            ["LH treatment copper_sulfate", "LH treatment iodine history"],
        ),
        (
            "Putty in the fronts this time in place of the silicone he had before.",
            ["LF+RF packing putty", "LF+RF packing silicone history"],
        ),
        (
            "Rim pads in front instead of the full pads he had last time.",
            ["LF+RF pad full history", "LF+RF pad rim"],
        ),
        ("Might need a bar shoe on the left front yet.", ["LF shoe_type bar planned"]),
        ("The left front may end up in a bar shoe.", ["LF shoe_type bar planned"]),
        ("She's booked for wedges in front in the new year.", ["LF+RF pad wedge planned"]),
        ("Keep an eye on the left front for heat.", []),
        ("Watch the hinds for any sign of thrush.", []),
        ("I watched him trot, thrush in the left hind.", ["LH finding thrush"]),
        ("I was afraid of an abscess in the left front but it's only a bruise.", ["LF finding bruise"]),
        ("Afraid it was a corn in the off fore, and it's just a bruise.", ["RF finding bruise"]),
    ],
    "Tansy. {}",
)

test_the_foot_put_first_and_set_right = reads(
    [
        ("It wasn't the left front that was lame, it was the right.", ["RF gait lame"]),
        ("It isn't the near fore that has the corn, it's the off fore.", ["RF finding corn"]),
        ("It wasn't the left hind that had thrush, it was the right hind, mild.", ["RH finding thrush ~mild"]),
        ("It wasn't lame.", ["- gait lame absent"]),
    ],
    "Tansy. {}",
)

test_what_others_said_is_denied_by_what_was_found = reads(
    [
        ("Owner reckons there's a corn in the left front, I can't find one.", ["LF finding corn absent"]),
        ("Supposedly has sidebone in the right front, I felt none.", ["RF finding sidebone absent"]),
        ("They said he'd lost the left front, he hadn't.", ["LF shoe_state lost absent"]),
        ("I'd been told there was thrush in the hinds, there isn't.", ["LH+RH finding thrush absent"]),
        ("Testers strong on the left front last week, nothing today.", ["LF tester none", "LF tester strong history"]),
    ],
    "Tansy. {}",
)
