"""A visit that was taken apart, later on: read again, heard again, handed on, removed, backed up."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.judging.asked_place import asks_from, of_fact_from
from pipeline.keeping import Store
from pipeline.keeping.deciding import AssignHorse, SameHorse
from pipeline.record import Fact, HorseMatch, MemoRecord, RosterHorse, Transcript, Visit, Word
from pipeline.using.export import Request, choice_of, export_all
from pipeline.using.interchange import take_in
from tests.keeping.saving import everything, restored
from tests.keeping.two_horses import (
    ALL,
    ASKED,
    CORN,
    DAY,
    DOG,
    GATE,
    NOT_SURE,
    NOTES,
    SIZE,
    SORREL,
    TEXT,
    THRUSH,
    WEEKS,
    WHOSE,
    again,
    as_it_was,
    bramble,
    decide,
    fact,
    keep_both,
    place,
    split,
    told,
)

if TYPE_CHECKING:
    from pathlib import Path

    from tests.keeping.conftest import Yard


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """A store with the memo."""
    return keep_both(yard, store)


class TestReadAgain:
    """A later reading keeps what was said of the place, for what it finds there for the first time too."""

    MORE = fact("Mind the dog", "LH", "finding", "bruise", WHOSE)

    def test_the_same_reading_makes_none(self, kept: Store) -> None:
        split(kept)
        assert again(kept, ALL, SORREL) is None

    @pytest.mark.parametrize("horse", ["Teasel", "Sorrel"])
    def test_what_is_found_there_goes_the_same_way_and_comes_back(self, kept: Store, horse: str) -> None:
        split(kept, horse)
        number = kept.visits_of(horse)[0].id
        before = [as_it_was(kept.visit(one)) for one in kept.memo(1).visit_ids]
        assert again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL) == 2
        assert (told(kept, 1), told(kept, number)[-3:]) == (["thrush", 6.0], ["2", "corn", "bruise"])
        assert [one.flag for one in kept.visit(1).flags] == [GATE]
        assert [one.flag for one in kept.visit(number).flags] == [DOG]
        assert kept.visit(1).visit.notes == "The gate sticks"
        assert kept.visit(number).visit.notes.endswith("Grey one next\nMind the dog")
        assert [one.fact.reasons for one in kept.visit(number).facts][-3:] == [[NOT_SURE], [], []]
        with pytest.raises(StoreConflictError, match="read again since"):
            kept.undo_action()
        kept.take_reading_back(1)
        assert [as_it_was(kept.visit(one)) for one in kept.memo(1).visit_ids] == before
        kept.undo_action()
        assert sorted(map(str, told(kept, 1))) == ["2", "6.0", "corn", "thrush"]

    def test_a_later_start_is_kept(self, kept: Store) -> None:
        split(kept, start=TEXT.index("A corn"))
        assert again(kept, ALL, SORREL) is None
        assert again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL) == 2
        assert (told(kept, 1), told(kept, 3)) == (["thrush", "2", 6.0], ["corn", "bruise"])

    def test_that_it_is_the_same_horse_is_kept(self, kept: Store) -> None:
        decide(kept, SameHorse(place(kept)))
        assert again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL) == 2
        assert told(kept, 1) == ["thrush", "2", "corn", "bruise", 6.0]
        assert [one.fact.reasons for one in kept.visit(1).facts] == [[], [NOT_SURE], [], [], []]
        assert ASKED not in kept.visit(1).visit.flags

    def test_a_name_that_is_heard_by_then_finds_the_visit(self, kept: Store) -> None:
        split(kept)
        plain = [one.model_copy(update={"flagged": False, "reasons": []}) for one in (SIZE, CORN)]
        teasel = Visit(horse="Teasel", horse_match=HorseMatch.KNOWN, date=DAY, facts=plain, notes="Grey one next")
        assert again(kept, bramble(THRUSH, WEEKS, flags=(), notes=""), teasel, SORREL) == 2
        assert kept.memo(1).visit_ids == (1, 2, 3)
        assert [told(kept, number) for number in (1, 2, 3)] == [["thrush", 6.0], ["sound"], ["2", "corn"]]
        assert kept.visit(3).visit.notes == "Grey one next"

    def test_a_visit_without_a_name_is_not_taken_for_the_new_one(self, yard: Yard, store: Store) -> None:
        store.add_horses([RosterHorse(name="Teasel")])
        nobody = ALL.model_copy(update={"horse": None, "horse_match": HorseMatch.UNCLEAR})
        yard.keep(store, nobody, text=TEXT)
        decide(store, AssignHorse(store.horse("Bramble")))
        split(store)
        more = bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS).model_copy(update={"horse": None})
        assert again(store, more) == 2
        assert (told(store, 1), told(store, 2)) == (["thrush", 6.0], ["2", "corn", "bruise"])

    def test_another_horse_that_is_heard_by_then_gets_no_visit_of_a_person(self, kept: Store) -> None:
        kept.add_horses([RosterHorse(name="Rowan")])
        split(kept)
        rowan = Visit(horse="Rowan", horse_match=HorseMatch.KNOWN, date=DAY, facts=[WEEKS])
        again(kept, bramble(THRUSH, SIZE, CORN), rowan, SORREL)
        assert [(one.visit.date, told(kept, one.id)) for one in kept.visits_of("Rowan")] == [(DAY, [6.0])]
        assert told(kept, 3) == ["2", "corn"]

    def test_what_was_moved_back_by_hand_stays_there(self, kept: Store) -> None:
        split(kept)
        corn = kept.visit(3).fact_ids[1]
        kept.move(corn, 1, seen=kept.visit(3).revision)
        again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL)
        assert (sorted(map(str, told(kept, 1))), told(kept, 3)) == (["6.0", "corn", "thrush"], ["2", "bruise"])

    def test_what_was_said_of_the_new_reading_stays_when_that_is_taken_back(self, kept: Store) -> None:
        again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL)
        split(kept)
        kept.take_reading_back(1)
        assert (told(kept, 1), told(kept, 3)) == (["thrush", 6.0], ["2", "corn"])
        assert ASKED not in kept.visit(1).visit.flags

    def test_notes_that_a_person_wrote_stay(self, kept: Store) -> None:
        split(kept)
        kept.correct_visit(3, seen=kept.visit(3).revision, notes="Kicks.")
        again(kept, bramble(THRUSH, SIZE, CORN, self.MORE, WEEKS), SORREL)
        assert (kept.visit(1).visit.notes, kept.visit(3).visit.notes) == ("The gate sticks", "Kicks.")


def spoken(text: str) -> Transcript:
    """Words of one second each."""
    words, at = [], 0
    for number, said in enumerate(text.split()):
        at = text.index(said, at)
        begin, end = float(number), number + 0.9
        words.append(Word(text=said, start=at, end=at + len(said), start_s=begin, end_s=end, probability=0.9))
        at += len(said)
    return Transcript(text=text, words=words)


def in_words(one: Fact, text: str, quote: str) -> Fact:
    """The fact as it is read in another wording."""
    start = text.index(quote)
    return one.model_copy(update={"quote": quote, "span": (start, start + len(quote))})


def test_heard_again_in_other_words_the_part_is_found_by_its_seconds(yard: Yard, store: Store) -> None:
    store.add_horses([RosterHorse(name="Teasel")])
    path = yard.recording()
    store.keep(yard.record(path, ALL, text=TEXT), spoken(TEXT), path)
    split(store)
    heard = TEXT.replace("Grey one next", "Gray won text").replace("The gate", "Their gait")
    quotes = ("Thrush in the left fore", "Size two on the left fore", "A corn, right hind", "Mind the dog", "Six weeks")
    facts = (THRUSH, SIZE, CORN, TestReadAgain.MORE, WEEKS)
    read = [in_words(one, heard, quote) for one, quote in zip(facts, quotes, strict=True)]
    start = heard.index("Gray")
    asked = ASKED.model_copy(update={"reason": asks_from("Gray won text", ""), "span": (start, start + 13)})
    whose = of_fact_from("Gray won text")
    read[1:4] = [one.model_copy(update={"flagged": True, "reasons": [whose]}) for one in read[1:4]]
    record = MemoRecord(memo=store.memo(1).record.memo, transcript=heard, visits=[bramble(*read, flags=(asked,))])
    assert store.read_again(1, record, seen=1, vocabulary="words 2", heard=spoken(heard), weights="new") == 2
    assert (told(store, 1), told(store, 2)) == (["thrush", 6.0], ["2", "corn", "bruise"])
    assert [one.fact.flagged for one in store.visit(2).facts] == [False] * 3
    assert store.visit(1).flags == ()


def test_the_day_before_stands_as_it_stood(kept: Store) -> None:
    before = kept.visit(1)
    split(kept)
    at = kept.changes(1)[0].at - timedelta(microseconds=1)
    stood = kept.visit_at(1, at)
    assert (stood.visit.notes, [one.flag for one in stood.flags]) == (NOTES, [one.flag for one in before.flags])


def test_a_horse_that_is_removed_takes_the_change_along(kept: Store) -> None:
    split(kept)
    kept.forget(kept.plan_forgetting_horse("Teasel"))
    assert (kept.changes(1), kept.history()) == ([], [])
    assert (told(kept, 1), kept.visit(1).visit.notes) == (["thrush", 6.0], "The gate sticks")
    with pytest.raises(CorrectionError, match="no change by this hand left"):
        kept.undo_action()
    assert kept.problems() == []


def test_it_goes_out_and_comes_in_and_is_read_again(kept: Store, tmp_path: Path) -> None:
    split(kept)
    path = tmp_path / "all.json"
    path.write_bytes(export_all(kept, Request("json", choice_of(DAY))))
    with Store.open(tmp_path / "other") as other:
        take_in(other, path)
        for number in (1, 3):
            assert as_read(other, number) == as_read(kept, number)
        more = bramble(THRUSH, SIZE, CORN, TestReadAgain.MORE, WEEKS)
        again(other, more, SORREL)
        assert told(other, 3) == ["2", "corn"]
        # What nobody has decided there is asked: the place, and whose the new fact is.
        assert ASKED in other.visit(1).visit.flags
        assert [(one.value, one.flagged) for one in other.visit(1).visit.facts] == [
            ("thrush", False), ("bruise", True), (6.0, False),
        ]  # fmt: skip


def as_read(store: Store, number: int) -> tuple[object, ...]:
    """Horse, facts, flags and notes of a visit."""
    visit = store.visit(number).visit
    return visit.horse, visit.facts, visit.flags, visit.notes


def test_a_back_up_holds_it(yard: Yard, kept: Store, target: Path, tmp_path: Path) -> None:
    split(kept)
    kept.back_up(target)
    restored(target, tmp_path / "again")
    assert everything(tmp_path / "again") == everything(yard.folder)
    with Store.open(tmp_path / "again") as opened:
        opened.undo_action()
        assert sorted(map(str, told(opened, 1))) == ["2", "6.0", "corn", "thrush"]
