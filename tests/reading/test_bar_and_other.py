"""A shoe stands for the foot that it is on: "the bar's new, the other's a reset"."""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_shoe_tells_its_foot = reads(
    [
        (
            "Tally. Left front has a bar shoe on, right front plain. The bar's new, the other's a reset.",
            ["LF shoe_type bar", "LF work new_shoe", "RF shoe_type plain", "RF work reset"],
        ),
        (
            "Tally. Egg bar on the right hind, plain on the left hind. The egg bar's new, the other one's reset.",
            ["LH shoe_type plain", "LH work reset", "RH shoe_type egg_bar", "RH work new_shoe"],
        ),
        (
            "Tally. Straight bar on the off fore. The bar's a reset, the other's new.",
            ["LF work new_shoe", "RF shoe_type straight_bar", "RF work reset"],
        ),
        (
            "Tally. Bar shoe on the near fore, rim shoe on the off. Bar's new, rim's reset.",
            ["LF shoe_type bar", "LF work new_shoe", "RF shoe_type rim", "RF work reset"],
        ),
        (
            "Tally. Near hind in an egg bar, off hind in a plain shoe. The plain's new, the bar was reset.",
            ["LH shoe_type egg_bar", "LH work reset", "RH shoe_type plain", "RH work new_shoe"],
        ),
    ]
)

test_no_shoe_is_pointed_at = reads(
    [
        ("Tally. Egg bar on the off hind. The bar is bruised.", ["RH finding bruise @bar", "RH shoe_type egg_bar"]),
        ("Tally. Egg bars on both hinds. The bars are new.", ["LH+RH shoe_type egg_bar", "LH+RH work new_shoe"]),
        (
            "Tally. Full pad on the left front, none on the right front. The pad's new.",
            ["LF pad full", "RF pad full absent"],
        ),
    ]
)
