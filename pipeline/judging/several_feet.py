"""What mostly one foot has, told of several: a denial, a rest or a list that reached too far shows itself here.

And which feet are named in and before the words of a fact, and whether its own is among them.
"""

from __future__ import annotations

import csv
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from itertools import takewhile

from pipeline.judging.naming import plain, the_feet
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact

_MANY = 3  # feet treated alike, some of them without a finding
_FINDINGS = frozenset({"finding", "shoe_state"})
_IN_HAND = "foot: still in hand"  # the reader's rule by which a fact has its foot

Group = tuple[list[Fact], str]
Told = dict[tuple[str, str], dict[str, Fact]]


@lru_cache(maxsize=1)
def _most_feet() -> dict[tuple[str, str], int]:
    text = (files("pipeline.judging") / "single_feet.csv").read_text(encoding="utf-8")
    return {(row["slot"], row["value"]): int(row["most"]) for row in csv.DictReader(text.splitlines())}


def on_too_many_feet(present: Sequence[Fact]) -> Iterator[Group]:
    """Groups of today's facts that are one thing on more feet than have it as a rule, each with its sentence.

    What follows while the same feet are still in hand stands or falls with it.
    """
    told: Told = defaultdict(dict)
    for fact in present:
        if fact.foot is not None:
            told[fact.slot, str(fact.value)][fact.foot] = fact
            told[fact.slot, ""][fact.foot] = fact
    for what, most in _most_feet().items():
        feet = told.get(what, {})
        if len(feet) > most:
            behind = _behind(list(feet.values()), present)
            too = ", and does what follows go for them too" if behind else ""
            yield (
                [*feet.values(), *behind],
                f"{_thing(feet)} is told of {the_feet(list(feet))}, more feet than have it as a rule; is it so{too}?",
            )
    yield from _treated_without_a_finding(told, {f.foot for f in present if f.slot in _FINDINGS})


def _behind(group: list[Fact], present: Sequence[Fact]) -> list[Fact]:
    """The facts behind the group for which its feet were still in hand, up to the next foot that was named."""
    end, feet = max(fact.span[1] for fact in group), {fact.foot for fact in group}
    later = sorted((f for f in present if f.foot is not None and f.span[0] >= end), key=lambda fact: fact.span)
    carried = takewhile(lambda fact: _IN_HAND in fact.rules and fact.foot in feet, later)
    return list(carried)


def _treated_without_a_finding(told: Told, found: set[str | None]) -> Iterator[Group]:
    """ "Antiseptic all over it" is no treatment of feet of which nothing was found."""
    for (slot, value), feet in told.items():
        known = (slot, value) in _most_feet() or not value
        if slot == "treatment" and not known and len(feet) >= _MANY and found and not set(feet) <= found:
            yield (
                list(feet.values()),
                f"{_thing(feet)} is told of {the_feet(list(feet))}, but nothing was found on some of them; is it so?",
            )


def _thing(feet: dict[str, Fact]) -> str:
    fact = next(iter(feet.values()))
    return "Lameness" if fact.slot == "lameness" else plain(fact).capitalize()


MOST_SETS = 4


@dataclass(frozen=True)
class NearFeet:
    """What the words of a fact and its sentence name.

    ``inside_differs``: feet in its own words, its own foot not among them; ``set_differs``: the feet named last before
    it are not those that its words were read of; ``sets_before``: how many sets of feet (0-4) were named before it.
    """

    inside_differs: bool = False
    set_differs: bool = False
    sets_before: int = 0


def near_feet(
    around: Surroundings, span: tuple[int, int], foot: str | None, told_of: frozenset[str | None]
) -> NearFeet:
    """The feet around a fact; ``told_of`` are all the feet that the same words were read of."""
    if foot is None:
        return NearFeet()
    first, last = around.place(span)
    start, _ = around.sentence_of(first)
    inside = [feet for a, b, feet in around.named_feet if a < last and b > first]
    before = [feet for a, b, feet in around.named_feet if a >= start and b <= first]
    sets = min(len(set(before)), MOST_SETS)
    if inside:
        return NearFeet(any(inside) and all(foot not in feet for feet in inside if feet), False, sets)
    nearest = before[-1] if before else frozenset()
    return NearFeet(False, bool(nearest) and nearest != told_of, sets)
