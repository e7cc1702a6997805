"""What is not there on the other foot: "right hind wasn't", "nope, none there", "behind either of them".

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_not_on_the_other_foot = reads(
    [
        ("Left hind was sprung, right hind wasn't.", ["LH shoe_state sprung", "RH shoe_state sprung absent"]),
        ("Near fore was loose, off fore wasn't.", ["LF shoe_state loose", "RF shoe_state loose absent"]),
        ("Left front was worn, the right front was not.", ["LF shoe_state worn", "RF shoe_state worn absent"]),
        ("The off hind was loose, the near hind isn't.", ["LH shoe_state loose absent", "RH shoe_state loose"]),
        (
            "White line separation in the right front, at the toe, moderate, and the left front hasn't got any.",
            ["LF finding white_line_separation absent", "RF finding white_line_separation @toe ~moderate"],
        ),
        ("Thrush in the near hind, and the off hind hasn't any.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Flare on the left front, right front hasn't got one.", ["LF finding flare", "RF finding flare absent"]),
        (
            "Seedy toe in the off fore, bad, and the near fore is free of it.",
            ["LF finding white_line_disease absent", "RF finding white_line_disease ~severe"],
        ),
        (
            "White line separation, right front, toe, mild, no, moderate, and the left front hasn't got any.",
            ["LF finding white_line_separation absent", "RF finding white_line_separation @toe ~moderate"],
        ),
        (
            "Left hind, thrush, frog, mild, right hind, nope, none there.",
            ["LH finding thrush @frog ~mild", "RH finding thrush absent"],
        ),
        ("Thrush left hind, right hind, nothing there.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Left hind, thrush. Right hind, nope.", ["LH finding thrush", "RH finding thrush absent"]),
        (
            "Left hind, thrush, mild, right hind none. Copper sulfate in the one that's got it.",
            ["LH finding thrush ~mild", "LH treatment copper_sulfate", "RH finding thrush absent"],
        ),
        (
            "Toe crack in each fore, mild in the near, severe in the off, and no keratoma behind either of them.",
            ["LF finding crack @toe ~mild", "LF+RF finding keratoma absent", "RF finding crack @toe ~severe"],
        ),
        ("Corn in both fronts, no pus behind either of them.", ["LF+RF finding abscess absent", "LF+RF finding corn"]),
        ("Cracks in both fores, no abscess under either one.", ["LF+RF finding abscess absent", "LF+RF finding crack"]),
        ("Near fore was loose, off fore wasn't lame.", ["LF shoe_state loose", "RF gait lame absent"]),
        ("Trimmed in front, thrush behind.", ["LF+RF work trim", "LH+RH finding thrush"]),
    ],
    "Buck. {}",
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

test_which_of_the_findings_the_other_feet_have_not = reads(
    [
        (
            "Scratches on both hinds, swelling in the left hind. Nothing like it up front, no scratches on the fronts.",
            ["LF+RF finding scratches absent", "LH finding swelling", "LH+RH finding scratches"],
        ),
        (
            "Thrush in both hinds, a crack in the left hind. None in front, no thrush in either fore.",
            ["LF+RF finding thrush absent", "LH finding crack", "LH+RH finding thrush"],
        ),
        (
            "Thrush in the left hind. None in the right hind, no heat in it either.",
            ["LH finding thrush", "RH finding heat absent", "RH finding thrush absent"],
        ),
        (
            "Thrush in the left hind. None in the fronts, no corns in the fronts.",
            ["LF+RF finding corn absent", "LF+RF finding thrush absent", "LH finding thrush"],
        ),
    ],
    "Buck. {}",
)
