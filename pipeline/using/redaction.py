"""A record without the people in it: what may stay is listed, everything else is left out.

No text that a person said or wrote stays, since any of it may name somebody: quotes, notes, transcript, reasons, file
names, the roster's columns. The horse becomes a number; dates, feet, trade words, measures and grades stay.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from pipeline.keeping import KeptHorse, KeptVisit
from pipeline.keeping.record_file import ChangeOnFile, HorseOnFile, MemoOnFile, RecordFile, VisitOnFile
from pipeline.record import Fact, Flag, FlagKind, Memo, MemoRecord, RosterHorse, Transcript, Visit

_NOT_SURE = "not sure; the reason is left out"
_FLAG_WORDS = {
    FlagKind.HORSE: "Which horse it was is in doubt.",
    FlagKind.NOT_UNDERSTOOD: "Something was said that was not understood.",
    FlagKind.CONTRADICTION: "Two statements contradict each other.",
    FlagKind.UNCLEAR_SPEECH: "A stretch of speech could not be made out.",
    FlagKind.DATE: "The day of the visit is in doubt.",
    FlagKind.SOUND: "Part of the recording is in doubt.",
}
_KEPT_COLUMNS = frozenset({"foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "date"})


def horse_number(number: int) -> str:
    """What the ``number``-th horse (from 0) of a redacted record is called."""
    return f"Horse {number + 1}"


def redacted(horse: KeptHorse, visits: Sequence[KeptVisit], number: int = 0) -> tuple[KeptHorse, list[KeptVisit]]:
    """The horse and its visits without names and without words that were said; row numbers stay as they are."""
    nameless = KeptHorse(horse.id, RosterHorse(name=horse_number(number)))
    return nameless, [_visit(visit, nameless) for visit in visits]


def redacted_file(file: RecordFile) -> RecordFile:
    """The same for a whole record file."""
    horses = [HorseOnFile(name=horse_number(number)) for number in range(len(file.horses))]
    memos = [_memo_on_file(memo) for memo in file.memos]
    history = [_change(change) for change in file.history if _may_stay(change)]
    return file.model_copy(update={"redacted": True, "horses": horses, "memos": memos, "history": history})


def _visit(kept: KeptVisit, horse: KeptHorse) -> KeptVisit:
    record = kept.memo.record
    bare = MemoRecord(memo=_memo(record.memo), transcript="", visits=[], flags=[_flag(flag) for flag in record.flags])
    memo = replace(kept.memo, record=bare, transcript=Transcript(text=""), file_name="", original=Path())
    visit = Visit(
        horse=horse.name,
        horse_match=kept.visit.horse_match,
        date=kept.visit.date,
        facts=[_fact(fact) for fact in kept.visit.facts],
        flags=[_flag(flag) for flag in kept.visit.flags],
    )
    return replace(kept, visit=visit, horse=horse, memo=memo)


def _memo(memo: Memo) -> Memo:
    return Memo(seconds=memo.seconds, recorded_at=memo.recorded_at, container=memo.container)


def _fact(fact: Fact) -> Fact:
    return Fact(
        foot=fact.foot,
        slot=fact.slot,
        value=fact.value,
        zone=fact.zone,
        status=fact.status,
        severity=fact.severity,
        confidence=fact.confidence,
        flagged=fact.flagged,
        reasons=[_NOT_SURE] if fact.flagged else [],
        match=fact.match,
    )


def _flag(flag: Flag) -> Flag:
    return Flag(kind=flag.kind, reason=_FLAG_WORDS[flag.kind])


def _memo_on_file(memo: MemoOnFile) -> MemoOnFile:
    return MemoOnFile(
        memo=_memo(memo.memo),
        transcript="",
        visits=[_visit_on_file(visit) for visit in memo.visits],
        cautions=memo.cautions,
        flags=[_flag(flag) for flag in memo.flags],
        whole=False,
        kept_at=memo.kept_at,
        weights=None,
        vocabulary=memo.vocabulary,
    )


def _visit_on_file(visit: VisitOnFile) -> VisitOnFile:
    return VisitOnFile(
        horse=None if visit.of_horse is None else horse_number(visit.of_horse),
        horse_match=visit.horse_match,
        date=visit.date,
        facts=[_fact(fact) for fact in visit.facts],
        flags=[_flag(flag) for flag in visit.flags],
        of_horse=visit.of_horse,
        position=visit.position,
    )


def _may_stay(change: ChangeOnFile) -> bool:
    return change.what in ("fact", "visit") and change.column in _KEPT_COLUMNS


def _change(change: ChangeOnFile) -> ChangeOnFile:
    return change.model_copy(update={"who": "", "why": ""})
