"""The vet's list of corrections: what was changed, what was entered by hand, what was dropped, and what stays."""

from __future__ import annotations

from datetime import date

from pipeline.keeping import Store
from pipeline.record import Fact
from pipeline.using.edits import Edit, edits
from pipeline.using.export import Request, choice_of, export_horse, visits_of

DAY = date(2026, 5, 12)


def made(store: Store, redact: bool = False, since: date | None = None) -> list[Edit]:
    """The corrections of Bramble's record."""
    horse = store.horse("Bramble")
    visits = visits_of(store, horse)
    return edits(store.leaving([horse], visits, since), visits, redact)


def told(found: list[Edit]) -> list[tuple[str, ...]]:
    """Everything of them but the moment."""
    return [(edit.who, edit.about, edit.column, edit.old, edit.new, edit.why) for edit in found]


def decide(store: Store) -> None:
    """Somebody drops the abscess of April and enters a corn in its place."""
    april = store.visit(2)
    noted = store.drop(april.fact_ids[1], seen=april.revision, who="nora", why="he only wondered")
    corn = Fact(foot="RF", slot="finding", value="corn")
    store.add_fact(2, corn, seen=noted.revision, who="nora", why="it was a corn")


def test_dropped_and_entered_facts_are_told(store: Store) -> None:
    decide(store)
    about = "visit of 2026-04-13, right fore"
    assert told(made(store)) == [
        ("nora", f"{about}: perhaps abscess", "in the record", "yes", "no, dropped", "he only wondered"),
        ("nora", f"{about}: corn", "in the record", "no", "yes, entered by hand", "it was a corn"),
    ]
    assert [edit.at for edit in made(store)] == sorted(edit.at for edit in made(store))


def test_a_fact_entered_and_dropped_again_is_told_twice(store: Store) -> None:
    corn = Fact(foot="RF", slot="finding", value="corn")
    added = store.add_fact(2, corn, seen=store.visit(2).revision, who="nora", why="a corn")
    store.drop(added.fact, seen=added.revision, who="owen", why="no corn")
    assert [(edit.who, edit.new) for edit in made(store)] == [("nora", "yes, entered by hand"), ("owen", "no, dropped")]


def test_what_was_restored_or_taken_back_is_not_told(store: Store) -> None:
    decide(store)
    store.undo(2, who="nora")
    assert [edit for edit in made(store) if edit.column == "in the record"] == []


def test_a_redacted_list_names_nobody_and_gives_no_reason(store: Store) -> None:
    decide(store)
    assert [(edit.who, edit.why, edit.new) for edit in made(store, redact=True)] == [
        ("", "", "no, dropped"),
        ("", "", "yes, entered by hand"),
    ]


def test_what_was_decided_of_visits_that_stay_out_stays_out(store: Store) -> None:
    decide(store)
    march = store.visit(1)
    store.drop(march.fact_ids[0], seen=march.revision, who="nora", why="never looked")
    assert len(made(store)) == 3
    assert [edit.why for edit in made(store, since=date(2026, 4, 1))] == ["he only wondered", "it was a corn"]


def test_a_drop_that_a_new_reading_carries_over_is_whose_it_was(store: Store) -> None:
    march = store.visit(1)
    store.drop(march.fact_ids[0], seen=march.revision, who="nora", why="never looked")
    (before,) = store.visit(1).dropped
    record = march.memo.record.model_copy(deep=True)
    record.visits[0].facts.pop()
    assert store.read_again(march.memo.id, record, seen=1, vocabulary="later", who="clock") == 2
    (after,) = store.visit(1).dropped
    assert after.id != before.id
    expected = ("nora", "visit of 2026-03-02, left fore: no thrush", "in the record", "yes", "no, dropped")
    assert told(made(store)) == [(*expected, "never looked")]


def test_what_a_reading_sets_aside_was_dropped_by_nobody(store: Store) -> None:
    corn = Fact(foot="RF", slot="finding", value="corn")
    store.add_fact(2, corn, seen=store.visit(2).revision, who="nora", why="a corn")
    memo = store.visit(2).memo
    record = memo.record.model_copy(deep=True)
    record.visits[0].facts[-1].quote = "the corn"
    assert store.read_again(memo.id, record, seen=1, vocabulary="later", who="clock") == 2
    assert [fact.fact.quote for fact in store.visit(2).dropped] == ["the corn"]
    assert [(edit.who, edit.new) for edit in made(store)] == [("nora", "yes, entered by hand")]


def test_the_vets_page_shows_them_and_the_owners_does_not(store: Store) -> None:
    decide(store)
    vets = export_horse(store, "Bramble", Request("md", choice_of(DAY, "vet"))).decode("utf-8")
    assert "perhaps abscess: dropped (he only wondered)" in vets
    assert "right fore: corn: entered by hand (it was a corn)" in vets
    owners = export_horse(store, "Bramble", Request("md", choice_of(DAY))).decode("utf-8")
    assert "he only wondered" not in owners
    assert "abscess" not in owners
