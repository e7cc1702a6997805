"""Not every foot: nothing is denied and nothing said of any of them, unless what follows says which are meant."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read
from tests.reading.telling import told

ASKED = "Heard that not every foot is meant, but not which."
WHICH = {
    "not every": ("Not every foot has thrush.", []),
    "not all of": ("Not all of the feet have thrush.", []),
    "named horse": ("Not all of Tally's feet are flared.", []),
    "every shoe": ("Not every shoe was sprung.", []),
    "told before": ("Near hind, corn. Not every foot has thrush.", ["LH finding corn"]),
    "behind the finding": ("Thrush about, but not in all four.", ["- finding thrush"]),
    "by a pronoun": ("Bruises, not all four have them.", ["- finding bruise"]),
    "denied before": ("She doesn't have any cracks but hasn't thrush in every foot.", ["- finding crack absent"]),
    "not in all": ("He doesn't have a flare in all four.", []),
    "shared out": ("The feet aren't all flared.", []),
    "both of them": ("Not both of the hinds are contracted.", []),
}
SAID = {
    "just those": ("Not all four have thrush, just the fronts.", ["LF+RF finding thrush"]),
    "only one": ("Not both fronts were loose, only the near one.", ["LF shoe_state loose"]),
    "not both": ("Bruise in the hinds, not both, just the left.", ["LH finding bruise"]),
    "in a sentence of its own": (
        "Hinds have seedy toe. Not both, only the off one.",
        ["RH finding white_line_disease"],
    ),
    "behind": ("Heat, not in every foot, only in the hinds.", ["LH+RH finding heat"]),
}
DENIED = {
    "no": ("No heat in all four.", ["LF+RF+LH+RH finding heat absent"]),
    "not any": ("There wasn't any thrush in all four feet.", ["LF+RF+LH+RH finding thrush absent"]),
    "not one": ("Not one foot has thrush.", ["LF+RF+LH+RH finding thrush absent"]),
    "another clause": ("He didn't need shoes, so trimmed all four.", ["LF+RF+LH+RH work trim"]),
    "nails": ("Not all four nails held, thrush in the off hind.", ["RH finding thrush"]),
    "not bad": ("He's not bad on his feet, all four trimmed.", ["LF+RF+LH+RH work trim"]),
}


@pytest.mark.parametrize("name", WHICH)
def test_which_feet_is_asked(read: Read, name: str) -> None:
    text, expected = WHICH[name]
    (visit,) = read(text, *NAMES)
    assert told(visit) == expected
    assert ASKED in [flag.reason for flag in visit.flags]


@pytest.mark.parametrize("name", SAID | DENIED)
def test_which_feet_is_known(read: Read, name: str) -> None:
    text, expected = (SAID | DENIED)[name]
    (visit,) = read(text, *NAMES)
    assert told(visit) == expected
    assert ASKED not in [flag.reason for flag in visit.flags]


def test_the_memo_ends_with_the_feet_that_are_counted(read: Read) -> None:
    (visit,) = read("Greasy heel, so scratches, on three feet", *NAMES)
    assert told(visit) == ["- finding scratches"]
    assert "Heard feet that are counted, but not which they are." in [flag.reason for flag in visit.flags]
