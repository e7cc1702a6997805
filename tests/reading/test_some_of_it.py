"""An amount without its finding, the other foot of a pair, and a foot that was only looked at.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_some_stands_for_the_finding_before = reads(
    [
        (
            "No heat in the hinds but there's a moderate bit in the left front.",
            ["LF finding heat ~moderate", "LH+RH finding heat absent"],
        ),
        (
            "No thrush in the fronts but there's a mild bit in the right hind frog.",
            ["LF+RF finding thrush absent", "RH finding thrush @frog ~mild"],
        ),
        (
            "The thrush in the right hind is gone. Left hind though, there's some in the frog, moderate.",
            ["LH finding thrush @frog ~moderate", "RH finding thrush resolved"],
        ),
        (
            "The thrush in the right hind is gone, left hind though, there's some in the frog, moderate.",
            ["LH finding thrush @frog ~moderate", "RH finding thrush resolved"],
        ),
        (
            "The thrush in the right hind has cleared up. Left hind has some though, moderate.",
            ["LH finding thrush ~moderate", "RH finding thrush resolved"],
        ),
        (
            "Right hind thrush gone. Left hind's still got a bit of it.",
            ["LH finding thrush ~mild", "RH finding thrush resolved"],
        ),
        (
            "Right hind, thrush in the sulcus, severe, copper sulfate in it. Left "
            "hind's got some too, mild, in the sulcus, iodine on that one.",
            [
                "LH finding thrush @sulcus ~mild",
                "LH treatment iodine",
                "RH finding thrush @sulcus ~severe",
                "RH treatment copper_sulfate",
            ],
        ),
        (
            "Right hind, thrush in the sulcus, copper sulfate in it. There's some "
            "in the left hind too, mild, I put iodine in that one.",
            [
                "LH finding thrush ~mild",
                "LH treatment iodine",
                "RH finding thrush @sulcus",
                "RH treatment copper_sulfate",
            ],
        ),
        (
            "Right hind has thrush in the frog, moderate, I packed it with copper "
            "sulfate. Left hind's got a touch of it too.",
            ["LH finding thrush ~mild", "RH finding thrush @frog ~moderate", "RH treatment copper_sulfate"],
        ),
        (
            "Right hind thrush, severe, copper sulfate. There's a bit in the left too.",
            ["LH finding thrush ~mild", "RH finding thrush ~severe", "RH treatment copper_sulfate"],
        ),
        (
            "Thrush in the right hind, bad. I found some in the left hind too.",
            ["LH finding thrush", "RH finding thrush ~severe"],
        ),
        (
            "Thrush in the right hind. Left hind now. There's some in the frog there, moderate.",
            ["LH finding thrush @frog ~moderate", "RH finding thrush"],
        ),
        (
            "No thrush in the right hind. Left hind, there's a little in the sulcus.",
            ["LH finding thrush @sulcus ~mild", "RH finding thrush absent"],
        ),
        (
            "No thrush in the right hind but there's some in the left hind.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Mud fever on the near hind, gone. There's still some on the off hind.",
            ["LH finding scratches resolved", "RH finding scratches"],
        ),
        (
            "White line disease in the right front, all grown out. The left front still has some at the toe.",
            ["LF finding white_line_disease @toe", "RF finding white_line_disease resolved"],
        ),
        (
            "Flare on the right front, lateral. The left front's got a little, medial.",
            ["LF finding flare @medial ~mild", "RF finding flare @lateral"],
        ),
        (
            "That corn in the near fore has cleared. He's one in the off fore though, medial heel.",
            ["LF finding corn resolved", "RF finding corn @medial_heel"],
        ),
    ],
    "Tansy. {}",
)

test_no_amount_of_a_finding = reads(
    [
        ("Corn in the right front. Right hind is a little on the long side.", ["RF finding corn"]),
        ("Corn in the right front. Left front's a bit on the flat side.", ["RF finding corn"]),
        ("Corn in the right front. There's a bit more foot on the left front now.", ["RF finding corn"]),
        ("Corn in the right front. I took a bit more off the left front.", ["RF finding corn"]),
        ("Corn in the right front. There's some growth in the left front.", ["RF finding corn"]),
        ("Thrush in the right hind. She has a bit of an attitude about the left hind.", ["RH finding thrush"]),
        (
            "Right hind heel crack isn't gone, there's a little left, inside heel, mild.",
            ["RH finding crack @medial_heel ~mild"],
        ),
        (
            "Thrush in the right hind. There wasn't any in the left hind.",
            ["LH finding thrush absent", "RH finding thrush"],
        ),
    ],
    "Tansy. {}",
)

test_the_other_foot_of_the_pair = reads(
    [
        (
            "Shoe lost off the near fore. The other one was hanging on by two nails.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        ("He'd lost the off hind and the other one was loose.", ["LH shoe_state loose", "RH shoe_state lost"]),
        ("The near fore shoe was loose, and the other one's sprung.", ["LF shoe_state loose", "RF shoe_state sprung"]),
        ("Corn in the left front. The other one's clean.", ["LF finding corn", "RF finding corn absent"]),
        (
            "Near hind had thrush in the frog, and the other had a touch of it.",
            ["LH finding thrush @frog", "RH finding thrush ~mild"],
        ),
        (
            "Near hind had thrush in the frog, and the other one's got some too, moderate.",
            ["LH finding thrush @frog", "RH finding thrush ~moderate"],
        ),
    ],
    "Tansy. {}",
)

test_only_thought_of_there = reads(
    [
        (
            "Abscess in the left hind, soaked it, put a bandage on. Her right hind "
            "I thought about pulling too but, nah, just reset that one.",
            ["LH finding abscess", "LH treatment bandage", "LH treatment soak", "RH work reset"],
        ),
        (
            "New shoes on the hinds, studs in the two of them. I was going to do "
            "his fronts as well but there's only three weeks on them so I let them be.",
            ["LH+RH traction studs", "LH+RH work new_shoe"],
        ),
        (
            "New shoes on the hinds, studs in both. I meant to do the fronts too but ran out of light.",
            ["LH+RH traction studs", "LH+RH work new_shoe"],
        ),
        (
            "New shoes on the hinds. Would have done the fronts as well only there's three weeks on them.",
            ["LH+RH work new_shoe"],
        ),
        (
            "Thrush in the left hind, iodine on it. I did the right hind too.",
            ["LH finding thrush", "LH+RH treatment iodine"],
        ),
    ],
    "Tansy. {}",
)

test_weeks_that_shoes_have_been_on = reads(
    [
        ("New shoes on the hinds. The fronts have three weeks on them yet so I left those.", ["LH+RH work new_shoe"]),
        ("New shoes on the hinds. Only two weeks on the fronts so I let them be.", ["LH+RH work new_shoe"]),
        (
            "New shoes on the hinds. There's five weeks in those fronts yet. Back in six.",
            ["- next_visit_weeks 6 planned", "LH+RH work new_shoe"],
        ),
        ("Put him on six weeks.", ["- next_visit_weeks 6 planned"]),
    ],
    "Tansy. {}",
)

test_it_has_spread = reads(
    [
        (
            "Thrush in the near hind. It's spread to the off hind, mild.",
            ["LH finding thrush", "RH finding thrush ~mild"],
        ),
        (
            "The thrush in the left hind's gone. The off hind though, it's moved in there, moderate, sulcus.",
            ["LH finding thrush resolved", "RH finding thrush @sulcus ~moderate"],
        ),
        ("Seedy toe in the left front. It's crept over into the right front.", ["LF+RF finding white_line_disease"]),
        (
            "The near hind's thrush is gone, but the off hind's is hanging on, mild, in the frog.",
            ["LH finding thrush resolved", "RH finding thrush @frog ~mild"],
        ),
        (
            "The corn in the left front's grown out, the right front's is lingering, moderate.",
            ["LF finding corn resolved", "RF finding corn ~moderate"],
        ),
        (
            "Thrush in the near hind, iodine in it. It's gone on the right hind too.",
            ["LH finding thrush", "LH+RH treatment iodine"],
        ),
        ("Thrush in the near hind. It's gone in the right hind.", ["LH finding thrush", "RH finding thrush resolved"]),
    ],
    "Tally. {}",
)

test_weight_carried_is_no_finding = reads(
    [
        (
            "Thrush in the near hind. Hoof width, off fore 126 mil. Carrying a bit, body condition seven.",
            ["- body_condition 7", "LH finding thrush", "RF hoof_width 126"],
        ),
        ("Thrush in the near hind. He's carrying a bit of weight.", ["LH finding thrush"]),
        ("Thrush in the near hind. The off hind is carrying a bit.", ["LH finding thrush", "RH finding thrush ~mild"]),
    ],
    "Tally. {}",
)

test_one_of_what_was_put_on = reads(
    [
        (
            "Bruise in the right fore. I put a full pad on it and one on the left fore.",
            ["LF+RF pad full", "RF finding bruise"],
        ),
        (
            "Bruise in the right fore. Full pad on it, and another on the left fore.",
            ["LF+RF pad full", "RF finding bruise"],
        ),
        (
            "Thrush in the off hind. Leather pad on that, and matched that with one on the near hind.",
            ["LH+RH pad leather", "RH finding thrush"],
        ),
        (
            "Corn in the off fore. Bar shoe on that, and one on the near fore as well.",
            ["LF+RF shoe_type bar", "RF finding corn"],
        ),
    ]
)

test_one_of_what_was_found = reads(
    [
        (
            "Bruise in the right fore. Full pad on it. Another one in the left fore.",
            ["LF+RF finding bruise", "RF pad full"],
        ),
        (
            "Full pad in the right fore where there's a bruise, and there's one in the left fore.",
            ["LF+RF finding bruise", "RF pad full"],
        ),
    ]
)

test_a_little_one = reads(
    [
        (
            "Flare on the right front, and the left front has a little one.",
            ["LF finding flare ~mild", "RF finding flare"],
        ),
        (
            "Quarter crack on the near hind, severe, and the off hind's got a wee one, mild.",
            ["LH finding crack @quarter ~severe", "RH finding crack ~mild"],
        ),
        (
            "No thrush in the left hind but the right hind has a little one.",
            ["LH finding thrush absent", "RH finding thrush ~mild"],
        ),
        ("Thrush in the left hind. The right hind has a new one on it.", ["LH finding thrush", "RH work new_shoe"]),
    ],
    "Tally. {}",
)
