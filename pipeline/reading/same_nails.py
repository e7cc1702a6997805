"""The same nails again: "reset the near fore, same number of nails", "hinds, four a side, same size nail"."""

from __future__ import annotations

from pipeline.reading.copying import Copied, copy_draft, told_before
from pipeline.reading.foot_groups import Groups
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk

AS_MANY = Sayings("same number", "same count", "as many", "same nails", "same nail count", "same amount of nails")
SAME_SIZE = Sayings(
    "same size nail", "same size nails", "same sized nails", "same sized nail", "same nail size", "same size of nail",
    "same size of nails", "same nail",
)  # fmt: skip
_RULES = {"nails": "the same number of nails", "nail_size": "the same size of nail"}


def copy_nails(talk: Talk, segment: Segment, groups: Groups) -> list[Copied]:
    """The nails told last, their number or their size, on the feet of the segment or of those before it."""
    if not talk.tells(AS_MANY, SAME_SIZE):
        return []
    words = talk.words[segment.start : segment.end]
    slot = "nails" if AS_MANY.said_in(words) else "nail_size" if SAME_SIZE.said_in(words) else ""
    if not slot or {"not", "n't", "twice", "half"} & set(words) or any(d.slot == slot for d in segment.drafts):
        return []
    counted = [d for d in told_before(talk, segment) if d.slot == slot and d.feet]
    sentence = [s for s in talk.sentence(segment.sentence) if s.index <= segment.index]
    named = [g.feet for s in sentence for g in groups.get(s.index, []) if not g.anaphor]
    if not counted or not named or named[-1] == counted[-1].feet:
        return []
    return copy_draft(segment, counted[-1], named[-1], _RULES[slot])
