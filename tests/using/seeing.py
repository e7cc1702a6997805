"""Visits as a look into the store brings them, made by hand."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import count

from pipeline.keeping.seen import SeenFact, SeenHorse, SeenVisit
from pipeline.terms import Severity, Status

FIRST = date(2026, 1, 5)
BRAMBLE = SeenHorse(1, "Bramble", "A. Fern", "River barn")
_numbers = count(1)


def said(
    foot: str | None,
    slot: str,
    value: str | float,
    status: str = "present",
    zone: str | None = None,
    severity: str | None = None,
    flagged: bool = False,
) -> SeenFact:
    """One fact as the store would have it."""
    return SeenFact(
        id=next(_numbers),
        foot=foot,
        slot=slot,
        value=value,
        zone=zone,
        status=Status(status),
        severity=Severity(severity) if severity else None,
        confidence=0.9,
        flagged=flagged,
        reasons=("an unsure word",) if flagged else (),
        quote="",
        start=None,
        end=None,
        span=(0, 0),
        match="exact",
        rules=(),
    )


def visit(week: int, *facts: SeenFact, horse: SeenHorse = BRAMBLE) -> SeenVisit:
    """A visit so many weeks after Monday 5 January 2026."""
    return SeenVisit(100 + week, FIRST + timedelta(weeks=week), horse, facts)
