"""What there was none of was not used, where the thing used instead is told behind it; the degree behind "a bit of".

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_ran_out = reads(
    [
        (
            "Thrush near fore. Put iodine. No, the iodine ran out at the last place, it was copper sulphate.",
            ["LF finding thrush", "LF treatment copper_sulfate"],
        ),
        (
            "Thrush near fore. Put iodine on it. No, I was out of iodine, it was copper sulphate.",
            ["LF finding thrush", "LF treatment copper_sulfate"],
        ),
        (
            "Thrush near fore. Iodine on it, no, the iodine ran out, copper sulphate.",
            ["LF finding thrush", "LF treatment copper_sulfate"],
        ),
        ("New in front, leather pads, no, the leathers ran out, full pads.", ["LF+RF pad full", "LF+RF work new_shoe"]),
        ("Thrush near fore. Iodine on it. I ran out of copper sulphate.", ["LF finding thrush", "LF treatment iodine"]),
        (
            "Thrush near fore. Iodine on it, then I ran out. Flare off fore.",
            ["LF finding thrush", "LF treatment iodine", "RF finding flare"],
        ),
        (
            "Thrush near fore. Iodine on it, and soaked it.",
            ["LF finding thrush", "LF treatment iodine", "LF treatment soak"],
        ),
    ],
    "Tansy. {}",
)

test_a_bit_of_it = reads(
    [
        (
            "Near fore, a bit of seedy toe at the lateral quarter, moderate I suppose.",
            ["LF finding white_line_disease @lateral_quarter ~moderate"],
        ),
        ("A bit of thrush in the near fore, severe in the sulcus.", ["LF finding thrush @sulcus ~severe"]),
        (
            "A bit of thrush in the near fore, severe in the off fore.",
            ["LF finding thrush ~mild", "RF finding thrush ~severe"],
        ),
        ("A bit of thrush near fore, the corn is moderate.", ["LF finding corn ~moderate", "LF finding thrush ~mild"]),
        ("A touch of flare near fore, mild.", ["LF finding flare ~mild"]),
    ],
    "Tansy. {}",
)
