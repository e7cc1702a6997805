"""One fact and one visit as they are told in a record to hand over, with the words that they came from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from pipeline.keeping import KeptVisit
from pipeline.record import Fact, Flag, FlagKind
from pipeline.sentences import in_a_row
from pipeline.using.origin import long_date
from pipeline.using.wording import clock, fact_words

# Slots of which one foot has one at a time: another value is a change.
_SINGLE = frozenset(
    {
        "shoe_size", "shoe_type", "shoe_material", "nails", "nail_size", "wedge", "toe_angle", "heel_angle",
        "toe_length", "heel_height", "sole_depth", "hoof_width", "lameness", "obel", "body_condition", "cresty_neck",
        "pulse", "next_visit_weeks",
    }
)  # fmt: skip


@dataclass(frozen=True)
class Said:
    """A fact in words. ``doubt`` says why it is not settled yet, ``before`` what stood the last time it was told of,
    ``quote`` is the number of the words that it came from."""

    words: str
    doubt: str | None = None
    quote: int | None = None
    before: str | None = None


@dataclass(frozen=True)
class Quote:
    """Words of a memo: their number, where they were said, and their sound (MP3) if it was asked for."""

    number: int
    words: str
    date: date
    file_name: str
    at: str | None
    clip: bytes = b""


@dataclass(frozen=True)
class VisitTold:
    """A visit: its day, its number in the store, its memo in words, its notes and its doubts."""

    date: date
    number: int
    memo: str
    notes: str
    doubts: list[str]


def said(fact: Fact, quote: int | None, before: str | None) -> Said:
    """The fact in words."""
    doubt = in_a_row(reason.rstrip(".") for reason in fact.reasons) or "not sure"
    return Said(fact_words(fact), doubt if fact.flagged else None, quote, before)


class Quotes:
    """Numbers the words behind facts, the same words of a visit once."""

    def __init__(self, clip: Callable[[KeptVisit, float, float], bytes] | None) -> None:
        self.listed: list[Quote] = []
        self._numbers: dict[tuple[int, str, float | None], int] = {}
        self._clip = clip

    def number(self, visit: KeptVisit, fact: Fact) -> int | None:
        """The number of a fact's words, None when there are none."""
        if not fact.quote.strip():
            return None
        key = (visit.id, fact.quote, fact.start)
        if key not in self._numbers:
            self._numbers[key] = len(self.listed) + 1
            at = None if fact.start is None else clock(fact.start)
            clip = b""
            if self._clip is not None and fact.start is not None and fact.end is not None:
                clip = self._clip(visit, fact.start, fact.end)
            quote = Quote(self._numbers[key], fact.quote, visit.visit.date, visit.memo.file_name, at, clip)
            self.listed.append(quote)
        return self._numbers[key]


class Before:
    """Remembers what was last told of one foot, and says how a fact differs from it."""

    def __init__(self) -> None:
        self._last: dict[tuple[str, object], tuple[str, date]] = {}

    def of(self, fact: Fact, day: date) -> str | None:
        """What stood before when it was something else on an earlier day; None when nothing did."""
        if fact.slot in _SINGLE:
            key: tuple[str, object] = (fact.slot, None)
        else:  # a finding is followed by its name, an answer to the testers by its place
            key = (fact.slot, fact.zone if fact.slot == "tester" else fact.value)
        words = fact_words(fact)
        last = self._last.get(key)
        self._last[key] = (words, day)
        if last is None or last[0] == words or last[1] == day:
            return None
        return f"{last[0]} on {long_date(last[1])}"


def told(kept: KeptVisit) -> VisitTold:
    """The visit in words."""
    seconds = kept.memo.record.memo.seconds
    parts = [kept.memo.file_name, f"{clock(seconds)} long" if seconds is not None else ""]
    doubts = [flag.reason for flag in (*kept.visit.flags, *own_flags(kept))]
    return VisitTold(
        kept.visit.date, kept.id, ", ".join(part for part in parts if part), kept.visit.notes.strip(), doubts
    )


def own_flags(kept: KeptVisit) -> list[Flag]:
    """The doubts of the whole memo that may go to this horse's owner: of a shared memo only those without words."""
    flags = kept.memo.record.flags
    if len(kept.memo.visit_ids) == 1:
        return flags
    return [flag.model_copy(update={"quote": ""}) for flag in flags if flag.kind in (FlagKind.DATE, FlagKind.SOUND)]
