"""What is told of the same feet, or of the whole horse, once more, with nothing that takes the first back."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache

from pipeline.judging.parts import Part
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Status
from pipeline.vocabulary import load_vocabulary

_BESIDE = 5  # words on each side of a word of work among which its feet are named
_LONGEST = 4  # words of a phrase of work
_OTHERWISE = ("plan", "earlier", "correction", "denial")
# Told once of a horse, unless it is put right.
_ONCE = frozenset(
    [
        "shoe_size", "nails", "shoe_type", "shoe_material", "nail_size", "toe_angle", "heel_angle", "toe_length",
        "clips", "pad", "manner", "gait", "body_condition", "cresty_neck", "lameness",
    ]
)  # fmt: skip

Work = dict[str, set[str]]


class WorkTold:
    """The words of work in a memo; a fact that says the same twice stands only once, so words count besides facts."""

    def __init__(self, around: Surroundings) -> None:
        self._around = around
        words = [token.text for token in around.tokens]
        self._at: list[tuple[int, str]] = []
        at = 0
        while at < len(words):
            sizes = range(_LONGEST, 0, -1)
            size = next((n for n in sizes if tuple(words[at : at + n]) in _works()), 0)
            if size:
                self._at.append((at, _works()[tuple(words[at : at + size])]))
            at += max(1, size)

    def within(self, parts: Sequence[Part], facts: Iterable[tuple[int, Fact]]) -> Work:
        """By foot the kinds of work told of it in these parts of the memo; ``facts`` come with their tokens."""
        told: Work = {}
        for place, fact in facts:
            if fact.slot == "work" and fact.status is Status.PRESENT and fact.foot and _inside(place, parts):
                told.setdefault(fact.foot, set()).add(str(fact.value))
        for place, kind in self._at:
            start, end = self._around.sentence_of(place)
            if not _inside(place, parts) or any(self._around.within(cue, start, end) for cue in _OTHERWISE):
                continue
            for foot in self._nearest_feet(place, start, end):
                told.setdefault(foot, set()).add(kind)
        return told

    def _nearest_feet(self, place: int, first: int, last: int) -> frozenset[str]:
        """ "Fronts trimmed and hinds reset": of the feet beside a word those that stand nearest."""
        beside = [(abs(at - place), at, end) for at, end in self._around.feet_words(first, last)]
        beside = [one for one in beside if one[0] <= _BESIDE]
        return self._around.feet_named(*min(beside)[1:]) if beside else frozenset()


def slots_again(before: Sequence[Fact], behind: Sequence[Fact]) -> list[str]:
    """Slots that are told of the same foot before and behind, though a horse has them once."""
    slots = {(fact.foot, fact.slot) for fact in before if fact.status is Status.PRESENT and fact.slot in _ONCE}
    again = [(fact.foot, fact.slot) for fact in behind if fact.status is Status.PRESENT]
    return list(dict.fromkeys(slot for foot, slot in again if (foot, slot) in slots))


def _inside(place: int, parts: Sequence[Part]) -> bool:
    return any(part.first <= place < part.last for part in parts)


@lru_cache(maxsize=1)
def _works() -> dict[tuple[str, ...], str]:
    return {tuple(form.split()): kind for form, kind in load_vocabulary().spoken("work").items()}
