""" "Testers strong, same heel", "swelling with it, same place": a place that was said just before."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.zones import give, zone_words

_ZONED = frozenset({"finding", "tester"})
_PLACES = frozenset({"place", "spot", "area", "side", "heel", "quarter", "toe"})
_THERE = frozenset({"there"})
_SAME = frozenset({"same"})
_REACHING = frozenset({"high", "higher", "long", "longer", "low", "lower", "up", "down", "taller", "deeper"})
_LOOKED = frozenset({"checked", "looked", "searched", "dug", "pared", "cleaned", "opened"})
_JUST_NAMED = _LOOKED | {"there", "so"}
_SO = frozenset({"so"})
_SUMMED = (["that", "'s"], ["it", "'s"], ["that", "is"], ["it", "is"])
_NEAR = 1  # sentences back


def attach_same_places(talk: Talk) -> None:
    """Give a finding or an answer the place of the one before, where it is said to be the same."""
    for segment in talk.segments if talk.having("tester_heads") and talk.says(_THERE) else ():
        _there(talk, segment)
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


def place_behind(talk: Talk) -> None:
    """ "Took the outside quarter, so wall loss there", "so it's a crack", "checked the frog. No thrush in it"."""
    _high_so_unbalanced(talk)
    for before, segment in pairwise(talk.segments) if talk.says(_JUST_NAMED) else ():
        apart = segment.sentence - before.sentence
        if not segment.drafts or apart > 1 or before.horse != segment.horse:
            continue
        told, words = [d for d in before.drafts if d.slot in _ZONED], zone_words(before)
        looked = not _LOOKED.isdisjoint(talk.words[before.start : before.end])
        for draft in [d for d in segment.drafts if d.slot == "finding" and d.zone is None and not d.dropped]:
            behind = talk.words[draft.end : draft.end + 2]
            there = (behind[:1] == ["there"] and not (apart and segment.having("feet"))) or (
                looked and behind == ["in", "it"]
            )
            summed = not apart and segment.joined_by("so", ", so")
            summed = summed and talk.words[segment.start : segment.start + 2] in _SUMMED
            if told and there and all((d.value, d.feet) == (draft.value, draft.feet) for d in told):
                draft.zone = told[-1].zone  # "thought I'd a crack at the toe. There's no crack there"
            elif words and not told and (there or summed):
                give(draft, words[-1].readings["zones"], words[-1], joined=False)


def _high_so_unbalanced(talk: Talk) -> None:
    """ "High on the inside, off fore, so out of balance": the place that the conclusion is drawn from."""
    for segment in [s for s in talk.segments if s.joined_by("so", ", so")] if talk.says(_SO) else ():
        before = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
        if any(d.slot in _ZONED for s in before for d in s.drafts):
            continue
        words = [m for s in before for m in zone_words(s) if _REACHING & set(talk.words[s.start : m.start + 1])]
        for draft in [d for d in segment.drafts if d.value == "imbalance" and d.zone is None and not d.dropped]:
            for mention in words[-1:]:
                give(draft, mention.readings["zones"], mention, joined=False)


def _there(talk: Talk, segment: Segment) -> None:
    """ "A corn in the off fore, medial heel, the testers were mild there": at the place that was said last."""
    if talk.words[segment.end - 1] != "there" or not segment.index:
        return
    answers = [d for d in segment.drafts if d.slot == "tester" and d.value != "none" and not d.zone]
    before = talk.segments[segment.index - 1]
    place = before.mentions[-1] if before.mentions else None
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
