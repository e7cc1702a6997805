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

test_reset_them_and_that_too = reads(
    [
        (
            "Left front was worn, right front was worn, and I only reset them, so next time they both get new shoes.",
            ["LF+RF shoe_state worn", "LF+RF work new_shoe planned", "LF+RF work reset"],
        ),
        (
            "Near fore loose. Off fore sprung. Reset them, six nails.",
            ["LF shoe_state loose", "LF+RF nails 6", "LF+RF work reset", "RF shoe_state sprung"],
        ),
        (
            "Near fore shoe was loose, so I reset that, and the off fore too while I was there, plain, size nought.",
            ["LF shoe_state loose", "LF+RF shoe_size 0", "LF+RF shoe_type plain", "LF+RF work reset"],
        ),
        (
            "I reset the near hind, and the off hind too, rims, size two.",
            ["LH+RH shoe_size 2", "LH+RH shoe_type rim", "LH+RH work reset"],
        ),
        ("Near hind trimmed. Off fore loose, reset it.", ["LH work trim", "RF shoe_state loose", "RF work reset"]),
        ("I reset the near hind, and the off hind has a corn too, mild.", ["LH work reset", "RH finding corn ~mild"]),
        (
            "I reset the near fore, and trimmed the off fore too, five nails.",
            ["LF work reset", "RF nails 5", "RF work trim"],
        ),
    ],
    "Tansy. {}",
)


test_the_other_diagonal = reads(
    [
        (
            "Tally. The near fore and off hind got reset. The other diagonal I'll reset on Friday.",
            ["LF+RH work reset", "RF+LH work reset planned"],
        ),
        (
            "Tally. Bruise in the near hind, copper sulfate into the pair of them.",
            ["LH finding bruise", "LH+RH treatment copper_sulfate"],
        ),
    ]
)

test_both_behind_their_size = reads(
    [
        ("Size two, both plain.", ["LF work reset", "LF+RF shoe_size 2", "LF+RF shoe_type plain", "RF work new_shoe"]),
        (
            "Ones, both of them steel.",
            ["LF work reset", "LF+RF shoe_material steel", "LF+RF shoe_size 1", "RF work new_shoe"],
        ),
        (
            "Size two on that one, both plain.",
            ["LF work reset", "LF+RF shoe_type plain", "RF shoe_size 2", "RF work new_shoe"],
        ),
        ("Corn there, both plain.", ["LF work reset", "LF+RF shoe_type plain", "RF finding corn", "RF work new_shoe"]),
    ],
    "Tally. Left front reset, right front's a new one. {}",
)
