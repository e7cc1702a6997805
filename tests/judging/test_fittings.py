"""Set-ups of a foot that cannot go together, and those that can."""

from __future__ import annotations

import pytest

from pipeline.judging.agreement import disagreements
from pipeline.record import Fact, Status
from tests.judging.making import fact


def sentences(*facts: Fact) -> list[str]:
    return [sentence for _, sentence in disagreements(facts)]


@pytest.mark.parametrize("work", ["trim", "removed"])
@pytest.mark.parametrize(
    ("slot", "value"),
    [("nails", 6.0), ("nail_size", "5"), ("nail_line", "good"), ("shoe_size", "1"), ("clips", "toe"),
     ("traction", "studs"), ("shoe_material", "steel"), ("wedge", 3.0), ("shoe_type", "egg_bar")],
)  # fmt: skip
def test_what_only_a_shoe_has_on_a_bare_foot(work: str, slot: str, value: str | float) -> None:
    facts = [fact("work", work), fact(slot, value)]
    assert list(disagreements(facts)) == [(facts, "The foot was left bare, yet a shoe is described on LF.")]


def test_a_boot_goes_over_a_bare_foot() -> None:
    assert sentences(fact("work", "trim"), fact("shoe_type", "boot")) == []


def test_what_is_planned_for_a_bare_foot_is_no_contradiction() -> None:
    assert sentences(fact("work", "trim"), fact("nails", 6.0, status=Status.PLANNED)) == []


@pytest.mark.parametrize("pad", ["full", "rim", "mesh", "half_mesh", "leather", "frog_support"])
def test_a_pad_under_a_bare_foot(pad: str) -> None:
    facts = [fact("work", "trim"), fact("pad", pad)]
    assert sentences(*facts) == ["The foot was left bare, yet a pad is described on LF."]


def test_a_pad_that_no_shoe_holds() -> None:
    assert sentences(fact("pad", "leather", "RH")) == [
        "A leather pad on RH, but no shoe that holds it was understood; is it the right foot?"
    ]


@pytest.mark.parametrize(
    ("slot", "value"), [("work", "reset"), ("work", "new_shoe"), ("shoe_size", "1"), ("nails", 6.0), ("clips", "toe")]
)
def test_a_pad_under_a_shoe(slot: str, value: str | float) -> None:
    assert sentences(fact("pad", "leather"), fact(slot, value)) == []


def test_a_shoe_on_another_foot_holds_no_pad_here() -> None:
    assert len(sentences(fact("pad", "leather", "LF"), fact("work", "reset", "RF"))) == 1


def test_what_is_poured_in_needs_no_shoe() -> None:
    assert sentences(fact("pad", "pour_in")) == []
    assert sentences(fact("pad", "pour_in"), fact("work", "trim")) == []


def test_a_wedge_without_degrees() -> None:
    wedge = fact("pad", "wedge")
    assert sentences(wedge, fact("work", "reset")) == ["A wedge on LF, but no degrees were understood; how many?"]
    assert sentences(wedge, fact("work", "reset"), fact("wedge", 3.0)) == []
    assert len(sentences(wedge, fact("work", "reset"), fact("wedge", 3.0, "RF"))) == 1


def test_a_lost_shoe_and_a_mere_trim() -> None:
    lost, trim = fact("shoe_state", "lost"), fact("work", "trim")
    assert sentences(lost, trim) == ["The shoe was lost on LF and the foot only trimmed; was it left bare?"]
    assert sentences(lost, fact("work", "put_back")) == []
    assert sentences(lost, fact("work", "new_shoe")) == []
    assert sentences(lost, trim.model_copy(update={"foot": "RF"})) == []
    assert sentences(lost.model_copy(update={"status": Status.HISTORY}), trim) == []


def test_a_shoe_put_back_that_was_not_lost() -> None:
    back = fact("work", "put_back")
    assert sentences(back) == ["A shoe was put back on LF, but no loss was understood; was it lost, or reset?"]
    assert sentences(back, fact("shoe_state", "lost", "RF")) != []


@pytest.mark.parametrize("status", [Status.PRESENT, Status.HISTORY])
def test_a_lost_shoe_put_back(status: Status) -> None:
    assert sentences(fact("work", "put_back"), fact("shoe_state", "lost", status=status)) == []
