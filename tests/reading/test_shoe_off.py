"""What is said of several feet is not said of the one whose shoe is off; "everything else" is the others.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_a_foot_without_a_shoe = reads(
    [
        (
            "Right hind shoe's off, leaving it off. The other three got reset, "
            "rocker toes on the fronts, plain behind.",
            ["LF+RF shoe_type rocker_toe", "LF+RF+LH work reset", "LH shoe_type plain", "RH work removed"],
        ),
        (
            "Took the shoe off the near hind and left it off. Reset the rest, size one, seven nails all round.",
            ["LF+RF+RH nails 7", "LF+RF+RH shoe_size 1", "LF+RF+RH work reset", "LH work removed"],
        ),
        (
            "Pulled the left front shoe and left it off. Everything else reset, ones all round, six nails each.",
            ["LF work removed", "RF+LH+RH nails 6", "RF+LH+RH shoe_size 1", "RF+LH+RH work reset"],
        ),
        (
            "The shoe's off the left hind and staying off. Behind he's in a plain, size two. Fronts reset.",
            ["LF+RF work reset", "LH work removed", "RH shoe_size 2", "RH shoe_type plain"],
        ),
        (
            "Off fore, shoe off and left off. Fronts are twos, hinds ones, all reset bar the off fore.",
            ["LF shoe_size 2", "LF+LH+RH work reset", "LH+RH shoe_size 1", "RF work removed"],
        ),
        (
            "Left the shoe off the right front. Other three are new, quarter clips, eight nails a foot.",
            ["LF+LH+RH clips quarter", "LF+LH+RH nails 8", "LF+LH+RH work new_shoe", "RF work removed"],
        ),
        ("Near fore removed and left off. All the others reset.", ["LF work removed", "RF+LH+RH work reset"]),
        (
            "Shoes off the fronts and left off, a pair of boots on them. Hinds reset.",
            ["LF+RF shoe_type boot", "LF+RF work removed", "LH+RH work reset"],
        ),
        (
            "Left front, took the shoe off and left it off, boot on it. Right front reset, six nails.",
            ["LF shoe_type boot", "LF work removed", "RF nails 6", "RF work reset"],
        ),
        ("Pulled the shoes in front. New shoes in front, six nails each.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    "said",
    [
        "Everything else reset.",
        "All else was reset.",
        "Reset all the others.",
        "Every other foot reset.",
        "All reset bar the off fore.",
        "All four reset except the off fore.",
        "The whole set was reset but the off fore.",
        "Everything was reset except for the off fore.",
        "Everything's a reset bar the off fore.",
    ],
)
def test_the_other_three(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. New shoe on the off fore, seven nails. {said}", "Tally")
    assert told(visit) == ["LF+LH+RH work reset", "RF nails 7", "RF work new_shoe"]


test_a_shoe_that_is_left_off_or_will_be = reads(
    [
        (
            "Poultice on the off fore, bandage over, shoe left off.",
            ["RF treatment bandage", "RF treatment poultice", "RF work removed"],
        ),
        (
            "Drained the abscess in the near hind, shoe kept off.",
            [
                "LH finding abscess",
                "LH treatment drained",
                "LH work removed",
            ],
        ),
        (
            "Left hind has a close nail, if it goes sour I'll take that shoe off.",
            ["LH finding close_nail", "LH work removed planned"],
        ),
        ("If the near fore is no better I'll pull that shoe off.", ["LF work removed planned"]),
        ("Reset the near fore, it takes an age to get a shoe off him.", ["LF work reset"]),
        (
            "Took the left hind shoe off. The rest, reset, a five, no, fives in front and a four on the right hind.",
            ["LF+RF shoe_size 5", "LF+RF+RH work reset", "LH work removed", "RH shoe_size 4"],
        ),
    ],
    "Buck. {}",
)

test_the_left_of_a_foot_is_no_leaving = reads(
    [
        ("Took the left hind shoe off.", ["LH work removed"]),
        ("I took the left front shoe off and left it off.", ["LF work removed"]),
        ("Reset the fronts, left hind barefoot.", ["LF+RF work reset", "LH work trim"]),
        ("I left the hind shoes off.", ["LH+RH work removed"]),
        ("I left the left hind barefoot.", ["LH work trim"]),
    ],
    "Buck. {}",
)

test_the_same_shoe_that_was_never_lost = reads(
    [
        (
            "A corn in the off fore. Near fore, same shoe back on, size four.",
            ["LF shoe_size 4", "LF work reset", "RF finding corn"],
        ),
        ("Left hind sprung, straightened it, same shoe back on.", ["LH shoe_state sprung", "LH work reset"]),
        ("Off hind, same shoe went back on, six nails.", ["RH nails 6", "RH work reset"]),
        ("Lost the near fore, same shoe back on.", ["LF shoe_state lost", "LF work put_back"]),
        ("They found the near fore in the field, same shoe back on.", ["LF work put_back"]),
        ("Took the near hind off and nailed the same one back.", ["LH work reset"]),
        ("Nearly took my arm off. Near hind, nailed the same one back.", ["LH work put_back"]),
    ],
    "Buck. {}",
)

test_halting_before_the_foot = reads(
    [
        ("I pulled, um, both front shoes.", ["LF+RF work removed"]),
        ("Pulled, er, the near hind, and left it off.", ["LH work removed"]),
        ("He pulled, um, the off fore in the field.", []),
    ],
    "Tansy. {}",
)

test_off_and_staying_off = reads(
    [
        ("Corn, left front. Shoe's off and it'll stay off.", ["LF finding corn", "LF work removed"]),
        ("Hinds. Off came both shoes and off they'll stay.", ["LH+RH work removed"]),
        ("Off came the hind shoes, trimmed.", ["LH+RH work removed", "LH+RH work trim"]),
        # the plan is for another foot
        (
            "Left front shoe's off. I'll take the right front shoe off next time.",
            ["LF work removed", "RF work removed planned"],
        ),
    ],
    "Tansy. {}",
)

test_the_feet_come_off_for_their_shoes = reads(
    [
        ("If the pulse is still up the fronts come off.", ["LF+RF work removed planned"]),
        ("If she's no better by then the hinds are coming off.", ["LH+RH work removed planned"]),
        ("If the pulse is still up the near fore comes off.", ["LF work removed planned"]),
        ("The fronts come off easily.", []),
    ],
)

test_what_will_stay_off_is_off = reads(
    [
        (
            "Left front abscess. No shoe on it, I took it off and it'll stay off till the abscess is done.",
            ["LF finding abscess", "LF work removed"],
        ),
        (
            "Right hind abscess. The shoe's off and it will stay off until it's dry.",
            ["RH finding abscess", "RH work removed"],
        ),
        ("Off fore has a corn. It'll stay off till it grows.", ["RF finding corn", "RF work removed"]),
        # only if, or another thing
        (
            "Left front abscess. If it drains the shoe will stay off.",
            ["LF finding abscess", "LF work removed planned"],
        ),
        (
            "Left front abscess. If he's sore next time I'll take the shoe off.",
            ["LF finding abscess", "LF work removed planned"],
        ),
        ("Left front abscess. He'll stay off the grass till next time.", ["LF finding abscess"]),
        ("Left front abscess. She's staying off work.", ["LF finding abscess"]),
    ],
    "Tansy. {}",
)


test_shoes_that_were_drawn = reads(
    [
        ("Drew the hind shoes and left them off.", ["LH+RH work removed"]),
        ("I drew both front shoes and trimmed the four feet.", ["LF+RF work removed", "LF+RF+LH+RH work trim"]),
        (
            "I drew all four shoes and left them off, and trimmed the four feet.",
            ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"],
        ),
        ("Drew the hinds, left them bare. Fores reset.", ["LF+RF work reset", "LH+RH work removed"]),
        ("Shoes drawn in front, hinds trimmed.", ["LF+RF work removed", "LH+RH work trim"]),
        ("I'll draw the fores next time.", ["LF+RF work removed planned"]),
        ("Drew the near fore shoe and reset it.", ["LF work reset"]),
        ("I drew the near fore forward and he flinched. Hinds trimmed.", ["LH+RH work trim"]),
        ("He drew his near fore back on me. Reset all four.", ["LF+RF+LH+RH work reset"]),
        (
            "The left hind was pricked. I drew that one and put iodine up the hole.",
            ["LH finding quicked", "LH treatment iodine"],
        ),
        ("I drew the clip on the near fore. Hinds trimmed.", ["LH+RH work trim"]),
    ]
)

test_off_they_came = reads(
    [
        ("Front shoes worn to nothing, so off they came.", ["LF+RF shoe_state worn", "LF+RF work removed"]),
        ("Off fore shoe was loose. Off it came, and I left it off.", ["RF shoe_state loose", "RF work removed"]),
        (
            "I'd said last time I'd pull the fronts, so off they came. Hinds reset.",
            ["LF+RF work removed", "LH+RH work reset"],
        ),
        ("I said last visit I'd take the hind shoes off. So off they came.", ["LH+RH work removed"]),
        ("I'd promised last time I'd pull the fronts, and today off came the pair of them.", ["LF+RF work removed"]),
        (
            "I told her last time I'd pull the fronts, so I did. Hinds trimmed.",
            ["LF+RF work removed", "LH+RH work trim"],
        ),
        ("Last time I said I'd pull her hind shoes. Trimmed in front.", ["LF+RF work trim"]),
        ("I said last time I'd pull the fronts but I didn't. Hinds reset.", ["LH+RH work reset"]),
        ("I'd pulled his front shoes last time. Hinds reset.", ["LF+RF work removed history", "LH+RH work reset"]),
        ("I'd pull the fronts next time.", ["LF+RF work removed planned"]),
        ("Front shoes were worn, so off they came and new ones on.", ["LF+RF shoe_state worn", "LF+RF work new_shoe"]),
        ("Front shoes sprung, so off they came, rasped and reset.", ["LF+RF shoe_state sprung", "LF+RF work reset"]),
        ("Near fore shoe was loose and off it came in my hand. Reset.", ["LF shoe_state loose", "LF work reset"]),
        ("The pads were rotten, so off they came. New shoes in front.", ["LF+RF work new_shoe"]),
        ("Near fore bandage was filthy, off it came. Iodine.", ["LF treatment bandage", "LF treatment iodine"]),
    ],
    "Tansy. {}",
)
