"""When a memo was recorded, and how that is known."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from pipeline.record import Flag, FlagKind

FROM_USER = "given by the user"
FROM_METADATA = "the recording's own date"
FROM_NAME = "the file's name"
FROM_FILE = "the file's time of change"

_METADATA_KEYS = ("creation_time", "com.apple.quicktime.creationdate", "date", "icrd", "tdrc", "date_recorded")
# Recorders without a clock write zero: 1904 in MP4 and CAF, 1970 elsewhere, 1980 on memory cards.
_EARLIEST = date(1990, 1, 1)
# A container's time is often UTC and says so or not; a day and two hours covers every zone.
_AGREE = timedelta(hours=26)
_FUTURE = timedelta(hours=26)

_STAMP = re.compile(
    r"(?<!\d)(?P<year>(?:19|20)\d\d)(?P<gap>[-._ ]?)(?P<month>\d\d)(?P=gap)(?P<day>\d\d)"
    r"(?:(?:[T_ .-]|[-_ ]at[-_ ])*(?P<hour>\d\d)(?P<gap2>[-.:h_]?)(?P<minute>\d\d)"
    r"(?:(?P=gap2)(?P<second>\d\d))?)?(?!\d)",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class RecordedAt:
    """The time of recording (naive local time), where it was taken from, and what is doubtful about it."""

    moment: datetime
    source: str
    flags: tuple[Flag, ...] = ()


def recorded_at(
    file_name: str,
    metadata: Sequence[Mapping[str, str]],
    modified_at: datetime,
    given: date | datetime | None = None,
    now: datetime | None = None,
) -> RecordedAt:
    """Choose by rank: given by the user, the container's metadata, the file's name, the file's time of change.

    ``metadata`` are the tags of the container and of its streams. All times are naive local time; a time with a zone
    is converted. Flags of kind DATE tell of a date from the time of change alone, of one in the future, and of two
    sources more than 26 hours apart.
    """
    found = list(_sources(file_name, metadata, given))
    moment, source = found[0] if found else (modified_at, FROM_FILE)
    flags = []
    if not found:
        flags.append(_flag(f"the date {moment:%Y-%m-%d} is only {FROM_FILE}, which copying can alter"))
    if moment > (now or datetime.now()) + _FUTURE:
        flags.append(_flag(f"the date {moment:%Y-%m-%d} ({source}) lies in the future"))
    if found and source != FROM_USER and modified_at.date() >= _EARLIEST and modified_at < moment - _AGREE:
        flags.append(
            _flag(f"{source} is {moment:%Y-%m-%d}, but the file is older: it was written {modified_at:%Y-%m-%d}")
        )
    for other, other_source in found[1:]:
        if not _agree(moment, other):
            flags.append(
                _flag(f"{source} is {moment:%Y-%m-%d}, but {other_source} is {other:%Y-%m-%d}: check the visit's date")
            )
    return RecordedAt(moment, source, tuple(flags))


def _flag(reason: str) -> Flag:
    return Flag(kind=FlagKind.DATE, reason=reason)


def _sources(
    file_name: str, metadata: Sequence[Mapping[str, str]], given: date | datetime | None
) -> Iterator[tuple[datetime, str]]:
    if given is not None:
        yield _as_moment(given), FROM_USER
    tagged = _from_metadata(metadata)
    if tagged is not None:
        yield tagged, FROM_METADATA
    named = date_in_name(file_name)
    if named is not None:
        yield named, FROM_NAME


def _as_moment(given: date | datetime) -> datetime:
    if isinstance(given, datetime):
        return given.astimezone().replace(tzinfo=None) if given.tzinfo else given
    return datetime.combine(given, time())


def _agree(one: datetime, other: datetime) -> bool:
    """Whether two sources can be the same time; one without a time of day stands for its whole day."""
    if time() in (one.time(), other.time()):
        return abs(one.date() - other.date()) <= timedelta(days=1)
    return abs(one - other) <= _AGREE


def _from_metadata(metadata: Sequence[Mapping[str, str]]) -> datetime | None:
    for key in _METADATA_KEYS:
        for tags in metadata:
            for name, value in tags.items():
                if name.lower() == key and (moment := parse_moment(value)) is not None:
                    return moment
    return None


def parse_moment(text: str) -> datetime | None:
    """A full date, with or without time, as tags write it; None for a bare year, a clock at zero, or no date.

    A zone is converted to local time. Dates are year first; others are ambiguous and not taken.
    """
    text = text.strip()
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        return date_in_name(text)
    if len(re.sub(r"\D", "", text)) < 8:
        return None
    if moment.date() < _EARLIEST or moment.year > 9000:
        return None
    return moment.astimezone().replace(tzinfo=None) if moment.tzinfo else moment


def date_in_name(name: str) -> datetime | None:
    """The first real year-first date in a file's name, with its time of day when one follows; None without one."""
    for match in _STAMP.finditer(name):
        part = {key: int(value) for key, value in match.groupdict().items() if value and not key.startswith("gap")}
        try:
            moment = datetime(part["year"], part["month"], part["day"])
        except ValueError:
            continue
        if moment.date() < _EARLIEST:
            continue
        try:
            return moment.replace(hour=part.get("hour", 0), minute=part.get("minute", 0), second=part.get("second", 0))
        except ValueError:
            return moment
    return None
