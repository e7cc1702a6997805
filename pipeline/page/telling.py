"""Visits and facts as the pages tell them: words only, made of the record, nothing decided."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from math import ceil, floor

from markupsafe import Markup

from pipeline.judging import cautions
from pipeline.keeping import KeptVisit
from pipeline.record import FEET, Fact, Foot, HorseMatch, Status
from pipeline.sentences import in_a_row
from pipeline.using.hoof_map import Kind, Mark, hoof_svg, kind_of
from pipeline.using.review.surroundings import PAD_S, Clip
from pipeline.using.wording import FOOT_NAMES, FOUND_SLOTS, clock, fact_words, harmless

_PLAN_SLOTS = frozenset({"next_visit_weeks", "vet"})
_TODAY = (Status.PRESENT, Status.SUSPECTED)


@dataclass(frozen=True)
class Sound:
    """A clip as a page names it: where it is served and how long it is, in seconds."""

    address: str
    seconds: float


@dataclass(frozen=True)
class Line:
    """One fact in words; ``doubt`` is why it is to be looked at, empty when nobody doubts it."""

    words: str
    doubt: str = ""


@dataclass(frozen=True)
class Marked:
    """A line that has its number and colour on the drawing; ``placed`` is False when no place was said."""

    number: int
    kind: Kind
    line: Line
    placed: bool


@dataclass(frozen=True)
class Quote:
    """Words of the memo behind some facts, where they were said, and their sound."""

    words: str
    at: str
    sound: Sound | None


@dataclass(frozen=True)
class FootTold:
    """One foot, or the whole horse: its drawing with the numbered lines beneath, what else was found and done, and the
    words behind it all."""

    name: str
    drawing: Markup | None
    marks: list[Marked]
    found: list[Line]
    done: list[Line]
    quotes: list[Quote]


@dataclass(frozen=True)
class VisitTold:
    """A visit for its page."""

    id: int
    horse: str
    day: date
    whose: str
    note: str
    cautions: list[str]
    feet: list[FootTold]
    plan: list[Line]
    notes: str
    memo: str
    transcript: str


@dataclass(frozen=True)
class Row:
    """A visit in the list of a day: ``gist`` is what was found and done, ``questions`` how many are open."""

    id: int
    horse: str
    place: str
    feet: str
    gist: str
    questions: int
    careful: bool


def readable(value: object) -> object:
    """Text of memos and rosters without signs that could rewrite a screen; anything else as it is."""
    return harmless(value) if type(value) is str else value


def long_date(day: date) -> str:
    """Tuesday 12 May 2026."""
    return f"{day:%A} {day.day} {day:%B %Y}"


def horse_of(visit: KeptVisit) -> str:
    """The horse's name, or that there is none yet."""
    if visit.horse:
        return visit.horse.name
    heard = visit.visit.horse
    return f"Unknown horse (heard: {heard})" if heard else "Unknown horse"


def sound_of(clip: Clip | None, more_s: float = 0.0, length_s: float | None = None) -> Sound | None:
    """Where a clip is served; with ``more_s`` seconds more on either side, within a memo of ``length_s``."""
    if clip is None:
        return None
    start, end = max(0.0, clip.start_s - more_s), clip.end_s + more_s
    if length_s is not None:
        end = min(end, length_s)
    start_ms, end_ms = floor(start * 1000), ceil(end * 1000)
    return Sound(f"/sound/{clip.memo_id}/{start_ms}-{end_ms}.wav", (end_ms - start_ms) / 1000)


def told(visit: KeptVisit) -> VisitTold:
    """The whole visit in words."""
    facts = visit.visit.facts
    standing = [fact for fact in facts if not _is_plan(fact)]
    feet = [_foot(visit, foot, [fact for fact in standing if fact.foot == foot]) for foot in (*FEET, None)]
    horse, memo = visit.horse, visit.memo
    length = memo.record.memo.seconds
    return VisitTold(
        id=visit.id,
        horse=horse_of(visit),
        day=visit.visit.date,
        whose=", ".join(part for part in (horse.horse.owner, horse.horse.place) if part) if horse else "",
        note="A new horse, first named in this memo." if visit.visit.horse_match is HorseMatch.NEW else "",
        cautions=cautions(facts),
        feet=[foot for foot in feet if foot is not None],
        plan=[_line(fact, with_foot=True) for fact in facts if _is_plan(fact)],
        notes=visit.visit.notes.strip(),
        memo=f"{memo.file_name}{f', {clock(length)} long' if length is not None else ''}",
        transcript=memo.transcript.text,
    )


def row_of(visit: KeptVisit, questions: int) -> Row:
    """The visit as one line of its day."""
    facts = visit.visit.facts
    feet = [FOOT_NAMES[foot] for foot in FEET if any(fact.foot == foot for fact in facts)]
    return Row(
        id=visit.id,
        horse=horse_of(visit),
        place=(visit.horse.horse.place or "") if visit.horse else "",
        feet="all four feet" if len(feet) == len(FEET) else ", ".join(feet),
        gist=_gist(facts),
        questions=questions,
        careful=bool(cautions(facts)),
    )


def _is_plan(fact: Fact) -> bool:
    return fact.status is Status.PLANNED or fact.slot in _PLAN_SLOTS


def _gist(facts: Iterable[Fact]) -> str:
    today = [fact for fact in facts if fact.slot in ("finding", "work") and fact.status in _TODAY]
    words = (f"{'perhaps ' if f.status is Status.SUSPECTED else ''}{str(f.value).replace('_', ' ')}" for f in today)
    return ", ".join(dict.fromkeys(words))


def _foot(visit: KeptVisit, foot: Foot | None, facts: Sequence[Fact]) -> FootTold | None:
    if not facts:
        return None
    marks, others = _marked(facts) if foot else ([], list(facts))
    drawn = [Mark(one.number, fact.zone, one.line.words, one.kind) for one, fact in marks]
    return FootTold(
        name=FOOT_NAMES[foot].capitalize(),
        drawing=Markup(hoof_svg(foot, drawn)) if foot else None,
        marks=[one for one, _ in marks],
        found=[_line(fact) for fact in others if fact.slot in FOUND_SLOTS],
        done=[_line(fact) for fact in others if fact.slot not in FOUND_SLOTS],
        quotes=_quotes(visit, facts),
    )


def _marked(facts: Sequence[Fact]) -> tuple[list[tuple[Marked, Fact]], list[Fact]]:
    """The facts that are drawn, the most pressing first, and the others."""
    kinds = [(kind, fact) for fact in facts if (kind := kind_of(fact)) is not None]
    kinds.sort(key=lambda pair: tuple(Kind).index(pair[0]))
    marks = [
        (Marked(number, kind, _line(fact), fact.zone is not None), fact)
        for number, (kind, fact) in enumerate(kinds, start=1)
    ]
    return marks, [fact for fact in facts if kind_of(fact) is None]


def _line(fact: Fact, with_foot: bool = False) -> Line:
    words = f"{FOOT_NAMES[fact.foot]}: {fact_words(fact)}" if with_foot and fact.foot else fact_words(fact)
    return Line(words, (in_a_row(fact.reasons) or "not sure") if fact.flagged else "")


def _quotes(visit: KeptVisit, facts: Iterable[Fact]) -> list[Quote]:
    length = visit.memo.record.memo.seconds
    seen: dict[tuple[str, float | None], Quote] = {}
    for fact in facts:
        if not fact.quote.strip() or (fact.quote, fact.start) in seen:
            continue
        clip = None
        if fact.start is not None and fact.end is not None and length is not None:
            clip = Clip(visit.memo.id, max(0.0, fact.start - PAD_S), min(length, fact.end + PAD_S))
        at = clock(fact.start) if fact.start is not None else ""
        seen[fact.quote, fact.start] = Quote(fact.quote, at, sound_of(clip))
    return list(seen.values())
