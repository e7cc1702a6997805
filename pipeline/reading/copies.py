"""What is said once and meant twice: "right hind too", "hinds the same", "none in the off fore"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.feet import SETUP_SLOTS, FootGroup
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import HORSE_SLOTS, Status

_FOUND = frozenset({"finding", "tester", "pulse", "shoe_state"})
_ALSO = frozenset({"and", ", and", "plus", ", plus", "&"})


def copy_statements(talk: Talk, groups: dict[int, list[FootGroup]]) -> None:
    """Add the drafts that ellipsis leaves out."""
    for segment in talk.segments:
        found = groups.get(segment.index, [])
        own = [d for d in segment.drafts if d.slot not in HORSE_SLOTS]
        if not found or own:
            continue
        feet = found[0].feet
        if _is_none(talk, segment):
            _copy_none(talk, segment, feet)
        elif segment.having("same", "same"):
            _copy_same(talk, segment, feet)
        elif segment.having("same", "too") or _just_a_foot(talk, segment, found[0]):
            _copy_last(talk, segment, feet, groups)


def _is_none(talk: Talk, segment: Segment) -> bool:
    if segment.having("denials", "ellipsis") or segment.having("denials", "after"):
        return True
    words = talk.words[segment.start : segment.end]
    return bool({"nothing", "none", "not", "n't", "neither"} & set(words)) and not segment.having("plans")


def _before(talk: Talk, segment: Segment) -> list[Draft]:
    return [d for s in talk.segments[: segment.index] for d in s.drafts if s.horse == segment.horse and not d.dropped]


def _copy_none(talk: Talk, segment: Segment, feet: Feet) -> None:
    findings = [d for d in _before(talk, segment) if d.slot in ("finding", "tester")]
    if not findings:
        return
    last = findings[-1]
    if last.slot == "tester":
        _copy(segment, replace(last, value="none", zone=None), feet, "nothing on the other foot")
    else:
        _copy(segment, replace(last, zone=None, severity=None, status=Status.ABSENT), feet, "none in the other foot")


def _copy_same(talk: Talk, segment: Segment, feet: Feet) -> None:
    earlier = [d for d in _before(talk, segment) if d.feet and d.slot not in HORSE_SLOTS]
    if not earlier:
        return
    last = earlier[-1]
    if last.slot in SETUP_SLOTS:
        source = [d for d in earlier if d.feet == last.feet and d.slot in SETUP_SLOTS and d.status is last.status]
    else:
        source = [d for d in earlier if d.segment.sentence == last.segment.sentence and d.slot in _FOUND and d.feet == last.feet]
    for draft in source:
        _copy(segment, draft, feet, "the same on another foot")


def _just_a_foot(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """"… and the right hind": a foot joined by "and" to a statement that has its own."""
    extra = set(talk.words[segment.start : segment.end]) - set(talk.words[group.start : group.end])
    return segment.delimiter in _ALSO and not group.anaphor and extra <= {"the", "in", "on", "his", "her", "also"}


def _copy_last(talk: Talk, segment: Segment, feet: Feet, groups: dict[int, list[FootGroup]]) -> None:
    earlier = [d for d in _before(talk, segment) if d.slot not in HORSE_SLOTS]
    if not earlier:
        return
    last = earlier[-1]
    if not groups.get(last.segment.index) and not segment.having("same", "too"):
        return
    source = [d for d in last.segment.drafts if d.feet == last.feet and not d.dropped and (d.slot in _FOUND) == (last.slot in _FOUND)]
    for draft in source:
        _copy(segment, draft, feet, "also on another foot")


def _copy(segment: Segment, draft: Draft, feet: Feet, rule: str) -> None:
    if draft.feet == feet:
        return
    segment.drafts.append(
        replace(draft, feet=feet, segment=segment, start=segment.start, end=segment.end, foot_carried=False,
                rules=[*draft.rules, rule], evidence=set(range(segment.start, segment.end)) | draft.evidence)
    )  # fmt: skip
