"""Days said of the next visit, resolved against the memo's day: "the fourteenth", "end of next month", "Tuesday week".

The fact keeps the words as said in its quote; its value is weeks from the memo's day. A day in the middle of nothing is
taken as the next one to come. "End" is a month's last day, "beginning" its first, "middle" its fifteenth.
"""

from __future__ import annotations

import calendar
import re
from collections.abc import Sequence
from datetime import date, timedelta
from fractions import Fraction

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status, value_problem

_MONTHS = {name.lower(): number for number, name in enumerate(calendar.month_name) if name}
_DAYS = {name.lower(): number for number, name in enumerate(calendar.day_name)}
_WEEKDAYS = frozenset(_DAYS)
_ORDINALS = (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth "
    "fifteenth sixteenth seventeenth eighteenth nineteenth twentieth"
)
_UNITS = {word: number for number, word in enumerate(_ORDINALS.split(), start=1)}
_DIGITS = re.compile(r"(\d{1,2})(?:st|nd|rd|th)")
_PARTS = {"end": 31, "start": 1, "beginning": 1, "middle": 15}
# One of these in the same sentence, before the day, says that it is the day of coming back.
_COMING = Sayings(
    "back", "see him", "see her", "see them", "book", "booked", "due", "next visit", "look in", "call in", "drop in",
    "call by", "call back", "drop by", "call again", "out to him", "out to her", "out again",
    "'ll call", "will call",
)  # fmt: skip
_AHEAD = {"week": 7, "fortnight": 14, "month": 28}  # days that "this day week" adds
_AHEAD_OF = {"week": 7, "fortnight": 14}  # and "Tuesday week"
_OTHERS = frozenset({"vet", "call", "ring", "phone", "since", "ago", "last", "was", "were", "n't", "not"})
_Day = tuple[date, int, int]  # the day, and the tokens it was said in


def draft_dates(talk: Talk, day: date) -> None:
    """A ``next_visit_weeks`` draft for a day said of the next visit, where no interval is said in its sentence."""
    if talk.says(_WEEKDAYS):
        _count_from_days(talk, day)
    for sentence in talk.sentences() if talk.tells(_COMING) else ():
        if any(d.slot == "next_visit_weeks" and not d.dropped for s in sentence for d in s.drafts):
            continue
        start, end = sentence[0].start, sentence[-1].end
        coming = _coming(talk.words, start, end)
        if coming is None:
            continue
        for index in range(coming, end):
            found = day_at(talk.words, index, day)
            if found is not None:
                if not _others(talk.words, _own_clause(talk.words, start, found[1]), found[2]):
                    _add(sentence, found, day)
                break


def _count_from_days(talk: Talk, day: date) -> None:
    """ "Wednesday three weeks", "a week on Monday": counted from a day; not "in a week on Monday"."""
    for segment in talk.segments:
        for draft in [d for d in segment.drafts if d.slot == "next_visit_weeks"]:
            begin, end = draft.start - (talk.words[draft.start - 1] == "a"), draft.end
            at = begin - 1
            if talk.words[end : end + 1] == ["on"] and talk.words[at] not in ("in", "within", "for"):
                at = end + 1
            if talk.words[at : at + 1] and talk.words[at] in _DAYS:
                draft.value = Fraction(draft.value) + Fraction(_days_to(talk.words[at], day) % 7, 7)
                draft.end = max(end, at + 1)
                draft.note("next visit: counted from a day")


def _days_to(weekday: str, day: date) -> int:
    return (_DAYS[weekday] - day.weekday()) % 7 or 7


def day_at(words: Sequence[str], index: int, day: date) -> _Day | None:
    """The day that the words at ``index`` name, not before ``day``; None when they name none."""
    return (
        _part_of_month(words, index, day)
        or _ordinal_of_month(words, index, day)
        or _month_and_day(words, index, day)
        or _weekday(words, index, day)
        or _this_day_week(words, index, day)
        or _next_week(words, index, day)
    )


def _own_clause(words: Sequence[str], start: int, coming: int) -> int:
    """ "The vet sees her tonight, and I'll look in this day week": where the speaker's own clause begins."""
    comma = max((i for i in range(start, coming) if words[i] == ","), default=start)
    return comma if {"i", "we"} & set(words[comma:coming]) else start


def _others(words: Sequence[str], start: int, end: int) -> bool:
    """Whether somebody else's day is told; "I'll call in to her" is a visit, "call the vet" is none."""
    visit = {i for i in range(start, end) if words[i] == "call" and _calls_in(words[i + 1 : i + 3])}
    return any(words[i] in _OTHERS for i in range(start, end) if i not in visit)


def _calls_in(behind: Sequence[str]) -> bool:
    """ "Call in", "call Friday week": a visit; "call next week" may be the telephone."""
    ahead = behind[-1] in _AHEAD_OF and (behind[0] in _DAYS or behind[0] == "today")
    return ahead or behind[0] in ("in", "back", "by", "again") or behind == ["this", "day"]


def _this_day_week(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "This day week", "today fortnight", "tomorrow week"."""
    led = 2 if list(words[index : index + 2]) == ["this", "day"] else 1
    if led == 1 and words[index] not in ("today", "tomorrow"):
        return None
    more = _AHEAD.get(words[index + led]) if index + led < len(words) else None
    if more is None or list(words[index + led + 1 : index + led + 2]) == ["ago"]:
        return None
    return day + timedelta(days=more + (words[index] == "tomorrow")), index, index + led + 1


def _next_week(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "Next week" is a week on, "next month" four, "the week after next" two."""
    if list(words[index : index + 3]) == ["week", "after", "next"]:
        return day + timedelta(days=14), index, index + 3
    behind = list(words[index : index + 2])
    parted = index > 0 and words[index - 1] in ("of", "early", "late", "mid", "till", "until", "due")
    if behind not in (["next", "week"], ["next", "month"]) or parted:
        return None
    return day + timedelta(days=7 if behind[1] == "week" else 28), index, index + 2


def _coming(words: Sequence[str], start: int, end: int) -> int | None:
    return next((at + len(cue) for at, cue in _COMING.within(words, start, end)), None)


def _ordinal(words: Sequence[str], index: int) -> tuple[int, int] | None:
    """A day of the month, and the token behind it: "fourteenth", "twenty first", "14th"."""
    if index >= len(words):
        return None
    word = words[index]
    if match := _DIGITS.fullmatch(word):
        return int(match[1]), index + 1
    if word in _UNITS:
        return _UNITS[word], index + 1
    if word == "thirtieth":
        return 30, index + 1
    tens = {"twenty": 20, "thirty": 30}.get(word)
    if tens and index + 1 < len(words) and 0 < _UNITS.get(words[index + 1], 0) < 10:
        return tens + _UNITS[words[index + 1]], index + 2
    return None


def _ordinal_of_month(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "The fourteenth", "the fourteenth of May"; an ordinal without "the" needs its month ("first visit" is none)."""
    said = _ordinal(words, index)
    if said is None:
        return None
    number, end = said
    if list(words[end : end + 1]) == ["of"] and end + 1 < len(words) and words[end + 1] in _MONTHS:
        return _upcoming(_MONTHS[words[end + 1]], number, day, index, end + 2)
    if index == 0 or words[index - 1] != "the" or (end < len(words) and words[end] not in (".", ",", "and", "or")):
        return None
    month = day.month if number > day.day else day.month % 12 + 1
    return _upcoming(month, number, day, index, end)


def _month_and_day(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "May the fourteenth", "May 14th", "May 14"."""
    if words[index] not in _MONTHS:
        return None
    at = index + 2 if list(words[index + 1 : index + 2]) == ["the"] else index + 1
    said = _ordinal(words, at)
    if said is None and at < len(words) and words[at].isdecimal() and 1 <= int(words[at]) <= 31:
        said = int(words[at]), at + 1
    return _upcoming(_MONTHS[words[index]], said[0], day, index, said[1]) if said else None


def _part_of_month(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "End of next month", "the beginning of June", "first week of June"."""
    part, at = _PARTS.get(words[index]), index + 1
    if words[index] in ("first", "last") and list(words[at : at + 1]) == ["week"]:
        part, at = (1 if words[index] == "first" else 31), at + 1
    if part is None or list(words[at : at + 1]) != ["of"]:
        return None
    rest = list(words[at + 1 : at + 3])
    if rest == ["next", "month"]:
        return _upcoming(day.month % 12 + 1, part, day, index, at + 3)
    if rest in (["this", "month"], ["the", "month"]):
        return _upcoming(day.month, part, day, index, at + 3)
    if rest and rest[0] in _MONTHS:
        return _upcoming(_MONTHS[rest[0]], part, day, index, at + 2)
    return None


def _weekday(words: Sequence[str], index: int, day: date) -> _Day | None:
    """ "Tuesday", "next Tuesday", "Tuesday week", "a fortnight on Tuesday"."""
    if words[index] not in _DAYS:
        return None
    more = 0 if index + 1 == len(words) else _AHEAD_OF.get(words[index + 1], 0)
    led = _AHEAD_OF.get(words[index - 2], 0) if index > 1 and words[index - 1] == "on" else 0
    return day + timedelta(days=_days_to(words[index], day) + (more or led)), index, index + 1 + bool(more)


def _upcoming(month: int, number: int, day: date, start: int, end: int) -> _Day | None:
    """That day of the month, this year or next; a day that the month lacks is its last one."""
    if not 1 <= number <= 31:
        return None
    for year in (day.year, day.year + 1):
        found = date(year, month, min(number, calendar.monthrange(year, month)[1]))
        if found > day:
            return found, start, end
    return None


def _add(sentence: list[Segment], found: _Day, day: date) -> None:
    weeks = Fraction((found[0] - day).days, 7)
    segment = next((s for s in sentence if s.start <= found[1] < s.end), sentence[-1])
    if value_problem("next_visit_weeks", float(weeks)):
        return
    draft = Draft("next_visit_weeks", weeks, segment, found[1], found[2], status=Status.PLANNED)
    draft.evidence.update(range(found[1], found[2]))
    draft.note("next visit: a day")
    segment.draft(draft)
