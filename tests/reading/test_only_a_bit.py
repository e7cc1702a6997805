"""A denial with a little of it left over behind "only", "just" or a comma; and nothing at all.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_none_but_a_little = reads(
    [
        ("No thrush, only a bit in the near hind.", ["- finding thrush absent", "LH finding thrush ~mild"]),
        (
            "No thrush anywhere, only a bit in the near hind.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush ~mild"],
        ),
        (
            "No heat in any of them, just a touch in the near fore.",
            ["LF finding heat ~mild", "RF+LH+RH finding heat absent"],
        ),
        ("No heat anywhere, a touch in the near fore.", ["- finding heat absent", "LF finding heat ~mild"]),
        (
            "No thrush in the fronts, just a bit in the near hind.",
            ["LF+RF finding thrush absent", "LH finding thrush ~mild"],
        ),
        ("No thrush in the near hind, a bit in the off hind.", ["LH finding thrush absent", "RH finding thrush ~mild"]),
        ("No corn, only a bruise in the near fore.", ["LF finding bruise", "LF finding corn absent"]),
        ("No abscess, just a bit of bruising, near fore.", ["LF finding abscess absent", "LF finding bruise ~mild"]),
        (
            "No canker, just a touch of thrush in the near hind.",
            ["LH finding canker absent", "LH finding thrush ~mild"],
        ),
        (
            "No thrush in the near hind, a bit of heat in the near fore.",
            ["LF finding heat ~mild", "LH finding thrush absent"],
        ),
        ("No bar shoe, only a plain one on the near fore.", ["LF shoe_type bar absent", "LF shoe_type plain"]),
        ("No pads, just a bit of putty in the near fore.", ["LF packing putty"]),
    ],
    "Tansy. {}",
)

test_none_of_them = reads(
    [
        ("Heat in none of them, not even the left front.", ["LF+RF+LH+RH finding heat absent"]),
        ("Thrush in none of them.", ["LF+RF+LH+RH finding thrush absent"]),
        ("No thrush in any of them, not even the near hind.", ["LF+RF+LH+RH finding thrush absent"]),
    ],
    "Tansy. {}",
)

test_nothing_done_or_lost = reads(
    [
        ("Nothing lost.", ["- shoe_state lost absent"]),
        ("Nothing loose, nothing lost.", ["- shoe_state loose absent", "- shoe_state lost absent"]),
        ("Reset all round, nothing else needed.", ["LF+RF+LH+RH work reset"]),
        ("Had been in wedge pads in front, I left them off today.", ["LF+RF pad wedge history"]),
        ("Shoes and pads in front were wrecked, I left them off.", ["LF+RF work removed"]),
        ("Fronts were loose, I left them off.", ["LF+RF shoe_state loose", "LF+RF work removed"]),
    ],
    "Tansy. {}",
)

test_not_liked_and_not_minded = reads(
    [
        (
            "Didn't care for the testers across the sole of the near fore, but didn't mind at the heels.",
            ["LF tester none @heel", "LF tester positive @sole"],
        ),
        ("He didn't like the testers across the toe, near fore.", ["LF tester positive @toe"]),
        ("He wasn't keen on the testers, off fore.", ["RF tester positive"]),
        ("He's not half as sore on the testers as he was, near fore.", ["LF tester positive"]),
        ("He was not bothered by the testers, both fronts.", ["LF+RF tester none"]),
        ("Not much of a pulse in either front.", ["LF+RF pulse normal"]),
        ("Hardly a pulse in the near fore.", ["LF pulse normal"]),
        ("A bit much of a pulse in the near fore.", ["LF pulse raised"]),
        ("Heat and a pulse in the near hind.", ["LH finding heat", "LH pulse raised"]),
    ],
    "Tansy. {}",
)
