"""A horse that goes short: "a bit short on that near fore", "trotted up short in front"; not "short in the wall"."""

from __future__ import annotations

from pipeline.reading.drafting import add_draft
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Talk

_SHORT = frozenset({"short"})
_SHORT_ON = 3  # tokens from "short" to its foot: "short on that near fore"
_SUBJECT = frozenset({"he", "she"})
_GOING = frozenset({
    "came", "trotted", "trots", "trotting", "walked", "walks", "walking", "jogged", "went", "goes", "going", "moved",
    "moves", "moving", "feels", "felt",
})  # fmt: skip
_BESIDE = frozenset({
    "'s", "is", "was", "a", "small", "wee", "bit", "little", "touch", "shade", "tad", "very", "still", "just", "only",
    "slightly", "and", "but", "quite", "fairly", "not", "n't", "well", "today", "now", "looks", "looked", "might",
    "may", "be", "definitely", "maybe", "possibly", "up", "out", "off", "in", "here", "of", "the", "box", "stable",
})  # fmt: skip
_LED_BY = _BESIDE | _SUBJECT | _GOING
_ANSWER = 2  # tokens of "no" and "not really"
_WHERE = frozenset({"on", "in"})  # "came in short the left front" has lost that shoe
_BESIDE_A_FOOT = frozenset({"on", "in", "the", "that", "his", "her", "both"})


def draft_short(talk: Talk) -> None:
    """A draft for each "short" of a horse: said of him, of his going, or alone at the head of a statement."""
    for at in talk.where(_SHORT):
        segment = talk.segment_at(at)
        if segment is None or talk.holding(at):
            continue
        who = next((i for i in range(at - 1, segment.start, -1) if talk.words[i] in _SUBJECT), segment.start)
        led = talk.words[who:at]  # "to my eye he's", "on a circle she was"
        going = not _GOING.isdisjoint(led) or not _SUBJECT.isdisjoint(led)
        foot = next((m for m in segment.having("feet") if m.start >= at + 1 and m.start - at <= _SHORT_ON), None)
        between = set(talk.words[at + 1 : foot.start]) if foot is not None else {"."}
        placed = between <= _BESIDE_A_FOOT and (not between or bool(_WHERE & between))
        placed = placed or (going and at + 1 == segment.end and _headed_by_foot(talk, segment))
        if placed and set(led) <= _LED_BY and (going or _opens(talk, segment)):
            add_draft(segment, "gait", "short_stride", Mention(at, at + 1, (at,), {"gaits": "short_stride"}))
            segment.drafts.sort(key=lambda d: (d.start, d.end))


def _opens(talk: Talk, segment: Segment) -> bool:
    """ "Sound on the straight, short on the near fore", "not really, short on the near fore": nothing else before."""
    before = [s for s in talk.segments[: segment.index] if s.sentence == segment.sentence]
    return all(s.having("gaits") or (not s.drafts and s.end - s.start <= _ANSWER) for s in before[-1:])


def _headed_by_foot(talk: Talk, segment: Segment) -> bool:
    """ "Off fore, he's a bit short.": right behind a foot alone."""
    before = talk.segments[segment.index - 1] if segment.index else segment
    feet = before.having("feet") if before.sentence == segment.sentence else []
    return len(feet) == 1 and feet[0].end - feet[0].start == before.end - before.start
