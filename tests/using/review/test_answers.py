"""Answers: kept at once, in history, taken back, and never over what somebody else did."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from pipeline.errors import CorrectionError, StoreConflictError, StoreError
from pipeline.keeping import ChangeKind
from pipeline.keeping.correcting import FactFields
from pipeline.record import Status
from pipeline.using.review import Done, Item, ItemKind, Review
from pipeline.using.review.nearest import nearest
from tests.using.review.conftest import Keep, no_disk

THREE = "Hester. New shoes in front, size three. Six weeks."


def asked(review: Review, kind: ItemKind = ItemKind.FIELD) -> Item:
    """The first open question of a kind."""
    return next(item for item in review.queue() if item.kind is kind)


def nameless(review: Review) -> Item:
    """The first visit that belongs to no horse."""
    return next(item for item in review.queue() if item.kind is ItemKind.HORSE and item.visit.horse is None)


def values(review: Review, visit: int, slot: str) -> list[tuple[str | None, str | float]]:
    """Feet and values of a slot in a visit."""
    return [(k.fact.foot, k.fact.value) for k in review.store.visit(visit).facts if k.fact.slot == slot]


@pytest.fixture
def three(yard: Review, hear: Keep) -> Review:
    """A yard with one memo: size three in front, hard to hear."""
    hear(yard, THREE, unsure=("three",))
    return yard


def test_accept_settles_every_foot_in_one_action(three: Review) -> None:
    done = three.accept(asked(three))
    assert done.says == "Right: left fore, right fore: shoe size 3."
    settled = [kept for kept in three.store.visit(1).facts if kept.fact.slot == "shoe_size"]
    assert [(kept.settled, kept.fact.flagged, kept.fact.confidence) for kept in settled] == [(True, False, 1.0)] * 2
    assert len(three.store.last_action(who="Reviewer")) == 2


def test_a_number_chooses(three: Review) -> None:
    item = asked(three)
    three.choose(item, next(c for c in three.show(item).choices if c.fields == {"value": "2"}))
    assert values(three, 1, "shoe_size") == [("LF", "2"), ("RF", "2")]


@pytest.mark.parametrize(
    ("typed", "kept"),
    [("2", "2"), ("double aught", "00"), ("1.5", "1.5"), ("four and a half", "4.5"), ("size 00", "00")],
)
def test_what_is_typed_is_read_as_a_memo_is(three: Review, typed: str, kept: str) -> None:
    three.correct_typed(asked(three), typed)
    assert values(three, 1, "shoe_size") == [("LF", kept), ("RF", kept)]


@pytest.mark.parametrize("typed", ["37", "thrush", "no", "=SUM(A1)", "\x1b[31m2"])
def test_what_no_record_can_hold_changes_nothing(three: Review, typed: str) -> None:
    with pytest.raises(CorrectionError, match="is no shoe size"):
        three.correct_typed(asked(three), typed)
    assert values(three, 1, "shoe_size") == [("LF", "3"), ("RF", "3")]
    assert three.store.changes(1) == []


def test_a_number_outside_its_limits_is_refused(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. Left front toe length 92 millimetres.", unsure=("92",))
    with pytest.raises(CorrectionError, match="a number from 10 to 300 belongs there"):
        yard.correct_typed(asked(yard), "four hundred")
    yard.correct_typed(asked(yard), "three and a half inches")
    assert values(yard, 1, "toe_length") == [("LF", 88.9)]


def test_a_denial_is_turned_round_with_one_key(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. No thrush in the left hind.", unsure=("No",))
    item = asked(yard)
    first = yard.show(item).choices[0]
    assert first.says == "left hind: thrush"
    yard.choose(item, first)
    assert [kept.fact.status for kept in yard.store.visit(1).facts] == [Status.PRESENT]


def test_not_said_takes_it_out_and_keeps_it(three: Review) -> None:
    three.drop(asked(three))
    assert values(three, 1, "shoe_size") == []
    assert [kept.fact.value for kept in three.store.visit(1).dropped] == ["3", "3"]


def test_one_of_two_readings_is_kept(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. On the left front, toe angle 48 degrees. Left front toe angle 52 degrees.")
    item = asked(yard, ItemKind.CHOICE)
    yard.choose(item, yard.show(item).choices[1])
    assert values(yard, 1, "toe_angle") == [("LF", 52.0)]
    assert yard.store.visit(1).flags == ()


def test_it_was_another_foot(three: Review) -> None:
    three.set_feet(asked(three), ["LH"])
    assert values(three, 1, "shoe_size") == [("LH", "3")]


def test_it_was_more_feet(three: Review) -> None:
    three.set_feet(asked(three), ["LF", "RF", "LH", "RH"])
    assert sorted(str(foot) for foot, _ in values(three, 1, "shoe_size")) == ["LF", "LH", "RF", "RH"]
    three.undo()
    assert values(three, 1, "shoe_size") == [("LF", "3"), ("RF", "3")]


def test_it_was_another_horse_whose_visit_is_opened(three: Review) -> None:
    three.move(asked(three), three.store.horse("Rowan"))
    assert values(three, 1, "shoe_size") == []
    there = three.store.visits_of("Rowan")
    assert [(kept.fact.foot, kept.fact.value) for kept in there[0].facts] == [("LF", "3"), ("RF", "3")]
    assert there[0].visit.date == three.store.visit(1).visit.date
    three.undo()
    assert values(three, 1, "shoe_size") == [("LF", "3"), ("RF", "3")]
    assert three.store.visits_of("Rowan") == []


def test_what_was_missed_is_added_and_the_question_stays(three: Review) -> None:
    item = asked(three)
    done = three.add(item, "left fore, mild thrush in the sulcus")
    assert (done.says, done.answered) == ("Added: left fore: thrush (sulcus, mild).", False)
    assert three.item(item.key).seen > item.seen
    assert values(three, 1, "finding") == [("LF", "thrush")]


@pytest.mark.parametrize("typed", ["lovely weather", "trimmed", "size three"])
def test_what_is_not_understood_is_not_added(three: Review, typed: str) -> None:
    before = three.store.visit(1)
    with pytest.raises(CorrectionError):
        three.add(asked(three), typed)
    assert three.store.visit(1) == before


def test_unclear_words_are_answered_by_what_was_said(demo: Review) -> None:
    item = asked(demo, ItemKind.WORDS)
    demo.add(item, "near fore toe length 92 millimetres")
    added = [kept for kept in demo.store.visit(item.visit.id).facts if kept.by_hand]
    assert [(k.fact.foot, k.fact.slot, k.fact.value) for k in added] == [("LF", "toe_length", 92.0)]
    assert added[0].fact.quote == item.flags[0].flag.quote
    assert item.key not in {other.key for other in demo.queue()}


def test_a_day_that_was_guessed_is_set_for_the_whole_memo(yard: Review, hear: Keep) -> None:
    numbers = hear(yard, "Hester. Trimmed all four. Next, Rowan. Trimmed all four.", guessed_day=True)
    assert len(numbers) == 2
    item = asked(yard, ItemKind.DAY)
    assert (item.as_read(), item.reason()) == ("day: 2026-05-12", "The day was taken from the file's time.")
    with pytest.raises(CorrectionError, match="is no day"):
        yard.set_day(item, "yesterday")
    yard.set_day(item, "2026-05-11")
    assert {yard.store.visit(number).visit.date.isoformat() for number in numbers} == {"2026-05-11"}
    assert [other for other in yard.queue() if other.kind is ItemKind.DAY] == []


def test_an_answer_to_another_question_is_refused(three: Review) -> None:
    item, rowan = asked(three), three.store.horse("Rowan")
    answers: list[Callable[[], Done]] = [
        lambda: three.assign(item, rowan),
        lambda: three.no_horse(item),
        lambda: three.new_horse(item, "Peregrine"),
        lambda: three.set_day(item, "2026-05-11"),
    ]
    for answer in answers:
        with pytest.raises(CorrectionError, match="no answer to what is asked"):
            answer()
    assert three.store.changes(1) == []
    assert len(three.store.horses()) == 3


def test_a_nameless_visit_is_given_to_a_horse(demo: Review) -> None:
    item = nameless(demo)
    with pytest.raises(CorrectionError, match="Say which horse it was"):
        demo.accept(item)
    demo.assign(item, demo.store.horse("Gwendolyn"))
    assert [visit.id for visit in demo.store.visits_of("Gwendolyn")] == [item.visit.id]
    demo.undo()
    assert demo.item(item.key).visit.horse is None


def test_a_visit_is_left_without_a_horse(demo: Review) -> None:
    item = nameless(demo)
    demo.no_horse(item)
    assert item.key not in {other.key for other in demo.queue()}
    assert demo.store.visit(item.visit.id).horse is None


def test_a_new_horse_joins_the_roster(demo: Review) -> None:
    item = asked(demo, ItemKind.HORSE)
    with pytest.raises(CorrectionError, match="is on the roster already"):
        demo.new_horse(item, "hester", "Quince Farm")
    demo.new_horse(item, "Peregrine")
    assert [visit.id for visit in demo.store.visits_of("Peregrine")] == [item.visit.id]


def test_a_new_horse_of_a_name_that_another_place_knows(demo: Review) -> None:
    item = nameless(demo)
    demo.new_horse(item, "Hester")
    horse = demo.store.visit(item.visit.id).horse
    assert horse is not None
    assert (horse.name, horse.horse.place) == ("Hester", None)
    demo.undo()
    assert demo.store.visit(item.visit.id).horse is None
    assert horse.id in [kept.id for kept in demo.store.horses()]  # taken back, it stays on the roster


def test_a_new_horse_joins_with_the_answer_or_not_at_all(demo: Review, monkeypatch: pytest.MonkeyPatch) -> None:
    item, before = asked(demo, ItemKind.HORSE), demo.store.horses()
    monkeypatch.setattr("pipeline.keeping.correcting.assign_visit", no_disk)
    with pytest.raises(StoreError):
        demo.new_horse(item, "Peregrine")
    assert demo.store.horses() == before


def test_an_answer_and_the_mishearing_that_it_shows_are_kept_together(
    yard: Review, hear: Keep, monkeypatch: pytest.MonkeyPatch
) -> None:
    hear(yard, "Hester. Left hind has fresh at the toe.")
    item = asked(yard)
    monkeypatch.setattr("pipeline.keeping.deciding.write_lesson", no_disk)
    with pytest.raises(StoreError):
        yard.correct(item, FactFields(value="flare"))
    assert yard.store.changes(1) == []


def test_an_answer_stands_when_what_it_teaches_cannot_be_written(
    yard: Review, hear: Keep, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("pipeline.using.review.learning.add_heard", no_disk)
    for day in ("2026-05-10", "2026-05-11"):
        visit = hear(yard, "Hester. Left hind has fresh at the toe.", day=day)[0]
        done = yard.correct(asked(yard), FactFields(value="flare"))
        assert (done.says, done.learned) == ("Corrected: left hind: flare (toe).", None)
        assert values(yard, visit, "finding") == [("LH", "flare")]
    assert done.offer == "Read “fresh” as flare from now on?"


def test_the_nearest_names_come_by_sound(yard: Review, hear: Keep) -> None:
    hear(yard, "Rohand. First one stood quiet. Trimmed all four.")
    item = asked(yard, ItemKind.HORSE)
    assert nearest(yard.store, item)[0].horse.name == "Rowan"


def test_ten_answers_and_more_are_taken_back(demo: Review) -> None:
    before = [(item.key, item.as_read()) for item in demo.queue()]
    items = [item for item in demo.queue() if item.kind in (ItemKind.FIELD, ItemKind.SPOT_CHECK)][:12]
    for item in items:
        demo.drop(demo.item(item.key))
    for _ in items:
        demo.undo()
    assert [(item.key, item.as_read()) for item in demo.queue()] == before


def test_taking_back_when_nothing_was_done(yard: Review) -> None:
    with pytest.raises(CorrectionError, match="no change by this hand left"):
        yard.undo()


def test_two_reviewers_never_overwrite_each_other(three: Review) -> None:
    other = Review(three.store, three.vocabulary, "Other", three.given_reader)
    mine = asked(three)
    other.correct(asked(other), FactFields(value="2"))
    with pytest.raises(StoreConflictError, match="changed by somebody else since"):
        three.drop(mine)
    assert values(three, 1, "shoe_size") == [("LF", "2"), ("RF", "2")]


def test_nobody_takes_back_what_another_did(three: Review) -> None:
    three.accept(asked(three))
    with pytest.raises(CorrectionError, match="no change by this hand left"):
        Review(three.store, three.vocabulary, "Other").undo()


def test_an_answer_is_whole_or_not_at_all(three: Review) -> None:
    item = asked(three)
    with pytest.raises(CorrectionError):
        three.correct(item, FactFields(zone="nowhere"))
    assert three.store.changes(1) == []
    assert three.item(item.key) == item


def test_everything_said_stands_in_history(three: Review) -> None:
    three.correct(asked(three), FactFields(value="2"))
    told = [e for e in three.store.history() if e.column == "value"]
    assert [(e.who, e.old, e.new, e.why) for e in told] == [("Reviewer", "3", "2", "reviewed")] * 2
    assert {change.kind for change in three.store.changes(1)} == {ChangeKind.CORRECT}


def test_a_name_that_was_taken_for_a_horse_is_confirmed(yard: Review, hear: Keep) -> None:
    hear(yard, "Hestor. Trimmed all four.")
    item = asked(yard, ItemKind.HORSE)
    assert (item.as_read(), item.reason()) == ("horse: Hester", "Heard “Hestor”, taken for Hester; is that the horse?")
    done = yard.accept(item)
    assert done.says == "Right: this was Hester."
    assert done.offer == "Is Hester called “Hestor”, or is it heard so?"
    assert [change.kind for change in yard.store.changes(1)] == [ChangeKind.ASSIGN]
    assert [other for other in yard.queue() if other.kind is ItemKind.HORSE] == []
