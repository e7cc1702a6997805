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

test_not_a_trace_of_it = reads(
    [
        (
            "Mud fever on the off hind, bad, and not a trace of it on the other three.",
            ["LF+RF+LH finding scratches absent", "RH finding scratches ~severe"],
        ),
        (
            "Thrush in the left hind, and nothing of it in the fronts.",
            ["LF+RF finding thrush absent", "LH finding thrush"],
        ),
        (
            "Canker in the near hind, not a mark of it in the off hind.",
            ["LH finding canker", "RH finding canker absent"],
        ),
        (
            "Seedy toe in the off fore, not a speck of it in the near fore.",
            ["LF finding white_line_disease absent", "RF finding white_line_disease"],
        ),
        # on the foot that had it, it is gone
        (
            "She had thrush in the left hind in the spring, and not a trace of it in the left hind today.",
            ["LH finding thrush resolved"],
        ),
        ("He had thrush in the near hind last time. No sign of it in the near hind.", ["LH finding thrush resolved"]),
        (
            "She had thrush in the hinds in the spring, and no trace of it in the left hind today.",
            ["LH finding thrush resolved", "RH finding thrush history"],
        ),
    ]
)

test_feet_left_alone_and_sizes_of_pairs = reads(
    [
        ("Trimmed fronts, taped boots on 'em, never touched the hinds.", ["LF+RF shoe_type boot", "LF+RF work trim"]),
        ("Reset the fronts, put pads on them, never touched the hinds.", ["LF+RF work reset"]),
        ("Trimmed the hinds, put boots on them, left the fronts alone.", ["LH+RH shoe_type boot", "LH+RH work trim"]),
        ("New shoes in front, borium on them, hinds not touched.", ["LF+RF traction borium", "LF+RF work new_shoe"]),
        ("Trimmed the fronts, boots on both, hinds untouched.", ["LF+RF shoe_type boot", "LF+RF work trim"]),
        ("New shoes in front, six nails each, the hinds I left alone.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
        ("Pads on the fronts, didn't touch the hinds.", []),
        ("Thrush, left hind. Right hind none.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Thrush, left hind, and the right hind hasn't got any.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Cracks, left front none.", ["LF finding crack absent"]),
        (
            "Reset all round, size two fronts, one and a half hinds.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1.5"],
        ),
        (
            "Reset all round, size two fronts, one hinds.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
        ),
        (
            "New shoes all round, size two hinds, three fronts.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 2"],
        ),
        ("Trimmed two fronts.", ["LF+RF work trim"]),
    ],
    "Buck. {}",
)

test_denied_behind_feet_that_were_only_named = reads(
    [
        (
            "Near fore, heat. The other three are fine, no heat in those.",
            ["LF finding heat", "RF+LH+RH finding heat absent"],
        ),
        (
            "Heat in the near fore. The others are cold, no heat there.",
            ["LF finding heat", "RF+LH+RH finding heat absent"],
        ),
        ("Near fore, heat. The other three are fine. No heat.", ["LF finding heat", "RF+LH+RH finding heat absent"]),
        (
            "Near hind, thrush. The rest look good, no thrush in any of those.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush"],
        ),
        (
            "Thrush in the near hind. The other one's fine, no thrush in that.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Corns in both fronts, hinds are fine, no corns in any of them.",
            ["LF+RF finding corn", "LH+RH finding corn absent"],
        ),
        ("Near fore, heat. The other three are fine. No thrush.", ["LF finding heat", "LF finding thrush absent"]),
        (
            "Near fore, heat. The other three are fine. No heat in the hinds.",
            ["LF finding heat", "LH+RH finding heat absent"],
        ),
        ("Corns in both fronts. No heat in those.", ["LF+RF finding corn", "LF+RF finding heat absent"]),
        (
            "Corn in the near fore. The other three are fine. Poultice on it.",
            ["LF finding corn", "LF treatment poultice"],
        ),
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

test_some_more_and_no_shoes = reads(
    [
        (
            "Wall loss at the inside quarter of the near fore, and some more in the off fore at the outside quarter.",
            ["LF finding wall_loss @medial_quarter", "RF finding wall_loss @lateral_quarter"],
        ),
        ("Thrush in the near hind, some more iodine on the off hind.", ["LH finding thrush", "RH treatment iodine"]),
        (
            "Testers strong at the toe, near fore, and none in the off fore. Hinds have nothing, I just trimmed them.",
            ["LF tester strong @toe", "LH+RH work trim", "RF tester none"],
        ),
        ("Thrush in the off fore. Hinds have nothing on, trimmed.", ["LH+RH work trim", "RF finding thrush"]),
        ("Testers mild on the near fore. Off fore has nothing.", ["LF tester mild", "RF tester none"]),
    ],
    "Tansy. {}",
)


test_nothing_to_nail_to_denies_nothing = reads(
    [
        (
            "She'd trodden her near hind shoe off, there was nothing left to nail to, so a new glue-on on that foot.",
            ["LH shoe_state lost", "LH shoe_type glue_on", "LH work new_shoe"],
        ),
        (
            "Near hind, wall loss at the toe, nowhere to nail, so I put a boot on it.",
            ["LH finding wall_loss @toe", "LH shoe_type boot"],
        ),
        (
            "Seedy toe in the near fore, so I did a resection. Didn't find any in the off fore.",
            ["LF finding white_line_disease", "LF treatment resection", "RF finding white_line_disease absent"],
        ),
        ("Thrush in the near fore, I couldn't see any in the off.", ["LF finding thrush", "RF finding thrush absent"]),
        (
            "A corn in the near fore. I couldn't find one in the off fore.",
            ["LF finding corn", "RF finding corn absent"],
        ),
        (
            "Thrush in the left hind. Didn't find any heat in the right hind.",
            ["LH finding thrush", "RH finding heat absent"],
        ),
        ("Near hind, thrush, nothing in the off hind.", ["LH finding thrush", "RH finding thrush absent"]),
    ],
    "Tansy. {}",
)


test_answered_no_and_none = reads(
    [
        (
            "Right front wall is weak, hardener on it, heat, no, none on either front.",
            ["LF+RF finding heat absent", "RF finding weak_wall", "RF treatment hardener"],
        ),
        (
            "Bruise in the near fore, mild, corns, no, none in front.",
            ["LF finding bruise ~mild", "LF+RF finding corn absent"],
        ),
        (
            "Left hind, mild thrush, corn, no, bruise at the toe.",
            ["LH finding bruise @toe", "LH finding thrush ~mild"],
        ),
        (
            "It could be a keratoma in the near fore, he had an abscess in that foot over the summer.",
            ["LF finding abscess history", "LF finding keratoma suspected"],
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

test_there_again_behind_the_foot_denied = reads(
    [
        (
            "Thrush in the near fore, not the off fore, the near hind.",
            ["LF+LH finding thrush", "RF finding thrush absent"],
        ),
        (
            "Bruise in the left front, not the right front, the left hind.",
            ["LF+LH finding bruise", "RF finding bruise absent"],
        ),
        ("Heat in the near hind, not the off hind, the near fore.", ["LF+LH finding heat", "RH finding heat absent"]),
        (
            "A corn in the off fore, not the near fore, the off hind too.",
            ["LF finding corn absent", "RF+RH finding corn"],
        ),
        (
            "Thrush in the near fore, not in the off fore, in the near hind as well.",
            ["LF+LH finding thrush", "RF finding thrush absent"],
        ),
        (
            "Seedy toe in the left hind, not in the right hind, in the left front also.",
            ["LF+LH finding white_line_disease", "RH finding white_line_disease absent"],
        ),
        (
            "Mud fever on the off hind, not the near hind, the off fore.",
            ["LH finding scratches absent", "RF+RH finding scratches"],
        ),
        (
            "Scratches on the near hind, not on the off hind, but on the near fore too.",
            ["LF+LH finding scratches", "RH finding scratches absent"],
        ),
        (
            "A crack in the right front, not the left front, the right hind.",
            ["LF finding crack absent", "RF+RH finding crack"],
        ),
        (
            "Swelling in the left hind, not the right hind, the left front.",
            ["LF+LH finding swelling", "RH finding swelling absent"],
        ),
        # here it says nothing
        (
            "Thrush in the near fore, not the off fore or the near hind.",
            ["LF finding thrush", "RF+LH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not the off fore, nor the near hind.",
            ["LF finding thrush", "RF+LH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not in the off fore, the near hind or the off hind.",
            ["LF finding thrush", "RF+LH+RH finding thrush absent"],
        ),
        (
            "Thrush in the near fore, not the hinds, not the off fore.",
            ["LF finding thrush", "RF+LH+RH finding thrush absent"],
        ),
        ("No thrush in the off fore, the near hind.", ["RF+LH finding thrush absent"]),
    ]
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
