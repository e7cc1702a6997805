"""One visit taken apart where another horse came in: what is told there goes along, all else stays, once."""

from __future__ import annotations

import sqlite3
from datetime import date, timedelta
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.judging.asked_place import asks_before, asks_from, of_fact_before, of_fact_from
from pipeline.keeping import ChangeKind, KeptVisit, Store
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.deciding import AssignHorse, Decision, SameHorse, SplitVisit
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, MemoRecord, RosterHorse, Transcript, Visit, Word
from pipeline.using.export import Request, choice_of, export_all
from pipeline.using.interchange import take_in
from tests.keeping.saving import everything, restored

if TYPE_CHECKING:
    from pathlib import Path

    from tests.keeping.conftest import Yard

TEXT = (
    "Bramble. Thrush in the left fore. The gate sticks. Grey one next. Size two on the left fore. A corn, right hind."
    " Mind the dog. Bramble again. Six weeks. Sorrel. Sound. Bill the yard."
)
DAY = date(2026, 3, 2)
PLACE = "Grey one next"
WHOSE = of_fact_from(PLACE)
NOT_SURE = "hard to hear"


def fact(quote: str, foot: str | None, slot: str, value: str | float, *reasons: str) -> Fact:
    """A fact with its words in TEXT, doubted for these reasons."""
    start = TEXT.index(quote)
    said = {"foot": foot, "slot": slot, "value": value, "quote": quote, "span": (start, start + len(quote))}
    doubt = {"flagged": True, "reasons": list(reasons), "confidence": 0.5} if reasons else {}
    return Fact.model_validate({**said, **doubt})


def flag(kind: FlagKind, quote: str, reason: str) -> Flag:
    """A flag on these words of TEXT."""
    start = TEXT.index(quote)
    return Flag(kind=kind, reason=reason, span=(start, start + len(quote)))


THRUSH = fact("Thrush in the left fore", "LF", "finding", "thrush")
SIZE = fact("Size two on the left fore", "LF", "shoe_size", "2", WHOSE, NOT_SURE)
CORN = fact("A corn, right hind", "RH", "finding", "corn", WHOSE)
WEEKS = fact("Six weeks", None, "next_visit_weeks", 6.0)
SOUND = fact("Sound", None, "gait", "sound")
ASKED = flag(FlagKind.HORSE, PLACE, asks_from(PLACE, "“Grey” may be a name"))
GATE = flag(FlagKind.NOT_UNDERSTOOD, "The gate sticks", "Not understood: the gate sticks")
DOG = flag(FlagKind.NOT_UNDERSTOOD, "Mind the dog", "Not understood: mind the dog")
NOTES = "The gate sticks\nGrey one next\nMind the dog"


def bramble(*facts: Fact, flags: tuple[Flag, ...] = (ASKED, GATE, DOG), notes: str = NOTES) -> Visit:
    """A visit at Bramble in which another horse may have come in."""
    return Visit(
        horse="Bramble", horse_match=HorseMatch.KNOWN, date=DAY, facts=list(facts), flags=list(flags), notes=notes
    )


ALL = bramble(THRUSH, SIZE, CORN, WEEKS)
SORREL = Visit(horse="Sorrel", horse_match=HorseMatch.KNOWN, date=DAY, facts=[SOUND], notes="Bill the yard")


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """A store with one memo: visit 1 at Bramble, visit 2 at Sorrel; Teasel is on the roster."""
    store.add_horses([RosterHorse(name="Sorrel"), RosterHorse(name="Teasel")])
    assert yard.keep(store, ALL, SORREL, text=TEXT) == [1, 2]
    return store


def decide(store: Store, *decisions: Decision, visit: int = 1) -> None:
    """One answer of a person."""
    store.decide(visit, decisions, seen=store.visit(visit).revision)


def place(store: Store, visit: int = 1) -> int:
    """The number of the open flag that asks where another horse came in."""
    return next(one.id for one in store.visit(visit).flags if one.flag.kind is FlagKind.HORSE)


def split(store: Store, horse: str = "Teasel", start: int | None = None, visit: int = 1) -> None:
    """From the place on it was this horse."""
    decide(store, SplitVisit(place(store, visit), store.horse(horse), start), visit=visit)


def told(store: Store, visit: int) -> list[str | float]:
    """What stands in a visit."""
    return [one.value for one in store.visit(visit).visit.facts]


def again(store: Store, *visits: Visit) -> int | None:
    """Read the memo again, into these visits."""
    record = MemoRecord(memo=store.memo(1).record.memo, transcript=TEXT, visits=list(visits))
    return store.read_again(1, record, seen=store.memo(1).reading, vocabulary="words 2")


def as_it_was(visit: KeptVisit) -> dict[str, object]:
    """All of a visit but its revision, which only grows, and its memo."""
    return {name: value for name, value in vars(visit).items() if name not in ("revision", "memo")}


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
