"""What is not there at all, and what only sounds like it: "not a trace of it", "none there", "nothing to nail to".

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_not_a_trace_of_it = reads(
    [
        (
            "Mud fever on the off hind, bad, and not a trace of it on the other three.",
            ["LF+RF+LH finding scratches absent", "RH finding scratches ~severe"],
        ),
        (
            "Thrush in the left hind, and nothing of it in the fronts.",
            ["LF+RF finding thrush absent", "LH finding thrush"],
        ),
        (
            "Canker in the near hind, not a mark of it in the off hind.",
            ["LH finding canker", "RH finding canker absent"],
        ),
        (
            "Seedy toe in the off fore, not a speck of it in the near fore.",
            ["LF finding white_line_disease absent", "RF finding white_line_disease"],
        ),
        # on the foot that had it, it is gone
        (
            "She had thrush in the left hind in the spring, and not a trace of it in the left hind today.",
            ["LH finding thrush resolved"],
        ),
        ("He had thrush in the near hind last time. No sign of it in the near hind.", ["LH finding thrush resolved"]),
        (
            "She had thrush in the hinds in the spring, and no trace of it in the left hind today.",
            ["LH finding thrush resolved", "RH finding thrush history"],
        ),
    ]
)

test_feet_left_alone_and_sizes_of_pairs = reads(
    [
        ("Trimmed fronts, taped boots on 'em, never touched the hinds.", ["LF+RF shoe_type boot", "LF+RF work trim"]),
        ("Reset the fronts, put pads on them, never touched the hinds.", ["LF+RF work reset"]),
        ("Trimmed the hinds, put boots on them, left the fronts alone.", ["LH+RH shoe_type boot", "LH+RH work trim"]),
        ("New shoes in front, borium on them, hinds not touched.", ["LF+RF traction borium", "LF+RF work new_shoe"]),
        ("Trimmed the fronts, boots on both, hinds untouched.", ["LF+RF shoe_type boot", "LF+RF work trim"]),
        ("New shoes in front, six nails each, the hinds I left alone.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
        ("Pads on the fronts, didn't touch the hinds.", []),
        ("Thrush, left hind. Right hind none.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Thrush, left hind, and the right hind hasn't got any.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Cracks, left front none.", ["LF finding crack absent"]),
        (
            "Reset all round, size two fronts, one and a half hinds.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1.5"],
        ),
        (
            "Reset all round, size two fronts, one hinds.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round, size two hinds, three fronts.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 2"],
        ),
        ("Trimmed two fronts.", ["LF+RF work trim"]),
    ],
    "Buck. {}",
)

test_denied_behind_feet_that_were_only_named = reads(
    [
        (
            "Near fore, heat. The other three are fine, no heat in those.",
            ["LF finding heat", "RF+LH+RH finding heat absent"],
        ),
        (
            "Heat in the near fore. The others are cold, no heat there.",
            ["LF finding heat", "RF+LH+RH finding heat absent"],
        ),
        (
            "Thrush, the rear pair. There's no flare in all four.",
            ["LF+RF+LH+RH finding flare absent", "LH+RH finding thrush"],
        ),
        ("Near fore, heat. The other three are fine. No heat.", ["LF finding heat", "RF+LH+RH finding heat absent"]),
        (
            "Near hind, thrush. The rest look good, no thrush in any of those.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush"],
        ),
        (
            "Thrush in the near hind. The other one's fine, no thrush in that.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Corns in both fronts, hinds are fine, no corns in any of them.",
            ["LF+RF finding corn", "LH+RH finding corn absent"],
        ),
        ("Near fore, heat. The other three are fine. No thrush.", ["LF finding heat", "LF finding thrush absent"]),
        (
            "Near fore, heat. The other three are fine. No heat in the hinds.",
            ["LF finding heat", "LH+RH finding heat absent"],
        ),
        ("Corns in both fronts. No heat in those.", ["LF+RF finding corn", "LF+RF finding heat absent"]),
        (
            "Corn in the near fore. The other three are fine. Poultice on it.",
            ["LF finding corn", "LF treatment poultice"],
        ),
    ],
    "Buck. {}",
)

test_some_more_and_no_shoes = reads(
    [
        (
            "Wall loss at the inside quarter of the near fore, and some more in the off fore at the outside quarter.",
            ["LF finding wall_loss @medial_quarter", "RF finding wall_loss @lateral_quarter"],
        ),
        ("Thrush in the near hind, some more iodine on the off hind.", ["LH finding thrush", "RH treatment iodine"]),
        (
            "Testers strong at the toe, near fore, and none in the off fore. Hinds have nothing, I just trimmed them.",
            ["LF tester strong @toe", "LH+RH work trim", "RF tester none"],
        ),
        ("Thrush in the off fore. Hinds have nothing on, trimmed.", ["LH+RH work trim", "RF finding thrush"]),
        ("Testers mild on the near fore. Off fore has nothing.", ["LF tester mild", "RF tester none"]),
    ],
    "Tansy. {}",
)

test_nothing_to_nail_to_denies_nothing = reads(
    [
        (
            "She'd trodden her near hind shoe off, there was nothing left to nail to, so a new glue-on on that foot.",
            ["LH shoe_state lost", "LH shoe_type glue_on", "LH work new_shoe"],
        ),
        (
            "Near hind, wall loss at the toe, nowhere to nail, so I put a boot on it.",
            ["LH finding wall_loss @toe", "LH shoe_type boot"],
        ),
        (
            "Seedy toe in the near fore, so I did a resection. Didn't find any in the off fore.",
            ["LF finding white_line_disease", "LF treatment resection", "RF finding white_line_disease absent"],
        ),
        ("Thrush in the near fore, I couldn't see any in the off.", ["LF finding thrush", "RF finding thrush absent"]),
        (
            "A corn in the near fore. I couldn't find one in the off fore.",
            ["LF finding corn", "RF finding corn absent"],
        ),
        (
            "Thrush in the left hind. Didn't find any heat in the right hind.",
            ["LH finding thrush", "RH finding heat absent"],
        ),
        ("Near hind, thrush, nothing in the off hind.", ["LH finding thrush", "RH finding thrush absent"]),
    ],
    "Tansy. {}",
)

test_answered_no_and_none = reads(
    [
        (
            "Right front wall is weak, hardener on it, heat, no, none on either front.",
            ["LF+RF finding heat absent", "RF finding weak_wall", "RF treatment hardener"],
        ),
        (
            "Bruise in the near fore, mild, corns, no, none in front.",
            ["LF finding bruise ~mild", "LF+RF finding corn absent"],
        ),
        (
            "Left hind, mild thrush, corn, no, bruise at the toe.",
            ["LH finding bruise @toe", "LH finding thrush ~mild"],
        ),
        (
            "It could be a keratoma in the near fore, he had an abscess in that foot over the summer.",
            ["LF finding abscess history", "LF finding keratoma suspected"],
        ),
    ],
    "Tansy. {}",
)

test_there_again_behind_the_foot_denied = reads(
    [
        (
            "Thrush in the near fore, not the off fore, the near hind.",
            ["LF+LH finding thrush", "RF finding thrush absent"],
        ),
        (
            "Bruise in the left front, not the right front, the left hind.",
            ["LF+LH finding bruise", "RF finding bruise absent"],
        ),
        ("Heat in the near hind, not the off hind, the near fore.", ["LF+LH finding heat", "RH finding heat absent"]),
        (
            "A corn in the off fore, not the near fore, the off hind too.",
            ["LF finding corn absent", "RF+RH finding corn"],
        ),
        (
            "Thrush in the near fore, not in the off fore, in the near hind as well.",
            ["LF+LH finding thrush", "RF finding thrush absent"],
        ),
        (
            "Seedy toe in the left hind, not in the right hind, in the left front also.",
            ["LF+LH finding white_line_disease", "RH finding white_line_disease absent"],
        ),
        (
            "Mud fever on the off hind, not the near hind, the off fore.",
            ["LH finding scratches absent", "RF+RH finding scratches"],
        ),
        (
            "Scratches on the near hind, not on the off hind, but on the near fore too.",
            ["LF+LH finding scratches", "RH finding scratches absent"],
        ),
        (
            "A crack in the right front, not the left front, the right hind.",
            ["LF finding crack absent", "RF+RH finding crack"],
        ),
        (
            "Swelling in the left hind, not the right hind, the left front.",
            ["LF+LH finding swelling", "RH finding swelling absent"],
        ),
        # here it says nothing
        (
            "Thrush in the near fore, not the off fore or the near hind.",
            ["LF finding thrush", "RF+LH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not the off fore, nor the near hind.",
            ["LF finding thrush", "RF+LH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not in the off fore, the near hind or the off hind.",
            ["LF finding thrush", "RF+LH+RH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not the hinds, not the off fore.",
            ["LF finding thrush", "RF+LH+RH finding thrush absent"],
        ),
        ("No thrush in the off fore, the near hind.", ["RF+LH finding thrush absent"]),
    ]
)
