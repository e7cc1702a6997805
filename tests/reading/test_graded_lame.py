"""A bare grade of a horse just said to be lame; one gait said twice in a breath."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "A two for lameness, then I watched her turn and that's a three, three out of five on the right front.",
        ["RF lameness 3"],
    ),
    ("He's two out of five, two out of five on the left hind.", ["LH lameness 2"]),
    (
        "He's two out of five at the walk, three out of five on the left hind at the trot.",
        ["- lameness 2", "LH lameness 3"],
    ),
    ("Tally. She came up lame on the left front and I'd make it a two.", ["LF lameness 2"]),
    ("Tally. Lame on the left front, I'd call it a two.", ["LF lameness 2"]),
    ("Tally. Lame on the off fore, I'd say a three.", ["RF lameness 3"]),
    ("Tally. Lame on the near hind and I'd give it a one.", ["LH lameness 1"]),
    ("Tally. Lame on the left front, it's a two.", ["LF lameness 2"]),
    ("Tally. She's lame on the near fore. I'd put it at a two.", ["LF lameness 2"]),
    ("Tally. She's lame on the near fore. I gave her a three.", ["LF lameness 3"]),
    ("Tally. Hopping lame on the right hind, I made it a four.", ["RH lameness 4"]),
    ("Tally. Lame on the off hind, call it a two.", ["RH lameness 2"]),
    ("Tally. Lame on the left front, I'd make it a size two.", ["LF gait lame", "LF shoe_size 2"]),
    ("Tally. Lame on the left front. Body condition a six, I'd say a six.", ["- body_condition 6", "LF gait lame"]),
    (
        "Buck. Lame on the left front. New shoes in front, I'd make it a two.",
        ["LF gait lame", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
    ),
    ("Buck. He's a brushing sort, interferes behind at the trot.", ["LH+RH gait interfere"]),
    ("Buck. He forges, he forges.", ["- gait forge"]),
    ("Buck. He's lame, lame on the left front.", ["LF gait lame"]),
    ("Buck. She's lame, the owner thinks it's behind, and no, she's lame on the left front.", ["LF gait lame"]),
    ("Buck. Maybe she's lame, and yes, she's lame on the near fore.", ["LF gait lame"]),
    ("Buck. Lame on the near fore. Maybe lame on the off hind.", ["LF gait lame", "RH gait lame suspected"]),
    ("Buck. She brushes behind.", ["LH+RH gait interfere"]),
    ("Buck. He's brushing in front.", ["LF+RF gait interfere"]),
]

test_graded_lame = reads(CASES)

test_a_foot_that_heads_how_he_goes = reads(
    [
        ("They just led him over, so, left hind, he's four out of five lame.", ["LH lameness 4"]),
        ("Left hind, he's lame.", ["LH gait lame"]),
        ("Trimmed all round. Near fore, she's three out of five.", ["LF lameness 3", "LF+RF+LH+RH work trim"]),
        ("Now the off fore, she's two out of five lame.", ["RF lameness 2"]),
        ("Bar shoe on the left hind, he's lame.", ["- gait lame", "LH shoe_type bar"]),
        ("Near fore reset. He's lame, two out of five.", ["- lameness 2", "LF work reset"]),
        ("Near fore, he's interfering.", ["- gait interfere"]),
    ],
    "Tally. {}",
)

test_put_a_number_on_it = reads(
    [
        ("He's lame on the off hind, and if I had to put a grade on it I'd say two out of five.", ["RH lameness 2"]),
        ("She's lame on the near fore, if you want a number, three out of five.", ["LF lameness 3"]),
        ("If he's lame next time, the vet.", ["- vet referral planned"]),
        ("The shoe's off on the left hind.", ["LH work removed"]),
    ],
    "Tally. {}",
)

test_off_on_a_foot = reads(
    [
        ("Tally is off on the left hind.", ["LH gait lame"]),
        ("Tally was off on the near fore, two out of five.", ["LF lameness 2"]),
        ("Tally is off on Friday. Trimmed the hinds.", ["LH+RH work trim"]),
    ]
)

test_the_foot_that_is_spared = reads(
    [
        (
            "Won't so much as touch the right front down, and that's a five out of five in anybody's book.",
            ["RF lameness 5"],
        ),
        ("She won't put the right front down, and that's a five out of five.", ["RF lameness 5"]),
        ("He's pointing the near fore, and I'd call that a three out of five.", ["LF lameness 3"]),
        ("He's not putting any weight on the left hind, so that's a four out of five.", ["LH lameness 4"]),
        ("Put new shoes on the hinds, and that's a two out of five lame.", ["- lameness 2", "LH+RH work new_shoe"]),
    ],
    "Tansy. {}",
)

test_the_grade_told_of_goes_on = reads(
    [
        (
            "Three out of five on the near hind when they rang, that was Monday. Today she's down to a one on it.",
            ["LH lameness 1", "LH lameness 3 history"],
        ),
        ("He was Obel three. Well, he's a two.", ["- obel 2", "- obel 3 history"]),
        ("Left front two out of five on Friday. He's a one today.", ["LF lameness 1", "LF lameness 2 history"]),
        ("On a scale to five, he's a two on the right hind.", ["RH lameness 2"]),
        ("On a scale of five she's a three, left fore.", ["LF lameness 3"]),
        # sizes, and scores of something else
        (
            "Two out of five on the left front. New shoes in front, he's a two.",
            ["LF lameness 2", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        ("Near hind reset. He's a two on the near hind.", ["LH shoe_size 2", "LH work reset"]),
        ("Crest score three on a scale of five.", ["- cresty_neck 3"]),
    ],
    "Tansy. {}",
)

test_fifths = reads(
    [
        ("Lame on the near fore, I'd say two fifths.", ["LF lameness 2"]),
        ("One fifth lame on the off hind.", ["RH lameness 1"]),
        ("Three fifths of a mile from the gate. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("Took the hinds off and left them off. In front, new shoes, seven nails each side, no, seven in each foot.",
         ["LF+RF nails 7", "LF+RF work new_shoe", "LH+RH work removed"]),
    ],
    "Tally. {}",
)  # fmt: skip
