"""What would do is put forward, not put on; a strike takes back what was said last, also where that was no fact."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Boots would do in front.", ["LF+RF shoe_type boot planned"]),
    ("Tally. I told them boots would do on the hinds, they can try them.", ["LH+RH shoe_type boot planned"]),
    ("Tally. A rim pad would be plenty on the left front.", ["LF pad rim planned"]),
    ("Tally. Glue-ons would suit in front.", ["LF+RF shoe_type glue_on planned"]),
    ("Tally. Leather pads would do up front next time.", ["LF+RF pad leather planned"]),
    ("Tally. A bar shoe would serve on the off fore.", ["RF shoe_type bar planned"]),
    (
        "Buck. Plain steel would do on the hinds.",
        ["LH+RH shoe_material steel planned", "LH+RH shoe_type plain planned"],
    ),
    ("Buck. Full pads would be enough in front.", ["LF+RF pad full planned"]),
    ("Buck. Side clips would do on the hinds.", ["LH+RH clips side planned"]),
    ("Buck. Egg bars would do him in front.", ["LF+RF shoe_type egg_bar planned"]),
    ("Buck. Boots on in front, and they do him well.", ["LF+RF shoe_type boot"]),
    ("Buck. Wall loss on the right front, and the left front's a beauty, leave that out.", ["RF finding wall_loss"]),
    (
        "Buck. Corn in the near fore, iodine on it, and the off fore looks all right, scratch that.",
        ["LF finding corn", "LF treatment iodine"],
    ),
    ("Buck. Thrush in the right hind, scratch that.", []),
]

test_would_do = reads(CASES)
