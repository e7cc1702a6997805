"""Where a record comes from: what every record that leaves the store says of itself."""

from __future__ import annotations

from datetime import date

from pipeline import __version__

DISCLAIMER = "This is a record of what was said, found and done: a record, not a diagnosis."


DEFER = "Lameness, laminitis, punctures and quicked nails belong before a vet; local rules apply."
_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def program_version() -> str:
    """clinchbook's version."""
    return __version__


def long_date(day: date) -> str:
    """12 May 2026, whatever the system's language."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"
