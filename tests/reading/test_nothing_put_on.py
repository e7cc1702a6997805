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
