"""Which foot a fact goes to: named before, behind, in a list, pointed at, or still in hand."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "UK pair": ("Near fore has a bruise on the sole.", ["LF finding bruise @sole"]),
    "off hind": ("There's a corn in the off hind.", ["RH finding corn"]),
    "hinds": ("Both hinds are flared.", ["LH+RH finding flare"]),
    "fronts after": ("Contracted heels on both fronts.", ["LF+RF finding contracted_heels"]),
    "all four": ("Scratches on all four.", ["LF+RF+LH+RH finding scratches"]),
    "anywhere": ("No heat anywhere.", ["LF+RF+LH+RH finding heat absent"]),
    "joined": ("Thrush in the left front and right hind.", ["LF+RH finding thrush"]),
    "diagonal UK": (
        "White line separation in the near fore and the off hind.",
        ["LF+RH finding white_line_separation"],
    ),
    "own statements": (
        "Left front has a flare and right front has a toe crack.",
        ["LF finding flare", "RF finding crack @toe"],
    ),
    "list of findings": (
        "Left hind has thrush, a flare and a quarter crack.",
        ["LH finding thrush", "LH finding flare", "LH finding crack @quarter"],
    ),
    "in hand across sentences": (
        "Left hind next. Bit of thrush in the frog. Wall's shelly.",
        ["LH finding thrush @frog ~mild", "LH finding weak_wall"],
    ),
    "pointed at": ("Right front has an abscess. Poulticed that foot.", ["RF finding abscess", "RF treatment poultice"]),
    "other side": ("Left front has a flare. The other front is flared too.", ["LF+RF finding flare"]),
    "no foot at all": ("He's got some thrush.", ["- finding thrush"]),
    "horse level leaves the foot": (
        "Left front has a bruise. He stood quiet.",
        ["LF finding bruise", "- manner quiet"],
    ),
    "lists distributed": (
        "Size two on the fronts and size one on the hinds.",
        ["LF+RF shoe_size 2", "LH+RH shoe_size 1"],
    ),
    "behind and in front": ("Reset in front, trimmed behind.", ["LF+RF work reset", "LH+RH work trim"]),
    "three set-ups one foot": (
        "Left front new shoe, size two, six nails, toe clip.",
        ["LF work new_shoe", "LF shoe_size 2", "LF nails 6", "LF clips toe"],
    ),
    "abbreviated": ("LF thrush, RH corn.", ["LF finding thrush", "RH finding corn"]),
    "back foot": ("Left back has a crack at the toe.", ["LH finding crack @toe"]),
    "lameness named foot": ("He's lame on the off fore.", ["RF gait lame"]),
    "lameness unnamed": ("Left hind has a corn. He's sound.", ["LH finding corn", "- gait sound"]),
    "near side front": ("Near side front has sheared heels.", ["LF finding sheared_heels"]),
    "neither hind": ("No flare on either hind.", ["LH+RH finding flare absent"]),
    "both pointed": (
        "Fronts have thrush. Copper sulfate in both.",
        ["LF+RF finding thrush", "LF+RF treatment copper_sulfate"],
    ),
    "except": (
        "Trimmed all four. Thrush in all of them except the left front.",
        ["LF+RF+LH+RH work trim", "RF+LH+RH finding thrush"],
    ),
    "left as a verb": ("Trimmed the hinds and left them bare.", ["LH+RH work trim"]),
    "off as a verb": ("Took the shoe off the left front.", ["LF work removed"]),
    "right as well": ("Right, left front has thrush.", ["LF finding thrush"]),
    "near as nearly": ("Near enough done, the off hind has a corn.", ["RH finding corn"]),
    "left and right of the pair": (
        "Reset the fronts, four nails in the left and five in the right.",
        ["LF+RF work reset", "LF nails 4", "RF nails 5"],
    ),
    "near and off of the pair": (
        "Reset the fores, four nails on the near and five on the off.",
        ["LF+RF work reset", "LF nails 4", "RF nails 5"],
    ),
    "off alone": ("Corn in the near fore, bruise in the off.", ["LF finding corn", "RF finding bruise"]),
    "near alone": ("Bruise in the off fore, corn in the near.", ["RF finding bruise", "LF finding corn"]),
    "off of the hinds": ("Both hinds have a flare, the off has thrush.", ["LH+RH finding flare", "RH finding thrush"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_anyplace = reads(
    [
        (
            "A bruise in the left front. No flares on her anyplace.",
            ["LF finding bruise", "LF+RF+LH+RH finding flare absent"],
        ),
        (
            "Thrush in the left hind. No cracks on him any place.",
            ["LF+RF+LH+RH finding crack absent", "LH finding thrush"],
        ),
        ("Left front tacked on. I couldn't find any place to nail.", []),
        (
            "A bruise in the left hind. No puncture anyplace in there.",
            ["LH finding bruise", "LH finding puncture absent"],
        ),
        ("A bruise in the left hind. No thrush anywhere in it.", ["LH finding bruise", "LH finding thrush absent"]),
    ],
    "Tally. {}",
)

test_a_pair_counted_foot_by_foot_is_in_hand = reads(
    [
        (
            "Reset in front. Seven nails in the left front, six in the right. Leather pads.",
            ["LF nails 7", "LF+RF pad leather", "LF+RF work reset", "RF nails 6"],
        ),
        (
            "New shoes on both fores, seven nails near fore, six nails off fore, rim pads.",
            ["LF nails 7", "LF+RF pad rim", "LF+RF work new_shoe", "RF nails 6"],
        ),
        (
            "Reset behind. Size two in the left hind, size one in the right hind. Steel.",
            ["LH shoe_size 2", "LH+RH shoe_material steel", "LH+RH work reset", "RH shoe_size 1"],
        ),
        (
            "Reset in front. Seven nails in the left front, six in the right, it has a crack. Leather pad.",
            ["LF nails 7", "LF+RF work reset", "RF finding crack", "RF nails 6", "RF pad leather"],
        ),
        (
            "Left front reset, seven nails. Right front reset, six nails. Leather pad.",
            ["LF nails 7", "LF+RF work reset", "RF nails 6", "RF pad leather"],
        ),
        (
            "Reset in front, seven nails in the near fore and six in the off fore, where the wall's shelly.",
            ["LF nails 7", "LF+RF work reset", "RF finding weak_wall", "RF nails 6"],
        ),
    ],
    "Tansy. {}",
)

test_a_condition_on_one_foot_and_the_plan_for_both = reads(
    [
        ("If the right front gets ouchy we'll put boots on both fronts.", ["LF+RF shoe_type boot planned"]),
        ("If the near hind cracks I'll put bar shoes on both hinds.", ["LH+RH shoe_type bar planned"]),
    ],
)

test_it_is_the_one_shoe = reads(
    [
        (
            "Sprung the near fore shoe. Reset it, and rolled toes on both fores.",
            ["LF shoe_state sprung", "LF work reset", "LF+RF shoe_type rolled_toe"],
        ),
        (
            "Left hind was loose. Reset it tight, and trimmed the fronts.",
            ["LF+RF work trim", "LH shoe_state loose", "LH work reset"],
        ),
        (
            "Near fore was sprung. Reset, and rolled toes on both fores.",
            ["LF shoe_state sprung", "LF+RF shoe_type rolled_toe", "LF+RF work reset"],
        ),
    ],
    "Tansy. {}",
)

test_the_foot_that_is_denied_is_not_in_hand = reads(
    [
        ("The sore one is the right front, not the left front. Testers strong at the toe.", ["RF tester strong @toe"]),
        (
            "Corn in the right front, not the left. Testers strong.",
            ["LF finding corn absent", "RF finding corn", "RF tester strong"],
        ),
        (
            "It's the off fore and not the near fore. Drained an abscess at the toe.",
            ["RF finding abscess @toe", "RF treatment drained"],
        ),
        (
            "Thrush in the near fore, not the off fore, the near hind. Iodine on it.",
            ["LF+LH finding thrush", "LH treatment iodine", "RF finding thrush absent"],
        ),
    ],
    "Tally. {}",
)

test_the_other_a_plain_one = reads(
    [
        ("Near fore got a bar shoe, the other a plain one.", ["LF shoe_type bar", "RF shoe_type plain"]),
        (
            "Corn in the near fore. That one got a bar shoe, the other one a plain one.",
            ["LF finding corn", "LF shoe_type bar", "RF shoe_type plain"],
        ),
    ],
    "Tally. {}",
)

test_the_right_that_has_it = reads(
    [
        ("Left front's fine, it's the right that's got the bruise.", ["RF finding bruise"]),
        ("Trimmed the hinds. It was the left that had the thrush last time.",
         ["LH finding thrush history", "LH+RH work trim"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_shoes_of_both_that_are_reset = reads(
    [
        (
            "Lame on the left front today. Bar shoes, steel, reset both.",
            ["LF gait lame", "LF+RF shoe_material steel", "LF+RF shoe_type bar", "LF+RF work reset"],
        ),
        (
            "One out of five on the right front. Egg bars again, aluminum, reset both of them.",
            ["LF+RF shoe_material aluminum", "LF+RF shoe_type egg_bar", "LF+RF work reset", "RF lameness 1"],
        ),
        (
            "Corn in the near hind. Rim shoes, size two, reset both fronts.",
            ["LF+RF shoe_size 2", "LF+RF shoe_type rim", "LF+RF work reset", "LH finding corn"],
        ),
        (
            "Corn in the near fore. Egg bar, reset both.",
            ["LF finding corn", "LF shoe_type egg_bar", "LF+RF work reset"],
        ),
        (
            "Corn in the near fore. Heart bar on it. Reset both hinds.",
            ["LF finding corn", "LF shoe_type heart_bar", "LH+RH work reset"],
        ),
    ]
)
