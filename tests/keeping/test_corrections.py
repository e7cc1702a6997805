"""What a person corrects: one transaction, his name on it, nothing overwritten that he has not seen."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, NotFoundError, StoreConflictError
from pipeline.keeping import Store, Wanted
from pipeline.keeping.changes import ChangeKind
from pipeline.keeping.correcting import BY_HAND, FactFields
from pipeline.record import (
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    MatchKind,
    RosterHorse,
    Severity,
    Status,
    Transcript,
    Visit,
)

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Left fore, thrush in the sulcus, six nails. Then Sorrel, sound."
DAY = date(2026, 3, 2)
CALLS = ("correct", "accept", "drop", "move", "add", "visit", "assign", "flag", "new visit", "drop visit")


def said(quote: str) -> dict[str, object]:
    """Quote and span of a fact in TEXT."""
    start = TEXT.index(quote)
    return {"quote": quote, "span": (start, start + len(quote))}


def visits() -> list[Visit]:
    """Bramble with a doubtful thrush and six nails, and Sorrel with nothing understood."""
    thrush = Fact.model_validate(
        {
            "foot": "LF", "slot": "finding", "value": "thrush", "zone": "sulcus", "confidence": 0.5, "flagged": True,
            "reasons": ["hard to hear"], **said("thrush in the sulcus"),
        }
    )  # fmt: skip
    nails = Fact.model_validate({"foot": "LF", "slot": "nails", "value": 6.0, **said("six nails")})
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: sound", quote="sound")
    horse = Flag(kind=FlagKind.HORSE, reason="Which horse is it?", quote="Sorrel")
    return [
        Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=DAY, facts=[thrush, nails], notes="Quiet."),
        Visit(horse="Sorrel", horse_match=HorseMatch.UNCLEAR, date=DAY, flags=[flag, horse]),
    ]


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """A store with one memo of two visits, 1 and 2, with the facts 1 and 2 in the first."""
    store.add_horses([RosterHorse(name="Sorrel")])
    assert yard.keep(store, *visits(), text=TEXT) == [1, 2]
    return store


def values(store: Store, visit: int = 1) -> list[tuple[str, str | float, str]]:
    """Slot, value and status of what stands in a visit."""
    return [(fact.slot, fact.value, fact.status.value) for fact in store.visit(visit).visit.facts]


def written(store: Store, change: int) -> dict[tuple[str, str], tuple[object, object]]:
    """What a change wrote into history: (table, column) to (old, new)."""
    return {(e.table, e.column): (e.old, e.new) for e in store.history() if e.change == change}


def test_a_field_is_corrected_with_who_and_why_and_the_flag_is_gone(kept: Store) -> None:
    noted = kept.correct(
        1, {"value": "corn", "zone": None, "severity": Severity.MILD}, seen=0, who="Ann", why="misheard"
    )
    visit = kept.visit(1)
    fact = visit.visit.facts[0]
    assert (fact.value, fact.zone, fact.severity) == ("corn", None, Severity.MILD)
    assert (fact.flagged, fact.reasons, fact.confidence) == (False, [], 1.0)
    assert (visit.facts[0].settled, visit.facts[1].settled, visit.revision) == (True, False, noted.revision)
    assert written(kept, noted.change) == {
        ("facts", "value"): ("thrush", "corn"),
        ("facts", "zone"): ("sulcus", None),
        ("facts", "severity"): (None, "mild"),
        ("facts", "confidence"): (0.5, 1.0),
        ("facts", "flagged"): (1, 0),
        ("facts", "reasons"): ('["hard to hear"]', "[]"),
        ("facts", "settled"): (0, 1),
    }
    assert {(e.who, e.why) for e in kept.history()} == {("Ann", "misheard")}


def test_what_was_said_and_where_is_not_corrected(kept: Store) -> None:
    kept.correct(1, {"foot": "RH", "status": Status.SUSPECTED}, seen=0)
    fact = kept.visit(1).visit.facts[0]
    assert (fact.foot, fact.status, fact.quote, fact.span) == (
        "RH", Status.SUSPECTED, "thrush in the sulcus", (20, 40),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("fact", "fields", "sentence"),
    [
        (1, {"value": "rot"}, "This cannot be kept: 'rot' is no finding."),
        (2, {"value": 60.0}, "This cannot be kept: nails 60.0 is outside 1 to 20."),
        (2, {"value": "six"}, "This cannot be kept: nails 'six' is outside 1 to 20."),
        (1, {"zone": "tail"}, "This cannot be kept: 'tail' is not a zone."),
        (1, {"foot": "XX"}, "This cannot be kept: foot input should be 'LF', 'RF', 'LH' or 'RH'."),
        (1, {"quote": "never said"}, "'quote' of a fact is not corrected by hand."),
        (2, {"value": True}, "This cannot be kept: a value is a word or a number, not yes or no."),
        (2, {"value": float("nan")}, "This cannot be kept: nails nan is outside 1 to 20."),
        (1, {}, "A correction must say what is right instead."),
    ],
)
def test_what_no_record_can_hold_is_refused_and_nothing_is_written(
    kept: Store, fact: int, fields: FactFields, sentence: str
) -> None:
    before = kept.visit(1)
    with pytest.raises(CorrectionError) as refused:
        kept.correct(fact, fields, seen=0)
    assert str(refused.value) == sentence
    assert (kept.visit(1), kept.history(), kept.changes(1)) == (before, [], [])


def test_an_accepted_fact_is_settled_and_no_longer_to_look_at(kept: Store) -> None:
    assert kept.counts()["flagged"] == 1
    noted = kept.accept(1, seen=0, who="Ann")
    fact = kept.visit(1).facts[0]
    assert (fact.settled, fact.fact.flagged, fact.fact.value, kept.counts()["flagged"]) == (True, False, "thrush", 0)
    with pytest.raises(CorrectionError, match="stands like that already"):
        kept.accept(1, seen=noted.revision)
    assert [change.kind for change in kept.changes(1)] == [ChangeKind.ACCEPT]


def test_a_dropped_fact_is_kept_and_stands_nowhere_until_it_is_restored(kept: Store) -> None:
    noted = kept.drop(1, seen=0)
    visit = kept.visit(1)
    assert (values(kept), [fact.id for fact in visit.dropped], visit.fact_ids) == (
        [("nails", 6.0, "present")],
        [1],
        (2,),
    )
    assert kept.search(Wanted(values=(("finding", "thrush"),))).facts == []
    assert (kept.memo(1).record.visits[0].facts, kept.counts()["facts"]) == (visit.visit.facts, 1)
    with pytest.raises(CorrectionError, match="Fact 1 is dropped already"):
        kept.drop(1, seen=noted.revision)
    kept.restore(1, seen=noted.revision)
    assert values(kept) == [("finding", "thrush", "present"), ("nails", 6.0, "present")]
    assert kept.visit(1).dropped == ()


def test_a_fact_moves_to_another_visit_of_its_memo_alone(yard: Yard, kept: Store) -> None:
    (other,) = yard.keep(kept, visits()[0], text=TEXT)
    with pytest.raises(CorrectionError, match=f"Visit {other} is of another memo"):
        kept.move(2, other, seen=0)
    noted = kept.move(2, 2, seen=0, seen_there=0, why="that was Sorrel")
    assert (values(kept, 1), values(kept, 2)) == ([("finding", "thrush", "present")], [("nails", 6.0, "present")])
    assert written(kept, noted.change)["facts", "visit"] == (1, 2)
    assert (kept.visit(1).revision > 0, kept.visit(2).revision > 0) == (True, True)
    with pytest.raises(StoreConflictError):
        kept.move(1, 2, seen=noted.revision, seen_there=0)


def test_a_missed_fact_is_added_with_its_words(kept: Store) -> None:
    sound = Fact(foot=None, slot="gait", value="sound", quote="sound", match=MatchKind.SOUND_ALIKE, confidence=0.1)
    noted = kept.add_fact(2, sound, seen=0, who="Ann")
    (added,) = kept.visit(2).facts
    assert (added.id, added.by_hand, added.settled) == (noted.fact, True, True)
    assert (added.fact.quote, added.fact.span) == ("sound", (66, 71))
    assert (added.fact.rules, added.fact.match, added.fact.confidence) == ([BY_HAND], MatchKind.EXACT, 1.0)
    assert kept.visit(2).revision == noted.revision > 0
    assert [(c.kind, c.who, c.visit) for c in kept.changes(2)] == [(ChangeKind.ADD, "Ann", 2)]
    assert [found.fact.value for found in kept.search(Wanted(words=("sound",))).facts] == ["sound"]


def test_a_missed_fact_needs_no_words_but_true_ones(kept: Store) -> None:
    kept.add_fact(1, Fact(foot="RF", slot="nails", value=7.0), seen=0)
    assert kept.visit(1).visit.facts[-1].quote == ""
    seen = kept.visit(1).revision
    with pytest.raises(CorrectionError, match="“eight nails” is not in the memo"):
        kept.add_fact(1, Fact(foot="RF", slot="nails", value=8.0, quote="eight nails"), seen=seen)
    with pytest.raises(CorrectionError, match="are not in the memo"):
        kept.add_fact(1, Fact(foot="RF", slot="nails", value=8.0, quote="six nails", span=(0, 9)), seen=seen)
    with pytest.raises(CorrectionError, match="are not in the memo"):
        kept.add_fact(1, Fact(foot="RF", slot="nails", value=8.0, span=(60, 6000)), seen=seen)


def test_a_missed_visit_is_added_to_the_memo(kept: Store) -> None:
    kept.add_horses([RosterHorse(name="Teasel", place="Hill yard")])
    added = kept.add_visit(1, kept.horse("Teasel"), seen=0)
    kept.move(2, added.visit, seen=0, seen_there=added.revision)
    visit = kept.visit(added.visit)
    assert (visit.visit.horse, visit.visit.date, values(kept, added.visit)) == (
        "Teasel",
        DAY,
        [("nails", 6.0, "present")],
    )
    assert kept.memo(1).visit_ids == (1, 2, added.visit)
    assert [kept.visit(v).id for v in kept.memo(1).visit_ids] == [1, 2, 3]


def test_a_visit_that_was_none_stands_no_more(kept: Store) -> None:
    noted = kept.drop_visit(1, seen=0)
    assert (kept.memo(1).visit_ids, kept.visits_of("Bramble"), kept.visit(1).stands) == ((2,), [], False)
    assert kept.counts() | {"horses": 0} == {"memos": 1, "visits": 1, "facts": 0, "horses": 0, "flagged": 0}
    assert kept.search(Wanted(slots=("nails",))).facts == []
    assert [p.visit_id for p in kept.search(Wanted(words=("thrush",))).passages] == [2]
    with pytest.raises(CorrectionError):
        kept.drop_visit(1, seen=noted.revision)
    kept.restore_visit(1, seen=noted.revision)
    assert (kept.memo(1).visit_ids, kept.counts()["facts"]) == ((1, 2), 2)


def test_day_and_notes_are_corrected(kept: Store) -> None:
    noted = kept.correct_visit(1, seen=0, day=date(2026, 3, 1), notes="Lively.")
    visit = kept.visit(1).visit
    assert (visit.date, visit.notes) == (date(2026, 3, 1), "Lively.")
    assert written(kept, noted.change) == {
        ("visits", "date"): ("2026-03-02", "2026-03-01"),
        ("visits", "notes"): ("Quiet.", "Lively."),
    }
    with pytest.raises(CorrectionError):
        kept.correct_visit(1, seen=noted.revision)
    assert kept.problems() == []


def test_half_a_character_is_kept_as_a_sign_that_it_was_one(kept: Store) -> None:
    kept.correct_visit(1, seen=0, notes="Hat \udc80.", who="An\udc80n", why="\udc80")
    assert kept.visit(1).visit.notes == "Hat ?."
    assert {(entry.who, entry.why) for entry in kept.history()} == {("An?n", "?")}


def test_an_assigned_visit_asks_no_more_whose_it_was(kept: Store) -> None:
    kept.assign(2, kept.horse("Sorrel"), seen=0)
    visit = kept.visit(2)
    assert (visit.visit.horse, [flag.kind for flag in visit.visit.flags]) == ("Sorrel", [FlagKind.NOT_UNDERSTOOD])


def test_a_flag_that_was_looked_at_is_gone(kept: Store) -> None:
    first, second = kept.visit(2).flags
    with pytest.raises(CorrectionError, match="does not belong to visit 1"):
        kept.settle_flag(first.id, 1, seen=0)
    kept.settle_flag(first.id, 2, seen=0)
    assert (kept.visit(2).flags, kept.visit(2).visit.flags) == ((second,), [second.flag])


def test_a_flag_of_the_whole_memo_is_gone_from_all_its_visits(yard: Yard, store: Store) -> None:
    path = yard.recording()
    flag = Flag(kind=FlagKind.DATE, reason="The day is that of the file.")
    record = yard.record(path, *visits(), text=TEXT).model_copy(update={"flags": [flag]})
    one, two = store.keep(record, Transcript(text=TEXT), path)
    (kept_flag,) = store.visit(one).memo.flags
    store.settle_flag(kept_flag.id, two, seen=0)
    assert (store.visit(one).memo.flags, store.memo(1).record.flags) == ((), [])
    with pytest.raises(StoreConflictError):
        store.accept(1, seen=0)


@pytest.mark.parametrize("call", CALLS)
def test_nobody_overwrites_what_he_has_not_seen(yard: Yard, kept: Store, call: str) -> None:
    with yard.open() as other:
        other.correct_visit(1, seen=0, notes="Ben was here.", who="Ben")
        other.correct_visit(2, seen=0, notes="Ben was here.", who="Ben")
    before = (kept.visit(1), kept.visit(2), kept.history())
    with pytest.raises(StoreConflictError, match="changed by somebody else since"):
        change_seen(kept, call, {1: 0, 2: 0})
    assert (kept.visit(1), kept.visit(2), kept.history()) == before


def test_what_is_not_there_is_not_found(kept: Store) -> None:
    calls: list[Callable[[], object]] = [
        lambda: kept.accept(99, seen=0),
        lambda: kept.correct_visit(99, seen=0, notes=""),
        lambda: kept.move(1, 99, seen=0),
        lambda: kept.settle_flag(99, 1, seen=0),
    ]
    for call in calls:
        with pytest.raises(NotFoundError, match="99"):
            call()
    assert kept.history() == []


class TestUndo:
    """The last changes of a hand, taken back."""

    def test_every_kind_of_change_is_taken_back_and_written_down(self, kept: Store) -> None:
        for call in CALLS:
            before = (kept.visit(1).visit, kept.visit(2).visit, kept.memo(1).visit_ids)
            seen = {visit: kept.visit(visit).revision for visit in (1, 2)}
            change_seen(kept, call, seen)
            assert (kept.visit(1).visit, kept.visit(2).visit, kept.memo(1).visit_ids) != before, call
            (undone,) = kept.undo()
            assert (kept.visit(1).visit, kept.visit(2).visit, kept.memo(1).visit_ids) == before, call
            last = kept.changes_of_memo(1)[-1]
            assert (last.kind, last.undoes) == (ChangeKind.UNDO, undone.id), call
        assert kept.problems() == []

    def test_the_last_three_newest_first_by_this_hand_alone(self, kept: Store) -> None:
        seen = kept.accept(1, seen=0, who="Ben").revision
        for notes in ("one", "two", "three", "four"):
            seen = kept.correct_visit(1, seen=seen, notes=notes, who="Ann").revision
        undone = kept.undo(3, who="Ann")
        assert ([change.who for change in undone], kept.visit(1).visit.notes) == (["Ann"] * 3, "one")
        assert kept.visit(1).facts[0].settled
        kept.undo(who="Ann")
        assert kept.visit(1).visit.notes == "Quiet."
        with pytest.raises(CorrectionError, match="no change by this hand left"):
            kept.undo(who="Ann")

    def test_only_in_one_memo(self, yard: Yard, kept: Store) -> None:
        (other,) = yard.keep(kept, visits()[0], text=TEXT)
        kept.correct_visit(1, seen=0, notes="one")
        kept.correct_visit(other, seen=0, notes="two")
        kept.undo(5, visit_id=1)
        assert (kept.visit(1).visit.notes, kept.visit(other).visit.notes) == ("Quiet.", "two")

    def test_what_another_hand_built_upon_is_left_alone(self, kept: Store) -> None:
        seen = kept.correct(1, {"value": "corn"}, seen=0, who="Ann").revision
        seen = kept.correct_visit(1, seen=seen, notes="Ann", who="Ann").revision
        kept.correct(1, {"value": "bruise"}, seen=seen, who="Ben")
        before = (kept.visit(1), kept.history())
        with pytest.raises(StoreConflictError, match="take the later change back first"):
            kept.undo(2, who="Ann")
        assert (kept.visit(1), kept.history()) == before

    def test_a_new_visit_with_facts_in_it_stays(self, kept: Store) -> None:
        added = kept.add_visit(1, kept.horse("Sorrel"), seen=0, who="Ann")
        kept.move(2, added.visit, seen=0, who="Ben")
        with pytest.raises(StoreConflictError, match="has facts by now"):
            kept.undo(who="Ann")

    def test_a_moved_fact_comes_back_though_its_place_is_taken(self, kept: Store) -> None:
        kept.move(1, 2, seen=0, who="Ann")  # to visit 2, behind all
        kept.move(1, 1, seen=kept.visit(2).revision, who="Ben")
        kept.add_fact(2, Fact(foot="RF", slot="nails", value=7.0), seen=kept.visit(2).revision, who="Ben")
        kept.undo(2, who="Ben")
        assert [fact.id for fact in kept.visit(2).facts] == [1]


def change_seen(store: Store, call: str, seen: dict[int, int]) -> None:
    """One change of a kind by somebody who saw these revisions."""
    calls: dict[str, Callable[[], object]] = {
        "correct": lambda: store.correct(1, {"value": "corn", "foot": "LH"}, seen=seen[1]),
        "accept": lambda: store.accept(1, seen=seen[1]),
        "drop": lambda: store.drop(1, seen=seen[1]),
        "move": lambda: store.move(1, 2, seen=seen[1]),
        "add": lambda: store.add_fact(1, Fact(foot="RF", slot="nails", value=7.0), seen=seen[1]),
        "visit": lambda: store.correct_visit(1, seen=seen[1], notes="Ann was here."),
        "assign": lambda: store.assign(2, store.horse("Sorrel"), seen=seen[2]),
        "flag": lambda: store.settle_flag(1, 2, seen=seen[2]),
        "new visit": lambda: store.add_visit(1, store.horse("Sorrel"), seen=seen[1]),
        "drop visit": lambda: store.drop_visit(1, seen=seen[1]),
    }
    calls[call]()
