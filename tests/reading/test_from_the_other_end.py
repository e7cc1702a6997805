"""A foot told from another one: "the one behind it", "the diagonal hind", "its fellow", and "the near I reset"."""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_foot_told_from_the_other_end = reads(
    [
        (
            "Tally, quarter crack on the off fore, and the one behind it on the same side has seedy toe.",
            ["RF finding crack @quarter", "RH finding white_line_disease"],
        ),
        ("Tally, thrush in the near fore, the one behind it has a corn.", ["LF finding thrush", "LH finding corn"]),
        ("Tally, corn in the left fore, thrush in the hind on that side.", ["LF finding corn", "LH finding thrush"]),
        (
            "Tally, abscess in the off hind. The fore on the same side has a bruise.",
            ["RF finding bruise", "RH finding abscess"],
        ),
        (
            "Tally, near fore has a toe crack, and the diagonal hind has thrush, so copper sulfate went in that one.",
            ["LF finding crack @toe", "RH finding thrush", "RH treatment copper_sulfate"],
        ),
        ("Tally, thrush in the off hind, corn in the diagonal fore.", ["LF finding corn", "RH finding thrush"]),
        (
            "Tally, left front has a bruise, the diagonally opposite hind has heat.",
            ["LF finding bruise", "RH finding heat"],
        ),
        # neighbours
        (
            "Tally, crack on the off fore, and seedy toe behind it.",
            ["RF finding crack", "RF finding white_line_disease"],
        ),
        ("Tally, trimmed the diagonal pair, near fore and off hind.", ["LF+RH work trim"]),
        ("Tally, corn in the off fore, sound behind.", ["LH+RH gait sound", "RF finding corn"]),
    ]
)

test_its_fellow_is_the_foot_across = reads(
    [
        (
            "Tally, thin sole on the right front, so that foot got a full pad. Its fellow was just reset.",
            ["LF work reset", "RF finding thin_sole", "RF pad full"],
        ),
        ("Tally, near fore new shoe, and its fellow got a reset.", ["LF work new_shoe", "RF work reset"]),
        ("Tally, corn in the off hind, the foot opposite has a bruise.", ["LH finding bruise", "RH finding corn"]),
    ]
)

test_the_near_i_reset = reads(
    [
        (
            "Tally, of his two fronts it was the off that got a leather pad, and the near I just reset.",
            ["LF work reset", "RF pad leather"],
        ),
        ("Tally, new shoe on the off fore, the near I just reset.", ["LF work reset", "RF work new_shoe"]),
        (
            "Tally, both fronts were loose. The off got a new shoe, the near I just reset.",
            ["LF work reset", "LF+RF shoe_state loose", "RF work new_shoe"],
        ),
        (
            "Tally, thrush in the hinds. The near I treated with iodine, the off I left alone.",
            ["LH treatment iodine", "LH+RH finding thrush"],
        ),
        (
            "Tally, of his two hinds it was the near that had thrush, and I put iodine in it.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        ("Tally, of the two fronts it's the near that's lame.", ["LF gait lame"]),
        ("Tally, of the two fronts it's the off that's lame.", ["RF gait lame"]),
    ]
)

test_done_to_the_other = reads(
    [
        ("Tally, reset the near hind, reset the other too.", ["LH+RH work reset"]),
        ("Tally, reset the near hind, and trimmed the other as well.", ["LH work reset", "RH work trim"]),
        (
            "Tally, near hind sprung. Reset it, and reset the other one too.",
            ["LH shoe_state sprung", "LH+RH work reset"],
        ),
        (
            "Tally, near hind was loose. I reset that and trimmed the other.",
            ["LH shoe_state loose", "LH work reset", "RH work trim"],
        ),
        ("Tally, new shoe on the near fore, reset the other.", ["LF work new_shoe", "RF work reset"]),
        # neighbours
        ("Tally, trimmed the near fore and the other two too.", ["LF+RF+LH+RH work trim"]),
        ("Tally, reset the near fore, trimmed the other three.", ["LF work reset", "RF+LH+RH work trim"]),
    ]
)
