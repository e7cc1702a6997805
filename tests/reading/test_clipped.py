"""A correction cut short takes the noun of the word before it."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Rim pads on the fronts, no, mesh.", ["LF+RF pad mesh"]),
    ("Tally. Both fronts shod. Rim pads under there, no, mesh, I had to swap.", ["LF+RF pad mesh"]),
    ("Tally. Leather pads in front, sorry, full.", ["LF+RF pad full"]),
    ("Tally. Toe clips on the hinds, no, quarter.", ["LH+RH clips quarter"]),
    ("Tally. Quarter clips up front, I mean side, and six nails.", ["LF+RF clips side", "LF+RF nails 6"]),
    ("Tally. New egg bars in front, no, straight.", ["LF+RF shoe_type straight_bar", "LF+RF work new_shoe"]),
    ("Tally. Wedge pads on both fronts, no wait, rim.", ["LF+RF pad rim"]),
    ("Tally. Full pads, hang on, half mesh, on the left front.", ["LF pad half_mesh"]),
    ("Buck. Heart bars on the fronts, sorry, egg.", ["LF+RF shoe_type egg_bar"]),
    (
        "Buck. Reset the hinds, side clips, no, toe, seven nails.",
        ["LH+RH clips toe", "LH+RH nails 7", "LH+RH work reset"],
    ),
    ("Buck. Rocker toes in front, no, they're rolled.", ["LF+RF shoe_type rolled_toe"]),
    ("Buck. Mesh pads under both fores, I tell a lie, leather.", ["LF+RF pad leather"]),
    ("Buck. Leather pads in front, no, no thrush.", ["LF+RF finding thrush absent", "LF+RF pad leather"]),
    ("Buck. Rim pads on the fronts, no, hinds.", ["LH+RH pad rim"]),
    ("Buck. Rim pads on the fronts, no, six nails.", ["LF+RF nails 6", "LF+RF pad rim"]),
    ("Buck. Side clips in front. No toe crack.", ["LF+RF clips side", "LF+RF finding crack absent @toe"]),
]

test_clipped = reads(CASES)

test_headed = reads(
    [
        ("Pads on the fronts, leather.", ["LF+RF pad leather"]),
        ("Pads on both fronts, leather, size one.", ["LF+RF pad leather", "LF+RF shoe_size 1"]),
        ("Clips in front, quarter, size two.", ["LF+RF clips quarter", "LF+RF shoe_size 2"]),
        ("Pads on the fronts, full, with oakum.", ["LF+RF packing oakum", "LF+RF pad full"]),
        ("Pads in front, none.", []),
        ("Pads in front, corn in the left front.", ["LF finding corn"]),
    ]
)
