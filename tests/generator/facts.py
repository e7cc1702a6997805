"""What a generated statement means: its facts, and what it is made of."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.record import Fact

Value = str | float
_ROUNDING = 0.06  # a record keeps one decimal
OPEN = "open"
"""A severity that two careful farriers need not write alike, because the form itself has a word of degree in it."""


@dataclass(frozen=True)
class Gold:
    """One fact that a statement says. ``severity`` may be OPEN."""

    foot: str | None
    slot: str
    value: Value
    zone: str | None = None
    status: str = "present"
    severity: str | None = None

    def right(self, fact: Fact) -> bool:
        """Whether foot, slot, value and status are those of a read fact; a number may differ in its rounding."""
        if (self.foot, self.slot, self.status) != (fact.foot, fact.slot, str(fact.status)):
            return False
        if isinstance(self.value, str) or isinstance(fact.value, str):
            return self.value == fact.value
        return abs(self.value - fact.value) < _ROUNDING

    def exact(self, fact: Fact) -> bool:
        """Whether zone and severity are those of a read fact too."""
        said = None if fact.severity is None else str(fact.severity)
        return self.zone == fact.zone and self.severity in (OPEN, said)


@dataclass(frozen=True)
class Statement:
    """One or more whole sentences about the horse in hand, with every fact they say.

    ``kind`` names the template; ``form`` is the vocabulary class and form that it exercises, if it was made for one.
    ``taken_back`` is what it says by mistake and corrects.
    """

    text: str
    facts: tuple[Gold, ...]
    kind: str
    form: tuple[str, str] | None = None
    taken_back: tuple[Gold, ...] = ()

    @property
    def touched(self) -> tuple[Gold, ...]:
        """All that it speaks of, said or taken back: none of it may have been said before of the horse."""
        return (*self.facts, *self.taken_back)


@dataclass(frozen=True)
class Placed:
    """A statement at the characters ``[start, end)`` of a memo, said of the horse with this name."""

    statement: Statement
    horse: str
    start: int
    end: int


@dataclass(frozen=True)
class GeneratedMemo:
    """A memo with its roster and the statements that it consists of, in the order in which they are said."""

    text: str
    roster: tuple[str, ...]
    horses: tuple[str, ...]
    placed: tuple[Placed, ...]

    def facts_of(self, horse: str) -> list[Gold]:
        """Every fact that the memo says of a horse."""
        return [fact for placed in self.placed if placed.horse == horse for fact in placed.statement.facts]


def on_feet(
    feet: tuple[str, ...],
    slot: str,
    value: Value,
    zone: str | None = None,
    status: str = "present",
    severity: str | None = None,
) -> tuple[Gold, ...]:
    """The same thing said of several feet: one fact a foot."""
    return tuple(Gold(foot, slot, value, zone, status, severity) for foot in feet)


def of_horse(slot: str, value: Value, status: str = "present") -> tuple[Gold, ...]:
    """A fact about the whole horse."""
    return (Gold(None, slot, value, status=status),)
