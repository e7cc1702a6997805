"""Values said in an order go to the feet of that order; a number's other foot may be half said; a grade is no count.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told


@pytest.mark.parametrize(
    "said",
    [
        "Toe angles 53 and 51, left and right front.",
        "Toe angles 51 and 53, right and left front.",
        "Left front and right front, toe angles 53 and 51.",
        "Toe angles left front, right front, 53, 51.",
        "LF RF toe angles, 53 and 51.",
        "Toe angles, near and off fore, 53 and 51.",
        "Toe angles 53 and 51 on the left and right front respectively.",
    ],
)
def test_a_row_of_two(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["LF toe_angle 53", "RF toe_angle 51"]


test_rows_in_one_order = reads(
    [
        (
            "Toe length 3 and 3 eighths inches left front, 3 and a half right front. Toe angles 53 and 51, same order.",
            ["LF toe_angle 53", "LF toe_length 85.7", "RF toe_angle 51", "RF toe_length 88.9"],
        ),
        (
            "Toe angle 53 left front, 51 right. Heel angles 40 and 38, in the same order.",
            ["LF heel_angle 40", "LF toe_angle 53", "RF heel_angle 38", "RF toe_angle 51"],
        ),
        (
            "Going LF RF LH RH, sizes two, two, one and a half, one and a half. Nails the same order, 6, 5, 7, 7.",
            ["LF nails 6", "LF+RF shoe_size 2", "LH+RH nails 7", "LH+RH shoe_size 1.5", "RF nails 5"],
        ),
        (
            "Left front, right front, left hind, right hind, sizes nought, nought, one and one.",
            ["LF+RF shoe_size 0", "LH+RH shoe_size 1"],
        ),
        ("Sole depths left and right front, 9 and 11 millimeters.", ["LF sole_depth 9", "RF sole_depth 11"]),
    ],
    "Tally. {}",
)

test_the_other_foot_half_said = reads(
    [
        (
            "New all round. Eight nails front, six back.",
            ["LF+RF nails 8", "LF+RF+LH+RH work new_shoe", "LH+RH nails 6"],
        ),
        ("Hoof width 5 3/8 LF, five and a quarter the other one.", ["LF hoof_width 136.5", "RF hoof_width 133.4"]),
        (
            "Toe length three and a half inches left front, three and a quarter the other.",
            ["LF toe_length 88.9", "RF toe_length 82.6"],
        ),
        (
            "He takes 7s in front, no, 8s, and 7s behind. All new.",
            ["LF+RF shoe_size 8", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 7"],
        ),
        (
            "Everything reset, three on a side in front, four a side behind.",
            ["LF+RF nails 6", "LF+RF+LH+RH work reset", "LH+RH nails 8"],
        ),
    ],
    "Tally. {}",
)

test_a_grade_is_no_count = reads(
    [
        (
            "Seven nails in each front. He was a grade two on the right front last cycle.",
            ["LF+RF nails 7", "RF lameness 2 history"],
        ),
        ("Seven nails all round. Grade one on the near fore today.", ["LF lameness 1", "LF+RF+LH+RH nails 7"]),
        (
            "Six nails in front. She was a grade three lame on the left hind in May.",
            ["LF+RF nails 6", "LH lameness 3 history"],
        ),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    "aside",
    [
        "Barn dog, name of Borium, under my feet the whole while.",
        "Their heeler pup, name of Thrush, tried to eat my gloves.",
        "They've a cat called Copper.",
        "A terrier named Abscess came along.",
    ],
)
def test_an_animals_name_is_no_fact(read: Read, aside: str) -> None:
    (visit,) = read(f"Tally. {aside} Reset in front.", "Tally")
    assert (visit.horse, told(visit)) == ("Tally", ["LF+RF work reset"])


test_no_row = reads(
    [
        ("Left front and right front, six nails and side clips.", ["LF+RF clips side", "LF+RF nails 6"]),
        ("Six weeks. Left front came back sound.", ["- next_visit_weeks 6 planned", "LF gait sound"]),
        ("Both fronts between a one and a two.", ["LF+RF shoe_size 1-2"]),
        ("Left and right front reset, six or seven nails.", ["LF+RF nails 6", "LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_things_in_an_order = reads(
    [
        (
            "One lost, one loose, one worn through and one perfectly all right: near fore, off fore, near hind and "
            "off hind in that order.",
            ["LF shoe_state lost", "LH shoe_state worn", "RF shoe_state loose"],
        ),
        ("He has a corn and a bruise, near fore and off fore respectively.", ["LF finding corn", "RF finding bruise"]),
        ("Left hind and right hind had thrush and canker respectively.", ["LH finding thrush", "RH finding canker"]),
        ("Reset and trimmed, fronts and hinds respectively.", ["LF+RF work reset", "LH+RH work trim"]),
        (
            "A bar shoe on the off fore and a plain one on the other fore. Six nails and seven respectively.",
            ["LF nails 7", "LF shoe_type plain", "RF nails 6", "RF shoe_type bar"],
        ),
        (
            "Heel height thirty eight millimetres near and off fore alike. Toe length, near then off, 80 and 78.",
            ["LF toe_length 80", "LF+RF heel_height 38", "RF toe_length 78"],
        ),
        (
            "Toe angles, both hinds fifty two. Heel angles, left and right, forty and forty two.",
            ["LH heel_angle 40", "LH+RH toe_angle 52", "RH heel_angle 42"],
        ),
        # no order is told, or not as many things as feet
        ("He has a corn and a bruise, near fore and off fore.", ["LF+RF finding bruise", "LF+RF finding corn"]),
        ("Both fronts have a corn and a bruise, trimmed and pared in that order.",
         ["LF+RF finding bruise", "LF+RF finding corn", "LF+RF work trim"]),
        ("Left front and right front, seven nails, fives.", ["LF+RF nail_size 5", "LF+RF nails 7"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_second_list_for_the_other_foot = reads(
    [
        (
            "Toe angle 53 and heel angle 48 on the left front, toe angle 52 and heel angle 47 on the right front.",
            ["LF heel_angle 48", "LF toe_angle 53", "RF heel_angle 47", "RF toe_angle 52"],
        ),
        (
            "Six nails and size two on the near fore, five nails and size one on the off fore.",
            ["LF nails 6", "LF shoe_size 2", "RF nails 5", "RF shoe_size 1"],
        ),
        (
            "A corn and a bruise on the left front, a corn and flare on the right front.",
            ["LF finding bruise", "LF+RF finding corn", "RF finding flare"],
        ),
        (
            "Testers strong and pulse raised on the left front, testers mild and pulse normal on the right front.",
            ["LF pulse raised", "LF tester strong", "RF pulse normal", "RF tester mild"],
        ),
        (
            "Toe angle 53 on the left front, was 52 in May, and heel angle 48 on the right front.",
            ["LF toe_angle 52 history", "LF toe_angle 53", "RF heel_angle 48"],
        ),
        (
            "Thrush in the left hind, bad thrush, and a corn in the right hind.",
            ["LH finding thrush ~severe", "RH finding corn"],
        ),
        (
            "Testers strong at the toe on the left front, mild at the heel, and pulse raised on the right front.",
            ["LF tester mild @heel", "LF tester strong @toe", "RF pulse raised"],
        ),
        (
            "New on all four. In front she took fives last year and she's a six now, and she's still a five behind.",
            ["LF+RF shoe_size 5 history", "LF+RF shoe_size 6", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 5"],
        ),
    ],
    "Tally. {}",
)

test_a_number_each_of_two_things = reads(
    [
        ("Left front and right front new, size one, five nails.",
         ["LF+RF nails 5", "LF+RF shoe_size 1", "LF+RF work new_shoe"]),
        ("Near hind and off hind reset, size aught, four and a half nails.",
         ["LH+RH nail_size 4.5", "LH+RH shoe_size 0", "LH+RH work reset"]),
        ("Left front and right front new, sizes one and two.",
         ["LF shoe_size 1", "LF+RF work new_shoe", "RF shoe_size 2"]),
        ("Near fore and off fore, nails five and six.", ["LF nails 5", "RF nails 6"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_two_sizes_are_of_the_two_ends = reads(
    [
        (
            "New shoes fronts and hinds, sizes two and one.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round. Sizes two and one.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New steel front and back, sizes one and nought.",
            ["LF+RF shoe_size 1", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 0"],
        ),
        (
            "New hinds and fronts, sizes one and two.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes fronts and hinds. Twos and ones.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round. Twos and ones, plain.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH shoe_type plain", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round, plain steel. Sizes three and two, six nails each.",
            [
                "LF+RF shoe_size 3",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH shoe_material steel",
                "LF+RF+LH+RH shoe_type plain",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 2",
            ],
        ),
        (
            "Reset all round, nails fives and fours.",
            ["LF+RF nail_size 5", "LF+RF+LH+RH work reset", "LH+RH nail_size 4"],
        ),
        (
            "Reset fronts and hinds, fives and fours.",
            ["LF+RF shoe_size 5", "LF+RF+LH+RH work reset", "LH+RH shoe_size 4"],
        ),
        (
            "New shoes all four, size two. Fives and fours.",
            ["LF+RF nail_size 5", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH nail_size 4"],
        ),
        # here it says nothing
        (
            "New shoes all round, twos in front and ones behind.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round, size two. Three and three.",
            ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe"],
        ),
        (
            "Reset all round, twos, fives.",
            ["LF+RF+LH+RH nail_size 5", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work reset"],
        ),
        ("Trimmed all round. Ordered fives and sixes.", ["LF+RF+LH+RH work trim"]),
        (
            "New shoes all round, size two. Ones and twos in the box.",
            ["LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe"],
        ),
        ("New shoes all round, size two and a half.", ["LF+RF+LH+RH shoe_size 2.5", "LF+RF+LH+RH work new_shoe"]),
    ]
)


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("New in front, sizes two and one.", ["LF+RF work new_shoe"]),
        ("New shoes behind, sizes one and nought, six nails each.", ["LH+RH nails 6", "LH+RH work new_shoe"]),
        ("Fronts new, twos and ones.", ["LF+RF work new_shoe"]),
        ("Reset all round. Kept the fives and sixes.", ["LF+RF+LH+RH work reset"]),
        ("Bruise in the left front. Reset all round. Fives and sixes.", [
            "LF finding bruise", "LF+RF+LH+RH work reset",
        ]),
    ],
)  # fmt: skip
def test_which_foot_has_which_size_is_asked(read: Read, said: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == facts
    assert [flag.reason for flag in visit.flags] == ["Heard two sizes, but not of which feet."]


@pytest.mark.parametrize(
    "said",
    [
        "New in front, sizes two and one, left and right.",
        "Reset all round. Kept the fives.",
        "New all round, size two. Ones and twos in the box.",
        "Trimmed all round. Ordered the fives and sixes.",
    ],
)
def test_no_size_is_asked_about(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert not visit.flags


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("Fronts reset, six and seven nails.", ["LF nails 6", "LF+RF work reset", "RF nails 7"]),
        ("Reset the hinds. Six and seven nails.", ["LH nails 6", "LH+RH work reset", "RH nails 7"]),
        ("Hinds, six nails and seven nails.", ["LH nails 6", "RH nails 7"]),
        ("Toe angles in front 50 and 52.", ["LF toe_angle 50", "RF toe_angle 52"]),
        ("Toe lengths 80 and 82 mil, both fores.", ["LF toe_length 80", "RF toe_length 82"]),
        ("Fronts sizes one and two.", ["LF shoe_size 1", "RF shoe_size 2"]),
        ("Reset all four, six and seven nails.", ["LF+RF+LH+RH work reset"]),
    ],
)
def test_a_number_for_each_of_a_pair_is_asked(read: Read, said: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == facts
    assert [flag.reason for flag in visit.flags] == ["Heard a number for each foot, but not which is whose."]


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("Fronts, nails four and three.", ["LF+RF nails 4"]),  # of the two sides of a foot, or misheard
        ("Reset the fronts, size one and six nails.", ["LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work reset"]),
        ("Heel height an inch and a half on both fronts.", ["LF+RF heel_height 38.1"]),
        ("Fronts, six and six nails.", ["LF+RF nails 6"]),
    ],
)
def test_two_numbers_of_one_pair(read: Read, said: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == facts
    assert not [flag for flag in visit.flags if "each foot" in flag.reason]


test_nails_of_the_two_ends = reads(
    [
        (
            "Fronts reset, hinds new, six and seven nails.",
            ["LF+RF nails 6", "LF+RF work reset", "LH+RH nails 7", "LH+RH work new_shoe"],
        ),
        (
            "Hinds new, fronts reset, seven and six nails.",
            ["LF+RF nails 6", "LF+RF work reset", "LH+RH nails 7", "LH+RH work new_shoe"],
        ),
    ],
    "Tally. {}",
)
