"""One visit on a page of 80 columns: nothing in doubt looks sure."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Severity, Status, Visit
from pipeline.using.show import visit_json, visit_text
from pipeline.using.wording import clock, fact_words, harmless

if TYPE_CHECKING:
    from tests.using.conftest import Keep


@pytest.fixture
def page(store: Store) -> str:
    """Bramble in March."""
    return visit_text(store.visit(1))


def lines_with(page: str, word: str) -> list[str]:
    """The lines of the page that hold a word, each with single blanks."""
    return [" ".join(line.split()) for line in page.splitlines() if word in line]


def test_the_page_says_whose_visit_and_when(page: str) -> None:
    assert page.splitlines()[:2] == ["Bramble  Monday 2 March 2026  visit 1", "A. Fern, River barn"]


def test_the_page_fits_80_columns(store: Store) -> None:
    assert max(len(line) for number in (1, 2, 3) for line in visit_text(store.visit(number)).splitlines()) <= 80


def test_a_denied_finding_reads_as_denied(page: str) -> None:
    assert lines_with(page, "thrush") == ["left fore no thrush"]


def test_a_doubtful_fact_has_a_sign_and_its_reason_and_place(page: str) -> None:
    size, reason = lines_with(page, "shoe size 00")
    assert "(!) shoe size 00" in size
    assert reason.startswith("left hind: shoe size 00: double could be triple (heard at 1:15: “Size double")


def test_a_doubt_that_a_fact_bears_is_told_once(empty: Store, keep_memo: Keep) -> None:
    bare = "The foot was left bare, yet a shoe is described on LF."
    fact = Fact(foot="LF", slot="shoe_size", value="2", flagged=True, reasons=[bare], quote="size two")
    flags = [
        Flag(kind=FlagKind.CONTRADICTION, reason=bare, quote="size two"),
        Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: pads", quote="pads"),
        Flag(kind=FlagKind.CONTRADICTION, reason="Two say the same of RF.", quote="pads"),
    ]
    known = HorseMatch.KNOWN
    visit = Visit(horse="Bramble", horse_match=known, date=date(2026, 3, 2), facts=[fact], flags=flags)
    (number,) = keep_memo(empty, "x.m4a", "Bramble, size two, pads.", [visit])
    told = " ".join(visit_text(empty.visit(number)).split())
    assert told.count(bare) == 1
    assert "left fore: shoe size 2: The foot was left bare" in told
    assert "Not understood: pads (heard: “pads”) Two say the same of RF. (heard: “pads”)" in told


def test_plan_notes_flags_and_memo_are_on_the_page(page: str) -> None:
    assert lines_with(page, "next visit") == ["next visit in 6 weeks"]
    assert lines_with(page, "his hat") == ["=SUM(A1) he said, *twice*, about his hat"]
    assert lines_with(page, "Not understood") == ["Not understood: hippo sandal (heard: “hippo sandal”)"]
    assert lines_with(page, "march.m4a") == ["march.m4a, 1:21 long, recorded 2026-03-02 14:05 (by file name)"]


def test_a_caution_is_on_the_page_of_its_visit_alone(store: Store) -> None:
    with_laminitis, without = visit_text(store.visit(2)), visit_text(store.visit(3))
    assert "Cautions" in with_laminitis
    assert "Cautions" not in without


def test_an_unassigned_visit_never_bears_a_sure_name(empty: Store, keep_memo: Keep) -> None:
    visit = Visit(horse="Bra\x1b[31mmble\u202e", horse_match=HorseMatch.UNCLEAR, date=date(2026, 3, 2))
    (number,) = keep_memo(empty, "x.m4a", "Mumble.", [visit])
    page = visit_text(empty.visit(number))
    assert page.startswith("Unknown horse (heard: Bra\ufffd[31mmble)  Monday 2 March 2026")
    assert "\x1b" not in page
    assert "Nothing of this visit was understood as a fact." in page


def test_the_json_is_the_contracts_visit_with_its_memo(store: Store) -> None:
    kept = store.visit(1)
    data = json.loads(json.dumps(visit_json(kept)))
    printed = {name for name, field in Visit.model_fields.items() if not field.exclude}
    assert Visit.model_validate({name: data[name] for name in printed}) == kept.visit
    assert data["id"] == 1
    assert data["roster"]["owner"] == "A. Fern"
    assert data["memo"]["sha256"] == kept.memo.record.memo.sha256
    assert Path(data["original"]).read_bytes() == b"march.m4a" * 50


@pytest.mark.parametrize(
    ("fact", "words"),
    [
        (
            Fact(foot="LF", slot="finding", value="thrush", zone="sulcus", severity=Severity.MILD),
            "thrush (sulcus, mild)",
        ),
        (Fact(foot="LF", slot="finding", value="thrush", status=Status.ABSENT), "no thrush"),
        (Fact(foot="LF", slot="finding", value="corn", status=Status.RESOLVED), "corn: gone now"),
        (Fact(foot="LF", slot="finding", value="corn", status=Status.HISTORY), "corn: at an earlier time"),
        (Fact(foot="LF", slot="work", value="new_shoe", status=Status.PLANNED), "new shoe: planned"),
        (Fact(foot="LF", slot="tester", value="none", zone="toe"), "hoof testers: none (toe)"),
        (Fact(foot="LF", slot="toe_length", value=88.9), "toe length 88.9 mm"),
        (Fact(foot="LF", slot="toe_angle", value=52), "toe angle 52°"),
        (Fact(foot="LF", slot="wedge", value=3), "wedge 3°"),
        (Fact(foot="LF", slot="nail_size", value="5 slim"), "nail size 5 slim"),
        (Fact(foot="LF", slot="traction", value="road_nails"), "traction road nails"),
        (Fact(foot=None, slot="vet", value="referral", status=Status.PLANNED), "vet should look"),
        (Fact(foot=None, slot="vet", value="referral", status=Status.ABSENT), "no need for the vet"),
        (Fact(foot=None, slot="lameness", value=2), "lameness grade 2 of 5 (AAEP)"),
        (Fact(foot="LF", slot="nails", value=1), "1 nail"),
        (Fact(foot="LF", slot="nails", value=6), "6 nails"),
        (Fact(foot=None, slot="next_visit_weeks", value=1, status=Status.PLANNED), "next visit in 1 week"),
        (Fact(foot=None, slot="next_visit_weeks", value=6.5, status=Status.PLANNED), "next visit in 6.5 weeks"),
    ],
)
def test_a_fact_in_words(fact: Fact, words: str) -> None:
    assert fact_words(fact) == words


def test_a_place_in_the_memo_reads_as_a_clock() -> None:
    assert [clock(seconds) for seconds in (0.0, 75.4, 600.0)] == ["0:00", "1:15", "10:00"]


def test_text_for_a_screen_keeps_its_lines() -> None:
    assert harmless("a\nb\tc\x07\u2066d") == "a\nb\tc\ufffdd"
