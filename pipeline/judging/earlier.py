"""Today beside the horse's last visit: sizes and angles that jumped, and open problems of which nothing is said."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from importlib.resources import files

from pipeline.judging.feet import sizes_apart
from pipeline.judging.naming import on_foot, plain, slot_name, the_foot
from pipeline.record import Fact, Flag, FlagKind, Status
from pipeline.terms import Said

_MOST_SIZES = 1.0  # that a foot's shoe changes from one visit to the next; common practice, no source
_MOST_DEGREES = 4.0  # that an angle changes from one visit to the next; common practice, no source
_OPEN = frozenset({Status.PRESENT, Status.SUSPECTED})
_LONGEST_DAYS = 365  # older news may only have been forgotten


@dataclass(frozen=True)
class LastVisit:
    """What stands of the horse's visit before this one, as far as it can be told."""

    day: date
    facts: Sequence[Said]


def changed(today: Sequence[Fact], last: LastVisit) -> Iterator[tuple[list[Fact], str]]:
    """Each of today's sizes and angles that differs more from the last visit's than feet change, with its sentence."""
    for fact in today:
        if fact.status is not Status.PRESENT or fact.foot is None:
            continue
        before = [f for f in last.facts if (f.foot, f.slot) == (fact.foot, fact.slot) and f.status is Status.PRESENT]
        if before and all(_jumps(fact, str(earlier.value)) for earlier in before):
            was = " and ".join(dict.fromkeys(_number(str(f.value)) for f in before))
            name = slot_name(fact.slot).capitalize()
            yield [fact], f"{name} {plain(fact)}{on_foot(fact.foot)}; on {_day(last.day)} it was {was}. Is that right?"


def _number(text: str) -> str:
    return text.removesuffix(".0")


def _jumps(fact: Fact, before: str) -> bool:
    if fact.slot == "shoe_size":
        apart = sizes_apart(str(fact.value), before)
        return apart is not None and apart > _MOST_SIZES
    if fact.slot in ("toe_angle", "heel_angle"):
        return abs(float(fact.value) - float(before)) > _MOST_DEGREES
    return False


def unmentioned(today: Sequence[Fact], day: date, last: LastVisit) -> list[Flag]:
    """At most one flag: the problems that stood open at the last visit and of which nothing is said today."""
    if not today or not 0 < (day - last.day).days <= _LONGEST_DAYS:
        return []
    spoken = {(fact.foot, str(fact.value)) for fact in today if fact.slot == "finding"}
    left: dict[str, list[str]] = {}
    for fact in last.facts:
        value = str(fact.value)
        if fact.slot != "finding" or fact.status not in _OPEN or value not in _follow_up():
            continue
        if (fact.foot, value) in spoken or (None, value) in spoken or _closed(last.facts, fact):
            continue
        where = the_foot(fact.foot) if fact.foot else "the horse"
        left.setdefault(value.replace("_", " "), [])
        if where not in left[value.replace("_", " ")]:
            left[value.replace("_", " ")].append(where)
    if not left:
        return []
    told = "; ".join(f"{name} on {_listed(feet)}" for name, feet in left.items())
    reason = f"Found on {_day(last.day)} and not spoken of today: {told}. Is it gone?"
    return [Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=reason)]


def _closed(facts: Sequence[Said], found: Said) -> bool:
    gone = (Status.RESOLVED, Status.ABSENT)
    return any((f.foot, f.slot, f.value) == (found.foot, found.slot, found.value) and f.status in gone for f in facts)


def _listed(names: Sequence[str]) -> str:
    return names[0] if len(names) == 1 else ", ".join(names[:-1]) + " and " + names[-1]


def _day(day: date) -> str:
    return f"{day.day} {day:%B %Y}"


@lru_cache(maxsize=1)
def _follow_up() -> frozenset[str]:
    text = (files("pipeline.judging") / "follow_up.csv").read_text(encoding="utf-8")
    return frozenset(row["finding"] for row in csv.DictReader(text.splitlines()))
