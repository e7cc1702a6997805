"""Long random runs of decisions, readings and taking back: nothing doubled, nothing lost, every moment recoverable."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from types import SimpleNamespace
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.judging.asked_place import asks_from, of_fact_from
from pipeline.keeping import KeptFact, KeptVisit, Store
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.deciding import SameHorse, SplitVisit
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

TEXT = "Bramble. Thrush in all four, six nails each, a bruise, size two. Then Sorrel, sound, thrush, five nails."
WORDS = ("Thrush in all four", "six nails each", "a bruise", "size two", "sound", "thrush", "five nails")
MEANT: dict[str, tuple[str, str | float]] = {
    "Thrush in all four": ("finding", "thrush"),
    "six nails each": ("nails", 6.0),
    "a bruise": ("finding", "bruise"),
    "size two": ("shoe_size", "2"),
    "sound": ("gait", "sound"),
    "thrush": ("finding", "thrush"),
    "five nails": ("nails", 5.0),
}
CORRECTIONS: tuple[FactFields, ...] = (
    {"foot": "RH"},
    {"foot": "LF"},
    {"zone": "toe"},
    {"severity": None},
    {"zone": None},
)


def reading(chance: random.Random, text: str = TEXT) -> MemoRecord:
    """What some reader makes of the memo: mostly the same words, now and then another foot or nothing at all."""
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: each", quote="each")
    place = text.index("a bruise")
    another = Flag(kind=FlagKind.HORSE, reason=asks_from("a bruise", ""), span=(place, place + 8))
    suspects = chance.random() < 0.7
    visits = []
    for horse, words in (("Bramble", WORDS[:4]), ("Sorrel", WORDS[4:])):
        facts = []
        for quote in words:
            start = text.index(quote)
            for foot in ("LF", "RF", "LH", "RH") if "all" in quote or "each" in quote else (None,):
                if chance.random() < 0.85:
                    slot, value = MEANT[quote]
                    said = {"quote": quote, "span": (start, start + len(quote)), "flagged": chance.random() < 0.2}
                    if suspects and quote in WORDS[2:4]:
                        said |= {"flagged": True, "reasons": [of_fact_from("a bruise")]}
                    foot = chance.choice(("LF", "RH")) if foot is None and chance.random() < 0.2 else foot
                    facts.append(Fact.model_validate({"foot": foot, "slot": slot, "value": value, **said}))
        flags = [flag] if chance.random() < 0.5 else []
        flags += [another] if suspects and horse == "Bramble" else []
        notes = chance.choice(("", "", "Another note.", "six nails each\nsize two"))
        if horse == "Bramble" or chance.random() < 0.9:
            visits.append(
                Visit(
                    horse=horse, horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=facts, flags=flags,
                    notes=notes,
                )
            )  # fmt: skip
    return MemoRecord(memo=Memo(), transcript=text, visits=visits)


def decide(store: Store, chance: random.Random) -> None:
    """One decision of a person about something that he sees."""
    visit = store.visit(chance.choice(store.memo(1).visit_ids))
    seen = visit.revision
    standing: KeptFact | None = chance.choice(visit.facts) if visit.facts else None
    decisions: list[Callable[[], object]] = [
        lambda: store.correct_visit(visit.id, seen=seen, notes=f"Note {chance.randrange(9)}."),
        lambda: store.add_fact(visit.id, Fact(foot="RF", slot="nails", value=7.0), seen=seen),
        lambda: store.assign(visit.id, store.horse(chance.choice(("Bramble", "Sorrel"))), seen=seen),
        lambda: store.undo(),
        lambda: store.drop_visit(visit.id, seen=seen) if len(store.memo(1).visit_ids) > 1 else store.undo(),
        lambda: store.add_visit(visit.id, store.horse("Sorrel"), seen=seen),
    ]
    if standing is not None:
        fact = standing.id
        decisions += [
            lambda: store.accept(fact, seen=seen),
            lambda: store.correct(fact, chance.choice(CORRECTIONS), seen=seen),
            lambda: store.drop(fact, seen=seen),
            lambda: store.move(fact, chance.choice(store.memo(1).visit_ids), seen=seen),
        ] * 2
    if visit.dropped:
        decisions.append(lambda: store.restore(visit.dropped[0].id, seen=seen))
    if visit.flags:
        decisions.append(lambda: store.settle_flag(visit.flags[0].id, visit.id, seen=seen))
    places = [flag.id for flag in visit.flags if flag.flag.kind is FlagKind.HORSE]
    if places:
        horse, start = chance.choice(("Sorrel", "Teasel")), chance.choice((None, None, TEXT.index("size two")))
        decisions += [lambda: store.decide(visit.id, [SplitVisit(places[0], store.horse(horse), start)], seen=seen)] * 4
        decisions.append(lambda: store.decide(visit.id, [SameHorse(places[0])], seen=seen))
    try:
        chance.choice(decisions)()
    except (CorrectionError, StoreConflictError):
        return  # he decided nothing new, or what he took back was built upon


def standing(store: Store) -> list[Visit]:
    """What stands of the memo."""
    return [store.visit(number).visit for number in store.memo(1).visit_ids]


def past(visit: KeptVisit) -> dict[str, object]:
    """A visit but for its revision, which only the present has."""
    return {**vars(visit), "revision": 0}


@pytest.mark.parametrize("seed", [*range(6), 214, 223, 268, 314])
def test_nothing_is_lost_or_doubled(seed: int, yard: Yard, store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    chance = random.Random(seed)
    moment = datetime(2026, 3, 2, 12, tzinfo=UTC)
    monkeypatch.setattr("pipeline.keeping.opened.now", lambda: moment.isoformat(timespec="seconds"))
    monkeypatch.setattr("pipeline.keeping.deciding.datetime", SimpleNamespace(now=lambda _: moment))
    store.add_horses([RosterHorse(name="Sorrel"), RosterHorse(name="Teasel")])
    yard.keep(store, *reading(chance).visits, text=TEXT)
    stood: list[tuple[datetime, list[KeptVisit]]] = []
    for _ in range(25):
        moment += timedelta(minutes=1)
        if chance.random() < 0.2:
            read_once(store, chance)
        elif chance.random() < 0.1 and store.memo(1).reading > 1:
            store.take_reading_back(1)
        else:
            decide(store, chance)
        visits = [store.visit(number) for number in store.memo(1).visit_ids]
        stood.append((moment, visits))
        check(store, visits)
    for when, visits in stood:
        assert [past(store.visit_at(visit.id, when)) for visit in visits] == [past(visit) for visit in visits]
    assert store.problems() == []


def read_once(store: Store, chance: random.Random) -> None:
    """Read again; taking that back at once leaves everything as it was; then read the same again."""
    text = chance.choice((TEXT, TEXT, f"{TEXT} Good."))
    heard = None if text == store.memo(1).record.transcript else Transcript(text=text)
    record = reading(chance, text)
    before, settled = standing(store), settled_facts(store)
    number = store.read_again(1, record, seen=store.memo(1).reading, vocabulary=f"{chance.random()}", heard=heard)
    if number is None:
        assert standing(store) == before
        return
    assert settled_facts(store) == settled
    store.take_reading_back(1)
    assert standing(store) == before
    assert store.read_again(1, record, seen=store.memo(1).reading, vocabulary="again", heard=heard) is not None


def settled_facts(store: Store) -> list[str]:
    """What a person stands for in this memo: it is the same whatever reader came by."""
    facts = [fact for number in store.memo(1).visit_ids for fact in store.visit(number).facts]
    keys = ("foot", "slot", "value", "zone", "status", "severity")
    return sorted(str([getattr(fact.fact, key) for key in keys]) for fact in facts if fact.settled)


def check(store: Store, visits: list[KeptVisit]) -> None:
    """The store agrees with itself."""
    ids = [fact.id for visit in visits for fact in visit.facts]
    assert len(ids) == len(set(ids))
    found = [row["id"] for row in store._database.query("SELECT id FROM facts_in_full ORDER BY id")]
    assert found == sorted(ids)
    counted = store.counts()
    assert (counted["facts"], counted["visits"]) == (len(ids), len(visits))
    assert counted["flagged"] == sum(fact.fact.flagged for visit in visits for fact in visit.facts)
