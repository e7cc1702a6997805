"""A horse named with its weeks, and what is planned for it: "back for Tally in two weeks, and then she gets …"."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.reading.talk import Segment, Talk

_IT = frozenset({"he", "she", "they", "it", "we", "i", "that", "then"})
_WEEKLY = ("week", "fortnight", "month", "day")


@dataclass
class DueBack:
    """The horse whose weeks were told, in the midst of another's talk, and the segment that told it last."""

    horse: int
    segment: Segment
    planned: bool = False

    def goes_on(self, talk: Talk, segment: Segment) -> bool:
        """Whether the segment plans for that horse: in the same sentence, or in the next if a condition opens it."""
        weeks = any(m.get("units") in _WEEKLY for m in segment.mentions)
        plans = [m for m in segment.mentions if m.get("plans") in ("condition", "before", "main")]
        opened = segment.sentence - self.segment.sentence == 1 and segment.delimiter == "start"
        if opened:
            first = talk.words[segment.start] in ("and", "so")
            told = any(m.get("plans") == "condition" and m.start - segment.start <= first for m in plans)
        else:
            same = segment.sentence == self.segment.sentence
            led = talk.words[segment.start] in _IT and not segment.past
            told = same and (bool(plans) or led or self.planned)
        if not told or (weeks and not plans):
            return False
        self.segment, self.planned = segment, True
        return True
