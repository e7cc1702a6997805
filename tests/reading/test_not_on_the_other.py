"""What is not there on the other foot: "right hind wasn't", "nope, none there", "behind either of them".

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_not_on_the_other_foot = reads(
    [
        ("Left hind was sprung, right hind wasn't.", ["LH shoe_state sprung", "RH shoe_state sprung absent"]),
        ("Near fore was loose, off fore wasn't.", ["LF shoe_state loose", "RF shoe_state loose absent"]),
        ("Left front was worn, the right front was not.", ["LF shoe_state worn", "RF shoe_state worn absent"]),
        ("The off hind was loose, the near hind isn't.", ["LH shoe_state loose absent", "RH shoe_state loose"]),
        (
            "White line separation in the right front, at the toe, moderate, and the left front hasn't got any.",
            ["LF finding white_line_separation absent", "RF finding white_line_separation @toe ~moderate"],
        ),
        ("Thrush in the near hind, and the off hind hasn't any.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Flare on the left front, right front hasn't got one.", ["LF finding flare", "RF finding flare absent"]),
        (
            "Seedy toe in the off fore, bad, and the near fore is free of it.",
            ["LF finding white_line_disease absent", "RF finding white_line_disease ~severe"],
        ),
        (
            "White line separation, right front, toe, mild, no, moderate, and the left front hasn't got any.",
            ["LF finding white_line_separation absent", "RF finding white_line_separation @toe ~moderate"],
        ),
        (
            "Left hind, thrush, frog, mild, right hind, nope, none there.",
            ["LH finding thrush @frog ~mild", "RH finding thrush absent"],
        ),
        ("Thrush left hind, right hind, nothing there.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Left hind, thrush. Right hind, nope.", ["LH finding thrush", "RH finding thrush absent"]),
        (
            "Left hind, thrush, mild, right hind none. Copper sulfate in the one that's got it.",
            ["LH finding thrush ~mild", "LH treatment copper_sulfate", "RH finding thrush absent"],
        ),
        (
            "Toe crack in each fore, mild in the near, severe in the off, and no keratoma behind either of them.",
            ["LF finding crack @toe ~mild", "LF+RF finding keratoma absent", "RF finding crack @toe ~severe"],
        ),
        ("Corn in both fronts, no pus behind either of them.", ["LF+RF finding abscess absent", "LF+RF finding corn"]),
        ("Cracks in both fores, no abscess under either one.", ["LF+RF finding abscess absent", "LF+RF finding crack"]),
        ("Near fore was loose, off fore wasn't lame.", ["LF shoe_state loose", "RF gait lame absent"]),
        ("Trimmed in front, thrush behind.", ["LF+RF work trim", "LH+RH finding thrush"]),
    ],
    "Buck. {}",
)

test_which_of_the_findings_the_other_feet_have_not = reads(
    [
        (
            "Scratches on both hinds, swelling in the left hind. Nothing like it up front, no scratches on the fronts.",
            ["LF+RF finding scratches absent", "LH finding swelling", "LH+RH finding scratches"],
        ),
        (
            "Thrush in both hinds, a crack in the left hind. None in front, no thrush in either fore.",
            ["LF+RF finding thrush absent", "LH finding crack", "LH+RH finding thrush"],
        ),
        (
            "Thrush in the left hind. None in the right hind, no heat in it either.",
            ["LH finding thrush", "RH finding heat absent", "RH finding thrush absent"],
        ),
        (
            "Thrush in the left hind. None in the fronts, no corns in the fronts.",
            ["LF+RF finding corn absent", "LF+RF finding thrush absent", "LH finding thrush"],
        ),
    ],
    "Buck. {}",
)

test_he_has_none_on_the_other_foot = reads(
    [
        (
            "Sidebone in the off fore, and she doesn't have it in the near fore.",
            ["LF finding sidebone absent", "RF finding sidebone"],
        ),
        (
            "The navicular is in the off fore, that's on his papers, and he hasn't got it in the near fore.",
            ["LF finding navicular absent", "RF finding navicular"],
        ),
        (
            "Canker in the near hind, and he's not got any in the off hind.",
            ["LH finding canker", "RH finding canker absent"],
        ),
        ("New shoe on the off fore, he hadn't it on the near fore.", ["RF work new_shoe"]),
    ],
    "Tansy. {}",
)

test_yes_on_the_others = reads(
    [
        (
            "Thrush, none in the fores. In the hinds, yes, in both, mild, at the frog, so iodine on the hinds.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush @frog ~mild", "LH+RH treatment iodine"],
        ),
        (
            "No thrush in the fores, in the hinds yes, mild.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush ~mild"],
        ),
        ("Canker? None in front. Off hind, aye, severe.", ["LF+RF finding canker absent", "RH finding canker ~severe"]),
        ("No heat in the near fore. Off fore, yes, a touch.", ["LF finding heat absent", "RF finding heat ~mild"]),
        (
            "Thrush in the hinds. In front, yes, new rims.",
            ["LF+RF shoe_type rim", "LF+RF work new_shoe", "LH+RH finding thrush"],
        ),
        (
            "No thrush in the hinds. In front, yes, I put new rims.",
            ["LF+RF shoe_type rim", "LF+RF work new_shoe", "LH+RH finding thrush absent"],
        ),
    ],
    "Tansy. {}",
)

test_neither_has_it = reads(
    [
        ("Thrush in both hinds, neither front does.", ["LF+RF finding thrush absent", "LH+RH finding thrush"]),
        (
            "Down the left side both feet have a flare, and down the right side neither one does.",
            ["LF+LH finding flare", "RF+RH finding flare absent"],
        ),
        ("Corns in both fores, neither hind has any.", ["LF+RF finding corn", "LH+RH finding corn absent"]),
        ("The near fore doesn't have heat and neither does the other.", ["LF+RF finding heat absent"]),
        ("No flare on the off hind, nor is there, nor has the other one.", ["LH+RH finding flare absent"]),
        ("The near fore has a crack, so does the other.", ["LF+RF finding crack"]),
        # of a shoe put on nothing is denied, and what a word behind it tells is told of its own feet
        ("New rims on the fronts, neither hind has any.", ["LF+RF shoe_type rim", "LF+RF work new_shoe"]),
        ("Thrush in both hinds, neither front has heat.", ["LF+RF finding heat absent", "LH+RH finding thrush"]),
    ],
    "Buck. {}",
)


def test_the_other_may_be_a_horse(read: Read) -> None:
    first, second = read(
        "Buck, thrush in the off hind. Tally has thrush in the near fore, and so does the other.", "Buck", "Tally"
    )
    assert told(first) == ["RH finding thrush"]
    assert told(second) == ["LF finding thrush"]


test_nor_has_the_other_foot = reads(
    [
        (
            "Flat soles in front, but the hinds aren't flat.",
            ["LF+RF finding flat_sole", "LH+RH finding flat_sole absent"],
        ),
        (
            "Dropped sole in the left front, and the right front's not dropped.",
            ["LF finding dropped_sole", "RF finding dropped_sole absent"],
        ),
        (
            "Thin sole on the near fore, the off fore isn't thin.",
            ["LF finding thin_sole", "RF finding thin_sole absent"],
        ),
        ("Flat soles in front, the hinds aren't bad.", ["LF+RF finding flat_sole"]),
        ("Rim pad on the right fore, nothing like that on the left fore.", ["LF pad rim absent", "RF pad rim"]),
        (
            "Sheared heels, left hind. Leather pad on the near fore, nothing of the sort on the off fore.",
            ["LF pad leather", "LH finding sheared_heels", "RF pad leather absent"],
        ),
        ("Bar shoes on the hinds but not on the fronts.", ["LF+RF shoe_type bar absent", "LH+RH shoe_type bar"]),
        (
            "Thrush in the near hind, nothing like that in the off hind.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "The seedy toe in the off fore is gone. I looked for it in the near fore and came away with nothing.",
            ["LF finding white_line_disease absent", "RF finding white_line_disease resolved"],
        ),
        (
            "Corn in the left front. I checked for one in the right front and there was nothing.",
            ["LF finding corn", "RF finding corn absent"],
        ),
        ("Corn in the left front. I looked for one in the right front and found it.", ["LF finding corn"]),
        (
            "Ringbone on the off fore. The testers make no odds to him there, nor on the near fore.",
            ["LF+RF tester none", "RF finding ringbone"],
        ),
        ("Left front. No reaction to the testers on it, nor on the right front.", ["LF+RF tester none"]),
        ("Testers mild on the near fore and not a stir out of the off fore.", ["LF tester mild", "RF tester none"]),
    ],
    "Tally. {}",
)

test_told_that_the_other_has_none = reads(
    [
        (
            "Vet told the owner it's navicular in the left front, and said the right front doesn't have it.",
            ["LF finding navicular", "RF finding navicular absent"],
        ),
        (
            "Vet says navicular in the left front, he said the right front hasn't it.",
            ["LF finding navicular", "RF finding navicular absent"],
        ),
        (
            "Vet found a keratoma in the left front, and said there's none in the right.",
            ["LF finding keratoma", "RF finding keratoma absent"],
        ),
        (
            "Thrush in the left hind, and I'd say the right hind doesn't have it.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Vet said sidebone in the near fore, and says the off fore hasn't any.",
            ["LF finding sidebone", "RF finding sidebone absent"],
        ),
        (
            "Thrush, yeah nah, none in the near hind, but the off hind's got it, in the cleft, severe. Iodine in it.",
            ["LH finding thrush absent", "RH finding thrush @sulcus ~severe", "RH treatment iodine"],
        ),
        (
            "Thrush, none in the near hind, but the off hind's got it.",
            ["LH finding thrush absent", "RH finding thrush"],
        ),
        (
            "Thrush, none in the near hind but the off hind has it in the frog.",
            ["LH finding thrush absent", "RH finding thrush @frog"],
        ),
        (
            "Corn in the near fore, none in the off fore, but the off hind has it.",
            ["LF+RH finding corn", "RF finding corn absent"],
        ),
        # there, or as it was
        (
            "Vet told the owner it's navicular in the left front, and said the right front has it too.",
            ["LF+RF finding navicular"],
        ),
        (
            "Corn, none in the near fore, but the off fore has one, inside heel, mild.",
            ["LF finding corn absent", "RF finding corn @medial_heel ~mild"],
        ),
    ],
    "Tally. {}",
)


_NEW, _RESET = "LF+RF work new_shoe", "LF+RF work reset"
test_the_other_of_a_pair_in_hand = reads(
    [
        (
            "She threw her right front. New shoes on both fronts because the other one was worn. Size two.",
            ["LF shoe_state worn", "LF+RF shoe_size 2", _NEW, "RF shoe_state lost"],
        ),
        (
            "Lost the near hind. New on both hinds as the other was worn through.",
            ["LH shoe_state lost", "LH+RH work new_shoe", "RH shoe_state worn"],
        ),
        (
            "Off fore was loose. Reset both fronts, and the other one was sprung.",
            ["LF shoe_state sprung", _RESET, "RF shoe_state loose"],
        ),
        (
            "Corn in the near fore. Reset both fores, the other one has a bruise.",
            ["LF finding corn", _RESET, "RF finding bruise"],
        ),
        (
            "Corn in the near fore. Reset both fores. Thrush in both hinds.",
            ["LF finding corn", _RESET, "LH+RH finding thrush"],
        ),
        (
            "Lost the near fore and the off fore was loose. New on both fronts because they were worn.",
            ["LF shoe_state lost", "LF+RF shoe_state worn", _NEW, "RF shoe_state loose"],
        ),
    ]
)
