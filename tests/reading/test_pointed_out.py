"""A foot pointed at by what it has ("the loose one", "the leather one", "the front one") is the foot that has it.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_the_one_that_has_it = reads(
    [
        (
            "Near hind was sprung. That foot got a new one and the other three are reset. "
            "Seven nails in each except the new one, which got six.",
            [
                "LF+RF+RH nails 7",
                "LF+RF+RH work reset",
                "LH nails 6",
                "LH shoe_state sprung",
                "LH work new_shoe",
            ],
        ),
        (
            "Loose shoe right front, sprung shoe left front. The loose one I reset, the sprung one got replaced.",
            ["LF shoe_state sprung", "LF work new_shoe", "RF shoe_state loose", "RF work reset"],
        ),
        (
            "Left front's loose and the right front's lost. Reset the loose one, new shoe on the other.",
            ["LF shoe_state loose", "LF work reset", "RF shoe_state lost", "RF work new_shoe"],
        ),
        (
            "Near fore lost, off fore sprung. The lost one got a new shoe, the sprung one was reset.",
            ["LF shoe_state lost", "LF work new_shoe", "RF shoe_state sprung", "RF work reset"],
        ),
        (
            "Right hind loose, left hind worn thin. The loose one got reset and the worn one was replaced.",
            ["LH shoe_state worn", "LH work new_shoe", "RH shoe_state loose", "RH work reset"],
        ),
        (
            "Leather pad left front, rim pad right front, oakum in the leather one only.",
            ["LF packing oakum", "LF pad leather", "RF pad rim"],
        ),
        (
            "Full pad left front, mesh pad right front, putty under the mesh one.",
            ["LF pad full", "RF packing putty", "RF pad mesh"],
        ),
        (
            "New shoe on the left front, reset on the right front. Six nails in the new one, five in the reset one.",
            ["LF nails 6", "LF work new_shoe", "RF nails 5", "RF work reset"],
        ),
        (
            "Right front new, left front reset. The new one's a size two, the reset one's a size one.",
            ["LF shoe_size 1", "LF work reset", "RF shoe_size 2", "RF work new_shoe"],
        ),
        (
            "Bar shoe left front, plain right front, side clips on the bar shoe.",
            ["LF clips side", "LF shoe_type bar", "RF shoe_type plain"],
        ),
        (
            "Thrush in both hinds, bad in the left, mild in the right. Iodine in the bad one.",
            ["LH finding thrush ~severe", "LH treatment iodine", "RH finding thrush ~mild"],
        ),
        (
            "Lame on the left front, right front's fine. The lame one reacted to the testers, mild at the toe.",
            ["LF gait lame", "LF tester mild @toe"],
        ),
        (
            "Club foot right front. Trimmed every foot. The club's toe angle is 62, left front's 54.",
            ["LF toe_angle 54", "LF+RF+LH+RH work trim", "RF finding club_foot", "RF toe_angle 62"],
        ),
        (
            "Club foot on the near fore. Four nails in the club, six in the other one.",
            ["LF finding club_foot", "LF nails 4", "RF nails 6"],
        ),
    ],
    "Tally. {}",
)

test_one_of_a_front_and_a_hind = reads(
    [
        (
            "Left front and right hind have seedy toe, mild on the front one, moderate on the hind one.",
            ["LF finding white_line_disease ~mild", "RH finding white_line_disease ~moderate"],
        ),
        (
            "Thrush in the left front and the left hind, severe in the front, mild behind.",
            ["LF finding thrush ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Thrush left front and right hind, the hind one's bad, the front one's a touch.",
            ["LF finding thrush ~mild", "RH finding thrush ~severe"],
        ),
        (
            "Bruise in the right front and the right hind. Front one at the toe, hind one at the heel.",
            ["RF finding bruise @toe", "RH finding bruise @heel"],
        ),
        (
            "Thrush in the off fore and near hind, mild on the fore, severe on the hind one. "
            "Iodine in the two of them.",
            ["LH finding thrush ~severe", "RF finding thrush ~mild", "RF+LH treatment iodine"],
        ),
        (
            "Thrush in the left front and right hind, mild in the hind one. The opposite two don't have any.",
            ["LF finding thrush", "RF+LH finding thrush absent", "RH finding thrush ~mild"],
        ),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("Reset the bar shoe on the left front and the plain one on the right.",
         ["LF shoe_type bar", "LF work reset", "RF shoe_type plain"]),
        ("Thrush in the left front and right hind. Reset in front, trimmed behind.",
         ["LF+RF work reset", "LF+RH finding thrush", "LH+RH work trim"]),
        ("Full pads in front. Putty under the full ones.", ["LF+RF packing putty", "LF+RF pad full"]),
        ("Loose shoe left front. Buck had a loose one too, right front.", ["LF shoe_state loose"]),
    ],
)  # fmt: skip
def test_nothing_is_pointed_at(read: Read, text: str, lines: list[str]) -> None:
    assert told(read(f"Tally. {text}", "Tally", "Buck")[0]) == lines


test_both_and_each_of_the_pair = reads(
    [
        (
            "Leather pad left front, rim pad right front, oakum in the leather one. Those are new, size 3.",
            ["LF packing oakum", "LF pad leather", "LF+RF shoe_size 3", "LF+RF work new_shoe", "RF pad rim"],
        ),
        (
            "Left front wide web, right front egg bar. They're aluminum, size two.",
            ["LF shoe_type wide_web", "LF+RF shoe_material aluminum", "LF+RF shoe_size 2", "RF shoe_type egg_bar"],
        ),
        (
            "Left front was loose. Right front was sprung. They're both reset.",
            ["LF shoe_state loose", "LF+RF work reset", "RF shoe_state sprung"],
        ),
        (
            "Lost both hinds. They found the right one so that's nailed back on, the left took a new one, size three.",
            ["LH shoe_size 3", "LH work new_shoe", "LH+RH shoe_state lost", "RH work put_back"],
        ),
    ],
    "Tally. {}",
)

test_a_second_size_before_the_count = reads(
    [
        (
            "New in front, size 3, number fives, six apiece.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        (
            "Reset in front, size one, number four and a halfs, six nails.",
            ["LF+RF nail_size 4.5", "LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work reset"],
        ),
        (
            "New shoes in front, size two, sixes, eight to a shoe.",
            ["LF+RF nail_size 6", "LF+RF nails 8", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Fronts size three, hinds number fours, six apiece.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH nails 6", "LH+RH shoe_size 4"],
        ),
        (
            "Both fronts new, size two, three, no, four nails each.",
            ["LF+RF nails 4", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
    ],
    "Tally. {}",
)


test_the_one_across_from_it = reads(
    [
        (
            "Tally. Left hind was sprung, and its mate was loose. The loose one I just reset.",
            ["LH shoe_state sprung", "RH shoe_state loose", "RH work reset"],
        ),
        (
            "Tally. A bar shoe on the near fore, an egg bar on its partner. The egg bar one has seven nails.",
            ["LF shoe_type bar", "RF nails 7", "RF shoe_type egg_bar"],
        ),
        (
            "Tally. The off fore was loose and the other foot was sprung. The loose one I reset.",
            ["LF shoe_state sprung", "RF shoe_state loose", "RF work reset"],
        ),
    ]
)

test_that_finding_is_no_foot = reads(
    [
        (
            "Canker in the right hind. Fronts reset. Vet's to be called on that canker.",
            ["- vet referral planned", "LF+RF work reset", "RH finding canker"],
        ),
        (
            "Thrush in the left hind. New shoes in front. I put iodine on that thrush.",
            ["LF+RF work new_shoe", "LH finding thrush", "LH treatment iodine"],
        ),
        ("Thrush in the left hind, iodine on that foot.", ["LH finding thrush", "LH treatment iodine"]),
        (
            "She's overreaching, catching the backs of her front shoes. Hinds reset.",
            ["- gait overreach", "LH+RH work reset"],
        ),
        ("She forges, clipping her front shoes. Fronts reset.", ["- gait forge", "LF+RF work reset"]),
        ("She's overreaching on the near fore. Backs reset.", ["LF gait overreach", "LH+RH work reset"]),
    ],
)

test_kinds_of_shoes_new_and_reset = reads(
    [
        (
            "Heart bar on the near fore and a plain shoe on the off. The heart bar's new, the plain one's a reset.",
            ["LF shoe_type heart_bar", "LF work new_shoe", "RF shoe_type plain", "RF work reset"],
        ),
        (
            "Left front has a rolled toe, right front a bar shoe. The rolled toe is a reset, the bar shoe's new.",
            ["LF shoe_type rolled_toe", "LF work reset", "RF shoe_type bar", "RF work new_shoe"],
        ),
        (
            "Plain fronts. Egg bars behind. The egg bars are new.",
            ["LF+RF shoe_type plain", "LH+RH shoe_type egg_bar", "LH+RH work new_shoe"],
        ),
        ("Heart bar on the near fore. The heart bar's good for him.", ["LF shoe_type heart_bar"]),
    ],
    "Tally. {}",
)

test_the_rest_of_something_else = reads(
    [
        (
            "Right hind abscess. I drained it the rest of the way, bandaged it. Trimmed the other three.",
            ["LF+RF+LH work trim", "RH finding abscess", "RH treatment bandage", "RH treatment drained"],
        ),
        (
            "Thrush in the off hind. Cleaned out the rest of it and put iodine on it.",
            ["RH finding thrush", "RH treatment iodine"],
        ),
        (
            "Corn in the near fore. Pared the rest of that sole and packed it with oakum.",
            ["LF finding corn", "LF packing oakum"],
        ),
        ("Left front reset. The rest of the day she stood quiet.", ["- manner quiet", "LF work reset"]),
        ("New shoes in front. Trimmed the rest of him.", ["LF+RF work new_shoe", "LH+RH work trim"]),
        ("Thrush in the left hind. Trimmed the rest of her feet.", ["LF+RF+RH work trim", "LH finding thrush"]),
        ("Thrush in the left hind. Trimmed the rest of them.", ["LF+RF+RH work trim", "LH finding thrush"]),
    ],
    "Tally. {}",
)
