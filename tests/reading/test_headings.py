"""Testers, pulses and nails as a heading: the answers stand foot by foot behind it.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_heading_and_its_answers = reads(
    [
        (
            "Testers foot by foot. LF mild at the heel, RF strong at the frog, LH zip, RH zip.",
            ["LF tester mild @heel", "LH+RH tester none", "RF tester strong @frog"],
        ),
        (
            "Testers, one foot at a time. Near fore mild at the toe, off fore nothing.",
            ["LF tester mild @toe", "RF tester none"],
        ),
        (
            "Hoof testers all round. Near fore mild, off fore moderate, hinds nothing.",
            ["LF tester mild", "LH+RH tester none", "RF tester moderate"],
        ),
        (
            "Testers next. Near fore mild at the toe, off fore strong at the heel.",
            ["LF tester mild @toe", "RF tester strong @heel"],
        ),
        ("Did the testers. Left front moderate, right front none.", ["LF tester moderate", "RF tester none"]),
        (
            "Put the testers on him. Left front moderate at the toe, right front none.",
            ["LF tester moderate @toe", "RF tester none"],
        ),
        (
            "Now the testers. Left front strong, right front mild, hinds zip.",
            ["LF tester strong", "LH+RH tester none", "RF tester mild"],
        ),
        (
            "Pulses. Left front bounding, right front raised, hinds normal.",
            ["LF pulse bounding", "LH+RH pulse normal", "RF pulse raised"],
        ),
        ("Pulses foot by foot. Left front raised, right front normal.", ["LF pulse raised", "RF pulse normal"]),
        (
            "Testers. Left front mild. Right front strong at the toe. Hinds nothing.",
            ["LF tester mild", "LH+RH tester none", "RF tester strong @toe"],
        ),
        ("Testers left front mild. Right front strong.", ["LF tester mild", "RF tester strong"]),
        ("Testers. Left front, bruise, mild.", ["LF finding bruise ~mild"]),
        ("Didn't use the testers. Left front mild heat.", ["LF finding heat ~mild"]),
        ("Testers all round. Left front corn at the heel.", ["LF finding corn @heel"]),
        ("Forgot the testers in the truck. Left front reset.", ["LF work reset"]),
        (
            "Did the testers. Near fore mild. Off fore strong. Near hind nothing. Off hind moderate.",
            ["LF tester mild", "LH tester none", "RF tester strong", "RH tester moderate"],
        ),
    ],
    "Buck. {}",
)

test_a_form_read_aloud = reads(
    [
        (
            "Hinds: trimmed. Body condition: seven. Cresty neck: three.",
            ["- body_condition 7", "- cresty_neck 3", "LH+RH work trim"],
        ),
        (
            "New shoe, left front, half round. Nails: five. Nail size: five. Nail line: good.",
            ["LF nail_line good", "LF nail_size 5", "LF nails 5", "LF shoe_type half_round", "LF work new_shoe"],
        ),
        (
            "Fronts: new shoes. Shoe size: two. Nails: six. Nail size: four and a half.",
            ["LF+RF nail_size 4.5", "LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Left front, reset. Sole depth: nine. Toe angle: fifty one. Toe length: three and a quarter.",
            ["LF sole_depth 9", "LF toe_angle 51", "LF toe_length 82.6", "LF work reset"],
        ),
        ("Obel grade: two. Interval: three weeks.", ["- next_visit_weeks 3 planned", "- obel 2"]),
        (
            "Thrush: left hind, in the sulcus. Interval: six weeks.",
            ["- next_visit_weeks 6 planned", "LH finding thrush @sulcus"],
        ),
    ],
    "Tally. {}",
)

test_a_heading_that_is_no_horse = reads(
    [
        ("Measurements, fronts: toe angle fifty one both.", ["LF+RF toe_angle 51", "LF+RF+LH+RH work reset"]),
        (
            "Dimensions, hinds: hoof width five inches both. Corn in the left front.",
            ["LF finding corn", "LF+RF+LH+RH work reset", "LH+RH hoof_width 127"],
        ),
        (
            "Readings, fronts: sole depth nine left, ten right.",
            ["LF sole_depth 9", "LF+RF+LH+RH work reset", "RF sole_depth 10"],
        ),
        ("Appraisal, fronts: contracted heels.", ["LF+RF finding contracted_heels", "LF+RF+LH+RH work reset"]),
    ],
    "Tally. Reset all round. {}",
)

test_nails_that_head_their_size = reads(
    [
        (
            "Nails in Tally: fives in front, four and a halfs behind, six to a shoe all the way round.",
            ["LF+RF nail_size 5", "LF+RF+LH+RH nails 6", "LH+RH nail_size 4.5"],
        ),
        ("Nails in front are fives, and fours behind.", ["LF+RF nail_size 5", "LH+RH nail_size 4"]),
        ("The nails I used were sixes in front and fives behind.", ["LF+RF nail_size 6", "LH+RH nail_size 5"]),
        ("Nails for the hinds were number sixes, in front number fives.", ["LF+RF nail_size 5", "LH+RH nail_size 6"]),
        ("Reset both fronts, nailed them with fives.", ["LF+RF nail_size 5", "LF+RF work reset"]),
        # counted nails, other words between, or a size of shoes
        ("Six nails in front, size two.", ["LF+RF nails 6", "LF+RF shoe_size 2"]),
        ("Nails in front are sixes today, shoes are threes.", ["LF+RF nail_size 6", "LF+RF shoe_size 3"]),
        ("The nails in the near fore had pulled. Threes all round.", ["LF+RF+LH+RH shoe_size 3"]),
    ],
    "Tally. {}",
)

test_a_heading_and_answers_that_lead = reads(
    [
        (
            "Pulses first. Bounding near fore, raised off fore, and the back two are normal.",
            ["LF pulse bounding", "LH+RH pulse normal", "RF pulse raised"],
        ),
        ("Digital pulses. Normal in both fores, raised in the near hind.", ["LF+RF pulse normal", "LH pulse raised"]),
        ("Testers next. Strong left front, mild right front.", ["LF tester strong", "RF tester mild"]),
        # something else follows
        ("Pulses first. Raised voices in the yard. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Testers next. Moderate flare on the left front.", ["LF finding flare ~moderate"]),
    ],
    "Tansy. {}",
)

test_pads_and_what_they_are_of = reads(
    [
        ("Pads: leather on the fronts, pine tar underneath.", ["LF+RF packing pine_tar", "LF+RF pad leather"]),
        ("Pads: leather in front and mesh behind.", ["LF+RF pad leather", "LH+RH pad mesh"]),
        ("Pads: rim on both hinds, silicone with them.", ["LH+RH packing silicone", "LH+RH pad rim"]),
        ("No pads, leather boots on me and full rain gear.", []),
    ],
    "Tally. {}",
)

test_told_that_it_will_be_remembered = reads(
    [
        ("You'll remember he had a crack in the near fore, well, it's grown out, gone.", ["LF finding crack resolved"]),
        ("You'll recall the abscess in the near hind, that's all dried up.", ["LH finding abscess resolved"]),
        ("You'll need leather pads on the fronts.", ["LF+RF pad leather planned"]),
        ("Near hind, if he blows one out I'll come drain it.", ["LH treatment drained planned"]),
        ("Near hind abscess, it'll drain by itself.", ["LH finding abscess"]),
    ],
    "Tally. {}",
)

test_split_ear_is_no_crack = reads(
    [
        ("Chestnut with a split ear. Thrush in the near hind.", ["LH finding thrush"]),
        ("The one with a split in his lip, near fore reset.", ["LF work reset"]),
        ("A split in the wall of the near fore.", ["LF finding crack"]),
    ],
    "Tally. {}",
)
