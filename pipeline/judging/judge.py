"""Judging a memo: every fact gets its confidence, its flag and the reasons; contradictions become flags."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from pipeline.judging.agreement import disagreements
from pipeline.judging.confidence import FLAG_BELOW, weigh
from pipeline.judging.earlier import LastVisit, changed, unmentioned
from pipeline.judging.surroundings import Surroundings
from pipeline.judging.unread import unread_sentences
from pipeline.record import Fact, Flag, FlagKind, Transcript, Visit

_CONTRADICTED = 0.5

LastOf = Callable[[Visit], LastVisit | None]


def judge(
    visits: Sequence[Visit], transcript: Transcript, last_of: LastOf | None = None, flags: Sequence[Flag] = ()
) -> list[Visit]:
    """The same visits with confidence, flags and reasons filled in; the facts themselves are never changed.

    ``last_of`` gives the visit before of the same horse, or None where it is not known; ``flags`` are what hearing has
    flagged already.
    """
    judged = [_judge_visit(visit, transcript, last_of(visit) if last_of else None) for visit in visits]
    if transcript.heard and judged:
        for number, flag in unread_sentences(transcript, Surroundings(transcript.text), judged, flags):
            judged[number].flags.append(flag)
    return judged


def _judge_visit(visit: Visit, transcript: Transcript, last: LastVisit | None) -> Visit:
    facts = [_judge_fact(fact, transcript) for fact in visit.facts]
    flags = list(visit.flags)
    for group, reason in disagreements(facts):
        flags.append(_contradiction(group, reason))
        _doubt(group, reason)
    if last is not None:
        for group, reason in changed(facts, last):
            _doubt(group, reason)
        flags += unmentioned(facts, visit.date, last)
    return visit.model_copy(update={"facts": facts, "flags": flags})


def _doubt(group: Sequence[Fact], reason: str) -> None:
    for fact in group:
        fact.confidence = round(min(fact.confidence, _CONTRADICTED), 3)
        fact.flagged = True
        if reason not in fact.reasons:
            fact.reasons.append(reason)


def _judge_fact(fact: Fact, transcript: Transcript) -> Fact:
    confidence, reasons = weigh(fact, transcript)
    flagged = confidence < FLAG_BELOW
    return fact.model_copy(update={"confidence": confidence, "flagged": flagged, "reasons": reasons if flagged else []})


def _contradiction(group: list[Fact], reason: str) -> Flag:
    first, last = min(group, key=lambda f: f.span), max(group, key=lambda f: f.span)
    return Flag(
        kind=FlagKind.CONTRADICTION,
        reason=reason,
        quote=last.quote,
        start=first.start,
        end=last.end,
        span=(first.span[0], last.span[1]),
    )
