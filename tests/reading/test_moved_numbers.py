"""A measure that went from one number to another: the first is of an earlier time.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_from_then_to_now = reads(
    [
        ("Condition score down from a seven to a five.", ["- body_condition 5", "- body_condition 7 history"]),
        ("Body condition has gone from a seven to a six.", ["- body_condition 6", "- body_condition 7 history"]),
        ("He's gone from a condition seven to a five.", ["- body_condition 5", "- body_condition 7 history"]),
        ("Cresty neck came down from four to two.", ["- cresty_neck 2", "- cresty_neck 4 history"]),
        ("Obel grade down from a three to a two.", ["- obel 2", "- obel 3 history"]),
        ("Toe angle up from 48 to 51 on the left front.", ["LF toe_angle 48 history", "LF toe_angle 51"]),
        ("Left front toe angle went from 48 degrees to 51.", ["LF toe_angle 48 history", "LF toe_angle 51"]),
        (
            "Sole depth on the right front has come up from eight to eleven.",
            ["RF sole_depth 11", "RF sole_depth 8 history"],
        ),
        (
            "Toe length, left front, from three and a half inches down to three and a quarter.",
            ["LF toe_length 82.6", "LF toe_length 88.9 history"],
        ),
        (
            "Fronts reset, nail size down from a six to a five.",
            ["LF+RF nail_size 5", "LF+RF nail_size 6 history", "LF+RF work reset"],
        ),
        (
            "Fronts reset, nails down from sixes to fives.",
            ["LF+RF nail_size 5", "LF+RF nail_size 6 history", "LF+RF work reset"],
        ),
        (
            "Fronts reset, and I dropped the nails from seven to six.",
            ["LF+RF nails 6", "LF+RF nails 7 history", "LF+RF work reset"],
        ),
        (
            "New shoes in front, down from a two to a one.",
            ["LF+RF shoe_size 1", "LF+RF shoe_size 2 history", "LF+RF work new_shoe"],
        ),
        ("Went from an aught to a one in front.", ["LF+RF shoe_size 0 history", "LF+RF shoe_size 1"]),
        ("Moved her up from a one to a two in front.", ["LF+RF shoe_size 1 history", "LF+RF shoe_size 2"]),
        ("Dropped him from size two to size one in front.", ["LF+RF shoe_size 1", "LF+RF shoe_size 2 history"]),
        (
            "Lame on the near fore, he's gone from a three to a two.",
            ["LF lameness 2", "LF lameness 3 history"],
        ),
    ]
)

test_the_time_between_the_numbers_is_of_the_first = reads(
    [
        (
            "Body condition gone from a seven in the spring to a five.",
            ["- body_condition 5", "- body_condition 7 history"],
        ),
        ("Body condition went from a seven to a fifteen.", ["- body_condition 7 history"]),
        (
            "Toe length went from four to three and a half on the left front. Right front three and three quarters.",
            ["LF toe_length 101.6 history", "LF toe_length 88.9", "RF toe_length 95.3"],
        ),
        (
            "Last month the toe angle on the left front went from 48 to 51.",
            ["LF toe_angle 48 history", "LF toe_angle 51 history"],
        ),
    ]
)

test_the_number_of_before_comes_last = reads(
    [
        ("Body condition down to a five from a seven.", ["- body_condition 5", "- body_condition 7 history"]),
        ("Left front toe angle up to 51 from 48.", ["LF toe_angle 48 history", "LF toe_angle 51"]),
        (
            "New shoes in front, size two, up from a one and a half.",
            ["LF+RF shoe_size 1.5 history", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Fronts reset, size fives for nails, down from a six.",
            ["LF+RF nail_size 5", "LF+RF nail_size 6 history", "LF+RF work reset"],
        ),
    ]
)

test_nothing_was_moved = reads(
    [
        ("Left front toe angle is anything from 48 to 51.", ["LF toe_angle 48"]),
        ("He came back up from three days off. Left front, corn.", ["LF finding corn"]),
        ("He came down in the betting from six to one. Left front, corn.", ["LF finding corn"]),
        ("The thrush in the left hind is gone from the frog.", ["LH finding thrush resolved @frog"]),
    ]
)

test_counted_from_the_other_foot = reads(
    [
        ("Eight nails in the left hind, and one fewer in the right hind.", ["LH nails 8", "RH nails 7"]),
        ("The near hind got eight nails, the off hind two less.", ["LH nails 8", "RH nails 6"]),
        ("Seven nails in the near fore. The off fore took one nail more.", ["LF nails 7", "RF nails 8"]),
        (
            "Hoof width on the near hind is a hundred and twenty millimetres, the off hind is two less than that.",
            ["LH hoof_width 120", "RH hoof_width 118"],
        ),
        (
            "Toe angle fifty two on the near fore, two degrees more on the off fore.",
            ["LF toe_angle 52", "RF toe_angle 54"],
        ),
        # weeks, a finding, and what no foot is told of
        ("Seven nails in the near fore, look at the off fore in two more weeks.", ["LF nails 7"]),
        ("Seven nails in the near fore, two more corns in the off fore.", ["LF nails 7", "RF finding corn"]),
        ("Seven nails in the near fore, two fewer would have done.", ["LF nails 7"]),
    ]
)

test_the_change_told_by_its_word = reads(
    [
        (
            "His condition has slipped to four, from a five at Christmas.",
            ["- body_condition 4", "- body_condition 5 history"],
        ),
        (
            "One out of five on the off hind. Her condition has dropped to a four, from a six in the summer.",
            ["- body_condition 4", "- body_condition 6 history", "RH lameness 1"],
        ),
        ("Her body score has crept up to a seven.", ["- body_condition 7"]),
        # no score of today, and a trouble that went on
        ("His condition slipped. Four weeks.", ["- next_visit_weeks 4 planned"]),
        ("Lame on the off hind, it has gone to the other leg.", ["RH gait lame"]),
    ]
)

test_gone_up_a_size = reads(
    [
        (
            "I've gone up half a size in front on Tansy, from a two to a two and a half.",
            ["LF+RF shoe_size 2 history", "LF+RF shoe_size 2.5"],
        ),
        (
            "Gone down a size on Tansy's fronts, from a two to a one.",
            ["LF+RF shoe_size 1", "LF+RF shoe_size 2 history"],
        ),
        ("Tansy. Picked up the fronts, size two.", ["LF+RF shoe_size 2"]),
    ]
)

test_a_slip_with_who_wears_it = reads(
    [
        (
            "Fronts reset, size one. I keep wanting to say she's in a two. She's not, she's a one.",
            ["LF+RF shoe_size 1", "LF+RF work reset"],
        ),
        ("Fronts reset, size three. I keep saying he takes a four.", ["LF+RF shoe_size 3", "LF+RF work reset"]),
        ("They keep saying she's in a two in front.", ["LF+RF shoe_size 2"]),
    ],
)

test_what_it_comes_to_told_as_well = reads(
    [
        (
            "Heel height forty two on the off fore, and five mil less than that, thirty seven, on the near fore.",
            ["LF heel_height 37", "RF heel_height 42"],
        ),
        (
            "Toe angle fifty on the left front, and two degrees less, forty eight, on the right front.",
            ["LF toe_angle 50", "RF toe_angle 48"],
        ),
        ("Eight nails in the near hind, one less, seven, in the off hind.", ["LH nails 8", "RH nails 7"]),
    ],
    "Tally. {}",
)

test_an_old_count_beside_the_one_of_today = reads(
    [
        ("Left hind. Five nails now, was six.", ["LH nails 5", "LH nails 6 history"]),
        ("Near fore six nails. Off fore, he had seven nails.", ["LF nails 6", "RF nails 7"]),
        ("Near fore six nails. Off fore the same but it had seven nails.", ["LF nails 6", "RF nails 7"]),
        ("Near fore. She's five nails in that shoe where she'd six.", ["LF nails 5", "LF nails 6 history"]),
        ("Six nails in the near fore where there were eight.", ["LF nails 6", "LF nails 8 history"]),
        ("Seven nails in the off hind, it had eight nails.", ["RH nails 7", "RH nails 8 history"]),
        ("Near fore, six nails, used to be eight.", ["LF nails 6", "LF nails 8 history"]),
        ("Near fore, down to five nails from six.", ["LF nails 5", "LF nails 6 history"]),
        ("Off hind is size two where he had a three.", ["RH shoe_size 2", "RH shoe_size 3 history"]),
        ("Six nails in the near fore, no, it was seven.", ["LF nails 7"]),
        ("Six nails in the near fore, I think it was seven.", ["LF nails 7"]),
        ("Six nails in the near fore, the off had seven.", ["LF nails 6", "RF nails 7"]),
        ("Six nails in front and there were seven behind.", ["LF+RF nails 6", "LH+RH nails 7"]),
    ]
)

test_a_grade_that_is_given = reads(
    [
        ("Obel three last month. Today I'd give him a one.", ["- obel 1", "- obel 3 history"]),
        ("She was Obel three back then. I'd call her a two now.", ["- obel 2", "- obel 3 history"]),
        ("He's between a two and a three out of five on the left front.", ["LF lameness 2"]),
        (
            "I went back and forth between a two and a three out of five on the left front. I'm going with a three.",
            ["LF lameness 3"],
        ),
        ("She's three out of five on the off fore, and I'm going with a two.", ["RF lameness 2"]),
        ("New shoes in front, between a one and a two.", ["LF+RF shoe_size 1-2", "LF+RF work new_shoe"]),
        (
            "Two out of five on the left front. I'm going with a two on the hinds, plain.",
            ["LF lameness 2", "LH+RH shoe_size 2 planned", "LH+RH shoe_type plain planned"],
        ),
    ]
)
