"""The clauses between a memo's marks, before it is cut into segments, and what of the trade is said in them."""

from __future__ import annotations

from pipeline.reading.talk import Talk, by_start
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

MARKS = SENTENCE_ENDS | {","}
WEEKLY = ("week", "fortnight", "month")
TRADE = frozenset({*CLASS_SLOTS, "feet", "measures", "tester_heads", "pulse_heads", "nail_line_heads"})


class Clauses:
    """One memo's words, and its mentions by their first token; a full stop may be put for a comma."""

    def __init__(self, talk: Talk) -> None:
        """Hold the words themselves, so that a mark that is changed counts at once."""
        self.talk, self.words = talk, talk.words
        standing = [mention for mention in talk.mentions if not mention.dropped]
        self.starting = talk.starting() if len(standing) == len(talk.mentions) else by_start(standing)

    def back(self, at: int, marks: frozenset[str]) -> int:
        """The first token behind the last of the marks before the token."""
        while at and self.words[at - 1] not in marks:
            at -= 1
        return at

    def ahead(self, at: int, marks: frozenset[str]) -> int:
        """The next of the marks from the token on, or the end."""
        last = len(self.words)
        while at < last and self.words[at] not in marks:
            at += 1
        return at

    def told(self, start: int, end: int) -> bool:
        """Whether the tokens say anything of the trade, or a number."""
        return any(m.is_any(TRADE) or m.number for at in range(start, end) for m in self.starting.get(at, ()))

    def traded(self, start: int, end: int) -> bool:
        """Whether the tokens say anything of the trade."""
        return any(m.is_any(TRADE) for at in range(start, end) for m in self.starting.get(at, ()))

    def weekly(self, start: int, end: int) -> bool:
        """Whether the tokens count weeks and say nothing else of the trade."""
        told = [m for at in range(start, end) for m in self.starting.get(at, ())]
        other = [m for m in told if m.is_any(TRADE) and m.get("measures") != "weeks"]
        return any(m.get("units") in WEEKLY for m in told) and not other
