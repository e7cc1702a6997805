"""The same place, the same count, and a lost shoe that was found and nailed back up.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_same_place_and_count = reads(
    [
        (
            "LF corn, medial heel, bad one. Testers strong, same heel.",
            ["LF finding corn @medial_heel ~severe", "LF tester strong @medial_heel"],
        ),
        ("LF bruise at the toe. Testers moderate, same place.", ["LF finding bruise @toe", "LF tester moderate @toe"]),
        (
            "Heat near hind at the coronet, swelling with it, same place.",
            ["LH finding heat @coronary_band", "LH finding swelling @coronary_band"],
        ),
        ("Bruise left front, toe. Testers strong, same spot.", ["LF finding bruise @toe", "LF tester strong @toe"]),
        (
            "Corn off fore, inside heel. Testers moderate on the same heel.",
            ["RF finding corn @medial_heel", "RF tester moderate @medial_heel"],
        ),
        (
            "Flare left front, medial quarter. Crack in the same quarter.",
            ["LF finding crack @medial_quarter", "LF finding flare @medial_quarter"],
        ),
        ("Same place as last week, Buck in the end box. Thrush left hind.", ["LH finding thrush"]),
        ("RH reset, seven nails. LH reset, same count.", ["LH+RH nails 7", "LH+RH work reset"]),
        ("RH reset, seven nails. LH reset, same number of nails.", ["LH+RH nails 7", "LH+RH work reset"]),
        ("New shoes, near fore six nails. Off fore, same nail count.", ["LF+RF nails 6", "RF work new_shoe"]),
        ("RH reset, seven nails, LH the same number.", ["LH+RH nails 7", "LH+RH work reset"]),
        (
            "Off fore, abscess, poultice, left the shoe off.",
            ["RF finding abscess", "RF treatment poultice", "RF work removed"],
        ),
        ("Off hind lost, dug it out of the mud, nailed it back up.", ["RH shoe_state lost", "RH work put_back"]),
    ],
    "Buck. {}",
)

test_a_little_one_on_the_same_side = reads(
    [
        (
            "Flare on the right front, outside, moderate, and the left front has a little one, mild, on the same side.",
            ["LF finding flare @lateral ~mild", "RF finding flare @lateral ~moderate"],
        ),
        (
            "Corn in the off fore, inside heel, and the near fore has a small one, same place.",
            ["LF finding corn @medial_heel ~mild", "RF finding corn @medial_heel"],
        ),
        (
            "Corn in the off fore, inside heel, and the near fore has a small one.",
            ["LF finding corn ~mild", "RF finding corn @medial_heel"],
        ),
    ],
    "Tally. {}",
)
