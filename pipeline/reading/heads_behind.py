"""A number said before the word for what it measures: "fifty four degrees, toe angle, left front"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Talk

_LIGHT = frozenset({"the", "his", "her", "on", "for", "of", "and", "that", "'s", "is", "at", "a", "to"})


def head_behind(talk: Talk, segment: Segment, number: Mention, kinds: tuple[str, ...]) -> str | None:
    """What the number measures, where the word for it stands alone behind the comma and no other waits for it.

    In "toe angle, left front, fifty four degrees, heel angle, forty seven" the word ahead has the number.
    """
    following = talk.segments[segment.index + 1 : segment.index + 3]
    if not following or following[0].sentence != segment.sentence:
        return None
    if any(m.readings["measures"] in kinds for m in segment.having("measures")):
        return None
    head = _head_alone(talk, following[0], kinds)
    if head is None or _waiting(talk, segment, kinds):
        return None
    beyond = following[1] if len(following) > 1 and following[1].sentence == segment.sentence else None
    if beyond is not None and _numbers(beyond) and not beyond.joined_by("and", ", and", "but", ", but"):
        row = talk.segments[beyond.index + 1 : beyond.index + 2]
        if not row or row[0].sentence != segment.sentence or _head_alone(talk, row[0], kinds) is None:
            return None  # "fifty four degrees, heel angle, forty seven"
    return head.readings["measures"]


def _head_alone(talk: Talk, segment: Segment, kinds: tuple[str, ...]) -> Mention | None:
    """The measure word of a segment that holds nothing else but a foot."""
    heads = [m for m in segment.having("measures") if m.readings["measures"] in kinds]
    if len(heads) != 1 or _numbers(segment):
        return None
    told = {i for m in (heads[0], *segment.having("feet")) for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, told)
    return heads[0] if rest <= _LIGHT else None


def _waiting(talk: Talk, segment: Segment, kinds: tuple[str, ...]) -> bool:
    """Whether a measure word of the sentence stands before the number and has none of its own."""
    before = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
    for at in range(len(before) - 1, -1, -1):
        if any(m.readings["measures"] in kinds for m in before[at].having("measures")):
            return not _numbers(before[at]) and not (at and _numbers(before[at - 1]))
        if _numbers(before[at]):
            return False
    return False


def _numbers(segment: Segment) -> list[Mention]:
    return [m for m in segment.mentions if m.number is not None and not m.dropped]
