"""A horse's record arranged for people, before it becomes a page, a PDF or Markdown: all forms tell the same."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Literal

from pipeline.judging import cautions
from pipeline.keeping import KeptHorse, KeptVisit
from pipeline.keeping.identity import MICROCHIP, UELN
from pipeline.record import FEET, Fact, Foot
from pipeline.using.edits import Edit
from pipeline.using.hoof_map import Mark
from pipeline.using.marks import latest_marks, tester_marks
from pipeline.using.measures import Measure, measures
from pipeline.using.origin import DEFER, DISCLAIMER, long_date, program_version
from pipeline.using.owner_words import Explained, explained, next_visit, vet_wanted
from pipeline.using.scales import SCALES, Scale
from pipeline.using.visits import Before, Quote, Quotes, Said, VisitTold, said, told
from pipeline.using.wording import FOOT_NAMES

NO_FOOT = "Whole horse, or no foot said"
Audience = Literal["owner", "vet"]


@dataclass(frozen=True)
class Choice:
    """What was asked for: for whom, on which day, from which visit on, and whether people are left out."""

    on: date
    audience: Audience = "owner"
    redact: bool = False
    since: date | None = None


@dataclass(frozen=True)
class Day:
    """What was said of one foot on one day."""

    date: date
    lines: list[Said]


@dataclass(frozen=True)
class FootRecord:
    """One foot (None: the whole horse) through time, oldest day first, with the marks of its drawings."""

    foot: Foot | None
    name: str
    days: list[Day]
    marks: list[Mark] = field(default_factory=list)
    tester_marks: list[Mark] = field(default_factory=list)


@dataclass(frozen=True)
class Handover:
    """Everything that a record for people tells; text is plain and unescaped."""

    choice: Choice
    title: str
    identity: list[tuple[str, str]]
    origin: str
    disclaimer: str
    defer: str
    cautions: list[str]
    next_visit: str | None
    vet_wanted: list[str]
    to_review: int
    last_day: date | None
    feet: list[FootRecord]
    last: list[FootRecord]
    measures: list[Measure]
    scales: list[Scale]
    explained: list[Explained]
    visits: list[VisitTold]
    edits: list[Edit]
    quotes: list[Quote]

    @property
    def for_vet(self) -> bool:
        """Whether a vet reads it."""
        return self.choice.audience == "vet"

    @property
    def through_time(self) -> list[FootRecord]:
        """The feet through time; the owner reads of the last day elsewhere already."""
        if self.for_vet:
            return [foot for foot in self.feet if foot.days]
        earlier = [replace(foot, days=[day for day in foot.days if day.date != self.last_day]) for foot in self.feet]
        return [foot for foot in earlier if foot.days]


Clip = Callable[[KeptVisit, float, float], bytes]


def handover(
    horse: KeptHorse,
    visits: Sequence[KeptVisit],
    corrections: list[Edit],
    choice: Choice,
    clip: Clip | None = None,
) -> Handover:
    """Arrange the record of one horse; ``visits`` are its own, oldest first, redacted before if asked for, and so are
    the ``corrections``.

    ``clip`` gives the sound of a stretch of a visit's memo, in seconds.
    """
    visits = [visit for visit in visits if choice.since is None or visit.visit.date >= choice.since]
    quotes = Quotes(clip)
    feet = _feet(visits, quotes, with_changes=choice.audience == "vet")
    facts = [fact for visit in visits for fact in visit.visit.facts]
    last = visits[-1].visit.date if visits else None
    return Handover(
        choice=choice,
        title=horse.name,
        identity=_identity(horse),
        origin=f"Made on {long_date(choice.on)} with clinchbook {program_version()}.",
        disclaimer=DISCLAIMER,
        defer=DEFER,
        cautions=cautions(facts),
        next_visit=next_visit(visits),
        vet_wanted=vet_wanted(visits),
        to_review=sum(fact.flagged for fact in facts),
        last_day=last,
        feet=feet,
        last=[_only(foot, last) for foot in feet if last and any(day.date == last for day in foot.days)],
        measures=measures(visits),
        scales=[scale for scale in SCALES if any(fact.slot == scale.slot for fact in facts)],
        explained=explained(_of_last_day(visits) if choice.audience == "owner" else []),
        visits=[told(visit) for visit in visits],
        edits=corrections,
        quotes=quotes.listed,
    )


def _identity(horse: KeptHorse) -> list[tuple[str, str]]:
    roster = horse.horse
    known = [
        ("Owner", roster.owner),
        ("Place", roster.place),
        ("Also called", ", ".join(roster.also_called)),
        ("UELN", roster.other.get(UELN)),
        ("Microchip", roster.other.get(MICROCHIP)),
    ]
    numbers = (UELN, MICROCHIP)
    others = [(key.replace("_", " ").capitalize(), text) for key, text in roster.other.items() if key not in numbers]
    return [(what, text) for what, text in (*known, *others) if text]


def _of_last_day(visits: Sequence[KeptVisit]) -> list[Fact]:
    last = visits[-1].visit.date if visits else None
    return [fact for visit in visits if visit.visit.date == last for fact in visit.visit.facts]


def _feet(visits: Sequence[KeptVisit], quotes: Quotes, with_changes: bool) -> list[FootRecord]:
    records = []
    for foot in (*FEET, None):
        before = Before()
        days: list[Day] = []
        for visit in visits:
            lines = [
                said(fact, quotes.number(visit, fact), before.of(fact, visit.visit.date) if with_changes else None)
                for fact in visit.visit.facts
                if fact.foot == foot
            ]
            if lines and days and days[-1].date == visit.visit.date:
                days[-1].lines.extend(lines)
            elif lines:
                days.append(Day(visit.visit.date, lines))
        marks = latest_marks(visits, foot) if foot else []
        testers = tester_marks(visits, foot) if foot else []
        if days or foot:
            records.append(FootRecord(foot, FOOT_NAMES[foot].capitalize() if foot else NO_FOOT, days, marks, testers))
    return records


def _only(foot: FootRecord, day: date) -> FootRecord:
    return FootRecord(foot.foot, foot.name, [shown for shown in foot.days if shown.date == day], foot.marks)
