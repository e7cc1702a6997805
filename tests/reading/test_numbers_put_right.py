"""Numbers said anew behind "well", a quarter that another part stands for, and weeks told by two numbers.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_well_another_number = reads(
    [
        ("Both fronts reset, seven nails, well, six.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("Near hind reset, eight nails, well, seven, the last one wouldn't hold.", ["LH nails 7", "LH work reset"]),
        ("New shoe on the left front, size two, well, one and a half.", ["LF shoe_size 1.5", "LF work new_shoe"]),
        ("Left front toe angle fifty two, well, fifty one.", ["LF toe_angle 51"]),
        ("Off fore heel height 40 mil, well, 42.", ["RF heel_height 42"]),
        ("Trimmed all four. Six weeks, well, five.", ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"]),
        ("Body condition five, well, four and a half.", ["- body_condition 4.5"]),
        # a number of its own stays beside the first
        (
            "Fronts reset, six nails, well, four in the left.",
            ["LF nails 4", "LF+RF work reset", "RF nails 6"],
        ),
        ("Fronts reset, six nails, well, size two.", ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work reset"]),
    ]
)

test_put_right_behind_the_reason = reads(
    [
        (
            "Body condition five. Six weeks, wait, they're away, make it seven.",
            ["- body_condition 5", "- next_visit_weeks 7 planned"],
        ),
        (
            "Toe angle 50 on the left front. Six weeks, hang on, the show's on, make that five.",
            ["- next_visit_weeks 5 planned", "LF toe_angle 50"],
        ),
        (
            "Size two on the fronts. Six nails, no, there's room, call it seven.",
            ["LF+RF nails 7", "LF+RF shoe_size 2"],
        ),
        (
            "Body condition five. See him in six, no, the ground's hard, make it seven.",
            ["- body_condition 5", "- next_visit_weeks 7 planned"],
        ),
        (
            "Body condition five. Six weeks, no, seven, wait, make it eight.",
            ["- body_condition 5", "- next_visit_weeks 8 planned"],
        ),
        # each cue puts right what stands before it
        (
            "Body condition five, no, four. Six weeks, wait, make it seven.",
            ["- body_condition 4", "- next_visit_weeks 7 planned"],
        ),
        ("Body condition five, wait, let me feel him, call it a six.", ["- body_condition 6"]),
    ]
)

test_put_right_on_the_second_foot = reads(
    [
        (
            "Heel height two and a quarter inches on the left front, and on the right front one and a half, no, I "
            "wrote it down somewhere, one and five eighths inches on the right front.",
            ["LF heel_height 57.2", "RF heel_height 41.3"],
        ),
        (
            "Toe length three inches on the near fore, off fore three and a half, no, let me look again, three and "
            "five eighths inches.",
            ["LF toe_length 76.2", "RF toe_length 92.1"],
        ),
        (
            "Toe angle fifty degrees on the near fore, off fore fifty two, no, I read that wrong, fifty three degrees.",
            ["LF toe_angle 50", "RF toe_angle 53"],
        ),
        (
            "Six nails in the near fore, off fore seven, no, I took one out, five nails.",
            ["LF nails 6", "RF nails 5"],
        ),
        # the count itself is put right
        ("Toe angle fifty degrees on the near fore, no, I read that wrong, fifty three degrees.", ["LF toe_angle 53"]),
    ]
)

test_a_quarter_put_right = reads(
    [
        (
            "Sole depth on the right front is half an inch, the left front's only, what, a quarter, no, three eighths.",
            ["LF sole_depth 9.5", "RF sole_depth 12.7"],
        ),
        ("Sole depth a quarter, sorry, five sixteenths on the left front.", ["LF sole_depth 7.9"]),
        ("Sole depth on the off fore three quarters, no, wait, five eighths.", ["RF sole_depth 15.9"]),
        ("Crack in the left front, a quarter, no, the toe.", ["LF finding crack @toe"]),
        ("Quarter crack left hind, no heat.", ["LH finding crack @quarter", "LH finding heat absent"]),
    ]
)

test_weeks_by_two_numbers = reads(
    [
        ("Trimmed all four. Eight, nine weeks.", ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"]),
        ("Call it five, six weeks.", ["- next_visit_weeks 5 planned"]),
        ("See him in six, seven weeks.", ["- next_visit_weeks 6 planned"]),
        ("Reset in front. Say seven, eight weeks.", ["- next_visit_weeks 7 planned", "LF+RF work reset"]),
        ("Back in four, five weeks.", ["- next_visit_weeks 4 planned"]),
        ("I'll see her again in six, eight weeks.", ["- next_visit_weeks 6 planned"]),
        # what the first number counts is its own
        (
            "New shoes in front, size five, six weeks.",
            ["- next_visit_weeks 6 planned", "LF+RF shoe_size 5", "LF+RF work new_shoe"],
        ),
        (
            "Reset in front, seven nails, eight weeks.",
            ["- next_visit_weeks 8 planned", "LF+RF nails 7", "LF+RF work reset"],
        ),
        ("See him in six, no, seven weeks.", ["- next_visit_weeks 7 planned"]),
        ("See him in six, uh, seven weeks.", ["- next_visit_weeks 7 planned"]),
    ]
)

test_days_back_are_no_size = reads(
    [
        (
            "Left front reset, size five. The right hind had thrush two days back.",
            ["LF shoe_size 5", "LF work reset", "RH finding thrush history"],
        ),
        (
            "Left front reset, size five. Bruise in the near hind three days ago.",
            ["LF shoe_size 5", "LF work reset", "LH finding bruise history"],
        ),
    ]
)

test_that_is_both = reads(
    [
        (
            "The left front's underrun, oh, wait, that's both of them, both fronts have underrun heels.",
            ["LF+RF finding underrun_heels"],
        ),
        ("Bruise in the left hind, no wait, it's both.", ["LH+RH finding bruise"]),
        ("Off fore has thrush, no, both of them.", ["LF+RF finding thrush"]),
        ("The left front's got thrush, oh wait, so does the right front.", ["LF+RF finding thrush"]),
        ("Left hind is underrun, wait, so is the right hind.", ["LH+RH finding underrun_heels"]),
        ("Near fore has a corn, no, hang on, so has the off fore.", ["LF+RF finding corn"]),
        ("Flare on the near hind, sorry, that's both of them.", ["LH+RH finding flare"]),
    ]
)

test_shoe_sizes_among_nails = reads(
    [
        (
            "Six nails, number one, plain steel, both fronts.",
            ["LF+RF nails 6", "LF+RF shoe_material steel", "LF+RF shoe_size 1", "LF+RF shoe_type plain"],
        ),
        ("Eight nails, size two, both hinds.", ["LH+RH nails 8", "LH+RH shoe_size 2"]),
        (
            "Six nails, number five, size two shoes, both fronts.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2"],
        ),
        (
            "Size two, both fronts, six nails, number fives.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2"],
        ),
        (
            "New sevens in front. Sevens because the sixes were too small last time.",
            ["LF+RF shoe_size 6 history", "LF+RF shoe_size 7", "LF+RF work new_shoe"],
        ),
    ]
)

test_well_in_the_next_sentence = reads(
    [
        ("She's lame on the near fore, grade three. Well, I'd call it two.", ["LF lameness 2"]),
        ("Lame on the off hind, three out of five. Actually I'd make it two out of five.", ["RH lameness 2"]),
        ("Body condition six. Well, I'd say five.", ["- body_condition 5"]),
        ("Obel three. Well, I'd put it down as two.", ["- obel 2"]),
        ("Thrush in the left hind, severe. Well, I'd call it moderate.", ["LH finding thrush ~moderate"]),
        (
            "Toe angle on the left front 52. Well, I'd say the right is 51.",
            ["LF toe_angle 52", "RF toe_angle 51"],
        ),
        (
            "Fronts reset, six nails. Well, I'd call it seven weeks.",
            ["- next_visit_weeks 7 planned", "LF+RF nails 6", "LF+RF work reset"],
        ),
    ]
)

test_the_count_of_all_stands_on_the_other_feet = reads(
    [
        (
            "Fronts reset, six nails each, no, seven in the right front.",
            ["LF nails 6", "LF+RF work reset", "RF nails 7"],
        ),
        (
            "Fronts reset, six nails each. No, the right front got seven.",
            ["LF nails 6", "LF+RF work reset", "RF nails 7"],
        ),
        (
            "Fronts reset, three a side, no, four a side on the near fore.",
            ["LF nails 8", "LF+RF work reset", "RF nails 6"],
        ),
        (
            "Reset all round, six nails a foot, no, five in the near hind.",
            ["LF+RF+LH+RH work reset", "LF+RF+RH nails 6", "LH nails 5"],
        ),
        (
            "Reset all round, size two all round, sorry, the hinds are ones.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
        ),
        ("Fronts reset, six nails each, no, seven each.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("Fronts reset, six nails each, no, seven in front.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("Fronts reset, six nails in the left, no, seven in the right front.", ["LF+RF work reset", "RF nails 7"]),
    ]
)

test_nails_size_put_right = reads(
    [
        (
            "New shoes all round. Number two shoes, number five nails, I tell a lie, number six.",
            ["LF+RF+LH+RH nail_size 6", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe"],
        ),
        (
            "Reset in front. Size one, number four nails, sorry, number five.",
            ["LF+RF nail_size 5", "LF+RF shoe_size 1", "LF+RF work reset"],
        ),
        (
            "Reset behind. Number one shoes, number five nails, no, number two shoes.",
            ["LH+RH nail_size 5", "LH+RH shoe_size 2", "LH+RH work reset"],
        ),
        (
            "New shoes in front. Size two, number five nails, no, size three.",
            ["LF+RF nail_size 5", "LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
    ],
    "Tally. {}",
)

test_another_number_of_nails = reads(
    [
        (
            "Both fronts reset, three a side, well, I snuck one in on the left, so call it seven on the left front.",
            ["LF nails 7", "LF+RF work reset", "RF nails 6"],
        ),
        ("Fronts reset. Three a side, no, seven.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("Fronts reset. Three a side, no, four.", ["LF+RF nails 8", "LF+RF work reset"]),
        ("Reset in front, four a side, sorry, six.", ["LF+RF nails 6", "LF+RF work reset"]),
    ]
)

test_ran_out = reads(
    [
        (
            "New shoes up front, size two, nailed them with fives, no, ran out, four and a halfs.",
            ["LF+RF nail_size 4.5", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "New shoes up front, nails were sixes, no, out of those, fives.",
            ["LF+RF nail_size 5", "LF+RF work new_shoe"],
        ),
        ("New shoes behind, size two, no, none left, size three.", ["LH+RH shoe_size 3", "LH+RH work new_shoe"]),
        ("Rim pads, no, didn't have any, mesh pads, both fronts.", ["LF+RF pad mesh"]),
        ("Fronts trimmed, no, ran out of daylight, six weeks.", ["- next_visit_weeks 6 planned", "LF+RF work trim"]),
    ]
)

test_said_all_morning = reads(
    [
        ("I've been saying Obel three all morning but I'm going with two.", ["- obel 2"]),
        ("I've been saying body condition six, but I'd call it seven.", ["- body_condition 7"]),
        ("I've been calling it a crack in the off fore but it's a bruise.", ["RF finding bruise"]),
        (
            "New shoes in front. I've been saying size two all week but I'm going with one and a half.",
            ["LF+RF shoe_size 1.5", "LF+RF work new_shoe"],
        ),
        ("I've been saying thrush in the near hind but it's mild.", ["LH finding thrush ~mild"]),
        ("I've been saying six weeks and six weeks it is.", ["- next_visit_weeks 6 planned"]),
    ]
)

test_under_the_word_size = reads(
    [
        ("New shoes in front. Nail size, fives.", ["LF+RF nail_size 5", "LF+RF work new_shoe"]),
        ("Nail size on both fronts, four and a half.", ["LF+RF nail_size 4.5"]),
        ("Nail size in front five.", ["LF+RF nail_size 5"]),
        ("Shoe size on the hinds, two.", ["LH+RH shoe_size 2"]),
        ("Nail sizes fronts five, hinds six.", ["LF+RF nail_size 5", "LH+RH nail_size 6"]),
        ("Fronts reset. Nail size on both, I want to say five.", ["LF+RF nail_size 5", "LF+RF work reset"]),
        # another thing is counted behind it
        ("Reset in front. Same nail size on both, six in each.", ["LF+RF nails 6", "LF+RF work reset"]),
        (
            "Same shoe size in front, seven nails. Six weeks.",
            ["- next_visit_weeks 6 planned", "LF+RF nails 7"],
        ),
    ]
)

test_the_same_in_both_after_all = reads(
    [
        (
            "New shoes behind, five nails near hind and six off hind, no, six in both.",
            ["LH+RH nails 6", "LH+RH work new_shoe"],
        ),
        ("Four nails left front and five right front, hang on, five in both.", ["LF+RF nails 5"]),
        ("Five nails near hind and six off hind, no, seven off hind.", ["LH nails 5", "RH nails 7"]),
        ("Six nails in front and size two behind, no, one in both.", ["LF+RF nails 6", "LH+RH shoe_size 1"]),
    ]
)

test_a_pause_behind_and = reads(
    [
        ("Toe angle's fifty left front and, hang on, fifty two right front.", ["LF toe_angle 50", "RF toe_angle 52"]),
        ("Six nails in the near fore and, hold on, seven in the off fore.", ["LF nails 6", "RF nails 7"]),
        (
            "Size one on the left front, and hang on a minute, size two on the right front.",
            ["LF shoe_size 1", "RF shoe_size 2"],
        ),
        ("Toe angle's fifty left front, hang on, fifty two left front.", ["LF toe_angle 52"]),
        ("Toe angle's fifty left front and, hang on, fifty two left front.", ["LF toe_angle 52"]),
        ("Six nails in the near fore and, no, seven in the near fore.", ["LF nails 7"]),
    ],
    "Tally. {}",
)

test_said_again_behind_a_stop = reads(
    [
        ("Six nails left front. Seven I mean.", ["LF nails 7"]),
        ("Six nails left front. Seven, I should say.", ["LF nails 7"]),
        ("Toe angle on the left front is fifty. Fifty-one I mean, and the right front's fifty-two.",
         ["LF toe_angle 51", "RF toe_angle 52"]),
        ("Left front a corn. Right front I mean.", ["RF finding corn"]),
        ("Left front a corn. Bruise I mean.", ["LF finding bruise"]),
        ("Reset the fronts. Hinds I should say are long toed.", ["LF+RF work reset", "LH+RH finding long_toe"]),
        ("Left hind, six nails. Right hind I mean to leave bare.", ["LH nails 6"]),
    ],
    "Tally. {}",
)  # fmt: skip


test_of_all_the_sizes_those_of_a_part = reads(
    [
        (
            "New shoes all round, number one in front, number nought behind, seven nails a foot, sixes. "
            "Wait on, fives behind, it's only sixes in the fores.",
            [
                "LF+RF nail_size 6",
                "LF+RF shoe_size 1",
                "LF+RF+LH+RH nails 7",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 5",
                "LH+RH shoe_size 0",
            ],
        ),
        (
            "New shoes all round, size one, six nails a foot, fives. Hang on, fours behind, it's only fives in front.",
            [
                "LF+RF nail_size 5",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH shoe_size 1",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 4",
            ],
        ),
        (
            "New all round, size one, six nails each, fives. No, fours behind.",
            [
                "LF+RF nail_size 5",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH shoe_size 1",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 4",
            ],
        ),
        (
            "New shoes in front, size one, five nails each, sixes. No, fives in the left front.",
            ["LF nail_size 5", "LF+RF nails 5", "LF+RF shoe_size 1", "LF+RF work new_shoe", "RF nail_size 6"],
        ),
        (
            "New all round, twos. Sorry, threes in front, twos behind.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 2"],
        ),
        (
            "New all round, size two, six nails each, fives. No, sixes.",
            ["LF+RF+LH+RH nail_size 6", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe"],
        ),
        (
            "New shoes in front, size two, six nails each, fives. No, sixes in both.",
            ["LF+RF nail_size 6", "LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
    ]
)


test_cues_that_stand_between_two_marks = reads(
    [
        (
            "New plates in front, size five, no, back up, size four.",
            ["LF+RF shoe_size 4", "LF+RF shoe_type racing_plate", "LF+RF work new_shoe"],
        ),
        ("New in front, size two, whoa, size one.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
        ("Corn in the near fore, wait on, off fore.", ["RF finding corn"]),
        ("Nailed it back up, six nails, near fore.", ["LF nails 6", "LF work put_back"]),
        ("Fronts went back up, five nails each.", ["LF+RF nails 5"]),
        ("Thrush in the left hind. Whoa, right hind trimmed.", ["LH finding thrush", "RH work trim"]),
        ("Whoa, quiet now. Reset in front.", ["- manner quiet", "LF+RF work reset"]),
        ("Wait on the vet before the pads go in front. Hinds trimmed.", ["LH+RH work trim"]),
    ]
)
