"""What was put on a foot, and whether it can go together: nails in a bare foot, a pad that nothing holds."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from pipeline.judging.naming import on_foot, plain
from pipeline.record import Fact

# What only a shoe can hold or have.
_OF_A_SHOE = frozenset({"nails", "nail_size", "nail_line", "shoe_size", "clips", "traction", "shoe_material", "wedge"})
_BARE = frozenset({"trim", "removed"})
_NAILED_ON_BARE = frozenset({"boot"})  # a boot goes over a bare foot
_SHOE = frozenset({"nails", "nail_size", "shoe_size", "shoe_type", "clips", "traction", "shoe_material"})

Group = tuple[list[Fact], str]


def ill_fitting(present: Sequence[Fact]) -> Iterator[Group]:
    """Groups of today's facts of one foot whose set-up does not go together, each with its sentence."""
    by_foot: dict[str, list[Fact]] = defaultdict(list)
    for fact in present:
        if fact.foot is not None:
            by_foot[fact.foot].append(fact)
    for foot, facts in by_foot.items():
        yield from _shoe_on_bare_foot(foot, facts)
        yield from _loose_pad(foot, facts)
        yield from _lost_and_trimmed(foot, facts)


def without_degrees(present: Sequence[Fact]) -> Iterator[Group]:
    """Wedges put on with no degrees said."""
    told = {fact.foot for fact in present if fact.slot == "wedge"}
    for fact in present:
        if fact.slot == "pad" and fact.value == "wedge" and fact.foot not in told:
            yield [fact], f"A wedge{on_foot(fact.foot)}, but no degrees were understood; how many?"


def back_without_loss(facts: Sequence[Fact], present: Sequence[Fact]) -> Iterator[Group]:
    """A shoe is put back where it was lost: without a loss it may be a reset, or another foot's."""
    lost = {fact.foot for fact in facts if fact.slot == "shoe_state" and fact.value == "lost"}
    for fact in present:
        if fact.slot == "work" and fact.value == "put_back" and fact.foot not in lost:
            yield (
                [fact],
                f"A shoe was put back{on_foot(fact.foot or '')}, but no loss was understood; was it lost, or reset?",
            )


def _works(facts: Sequence[Fact]) -> list[Fact]:
    return [fact for fact in facts if fact.slot == "work"]


def _shoe_on_bare_foot(foot: str, facts: Sequence[Fact]) -> Iterator[Group]:
    works = _works(facts)
    if not works or not {str(fact.value) for fact in works} <= _BARE:
        return
    shoe = [f for f in facts if f.slot in _OF_A_SHOE or (f.slot == "shoe_type" and f.value not in _NAILED_ON_BARE)]
    pads = [f for f in facts if f.slot == "pad" and f.value != "pour_in"]
    if shoe:
        yield [*works, *shoe], f"The foot was left bare, yet a shoe is described{on_foot(foot)}."
    if pads:
        yield [*works, *pads], f"The foot was left bare, yet a pad is described{on_foot(foot)}."


def _loose_pad(foot: str, facts: Sequence[Fact]) -> Iterator[Group]:
    """A pad is held by a shoe: one on a foot of which neither work nor shoe is told."""
    if _works(facts) or any(fact.slot in _SHOE for fact in facts):
        return
    for pad in (f for f in facts if f.slot == "pad" and f.value != "pour_in"):
        yield (
            [pad],
            f"A {plain(pad)} pad{on_foot(foot)}, but no shoe that holds it was understood; is it the right foot?",
        )


def _lost_and_trimmed(foot: str, facts: Sequence[Fact]) -> Iterator[Group]:
    """A lost shoe is mostly nailed back on or made new: a trim alone may be another foot's."""
    lost = [fact for fact in facts if fact.slot == "shoe_state" and fact.value == "lost"]
    works = _works(facts)
    if lost and works and {fact.value for fact in works} == {"trim"}:
        yield [*lost, *works], f"The shoe was lost{on_foot(foot)} and the foot only trimmed; was it left bare?"
