"""A plan, or what is long ago, that was read as of today is put right where the second reader is sure, and asked."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

import pytest

from pipeline.hearing.language import NOT_ENGLISH
from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import Ingest
from pipeline.judging import judge
from pipeline.judging.putting_right import asked_since, put_right, put_right_by
from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View
from pipeline.judging.surroundings import Surroundings
from pipeline.record import SECOND_READER, Fact, Flag, FlagKind, Status, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.judging.making import fact, heard, visit

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
        (Status.PLANNED, 0.51, True),
        (Status.PLANNED, 0.49, False),
        (Status.HISTORY, 0.81, True),
        (Status.HISTORY, 0.79, False),
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
    assert statuses(both, sure_of(Status.PLANNED, 0.3), sure_of(Status.PLANNED, 0.8)) == [Status.PLANNED] * 2
    assert statuses(both, sure_of(Status.PLANNED, 0.1), sure_of(Status.PLANNED, 0.8)) == [Status.PRESENT] * 2
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


def test_a_copy_goes_with_its_source() -> None:
    both = [pads("LF"), pads("RF", rules=["foot: named beside it", "the same on another foot"])]
    assert statuses(both, *(sure_of(Status.PLANNED, 1.0) for _ in both)) == [Status.PLANNED] * 2


def test_a_statement_goes_whole_or_not_at_all() -> None:
    planned = pads("LF", status=Status.PLANNED, span=(40, 49))
    both = [pads("LF"), pads("RF"), planned]
    views = (sure_of(Status.PLANNED, 1.0) for _ in both)
    assert statuses(both, *views) == [Status.PRESENT, Status.PRESENT, Status.PLANNED]


def test_of_several_horses_each_by_its_own_words() -> None:
    one, other = pads("LF"), pads("LF", span=(40, 49))
    views = {id(one): sure_of(Status.PLANNED, 0.9), id(other): sure_of(Status.PLANNED, 0.1)}
    first, second = put_right_by([visit(one), visit(other)], views)
    assert (first.facts[0].status, second.facts[0].status) == (Status.PLANNED, Status.PRESENT)


def test_a_fact_without_a_view_stays() -> None:
    assert statuses([pads()]) == [Status.PRESENT]


def test_it_says_so_and_changes_nothing_else() -> None:
    given, same = pads(), pads("RH", "rim")
    (seen,) = put_right_by([visit(given, same)], {id(given): sure_of(Status.PLANNED, 0.9)})
    better, stayed = seen.facts
    assert stayed is same
    assert better.rules == ["foot: named beside it", f"{SECOND_READER}for a later day"]
    assert better.model_copy(update={"status": given.status, "rules": given.rules}) == given
    assert asked_since(better) == [
        "By the words around it this is for a later day; by itself it reads as of today. Which is it?"
    ]
    assert asked_since(stayed) == []


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
    assert (one.status, one.flagged, one.reasons[0]) == (Status.PLANNED, True, asked_since(one)[0])
    assert one.confidence <= 0.85


def after(given: Fact, transcript: Transcript, monkeypatch: pytest.MonkeyPatch, *flags: Flag) -> Status:
    monkeypatch.setattr("pipeline.judging.putting_right.second_reader", Planning)
    (seen,) = put_right([visit(given)], transcript, flags)
    return seen.facts[0].status


@pytest.mark.parametrize("span", [(0, 0), (16, 16), (60, 900)])
def test_a_fact_whose_words_are_not_there_stays(span: tuple[int, int], monkeypatch: pytest.MonkeyPatch) -> None:
    assert after(pads(span=span), Transcript(text=TEXT), monkeypatch) is Status.PRESENT


def test_a_fact_that_nobody_heard_stays(monkeypatch: pytest.MonkeyPatch) -> None:
    words = heard(*((word, 0.9) for word in TEXT.split()))
    assert after(pads(), words, monkeypatch) is Status.PLANNED
    gone = words.model_copy(update={"words": [word for word in words.words if word.end <= 16]})
    assert after(pads(), gone, monkeypatch) is Status.PRESENT


def test_what_is_not_english_stays(monkeypatch: pytest.MonkeyPatch) -> None:
    text = "Vorne links vier nails auf jeder Seite, hinten rechts ist der Strahl etwas faul."
    nails = fact("nails", 4.0, "LF", span=(12, 22))
    assert after(nails, Transcript(text=text), monkeypatch) is Status.PRESENT
    told = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=NOT_ENGLISH, span=(0, len(TEXT)))
    assert after(pads(), Transcript(text=TEXT), monkeypatch, told) is Status.PRESENT
    assert after(pads(), Transcript(text=TEXT), monkeypatch) is Status.PLANNED


def test_the_program_puts_right_before_it_judges(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.putting_right.second_reader", Planning)
    reading = Ingest(HearingSettings(), load_vocabulary())
    record = reading.read_text("Wickham. Full pads in front. Thrush in the left hind.", [], date(2026, 3, 2))
    told = [(one.slot, one.status, one.put_right, one.flagged) for one in record.visits[0].facts]
    assert told == [("pad", Status.PLANNED, True, True)] * 2 + [("finding", Status.PRESENT, False, told[2][3])]


def test_a_memo_without_facts() -> None:
    assert put_right([visit()], Transcript(text="")) == [visit()]
