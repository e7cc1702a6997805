"""A statement is the same whether a full stop, a comma or a semicolon stands before the next one."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

# Statements in a row, and all that they say.
STATEMENTS = [
    (
        ["New egg bar on the off fore, five nails", "near fore, new plain shoe, six nails"],
        ["LF nails 6", "LF shoe_type plain", "LF+RF work new_shoe", "RF nails 5", "RF shoe_type egg_bar"],
    ),
    (
        ["Reset on the left hind, leather pad", "right hind, trimmed"],
        ["LH pad leather", "LH work reset", "RH work trim"],
    ),
    (["Thrush in the left hind", "trotted up sound"], ["- gait sound", "LH finding thrush"]),
    (
        ["Corn in the near fore", "jogged out sound", "no heat in the off fore"],
        ["- gait sound", "LF finding corn", "RF finding heat absent"],
    ),
    (
        ["Bruise on the right front, mild", "two out of five lame on the right front"],
        ["RF finding bruise ~mild", "RF lameness 2"],
    ),
    (
        ["Crack at the toe of the near hind, slight", "trotted up sound"],
        ["- gait sound", "LH finding crack @toe ~mild"],
    ),
    (
        ["Seedy toe in the off fore, out at the lateral quarter", "no bruising in any foot"],
        ["LF+RF+LH+RH finding bruise absent", "RF finding white_line_disease @lateral_quarter"],
    ),
    (["Mesh pads on the fronts", "testers mild on the left front"], ["LF tester mild", "LF+RF pad mesh"]),
    (
        ["Flare on the near fore, lateral quarter", "growth rings, none to speak of, none on any of the feet"],
        ["LF finding flare @lateral_quarter", "LF+RF+LH+RH finding growth_rings absent"],
    ),
    (
        ["Corn in the off fore, medial heel", "thrush, none on any of the feet"],
        ["LF+RF+LH+RH finding thrush absent", "RF finding corn @medial_heel"],
    ),
    (
        ["Reset the fronts, size two", "pulse raised in the left hind"],
        ["LF+RF shoe_size 2", "LF+RF work reset", "LH pulse raised"],
    ),
    (
        ["If that crack runs I'll put a bar shoe on the left front", "hinds trimmed"],
        ["LF shoe_type bar planned", "LH+RH work trim"],
    ),
    (
        ["If she goes sore they'll ring the vet", "trimmed all four"],
        ["- vet referral planned", "LF+RF+LH+RH work trim"],
    ),
    (
        ["I'll keep an eye on that crack", "new rim shoes on the hinds, size one"],
        ["LH+RH shoe_size 1", "LH+RH shoe_type rim", "LH+RH work new_shoe"],
    ),
    (
        ["Once it dries out he gets a full pad on the left front", "right hind was loose"],
        ["LF pad full planned", "RH shoe_state loose"],
    ),
    (
        ["Last time he had a corn in the left front", "flare on the right hind, medial"],
        ["LF finding corn history", "RH finding flare @medial"],
    ),
    (
        ["She wore studs behind all winter", "left front has a corn"],
        ["LF finding corn", "LH+RH traction studs history"],
    ),
    (
        ["Back in March the left front toe angle was fifty", "sole depth ten millimeters on the right front"],
        ["LF toe_angle 50 history", "RF sole_depth 10"],
    ),
    (
        ["He was lame on the off hind last month", "he's sound today"],
        ["- gait sound", "RH gait lame history"],
    ),
    (
        ["Contracted heels in front", "underrun heels behind"],
        ["LF+RF finding contracted_heels", "LH+RH finding underrun_heels"],
    ),
    (
        ["Near hind has thrush in the frog, mild", "off hind has a corn"],
        ["LH finding thrush @frog ~mild", "RH finding corn"],
    ),
    (
        ["Left front, toe angle fifty two, heel angle forty", "right front, toe angle fifty one"],
        ["LF heel_angle 40", "LF toe_angle 52", "RF toe_angle 51"],
    ),
    (["Toe angle fifty on both fronts", "body condition six"], ["- body_condition 6", "LF+RF toe_angle 50"]),
    (
        ["New shoes all round, steel, six nails each", "no corns in either front"],
        [
            "LF+RF finding corn absent",
            "LF+RF+LH+RH nails 6",
            "LF+RF+LH+RH shoe_material steel",
            "LF+RF+LH+RH work new_shoe",
        ],
    ),
    (
        ["Swelling in the right hind", "next trip it's bar shoes in front"],
        ["LF+RF shoe_type bar planned", "RH finding swelling"],
    ),
    (
        ["Trimmed all four", "last year she had laminitis"],
        ["- finding laminitis history", "LF+RF+LH+RH work trim"],
    ),
    (
        ["Iodine on the left hind", "hardener on both fronts"],
        ["LF+RF treatment hardener", "LH treatment iodine"],
    ),
    (
        ["Strong on the testers, off fore, at the toe", "straight bars in front, new, size three"],
        ["LF+RF shoe_size 3", "LF+RF shoe_type straight_bar", "LF+RF work new_shoe", "RF tester strong @toe"],
    ),
    (["Sheared heels on the left front", "the hinds were trimmed"], ["LF finding sheared_heels", "LH+RH work trim"]),
    (
        ["Growth rings on both fores", "axis is broken back on the near fore"],
        ["LF finding broken_back_axis", "LF+RF finding growth_rings"],
    ),
    (["Ringbone in the off hind", "he stood quiet"], ["- manner quiet", "RH finding ringbone"]),
    (
        ["Close nail in the left front", "I pulled the shoe on the right front"],
        ["LF finding close_nail", "RF work removed"],
    ),
    (
        ["Thrush in both hinds, copper sulfate on it", "fidgety the whole time", "six weeks"],
        ["- manner fidgety", "- next_visit_weeks 6 planned", "LH+RH finding thrush", "LH+RH treatment copper_sulfate"],
    ),
    (
        ["He overreaches", "new plates in front, aluminum, size four"],
        [
            "- gait overreach",
            "LF+RF shoe_material aluminum",
            "LF+RF shoe_size 4",
            "LF+RF shoe_type racing_plate",
            "LF+RF work new_shoe",
        ],
    ),
    (
        ["Reset all round", "if he's no better by Friday they're to call the vet"],
        ["- vet referral planned", "LF+RF+LH+RH work reset"],
    ),
    (
        ["No thrush in the left hind", "canker in the right hind, severe"],
        ["LH finding thrush absent", "RH finding canker ~severe"],
    ),
    (
        ["Might be a keratoma in the left front", "wall loss on the right hind at the quarter"],
        ["LF finding keratoma suspected", "RH finding wall_loss @quarter"],
    ),
    (
        ["Fores reset, seven nails", "hinds trimmed", "vet to look at the off hind"],
        ["- vet referral planned", "LF+RF nails 7", "LF+RF work reset", "LH+RH work trim"],
    ),
    (
        ["Pulled the left front shoe and left it off, poultice on", "right front reset, six nails"],
        ["LF treatment poultice", "LF work removed", "RF nails 6", "RF work reset"],
    ),
]


@pytest.mark.parametrize("mark", [".", ",", ";"])
@pytest.mark.parametrize(("statements", "facts"), STATEMENTS, ids=[" | ".join(s) for s, _ in STATEMENTS])
def test_whatever_mark_stands_at_the_seam(read: Read, statements: list[str], facts: list[str], mark: str) -> None:
    (visit,) = read(_joined(statements, mark))
    assert told(visit) == facts


def _joined(statements: list[str], mark: str) -> str:
    """The statements with the mark between them; behind a full stop the next one opens with a capital."""
    first, *rest = statements
    following = [one[0].upper() + one[1:] if mark == "." else one for one in rest]
    return f"{mark} ".join([first, *following]) + "."


# Commas that join one statement: none of these is cut.
JOINED = [
    ("New shoe, five nails, left front.", ["LF nails 5", "LF work new_shoe"]),
    ("Lame, left front.", ["LF gait lame"]),
    ("Pulse up, both fores.", ["LF+RF pulse raised"]),
    (
        "Bruise in the sole of the left front, moderate, and the testers were, um, they were mild at the toe.",
        ["LF finding bruise @sole ~moderate", "LF tester mild @toe"],
    ),
    (
        "Left hind, thrush in the frog, and the pulse is, er, it's raised.",
        ["LH finding thrush @frog", "LH pulse raised"],
    ),
    (
        "New shoes in front, steel, size two, six nails each.",
        ["LF+RF nails 6", "LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
    ),
    (
        "Next time bar shoes in front, steel, size two, quarter clips.",
        [
            "LF+RF clips quarter planned",
            "LF+RF shoe_material steel planned",
            "LF+RF shoe_size 2 planned",
            "LF+RF shoe_type bar planned",
        ],
    ),
    (
        "No thrush, no heat, no swelling in the hinds.",
        ["LH+RH finding heat absent", "LH+RH finding swelling absent", "LH+RH finding thrush absent"],
    ),
    ("Testers mild on the left front, nothing on the right.", ["LF tester mild", "RF tester none"]),
    ("If he's sore, new shoes in front.", ["LF+RF work new_shoe planned"]),
    (
        "Once he's right, new shoe on the left front, size one, full pad.",
        ["LF pad full planned", "LF shoe_size 1 planned", "LF work new_shoe planned"],
    ),
    ("Thrush left hind, right hind, left front.", ["LF+LH+RH finding thrush"]),
    ("Bruise, no, corn in the left front.", ["LF finding corn"]),
    ("Pulled the left front, no, the right front.", ["RF work removed"]),
    ("Left front, corn.", ["LF finding corn"]),
    ("Last time, a corn in the left front.", ["LF finding corn history"]),
    ("Corn and a bruise, both fronts.", ["LF+RF finding bruise", "LF+RF finding corn"]),
    ("Long toe, underrun heels, both fronts.", ["LF+RF finding long_toe", "LF+RF finding underrun_heels"]),
    ("Sizes, fronts two, hinds one.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
    (
        "Testers, left front, mild at the toe, right front, no reaction, trimmed all round.",
        ["LF tester mild @toe", "LF+RF+LH+RH work trim", "RF tester none"],
    ),
    ("Left front, corn, right front, no heat.", ["LF finding corn", "RF finding heat absent"]),
    ("Obel two, was a three.", ["- obel 2", "- obel 3 history"]),
    (
        "She's a four on condition, she was a six in spring.",
        ["- body_condition 4", "- body_condition 6 history"],
    ),
    ("Left hind, thrush, mild, iodine on it.", ["LH finding thrush ~mild", "LH treatment iodine"]),
    ("Crack at the toe, right front, it's mild.", ["RF finding crack @toe ~mild"]),
    ("Left front had thrush in May, no thrush now.", ["LF finding thrush resolved"]),
    ("Trimmed, all four, left barefoot.", ["LF+RF+LH+RH work trim"]),
    ("Trimmed left hind, right hind, testers mild right front.", ["LH+RH work trim", "RF tester mild"]),
    ("Shoes off, trimmed, same shoes back on all round.", ["LF+RF+LH+RH work reset"]),
    ("Thrush left hind, corn right hind. Flip those.", ["LH finding corn", "RH finding thrush"]),
    ("Thrush left hind. Corn right hind. Flip those.", ["LH finding corn", "RH finding thrush"]),
]

test_joined = reads(JOINED)

test_that_foot = reads(
    [
        (
            "Swelling gone, heat gone, pulse normal: that's Tally's near hind, thank you.",
            ["LH finding heat resolved", "LH finding swelling resolved", "LH pulse normal"],
        ),
        (
            "Tally. Heat, swelling, pulse raised, all in the off fore.",
            ["RF finding heat", "RF finding swelling", "RF pulse raised"],
        ),
        (
            "Tally. A corn, a bruise, testers strong, that's the near fore.",
            ["LF finding bruise", "LF finding corn", "LF tester strong"],
        ),
        (
            "Tally. Thrush in the left hind, pulse normal, that's the right fore.",
            ["LH finding thrush", "RF pulse normal"],
        ),
    ]
)
