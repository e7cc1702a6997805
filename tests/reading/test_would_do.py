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

test_what_will_not_do_was_not_used = reads(
    [
        (
            "Thrush in the off hind. Purple spray isn't going to cut it, so copper sulphate.",
            ["RH finding thrush", "RH treatment copper_sulfate"],
        ),
        ("A rim pad wouldn't be enough, so full pads in front.", ["LF+RF pad full"]),
        (
            "Canker in the near hind. Iodine won't touch it, so I resected.",
            ["LH finding canker", "LH treatment resection"],
        ),
        ("Poultice on the near fore and don't touch it till Friday.", ["LF treatment poultice"]),
        ("Sedated next time or I don't do it.", ["- manner sedated planned"]),
        ("Copper sulphate in the off hind, I couldn't do it all.", ["RH treatment copper_sulfate"]),
    ],
    "Tally. {}",
)

test_what_comes_when_he_is_due_is_planned = reads(
    [
        (
            "Due in five weeks, when the near hind goes back into a plain shoe if it's comfortable.",
            ["- next_visit_weeks 5 planned", "LH shoe_type plain planned"],
        ),
        (
            "He'll be due in six weeks, when the fronts get leather pads.",
            ["- next_visit_weeks 6 planned", "LF+RF pad leather planned"],
        ),
        (
            "Six weeks, when she gets her studs in all four.",
            ["- next_visit_weeks 6 planned", "LF+RF+LH+RH traction studs planned"],
        ),
        ("Back in four weeks when the ground dries up.", ["- next_visit_weeks 4 planned"]),
        (
            "When the near hind is sound she goes back into plain shoes. Six weeks.",
            ["- next_visit_weeks 6 planned", "LH shoe_type plain planned"],
        ),
        ("Lowri has promised to soak that near hind.", ["LH treatment soak planned"]),
        ("I said get the vet and get her sedated.", ["- manner sedated planned", "- vet referral planned"]),
        ("Told them get her sedated or I'm not coming.", ["- manner sedated planned"]),
        ("Get him sedated before I come again.", ["- manner sedated planned"]),
        ("I had to get her sedated.", ["- manner sedated"]),
        ("We got her sedated and trimmed all four.", ["- manner sedated", "LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)
