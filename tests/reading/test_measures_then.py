"""What was measured at an earlier time, in the order of today's measures; and the wedge of that time.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_one_foot_against_the_other = reads(
    [
        (
            "Club foot, off fore, and her heel height there is sixty millimetres against forty two on the near fore.",
            ["LF heel_height 42", "RF finding club_foot", "RF heel_height 60"],
        ),
        (
            "Toe length near fore is eighty against seventy six on the off fore.",
            ["LF toe_length 80", "RF toe_length 76"],
        ),
        (
            "Toe angle left front is fifty two compared to forty nine on the right front.",
            ["LF toe_angle 52", "RF toe_angle 49"],
        ),
        (
            "Heel height right hind forty versus a thirty eight on the left hind.",
            ["LH heel_height 38", "RH heel_height 40"],
        ),
        ("Body condition six against a seven last time.", ["- body_condition 6", "- body_condition 7 history"]),
        # no number stands behind it
        ("Left front, the flare's against the quarter.", ["LF finding flare @quarter"]),
    ],
    "Tally. {}",
)

test_they_were = reads(
    [
        (
            "Toe lengths, near fore 82 mil, off fore 84. They were 90 and 91 in August so we're winning.",
            ["LF toe_length 82", "LF toe_length 90 history", "RF toe_length 84", "RF toe_length 91 history"],
        ),
        (
            "Toe angles, left front 52, right front 50. Last time they were 49 and 48.",
            ["LF toe_angle 49 history", "LF toe_angle 52", "RF toe_angle 48 history", "RF toe_angle 50"],
        ),
        (
            "Toe angle fifty two left front, fifty right front. They were forty nine and forty eight in March.",
            ["LF toe_angle 49 history", "LF toe_angle 52", "RF toe_angle 48 history", "RF toe_angle 50"],
        ),
        (
            "Heel heights, left hind 40, right hind 42. They were 38 and 40 last visit.",
            ["LH heel_height 38 history", "LH heel_height 40", "RH heel_height 40 history", "RH heel_height 42"],
        ),
        ("Toe angle fifty two on the left front. It was forty nine last time.",
         ["LF toe_angle 49 history", "LF toe_angle 52"]),
        ("Toe length on the fronts is 88. They were 90 last time.",
         ["LF+RF toe_length 88", "LF+RF toe_length 90 history"]),
        (
            "Hoof width left front 124, right front 126. They were 120 and 122 in the winter.",
            ["LF hoof_width 120 history", "LF hoof_width 124", "RF hoof_width 122 history", "RF hoof_width 126"],
        ),
        # nothing that was measured then
        ("Toe angle 52 left front, 50 right front. They were a right pair in August.",
         ["LF toe_angle 52", "RF toe_angle 50"]),
        ("Toe angle 52 left front, 50 right front. They were six weeks overdue last time.",
         ["LF toe_angle 52", "RF toe_angle 50"]),
        ("Size two in front. They were ones last time.", ["LF+RF shoe_size 1 history", "LF+RF shoe_size 2"]),
    ]
)  # fmt: skip

test_the_wedge_of_then = reads(
    [
        (
            "He had wedge pads last time in front, four degree, so two degree wedges on both fronts now.",
            ["LF+RF pad wedge", "LF+RF pad wedge history", "LF+RF wedge 2", "LF+RF wedge 4 history"],
        ),
        (
            "She wore wedges on the fronts last winter, three degrees, today just plain shoes.",
            ["LF+RF pad wedge history", "LF+RF shoe_type plain", "LF+RF wedge 3 history"],
        ),
        ("He had wedge pads in front last time, today three degree.", ["LF+RF pad wedge history", "LF+RF wedge 3"]),
        ("Two degree wedges on the fronts, four degree on the hinds.",
         ["LF+RF wedge 2", "LF+RF+LH+RH pad wedge", "LH+RH wedge 4"]),
    ]
)  # fmt: skip

test_one_number_of_both = reads(
    [
        (
            "Toe lengths, left front eighty-eight, right front ninety. In March they were ninety-four, both.",
            ["LF toe_length 88", "LF+RF toe_length 94 history", "RF toe_length 90"],
        ),
        (
            "Sole depth left front nine, right front ten. In May they were eight both.",
            ["LF sole_depth 9", "LF+RF sole_depth 8 history", "RF sole_depth 10"],
        ),
        (
            "Toe angles left front 51, right front 52. In May they were 49 and 50.",
            ["LF toe_angle 49 history", "LF toe_angle 51", "RF toe_angle 50 history", "RF toe_angle 52"],
        ),
    ],
    "Tally. {}",
)

test_another_number_last_time = reads(
    [
        ("Toe angle fifty two on the near fore, fifty last time.", ["LF toe_angle 50 history", "LF toe_angle 52"]),
        (
            "Toe length eighty on both fronts, eighty four in March.",
            ["LF+RF toe_length 80", "LF+RF toe_length 84 history"],
        ),
        ("Condition five, six last visit.", ["- body_condition 5", "- body_condition 6 history"]),
        ("Six nails in the fronts, eight last time.", ["LF+RF nails 6", "LF+RF nails 8 history"]),
        (
            "Back to six nails in each of his fronts. Last time I used eight and I was sorry for it.",
            ["LF+RF nails 6", "LF+RF nails 8 history"],
        ),
        ("Seven nails, both hinds. It was six last time.", ["LH+RH nails 6 history", "LH+RH nails 7"]),
        # one number a foot is of the same time; weeks and grades are no nails
        (
            "Toe angles, left front fifty, right front fifty two last time.",
            ["LF toe_angle 50 history", "RF toe_angle 52 history"],
        ),
        ("Six nails in both fronts. Last time he was eight weeks.", ["LF+RF nails 6"]),
        ("Six nails in both fronts. She was an eight last time on the belly tape.", ["LF+RF nails 6"]),
    ],
    "Tally. {}",
)


test_one_number_of_both_of_them_then = reads(
    [
        (
            "Tally. Toe angle fifty-four on both fronts. They were fifty-two, the both of them, in January.",
            ["LF+RF toe_angle 52 history", "LF+RF toe_angle 54"],
        ),
        (
            "Tally. Heel height left front's forty. Right front's forty too. They were both thirty-eight in May.",
            ["LF+RF heel_height 38 history", "LF+RF heel_height 40"],
        ),
        (
            "Tally. Toe angle left front fifty. Right front fifty one. It was forty nine in May.",
            ["LF toe_angle 50", "RF toe_angle 49 history", "RF toe_angle 51"],
        ),
    ]
)

test_the_angle_behind_a_length = reads(
    [
        (
            "I measured two degrees less on it in January, it was fifty one then.",
            ["LF toe_angle 51 history", "LF toe_angle 53", "LF toe_length 90"],
        ),
        (
            "It had three degrees more back in the spring, it was fifty six then.",
            ["LF toe_angle 53", "LF toe_angle 56 history", "LF toe_length 90"],
        ),
        ("Two degrees less than I'd like.", ["LF toe_angle 53", "LF toe_length 90"]),
    ],
    "Tally. Toe angle fifty three near fore. Toe length ninety near fore. {}",
)

test_degrees_of_a_wedge_moved = reads(
    [
        (
            f"{said}.",
            ["LF+RF pad wedge", "LF+RF wedge 2", "LF+RF wedge 3 history"],
        )
        for said in ("Went from a three degree to a two on the fronts", "Fronts, from three degrees down to two")
    ],
    "Tally. {}",
)
