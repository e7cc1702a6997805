"""Of what was said of a pair one foot is put right; what was said stands on the other.

The forms are common practice of speech, no source.
"""

from tests.reading.conftest import reads

test_one_foot_of_the_pair = reads(
    [
        (
            "Testers strong at the toe on both fores, no, hang on, the off fore was only moderate there.",
            ["LF tester strong @toe", "RF tester moderate @toe"],
        ),
        (
            "Testers mild at the heel in both fronts, no, the left front was strong there.",
            ["LF tester strong @heel", "RF tester mild @heel"],
        ),
        (
            "Testers moderate at the toe on both hinds. No, sorry, the left hind was strong there.",
            ["LH tester strong @toe", "RH tester moderate @toe"],
        ),
        (
            "Pulse bounding in both fores, no wait, the near fore was only raised.",
            ["LF pulse raised", "RF pulse bounding"],
        ),
        (
            "Toe angle fifty in both fronts, no, hang on, the right front was fifty two.",
            ["LF toe_angle 50", "RF toe_angle 52"],
        ),
        (
            "Toe length three and a half inches on both fores, no, hang on, the near fore was three and a quarter.",
            ["LF toe_length 82.6", "RF toe_length 88.9"],
        ),
        ("Size two in front, no, hold on, the off fore was a one.", ["LF shoe_size 2", "RF shoe_size 1"]),
        ("Nail size five in front, no, hold on, the near fore took fours.", ["LF nail_size 4", "RF nail_size 5"]),
        (
            "Severe thrush in both hinds, no, the off hind's only mild.",
            ["LH finding thrush ~severe", "RH finding thrush ~mild"],
        ),
        (
            "Corn at the heel in both fronts, severe, no, hang on, the near fore's only slight.",
            ["LF finding corn @heel ~mild", "RF finding corn @heel ~severe"],
        ),
        (
            "Both fronts reset, size two, no, the off fore was a one.",
            ["LF shoe_size 2", "LF+RF work reset", "RF shoe_size 1"],
        ),
        (
            "New shoes in front, size two, six nails, no, the near fore took seven.",
            ["LF nails 7", "LF+RF shoe_size 2", "LF+RF work new_shoe", "RF nails 6"],
        ),
        (
            "Reset both fronts, six nails, no, the off fore got five.",
            ["LF nails 6", "LF+RF work reset", "RF nails 5"],
        ),
        # clean on the one
        (
            "Mild thrush in both hinds, no, the off hind was clean.",
            ["LH finding thrush ~mild", "RH finding thrush absent"],
        ),
        (
            "Corn in the near fore and the off fore, no, the off fore is clean.",
            ["LF finding corn", "RF finding corn absent"],
        ),
        ("Corn in both fores, no, sorry, the near fore's fine.", ["RF finding corn"]),
        # both put right
        (
            "Testers moderate on both fores, no, off fore strong, near fore mild.",
            ["LF tester mild", "RF tester strong"],
        ),
        ("Testers strong on both fores, no, both were moderate.", ["LF+RF tester moderate"]),
        ("Toe angle fifty in both fronts, no, both were fifty two.", ["LF+RF toe_angle 52"]),
        # the other foot altogether
        ("Testers strong at the toe on both fores, no, just the off fore.", ["RF tester strong @toe"]),
        (
            "Testers strong at the toe on the near fore, no, hang on, the off fore was strong there.",
            ["RF tester strong @toe"],
        ),
        ("Testers moderate on the near fore, no, the near fore was strong.", ["LF tester strong"]),
        ("Corn in both fronts, no, the right front had the corn.", ["RF finding corn"]),
    ],
    "Tally. {}",
)

test_the_foot_pointed_at_is_put_right = reads(
    [
        ("The left hind had a flare on it, no, it's the right hind, moderate.", ["RH finding flare ~moderate"]),
        (
            "Left hind was loose. Put a new shoe on it, no, hang on, six nails.",
            ["LH nails 6", "LH shoe_state loose", "LH work new_shoe"],
        ),
        (
            "Six nails all around, size five. Wait, no, the left hind's got seven nails.",
            ["LF+RF+LH+RH nail_size 5", "LF+RF+RH nails 6", "LH nails 7"],
        ),
        ("Not as much flare as last time on the right front, mild now.", ["RF finding flare ~mild"]),
        ("She's lame on the off fore, I couldn't tell you how bad.", ["RF gait lame"]),
    ],
    "Tally. {}",
)
