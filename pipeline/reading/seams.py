"""Commas that end a statement: "… six nails each, hinds trimmed" is read as if a full stop stood there.

Who talks flat or fast is written down with a comma where he made a full stop. What stands behind it tells: a new
statement opens with something that cannot go on the one before (``new_statements.py``), and that one is complete.
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.new_statements import a_denial, opens_a_statement
from pipeline.reading.stretches import CUTS, FILLERS, TOLD, WAITING_HEADS, Seam, Statement, Stretch
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_MARKS = frozenset({",", ";", *SENTENCE_ENDS})
_BEING = frozenset({"was", "were", "is", "are", "'s", "'re"})
_A_PLACE = frozenset({"zones", "totals", "horse_cues"})  # "flare, near fore, out at the quarter, growth rings, none"


def mark_seams(talk: Talk) -> None:
    """Read each comma between two statements as a full stop."""
    _Seams(talk, talk.starting(), {i for m in talk.mentions for i in m.literal}).mark()


class _Seams:
    """One memo; ``starting`` are its mentions by their first token, ``inside`` the tokens that belong to one."""

    def __init__(self, talk: Talk, starting: dict[int, list[Mention]], inside: set[int]) -> None:
        self._talk, self._starting, self._inside = talk, starting, inside
        self._stretches: dict[tuple[int, int], Stretch] = {}

    def mark(self) -> None:
        words = self._talk.words
        before, last, righting = Statement(), 0, False
        for index in [i for i, word in enumerate(words) if word in _MARKS]:
            if words[index] in SENTENCE_ENDS:
                before, last, righting = Statement(), index + 1, False
                continue
            if index in self._inside or FILLERS.issuperset(words[last:index]):
                continue
            near = self._stretch(last, index)
            before.add(near)
            righting = _putting_right(near, righting)
            if not righting and self._opens(before, near, index):
                words[index] = "."
                before = Statement(foot_first=before.foot_first or None)
            last = index + 1

    def _opens(self, before: Statement, near: Stretch, index: int) -> bool:
        """Whether what stands behind the comma opens a statement, and the one before is complete."""
        if not (near.has(TOLD) or self._complete(before, near)) or near.conditional():
            return False
        if len(before.stretches) == 1 and near.only_a_time():
            return False  # "three weeks ago, he had a corn"
        if _left_hanging(near) or before.of_several() or (not before.has(TOLD) and before.has(WAITING_HEADS)):
            return False
        seam = Seam(before, near, *self._behind(index))
        if not seam.behind.words or (seam.behind.opens_with("taking_back") and not a_denial(seam)):
            return False
        return opens_a_statement(seam)

    @staticmethod
    def _complete(before: Statement, near: Stretch) -> bool:
        """Whether a stretch in which nothing is told ends its statement all the same."""
        placed = near.has(("zones",)) and near.classes <= _A_PLACE  # told behind its finding
        graded = near.classes == {"severities"} and before.has(("feet",))
        return near.clause() or (before.has(TOLD) and (near.only_feet() or placed or graded))

    def _behind(self, index: int) -> tuple[Stretch, Stretch]:
        """The stretch behind the comma, without the fillers that open it, and the next one behind a comma."""
        words = self._talk.words
        start = index + 1
        while start + 1 < len(words) and (words[start] in FILLERS or words[start] == ","):
            start += 1
        end = self._cut(start)
        close = self._cut(end + 1) if words[end : end + 1] in ([","], [":"]) else end
        return self._stretch(start, end), self._stretch(end + 1, close)

    def _cut(self, start: int) -> int:
        """The mark or joiner that ends the stretch; its first word is never one."""
        words = self._talk.words
        for index in range(start + 1, len(words)):
            if words[index] in CUTS:
                return index
        return len(words)

    def _stretch(self, start: int, end: int) -> Stretch:
        """What stands behind one comma mostly stands before the next: it is looked through once."""
        if (start, end) not in self._stretches:
            self._stretches[start, end] = Stretch(self._talk, self._starting, start, end)
        return self._stretches[start, end]


def _left_hanging(near: Stretch) -> bool:
    """ "A bruise, and the testers were, um, they were mild": what the head is stands behind the comma."""
    return near.words[-1] in _BEING and any(m.end == near.end - 1 and m.is_any(WAITING_HEADS) for m in near.mentions)


def _putting_right(near: Stretch, so_far: bool) -> bool:
    """A cue of taking back and nothing told behind it: what follows puts right what was said."""
    cues = [m.end for m in near.mentions if m.get("taking_back")] if "taking_back" in near.classes else []
    if not cues and not so_far:
        return False
    since = max(cues, default=near.start)
    return not any(m.start >= since and (m.is_any(TOLD) or m.number is not None) for m in near.mentions)
