"""Two feet told one by one, and what the two of them got.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_two_told_apart_before = reads(
    [
        (
            "Loose near hind, the off hind's sprung, so I took the two off and put new on, steel. "
            "Road nails in them. Five nails a foot.",
            [
                "LH shoe_state loose",
                "LH+RH nails 5",
                "LH+RH shoe_material steel",
                "LH+RH traction road_nails",
                "LH+RH work new_shoe",
                "RH shoe_state sprung",
            ],
        ),
        (
            "The left front was worn, the right front was loose. I took the two off and nailed new on, size two.",
            ["LF shoe_state worn", "LF+RF shoe_size 2", "LF+RF work new_shoe", "RF shoe_state loose"],
        ),
        (
            "Left front sprung. Right front worn thin. New shoes on the two, six nails a foot.",
            ["LF shoe_state sprung", "LF+RF nails 6", "LF+RF work new_shoe", "RF shoe_state worn"],
        ),
        (
            "Left front has a leather pad, the right front a rim pad. Oakum under them.",
            ["LF pad leather", "LF+RF packing oakum", "RF pad rim"],
        ),
        (
            "Left front, thrush. Iodine on it. Right front new shoe, six nails.",
            ["LF finding thrush", "LF treatment iodine", "RF nails 6", "RF work new_shoe"],
        ),
        (
            "The near fore was loose and the off fore was sprung. I pulled the two, put new on.",
            ["LF shoe_state loose", "LF+RF work new_shoe", "RF shoe_state sprung"],
        ),
    ],
    "Tansy. {}",
)
