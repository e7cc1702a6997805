"""What is marked on the drawing of a foot: the last visit's findings, or the last answers to the hoof testers."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.keeping import KeptVisit
from pipeline.record import Fact, Foot, Status
from pipeline.using.hoof_map import Kind, Mark, kind_of
from pipeline.using.wording import fact_words

_ORDER = tuple(Kind)


def latest_marks(visits: Sequence[KeptVisit], foot: Foot) -> list[Mark]:
    """The marks of the last day's visit, the most pressing first; [] when this foot was not spoken of then."""
    if not visits:
        return []
    day = visits[-1].visit.date
    facts = [fact for visit in visits if visit.visit.date == day for fact in visit.visit.facts if fact.foot == foot]
    return _marks([(fact, fact_words(fact)) for fact in facts])


def tester_marks(visits: Sequence[KeptVisit], foot: Foot) -> list[Mark]:
    """The last answer to the hoof testers at each place of the foot, with its day, the most pressing first."""
    last: dict[str | None, tuple[Fact, str]] = {}
    for visit in visits:
        for fact in visit.visit.facts:
            if fact.foot == foot and fact.slot == "tester" and fact.status in (Status.PRESENT, Status.SUSPECTED):
                last[fact.zone] = (fact, f"{visit.visit.date.isoformat()} {fact_words(fact)}")
    return _marks(list(last.values()))


def _marks(told: Sequence[tuple[Fact, str]]) -> list[Mark]:
    kinds = [(kind, fact, words) for fact, words in told if (kind := kind_of(fact)) is not None]
    kinds.sort(key=lambda item: _ORDER.index(item[0]))
    return [
        Mark(number, fact.zone, f"{words} (not reviewed yet)" if fact.flagged else words, kind)
        for number, (kind, fact, words) in enumerate(kinds, start=1)
    ]
