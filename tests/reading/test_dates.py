"""Days said of the next visit, counted in weeks from the memo's day."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.reading.dates import day_at
from pipeline.reading.tokens import tokenize
from tests.reading.conftest import DAY, Read
from tests.reading.telling import told

# DAY is Tuesday, 14 April 2026; the calendar is the source of every day below.
SAID = {
    "the fourteenth": date(2026, 5, 14),
    "the twentieth": date(2026, 4, 20),
    "the 14th of may": date(2026, 5, 14),
    "the twenty first of june": date(2026, 6, 21),
    "may the fifth": date(2026, 5, 5),
    "may 5th": date(2026, 5, 5),
    "may 14": date(2026, 5, 14),
    "the thirtieth": date(2026, 4, 30),
    "the first": date(2026, 5, 1),
    "end of this month": date(2026, 4, 30),
    "the end of the month": date(2026, 4, 30),
    "last week of may": date(2026, 5, 31),
    "a week on tuesday": date(2026, 4, 28),
    "march 1st": date(2027, 3, 1),
    "end of next month": date(2026, 5, 31),
    "end of february": date(2027, 2, 28),
    "beginning of june": date(2026, 6, 1),
    "the middle of may": date(2026, 5, 15),
    "first week of may": date(2026, 5, 1),
    "tuesday": date(2026, 4, 21),
    "friday": date(2026, 4, 17),
    "tuesday week": date(2026, 4, 28),
}


@pytest.mark.parametrize("words", SAID)
def test_the_day_meant(words: str) -> None:
    tokens = tokenize(words).words
    days = [found[0] for at in range(len(tokens)) if (found := day_at(tokens, at, DAY)) is not None]
    assert days[0] == SAID[words]


@pytest.mark.parametrize(
    "words",
    [
        "first visit",
        "the first one",
        "may be",
        "march on",
        "the fortieth",
        "the third shoe",
        "may 32",
        "end of the toe",
        "end of",
    ],
)
def test_no_day(words: str) -> None:
    tokens = tokenize(words).words
    assert [day_at(tokens, at, DAY) for at in range(len(tokens))] == [None] * len(tokens)


@pytest.mark.parametrize(
    ("text", "weeks"),
    [
        ("Trimmed. See her on the fourteenth.", 4.3),
        ("Trimmed. Back before the ride on the 14th of May.", 4.3),
        ("I'll see her at the end of next month.", 6.7),
        ("Booked for Tuesday week.", 2.0),
        ("Next visit is May 5th.", 3.0),
        ("Back in six weeks Tuesday.", 6.0),
        ("I'll call this day fortnight.", 2.0),
        ("I'll call Friday week.", 1.4),
        ("Back Friday fortnight.", 2.4),
        ("Back a week on Monday.", 1.9),
        ("Back in a week on Monday.", 1.0),
        ("I'll see him a fortnight on Friday.", 2.4),
        ("I'll be out again Wednesday three weeks.", 3.1),
        ("See him Friday, three weeks.", 3.0),
    ],
)
def test_the_next_visit(text: str, weeks: float, read: Read) -> None:
    facts = [fact for visit in read(text, "Tansy") for fact in visit.facts if fact.slot == "next_visit_weeks"]
    assert [(fact.value, fact.status) for fact in facts] == [(weeks, "planned")]


@pytest.mark.parametrize(
    "text",
    [
        "If he's no better call the vet on Tuesday.",
        "He was back on the first of April.",
        "He isn't due till Tuesday.",
        "The show is on the fourteenth.",
        "I'll call next week.",
        "I'll call Friday",
        "I'll ring them this day week.",
    ],
)
def test_a_day_of_something_else(text: str, read: Read) -> None:
    assert not [line for visit in read(text, "Tansy") for line in told(visit) if "next_visit" in line]


def test_the_words_said_are_kept(read: Read) -> None:
    (visit,) = read("Tansy. See her on the fourteenth.", "Tansy")
    assert [(fact.quote, fact.rules) for fact in visit.facts] == [("fourteenth", ["next visit: a day"])]
