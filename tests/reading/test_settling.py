"""What implies what, what is said twice, and the words of the work done."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "trim under shoes": ("Trimmed all four and reset the fronts.", ["LF+RF work reset", "LH+RH work trim"]),
    "pulled and reset": ("Pulled the front shoes and reset them.", ["LF+RF work reset"]),
    "said twice": ("Thrush in the left hind. Like I said, thrush in the left hind.", ["LH finding thrush"]),
    "grade says lame": ("He's lame on the left front, two out of five.", ["LF lameness 2"]),
    "last interval": ("Six weeks. Actually owner's away, so seven weeks.", ["- next_visit_weeks 7 planned"]),
    "exception": ("Six nails in all four, but the left hind only took five.", ["LF+RF+RH nails 6", "LH nails 5"]),
    "denied in the end": ("I thought he had a corn in the left front, but no, no corn.", ["LF finding corn absent"]),
    "removed": ("Pulled the hind shoes and left them off.", ["LH+RH work removed"]),
    "put back": ("Lost the left front, nailed it back on.", ["LF shoe_state lost", "LF work put_back"]),
    "new egg bars": ("New egg bars on the fronts.", ["LF+RF work new_shoe", "LF+RF shoe_type egg_bar"]),
    "bars alone": ("Egg bars on the fronts.", ["LF+RF shoe_type egg_bar"]),
    "trim no foot": ("Just a trim.", ["LF+RF+LH+RH work trim"]),
    "lost UK": ("Cast her off fore.", ["RF shoe_state lost"]),
    "worn": ("Fronts were worn thin.", ["LF+RF shoe_state worn"]),
    "sprung": ("Sprung shoe on the near hind.", ["LH shoe_state sprung"]),
    "pine tar oakum": (
        "Leather pad on the left front with pine tar and oakum.",
        ["LF pad leather", "LF packing oakum"],
    ),
    "studs": ("Studs in the hinds.", ["LH+RH traction studs"]),
    "road nails": ("Road nails on all four.", ["LF+RF+LH+RH traction road_nails"]),
    "aluminium": ("Aluminium plates on the fronts.", ["LF+RF shoe_material aluminum", "LF+RF shoe_type racing_plate"]),
    "quicked": ("Quicked him in the left hind, pulled the nail.", ["LH finding quicked"]),
    "forging": ("She's forging.", ["- gait forge"]),
    "sedated": ("He was sedated.", ["- manner sedated"]),
    "drained": (
        "Drained an abscess in the right front and poulticed it.",
        ["RF finding abscess", "RF treatment drained", "RF treatment poultice"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_the_kind_of_a_set_without_feet = reads(
    [
        ("New shoes, four of them, steel.", ["LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe"]),
        ("Reset, rim shoes.", ["LF+RF+LH+RH shoe_type rim", "LF+RF+LH+RH work reset"]),
        (
            "New shoes on the fronts, hinds reset, steel.",
            ["LF+RF work new_shoe", "LH+RH shoe_material steel", "LH+RH work reset"],
        ),
        ("Fronts reset. Egg bars he had.", ["LF+RF shoe_type egg_bar", "LF+RF work reset"]),
    ]
)
