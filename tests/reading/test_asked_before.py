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
