"""Shoes that are listed before the verb which says where they were put, while another foot is in hand."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        (
            "Tally. Thrush in the off hind. A pair of wide webs in steel, "
            "both new, has been nailed on in front, side clipped."
        ),
        [
            "LF+RF clips side",
            "LF+RF shoe_material steel",
            "LF+RF shoe_type wide_web",
            "LF+RF work new_shoe",
            "RH finding thrush",
        ],
    ),
    (
        "Tally. No thrush in either hind. A pair of egg bars, both new, went on in front, size one.",
        ["LF+RF shoe_size 1", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe", "LH+RH finding thrush absent"],
    ),
    (
        (
            "Tally. The off hind has been cast and the near hind was hanging loose, so a fresh "
            "pair in aluminum, size two, has been fitted behind, with studs in both."
        ),
        [
            "LH shoe_state loose",
            "LH+RH shoe_material aluminum",
            "LH+RH shoe_size 2",
            "LH+RH traction studs",
            "LH+RH work new_shoe",
            "RH shoe_state lost",
        ],
    ),
    (
        "Tally. Corn in the near hind. A set of rims, steel, size two, was nailed on up front, six nails each.",
        ["LF+RF nails 6", "LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF shoe_type rim", "LH finding corn"],
    ),
    (
        "Tally. Abscess in the off hind, drained. New aluminum shoes, size one, have gone on in front.",
        [
            "LF+RF shoe_material aluminum",
            "LF+RF shoe_size 1",
            "LF+RF work new_shoe",
            "RH finding abscess",
            "RH treatment drained",
        ],
    ),
    (
        "Tally. Bruise in the left front. Two new plain shoes, size nought, toe clips, were put on behind.",
        ["LF finding bruise", "LH+RH clips toe", "LH+RH shoe_size 0", "LH+RH shoe_type plain", "LH+RH work new_shoe"],
    ),
    (
        "Tally. Near fore thrush. Bar shoes, aluminium, three and a half, have been put on the hinds.",
        ["LF finding thrush", "LH+RH shoe_material aluminum", "LH+RH shoe_size 3.5", "LH+RH shoe_type bar"],
    ),
    (
        "Tally. Left hind's got a crack. A pair of wide webs, new ones, with mesh pads, was fitted in front.",
        ["LF+RF pad mesh", "LF+RF shoe_type wide_web", "LF+RF work new_shoe", "LH finding crack"],
    ),
    (
        "Tally. Bruise in the near fore, so a bar shoe, size one, has been put on that foot.",
        ["LF finding bruise", "LF shoe_size 1", "LF shoe_type bar"],
    ),
    (
        "Tally. Thrush in the left hind. Egg bars, new, steel, were hung in front, five nails apiece.",
        [
            "LF+RF nails 5",
            "LF+RF shoe_material steel",
            "LF+RF shoe_type egg_bar",
            "LF+RF work new_shoe",
            "LH finding thrush",
        ],
    ),
    (
        "Tally. Crack in the off hind. The same shoes, six nails each, went back on in front.",
        ["LF+RF nails 6", "LF+RF work reset", "RH finding crack"],
    ),
    (
        "Buck. Left front's got a corn. Trailers, size two, three a side, went on behind.",
        ["LF finding corn", "LH+RH nails 6", "LH+RH shoe_size 2", "LH+RH shoe_type trailer"],
    ),
    (
        "Buck. Corn in the right front. A half set, steel, rolled toes, size one, is on in front.",
        [
            "LF+RF shoe_material steel",
            "LF+RF shoe_size 1",
            "LF+RF shoe_type rolled_toe",
            "LF+RF work new_shoe",
            "RF finding corn",
        ],
    ),
    (
        "Buck. The off fore was sprung. A new shoe, aluminum, size nought, was nailed on that foot.",
        ["RF shoe_material aluminum", "RF shoe_size 0", "RF shoe_state sprung", "RF work new_shoe"],
    ),
    (
        "Buck. New shoes in front, size one, were nailed on with six nails each, and the hinds trimmed.",
        ["LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work new_shoe", "LH+RH work trim"],
    ),
    (
        "Buck. Bruise in the near hind. Full pads, pour in, were used in front.",
        ["LF+RF pad full", "LF+RF pad pour_in", "LH finding bruise"],
    ),
]

test_put_where = reads(CASES)

test_on_this_one_alone = reads(
    [
        (
            "Reset both fronts, a mesh pad and impression material on the right front only.",
            ["LF+RF work reset", "RF packing impression_material", "RF pad mesh"],
        ),
        (
            "New in front, a rim pad and silicone in the off fore.",
            ["LF+RF work new_shoe", "RF packing silicone", "RF pad rim"],
        ),
        (
            "New in front, leather pads and silicone in the off fore.",
            ["LF+RF pad leather", "LF+RF work new_shoe", "RF packing silicone"],
        ),
        (
            "New in front, leather pads, and silicone in the off fore only.",
            ["LF+RF pad leather", "LF+RF work new_shoe", "RF packing silicone"],
        ),
        (
            "New in front, leather pads and a corn in the off fore.",
            ["LF+RF pad leather", "LF+RF work new_shoe", "RF finding corn"],
        ),
    ],
    "Tansy. {}",
)
