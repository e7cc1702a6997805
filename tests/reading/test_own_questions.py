"""Questions that are answered at once, words said more exactly, and what is coming back.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_rims_under_the_heading_of_pads = reads(
    [
        ("Pads, I was thinking leather, went with rims, both hinds.", ["LH+RH pad rim"]),
        ("Pads in front, I went with rims.", ["LF+RF pad rim"]),
        ("Pads, rims on the fronts.", ["LF+RF pad rim"]),
        ("Rims on the fronts, pads, leather.", ["LF+RF pad leather", "LF+RF shoe_type rim"]),
    ],
    "Tansy. {}",
)

test_ones_own_question = reads(
    [
        ("Corn in the near fore, medial heel, or was it the bar, it was the bar.", ["LF finding corn @bar"]),
        ("Bruise in the left front at the toe, or was it the heel, it was the heel.", ["LF finding bruise @heel"]),
        ("Thrush in the near hind, or was it the off hind, it was the off.", ["RH finding thrush"]),
        ("Thrush in the near hind, frog, or was it the sulcus, no, it was the frog.", ["LH finding thrush @frog"]),
        ("Six nails in front, or was it seven, it was seven.", ["LF+RF nails 7"]),
    ],
    "Tansy. {}",
)

test_her_four_are_feet = reads(
    [
        ("No flares on any of her four.", ["LF+RF+LH+RH finding flare absent"]),
        ("No thrush in any of his four.", ["LF+RF+LH+RH finding thrush absent"]),
        ("Six nails in each of her four.", ["LF+RF+LH+RH nails 6"]),
    ],
    "Tansy. {}",
)

test_asked_and_in_doubt = reads(
    [
        (
            "Is there a corn? I did wonder, off fore, medial heel, can't say for certain.",
            ["RF finding corn suspected @medial_heel"],
        ),
        ("Is it an abscess? I wonder, near fore, hard to say.", ["LF finding abscess suspected"]),
        ("Thrush? Possibly, left hind.", ["LH finding thrush suspected"]),
        (
            "Was there a bruise? Maybe, right front, at the toe, I couldn't swear to it.",
            ["RF finding bruise suspected @toe"],
        ),
        ("Is there sidebone in the off fore? No.", ["RF finding sidebone absent"]),
    ],
    "Tansy. {}",
)

test_coming_back = reads(
    [
        (
            "She's had laminitis before, year before last, and I think she's brewing it again.",
            ["- finding laminitis history", "- finding laminitis suspected"],
        ),
        (
            "Had an abscess in the left front in the spring, and I think he's brewing it again.",
            ["LF finding abscess history", "LF finding abscess suspected"],
        ),
        (
            "She had laminitis last year, and I'd say she's getting it again.",
            ["- finding laminitis history", "- finding laminitis suspected"],
        ),
        (
            "Had thrush in the hinds in the winter, and it looks like it's coming back.",
            ["LH+RH finding thrush history", "LH+RH finding thrush suspected"],
        ),
    ],
    "Tansy. {}",
)

test_the_last_of_a_row = reads(
    [
        ("Body score, six, seven, I'll say seven.", ["- body_condition 7"]),
        ("Condition score, five, six, call it six.", ["- body_condition 6"]),
    ],
    "Tansy. {}",
)

test_one_foot_more_than_the_pair = reads(
    [
        (
            "Pulse raised in the fronts, well, more than raised, bounding in the near fore, just raised in the off.",
            ["LF pulse bounding", "RF pulse raised"],
        ),
        ("Pulse raised in both fronts, bounding in the left.", ["LF pulse bounding", "RF pulse raised"]),
        (
            "Fronts, club foot the off, underrun heels the near. Trimmed, those.",
            ["LF finding underrun_heels", "LF+RF work trim", "RF finding club_foot"],
        ),
        (
            "Pulse raised in the fronts, well, more than raised, bounding in the near fore.",
            ["LF pulse bounding", "RF pulse raised"],
        ),
        ("Pulse raised in the off fore, more than raised, bounding.", ["RF pulse bounding"]),
    ],
    "Tansy. {}",
)

test_only_where_is_asked = reads(
    [
        (
            "A crack in the near hind, at the toe, or was it the heel? No, I'm reading it off, it was the quarter.",
            ["LH finding crack @quarter"],
        ),
        ("A bruise in the off fore at the heel, or was it the toe? It was the toe.", ["RF finding bruise @toe"]),
        ("A crack at the toe of the near fore, or was it the quarter? I forget.", ["LF finding crack @toe"]),
        ("Corn in the near fore, or was it the off fore? I'll check.", ["LF finding corn"]),
        ("Thrush in the off hind, mild, or is it moderate? Moderate I'd say.", ["RH finding thrush ~moderate"]),
        (
            "Is that a corn at the heel of the near fore, or is it a bruise? No.",
            ["LF finding bruise absent", "LF finding corn absent @heel"],
        ),
        ("Is there a crack in the near fore, or is it dirt? Dirt.", []),
    ],
    "Tansy. {}",
)

test_a_question_answered_by_where = reads(
    [
        ("Thrush? Off hind, mild.", ["RH finding thrush ~mild"]),
        ("Any thrush? A touch in the off hind.", ["RH finding thrush ~mild"]),
        ("Any thrush? Yes, off hind, mild.", ["RH finding thrush ~mild"]),
        ("Was there a corn? Off fore, inside heel.", ["RF finding corn @medial_heel"]),
        ("Any heat? Only in the near fore.", ["LF finding heat"]),
        (
            "Any thrush? Near hind, mild, off hind, moderate.",
            ["LH finding thrush ~mild", "RH finding thrush ~moderate"],
        ),
        ("Any corns? Off fore, none in the near.", ["LF finding corn absent", "RF finding corn"]),
        ("Thrush? In the near hind, iodine on it.", ["LH finding thrush", "LH treatment iodine"]),
        # no answer, another answer, or a denial
        ("Is there thrush? Both hinds trimmed.", ["LH+RH work trim"]),
        ("Any heat? Near fore pulse normal.", ["LF pulse normal"]),
        ("Any corns? Neither fore.", ["LF+RF finding corn absent"]),
        ("Any heat? In the near fore, no.", []),
        ("Was there thrush? In the near hind, maybe.", ["LH finding thrush suspected"]),
    ],
    "Tansy. {}",
)

test_a_doubt_denied_foot_by_foot = reads(
    [
        (
            "Pulse normal in both fronts. So I think abscess. None in the left front and none in the right front.",
            ["LF+RF finding abscess absent", "LF+RF pulse normal"],
        ),
        (
            "Reset the fronts. I was thinking abscess. No abscess in the near fore, no abscess in the off fore.",
            ["LF+RF finding abscess absent", "LF+RF work reset"],
        ),
        (
            "Reset the fronts. Maybe an abscess in both fronts. No heat in the near fore.",
            ["LF finding heat absent", "LF+RF finding abscess suspected", "LF+RF work reset"],
        ),
    ],
    "Tansy. {}",
)

test_only_one_is_new = reads(
    [
        ("Only the off fore is new, the near fore I reset.", ["LF work reset", "RF work new_shoe"]),
        ("Just the right hind's new, left hind reset.", ["LH work reset", "RH work new_shoe"]),
        ("Only the near fore has a new crack.", ["LF finding crack"]),
    ],
    "Tansy. {}",
)

test_asked_and_denied = reads(
    [
        (
            "Right front, wall loss, outside quarter. Was it the outside? No. That wall loss is the inside quarter.",
            ["RF finding wall_loss @medial_quarter"],
        ),
        (
            "Crack at the medial heel, left front. Was it medial? No, it's the lateral heel.",
            ["LF finding crack @lateral_heel"],
        ),
    ]
)

test_asked_and_so_it_was = reads(
    [
        (
            "Left front, corn, inside heel. Was it the inside? Yes. Corn in the right front, outside heel.",
            ["LF finding corn @medial_heel", "RF finding corn @lateral_heel"],
        ),
        (
            "Flare on the left hind, outside. Was it sore on the outside? No. Thrush in the left hind.",
            ["LH finding flare @lateral", "LH finding thrush"],
        ),
    ]
)

test_fittings_asked_and_not_there = reads(
    [
        ("Fronts reset. Studs? No, no studs in any of the four.",
         ["LF+RF work reset", "LF+RF+LH+RH traction studs absent"]),
        ("Fronts new. Pads? None. Six weeks.", ["- next_visit_weeks 6 planned", "LF+RF work new_shoe"]),
        ("Fronts new. Toe clips? No, side clips on both fronts.", ["LF+RF clips side", "LF+RF work new_shoe"]),
        ("Fronts reset. Studs? Yes, both of them.", ["LF+RF traction studs", "LF+RF work reset"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_an_aside_that_asks_to_be_believed = reads(
    [
        ("Quadruple aughts, if you can believe they make them, both fores, new.",
         ["LF+RF shoe_size 0000", "LF+RF work new_shoe"]),
        ("Size aught, if you'd believe it, both hinds, new.", ["LH+RH shoe_size 0", "LH+RH work new_shoe"]),
        ("If he pulls it again I'll put new shoes on both fronts.", ["LF+RF work new_shoe planned"]),
        ("I believe it's a corn in the near fore.", ["LF finding corn suspected"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_fittings_asked_and_answered_in_other_words = reads(
    [
        ("Reset behind. Studs? Not this time.",
         ["LH+RH traction studs absent", "LH+RH work reset"]),
        ("Reset behind. Studs? Owner says no.",
         ["LH+RH traction studs absent", "LH+RH work reset"]),
        ("New behind. Road nails? No need.",
         ["LH+RH traction road_nails absent", "LH+RH work new_shoe"]),
        ("New in front. Leather pads? Not yet.",
         ["LF+RF pad leather absent", "LF+RF work new_shoe"]),
        ("Reset behind. Studs? Not as many as last time.",
         ["LH+RH traction studs", "LH+RH work reset"]),
        ("New in front. Toe clips? No, quarter clips.",
         ["LF+RF clips quarter", "LF+RF work new_shoe"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_a_question_to_oneself_inside_a_clause = reads(
    [
        ("She foundered, what was it, two years ago.", ["- finding laminitis history"]),
        ("She had laminitis, when would it be, last spring.", ["- finding laminitis history"]),
        ("An abscess in the near fore, when was it, two years ago.", ["LF finding abscess history"]),
        ("She'd a corn in the off fore, how long ago was it, a year ago.", ["RF finding corn history"]),
        ("Two years ago she was sound. She has foundered.", ["- finding laminitis", "- gait sound history"]),
    ],
    "Tansy. {}",
)

test_a_place_taken_back_before_the_right_one = reads(
    [
        (
            "Left hind, thrush in the, uh, not the sulcus, the commissure, mild.",
            ["LH finding thrush @commissure ~mild"],
        ),
        ("Thrush in the near hind, not the frog, the sulcus.", ["LH finding thrush @sulcus"]),
        ("A crack in the off hind at the, what is it, not the toe, the quarter.", ["RH finding crack @quarter"]),
        ("Near fore testers, strong over the, er, not the toe, the frog.", ["LF tester strong @frog"]),
        ("Left hind, thrush in the sulcus, not the frog.", ["LH finding thrush @sulcus"]),
        (
            "Crack at the toe of the right fore, not on the left fore.",
            ["LF finding crack absent", "RF finding crack @toe"],
        ),
    ],
    "Tansy. {}",
)

test_the_same_and_then_not = reads(
    [
        (
            "Near fore, a bruise at the toe, bad. Off fore the same, no, not the same, it's mild and at the heel.",
            ["LF finding bruise @toe ~severe", "RF finding bruise @heel ~mild"],
        ),
        (
            "Near hind crack at the toe. Off hind the same thing, no, not quite the same, it's at the quarter.",
            ["LH finding crack @toe", "RH finding crack @quarter"],
        ),
        (
            "Off fore, flare on the outside. Near fore the same thing, no, I tell a lie, it's on the inside.",
            ["LF finding flare @medial", "RF finding flare @lateral"],
        ),
        (
            "Near fore, thrush in the sulcus, bad. Off fore same again, no, it's only mild.",
            ["LF finding thrush @sulcus ~severe", "RF finding thrush @sulcus ~mild"],
        ),
        (
            "Near fore, a bruise at the toe, bad. Off fore the same thing, only it's mild.",
            ["LF finding bruise @toe ~severe", "RF finding bruise @toe ~mild"],
        ),
    ],
    "Tansy. {}",
)

test_weeks_agreed_with_another = reads(
    [
        ("Six weeks, or did we say five? Five, she's showing him.", ["- next_visit_weeks 5 planned"]),
        ("Seven weeks, or did we say eight. Eight.", ["- next_visit_weeks 8 planned"]),
        ("Six weeks, or did we say five? Six.", ["- next_visit_weeks 6 planned"]),
    ],
    "Tansy. {}",
)
