"""How bad a finding of an earlier time is today: "contracted heels in both fronts, severe, and now they're mild"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Severity, Status

AS_TODAY = "the finding before, as it is today"
_LIGHT = frozenset({
    "it", "'s", "is", "they", "'re", "are", "that", "those", "and", "only", "just", "down", "to", "a", "more", "like",
    "i", "'d", "call", "say", "would", "calling", "them", "'m", "both", "of", "all", "has", "have", "'ve", "gone",
    "come", "be", "about", "at", "back", "still", "no", "than", "very", "pretty", "quite", "the", "one",
})  # fmt: skip


def graded_today(talk: Talk, sentence: list[Segment], before: list[Segment]) -> None:
    """Add the finding of today where a word of today and a degree follow one that is told of an earlier time."""
    if not talk.having("severities") or not talk.having("times", "today"):
        return
    for position, segment in enumerate(sentence):
        degree = _degree(talk, segment)
        if degree is None:
            continue
        told = [d for s in [*before, *sentence[:position]] for d in s.drafts if s.horse == segment.horse]
        last = told[-1] if told else None
        if last is None or last.slot != "finding" or last.status is not Status.HISTORY:
            continue
        for draft in [d for d in last.segment.drafts if _key(d) == _key(last) and d.status is Status.HISTORY]:
            now = [d for d in told if _key(d) == _key(draft) and d.feet == draft.feet and d.status is Status.PRESENT]
            if "still" in talk.words[segment.start : segment.end]:
                draft.status, draft.severity = Status.PRESENT, Severity(degree)
            elif now:
                now[-1].severity = Severity(degree)
            else:
                _add(segment, draft, degree)


def _key(draft: Draft) -> tuple[str, object]:
    return draft.slot, draft.value


def _add(segment: Segment, draft: Draft, degree: str) -> None:
    made = replace(
        draft,
        segment=segment,
        start=segment.start,
        end=segment.end,
        status=Status.PRESENT,
        severity=Severity(degree),
        rules=[AS_TODAY],
        evidence={*range(segment.start, segment.end), *draft.evidence},
    )
    if draft.evidence & set(range(segment.start, segment.end)):
        draft.severity = None  # the degree is today's alone
    segment.drafts.append(made)


def _degree(talk: Talk, segment: Segment) -> str | None:
    """The one degree of a segment that says nothing else but that it is of today."""
    degrees, today = segment.having("severities"), segment.having("times", "today")
    if segment.drafts or len(degrees) != 1 or not today or segment.having("feet") or segment.having("denials"):
        return None
    held = {i for m in (*degrees, *today) for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(segment.start, segment.end) if i not in held}
    return str(degrees[0].get("severities")) if rest <= _LIGHT else None
