"""A finding, its foot, and a foot without it; never there is not gone; when to come again; a doubted grade."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Thrush. Left hind. None in the right hind.", ["LH finding thrush", "RH finding thrush absent"]),
    ("Tally. Thrush. Left hind. Right hind none.", ["LH finding thrush", "RH finding thrush absent"]),
    ("Tally. Corn. Off fore. Nothing in the near fore.", ["LF finding corn absent", "RF finding corn"]),
    ("Tally. Bruise. Right front. None in the left front.", ["LF finding bruise absent", "RF finding bruise"]),
    ("Tally. Thrush then. Near fore none, near hind a bit.", ["LF finding thrush absent", "LH finding thrush ~mild"]),
    ("Tally. Never had thrush in the left hind, and there's none now.", ["LH finding thrush absent"]),
    ("Tally. Never had thrush and there's none today, any foot.", ["LF+RF+LH+RH finding thrush absent"]),
    ("Tally. Had thrush in the left hind, and there's none now.", ["LH finding thrush resolved"]),
    ("Tally. Wants doing again in five.", ["- next_visit_weeks 5 planned"]),
    ("Tally. Next time in six.", ["- next_visit_weeks 6 planned"]),
    ("Buck. Due again in seven.", ["- next_visit_weeks 7 planned"]),
    ("Buck. Booked for six.", ["- next_visit_weeks 6 planned"]),
    ("Buck. Next trip in five, or sooner.", ["- next_visit_weeks 5 planned"]),
    ("Buck. Seen again in four.", ["- next_visit_weeks 4 planned"]),
    ("Buck. Next visit in eight.", ["- next_visit_weeks 8 planned"]),
    ("Buck. Lame on the right hind, maybe a two.", ["RH lameness 2 suspected"]),
    ("Buck. Lame on the off fore, about a three.", ["RF lameness 3"]),
    ("Buck. Both fronts down for six nails.", ["LF+RF nails 6"]),
]

test_heading_foot = reads(CASES)
