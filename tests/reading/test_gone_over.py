"""A plan to go over to something else is for the feet that have its like, unless it names its own."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Two degree wedges in front. Hinds trimmed. If he's no better I'll go up to a three degree wedge.",
        ["LF+RF pad wedge", "LF+RF pad wedge planned", "LF+RF wedge 2", "LF+RF wedge 3 planned", "LH+RH work trim"],
    ),
    (
        "Tally. Four degree wedges behind. Fronts reset. Next time I'll drop him down to a two degree wedge.",
        ["LF+RF work reset", "LH+RH pad wedge", "LH+RH pad wedge planned", "LH+RH wedge 2 planned", "LH+RH wedge 4"],
    ),
    (
        "Tally. Rim pads in front. Hinds trimmed. If she's no better we'll step her up to full pads.",
        ["LF+RF pad full planned", "LF+RF pad rim", "LH+RH work trim"],
    ),
    (
        "Tally. Egg bars on the hinds. Fronts trimmed. Next time I'll bring him back to straight bars.",
        ["LF+RF work trim", "LH+RH shoe_type egg_bar", "LH+RH shoe_type straight_bar planned"],
    ),
    (
        "Tally. Mesh pads in front. Hinds, the same shoes back on. If she isn't right we'll go to full pads.",
        ["LF+RF pad full planned", "LF+RF pad mesh", "LH+RH work reset"],
    ),
    (
        "Tally. Rim pads under both fronts. Trimmed the hinds. If he's still sore I'd go to wedge pads.",
        ["LF+RF pad rim", "LF+RF pad wedge planned", "LH+RH work trim"],
    ),
    (
        "Tally. Rolled toes on the fronts. Corn in the left hind. Next time we'll go to egg bars.",
        ["LF+RF shoe_type egg_bar planned", "LF+RF shoe_type rolled_toe", "LH finding corn"],
    ),
    (
        "Tally. Two degree wedges on the left front. Hinds reset. If she's sore we'll go to three degree wedges.",
        ["LF pad wedge", "LF pad wedge planned", "LF wedge 2", "LF wedge 3 planned", "LH+RH work reset"],
    ),
    (
        "Tally. Plain shoes on the hinds. Thrush in the near fore. We might move to glue-ons if he can't hold those.",
        ["LF finding thrush", "LH+RH shoe_type glue_on planned", "LH+RH shoe_type plain"],
    ),
    (
        "Tally. Leather pads on both fores. Left hind has a bruise. If it's no better we'll switch to full pads.",
        ["LF+RF pad full planned", "LF+RF pad leather", "LH finding bruise"],
    ),
    (
        "Buck. Mesh pads in front. Hinds reset. If she's sore we'll go to full pads behind.",
        ["LF+RF pad mesh", "LH+RH pad full planned", "LH+RH work reset"],
    ),
    (
        "Buck. Mesh pads in front. Bruise in the left hind. If it's no better we'll put a full pad on it.",
        ["LF+RF pad mesh", "LH finding bruise", "LH pad full planned"],
    ),
    (
        "Buck. Trimmed the hinds. If he gets sore we'll go to boots.",
        ["LH+RH shoe_type boot planned", "LH+RH work trim"],
    ),
    (
        "Buck. Silicone under the fronts. Trimmed the hinds. Next time we'll go for putty.",
        ["LF+RF packing putty planned", "LF+RF packing silicone", "LH+RH work trim"],
    ),
]

test_gone_over = reads(CASES)

test_a_gait_that_is_gone = reads(
    [
        ("The overreaching she did back in the winter is gone.", ["- gait overreach resolved"]),
        ("The forging he did last year has stopped, that's gone.", ["- gait forge resolved"]),
        ("Her short striding from the spring has gone.", ["- gait short_stride resolved"]),
        ("The forging he did last year was loud.", ["- gait forge history"]),
    ]
)
