"""What was tried, taken out or wanted and not used.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_tried_and_not_used = reads(
    [
        (
            "Reset both fronts, plain steel, size two, I about went to a three on him and then thought better of it.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF shoe_type plain", "LF+RF work reset"],
        ),
        (
            "New shoes on both fronts, size two, I had him up for a three but no.",
            ["LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "New shoes on both fores, size four, I did offer up a three and it was nowhere near, wide webs, steel.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 4", "LF+RF shoe_type wide_web", "LF+RF work new_shoe"],
        ),
        ("New shoes in front, size one, I tried a two and it hung over.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
        (
            "New shoes in front, size one, I held a two up to him and it was way too big.",
            ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, size one, I looked at an aught but it was too small.",
            ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, size one, pour-in pads. Had the wedges out of the box but, nah, left it.",
            ["LF+RF pad pour_in", "LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, steel. Had the egg bars in my hand and put them back on the rack.",
            ["LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, plain, steel, I had the aluminum out and put it away again.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        ("New shoes in front. I went to put a leather pad in and then didn't.", ["LF+RF work new_shoe"]),
        (
            "New shoes in front, size one, I'd the twos out but they swam on him.",
            ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, six nails, I got as far as picking up the wedge pads and put them down again.",
            ["LF+RF nails 6", "LF+RF work new_shoe"],
        ),
        ("New shoes in front, size three, a four was too big.", ["LF+RF shoe_size 3", "LF+RF work new_shoe"]),
        (
            "New shoes in front, size three, threw a four on there and it was like a dinner plate.",
            ["LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        ("Size three on the fronts. Offered him a four and it stuck out the back.", ["LF+RF shoe_size 3"]),
        ("Size three on the fronts, tried a four. Way too big.", ["LF+RF shoe_size 3"]),
        (
            "New shoes on the fronts, plain. Had a pair of heart bars half shaped and binned them.",
            ["LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        ("Reset the fronts. I had a set of leather pads with me, never used them.", ["LF+RF work reset"]),
        ("Fronts reset. Toyed with a rim pad, left it.", ["LF+RF work reset"]),
        (
            "New shoes in front, quarter clips. Nearly drew toe clips but thought better.",
            ["LF+RF clips quarter", "LF+RF work new_shoe"],
        ),
        (
            "Reset the fronts, steel. I'd a mind to try aluminium, didn't bother.",
            ["LF+RF shoe_material steel", "LF+RF work reset"],
        ),
    ],
    "Tansy. {}",
)

test_wanted_by_somebody_else = reads(
    [
        (
            "Reset both fronts, she wanted aluminum but we stayed with the steel, "
            "rim shoes, size one, six nails in each.",
            [
                "LF+RF nails 6",
                "LF+RF shoe_material steel",
                "LF+RF shoe_size 1",
                "LF+RF shoe_type rim",
                "LF+RF work reset",
            ],
        ),
        (
            "Reset both fronts, the owner was after aluminium but I kept him in steel.",
            ["LF+RF shoe_material steel", "LF+RF work reset"],
        ),
        ("Steel in front, the trainer wanted aluminium, he didn't get it.", ["LF+RF shoe_material steel"]),
        ("Steel in front. The trainer wanted aluminium and can keep on wanting.", ["LF+RF shoe_material steel"]),
        (
            "Owner wanted bar shoes in front, so bar shoes in front, size two.",
            ["LF+RF shoe_size 2", "LF+RF shoe_type bar"],
        ),
    ],
    "Tansy. {}",
)

test_tried_and_left_on = reads(
    [
        ("Tried a three degree wedge pad in front today.", ["LF+RF pad wedge", "LF+RF wedge 3"]),
        (
            "New shoes in front, I tried a size two this time, and six nails.",
            ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "I had the old shoes off and put new ones on, size three, in front.",
            ["LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, size one, and a two behind.",
            ["LF+RF shoe_size 1", "LF+RF work new_shoe", "LH+RH shoe_size 2"],
        ),
    ],
    "Tansy. {}",
)
