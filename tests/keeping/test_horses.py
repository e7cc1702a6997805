"""Which horse a visit belongs to: never a guess."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotFoundError, RosterError
from pipeline.keeping import Store
from pipeline.record import Flag, FlagKind, HorseMatch, RosterHorse, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


def named(visit: Visit, horse: str | None, match: HorseMatch) -> Visit:
    """The visit at another horse."""
    return visit.model_copy(update={"horse": horse, "horse_match": match})


def test_a_new_horse_joins_the_roster_and_is_known_next_time(yard: Yard, store: Store, trimmed: Visit) -> None:
    (first,) = yard.keep(store, named(trimmed, "Sorrel", HorseMatch.NEW))
    (second,) = yard.keep(store, named(trimmed, "sorrel", HorseMatch.KNOWN))
    assert [horse.name for horse in store.roster()] == ["Bramble", "Sorrel"]
    sorrel = store.horse("Sorrel")
    assert sorrel.from_memo == store.visit(first).memo.id
    assert [visit.id for visit in store.visits_of("SORREL")] == [first, second]


def test_another_name_leads_to_the_horse(yard: Yard, store: Store, trimmed: Visit) -> None:
    (visit_id,) = yard.keep(store, named(trimmed, "Bram", HorseMatch.KNOWN))
    assert store.visit(visit_id).horse == store.horse("Bramble")
    assert store.visits_of("bram")[0].visit.horse == "Bramble"


@pytest.mark.parametrize("heard", ["Brindle", None])
def test_an_unclear_horse_stays_unassigned_as_heard(
    yard: Yard, store: Store, trimmed: Visit, heard: str | None
) -> None:
    (visit_id,) = yard.keep(store, named(trimmed, heard, HorseMatch.UNCLEAR))
    kept = store.visit(visit_id)
    assert (kept.horse, kept.visit.horse, kept.visit.horse_match) == (None, heard, HorseMatch.UNCLEAR)
    assert [visit.id for visit in store.unassigned()] == [visit_id]
    assert [horse.name for horse in store.roster()] == ["Bramble"]


def test_two_horses_of_one_name_are_never_guessed_between(yard: Yard, store: Store, trimmed: Visit) -> None:
    store.add_horses([RosterHorse(name="Bramble", place="Hill yard")])
    (visit_id,) = yard.keep(store, trimmed)
    kept = store.visit(visit_id)
    assert (kept.horse, kept.visit.horse_match) == (None, HorseMatch.UNCLEAR)
    (flag,) = kept.visit.flags
    assert flag.kind is FlagKind.HORSE
    assert "Hill yard" in flag.reason
    assert "River barn" in flag.reason
    with pytest.raises(NotFoundError, match="say the place"):
        store.visits_of("Bramble")
    assert store.visits_of("Bramble", "hill yard") == []


def test_which_of_two_horses_it_was_is_asked_once(yard: Yard, store: Store, trimmed: Visit) -> None:
    store.add_horses([RosterHorse(name="Bramble", place="Hill yard")])
    asked = Flag(kind=FlagKind.HORSE, reason="Several horses are called Bramble; which one is it?", quote="Bramble")
    (visit_id,) = yard.keep(store, trimmed.model_copy(update={"flags": [asked]}))
    assert store.visit(visit_id).visit.flags == [asked]
    assert store.visit(visit_id).horse is None


def test_a_new_horse_with_a_known_name_is_asked_about(yard: Yard, store: Store, trimmed: Visit) -> None:
    (visit_id,) = yard.keep(store, named(trimmed, "Bramble", HorseMatch.NEW))
    kept = store.visit(visit_id)
    assert (kept.horse, kept.visit.horse_match) == (None, HorseMatch.UNCLEAR)
    assert [flag.kind for flag in kept.visit.flags] == [FlagKind.HORSE]


def test_one_memo_that_returns_to_its_new_horse_adds_it_once(yard: Yard, store: Store, trimmed: Visit) -> None:
    new = named(trimmed, "Sorrel", HorseMatch.NEW)
    ids = yard.keep(store, new, new)
    assert [visit.id for visit in store.visits_of("Sorrel")] == ids


def test_a_later_roster_adopts_the_horse_of_a_memo(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, named(trimmed, "Sorrel", HorseMatch.NEW))
    assert store.add_horses([RosterHorse(name="Sorrel", owner="C. Lind", place="Hill yard")]) == (0, 1)
    assert store.visits_of("Sorrel", "Hill yard")[0].visit.horse == "Sorrel"


def test_a_roster_with_two_of_the_name_adopts_neither(yard: Yard, store: Store, trimmed: Visit) -> None:
    yard.keep(store, named(trimmed, "Sorrel", HorseMatch.NEW))
    two = [RosterHorse(name="Sorrel", place="Hill yard"), RosterHorse(name="Sorrel", place="Ford")]
    assert store.add_horses(two) == (2, 0)
    assert len(store.horses()) == 4


def test_what_a_list_does_not_say_stays(store: Store) -> None:
    again = RosterHorse(name="bramble", place="RIVER BARN", other={"vet": "D. Moor"})
    assert store.add_horses([again]) == (0, 1)
    (kept,) = store.roster()
    assert (kept.owner, kept.also_called, kept.other) == ("A. Fern", ["Bram"], {"vet": "D. Moor"})
    assert store.add_horses([kept]) == (0, 0)


def test_a_horse_without_a_name_adds_none_of_the_list(store: Store) -> None:
    with pytest.raises(RosterError, match="name"):
        store.add_horses([RosterHorse(name="Sorrel"), RosterHorse(name="  ")])
    assert [horse.name for horse in store.roster()] == ["Bramble"]


def test_a_mistyped_name_names_what_is_close(store: Store) -> None:
    with pytest.raises(NotFoundError, match="Did you mean Bramble"):
        store.visits_of("Brambel")


def test_a_list_of_thousands_asks_the_store_once_a_horse(store: Store) -> None:
    asked: list[str] = []
    many = [RosterHorse(name=f"Horse {number}", place=f"Yard {number % 7}") for number in range(3000)]
    with store._database.tracer(lambda sql, parameters: asked.append(sql)):
        assert store.add_horses(many) == (3000, 0)
    assert len([sql for sql in asked if sql.startswith("SELECT * FROM horses")]) == 3000
    plan = store._database.query("EXPLAIN QUERY PLAN SELECT * FROM horses WHERE name_key = 'x'")
    assert "USING INDEX" in next(iter(plan))["detail"]


def test_all_memos_are_read_with_as_many_questions_as_one(yard: Yard, store: Store, trimmed: Visit) -> None:
    def questions() -> int:
        asked: list[str] = []
        with store._database.tracer(lambda sql, parameters: asked.append(sql)):
            store.memos()
        return len(asked)

    yard.keep(store, trimmed)
    one = questions()
    for _ in range(20):
        yard.keep(store, trimmed, trimmed)
    assert (questions(), len(store.memos())) == (one, 21)
