"""Spot checks: some fields that nobody doubts are asked too, to learn how often the record is silently wrong.

Which ones is decided by a hash of the memo and the words, so that looking at the list again changes nothing, and
nobody can choose the easy ones.
"""

from __future__ import annotations

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import date
from statistics import NormalDist

from pipeline.keeping import KeptFact, KeptVisit, Store

SHARE = 0.05  # of the fields without a flag
DRAWN_DAYS = 14  # back from the newest visit; older days are asked no more
_SEED = "clinchbook spot check 1"


def drawn(store: Store, visits: Sequence[KeptVisit]) -> list[tuple[KeptVisit, list[KeptFact]]]:
    """The fields to check that nobody has decided yet: of every day SHARE of those without a flag, at least one."""
    by_day: dict[date, list[tuple[KeptVisit, KeptFact]]] = defaultdict(list)
    answered = store.once_flagged(kept.id for visit in visits for kept in (*visit.facts, *visit.dropped))
    for visit in visits:
        for kept in (*visit.facts, *visit.dropped):
            if not kept.fact.flagged and not kept.by_hand and kept.id not in answered:
                by_day[visit.visit.date].append((visit, kept))
    return [pair for day in sorted(by_day) for pair in _open(_of_day(by_day[day]))]


def chance(visit: KeptVisit, kept: KeptFact) -> float:
    """A number in [0, 1) that follows from the memo and the words alone; one field on several feet has one number."""
    said = f"{_SEED}|{visit.memo.record.memo.sha256}|{kept.fact.span}|{kept.fact.slot}"
    return int(hashlib.sha256(said.encode()).hexdigest()[:12], 16) / 16**12


def place_of(key: str, places: int) -> int:
    """Where among ``places`` an item goes, so that a spot check is not always the last."""
    return int(hashlib.sha256(f"{_SEED}|{key}".encode()).hexdigest()[:8], 16) % places


def wilson(wrong: int, looked_at: int, level: float = 0.95) -> tuple[float, float]:
    """The interval of a share after few trials (Wilson 1927, J Am Stat Assoc 22:209-212); (0, 1) after none."""
    if looked_at == 0:
        return 0.0, 1.0
    z = NormalDist().inv_cdf(0.5 + level / 2)
    share = wrong / looked_at
    middle = share + z * z / (2 * looked_at)
    half = z * ((share * (1 - share) + z * z / (4 * looked_at)) / looked_at) ** 0.5
    whole = 1 + z * z / looked_at
    return max(0.0, (middle - half) / whole), min(1.0, (middle + half) / whole)


def silent_errors(store: Store) -> str:
    """One sentence: how many spot checks were wrong so far, and what share that may be in truth."""
    done = store.spot_checked()
    if done.looked_at == 0:
        return "no spot check yet; the review asks some"
    low, high = wilson(done.wrong, done.looked_at)
    share = done.wrong / done.looked_at
    checks = "spot check" if done.looked_at == 1 else "spot checks"
    return (
        f"{done.wrong} of {done.looked_at} {checks} found an error that nothing had flagged: {share:.0%} "
        f"(between {low:.0%} and {high:.0%} with 95 % confidence; Wilson 1927)"
    )


def _of_day(pairs: list[tuple[KeptVisit, KeptFact]]) -> list[tuple[KeptVisit, KeptFact]]:
    least = min(chance(visit, kept) for visit, kept in pairs)
    return [(visit, kept) for visit, kept in pairs if (number := chance(visit, kept)) < SHARE or number == least]


def _open(pairs: Iterable[tuple[KeptVisit, KeptFact]]) -> list[tuple[KeptVisit, list[KeptFact]]]:
    by_visit: dict[int, tuple[KeptVisit, list[KeptFact]]] = {}
    for visit, kept in pairs:
        if kept.stands and not kept.settled:
            by_visit.setdefault(visit.id, (visit, []))[1].append(kept)
    return list(by_visit.values())
