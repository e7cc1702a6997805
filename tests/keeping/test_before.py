"""The visit before, as judging is given it."""

from __future__ import annotations

from datetime import date

from pipeline.keeping import Store
from pipeline.record import Fact, HorseMatch, RosterHorse, Visit
from tests.keeping.conftest import Yard


def visit(day: date, *facts: Fact, horse: str = "Bramble", **more: object) -> Visit:
    return Visit.model_validate(
        {"horse": horse, "horse_match": HorseMatch.KNOWN, "date": day, "facts": list(facts), **more}
    )


def size(value: str) -> Fact:
    return Fact(foot="LF", slot="shoe_size", value=value)


MARCH, APRIL, MAY = date(2026, 3, 2), date(2026, 4, 13), date(2026, 5, 25)


def last_sizes(store: Store, asked: Visit) -> tuple[date, list[str | float]] | None:
    found = store.last_visit(asked)
    return None if found is None else (found.day, [fact.value for fact in found.facts])


def test_the_last_day_before_and_all_that_was_said_on_it(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(MARCH, size("1")))
    yard.keep(store, visit(APRIL, size("2")))
    yard.keep(store, visit(APRIL, size("3")))
    assert last_sizes(store, visit(MAY)) == (APRIL, ["2", "3"])
    assert last_sizes(store, visit(APRIL)) == (MARCH, ["1"])
    assert last_sizes(store, visit(MARCH)) is None


def test_by_any_name_of_the_horse(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(MARCH, size("1")))
    assert last_sizes(store, visit(APRIL, horse="Bram")) == (MARCH, ["1"])


def test_nothing_for_a_horse_that_is_not_known_for_certain(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(MARCH, size("1")))
    assert last_sizes(store, visit(APRIL, horse_match=HorseMatch.UNCLEAR)) is None
    assert last_sizes(store, visit(APRIL, horse_match=HorseMatch.NEW)) is None
    assert last_sizes(store, visit(APRIL, horse="Teasel")) is None


def test_of_namesakes_the_one_at_the_place(yard: Yard, store: Store) -> None:
    yard.keep(store, visit(MARCH, size("1")))
    store.add_horses([RosterHorse(name="Bramble", place="Hill yard")])
    assert last_sizes(store, visit(APRIL)) is None
    assert last_sizes(store, visit(APRIL, place="River barn")) == (MARCH, ["1"])
    assert last_sizes(store, visit(APRIL, place="Hill yard")) is None


def test_what_was_dropped_is_not_told(yard: Yard, store: Store) -> None:
    (number,) = yard.keep(store, visit(MARCH, size("1"), size("2")))
    kept = store.visit(number)
    store.drop(kept.facts[0].id, seen=kept.revision)
    assert last_sizes(store, visit(APRIL)) == (MARCH, ["2"])
