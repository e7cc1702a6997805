"""A kept memo read again: a reading beside the former one, with every decision of a person carried over."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, NotFoundError, StoreConflictError
from pipeline.keeping import Store, Wanted
from pipeline.keeping.changes import ChangeKind
from pipeline.record import (
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    Memo,
    MemoRecord,
    RosterHorse,
    Status,
    Transcript,
    Visit,
    Word,
)

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Thrush in both fronts, six nails, a corn, angle fifty. Then Sorrel, sound."
DAY = date(2026, 3, 2)


def fact(quote: str, foot: str | None, slot: str, value: str | float, **more: object) -> Fact:
    """A fact with its words in TEXT."""
    start = TEXT.index(quote)
    said = {"foot": foot, "slot": slot, "value": value, "quote": quote, "span": (start, start + len(quote))}
    return Fact.model_validate({**said, **more})


def thrush(foot: str, **more: object) -> Fact:
    """One of the two thrushes."""
    return fact("Thrush in both fronts", foot, "finding", "thrush", **more)


NAILS = fact("six nails", "LF", "nails", 6.0)
CORN = fact("a corn", None, "finding", "corn", flagged=True, reasons=["no foot"], confidence=0.5)
ANGLE = fact("angle fifty", "LF", "toe_angle", 50.0)
SOUND = fact("sound", None, "gait", "sound")


def bramble(*facts: Fact, notes: str = "", flags: tuple[Flag, ...] = ()) -> Visit:
    """A visit at Bramble."""
    return Visit(
        horse="Bramble", horse_match=HorseMatch.KNOWN, date=DAY, facts=list(facts), notes=notes, flags=list(flags)
    )


def sorrel(*facts: Fact, match: HorseMatch = HorseMatch.KNOWN) -> Visit:
    """A visit at Sorrel."""
    return Visit(horse="Sorrel", horse_match=match, date=DAY, facts=list(facts))


def record(*visits: Visit, text: str = TEXT) -> MemoRecord:
    """What a reader makes of the memo."""
    return MemoRecord(memo=Memo(), transcript=text, visits=list(visits))


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """A store with one memo: visit 1 at Bramble with five facts, visit 2 at Sorrel with one."""
    store.add_horses([RosterHorse(name="Sorrel")])
    first = bramble(thrush("LF"), thrush("RF"), NAILS, CORN, ANGLE)
    assert yard.keep(store, first, sorrel(SOUND), text=TEXT) == [1, 2]
    return store


def told(store: Store, visit: int = 1) -> list[tuple[str | None, str | float]]:
    """Foot and value of what stands in a visit."""
    return [(f.foot, f.value) for f in store.visit(visit).visit.facts]


def seen(store: Store, visit: int = 1) -> int:
    """The revision of a visit."""
    return store.visit(visit).revision


def again(store: Store, *visits: Visit, reading: int = 1) -> int | None:
    """Read the memo again, into these visits."""
    return store.read_again(1, record(*visits), seen=reading, vocabulary="words 2", who="Ann")


BETTER = bramble(thrush("LF"), thrush("RF"), NAILS, CORN.model_copy(update={"foot": "LF"}), ANGLE)


def test_a_new_reading_stands_beside_the_former_one(kept: Store) -> None:
    before = kept.visit(1)
    assert again(kept, BETTER, sorrel(SOUND)) == 2
    visit = kept.visit(1)
    assert told(kept) == [("LF", "thrush"), ("RF", "thrush"), ("LF", 6.0), ("LF", "corn"), ("LF", 50.0)]
    assert set(visit.fact_ids).isdisjoint(before.fact_ids)
    assert (visit.memo.reading, visit.memo.vocabulary, visit.revision > before.revision) == (2, "words 2", True)
    assert [(r.number, r.stands, r.hearing) for r in kept.readings(1)] == [(1, False, 1), (2, True, 1)]
    assert kept.counts() | {"horses": 0} == {"memos": 1, "visits": 2, "facts": 6, "horses": 0, "flagged": 1}
    assert kept.search(Wanted(slots=("nails",))).facts[0].fact.value == 6.0
    assert len(kept.search(Wanted(slots=("nails",))).facts) == 1
    assert kept.problems() == []


def test_a_reading_that_says_the_same_makes_none(kept: Store) -> None:
    kept.accept(kept.visit(1).fact_ids[0], seen=0)
    kept.drop(kept.visit(1).fact_ids[1], seen=seen(kept))
    kept.correct_visit(1, seen=seen(kept), notes="By hand.", day=date(2026, 3, 1))
    before = kept.visit(1)
    assert again(kept, bramble(thrush("LF"), thrush("RF"), NAILS, CORN, ANGLE), sorrel(SOUND)) is None
    assert (kept.visit(1), len(kept.readings(1))) == (before, 1)


def test_what_a_person_decided_is_carried_over(kept: Store) -> None:
    left, right, nails, corn, angle = kept.visit(1).fact_ids
    kept.accept(left, seen=0, who="Ben")
    kept.drop(right, seen=seen(kept), who="Ben")
    kept.correct(nails, {"value": 5.0}, seen=seen(kept), who="Ben")
    kept.correct(corn, {"foot": "RH", "value": "bruise", "status": Status.SUSPECTED}, seen=seen(kept), who="Ben")
    kept.move(angle, 2, seen=seen(kept), who="Ben")
    kept.add_fact(2, Fact(foot=None, slot="manner", value="quiet"), seen=seen(kept, 2), who="Ben")
    kept.correct_visit(1, seen=seen(kept), notes="By hand.", day=date(2026, 3, 1), who="Ben")
    before = (kept.visit(1).visit, kept.visit(2).visit)
    new = bramble(
        thrush("LF", severity="mild"), thrush("RF"), NAILS, CORN.model_copy(update={"foot": "LF"}), ANGLE, notes="New."
    )
    assert again(kept, new, sorrel(SOUND)) == 2
    assert (told(kept), told(kept, 2)) == (
        [("LF", "thrush"), ("LF", 5.0), ("RH", "bruise")],
        [(None, "quiet"), (None, "sound"), ("LF", 50.0)],
    )
    assert (kept.visit(1).visit.date, kept.visit(1).visit.notes) == (date(2026, 3, 1), "By hand.")
    assert kept.visit(1).visit.facts[0].severity is None  # he confirmed it as it was
    assert {f.settled for f in kept.visit(1).facts} == {True}
    assert [f.fact.foot for f in kept.visit(1).dropped] == ["RF"]
    kept.take_reading_back(1)
    assert (kept.visit(1).visit, kept.visit(2).visit) == before


def test_what_another_program_corrected_is_carried_over_too(kept: Store) -> None:
    kept._database.execute("UPDATE facts SET value = 5.0 WHERE slot = 'nails'")
    assert again(kept, BETTER, sorrel(SOUND)) == 2
    assert told(kept)[2] == ("LF", 5.0)
    assert kept.visit(1).facts[2].settled


def test_a_correction_follows_its_foot_among_facts_of_the_same_words(kept: Store) -> None:
    right = kept.visit(1).fact_ids[1]
    kept.correct(right, {"foot": "RH"}, seen=0)
    assert again(kept, bramble(thrush("RF"), thrush("LF"), NAILS, CORN, ANGLE, notes="New."), sorrel(SOUND)) == 2
    assert told(kept)[:2] == [("RH", "thrush"), ("LF", "thrush")]


def test_what_a_person_stands_for_and_no_reading_finds_is_put_before_him(kept: Store) -> None:
    corn = kept.visit(1).fact_ids[3]
    kept.correct(corn, {"foot": "RH"}, seen=0)
    assert again(kept, bramble(thrush("LF"), thrush("RF"), NAILS, ANGLE), sorrel(SOUND)) == 2
    orphan = kept.visit(1).facts[-1]
    assert (orphan.fact.foot, orphan.fact.value, orphan.fact.quote, orphan.fact.flagged, orphan.settled) == (
        "RH", "corn", "a corn", True, True,
    )  # fmt: skip
    assert orphan.fact.reasons == [
        "A person stood for this; read again, the memo no longer says it. Is it still right?"
    ]
    assert again(kept, bramble(thrush("LF"), thrush("RF"), NAILS, ANGLE), sorrel(SOUND), reading=2) is None
    kept.accept(orphan.id, seen=seen(kept))
    assert again(kept, bramble(thrush("LF"), NAILS, ANGLE), sorrel(SOUND), reading=2) == 3
    assert [(f.fact.value, f.fact.flagged) for f in kept.visit(1).facts][-1] == ("corn", False)
    assert again(kept, bramble(thrush("LF"), NAILS, CORN, ANGLE), sorrel(SOUND), reading=3) == 4
    assert told(kept) == [("LF", "thrush"), ("LF", 6.0), ("RH", "corn"), ("LF", 50.0)]


def test_what_was_entered_by_hand_and_is_found_by_now_stands_once(kept: Store) -> None:
    entered = kept.add_fact(1, Fact(foot="RF", slot="nails", value=6.0), seen=0).fact
    again(kept, bramble(thrush("LF"), thrush("RF"), NAILS, NAILS.model_copy(update={"foot": "RF"})), sorrel(SOUND))
    nails = [f for f in kept.visit(1).facts if f.fact.slot == "nails"]
    assert [(f.fact.foot, f.id == entered) for f in nails] == [("RF", True), ("LF", False)]


def test_a_reading_is_taken_back_and_made_again(kept: Store) -> None:
    before = (kept.visit(1).visit, kept.visit(2).visit, kept.visit(1).fact_ids, kept.memo(1).record)
    again(kept, bramble(NAILS, notes="New."), sorrel(SOUND))
    assert kept.take_reading_back(1, who="Ben") == 1
    assert (kept.visit(1).visit, kept.visit(2).visit, kept.visit(1).fact_ids, kept.memo(1).record) == before
    assert kept.memo(1).vocabulary is None
    assert [c.kind for c in kept.changes(1)] == [ChangeKind.REREAD, ChangeKind.UNDO]
    with pytest.raises(CorrectionError, match="stands as it was first read"):
        kept.take_reading_back(1)
    assert again(kept, bramble(NAILS, notes="New."), sorrel(SOUND)) == 3
    assert kept.take_reading_back(1) == 1
    assert kept.problems() == []


def test_what_was_decided_since_stays_when_a_reading_is_taken_back(kept: Store) -> None:
    again(kept, bramble(thrush("LF"), thrush("RF"), NAILS, ANGLE, notes="New."), sorrel(SOUND))
    kept.correct(kept.visit(1).fact_ids[2], {"value": 7.0}, seen=seen(kept))
    kept.drop(kept.visit(1).fact_ids[0], seen=seen(kept))
    kept.correct_visit(1, seen=seen(kept), notes="By hand.")
    kept.add_fact(1, Fact(foot="RH", slot="nails", value=8.0), seen=seen(kept))
    kept.take_reading_back(1)
    assert told(kept) == [("RF", "thrush"), ("LF", 7.0), (None, "corn"), ("LF", 50.0), ("RH", 8.0)]
    assert kept.visit(1).visit.notes == "By hand."


def test_a_change_of_the_former_reading_is_not_taken_back_under_the_new_one(kept: Store) -> None:
    kept.correct(kept.visit(1).fact_ids[2], {"value": 7.0}, seen=0, who="Ann")
    again(kept, BETTER, sorrel(SOUND))
    with pytest.raises(StoreConflictError, match="read again since"):
        kept.undo(who="Ann")
    kept.take_reading_back(1)
    kept.undo(who="Ann")
    assert told(kept)[2] == ("LF", 6.0)


def test_a_fact_of_the_former_reading_is_not_corrected(kept: Store) -> None:
    old = kept.visit(1).fact_ids[0]
    again(kept, BETTER, sorrel(SOUND))
    with pytest.raises(CorrectionError, match="earlier reading"):
        kept.accept(old, seen=seen(kept))


class TestVisits:
    """Which visit of the new reading is which."""

    def test_a_visit_that_is_no_longer_found_stands_no_more(self, kept: Store) -> None:
        again(kept, bramble(thrush("LF"), SOUND))
        assert (kept.memo(1).visit_ids, kept.visit(2).stands, kept.counts()["visits"]) == ((1,), False, 1)
        assert kept.visits_of("Sorrel") == []
        kept.take_reading_back(1)
        assert (kept.memo(1).visit_ids, told(kept, 2)) == ((1, 2), [(None, "sound")])

    def test_a_visit_with_something_by_hand_stays(self, kept: Store) -> None:
        kept.accept(kept.visit(2).fact_ids[0], seen=0)
        again(kept, bramble(thrush("LF")))
        assert kept.memo(1).visit_ids == (1, 2)
        assert [f.flagged for f in kept.visit(2).visit.facts] == [True]

    def test_a_visit_that_was_missed_is_added_on_the_same_day(self, kept: Store) -> None:
        kept.correct_visit(1, seen=0, day=date(2026, 3, 1))
        teasel = sorrel(NAILS, match=HorseMatch.NEW).model_copy(update={"horse": "Teasel"})
        again(kept, bramble(thrush("LF")), teasel, sorrel(SOUND))
        assert (kept.memo(1).visit_ids, kept.visit(3).visit.date) == ((1, 2, 3), date(2026, 3, 1))
        assert [visit.id for visit in kept.visits_of("Teasel")] == [3]
        kept.take_reading_back(1)
        assert (kept.memo(1).visit_ids, kept.visit(3).stands) == ((1, 2), False)

    def test_a_name_heard_otherwise_is_the_same_visit_by_its_words(self, kept: Store) -> None:
        kept.add_horses([RosterHorse(name="Rowan")])
        rowan = bramble(thrush("LF"), NAILS).model_copy(update={"horse": "Rowan"})
        again(kept, sorrel(SOUND), rowan)
        assert (kept.visit(1).visit.horse, kept.visit(2).visit.horse) == ("Rowan", "Sorrel")
        kept.take_reading_back(1)
        assert kept.visit(1).visit.horse == "Bramble"

    def test_whose_visit_a_person_said_it_was_stays(self, kept: Store) -> None:
        kept.assign(1, kept.horse("Sorrel"), seen=0)
        doubt = Flag(kind=FlagKind.HORSE, reason="Which horse is it?")
        again(kept, bramble(thrush("LF"), flags=(doubt,)), sorrel(SOUND))
        assert (kept.visit(1).visit.horse, kept.visit(1).visit.flags) == ("Sorrel", [])

    def test_whose_visit_a_person_confirmed_it_was_stays(self, kept: Store) -> None:
        kept.assign(1, kept.horse("Bramble"))
        kept.add_horses([RosterHorse(name="Rowan")])
        again(kept, bramble(thrush("LF")).model_copy(update={"horse": "Rowan"}), sorrel(SOUND))
        assert (kept.visit(1).visit.horse, told(kept)) == ("Bramble", [("LF", "thrush")])

    def test_a_visit_that_a_person_dropped_is_not_found_again(self, kept: Store) -> None:
        kept.move(kept.visit(2).fact_ids[0], 1, seen=0)
        kept.drop_visit(2, seen=seen(kept, 2))
        again(kept, bramble(thrush("LF")), sorrel(SOUND, NAILS))
        assert (kept.memo(1).visit_ids, told(kept)) == ((1,), [("LF", "thrush"), (None, "sound")])
        assert again(kept, bramble(thrush("LF")), sorrel(SOUND, NAILS), reading=2) is None

    def test_what_a_person_stands_for_is_not_lost_in_a_visit_that_he_dropped(self, kept: Store) -> None:
        kept.accept(kept.visit(1).fact_ids[2], seen=0)
        kept.drop_visit(2, seen=0)
        again(kept, bramble(thrush("LF")), sorrel(NAILS, SOUND))
        assert (kept.memo(1).visit_ids, told(kept)) == ((1,), [("LF", "thrush"), ("LF", 6.0)])

    def test_a_visit_that_a_person_added_stays_his(self, kept: Store) -> None:
        kept.add_horses([RosterHorse(name="Teasel")])
        added = kept.add_visit(1, kept.horse("Teasel"), seen=0)
        kept.move(kept.visit(1).fact_ids[2], added.visit, seen=seen(kept))
        new = sorrel(NAILS, match=HorseMatch.NEW).model_copy(update={"horse": "Thistle"})
        again(kept, bramble(thrush("LF")), new, sorrel(SOUND))
        assert (kept.memo(1).visit_ids, kept.visit(added.visit).visit.horse) == ((1, 2, 3), "Teasel")
        assert told(kept, added.visit) == [("LF", 6.0)]

    def test_a_flag_that_was_looked_at_is_not_asked_again(self, yard: Yard, kept: Store) -> None:
        flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: hat", quote="hat")
        other = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: cap", quote="cap")
        again(kept, bramble(NAILS, flags=(flag,)), sorrel(SOUND))
        kept.settle_flag(kept.visit(1).flags[0].id, 1, seen=seen(kept))
        again(kept, bramble(NAILS, CORN, flags=(flag, other)), sorrel(SOUND), reading=2)
        assert kept.visit(1).visit.flags == [other]


class TestHearingAgain:
    """The sound heard again gives another wording."""

    NEW = "Bramble. Thrush on both fronts, six nails, angle fifty two. Then Sorrel sound."

    def transcript(self) -> Transcript:
        """The new wording, one word a second."""
        words, start = [], 0
        for number, text in enumerate(self.NEW.split()):
            start = self.NEW.index(text, start)
            place = {"start": start, "end": start + len(text), "start_s": number, "end_s": number + 1.0}
            words.append(Word.model_validate({"text": text, **place, "probability": 0.9}))
            start += len(text)
        return Transcript(text=self.NEW, words=words)

    def heard(self, store: Store, reading: int = 1) -> int | None:
        """Hear the memo again."""
        angle = Fact(foot="LF", slot="toe_angle", value=52.0, quote="angle fifty two", span=(43, 58))
        nails = Fact(foot="LF", slot="nails", value=6.0, quote="six nails", span=(32, 41))
        new = record(bramble(nails, angle), sorrel(), text=self.NEW)
        return store.read_again(1, new, seen=reading, vocabulary="words 2", heard=self.transcript(), weights="base 2")

    def test_the_memo_has_the_new_wording_and_the_old_one_is_kept(self, kept: Store) -> None:
        assert self.heard(kept) == 2
        memo = kept.memo(1)
        assert (memo.record.transcript, memo.transcript, memo.weights) == (self.NEW, self.transcript(), "base 2")
        assert [p.text for p in kept.search(Wanted(words=("fifty", "two"))).passages] == [self.NEW] * 2
        assert kept.problems() == []
        kept.take_reading_back(1)
        assert (kept.memo(1).record.transcript, kept.memo(1).weights, told(kept, 2)) == (TEXT, None, [(None, "sound")])
        assert kept.search(Wanted(words=("fifty", "two"))).passages == []
        assert kept.problems() == []
        assert self.heard(kept) == 3
        assert [r.hearing for r in kept.readings(1)] == [1, 2, 2]

    def test_a_correction_finds_its_fact_by_its_words_or_is_put_before_the_person(self, kept: Store) -> None:
        _, _, nails, corn, _ = kept.visit(1).fact_ids
        kept.correct(nails, {"value": 5.0}, seen=0)
        kept.correct(corn, {"foot": "RH"}, seen=seen(kept))
        self.heard(kept)
        assert told(kept) == [("LF", 5.0), ("LF", 52.0), ("RH", "corn")]
        orphan = kept.visit(1).visit.facts[-1]
        assert (orphan.quote, orphan.span, orphan.start) == ("", (0, 0), None)
        assert orphan.reasons == [
            "A person stood for this; read again, the memo no longer says it (it was heard as “a corn”)."
            " Is it still right?"
        ]

    def test_the_same_words_by_the_same_weights_are_no_new_wording(self, kept: Store) -> None:
        assert self.heard(kept) == 2
        assert self.heard(kept, reading=2) is None


def test_a_reading_begun_before_another_one_is_refused(kept: Store) -> None:
    again(kept, BETTER, sorrel(SOUND))
    before = (kept.visit(1), kept.readings(1))
    with pytest.raises(StoreConflictError, match="read again by somebody else"):
        again(kept, bramble(NAILS), sorrel(SOUND), reading=1)
    assert (kept.visit(1), kept.readings(1)) == before


def test_an_unknown_memo_is_not_found(kept: Store) -> None:
    with pytest.raises(NotFoundError, match="memo 9"):
        kept.take_reading_back(9)
    with pytest.raises(NotFoundError, match="memo 9"):
        kept.read_again(9, record(), seen=1, vocabulary=None)
