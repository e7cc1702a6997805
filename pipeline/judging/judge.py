"""Judging a memo: every fact gets its confidence, its flag and the reasons; contradictions become flags."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from pipeline.judging.agreement import disagreements
from pipeline.judging.confidence import FLAG_BELOW, doubts, weigh
from pipeline.judging.earlier import LastVisit, changed, unmentioned
from pipeline.judging.encoding import encode
from pipeline.judging.features import HARD_TO_HEAR, Clearness, EvidenceOfMemo, Found, clearness, has_words
from pipeline.judging.model import Care, Model, shipped
from pipeline.judging.named import doubt_of_horse
from pipeline.judging.overlooked import overlooked
from pipeline.judging.plausibility import implausible
from pipeline.judging.putting_right import asked_since
from pipeline.judging.read_again import feet_left_out, read_otherwise
from pipeline.judging.reasons import reasons_for
from pipeline.judging.rewordings import doubtful_rewordings
from pipeline.judging.seam_questions import question, whose
from pipeline.judging.second_horse import Seam, SecondHorse
from pipeline.judging.unread import ASKED, Span, foreign, overlaps, unread_sentences
from pipeline.record import Fact, Flag, FlagKind, RosterHorse, Transcript, Visit

_CONTRADICTED = 0.5
_ASKED = 0.85  # no fact about which a question of its own is asked is trusted more

LastOf = Callable[[Visit], LastVisit | None]
Groups = list[tuple[list[Fact], str]]


@dataclass(frozen=True)
class Judging:
    """What judging a memo needs for each of its facts."""

    transcript: Transcript
    evidence: EvidenceOfMemo
    model: Model
    care: Care
    clearness: Clearness
    foreign: Sequence[Span]  # what is not English
    names: Sequence[Flag | None]  # what is asked about the horse of each visit, besides what the reader asks
    asked: Sequence[bool]  # whether anything is
    seams: Sequence[Sequence[Seam]]  # what of each visit may be told of another horse, whose name was not read


def judge(
    visits: Sequence[Visit],
    transcript: Transcript,
    last_of: LastOf | None = None,
    care: Care = Care.USUAL,
    flags: Sequence[Flag] = (),
    roster: Sequence[RosterHorse] = (),
) -> list[Visit]:
    """The same visits with confidence, flags and reasons filled in; the facts themselves are never changed.

    ``last_of`` gives the visit before of the same horse, or None where it is not known; ``care`` says how much is put
    before a person; ``flags`` are what hearing has flagged already; ``roster`` are the horses that may be spoken of.
    """
    models = shipped()
    evidence = EvidenceOfMemo(transcript, visits, roster)
    model = models["heard" if transcript.heard else "typed"]
    strange, told = foreign(transcript, evidence.around, flags)
    names = [doubt_of_horse(visit, visits, transcript, evidence.around, evidence.names) for visit in visits]
    asked = [name is not None or _horse_asked(visit) for visit, name in zip(visits, names, strict=True)]
    second = SecondHorse(evidence.around, transcript, evidence.names, visits)
    seams = [second.seams(visit) for visit in visits]
    judging = Judging(transcript, evidence, model, care, clearness(transcript), strange, names, asked, seams)
    judged = [
        _judge_visit(number, visit, judging, last_of(visit) if last_of else None, flags)
        for number, visit in enumerate(visits)
    ]
    for seen in judged[:1]:
        seen.flags.extend(told)
    for seen, told in zip(judged, doubtful_rewordings(judged, transcript), strict=True):
        seen.flags.extend(told)
    for number, flag in unread_sentences(transcript, evidence.around, judged, flags):
        judged[number].flags.append(flag)
    for number, flag in overlooked(transcript, evidence.around, judged, flags, care):
        judged[number].flags.append(flag)
    return judged


def _horse_asked(visit: Visit) -> bool:
    return any(flag.kind is FlagKind.HORSE for flag in visit.flags)


def _judge_visit(number: int, visit: Visit, judging: Judging, last: LastVisit | None, heard: Sequence[Flag]) -> Visit:
    against: Groups = list(disagreements(visit.facts))
    jumps: Groups = list(changed(visit.facts, last)) if last is not None else []
    flags = [flag for flag in visit.flags if not _asked_already(flag, heard)]
    flags += [_contradiction(group, reason) for group, reason in against]
    name = judging.names[number]
    if name is not None:
        flags.append(name)
    flags += _feet_left_out(visit, judging)
    flags += [question(seam, visit, judging.transcript, judging.evidence.around) for seam in judging.seams[number]]
    if last is not None:
        flags += unmentioned(visit.facts, visit.date, last)
    others = any(asked for other, asked in enumerate(judging.asked) if other != number)
    doubted = {id(fact) for group, _ in against for fact in group}
    facts = []
    for fact in visit.facts:
        told = _told(fact, against), _told(fact, jumps)
        mine = whose(fact, visit, judging.seams[number], judging.transcript, judging.evidence.around)
        elsewhere = len(doubted - {id(fact)})
        found = Found(implausible(fact) is not None, bool(told[0]), bool(told[1]), others, elsewhere)
        facts.append(_asked_whose(_judge_fact(fact, visit, judging, found, told), mine))
    return visit.model_copy(update={"facts": facts, "flags": flags})


def _feet_left_out(visit: Visit, judging: Judging) -> list[Flag]:
    """What the second reader misses of statements whose words are there and are English."""
    asked = [f for f in visit.facts if has_words(f, judging.transcript) and not overlaps(f.span, judging.foreign)]
    spans = {fact.span for fact in asked}
    read = [*visit.facts, *(fact for fact in judging.evidence.facts if fact.span in spans)]
    return list(feet_left_out(asked, read, judging.evidence.views, judging.transcript, judging.care))


def _asked_whose(fact: Fact, reason: str | None) -> Fact:
    """The judged fact, flagged where it may be told of another horse."""
    if reason is None:
        return fact
    confidence = min(fact.confidence, _CONTRADICTED)
    return fact.model_copy(update={"confidence": confidence, "flagged": True, "reasons": [*fact.reasons, reason]})


def _asked_already(flag: Flag, heard: Sequence[Flag]) -> bool:
    """Whether hearing has put these words before a person, who will listen to them once."""
    start, end = flag.span
    return flag.kind is FlagKind.NOT_UNDERSTOOD and any(f.span[0] < end and start < f.span[1] for f in heard)


def _told(fact: Fact, groups: Iterable[tuple[list[Fact], str]]) -> list[str]:
    return list(dict.fromkeys(reason for group, reason in groups if any(one is fact for one in group)))


def _judge_fact(fact: Fact, visit: Visit, judging: Judging, found: Found, told: tuple[list[str], list[str]]) -> Fact:
    against, jumps = told
    if has_words(fact, judging.transcript):
        confidence, reasons = _by_model(fact, visit, judging, found)
    else:
        confidence, reasons = weigh(fact, judging.transcript)
        reasons = reasons if confidence < FLAG_BELOW else []
    reasons += [reason for reason in (*against, *jumps) if reason not in reasons]
    if overlaps(fact.span, judging.foreign):
        reasons = [ASKED, *reasons]
        confidence = min(confidence, _CONTRADICTED)
    if against or jumps:
        confidence = min(confidence, _CONTRADICTED)
    return fact.model_copy(
        update={"confidence": round(confidence, 3), "flagged": bool(reasons), "reasons": reasons}
    )  # fmt: skip


def _by_model(fact: Fact, visit: Visit, judging: Judging, found: Found) -> tuple[float, list[str]]:
    evidence = judging.evidence.of(fact, visit, found)
    wrong, parts = judging.model.doubt(encode(evidence), judging.care)
    own = [*asked_since(fact), *doubts(fact, judging.transcript)]
    asked = own or _in_poor_sound(fact, judging)
    if parts is not None:
        otherwise = read_otherwise(fact, judging.evidence.views.get(id(fact)))
        asked = asked or reasons_for(fact, parts, judging.transcript, judging.evidence.around, otherwise)
    return (min(1 - wrong, _ASKED) if own else 1 - wrong), asked


def _in_poor_sound(fact: Fact, judging: Judging) -> list[str]:
    """What is asked besides where the whole memo was hard to hear, and the model knows too little of that."""
    if judging.clearness is Clearness.CLEAR:
        return []
    confidence, reasons = weigh(fact, judging.transcript)
    if confidence < FLAG_BELOW and reasons:
        return reasons
    return [HARD_TO_HEAR] if judging.clearness is Clearness.BAD else []


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
