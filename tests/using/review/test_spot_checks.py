"""Spot checks: drawn by a hash, never twice, and their outcomes told with an interval."""

from __future__ import annotations

import pytest

from pipeline.keeping.to_review import SpotChecked
from pipeline.using.review import Item, ItemKind, Review
from pipeline.using.review.spot_checks import silent_errors, wilson
from tests.using.review.conftest import Keep


def checks(review: Review) -> list[Item]:
    """The open spot checks."""
    return [item for item in review.queue() if item.kind is ItemKind.SPOT_CHECK]


def test_every_day_has_at_least_one(yard: Review, hear: Keep) -> None:
    for day in ("2026-05-10", "2026-05-11", "2026-05-12"):
        hear(yard, "Hester. New shoes in front.", day=day)
    assert {item.visit.visit.date.day for item in checks(yard)} == {10, 11, 12}


def test_a_day_with_nothing_read_has_none(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester was away.")
    assert checks(yard) == []


def test_about_one_in_twenty_is_drawn_and_always_the_same(demo: Review) -> None:
    drawn = checks(demo)
    unflagged = {
        (visit.id, kept.fact.span, kept.fact.slot)
        for visit in (demo.store.visit(number) for memo in demo.store.memos() for number in memo.visit_ids)
        for kept in visit.facts
        if not kept.fact.flagged
    }
    assert 1 <= len(drawn) <= 0.12 * len(unflagged)
    assert [item.key for item in checks(demo)] == [item.key for item in drawn]


def test_they_are_marked_and_stand_among_the_others(demo: Review) -> None:
    items = demo.queue()
    assert all(item.reason().startswith("Nothing is doubted here") for item in checks(demo))
    places = [place for place, item in enumerate(items) if item.spot_check]
    assert places != list(range(len(items) - len(places), len(items)))


def test_an_answer_draws_no_other_in_its_place(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. New shoes in front, size two, six nails in each. Trimmed the hinds. Six weeks.")
    before = {item.key for item in checks(yard)}
    for item in checks(yard):
        yard.drop(yard.item(item.key))
    assert before
    assert checks(yard) == []


def test_old_days_are_asked_no_more(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. New shoes in front.", day="2026-04-01")
    hear(yard, "Hester. New shoes in front.", day="2026-05-12")
    assert {item.visit.visit.date.month for item in checks(yard)} == {5}


def test_outcomes_are_counted_by_the_field_and_taken_back(demo: Review) -> None:
    first, second, *_ = checks(demo)
    demo.accept(demo.item(first.key))
    demo.drop(demo.item(second.key))
    assert demo.store.spot_checked() == SpotChecked(looked_at=2, wrong=1)
    demo.undo()
    assert demo.store.spot_checked() == SpotChecked(looked_at=1, wrong=0)


def test_other_answers_are_no_spot_checks(demo: Review) -> None:
    demo.drop(next(item for item in demo.queue() if item.kind is ItemKind.FIELD))
    assert demo.store.spot_checked() == SpotChecked(0, 0)
    assert silent_errors(demo.store) == "no spot check yet; the review asks some"


def test_the_sentence_with_its_interval(demo: Review) -> None:
    demo.accept(checks(demo)[0])
    assert silent_errors(demo.store) == (
        "0 of 1 spot check found an error that nothing had flagged: 0% "
        "(between 0% and 79% with 95 % confidence; Wilson 1927)"
    )


@pytest.mark.parametrize(
    ("wrong", "looked_at", "low", "high"),
    # Newcombe 1998, Stat Med 17:857-872, table I, method 3 (Wilson without continuity correction).
    [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)],
)
def test_wilson(wrong: int, looked_at: int, low: float, high: float) -> None:
    assert list(wilson(wrong, looked_at)) == pytest.approx([low, high], abs=5e-5)


def test_nothing_is_known_after_no_check() -> None:
    assert wilson(0, 0) == (0.0, 1.0)
