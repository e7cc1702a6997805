"""What goes with a question: the words around it, the seconds of sound, and what the last visit said."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from textwrap import shorten

from pipeline.keeping import Store
from pipeline.record import FEET, Transcript
from pipeline.using.review.items import Item, with_feet
from pipeline.using.review.questions import grouped

PAD_S = 0.4  # before and behind: the times of words drift
_WORDS_AROUND = 14
_OPENING_S = 8.0  # where a memo names its horse, when nothing says where
_WORD = re.compile(r"\S+")
_STOP = re.compile(r"(?<=[.?!])\s+")
_LONGEST_START = 60  # characters of a sentence to choose by


@dataclass(frozen=True)
class Words:
    """A stretch of the memo: what comes before, the words in question, and what comes behind."""

    before: str
    marked: str
    behind: str


@dataclass(frozen=True)
class Clip:
    """Seconds of a memo's sound, the padding included."""

    memo_id: int
    start_s: float
    end_s: float


@dataclass(frozen=True)
class Start:
    """A sentence with which another horse may have come in: its first character, and its first words."""

    at: int
    says: str


@dataclass(frozen=True)
class LastTime:
    """What the horse's last visit said in this slot on these feet."""

    day: date
    said: str
    value: str | float


def words_of(item: Item) -> Words:
    """The words in question and some around them; all of them in ``before`` when no words are named."""
    text, (start, end) = item.visit.memo.transcript.text, span_of(item)
    starts = [match.start() for match in _WORD.finditer(text)]
    first = [at for at in starts if at < start][-_WORDS_AROUND:]
    last = [match.end() for match in _WORD.finditer(text, end)][: 2 * _WORDS_AROUND if end == start else _WORDS_AROUND]
    begin, finish = (first[0] if first else start), (last[-1] if last else end)
    before = ("… " if begin > 0 else "") + text[begin:start].lstrip()
    return Words(before, text[start:end], text[end:finish] + (" …" if finish < len(text) else ""))


def span_of(item: Item) -> tuple[int, int]:
    """The characters in question; found by their seconds when only those are known."""
    if item.span[1] > item.span[0] or item.seconds is None:
        return item.span
    within = _within(item.visit.memo.transcript, *item.seconds)
    return within or item.span


def _within(transcript: Transcript, start_s: float, end_s: float) -> tuple[int, int] | None:
    words = [word for word in transcript.words if word.start_s < end_s and word.end_s > start_s]
    return (words[0].start, words[-1].end) if words else None


def clip_of(item: Item) -> Clip | None:
    """Just the seconds in question, padded; a nameless horse gets the memo's opening. None without sound."""
    memo = item.visit.memo
    length = memo.record.memo.seconds
    if not memo.transcript.heard or length is None:
        return None
    start, end = item.seconds or (0.0, _OPENING_S)
    return Clip(memo.id, max(0.0, start - PAD_S), min(length, end + PAD_S))


def last_time(store: Store, item: Item) -> LastTime | None:
    """What the horse's last visit said of the same thing; None for a horse, a slot or a foot that it did not name."""
    fact, horse = item.fact, item.visit.horse
    if fact is None or horse is None:
        return None
    known = store.last_known(horse.id, item.visit.visit.date, item.visit.id)
    same = [(day, kept.fact) for day, kept in known if kept.fact.slot == fact.slot and kept.fact.foot in item.feet]
    if fact.slot in ("finding", "treatment"):  # many at once: only the same one can be compared
        same = [(day, one) for day, one in same if one.value == fact.value]
    if not same:
        return None
    day, one = same[0]
    feet = tuple(foot for foot in item.feet if any((o.foot, o.value) == (foot, one.value) for _, o in same))
    return LastTime(day, with_feet(one, feet), one.value)


def starts_there(store: Store, item: Item) -> list[Start]:
    """Where another horse may have come in: at the place that is asked about, or with a later sentence of that part
    that something stands behind."""
    if item.place is None or item.place.before:
        return []
    first, last = store.part_asked(item.flags[0].id)
    text = item.visit.memo.transcript.text
    reached = max((kept.fact.span[0] for kept in item.visit.facts if first <= kept.fact.span[0] < last), default=first)
    starts = [first, *(match.end() for match in _STOP.finditer(text, first, last))]
    ends = [*starts[1:], last]
    return [
        Start(start, shorten(text[start:end].strip(), _LONGEST_START, placeholder=" …"))
        for start, end in zip(starts, ends, strict=True)
        if start <= reached
    ]


def told_there(store: Store, item: Item, start: int | None = None) -> list[str]:
    """What stands of the visit at the place where another horse may have come in, one field with its feet each;
    or from a later ``start`` on."""
    if item.place is None:
        return []
    first, last = store.part_asked(item.flags[0].id)
    first = first if start is None else start
    there = [kept for kept in item.visit.facts if first <= kept.fact.span[0] < min(last, kept.fact.span[1])]
    order = (*FEET, None)
    return [
        with_feet(kept[0].fact, tuple(sorted({one.fact.foot for one in kept}, key=order.index)))
        for kept in grouped(there)
    ]
