"""The two feet of a pair, toe and heel of one foot, and what hardly occurs in front or behind."""

from __future__ import annotations

import csv
from importlib.resources import files

import pytest

from pipeline.judging.agreement import disagreements
from pipeline.judging.feet import sizes_apart, unusual_foot
from pipeline.record import WORDED_SLOTS, Status
from tests.judging.making import fact, judged


@pytest.mark.parametrize(
    ("one", "other", "apart"),
    [("1", "1", 0.0), ("1", "2", 1.0), ("0", "1", 1.0), ("00", "0", 1.0), ("000", "1", 3.0), ("0000", "0", 3.0),
     ("1.5", "3", 1.5), ("00-0", "1", 1.5), ("1-2", "2", 0.5)],
)  # fmt: skip
def test_how_far_sizes_lie_apart(one: str, other: str, apart: float) -> None:
    assert sizes_apart(one, other) == apart
    assert sizes_apart(other, one) == apart


@pytest.mark.parametrize(("left", "right", "odd"), [("1", "2", False), ("0", "1", False), ("1", "2.5", True),
                                                    ("00", "1", True)])  # fmt: skip
def test_a_pair_differs_by_a_size_at_most(left: str, right: str, odd: bool) -> None:
    for pair in (("LF", "RF"), ("LH", "RH")):
        facts = [fact("shoe_size", left, pair[0]), fact("shoe_size", right, pair[1])]
        sentence = f"Left and right shoe differ by more than a size: {left} and {right}."
        assert list(disagreements(facts)) == ([(facts, sentence)] if odd else [])


def test_fronts_and_hinds_may_differ_in_size() -> None:
    assert list(disagreements([fact("shoe_size", "2", "LF"), fact("shoe_size", "0", "LH")])) == []


@pytest.mark.parametrize(("heel", "odd"), [(52.0, False), (47.0, False), (46.5, True), (57.0, False), (57.5, True)])
def test_heel_and_toe_lie_within_five_degrees(heel: float, odd: bool) -> None:
    # Underrun heels: heel angle 5 degrees less than toe angle (Turner, Objective Assessment of Hoof Balance)
    facts = [fact("toe_angle", 52.0), fact("heel_angle", heel)]
    sentence = f"Toe 52 and heel {heel:g} degrees on LF are more than 5 degrees apart; are both right?"
    assert list(disagreements(facts)) == ([(facts, sentence)] if odd else [])


def test_heels_that_are_called_underrun_explain_it() -> None:
    facts = [fact("toe_angle", 52.0), fact("heel_angle", 44.0), fact("finding", "underrun_heels")]
    assert list(disagreements(facts)) == []
    steep = [fact("toe_angle", 52.0), fact("heel_angle", 60.0), fact("finding", "underrun_heels")]
    assert len(list(disagreements(steep))) == 1


def test_toe_of_one_foot_and_heel_of_another() -> None:
    assert list(disagreements([fact("toe_angle", 52.0, "LF"), fact("heel_angle", 44.0, "RF")])) == []


@pytest.mark.parametrize(
    ("slot", "value", "foot", "sentence"),
    [
        ("shoe_type", "trailer", "LF",
         "Trailers are for hind feet, and this says the left fore; is it the right foot?"),
        ("finding", "navicular", "RH",
         "Navicular trouble is nearly always in front, and this says the right hind; is it the right foot?"),
        ("finding", "sidebone", "LH", "Sidebone is nearly always in front, and this says the left hind; "
         "is it the right foot?"),
        ("finding", "club_foot", "RH", "A club foot is nearly always in front, and this says the right hind; "
         "is it the right foot?"),
    ],
)  # fmt: skip
def test_what_hardly_occurs_there(slot: str, value: str, foot: str, sentence: str) -> None:
    one = fact(slot, value, foot)
    assert unusual_foot(one) == sentence
    (seen,) = judged(one).facts
    assert (seen.flagged, seen.reasons) == (True, [sentence])
    other = {"L": "R", "R": "L"}[foot[0]] + {"F": "H", "H": "F"}[foot[1]]
    assert unusual_foot(fact(slot, value, other)) is None
    if slot == "finding":
        assert unusual_foot(fact(slot, value, None)) is None


@pytest.mark.parametrize("status", [Status.ABSENT, Status.HISTORY, Status.RESOLVED, Status.PLANNED])
def test_only_what_is_so_today_is_asked_about(status: Status) -> None:
    assert judged(fact("shoe_type", "trailer", "LF", status=status)).facts[0].reasons == []


@pytest.mark.parametrize("name", ["usual_feet.csv", "follow_up.csv"])
def test_the_tables_hold_values_of_the_record_and_say_why(name: str) -> None:
    rows = list(csv.DictReader((files("pipeline.judging") / name).read_text(encoding="utf-8").splitlines()))
    for row in rows:
        assert row.get("value", row.get("finding")) in WORDED_SLOTS[row.get("slot", "finding")]
        assert row["why"]
        assert set(row.get("feet", "").split()) in (set(), {"LF", "RF"}, {"LH", "RH"})
    assert len(rows) == len({tuple(row.values()) for row in rows})


@pytest.mark.parametrize(
    ("front", "hind", "odd"),
    [("2", "1", False), ("2", "2", False), ("1", "2", False), ("3", "1", False), ("1", "2.5", True), ("4", "1", True)],
)
def test_front_and_hind_shoe_lie_near(front: str, hind: str, odd: bool) -> None:
    facts = [fact("shoe_size", front, "LF"), fact("shoe_size", hind, "LH")]
    told = [sentence for _, sentence in disagreements(facts)]
    assert told == ([f"Front and hind shoe are far apart in size: {front} and {hind}."] if odd else [])


@pytest.mark.parametrize("feet", [("LF", "RF"), ("LH", "RH"), ("LF", "LH"), ("RF", "RH")])
@pytest.mark.parametrize(("one", "other", "odd"), [(6.0, 8.0, False), (7.0, 4.0, True), (5.0, 8.0, True)])
def test_nails_of_two_feet_lie_near(feet: tuple[str, str], one: float, other: float, odd: bool) -> None:
    facts = [fact("nails", one, feet[0]), fact("nails", other, feet[1])]
    told = [sentence for _, sentence in disagreements(facts)]
    assert told == ([f"{one:g} and {other:g} nails on {feet[0]} and {feet[1]}; are both right?"] if odd else [])


def test_a_pricked_foot_may_be_a_nail_or_two_short() -> None:
    facts = [fact("nails", 8.0, "RF"), fact("nails", 5.0, "RH"), fact("finding", "quicked", "RH")]
    assert not [sentence for _, sentence in disagreements(facts) if "nails" in sentence]
