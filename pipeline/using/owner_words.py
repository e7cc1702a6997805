"""A record in an owner's words: what a word of the trade means, what to mind, and when the farrier comes again."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cache
from importlib.resources import files

from pipeline.errors import VocabularyError
from pipeline.keeping import KeptVisit
from pipeline.record import Fact, Status, value_problem
from pipeline.using.origin import long_date
from pipeline.using.wording import FOOT_NAMES, weeks_words

FILE = "owner_words.csv"
COLUMNS = ("slot", "value", "plain", "advice", "source")
_NOW = (Status.PRESENT, Status.SUSPECTED, Status.PLANNED)


@dataclass(frozen=True)
class Explained:
    """A word of the trade, what it means in general, what to mind ("" for nothing), and the feet that it stands for."""

    word: str
    plain: str
    advice: str
    feet: str


@cache
def owner_words() -> dict[tuple[str, str], tuple[str, str]]:
    """(slot, value) to (meaning, advice). Raises VocabularyError for a mistake in the packaged file."""
    text = files("pipeline.using").joinpath(FILE).read_text(encoding="utf-8")
    lines = csv.DictReader(text.splitlines(), strict=True)
    if tuple(lines.fieldnames or ()) != COLUMNS:
        raise VocabularyError(f"{FILE} line 1: the columns must be {', '.join(COLUMNS)}.")
    words: dict[tuple[str, str], tuple[str, str]] = {}
    for line in lines:
        key = (line["slot"], line["value"])
        problem = value_problem(*key)
        if problem or key in words or not line["plain"] or not line["source"]:
            raise VocabularyError(f"{FILE} line {lines.line_num}: {problem or 'twice, or without meaning or source'}.")
        words[key] = (line["plain"], line["advice"])
    return words


def explained(facts: Iterable[Fact]) -> list[Explained]:
    """The words among these facts that have an explanation, each once, in the facts' order."""
    feet: dict[tuple[str, str], list[str]] = {}
    for fact in facts:
        if fact.status in _NOW and isinstance(fact.value, str) and (fact.slot, fact.value) in owner_words():
            named = feet.setdefault((fact.slot, fact.value), [])
            if FOOT_NAMES[fact.foot] not in named:
                named.append(FOOT_NAMES[fact.foot])
    return [Explained(_word(*key), *owner_words()[key], ", ".join(named)) for key, named in feet.items()]


def next_visit(visits: Sequence[KeptVisit]) -> str | None:
    """When the farrier wants to come again, as said at the last visit that told it; None when none did."""
    for visit in reversed(visits):
        weeks = [fact for fact in visit.visit.facts if fact.slot == "next_visit_weeks" and fact.status in _NOW]
        if weeks and isinstance(weeks[-1].value, int | float):
            number = float(weeks[-1].value)
            day = due_day(visit.visit.date, number)
            doubt = " (not reviewed yet: please ask)" if weeks[-1].flagged else ""
            return f"about {long_date(day)}, {weeks_words(number)} after {long_date(visit.visit.date)}{doubt}"
    return None


def due_day(day: date, weeks: float) -> date:
    """The day ``weeks`` weeks after ``day``."""
    return day + timedelta(days=round(weeks * 7))


def vet_wanted(visits: Sequence[KeptVisit]) -> list[str]:
    """The last day's facts that send to the vet, in a sentence each."""
    last = visits[-1].visit.date if visits else None
    wanted = [
        fact
        for visit in visits
        if visit.visit.date == last
        for fact in visit.visit.facts
        if fact.slot == "vet" and fact.status is not Status.ABSENT
    ]
    return ["Your farrier said that a vet should look."] if wanted else []


def _word(slot: str, value: str) -> str:
    value = value.replace("_", " ")
    return {
        "tester": f"hoof testers: {value}", "pulse": f"{value} pulse", "pad": f"{value} pad", "vet": "vet",
        "shoe_state": f"shoe {value}", "work": {"trim": "trimmed", "new shoe": "new shoe"}.get(value, value),
    }.get(slot, value)  # fmt: skip
