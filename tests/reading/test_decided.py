"""What a choice came to, what was doubted and then made sure, and what was there before as it is today.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_it_is_decides = reads(
    [
        ("Full pads or leather, leather it is, in front.", ["LF+RF pad leather"]),
        ("I was between a full pad and leather in front, leather it is.", ["LF+RF pad leather"]),
        ("Rim pads or full pads on the hinds, hmm, full it is.", ["LH+RH pad full"]),
        ("Leather pads on the fronts or mesh, mesh it is.", ["LF+RF pad mesh"]),
        ("Should it be rim pads or full ones up front? Full it is.", ["LF+RF pad full"]),
        ("Egg bars or straight bars in front, egg bars it is.", ["LF+RF shoe_type egg_bar"]),
        ("Torn between steel and aluminum for the fronts, aluminum it is.", ["LF+RF shoe_material aluminum"]),
        ("Iodine or copper sulfate for the left hind, copper sulfate it is.", ["LH treatment copper_sulfate"]),
        ("A bruise or an abscess in the left front, bruise it is.", ["LF finding bruise"]),
        ("Couldn't decide between size one and size two in front, two it is.", ["LF+RF shoe_size 2"]),
        ("Six nails or seven in the near fore, six it is.", ["LF nails 6"]),
        ("Six weeks or seven, seven it is.", ["- next_visit_weeks 7 planned"]),
        ("Leather pads in front. Whatever it is in the left hind, it smells.", ["LF+RF pad leather"]),
    ],
    "Tansy. {}",
)

test_a_doubt_that_is_made_sure = reads(
    [
        ("Possible bruise in the left front, no, it is a bruise.", ["LF finding bruise"]),
        ("Possible bruise, left front, no, it's definitely a bruise.", ["LF finding bruise"]),
        ("Might be a corn in the off fore. No, it is a corn.", ["RF finding corn"]),
        ("Maybe thrush in the left hind, no, that's thrush.", ["LH finding thrush"]),
        ("Possible crack in the near fore, actually it is a crack.", ["LF finding crack"]),
        ("Could be sidebone in the off fore, wait, no, that is sidebone.", ["RF finding sidebone"]),
        ("Possible bruise in the left front, no, it isn't a bruise.", ["LF finding bruise absent"]),
        ("Possible bruise in the left front, no, it's a corn.", ["LF finding corn"]),
        ("Thrush in the left hind, sorry, it's the right hind that's got the thrush.", ["RH finding thrush"]),
        ("Possible bruise in the left front, no, the right front.", ["RF finding bruise suspected"]),
    ],
    "Tansy. {}",
)

test_what_was_there_before_as_well_is_of_today = reads(
    [
        ("Thrush in the left hind, it was there last time too.", ["LH finding thrush"]),
        ("Thrush in the left hind. Was there last time.", ["LH finding thrush"]),
        ("Flare on the right front, there last time as well.", ["RF finding flare"]),
        ("Bruise in the off fore, that was there in the spring.", ["RF finding bruise"]),
        ("Corn in the near fore, which was already there last visit.", ["LF finding corn"]),
        ("Crack in the left front, not there last time.", ["LF finding crack"]),
        ("Crack in the left front, that wasn't there last time.", ["LF finding crack"]),
        ("Thrush in the left hind. That was there last time, not today.", ["LH finding thrush resolved"]),
        ("He had thrush in the left hind last time.", ["LH finding thrush history"]),
        ("There was a corn in the left front last time.", ["LF finding corn history"]),
    ],
    "Tansy. {}",
)

test_what_another_made_it = reads(
    [
        (
            "He's two out of five lame on the near hind, the nurse reckoned a three but I'm sticking with two.",
            ["LH lameness 2"],
        ),
        ("Two out of five on the near hind, the vet said three, I'd stay with two.", ["LH lameness 2"]),
        ("Body condition six, the owner reckons a seven but I'm sticking with six.", ["- body_condition 6"]),
        ("Six weeks, she'd like eight but I'm sticking to six.", ["- next_visit_weeks 6 planned"]),
        (
            "Six nails in the near fore, seven in the off, sticking with six in the hinds.",
            ["LF+LH+RH nails 6", "RF nails 7"],
        ),
    ],
    "Tansy. {}",
)

test_his_own_grade = reads(
    [
        (
            "Near fore, the owner reckons she's three out of five lame on it and I'd say two, so put two.",
            ["LF lameness 2"],
        ),
        ("The owner says she's three out of five lame on the near fore, I'd say two.", ["LF lameness 2"]),
        ("Lame near fore, the vet said three out of five and I'd call it two.", ["LF lameness 2"]),
        ("Lame near fore, the owner thinks three out of five but I'd call it a two.", ["LF lameness 2"]),
        ("Near fore, the groom said four out of five lame, I make it three.", ["LF lameness 3"]),
        ("Near fore, the owner reckons she's three out of five lame on it.", ["LF lameness 3"]),
        (
            "Near fore, the owner reckons she's two out of five lame, I'd say six weeks.",
            ["- next_visit_weeks 6 planned", "LF lameness 2"],
        ),
        (
            "Near fore, the owner reckons she's two out of five lame, I put six nails in it.",
            ["LF lameness 2", "LF nails 6"],
        ),
    ],
    "Tansy. {}",
)


test_wanted_and_so_it_is = reads(
    [
        (
            "New behind. I had the studs out ready but the owner wants road nails, so road nails it is, on the hinds.",
            ["LH+RH traction road_nails", "LH+RH work new_shoe"],
        ),
        (
            "New in front. I'd leather pads out but the owner wants mesh, so mesh pads it is.",
            ["LF+RF pad mesh", "LF+RF work new_shoe"],
        ),
        ("New in front. Owner wants bar shoes, so bar shoes it is.", ["LF+RF shoe_type bar", "LF+RF work new_shoe"]),
        ("New in front. Owner wants bar shoes.", ["LF+RF shoe_type bar planned", "LF+RF work new_shoe"]),
        ("Owner wanted eight weeks, so eight it is.", ["- next_visit_weeks 8 planned"]),
    ]
)
