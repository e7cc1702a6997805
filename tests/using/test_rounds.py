"""A brief, the due list and the order list of an invented yard, in every word and number."""

from __future__ import annotations

import csv
import io
import json
from datetime import UTC, date, datetime, timedelta
from typing import TYPE_CHECKING, Any

import pytest
import vobject

from pipeline.errors import NotFoundError, SettingsError
from pipeline.keeping import Looking, Store
from pipeline.record import Fact, HorseMatch, Status, Visit
from pipeline.using.brief import brief, round_of
from pipeline.using.brief_text import brief_json, brief_lines
from pipeline.using.calendar import due_calendar
from pipeline.using.due import by_place, due_date, due_list
from pipeline.using.due_text import due_csv, due_json, due_lines
from pipeline.using.stock import stock
from pipeline.using.stock_text import stock_csv, stock_json, stock_lines

if TYPE_CHECKING:
    from collections.abc import Iterator

    from tests.using.conftest import Keep

JANUARY = date(2026, 1, 5)
WEEK = timedelta(weeks=1)
FRONTS = ("LF", "RF")


def fact(foot: str | None, slot: str, value: str | float, status: str = "present", **more: object) -> Fact:
    """One fact of the record."""
    return Fact.model_validate({"foot": foot, "slot": slot, "value": value, "status": status, **more})


def shod(size: str, kind: str, nails: float = 6.0) -> list[Fact]:
    """New shoes in front."""
    values: tuple[tuple[str, str | float], ...] = (
        ("work", "new_shoe"),
        ("shoe_size", size),
        ("shoe_type", kind),
        ("nails", nails),
        ("nail_size", "5"),
    )
    return [fact(foot, slot, value) for foot in FRONTS for slot, value in values]


def trimmed(*feet: str) -> list[Fact]:
    """Feet trimmed and left bare."""
    return [fact(foot, "work", "trim") for foot in feet]


def seen(horse: str, weeks: int, *facts: Fact) -> Visit:
    """A visit so many weeks after 5 January 2026."""
    day = JANUARY + weeks * WEEK
    return Visit(horse=horse, horse_match=HorseMatch.KNOWN, date=day, facts=list(facts))


AGAIN = fact(None, "next_visit_weeks", 6.0, "planned")
BRAMBLES = [
    seen(
        "Bramble", 0, *shod("0", "plain"), *trimmed("LH", "RH"), AGAIN,
        fact("LF", "finding", "corn", zone="medial_heel"),
        fact("LF", "tester", "moderate", zone="heel"),
        fact("LF", "toe_angle", 47.0),
        fact("LF", "shoe_type", "egg_bar", "planned"),
        fact("RH", "finding", "thrush"),
        fact(None, "manner", "dangerous"),
    ),
    seen("Bramble", 3, fact("RF", "shoe_state", "lost"), fact("RF", "work", "put_back")),
    seen(
        "Bramble", 7, *shod("0", "egg_bar"), *trimmed("LH", "RH"), AGAIN,
        fact("LF", "finding", "corn", zone="medial_heel"),
        fact("RH", "finding", "thrush", "resolved"),
        fact("LF", "tester", "moderate", zone="heel"),
    ),
    seen(
        "Bramble", 13, fact("LF", "work", "reset"), fact("RF", "work", "reset"), *trimmed("LH", "RH"), AGAIN,
        fact("LF", "finding", "corn", "suspected", zone="medial_heel", flagged=True, reasons=["an unsure word"]),
        fact("LF", "tester", "none", zone="heel"),
        fact("LF", "toe_angle", 50.0),
        fact("LF", "pad", "leather", "planned"),
        fact(None, "manner", "quiet"),
        fact(None, "vet", "referral", "planned"),
        fact("LH", "finding", "puncture"),
    ),
]  # fmt: skip
SORRELS = [seen("Sorrel", week, *trimmed("LF", "RF", "LH", "RH")) for week in (0, 5, 11)]
TEASELS = [seen("Teasel", 12, fact("LF", "finding", "flare"))]
TODAY = JANUARY + 21 * WEEK  # 1 June 2026


@pytest.fixture
def yard(empty: Store, keep_memo: Keep) -> Iterator[Looking]:
    """A look into a store with eight visits of three horses."""
    for number, visit in enumerate([*BRAMBLES, *SORRELS, *TEASELS]):
        keep_memo(empty, f"memo{number}.m4a", f"{visit.horse}, said something.", [visit])
    with Looking.open(empty.folder) as looking:
        yield looking


class TestBrief:
    """What to know of a horse before its visit."""

    def test_on_one_screen(self, yard: Looking) -> None:
        lines = brief_lines(brief(yard, yard.horse("bram"), TODAY))
        assert lines == [
            "Bramble  (A. Fern, River barn)",
            "Seen 6 Apr 2026, 8 weeks ago (visit 4, 4 in all); due 18 May 2026 (6 weeks",
            "said), 14 days overdue.",
            "On now    LF RF: reset; from before: size 0, egg bar, 6 nails, nail size 5",
            "          LH RH: bare (trim)",
            "Open      LH: puncture, new at the last visit",
            "          LF: (!) perhaps corn (medial heel), since 5 Jan 2026",
            "Planned   vet should look (6 Apr 2026): still to come",
            "          LF: leather pad (6 Apr 2026): still to come",
            "          LF: egg bar (5 Jan 2026): done 23 Feb 2026",
            "          6 weeks asked for last time, seen after 6",
            "Changed   LF: testers heel moderate to none: better; toe angle 47 to 50°",
            "Worked?   LF: plain to egg bar (planned, 23 Feb 2026): before corn 2 of 2;",
            "            testers heel moderate, heel moderate; after (!) perhaps corn 1 of 1;",
            "            testers heel none",
            "          RF: plain to egg bar (23 Feb 2026): before no finding said, 3 visits;",
            "            after no finding said, 1 visit",
            "Lost      1 in the last year; in all RF 1",
            "Manner    WARNING: dangerous 5 Jan 2026; quiet (6 Apr 2026)",
            "Caution   A puncture is recorded: it can reach deep structures, and tetanus",
            "            cover matters. Ask your vet; local rules apply.",
            "(!) 1 of the last visit not looked at yet. A record, not a diagnosis.",
        ]
        assert len(lines) <= 24
        assert max(map(len, lines)) <= 80

    def test_as_of_an_earlier_day(self, yard: Looking) -> None:
        told = brief(yard, yard.horse("Bramble"), JANUARY + 6 * WEEK)
        assert (told.visits, str(told.last), [one.fact.value for one in told.open_findings]) == (
            2, "2026-01-26", ["corn", "thrush"],
        )  # fmt: skip

    def test_for_programs(self, yard: Looking) -> None:
        values = json.loads(json.dumps(brief_json(brief(yard, yard.horse("Bramble"), TODAY))))
        assert (values["due"]["day"], values["overdue_days"], values["weeks_since"]) == ("2026-05-18", 14, 8.0)
        assert values["set_ups"]["LF"]["parts"]["shoe_type"][0]["fact"]["value"] == "egg_bar"
        assert [one["fact"]["flagged"] for one in values["open_findings"]] == [False, True]
        assert values["note"] == "A record, not a diagnosis."

    def test_what_the_horse_showed_at_the_last_visit(self, empty: Store, keep_memo: Keep) -> None:
        doubt: dict[str, Any] = {"flagged": True, "reasons": ["an unsure word"]}
        booted = [
            fact(foot, slot, value)
            for foot in FRONTS
            for slot, value in (("pulse", "bounding"), ("work", "removed"), ("shoe_type", "boot"))
        ]
        last = seen("Bramble", 6, *booted, fact("LF", "tester", "strong", zone="toe", **doubt),
                    fact("RF", "tester", "none"), fact("LH", "pulse", "normal"), fact(None, "lameness", 3.0),
                    fact("RF", "tester", "moderate", zone="toe"))  # fmt: skip
        keep_memo(empty, "0.m4a", "Bramble.", [seen("Bramble", 0, fact("RF", "tester", "mild", zone="toe"))])
        keep_memo(empty, "6.m4a", "Bramble.", [last])
        with Looking.open(empty.folder) as looking:
            told = brief(looking, looking.horse("Bramble"), TODAY)
        lines = brief_lines(told)
        at = lines.index("On now    LF RF: bare (removed), boot")
        assert lines[at + 1 : at + 5] == [
            "Signs     LF: digital pulse bounding, (!) hoof testers: strong (toe)",
            "          RF: digital pulse bounding",
            "          horse: lameness grade 3 of 5 (AAEP)",
            "Changed   RF: testers toe mild to moderate: worse",
        ]
        assert [one["value"] for one in json.loads(json.dumps(brief_json(told)))["signs"]] == [
            "bounding", "bounding", "strong", 3.0, "moderate",
        ]  # fmt: skip

    def test_a_horse_never_seen(self, empty: Store) -> None:
        with Looking.open(empty.folder) as looking:
            assert brief_lines(brief(looking, looking.horse("Teasel"), TODAY)) == [
                "Teasel",
                "Never seen before, as far as this book goes.",
                "A record, not a diagnosis.",
            ]

    def test_much_is_cut_to_a_screen_and_told_in_full_when_asked(self, empty: Store, keep_memo: Keep) -> None:
        findings = ("bruise", "corn", "crack", "flare", "thrush", "abscess", "canker", "keratoma")
        for week, kind in ((0, "plain"), (6, "egg_bar"), (12, "plain"), (18, "wide_web")):
            zones = {"LF": "medial_heel", "RF": "lateral_heel"}
            now = findings[week // 6 : week // 6 + 4]
            facts = [fact(foot, "finding", one, zone=zones[foot]) for foot in FRONTS for one in now]
            keep_memo(empty, f"w{week}.m4a", "Bramble.", [seen("Bramble", week, *shod("0", kind), *facts)])
        with Looking.open(empty.folder) as looking:
            told = brief(looking, looking.horse("Bramble"), TODAY)
        short, full = brief_lines(told), brief_lines(told, full=True)
        assert len(short) <= 24 < len(full)
        assert any("more (--full)" in line or "to be seen with --full" in line for line in short)
        assert sum("canker" in line for line in full) >= 1

    def test_what_is_doubtful_is_marked_wherever_it_stands(self, empty: Store, keep_memo: Keep) -> None:
        doubt: dict[str, Any] = {"flagged": True, "reasons": ["an unsure word"]}
        first = seen("Bramble", 0, *shod("0", "plain"), fact(None, "manner", "dangerous", **doubt))
        second = seen("Bramble", 6, *shod("0", "plain")[5:], fact("LF", "work", "trim", **doubt))
        third = seen("Bramble", 12, fact("LF", "shoe_state", "lost", **doubt))
        unclear = Visit(horse="Bram", horse_match=HorseMatch.UNCLEAR, date=JANUARY + 13 * WEEK)
        for number, one in enumerate((first, second, third, unclear)):
            keep_memo(empty, f"{number}.m4a", "Bramble.", [one])
        with Looking.open(empty.folder) as looking:
            lines = brief_lines(brief(looking, looking.horse("Bramble"), TODAY))
            assert due_lines(due_list(looking, TODAY, TODAY))[-1] == (
                "1 visit belongs to no horse yet (assign gives one): a horse may be due later."
            )
        assert "On now    LF: bare ((!) trim) (16 Feb 2026)" in lines
        assert "Worked?   LF: (!) plain to bare (16 Feb 2026): before no finding said, 2 visits;" in lines
        assert "Lost      1 in the last year; in all LF 1 ((!) 1 not looked at yet)" in lines
        assert "Manner    WARNING: (!) dangerous 5 Jan 2026; (!) dangerous (5 Jan 2026)" in lines
        assert " ".join(lines[-2:]) == (
            "(!) 1 of the last visit not looked at yet. (?) 1 visit heard under this name belongs to no horse yet. "
            "A record, not a diagnosis."
        )

    def test_the_round_of_a_day_that_was_worked_and_of_one_to_come(self, yard: Looking) -> None:
        worked = round_of(yard, JANUARY + 7 * WEEK)
        assert [(one.horse.name, str(one.last)) for one in worked] == [("Bramble", "2026-01-26")]
        assert [one.horse.name for one in round_of(yard, TODAY)] == ["Sorrel", "Bramble"]
        assert [one.horse.name for one in round_of(yard, TODAY, "river")] == ["Bramble"]
        with pytest.raises(NotFoundError, match="none is due by then"):
            round_of(yard, date(2026, 1, 8))


class TestDue:
    """Said, own rhythm, or unknown."""

    @pytest.mark.parametrize(
        ("weeks", "gaps", "expected"),
        [
            (6.0, [28], ("2026-02-16", "said", 6.0)),
            (4.5, [], ("2026-02-06", "said", 4.5)),
            (None, [], (None, "unknown", None)),
            (None, [35], ("2026-02-09", "rhythm", 5.0)),
            (None, [35, 49], ("2026-02-09", "rhythm", 5.0)),
            (None, [35, 49, 42], ("2026-02-16", "rhythm", 6.0)),
            (None, [10, 10, 10, 42, 42, 42, 42, 42, 42], ("2026-02-16", "rhythm", 6.0)),
        ],
    )
    def test_when(self, weeks: float | None, gaps: list[int], expected: tuple[str | None, str, float | None]) -> None:
        days = [JANUARY]
        for gap in reversed(gaps):
            days.insert(0, days[0] - timedelta(days=gap))
        due = due_date(JANUARY, weeks, False, days)
        assert (due.day and str(due.day), due.basis, due.weeks) == expected

    def test_by_place_overdue_first_with_what_was_left_out(self, yard: Looking) -> None:
        assert due_lines(due_list(yard, TODAY, TODAY + WEEK)) == [
            "due                       horse    last seen   why then",
            "Hill yard",
            "2026-04-27  35 days over  Sorrel   2026-03-23  own rhythm, 5 weeks over 2 gaps",
            "River barn",
            "2026-05-18  14 days over  Bramble  2026-04-06  6 weeks said",
            "1 horse was seen once, with nothing said of the next visit: no date known.",
        ]

    def test_until_and_place_and_long_gone(self, yard: Looking) -> None:
        early = JANUARY + 14 * WEEK
        assert [one.horse.name for one in due_list(yard, early, early + 2 * WEEK).horses] == ["Sorrel"]
        assert [one.horse.name for one in due_list(yard, TODAY, TODAY, "RIVER").horses] == ["Bramble"]
        late = TODAY + 60 * WEEK
        gone = due_list(yard, late, late)
        assert (gone.horses, gone.long_gone) == ([], 3)
        assert due_lines(gone)[-1] == "3 horses were not seen for 52 weeks: left out (--all lists them)."
        assert [one.horse.name for one in due_list(yard, late, late, long_gone_too=True).horses] == [
            "Sorrel",
            "Bramble",
        ]
        with pytest.raises(SettingsError, match="still to come"):
            due_list(yard, TODAY, TODAY - WEEK)

    def test_an_interval_that_nobody_has_looked_at_is_marked(self, empty: Store, keep_memo: Keep) -> None:
        doubt = fact(None, "next_visit_weeks", 6.0, "planned", flagged=True, reasons=["six or sixteen"])
        keep_memo(empty, "a.m4a", "Bramble.", [seen("Bramble", 0, doubt)])
        with Looking.open(empty.folder) as looking:
            found = due_list(looking, TODAY, TODAY)
        assert due_lines(found)[2].endswith("(!) 6 weeks said")
        assert due_json(found)["horses"] == [
            {
                "due": "2026-02-16", "overdue_days": 105, "basis": "said", "weeks": 6.0, "gaps": 0,
                "not_looked_at": True, "horse": "Bramble", "owner": "A. Fern", "place": "River barn",
                "last_visit": "2026-01-05", "visit": 1,
            }
        ]  # fmt: skip

    def test_rows(self, yard: Looking) -> None:
        rows = list(csv.DictReader(io.StringIO(due_csv(due_list(yard, TODAY, TODAY)))))
        assert [(row["horse"], row["due"], row["basis"], row["overdue_days"]) for row in rows] == [
            ("Sorrel", "2026-04-27", "rhythm", "35"),
            ("Bramble", "2026-05-18", "said", "14"),
        ]

    def test_a_horse_without_a_place_comes_last(self, yard: Looking) -> None:
        found = due_list(yard, TODAY, TODAY)
        nowhere = [one for one in found.horses if one.horse.name == "Nobody"]
        assert list(by_place([*nowhere, *found.horses])) == ["Hill yard", "River barn"]


class TestCalendar:
    """RFC 5545, read back by another library."""

    STAMP = datetime(2026, 6, 1, 18, 0, tzinfo=UTC)

    def events(self, yard: Looking, until: date, owners: bool = False) -> dict[str, dict[str, str]]:
        """Summary to the values of every event."""
        data = due_calendar(due_list(yard, TODAY, until), self.STAMP, owners)
        assert data.endswith(b"END:VCALENDAR\r\n")
        assert all(len(line) <= 75 for line in data.split(b"\r\n"))
        calendar = vobject.readOne(data.decode("utf-8"))
        return {
            event.summary.value: {
                "uid": event.uid.value,
                "start": str(event.dtstart.value),
                "end": str(event.dtend.value),
                "kind": type(event.dtstart.value).__name__,
                "place": event.location.value,
                "why": event.description.value,
                "stamp": event.dtstamp.value.isoformat(),
            }
            for event in calendar.vevent_list
        }

    def test_all_day_events_that_another_library_reads(self, yard: Looking) -> None:
        found = self.events(yard, TODAY)
        assert list(found) == ["Sorrel is due", "Bramble is due"]
        bramble = found["Bramble is due"]
        assert (bramble["kind"], bramble["start"], bramble["end"]) == ("date", "2026-06-01", "2026-06-02")
        assert (bramble["place"], bramble["stamp"]) == ("River barn", "2026-06-01T18:00:00+00:00")
        assert bramble["why"] == "6 weeks were said on 6 Apr 2026.\nIt was due on 18 May 2026."

    def test_a_horse_keeps_its_event(self, yard: Looking) -> None:
        first, later = self.events(yard, TODAY), self.events(yard, TODAY + 4 * WEEK, owners=True)
        assert {name: event["uid"] for name, event in first.items()} == {
            name: event["uid"] for name, event in later.items()
        }
        assert len({event["uid"] for event in first.values()}) == 2

    def test_owners_only_when_asked_and_what_was_said_never(self, yard: Looking) -> None:
        without = due_calendar(due_list(yard, TODAY, TODAY), self.STAMP)
        assert b"Fern" not in without
        assert b"said something" not in without
        assert "Owner: A. Fern" in self.events(yard, TODAY, owners=True)["Bramble is due"]["why"]


class TestStock:
    """Used, and foreseen."""

    def test_the_order_list(self, yard: Looking) -> None:
        assert stock_lines(stock(yard, JANUARY, TODAY, 6)) == [
            "Used from 5 Jan 2026 to 1 Jun 2026",
            "kind       what             fronts  hinds  all  before  unsaid  (!)",
            "shoe       size 0, egg bar       2      -    2       -       -    -",
            "shoe       size 0, plain         2      -    2       -       -    -",
            "nail       size 5               42      -   42      18       -    -",
            "bare foot  trim                  6     12   18       -       -    -",
            "",
            "Foreseen to 13 Jul 2026, 4 visits due, if every shod foot gets a new shoe",
            "kind       what             fronts  hinds  all  before  unsaid  (!)",
            "shoe       size 0, egg bar       4      -    4       4       -    -",
            "nail       size 5               24      -   24      24       -    -",
            "pad        leather               2      -    2       -       -    -",
            "bare foot  trim                  4      8   12       -       -    -",
            "before: size, type or number taken from an earlier visit.",
        ]

    def test_rows_and_values(self, yard: Looking) -> None:
        found = stock(yard, JANUARY, TODAY, 6)
        rows = list(csv.DictReader(io.StringIO(stock_csv(found))))
        assert [(row["list"], row["kind"], row["what"], row["number"]) for row in rows][:2] == [
            ("used", "shoe", "size 0, egg bar", "2"),
            ("used", "shoe", "size 0, plain", "2"),
        ]
        values = json.loads(json.dumps(stock_json(found)))
        assert values["foreseen"][0]["fronts"] == 4

    def test_only_the_time_and_the_place_asked_for(self, yard: Looking) -> None:
        found = stock(yard, JANUARY + 8 * WEEK, TODAY, 0, "Hill")
        assert [(line.kind, line.what, line.number) for line in found.used] == [("bare foot", "trim", 4)]
        assert [(line.what, line.fronts, line.hinds) for line in found.foreseen] == [("trim", 2, 2)]
        with pytest.raises(SettingsError, match="still to come"):
            stock(yard, TODAY + WEEK, TODAY, 6)

    def test_a_shoe_not_said_to_be_new_is_counted_apart(self, empty: Store, keep_memo: Keep) -> None:
        doubt = fact("LF", "shoe_size", "00", flagged=True, reasons=["double could be triple"])
        keep_memo(empty, "a.m4a", "Bramble.", [seen("Bramble", 0, doubt, fact("LF", "nails", 6.0))])
        with Looking.open(empty.folder) as looking:
            shoe, nails = stock(looking, JANUARY, JANUARY, 6).used
        assert (shoe.what, shoe.number, shoe.unsure, shoe.flagged) == ("size 00, type not said", 1, 1, 1)
        assert (nails.what, nails.number) == ("size not said", 6)

    def test_a_planned_trim_needs_no_shoe(self, empty: Store, keep_memo: Keep) -> None:
        plan = [fact(foot, "work", "trim", Status.PLANNED) for foot in FRONTS]
        keep_memo(empty, "a.m4a", "Bramble.", [seen("Bramble", 0, *shod("0", "plain"), AGAIN, *plan)])
        with Looking.open(empty.folder) as looking:
            found = stock(looking, JANUARY, JANUARY + 6 * WEEK, 0)
        assert [(line.kind, line.number) for line in found.foreseen] == [("bare foot", 2)]
