"""The horses of the store: who they are, and which of them a visit belongs to."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError, RosterError
from pipeline.keeping.database import insert_row, update_row
from pipeline.keeping.kept import KeptHorse
from pipeline.keeping.names import at, name_key
from pipeline.keeping.rows import Columns, horse_columns, horse_of
from pipeline.record import Flag, FlagKind, HorseMatch, RosterHorse, Visit
from pipeline.sentences import did_you_mean

if TYPE_CHECKING:
    from sqlite_utils import Database


@dataclass(frozen=True)
class Assignment:
    """Which horse a visit goes to (None: nobody yet), how sure that is, and the doubt if there is one."""

    horse_id: int | None
    match: HorseMatch
    flag: Flag | None = None


def all_horses(database: Database) -> list[KeptHorse]:
    """Every horse, by name and then place."""
    return [horse_of(row) for row in database.query("SELECT * FROM horses ORDER BY name_key, place_key")]


def add_horses(database: Database, horses: Sequence[RosterHorse]) -> tuple[int, int]:
    """Add the horses that are new and update the others; return how many of each (inside the caller's transaction).

    What a list does not say of a known horse stays as it is. A horse first named by a memo, with no place yet, is
    the same horse when the list has only one of its name. Raises RosterError for a horse without a name.
    """
    added = updated = 0
    times_named = Counter(name_key(horse.name) for horse in horses)
    for horse in horses:
        if not name_key(horse.name):
            raise RosterError("A horse needs a name.")
        row = _same_horse(database, horse, alone=times_named[name_key(horse.name)] == 1)
        if row is None:
            insert_row(database, "horses", horse_columns(horse))
            added += 1
        else:
            updated += _update(database, row, horse)
    return added, updated


def add_one(database: Database, horse: RosterHorse) -> int:
    """Add a horse, or what is new of a known one, as ``add_horses`` does; returns its number."""
    add_horses(database, [horse])
    keys = {"name": name_key(horse.name), "place": name_key(horse.place)}
    return _horses(database, "name_key = :name AND place_key = :place", keys)[0].id


def horses_called(database: Database, name: str, place: str | None = None) -> list[KeptHorse]:
    """The horses of this name, or else those also called so; at ``place`` if one is given."""
    key = name_key(name)
    there = "1" if place is None else "place_key = :place"
    keys = {"name": key, "place": name_key(place)}
    exact = _horses(database, f"name_key = :name AND {there}", keys)
    also = "EXISTS (SELECT 1 FROM json_each(also_called) WHERE name_key(json_each.value) = :name)"
    return exact or _horses(database, f"{also} AND {there}", keys)


def the_horse_called(database: Database, name: str, place: str | None = None) -> KeptHorse:
    """The one horse of this name; raises NotFoundError when there is none, or more than one."""
    horses = horses_called(database, name, place)
    if len(horses) == 1:
        return horses[0]
    if horses:
        raise NotFoundError(f"{len(horses)} horses are called {name} ({_places(horses)}); say the place too.")
    if place is not None and (elsewhere := horses_called(database, name)):
        raise NotFoundError(f"No horse called {name} stands {at(place)}, only {_places(elsewhere)}.")
    spoken = [other for horse in all_horses(database) for other in (horse.name, *horse.horse.also_called)]
    known = {name_key(other): other for other in spoken}
    raise NotFoundError(f"No horse called {name} is in the store.{did_you_mean(name_key(name), known)}")


def assign(database: Database, visit: Visit, memo_id: int) -> Assignment:
    """Decide whose visit this is, adding the horse when the memo names a new one; doubt assigns nobody."""
    if visit.horse is None or not name_key(visit.horse) or visit.horse_match is HorseMatch.UNCLEAR:
        return Assignment(None, HorseMatch.UNCLEAR)
    horses = horses_called(database, visit.horse)
    if len(horses) > 1 and visit.place is not None:
        horses = horses_called(database, visit.horse, visit.place) or horses
    if not horses:
        return Assignment(_add_from_memo(database, visit.horse, memo_id), visit.horse_match)
    if len(horses) > 1 and any(flag.kind is FlagKind.HORSE for flag in visit.flags):
        return Assignment(None, HorseMatch.UNCLEAR)  # reading asked already
    if len(horses) > 1:
        reason = f"{len(horses)} horses are called {visit.horse} ({_places(horses)}): which one was it?"
        return Assignment(None, HorseMatch.UNCLEAR, _doubt(visit, reason))
    if visit.horse_match is HorseMatch.NEW and horses[0].from_memo != memo_id:
        reason = f"The memo calls {visit.horse} new, but a horse of that name is known already: is it the same one?"
        return Assignment(None, HorseMatch.UNCLEAR, _doubt(visit, reason))
    return Assignment(horses[0].id, visit.horse_match)


def _horses(database: Database, where: str, keys: Mapping[str, str]) -> list[KeptHorse]:
    sql = f"SELECT * FROM horses WHERE {where} ORDER BY name_key, place_key"
    return [horse_of(row) for row in database.query(sql, dict(keys))]


def _same_horse(database: Database, horse: RosterHorse, alone: bool) -> KeptHorse | None:
    same_name = _horses(database, "name_key = :name", {"name": name_key(horse.name)})
    for other in same_name:
        if name_key(other.horse.place) == name_key(horse.place):
            return other
    placeless = [other for other in same_name if not name_key(other.horse.place) and other.from_memo is not None]
    return placeless[0] if placeless and alone and len(same_name) == 1 else None


def _update(database: Database, kept: KeptHorse, new: RosterHorse) -> int:
    old = kept.horse
    merged = RosterHorse(
        name=new.name,
        owner=new.owner or old.owner,
        place=new.place or old.place,
        also_called=new.also_called or old.also_called,
        other={**old.other, **new.other},
    )
    if merged == old:
        return 0
    before = horse_columns(old)
    changed: Columns = {name: value for name, value in horse_columns(merged).items() if before[name] != value}
    update_row(database, "horses", kept.id, changed)
    return 1


def _add_from_memo(database: Database, name: str, memo_id: int) -> int:
    return insert_row(database, "horses", {**horse_columns(RosterHorse(name=name)), "from_memo": memo_id})


def _places(horses: Sequence[KeptHorse]) -> str:
    return ", ".join(at(horse.horse.place) for horse in horses)


def _doubt(visit: Visit, reason: str) -> Flag:
    return Flag(kind=FlagKind.HORSE, reason=reason, quote=visit.horse or "")
