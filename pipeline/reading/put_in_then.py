"""What was only asked about, and is planned after all: "she was asking about studs, we'll put them in the hinds"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.foot_names import resolve
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.record import Status

_PUTTING = frozenset({"put", "fit", "try", "use", "go", "get", "give", "do", "nail", "have"})
_THEM = frozenset({"them", "those", "it", "some", "one", "that", "these"})
_FITTED = frozenset({"traction", "pad", "wedge", "packing", "shoe_type", "clips"})
_SHALL = frozenset({"'ll", "will", "going", "gon"})


def plan_after_all(talk: Talk, sentence: Sentence, before: list[Segment]) -> None:
    """Plan, on the feet that are named, what was asked about in this sentence or in the one before."""
    if not sentence.says(_SHALL) or not (talk.having("plans", "unmet") or talk.having("wishes")):
        return
    for position, segment in enumerate(sentence):
        words = set(talk.words[segment.start : segment.end])
        feet = [m for m in segment.having("feet") if m.get("feet")]
        if segment.drafts or len(feet) > 1 or not (words & _PUTTING and words & _THEM and words & _SHALL):
            continue
        told = [d for s in [*before, *sentence[:position]] for d in s.drafts if s.horse == segment.horse]
        if not feet:
            _plan_where_wanted(segment, told)
            continue
        where = resolve(str(feet[0].get("feet")), None)
        if where and told and _only_asked_about(told[-1]):
            _plan(segment, told[-1], where)


def _plan_where_wanted(segment: Segment, told: list[Draft]) -> None:
    """ "They wanted studs in the hinds, I said not this time. If it's wet he'll get them": on the feet they wanted."""
    last = told[-1] if told else None
    if last is None or last.slot not in _FITTED or not last.feet or not segment.having("plans"):
        return
    wanted = [d for d in told if (d.slot, d.value) == (last.slot, last.value) and d.segment.having("wishes")]
    if wanted and (last.status is Status.ABSENT or last is wanted[-1]):
        _plan(segment, last, last.feet)


def _only_asked_about(draft: Draft) -> bool:
    return draft.dropped and "only intended" in draft.rules and draft.slot in _FITTED


def _plan(segment: Segment, asked: Draft, where: Feet) -> None:
    made = replace(
        asked,
        segment=segment,
        start=segment.start,
        end=segment.end,
        feet=where,
        status=Status.PLANNED,
        dropped=False,
        foot_carried=False,
        rules=["asked about, and planned"],
        evidence={*range(segment.start, segment.end), *asked.evidence},
    )
    segment.drafts.append(made)
