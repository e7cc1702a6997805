"""What is on a horse's feet: set-ups carried from visit to visit, and what each rests on.

The rules are common practice, no source: a trim or a shoe taken off leaves the foot bare, in a boot if one is said to
be put on; a reset or a lost shoe put back keeps what was on it; a new shoe without a word of its size or type is taken
to be as before, and says so; pads, wedges and packing go with the old shoe.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date
from types import MappingProxyType
from typing import NamedTuple, Protocol, TypeVar

from pipeline.terms import FEET, Said, Status
from pipeline.using.wording import SIGN, fact_words

SET_UP_SLOTS = (
    "work", "shoe_size", "shoe_type", "shoe_material", "pad", "wedge", "packing", "nails", "nail_size", "clips",
    "traction",
)  # fmt: skip
_KNOWN_SLOTS = frozenset(SET_UP_SLOTS)
BARE = frozenset({"trim", "removed"})
SHOD = frozenset({"new_shoe", "reset", "put_back"})
_WITH_THE_SHOE = ("pad", "wedge", "packing")
_OVER_A_BARE_FOOT = frozenset({"boot"})
_OF_ITS_TYPE = ("shoe_material", "clips", "traction")


class VisitSaid(Protocol):
    """A visit as far as set-ups follow from it."""

    @property
    def id(self) -> int:
        """Its number."""

    @property
    def date(self) -> date:
        """Its day."""

    @property
    def facts(self) -> Sequence[Said]:
        """What was said, in order."""


AVisit = TypeVar("AVisit", bound=VisitSaid)


class Part(NamedTuple):
    """One thing of a set-up: the fact that says it, and the day on which it was said."""

    fact: Said
    day: date


class SetUp(NamedTuple):
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
    parts: Mapping[str, tuple[Part, ...]] = MappingProxyType({})

    def values(self, slot: str) -> tuple[str | float, ...]:
        """What is known of a slot, in a fixed order."""
        return tuple(sorted((part.fact.value for part in self.parts.get(slot, ())), key=str))

    def one(self, slot: str) -> str | float | None:
        """The last value that was said of a slot, None when nothing is known."""
        parts = self.parts.get(slot, ())
        return parts[-1].fact.value if parts else None


def set_ups_over(visits: Iterable[AVisit]) -> Iterator[tuple[AVisit, SetUp | None, SetUp]]:
    """Every change of what is on a foot, oldest first: the visit, the foot's set-up before it, and after it."""
    now: dict[str, SetUp] = {}
    for visit in visits:
        by_foot: dict[str | None, list[Said]] = {}
        for fact in visit.facts:
            by_foot.setdefault(fact.foot, []).append(fact)
        for foot in FEET:
            if foot not in by_foot:
                continue
            before = now.get(foot)
            after = _after(before, by_foot[foot], foot, visit)
            if after is not None:
                yield visit, before, after
                now[foot] = after


def last_set_ups(visits: Iterable[VisitSaid]) -> dict[str, SetUp]:
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


def _after(before: SetUp | None, facts: Sequence[Said], foot: str, visit: VisitSaid) -> SetUp | None:
    """The foot's set-up after a visit; None when the visit says nothing of it."""
    day = visit.date
    said, denied, lost = _sorted_out(facts, day)
    works = said.pop("work", [])
    work = next((part for part in reversed(works) if part.fact.value in SHOD), works[-1] if works else None)
    if work is not None and work.fact.value in BARE:
        over = tuple(part for part in said.get("shoe_type", ()) if part.fact.value in _OVER_A_BARE_FOOT)
        return SetUp(foot, day, visit.id, work, bare=True, parts={"shoe_type": over} if over else {})
    if not said and not works and not denied:
        if not lost or before is None or before.bare:
            return None
        return before._replace(lost=day)
    parts = _carried(before, work, said)
    for slot in denied:
        parts.pop(slot, None)
    if "pad" in denied:
        parts.pop("wedge", None)
    for slot, new in said.items():
        parts[slot] = tuple(new)
    return SetUp(foot, day, visit.id, work, False, day if lost and work is None else None, parts)


def _sorted_out(facts: Sequence[Said], day: date) -> tuple[dict[str, list[Part]], set[str], bool]:
    """What was said to be there, slot by slot, what was said not to be, and whether the shoe was found lost."""
    said: dict[str, list[Part]] = {}
    denied: set[str] = set()
    lost = False
    for fact in facts:
        slot, status = fact.slot, fact.status
        if status is Status.PRESENT:
            if slot in _KNOWN_SLOTS:
                said.setdefault(slot, []).append(Part(fact, day))
            elif slot == "shoe_state" and fact.value == "lost":
                lost = True
        elif status is Status.ABSENT and slot in _KNOWN_SLOTS and slot != "work":
            denied.add(slot)
    return said, denied, lost


def _carried(
    before: SetUp | None, work: Part | None, said: Mapping[str, Sequence[Part]]
) -> dict[str, tuple[Part, ...]]:
    if before is None or before.bare:
        return {}
    parts = dict(before.parts)
    if work is not None and work.fact.value == "new_shoe":
        for slot in _WITH_THE_SHOE:
            parts.pop(slot, None)
    types = {part.fact.value for part in said.get("shoe_type", ())}
    if types and types != {part.fact.value for part in before.parts.get("shoe_type", ())}:
        for slot in _OF_ITS_TYPE:
            parts.pop(slot, None)
    return parts
