"""The visit of a horse before another one, for judging what changed."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from pipeline.judging.earlier import LastVisit
from pipeline.keeping.horses import horses_called
from pipeline.keeping.seen import FACT_COLUMNS, seen_fact
from pipeline.record import HorseMatch, Visit

if TYPE_CHECKING:
    from sqlite_utils import Database

_LAST_DAY = "SELECT max(date) AS day FROM visits WHERE horse = ? AND stands = 1 AND date < ?"
_FACTS_OF_DAY = f"""SELECT {FACT_COLUMNS} FROM visits CROSS JOIN facts_in_full AS facts ON facts.visit = visits.id
                    WHERE visits.horse = ? AND visits.date = ? ORDER BY visits.id, facts.position"""


def last_visit(database: Database, visit: Visit) -> LastVisit | None:
    """What stands of the day on which the horse was seen last before this visit's day.

    None for a horse that is new or not known for certain, and for a first visit.
    """
    if visit.horse is None or visit.horse_match is not HorseMatch.KNOWN:
        return None
    horses = horses_called(database, visit.horse, visit.place)
    if len(horses) != 1:
        return None
    day = next(iter(database.query(_LAST_DAY, [horses[0].id, visit.date.isoformat()])))["day"]
    if day is None:
        return None
    rows = database.execute(_FACTS_OF_DAY, [horses[0].id, day])
    return LastVisit(date.fromisoformat(day), list(map(seen_fact, rows)))
