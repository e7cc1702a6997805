"""Comparisons are read from words, and whatever is not understood is said."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.errors import SettingsError
from pipeline.keeping.seen import Comparison
from pipeline.using.comparing import comparisons, shoe_size_ranks
from pipeline.vocabulary import load_vocabulary

WORDS = load_vocabulary()


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("toe angle below 48", Comparison("toe_angle", "<", 48.0)),
        ("toe_angle<48", Comparison("toe_angle", "<", 48.0)),
        ("Toe Angle at least 48 degrees", Comparison("toe_angle", ">=", 48.0)),
        ("hoof angle over 52°", Comparison("toe_angle", ">", 52.0)),
        ("toe length over 3 1/2 in", Comparison("toe_length", ">", 88.9)),
        ("toe length over 3½ inches", Comparison("toe_length", ">", 88.9)),
        ('toe length >= 3.5"', Comparison("toe_length", ">=", 88.9)),
        ("toe length under 9 cm", Comparison("toe_length", "<", 90.0)),
        ("sole depth < 3/8 inch", Comparison("sole_depth", "<", 9.525)),
        ("heel height is 40 mm", Comparison("heel_height", "=", 40.0)),
        ("nails is not 6", Comparison("nails", "!=", 6.0)),
        ("lameness >= 2", Comparison("lameness", ">=", 2.0)),
        ("next visit over 8 weeks", Comparison("next_visit_weeks", ">", 8.0)),
        ("next visit weeks = 1 fortnight", Comparison("next_visit_weeks", "=", 2.0)),
    ],
)
def test_words_and_signs_mean_the_same(said: str, expected: Comparison) -> None:
    assert comparisons(said, WORDS) == [expected]


def test_between_takes_both_ends_in() -> None:
    assert comparisons("toe length between 3 and 3.5 inches", WORDS) == [
        Comparison("toe_length", ">=", 76.2),
        Comparison("toe_length", "<=", 88.9),
    ]


def test_shoe_sizes_are_in_their_own_order() -> None:
    (below,) = comparisons("shoe size below 00", WORDS)
    assert {"0000", "000", "000-00"} <= set(below.among or ())
    assert not {"00", "00-0", "0"} & set(below.among or ())
    ranks = shoe_size_ranks()
    assert ranks["0000"] < ranks["00"] < ranks["00-0"] < ranks["0"] < ranks["1"] < ranks["1.5"] < ranks["12"]


def test_slim_nails_count_as_their_size() -> None:
    (nails,) = comparisons("nail size = 5", WORDS)
    assert nails.among == ("5", "5 slim")


@pytest.mark.parametrize(
    ("said", "message"),
    [
        ("toe angle", "compares nothing"),
        ("", "compares nothing"),
        ("ear length below 3", "'ear length' cannot be compared"),
        ("toe angle below 48 mm", "A toe angle is counted in degrees; 'mm' does not fit"),
        ("nails over 5 inches", "nails has no unit"),
        ("toe length under 3", "Say inches if you mean inches"),
        ("toe angle below 400", "lie between 10 and 90 degrees"),
        ("toe length < 3/0 in", "no toe length"),
        ("toe angle < x; drop table facts", "is no number"),
        ("shoe size above 77", "'77' is no shoe size"),
        ("toe angle < 48 or 1=1", "compares nothing"),
    ],
)
def test_what_is_not_understood_is_said(said: str, message: str) -> None:
    with pytest.raises(SettingsError, match=message):
        comparisons(said, WORDS)


@given(st.text(alphabet="toe angle<>=!below 48/½\"'; between and 3.5 inches", max_size=40))
def test_any_words_are_either_understood_or_refused(said: str) -> None:
    try:
        found = comparisons(said, WORDS)
    except SettingsError:
        return
    assert all(one.sign in {"<", "<=", "=", "!=", ">=", ">"} for one in found)
