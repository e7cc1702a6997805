"""What is on a horse's feet: set-ups carried from visit to visit, and what each rests on.

The rules are common practice, no source: a trim or a shoe taken off leaves the foot bare, in a boot if one is said to
be put on; a reset or a lost shoe put
back keeps what was on it; a new shoe without a word of its size or type is taken to be as before, and says so; pads,
wedges and packing go with the old shoe.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import NamedTuple

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.terms import FEET, Status
from pipeline.using.wording import SIGN, fact_words

SET_UP_SLOTS = (
    "work", "shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "nails", "nail_size", "clips",
    "traction",
)  # fmt: skip
BARE = frozenset({"trim", "removed"})
SHOD = frozenset({"new_shoe", "reset", "put_back"})
_WITH_THE_SHOE = ("pad", "wedge", "packing")
_OVER_A_BARE_FOOT = frozenset({"boot"})
_OF_ITS_TYPE = ("shoe_material", "clips", "traction")


class Part(NamedTuple):
    """One thing of a set-up: the fact that says it, and the day on which it was said."""

    fact: SeenFact
    day: date


@dataclass(frozen=True)
class SetUp:
    """What is on one foot since ``day``. ``parts`` has every slot of SET_UP_SLOTS that is known, but for ``work``.

    A bare foot has no parts but the boot that was put on it.

    ``work`` is what was done that day, if it was said; ``lost`` the day on which the shoe was found lost, as long as
    none was said to be put on since.
    """

    foot: str
    day: date
    visit_id: int
    work: Part | None = None
    bare: bool = False
    lost: date | None = None
    parts: dict[str, tuple[Part, ...]] = field(default_factory=dict)

    def values(self, slot: str) -> tuple[str | float, ...]:
        """What is known of a slot, in a fixed order."""
        return tuple(sorted((part.fact.value for part in self.parts.get(slot, ())), key=str))

    def one(self, slot: str) -> str | float | None:
        """The last value that was said of a slot, None when nothing is known."""
        parts = self.parts.get(slot, ())
        return parts[-1].fact.value if parts else None


def set_ups_over(visits: Iterable[SeenVisit]) -> Iterator[tuple[SeenVisit, SetUp | None, SetUp]]:
    """Every change of what is on a foot, oldest first: the visit, the foot's set-up before it, and after it."""
    now: dict[str, SetUp] = {}
    for visit in visits:
        for foot in FEET:
            facts = [fact for fact in visit.facts if fact.foot == foot]
            after = _after(now.get(foot), facts, foot, visit)
            if after is not None:
                yield visit, now.get(foot), after
                now[foot] = after


def last_set_ups(visits: Iterable[SeenVisit]) -> dict[str, SetUp]:
    """The set-up of every foot that has one, after all visits (oldest first)."""
    last = {after.foot: after for _, _, after in set_ups_over(visits)}
    return {foot: last[foot] for foot in FEET if foot in last}


def set_up_words(set_up: SetUp) -> str:
    """``bare (trim)``, ``new shoe, size 0; from before: aluminum``; ``(!)`` marks what nobody has looked at yet."""
    if set_up.bare:
        bare = f"bare ({_said(set_up.work)})" if set_up.work else "bare"
        return ", ".join([bare, *(_said(part) for part in set_up.parts.get("shoe_type", ()))])
    today = [_said(set_up.work)] if set_up.work else []
    before: list[str] = []
    for slot in SET_UP_SLOTS[1:]:
        for part in set_up.parts.get(slot, ()):
            (today if part.day == set_up.day else before).append(_said(part))
    words = ", ".join(today)
    if before:
        words += f"{'; ' if words else ''}from before: {', '.join(before)}"
    if set_up.lost:
        words += f"{'; ' if words else ''}shoe lost, found {set_up.lost.isoformat()}"
    return words


def _said(part: Part) -> str:
    words = fact_words(part.fact).removeprefix("shoe ").removeprefix("traction ")
    return f"{SIGN} {words}" if part.fact.flagged else words


def _after(before: SetUp | None, facts: Sequence[SeenFact], foot: str, visit: SeenVisit) -> SetUp | None:
    """The foot's set-up after a visit; None when the visit says nothing of it."""
    said = [fact for fact in facts if fact.slot in SET_UP_SLOTS and fact.status is Status.PRESENT]
    denied = {fact.slot for fact in facts if fact.slot in SET_UP_SLOTS[1:] and fact.status is Status.ABSENT}
    lost = any(fact.slot == "shoe_state" and fact.value == "lost" and fact.status is Status.PRESENT for fact in facts)
    works = [Part(fact, visit.date) for fact in said if fact.slot == "work"]
    shod = [part for part in works if part.fact.value in SHOD]
    work = next(reversed(shod or works), None)
    if work is not None and work.fact.value in BARE:
        over = [fact for fact in said if fact.slot == "shoe_type" and fact.value in _OVER_A_BARE_FOOT]
        parts = {"shoe_type": tuple(Part(fact, visit.date) for fact in over)} if over else {}
        return SetUp(foot, visit.date, visit.id, work, bare=True, parts=parts)
    if not said and not denied:
        if not lost or before is None or before.bare:
            return None
        return replace(before, lost=visit.date)
    parts = _carried(before, work, said)
    for slot in denied:
        parts.pop(slot, None)
    if "pad" in denied:
        parts.pop("wedge", None)
    for slot in SET_UP_SLOTS[1:]:
        if new := tuple(Part(fact, visit.date) for fact in said if fact.slot == slot):
            parts[slot] = new
    still_lost = visit.date if lost and work is None else None
    return SetUp(foot, visit.date, visit.id, work, lost=still_lost, parts=parts)


def _carried(before: SetUp | None, work: Part | None, said: Sequence[SeenFact]) -> dict[str, tuple[Part, ...]]:
    if before is None or before.bare:
        return {}
    parts = dict(before.parts)
    if work is not None and work.fact.value == "new_shoe":
        for slot in _WITH_THE_SHOE:
            parts.pop(slot, None)
    types = {fact.value for fact in said if fact.slot == "shoe_type"}
    if types and types != set(before.values("shoe_type")):
        for slot in _OF_ITS_TYPE:
            parts.pop(slot, None)
    return parts
