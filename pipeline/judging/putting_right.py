"""What was read as of today is put right where the second reader is sure that it is of another time.

Reading takes what is told for today's unless a rule says otherwise, so a turn that no rule knows makes a plan, or
something of long ago, today's. Nowhere else is a fact changed for what the second reader says: it is right more often
than the rules about these two turns alone (DEVELOPERS.md, section 5). Whatever is put right is asked about.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from pipeline.judging.second_reader import View, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.record import SECOND_READER, SLOTS, Fact, Status, Transcript, Visit

# The chance of each from which it is believed. DEVELOPERS.md tells how they were chosen.
_SURE = {Status.PLANNED: 0.6, Status.HISTORY: 0.7}
# What is found, measured or answered today is no plan, whatever else is said around it.
_DONE = frozenset(
    {"work", "shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "treatment", "nails", "nail_size",
     "clips", "traction"}
)  # fmt: skip
_ATTACHED = frozenset({"foot", "zone", "severity", "one", "elliptic", *SLOTS})
_WHEN = {Status.PLANNED: "for a later day", Status.HISTORY: "of an earlier time"}


def put_right(visits: Sequence[Visit], transcript: Transcript) -> list[Visit]:
    """The same visits with another status, and a rule that says so, where the second reader is sure of it."""
    facts = [fact for visit in visits for fact in visit.facts]
    return put_right_by(visits, second_reader().views(Surroundings(transcript.text), facts))


def put_right_by(visits: Sequence[Visit], views: Mapping[int, View]) -> list[Visit]:
    """The same by views that are given, by the fact's id; a fact that stays as it is stays the same object."""
    return [visit.model_copy(update={"facts": _facts(visit, views)}) for visit in visits]


def _facts(visit: Visit, views: Mapping[int, View]) -> list[Fact]:
    told = {_told(fact, fact.status) for fact in visit.facts}
    statements: dict[tuple[object, ...], list[View]] = {}
    for fact in (fact for fact in visit.facts if id(fact) in views):
        statements.setdefault(_statement(fact), []).append(views[id(fact)])
    found = []
    for fact in visit.facts:
        better = _better(fact, statements.get(_statement(fact), []))
        if better is None or _told(fact, better) in told:
            found.append(fact)
            continue
        told.add(_told(fact, better))
        rules = [*fact.rules, f"{SECOND_READER}{_WHEN[better]}"]
        found.append(fact.model_copy(update={"status": better, "rules": rules}))
    return found


def _statement(fact: Fact) -> tuple[object, ...]:
    return fact.span, fact.slot, fact.value, fact.status


def _told(fact: Fact, status: Status) -> tuple[object, ...]:
    return fact.foot, fact.slot, fact.value, status


def _better(fact: Fact, views: Sequence[View]) -> Status | None:
    """The status that all feet of a statement together speak for, if they speak for one."""
    if not views or fact.status is not Status.PRESENT or fact.span[1] <= fact.span[0] or _decided(fact):
        return None
    for status, least in _SURE.items():
        if status is Status.PLANNED and fact.slot not in _DONE:
            continue
        if sum(view.of_status(status) for view in views) >= least * len(views):
            return status
    return None


def _decided(fact: Fact) -> bool:
    """Whether a rule says of which time it is; the others say how it was attached, as in "foot: named beside it"."""
    return any(rule.partition(": ")[0] not in _ATTACHED for rule in fact.rules)


def put_right_since(fact: Fact) -> list[str]:
    """The question about a fact that was put right."""
    if not any(rule.startswith(SECOND_READER) for rule in fact.rules):
        return []
    return [f"By the words around it this is {_WHEN[fact.status]}; by itself it reads as of today. Which is it?"]
