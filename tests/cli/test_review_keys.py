"""The keys of the night review that answer whose visit it was, on which day, and what else was said."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.cli.review_screen import fitted
from pipeline.judging.asked_place import asks_from, of_fact_from
from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit, Word
from pipeline.using.past import history_lines
from tests.cli.test_reviewing import pressing

if TYPE_CHECKING:
    from tests.cli.conftest import MakeMemo

SAID = "Brambul. Size three in front."
NAME, DAY = "h", "d"
Keep = Callable[[str], None]


@pytest.fixture
def keep(make_memo: MakeMemo, own_surroundings: Path) -> Keep:
    """Keep a memo with one doubtful size; ``doubts`` says whether its horse (h) and its day (d) are in doubt too."""

    def keeping(doubts: str) -> None:
        path = make_memo("memo.wav")
        fact = Fact(
            foot="LF", slot="shoe_size", value="3", confidence=0.5, flagged=True, reasons=["hard to hear"],
            quote=SAID[9:19], span=(9, 19), start=0.02, end=0.06,
        )  # fmt: skip
        doubt = Flag(kind=FlagKind.HORSE, reason="“Brambul” is not on the roster", quote="Brambul", span=(0, 7))
        visit = Visit(
            horse="Brambul" if NAME in doubts else "Bramble", date=date(2026, 3, 2), facts=[fact],
            horse_match=HorseMatch.UNCLEAR if NAME in doubts else HorseMatch.KNOWN,
            flags=[doubt] if NAME in doubts else [],
        )  # fmt: skip
        flags = [Flag(kind=FlagKind.DATE, reason="the day is that of the file")] if DAY in doubts else []
        words = [Word(text=SAID, start=0, end=len(SAID), start_s=0, end_s=0.1, probability=0.5)]
        memo = Memo(path=str(path), sha256=hashlib.sha256(path.read_bytes()).hexdigest(), seconds=0.1)
        with Store.open(own_surroundings) as store:
            store.add_horses([RosterHorse(name="Bramble"), RosterHorse(name="Teasel")])
            record = MemoRecord(memo=memo, transcript=SAID, visits=[visit], flags=flags)
            store.keep(record, Transcript(text=SAID, words=words), path)

    return keeping


def horse_of(folder: Path) -> str | None:
    """Whose the visit is."""
    with Store.open(folder) as store:
        horse = store.visit(1).horse
        return horse.name if horse else None


@pytest.mark.parametrize(
    ("keys", "lines", "told", "whose"),
    [
        ("h", ("Teasel",), "This was Teasel.", "Teasel"),
        ("1", (), "This was Bramble.", "Bramble"),
        ("w", ("Quillon",), "Quillon is a new horse.", "Quillon"),
        ("o", (), "Left without a horse.", None),
        ("hh", ("", "Teasel"), "Nothing was typed; nothing is changed.", "Teasel"),
        ("w", ("Teasel",), "Teasel is on the roster already; choose it there.", None),
    ],
)
def test_whose_visit_it_was(
    keys: str, lines: tuple[str, ...], told: str, whose: str | None, keep: Keep, own_surroundings: Path
) -> None:
    keep(NAME)
    assert told in pressing(own_surroundings, keys, lines)
    assert horse_of(own_surroundings) == whose


def test_the_history_ends_with_the_doubt_that_was_looked_at(keep: Keep, own_surroundings: Path) -> None:
    keep(NAME)
    pressing(own_surroundings, "hxu", ("Teasel",))
    with Store.open(own_surroundings) as store:
        told = [line.strip() for line in history_lines(store.history_of(1)) if "flag" in line]
    doubt = "“Brambul” is not on the roster"
    assert told == [f"flag looked at: {doubt}", f"flag to look at again: {doubt}"]


def test_what_is_told_is_broken_between_words() -> None:
    told = "From “Grey mare next, thrush left” on it is Figgy O’Dowd, a new horse: left hind: thrush, right fore: corn."
    first, second = fitted(told).split("\n")
    assert len(first) <= 80
    assert f"{first} {second}" == told
    assert fitted("Kept.\n\n  1 left fore") == "Kept.\n\n  1 left fore"
    assert fitted("/stick/" + "a" * 90) == "/stick/" + "a" * 90


def test_a_name_that_was_misheard_can_be_learned_at_once(keep: Keep, own_surroundings: Path) -> None:
    keep(NAME)
    told = pressing(own_surroundings, "1y")
    assert "y yes, any other key not yet" in told
    assert "Learned tonight:" in told
    with Store.open(own_surroundings) as store:
        assert store.horse("Bramble").horse.also_called == ["Brambul"]


def test_the_day_is_confirmed_or_typed(keep: Keep, own_surroundings: Path) -> None:
    keep(DAY)
    told = pressing(own_surroundings, "cc", ("the second", "2026-03-01"))
    assert "“the second” is no day; write it as YYYY-MM-DD, such as 2026-03-02." in told
    assert "The day is 2026-03-01." in told
    with Store.open(own_surroundings) as store:
        assert store.visit(1).visit.date == date(2026, 3, 1)


def test_what_was_said_of_another_horse_is_moved(keep: Keep, own_surroundings: Path) -> None:
    keep("")
    assert "Moved to Teasel: left fore: shoe size 3." in pressing(own_surroundings, "h", ("Teasel",))
    with Store.open(own_surroundings) as store:
        assert [kept.fact.value for kept in store.visits_of("Teasel")[0].facts] == ["3"]


def test_what_was_not_said_and_what_was_missed(keep: Keep, own_surroundings: Path) -> None:
    keep("")
    told = pressing(own_surroundings, "mn", ("left hind, mild thrush",))
    assert "Added: left hind: thrush (mild)." in told
    assert "Not said: left fore: shoe size 3." in told
    with Store.open(own_surroundings) as store:
        assert [(kept.fact.foot, kept.fact.value) for kept in store.visit(1).facts] == [("LH", "thrush")]


def test_a_choice_by_its_number_and_a_foot_that_is_none(keep: Keep, own_surroundings: Path) -> None:
    keep("")
    told = pressing(own_surroundings, "fz1")
    assert "No foot was chosen; nothing is changed." in told
    assert "Corrected: left fore: shoe size 2.5." in told


TWO = "Bramble, trimmed all four. Grey mare next. Thrush in the left fore. Corn, right hind."


@pytest.fixture
def lost(make_memo: MakeMemo, own_surroundings: Path) -> Path:
    """A store with a visit of Bramble in which another horse may have come in."""
    path, place = make_memo("two.wav"), TWO.index("Grey")
    doubt = {"confidence": 0.5, "flagged": True, "reasons": [of_fact_from("Grey mare next")]}
    facts = [
        Fact.model_validate({"foot": foot, "slot": slot, "value": value, **(doubt if quote != "trimmed" else {}),
                             "quote": quote, "span": (TWO.index(quote), TWO.index(quote) + len(quote))})
        for foot, slot, value, quote in (
            ("LF", "work", "trim", "trimmed"), ("LF", "finding", "thrush", "Thrush in the left fore"),
            ("RH", "finding", "corn", "Corn, right hind"),
        )
    ]  # fmt: skip
    asked = Flag(kind=FlagKind.HORSE, reason=asks_from("Grey mare next", ""), span=(place, place + 15))
    visit = Visit(
        horse="Bramble", date=date(2026, 3, 2), facts=facts, horse_match=HorseMatch.KNOWN, flags=[asked],
        notes="Grey mare next",
    )  # fmt: skip
    memo = Memo(path=str(path), sha256=hashlib.sha256(path.read_bytes()).hexdigest(), seconds=0.1)
    with Store.open(own_surroundings) as store:
        store.add_horses([RosterHorse(name="Bramble"), RosterHorse(name="Teasel")])
        store.keep(MemoRecord(memo=memo, transcript=TWO, visits=[visit]), Transcript(text=TWO), path)
    return own_surroundings


def standing(folder: Path) -> dict[str, list[str | float]]:
    """What stands of every horse."""
    with Store.open(folder) as store:
        visits = [store.visit(number) for number in store.memo(1).visit_ids]
        return {visit.horse.name: [kept.fact.value for kept in visit.facts] for visit in visits if visit.horse}


@pytest.mark.parametrize(
    ("keys", "lines", "said", "stands"),
    [
        ("h1", ("Teasel",), "From “Grey mare next” on it is Teasel: left fore: thrush, right hind: corn.",
         {"Bramble": ["trim"], "Teasel": ["thrush", "corn"]}),
        ("h3", ("Teasel",), "From “Corn, right hind.” on it is Teasel: right hind: corn.",
         {"Bramble": ["trim", "thrush"], "Teasel": ["corn"]}),
        ("11", (), "From “Grey mare next” on it is Teasel: left fore: thrush, right hind: corn.",
         {"Bramble": ["trim"], "Teasel": ["thrush", "corn"]}),
        ("w1", ("Juniper",), "From “Grey mare next” on it is Juniper, a new horse:",
         {"Bramble": ["trim"], "Juniper": ["thrush", "corn"]}),
        ("a", (), "Right: it is Bramble all through.", {"Bramble": ["trim", "thrush", "corn"]}),
        ("v", ("Teasel",), "This was Teasel.", {"Teasel": ["trim", "thrush", "corn"]}),
        ("h1u", ("Teasel",), "Taken back at Bramble; it is asked again.", {"Bramble": ["trim", "thrush", "corn"]}),
        ("h", ("Nobody",), "No horse called Nobody is in the store.", {"Bramble": ["trim", "thrush", "corn"]}),
        ("h1", ("Bramble",), "It stands at Bramble already; say that it is the same horse.",
         {"Bramble": ["trim", "thrush", "corn"]}),
        ("h7", ("Teasel",), "No such place; nothing is changed.", {"Bramble": ["trim", "thrush", "corn"]}),
        ("o", (), "This key says nothing here.", {"Bramble": ["trim", "thrush", "corn"]}),
    ],
)  # fmt: skip
def test_where_another_horse_came_in(
    keys: str, lines: tuple[str, ...], said: str, stands: dict[str, list[str]], lost: Path
) -> None:
    told = pressing(lost, keys, lines)
    assert "horse from “Grey mare next” on: Bramble" in told
    assert "that part left fore: thrush; right hind: corn" in told
    assert "a same horse all through  h this part is another horse's  m missed" in told
    assert max(map(len, told.partition("With which")[0].splitlines())) <= 80
    assert said in told
    assert standing(lost) == stands
