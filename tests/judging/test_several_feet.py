"""What mostly one foot has, told of several, and treatments of feet of which nothing was found."""

from __future__ import annotations

import csv
from importlib.resources import files

import pytest

from pipeline.judging.agreement import disagreements
from pipeline.record import FEET, WORDED_SLOTS, Fact, Status
from tests.judging.making import fact

ROWS = list(csv.DictReader((files("pipeline.judging") / "single_feet.csv").read_text(encoding="utf-8").splitlines()))
_CARRIED = "foot: still in hand"


def on(slot: str, value: str | float, *feet: str, **more: object) -> list[Fact]:
    return [fact(slot, value, foot, **more) for foot in feet]


def sentences(*facts: Fact) -> list[str]:
    return [sentence for _, sentence in disagreements(facts)]


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['slot']} {row['value']}")
def test_every_row_asks_from_one_foot_more(row: dict[str, str]) -> None:
    value: str | float = row["value"] or 2.0
    most = int(row["most"])
    few, many = on(row["slot"], value, *FEET[:most]), on(row["slot"], value, *FEET[: most + 1])
    assert sentences(*few) == []
    ((group, sentence),) = disagreements(many)
    assert group == many
    assert "more feet than have it as a rule" in sentence


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['slot']} {row['value']}")
def test_every_row_is_of_the_record_and_has_a_source(row: dict[str, str]) -> None:
    assert row["value"] in WORDED_SLOTS.get(row["slot"], ("",))
    assert row["source"]


def test_the_sentence_names_the_thing_and_the_feet() -> None:
    (sentence,) = sentences(*on("finding", "close_nail", "LF", "RF"))
    assert sentence == (
        "Close nail is told of the left fore and the right fore, more feet than have it as a rule; is it so?"
    )
    (sentence,) = sentences(*on("lameness", 1.0, "LF"), *on("lameness", 2.0, "RF"))
    assert sentence.startswith("Lameness is told of the left fore and the right fore")


@pytest.mark.parametrize("status", [Status.HISTORY, Status.PLANNED, Status.ABSENT, Status.RESOLVED])
def test_what_is_not_there_today_may_be_of_several(status: Status) -> None:
    assert sentences(*on("finding", "abscess", "LF", "RF", status=status)) == []


def test_what_several_feet_may_have() -> None:
    assert sentences(*on("finding", "thrush", *FEET), *on("finding", "crack", "LF", "RF")) == []


def test_three_feet_treated_of_which_some_have_nothing() -> None:
    treated = on("treatment", "antiseptic", "LF", "RF", "LH")
    assert sentences(*on("finding", "scratches", "LF", "RF"), *treated) == [
        "Antiseptic is told of the left fore, the right fore and the left hind, but nothing was found on some of them; "
        "is it so?"
    ]
    assert sentences(*on("finding", "scratches", "LF", "RF", "LH"), *treated) == []
    assert sentences(*on("finding", "scratches", "LF"), *treated[:2]) == []


def test_hardener_on_all_feet_of_a_horse_without_findings() -> None:
    assert sentences(*on("treatment", "hardener", *FEET)) == []


def test_what_follows_while_the_same_feet_are_in_hand_is_asked_too() -> None:
    told = on("finding", "close_nail", "LF", "RF", span=(0, 10))
    carried = on("work", "new_shoe", "LF", "RF", span=(20, 30), rules=[_CARRIED])
    named = on("nails", 6.0, "RF", span=(40, 50))
    behind = on("nail_line", "good", "RF", span=(60, 70), rules=[_CARRIED])
    ((group, sentence),) = disagreements([*told, *carried, *named, *behind])
    assert group == [*told, *carried]
    assert sentence.endswith("is it so, and does what follows go for them too?")


def test_what_went_before_or_is_of_another_foot_is_not_asked() -> None:
    before = on("work", "new_shoe", "LF", span=(0, 10), rules=[_CARRIED])
    told = on("finding", "close_nail", "LF", "RF", span=(20, 30))
    other = on("nail_line", "good", "LH", span=(40, 50), rules=[_CARRIED])
    ((group, _),) = disagreements([*before, *told, *other])
    assert group == told
