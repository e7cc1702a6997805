"""Two feet of which each has its own answer or work, and those two taken up again."""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = [
    (
        (
            "Tally. Testers were strong across the frog on the right front, and on the left "
            "front, uh, moderate, also the frog."
        ),
        ["LF tester moderate @frog", "RF tester strong @frog"],
    ),
    (
        "Tally. Testers were strong at the toe on the near fore, and on the off fore, mild.",
        ["LF tester strong @toe", "RF tester mild"],
    ),
    (
        "Tally. Testers strong in the left hind, and in the right hind, er, nothing.",
        ["LH tester strong", "RH tester none"],
    ),
    (
        "Tally. Mild to the testers on the near fore and, um, on the off fore, strong, at the heel.",
        ["LF tester mild", "RF tester strong @heel"],
    ),
    (
        "Tally. Pulse was bounding in the near fore, and in the off fore, uh, normal.",
        ["LF pulse bounding", "RF pulse normal"],
    ),
    ("Tally. Testers strong on the left front, and on the right front, at the toe.", ["LF+RF tester strong @toe"]),
    (
        "Tally. Testers strong on the left front, and the right front, uh, as well. Thrush behind.",
        ["LF+RF tester strong", "LH+RH finding thrush"],
    ),
    (
        "Tally. The off hind was sprung. That's reset, and the near hind's reset along with it.",
        ["LH+RH work reset", "RH shoe_state sprung"],
    ),
    (
        "Tally. The off hind was sprung. I reset that and I reset the near hind.",
        ["LH+RH work reset", "RH shoe_state sprung"],
    ),
    (
        "Tally. Left front was loose. That was reset and the right front was reset.",
        ["LF shoe_state loose", "LF+RF work reset"],
    ),
    (
        (
            "Tally. Seven nails in the left front, six in the right. Two degree wedges and "
            "impression material under those."
        ),
        ["LF nails 7", "LF+RF packing impression_material", "LF+RF pad wedge", "LF+RF wedge 2", "RF nails 6"],
    ),
    (
        "Tally. Size two on the near fore, three on the off fore. Full pads under those.",
        ["LF shoe_size 2", "LF+RF pad full", "RF shoe_size 3"],
    ),
    (
        "Tally. Left front got a bar shoe, right front a plain. Side clips on those and rim pads.",
        ["LF shoe_type bar", "LF+RF clips side", "LF+RF pad rim", "RF shoe_type plain"],
    ),
    (
        "Tally. Crack in the left front. Bar shoe on it. Pads under those are leather.",
        ["LF finding crack", "LF shoe_type bar"],
    ),
]
test_each_of_two = reads(CASES)

test_degrees_of_rotation = reads(
    [
        (
            "The films gave us eleven degrees of rotation on the right front and four on the left front.",
            ["LF+RF finding rotation"],
        ),
        ("Ten degrees of rotation right front, six left front.", ["LF+RF finding rotation"]),
        (
            "Eleven degrees of rotation in the right front, and four nails in the left front.",
            ["LF nails 4", "RF finding rotation"],
        ),
    ],
    "Tally. {}",
)

test_of_each_shoe_of_a_pair = reads(
    [
        (
            "Bar shoe on the left hind. Plain on the right hind. Toe clip on each.",
            ["LH shoe_type bar", "LH+RH clips toe", "RH shoe_type plain"],
        ),
        (
            "Left front, egg bar. Right front, plain. Leather pads on each.",
            ["LF shoe_type egg_bar", "LF+RF pad leather", "RF shoe_type plain"],
        ),
        ("Left front, side clips each side.", ["LF clips side"]),
    ],
    "Tally. {}",
)

test_of_the_feet_just_told = reads(
    [
        (
            "Left hind thrush, right hind thrush and near fore too. Copper sulphate in the lot.",
            ["LF+LH+RH finding thrush", "LF+LH+RH treatment copper_sulfate"],
        ),
        ("Thrush near fore. Thrush off hind. Iodine in the lot.", ["LF+RH finding thrush", "LF+RH treatment iodine"]),
        (
            "Thrush in the near fore, off fore and near hind. Antiseptic in the lot.",
            ["LF+RF+LH finding thrush", "LF+RF+LH treatment antiseptic"],
        ),
        (
            "Thrush near fore, thrush off hind, thrush near hind. Iodine in each.",
            ["LF+LH+RH finding thrush", "LF+LH+RH treatment iodine"],
        ),
        # none was found there, another thing was told of it, or it wraps one foot
        (
            "No thrush in the hinds. Thrush left front, corn right front. Iodine in each.",
            ["LF finding thrush", "LF+RF treatment iodine", "LH+RH finding thrush absent", "RF finding corn"],
        ),
        (
            "Puncture in the near hind, in the frog. Near fore, let the lot out.",
            ["LF treatment drained", "LH finding puncture @frog"],
        ),
        (
            "Thrush near fore. Off hind reset. Iodine in the lot.",
            ["LF finding thrush", "RH treatment iodine", "RH work reset"],
        ),
        (
            "Thrush near fore. Corn off hind, bandaged the lot.",
            ["LF finding thrush", "RH finding corn", "RH treatment bandage"],
        ),
    ],
    "Tally. {}",
)


def test_of_the_feet_of_this_horse(read: Read) -> None:
    visits = read("Tally. Thrush in the near fore. Buck. Corn in the off hind. Iodine in each.", "Tally", "Buck")
    assert [told(visit) for visit in visits] == [["LF finding thrush"], ["RH finding corn", "RH treatment iodine"]]


test_what_trails_behind_one_kind_a_foot = reads(
    [
        ("Reset both fronts, straight bar on the left front, plain on the right front, steel, size one.",
         ["LF shoe_type straight_bar", "LF+RF shoe_material steel", "LF+RF shoe_size 1", "LF+RF work reset",
          "RF shoe_type plain"]),
        ("New in front, rim on the near fore and a bar shoe on the off fore, size two, side clips.",
         ["LF shoe_type rim", "LF+RF clips side", "LF+RF shoe_size 2", "LF+RF work new_shoe", "RF shoe_type bar"]),
        ("New behind, egg bar on the off hind, plain on the near, size one and a half.",
         ["LH shoe_type plain", "LH+RH shoe_size 1.5", "LH+RH work new_shoe", "RH shoe_type egg_bar"]),
        ("Full pad left front, rim pad right front, six nails.", ["LF pad full", "LF+RF nails 6", "RF pad rim"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_what_is_of_the_last_foot_alone = reads(
    [
        ("Straight bar on the left front, size two, plain on the right front, size one.",
         ["LF shoe_size 2", "LF shoe_type straight_bar", "RF shoe_size 1", "RF shoe_type plain"]),
        ("Straight bar on the left front, plain on the right front with steel.",
         ["LF shoe_type straight_bar", "RF shoe_material steel", "RF shoe_type plain"]),
        ("Egg bar on the left front, plain on the right front, size two on the right.",
         ["LF shoe_type egg_bar", "RF shoe_size 2", "RF shoe_type plain"]),
        ("Egg bar on the left front, plain on the right hind, size two.",
         ["LF shoe_type egg_bar", "RH shoe_size 2", "RH shoe_type plain"]),
        ("Corn in the left front, bruise in the right front, poultice.",
         ["LF finding corn", "RF finding bruise", "RF treatment poultice"]),
    ],
    "Tally. {}",
)  # fmt: skip

_FRONTS = ["LF+RF shoe_size 1", "LF+RF work new_shoe"]
_HINDS = ["LH+RH shoe_size 0", "LH+RH work reset"]

test_each_foot_of_two_ends_told_one_after_the_other = reads(
    [
        ("with studs. Six nails in each foot.",
         [*_FRONTS, "LF+RF+LH+RH nails 6", "LH+RH shoe_size 0", "LH+RH traction studs", "LH+RH work reset"]),
        ("Six nails in every foot.",
         [*_FRONTS, "LF+RF+LH+RH nails 6", *_HINDS]),
        ("Side clips on every shoe.",
         [*_FRONTS, "LF+RF+LH+RH clips side", *_HINDS]),
        ("Studs in the lot.",
         [*_FRONTS, "LF+RF+LH+RH traction studs", *_HINDS]),
        ("Studs in each shoe, six nails in each foot.",
         [*_FRONTS, "LF+RF+LH+RH nails 6", "LF+RF+LH+RH traction studs", *_HINDS]),
        ("Studs in each heel.",
         [*_FRONTS, "LH+RH shoe_size 0", "LH+RH traction studs", "LH+RH work reset"]),
    ],
    "Tally. New in front, size one. Reset behind, size nought. {}",
)  # fmt: skip

test_each_foot_of_the_last_end_alone = reads(
    [
        ("New in front, seven nails. Reset behind. Six nails in each foot.",
         ["LF+RF nails 7", "LF+RF work new_shoe", "LH+RH nails 6", "LH+RH work reset"]),
        ("Trimmed behind. New in front. Six nails in each foot.",
         ["LF+RF nails 6", "LF+RF work new_shoe", "LH+RH work trim"]),
        ("Thrush in both hinds, soak it every day.", ["LH+RH finding thrush", "LH+RH treatment soak"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_reset_that_and_the_other = reads(
    [
        (
            "Near hind was loose, so I reset that, and the off hind while I was bent down there.",
            ["LH shoe_state loose", "LH+RH work reset"],
        ),
        ("Near hind was loose, I reset that and the off hind as well.", ["LH shoe_state loose", "LH+RH work reset"]),
        ("Near fore was sprung. I reset that one, and the off fore.", ["LF shoe_state sprung", "LF+RF work reset"]),
        (
            "Near hind was loose, so I reset it, and the off hind, six nails in each.",
            ["LH shoe_state loose", "LH+RH nails 6", "LH+RH work reset"],
        ),
        (
            "Near hind was loose, so I reset that, and the off hind has thrush.",
            ["LH shoe_state loose", "LH work reset", "RH finding thrush"],
        ),
        (
            "Near hind was loose, so I reset that, and the off hind next time.",
            ["LH shoe_state loose", "LH work reset", "RH work reset planned"],
        ),
    ],
    "Tally. {}",
)
