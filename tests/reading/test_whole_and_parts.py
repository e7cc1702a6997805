"""What is told of all and of one, of a condition, of a question, and of the next visit.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_degree_for_the_others = reads(
    [
        (
            "Seedy toe in every foot, worst in the near hind, severe there and mild in the other three.",
            ["LF+RF+RH finding white_line_disease ~mild", "LH finding white_line_disease ~severe"],
        ),
        (
            "Thrush in all four, bad in the left hind and slight in the other three.",
            ["LF+RF+RH finding thrush ~mild", "LH finding thrush ~severe"],
        ),
        (
            "Flare on all four, moderate in front, mild behind.",
            ["LF+RF finding flare ~moderate", "LH+RH finding flare ~mild"],
        ),
    ],
    "Tansy. {}",
)

test_any_sign_is_a_condition = reads(
    [
        ("Any sign of heat in the off hind by Sunday and the vet's to see her.", ["- vet referral planned"]),
        ("Any heat in that foot, left hind, and they're to ring the vet.", ["- vet referral planned"]),
    ],
    "Tansy. {}",
)

test_all_the_shoes = reads(
    [
        ("Studs out, all the shoes pulled and left off.", ["- traction studs history", "LF+RF+LH+RH work removed"]),
        ("Studs out.", ["- traction studs history"]),
        ("All his shoes off for the winter, feet trimmed.", ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"]),
        ("Pulled all the shoes.", ["LF+RF+LH+RH work removed"]),
        ("Pulled all the shoes, feet trimmed.", ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"]),
        ("Pulled all the shoes. Feet trimmed.", ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"]),
        (
            "Shoes off all round for the winter, all four trimmed.",
            ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"],
        ),
        ("All the shoes pulled and left off. Feet trimmed.", ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"]),
    ],
    "Tansy. {}",
)

test_a_question_and_its_answer = reads(
    [
        (
            "Was the pulse up? It was, bounding in the left front, and normal in the right.",
            ["LF pulse bounding", "RF pulse normal"],
        ),
        ("Any pulse? There was, raised in both fronts.", ["LF+RF pulse raised"]),
        (
            "Did he react to the testers? He did, strong on the left front, and nothing on the right.",
            ["LF tester strong", "RF tester none"],
        ),
    ],
    "Tansy. {}",
)

test_the_shoe_is_off = reads(
    [
        (
            "Abscess in the near fore, drained it. Shoe off.",
            ["LF finding abscess", "LF treatment drained", "LF work removed"],
        ),
        ("A shoe off the shelf, bruise in the left front.", ["LF finding bruise"]),
        ("Lost the near fore. Shoe off. Bruise there.", ["LF finding bruise", "LF shoe_state lost"]),
    ],
    "Tansy. {}",
)

test_then_is_when_i_am_back = reads(
    [
        (
            "I'm back in one week, and I'd say a full pad on the near fore then.",
            ["- next_visit_weeks 1 planned", "LF pad full planned"],
        ),
        (
            "Back in a fortnight, and I'd put a leather pad on the left front then.",
            ["- next_visit_weeks 2 planned", "LF pad leather planned"],
        ),
    ],
    "Tansy. {}",
)

test_what_was_added_to_some_does_not_narrow_the_shoeing = reads(
    [
        (
            "New shoes all round, aught in front, double aught behind. Side clips in front. Six nails to the shoe.",
            [
                "LF+RF clips side",
                "LF+RF shoe_size 0",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 00",
            ],
        ),
        (
            "Reset all round. Leather pads in front. Five nails each.",
            ["LF+RF pad leather", "LF+RF+LH+RH nails 5", "LF+RF+LH+RH work reset"],
        ),
        (
            "Trimmed behind. New shoes in front. Toe clips on the fronts. Six nails each.",
            ["LF+RF clips toe", "LF+RF nails 6", "LF+RF work new_shoe", "LH+RH work trim"],
        ),
    ]
)
