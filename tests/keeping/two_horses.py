"""A memo of two horses of which one name was lost, and what is done with it: kept, taken apart, read again."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from pipeline.judging.asked_place import asks_from, of_fact_from
from pipeline.keeping.deciding import SplitVisit
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, MemoRecord, RosterHorse, Visit

if TYPE_CHECKING:
    from pipeline.keeping import KeptVisit, Store
    from pipeline.keeping.deciding import Decision
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


def keep_both(yard: Yard, store: Store) -> Store:
    """The store with one memo: visit 1 at Bramble, visit 2 at Sorrel; Teasel is on the roster."""
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
