"""A treatment is on the foot that has the finding, also when another foot was named last as free of it."""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = [
    (
        (
            "Tally. Corn in the near fore, no, wait, it's in the off fore, "
            "and the near fore has none. Antiseptic on that."
        ),
        ["LF finding corn absent", "RF finding corn", "RF treatment antiseptic"],
    ),
    (
        "Tally. Thrush in the right hind, none in the left hind. Copper sulfate on that.",
        ["LH finding thrush absent", "RH finding thrush", "RH treatment copper_sulfate"],
    ),
    (
        "Tally. Corn in the left front, the right front has none. Iodine in it.",
        ["LF finding corn", "LF treatment iodine", "RF finding corn absent"],
    ),
    (
        "Tally. Abscess in the off fore, nothing in the near fore. Drained it and a poultice on.",
        ["LF finding abscess absent", "RF finding abscess", "RF treatment drained", "RF treatment poultice"],
    ),
    (
        "Tally. Thrush in both hinds, the fronts have none. Iodine on that.",
        ["LF+RF finding thrush absent", "LH+RH finding thrush", "LH+RH treatment iodine"],
    ),
    (
        "Tally. No thrush in the left hind, but the right hind has it. Iodine in there.",
        ["LH finding thrush absent", "RH finding thrush", "RH treatment iodine"],
    ),
    (
        "Tally. Thrush in the left hind, right hind's clean. Copper sulfate in it.",
        ["LH finding thrush", "LH treatment copper_sulfate", "RH finding thrush absent"],
    ),
    (
        "Tally. Heat in the left front, none in the right. Poulticed it.",
        ["LF finding heat", "LF treatment poultice", "RF finding heat absent"],
    ),
    (
        "Tally. Canker in the near hind, the off hind is clear of it. Antiseptic on that one.",
        ["LH finding canker", "LH treatment antiseptic", "RH finding canker absent"],
    ),
    (
        ("Tally. Scratches on all but the off hind, and there's none on that one. Antiseptic on the three of them."),
        ["LF+RF+LH finding scratches", "LF+RF+LH treatment antiseptic", "RH finding scratches absent"],
    ),
    (
        "Tally. Thrush in all but the left hind. Copper sulfate in the three of them.",
        ["LF+RF+RH finding thrush", "LF+RF+RH treatment copper_sulfate"],
    ),
    (
        "Tally. Three feet have thrush, not the off hind. Iodine in all three.",
        ["LF+RF+LH finding thrush", "LF+RF+LH treatment iodine"],
    ),
    (
        "Tally. Thrush in both hinds and the left front. Iodine in the three.",
        ["LF+LH+RH finding thrush", "LF+LH+RH treatment iodine"],
    ),
    (
        "Tally. Scratches on the fronts and the near hind, antiseptic on the three.",
        ["LF+RF+LH finding scratches", "LF+RF+LH treatment antiseptic"],
    ),
    (
        "Tally. Thrush in the right hind, none in the left hind. Left hind got hardener.",
        ["LH finding thrush absent", "LH treatment hardener", "RH finding thrush"],
    ),
    (
        "Tally. Corn in the left front. No thrush in the left hind. Put iodine on it anyway.",
        ["LF finding corn", "LH finding thrush absent", "LH treatment iodine"],
    ),
    (
        "Tally. Abscess in the near fore, none in the off fore. That shoe's been pulled and left off.",
        ["LF finding abscess", "LF work removed", "RF finding abscess absent"],
    ),
    (
        "Tally. Thrush in the near hind, nothing in the off hind. Resected the off hind.",
        ["LH finding thrush", "RH finding thrush absent", "RH treatment resection"],
    ),
    (
        "Tally. No abscess in the left front. Poulticed it all the same.",
        ["LF finding abscess absent", "LF treatment poultice"],
    ),
]

test_treated = reads(CASES)


def test_a_foot_named_for_what_is_done_keeps_it(read: Read) -> None:
    said = "Thrush in the left front, but none in the right front."
    removed = told(read(f"Tansy. {said} Pulled the shoe on the right front and left it off.", "Tansy")[0])
    assert removed == ["LF finding thrush", "RF finding thrush absent", "RF work removed"]
    soaked = told(read(f"Tansy. {said} Right front, footbath.", "Tansy")[0])
    assert soaked == ["LF finding thrush", "RF finding thrush absent", "RF treatment soak"]


test_dug_out_of_a_thrush_nothing_ran = reads(
    [
        (
            "Thrush in the right hind, severe. I dug it out and put copper sulfate in.",
            ["RH finding thrush ~severe", "RH treatment copper_sulfate"],
        ),
        ("Left hind thrush, opened it up and iodine in it.", ["LH finding thrush", "LH treatment iodine"]),
        ("Left hind abscess. I dug it out.", ["LH finding abscess", "LH treatment drained"]),
        (
            "Left hind thrush. Right hind abscess, dug it out.",
            ["LH finding thrush", "RH finding abscess", "RH treatment drained"],
        ),
    ],
    "Tansy. {}",
)

test_all_over_it_is_one_foot = reads(
    [
        ("Canker in the near hind, antiseptic all over it.", ["LH finding canker", "LH treatment antiseptic"]),
        ("Near fore, thrush. Iodine all over the sole.", ["LF finding thrush", "LF treatment iodine"]),
        ("Thrush in both hinds. Purple spray all over them.", ["LH+RH finding thrush", "LH+RH treatment antiseptic"]),
        ("Near fore, corn. Trimmed all over.", ["LF finding corn", "LF+RF+LH+RH work trim"]),
    ],
    "Tansy. {}",
)

test_opened_on_another_foot_it_is_no_thrush = reads(
    [
        ("Thrush in the near hind. Off fore, opened it up.", ["LH finding thrush", "RF treatment drained"]),
        (
            "Seedy toe in both hinds. Left front, dug it open.",
            ["LF treatment drained", "LH+RH finding white_line_disease"],
        ),
        (
            "Mud fever, off hind. Heat too. Near fore, opened that up.",
            ["LF treatment drained", "RH finding heat", "RH finding scratches"],
        ),
        # of the foot that it was told of, or of the one in hand
        ("Thrush in the near hind. Near hind, opened it up.", ["LH finding thrush"]),
        (
            "Seedy toe in both hinds. Right hind, dug it open.",
            ["LH+RH finding white_line_disease", "RH treatment resection"],
        ),
        ("Off hind. Seedy toe. Opened it up.", ["RH finding white_line_disease", "RH treatment resection"]),
        # a drainage hole is no wall opened
        (
            "White line disease in the off fore. Opened a drainage hole.",
            ["RF finding white_line_disease", "RF treatment drained"],
        ),
    ],
    "Tansy. {}",
)

test_opened_and_nothing_ran = reads(
    [
        ("Near fore, opened it up, nothing came out.", []),
        ("Near fore sore. Opened it up, no pus.", ["LF finding abscess absent"]),
        ("Near fore. Opened it up and looked, no abscess.", ["LF finding abscess absent"]),
        ("Off hind, dug it open and it was dry.", []),
        ("Off hind. Opened it up, nothing. Poulticed it.", ["RH treatment poultice"]),
        # it ran after all, or nothing is said of what ran
        (
            "Near fore abscess. Opened it up, nothing came out at first, then it ran.",
            ["LF finding abscess", "LF treatment drained"],
        ),
        (
            "Off fore abscess. Opened it up and pus ran, no abscess in the near fore.",
            ["LF finding abscess absent", "RF finding abscess", "RF treatment drained"],
        ),
        (
            "Off fore abscess. Opened it up, no heat.",
            ["RF finding abscess", "RF finding heat absent", "RF treatment drained"],
        ),
    ],
    "Tansy. {}",
)

test_what_is_put_on_the_finding_told_before = reads(
    [
        (
            "Scratches on both hinds. Thrush in the left hind. Antiseptic on the scratches, iodine on the thrush.",
            [
                "LH finding thrush",
                "LH treatment iodine",
                "LH+RH finding scratches",
                "LH+RH treatment antiseptic",
            ],
        ),
        (
            "Corn in the near fore. Reset in front. Poultice on the corn.",
            ["LF finding corn", "LF treatment poultice", "LF+RF work reset"],
        ),
        ("Off fore. Iodine on the thrush.", ["RF finding thrush", "RF treatment iodine"]),
        (
            "No thrush in front. Thrush behind. Iodine on the thrush.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush", "LH+RH treatment iodine"],
        ),
    ],
    "Tansy. {}",
)
