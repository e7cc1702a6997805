"""Shoes, nails, pads and packing: what was used over a time, and what the horses due next are likely to need."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from pipeline.errors import SettingsError
from pipeline.keeping.looking import Looking
from pipeline.keeping.seen import ShodVisit
from pipeline.terms import SHOE_SIZES, Said, Status
from pipeline.using.due import DueHorse, due_list
from pipeline.using.set_ups import BARE, SET_UP_SLOTS, Part, SetUp, set_ups_over

KINDS = ("shoe", "nail", "pad", "packing", "bare foot")
_FRONTS = frozenset({"LF", "RF"})
_LOOK_BACK = timedelta(days=365)  # what a shoe that is not described was before: a year of visits tells
_SLOTS = (*SET_UP_SLOTS, "shoe_state")
_STATUSES = (Status.PRESENT, Status.ABSENT, Status.PLANNED)


class Needed(NamedTuple):
    """So many of one thing on one foot. ``assumed`` when its size or type comes from an earlier visit, ``unsure`` when
    it was not said whether the shoe is new, ``flagged`` when nobody has looked at it yet."""

    kind: str
    what: str
    foot: str
    number: int
    assumed: bool = False
    unsure: bool = False
    flagged: bool = False


@dataclass(frozen=True)
class StockLine:
    """One thing and how many: on fronts, on hinds, and how many of both rest on what is not certain."""

    kind: str
    what: str
    fronts: int
    hinds: int
    assumed: int
    unsure: int
    flagged: int

    @property
    def number(self) -> int:
        """How many in all."""
        return self.fronts + self.hinds


@dataclass(frozen=True)
class Stock:
    """What was used from ``since`` to ``until``, and what is foreseen for the horses due by ``due_until``.

    ``visits_due`` counts the visits foreseen, ``not_known`` the horses among them of which no set-up is known.
    """

    since: date
    until: date
    due_until: date
    used: list[StockLine]
    foreseen: list[StockLine]
    visits_due: int
    not_known: int


def stock(store: Looking, since: date, today: date, weeks: int, place: str | None = None) -> Stock:
    """Used from ``since`` to ``today``, and foreseen for ``weeks`` weeks. Raises SettingsError for a start to come.

    The order list takes every shod foot to get new shoes: what will be reset instead needs its nails alone.
    """
    if since > today:
        raise SettingsError(f"{since} is still to come: the time to look at starts later than it ends.")
    until = today + timedelta(weeks=weeks)
    due = {one.horse.id: one for one in due_list(store, today, until, place).horses}
    seen = set(store.horse_ids_between(since, today, place))
    used: list[Needed] = []
    foreseen: list[Needed] = []
    known = set()
    for horse, visits in _by_horse(store, sorted(seen | due.keys()), min(since, today) - _LOOK_BACK, today):
        steps = list(set_ups_over(visits))
        used += [needed for visit, _, set_up in steps if visit.date >= since for needed in _used(set_up)]
        if horse in due and steps:
            known.add(horse)
            last = {set_up.foot: set_up for _, _, set_up in steps}
            foreseen += _foreseen(last.values(), visits[-1], _times(due[horse], today, until))
    times = sum(_times(one, today, until) for one in due.values())
    return Stock(since, today, until, _lines(used), _lines(foreseen), times, len(due.keys() - known))


def _foreseen(set_ups: Iterable[SetUp], last: ShodVisit, times: int) -> list[Needed]:
    needed = [one for set_up in set_ups for one in _needs(_as_planned(set_up, last), shoes=True)]
    return needed * times


def _by_horse(
    store: Looking, horse_ids: Sequence[int], since: date, until: date
) -> Iterator[tuple[int, list[ShodVisit]]]:
    for horse, own in groupby(store.facts_on_feet(horse_ids, _SLOTS, _STATUSES, since, until), attrgetter("horse_id")):
        yield horse, list(own)


def _times(one: DueHorse, today: date, until: date) -> int:
    """How often a horse is due by a day: its interval may fit several times after its next visit."""
    if one.due.day is None or not one.due.weeks:
        return 1
    return 1 + max(0, (until - max(one.due.day, today)).days) // max(7, round(one.due.weeks * 7))


def _as_planned(set_up: SetUp, last: ShodVisit) -> SetUp:
    """The set-up as the last visit planned it for next time, where it planned anything."""
    planned = [
        fact
        for fact in last.facts
        if fact.foot == set_up.foot and fact.status is Status.PLANNED and fact.slot in SET_UP_SLOTS
    ]
    works = [Part(fact, last.date) for fact in planned if fact.slot == "work"]
    if works and works[-1].fact.value in BARE:
        return SetUp(set_up.foot, last.date, last.id, works[-1], bare=True)
    parts = {} if set_up.bare else dict(set_up.parts)
    for slot in {fact.slot for fact in planned} - {"work"}:
        parts[slot] = tuple(Part(fact, last.date) for fact in planned if fact.slot == slot)
    bare = set_up.bare and not planned
    return SetUp(set_up.foot, last.date if planned else set_up.day, set_up.visit_id, None, bare=bare, parts=parts)


def _used(set_up: SetUp) -> Iterator[Needed]:
    """What a visit took. A reset takes nails, and pads and packing where they were said that day."""
    work = set_up.work.fact.value if set_up.work else None
    today = {slot for slot, parts in set_up.parts.items() if parts[-1].day == set_up.day}
    if work is None and not set_up.bare and not today & {"shoe_size", "shoe_type", "nails"}:
        return
    for needed in _needs(set_up, shoes=work in (None, "new_shoe"), unsure=work is None):
        if needed.kind in ("pad", "packing") and needed.kind not in today:
            continue
        yield needed


def _needs(set_up: SetUp, shoes: bool, unsure: bool = False) -> Iterator[Needed]:
    foot = set_up.foot
    if set_up.bare:
        yield Needed("bare foot", "trim", foot, 1, flagged=bool(set_up.work and set_up.work.fact.flagged))
        return
    if shoes:
        yield _shoe(set_up, unsure)
    for part in set_up.parts.get("nails", ())[-1:]:
        size = set_up.one("nail_size")
        number = int(part.fact.value) if not isinstance(part.fact.value, str) else 0
        named = f"size {size}" if size else "size not said"
        yield Needed("nail", named, foot, number, _older(set_up, "nails", "nail_size"), False, part.fact.flagged)
    for part in set_up.parts.get("pad", ()):
        yield Needed("pad", _pad(part.fact, set_up), foot, 1, part.day != set_up.day, False, part.fact.flagged)
    for part in set_up.parts.get("packing", ()):
        yield Needed("packing", _plain(part.fact.value), foot, 1, part.day != set_up.day, False, part.fact.flagged)


def _shoe(set_up: SetUp, unsure: bool) -> Needed:
    size, kind, material = (set_up.one(slot) for slot in ("shoe_size", "shoe_type", "shoe_material"))
    words = [f"size {size}" if size else "size not said", _plain(kind) if kind else "type not said"]
    words += [_plain(material)] if material else []
    facts = [part.fact for slot in ("shoe_size", "shoe_type", "shoe_material") for part in set_up.parts.get(slot, ())]
    assumed = _older(set_up, "shoe_size", "shoe_type")
    flagged = any(fact.flagged for fact in facts) or bool(set_up.work and set_up.work.fact.flagged)
    return Needed("shoe", ", ".join(words), set_up.foot, 1, assumed, unsure, flagged)


def _older(set_up: SetUp, *slots: str) -> bool:
    return any(part.day != set_up.day for slot in slots for part in set_up.parts.get(slot, ()))


def _pad(fact: Said, set_up: SetUp) -> str:
    degrees = set_up.one("wedge")
    if fact.value == "wedge" and isinstance(degrees, float):
        return f"wedge {degrees:g}°"
    return _plain(fact.value)


def _plain(value: str | float) -> str:
    return value.replace("_", " ") if isinstance(value, str) else f"{value:g}"


def _lines(needed: Sequence[Needed]) -> list[StockLine]:
    groups: dict[tuple[str, str], list[Needed]] = {}
    for one in needed:
        groups.setdefault((one.kind, one.what), []).append(one)
    lines = [
        StockLine(
            kind,
            what,
            fronts=sum(one.number for one in ones if one.foot in _FRONTS),
            hinds=sum(one.number for one in ones if one.foot not in _FRONTS),
            assumed=sum(one.number for one in ones if one.assumed),
            unsure=sum(one.number for one in ones if one.unsure),
            flagged=sum(one.number for one in ones if one.flagged),
        )
        for (kind, what), ones in groups.items()
    ]
    return sorted(lines, key=_order)


def _order(line: StockLine) -> tuple[int, int, str]:
    size = line.what.removeprefix("size ").split(",")[0]
    place = SHOE_SIZES.index(size) if line.kind == "shoe" and size in SHOE_SIZES else len(SHOE_SIZES)
    return (KINDS.index(line.kind), place, line.what)
