""" "Testers strong, same heel", "swelling with it, same place": a place that was said just before."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk

_ZONED = frozenset({"finding", "tester"})
_PLACES = frozenset({"place", "spot", "area", "side", "heel", "quarter", "toe"})
_THERE = frozenset({"there"})
_SAME = frozenset({"same"})
_PASSED = frozenset({"severities", "feet", "horse_cues"})
_THAT_PART = Sayings("that heel", "that quarter")
_NEAR, _FAR = 1, 2  # sentences back


def attach_same_places(talk: Talk) -> None:
    """Give a finding or an answer the place of the one before, where it is said to be the same."""
    for segment in talk.segments if talk.having("tester_heads") and talk.says(_THERE) else ():
        _there(talk, segment)
    for found, form in talk.turns(_THAT_PART):
        if (here := talk.segment_at(found)) is not None:
            _that_part(talk, here, form[1])
    for segment in talk.segments if talk.says(_SAME) else ():
        words = talk.words[segment.start : segment.end]
        at = next((i for i in range(len(words) - 1) if words[i] == "same" and words[i + 1] in _PLACES), None)
        if at is None or any(segment.start + at in m.literal for m in segment.having("feet")):
            continue
        told = _told(talk, segment)
        target = told[-1] if told else None
        place = next((d.zone for d in reversed(told[:-1]) if d.zone), None)
        named = words[at + 1]
        if target is None or place is None or target.zone not in (None, named):
            continue
        if named in ("heel", "quarter", "toe") and not place.endswith(named):
            continue
        target.zone = place
        target.evidence.update(range(segment.start + at, segment.start + at + 2))
        target.note("zone: the same place")


def _that_part(talk: Talk, segment: Segment, part: str) -> None:
    """ "Crack, off fore, inside quarter. New bar on it. Testers positive at that quarter": the one last named there."""
    near = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    near = [s for s in near if segment.sentence - s.sentence <= _FAR]
    for target in [d for d in segment.drafts if d.zone == part]:
        told = [d for s in near for d in s.kept if d.zone and d.zone.endswith(part)]
        told = [d for d in told if set(d.feet or ()) & set(target.feet or ())]
        if len({d.zone for d in told}) == 1 and target.feet == told[-1].feet:
            target.zone = told[-1].zone
            target.note("zone: the same place")


def _there(talk: Talk, segment: Segment) -> None:
    """ "A corn in the off fore, medial heel, the testers were mild there": at the place that was said last."""
    if talk.words[segment.end - 1] != "there" or not segment.index:
        return
    answers = [d for d in segment.drafts if d.slot == "tester" and d.value != "none" and not d.zone]
    said = (m for s in reversed(talk.segments[: segment.index]) for m in reversed(s.mentions))
    place = next((m for m in said if _PASSED.isdisjoint(m.readings)), None)  # "in the sole, moderate, testers … there"
    told = _told(talk, segment)
    told = [d for d in told if d.slot == "finding" and not d.dropped and d.feet == (answers[0].feet if answers else ())]
    if answers and told and place is not None and place.get("zones") == told[-1].zone and told[-1].zone:
        answers[0].zone = told[-1].zone
        answers[0].note("zone: the same place")


def _told(talk: Talk, segment: Segment) -> list[Draft]:
    """What can have a place, up to the segment, in its sentence and the one before."""
    near = [s for s in talk.segments[: segment.index + 1] if s.horse == segment.horse]
    near = [s for s in near if segment.sentence - s.sentence <= _NEAR]
    return [d for s in near for d in s.drafts if d.slot in _ZONED and not d.dropped]
