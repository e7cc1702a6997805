"""Where a statement is made: the memo's dialect, the chance, and what was already said of the horse in hand."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random
from typing import TypeVar

from pipeline.record import FEET
from tests.generator.facts import Gold

T = TypeVar("T")
Feet = tuple[str, ...]

FRONTS: Feet = ("LF", "RF")
HINDS: Feet = ("LH", "RH")
ALL: Feet = FEET
_SINGLES = {
    "us": {"LF": "left front", "RF": "right front", "LH": "left hind", "RH": "right hind"},
    "uk": {"LF": "near fore", "RF": "off fore", "LH": "near hind", "RH": "off hind"},
}
_GROUPS = {
    "us": {FRONTS: "both fronts", HINDS: "both hinds", ALL: "all four"},
    "uk": {FRONTS: "both fores", HINDS: "both hinds", ALL: "all four feet"},
}
_BARE, _SHOD = "left without a shoe", "shod"
_TRIMMED, _WEARS = "only trimmed", "wears a shoe"
_STILL_ON = "the shoe is still on"
_ON_A_SHOE = frozenset(
    {"shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "nails", "nail_size", "nail_line", "clips"}
    | {"traction"}
)
_ON_GROUPS = {FRONTS: "in front", HINDS: "behind", ALL: "all round"}


class Scene:
    """The horse in hand: gives statements feet and choices, and keeps what was said, so that nothing is said twice."""

    def __init__(self, chance: Random, dialect: str) -> None:
        self.chance = chance
        self.dialect = dialect
        self.pronoun = chance.choice(("he", "she"))
        self._taken: set[tuple[str | None, str]] = set()

    @property
    def their(self) -> str:
        """His or her."""
        return "his" if self.pronoun == "he" else "her"

    def pick(self, options: Sequence[T]) -> T:
        """One of several, by chance."""
        return options[self.chance.randrange(len(options))]

    def one_foot(self) -> Feet:
        """A single foot."""
        return (self.pick(FEET),)

    def pair(self) -> Feet:
        """Both fronts or both hinds."""
        return self.pick((FRONTS, HINDS))

    def some_feet(self) -> Feet:
        """A single foot three times in five, else a pair or all four."""
        draw = self.chance.random()
        if draw < 0.6:
            return self.one_foot()
        return self.pair() if draw < 0.9 else ALL

    def name(self, feet: Feet) -> str:
        """The feet named with no article: "left front", "both hinds"."""
        if len(feet) == 1:
            return _SINGLES[self.dialect][feet[0]]
        return _GROUPS[self.dialect][feet]

    def the(self, feet: Feet) -> str:
        """The feet as a noun phrase: "the left front", "both hinds"."""
        return f"the {self.name(feet)}" if len(feet) == 1 else self.name(feet)

    def shod(self, feet: Feet) -> str:
        """Where a set of shoes goes: "on the left front", "in front", "all round"."""
        return f"on {self.the(feet)}" if len(feet) == 1 or self.chance.random() < 0.5 else _ON_GROUPS[feet]

    def free(self, facts: Sequence[Gold]) -> bool:
        """Whether none of this was said before of this horse."""
        return not any(key in self._taken for fact in facts for key in _clashes(fact))

    def take(self, facts: Sequence[Gold]) -> None:
        """Remember what was said."""
        self._taken.update(_key(fact) for fact in facts)
        self._taken.update((fact.foot, _BARE) for fact in facts if _takes_off(fact))
        self._taken.update((fact.foot, _SHOD) for fact in facts if fact.slot in _ON_A_SHOE)
        self._taken.update((fact.foot, _WEARS) for fact in facts if _on_today(fact))
        self._taken.update((fact.foot, _STILL_ON) for fact in facts if _still_on(fact))
        if not {fact.foot for fact in facts if _trims(fact)}.issuperset(ALL):
            self._taken.update((fact.foot, _TRIMMED) for fact in facts if _trims(fact))


def _key(fact: Gold) -> tuple[str | None, str]:
    topic = f"finding {fact.value}" if fact.slot in ("finding", "treatment") else fact.slot
    return (fact.foot, "going" if fact.slot in ("gait", "lameness", "obel") else topic)


def _takes_off(fact: Gold) -> bool:
    """Whether a foot is left without a shoe, so that nothing may be said of one there."""
    return fact.slot == "work" and fact.value == "removed"


def _trims(fact: Gold) -> bool:
    """Whether a foot is trimmed. Unless all four are, it is told to wear no shoe today.

    Who trimmed the off hind, shod others, and then says "size two behind" means the near hind alone, or both: two
    farriers would differ.
    """
    return fact.slot == "work" and fact.value == "trim"


def _on_today(fact: Gold) -> bool:
    return fact.slot in _ON_A_SHOE and fact.status == "present"


def _still_on(fact: Gold) -> bool:
    """Whether a shoe was there, if worn or loose: nailed on again it was reset, and only a lost one was put back."""
    return fact.slot == "shoe_state" and fact.value != "lost"


def _clashes(fact: Gold) -> list[tuple[str | None, str]]:
    """What must not have been said: the same of the foot, or of the whole horse; or of any foot, for a horse."""
    _, topic = _key(fact)
    bars = (
        (_BARE, fact.slot in _ON_A_SHOE),
        (_SHOD, _takes_off(fact)),
        (_TRIMMED, _on_today(fact)),
        (_WEARS, _trims(fact)),
        (_STILL_ON, fact.slot == "work" and fact.value == "put_back"),
    )
    topics = [topic, *(said for said, barred in bars if barred)]
    return [(foot, said) for said in topics for foot in ((None, *FEET) if fact.foot is None else (None, fact.foot))]
