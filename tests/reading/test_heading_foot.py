"""A finding, its foot, and a foot without it; never there is not gone; when to come again; a doubted grade."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Thrush. Left hind. None in the right hind.", ["LH finding thrush", "RH finding thrush absent"]),
    ("Tally. Thrush. Left hind. Right hind none.", ["LH finding thrush", "RH finding thrush absent"]),
    ("Tally. Corn. Off fore. Nothing in the near fore.", ["LF finding corn absent", "RF finding corn"]),
    ("Tally. Bruise. Right front. None in the left front.", ["LF finding bruise absent", "RF finding bruise"]),
    ("Tally. Thrush then. Near fore none, near hind a bit.", ["LF finding thrush absent", "LH finding thrush ~mild"]),
    ("Tally. Never had thrush in the left hind, and there's none now.", ["LH finding thrush absent"]),
    ("Tally. Never had thrush and there's none today, any foot.", ["LF+RF+LH+RH finding thrush absent"]),
    ("Tally. Had thrush in the left hind, and there's none now.", ["LH finding thrush resolved"]),
    ("Tally. Wants doing again in five.", ["- next_visit_weeks 5 planned"]),
    ("Tally. Next time in six.", ["- next_visit_weeks 6 planned"]),
    ("Buck. Due again in seven.", ["- next_visit_weeks 7 planned"]),
    ("Buck. Booked for six.", ["- next_visit_weeks 6 planned"]),
    ("Buck. Next trip in five, or sooner.", ["- next_visit_weeks 5 planned"]),
    ("Buck. Seen again in four.", ["- next_visit_weeks 4 planned"]),
    ("Buck. Next visit in eight.", ["- next_visit_weeks 8 planned"]),
    ("Buck. Lame on the right hind, maybe a two.", ["RH lameness 2 suspected"]),
    ("Buck. Lame on the off fore, about a three.", ["RF lameness 3"]),
    ("Buck. Both fronts down for six nails.", ["LF+RF nails 6"]),
]

test_heading_foot = reads(CASES)

test_a_finding_put_first = reads(
    [
        ("Left front reset. Corn, she has one in the right front.", ["LF work reset", "RF finding corn"]),
        (
            "Left front reset. Abscess, he's got one in the off hind, drained it.",
            ["LF work reset", "RH finding abscess", "RH treatment drained"],
        ),
        (
            "Fronts reset. Thrush, she had it in the off hind at Easter, cleared up now.",
            ["LF+RF work reset", "RH finding thrush resolved"],
        ),
        (
            "Fronts reset. Seedy toe, she had that in the near fore last time, all grown out.",
            ["LF finding white_line_disease resolved", "LF+RF work reset"],
        ),
        ("Left front reset. Heat, there's some in the right hind.", ["LF work reset", "RH finding heat"]),
        # told of a foot before, it is on both
        ("Left front, corn, he has it in the right front as well.", ["LF+RF finding corn"]),
        ("Left front has a corn, she has one in the right front.", ["LF+RF finding corn"]),
        (
            "In the left front a corn, he had one in the right front last time.",
            ["LF finding corn", "RF finding corn history"],
        ),
        ("Left front reset. Thrush, there's none in the right hind.", ["LF work reset", "RH finding thrush absent"]),
    ]
)

test_a_foot_alone_heads_how_lame_he_is = reads(
    [
        ("Emergency, left hind. Four out of five lame.", ["LH lameness 4"]),
        ("Off fore. Grade two lame. Testers strong at the toe.", ["RF lameness 2", "RF tester strong @toe"]),
        ("Left hind first. Two out of five lame.", ["LH lameness 2"]),
        ("Off fore. Lame.", ["RF gait lame"]),
        ("Near fore. Short strided.", ["LF gait short_stride"]),
        # a statement of its own, or the foot is another's
        ("Near fore. He's lame.", ["- gait lame"]),
        ("Near fore, thrush. Lame.", ["- gait lame", "LF finding thrush"]),
        ("Lost a shoe. Left front. Lame.", ["- gait lame", "LF shoe_state lost"]),
        ("Hinds. Overreaching.", ["- gait overreach"]),
        ("Near fore. Sound.", ["- gait sound"]),
    ],
    "Tally. {}",
)
