"""What changed since the visit before: measures, sizes, grades, and how each foot answered the hoof testers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Literal, NamedTuple

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.terms import FEET, Status

MEASURED_SLOTS = (
    "toe_angle", "heel_angle", "toe_length", "heel_height", "sole_depth", "hoof_width", "shoe_size", "lameness",
    "obel", "body_condition", "cresty_neck",
)  # fmt: skip
Course = Literal["better", "same", "worse", "not comparable"]
# "Positive" says a reaction without its degree, so it may be any of them.
_REACTION = {"none": {0}, "mild": {1}, "moderate": {2}, "strong": {3}, "positive": {1, 2, 3}}
_SAME_MM = 0.05


class Change(NamedTuple):
    """A value at the last visit that says it, and at the one before. ``course`` is only said of the hoof testers:
    whether a longer toe is better is for the farrier to know."""

    now: SeenFact
    on: date
    before: SeenFact
    before_on: date
    course: Course | None = None


def changes(visits: Sequence[SeenVisit]) -> list[Change]:
    """What the last two visits that say it differ in, by foot; hoof testers also where the answer is the same.

    Visits come oldest first. Only what the last day says is compared: older news is no change of today.
    """
    if not visits:
        return []
    measured = _pairs(visits, MEASURED_SLOTS, with_zone=False)
    found = [Change(now, on, old, before) for (now, on), (old, before) in measured if _differ(now, old)]
    for (now, on), (old, before) in _pairs(visits, ("tester",), with_zone=True):
        found.append(Change(now, on, old, before, course(str(old.value), str(now.value))))
    return sorted(found, key=_order)


def course(before: str, now: str) -> Course:
    """How an answer to the hoof testers went on."""
    if before == now:
        return "same"
    old, new = _REACTION[before], _REACTION[now]
    if max(new) < min(old):
        return "better"
    return "worse" if min(new) > max(old) else "not comparable"


def _pairs(
    visits: Sequence[SeenVisit], slots: Iterable[str], with_zone: bool
) -> list[tuple[tuple[SeenFact, date], tuple[SeenFact, date]]]:
    """The last value and the one before it, of every foot and slot that the last day speaks of."""
    wanted, last = frozenset(slots), visits[-1].date
    said: dict[tuple[str | None, str, str | None], dict[date, SeenFact]] = {}
    for visit in visits:
        for fact in visit.facts:
            if fact.slot in wanted and fact.status is Status.PRESENT:
                zone = fact.zone if with_zone else None
                said.setdefault((fact.foot, fact.slot, zone), {})[visit.date] = fact
    pairs = []
    for days in said.values():
        if last in days and len(days) > 1:
            before = sorted(days)[-2]
            pairs.append(((days[last], last), (days[before], before)))
    return pairs


def _differ(now: SeenFact, before: SeenFact) -> bool:
    if isinstance(now.value, str) or isinstance(before.value, str):
        return now.value != before.value
    return abs(now.value - before.value) > _SAME_MM


def _order(change: Change) -> tuple[bool, int, str, str]:
    foot = FEET.index(change.now.foot) if change.now.foot in FEET else len(FEET)
    return (change.now.slot != "tester", foot, change.now.slot, change.now.zone or "")
