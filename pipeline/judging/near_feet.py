"""Which feet are named in and before the words of a fact, and whether its own foot is among them."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.judging.surroundings import Surroundings

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
