"""What others are told to do, what should be, and what is done until then.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_told_to_do = reads(
    [
        ("Told the owner to keep her in and poultice that near fore.", ["LF treatment poultice planned"]),
        ("Told them to box her and soak the off fore.", ["RF treatment soak planned"]),
        (
            "Owner's been told to clean out the near hind and spray it with purple spray.",
            ["LH treatment antiseptic planned"],
        ),
        ("Left instructions to poultice the near fore.", ["LF treatment poultice planned"]),
        ("Told the owner to hold her and poulticed the near fore.", ["LF treatment poultice"]),
        ("Told her to keep him in and poulticed the near fore.", ["LF treatment poultice"]),
        ("Told the groom to hold him and I trimmed the hinds.", ["LH+RH work trim"]),
        ("Asked the owner to hold the testers, near fore positive at the toe.", ["LF tester positive @toe"]),
        ("Owner asked me to poultice the near fore so I did.", ["LF treatment poultice"]),
    ],
    "Tansy. {}",
)

test_should_be = reads(
    [
        ("He should be in bar shoes in front.", ["LF+RF shoe_type bar planned"]),
        ("He should really be in bar shoes in front but they won't pay.", []),
        ("Should be in leather pads but they said no. Reset all round.", ["LF+RF+LH+RH work reset"]),
    ],
    "Tansy. {}",
)

test_until_then = reads(
    [
        (
            "If the vet says so we'll put a bar on the near fore, until then I reset it.",
            ["LF shoe_type bar planned", "LF work reset"],
        ),
        (
            "We'll go to wide webs in front next time, till then I've reset him.",
            ["LF+RF shoe_type wide_web planned", "LF+RF work reset"],
        ),
        (
            "We'll go to wide webs next time, in the meantime I reset the fronts.",
            ["LF+RF shoe_type wide_web planned", "LF+RF work reset"],
        ),
        ("Back Friday, keep iodine on the near hind till then.", ["LH treatment iodine planned"]),
    ],
    "Tansy. {}",
)
