"""The same ones nailed back are a reset; the inner and the outer of two places is the side of it."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Fronts off, nailed the same ones back, six apiece.", ["LF+RF nails 6", "LF+RF work reset"]),
    (
        "Tally. Off fore was loose, so I took the pair of fores off and nailed the same ones back, six apiece.",
        ["LF+RF nails 6", "LF+RF work reset", "RF shoe_state loose"],
    ),
    ("Tally. Hinds off and the same pair back on.", ["LH+RH work reset"]),
    (
        "Tally. New for the fronts, but the hinds got their old ones back on.",
        ["LF+RF work new_shoe", "LH+RH work reset"],
    ),
    ("Tally. I reset their old ones back on behind.", ["LH+RH work reset"]),
    ("Tally. Fronts, old ones nailed back on, six apiece.", ["LF+RF nails 6", "LF+RF work reset"]),
    ("Tally. Fronts trimmed, the old ones back in the truck.", ["LF+RF work trim"]),
    ("Tally. Loose off hind, put back tight with six nails.", ["RH nails 6", "RH shoe_state loose", "RH work reset"]),
    ("Tally. Near fore loose, nailed it back tight.", ["LF shoe_state loose", "LF work reset"]),
    ("Tally. Took the fronts off, tacked the same ones back on.", ["LF+RF work reset"]),
    ("Tally. Near hind crack in the quarter, the outer one.", ["LH finding crack @lateral_quarter"]),
    ("Buck. Bruise at the heel of the near fore, the inner one.", ["LF finding bruise @medial_heel"]),
    ("Buck. Flare at the quarter of the left hind, the outer one.", ["LH finding flare @lateral_quarter"]),
    ("Buck. Corn in the heel of the off fore, the inside one.", ["RF finding corn @medial_heel"]),
    (
        "Buck. Crack at the quarter of the right front, the outside one, mild.",
        ["RF finding crack @lateral_quarter ~mild"],
    ),
]

test_same_ones = reads(CASES)

test_back_on = reads(
    [
        ("Fores were good to go again, so the same shoes are back on.", ["LF+RF work reset"]),
        ("The same set's back on in front, six nails each.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("His own shoes are back on behind.", ["LH+RH work reset"]),
        ("Left front was lost, the same shoe's back on.", ["LF shoe_state lost", "LF work put_back"]),
        ("The old shoes are on the bench. Trimmed the hinds.", ["LH+RH work trim"]),
    ]
)

test_which_foot_the_one_of_before_was_on = reads(
    [
        (
            "Canker right hind, bad. Left hind has no canker. He had the canker in January too, right hind, mild.",
            ["LH finding canker absent", "RH finding canker history ~mild", "RH finding canker ~severe"],
        ),
        (
            "Thrush in the near hind, the off hind has no thrush. The thrush was there last time too.",
            ["LH finding thrush", "LH finding thrush history", "RH finding thrush absent"],
        ),
        (
            "No abscess in the near fore so far. If it does turn into an abscess we'll poultice it.",
            ["LF finding abscess absent", "LF treatment poultice planned"],
        ),
    ],
    "Buck. {}",
)

test_the_same_size_of_nail = reads(
    [
        (
            "Fronts: reset, nails five slims, three a side. Hinds: reset, four a side, same size nail.",
            ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5 slim", "LF+RF+LH+RH work reset", "LH+RH nails 8"],
        ),
        (
            "Fronts six nails, size five. Hinds eight nails, same size nails.",
            ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5", "LH+RH nails 8"],
        ),
        (
            "Reset in front, size five nails. Left hind new, not the same size nail.",
            ["LF+RF nail_size 5", "LF+RF work reset", "LH work new_shoe"],
        ),
    ],
    "Tally. {}",
)

test_same_place_or_time_is_no_same_state = reads(
    [
        (
            "Lost the left hind and sprung the right hind, both in the same field.",
            ["LH shoe_state lost", "RH shoe_state sprung"],
        ),
        (
            "Lost the near fore and loosened the off fore, both in the same bog.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        ("Sprung the near fore, off fore the same.", ["LF+RF shoe_state sprung"]),
    ],
    "Tally. {}",
)

test_denied_on_feet_that_had_no_finding = reads(
    [
        (
            "Left front has a bruise. No borium this time, not on any foot.",
            ["LF finding bruise", "LF+RF+LH+RH traction borium absent"],
        ),
        ("Bruise in the near fore. No pads today, not on either front.", ["LF finding bruise"]),
        (
            "Bruise in the near fore. No thrush this time, not in either hind.",
            ["LF finding bruise", "LH+RH finding thrush absent"],
        ),
        ("Bruise in the near fore, not in the off fore.", ["LF finding bruise", "RF finding bruise absent"]),
    ],
    "Tally. {}",
)
