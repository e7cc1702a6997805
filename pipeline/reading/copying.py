"""The shared ground of ellipsis: a draft said once and meant again on other feet."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pipeline.reading.questions import SOUGHT
from pipeline.reading.talk import Draft, Feet, Segment, Talk


@dataclass
class Copied:
    """A draft that repeats another one on other feet."""

    draft: Draft
    source: Draft


def told_before(talk: Talk, segment: Segment) -> list[Draft]:
    """What was said of the horse before the segment, and what was looked for."""
    return [
        d
        for s in talk.segments[: segment.index]
        for d in s.drafts
        if s.horse == segment.horse and (not d.dropped or SOUGHT in d.rules)
    ]


def content_of(talk: Talk, segment: Segment) -> set[str]:
    """The words of the segment without its feet."""
    feet = {i for m in segment.having("feet") for i in range(m.start, m.end)}
    return {talk.words[i] for i in range(segment.start, segment.end) if i not in feet}


def copy_draft(segment: Segment, draft: Draft, feet: Feet, rule: str) -> list[Copied]:
    """The draft once more in this segment, on these feet."""
    if draft.feet == feet:
        return []
    evidence = set(range(segment.start, segment.end)) | draft.evidence
    rules = [r for r in draft.rules if not r.startswith("foot:")]
    made = replace(
        draft,
        feet=feet,
        dropped=False,
        segment=segment,
        start=segment.start,
        end=segment.end,
        foot_carried=False,
        rules=[*rules, rule],
        evidence=evidence,
    )
    segment.drafts.append(made)
    return [Copied(made, draft)]
