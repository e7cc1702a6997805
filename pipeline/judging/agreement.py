"""Facts of one visit that do not go together."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from pipeline.record import Fact, Status

# Slots that have one value a foot (or horse) at one time.
_SINGLE = frozenset(
    {
        "shoe_size",
        "nails",
        "nail_size",
        "toe_angle",
        "heel_angle",
        "toe_length",
        "heel_height",
        "sole_depth",
        "hoof_width",
        "wedge",
        "pulse",
        "lameness",
        "obel",
        "body_condition",
        "cresty_neck",
        "shoe_material",
    }
)
_SHOE_SLOTS = frozenset({"nails", "nail_size", "shoe_size", "clips", "traction", "shoe_material"})
_BARE = frozenset({"trim", "removed"})
_PAIRS = (("LF", "RF"), ("LH", "RH"))
_MOST_DIFFERENCE = {"toe_angle": 4.0, "heel_angle": 4.0}  # degrees between left and right; common practice, no source


def disagreements(facts: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    """Groups of facts with the sentence that says why they cannot all be right."""
    present = [f for f in facts if f.status is Status.PRESENT]
    yield from _two_values(present)
    yield from _found_and_denied(facts)
    yield from _nails_on_bare_foot(present)
    yield from _two_works(present)
    yield from _uneven_pairs(present)


def _by_foot(facts: Sequence[Fact], slot: str) -> dict[str | None, list[Fact]]:
    grouped: dict[str | None, list[Fact]] = defaultdict(list)
    for fact in facts:
        if fact.slot == slot:
            grouped[fact.foot].append(fact)
    return grouped


def _two_values(present: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    for slot in sorted(_SINGLE):
        for foot, found in _by_foot(present, slot).items():
            if len({str(f.value) for f in found}) > 1:
                values = " and ".join(dict.fromkeys(_text(f) for f in found))
                yield found, f"Two values for {slot.replace('_', ' ')}{_on(foot)}: {values}. Which one is right?"


def _found_and_denied(facts: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    for fact in facts:
        if fact.status is not Status.ABSENT:
            continue
        against = [
            f
            for f in facts
            if f.status in (Status.PRESENT, Status.SUSPECTED)
            and (f.foot, f.slot, f.value) == (fact.foot, fact.slot, fact.value)
        ]
        if against:
            yield (
                [fact, *against],
                f"{_text(fact).capitalize()}{_on(fact.foot)} is both found and denied. Which one is right?",
            )


def _nails_on_bare_foot(present: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    works = _by_foot(present, "work")
    for foot, found in works.items():
        values = {str(f.value) for f in found}
        if foot is None or not values or not values <= _BARE:
            continue
        shoe = [f for f in present if f.foot == foot and f.slot in _SHOE_SLOTS]
        if shoe:
            yield [*found, *shoe], f"The foot was left bare, yet a shoe is described{_on(foot)}."


def _two_works(present: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    for foot, found in _by_foot(present, "work").items():
        values = {str(f.value) for f in found}
        if {"reset", "new_shoe"} <= values or {"removed", "reset"} <= values or ({"put_back", "new_shoe"} <= values):
            works = " and ".join(sorted(v.replace("_", " ") for v in values))
            yield found, f"Two kinds of work{_on(foot)}: {works}."


def _uneven_pairs(present: Sequence[Fact]) -> Iterator[tuple[list[Fact], str]]:
    for slot, most in _MOST_DIFFERENCE.items():
        by_foot = _by_foot(present, slot)
        for left, right in _PAIRS:
            for one in by_foot.get(left, []):
                for other in by_foot.get(right, []):
                    if abs(float(one.value) - float(other.value)) > most:
                        yield (
                            [one, other],
                            f"Left and right {slot.replace('_', ' ')} differ by more than {most:g} degrees.",
                        )


def _text(fact: Fact) -> str:
    return f"{fact.value:g}" if isinstance(fact.value, float) else str(fact.value).replace("_", " ")


def _on(foot: str | None) -> str:
    return f" on {foot}" if foot else ""
