"""Places, lengths and scores that are told one behind the other.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads

test_one_place_for_several_answers = reads(
    [
        (
            "Reaction at the frog with the testers, strong near fore, mild off fore.",
            ["LF tester strong @frog", "RF tester mild @frog"],
        ),
        (
            "Reaction to the testers at the toe, mild left front, strong right front.",
            ["LF tester mild @toe", "RF tester strong @toe"],
        ),
        (
            "Some reaction across the heels to the testers, moderate off fore, none near fore.",
            ["LF tester none @heel", "RF tester moderate @heel"],
        ),
        (
            "Testers reacted at the toe, strong on the left, mild on the right, fronts.",
            ["LF tester strong @toe", "RF tester mild @toe"],
        ),
    ],
    "Tansy. {}",
)

test_the_place_a_foot_is_high_at = reads(
    [
        ("High on the inside, off fore, so out of balance.", ["RF finding imbalance @medial"]),
        ("Long on the outside, near hind, so imbalanced.", ["LH finding imbalance @lateral"]),
        ("High outside, left front, so it's out of balance.", ["LF finding imbalance @lateral"]),
        ("Off fore's high on the inside, out of balance.", ["RF finding imbalance @medial"]),
    ],
    "Tansy. {}",
)

test_lengths_one_by_one = reads(
    [
        (
            "Off fore, width twelve and a half centimetres, toe length eighty-four, toe angle fifty-one.",
            ["RF hoof_width 125", "RF toe_angle 51", "RF toe_length 84"],
        ),
        (
            "Near fore, width five inches, toe length three and a half, heel height two.",
            ["LF heel_height 50.8", "LF hoof_width 127", "LF toe_length 88.9"],
        ),
        (
            "Off fore, three and three eighths toe length, five and a quarter wide, two inches of heel.",
            ["RF heel_height 50.8", "RF hoof_width 133.4", "RF toe_length 85.7"],
        ),
        (
            "Near fore, five and a half wide, three and a half toe length.",
            ["LF hoof_width 139.7", "LF toe_length 88.9"],
        ),
        ("Left front, an inch and a half of heel, three inches of toe.", ["LF heel_height 38.1", "LF toe_length 76.2"]),
        ("Both fronts five inches wide.", ["LF+RF hoof_width 127"]),
    ],
    "Tansy. {}",
)

test_scores_of_before = reads(
    [
        (
            "Condition seven, crest a three. He was an eight at the last visit.",
            ["- body_condition 7", "- body_condition 8 history", "- cresty_neck 3"],
        ),
        ("Condition score six. She was a seven in the spring.", ["- body_condition 6", "- body_condition 7 history"]),
        ("Body condition five. Was a four last time.", ["- body_condition 4 history", "- body_condition 5"]),
        ("Size three in front. He was a four last time.", ["LF+RF shoe_size 3", "LF+RF shoe_size 4 history"]),
        ("Condition six. He was a two in front last time.", ["- body_condition 6", "LF+RF shoe_size 2 history"]),
    ],
    "Tansy. {}",
)

test_a_number_alone_before_a_foot_alone = reads(
    [
        (
            "Heel angle forty-five, left front. Forty-seven, right front. Was forty-two on the left front before.",
            ["LF heel_angle 42 history", "LF heel_angle 45", "RF heel_angle 47"],
        ),
        (
            "Toe length three and a half, left front. Three and three eighths, right front.",
            ["LF toe_length 88.9", "RF toe_length 85.7"],
        ),
        ("Six nails, near fore. Seven, off fore.", ["LF nails 6", "RF nails 7"]),
        ("Size two, fronts. One, hinds.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
        ("Heel angle forty-five, left front. Two, right front.", ["LF heel_angle 45"]),
        ("Toe angle fifty, left front. Six weeks.", ["- next_visit_weeks 6 planned", "LF toe_angle 50"]),
    ],
    "Buck. {}",
)

test_degrees_of_a_second_foot_are_a_wedge_there = reads(
    [
        (
            "Three degree wedge, left front. Right front, two degree.",
            ["LF wedge 3", "LF+RF pad wedge", "RF wedge 2"],
        ),
        (
            "Wedges. Three degree near fore, two degree off fore.",
            ["LF wedge 3", "LF+RF pad wedge", "RF wedge 2"],
        ),
        (
            "Wedge pad on the near fore. Toe angle on the off fore, fifty degrees.",
            ["LF pad wedge", "RF toe_angle 50"],
        ),
    ],
    "Buck. {}",
)

test_what_was_just_told_is_measured = reads(
    [
        (
            "Both fronts have thin soles, I got a quarter inch on the left front and five sixteenths on the right.",
            ["LF sole_depth 6.4", "LF+RF finding thin_sole", "RF sole_depth 7.9"],
        ),
        (
            "Both fronts have thin soles. Eight millimetres left front, nine right.",
            ["LF sole_depth 8", "LF+RF finding thin_sole", "RF sole_depth 9"],
        ),
        (
            "Long toes in front. Left front I measured at three and a half inches, right front at three.",
            ["LF toe_length 88.9", "LF+RF finding long_toe", "RF toe_length 76.2"],
        ),
        (
            "Sole in the near fore I couldn't measure. In the off fore I could, it's nine millimetres.",
            ["RF sole_depth 9"],
        ),
        (
            "Long toes in front. There's a gap of three inches in the fence by the left front gate.",
            ["LF+RF finding long_toe"],
        ),
        ("Thin soles in front. I measured twelve inches of mud on the off fore.", ["LF+RF finding thin_sole"]),
    ],
    "Tansy. {}",
)

test_what_a_score_is_for = reads(
    [
        (
            "Obel three he was last spring, this time I'd say Obel one, and I scored him a seven for condition.",
            ["- body_condition 7", "- obel 1", "- obel 3 history"],
        ),
        ("I scored him a three for crest, grade two lame on the off fore.", ["- cresty_neck 3", "RF lameness 2"]),
    ],
    "Tansy. {}",
)

test_weeks_are_no_score = reads(
    [
        (
            "He's fat, condition seven. Eight weeks is what they asked for and I said six, and six it is.",
            ["- body_condition 7", "- next_visit_weeks 6 planned"],
        ),
        (
            "Crest a three. Six weeks they wanted and I told them five.",
            ["- cresty_neck 3", "- next_visit_weeks 5 planned"],
        ),
        ("Condition seven. It was a six six weeks ago.", ["- body_condition 6 history", "- body_condition 7"]),
    ],
    "Tansy. {}",
)

test_how_long_a_long_toe_is = reads(
    [
        (
            "Right front's got a long toe, three and five eighths inches from the hairline.",
            ["RF finding long_toe", "RF toe_length 92.1"],
        ),
        (
            "Her toes are long on the left front, four inches from the coronet.",
            ["LF finding long_toe", "LF toe_length 101.6"],
        ),
        (
            "Near fore long toe, three and three quarter inches. Off fore long toe, three and a half inches.",
            ["LF toe_length 95.3", "LF+RF finding long_toe", "RF toe_length 88.9"],
        ),
        # no toe's length, and a place
        ("Long toes on both fronts, I took off an inch.", ["LF+RF finding long_toe"]),
        ("Long toes on both fronts, three inches of ribbon on his tail.", ["LF+RF finding long_toe"]),
        ("Right hind has a crack, an inch long, at the hairline.", ["RH finding crack @coronary_band"]),
    ],
    "Tally. {}",
)

test_fives_behind_the_shoes_size = reads(
    [
        (
            "Egg bars on the fronts, size one. Side clips. Number fives, six to the foot.",
            ["LF+RF clips side", "LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF shoe_type egg_bar"],
        ),
        (
            "Rims in front, size two. Sixes, seven apiece.",
            ["LF+RF nail_size 6", "LF+RF nails 7", "LF+RF shoe_size 2", "LF+RF shoe_type rim"],
        ),
        # another pair of feet has shoes of its own
        (
            "Size two in front. Hinds. Threes, seven to a foot.",
            ["LF+RF shoe_size 2", "LH+RH nails 7", "LH+RH shoe_size 3"],
        ),
    ],
    "Tally. {}",
)

test_foot_by_foot_with_a_thought_between = reads(
    [
        (
            "New on both fronts. The left front took a one and the right front took, let me look, a one and a half. "
            "Size five nails, three a side.",
            ["LF shoe_size 1", "LF+RF nail_size 5", "LF+RF nails 6", "LF+RF work new_shoe", "RF shoe_size 1.5"],
        ),
        (
            "New on both hinds. The near hind was a two, the off hind went, let me think, two and a half. Six nails.",
            ["LH shoe_size 2", "LH+RH nails 6", "LH+RH work new_shoe", "RH shoe_size 2.5"],
        ),
        # a finding between is on its foot, and so is what follows
        (
            "New on both fronts. The near fore was loose, the off fore had, let me see, a corn. Full pad.",
            ["LF shoe_state loose", "LF+RF work new_shoe", "RF finding corn", "RF pad full"],
        ),
    ],
    "Tally. {}",
)


test_measured_against_the_other_foot = reads(
    [
        (
            "Tally. The off fore is fifty degrees at the toe against fifty two on the near.",
            ["LF toe_angle 52", "RF toe_angle 50"],
        ),
        (
            "Tally. The near hind's the broader, four and a half inches wide against four and a quarter on the off.",
            ["LH hoof_width 114.3", "RH hoof_width 108"],
        ),
        (
            "Tally. Fores. The off is broader, five and a half inches wide against five and a quarter for the near.",
            ["LF hoof_width 133.4", "RF hoof_width 139.7"],
        ),
        ("Tally. Fifty degrees at the toe on the off fore, he pushes against me.", ["RF toe_angle 50"]),
    ]
)


test_what_they_are_behind_the_nails = reads(
    [
        ("Tally. Eight nails in each hind. They're sevens.", ["LH+RH nail_size 7", "LH+RH nails 8"]),
        (
            "Tally. Seven nails in the near fore, six in the off. They're number fives in both.",
            ["LF nails 7", "LF+RF nail_size 5", "RF nails 6"],
        ),
        ("Tally. Size one in front. They're twos behind.", ["LF+RF shoe_size 1", "LH+RH shoe_size 2"]),
        (
            "Tally. Eight nails each, both fronts. They're number twos.",
            ["LF+RF nails 8", "LF+RF shoe_size 2"],
        ),
    ]
)


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("Toe angles fifty and fifty two in front.", "fifty two in front"),
        ("Heel angles on the hinds 50 and 52, toe lengths 78 and 80.", "80"),
    ],
)
def test_a_second_measure_is_asked_about(read: Read, text: str, asked: str) -> None:
    (visit,) = read(f"Tally. {text}", *NAMES)
    assert ("Heard a number that could not be placed.", asked) in [(f.reason, f.quote) for f in visit.flags]


@pytest.mark.parametrize(
    "text",
    [
        "Toe lengths left and right front eighty and eighty two.",
        "Toe length eighty and a half in front.",
        "Toe angle fifty and heel angle forty eight in front.",
        "Toe angle fifty in front and six nails.",
        "Toe length in front eighty and reset all round.",
    ],
)
def test_a_measure_with_its_foot_or_its_part_is_not(read: Read, text: str) -> None:
    (visit,) = read(f"Tally. {text}", *NAMES)
    assert visit.flags == []


test_a_measure_with_words_of_when_or_how = reads(
    [
        ("Trimmed in front. Toe length after the trim, left front three and a half, right front three and a quarter.",
         ["LF toe_length 88.9", "LF+RF work trim", "RF toe_length 82.6"]),
        ("Trimmed in front. Toe length once trimmed, left front three and a half, right front three and three eighths.",
         ["LF toe_length 88.9", "LF+RF work trim", "RF toe_length 85.7"]),
        ("Trimmed in front. Toe length left front three and a half after the trim, right front three and a quarter.",
         ["LF toe_length 88.9", "LF+RF work trim", "RF toe_length 82.6"]),
        ("Reset in front, toe length after the trim, left front three and a half, right front three and a quarter.",
         ["LF toe_length 88.9", "LF+RF work reset", "RF toe_length 82.6"]),
        ("Toe length three and a half in front, plain steel, fronts one and a half, hinds two.",
         ["LF+RF shoe_material steel", "LF+RF shoe_size 1.5", "LF+RF shoe_type plain", "LF+RF toe_length 88.9",
          "LH+RH shoe_size 2"]),
    ],
    "Tally. {}",
)  # fmt: skip


test_the_same_measures_of_the_other_foot = reads(
    [
        (
            "Hoof width near fore seven and a half inches, toe length a hundred and five mil. "
            "Off fore, seven and a quarter inches and a hundred and one mil.",
            ["LF hoof_width 190.5", "LF toe_length 105", "RF hoof_width 184.2", "RF toe_length 101"],
        ),
        (
            "Near fore toe length ninety mil, heel height forty. Off fore, ninety two and forty one.",
            ["LF heel_height 40", "LF toe_length 90", "RF heel_height 41", "RF toe_length 92"],
        ),
        (
            "Left front toe angle fifty two, heel angle forty eight. Right front, fifty four and fifty.",
            ["LF heel_angle 48", "LF toe_angle 52", "RF heel_angle 50", "RF toe_angle 54"],
        ),
        (
            "Left front toe angle fifty two, toe length three and a half inches. "
            "Right front, three and a quarter inches and fifty four degrees.",
            ["LF toe_angle 52", "LF toe_length 88.9", "RF toe_angle 54", "RF toe_length 82.6"],
        ),
        (
            "Left front toe angle fifty two, heel angle forty eight, toe length three and a half inches. "
            "Right front, fifty four, fifty, three and three eighths.",
            [
                "LF heel_angle 48",
                "LF toe_angle 52",
                "LF toe_length 88.9",
                "RF heel_angle 50",
                "RF toe_angle 54",
                "RF toe_length 85.7",
            ],
        ),
        (
            "Left front toe angle fifty two, heel angle forty eight. Right front, six nails.",
            ["LF heel_angle 48", "LF toe_angle 52", "RF nails 6"],
        ),
        (
            "Left front toe angle fifty two, heel angle forty eight. Fronts, size two, six nails.",
            ["LF heel_angle 48", "LF toe_angle 52", "LF+RF nails 6", "LF+RF shoe_size 2"],
        ),
        (
            "Near fore toe angle fifty, off fore fifty one and a corn.",
            ["LF toe_angle 50", "RF finding corn", "RF toe_angle 51"],
        ),
    ]
)


test_how_long_the_toe_is_behind_its_angles = reads(
    [
        (
            "Right front, toe angle fifty-two. "
            "Left front, fifty-four at the toe, fifty at the heel, three and a quarter inches long.",
            ["LF heel_angle 50", "LF toe_angle 54", "LF toe_length 82.6", "RF toe_angle 52"],
        ),
        (
            "Near fore, toe angle fifty, heel angle forty six, three and a half inches long.",
            ["LF heel_angle 46", "LF toe_angle 50", "LF toe_length 88.9"],
        ),
        (
            "Near fore toe angle fifty, heel angle forty five, ninety mil long. "
            "Off fore, fifty one, forty six, eighty eight.",
            [
                "LF heel_angle 45",
                "LF toe_angle 50",
                "LF toe_length 90",
                "RF heel_angle 46",
                "RF toe_angle 51",
                "RF toe_length 88",
            ],
        ),
        ("Near fore heel is two inches high.", ["LF heel_height 50.8"]),
        (
            "Near fore toe angle fifty, a crack at the heel, an inch long.",
            ["LF finding crack @heel", "LF toe_angle 50"],
        ),
        (
            "Left front, corn in the heel, toe three and a half inches long.",
            ["LF finding corn @heel", "LF toe_length 88.9"],
        ),
    ]
)
