"""Why a word was wrong, said before the right one; and a repair that leaves the foot before it alone."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Tally. Obel one, no, I hadn't backed her up then, two.", ["- obel 2"]),
    ("Tally. Condition score nine, or no, I'd not be unkind, eight.", ["- body_condition 8"]),
    ("Tally. Toe angle on the left front fifty one, no, the gauge had slipped, forty nine.", ["LF toe_angle 49"]),
    (
        "Tally. New shoes in front, size two, no, that's last time's, a one.",
        ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
    ),
    ("Tally. Seven nails in the left front, no, one came out again, six.", ["LF nails 6"]),
    ("Tally. Cresty neck three, no, now I've a hand on it, four.", ["- cresty_neck 4"]),
    ("Tally. Back in six weeks, no, they're away then, five.", ["- next_visit_weeks 5 planned"]),
    ("Tally. Body condition six, no, with that belly on her, make it seven.", ["- body_condition 7"]),
    (
        "Tally. Heel height left front forty, sorry, I read that off the wrong side, thirty eight.",
        ["LF heel_height 38"],
    ),
    ("Tally. Condition score five, no, that's unkind, six.", ["- body_condition 6"]),
    (
        "Tally. Eight nails each in front, no, I only had the one box, six. Reset the fronts.",
        ["LF+RF nails 6", "LF+RF work reset"],
    ),
    ("Tally. Size eight, no, I'd measured wrong, size nine on the hinds.", ["LH+RH shoe_size 9"]),
    ("Tally. Six weeks, no, five if it's wet.", ["- next_visit_weeks 5 planned"]),
    (
        "Tally. Pulse raised in both hinds, bounding, no, normal in the fronts.",
        ["LF+RF pulse normal", "LH+RH pulse raised"],
    ),
    (
        "Tally. Testers strong on the left front, moderate, no, mild on the right front.",
        ["LF tester strong", "RF tester mild"],
    ),
    (
        "Tally. Thrush severe in the left hind, moderate, no, mild in the right hind.",
        ["LH finding thrush ~severe", "RH finding thrush ~mild"],
    ),
    (
        "Tally. Flare on the left front moderate, mild, sorry, severe on the right front.",
        ["LF finding flare ~moderate", "RF finding flare ~severe"],
    ),
    (
        "Tally. Pulse normal in the hinds, raised, I mean bounding, in both fronts.",
        ["LF+RF pulse bounding", "LH+RH pulse normal"],
    ),
    (
        "Tally. Nails six in the left front, seven, no, eight in the right front. Reset the fronts.",
        ["LF nails 6", "LF+RF work reset", "RF nails 8"],
    ),
    (
        "Tally. Sizes one in front, two, no, aught behind. New shoes all round.",
        ["LF+RF shoe_size 1", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 0"],
    ),
    ("Tally. Obel three, no, he'd only just come in, two.", ["- obel 2"]),
    ("Tally. Lame on the off fore, two out of five, no, he'd only just warmed up, one.", ["RF lameness 1"]),
    ("Tally. Thrush in the left hind, no, I wasn't looking, right hind.", ["RH finding thrush"]),
    ("Tally. Heat in the near fore, sorry, I'm facing the wrong way, off fore.", ["RF finding heat"]),
    ("Tally. Testers mild at the toe on the left front, no, I hadn't squeezed, moderate.", ["LF tester moderate @toe"]),
    ("Tally. Rim pads in front, no, I hadn't any left, mesh pads.", ["LF+RF pad mesh"]),
    ("Tally. Corn in the left front, no, that's not right, there's no corn.", ["LF finding corn absent"]),
    (
        "Tally. Five degree wedge on the right front, no, they don't make it, three degree.",
        ["RF pad wedge", "RF wedge 3"],
    ),
    ("Tally. Condition five, no, I don't like the ribs on her, four.", ["- body_condition 4"]),
]

test_reasons = reads(CASES)

test_how_small_the_foot_is_grades_nothing = reads(
    [
        ("Tally. Four nails a side in front. No wait, it's a small foot, three nails a side.", ["LF+RF nails 6"]),
        ("Size three in front, no, she's a small mare, two and a half.", ["LF+RF shoe_size 2.5"]),
        ("Six nails in front, no, let's be honest, five.", ["LF+RF nails 5"]),
        ("Grade three, no, let's be honest, four on the left front.", ["LF lameness 4"]),
        ("Thrush in the left hind, mild, no, it's a bad foot, severe.", ["LH finding thrush ~severe"]),
    ]
)

test_the_small_one_is_still_graded = reads(
    [
        ("Corn in the left front, no, it's a small flare, right front.", ["LF finding corn", "RF finding flare ~mild"]),
    ]
)

test_looked_at_once_more = reads(
    [
        (
            "Testers strong at the outside quarter on the right front, no, I went round it a second time and it's the "
            "inside quarter.",
            ["RF tester strong @medial_quarter"],
        ),
        ("Size two in front, no, I looked again and it's a one.", ["LF+RF shoe_size 1"]),
        ("Corn in the right front, no, I had another look and it is a bruise.", ["RF finding bruise"]),
        ("Corn in the right front. No, I checked the other and it's fine.", ["RF finding corn"]),
    ]
)

test_what_ran_out_is_not_on = reads(
    [
        (
            "Full pads, both fronts, putty, no, I ran out of putty, silicone.",
            ["LF+RF packing silicone", "LF+RF pad full"],
        ),
        ("Rim pads on the fronts, no, we're out of rim pads, full pads.", ["LF+RF pad full"]),
        ("Full pads, both fronts, putty, I'm out of silicone.", ["LF+RF packing putty", "LF+RF pad full"]),
    ]
)

test_the_slip_was_of_the_last_horse = reads(
    [
        ("Tally. Thrush in the right hind, no, that's the last horse, it's the left hind.", ["LH finding thrush"]),
        (
            "Tally. Corn in the near fore, no, that's the horse before him I'm thinking of, it's the off fore, mild.",
            ["RF finding corn ~mild"],
        ),
        (
            "Tally. Thrush in the right hind, no, that's the last horse, he has a corn in the left hind.",
            ["LH finding corn"],
        ),
    ]
)
