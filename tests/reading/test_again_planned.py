"""What a horse wore before and is to wear again is history and a plan; what is not to go on again is only history."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        ("Tally. The last farrier had mesh pads on him in front, and if the road work starts they'll go in again."),
        ["LF+RF pad mesh history", "LF+RF pad mesh planned"],
    ),
    (
        "Tally. She had egg bars in front all winter, and if she goes sore they'll go back on.",
        ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type egg_bar planned"],
    ),
    (
        "Tally. He'd studs in behind last time, they'll go in again next time.",
        ["LH+RH traction studs history", "LH+RH traction studs planned"],
    ),
    (
        "Tally. Had full pads on the fronts last year, and we'll put them back on if he's footy.",
        ["LF+RF pad full history", "LF+RF pad full planned"],
    ),
    (
        "Tally. Wore heart bars in front last spring, and if the heels drop they'll go back on.",
        ["LF+RF shoe_type heart_bar history", "LF+RF shoe_type heart_bar planned"],
    ),
    (
        "Tally. He had bar shoes on the hinds in January, if that crack runs they'll be going on again.",
        ["LH+RH shoe_type bar history", "LH+RH shoe_type bar planned"],
    ),
    (
        "Tally. Heart bars in front last time, I'd put them on again if he relapsed.",
        ["LF+RF shoe_type heart_bar history", "LF+RF shoe_type heart_bar planned"],
    ),
    (
        "Tally. Mesh pads in front last winter, and once the ground dries they'll be put back in.",
        ["LF+RF pad mesh history", "LF+RF pad mesh planned"],
    ),
    ("Tally. He had full pads in front last winter and they'll not go in again.", ["LF+RF pad full history"]),
    ("Tally. The front shoes were reset, they'll go on again next time.", ["LF+RF work reset"]),
    (
        "Tally. He'd putty under there last time. If the sole thins I'll put it in again.",
        ["- packing putty history", "- packing putty planned"],
    ),
    (
        "Tally. She had straight bars on the hinds last year, they may go on again come winter.",
        ["LH+RH shoe_type straight_bar history", "LH+RH shoe_type straight_bar planned"],
    ),
    (
        "Tally. New egg bars in front. They'll be back on again in six weeks.",
        ["- next_visit_weeks 6 planned", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
    ),
    ("Tally. Had thrush in the left hind last time, it could come back again.", ["LH finding thrush history"]),
    (
        "Tally. Full pads last winter in front, pads off today. Reset the fronts.",
        ["LF+RF pad full history", "LF+RF work reset"],
    ),
]

test_again_planned = reads(CASES)

test_another_foot_behind_one_that_healed = reads(
    [
        (
            "Tally. The puncture in the near fore frog has healed, that's gone. It's the off fore now. Crack.",
            ["LF finding puncture resolved @frog", "RF finding crack"],
        ),
        (
            "Tally. The abscess in the near fore has cleared up. It's the near hind today. Thrush in the frog.",
            ["LF finding abscess resolved", "LH finding thrush @frog"],
        ),
        (
            "Tally. The thrush in the near hind is gone. It's in the off hind now.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        (
            "Tally. Corn in the near fore last time. It's the off fore now.",
            ["LF finding corn history", "RF finding corn"],
        ),
    ]
)

test_the_rest_tomorrow = reads(
    [
        ("Trimmed the near side. Off side tomorrow.", ["LF+LH work trim", "RF+RH work trim planned"]),
        ("Left side reset, right side tomorrow.", ["LF+LH work reset", "RF+RH work reset planned"]),
        ("Trimmed the fronts. Hinds tomorrow.", ["LF+RF work trim", "LH+RH work trim planned"]),
        ("Trimmed the near fore today, the off fore tomorrow.", ["LF work trim", "RF work trim planned"]),
        ("Reset the fronts today and the back ones tomorrow.", ["LF+RF work reset", "LH+RH work reset planned"]),
        ("Trimmed the near side and reset the off side.", ["LF+LH work trim", "RF+RH work reset"]),
        ("Near fore reset. Trimmed the off side.", ["LF work reset", "RF work trim"]),
        ("Thrush in the near fore. Off fore tomorrow.", ["LF finding thrush"]),
        ("Trimmed the fronts, the vet is looking at the hinds tomorrow.", ["LF+RF work trim"]),
        # whether the hinds are trimmed, too, is asked
        ("Trimmed. Hinds tomorrow.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)
