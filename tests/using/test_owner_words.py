"""The owner's words: every finding is explained, nothing is diagnosed, and the next day is counted right."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.keeping import Store
from pipeline.record import WORDED_SLOTS, Fact, HorseMatch, Status, Visit
from pipeline.using.owner_words import due_day, explained, next_visit, owner_words, vet_wanted
from tests.using.conftest import Keep


def test_every_finding_and_every_answer_is_explained() -> None:
    explained_values = set(owner_words())
    for slot in ("finding", "tester", "shoe_state", "work"):
        assert {(slot, value) for value in WORDED_SLOTS[slot]} <= explained_values


@pytest.mark.parametrize(
    "value", ["laminitis", "puncture", "quicked", "abscess", "canker", "keratoma", "rotation", "close_nail"]
)
def test_what_can_hurt_sends_to_the_vet(value: str) -> None:
    assert "vet" in owner_words()["finding", value][1]


def test_a_word_is_explained_once_for_all_its_feet() -> None:
    facts = [
        Fact(foot="LF", slot="finding", value="thrush"),
        Fact(foot="RH", slot="finding", value="thrush"),
        Fact(foot="RF", slot="finding", value="corn", status=Status.ABSENT),
        Fact(foot="RF", slot="shoe_size", value="00"),
    ]
    (thrush,) = explained(facts)
    assert (thrush.word, thrush.feet) == ("thrush", "left fore, right hind")


@pytest.mark.parametrize(
    ("weeks", "day"), [(6, date(2026, 4, 13)), (6.5, date(2026, 4, 17)), (0.1, date(2026, 3, 3)), (1, date(2026, 3, 9))]
)
def test_weeks_are_counted_from_the_visit(weeks: float, day: date) -> None:
    assert due_day(date(2026, 3, 2), weeks) == day


def test_the_last_word_on_the_next_visit_counts(empty: Store, keep_memo: Keep) -> None:
    def visit(day: date, *facts: Fact) -> Visit:
        return Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=day, facts=list(facts))

    weeks = Fact(foot=None, slot="next_visit_weeks", value=1.0, status=Status.PLANNED, flagged=True)
    vet = Fact(foot=None, slot="vet", value="referral", status=Status.PLANNED)
    keep_memo(empty, "a.m4a", "a", [visit(date(2026, 3, 2), weeks)])
    keep_memo(empty, "b.m4a", "b", [visit(date(2026, 4, 2), vet)])
    visits = empty.visits_of("Bramble")
    assert next_visit(visits) == "about 9 March 2026, 1 week after 2 March 2026 (not reviewed yet: please ask)"
    assert vet_wanted(visits) == ["Your farrier said that a vet should look."]
    assert next_visit([]) is None
    assert vet_wanted(visits[:1]) == []
