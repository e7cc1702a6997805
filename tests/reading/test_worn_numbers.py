"""Sizes and nails that are told of the horse, or of what is left in a foot, with no word of size or nails beside.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_he_wears = reads(
    [
        (
            "Reset all round. Seven nails in every foot bar the off hind, that's on six.",
            ["LF+RF+LH nails 7", "LF+RF+LH+RH work reset", "RH nails 6"],
        ),
        (
            "New shoes all round, seven nails in each bar the near hind, that one has six.",
            ["LF+RF+LH+RH work new_shoe", "LF+RF+RH nails 7", "LH nails 6"],
        ),
        (
            "Fronts reset. I took a close nail out, which makes seven in the near fore and eight in the off.",
            ["LF nails 7", "LF+RF finding close_nail", "LF+RF work reset", "RF nails 8"],
        ),
        (
            "Fronts reset. I left a nail out of the left, so that's five in the left front and six in the right.",
            ["LF nails 5", "LF+RF work reset", "RF nails 6"],
        ),
        ("Off fore flung, I tacked it back on with seven.", ["RF nails 7", "RF shoe_state lost", "RF work put_back"]),
        (
            "He'd one flung, the off fore, and I nailed it back on with six.",
            ["RF nails 6", "RF shoe_state lost", "RF work put_back"],
        ),
        (
            "New on both fronts. Fours they are. Seven nails in each.",
            ["LF+RF nails 7", "LF+RF shoe_size 4", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, a three they are. Six nails each.",
            ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        (
            "New set on him, all four, he's a six all round. No, tell a lie, the hinds are five and a half.",
            ["LF+RF shoe_size 6", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 5.5"],
        ),
        (
            "New shoes, size two all round, no, the hinds are ones.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        ("Seven nails all round, no, the off hind has six.", ["LF+RF+LH nails 7", "RH nails 6"]),
        (
            "New shoes on all four. In front she took fives last year and she's a six now.",
            ["LF+RF shoe_size 5 history", "LF+RF shoe_size 6", "LF+RF+LH+RH work new_shoe"],
        ),
        (
            "New shoes on all four. She's a six in front and she's still a five behind.",
            ["LF+RF shoe_size 6", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 5"],
        ),
        (
            "New shoes all four. Fronts are a zero, hinds double aught.",
            ["LF+RF shoe_size 0", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 00"],
        ),
        (
            "New shoes in front. Nails were fives, slim ones, seven in the left and eight in the right.",
            ["LF nails 7", "LF+RF nail_size 5 slim", "LF+RF work new_shoe", "RF nails 8"],
        ),
        (
            "New shoes in front. Nails were fives, slims, six each.",
            ["LF+RF nail_size 5 slim", "LF+RF nails 6", "LF+RF work new_shoe"],
        ),
        (
            "New shoe on the left front, size eight, no, that's the nail, and the shoe's a ten.",
            ["LF nail_size 8", "LF shoe_size 10", "LF work new_shoe"],
        ),
        (
            "New shoes in front, size six, no, that's the nails, the shoes are twos.",
            ["LF+RF nail_size 6", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Left front, nail size five, no, that's the shoe, and the nails are fours.",
            ["LF nail_size 4", "LF shoe_size 5"],
        ),
        (
            "He's been wearing twos on the fronts, today he's into one and a halfs.",
            ["LF+RF shoe_size 1.5", "LF+RF shoe_size 2 history"],
        ),
        # no size and no count
        ("New shoes in front. He's a ten to shoe, stood like a rock.", ["- manner quiet", "LF+RF work new_shoe"]),
        (
            "New shoes in front. Body condition, he's a six. Cresty neck, he's a two.",
            ["- body_condition 6", "- cresty_neck 2", "LF+RF work new_shoe"],
        ),
        ("Reset in front. He's a two out of five lame on the left front.", ["LF lameness 2", "LF+RF work reset"]),
        (
            "New shoes in front, size two. He's a seven on the condition scale.",
            ["- body_condition 7", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        ("New shoes all round. She's a three year old.", ["LF+RF+LH+RH work new_shoe"]),
        (
            "Size four all round, no, fronts are four and the backs are three.",
            ["LF+RF shoe_size 4", "LH+RH shoe_size 3"],
        ),
    ],
    "Tally. {}",
)

test_a_shod_foot_has_got_so_many_nails = reads(
    [
        ("Hinds reset, near hind's got six, and the off hind too.", ["LH+RH nails 6", "LH+RH work reset"]),
        ("Hinds reset, off hind took seven and so did the near.", ["LH+RH nails 7", "LH+RH work reset"]),
        ("Hinds reset. Left hind got five, so did the right hind.", ["LH+RH nails 5", "LH+RH work reset"]),
        ("Fronts are new. The left front has seven, right front likewise.", ["LF+RF nails 7", "LF+RF work new_shoe"]),
        ("Fronts new. The left has seven, the right has six.", ["LF nails 7", "LF+RF work new_shoe", "RF nails 6"]),
        ("Hinds reset, near hind's got six weeks.", ["- next_visit_weeks 6 planned", "LH+RH work reset"]),
        ("Reset in front. Left front has four cracks.", ["LF finding crack", "LF+RF work reset"]),
        ("Sizes: left front has five, right front has six.", ["LF shoe_size 5", "RF shoe_size 6"]),
        ("Corn in the near hind. Near hind's got six.", ["LH finding corn"]),
    ],
    "Buck. {}",
)

test_a_size_of_the_horse = reads(
    [
        (
            (
                "Thrush in the hinds. He was in a three last time, today I've dropped him to a "
                "two, new half rounds in front."
            ),
            [
                "LF+RF shoe_size 2",
                "LF+RF shoe_size 3 history",
                "LF+RF shoe_type half_round",
                "LF+RF work new_shoe",
                "LH+RH finding thrush",
            ],
        ),
        (
            "Thrush in the off hind. I've put her up to a four, new wide webs in front.",
            ["LF+RF shoe_size 4", "LF+RF shoe_type wide_web", "LF+RF work new_shoe", "RH finding thrush"],
        ),
        (
            "Corn in the near fore. He's in a two on that, new bar shoes behind.",
            ["LF finding corn", "LF shoe_size 2", "LH+RH shoe_type bar", "LH+RH work new_shoe"],
        ),
        (
            "New racing plates in front, ali, size one.",
            [
                "LF+RF shoe_material aluminum",
                "LF+RF shoe_size 1",
                "LF+RF shoe_type racing_plate",
                "LF+RF work new_shoe",
            ],
        ),
    ],
    "Tally. {}",
)

test_stands_in = reads(
    [
        ("She's in a four on both fronts.", ["LF+RF shoe_size 4"]),
        ("She's in a five on both fronts and a four behind.", ["LF+RF shoe_size 5", "LH+RH shoe_size 4"]),
        ("He goes in a six in front.", ["LF+RF shoe_size 6"]),
        ("She was in a five in front last year.", ["LF+RF shoe_size 5 history"]),
        ("He's in a four horse trailer, left front lost.", ["LF shoe_state lost"]),
        ("He came in a four out of five lame on the left front.", ["LF lameness 4"]),
    ],
    "Tansy. {}",
)

test_worn_beside_nails_and_ones = reads(
    [
        (
            "Racing plates all round, three and a half nails, and he's wearing a four in front.",
            ["LF+RF shoe_size 4", "LF+RF+LH+RH nail_size 3.5", "LF+RF+LH+RH shoe_type racing_plate"],
        ),
        (
            "New shoes in front, number five nails, and she wears a two.",
            ["LF+RF nail_size 5", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        ("He takes ones in front and aughts behind.", ["LF+RF shoe_size 1", "LH+RH shoe_size 0"]),
        ("She's wearing ones behind, reset.", ["LH+RH shoe_size 1", "LH+RH work reset"]),
        ("She wears leather ones in front.", []),
    ],
    "Tally. {}",
)

test_nails_of_other_feet = reads(
    [
        (
            "Number six nails in the fronts and number five in the hinds. Reset all round.",
            ["LF+RF nail_size 6", "LF+RF+LH+RH work reset", "LH+RH nail_size 5"],
        ),
        (
            "Reset all round. Size five nails in front and size four behind.",
            ["LF+RF nail_size 5", "LF+RF+LH+RH work reset", "LH+RH nail_size 4"],
        ),
        (
            "Reset all round. Size two, number five nails in front, number three shoes behind.",
            ["LF+RF nail_size 5", "LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 3"],
        ),
        (
            "Number six nails in the fronts, and size one shoes in the hinds.",
            ["LF+RF nail_size 6", "LH+RH shoe_size 1"],
        ),
    ],
    "Tally. {}",
)
