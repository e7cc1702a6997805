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
