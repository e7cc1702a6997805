"""Places, lengths and scores that are told one behind the other.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

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
