"""A foot shod as another one, what one pair has and the other has not, and one number for both feet.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_the_other_got = reads(
    [
        (
            "Left hind new shoe, number two, steel, eight nails. The right hind got exactly what the left hind got.",
            ["LH+RH nails 8", "LH+RH shoe_material steel", "LH+RH shoe_size 2", "LH+RH work new_shoe"],
        ),
        (
            "Near fore reset, six nails, full pad. Off fore got what the near fore got.",
            ["LF+RF nails 6", "LF+RF pad full", "LF+RF work reset"],
        ),
        (
            "Near hind reset, six nails. The off hind has exactly what the near hind has.",
            ["LH+RH nails 6", "LH+RH work reset"],
        ),
        (
            "Left front new egg bar, size three. The right front, just what the left front got.",
            ["LF+RF shoe_size 3", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        (
            "Right front loose, reset it, seven nails. Left front got whatever the right front got.",
            ["LF+RF nails 7", "LF+RF work reset", "RF shoe_state loose"],
        ),
        ("Left hind has thrush. The right hind got what the left hind got.", ["LH finding thrush"]),
        ("Left front reset. Right front is what the left front was last year.", ["LF work reset"]),
    ]
)

test_none_of_it_on_the_others = reads(
    [
        ("Studs on the hinds, none up front.", ["LF+RF traction studs absent", "LH+RH traction studs"]),
        (
            "Thrush in the left hind. Studs on the hinds, none up front.",
            ["LF+RF traction studs absent", "LH finding thrush", "LH+RH traction studs"],
        ),
        ("Borium on both fronts, none on the hinds.", ["LF+RF traction borium", "LH+RH traction borium absent"]),
        ("Toe clips in front, none behind.", ["LF+RF clips toe", "LH+RH clips toe absent"]),
        ("Full pads on the fronts, none on the hinds.", ["LF+RF pad full", "LH+RH pad full absent"]),
        ("Road nails near hind, none in the off hind.", ["LH traction road_nails", "RH traction road_nails absent"]),
        # none of a finding, and no shoes at all
        ("Flares on both hinds, none up front.", ["LF+RF finding flare absent", "LH+RH finding flare"]),
        ("Borium behind, nothing in front.", ["LH+RH traction borium"]),
        ("New shoes in front, six nails, none behind.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
    ]
)

test_both_of_them = reads(
    [
        (
            "I reset the right front with five nails and the left front with six.",
            ["LF nails 6", "LF+RF work reset", "RF nails 5"],
        ),
        (
            "New egg bar on the near fore with six nails and on the off fore with seven.",
            ["LF nails 6", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe", "RF nails 7"],
        ),
        (
            "Reset the near hind in a size two and the off hind in a three.",
            ["LH shoe_size 2", "LH+RH work reset", "RH shoe_size 3"],
        ),
        (
            "I reset the right front with five nails and the left front got a new shoe.",
            ["LF work new_shoe", "RF nails 5", "RF work reset"],
        ),
        (
            "I reset the right front with five nails, and the left front has six in it.",
            ["LF nails 6", "RF nails 5", "RF work reset"],
        ),
        (
            "Left front reset. Right front reset as well, six nails, five slims, both of them.",
            ["LF+RF nail_size 5 slim", "LF+RF work reset", "RF nails 6"],
        ),
        (
            "Left front new shoe. Right front new shoe, size two, both.",
            ["LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Near hind reset, off hind reset too, side clips, the pair of them.",
            ["LH+RH clips side", "LH+RH work reset"],
        ),
        (
            "Both fronts new shoes, zero on the left front and a one on the right front, rocker toes, steel, the pair "
            "of them.",
            [
                "LF shoe_size 0",
                "LF+RF shoe_material steel",
                "LF+RF shoe_type rocker_toe",
                "LF+RF work new_shoe",
                "RF shoe_size 1",
            ],
        ),
        (
            "Six nails in the near fore, seven in the off fore, rim pads, steel, both of them.",
            ["LF nails 6", "LF+RF pad rim", "LF+RF shoe_material steel", "RF nails 7"],
        ),
        ("Left front reset, six nails, both of them quiet.", ["- manner quiet", "LF nails 6", "LF work reset"]),
    ]
)

test_not_one_foot = reads(
    [
        ("Not one foot with thrush.", ["LF+RF+LH+RH finding thrush absent"]),
        ("Not one hoof has thrush.", ["LF+RF+LH+RH finding thrush absent"]),
        ("Not a single foot with any thrush in it.", ["LF+RF+LH+RH finding thrush absent"]),
        ("Not one of his feet had any cracks.", ["LF+RF+LH+RH finding crack absent"]),
        ("Not one foot on her has white line disease.", ["LF+RF+LH+RH finding white_line_disease absent"]),
        (
            "Left front has a corn. Not one of the four has thrush.",
            ["LF finding corn", "LF+RF+LH+RH finding thrush absent"],
        ),
        ("No foot's got thrush.", ["LF+RF+LH+RH finding thrush absent"]),
        ("No foot with a crack in it.", ["LF+RF+LH+RH finding crack absent"]),
        ("Not one foot held a clinch, reset all round.", ["LF+RF+LH+RH work reset"]),
    ]
)
