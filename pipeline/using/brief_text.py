"""A brief on one screen: 80 columns, and 24 lines as far as they reach."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Mapping, Sequence
from datetime import date

from pipeline.terms import Status
from pipeline.using.brief import Brief
from pipeline.using.changes import Change
from pipeline.using.columns import WIDTH, plain
from pipeline.using.due import DueDate
from pipeline.using.open_findings import OpenFinding
from pipeline.using.outcomes import Outcome, side_words
from pipeline.using.plan_checks import PlanCheck
from pipeline.using.set_ups import set_up_words
from pipeline.using.values import as_values
from pipeline.using.wording import MEASURE_UNITS, SIGN, day_words, fact_words, weeks_words

HEIGHT = 24
_LABEL = 10
# How many lines of a part are shown, from the first row on until all fits one screen.
_MOST = (
    {"signs": 5, "open": 5, "plans": 4, "changes": 4, "outcomes": 4},
    {"signs": 4, "open": 4, "plans": 3, "changes": 3, "outcomes": 2},
    {"signs": 3, "open": 4, "plans": 2, "changes": 2, "outcomes": 1},
    {"signs": 3, "open": 3, "plans": 2, "changes": 2, "outcomes": 0},
)
_ALL = dict.fromkeys(_MOST[0], 10**6)
_CAME = {"to_come": "still to come", "not_said": "nothing said of it since"}


def brief_lines(brief: Brief, full: bool = False) -> list[str]:
    """The brief as lines. What does not fit one screen is counted at its place; ``full`` shows all of it."""
    if full:
        return _lines(brief, _ALL)
    tries = [_lines(brief, most) for most in _MOST]
    return next((lines for lines in tries if len(lines) <= HEIGHT), tries[-1])


def _lines(brief: Brief, most: Mapping[str, int]) -> list[str]:
    parts = [
        _heading(brief),
        _labelled("On now", _set_ups(brief)),
        _labelled("Signs", _cut(_signs(brief), most["signs"])),
        _labelled("Open", _open_findings(brief, most["open"])),
        _labelled("Planned", _cut(_plans(brief), most["plans"])),
        _labelled("Changed", _cut(_changes(brief.changes), most["changes"])),
        _labelled("Worked?", _cut(_outcomes(brief.outcomes), most["outcomes"])),
        _labelled("Lost", [_lost(brief)] if brief.visits else []),
        _labelled("Manner", _manner(brief)),
        _labelled("Caution", brief.cautions),
        textwrap.wrap(_last_line(brief), WIDTH),
    ]
    return [line for part in parts for line in part]


def brief_json(brief: Brief) -> dict[str, object]:
    """The brief as JSON values."""
    values = as_values(brief)
    assert isinstance(values, dict)
    return {**values, "weeks_since": brief.weeks_since, "overdue_days": brief.overdue_days}


def due_words(due: DueDate, today: date) -> str:
    """``due 13 April 2026 (6 weeks said), 3 days overdue``."""
    if due.day is None:
        return "no next visit said"
    sign = f"{SIGN} " if due.flagged else ""
    if due.basis == "said":
        why = f"{sign}{weeks_words(due.weeks)} said"
    else:
        gaps = f"{due.gaps} gap{'s' if due.gaps > 1 else ''}"
        why = f"by its own rhythm of {weeks_words(due.weeks)}, {gaps}; nothing was said"
    days = (today - due.day).days
    late = f", {days} day{'s' if days > 1 else ''} overdue" if days > 0 else ""
    return f"due {day_words(due.day)} ({why}){late}"


def _heading(brief: Brief) -> list[str]:
    horse = brief.horse
    whose = ", ".join(part for part in (horse.owner, horse.place) if part)
    title = plain(f"{horse.name}{f'  ({whose})' if whose else ''}")
    if brief.last is None:
        return [*textwrap.wrap(title, WIDTH), "Never seen before, as far as this book goes."]
    weeks = brief.weeks_since or 0
    since = "today" if brief.last == brief.today else f"{weeks_words(weeks)} ago"
    seen = f"Seen {day_words(brief.last)}, {since} (visit {brief.visit_id}, {brief.visits} in all); "
    return [*textwrap.wrap(title, WIDTH), *textwrap.wrap(f"{seen}{due_words(brief.due, brief.today)}.", WIDTH)]


def _set_ups(brief: Brief) -> list[str]:
    feet: dict[str, list[str]] = {}
    for foot, set_up in brief.set_ups.items():
        day = "" if set_up.day == brief.last else f" ({day_words(set_up.day)})"
        feet.setdefault(f"{set_up_words(set_up)}{day}", []).append(foot)
    return [f"{' '.join(names)}: {words}" for words, names in feet.items()]


def _signs(brief: Brief) -> list[str]:
    """What the horse showed at the last visit, worst first; what the changes tell anyway is left to them."""
    told = {change.now.id for change in brief.changes}
    feet: dict[str | None, list[str]] = {}
    for fact in brief.signs:
        if fact.id not in told:
            feet.setdefault(fact.foot, []).append(f"{SIGN} {fact_words(fact)}" if fact.flagged else fact_words(fact))
    shared: dict[str, list[str]] = {}
    for foot, words in feet.items():
        shared.setdefault(", ".join(dict.fromkeys(words)), []).append(foot or "horse")
    return [f"{' '.join(names)}: {words}" for words, names in shared.items()]


def _open_findings(brief: Brief, most: int) -> list[str]:
    """What is open and was spoken of within a year; feet of which the same is to be said share a line."""
    feet: dict[str, list[str]] = {}
    recent = [one for one in brief.open_findings if one.spoken_of_by(brief.today)]
    for one in brief.open_findings if most >= _ALL["open"] else recent:
        feet.setdefault(_open(one, brief), []).append(one.fact.foot or "horse")
    lines = _cut([f"{' '.join(dict.fromkeys(names))}: {words}" for words, names in feet.items()], most)
    older = len(brief.open_findings) - len(recent)
    if older and most < _ALL["open"]:
        lines.append(f"and {older} not spoken of for a year or more, never said to be gone (--full)")
    return lines


def _open(one: OpenFinding, brief: Brief) -> str:
    sign = f"{SIGN} " if one.fact.flagged else ""
    words = f"{sign}{fact_words(one.fact)}, "
    if one.since == one.last:
        return f"{words}new at the last visit" if one.last == brief.last else f"{words}said {day_words(one.last)}"
    last = "" if one.last == brief.last else f", last said {day_words(one.last)}"
    return f"{words}since {day_words(one.since)}{last}"


def _plans(brief: Brief) -> list[str]:
    """What was planned, the vet before all else; feet with the same plan share a line."""
    feet: dict[str, list[str]] = {}
    for check in sorted(brief.plans, key=lambda check: check.fact.slot != "vet"):
        feet.setdefault(_plan(check), []).append(check.fact.foot or "")
    lines = [f"{' '.join(names)}: {words}" if any(names) else words for words, names in feet.items()]
    if asked := brief.interval:
        sign = f"{SIGN} " if asked.flagged else ""
        lines.append(f"{sign}{weeks_words(asked.asked_weeks)} asked for last time, seen after {asked.came_weeks:g}")
    return lines


def _plan(check: PlanCheck) -> str:
    sign = f"{SIGN} " if check.fact.flagged else ""
    what = fact_words(check.fact).removesuffix(": planned")
    came = _CAME.get(check.came, "")
    if check.by is not None and check.on is not None:
        doubt = f"{SIGN} " if check.by.flagged else ""
        done = f"{doubt}done" if check.came == "done" else f"{doubt}{fact_words(check.by)} instead"
        came = f"{done} {day_words(check.on)}"
    return f"{sign}{what} ({day_words(check.planned_on)}): {came}"


def _changes(found: Sequence[Change]) -> list[str]:
    """A line a foot: what of it changed."""
    feet: dict[str, list[str]] = {}
    for change in found:
        feet.setdefault(change.now.foot or "horse", []).append(_change(change))
    return [f"{foot}: {'; '.join(parts)}" for foot, parts in feet.items()]


def _change(change: Change) -> str:
    sign = f"{SIGN} " if change.now.flagged or change.before.flagged else ""
    if change.now.slot == "tester":
        place = f" {change.now.zone.replace('_', ' ')}" if change.now.zone else ""
        course = "degree not said both times" if change.course == "not comparable" else change.course
        return f"{sign}testers{place} {change.before.value} to {change.now.value}: {course}"
    unit = MEASURE_UNITS.get(change.now.slot, "")
    gap = "" if unit in ("", "°") else " "
    name = change.now.slot.replace("_", " ")
    return f"{sign}{name} {_number(change.before.value)} to {_number(change.now.value)}{gap}{unit}"


def _number(value: str | float) -> str:
    return value if isinstance(value, str) else f"{value:.4g}"


def _outcomes(found: Sequence[Outcome]) -> list[str]:
    """A line a change; feet that went through the same share it. A change without a visit since says nothing yet."""
    feet: dict[str, list[str]] = {}
    for one in found:
        if one.after.visits:
            planned = "planned, " if one.planned else ""
            sign = f"{SIGN} " if one.flagged else ""
            words = f"{sign}{one.old} to {one.new} ({planned}{day_words(one.day)}): before {side_words(one.before)}"
            feet.setdefault(f"{words}; after {side_words(one.after)}", []).append(one.foot)
    return [f"{' '.join(names)}: {words}" for words, names in feet.items()]


def _lost(brief: Brief) -> str:
    lost = brief.lost_shoes
    if not lost.by_foot:
        return "no shoe found lost"
    feet = ", ".join(f"{foot} {count}" for foot, count in lost.by_foot.items())
    rate = f"; {lost.a_year:g} a year" if lost.a_year is not None else ""
    doubt = f" ({SIGN} {lost.flagged} not looked at yet)" if lost.flagged else ""
    return f"{lost.last_year} in the last year{rate}; in all {feet}{doubt}"


def _manner(brief: Brief) -> list[str]:
    if brief.manner is None:
        return []
    sign = f"{SIGN} " if brief.manner.last.flagged else ""
    earlier = " at an earlier time" if brief.manner.last.status is Status.HISTORY else ""
    words = f"{sign}{brief.manner.last.value}{earlier} ({day_words(brief.manner.on)})"
    warned = [
        f"WARNING: {SIGN + ' ' if fact.flagged else ''}{fact.value} {day_words(day)}"
        for fact, day in brief.manner.warned
        if fact is not brief.manner.last or fact.value == "dangerous"
    ]
    return ["; ".join([*warned, words])]


def _last_line(brief: Brief) -> str:
    looks = f"{SIGN} {brief.unreviewed} of the last visit not looked at yet. " if brief.unreviewed else ""
    if brief.unassigned:
        visits = (
            "1 visit heard under this name belongs" if brief.unassigned == 1 else f"{brief.unassigned} visits heard"
        )
        looks += f"(?) {visits}{'' if brief.unassigned == 1 else ' under this name belong'} to no horse yet. "
    return f"{looks}{brief.note}"


def _cut(lines: Sequence[str], most: int) -> list[str]:
    left = len(lines) - most
    if left <= 0:
        return list(lines)
    return [*lines[:most], f"and {left} more (--full)" if most else f"{left} to be seen with --full"]


def _labelled(label: str, lines: Iterable[str]) -> list[str]:
    """Lines behind a label, wrapped and indented; nothing at all without lines."""
    out: list[str] = []
    for line in lines:
        hang = "" if line.startswith("and ") else "  "
        out += textwrap.wrap(plain(line), WIDTH - _LABEL, subsequent_indent=hang) or [""]
    return [f"{'' if number else label:{_LABEL}}{line}".rstrip() for number, line in enumerate(out)]
