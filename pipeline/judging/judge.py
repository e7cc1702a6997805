"""Judging a memo: every fact gets its confidence, its flag and the reasons; contradictions become flags."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.judging.agreement import disagreements
from pipeline.judging.confidence import FLAG_BELOW, weigh
from pipeline.judging.rewordings import doubtful_rewordings
from pipeline.record import Fact, Flag, FlagKind, Transcript, Visit

_CONTRADICTED = 0.5


def judge(visits: Sequence[Visit], transcript: Transcript) -> list[Visit]:
    """The same visits with confidence, flags and reasons filled in; the facts themselves are never changed."""
    judged = [_judge_visit(visit, transcript) for visit in visits]
    doubts = doubtful_rewordings(judged, transcript)
    return [
        visit.model_copy(update={"flags": visit.flags + own}) if own else visit
        for visit, own in zip(judged, doubts, strict=True)
    ]


def _judge_visit(visit: Visit, transcript: Transcript) -> Visit:
    facts = [_judge_fact(fact, transcript) for fact in visit.facts]
    flags = list(visit.flags)
    for group, reason in disagreements(facts):
        flags.append(_contradiction(group, reason))
        for fact in group:
            fact.confidence = round(min(fact.confidence, _CONTRADICTED), 3)
            fact.flagged = True
            if reason not in fact.reasons:
                fact.reasons.append(reason)
    return visit.model_copy(update={"facts": facts, "flags": flags})


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
