"""Shoes that the horse took off, shoes taken off and left off, where a shoe was worn, and new shoes said late.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_horse_took_it_off = reads(
    [
        ("He pulled the right front off in the field. Nailed it back on.", ["RF shoe_state lost", "RF work put_back"]),
        (
            "She pulled the left front off in the paddock. Reset it with six nails.",
            ["LF nails 6", "LF shoe_state lost", "LF work reset"],
        ),
        ("He'd trodden off his off fore.", ["RF shoe_state lost"]),
        ("She trod her near fore off.", ["LF shoe_state lost"]),
        ("He took the right hind off on the fence.", ["RH shoe_state lost"]),
        ("Tally knocked his left hind off on the gate, put it back on.", ["LH shoe_state lost", "LH work put_back"]),
        ("He wrenched off the right front, new shoe on it.", ["RF shoe_state lost", "RF work new_shoe"]),
        ("She kicked her near hind shoe off.", ["LH shoe_state lost"]),
        ("He stepped off his right front again.", ["RF shoe_state lost"]),
        ("She had the left front off again, so I put it back on.", ["LF shoe_state lost", "LF work put_back"]),
        (
            "She'd dropped the near fore, so I nailed that same shoe back on.",
            ["LF shoe_state lost", "LF work put_back"],
        ),
        ("He had shed the off hind and I tacked the same one back on.", ["RH shoe_state lost", "RH work put_back"]),
        ("Dropped a shoe, left hind, new one on it.", ["LH shoe_state lost", "LH work new_shoe"]),
        ("Tally had pulled the left hind, I nailed it back on.", ["LH shoe_state lost", "LH work put_back"]),
        ("Tally has pulled the right front, new one on it.", ["RF shoe_state lost", "RF work new_shoe"]),
        ("I had pulled the left hind.", []),
        (
            "Tally jerked the right front off in a cattle guard. Same shoe back on.",
            ["RF shoe_state lost", "RF work put_back"],
        ),
        ("She snagged her left hind off in the wire. New shoe on it.", ["LH shoe_state lost", "LH work new_shoe"]),
        # by hand, or no shoe at all
        ("He jerked the left front away when I hit the sole.", []),
        ("He's dropped the near fore a bit lower than the off. Trimmed both fronts.", ["LF+RF work trim"]),
        ("I dropped the shoe on my toe. Near fore reset.", ["LF work reset"]),
        ("Pulled the right front off in the barn and reset it.", ["RF work reset"]),
        ("I pulled the left front off and reset it.", ["LF work reset"]),
        ("He was sore so I took the left front off and left it off.", ["LF work removed"]),
        ("I ripped the left front off and put a new one on.", ["LF work new_shoe"]),
        ("I had the left front off to look at the sole.", []),
        ("She had the left hind off the ground the whole time.", []),
        ("He took the left front off the stand.", []),
        ("He ran off the left side of the track.", []),
    ]
)

test_left_bare = reads(
    [
        ("Pulled his shoes, all four, leaving him bare till spring.", ["LF+RF+LH+RH work removed"]),
        ("Took the fronts off and left them barefoot.", ["LF+RF work removed"]),
        ("Pulled the fronts. Left her bare.", ["LF+RF work removed"]),
        ("Pulled the hind shoes, left him bare behind and trimmed those.", ["LH+RH work removed", "LH+RH work trim"]),
        ("Left him barefoot all round.", ["LF+RF+LH+RH work trim"]),
    ]
)

test_where_the_shoe_was_worn = reads(
    [
        ("Right front shoe was worn thin at the toe.", ["RF shoe_state worn @toe"]),
        ("Left hind was sprung at the heel.", ["LH shoe_state sprung @heel"]),
        ("Near fore was loose at the heel.", ["LF shoe_state loose @heel"]),
        (
            "Right front worn right through at the toe. Crack at the toe as well.",
            ["RF finding crack @toe", "RF shoe_state worn @toe"],
        ),
        ("Left front sprung, crack at the toe.", ["LF finding crack @toe", "LF shoe_state sprung"]),
        ("Left hind was sprung, bruise at the heel.", ["LH finding bruise @heel", "LH shoe_state sprung"]),
    ]
)

test_high_on_one_side = reads(
    [
        ("Right hind is high on the inside.", ["RH finding imbalance @medial"]),
        ("Left hind sits high on the outside, moderate.", ["LH finding imbalance @lateral ~moderate"]),
        ("Near fore is high on the lateral side.", ["LF finding imbalance @lateral"]),
        ("Lands on the outside, left hind.", ["LH finding imbalance @lateral"]),
        ("Out of balance on the left front, high on the inside.", ["LF finding imbalance @medial"]),
    ]
)

test_new_and_of_what = reads(
    [
        (
            "Six nails, number one, plain steel, both fronts, brand new today.",
            [
                "LF+RF nails 6",
                "LF+RF shoe_material steel",
                "LF+RF shoe_size 1",
                "LF+RF shoe_type plain",
                "LF+RF work new_shoe",
            ],
        ),
        ("Wide webs in front, new today.", ["LF+RF shoe_type wide_web", "LF+RF work new_shoe"]),
        ("Size two, both hinds, new this time.", ["LH+RH shoe_size 2", "LH+RH work new_shoe"]),
        (
            "Number two, steel, both hinds, fresh on today.",
            ["LH+RH shoe_material steel", "LH+RH shoe_size 2", "LH+RH work new_shoe"],
        ),
        ("Tally, new today. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Put a glue-on tip on the right front.", ["RF shoe_type glue_on", "RF shoe_type tip"]),
        ("Steel tips on both fronts.", ["LF+RF shoe_material steel", "LF+RF shoe_type tip"]),
        ("Trimmed both fronts, and the owner gave me a tip.", ["LF+RF work trim"]),
    ]
)

test_pulled_off_itself = reads(
    [
        ("He had both fronts pulled off himself.", ["LF+RF shoe_state lost"]),
        ("She had the near hind ripped off before I got there.", ["LH shoe_state lost"]),
        ("He had both fronts pulled off by the last man.", []),
    ],
    "Tally. {}",
)

test_off_for_a_look = reads(
    [
        (
            "I found a corn in the near fore, lateral heel, when the old shoe came off.",
            ["LF finding corn @lateral_heel"],
        ),
        ("A bruise in the off hind showed when the shoe came off.", ["RH finding bruise"]),
        ("Once the shoe came off there was a bruise, near fore.", ["LF finding bruise"]),
        ("She bruised the near fore when the shoe came off.", ["LF finding bruise", "LF shoe_state lost"]),
        ("Left hind, the shoe came off in the field. Bruised there.", ["LH finding bruise", "LH shoe_state lost"]),
    ],
    "Tansy. {}",
)


test_thrown_out_there = reads(
    [
        (
            "Left front. He threw it out in the pasture. New one on that foot.",
            ["LF shoe_state lost", "LF work new_shoe"],
        ),
        ("Near fore. She pulled it in the bog and tore some wall off.", ["LF finding wall_loss", "LF shoe_state lost"]),
        ("Left front. He'd thrown it in the paddock.", ["LF shoe_state lost"]),
        ("Left front. Took the old one off, I did, and he threw it in the field.", []),
        ("Left front. The old shoe, I threw it in the ditch.", []),
        ("Thrush in the left front. He threw his head in the stall.", ["LF finding thrush"]),
    ],
    "Tally. {}",
)

test_the_foot_put_first_came_off = reads(
    [
        ("It was his left hind that came off, not the right.", ["LH shoe_state lost", "RH shoe_state lost absent"]),
        ("It was the near fore that came off, not the off.", ["LF shoe_state lost", "RF shoe_state lost absent"]),
        ("It's the off hind that's come off, not the near.", ["LH shoe_state lost absent", "RH shoe_state lost"]),
        ("It was the right front that came off. New shoe on it.", ["RF shoe_state lost", "RF work new_shoe"]),
        ("It's his fronts that have come off.", ["LF+RF shoe_state lost"]),
        ("It was her near hind which came off in the field.", ["LH shoe_state lost"]),
        ("That was the off fore that came off, I reset it.", ["RF shoe_state lost", "RF work reset"]),
        ("It was the left hind that came off last month.", ["LH shoe_state lost history"]),
        # here it says nothing
        ("Left hind came off easy. Fronts reset.", ["LF+RF work reset"]),
        ("It was the pads in front that came off.", []),
        ("It's the fronts that come off next time.", []),
        ("If it's the left front that comes off, ring me.", []),
        ("The near fore that came off was bent.", []),
    ]
)
