"""Another horse that is named because it has what this one has: seen on another day it is no visit, else asked about.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from pipeline.record import FlagKind, Visit
from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

_CORN, _RESET = "RF finding corn", "LF+RF+LH+RH work reset"


def _asked(visit: Visit) -> bool:
    return any(flag.kind is FlagKind.HORSE and "set beside" in flag.reason for flag in visit.flags)


@pytest.mark.parametrize(
    "beside",
    [
        "Buck has one on the near fore, mind, I saw it last week.",
        "Buck's got one too, same foot, I noticed it the other day.",
        "Buck has the same, I found it last visit.",
        "Buck was the same last time.",
    ],
)
def test_seen_on_another_day(read: Read, beside: str) -> None:
    (visit,) = read(f"Tally. Corn, off fore. {beside} Reset all round.", *NAMES)
    assert (visit.horse, told(visit)) == ("Tally", [_RESET, _CORN])


@pytest.mark.parametrize(
    ("beside", "its"),
    [
        ("Buck has one on the near fore. Reset all round.", ["LF finding corn", _RESET]),
        ("Buck's got one too. Reset all round.", [_RESET]),
        ("Buck's the same. Reset all round.", [_RESET]),
        ("Buck has the same trouble. Reset all round.", [_RESET]),
    ],
)
def test_whose_turn_it_is_may_be_asked(read: Read, beside: str, its: list[str]) -> None:
    tally, buck = read(f"Tally. Corn, off fore. {beside}", *NAMES)
    assert (told(tally), told(buck)) == ([_CORN], its)
    assert _asked(buck)
    assert not _asked(tally)


@pytest.mark.parametrize(
    ("turned", "its"),
    [
        ("Buck has a corn in the near fore. Reset all round.", ["LF finding corn", _RESET]),
        ("Buck's the same, reset all round.", [_RESET]),
        ("Buck, same again.", [_RESET]),
    ],
)
def test_turned_to_when_the_one_before_is_done(read: Read, turned: str, its: list[str]) -> None:
    tally, buck = read(f"Tally. Reset all round. {turned}", *NAMES)
    assert (told(tally), told(buck)) == ([_RESET], its)
    assert not _asked(buck)


test_so_had_the_other = reads(
    [
        ("Off fore had a loose shoe and so had the one behind it.", ["RF+RH shoe_state loose"]),
        ("Off fore had a loose shoe and so had the near fore.", ["LF+RF shoe_state loose"]),
        ("Off fore was loose and so was the off hind. Reset both.", ["RF+RH shoe_state loose", "RF+RH work reset"]),
        ("Near fore had a sprung shoe, so had the other.", ["LF+RF shoe_state sprung"]),
        ("Thrush in the near hind last time and so had the off.", ["LH+RH finding thrush history"]),
        ("Near fore lost, so was the off fore reset.", ["LF shoe_state lost", "RF work reset"]),
        (
            "Near fore was loose, so had to reset the near fore and the off fore.",
            ["LF shoe_state loose", "LF+RF work reset"],
        ),
    ],
    "Tansy. {}",
)
