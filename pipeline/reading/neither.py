"""Two things denied in one word: "looked for a corn and a bruise, there's neither", "heat or swelling? Neither"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.questions import SOUGHT
from pipeline.reading.sayings import said_whole
from pipeline.reading.talk import Draft, Segment, Talk

_OF_TWO = frozenset({"neither", "either"})
_ANSWERS = said_whole(
    "neither", "neither one", "neither of them", "neither of those", "neither of the two", "but neither", "and neither",
)  # fmt: skip


def both_of(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> list[Draft]:
    """What "there's neither" or "no sign of either" denies: the last two findings before it, or all looked for.

    Nothing where the word has something behind it ("there's neither heat nor swelling").
    """
    if _OF_TWO.isdisjoint(talk.words[cue.start : cue.end]):
        return []
    if any(d.start >= cue.end for d in sentence[position].drafts):
        return []
    return _last_two([d for s in sentence[: position + 1] for d in s.drafts if d.end <= cue.start])


def both_asked(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """What a bare "neither" answers, in its sentence or in the one before."""
    segment = sentence[position]
    if segment.drafts or tuple(talk.words[segment.start : segment.end]) not in _ANSWERS:
        return []
    before = sentence[:position] or talk.sentence(segment.sentence - 1)
    return _last_two([d for s in before if s.horse == segment.horse for d in s.drafts])


def _last_two(drafts: list[Draft]) -> list[Draft]:
    """The last two findings, with all that was only looked for; nothing told before the looking."""
    found = [d for d in drafts if d.slot == "finding" and (not d.dropped or SOUGHT in d.rules)]
    first = min((d.start for d in found if SOUGHT in d.rules), default=0)
    found = [d for d in found if d.start >= first]
    sought = [d for d in found[:-2] if SOUGHT in d.rules]
    return [*sought, *found[-2:]] if len(found) > 1 else []
