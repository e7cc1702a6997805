"""Did it work? What was found on a foot before its set-up was changed, and after, side by side.

Plain counts of what was said. They claim no cause: season, work and rest are in them too.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.terms import Status
from pipeline.using.set_ups import SetUp, set_ups_over
from pipeline.using.wording import SIGN

COMPARED_SLOTS = ("shoe_type", "shoe_material", "pad", "wedge", "packing")
VISITS_EITHER_SIDE = 3
_NEVER_WITHOUT = frozenset({"shoe_type", "shoe_material"})  # every shoe has one, said or not
_SEEN = (Status.PRESENT, Status.SUSPECTED)


class Side(NamedTuple):
    """The visits on one side of a change that speak of the foot: how many there are, at how many of them each finding
    was seen, and the hoof testers' answers in order. Findings only suspected are counted with "perhaps" before them.
    ``flagged`` of the facts are not looked at yet."""

    visits: int
    findings: dict[str, int]
    testers: tuple[str, ...]
    flagged: int


class Outcome(NamedTuple):
    """A change of one foot's set-up on a day, and the sides of it. ``planned`` when an earlier visit planned it,
    ``flagged`` when nobody has looked yet at what the old or the new set-up rests on."""

    foot: str
    day: date
    visit_id: int
    old: str
    new: str
    planned: bool
    before: Side
    after: Side
    flagged: bool = False


def outcomes(visits: Sequence[SeenVisit]) -> list[Outcome]:
    """Every change of a foot's shoe, pad, wedge or packing, newest first, with up to three visits either side.

    What a visit finds, it finds before the work: the visit of the change itself belongs to the time before. The time
    after ends with the next change.
    """
    changed: dict[str, list[tuple[int, SetUp, SetUp]]] = {}
    place = {visit.id: number for number, visit in enumerate(visits)}
    for visit, old, new in set_ups_over(visits):
        if old is not None and _changed(old, new):
            changed.setdefault(new.foot, []).append((place[visit.id], old, new))
    found = []
    for foot, steps in changed.items():
        for number, (at, old, new) in enumerate(steps):
            first = steps[number - 1][0] + 1 if number else 0
            last = steps[number + 1][0] if number + 1 < len(steps) else len(visits) - 1
            before = _side(_speaking(visits[first : at + 1], foot)[-VISITS_EITHER_SIDE:], foot)
            after = _side(_speaking(visits[at + 1 : last + 1], foot)[:VISITS_EITHER_SIDE], foot)
            planned = _was_planned(visits[:at], foot, new)
            day = visits[at].date
            kinds = (kind_words(old), kind_words(new))
            flagged = _doubted(old) or _doubted(new)
            found.append(Outcome(foot, day, new.visit_id, *kinds, planned, before, after, flagged))
    return sorted(found, key=lambda outcome: (-outcome.day.toordinal(), outcome.foot))


def kind_words(set_up: SetUp) -> str:
    """The kind of a set-up in a few words: ``bare``, ``bare, boot``, ``egg bar, wedge pad, 3° wedge``."""
    if set_up.bare:
        return ", ".join(["bare", *(str(value) for value in set_up.values("shoe_type"))])
    words = []
    for slot in COMPARED_SLOTS:
        for value in set_up.values(slot):
            said = str(value).replace("_", " ") if isinstance(value, str) else f"{value:g}° wedge"
            words.append(f"{said} pad" if slot == "pad" and said != "pour in" else said)
    return ", ".join(words) or "shod, type not said"


def side_words(side: Side) -> str:
    """``thrush 2 of 3 visits; testers toe moderate, toe mild``."""
    if not side.visits:
        return "no visit"
    parts = [f"{name} {count} of {side.visits}" for name, count in side.findings.items()]
    words = ", ".join(parts) or f"no finding said, {side.visits} visit{'s' if side.visits > 1 else ''}"
    if side.testers:
        words += f"; testers {', '.join(side.testers)}"
    return f"{SIGN} {words}" if side.flagged else words


def _changed(old: SetUp, new: SetUp) -> bool:
    """Whether another kind of set-up is on the foot. A type or material that was only not said before is no change."""
    if old.bare or new.bare:
        return old.bare != new.bare
    for slot in COMPARED_SLOTS:
        before, now = old.values(slot), new.values(slot)
        unknown = slot in _NEVER_WITHOUT and not (before and now)
        if before != now and not unknown:
            return True
    return False


def _doubted(set_up: SetUp) -> bool:
    parts = [part for slot in COMPARED_SLOTS for part in set_up.parts.get(slot, ())]
    return any(part.fact.flagged for part in [*parts, *([set_up.work] if set_up.work else [])])


def _speaking(visits: Sequence[SeenVisit], foot: str) -> list[SeenVisit]:
    return [visit for visit in visits if any(fact.foot == foot for fact in visit.facts)]


def _side(visits: Sequence[SeenVisit], foot: str) -> Side:
    findings: Counter[str] = Counter()
    testers: list[str] = []
    flagged = 0
    for visit in visits:
        facts = [fact for fact in visit.facts if fact.foot == foot]
        seen = [fact for fact in facts if fact.slot == "finding" and fact.status in _SEEN]
        answers = [fact for fact in facts if fact.slot == "tester" and fact.status is Status.PRESENT]
        findings.update({_name(fact) for fact in seen})
        testers += [f"{_place(fact)}{fact.value}" for fact in answers]
        flagged += sum(fact.flagged for fact in (*seen, *answers))
    return Side(len(visits), dict(sorted(findings.items())), tuple(testers), flagged)


def _name(fact: SeenFact) -> str:
    name = str(fact.value).replace("_", " ")
    return f"perhaps {name}" if fact.status is Status.SUSPECTED else name


def _place(fact: SeenFact) -> str:
    return f"{fact.zone.replace('_', ' ')} " if fact.zone else ""


def _was_planned(earlier: Sequence[SeenVisit], foot: str, new: SetUp) -> bool:
    """Whether one of the last three visits before planned a part of the new set-up for this foot."""
    return any(
        fact.status is Status.PLANNED and fact.foot == foot and fact.value in new.values(fact.slot)
        for visit in earlier[-VISITS_EITHER_SIDE:]
        for fact in visit.facts
    )
