"""A plan, or what is long ago, that was read as of today is put right where the second reader is sure, and asked."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from pipeline.judging import judge
from pipeline.judging.putting_right import put_right, put_right_by, put_right_since
from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View
from pipeline.judging.surroundings import Surroundings
from pipeline.record import SECOND_READER, Fact, Status, Transcript
from tests.judging.making import fact, visit

TEXT = "Wickham. I want full pads on both fronts once the heat has gone."


def sure_of(status: Status, chance: float) -> View:
    return View((*(chance if one is status else 0.0 for one in STATUSES), 1 - chance), tuple(0.5 for _ in OF_FEET))


def pads(foot: str = "LF", value: str = "full", **more: object) -> Fact:
    return fact("pad", value, foot, **{"span": (16, 25), "rules": ["foot: named beside it"], **more})


def statuses(facts: Sequence[Fact], *views: View) -> list[Status]:
    known = {id(one): view for one, view in zip(facts, views, strict=False)}
    (seen,) = put_right_by([visit(*facts)], known)
    return [one.status for one in seen.facts]


@pytest.mark.parametrize(
    ("status", "chance", "put"),
    [
        (Status.PLANNED, 0.61, True),
        (Status.PLANNED, 0.59, False),
        (Status.HISTORY, 0.71, True),
        (Status.HISTORY, 0.69, False),
        (Status.ABSENT, 0.99, False),
        (Status.SUSPECTED, 0.99, False),
        (Status.RESOLVED, 0.99, False),
    ],
)
def test_where_it_is_sure_of_another_time(status: Status, chance: float, put: bool) -> None:
    assert statuses([pads()], sure_of(status, chance)) == [status if put else Status.PRESENT]


@pytest.mark.parametrize("status", [one for one in Status if one is not Status.PRESENT])
def test_only_what_was_read_as_of_today(status: Status) -> None:
    assert statuses([pads(status=status)], sure_of(Status.PLANNED, 1.0)) == [status]


def test_what_is_found_today_is_no_plan_but_may_be_of_long_ago() -> None:
    heat = fact("finding", "heat", "LF", span=(52, 56))
    assert statuses([heat], sure_of(Status.PLANNED, 1.0)) == [Status.PRESENT]
    assert statuses([heat], sure_of(Status.HISTORY, 1.0)) == [Status.HISTORY]


def test_the_feet_of_a_statement_go_together() -> None:
    both = [pads("LF"), pads("RF")]
    assert statuses(both, sure_of(Status.PLANNED, 0.5), sure_of(Status.PLANNED, 0.8)) == [Status.PLANNED] * 2
    assert statuses(both, sure_of(Status.PLANNED, 0.3), sure_of(Status.PLANNED, 0.8)) == [Status.PRESENT] * 2
    other = [pads("LF"), pads("RF", "rim")]
    assert statuses(other, sure_of(Status.PLANNED, 0.3), sure_of(Status.PLANNED, 0.8)) == [
        Status.PRESENT,
        Status.PLANNED,
    ]


def test_what_is_planned_already_is_not_said_twice() -> None:
    twice = [pads(), pads(status=Status.PLANNED)]
    assert statuses(twice, sure_of(Status.PLANNED, 0.9)) == [Status.PRESENT, Status.PLANNED]


@pytest.mark.parametrize(
    ("rule", "put"),
    [
        ("still there", False),
        ("done after all", False),
        ("zone: toe", True),
        ("elliptic", True),
        ("pad: from the number", True),
    ],
)
def test_what_a_rule_gave_its_time_stays(rule: str, put: bool) -> None:
    told = pads(rules=["foot: named beside it", rule])
    assert statuses([told], sure_of(Status.PLANNED, 1.0)) == [Status.PLANNED if put else Status.PRESENT]


def test_a_fact_without_words_or_a_view_stays() -> None:
    assert statuses([pads(span=(0, 0))], sure_of(Status.PLANNED, 1.0)) == [Status.PRESENT]
    assert statuses([pads()]) == [Status.PRESENT]


def test_it_says_so_and_changes_nothing_else() -> None:
    given, same = pads(), pads("RH", "rim")
    (seen,) = put_right_by([visit(given, same)], {id(given): sure_of(Status.PLANNED, 0.9)})
    better, stayed = seen.facts
    assert stayed is same
    assert better.rules == ["foot: named beside it", f"{SECOND_READER}for a later day"]
    assert better.model_copy(update={"status": given.status, "rules": given.rules}) == given
    assert put_right_since(better) == [
        "By the words around it this is for a later day; by itself it reads as of today. Which is it?"
    ]
    assert put_right_since(stayed) == []


class Planning(SecondReader):
    """A second reader that takes everything for planned."""

    def __init__(self) -> None:
        pass

    def views(self, around: Surroundings, facts: Sequence[Fact]) -> dict[int, View]:
        return {id(one): sure_of(Status.PLANNED, 1.0) for one in facts}


def test_whatever_is_put_right_is_asked_about(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.putting_right.second_reader", Planning)
    transcript = Transcript(text=TEXT)
    (seen,) = judge(put_right([visit(pads())], transcript), transcript)
    (one,) = seen.facts
    assert (one.status, one.flagged, one.reasons[0]) == (Status.PLANNED, True, put_right_since(one)[0])
    assert one.confidence <= 0.85


def test_a_memo_without_facts() -> None:
    assert put_right([visit()], Transcript(text="")) == [visit()]
