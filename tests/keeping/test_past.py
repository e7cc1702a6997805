"""What was changed, and what stood at a moment."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import NotFoundError
from pipeline.keeping import Store
from pipeline.keeping.changes import ChangeKind
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Thrush, six nails. Then Sorrel."
Clock = Callable[[int], datetime]


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    """Set the store's clock to a minute of an hour: ``clock(5)`` is 12:05 UTC, which it returns."""

    def setting(minute: int) -> datetime:
        moment = datetime(2026, 3, 2, 12, minute, tzinfo=UTC)
        monkeypatch.setattr("pipeline.keeping.opened.now", lambda: moment.isoformat(timespec="seconds"))
        return moment

    return setting


@pytest.fixture
def kept(yard: Yard, store: Store, clock: Clock) -> Store:
    """A memo kept at 12:00 with visit 1, which has two facts and a flag, and visit 2, which is nobody's."""
    clock(0)
    thrush = Fact(foot="LF", slot="finding", value="thrush", quote="Thrush", span=(9, 15), flagged=True, reasons=["?"])
    nails = Fact(foot="LF", slot="nails", value=6.0, quote="six nails", span=(17, 26))
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: hat", quote="hat")
    one = Visit(
        horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=[thrush, nails], flags=[flag]
    )
    two = Visit(horse="Sorrel", horse_match=HorseMatch.UNCLEAR, date=date(2026, 3, 2))
    assert yard.keep(store, one, two, text=TEXT) == [1, 2]
    store.add_horses([RosterHorse(name="Sorrel")])
    return store


def seen(store: Store, visit: int = 1) -> int:
    """The revision of a visit."""
    return store.visit(visit).revision


def test_a_visit_is_shown_as_it_stood_at_every_moment(kept: Store, clock: Clock) -> None:
    steps: list[Callable[[], object]] = [
        lambda: kept.correct(1, {"value": "corn", "foot": "RH"}, seen=seen(kept)),
        lambda: kept.drop(2, seen=seen(kept)),
        lambda: kept.add_fact(1, Fact(foot="RF", slot="nails", value=7.0), seen=seen(kept)),
        lambda: kept.settle_flag(1, 1, seen=seen(kept)),
        lambda: kept.correct_visit(1, seen=seen(kept), day=date(2026, 3, 1), notes="By hand."),
        lambda: kept.move(1, 2, seen=seen(kept)),
        lambda: kept.assign(2, kept.horse("Sorrel"), seen=seen(kept, 2)),
        lambda: kept.read_again(1, reread(), seen=1, vocabulary="words 2", heard=Transcript(text=TEXT.upper())),
        lambda: kept.add_visit(1, kept.horse("Sorrel"), seen=seen(kept)),
        lambda: kept.undo(),
        lambda: kept.take_reading_back(1),
    ]
    stood = [(kept.visit(1), kept.visit(2))]
    for minute, step in enumerate(steps, start=1):
        clock(minute)
        step()
        stood.append((kept.visit(1), kept.visit(2)))
    for minute, (one, two) in enumerate(stood):
        moment = clock(minute)
        assert without_revision(kept.visit_at(1, moment)) == without_revision(one), minute
        assert without_revision(kept.visit_at(2, moment)) == without_revision(two), minute
    assert kept.visit_at(1, clock(3)).memo.record.visits == [stood[3][0].visit, stood[3][1].visit]


def reread() -> MemoRecord:
    """What a later reading makes of the memo: only the nails, and they are seven."""
    nails = Fact(foot="LF", slot="nails", value=7.0, quote="SIX NAILS", span=(17, 26))
    visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=[nails])
    return MemoRecord(memo=Memo(), transcript=TEXT.upper(), visits=[visit])


def without_revision(visit: object) -> object:
    """A visit but for its revision, which only the present has."""
    return {**vars(visit), "revision": 0}


def test_a_horse_has_the_name_that_it_had(kept: Store, clock: Clock) -> None:
    moment = clock(1)
    kept.add_horses([RosterHorse(name="Bramble", place="River barn", owner="B. Reed")])
    now, then = kept.visit(1).horse, kept.visit_at(1, moment).horse
    assert now is not None
    assert then is not None
    assert (now.horse.owner, then.horse.owner) == ("B. Reed", "A. Fern")


def test_before_it_was_kept_there_was_no_visit(kept: Store, clock: Clock) -> None:
    with pytest.raises(NotFoundError, match="Visit 1 was not kept yet"):
        kept.visit_at(1, datetime(2026, 3, 2, 11, 59, 59, tzinfo=UTC))
    clock(9)
    added = kept.add_visit(1, kept.horse("Sorrel"), seen=0).visit
    assert kept.visit_at(added, clock(9)).horse == kept.horse("Sorrel")
    with pytest.raises(NotFoundError, match="Visit 3 was not kept yet"):
        kept.visit_at(added, clock(8))
    with pytest.raises(NotFoundError, match="no visit 7"):
        kept.visit_at(7, clock(9))


def test_history_tells_every_change_with_old_and_new(kept: Store, clock: Clock) -> None:
    moment = clock(5)
    kept.correct(1, {"value": "corn"}, seen=0, who="Ann", why="misheard")
    kept.add_fact(2, Fact(foot="RF", slot="nails", value=7.0), seen=0, who="Ben", why="forgotten")
    kept.move(2, 2, seen=seen(kept), who="Ben", why="that was Sorrel")
    history = kept.history_of(1)
    first, second = history.past
    assert (first.at, first.who, first.why, first.change and first.change.kind) == (
        moment, "Ann", "misheard", ChangeKind.CORRECT,
    )  # fmt: skip
    assert ("value", "thrush", "corn") in {(e.column, e.old, e.new) for e in first.entries}
    assert second.change is not None
    assert (second.change.kind, second.who) == (ChangeKind.MOVE, "Ben")
    assert {number: fact.value for number, fact in history.facts.items()} == {1: "thrush", 2: 6.0}
    assert history.flags == {1: "Not understood: hat"}
    there = kept.history_of(2)
    assert [(past.change and past.change.kind, [fact.value for _, fact in past.added]) for past in there.past] == [
        (ChangeKind.ADD, [7.0]), (ChangeKind.MOVE, []),
    ]  # fmt: skip
    assert {number: fact.value for number, fact in there.facts.items()} == {2: 6.0, 3: 7.0}


def test_what_another_program_changed_is_history_too(kept: Store) -> None:
    kept._database.execute("UPDATE visits SET notes = 'from outside' WHERE id = 1")
    (past,) = kept.history_of(1).past
    assert (past.change, past.who, [(e.column, e.old, e.new) for e in past.entries]) == (
        None, "unknown", [("notes", "", "from outside")],
    )  # fmt: skip
