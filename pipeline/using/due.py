"""When each horse is due: as it was said at its last visit, else by its own rhythm, and marked so."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise
from typing import Literal, NamedTuple

from pipeline.errors import SettingsError
from pipeline.keeping.looking import Looking
from pipeline.keeping.seen import SeenHorse
from pipeline.keeping.visiting import LastSeen

LONG_GONE_WEEKS = 52  # a horse not seen for a year is not on the round any more, unless it is asked for
_RECENT_GAPS = 6
Basis = Literal["said", "rhythm", "unknown"]


class DueDate(NamedTuple):
    """The day on which a horse is due and what that rests on; ``day`` is None when nothing tells.

    ``weeks`` is the interval; ``gaps`` the number of gaps that a rhythm rests on; ``flagged`` says that a person must
    still look at the interval that was said.
    """

    day: date | None
    basis: Basis
    weeks: float | None = None
    gaps: int = 0
    flagged: bool = False


class DueHorse(NamedTuple):
    """A horse of the due list, with the day and the number of its last visit."""

    horse: SeenHorse
    last: date
    visit_id: int
    due: DueDate

    def overdue_days(self, today: date) -> int:
        """How many days the horse is overdue; 0 or less when it is not."""
        return (today - self.due.day).days if self.due.day else 0


class DueList(NamedTuple):
    """The horses that are due, the longest overdue first; ``long_gone`` and ``unknown`` were left out, counted;
    ``unassigned`` visits belong to no horse yet, so that some horse may be due later than it says."""

    today: date
    until: date
    horses: list[DueHorse]
    long_gone: int
    unknown: int
    unassigned: int


def due_date(last: date, weeks: float | None, flagged: bool, days: Sequence[date]) -> DueDate:
    """When a horse is due that was last seen on ``last``; ``weeks`` is what was said, ``days`` all its visits' days.

    Without a word, the median of its last six gaps; the shorter of two in the middle, so that nobody comes late.
    """
    if weeks is not None:
        return DueDate(last + timedelta(days=round(weeks * 7)), "said", weeks, flagged=flagged)
    gaps = [(after - before).days for before, after in pairwise(days)]
    recent = sorted(gaps[-_RECENT_GAPS:])
    if not recent:
        return DueDate(None, "unknown")
    middle = recent[(len(recent) - 1) // 2]
    return DueDate(last + timedelta(days=middle), "rhythm", round(middle / 7, 1), gaps=len(recent))


def due_list(
    store: Looking, today: date, until: date, place: str | None = None, long_gone_too: bool = False
) -> DueList:
    """Every horse that is due by ``until``, at ``place`` if one is given.

    Raises SettingsError when ``until`` lies before ``today``.
    """
    if until < today:
        raise SettingsError(f"{until} is before {today}: say a day that is still to come.")
    since = None if long_gone_too else today - timedelta(weeks=LONG_GONE_WEEKS)
    horses = _with_dates(store, store.last_seen(since, place))
    long_gone = store.seen_count(place) - len(horses)
    due = [one for one in horses if one.due.day is not None and one.due.day <= until]
    due.sort(key=lambda one: (one.due.day or today, one.horse.place or "", one.horse.name))
    unknown = sum(one.due.day is None for one in horses)
    return DueList(today, until, due, long_gone, unknown, store.unassigned_count())


def by_place(due: Sequence[DueHorse]) -> dict[str, list[DueHorse]]:
    """The horses by place, for a round: the place with the longest overdue horse first, the unknown place last."""
    places: dict[str, list[DueHorse]] = {}
    for one in due:
        places.setdefault(one.horse.place or "", []).append(one)
    unknown = places.pop("", None)
    return places if unknown is None else {**places, "": unknown}


def _with_dates(store: Looking, seen: Sequence[LastSeen]) -> list[DueHorse]:
    days = store.days_of([one.horse.id for one in seen if one.weeks is None])
    return [
        DueHorse(
            one.horse,
            one.date,
            one.visit_id,
            due_date(one.date, one.weeks, one.weeks_flagged, days.get(one.horse.id, [])),
        )
        for one in seen
    ]
