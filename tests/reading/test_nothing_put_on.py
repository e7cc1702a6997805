"""Nothing put on behind, shoes left behind in a bog, and a doubt of today beside an earlier time."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        (
            "Tally. Swelling at the coronary band in the off fore, no heat. New shoe on, "
            "half round, steel. Nothing on the hinds, he just gets a trim there."
        ),
        [
            "LH+RH work trim",
            "RF finding heat absent",
            "RF finding swelling @coronary_band",
            "RF shoe_material steel",
            "RF shoe_type half_round",
            "RF work new_shoe",
        ],
    ),
    (
        ("Tally. Corn in the near fore. Straight bars on both fores, size two, six nails. Nothing behind."),
        ["LF finding corn", "LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF shoe_type straight_bar"],
    ),
    (
        "Tally. Thrush in the near fore. New shoes in front, plain. Nothing on behind, trimmed.",
        ["LF finding thrush", "LF+RF shoe_type plain", "LF+RF work new_shoe", "LH+RH work trim"],
    ),
    (
        "Tally. Quarter crack in the left front. Reset the fronts. Nothing on the hinds yet.",
        ["LF finding crack @quarter", "LF+RF work reset"],
    ),
    (
        "Tally. Thrush in the near fore. New shoes in front, plain. Nothing in the off fore.",
        ["LF finding thrush", "LF+RF shoe_type plain", "LF+RF work new_shoe", "RF finding thrush absent"],
    ),
    ("Tally. Thrush in the near fore. Nothing on the off fore.", ["LF finding thrush", "RF finding thrush absent"]),
    (
        "Tally. Trimmed all four. Thrush in both hinds. Nothing up front.",
        ["LF+RF finding thrush absent", "LF+RF+LH+RH work trim", "LH+RH finding thrush"],
    ),
    (
        "Tally, who left both hinds behind her in a bog. New pair behind, steel.",
        ["LH+RH shoe_material steel", "LH+RH shoe_state lost", "LH+RH work new_shoe"],
    ),
    ("Tally. She's left both fronts in the bog. New pair in front.", ["LF+RF shoe_state lost", "LF+RF work new_shoe"]),
    ("Tally. He left his front shoes in the mud. New pair in front.", ["LF+RF shoe_state lost", "LF+RF work new_shoe"]),
    (
        "Tally. He left the near fore behind him in the gateway. New shoe on it.",
        ["LF shoe_state lost", "LF work new_shoe"],
    ),
    (
        "Tally. The mare left both her hind shoes out in the field. New shoes behind.",
        ["LH+RH shoe_state lost", "LH+RH work new_shoe"],
    ),
    (
        "Tally. I trimmed the hinds and left the fronts in the old steel.",
        ["LF+RF shoe_material steel", "LH+RH work trim"],
    ),
    (
        "Tally. I reckon it could be laminitis coming on, and he did have it two years back.",
        ["- finding laminitis history", "- finding laminitis suspected"],
    ),
    (
        "Tally. Could be navicular in both fores, and she had it before.",
        ["LF+RF finding navicular history", "LF+RF finding navicular suspected"],
    ),
    (
        "Tally. I think it's seedy toe in the near fore, he had it last year.",
        ["LF finding white_line_disease history", "LF finding white_line_disease suspected"],
    ),
    (
        "Tally. Possibly a corn in the off fore, he had one there last time.",
        ["RF finding corn history", "RF finding corn suspected"],
    ),
    ("Tally. Laminitis, they reckon she had it last spring.", ["- finding laminitis history"]),
]
test_nothing_put_on = reads(CASES)

test_no_stuff_of_a_shoe = reads(
    [
        ("There wasn't the steel left to nail to in the near hind, so both hinds trimmed.", ["LH+RH work trim"]),
        ("Trailers on the hinds, not steel, aluminium.", ["LH+RH shoe_material aluminum", "LH+RH shoe_type trailer"]),
    ],
    "Tansy. {}",
)

test_boots_on_the_legs_are_no_hoof_boots = reads(
    [
        ("Boots on his front legs.", []),
        ("He came in with boots on his front legs. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Came in with boots on his hind legs. Fronts reset.", ["LF+RF work reset"]),
        ("Boots up all four legs, the groom took them off. Trimmed the hinds.", ["LH+RH work trim"]),
        ("Boots on both front legs, had to wait. Reset the fronts.", ["LF+RF work reset"]),
        ("Boots on her legs. Hinds trimmed.", ["LH+RH work trim"]),
        ("Boots on the back legs. Fronts reset.", ["LF+RF work reset"]),
        ("Boots on all his legs. Trimmed the fronts.", ["LF+RF work trim"]),
        # here it says nothing
        ("Boots on his front feet, size two.", ["LF+RF shoe_size 2", "LF+RF shoe_type boot"]),
        ("Boots on both fronts.", ["LF+RF shoe_type boot"]),
        ("Boot on the near fore.", ["LF shoe_type boot"]),
        ("Boots on all four feet.", ["LF+RF+LH+RH shoe_type boot"]),
        ("Boots on the hinds.", ["LH+RH shoe_type boot"]),
    ]
)

test_refused_with_no_word_more = reads(
    [
        ("Hinds reset. Studs, no thanks.", ["LH+RH work reset"]),
        ("Hinds reset. Offered her studs. No, she said leave them.", ["LH+RH work reset"]),
        ("I offered leather pads. They said leave it.", []),
        ("Reset the fronts. Offered leather pads. No thank you, she said.", ["LF+RF work reset"]),
        ("Reset the fronts. Leather pads, they said don't bother.", ["LF+RF work reset"]),
        ("Hinds reset. Borium, no thanks, said the owner.", ["LH+RH work reset"]),
        ("Suggested bar shoes in front, she said leave it for now.", []),
        ("Hinds reset. Road nails, she said no.", ["LH+RH work reset"]),
        ("Reset the hinds. Wedge pads in front, no thank you.", ["LH+RH work reset"]),
        ("Fronts reset. Side clips, not today, she said.", ["LF+RF work reset"]),
        ("Fronts reset. Recommended rim pads. He said don't bother.", ["LF+RF work reset"]),
        ("Reset in front. Egg bars, owner said no.", ["LF+RF work reset"]),
        # here it says nothing
        ("Hinds reset. Studs, no problem.", ["LH+RH traction studs", "LH+RH work reset"]),
        ("Hinds reset. Studs in, no charge.", ["LH+RH traction studs", "LH+RH work reset"]),
        ("Leather pads on the fronts, no putty.", ["LF+RF packing putty absent", "LF+RF pad leather"]),
        ("Hinds reset. Studs, no thrush.", ["LH+RH finding thrush absent", "LH+RH traction studs", "LH+RH work reset"]),
        (
            "Fronts reset. Rim pads, she said no putty.",
            ["LF+RF packing putty absent", "LF+RF pad rim", "LF+RF work reset"],
        ),
        ("Thrush in the near fore, no thanks to the wet field.", ["LF finding thrush"]),
        ("She wanted me to reset the hinds, leave it with me I said.", ["LH+RH work reset"]),
        ("They asked for the fronts trimmed and I said leave them to me.", ["LF+RF work trim"]),
    ]
)
