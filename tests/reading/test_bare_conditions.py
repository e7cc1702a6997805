"""A condition without "if", a shoe that matches another, and work told without commas.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told


@pytest.mark.parametrize(
    "condition",
    [
        "He's off in the morning, ",
        "He's sore tomorrow, ",
        "She's no better by morning, ",
        "He's still lame tomorrow, ",
        "He's not right in the morning, ",
        "Gets any worse, ",
        "Any worse, ",
        "If he's off in the morning, ",
    ],
)
def test_what_follows_is_planned(read: Read, condition: str) -> None:
    (visit,) = read(f"Tally. Bruise left front. {condition}that shoe comes off and the foot gets soaked.", "Tally")
    assert told(visit) == ["LF finding bruise", "LF treatment soak planned", "LF work removed planned"]


test_no_condition = reads(
    [
        ("Left front was worse in the morning, so he said. Soaked it.", ["LF treatment soak"]),
        ("He's lame on the left front. Soaked it.", ["LF gait lame", "LF treatment soak"]),
        ("Goes lame on the left front. Soaked it.", ["LF gait lame", "LF treatment soak"]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    "said",
    [
        "New egg bar on the left front and the right front gets the match to it.",
        "New egg bar left front, the right front to match.",
        "New egg bar on the left front and its twin on the right front.",
        "New egg bar left front, right front matches it.",
        "New egg bar on the left front. The right front is a match to it.",
    ],
)
def test_a_shoe_that_matches(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["LF+RF shoe_type egg_bar", "LF+RF work new_shoe"]


@pytest.mark.parametrize(
    "said", ["Shoe off left off, soaked.", "Shoe off and left off soaked.", "Shoe off left off soaked."]
)
def test_a_shoe_taken_off_in_few_words(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. Left front lame. {said}", "Tally")
    assert told(visit) == ["LF gait lame", "LF treatment soak", "LF work removed"]


test_a_condition_under_a_heading = reads(
    [
        ("Plan: if that crack spreads, straight bar on the right front.", ["RF shoe_type straight_bar planned"]),
        ("Plan: if it's draining, poultice on the right hind.", ["RH treatment poultice planned"]),
        (
            "Plan: if he's sound, plain shoes in front. If not, egg bars.",
            ["LF+RF shoe_type egg_bar planned", "LF+RF shoe_type plain planned"],
        ),
        (
            "Note: crack in the right front, straight bar on that foot.",
            ["RF finding crack", "RF shoe_type straight_bar"],
        ),
    ],
    "Tally. {}",
)

test_left_so_until_then = reads(
    [
        (
            "I've left the shoe off the left front until the vet's seen her.",
            ["- vet referral planned", "LF work removed"],
        ),
        ("We'll put a bar shoe on the left front until it's down.", ["LF shoe_type bar planned"]),
    ],
    "Tally. {}",
)

test_the_foot_that_gets_something = reads(
    [
        (
            "When it's settled the left hind gets a new trailer, size naught.",
            ["LH shoe_size 0 planned", "LH shoe_type trailer planned", "LH work new_shoe planned"],
        ),
        (
            "Once the abscess dries up both hinds get new plain shoes, steel.",
            ["LH+RH shoe_material steel planned", "LH+RH shoe_type plain planned", "LH+RH work new_shoe planned"],
        ),
        ("If the left front takes another knock, call me.", []),
        ("If he's sore on the left front, pull the shoe.", ["LF work removed planned"]),
    ],
    "Tally. {}",
)

test_should_and_what_he_will_get = reads(
    [
        (
            "Should the heel get worse, I'd take the near fore shoe off and poultice it.",
            ["LF treatment poultice planned", "LF work removed planned"],
        ),
        ("Should they find heat in the off hind, the vet's to be called.", ["- vet referral planned"]),
        ("He should have heat in the off hind.", ["RH finding heat"]),
        (
            "Corn in the off hind, and if it turns it's antiseptic it'll get.",
            ["RH finding corn", "RH treatment antiseptic planned"],
        ),
        ("If she's sore on the near fore it's a leather pad she'll get.", ["LF pad leather planned"]),
        ("It's antiseptic he got on the off hind.", ["RH treatment antiseptic"]),
        (
            "Wants watching, because there may be a keratoma at the toe of the near hind.",
            ["LH finding keratoma suspected @toe"],
        ),
        ("Fronts trimmed. He could probably do with side clips.", ["LF+RF clips side planned", "LF+RF work trim"]),
        (
            "Fronts trimmed. She could maybe do with a leather pad on the near fore.",
            ["LF pad leather planned", "LF+RF work trim"],
        ),
        ("All four shoes are off and he's to stay barefoot till August.", ["LF+RF+LH+RH work removed"]),
        ("Trimmed all four, he's to stay barefoot.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_next_time_closes_the_condition = reads(
    [
        ("If the vet's happy, she gets a reset all round next time.", ["LF+RF+LH+RH work reset planned"]),
        ("If he's sound, new shoes in front next time.", ["LF+RF work new_shoe planned"]),
        ("If the growth is there, heart bars on both fronts next visit.", ["LF+RF shoe_type heart_bar planned"]),
        # what is only a condition, and a plan that opens with it
        ("If there's heat in the left front next time, call me.", []),
        ("If he's sound next time we'll fit new shoes in front.", ["LF+RF work new_shoe planned"]),
    ],
    "Tally. {}",
)

test_when_he_is_due = reads(
    [
        (
            "When he's due in three weeks he'll get rolled toes on both fronts.",
            ["- next_visit_weeks 3 planned", "LF+RF shoe_type rolled_toe planned"],
        ),
        (
            "Once I'm back in five weeks we'll go to heart bars in front.",
            ["- next_visit_weeks 5 planned", "LF+RF shoe_type heart_bar planned"],
        ),
        # no visit: whether, or what the horse is back in
        ("If he's back in three weeks he'll get rolled toes on both fronts.", ["LF+RF shoe_type rolled_toe planned"]),
        ("When she's back in work in three weeks, reset in front.", ["LF+RF work reset planned"]),
    ],
    "Tally. {}",
)

test_what_it_is_for_is_no_plan = reads(
    [
        (
            "Full pads on the fronts so the snow won't ball up, silicone under those.",
            ["LF+RF packing silicone", "LF+RF pad full"],
        ),
        ("Egg bars on the fronts so he won't rock back, six nails.", ["LF+RF nails 6", "LF+RF shoe_type egg_bar"]),
        ("He won't keep them on, so rim pads next time on the fronts.", ["LF+RF pad rim planned"]),
    ],
    "Tally. {}",
)

test_when_it_can_be_had = reads(
    [
        ("New rim pads when we can get them.", ["LF+RF pad rim planned", "LF+RF work reset"]),
        ("Leather pads in front, when I can get hold of them.", ["LF+RF pad leather planned", "LF+RF work reset"]),
        ("New shoes in front when we can get them.", ["LF+RF work new_shoe planned", "LF+RF work reset"]),
        ("Rim pads to go on when I get some in.", ["LF+RF pad rim planned", "LF+RF work reset"]),
        ("When we can get them, rim pads in front.", ["LF+RF pad rim planned", "LF+RF work reset"]),
        ("Thrush in the left hind, iodine when they can get it.",
         ["LF+RF work reset", "LH finding thrush", "LH treatment iodine planned"]),
        ("He's quiet when we can get near him.", ["- manner quiet", "LF+RF work reset"]),
        ("He's fidgety when I get to the hinds.", ["- manner fidgety", "LF+RF work reset"]),
        ("Rim pads, he was good when we could get them on.", ["LF+RF pad rim", "LF+RF work reset"]),
    ],
    "Tally. Reset in front. {}",
)  # fmt: skip


test_what_closes_a_list = reads(
    [
        (
            "Egg bars in front, size two, when we can find some.",
            ["LF+RF shoe_size 2 planned", "LF+RF shoe_type egg_bar planned"],
        ),
        (
            "Heart bars, off fore, size one, as soon as I can get some.",
            ["RF shoe_size 1 planned", "RF shoe_type heart_bar planned"],
        ),
        (
            "Leather pads and egg bars in front, when they arrive.",
            ["LF+RF pad leather planned", "LF+RF shoe_type egg_bar planned"],
        ),
        (
            "Egg bars in front, size two, if the vet agrees.",
            ["LF+RF shoe_size 2 planned", "LF+RF shoe_type egg_bar planned"],
        ),
        # done all the same
        ("New shoes in front, size two, if he keeps them on.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
        ("Rim shoes in front, size two, if I'm not wrong.", ["LF+RF shoe_size 2", "LF+RF shoe_type rim"]),
        ("Egg bars in front, size two, as I said.", ["LF+RF shoe_size 2", "LF+RF shoe_type egg_bar"]),
        ("Size two in front, six nails, when I got it level.", ["LF+RF nails 6", "LF+RF shoe_size 2"]),
    ],
    "Tally. {}",
)

test_if_it_gets_worse_it_goes = reads(
    [
        (
            "Reset in front. If that left front gets worse it's going back in a straight bar.",
            ["LF shoe_type straight_bar planned", "LF+RF work reset"],
        ),
        (
            "Reset in front. If it gets worse she's going in a heart bar on the left front.",
            ["LF shoe_type heart_bar planned", "LF+RF work reset"],
        ),
        ("Reset in front. If that left front gets worse in a straight bar, call me.", ["LF+RF work reset"]),
        (
            "Reset in front. If he gets worse and there's heat in the left front, call the vet.",
            ["- vet referral planned", "LF+RF work reset"],
        ),
    ]
)
