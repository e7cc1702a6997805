"""Everything that is doubtful in the whole store, as light rows: what is needed to put it in order, and no more.

A store that was never reviewed holds tens of thousands of doubts; building all its visits would take many seconds.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any, NamedTuple

from pipeline.keeping.database import plain_errors
from pipeline.keeping.opened import OpenedStore
from pipeline.record import FlagKind
from pipeline.terms import Severity, Status


class ToldFact(NamedTuple):
    """What of a doubtful fact decides how and when it is asked; ``span`` is half-open in the transcript."""

    foot: str | None
    slot: str
    value: str | float
    zone: str | None
    status: Status
    severity: Severity | None
    confidence: float
    flagged: bool
    reasons: tuple[str, ...]
    rules: tuple[str, ...]
    span: tuple[int, int]


class ToldFlag(NamedTuple):
    """What of an open flag decides how and when it is asked."""

    kind: FlagKind
    reason: str
    span: tuple[int, int]


class DoubtedFact(NamedTuple):
    """A flagged fact that stands, with its row."""

    id: int
    fact: ToldFact


class DoubtedFlag(NamedTuple):
    """A flag that nobody has looked at, with its row."""

    id: int
    flag: ToldFlag


@dataclass
class DoubtedVisit:
    """A standing visit with what is open in it; a memo's own flags are with its first visit, behind that visit's.

    ``horse`` is None while it belongs to nobody, ``left`` says that a person left it so.
    """

    id: int
    horse: int | None
    left: bool = False
    facts: list[DoubtedFact] = field(default_factory=list)
    flags: list[DoubtedFlag] = field(default_factory=list)


_FACTS = """
SELECT visits.id, visits.horse, facts.id, foot, slot, value, zone, status, severity, confidence, reasons, rules,
    span_start, span_end
FROM facts JOIN visits ON visits.id = facts.visit JOIN memos ON memos.id = visits.memo
WHERE facts.flagged = 1 AND facts.stands = 1 AND visits.stands = 1
AND (facts.reading IS NULL OR facts.reading = memos.reading)
ORDER BY facts.visit, facts.position
"""
_FLAGS = """
SELECT visits.id, visits.horse, flags.id, kind, reason, span_start, span_end
FROM flags JOIN memos ON memos.id = flags.memo JOIN visits ON visits.id = coalesce(
    flags.visit, (SELECT id FROM visits WHERE memo = flags.memo AND stands = 1 ORDER BY position LIMIT 1)
)
WHERE flags.settled = 0 AND flags.reading = memos.reading AND visits.stands = 1
ORDER BY flags.visit IS NULL, flags.position, flags.id
"""
# A person looked at the question whose visit it was and left it: a flag is answered, and there is no horse.
_LEFT = """
EXISTS (
    SELECT 1 FROM changes WHERE changes.memo = visits.memo AND (changes.visit = visits.id OR changes.visit IS NULL)
    AND kind = 'look' AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)
)
"""


_STATUSES = {status.value: status for status in Status}
_SEVERITIES: dict[str | None, Severity | None] = {None: None, **{severity.value: severity for severity in Severity}}
_KINDS = {kind.value: kind for kind in FlagKind}


class Doubts(OpenedStore):
    """What is open in the store. Every method raises StoreError."""

    def doubted(self) -> dict[int, DoubtedVisit]:
        """Every visit with a flagged fact, an open flag or no horse, by its number."""
        found: dict[int, DoubtedVisit] = {}
        texts = lru_cache(maxsize=None)(_texts)
        with plain_errors(self.folder):
            for number, left in self._database.execute(
                f"SELECT id, {_LEFT} FROM visits WHERE horse IS NULL AND stands = 1"
            ):
                found[number] = DoubtedVisit(number, None, bool(left))
            for number, horse, *row in self._database.execute(_FACTS):
                _visit(found, number, horse).facts.append(_fact(row, texts))
            for number, horse, row_id, kind, reason, start, end in self._database.execute(_FLAGS):
                flag = ToldFlag(_KINDS[kind], reason, (start, end))
                _visit(found, number, horse).flags.append(DoubtedFlag(row_id, flag))
        return found

    def left_without_horse(self, visit_id: int) -> bool:
        """Whether a person looked at the question whose visit it was, and left it without a horse."""
        sql = f"SELECT 1 FROM visits WHERE id = ? AND horse IS NULL AND {_LEFT}"
        with plain_errors(self.folder):
            return self._database.execute(sql, [visit_id]).fetchone() is not None


def _visit(found: dict[int, DoubtedVisit], number: int, horse: int | None) -> DoubtedVisit:
    if number not in found:
        found[number] = DoubtedVisit(number, horse)
    return found[number]


def _fact(row: Sequence[Any], texts: Callable[[str], tuple[str, ...]]) -> DoubtedFact:
    number, foot, slot, value, zone, status, severity, confidence, reasons, rules, start, end = row
    told = ToldFact(
        foot, slot, value, zone, _STATUSES[status], _SEVERITIES[severity], confidence, True, texts(reasons),
        texts(rules), (start, end),
    )  # fmt: skip
    return DoubtedFact(number, told)


def _texts(kept: str) -> tuple[str, ...]:
    return tuple(json.loads(kept))
