"""What a look into the store brings back: light rows, of which a thousand are made at once.

They are no pydantic models: loading those takes longer than a whole search may. Named tuples are made in an eighth of
the time that frozen dataclasses take, as long as their annotations are no strings that must be compiled.
"""

import json
from collections.abc import Sequence
from datetime import date
from typing import Any, NamedTuple

from pipeline.terms import Severity, Status


class SeenFact(NamedTuple):
    """A fact as the store has it, with its row. Lengths are mm, angles degrees; ``start`` and ``end`` are seconds."""

    id: int
    foot: str | None
    slot: str
    value: str | float
    zone: str | None
    status: Status
    severity: Severity | None
    confidence: float
    flagged: bool
    reasons: tuple[str, ...]
    quote: str
    start: float | None
    end: float | None
    span: tuple[int, int]
    match: str
    rules: tuple[str, ...]

    def as_json(self) -> dict[str, Any]:
        """The fact as the record contract prints it."""
        return {
            "foot": self.foot,
            "slot": self.slot,
            "value": self.value,
            "zone": self.zone,
            "status": self.status.value,
            "severity": self.severity.value if self.severity else None,
            "confidence": self.confidence,
            "flagged": self.flagged,
            "reasons": list(self.reasons),
            "quote": self.quote,
            "start": self.start,
            "end": self.end,
            "span": list(self.span),
            "match": self.match,
            "rules": list(self.rules),
        }


class FoundFact(NamedTuple):
    """A fact that a search found, and whose it is."""

    fact: SeenFact
    visit_id: int
    date: date
    horse: str | None
    owner: str | None
    place: str | None
    assigned: bool
    file_name: str


class Passage(NamedTuple):
    """Words of a memo or of its notes that a search found; ``text`` is the stretch around them."""

    visit_id: int
    date: date
    horse: str | None
    text: str
    where: str  # "notes" or "transcript"


class Comparison(NamedTuple):
    """A slot whose value lies on one side of a bound, or is it. ``sign`` is one of ``< <= = != >= >``.

    ``among`` lists the values that fit where a slot's values have no numbers (shoe sizes); it is None elsewhere.
    """

    slot: str
    sign: str
    bound: float | None = None
    among: tuple[str, ...] | None = None


class Wanted(NamedTuple):
    """What a search asks for. An empty tuple or None asks for nothing in particular.

    ``values`` are (slot, value) pairs of which one must hold; ``compared`` must all hold, of the same fact where they
    name one slot, of the same visit otherwise; ``feet`` may hold None for the whole horse. ``since`` and ``until``
    are both included. ``words`` must all occur in the fact's own words.
    """

    slots: tuple[str, ...] = ()
    values: tuple[tuple[str, str | float], ...] = ()
    feet: tuple[str | None, ...] = ()
    zones: tuple[str, ...] = ()
    statuses: tuple[str, ...] = ()
    compared: tuple[Comparison, ...] = ()
    horse: str | None = None
    owner: str | None = None
    place: str | None = None
    since: date | None = None
    until: date | None = None
    flagged: bool | None = None
    words: tuple[str, ...] = ()
    limit: int = 1000


class Found(NamedTuple):
    """What a search found; ``more`` says that its limit cut them off."""

    facts: list[FoundFact]
    passages: list[Passage]
    more: bool


class SeenHorse(NamedTuple):
    """A horse of the store: its row, its name, whose it is and where it stands."""

    id: int
    name: str
    owner: str | None
    place: str | None


class SeenVisit(NamedTuple):
    """A visit with its facts in the order in which they were said."""

    id: int
    date: date
    horse: SeenHorse | None
    facts: tuple[SeenFact, ...]


class FootFact(NamedTuple):
    """A fact of one foot as far as it can be told: for whoever reads tens of thousands and shows none."""

    foot: str
    slot: str
    value: str | float
    zone: str | None
    status: Status
    severity: Severity | None
    flagged: bool


class ShodVisit(NamedTuple):
    """A visit with facts of its feet in the order in which they were said."""

    id: int
    date: date
    horse_id: int
    facts: tuple[FootFact, ...]


# The columns of ``facts`` that make a fact, in the order in which ``seen_fact`` takes them.
FACT_COLUMNS = ", ".join(
    f"facts.{name}"
    for name in (
        "id", "foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons", "quote",
        "start_s", "end_s", "span_start", "span_end", "match", "rules",
    )
)  # fmt: skip
STATUSES = {status.value: status for status in Status}
SEVERITIES: dict[str | None, Severity | None] = {None: None, **{one.value: one for one in Severity}}


def seen_fact(row: Sequence[Any]) -> SeenFact:
    """The fact behind a row that begins with FACT_COLUMNS."""
    (
        number, foot, slot, value, zone, status, severity, confidence, flagged, reasons, quote, start, end, low, high,
        match, rules, *_,
    ) = row  # fmt: skip
    return SeenFact(
        number, foot, slot, value, zone, STATUSES[status], SEVERITIES[severity], confidence, bool(flagged),
        () if reasons == "[]" else tuple(json.loads(reasons)), quote, start, end, (low, high), match,
        () if rules == "[]" else tuple(json.loads(rules)),
    )  # fmt: skip
