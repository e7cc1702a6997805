"""Facts of one visit that do not go together."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from pipeline.judging.feet import uneven_feet
from pipeline.judging.fittings import back_without_loss, ill_fitting, without_degrees
from pipeline.judging.naming import on_foot, plain, slot_name
from pipeline.judging.several_feet import on_too_many_feet
from pipeline.record import Fact, Status

# Slots that have one value a foot (or horse) at one time.
_SINGLE = frozenset({
    "shoe_size", "nails", "nail_size", "toe_angle", "heel_angle", "toe_length", "heel_height", "sole_depth",
    "hoof_width", "wedge", "pulse", "lameness", "obel", "body_condition", "cresty_neck", "shoe_material",
})  # fmt: skip

_TOGETHER = frozenset({"removed", "trim"})  # the only two kinds of work that one foot gets on one day

Group = tuple[list[Fact], str]


def disagreements(facts: Sequence[Fact]) -> Iterator[Group]:
    """Groups of facts with the sentence that says why they cannot all be right."""
    present = [f for f in facts if f.status is Status.PRESENT]
    yield from _two_values(present)
    yield from _found_and_denied(facts)
    yield from _two_works(present)
    yield from _sound_and_lame(present)
    yield from _answer_and_none(present)
    yield from ill_fitting(present)
    yield from without_degrees(present)
    yield from back_without_loss(facts, present)
    yield from uneven_feet(present)
    yield from on_too_many_feet(present)


def _by_foot(facts: Sequence[Fact], slot: str) -> dict[str | None, list[Fact]]:
    grouped: dict[str | None, list[Fact]] = defaultdict(list)
    for fact in facts:
        if fact.slot == slot:
            grouped[fact.foot].append(fact)
    return grouped


def _two_values(present: Sequence[Fact]) -> Iterator[Group]:
    for slot in sorted(_SINGLE):
        for foot, found in _by_foot(present, slot).items():
            if len({str(f.value) for f in found}) > 1:
                values = " and ".join(dict.fromkeys(plain(f) for f in found))
                yield found, f"Two values for {slot_name(slot)}{on_foot(foot)}: {values}. Which one is right?"


def _found_and_denied(facts: Sequence[Fact]) -> Iterator[Group]:
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
                f"{plain(fact).capitalize()}{on_foot(fact.foot)} is both found and denied. Which one is right?",
            )


def _two_works(present: Sequence[Fact]) -> Iterator[Group]:
    for foot, found in _by_foot(present, "work").items():
        values = {str(f.value) for f in found}
        if len(values) > 1 and not values <= _TOGETHER:
            works = " and ".join(sorted(v.replace("_", " ") for v in values))
            yield found, f"Two kinds of work{on_foot(foot)}: {works}."


def _sound_and_lame(present: Sequence[Fact]) -> Iterator[Group]:
    sound = [f for f in present if f.slot == "gait" and f.value == "sound"]
    lame = [f for f in present if (f.slot == "gait" and f.value == "lame") or (f.slot == "lameness" and f.value)]
    if sound and lame:
        yield [*sound, *lame], "The horse is both sound and lame today. Which one is right?"


def _answer_and_none(present: Sequence[Fact]) -> Iterator[Group]:
    """Testers that found nothing on a foot, no place being told, and something on the same foot."""
    for foot, found in _by_foot(present, "tester").items():
        nothing = any(f.value == "none" and f.zone is None for f in found)
        if nothing and len({str(f.value) for f in found}) > 1:
            answers = " and ".join(dict.fromkeys(plain(f) for f in found))
            yield found, f"Several answers to the testers{on_foot(foot)}: {answers}. Which one is right?"
