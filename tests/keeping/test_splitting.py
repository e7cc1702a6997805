"""One visit taken apart where another horse came in: what is told there goes along, all else stays, once."""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.judging.asked_place import asks_before, asks_from, of_fact_before, of_fact_from
from pipeline.keeping import ChangeKind, Store
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.deciding import AssignHorse, SameHorse, SplitVisit
from pipeline.record import Fact, Flag, FlagKind, RosterHorse, Visit
from tests.keeping.two_horses import (
    ALL,
    ASKED,
    CORN,
    DAY,
    DOG,
    GATE,
    NOT_SURE,
    NOTES,
    PLACE,
    SIZE,
    SORREL,
    SOUND,
    TEXT,
    THRUSH,
    WEEKS,
    WHOSE,
    again,
    as_it_was,
    bramble,
    decide,
    fact,
    flag,
    keep_both,
    place,
    split,
    told,
)

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """A store with the memo."""
    return keep_both(yard, store)


def test_only_what_is_told_from_the_place_to_the_next_name_goes_along(kept: Store) -> None:
    split(kept)
    first, new = kept.visit(1), kept.visit(3)
    assert (told(kept, 1), told(kept, 3)) == (["thrush", 6.0], ["2", "corn"])
    assert ([one.flag for one in first.flags], [one.flag for one in new.flags]) == ([GATE], [DOG])
    assert (first.visit.notes, new.visit.notes) == ("The gate sticks", "Grey one next\nMind the dog")
    assert new.horse is not None
    assert (new.horse.name, new.visit.date, new.memo.id) == ("Teasel", DAY, 1)
    assert kept.counts()["facts"] == 5


@pytest.mark.parametrize("named", ["Bramble again", "Bram    again"])
def test_the_part_ends_where_a_horse_is_named_whichever_of_its_names_is_said(
    named: str, yard: Yard, store: Store
) -> None:
    store.add_horses([RosterHorse(name="Teasel")])
    text = TEXT.replace("Bramble again", named)
    again_flag = flag(FlagKind.NOT_UNDERSTOOD, "again", "Not understood: again")
    yard.keep(store, bramble(THRUSH, SIZE, CORN, WEEKS, flags=(ASKED, DOG, again_flag)), text=text)
    assert store.part_asked(place(store)) == (TEXT.index(PLACE), TEXT.index("Bramble again"))
    split(store)
    assert [[one.flag for one in store.visit(number).flags] for number in (1, 2)] == [[again_flag], [DOG]]


def test_it_goes_to_the_visit_that_the_memo_has_of_that_horse(kept: Store) -> None:
    split(kept, "Sorrel")
    assert kept.memo(1).visit_ids == (1, 2)
    assert (told(kept, 2), kept.visit(2).visit.notes) == (["sound", "2", "corn"], "Bill the yard\n" + NOTES[16:])


def test_a_horse_that_nobody_knew_joins_the_roster(kept: Store) -> None:
    decide(kept, SplitVisit(place(kept), RosterHorse(name="Juniper")))
    assert [visit.id for visit in kept.visits_of("Juniper")] == [3]


def test_only_the_question_whose_it_is_is_answered(kept: Store) -> None:
    split(kept)
    size, corn = kept.visit(3).facts
    assert (size.fact.flagged, size.fact.reasons, size.settled) == (True, [NOT_SURE], False)
    assert (corn.fact.flagged, corn.fact.reasons, corn.fact.confidence) == (False, [], 0.5)


def test_it_is_one_change_in_history_of_both_visits(kept: Store) -> None:
    split(kept)
    (change,) = kept.changes(1)
    assert (change.kind, change.visit, change.why) == (ChangeKind.MOVE, 1, "reviewed")
    assert [past.change for past in kept.history_of(1).past] == [change]
    assert [past.change for past in kept.history_of(3).past] == [change]
    assert {entry.change for entry in kept.history()} == {1}


def test_undo_brings_back_exactly_what_was(kept: Store) -> None:
    for horse in ("Teasel", "Sorrel"):
        before = [as_it_was(kept.visit(number)) for number in (1, 2)]
        split(kept, horse)
        kept.undo_action()
        assert [as_it_was(kept.visit(number)) for number in (1, 2)] == before
        assert kept.memo(1).visit_ids == (1, 2)
    assert kept.visits_of("Teasel") == []
    assert kept.problems() == []


def test_what_somebody_built_upon_is_not_taken_back(kept: Store) -> None:
    split(kept)
    kept.correct_visit(3, seen=kept.visit(3).revision, notes="He bites.", who="nora")
    with pytest.raises(StoreConflictError, match="take the later change back first"):
        kept.undo_action()
    assert told(kept, 3) == ["2", "corn"]


def test_it_may_have_come_in_later_than_the_place(kept: Store) -> None:
    split(kept, start=TEXT.index("A corn"))
    assert (told(kept, 1), told(kept, 3)) == (["thrush", "2", 6.0], ["corn"])
    assert kept.visit(1).facts[1].fact.reasons == [NOT_SURE]
    assert kept.visit(3).visit.notes == "Mind the dog"


def test_the_same_horse_goes_on(kept: Store) -> None:
    decide(kept, SameHorse(place(kept)))
    assert [one.fact.reasons for one in kept.visit(1).facts] == [[], [NOT_SURE], [], []]
    assert [one.flag for one in kept.visit(1).flags] == [GATE, DOG]
    assert [change.kind for change in kept.changes(1)] == [ChangeKind.ACCEPT]
    kept.undo_action()
    assert kept.visit(1).visit.facts == ALL.facts
    assert place(kept)


def test_what_is_told_before_the_first_name(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Sorrel")])
    text = "Size two on the left fore. Sorrel. Sound."
    doubt = of_fact_before("Sorrel")
    size = SIZE.model_copy(update={"span": (0, 25), "reasons": [doubt]})
    sound = SOUND.model_copy(update={"span": (35, 40)})
    asked = Flag(kind=FlagKind.HORSE, reason=asks_before("Sorrel", ""), span=(0, 26))
    yard.keep(store, SORREL.model_copy(update={"facts": [size, sound], "flags": [asked], "notes": ""}), text=text)
    split(store, "Bramble")
    assert (told(store, 1), told(store, 2)) == (["sound"], ["2"])


def test_everything_there_goes_along_whatever_a_person_said_of_it(kept: Store) -> None:
    size, corn = kept.visit(1).fact_ids[1:3]
    kept.correct(size, FactFields(value="3"), seen=kept.visit(1).revision)
    kept.drop(corn, seen=kept.visit(1).revision)
    start = TEXT.index("Mind the dog")
    added = Fact(foot="RH", slot="finding", value="bruise", quote="Mind the dog", span=(start, start + 12))
    kept.add_fact(1, added, seen=kept.visit(1).revision)
    split(kept)
    assert (told(kept, 1), told(kept, 3)) == (["thrush", 6.0], ["3", "bruise"])
    assert [one.fact.value for one in kept.visit(3).dropped] == ["corn"]


class TestContradictions:
    """Facts of two horses contradict each other no more."""

    OTHER = fact("Thrush in the left fore", "LF", "shoe_size", "3")
    BOTH = "Two values for shoe size on LF: 3 and 2. Which one is right?"

    def visit(self, *more: Fact) -> Visit:
        """Size three before the place and size two behind it."""
        facts = [
            self.OTHER.model_copy(update={"flagged": True, "reasons": [self.BOTH]}),
            SIZE.model_copy(update={"reasons": [WHOSE, self.BOTH]}),
            *(one.model_copy(update={"flagged": True, "reasons": [WHOSE, self.BOTH]}) for one in more),
        ]
        against = Flag(kind=FlagKind.CONTRADICTION, reason=self.BOTH, span=(SIZE.span[0] - 60, SIZE.span[1]))
        return bramble(*facts, flags=(ASKED, against))

    def test_one_on_either_side_is_none(self, yard: Yard, store: Store) -> None:
        store.add_horses([RosterHorse(name="Teasel")])
        yard.keep(store, self.visit(), text=TEXT)
        split(store)
        assert [(one.flags, one.visit.facts[0].flagged) for one in (store.visit(1), store.visit(2))] == [
            ((), False)
        ] * 2
        store.undo_action()
        assert [one.fact.reasons for one in store.visit(1).facts] == [[self.BOTH], [WHOSE, self.BOTH]]

    def test_what_still_contradicts_its_own_horse_is_asked_there(self, yard: Yard, store: Store) -> None:
        store.add_horses([RosterHorse(name="Teasel")])
        four = fact("A corn, right hind", "LF", "shoe_size", "4")
        yard.keep(store, self.visit(four), text=TEXT)
        split(store)
        assert (store.visit(1).flags, store.visit(1).visit.facts[0].flagged) == ((), False)
        assert [one.flag.kind for one in store.visit(2).flags] == [FlagKind.CONTRADICTION]
        assert [one.reasons for one in store.visit(2).visit.facts] == [[self.BOTH], [self.BOTH]]


class TestRefused:
    """One sentence, and nothing is changed."""

    @pytest.mark.parametrize(
        ("horse", "start", "sentence"),
        [
            ("Bramble", None, "say that it is the same horse"),
            ("Teasel", 3, "cannot come in there"),
            ("Teasel", TEXT.index("Six weeks"), "cannot come in there"),
            ("Teasel", TEXT.index("Mind the dog"), "Nothing that is told there stands any more"),
        ],
    )
    def test_what_cannot_be(self, kept: Store, horse: str, start: int | None, sentence: str) -> None:
        before = kept.visit(1)
        with pytest.raises(CorrectionError, match=sentence):
            split(kept, horse, start)
        assert (kept.visit(1), kept.changes(1), kept.memo(1).visit_ids) == (before, [], (1, 2))

    def test_a_new_horse_does_not_join_by_it(self, kept: Store) -> None:
        with pytest.raises(CorrectionError):
            decide(kept, SplitVisit(place(kept), RosterHorse(name="Juniper"), 3))
        assert "Juniper" not in [horse.name for horse in kept.horses()]

    def test_another_question(self, kept: Store) -> None:
        gate = next(one.id for one in kept.visit(1).flags if one.flag == GATE)
        with pytest.raises(CorrectionError, match="does not ask where another horse comes in"):
            decide(kept, SplitVisit(gate, kept.horse("Teasel")))

    def test_a_question_that_was_answered(self, kept: Store) -> None:
        number = place(kept)
        split(kept)
        with pytest.raises(CorrectionError, match="is not open in visit 1"):
            decide(kept, SameHorse(number))

    def test_what_he_has_not_seen(self, kept: Store) -> None:
        kept.drop(kept.visit(1).fact_ids[0], seen=0)
        with pytest.raises(StoreConflictError):
            kept.decide(1, [SplitVisit(place(kept), kept.horse("Teasel"))], seen=0)

    def test_a_flag_leaves_no_memo_and_history_knows_of_it(self, yard: Yard, kept: Store, trimmed: Visit) -> None:
        yard.keep(kept, trimmed)
        with pytest.raises(sqlite3.IntegrityError, match="a flag stays with its memo"):
            kept._database.execute("UPDATE flags SET visit = 3 WHERE visit = 1")
        with pytest.raises(sqlite3.IntegrityError, match="what was said stays as it was"):
            kept._database.execute("UPDATE flags SET reason = 'none' WHERE visit = 1")


def test_whose_the_visit_was_does_not_answer_where_another_came_in(kept: Store) -> None:
    decide(kept, AssignHorse(kept.horse("Teasel")))
    assert ASKED in kept.visit(1).visit.flags
    split(kept, "Bramble")
    assert [told(kept, number) for number in (1, 3)] == [["thrush", 6.0], ["2", "corn"]]


class TestTwoPlaces:
    """A visit that is taken apart twice."""

    SECOND = of_fact_from("Six weeks")
    LATER = flag(FlagKind.HORSE, "Six weeks", asks_from("Six weeks", ""))
    WEEKS = WEEKS.model_copy(update={"flagged": True, "reasons": [SECOND]})

    @pytest.fixture
    def twice(self, yard: Yard, store: Store) -> Store:
        """A store with one visit in which other horses may have come in at two places."""
        store.add_horses([RosterHorse(name="Sorrel"), RosterHorse(name="Teasel")])
        yard.keep(store, bramble(THRUSH, SIZE, CORN, self.WEEKS, flags=(ASKED, self.LATER, DOG)), text=TEXT)
        return store

    def test_each_part_goes_to_its_own_horse_and_back(self, twice: Store) -> None:
        split(twice)
        split(twice, "Sorrel")
        assert [told(twice, number) for number in (1, 2, 3)] == [["thrush"], ["2", "corn"], [6.0]]
        twice.undo_action()
        assert [told(twice, number) for number in (1, 2)] == [["thrush", 6.0], ["2", "corn"]]
        twice.undo_action()
        assert sorted(map(str, told(twice, 1))) == ["2", "6.0", "corn", "thrush"]
        assert twice.memo(1).visit_ids == (1,)

    def test_both_parts_to_one_horse(self, twice: Store) -> None:
        split(twice)
        split(twice)
        assert [told(twice, number) for number in (1, 2)] == [["thrush"], ["2", "corn", 6.0]]

    def test_a_reading_keeps_both(self, twice: Store) -> None:
        split(twice)
        split(twice, "Sorrel")
        more = fact("Mind the dog", "LH", "finding", "bruise", WHOSE)
        read = bramble(THRUSH, SIZE, CORN, more, self.WEEKS, flags=(ASKED, self.LATER, DOG))
        assert again(twice, bramble(THRUSH, SIZE, CORN, self.WEEKS, flags=(ASKED, self.LATER, DOG))) is None
        assert again(twice, read) == 2
        assert [told(twice, number) for number in (1, 2, 3)] == [["thrush"], ["2", "corn", "bruise"], [6.0]]
        assert [one.flag for number in (1, 2, 3) for one in twice.visit(number).flags] == [DOG]
