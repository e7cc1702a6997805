"""The days of the store: in order, some at a time, with what is doubted on each."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.keeping.days import DayOfVisits
from pipeline.record import Fact, HorseMatch, Memo, MemoRecord, Transcript, Visit

FIRST, SECOND, THIRD = date(2026, 3, 2), date(2026, 4, 13), date(2026, 5, 12)


def keep(store: Store, folder: Path, day: date, horse: str | None, flagged: int) -> int:
    """Keep a visit with some flagged facts and one that is not; returns its number."""
    path = folder / f"{day}-{horse}.wav"
    path.write_bytes(path.name.encode())
    facts = [
        Fact(
            foot="LF", slot="nails", value=number + 1, flagged=number < flagged, reasons=["doubt"] * (number < flagged)
        )
        for number in range(flagged + 1)
    ]
    match = HorseMatch.NEW if horse else HorseMatch.UNCLEAR
    visit = Visit(horse=horse, horse_match=match, date=day, facts=facts)
    memo = Memo(path=str(path), sha256=hashlib.sha256(path.read_bytes()).hexdigest(), seconds=1.0)
    return store.keep(MemoRecord(memo=memo, transcript="said", visits=[visit]), Transcript(text="said"), path)[0]


@pytest.fixture
def three_days(tmp_path: Path) -> Iterator[Store]:
    """A store of three days, kept out of order."""
    with Store.open(tmp_path / "store") as store:
        keep(store, tmp_path, SECOND, "Bramble", 2)
        keep(store, tmp_path, THIRD, None, 0)
        keep(store, tmp_path, FIRST, "Sorrel", 1)
        keep(store, tmp_path, SECOND, "Teasel", 1)
        yield store


def test_days_come_newest_first_with_their_counts(three_days: Store) -> None:
    assert three_days.days(9) == [
        DayOfVisits(THIRD, visits=1, nameless=1, flagged=0),
        DayOfVisits(SECOND, visits=2, nameless=0, flagged=3),
        DayOfVisits(FIRST, visits=1, nameless=0, flagged=1),
    ]
    assert [one.day for one in three_days.days(1)] == [THIRD]


def test_the_days_beside_a_day(three_days: Store) -> None:
    assert [one.day for one in three_days.days(1, before=THIRD)] == [SECOND]
    assert [one.day for one in three_days.days(1, after=FIRST)] == [SECOND]
    assert three_days.days(1, before=FIRST) == []
    assert three_days.days(1, after=THIRD) == []
    assert [one.day for one in three_days.days(9, before=THIRD, after=FIRST)] == [SECOND]


def test_what_a_person_decided_is_doubted_no_more(three_days: Store) -> None:
    visit = three_days.visit(1)
    three_days.accept(visit.fact_ids[0], seen=visit.revision)
    visit = three_days.visit(1)
    three_days.drop(visit.fact_ids[1], seen=visit.revision)
    assert three_days.days(1, before=THIRD)[0].flagged == 1


def test_a_store_without_a_visit_has_no_days(tmp_path: Path) -> None:
    with Store.open(tmp_path / "store") as store:
        assert store.days(3) == []
