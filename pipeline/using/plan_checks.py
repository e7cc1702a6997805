"""What was planned, and whether a later visit says that it was done."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.terms import Status


class PlanCheck(NamedTuple):
    """A planned thing and what came of it.

    ``came`` is ``to_come`` (no visit since), ``done`` (a later visit says so), ``otherwise`` (a later visit says
    something else of the same slot and foot), or ``not_said``. ``by`` is the later fact, ``on`` its day.
    """

    fact: SeenFact
    planned_on: date
    came: str
    by: SeenFact | None = None
    on: date | None = None
    visits_since: int = 0


class IntervalCheck(NamedTuple):
    """The interval asked for at the visit before the last, in weeks, and after how many weeks the horse was seen."""

    asked_on: date
    asked_weeks: float
    came_weeks: float
    flagged: bool


def plan_checks(visits: Sequence[SeenVisit], within: int = 4) -> list[PlanCheck]:
    """The plans of the last ``within`` visits (oldest first), newest first; the next visit's day is no plan here."""
    checks = []
    for place in range(len(visits) - 1, max(-1, len(visits) - 1 - within), -1):
        planned = [
            fact for fact in visits[place].facts if fact.status is Status.PLANNED and fact.slot != "next_visit_weeks"
        ]
        checks += [_check(fact, visits[place].date, visits[place + 1 :]) for fact in planned]
    return checks


def interval_check(visits: Sequence[SeenVisit]) -> IntervalCheck | None:
    """How the last gap fits what was asked for; None when nothing was asked or there is no visit since."""
    days = sorted({visit.date for visit in visits})
    if len(days) < 2:
        return None
    asked = [
        fact
        for visit in visits
        for fact in visit.facts
        if visit.date == days[-2] and fact.slot == "next_visit_weeks" and fact.status is Status.PLANNED
    ]
    if not asked or isinstance(asked[-1].value, str):
        return None
    weeks = round((days[-1] - days[-2]).days / 7, 1)
    return IntervalCheck(days[-2], asked[-1].value, weeks, asked[-1].flagged)


def _check(fact: SeenFact, day: date, later: Sequence[SeenVisit]) -> PlanCheck:
    for visit in later:
        said = [
            other
            for other in visit.facts
            if other.foot == fact.foot and other.slot == fact.slot and other.status is Status.PRESENT
        ]
        same = [other for other in said if other.value == fact.value]
        if said:
            by = (same or said)[0]
            return PlanCheck(fact, day, "done" if same else "otherwise", by, visit.date, len(later))
    return PlanCheck(fact, day, "not_said" if later else "to_come", visits_since=len(later))
