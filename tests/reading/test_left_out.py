"""What was skipped, left off or thrown away by hand is neither done nor lost; and what became of rotation and heat.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_skipped = reads(
    [
        (
            "Left front abscess. Soaked it, poultice, no actually I skipped the poultice.",
            ["LF finding abscess", "LF treatment soak"],
        ),
        ("Left front has thrush, iodine, no wait, I left the iodine off.", ["LF finding thrush"]),
        (
            "Off hind abscess, drained it, and I held off on the poultice.",
            ["RH finding abscess", "RH treatment drained"],
        ),
        (
            "Thrush in the near hind, ran out of iodine, so copper sulfate in it.",
            ["LH finding thrush", "LH treatment copper_sulfate"],
        ),
        ("Right front reset, oakum, no, I left the oakum out.", ["RF packing oakum absent", "RF work reset"]),
        ("Near fore has a bruise, I skipped the hardener on it.", ["LF finding bruise"]),
        ("Thrush in both hinds, we did without the iodine.", ["LH+RH finding thrush"]),
        ("Scratches on the near hind, antiseptic, sorry, I skipped the antiseptic.", ["LH finding scratches"]),
        ("I left the wedge pads off the fronts.", ["LF+RF pad wedge absent"]),
        ("I'm leaving off the wedge pads on the fronts.", ["LF+RF pad wedge absent"]),
        ("Poultice on the left front, no, we were out of poultice, just a bandage.", ["LF treatment bandage"]),
        ("Oakum, no, I was out of oakum, so silicone under both fronts.", ["LF+RF packing silicone"]),
        (
            "Left front abscess, drained it, meant to soak it but didn't.",
            ["LF finding abscess", "LF treatment drained"],
        ),
        ("I meant to put pads on the fronts but ran out of time.", []),
        ("Thrush in the right front, I meant the left front.", ["LF finding thrush"]),
        # done after all, or of another time
        ("Tally came out of full pads and into rim pads in front.", ["LF+RF pad full history", "LF+RF pad rim"]),
        ("Took the wedge pads off the fronts.", ["LF+RF pad wedge history"]),
        ("I left the poultice on the left front.", ["LF treatment poultice"]),
        (
            "Left front abscess, poultice on, left the shoe off.",
            ["LF finding abscess", "LF treatment poultice", "LF work removed"],
        ),
        (
            "Left front abscess. Shoe off left off soaked antiseptic bandaged.",
            [
                "LF finding abscess",
                "LF treatment antiseptic",
                "LF treatment bandage",
                "LF treatment soak",
                "LF work removed",
            ],
        ),
    ]
)

test_thrown_away_by_hand = reads(
    [
        (
            "Her left hind was loose, and it had sprung, so I tossed it and put a new one on, size two.",
            ["LH shoe_size 2", "LH shoe_state loose", "LH shoe_state sprung", "LH work new_shoe"],
        ),
        (
            "Left front was worn, so I just threw it in the scrap and put a new shoe on.",
            ["LF shoe_state worn", "LF work new_shoe"],
        ),
        (
            "Off hind had sprung. I flung it in the bin and put a new shoe on.",
            ["RH shoe_state sprung", "RH work new_shoe"],
        ),
        ("Tally threw the left front.", ["LF shoe_state lost"]),
        ("He tossed a shoe, left hind.", ["LH shoe_state lost"]),
    ]
)

test_degrees_of_rotation = reads(
    [
        (
            "No rotation in the right front, nine degrees in the left front on the films.",
            ["LF finding rotation", "RF finding rotation absent"],
        ),
        ("Rotation on the films, six degrees left front, four right front.", ["LF+RF finding rotation"]),
        ("Left front rotation eight degrees, right front five.", ["LF+RF finding rotation"]),
        ("Left front has eight degrees of rotation, right front five degrees.", ["LF+RF finding rotation"]),
        (
            "No rotation in the near fore, seven degrees in the off fore.",
            ["LF finding rotation absent", "RF finding rotation"],
        ),
        ("Nine degrees of rotation left front, six right front by the films.", ["LF+RF finding rotation"]),
        ("Ten degrees of rotation in the near fore, seven off fore.", ["LF+RF finding rotation"]),
        (
            "Nine degrees of rotation left front, six nails right front.",
            ["LF finding rotation", "RF nails 6"],
        ),
        (
            "Nine degrees of rotation left front, size six right front.",
            ["LF finding rotation", "RF shoe_size 6"],
        ),
        # degrees of something else, and numbers that are no degrees
        (
            "Rotation in the left front, and I put three degree wedges on both fronts.",
            ["LF finding rotation", "LF+RF pad wedge", "LF+RF wedge 3"],
        ),
        (
            "Rotation in the left front, toe angle fifty two degrees, right front fifty.",
            ["LF finding rotation", "LF toe_angle 52", "RF toe_angle 50"],
        ),
        ("No rotation in either front, six nails in each.", ["LF+RF finding rotation absent", "LF+RF nails 6"]),
    ]
)

test_heat_of_the_foot_just_told = reads(
    [
        (
            "Touch of swelling in the right hind, and it isn't hot.",
            ["RH finding heat absent", "RH finding swelling ~mild"],
        ),
        ("Swelling in the left front, not hot.", ["LF finding heat absent", "LF finding swelling"]),
        ("Bruise at the toe of the left hind, but it's not hot.", ["LH finding bruise @toe", "LH finding heat absent"]),
        ("Near fore has a crack at the toe, and it's not warm.", ["LF finding crack @toe", "LF finding heat absent"]),
        ("Swelling in the off hind, and it's hot.", ["RH finding heat", "RH finding swelling"]),
        ("Bruise in the left front, and it's hot today.", ["LF finding bruise"]),
        ("Trimmed both fronts, and it's hot.", ["LF+RF work trim"]),
    ]
)

test_a_season_to_come = reads(
    [
        (
            "Pulled his shoes, all four, leaving him bare till spring.",
            ["LF+RF+LH+RH work removed"],
        ),
        ("Trimmed all four, leaving him bare until fall.", ["LF+RF+LH+RH work trim"]),
    ]
)

test_a_foot_never_picked_up = reads(
    [
        ("Trimmed both fronts, left her bare, never picked up a hind.", ["LF+RF work trim"]),
        ("Trimmed the fronts, barefoot, never got a hind up.", ["LF+RF work trim"]),
        ("Trimmed all four, though I could hardly pick up the hinds.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_told_to_stop = reads(
    [
        ("Near fore, told them to rest it and soaked", ["LF treatment soak planned"]),
        ("Near fore, told them to stop poulticing and soaked it myself.",
         ["LF treatment soak"]),
        ("Near fore, told her to keep it wrapped and soaked.",
         ["LF treatment bandage planned", "LF treatment soak planned"]),
        ("Off hind, asked her to quit poulticing and bandaged it myself.",
         ["RH treatment bandage"]),
        ("Near fore, told him to stop soaking and start poulticing.",
         ["LF treatment poultice planned"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_left_off_what_was_planned = reads(
    [
        ("The vet planned bars but they left them off at the yard.", []),
        ("They'd ordered bars, and the yard left them off.", []),
        ("The vet asked for wedges but they left them off.", []),
        ("He was to have bars but I left them out.", []),
        ("The plan was heart bars in front, they left them off.", []),
        ("The vet had in mind a bar, they left it off.", []),
        ("I meant to put shoes on but left them off.", []),
        ("The vet wanted egg bars in front but we left them off for now.", []),
        ("They were going to have pads, but the girl left them off.", []),
        ("I'd planned on bars, but left them off.", []),
        # here it says nothing
        ("Pulled the shoes and left them off.", ["- work removed"]),
        ("Fronts off, left them off.", ["LF+RF work removed"]),
        ("I planned to pull the hinds, so I left them off.", ["LH+RH work removed"]),
        ("The owner wanted the fronts off, so took them off and left them off.", ["LF+RF work removed"]),
        ("Shoes off in front. Left them off.", ["LF+RF work removed"]),
        ("Pulled the fronts. He's going to grass so I left them off.", ["LF+RF work removed"]),
        ("Fronts pulled. She wanted him comfortable so we left them off.", ["LF+RF work removed"]),
    ]
)

test_thought_better_of_it = reads(
    [
        ("Fronts reset. I put toe clips on them and thought better of it.", ["LF+RF work reset"]),
        ("Reset in front. Put rim pads on and thought better of it.", ["LF+RF work reset"]),
        ("Hinds reset. Studs in the hinds and then thought better of it.", ["LH+RH work reset"]),
        ("Reset the fronts. Wedge pads on, then I thought better of it.", ["LF+RF work reset"]),
        ("Reset the hinds. Packed them with silicone and thought better of that.", ["LH+RH work reset"]),
        ("Fronts reset. I was putting quarter clips on and decided against it.", ["LF+RF work reset"]),
        ("Reset the fronts. Nailed bar shoes on, thought better of it.", ["LF+RF work reset"]),
        ("Poultice on the near fore, then thought better of it.", []),
        ("Hinds reset. Toe clips on both hinds. Thought better of it.", ["LH+RH work reset"]),
        ("Hinds reset. Side clips on the hinds but decided against them.", ["LH+RH work reset"]),
        # here it says nothing
        ("I thought about pulling the fronts and thought better of it. Reset.", ["LF+RF work reset"]),
        ("Toe clips on the fronts. I was going to do the hinds too and thought better of it.", ["LF+RF clips toe"]),
        (
            "Fronts reset with toe clips. The owner thought better of it and paid.",
            ["LF+RF clips toe", "LF+RF work reset"],
        ),
        (
            "Hinds reset, studs in behind. She wanted pads and thought better of it.",
            ["LH+RH traction studs", "LH+RH work reset"],
        ),
        (
            "Reset the fronts with leather pads. Hinds trimmed, thought better of it.",
            ["LF+RF pad leather", "LF+RF work reset", "LH+RH work trim"],
        ),
    ]
)
