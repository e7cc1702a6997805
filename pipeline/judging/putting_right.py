"""What was read as of today is put right where the second reader is sure that it is of another time.

Reading takes what is told for today's unless a rule says otherwise, so a turn that no rule knows makes a plan, or
something of long ago, today's. Of these two turns alone the second reader is right more often than the rules, and
nowhere else is a fact changed for what it says (DEVELOPERS.md, section 5). Whatever is put right is asked about.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from pipeline.judging.features import COPY_RULES, FAR_RULES, has_words
from pipeline.judging.second_reader import View, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.judging.unread import foreign, overlaps
from pipeline.reading.scopes import PLANNABLE
from pipeline.record import HORSE_SLOTS, SECOND_READER, SLOTS, Fact, Flag, Status, Transcript, Visit

# The chance of each from which it is believed. DEVELOPERS.md tells how they were chosen.
_SURE = {Status.PLANNED: 0.5, Status.HISTORY: 0.8}
_WHEN = {Status.PLANNED: "for a later day", Status.HISTORY: "of an earlier time"}
# Rules that tell how something was attached or copied, by what stands before a colon; the others give it a time, or
# say that it is there.
_ATTACHED = COPY_RULES | FAR_RULES | {
    *SLOTS, "foot", "zone", "severity", "one", "it", "some of it", "as the other foot", "the other one",
    "the finding before, on another foot", "the same as the horse before", "the same in another degree",
    "the same number of nails", "the same size", "the same size of nail", "the same stuff",
}  # fmt: skip


def put_right(visits: Sequence[Visit], transcript: Transcript, flags: Sequence[Flag] = ()) -> list[Visit]:
    """The same visits with another status, and a rule that says so, where the second reader is sure of it.

    ``flags`` are what hearing has flagged already. What is not English, or has no words, stays as it is.
    """
    around = Surroundings(transcript.text)
    strange, _ = foreign(transcript, around, flags)
    facts = [fact for visit in visits for fact in visit.facts]
    known = [fact for fact in facts if has_words(fact, transcript) and not overlaps(fact.span, strange)]
    return put_right_by(visits, second_reader().views(around, known))


def put_right_by(visits: Sequence[Visit], views: Mapping[int, View]) -> list[Visit]:
    """The same by views that are given, by the fact's id; a fact that stays as it is stays the same object."""
    return [visit.model_copy(update={"facts": _facts(visit, views)}) for visit in visits]


def _facts(visit: Visit, views: Mapping[int, View]) -> list[Fact]:
    statements: dict[tuple[object, ...], list[Fact]] = {}
    for fact in visit.facts:
        statements.setdefault(_statement(fact), []).append(fact)
    told = {_told(fact, fact.status) for fact in visit.facts}
    better = {key: _better(facts, views, told) for key, facts in statements.items()}
    return [_changed(fact, better[_statement(fact)]) for fact in visit.facts]


def _changed(fact: Fact, status: Status | None) -> Fact:
    if status is None:
        return fact
    return fact.model_copy(update={"status": status, "rules": [*fact.rules, f"{SECOND_READER}{_WHEN[status]}"]})


def _statement(fact: Fact) -> tuple[object, ...]:
    return fact.span, fact.slot, fact.value, fact.status


def _told(fact: Fact, status: Status) -> tuple[object, ...]:
    return fact.foot, fact.slot, fact.value, status


def _better(facts: Sequence[Fact], views: Mapping[int, View], told: set[tuple[object, ...]]) -> Status | None:
    """The status that all feet of a statement together speak for, unless one of them has been told with it already."""
    if facts[0].status is not Status.PRESENT or any(id(fact) not in views or _decided(fact) for fact in facts):
        return None
    for status, least in _SURE.items():
        if status is Status.PLANNED and facts[0].slot not in PLANNABLE - HORSE_SLOTS:
            continue
        if sum(views[id(fact)].of_status(status) for fact in facts) >= least * len(facts):
            return None if any(_told(fact, status) in told for fact in facts) else status
    return None


def _decided(fact: Fact) -> bool:
    """Whether a rule has said of which time it is."""
    return any(rule.partition(": ")[0] not in _ATTACHED for rule in fact.rules)


def asked_since(fact: Fact) -> list[str]:
    """The question about a fact that was put right."""
    if not fact.put_right:
        return []
    return [f"By the words around it this is {_WHEN[fact.status]}; by itself it reads as of today. Which is it?"]
