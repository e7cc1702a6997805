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


test_where_it_is_before_what_else_is_told = reads(
    [
        (
            "Tally's got himself an abscess. It's the right hind, at the toe, and I opened it.",
            ["RH finding abscess", "RH treatment drained"],
        ),
        ("Tally has a corn. It's the left front, and I pared it.", ["LF finding corn"]),
        (
            "She's lost a shoe. It was the near fore, and I nailed it back on.",
            ["LF shoe_state lost", "LF work put_back"],
        ),
        # something else is of the foot
        ("Tally. Abscess in the left front. It's the right front that's lame.", ["LF finding abscess", "RF gait lame"]),
        ("Tally. Trimmed. It's the right hind, he's lame on it.", ["LF+RF+LH+RH work trim", "RH gait lame"]),
    ]
)

test_how_lame_on_the_foot_that_is_sore = reads(
    [
        ("Tally's crook on the near hind, I'd call it three out of five.", ["LH lameness 3"]),
        ("Tally. Sore on the near hind, that's a two out of five.", ["LH lameness 2"]),
        ("Tally. Ouchy on the off fore, call it a one out of five.", ["RF lameness 1"]),
        ("Tally. Corn in the off fore. Lame, I'd call it two out of five.", ["- lameness 2", "RF finding corn"]),
        (
            "Tally. High on the outside, left front, is she? She's high on the outside.",
            ["LF finding imbalance @lateral"],
        ),
    ]
)

test_the_finding_before_worse_on_another_foot = reads(
    [
        (
            "Tally. Thrush in the near hind, mild. The off hind is worse.",
            ["LH finding thrush ~mild", "RH finding thrush"],
        ),
        (
            "Tally. Corn in the near fore, mild, and the off fore is worse, severe.",
            ["LF finding corn ~mild", "RF finding corn ~severe"],
        ),
        ("Tally. Thrush in the near hind, and the off hind's a lot worse.", ["LH+RH finding thrush"]),
        (
            "Tally. Thrush in both hinds, the off hind is worse, severe.",
            ["LH finding thrush", "RH finding thrush ~severe"],
        ),
        ("Tally. Testers mild near fore, off fore is worse.", ["LF tester mild"]),
        ("Tally. Corn in the near fore. The off fore is worse for wear.", ["LF finding corn"]),
        ("Tally. Near hind had thrush last time, the off hind was worse.", ["LH finding thrush history"]),
    ]
)

test_what_the_vet_told_of_it = reads(
    [
        ("Tally. His left front's got navicular, the vet told us that in the spring.", ["LF finding navicular"]),
        (
            "Tally. He's a navicular horse, both fronts, the vet told them that and I believe it.",
            ["LF+RF finding navicular"],
        ),
        ("Tally. Navicular in both fronts, I believe.", ["LF+RF finding navicular suspected"]),
        ("Tally. I believe it's navicular, both fronts.", ["LF+RF finding navicular suspected"]),
        ("Tally. Laminitis, and they told me she had it last spring.", ["- finding laminitis history"]),
    ]
)
