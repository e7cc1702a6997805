"""The finding just told, on another foot with a place or a degree of its own: "off fore, toe also, slight"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.copying import ANOTHER_FOOT
from pipeline.reading.foot_groups import FootGroup, Groups
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import Severity

_LIGHT = frozenset(
    {"too", "also", "as", "well", "likewise", "ditto", "the", "a", "an", "at", "in", "on", "one", "that", "'s", "is"}
    | {"it", "only", "just", "and", ",", "of", "his", "her", "though", "this", "there", "time", "but"}
)
_POINTING = frozenset({"that", "the", "this"})
_DEGREES = frozenset({"worse", "better", "less", "more", "so"})
_ALSO = frozenset({"too", "also", "well", "likewise", "ditto"})
_WITH_TREATMENT = 2  # sentences back, when the one between tells what was put on it
_ELSEWHERE = ("denials", "resolutions", "taking_back", "times", "doubts", "plans", "not_facts", "asides")


def draft_again(talk: Talk, groups: Groups) -> None:
    """Draft a finding anew where a sentence has nothing but a foot and where, or how bad, it is there.

    Before places and degrees are given out, so that they go to this foot and not to the one before.
    """
    for segment in [s for s in talk.segments if not s.drafts and groups.get(s.index)]:
        named = [g for g in groups[segment.index] if not g.anaphor]
        if len(named) != 1 or not _opens(talk, segment, named[0]):
            continue
        said = _said_of_it(talk, segment, groups)
        last = _last_finding(talk, segment)
        if not said or not _narrows(talk, said) or last is None or set(named[0].feet) & set(last.feet or named[0].feet):
            continue
        segment.drafts.append(_again(last, segment, named[0]))
    _graded_ahead(talk, groups)


def _graded_ahead(talk: Talk, groups: Groups) -> None:
    """ "Mild on the off hind, worse on the near, that thrush": graded foot by foot before it is named."""
    for sentence in talk.sentences() if talk.having("severities") else ():
        found = next((d for s in sentence for d in s.drafts), None) if "severities" in sentence.classes else None
        if found is None or found.slot != "finding" or not found.foot_carried or found.severity is not None:
            continue
        ahead = [s for s in sentence if s.index < found.segment.index]
        closes = found.end == sentence[-1].end and talk.words[found.start - 1] in _POINTING
        if not ahead or not closes or not all(_only_graded(talk, s) for s in ahead):
            continue
        for segment in ahead:
            for group in groups.get(segment.index, [])[-1:]:
                _grade(found, group.feet, segment)


def _grade(found: Draft, feet: Feet, segment: Segment) -> None:
    """Give the finding on these feet, or its like there, the degree that the segment tells."""
    part = found
    if feet != found.feet:
        part = replace(found, feet=feet, severity=None, rules=[*found.rules], evidence=set(found.evidence))
        found.segment.drafts.append(part)
    for degree in segment.having("severities")[:1]:
        part.severity = Severity(degree.readings["severities"])
        part.evidence.update(degree.literal)
    part.note("graded before it was named")


def _only_graded(talk: Talk, segment: Segment) -> bool:
    """Whether nothing stands there but a foot and how bad it is."""
    told = {i for m in segment.mentions if m.is_any(("feet", "severities")) for i in range(m.start, m.end)}
    return talk.words_beside(segment, told) <= _LIGHT | _DEGREES


def _opens(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    degrees = {i for m in segment.having("severities") for i in range(m.start, m.end)}
    return {talk.words[i] for i in range(segment.start, group.start) if i not in degrees} <= _LIGHT


def _said_of_it(talk: Talk, segment: Segment, groups: Groups) -> list[Segment]:
    """The segment and those behind it in its sentence up to the next foot; none when something else is told there."""
    said = [segment]
    for behind in talk.sentence(segment.sentence):
        if behind.index > segment.index:
            if groups.get(behind.index):
                break
            said.append(behind)
    return [] if any(s.drafts for s in said) else said


def _narrows(talk: Talk, said: list[Segment]) -> bool:
    """Whether a place is said, or a degree without "too", and nothing that is not light."""
    mentions = [m for s in said for m in s.mentions if not m.dropped]
    if any(m.is_any(_ELSEWHERE) for m in mentions):
        return False
    if any("n't" in talk.words[m.start : m.end] for m in mentions if m.get("severities")):
        return False  # "flat soles in front, the hinds aren't bad": nothing is found there
    held = {i for m in mentions if m.is_any(("feet", "zones", "severities")) for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(said[0].start, said[-1].end) if i not in held}
    graded = any(m.get("severities") for m in mentions) and not rest & _ALSO
    return rest <= _LIGHT and (any(m.get("zones") for m in mentions) or graded)


def _last_finding(talk: Talk, segment: Segment) -> Draft | None:
    """The finding that was told last, here or in the sentence before, what was put on it left aside."""
    own = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    told = [d for s in own for d in s.kept]
    last = next((d for d in reversed(told) if d.slot != "treatment"), None)
    if last is None or last.slot != "finding":
        return None
    near = 1 if last is told[-1] else _WITH_TREATMENT
    return last if segment.sentence - last.segment.sentence <= near else None


def _again(last: Draft, segment: Segment, group: FootGroup) -> Draft:
    made = Draft(last.slot, last.value, segment, group.start, group.end, last.match, feet=group.feet)
    made.evidence = set(range(group.start, group.end)) | last.evidence
    made.note(ANOTHER_FOOT)
    return made


def of_both(talk: Talk, draft: Draft, before: list[Segment], segment: Segment, groups: Groups) -> list[Draft]:
    """ "Toe on the left and heel on the right, both slight", "neither worse than mild": the degree is that of both."""
    if talk.words[segment.start] == "neither" and "than" in talk.words[segment.start : segment.end]:
        found = [d for s in before for d in s.drafts if d.slot == "finding" and not d.dropped]
        return [d for d in found[-2:] if d is not draft and d.severity is None]
    pair = (
        set(groups[segment.index][0].feet)
        if segment.having("feet", "pair_in_hand") and groups[segment.index]
        else set()
    )
    told = [d for s in before for d in s.drafts if d.slot == "finding" and set(d.feet or ()) < pair and not d.dropped]
    same = [d for d in told if d.severity is None and d.status is draft.status]
    return [d for d in same if d is not draft]
