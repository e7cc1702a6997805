"""The questions of a review in their order: harm times doubt, one horse together.

The order is made of light rows; a visit in full is built when its questions are asked.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from datetime import date
from typing import NamedTuple

from pipeline.keeping import KeptFlag, KeptVisit, Store
from pipeline.keeping.doubted import DoubtedVisit
from pipeline.using.review.items import Item
from pipeline.using.review.questions import Asked, Question, questions_of, spot_checks
from pipeline.using.review.spot_checks import DRAWN_DAYS, drawn

_AT_ONCE = 50  # visits that are built together
Checks = dict[int, list[Question]]


class _Ranked(NamedTuple):
    """A visit with its open questions, and the horse that they are asked together with."""

    visit: int
    whose: tuple[str, int]
    questions: list[Question]


def keys(store: Store, day: date | None = None) -> list[str]:
    """The key of every open question of the store, or of one day: the horse with the most harmful doubt first, its own
    questions together."""
    ranked, _ = _in_order(store, day)
    return [question.key for one in ranked for question in one.questions]


def queue(store: Store, day: date | None = None) -> Iterator[Item]:
    """Every open question of the store, or of one day, in the order of ``keys``; built while they are taken."""
    ranked, checks = _in_order(store, day)
    numbers = [one.visit for one in ranked]
    for start in range(0, len(numbers), _AT_ONCE):
        for visit in store.visits_numbered(numbers[start : start + _AT_ONCE]):
            yield from _items(store, visit, checks[visit.id])


def items_of(store: Store, visit: KeptVisit) -> list[Item]:
    """The open questions of one visit in their order."""
    return _items(store, visit, _checks(store, store.visits_on(visit.visit.date))[visit.id])


def _items(store: Store, visit: KeptVisit, checks: Sequence[Question]) -> list[Item]:
    facts, flags = {kept.id: kept for kept in visit.facts}, {flag.id: flag for flag in _flags(visit)}
    still = [check for check in checks if all(kept.id in facts for kept in check.facts)]
    return [
        Item(
            one.key, one.kind, visit, one.score, tuple(facts[kept.id] for kept in one.facts),
            tuple(flags[kept.id] for kept in one.flags),
        )
        for one in questions_of(_in_full(store, visit), still)
    ]  # fmt: skip


def _in_order(store: Store, day: date | None) -> tuple[list[_Ranked], Checks]:
    """The visits with open questions, the horse with the worst doubt first; and the spot checks among them."""
    if day is None:
        recent = store.visits_since(store.days_back(DRAWN_DAYS))
        doubted = store.doubted()
    else:
        recent, doubted = store.visits_on(day), {}
    checks = _checks(store, recent)
    ranked = [_ranked(_light(visit), visit.horse, checks[number]) for number, visit in doubted.items()]
    for visit in recent:
        if visit.id not in doubted and (day is not None or checks[visit.id]):
            ranked.append(_ranked(_in_full(store, visit), visit.horse.id if visit.horse else None, checks[visit.id]))
    ranked = [one for one in ranked if one.questions]
    ranked.sort(key=lambda one: (-max(question.score for question in one.questions), one.questions[0].key))
    horses = {whose: place for place, whose in enumerate(dict.fromkeys(one.whose for one in ranked))}
    ranked.sort(key=lambda one: horses[one.whose])
    return ranked, checks


def _ranked(visit: Asked, horse: int | None, checks: Sequence[Question]) -> _Ranked:
    whose = ("visit", visit.id) if horse is None else ("horse", horse)
    return _Ranked(visit.id, whose, questions_of(visit, checks))


def _checks(store: Store, visits: Sequence[KeptVisit]) -> Checks:
    found: Checks = defaultdict(list)
    since = store.days_back(DRAWN_DAYS)
    recent = [visit for visit in visits if since is not None and visit.visit.date >= since]
    for visit, facts in drawn(store, recent):
        found[visit.id] += spot_checks(visit.id, facts)
    return found


def _light(visit: DoubtedVisit) -> Asked:
    return Asked(visit.id, visit.horse is None and not visit.left, visit.facts, visit.flags)


def _in_full(store: Store, visit: KeptVisit) -> Asked:
    nameless = visit.horse is None and not store.left_without_horse(visit.id)
    return Asked(visit.id, nameless, visit.facts, _flags(visit))


def _flags(visit: KeptVisit) -> list[KeptFlag]:
    first = visit.memo.visit_ids[:1] == (visit.id,)
    return [*visit.flags, *(visit.memo.flags if first else ())]
