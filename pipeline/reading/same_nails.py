"""As many nails again: "reset the near fore, same number of nails", "eight in the left and as many in the right"."""

from __future__ import annotations

from pipeline.reading.copying import Copied, copy_draft, told_before
from pipeline.reading.foot_groups import Groups
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk

_AS_MANY = Sayings("same number", "same count", "as many", "same nails", "same nail count", "same amount of nails")


def copy_nails(talk: Talk, segment: Segment, groups: Groups) -> list[Copied]:
    """The nails counted last, on the feet of the segment, or on those told of before it in its sentence."""
    if not talk.tells(_AS_MANY):
        return []
    words = talk.words[segment.start : segment.end]
    if (
        not _AS_MANY.said_in(words)
        or {"not", "n't", "twice", "half"} & set(words)
        or any(d.slot == "nails" for d in segment.drafts)
    ):
        return []
    counted = [d for d in told_before(talk, segment) if d.slot == "nails" and d.feet]
    sentence = [s for s in talk.sentence(segment.sentence) if s.index <= segment.index]
    named = [g.feet for s in sentence for g in groups.get(s.index, []) if not g.anaphor]
    if not counted or not named or named[-1] == counted[-1].feet:
        return []
    return copy_draft(segment, counted[-1], named[-1], "the same number of nails")
