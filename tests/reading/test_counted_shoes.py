"""Shoes that are counted, "two new shoes", have no size of two; work without a foot leaves the feet named elsewhere."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Four number fives, one in each foot.", ["LF+RF+LH+RH shoe_size 5"]),
    (
        "Four fives, one on each foot. Six nails in each.",
        ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 5"],
    ),
    ("Two number threes, one on each front.", ["LF+RF shoe_size 3"]),
    ("Two twos, one on each hind.", ["LH+RH shoe_size 2"]),
    (
        "Four number five rims, one on each foot.",
        ["LF+RF+LH+RH shoe_size 5", "LF+RF+LH+RH shoe_type rim"],
    ),
    ("Four double aughts, one on each foot.", ["LF+RF+LH+RH shoe_size 00"]),
    ("Nails: four number fives, one in each foot.", []),  # asked
    ("Two number threes, one in each foot.", []),  # asked: of which feet
    ("Reset all round. Four number fives, one in each heel.", ["LF+RF+LH+RH work reset"]),  # asked
    (
        "New shoes, size two all round. Four number fives, one in each foot.",  # asked
        ["LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe"],
    ),
    (
        "All four reset. Six number fives in each foot.",
        ["LF+RF+LH+RH nail_size 5", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
    ),
    ("Fronts reset, six fives in each foot.", ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF work reset"]),
    (
        "A corn in the left front. Size two on the fores and one on the hinds.",
        ["LF finding corn", "LF+RF shoe_size 2", "LH+RH shoe_size 1"],
    ),
    (
        "Bruise in the near fore. Number three on the near fore and one on the off fore.",
        ["LF finding bruise", "LF shoe_size 3", "RF shoe_size 1"],
    ),
    ("Noughts on the fores and one on the hinds.", ["LF+RF shoe_size 0", "LH+RH shoe_size 1"]),
    ("Zero on the left front and one on the right front.", ["LF shoe_size 0", "RF shoe_size 1"]),
    (
        "Size two on the fores, a corn in the near fore and one in the off fore.",
        ["LF+RF finding corn", "LF+RF shoe_size 2"],
    ),
    ("Bruise on the near fore and one on the off hind.", ["LF+RH finding bruise"]),
    ("New triple noughts on his fores.", ["LF+RF shoe_size 000", "LF+RF work new_shoe"]),
    ("New number twos behind.", ["LH+RH shoe_size 2", "LH+RH work new_shoe"]),
    ("A new double aught on the near fore.", ["LF shoe_size 00", "LF work new_shoe"]),
    ("Nothing new. Double noughts on the fores.", ["LF+RF shoe_size 00"]),
    (
        "New one on the left front, size two, aluminum. Right front new, same size, same stuff.",
        ["LF+RF shoe_material aluminum", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
    ),
    (
        "New one on the near fore, size nought, aluminium, and the off fore was worn out, so that's new as well, same "
        "size, same stuff.",
        ["LF+RF shoe_material aluminum", "LF+RF shoe_size 0", "LF+RF work new_shoe", "RF shoe_state worn"],
    ),
    (
        "Near hind, thrush, iodine on it. Off hind, thrush, same stuff.",
        ["LH+RH finding thrush", "LH+RH treatment iodine"],
    ),
    ("He has the same stuff in his feed. Trimmed the left front.", ["LF work trim"]),
    ("Tally. Two new shoes in front.", ["LF+RF work new_shoe"]),
    ("Tally. Two new shoes, front, size one.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
    ("Tally. Put two new shoes on behind.", ["LH+RH work new_shoe"]),
    ("Tally. Four new shoes.", ["LF+RF+LH+RH work new_shoe"]),
    ("Tally. Three new shoes and the off hind reset.", ["LF+RF+LH work new_shoe", "RH work reset"]),
    ("Tally. One new shoe on the left front.", ["LF work new_shoe"]),
    ("Tally. Two resets in front and two new shoes behind.", ["LF+RF work reset", "LH+RH work new_shoe"]),
    ("Tally. Two brand new shoes behind, size three.", ["LH+RH shoe_size 3", "LH+RH work new_shoe"]),
    ("Tally. Front shoes two, new shoes.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
    ("Tally. A two new shoe on the left front.", ["LF shoe_size 2", "LF work new_shoe"]),
    (
        "Tally. New shoes, size one, six nails. Hinds trimmed.",
        ["- nails 6", "- shoe_size 1", "LF+RF work new_shoe", "LH+RH work trim"],
    ),
    ("Tally. Reset today. The off hind got a new shoe.", ["LF+RF+LH work reset", "RH work new_shoe"]),
    ("Tally. New shoes and the off hind reset.", ["LF+RF+LH work new_shoe", "RH work reset"]),
]

test_counted_shoes = reads(CASES)

test_zeros = reads(
    [
        ("Size zeros behind, seven in each.", ["LH+RH nails 7", "LH+RH shoe_size 0"]),
        (
            "Number five nails in front. Size zeroes behind, five in each.",
            ["LF+RF nail_size 5", "LH+RH nails 5", "LH+RH shoe_size 0"],
        ),
        ("New zeros behind, ones in front.", ["LF+RF shoe_size 1", "LH+RH shoe_size 0", "LH+RH work new_shoe"]),
        (
            "Reset in front, six nails. Size fours behind, five in each.",
            ["LF+RF nails 6", "LF+RF work reset", "LH+RH nails 5", "LH+RH shoe_size 4"],
        ),
        ("Zero thrush in the left hind.", ["LH finding thrush absent"]),
    ],
    "Buck. {}",
)

test_new_of_a_size_on_one_foot = reads(
    [
        ("New two on the left front.", ["LF shoe_size 2", "LF work new_shoe"]),
        (
            "Trimmed the hinds. New three for the off fore with toe clips.",
            ["LH+RH work trim", "RF clips toe", "RF shoe_size 3", "RF work new_shoe"],
        ),
        ("New two and a half on his off hind.", ["RH shoe_size 2.5", "RH work new_shoe"]),
        ("New number two on the left front.", ["LF shoe_size 2", "LF work new_shoe"]),
        ("New two degree wedge on the left front.", ["LF pad wedge", "LF wedge 2"]),
        ("Nothing new, two on the left front were loose.", ["LF shoe_state loose"]),
        ("New one on the off fore.", ["RF work new_shoe"]),
    ],
    "Buck. {}",
)

test_the_how_manieth_shoe_is_no_size = reads(
    [
        (
            "Lost the off hind, that's shoe number three this year. Size two on it.",
            ["RH shoe_size 2", "RH shoe_state lost"],
        ),
        ("Near fore lost, that makes number two since May.", ["LF shoe_state lost"]),
        ("Off fore lost, number four he's lost in there.", ["RF shoe_state lost"]),
        ("Near hind lost, which is shoe number two so far.", ["LH shoe_state lost"]),
        ("New shoes in front, number three, six nails.", ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe"]),
        ("He's a number two in front this year.", ["LF+RF shoe_size 2"]),
        ("Pulled the two front shoes.", ["LF+RF work removed"]),
        ("Reset his two hind shoes.", ["LH+RH work reset"]),
        ("Size two front shoes, new.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
        ("Growth rings on all four, nothing new in that.", ["LF+RF+LH+RH finding growth_rings"]),
        ("Thrush behind, there's never anything new in that.", ["LH+RH finding thrush"]),
    ],
    "Tally. {}",
)

test_nails_follow_the_sizes_of_both_ends = reads(
    [
        (
            "New shoes all round, size five on the fronts and four on the hinds, seven in the fronts, six in the hinds",
            ["LF+RF nails 7", "LF+RF shoe_size 5", "LF+RF+LH+RH work new_shoe", "LH+RH nails 6", "LH+RH shoe_size 4"],
        ),
        (
            "Reset. Size two in front, one behind. Six in front, five behind.",
            ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH nails 5", "LH+RH shoe_size 1"],
        ),
        (
            "Size two on the fronts, size one on the hinds, eight in the fronts and six in the hinds.",
            ["LF+RF nails 8", "LF+RF shoe_size 2", "LH+RH nails 6", "LH+RH shoe_size 1"],
        ),
        ("Sizes, fronts are four, hinds are three.", ["LF+RF shoe_size 4", "LH+RH shoe_size 3"]),
    ],
    "Tally. {}",
)


test_new_on_those = reads(
    [
        (
            "Hinds were worn, so new on those as well, size five.",
            ["LH+RH shoe_size 5", "LH+RH shoe_state worn", "LH+RH work new_shoe"],
        ),
        ("Hinds are worn out, new on those.", ["LH+RH shoe_state worn", "LH+RH work new_shoe"]),
        (
            "Left front corn. Egg bars, brand new ones, both fronts.",
            ["LF finding corn", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        ("Corn left front, brand new ones on the hinds.", ["LF finding corn", "LH+RH work new_shoe"]),
        # nothing new
        ("Hinds reset, nothing new on them.", ["LH+RH work reset"]),
        ("Fronts trimmed, he'll need new on those next time.", ["LF+RF work trim"]),
    ],
    "Tally. {}",
)
