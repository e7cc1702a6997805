"""What a new reading of a memo changed, visit by visit."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from pipeline.keeping import KeptVisit
from pipeline.record import Fact
from pipeline.using.show import horse_name
from pipeline.using.wording import FOOT_NAMES, fact_words, harmless


@dataclass(frozen=True)
class Difference:
    """One visit before and after: the facts that are gone, those that are new, and those with a new flag.

    ``was`` or ``now`` is None for a visit that was found, or is found, by only one of the two readings.
    """

    visit: KeptVisit  # as it is now, or as it was when it is no longer found
    was: KeptVisit | None
    now: KeptVisit | None
    gone: tuple[Fact, ...]
    new: tuple[Fact, ...]
    doubted: tuple[Fact, ...]


def differences(was: Sequence[KeptVisit], now: Sequence[KeptVisit]) -> list[Difference]:
    """The visits that the two readings tell differently, in the order of the memo, those no longer found last."""
    before = {visit.id: visit for visit in was}
    after = {visit.id: visit for visit in now}
    visits = {**after, **{number: visit for number, visit in before.items() if number not in after}}
    found = [_difference(visit, before.get(number), after.get(number)) for number, visit in visits.items()]
    return [one for one in found if _tells(one)]


def difference_lines(found: Sequence[Difference]) -> list[str]:
    """A heading a visit, then one line a fact: - what is gone, + what is new, ? what wants a look now."""
    lines = []
    for one in found:
        day = one.visit.visit.date.isoformat()
        lines.append(f"visit {one.visit.id}: {horse_name(one.visit)}, {day}{_standing(one)}")
        if one.was and one.now and horse_name(one.was) != horse_name(one.now):
            lines.append(f"  the horse was {horse_name(one.was)}")
        if one.was and one.now and one.was.visit.notes != one.now.visit.notes:
            lines.append("  the notes are others")
        signed = [*(("-", f) for f in one.gone), *(("+", f) for f in one.new), *(("?", f) for f in one.doubted)]
        lines += [f"  {sign} {FOOT_NAMES[fact.foot]}: {harmless(fact_words(fact))}" for sign, fact in signed]
    return lines


def difference_json(one: Difference) -> dict[str, object]:
    """The difference as JSON values."""
    return {
        "visit": one.visit.id,
        "found_before": one.was is not None,
        "found_now": one.now is not None,
        "horse_before": one.was and one.was.visit.horse,
        "horse_now": one.now and one.now.visit.horse,
        "gone": [fact.model_dump(mode="json") for fact in one.gone],
        "new": [fact.model_dump(mode="json") for fact in one.new],
        "doubted": [fact.model_dump(mode="json") for fact in one.doubted],
    }


def _difference(visit: KeptVisit, was: KeptVisit | None, now: KeptVisit | None) -> Difference:
    before = was.visit.facts if was else []
    after = now.visit.facts if now else []
    flagged = Counter(_said(fact) for fact in before if fact.flagged)
    new = _beyond(after, before)
    doubted = [fact for fact in after if fact.flagged and fact not in new and not flagged[_said(fact)]]
    return Difference(visit, was, now, tuple(_beyond(before, after)), tuple(new), tuple(doubted))


def _beyond(facts: Sequence[Fact], others: Sequence[Fact]) -> list[Fact]:
    """The facts that the others do not hold, counted."""
    left = Counter(_said(fact) for fact in others)
    beyond = []
    for fact in facts:
        if left[_said(fact)]:
            left[_said(fact)] -= 1
        else:
            beyond.append(fact)
    return beyond


def _said(fact: Fact) -> tuple[object, ...]:
    return (fact.foot, fact.slot, fact.value, fact.zone, fact.status, fact.severity)


def _tells(one: Difference) -> bool:
    if one.was is None or one.now is None or one.gone or one.new or one.doubted:
        return True
    return (one.was.visit.horse, one.was.visit.notes) != (one.now.visit.horse, one.now.visit.notes)


def _standing(one: Difference) -> str:
    if one.now is None:
        return ", no longer found"
    return "" if one.was else ", not found before"
