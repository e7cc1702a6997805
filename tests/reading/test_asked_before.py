"""A question answered with another time tells of that time, and nothing is taken back."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Frog support pads? No, that was the time before, today it's pour-ins on both fronts.",
        ["- pad frog_support history", "LF+RF pad pour_in"],
    ),
    ("Tally. Fronts reset. Leather pads? No, that was last time.", ["LF+RF pad leather history", "LF+RF work reset"]),
    (
        "Tally. Egg bars on the fronts? No, that was last year, heart bars now.",
        ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type heart_bar"],
    ),
    ("Tally. Reset in front. Wedges? No, those were last winter.", ["LF+RF pad wedge history", "LF+RF work reset"]),
    ("Tally. Studs in the hinds? No, that was last season.", ["LH+RH traction studs history"]),
    ("Tally. Left front. A bar shoe? No, it had that last summer.", ["LF shoe_type bar history"]),
    ("Buck. Thrush in the near fore? No, that was last spring.", ["LF finding thrush history"]),
    ("Buck. Quarter crack in the off hind? No, that was last visit.", ["RH finding crack history @quarter"]),
    (
        "Buck. Glue-ons in front? No, those were last trip, plain steel now.",
        ["LF+RF shoe_material steel", "LF+RF shoe_type glue_on history", "LF+RF shoe_type plain"],
    ),
    ("Buck. Side clips on the hinds? Nope, that was last time.", ["LH+RH clips side history"]),
    ("Buck. Thrush in the near fore? No.", ["LF finding thrush absent"]),
    ("Buck. Size two in front? No, three.", ["LF+RF shoe_size 3"]),
]

test_asked_before = reads(CASES)

test_what_was_thought_is_denied = reads(
    [
        (
            "They thought there was a keratoma in the right front but I couldn't find it.",
            ["RF finding keratoma absent"],
        ),
        ("Off fore, I was half thinking laminitis, but it isn't that.", ["RF finding laminitis absent"]),
        (
            "Near fore, I'd an idea it might be seedy toe. No, it isn't.",
            ["LF finding white_line_disease absent"],
        ),
        ("The owner was worried about an abscess in the off fore. I don't see one.", ["RF finding abscess absent"]),
        (
            "There's a puncture she was on about, left hind. I looked and there isn't one.",
            ["LH finding puncture absent"],
        ),
        ("I suspect an abscess in the left hind. I couldn't find it.", ["LH finding abscess suspected"]),
        ("Lost the left front shoe, I couldn't find it.", ["LF shoe_state lost"]),
        ("Bruise in the left front. I couldn't see it for mud.", ["LF finding bruise"]),
        ("Might be a corn in the near fore. It isn't bad.", ["LF finding corn suspected ~mild"]),
    ],
    "Buck. {}",
)
