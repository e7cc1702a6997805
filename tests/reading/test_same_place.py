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


test_denied_at_the_place_just_named = reads(
    [
        ("Near fore quarter, there's no crack there, it was only mud.", ["LF finding crack absent @quarter"]),
        (
            "Thought there was a crack at the near fore quarter. There's no crack there, it was only mud.",
            ["LF finding crack absent @quarter"],
        ),
        (
            "At the toe of the off fore I thought I'd a crack, but there's no crack there.",
            ["RF finding crack absent @toe"],
        ),
        ("Checked the sulcus on the near hind. No thrush there.", ["LH finding thrush absent @sulcus"]),
        ("Checked the frog of the near hind. No thrush in it.", ["LH finding thrush absent @frog"]),
        ("Pared the near fore at the toe. Bruise there.", ["LF finding bruise @toe"]),
        # of another foot, or of something else
        ("Checked the frog of the near hind. Off hind, no thrush in it.", ["RH finding thrush absent"]),
        ("Checked the frog of the near hind. No thrush there on the off hind.", ["RH finding thrush absent"]),
        ("Near fore, bruise at the toe. No crack there.", ["LF finding bruise @toe", "LF finding crack absent"]),
        ("Near fore trimmed, took the toe back. No heat in it.", ["LF finding heat absent", "LF work trim"]),
        ("Toe clips in front, there's no crack there.", ["LF+RF clips toe", "LF+RF finding crack absent"]),
    ],
    "Tally. {}",
)

test_testers_there_behind_a_degree_or_foot = reads(
    [
        (
            "Right front still has the corn in the lateral heel, mild, testers mild there.",
            ["RF finding corn @lateral_heel ~mild", "RF tester mild @lateral_heel"],
        ),
        (
            "Bruise in the off fore, in the sole, moderate, testers positive there.",
            ["RF finding bruise @sole ~moderate", "RF tester positive @sole"],
        ),
        (
            "Crack at the toe in the near fore, testers were moderate right there.",
            ["LF finding crack @toe", "LF tester moderate @toe"],
        ),
        (
            "Corn in the lateral heel of the near fore, testers mild there, nothing on the off fore.",
            ["LF finding corn @lateral_heel", "LF tester mild @lateral_heel", "RF tester none"],
        ),
        (
            "Bruise in the toe of the near fore. Off fore, corn. Testers positive there.",
            ["LF finding bruise @toe", "RF finding corn", "RF tester positive"],
        ),
        ("Bruise in the near fore, at the toe, testers none there.", ["LF finding bruise @toe", "LF tester none"]),
        ("Corn in the near fore, testers positive there.", ["LF finding corn", "LF tester positive"]),
    ]
)
