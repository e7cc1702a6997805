"""A foot that is the subject of a clause of its own closes no list before it, and one of its own after all does."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. New steel on the hinds, size six, toe clips, fronts are fine and stay on.",
        ["LH+RH clips toe", "LH+RH shoe_material steel", "LH+RH shoe_size 6", "LH+RH work new_shoe"],
    ),
    (
        "Tally. Reset the hinds, six nails, side clips, fronts weren't due.",
        ["LH+RH clips side", "LH+RH nails 6", "LH+RH work reset"],
    ),
    (
        "Tally. New shoes in front, size two, leather pads, hinds stay bare.",
        ["LF+RF pad leather", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
    ),
    ("Tally. Trimmed the fronts, mild flare, hinds look well.", ["LF+RF finding flare ~mild", "LF+RF work trim"]),
    (
        "Tally. Rims on the fronts, aluminum, the hinds do without.",
        ["LF+RF shoe_material aluminum", "LF+RF shoe_type rim"],
    ),
    (
        "Buck. Reset in front, rolled toes, silicone, the hinds were done last week.",
        ["LF+RF packing silicone", "LF+RF shoe_type rolled_toe", "LF+RF work reset"],
    ),
    (
        "Buck. Hinds shod, road nails, six each, his fronts are in good order.",
        ["LH+RH nails 6", "LH+RH traction road_nails"],
    ),
    (
        "Buck. New plates in front, size five, the hinds is another day's work.",
        ["LF+RF shoe_size 5", "LF+RF shoe_type racing_plate", "LF+RF work new_shoe"],
    ),
    (
        "Buck. Glue-ons on the fronts, plastic, both hinds are all right as they are.",
        ["LF+RF shoe_material plastic", "LF+RF shoe_type glue_on"],
    ),
    (
        "Buck. Fronts reset, six nails, quarter clips, hinds did not need it.",
        ["LF+RF clips quarter", "LF+RF nails 6", "LF+RF work reset"],
    ),
    ("Buck. I pricked him, near fore that was.", ["LF finding quicked"]),
    ("Buck. Thrush in three of them, left hind's the worst.", ["LH finding thrush"]),
    ("Buck. Corn, bruise, left front.", ["LF finding bruise", "LF finding corn"]),
]

test_foot_alone = reads(CASES)


test_only_where_it_is = reads(
    [
        ("Tally. There's a corn, and it's on the near fore.", ["LF finding corn"]),
        ("It's thrush, vet says, and it's in both of Tally's hinds.", ["LH+RH finding thrush"]),
        ("Full pads on Tally, but on the fores only.", ["LF+RF pad full"]),
        ("Tally. Three degree wedge, but only under the near fore.", ["LF pad wedge", "LF wedge 3"]),
        ("Tally. Full pads, but not in front.", ["- pad full"]),
        ("Tally. Near hind, thrush, and it's the off fore I'm watching.", ["LH finding thrush"]),
        ("Tally. A corn, but the near fore was only reset.", ["- finding corn", "LF work reset"]),
    ]
)


test_the_foot_in_an_answer = reads(
    [
        ("Tally. Any thrush? Yes, in the left hind. Right hind, no.", ["LH finding thrush"]),
        ("Tally. Is there a bruise? There is, in the near fore. Off fore, no.", ["LF finding bruise"]),
    ]
)


test_going_round_from_a_foot = reads(
    [
        ("Tally. Starting from the near fore, reset, off fore new shoe.", ["LF work reset", "RF work new_shoe"]),
        ("Tally. Round him from the left hind, trimmed, right hind trimmed.", ["LH+RH work trim"]),
        ("Tally. Seen from the near fore, he was lame, off fore trimmed.", ["- gait lame", "RF work trim"]),
    ]
)
