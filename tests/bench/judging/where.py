"""Where the words of a missed fact stand in a heard transcript, told by the memo's own text."""

from __future__ import annotations

import re
from collections.abc import Callable
from difflib import SequenceMatcher
from typing import Any

from pipeline.reading import Reader
from pipeline.record import Transcript
from tests.bench.judging.heard import HeardTake
from tests.facts.scoring import GoldFact, same_value

Span = tuple[int, int]
_WORD = re.compile(r"[A-Za-z0-9'½¼¾%/-]+")


def places_in(take: HeardTake, reader: Reader) -> Callable[[GoldFact], list[Span]]:
    """For a gold fact the spans of the heard text where its words were said; none when the text is not read either."""
    return places_of(take.gold, reader, _aligned(take.gold["text"], take.transcript.text))


def places_of(
    gold: dict[str, Any], reader: Reader, heard_at: Callable[[Span], Span] = lambda span: span
) -> Callable[[GoldFact], list[Span]]:
    """The same in the memo's own text, or in another by way of ``heard_at``."""
    from tests.bench.judging.examples import read

    facts = [fact for visit in read(reader, gold, Transcript(text=gold["text"])) for fact in visit.facts]

    def places(gold: GoldFact) -> list[Span]:
        foot, slot, value, status = gold[:4]
        same = [f for f in facts if (f.foot, f.slot, f.status) == (foot, slot, status)]
        return [heard_at(f.span) for f in same if same_value(slot, f.value, value)]

    return places


def _aligned(said: str, heard: str) -> Callable[[Span], Span]:
    """From a span of what was said to the span of what was heard for it, word by word."""
    one, other = list(_WORD.finditer(said)), list(_WORD.finditer(heard))
    matcher = SequenceMatcher(None, [m.group().lower() for m in one], [m.group().lower() for m in other], False)
    at: list[Span] = []
    for _, i1, i2, j1, j2 in matcher.get_opcodes():
        for i in range(i1, i2):
            j = min(j1 + min(i - i1, max(j2 - j1 - 1, 0)), len(other) - 1)
            at.append(other[j].span() if other else (0, 0))

    def span(of: Span) -> Span:
        found = [at[i] for i, m in enumerate(one) if m.start() < of[1] and m.end() > of[0]]
        return (min(s for s, _ in found), max(e for _, e in found)) if found else (0, 0)

    return span
