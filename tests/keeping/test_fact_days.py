"""``fact_days`` holds what stands, and nothing else, whatever changes beside it and whichever program changes it."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from pipeline.keeping import Looking, Store, Wanted
from pipeline.record import Fact, HorseMatch, Status, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

READ_AGAIN = """
INSERT INTO changes (id, at, who, why, kind, memo) VALUES (1, '2026-03-09T18:00:00+00:00', 'Ann', '', 'reread', 1);
INSERT INTO readings (memo, number, hearing, made_at, change) VALUES (1, 2, 1, '2026-03-09T18:00:00+00:00', 1);
INSERT INTO facts (visit, position, foot, slot, value, status, confidence, flagged, reasons, quote, span_start,
    span_end, match, rules, reading)
VALUES (1, 3, 'RH', 'finding', 'canker', 'present', 0.9, 0, '[]', '', 0, 0, 'exact', '[]', 2);
UPDATE memos SET reading = 2 WHERE id = 1;
"""
THRUSH = ("finding", "thrush", 202603, 2, 1, 1, "present", "LF", "sulcus", 1, 0)
NAILS = ("nails", 6.0, 202603, 2, 1, 2, "present", "LF", None, 1, 0)
CORN = ("finding", "corn", 202603, 2, 1, 3, "suspected", None, None, 1, 1)


@pytest.fixture
def kept(yard: Yard, store: Store) -> Store:
    """One visit with three facts."""
    facts = [
        Fact(foot="LF", slot="finding", value="thrush", zone="sulcus"),
        Fact(foot="LF", slot="nails", value=6.0),
        Fact(foot=None, slot="finding", value="corn", status=Status.SUSPECTED, flagged=True, reasons=["no foot"]),
    ]
    visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=facts)
    yard.keep(store, visit)
    return store


def days(store: Store) -> list[tuple[object, ...]]:
    """The rows, in the order of the facts."""
    return list(store._database.execute("SELECT * FROM fact_days ORDER BY fact").fetchall())


def test_a_fact_that_is_kept_has_its_row(kept: Store) -> None:
    assert days(kept) == [THRUSH, NAILS, CORN]


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ("UPDATE facts SET stands = 0 WHERE id = 2", [THRUSH, CORN]),
        ("UPDATE facts SET stands = 0; UPDATE facts SET stands = 1 WHERE id = 2", [NAILS]),
        ("UPDATE visits SET stands = 0", []),
        ("UPDATE visits SET stands = 0; UPDATE visits SET stands = 1", [THRUSH, NAILS, CORN]),
        ("UPDATE facts SET foot = 'RF', zone = NULL WHERE id = 1", [(*THRUSH[:7], "RF", None, 1, 0), NAILS, CORN]),
        ("UPDATE facts SET flagged = 0 WHERE id = 3", [THRUSH, NAILS, (*CORN[:10], 0)]),
        ("UPDATE facts SET status = 'absent' WHERE id = 3", [THRUSH, NAILS, (*CORN[:6], "absent", *CORN[7:])]),
        ("UPDATE facts SET value = 7.0 WHERE id = 2", [THRUSH, ("nails", 7.0, *NAILS[2:]), CORN]),
        ("UPDATE visits SET horse = NULL", [(*row[:9], None, row[10]) for row in (THRUSH, NAILS, CORN)]),
        (
            "UPDATE visits SET date = '2025-12-31', horse = NULL",
            [(*row[:2], 202512, 31, *row[4:9], None, row[10]) for row in (THRUSH, NAILS, CORN)],
        ),
        (READ_AGAIN, [("finding", "canker", 202603, 2, 1, 4, "present", "RH", None, 1, 0)]),
        (f"{READ_AGAIN} UPDATE memos SET reading = 1 WHERE id = 1;", [THRUSH, NAILS, CORN]),
    ],
)
def test_a_change_by_any_program_is_followed(kept: Store, change: str, expected: list[tuple[object, ...]]) -> None:
    kept._database.executescript(change)
    assert days(kept) == expected
    assert [problem for problem in kept.problems() if "fact_days" in problem] == []


def test_what_is_removed_for_good_leaves_no_row(yard: Yard, kept: Store) -> None:
    other = Fact(foot="RH", slot="finding", value="thrush")
    yard.keep(kept, Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 4, 1), facts=[other]))
    kept.forget(kept.plan_forgetting_memo(1))
    assert [row[5] for row in days(kept)] == [4]
    assert [problem for problem in kept.problems() if "fact_days" in problem] == []


def test_a_horse_of_no_roster_is_counted_by_the_name_that_was_heard(yard: Yard, kept: Store) -> None:
    facts = [Fact(foot=foot, slot="finding", value="thrush") for foot in ("LF", "RF")]
    for day in (date(2026, 3, 5), date(2026, 4, 6)):
        yard.keep(kept, Visit(horse="Zephyr", horse_match=HorseMatch.UNCLEAR, date=day, facts=facts))
    with Looking.open(yard.folder) as looking:
        wanted = Wanted(values=(("finding", "thrush"),), statuses=("present",))
        by_horse = [tuple(count) for count in looking.count(wanted, "horse")]
        assert by_horse == [("Zephyr (?)", 4, 0, 2, 0, 0), ("Bramble, River barn", 1, 0, 1, 1, 0)]
        by_month = [tuple(count) for count in looking.count(wanted._replace(since=date(2026, 3, 3)), "month")]
        assert by_month == [("2026-03", 2, 0, 1, 0, 0), ("2026-04", 2, 0, 1, 0, 0)]


@pytest.mark.parametrize(
    ("wanted", "facts"),
    [
        (Wanted(horse="Bramble"), 3),
        (Wanted(words=("sulcus",)), 1),
        (Wanted(slots=("nails",), flagged=False), 1),
        (Wanted(values=(("finding", "thrush"), ("nails", 6.0))), 2),
        (Wanted(feet=(None,)), 1),
        (Wanted(until=date(2026, 3, 1)), 0),
        (Wanted(owner="fern", place="river"), 3),
    ],
    ids=str,
)
def test_whatever_is_wanted_is_counted_and_found_alike(yard: Yard, kept: Store, wanted: Wanted, facts: int) -> None:
    with Looking.open(yard.folder) as looking:
        assert sum(count.facts for count in looking.count(wanted, "month")) == facts
        assert len(looking.search(wanted).facts) == facts
