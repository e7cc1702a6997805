"""Findings that were said and never said to be gone, each with the day since when."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import NamedTuple

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.terms import FEET, Status

_SEEN = frozenset({Status.PRESENT, Status.SUSPECTED})
_GONE = frozenset({Status.RESOLVED, Status.ABSENT})
_WORST_FIRST = {"severe": 0, "moderate": 1, "mild": 3, None: 2}


class OpenFinding(NamedTuple):
    """A finding still open: its last fact, the day since when it was said without a break, the day it was last said,
    and at how many visits."""

    fact: SeenFact
    since: date
    last: date
    visits: int

    def spoken_of_by(self, today: date) -> bool:
        """Whether it was said within the year before ``today``; older news may only have been forgotten."""
        return (today - self.last).days <= 365


def open_findings(visits: Iterable[SeenVisit]) -> list[OpenFinding]:
    """What is still open after all visits (oldest first): lately said before long unsaid, seen before only
    suspected, the worse before the milder, then by foot.

    Silence closes nothing. "Gone" or "no thrush" of a foot closes that finding at every place of the foot, or at the
    place that it names; what a visit says both of, seen and gone, stays open.
    """
    found: dict[tuple[str | None, str, str | None], OpenFinding] = {}
    for visit in visits:
        findings = [fact for fact in visit.facts if fact.slot == "finding"]
        for gone in (fact for fact in findings if fact.status in _GONE):
            for key in [key for key in found if _closes(gone, key)]:
                del found[key]
        seen = set()
        for fact in (fact for fact in findings if fact.status in _SEEN):
            key = (fact.foot, str(fact.value), fact.zone)
            before = found.get(key)
            count = (before.visits if before else 0) + (key not in seen)
            seen.add(key)
            found[key] = OpenFinding(fact, before.since if before else visit.date, visit.date, count)
    return sorted(found.values(), key=_order)


def _closes(gone: SeenFact, key: tuple[str | None, str, str | None]) -> bool:
    foot, value, zone = key
    return gone.foot == foot and gone.value == value and gone.zone in (None, zone)


def _order(finding: OpenFinding) -> tuple[int, bool, int, int, str]:
    fact = finding.fact
    foot = FEET.index(fact.foot) if fact.foot in FEET else len(FEET)
    return (
        -finding.last.toordinal(),
        fact.status is Status.SUSPECTED,
        _WORST_FIRST[fact.severity],
        foot,
        str(fact.value),
    )
