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
        ("Hinds reset. Pads on the fronts,", ["LH+RH work reset"]),
        ("Pads on the fronts, leather.", ["LF+RF pad leather"]),
        ("Pads on both fronts, leather, size one.", ["LF+RF pad leather", "LF+RF shoe_size 1"]),
        ("Clips in front, quarter, size two.", ["LF+RF clips quarter", "LF+RF shoe_size 2"]),
        ("Pads on the fronts, full, with oakum.", ["LF+RF packing oakum", "LF+RF pad full"]),
        ("Pads in front, none.", []),
        ("Pads in front, corn in the left front.", ["LF finding corn"]),
    ]
)

test_the_kind_of_a_shoe_alone = reads(
    [
        (
            "Fronts: new shoes, size one, rim, steel, six nails.",
            [
                "LF+RF nails 6",
                "LF+RF shoe_material steel",
                "LF+RF shoe_size 1",
                "LF+RF shoe_type rim",
                "LF+RF work new_shoe",
            ],
        ),
        (
            "Both fronts are new shoes, steel, rim, size two and a half.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 2.5", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        ("Right hind, reset, trailer, six nails.", ["RH nails 6", "RH shoe_type trailer", "RH work reset"]),
        (
            "The left hind gets a new trailer, size naught.",
            ["LH shoe_size 0", "LH shoe_type trailer", "LH work new_shoe"],
        ),
        ("New shoe on the left hind, bar, size one.", ["LH shoe_size 1", "LH shoe_type bar", "LH work new_shoe"]),
        ("I set a trailer on the right hind.", ["RH shoe_type trailer"]),
        (
            "Cast the near hind. New one on, size one, steel, a trailer, seven nails.",
            [
                "LH nails 7",
                "LH shoe_material steel",
                "LH shoe_size 1",
                "LH shoe_state lost",
                "LH shoe_type trailer",
                "LH work new_shoe",
            ],
        ),
        (
            "Lost the right front, tacked it back on, it's only a tip, four nails.",
            ["RF nails 4", "RF shoe_state lost", "RF shoe_type tip", "RF work put_back"],
        ),
        (
            "New shoe on the off fore, size two, a rim, six nails.",
            ["RF nails 6", "RF shoe_size 2", "RF shoe_type rim", "RF work new_shoe"],
        ),
        ("Off hind new. Trailer. Size one.", ["RH shoe_size 1", "RH shoe_type trailer", "RH work new_shoe"]),
        ("Near fore new, I made it a bar, six nails.", ["LF nails 6", "LF shoe_type bar", "LF work new_shoe"]),
    ],
    "Tally. {}",
)

test_something_else_than_a_kind_of_shoe = reads(
    [
        ("Fronts new, steel, rim pads.", ["LF+RF pad rim", "LF+RF shoe_material steel", "LF+RF work new_shoe"]),
        (
            "Reset in front, steel. Corn, bar, left front.",
            ["LF finding corn @bar", "LF+RF shoe_material steel", "LF+RF work reset"],
        ),
        ("Got a new trailer for the truck. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Sprung the left hind in a new trailer. Reset it.", ["LH shoe_state sprung", "LH work reset"]),
        ("Left hind reset. They've a new trailer, he won't load.", ["LH work reset"]),
        ("Reset the fronts, size one, a tip, twenty quid.", ["LF+RF shoe_size 1", "LF+RF work reset"]),
        ("Reset the fronts. Owner gave me a tip, a good one.", ["LF+RF work reset"]),
        ("Near hind new, six nails, nearly hit a trailer, an old one.", ["LH nails 6", "LH work new_shoe"]),
        ("Trimmed all four. Corn in the near fore. A bar. That's it.", ["LF finding corn", "LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_a_shoe_on_again = reads(
    [
        ("The near fore has a shoe on it again, a new one, size naught.", ["LF shoe_size 0", "LF work new_shoe"]),
        ("So the left hind has a shoe on again, a new one.", ["LH work new_shoe"]),
    ],
    "Tally. {}",
)

test_how_the_pads_are = reads(
    [
        (
            "Leather pads on the fronts. Wait, her pads aren't leather, I changed my mind, they're full pads.",
            ["LF+RF pad full"],
        ),
        ("Fronts reset with pads. The pads are leather.", ["LF+RF pad leather", "LF+RF work reset"]),
        (
            "New shoes in front. The pads are rim, silicone under them.",
            ["LF+RF packing silicone", "LF+RF pad rim", "LF+RF work new_shoe"],
        ),
        ("Fronts reset with pads. The pads are worn.", ["LF+RF shoe_state worn", "LF+RF work reset"]),
    ]
)

test_leather_beside_a_wedge = reads(
    [
        ("Near fore, wedge and leather.",
         ["LF pad leather", "LF pad wedge"]),
        ("Fronts, leather and a wedge.",
         ["LF+RF pad leather", "LF+RF pad wedge"]),
        ("No wedge or leather in front.",
         ["LF+RF pad leather absent", "LF+RF pad wedge absent"]),
        ("Left front, a wedge, and leather gloves on me.",
         ["LF pad wedge"]),
        ("Fronts, a wedge with a leather.",
         ["LF+RF pad leather", "LF+RF pad wedge"]),
        ("Fronts, putty under a wedge. No pads behind, leather or otherwise.",
         ["LF+RF packing putty", "LF+RF pad wedge"]),
        ("Left front, leather and pine tar.",
         ["LF packing pine_tar", "LF pad leather"]),
    ],
    "Tansy. {}",
)  # fmt: skip


test_poured = reads(
    [
        ("Poured fresh pads in both fronts.", ["LF+RF pad pour_in"]),
        ("Fronts reset. Poured fresh pads in both.", ["LF+RF pad pour_in", "LF+RF work reset"]),
        ("Reset in front, poured both fronts.", ["LF+RF pad pour_in", "LF+RF work reset"]),
        ("Both fronts reset and re-poured.", ["LF+RF pad pour_in", "LF+RF work reset"]),
        ("Near fore reset, and I poured it.", ["LF pad pour_in", "LF work reset"]),
        ("Fronts reset. Re-poured the pads.", ["LF+RF pad pour_in", "LF+RF work reset"]),
        ("Fronts reset, no need to pour them.", ["LF+RF pad pour_in absent", "LF+RF work reset"]),
        ("Fronts reset. I'll pour them next time.", ["LF+RF pad pour_in planned", "LF+RF work reset"]),
        # rain, and what else is poured
        ("It poured all day, both fronts reset.", ["LF+RF work reset"]),
        ("It rained and poured. Fronts reset.", ["LF+RF work reset"]),
        ("Fronts reset, the rain poured in behind.", ["LF+RF work reset"]),
        ("Poured iodine in both fronts.", ["LF+RF treatment iodine"]),
        ("Near fore abscess, pus poured out of it.", ["LF finding abscess"]),
        ("Fronts reset. Poured fresh coffee.", ["LF+RF work reset"]),
    ],
    "Tally. {}",
)


test_part_named_behind = reads(
    [
        (
            "Near hind, wall's broken away at the outside quarter. It's soft as well, the wall, so hardener went on.",
            ["LH finding wall_loss @lateral_quarter", "LH finding weak_wall", "LH treatment hardener"],
        ),
        ("Off fore, it's thin, the sole.", ["RF finding thin_sole"]),
        (
            "Hinds have thrush. They are a bit weak, the walls.",
            ["LH+RH finding thrush", "LH+RH finding weak_wall ~mild"],
        ),
        ("Near fore has a corn. It's not soft, the wall.", ["LF finding corn", "LF finding weak_wall absent"]),
        ("Near fore has thrush. It's soft, the ground, after the rain.", ["LF finding thrush"]),
        ("Near fore has thrush. The shoe was thin, the wall's fine.", ["LF finding thrush"]),
    ]
)
