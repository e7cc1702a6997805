"""Today beside the horse's last visit."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging import LastVisit, judge
from pipeline.record import Fact, FlagKind, Status, Transcript, Visit
from tests.judging.making import fact, visit

MARCH = date(2026, 3, 3)  # the visit of ``making`` is on 14 April


def beside(last: list[Fact], *today: Fact, day: date = MARCH) -> Visit:
    (seen,) = judge([visit(*today)], Transcript(text=""), lambda _: LastVisit(day, last))
    return seen


def told(seen: Visit) -> list[str]:
    return [flag.reason for flag in seen.flags]


@pytest.mark.parametrize(
    ("slot", "before", "now", "sentence"),
    [
        ("shoe_size", "0", "2", "Shoe size 2 on LF; on 3 March 2026 it was 0. Is that right?"),
        ("shoe_size", "00", "1", "Shoe size 1 on LF; on 3 March 2026 it was 00. Is that right?"),
        ("toe_angle", 50.0, 55.0, "Toe angle 55 on LF; on 3 March 2026 it was 50. Is that right?"),
        ("toe_angle", 54.5, 50.0, "Toe angle 50 on LF; on 3 March 2026 it was 54.5. Is that right?"),
        ("heel_angle", 46.0, 51.0, "Heel angle 51 on LF; on 3 March 2026 it was 46. Is that right?"),
    ],
)
def test_a_jump_is_flagged_with_both_values(slot: str, before: str | float, now: str | float, sentence: str) -> None:
    (one,) = beside([fact(slot, before)], fact(slot, now)).facts
    assert (one.flagged, one.reasons, one.confidence) == (True, [sentence], 0.5)


@pytest.mark.parametrize(
    ("slot", "before", "now"),
    [("shoe_size", "1", "2"), ("shoe_size", "1", "1"), ("toe_angle", 50.0, 54.0), ("heel_angle", 50.0, 46.0),
     ("toe_length", 80.0, 95.0), ("nails", 6.0, 8.0)],
)  # fmt: skip
def test_what_feet_do_change_is_not(slot: str, before: str | float, now: str | float) -> None:
    (one,) = beside([fact(slot, before)], fact(slot, now)).facts
    assert (one.flagged, one.reasons) == (False, [])


def test_another_foot_or_another_time_is_not_compared() -> None:
    assert not beside([fact("toe_angle", 50.0, "RF")], fact("toe_angle", 57.0)).facts[0].flagged
    assert not beside([fact("toe_angle", 50.0, status=Status.HISTORY)], fact("toe_angle", 57.0)).facts[0].flagged
    assert not beside([fact("toe_angle", 50.0)], fact("toe_angle", 57.0, status=Status.PLANNED)).facts[0].flagged


def test_of_two_values_last_time_one_must_fit() -> None:
    assert not beside([fact("shoe_size", "0"), fact("shoe_size", "2")], fact("shoe_size", "2")).facts[0].flagged


def test_an_open_problem_of_which_nothing_is_said() -> None:
    seen = beside([fact("finding", "abscess", "LH")], fact("work", "reset"))
    assert told(seen) == ["Found on 3 March 2026 and not spoken of today: abscess on the left hind. Is it gone?"]
    assert [flag.kind for flag in seen.flags] == [FlagKind.NOT_UNDERSTOOD]
    assert not any(f.flagged for f in seen.facts)


def test_all_of_them_are_one_flag() -> None:
    last = [fact("finding", "thrush", "LH"), fact("finding", "thrush", "RH"), fact("finding", "crack", "LF")]
    assert told(beside(last, fact("work", "reset"))) == [
        "Found on 3 March 2026 and not spoken of today: thrush on the left hind and the right hind; "
        "crack on the left fore. Is it gone?"
    ]


@pytest.mark.parametrize("status", [Status.PRESENT, Status.ABSENT, Status.RESOLVED, Status.SUSPECTED, Status.HISTORY])
def test_what_is_spoken_of_is_not_asked(status: Status) -> None:
    assert told(beside([fact("finding", "abscess")], fact("finding", "abscess", status=status))) == []


@pytest.mark.parametrize(
    "before",
    [
        fact("finding", "flare"),  # not in follow_up.csv: it stays for years
        fact("finding", "abscess", status=Status.ABSENT),
        fact("finding", "abscess", status=Status.RESOLVED),
        fact("finding", "abscess", status=Status.HISTORY),
        fact("treatment", "poultice"),
    ],
)
def test_what_was_not_open_is_not_asked(before: Fact) -> None:
    assert told(beside([before], fact("work", "reset"))) == []


def test_what_was_found_and_gone_at_the_same_visit_is_not_asked() -> None:
    last = [fact("finding", "abscess"), fact("finding", "abscess", status=Status.RESOLVED)]
    assert told(beside(last, fact("work", "reset"))) == []


@pytest.mark.parametrize(
    ("day", "asked"), [(date(2025, 4, 14), True), (date(2025, 4, 13), False), (date(2026, 4, 14), False)]
)
def test_older_news_than_a_year_and_the_same_day_are_not_asked(day: date, asked: bool) -> None:
    assert bool(told(beside([fact("finding", "abscess")], fact("work", "reset"), day=day))) == asked


def test_a_visit_without_any_fact_is_not_asked() -> None:
    assert told(beside([fact("finding", "abscess")])) == []


def test_without_a_last_visit_nothing_changes() -> None:
    (seen,) = judge([visit(fact("toe_angle", 57.0))], Transcript(text=""), lambda _: None)
    assert (seen.facts[0].flagged, seen.flags) == (False, [])
