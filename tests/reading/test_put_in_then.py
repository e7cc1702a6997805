"""What somebody only asked about, and what is planned of it on the feet named behind."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        (
            "Tally. Mild thrush in the off fore. Lady was asking about studs, and, er, if "
            "she goes eventing in the autumn we'll put them in the hinds."
        ),
        ["LH+RH traction studs planned", "RF finding thrush ~mild"],
    ),
    (
        ("Tally. Reset in front. She was asking about studs. If she's hunting him we'll put them in behind."),
        ["LF+RF work reset", "LH+RH traction studs planned"],
    ),
    (
        "Tally. Trimmed all round. They asked about boots, we'll try them on the fronts next time.",
        ["LF+RF shoe_type boot planned", "LF+RF+LH+RH work trim"],
    ),
    (
        "Tally. Reset all round. We talked about wedges, I'll put them on the fronts if he's no better.",
        ["LF+RF pad wedge planned", "LF+RF+LH+RH work reset"],
    ),
    ("Tally. Reset in front. She was asking about pads, I said no.", ["LF+RF work reset"]),
    (
        "Tally. Reset in front. They were asking about bar shoes. Six weeks.",
        ["- next_visit_weeks 6 planned", "LF+RF work reset"],
    ),
    ("Tally. Reset in front. She was asking about studs, we'll see how the hinds do.", ["LF+RF work reset"]),
    ("Tally. Owner was asking about thrush in the left hind, it's bad.", ["LH finding thrush ~severe"]),
]
test_put_in_then = reads(CASES)

test_he_will_get_them_then = reads(
    [
        (
            "They wanted studs in the hinds, I said not this time, so no studs. If it's wet in July he'll get them.",
            ["LH+RH traction studs absent", "LH+RH traction studs planned"],
        ),
        (
            "They wanted leather pads in front, I said not yet, so no pads. When the ground hardens she'll get them.",
            ["LF+RF pad leather planned"],
        ),
        ("No thrush in the hinds. If it rains he'll get them wet.", ["LH+RH finding thrush absent"]),
        ("No studs in the hinds. If it's wet he'll get them muddy.", ["LH+RH traction studs absent"]),
    ],
    "Tally. {}",
)

test_answered_with_we_will = reads(
    [
        (
            "The owner asked me about full pads in front, and I told her if those soles are no thicker, then we will.",
            ["LF+RF pad full planned"],
        ),
        ("She asked about wedge pads behind. I told her we'll do it if he's no better.", ["LH+RH pad wedge planned"]),
        (
            "Trainer wanted to know about egg bars on the hinds and I said we will next time.",
            ["LH+RH shoe_type egg_bar planned"],
        ),
        ("Owner asked me about bar shoes in front. I said we'll see.", []),
        ("Owner asked me about bar shoes in front. I said we will not.", []),
        ("Owner asked me about leather pads in front and I put them on.", ["LF+RF pad leather"]),
        ("They were asking about rim pads in front. I've put them on today.", ["LF+RF pad rim"]),
        ("They were asking about rim pads in front. I've put them on the list.", []),
    ],
    "Tally. {}",
)
