"""Shoes taken off, put back and lost, told in the passive; and nails counted up each side of a foot."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        (
            "Tally. Abscess in the near hind. The shoe has been taken off that "
            "foot and left off, and the other three were reset."
        ),
        ["LF+RF+RH work reset", "LH finding abscess", "LH work removed"],
    ),
    (
        "Tally. Puncture in the frog of the off hind. His shoe has been taken off it and will be staying off.",
        ["RH finding puncture @frog", "RH work removed"],
    ),
    (
        "Tally. Corn in the left front. The shoe was taken off and is to stay off.",
        ["LF finding corn", "LF work removed"],
    ),
    (
        "Tally. Both front shoes have been taken off and will stay off till the vet's been.",
        ["- vet referral planned", "LF+RF work removed"],
    ),
    (
        "Tally. Off fore, abscess at the toe, that shoe's been taken off.",
        ["RF finding abscess @toe", "RF work removed"],
    ),
    ("Tally. Right hind, heat. His shoe's been drawn and left off.", ["RH finding heat", "RH work removed"]),
    ("Tally. Left hind bruised, so the shoe has been removed.", ["LH finding bruise", "LH work removed"]),
    ("Tally. The hind shoes were taken off for the winter.", ["LH+RH work removed"]),
    ("Tally. Left front shoe was taken off, cleaned up and reset.", ["LF work reset"]),
    ("Tally. The shoe on the off hind had been taken off by the owner.", ["RH work removed history"]),
    ("Tally. Near fore, her shoe was pulled off and it'll be staying off for now.", ["LF work removed"]),
    (
        (
            "Tally. She'd pulled the off fore in the dam, and as the girl "
            "had found it the same rim shoe has been put back."
        ),
        ["RF shoe_state lost", "RF shoe_type rim", "RF work put_back"],
    ),
    (
        "Tally. Lost the off fore, found it in the yard, and it's been put back on.",
        ["RF shoe_state lost", "RF work put_back"],
    ),
    (
        "Tally. He'd cast the left hind, and the same shoe has been nailed back on.",
        ["LH shoe_state lost", "LH work put_back"],
    ),
    ("Tally. Right front off in the field, the old shoe was put back.", ["RF work put_back"]),
    (
        "Tally. Near hind was lost, the lad had kept it, so it was tacked back on with six nails.",
        ["LH nails 6", "LH shoe_state lost", "LH work put_back"],
    ),
    (
        "Tally. Lost the left front, and the shoe being still good it has gone back on.",
        ["LF shoe_state lost", "LF work put_back"],
    ),
    (
        "Tally. The off hind had been cast in the bog field and the near hind was hanging loose.",
        ["LH shoe_state loose", "RH shoe_state lost"],
    ),
    ("Tally. The left front had been thrown in the creek.", ["LF shoe_state lost"]),
    ("Tally. Off fore had been pulled off in the trailer.", ["RF shoe_state lost"]),
    ("Tally. The right hind shoe had been lost out hunting.", ["RH shoe_state lost"]),
    ("Tally. Near fore shoe's been cast since Sunday.", ["LF shoe_state lost"]),
    ("Tally. The left hind was cast in the stall last night.", []),
    (
        "Tally. New bar shoe on the near fore, three nails up the outside and two up the inside.",
        ["LF nails 5", "LF shoe_type bar", "LF work new_shoe"],
    ),
    ("Tally. Left front, three nails down the inside and four down the outside.", ["LF nails 7"]),
    ("Tally. Right hind, three on the inside branch, four along the outside.", ["RH nails 7"]),
    ("Tally. Near fore reset, four nails to the outside and two to the inside.", ["LF nails 6", "LF work reset"]),
    ("Tally. New shoe on the off hind, two nails medial, three nails lateral.", ["RH nails 5", "RH work new_shoe"]),
    ("Tally. Reset the left front, three inside nails and four outside.", ["LF nails 7", "LF work reset"]),
    ("Tally. Off fore, three up each side.", ["RF nails 6"]),
    ("Tally. Fores, the same half rounds back on.", ["LF+RF shoe_type half_round", "LF+RF work reset"]),
    (
        "Tally. The old steel egg bars went back on behind.",
        ["LH+RH shoe_material steel", "LH+RH shoe_type egg_bar", "LH+RH work reset"],
    ),
    ("Tally. Near hind, same wide web back on.", ["LH shoe_type wide_web", "LH work reset"]),
    (
        "Tally. Lost the near fore. Same egg bar back on.",
        ["LF shoe_state lost", "LF shoe_type egg_bar", "LF work put_back"],
    ),
    (
        "Tally. Lost the near fore, new shoe there. Hinds, same half rounds back on.",
        ["LF shoe_state lost", "LF work new_shoe", "LH+RH shoe_type half_round", "LH+RH work reset"],
    ),
    ("Tally. Egg bars in front. Same egg bars back on the van for the next one.", ["LF+RF shoe_type egg_bar"]),
    ("Tally. If the shoe has been pulled off by Friday, ring me.", []),
    ("Tally. The hind shoes haven't been taken off.", []),
    ("Tally. The front shoes are to be taken off next time.", ["LF+RF work removed planned"]),
    ("Tally. He was cast in the field last night. Trimmed.", ["LF+RF+LH+RH work trim"]),
    ("Tally. The pads were put back in the van. Trimmed behind.", ["LH+RH work trim"]),
    (
        "Tally. The old bandage was taken off the left hind. No pus.",
        ["LH finding abscess absent", "LH treatment bandage history"],
    ),
]

test_passive = reads(CASES)

test_the_last_word_stands_behind_no_first = reads(
    [("Half round shoes back on. Four feet, all the same", ["LF+RF+LH+RH shoe_type half_round"])]
)

test_the_same_kind_of_shoe_back_on = reads(
    [
        ("Left front, same rim shoe back on.", ["LF shoe_type rim", "LF work reset"]),
        (
            "Lost the near fore, same rim shoe back on, six nails.",
            ["LF nails 6", "LF shoe_state lost", "LF shoe_type rim", "LF work put_back"],
        ),
        ("Right front, same aluminium back on.", ["RF shoe_material aluminum", "RF work reset"]),
        ("Left front, same aluminum shoe back on.", ["LF shoe_material aluminum", "LF work reset"]),
        ("Hinds, the same rim shoes went back on.", ["LH+RH shoe_type rim", "LH+RH work reset"]),
        ("Same bar shoe back on the near fore.", ["LF shoe_type bar", "LF work reset"]),
        ("Fronts, same rim shoes back on.", ["LF+RF shoe_type rim", "LF+RF work reset"]),
        (
            "Lost the near fore, same shoe back on, no rim pad.",
            ["LF pad rim absent", "LF shoe_state lost", "LF work put_back"],
        ),
        ("Left front, aluminum.", ["LF shoe_material aluminum"]),
    ],
    "Buck. {}",
)

test_the_foot_put_back = reads(
    [
        (
            "Lost both fronts. Right front put back on, they'd found that one. New shoe on the left front.",
            ["LF work new_shoe", "LF+RF shoe_state lost", "RF work put_back"],
        ),
        ("He'd cast both hinds. The near hind put back on again.", ["LH work put_back", "LH+RH shoe_state lost"]),
        ("Off hind was lost, same shoe put back, six nails.", ["RH nails 6", "RH shoe_state lost", "RH work put_back"]),
        (
            "Near fore lost. Old shoe nailed back, seven nails.",
            ["LF nails 7", "LF shoe_state lost", "LF work put_back"],
        ),
        # nothing was lost
        ("Right front put back on the ground before I was done. Corn in the left front.", ["LF finding corn"]),
    ],
    "Tally. {}",
)

test_same_plate_back_on = reads(
    [
        (
            "Lost the near fore. Same plate back on, five nails.",
            ["LF nails 5", "LF shoe_state lost", "LF work put_back"],
        ),
        ("Lost the off hind. Same bar back on.", ["RH shoe_state lost", "RH work put_back"]),
        ("Near fore, same plates as before. Back on the road by noon.", ["LF shoe_type racing_plate"]),
    ],
    "Tally. {}",
)
