"""Foot beside foot: the two of a pair, toe beside heel, and what hardly occurs in front or behind."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from functools import lru_cache
from importlib.resources import files

from pipeline.judging.naming import plain, slot_name, the_foot
from pipeline.record import Fact

_PAIRS = (("LF", "RF"), ("LH", "RH"))
# Degrees between left and right. That a pair's angles should match: Turner, Objective Assessment of Hoof Balance
# (mismatched angles among six faults of balance); the four degrees are common practice, no source.
_MOST_DEGREES = 4.0
# Heels are called underrun when their angle is 5 degrees less than the toe's: Turner, as above.
_HEEL_BELOW_TOE = 5.0
_UNDERRUN = "underrun_heels"
_MOST_SIZES = 1  # between left and right of a pair; common practice, no source
_MOST_NAILS = 2  # between two feet of a horse; common practice, no source
_ENDS = (("LF", "LH"), ("RF", "RH"))
# Sizes that a front shoe may be smaller or larger than the hind one of its side; common practice, no source.
_FRONT_SMALLER, _FRONT_LARGER = -1.0, 2.0

Group = tuple[list[Fact], str]


def uneven_feet(present: Sequence[Fact]) -> Iterator[Group]:
    """Pairs and single feet whose measures do not go together, each with its sentence."""
    by_slot: dict[str, dict[str | None, list[Fact]]] = {}
    for fact in present:
        by_slot.setdefault(fact.slot, {}).setdefault(fact.foot, []).append(fact)
    for slot in ("toe_angle", "heel_angle"):
        for one, other in _across(by_slot.get(slot, {})):
            if abs(float(one.value) - float(other.value)) > _MOST_DEGREES:
                yield [one, other], f"Left and right {slot_name(slot)} differ by more than {_MOST_DEGREES:g} degrees."
    for one, other in _across(by_slot.get("shoe_size", {})):
        apart = sizes_apart(str(one.value), str(other.value))
        if apart is not None and apart > _MOST_SIZES:
            yield [one, other], f"Left and right shoe differ by more than a size: {plain(one)} and {plain(other)}."
    yield from _front_and_hind(by_slot.get("shoe_size", {}))
    pricked = {f.foot for facts in by_slot.get("finding", {}).values() for f in facts if f.value in _PRICKED}
    nails = by_slot.get("nails", {}).items()  # a foot that was pricked may well be a nail or two short
    yield from _nails_apart({foot: facts for foot, facts in nails if foot not in pricked})
    yield from _heel_and_toe(by_slot)


_PRICKED = frozenset({"quicked", "close_nail"})


def _front_and_hind(by_foot: dict[str | None, list[Fact]]) -> Iterator[Group]:
    for front, hind in _beside(by_foot, _ENDS):
        places = _size_place(str(front.value)), _size_place(str(hind.value))
        if places[0] is None or places[1] is None or _FRONT_SMALLER <= places[0] - places[1] <= _FRONT_LARGER:
            continue
        yield [front, hind], f"Front and hind shoe are far apart in size: {plain(front)} and {plain(hind)}."


def _nails_apart(by_foot: dict[str | None, list[Fact]]) -> Iterator[Group]:
    for one, other in _beside(by_foot, (*_PAIRS, *_ENDS)):
        if abs(float(one.value) - float(other.value)) > _MOST_NAILS:
            feet = f"{one.foot} and {other.foot}"
            yield [one, other], f"{plain(one)} and {plain(other)} nails on {feet}; are both right?"


def _across(by_foot: dict[str | None, list[Fact]]) -> Iterator[tuple[Fact, Fact]]:
    return _beside(by_foot, _PAIRS)


def _beside(by_foot: dict[str | None, list[Fact]], pairs: Sequence[tuple[str, str]]) -> Iterator[tuple[Fact, Fact]]:
    for first, second in pairs:
        for one in by_foot.get(first, []):
            for other in by_foot.get(second, []):
                yield one, other


def _heel_and_toe(by_slot: dict[str, dict[str | None, list[Fact]]]) -> Iterator[Group]:
    told = {f.foot for feet in by_slot.get("finding", {}).values() for f in feet if f.value == _UNDERRUN}
    for foot, heels in by_slot.get("heel_angle", {}).items():
        for heel in heels:
            for toe in by_slot.get("toe_angle", {}).get(foot, []):
                apart = float(toe.value) - float(heel.value)
                if abs(apart) > _HEEL_BELOW_TOE and foot is not None and not (apart > 0 and foot in told):
                    yield (
                        [toe, heel],
                        f"Toe {plain(toe)} and heel {plain(heel)} degrees on {foot} are more than "
                        f"{_HEEL_BELOW_TOE:g} degrees apart; are both right?",
                    )


def sizes_apart(one: str, other: str) -> float | None:
    """How many sizes lie between two shoes, half sizes and "00-0" between counted as halves; None if unknown."""
    places = [_size_place(one), _size_place(other)]
    if places[0] is None or places[1] is None:
        return None
    return abs(places[0] - places[1])


def _size_place(size: str) -> float | None:
    noughts = {"0": 0.0, "00": -1.0, "000": -2.0, "0000": -3.0}
    parts = size.split("-")
    found = [noughts[p] if p in noughts else (float(p) if p.replace(".", "", 1).isdigit() else None) for p in parts]
    known = [place for place in found if place is not None]
    return sum(known) / len(known) if len(known) == len(parts) else None


@lru_cache(maxsize=1)
def _usual_feet() -> dict[tuple[str, str], tuple[frozenset[str], str]]:
    text = (files("pipeline.judging") / "usual_feet.csv").read_text(encoding="utf-8")
    return {
        (row["slot"], row["value"]): (frozenset(row["feet"].split()), row["why"])
        for row in csv.DictReader(text.splitlines())
    }


def unusual_foot(fact: Fact) -> str | None:
    """A sentence when the thing hardly occurs on this foot, else None."""
    feet, why = _usual_feet().get((fact.slot, str(fact.value)), (frozenset(), ""))
    if not feet or fact.foot is None or fact.foot in feet:
        return None
    return f"{why}, and this says {the_foot(fact.foot)}; is it the right foot?"
