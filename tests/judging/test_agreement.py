"""Facts of one visit that cannot all be right, and facts that can."""

from __future__ import annotations

import pytest

from pipeline.judging.agreement import disagreements
from pipeline.record import Fact, FlagKind, Status
from tests.judging.making import fact, judged

SINGLE: dict[str, tuple[str | float, str | float, str]] = {
    "shoe_size": ("1", "2", "Two values for shoe size on LF: 1 and 2. Which one is right?"),
    "nails": (6.0, 7.0, "Two values for nails on LF: 6 and 7. Which one is right?"),
    "nail_size": ("5", "5 slim", "Two values for nail size on LF: 5 and 5 slim. Which one is right?"),
    "toe_length": (85.7, 88.9, "Two values for toe length on LF: 85.7 and 88.9. Which one is right?"),
    "wedge": (2.0, 3.0, "Two values for wedge on LF: 2 and 3. Which one is right?"),
    "pulse": ("normal", "bounding", "Two values for pulse on LF: normal and bounding. Which one is right?"),
    "lameness": (1.0, 2.0, "Two values for lameness on LF: 1 and 2. Which one is right?"),
}


@pytest.mark.parametrize("slot", SINGLE)
def test_two_values_of_one_thing(slot: str) -> None:
    one, other, sentence = SINGLE[slot]
    facts = [fact(slot, one), fact(slot, other)]
    assert list(disagreements(facts)) == [(facts, sentence)]


@pytest.mark.parametrize("slot", SINGLE)
@pytest.mark.parametrize("status", [Status.HISTORY, Status.PLANNED])
def test_another_time_is_no_contradiction(slot: str, status: Status) -> None:
    one, other, _ = SINGLE[slot]
    assert list(disagreements([fact(slot, one), fact(slot, other, status=status)])) == []


@pytest.mark.parametrize("slot", sorted(SINGLE.keys() - {"lameness"}))  # of which mostly one foot has any
def test_another_foot_is_no_contradiction(slot: str) -> None:
    one, other, _ = SINGLE[slot]
    assert list(disagreements([fact(slot, one, "LF"), fact(slot, other, "RH")])) == []


def test_the_whole_horse_is_named_without_a_foot() -> None:
    (found,) = disagreements([fact("body_condition", 5.0, None), fact("body_condition", 6.0, None)])
    assert found[1] == "Two values for body condition: 5 and 6. Which one is right?"


@pytest.mark.parametrize("status", [Status.PRESENT, Status.SUSPECTED])
def test_found_and_denied(status: Status) -> None:
    facts = [fact("finding", "white_line_disease", status=status),
             fact("finding", "white_line_disease", status=Status.ABSENT)]  # fmt: skip
    ((group, sentence),) = disagreements(facts)
    assert sentence == "White line disease on LF is both found and denied. Which one is right?"
    assert {f.status for f in group} == {status, Status.ABSENT}


@pytest.mark.parametrize("status", [Status.HISTORY, Status.RESOLVED, Status.PLANNED])
def test_denied_today_and_of_another_time(status: Status) -> None:
    facts = [fact("finding", "thrush", status=status), fact("finding", "thrush", status=Status.ABSENT)]
    assert list(disagreements(facts)) == []


def test_denied_in_the_other_foot() -> None:
    facts = [fact("finding", "thrush", "LH"), fact("finding", "thrush", "RH", status=Status.ABSENT)]
    assert list(disagreements(facts)) == []


@pytest.mark.parametrize("work", ["trim", "removed"])
@pytest.mark.parametrize(
    ("slot", "value"), [("nails", 6.0), ("shoe_size", "1"), ("clips", "toe"), ("traction", "studs")]
)
def test_a_shoe_on_a_bare_foot(work: str, slot: str, value: str | float) -> None:
    facts = [fact("work", work), fact(slot, value)]
    assert list(disagreements(facts)) == [(facts, "The foot was left bare, yet a shoe is described on LF.")]


def test_a_shoe_on_the_shod_foot_beside_a_bare_one() -> None:
    assert list(disagreements([fact("work", "trim", "LH"), fact("work", "reset"), fact("nails", 6.0)])) == []


@pytest.mark.parametrize(
    ("one", "other", "named"),
    [("reset", "new_shoe", "new shoe and reset"), ("removed", "reset", "removed and reset"),
     ("put_back", "new_shoe", "new shoe and put back")],
)  # fmt: skip
def test_two_kinds_of_work(one: str, other: str, named: str) -> None:
    facts = [fact("shoe_state", "lost"), fact("work", one), fact("work", other)]
    assert [sentence for _, sentence in disagreements(facts)] == [f"Two kinds of work on LF: {named}."]


@pytest.mark.parametrize("slot", ["toe_angle", "heel_angle"])
@pytest.mark.parametrize(("left", "right", "odd"), [(50.0, 54.0, False), (50.0, 54.5, True), (56.0, 50.0, True)])
def test_left_and_right_angle(slot: str, left: float, right: float, odd: bool) -> None:
    for pair in (("LF", "RF"), ("LH", "RH")):
        facts = [fact(slot, left, pair[0]), fact(slot, right, pair[1])]
        sentence = f"Left and right {slot.replace('_', ' ')} differ by more than 4 degrees."
        assert list(disagreements(facts)) == ([(facts, sentence)] if odd else [])


def test_front_and_hind_angles_may_differ() -> None:
    assert list(disagreements([fact("toe_angle", 50.0, "LF"), fact("toe_angle", 58.0, "LH")])) == []


def test_a_contradiction_flags_the_visit_and_both_facts_and_drops_neither() -> None:
    first: Fact = fact("nails", 6.0, span=(0, 9), quote="six nails")
    second: Fact = fact("nails", 7.0, span=(20, 31), quote="seven nails")
    other = fact("finding", "thrush")
    seen = judged(first, second, other)
    sentence = "Two values for nails on LF: 6 and 7. Which one is right?"
    assert [f.value for f in seen.facts] == [6.0, 7.0, "thrush"]
    assert [f.flagged for f in seen.facts] == [True, True, False]
    assert [f.reasons for f in seen.facts] == [[sentence], [sentence], []]
    assert all(f.confidence <= 0.5 for f in seen.facts[:2])
    (flag,) = seen.flags
    assert (flag.kind, flag.reason, flag.span, flag.quote) == (
        FlagKind.CONTRADICTION, sentence, (0, 31), "seven nails",
    )  # fmt: skip


@pytest.mark.parametrize(
    "works", [("trim", "reset"), ("trim", "new_shoe"), ("put_back", "reset"), ("removed", "new_shoe")]
)
def test_two_kinds_of_work_on_one_foot(works: tuple[str, str]) -> None:
    facts = [fact("shoe_state", "lost"), *(fact("work", work) for work in works)]
    told = [sentence for _, sentence in disagreements(facts)]
    assert f"Two kinds of work on LF: {' and '.join(sorted(works)).replace('_', ' ')}." in told


def test_pulled_and_trimmed_go_together() -> None:
    assert list(disagreements([fact("work", "removed"), fact("work", "trim")])) == []


@pytest.mark.parametrize("lame", [fact("gait", "lame", "LF"), fact("lameness", 2.0, "LF")])
def test_sound_and_lame_on_one_day(lame: Fact) -> None:
    facts = [fact("gait", "sound", None), lame]
    assert list(disagreements(facts)) == [(facts, "The horse is both sound and lame today. Which one is right?")]


def test_sound_today_and_lame_before() -> None:
    before = fact("lameness", 2.0, "LF", status=Status.HISTORY)
    assert list(disagreements([fact("gait", "sound", None), before])) == []
    assert list(disagreements([fact("gait", "sound", None), fact("lameness", 0.0, "LF")])) == []


def test_nothing_and_something_by_the_testers() -> None:
    facts = [fact("tester", "none"), fact("tester", "strong", zone="toe")]
    ((group, sentence),) = disagreements(facts)
    assert (group, sentence) == (facts, "Several answers to the testers on LF: none and strong. Which one is right?")


@pytest.mark.parametrize(
    "others",
    [
        [fact("tester", "none", zone="heel"), fact("tester", "mild", zone="toe")],
        [fact("tester", "none"), fact("tester", "mild", "RF")],
        [fact("tester", "mild", zone="heel"), fact("tester", "strong", zone="toe")],
    ],
)
def test_answers_that_go_together(others: list[Fact]) -> None:
    assert list(disagreements(others)) == []
