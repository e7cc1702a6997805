"""What a farrier wants to know before he walks up to a horse, gathered from all its visits.

A record, not a diagnosis: nothing here is concluded, everything was said.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import NamedTuple

from pipeline.errors import NotFoundError
from pipeline.judging.cautions import cautions
from pipeline.keeping.looking import Looking
from pipeline.keeping.seen import SeenFact, SeenHorse, SeenVisit
from pipeline.terms import Status
from pipeline.using.changes import Change, changes
from pipeline.using.due import DueDate, due_date, due_list
from pipeline.using.open_findings import OpenFinding, open_findings
from pipeline.using.outcomes import Outcome, outcomes
from pipeline.using.plan_checks import IntervalCheck, PlanCheck, interval_check, plan_checks
from pipeline.using.set_ups import SetUp, last_set_ups
from pipeline.using.wording import day_words

NOTE = "A record, not a diagnosis."
# What a horse showed, with the answers that show nothing.
_SIGNS: dict[str, tuple[str | float, ...]] = {
    "lameness": (0.0,), "gait": ("sound",), "obel": (), "pulse": ("normal",), "tester": ("none",),
}  # fmt: skip
_WARNINGS = frozenset({"dangerous", "sedated"})


class Manner(NamedTuple):
    """How the horse stood: what was said last, and, with its day, the last word of each manner to be warned of."""

    last: SeenFact
    on: date
    warned: list[tuple[SeenFact, date]]


class LostShoes(NamedTuple):
    """Shoes found lost: in the year before the brief, a year over all the time since the first visit, and by foot.

    ``a_year`` is None for a horse known for less than a year; ``flagged`` of them nobody has looked at yet.
    """

    last_year: int
    a_year: float | None
    by_foot: dict[str, int]
    flagged: int


class Brief(NamedTuple):
    """All of a brief; ``signs`` are lameness, pulse and answers to the hoof testers at the last visit that show
    something; ``unreviewed`` counts what nobody has looked at yet among the last visit's facts, ``unassigned``
    the visits that were heard under the horse's name and belong to no horse yet."""

    horse: SeenHorse
    today: date
    visits: int
    last: date | None
    visit_id: int | None
    due: DueDate
    set_ups: dict[str, SetUp]
    signs: list[SeenFact]
    open_findings: list[OpenFinding]
    plans: list[PlanCheck]
    interval: IntervalCheck | None
    changes: list[Change]
    outcomes: list[Outcome]
    lost_shoes: LostShoes
    manner: Manner | None
    cautions: list[str]
    unreviewed: int
    unassigned: int
    note: str = NOTE

    @property
    def weeks_since(self) -> float | None:
        """Weeks since the last visit."""
        return round((self.today - self.last).days / 7, 1) if self.last else None

    @property
    def overdue_days(self) -> int:
        """How many days overdue; 0 or less when not."""
        return (self.today - self.due.day).days if self.due.day else 0


def brief(store: Looking, horse: SeenHorse, today: date) -> Brief:
    """The brief of one horse on a day: visits after that day are not in it."""
    visits = [visit for visit in store.visits_of(horse) if visit.date <= today]
    still_open = open_findings(visits)
    last_day = [fact for visit in visits if visit.date == visits[-1].date for fact in visit.facts]
    return Brief(
        horse=horse,
        today=today,
        visits=len(visits),
        last=visits[-1].date if visits else None,
        visit_id=visits[-1].id if visits else None,
        due=_due(visits),
        set_ups=last_set_ups(visits),
        signs=[fact for fact in last_day if _shows(fact)],
        open_findings=still_open,
        plans=plan_checks(visits),
        interval=interval_check(visits),
        changes=changes(visits),
        outcomes=outcomes(visits),
        lost_shoes=_lost_shoes(visits, today),
        manner=_manner(visits),
        cautions=cautions([*last_day, *(one.fact for one in still_open if one.spoken_of_by(today))]),
        unreviewed=sum(fact.flagged for fact in last_day),
        unassigned=store.unassigned_count(horse),
    )


def round_of(store: Looking, day: date, place: str | None = None) -> list[Brief]:
    """The briefs for the round of a day: the horses seen that day or, when there are none, those due by then.

    Briefs of a day that was worked tell what was known that morning. Raises NotFoundError when there is no horse.
    """
    seen = store.horses_on(day)
    if place is not None:
        seen = [horse for horse in seen if place.casefold() in (horse.place or "").casefold()]
    if seen:
        return [brief(store, horse, day - timedelta(days=1)) for horse in seen]
    due = due_list(store, day, day, place).horses
    if not due:
        raise NotFoundError(f"No horse was seen on {day_words(day)}, and none is due by then.")
    due.sort(key=lambda one: (one.horse.place or "", one.horse.name))
    return [brief(store, one.horse, day) for one in due]


def _shows(fact: SeenFact) -> bool:
    now = fact.status in (Status.PRESENT, Status.SUSPECTED)
    return now and fact.slot in _SIGNS and fact.value not in _SIGNS[fact.slot]


def _due(visits: Sequence[SeenVisit]) -> DueDate:
    if not visits:
        return DueDate(None, "unknown")
    last = visits[-1].date
    said = [
        fact
        for visit in visits
        for fact in visit.facts
        if visit.date == last and fact.slot == "next_visit_weeks" and fact.status is Status.PLANNED
    ]
    weeks = min((fact.value for fact in said if not isinstance(fact.value, str)), default=None)
    days = sorted({visit.date for visit in visits})
    return due_date(last, weeks, any(fact.flagged for fact in said), days)


def _lost_shoes(visits: Sequence[SeenVisit], today: date) -> LostShoes:
    lost = [
        (visit.date, fact.foot or "horse", fact.flagged)
        for visit in visits
        for fact in visit.facts
        if fact.slot == "shoe_state" and fact.value == "lost" and fact.status is Status.PRESENT
    ]
    days_known = (today - visits[0].date).days if visits else 0
    a_year = round(len(lost) * 365.25 / days_known, 1) if days_known >= 365 else None
    feet = sorted({foot for _, foot, _ in lost}, key=["LF", "RF", "LH", "RH", "horse"].index)
    by_foot = {foot: sum(other == foot for _, other, _ in lost) for foot in feet}
    recent = sum(day > today - timedelta(days=365) for day, _, _ in lost)
    return LostShoes(recent, a_year, by_foot, sum(flagged for _, _, flagged in lost))


def _manner(visits: Sequence[SeenVisit]) -> Manner | None:
    said = [
        (visit.date, fact)
        for visit in visits
        for fact in visit.facts
        if fact.slot == "manner" and fact.status in (Status.PRESENT, Status.HISTORY)
    ]
    if not said:
        return None
    warned = {fact.value: (fact, day) for day, fact in said if fact.value in _WARNINGS}
    return Manner(said[-1][1], said[-1][0], list(warned.values()))
