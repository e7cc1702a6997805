"""Hot shoeing is a manner of fitting: no foot is hot of it, and none was quicked."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read
from tests.reading.telling import told

FITTED = {
    "sized": ("Hot nailed size two shoes on the fronts.", ["LF+RF shoe_size 2"]),
    "those twos": ("Hot nailed those twos on the fronts.", ["LF+RF shoe_size 2"]),
    "kind": ("Hot nailed steel rims behind.", ["LH+RH shoe_material steel", "LH+RH shoe_type rim"]),
    "pair, then size": ("Hot nailed both hinds, size one.", ["LH+RH shoe_size 1"]),
    "subject": ("Both threes were nailed hot in front.", ["LF+RF shoe_size 3"]),
    "fitted": ("Fitted hot in front, six nails each.", ["LF+RF nails 6"]),
    "hot shoes": ("Hot shoes on the hinds, size one.", ["LH+RH shoe_size 1"]),
    "with him between": ("Shod him hot in front, six nails each.", ["LF+RF nails 6"]),
    "with the feet between": ("Did the fronts hot, hinds trimmed.", ["LH+RH work trim"]),
    "on hot": ("New shoes, went on hot, both fronts.", ["LF+RF work new_shoe"]),
    "seared": ("Hot seared the sole, off hind reset.", ["RH work reset"]),
}
OF_THE_FOOT = {
    "nailed him": ("I hot nailed him in the left front.", ["LF finding quicked"]),
    "nailed the foot": ("Hot nailed the off hind, pulled it.", ["RH finding quicked"]),
    "setting a shoe": ("Hot nailed her on the off hind setting the shoe.", ["RH finding quicked"]),
    "hot nail": ("Hot nail in the near fore.", ["LF finding quicked"]),
    "warm foot": ("Shod in front. The near fore's warm.", ["LF finding heat"]),
    "found hot": ("Found the off fore hot.", ["RF finding heat"]),
    "hot at a place": ("Left front, hot at the coronet.", ["LF finding heat @coronary_band"]),
}
OF_THE_DAY = {
    "so hot in the barn": ("Toe crack off fore. Heat's awful, ninety-six in that barn.", ["RF finding crack @toe"]),
    "so hot out": ("Corn near fore. The heat's terrible out there.", ["LF finding corn"]),
    "brutal": ("Corn near fore. Heat was brutal today.", ["LF finding corn"]),
    "the heat of it": ("Near fore, heat's awful in it.", ["LF finding heat ~severe"]),
    "the heat of it, bare": ("Near fore abscess. The heat's awful.", ["LF finding abscess", "LF finding heat ~severe"]),
    "brought in": ("Corn near fore. Some heat, came in from the yard.", ["LF finding corn", "LF finding heat"]),
    "when she came out": (
        "Corn near fore. Heat was bad when she came out.",
        ["LF finding corn", "LF finding heat ~severe"],
    ),
    "with a pulse": (
        "Near fore, heat was brutal, bounding pulse.",
        ["LF finding heat ~severe", "LF pulse bounding"],
    ),
}


@pytest.mark.parametrize("name", FITTED | OF_THE_FOOT | OF_THE_DAY)
def test_hot(read: Read, name: str) -> None:
    text, expected = (FITTED | OF_THE_FOOT | OF_THE_DAY)[name]
    (visit,) = read(text, *NAMES)
    assert told(visit) == expected
