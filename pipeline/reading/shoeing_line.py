"""One shoeing told item by item, over commas and short sentences: of which feet a size or count was told already.

"New shoes in front. Rims. Twos. Side clips. Fives.": a foot takes one size of shoe, so the second size is its nails'.
"""

from __future__ import annotations

from collections.abc import Iterator

from pipeline.reading.foot_groups import SETUP_SLOTS
from pipeline.reading.foot_lists import NAMED_FEET
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import FEET

_BACK = 12  # sentences
_LIST = 4  # tokens between two sizes of one list
_NO = frozenset({"no", "nope", "nah", "wait", "sorry", "actually", "lie"})
_SIZE = frozenset({"size", "sizes", "number"})
_ON_FEET = frozenset({
    "on", "in", "the", "and", ",", "his", "her", "then", "up", "with", "all", "those", "them", "at", "both", "for",
})  # fmt: skip


def line_before(talk: Talk, segment: Segment) -> list[Segment]:
    """The segments before, as far back as nothing was told but the shoeing of this horse."""
    line = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
    if not all(s.horse == segment.horse and _of_shoeing(s) for s in line):
        return []
    for number in range(segment.sentence - 1, max(-1, segment.sentence - 1 - _BACK), -1):
        sentence = talk.sentence(number)
        told = any(s.drafts or s.having("feet") for s in sentence)
        if not told or not all(s.horse == segment.horse and _of_shoeing(s) for s in sentence):
            break
        line = [*sentence, *line]
    return line


def _of_shoeing(segment: Segment) -> bool:
    return all(d.slot in SETUP_SLOTS for d in segment.drafts) and not segment.having("times", "history")


def _walked(line: list[Segment]) -> Iterator[tuple[Segment, set[str]]]:
    """Each segment with the feet that it tells of: its own, else those named last, else all."""
    hand: set[str] = set(FEET)
    for segment in line:
        hand = named_feet(segment) or hand
        yield segment, hand


def named_feet(segment: Segment) -> set[str]:
    """The feet that a segment names one by one, in pairs or all together."""
    names = [m.readings["feet"] for m in segment.having("feet")]
    return {foot for name in names for foot in (FEET if name == "all" else NAMED_FEET.get(name, ()))}


def named_feet_of(segments: list[Segment]) -> set[str]:
    """The feet that any of the segments names."""
    return {foot for segment in segments for foot in named_feet(segment)}


def feet_meant(segment: Segment, line: list[Segment]) -> set[str]:
    """The feet that a segment tells of behind its line."""
    return named_feet(segment) or next(feet for s, feet in reversed(list(_walked([*line, segment]))) if s is segment)


def told_of(segment: Segment, line: list[Segment], at: int, *slots: str) -> list[tuple[Draft, set[str]]]:
    """What of these slots the line told before the token, and of which feet."""
    rows = _walked([*line, segment])
    return [(d, feet) for s, feet in rows for d in s.drafts if d.slot in slots and d.start < at and not d.dropped]


def feet_of(told: list[tuple[Draft, set[str]]]) -> set[str]:
    """All the feet of what was told."""
    return set().union(*(feet for _, feet in told))


def put_right_before(talk: Talk, mention: Mention, home: Segment) -> bool:
    """ "Fours all round, no, fours in front and threes behind": what puts a size of all right leads the list.

    So does more in the segment than the number and its feet.
    """
    if not alone(talk, home, mention.stands_for or mention):
        return True
    told = [m for m in talk.mentions if m.number and m.end <= mention.start][-2:]
    if len(told) < 1 + 1 or mention.start - told[1].end > _LIST or mention.stands_for is not None:
        return False
    footed = any(told[1].end <= m.start < mention.start for m in talk.having("feet"))
    return footed and not _NO.isdisjoint(talk.words[told[0].end : told[1].start])


def alone(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """Whether the segment says nothing but the number, and its feet."""
    held = {i for m in segment.having("feet") for i in m.literal} | set(range(mention.start, mention.end))
    article = mention.start - 1 if talk.words[mention.start - 1] in ("a", "an") else mention.start
    lead = talk.words[segment.start] in _SIZE and segment.start + 1 == mention.start
    rest = {talk.words[i] for i in range(segment.start + lead, segment.end) if i not in held and i != article}
    return rest <= _ON_FEET
