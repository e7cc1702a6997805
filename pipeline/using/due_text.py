"""The due list as a round by place, and as values."""

from __future__ import annotations

from itertools import islice

from pipeline.using.cells import csv_text
from pipeline.using.columns import plain, row_lines
from pipeline.using.due import LONG_GONE_WEEKS, DueDate, DueHorse, DueList, by_place
from pipeline.using.wording import SIGN, day_words, weeks_words

CSV_COLUMNS = (
    "due", "overdue_days", "basis", "weeks", "gaps", "not_looked_at", "horse", "owner", "place", "last_visit", "visit",
)  # fmt: skip


def due_lines(due: DueList) -> list[str]:
    """The due list, place by place, the longest overdue first, with what was left out below."""
    places = by_place(due.horses)
    rows = [_row(one, due) for horses in places.values() for one in horses]
    if not rows:
        return _left_out(due)
    head, *told = row_lines(("due", "", "horse", "last seen", "why then"), rows, wrapped=4, right=(1,))
    lines, rest = list(head), iter(told)
    for place, horses in places.items():
        lines.append(plain(place) or "No place known")
        lines += [line for own in islice(rest, len(horses)) for line in own]
    return [*lines, *_left_out(due)]


def due_json(due: DueList) -> dict[str, object]:
    """The due list as JSON values."""
    return {
        "today": due.today.isoformat(),
        "until": due.until.isoformat(),
        "horses": [_values(one, due) for one in due.horses],
        "not_seen_for_a_year": due.long_gone,
        "no_date_known": due.unknown,
        "visits_of_no_horse_yet": due.unassigned,
    }


def due_csv(due: DueList) -> str:
    """The due list as rows under CSV_COLUMNS."""
    told = (_values(one, due) for one in due.horses)
    return csv_text(CSV_COLUMNS, ([values[name] for name in CSV_COLUMNS] for values in told))


def basis_words(due: DueDate) -> str:
    """``6 weeks said``, or ``own rhythm, 6.1 weeks over 4 gaps``."""
    if due.basis == "said":
        return f"{SIGN} {weeks_words(due.weeks)} said" if due.flagged else f"{weeks_words(due.weeks)} said"
    return f"own rhythm, {weeks_words(due.weeks)} over {due.gaps} gap{'' if due.gaps == 1 else 's'}"


def _row(one: DueHorse, due: DueList) -> tuple[str, ...]:
    days = one.overdue_days(due.today)
    count = f"{abs(days)} day{'' if abs(days) == 1 else 's'}"
    when = f"{count} over" if days > 0 else f"in {count}" if days < 0 else "today"
    day = one.due.day.isoformat() if one.due.day else ""
    return (day, when, one.horse.name, one.last.isoformat(), basis_words(one.due))


def _left_out(due: DueList) -> list[str]:
    lines = [] if due.horses else [f"No horse is due by {day_words(due.until)}."]
    if due.long_gone:
        lines.append(f"{_horses(due.long_gone)} not seen for {LONG_GONE_WEEKS} weeks: left out (--all lists them).")
    if due.unknown:
        lines.append(f"{_horses(due.unknown)} seen once, with nothing said of the next visit: no date known.")
    if due.unassigned:
        belong = "visit belongs" if due.unassigned == 1 else "visits belong"
        lines.append(f"{due.unassigned} {belong} to no horse yet (assign gives one): a horse may be due later.")
    return lines


def _horses(number: int) -> str:
    return f"{number} horse{' was' if number == 1 else 's were'}"


def _values(one: DueHorse, due: DueList) -> dict[str, str | float | int | bool | None]:
    return {
        "due": one.due.day.isoformat() if one.due.day else None,
        "overdue_days": max(0, one.overdue_days(due.today)),
        "basis": one.due.basis,
        "weeks": one.due.weeks,
        "gaps": one.due.gaps,
        "not_looked_at": one.due.flagged,
        "horse": one.horse.name,
        "owner": one.horse.owner,
        "place": one.horse.place,
        "last_visit": one.last.isoformat(),
        "visit": one.visit_id,
    }
