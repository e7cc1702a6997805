"""Feet that are left out, counted, compared with or named afterwards."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "all but": (
        "Bruises in all but the left hind.",
        ["LF+RF+RH finding bruise"],
    ),
    "but both of those": (
        "Right front, corn. I was going to reset the fronts but both of those shoes were worn.",
        ["LF+RF shoe_state worn", "RF finding corn"],
    ),
    "but both": (
        "Left hind, bruise. I meant to reset the hinds but both were sprung.",
        ["LH finding bruise", "LH+RH shoe_state sprung"],
    ),
    "all but that pair": (
        "The hinds are new. Reset all but those two.",
        ["LF+RF work reset", "LH+RH work new_shoe"],
    ),
    "right round a pair": (
        "Growth rings right round both fores.",
        ["LF+RF finding growth_rings"],
    ),
    "all the way round a foot": (
        "Flare all the way round the near hind.",
        ["LH finding flare"],
    ),
    "bent right round": (
        "The off fore shoe was sprung, bent right round. New shoe on, size two.",
        ["RF shoe_size 2", "RF shoe_state sprung", "RF work new_shoe"],
    ),
    "swung it right round": (
        "Near hind, she'd swung it right round on the wire. Corn at the heel.",
        ["LH finding corn @heel"],
    ),
    "turned the shoe all the way round": (
        "Off fore, he'd turned the shoe all the way around under him. Bruise in the sole.",
        ["RF finding bruise @sole"],
    ),
    "pulled all the way round": (
        "Near fore, bruise. Pulled all the way round and reset.",
        ["LF finding bruise", "LF+RF+LH+RH work reset"],
    ),
    "bandaged right round": (
        "Near fore, bandaged all the way round. Heat in it.",
        ["LF finding heat", "LF treatment bandage"],
    ),
    "kicked everything": (
        "Near hind, thrush. She kicked everything. Iodine.",
        ["LH finding thrush", "LH treatment iodine"],
    ),
    "found anywhere": (
        "Near hind, corn. Couldn't find the dog anywhere. Reset it.",
        ["LH finding corn", "LH work reset"],
    ),
    "flies everywhere": ("Off hind, corn. There's flies everywhere. Reset it.", ["RH finding corn", "RH work reset"]),
    "walked all round the field": (
        "Near fore, puncture. I walked all round the field. Poultice.",
        ["LF finding puncture", "LF treatment poultice"],
    ),
    "pus all over me": (
        "Near fore, abscess. There was muck all over me. Poultice.",
        ["LF finding abscess", "LF treatment poultice"],
    ),
    "did him all round": (
        "Near fore, bruise. Did him all round. Hardener on.",
        ["LF finding bruise", "LF+RF+LH+RH treatment hardener"],
    ),
    "bare all round": (
        "Near fore, bruise. He's bare all the way round. Hardener on.",
        ["LF finding bruise", "LF+RF+LH+RH treatment hardener"],
    ),
    "none round a pair": (
        "No growth rings all round the hinds.",
        ["LH+RH finding growth_rings absent"],
    ),
    "all round": (
        "Growth rings all round, fronts reset.",
        ["LF+RF work reset", "LF+RF+LH+RH finding growth_rings"],
    ),
    "bar": (
        "Flare on every foot bar the off fore.",
        ["LF+LH+RH finding flare"],
    ),
    "except with a reset": (
        "New shoes on everything except the right hind.",
        ["LF+RF+LH work new_shoe"],
    ),
    "that one": (
        "Reset all but the right hind. That one got a new shoe.",
        ["LF+RF+LH work reset", "RH work new_shoe"],
    ),
    "those three": (
        "Worn shoes on all but the right hind. New shoes on those three.",
        ["LF+RF+LH shoe_state worn", "LF+RF+LH work new_shoe"],
    ),
    "four counted": (
        "4 resets, six nails each.",
        ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
    ),
    "trimmed four": (
        "Trimmed four, boots on the fronts.",
        ["LF+RF shoe_type boot", "LF+RF+LH+RH work trim"],
    ),
    "all reset": (
        "Size two in front, size one behind. All reset.",
        ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
    ),
    "narrower behind": (
        "He'd lost one in front, the near fore.",
        ["LF shoe_state lost"],
    ),
    "as well as": (
        "The near fore reset as well as the off.",
        ["LF+RF work reset"],
    ),
    "of the right": (
        "Testers on the fronts, a moderate at the toe of the right.",
        ["RF tester moderate @toe"],
    ),
    "afterthought": (
        "I pricked him, near fore that was.",
        ["LF finding quicked"],
    ),
    "compared size": (
        "New shoe on the right hind, same size as the fronts.",
        ["RH work new_shoe"],
    ),
    "behind them": (
        "Full pads on the fores with silicone behind them.",
        ["LF+RF packing silicone", "LF+RF pad full"],
    ),
    "from the foot": (
        "Testers moderate on the near fore, nothing from the off fore.",
        ["LF tester moderate", "RF tester none"],
    ),
    "apiece bar one": (
        "New shoes all round. Eight nails apiece bar the near hind where I could only get six in.",
        ["LF+RF+LH+RH work new_shoe", "LF+RF+RH nails 8", "LH nails 6"],
    ),
    "a foot except one": (
        "Reset all four. Eight nails a foot except the near hind, that took six.",
        ["LF+RF+LH+RH work reset", "LF+RF+RH nails 8", "LH nails 6"],
    ),
    "each bar one, there": (
        "New shoes all round. Eight nails each, bar the near hind, six there.",
        ["LF+RF+LH+RH work new_shoe", "LF+RF+RH nails 8", "LH nails 6"],
    ),
    "his own there": (
        "New shoes on every foot but the off hind, his own was good enough to reset there.",
        ["LF+RF+LH work new_shoe", "RH work reset"],
    ),
    "sides behind units": (
        "Sole depth fronts 11 millimeters left, 9 right.",
        ["LF sole_depth 11", "RF sole_depth 9"],
    ),
    "angles of a pair": (
        "Toe angles on the fronts 53 left and 51 right.",
        ["LF toe_angle 53", "RF toe_angle 51"],
    ),
    "a measure each": (
        "Toe length 80 mil near fore, 76 off fore, hinds 78 each.",
        ["LF toe_length 80", "LH+RH toe_length 78", "RF toe_length 76"],
    ),
    "ones on the fronts": (
        "Fronts ones, hinds double aughts.",
        ["LF+RF shoe_size 1", "LH+RH shoe_size 00"],
    ),
    "a degree in doubt": (
        "Crack at the toe of the near fore, moderate I reckon.",
        ["LF finding crack @toe ~moderate"],
    ),
    "not anymore": (
        "Left front's heels aren't underrun anymore.",
        ["LF finding underrun_heels resolved"],
    ),
    "warm round a place": (
        "Left front. It's warm round the coronet.",
        ["LF finding heat @coronary_band"],
    ),
    "one today": (
        "Obel three a month ago, one today.",
        ["- obel 1", "- obel 3 history"],
    ),
    "say he gets to it": (
        "Say he gets to tripping again, the wedges go back up front, three degrees.",
        ["LF+RF pad wedge planned", "LF+RF wedge 3 planned"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)


test_three_and_the_fourth = reads(
    [
        (
            "No seedy toe in three of Tally's feet, and the fourth, the near fore, has enough for the lot of them, "
            "severe. Resected it.",
            [
                "LF finding white_line_disease ~severe",
                "LF treatment resection",
                "RF+LH+RH finding white_line_disease absent",
            ],
        ),
        (
            "Tally. No thrush in three of her feet. The fourth, the left hind, has it bad.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush ~severe"],
        ),
        (
            "Tally. Flare on three feet, the fourth is the near hind and it has none.",
            ["LF+RF+RH finding flare", "LH finding flare absent"],
        ),
        (
            "Tally. Reset three of his feet, the fourth, the off fore, got a new shoe.",
            ["LF+LH+RH work reset", "RF work new_shoe"],
        ),
        ("Tally. Three of her feet are fine, but the left hind has thrush.", ["LH finding thrush"]),
    ]
)


test_each_of_the_pair_just_named = reads(
    [
        (
            "Tally. New shoes in front. Six nails in each, except the off fore, which only took five.",
            ["LF nails 6", "LF+RF work new_shoe", "RF nails 5"],
        ),
        (
            "Tally. New tips in front. Five nails in each, except the near fore would only take four.",
            ["LF nails 4", "LF+RF shoe_type tip", "LF+RF work new_shoe", "RF nails 5"],
        ),
        (
            "Tally. Reset behind. Eight nails apiece except the off hind got seven.",
            ["LH nails 8", "LH+RH work reset", "RH nails 7"],
        ),
        (
            "Tally. New shoes all round, borium on the hinds. Six nails in each bar the off hind, five in that.",
            ["LF+RF+LH nails 6", "LF+RF+LH+RH work new_shoe", "LH+RH traction borium", "RH nails 5"],
        ),
        (
            "Tally. New shoes in front. Six nails in each except the off hind, that's five.",
            ["LF+RF work new_shoe", "LF+RF+LH nails 6", "RH nails 5"],
        ),
    ]
)


test_all_the_feet_of_a_horse = reads(
    [
        ("Tally. Thrush in all of Tally's feet bar the near hind.", ["LF+RF+RH finding thrush"]),
        ("Tally. Growth rings on each of her feet except the right fore.", ["LF+LH+RH finding growth_rings"]),
        ("Every one of Tally's feet is flat soled.", ["LF+RF+LH+RH finding flat_sole"]),
        ("Tally. No thrush in any of Tally's feet.", ["LF+RF+LH+RH finding thrush absent"]),
        ("Tally. Mud fever, and her feet are grand.", ["- finding scratches"]),
    ]
)

test_all_the_work_but_one_foot = reads(
    [
        (text, ["LF+RF+RH work reset", "LH work new_shoe"])
        for text in (
            "Same shoes back on, bar the left hind, I'd a new one made.",
            "Same shoes back on, except the left hind, new one there.",
            "Reset all round, bar the left hind, I'd a new one made.",
            "Same shoes back on all round, bar the left hind, I'd a new one made.",
            "Same shoes back on, apart from the left hind, I'd to make a new one.",
            "Same shoes back on. Bar the left hind, I'd a new one made.",
            "Reset, bar the left hind, new one on that.",
        )
    ]
    + [
        ("Same set back on, except for the off hind, he'd lost that one.",
         ["LF+RF+LH work reset", "RH shoe_state lost"]),
        ("Fronts were loose. Reset, bar the near fore, I made a new one.",
         ["LF work new_shoe", "LF+RF shoe_state loose", "RF work reset"]),
        ("Reset in front, apart from the left fore, new shoe on that.", ["LF work new_shoe", "RF work reset"]),
        ("Trimmed, except the off hind, she wouldn't give it.", ["LF+RF+LH work trim"]),
        ("Same shoes back on, the left hind.", ["LH work reset"]),
        ("Reset, straight bar the left hind.", ["LH shoe_type straight_bar", "LH work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip

_HAS_IT = ["LF+RF+RH finding thrush absent", "LH finding thrush"]
test_all_but_one_that_is_named_behind = reads(
    [
        *(
            (text, _HAS_IT)
            for text in (
                "No thrush in any foot bar one, the near hind.",
                "No thrush in any foot bar the near hind.",
                "No thrush anywhere except one foot, left hind.",
                "No thrush in any of them apart from one, that's the near hind.",
                "No thrush in any foot but one, the near hind.",
            )
        ),
        ("Thrush in all four bar one, the near hind.", ["LF+RF+RH finding thrush"]),
        ("All reset bar one, the near hind.", ["LF+RF+RH work reset"]),
        # which one is asked
        ("No thrush in any foot bar one.", []),
        ("Thrush in every foot bar one. Six weeks.", ["- next_visit_weeks 6 planned"]),
        # nothing is left out
        ("No thrush in any foot, one corn in the near hind.",
         ["LF+RF+LH+RH finding thrush absent", "LH finding corn"]),
        ("No bar shoe on any foot, one, the near hind, is plain.",
         ["LF+RF+LH+RH shoe_type bar absent", "LH shoe_type plain"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_place_behind_the_foot_left_out = reads(
    [
        (
            "No thrush in any of them bar the off hind, where it's bad in the sulcus.",
            ["LF+RF+LH finding thrush absent", "RH finding thrush @sulcus ~severe"],
        ),
        (
            "No cracks in any foot except the near fore, where he has one at the toe.",
            ["LF finding crack @toe", "RF+LH+RH finding crack absent"],
        ),
        (
            "No thrush in the frog in any of his feet except the off fore, where it's bad.",
            ["LF+LH+RH finding thrush absent @frog", "RF finding thrush @frog ~severe"],
        ),
    ],
    "Tally. {}",
)

test_three_and_the_odd_one = reads(
    [
        ("trimmed three of them, the near hind's the odd one.", ["LF+RF+RH work trim"]),
        ("three feet trimmed, the near hind I shod.", ["LF+RF+RH work trim"]),
        ("trimmed three, off fore got a shoe.", ["LF+LH+RH work trim"]),
        (
            "three of her feet got a trim. Off fore was the odd one out, a puncture in the sole, I soaked that one.",
            ["LF+LH+RH work trim", "RF finding puncture @sole", "RF treatment soak"],
        ),
        ("trimmed three of her feet. The near hind got a new shoe.", ["LF+RF+RH work trim", "LH work new_shoe"]),
        ("thrush in three of them, the near hind's the odd one out.", ["LF+RF+RH finding thrush"]),
        ("trimmed three of them, off fore was flared.", ["LF+RF+LH+RH work trim", "RF finding flare"]),
    ],
    "Tansy, {}",
)
