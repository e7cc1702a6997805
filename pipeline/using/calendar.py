"""The due list as a calendar (RFC 5545) that any calendar program takes in."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from uuid import UUID, uuid5

from icalendar import Calendar, Event

from pipeline.keeping.names import name_key
from pipeline.using.due import DueHorse, DueList
from pipeline.using.wording import day_words, weeks_words

# Drawn once, at random: the events' own name space.
_EVENTS = UUID("7c1a4c0e-52b1-4d0e-9a63-1f0d6f0b8a35")


def due_calendar(due: DueList, stamp: datetime, owners: bool = False) -> bytes:
    """One all-day event a horse, on the day it is due or, when that is past, today; ``stamp`` (UTC): when it was made.

    A horse keeps its event's UID, so that taking in a later calendar moves the event. Owners' names are in it only
    with ``owners``; what was said in a memo never is.
    """
    calendar = Calendar()
    calendar.add("prodid", "-//clinchbook//due list//EN")
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    for one in due.horses:
        calendar.add_component(_event(one, due.today, stamp, owners))
    return bytes(calendar.to_ical())


def event_uid(one: DueHorse) -> str:
    """The same for a horse in every calendar, and telling nothing of it."""
    return f"{uuid5(_EVENTS, f'{one.horse.id} {name_key(one.horse.name)}')}@clinchbook"


def _event(one: DueHorse, today: date, stamp: datetime, owners: bool) -> Event:
    day = max(one.due.day or today, today)
    event = Event()
    event.add("uid", event_uid(one))
    event.add("dtstamp", stamp)
    event.add("sequence", one.visit_id)  # a later visit makes a later version of the event
    event.add("dtstart", day)
    event.add("dtend", day + timedelta(days=1))
    event.add("summary", f"{one.horse.name} is due")
    event.add("transp", "TRANSPARENT")
    event.add("class", "PRIVATE")
    if one.horse.place:
        event.add("location", one.horse.place)
    event.add("description", _description(one, today, owners))
    return event


def _description(one: DueHorse, today: date, owners: bool) -> str:
    due = one.due
    if due.basis == "said":
        doubt = " (not looked at yet)" if due.flagged else ""
        were = "was" if due.weeks == 1 else "were"
        lines = [f"{weeks_words(due.weeks)} {were} said on {day_words(one.last)}{doubt}."]
    else:
        lines = [f"Nothing was said on {day_words(one.last)}; the horse's own rhythm is {weeks_words(due.weeks)}."]
    if due.day and due.day < today:
        lines.append(f"It was due on {day_words(due.day)}.")
    if owners and one.horse.owner:
        lines.append(f"Owner: {one.horse.owner}")
    return "\n".join(lines)
