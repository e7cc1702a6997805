"""A problem that stood open and was not spoken of: whether it is gone, or still there, answered by one key."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from pipeline.judging.earlier import LastVisit, unmentioned
from pipeline.keeping import Store
from pipeline.record import Fact, Status, Visit
from pipeline.terms import FEET, Said
from pipeline.using.review.choices import Choice
from pipeline.using.review.items import Item, ItemKind, with_feet

_CLOSED = (Status.RESOLVED, Status.ABSENT)


def gone_or_there(store: Store, item: Item) -> list[Choice]:
    """The two answers to a question after what is not spoken of; [] for any other question."""
    visit = item.visit.visit
    last = store.last_visit(visit) if item.kind is ItemKind.WORDS and not item.facts else None
    if last is None:
        return []
    asked = {flag.reason for flag in unmentioned(visit.facts, visit.date, last)}
    if not any(kept.flag.reason in asked for kept in item.flags):
        return []
    left = _left_open(visit, last)
    return [
        Choice(_listed(left, Status.RESOLVED), adds=_said(left, Status.RESOLVED)),
        Choice(f"still there: {_listed(left, Status.PRESENT)}", adds=_said(left, Status.PRESENT)),
    ]


def _left_open(visit: Visit, last: LastVisit) -> list[Said]:
    """The problems of the last visit that the question is about: each alone would be asked about."""
    closed = [fact for fact in last.facts if fact.status in _CLOSED]
    return [
        fact
        for fact in last.facts
        if fact not in closed and unmentioned(visit.facts, visit.date, replace(last, facts=[fact, *closed]))
    ]


def _said(left: Sequence[Said], status: Status) -> tuple[Fact, ...]:
    return tuple(
        Fact.model_validate(
            {"foot": one.foot, "slot": one.slot, "value": one.value, "zone": one.zone, "status": status}
        )
        for one in left
    )


def _listed(left: Sequence[Said], status: Status) -> str:
    """What is left, each thing once with its feet: ``left hind, right hind: thrush: gone now``."""
    feet: dict[tuple[str | float, str | None], list[Fact]] = {}
    for fact in _said(left, status):
        feet.setdefault((fact.value, fact.zone), []).append(fact)
    order = (*FEET, None)
    return ", ".join(
        with_feet(facts[0], tuple(sorted({fact.foot for fact in facts}, key=order.index))) for facts in feet.values()
    )
