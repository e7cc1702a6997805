"""How a shoe was found and taken off, a nail a shade close, mesh said alone, and how he behaved."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Off hind's down to a wafer, so a new pair behind, threes.",
        ["LH+RH shoe_size 3", "LH+RH work new_shoe", "RH shoe_state worn"],
    ),
    ("Tally. Near hind was worn to a thread.", ["LH shoe_state worn"]),
    ("Tally. Shoe on the near fore was hanging by two nails.", ["LF shoe_state loose"]),
    ("Tally. Left front was hanging on by the last nail.", ["LF shoe_state loose"]),
    ("Tally. Whipped off the hinds.", ["LH+RH work removed"]),
    ("Tally. Took off the front shoes.", ["LF+RF work removed"]),
    ("Tally. Pulled off the near fore and poulticed it.", ["LF treatment poultice", "LF work removed"]),
    ("Tally. Whipped the hinds off.", ["LH+RH work removed"]),
    ("Tally. Fronts I took off and left off.", ["LF+RF work removed"]),
    ("Tally. The hinds we pulled and left bare. Fronts reset.", ["LF+RF work reset", "LH+RH work removed"]),
    ("Tally. Fronts reset. The hinds I've taken off.", ["LF+RF work reset", "LH+RH work removed"]),
    ("Tally. The near fore I took off and reset.", ["LF work reset"]),
    ("Tally. Left front I pulled the old nails.", []),
    ("Tally. The hinds I pulled last time.", []),
    (
        "Tally. Right hind had been sprung, and the left hind was just worn.",
        ["LH shoe_state worn", "RH shoe_state sprung"],
    ),
    ("Tally. The near fore had been cast, and the off fore was loose.", ["LF shoe_state lost", "RF shoe_state loose"]),
    ("Tally is the stallion, and he had been sedated before I arrived.", ["- manner sedated"]),
    ("Tally. She's in foal, and she'd been sedated before I got there.", ["- manner sedated"]),
    ("Tally. He'd been lame on the left front.", ["LF gait lame history"]),
    ("Tally. He's in the barn, and last time he had been sedated.", ["- manner sedated history"]),
    ("Tally. He's all four new, steel.", ["LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe"]),
    ("Tally's new behind and reset in front.", ["LF+RF work reset", "LH+RH work new_shoe"]),
    ("Tally. Behind I went with new, size two.", ["LH+RH shoe_size 2", "LH+RH work new_shoe"]),
    ("Tally. She's new.", []),
    ("Tally. He's new here, trimmed all round.", ["LF+RF+LH+RH work trim"]),
    ("Tally. The fores had a new crack.", ["LF+RF finding crack"]),
    ("Tally. One nail a shade close in the near fore, I pulled it.", ["LF finding close_nail"]),
    ("Tally. Nail a touch close on the off hind, outside.", ["RH finding close_nail @lateral"]),
    ("Buck. Packed both fronts with silicone under mesh.", ["LF+RF packing silicone", "LF+RF pad mesh"]),
    ("Buck. Mesh and putty under the fores.", ["LF+RF packing putty", "LF+RF pad mesh"]),
    ("Buck. Half mesh on the left front.", ["LF pad half_mesh"]),
    ("Buck. He couldn't have been better behaved.", ["- manner quiet"]),
    ("Buck. She was good for me.", ["- manner quiet"]),
    ("Buck. You couldn't fault him.", ["- manner quiet"]),
    ("Buck. The soles are paper thin in front.", ["LF+RF finding thin_sole"]),
]

test_shoes_as_found = reads(CASES)

test_gone_altogether = reads(
    [
        (
            "Near hind worn, off hind gone altogether. New pair behind, steel.",
            ["LH shoe_state worn", "LH+RH shoe_material steel", "LH+RH work new_shoe", "RH shoe_state lost"],
        ),
        ("Left front loose, right front gone completely, hinds tight.", ["LF shoe_state loose", "RF shoe_state lost"]),
        ("Left hind bruised, right hind gone altogether.", ["LH finding bruise", "RH shoe_state lost"]),
        ("Thrush in the left hind, gone altogether.", ["LH finding thrush resolved"]),
        ("Thrush in both hinds, right hind gone altogether.", ["LH finding thrush", "RH finding thrush resolved"]),
    ],
    "Tally. {}",
)

test_worn_is_not_always_worn_out = reads(
    [
        (
            "She's worn egg bars in front till today, and now plain steel.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        ("He has worn aluminum up front until today.", ["LF+RF shoe_material aluminum history"]),
        ("He's always worn steel behind.", ["LH+RH shoe_material steel"]),
        (
            "Both fronts are worn, steel, size two.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF shoe_state worn"],
        ),
        ("The near fore's worn.", ["LF shoe_state worn"]),
    ],
    "Tally. {}",
)

test_put_back_at_once = reads(
    [
        ("Threw the near hind. Tacked it right back.", ["LH shoe_state lost", "LH work put_back"]),
        ("Lost the off fore, I stuck it straight back on.", ["RF shoe_state lost", "RF work put_back"]),
        ("Hinds are the same pair put back on.", ["LH+RH work reset"]),
        (
            "The off fore was loose. Took it off, trued it up and put the same one back.",
            ["RF shoe_state loose", "RF work reset"],
        ),
        ("Whipped the near hind off, levelled it and set the same shoe back on.", ["LH work reset"]),
        ("Lost the near hind. Put the same one back.", ["LH shoe_state lost", "LH work put_back"]),
        ("Lost the off fore. There's a new one on him.", ["RF shoe_state lost", "RF work new_shoe"]),
        (
            "She threw the near fore, so a new one on her, size one.",
            ["LF shoe_size 1", "LF shoe_state lost", "LF work new_shoe"],
        ),
        ("That's a new one on me. Off fore lost.", ["RF shoe_state lost"]),
    ],
    "Tally. {}",
)

test_held_on_with_so_many = reads(
    [
        ("Near fore, pulled one nail and left the shoe on with five.", ["LF nails 5"]),
        (
            "Lost the off hind, nailed it back on with six and he went off happy.",
            ["RH nails 6", "RH shoe_state lost", "RH work put_back"],
        ),
        (
            "Reset the near fore and left it on with five weeks to go.",
            ["- next_visit_weeks 5 planned", "LF work reset"],
        ),
        ("Got on with three others first. Trimmed the hinds.", ["LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_wall_lost_or_not = reads(
    [
        (
            "Near fore lost wall at the toe. The off fore hasn't lost any.",
            ["LF finding wall_loss @toe", "RF finding wall_loss absent"],
        ),
        ("Lost the near hind but it didn't lose any wall.", ["LH finding wall_loss absent", "LH shoe_state lost"]),
        (
            "Off fore lost, and he didn't lose so much as a chip of wall.",
            ["RF finding wall_loss absent", "RF shoe_state lost"],
        ),
        (
            "He lost the near fore shoe. The off fore hasn't lost any.",
            ["LF shoe_state lost", "RF shoe_state lost absent"],
        ),
    ],
    "Tally. {}",
)

test_worn_by_her = reads(
    [
        ("Frog support pads in front, the first she's worn.", ["LF+RF pad frog_support"]),
        ("Rim pads behind, the only ones he's ever worn.", ["LH+RH pad rim"]),
        ("Quarter clips on the near fore, he'd lost one.", ["LF clips quarter"]),
        # the shoe is
        ("Hinds reset, the off hind's worn.", ["LH+RH work reset", "RH shoe_state worn"]),
    ],
    "Tally. {}",
)

test_lost_and_not_found = reads(
    [
        ("Lost both fronts, couldn't find either.", ["LF+RF shoe_state lost"]),
        ("Lost the near fore, couldn't find one in the field.", ["LF shoe_state lost"]),
        ("Lost the off hind and it wasn't found.", ["RH shoe_state lost"]),
        ("The near hind was lost, it was nowhere to be found.", ["LH shoe_state lost"]),
        # what is denied is no loss, and findings are
        ("No shoes lost on the fronts.", ["LF+RF shoe_state lost absent"]),
        ("Lost the near fore. A corn in it, couldn't find one.", ["LF finding corn absent", "LF shoe_state lost"]),
    ]
)

test_sprang_a_shoe = reads(
    [
        ("He sprang the right hind shoe.", ["RH shoe_state sprung"]),
        ("She sprang a shoe, the near hind.", ["LH shoe_state sprung"]),
        ("She sprang her left front shoe in the field.", ["LF shoe_state sprung"]),
        ("He sprang back when I touched the off fore.", []),
        ("She sprang out of the box. Near fore reset.", ["LF work reset"]),
    ],
    "Tally. {}",
)

test_old_shoes_were_worn_and_new_ones_are_on = reads(
    [
        (
            "The egg bars were worn out, so I put new straight bars on both fronts.",
            [
                "LF+RF shoe_state worn", "LF+RF shoe_type egg_bar history", "LF+RF shoe_type straight_bar",
                "LF+RF work new_shoe",
            ],
        ),
        (
            "The wide webs on the hinds were loose. I put new rims on.",
            [
                "LH+RH shoe_state loose", "LH+RH shoe_type rim", "LH+RH shoe_type wide_web history",
                "LH+RH work new_shoe",
            ],
        ),
        (
            "The egg bars were worn on both fores, so I put new egg bars on.",
            ["LF+RF shoe_state worn", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        (
            "Egg bars on both fronts are worn but I reset them.",
            ["LF+RF shoe_state worn", "LF+RF shoe_type egg_bar", "LF+RF work reset"],
        ),
    ],
    "Tally. {}",
)  # fmt: skip

test_chucked_torn_and_tore_loose = reads(
    [
        ("He'd chucked the off fore.", ["RF shoe_state lost"]),
        ("He chucked his head up. She chucked a fit. He's chucked his head about.", []),
        ("The grey one broke loose in the yard.", []),
        ("The owner was gone when I got here. The vet had already gone before I arrived.", []),
        ("She's chucked a shoe on the near hind.", ["LH shoe_state lost"]),
        ("Threw the left front. Wall missing at the heel where it tore loose.",
         ["LF finding wall_loss @heel", "LF shoe_state lost"]),
        ("Wall's torn away at the outside quarter of the off fore.", ["RF finding wall_loss @lateral_quarter"]),
        ("Off hind, wall's been ripped away at the toe.", ["RH finding wall_loss @toe"]),
        ("Left front had worked loose.", ["LF shoe_state loose"]),
        ("Mud fever on the off hind, none on the other three legs.",
         ["LF+RF+LH finding scratches absent", "RH finding scratches"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_shy_a_shoe = reads(
    [
        (
            "Tally was shy his left front, so he got a new one, single aught, plain.",
            ["LF shoe_size 0", "LF shoe_state lost", "LF shoe_type plain", "LF work new_shoe"],
        ),
        ("Tally was shy a shoe.", ["- shoe_state lost"]),
        ("Tally's a shoe shy on the near hind.", ["LH shoe_state lost"]),
        ("Tally was short a shoe on the near hind.", ["LH shoe_state lost"]),
        ("Tally had a shoe down on the off fore.", ["RF shoe_state lost"]),
        ("Tally was minus a hind shoe.", ["- shoe_state lost"]),
        ("Tally was minus his near fore.", ["LF shoe_state lost"]),
        ("Tally was lacking the off fore.", ["RF shoe_state lost"]),
        ("Tally was shy both fronts.", ["LF+RF shoe_state lost"]),
        ("Tally. He was already short his off fore, new one on it.", ["RF shoe_state lost", "RF work new_shoe"]),
        ("Tally. The mare was shy of her left hind shoe.", ["LH shoe_state lost"]),
        ("Tally came in without his off fore.", ["RF shoe_state lost"]),
        ("Tally. Last time he was shy his left front.", ["LF shoe_state lost history"]),
        ("Tally was shy of the stand.", []),
        ("Tally's shy with his left front.", []),
        ("Tally was shy about his left front.", []),
        ("Tally. All reset, minus the left front.", ["LF+RF+LH+RH work reset"]),
        ("Tally. Left front, size one, minus the clips.", ["LF shoe_size 1"]),
        ("Tally. He's short left front.", ["LF gait short_stride"]),
        ("Tally was wanting a shoe on the near hind.", []),
    ]
)

test_had_worn_shoes = reads(
    [
        ("Tally had worn shoes on both fores. Reset all round.", ["LF+RF shoe_state worn", "LF+RF+LH+RH work reset"]),
        ("Tally has worn shoes on both fores.", ["LF+RF shoe_state worn"]),
        ("Tally. He'd worn shoes on the fronts.", ["LF+RF shoe_state worn"]),
        ("Tally. The hinds had worn shoes, fronts were fine.", ["LH+RH shoe_state worn"]),
        ("Tally. Had worn shoes behind and loose in front.", ["LF+RF shoe_state loose", "LH+RH shoe_state worn"]),
        ("Tally. He had worn shoes in front last time. New in front.",
         ["LF+RF shoe_state worn history", "LF+RF work new_shoe"]),
        # what he wore
        ("Tally. He'd worn shoes in front for years. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Tally. He has worn shoes all his life. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Tally. He's worn shoes since March. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Tally. He'd never worn shoes. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Tally. She's always worn shoes in front. New in front.", ["LF+RF work new_shoe"]),
        ("Tally had worn egg bars for a year. Trimmed all four.",
         ["- shoe_type egg_bar history", "LF+RF+LH+RH work trim"]),
    ]
)  # fmt: skip

test_after_losing_is_has_just_lost = reads(
    [
        ("Mare's after losing the near fore.", ["LF shoe_state lost"]),
        ("He's after pulling the off fore.", ["RF shoe_state lost"]),
        ("He was after losing the near fore. Put it back on.", ["LF shoe_state lost", "LF work put_back"]),
        ("He's after springing the near hind.", ["LH shoe_state sprung"]),
        ("He's after losing a shoe, off hind.", ["RH shoe_state lost"]),
        # not the shoe, or not he
        ("After losing the near fore he went lame.", ["LF gait lame"]),
        ("I'm after trimming the hinds.", ["LH+RH work trim"]),
        ("She's after losing some wall on the near fore.", []),
        ("She's after dropping her soles in both fores.", []),
    ],
    "Tally. {}",
)

test_worn_clean_out = reads(
    [
        (
            "Tally. Both front shoes were wore clean out, so new ones. Hinds reset.",
            ["LF+RF shoe_state worn", "LF+RF work new_shoe", "LH+RH work reset"],
        ),
        ("Tally. Hinds were worn clean out. New behind.", ["LH+RH shoe_state worn", "LH+RH work new_shoe"]),
        ("Tally. I'm wore clean out. Hinds reset.", ["LH+RH work reset"]),
        ("Tally. I was worn clean out. Reset in front.", ["LF+RF work reset"]),
    ]
)

test_off_when_i_got_there = reads(
    [
        ("Off fore shoe was off when I got there. Nailed it back on.", ["RF shoe_state lost", "RF work put_back"]),
        ("Both hind shoes were off when we came. New shoes.", ["LH+RH shoe_state lost", "LH+RH work new_shoe"]),
        ("Near fore shoe is off, I took it off to drain it.", ["LF work removed"]),
        ("Near fore shoe was off when I looked at the sole, and there was a bruise.", ["LF finding bruise @sole"]),
    ],
    "Tansy. {}",
)
