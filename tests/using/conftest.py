"""An invented yard with a few visits in its store."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator
from datetime import date, datetime
from pathlib import Path

import pytest

from pipeline.keeping import Store
from pipeline.record import (
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    Memo,
    MemoRecord,
    RosterHorse,
    Severity,
    Status,
    Transcript,
    Visit,
)
from pipeline.vocabulary import Entry, Vocabulary

ROSTER = [
    RosterHorse(name="Bramble", owner="A. Fern", place="River barn", also_called=["Bram"]),
    RosterHorse(name="Sorrel", owner="C. Lind", place="Hill yard"),
    RosterHorse(name="Teasel"),
]
MARCH = "Bramble. No thrush anywhere. Seedy toe in the left hind, mild. Size double aught."
APRIL = "Bramble. Thrush in the right fore now, and perhaps an abscess. Then Sorrel, sound."


def quoted(text: str, quote: str) -> dict[str, object]:
    """Quote and span of a fact."""
    start = text.index(quote)
    return {"quote": quote, "span": (start, start + len(quote))}


def march_visit() -> Visit:
    """Bramble in March: thrush denied, seedy toe found, a size in doubt."""
    denied = quoted(MARCH, "No thrush anywhere")
    return Visit(
        horse="Bramble",
        horse_match=HorseMatch.KNOWN,
        date=date(2026, 3, 2),
        facts=[
            Fact.model_validate({"foot": "LF", "slot": "finding", "value": "thrush", "status": "absent", **denied}),
            Fact(
                foot="LH", slot="finding", value="white_line_disease", severity=Severity.MILD,
                quote="Seedy toe in the left hind, mild", span=(29, 61), start=4.5, end=6.0,
            ),
            Fact(
                foot="LH", slot="shoe_size", value="00", flagged=True, reasons=["double could be triple"],
                quote="Size double aught", start=75.0, end=76.0,
            ),
            Fact(foot=None, slot="next_visit_weeks", value=6, status=Status.PLANNED),
        ],
        flags=[Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: hippo sandal", quote="hippo sandal")],
        notes="=SUM(A1) he said, *twice*, about his hat",
    )  # fmt: skip


def april_visits() -> list[Visit]:
    """Bramble and Sorrel in one memo in April."""
    bramble = [
        Fact(foot="RF", slot="finding", value="thrush", zone="sulcus", quote="Thrush in the right fore"),
        Fact(foot="RF", slot="finding", value="abscess", status=Status.SUSPECTED, quote="perhaps an abscess"),
        Fact(foot="LF", slot="finding", value="laminitis", quote="laminitis"),
        Fact(foot="LF", slot="nails", value=6),
        Fact(foot="LF", slot="toe_length", value=88.9),
    ]
    sorrel = [Fact(foot=None, slot="gait", value="sound", quote="sound")]
    day = date(2026, 4, 13)
    return [
        Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=day, facts=bramble),
        Visit(horse="Sorrel", horse_match=HorseMatch.KNOWN, date=day, facts=sorrel, notes="Keeps kicking."),
    ]


def keep(store: Store, folder: Path, name: str, text: str, visits: list[Visit]) -> list[int]:
    """Keep one invented memo."""
    path = folder / name
    path.write_bytes(name.encode() * 50)
    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    memo = Memo(
        path=str(path), sha256=digest, seconds=81.4, recorded_at=datetime(2026, 3, 2, 14, 5), recorded_from="file name"
    )
    return store.keep(MemoRecord(memo=memo, transcript=text, visits=visits), Transcript(text=text), path)


Keep = Callable[[Store, str, str, list[Visit]], list[int]]


@pytest.fixture
def keep_memo(tmp_path: Path) -> Keep:
    """Keep one more invented memo: ``keep_memo(store, "may.m4a", text, visits)``."""

    def keeping(store: Store, name: str, text: str, visits: list[Visit]) -> list[int]:
        return keep(store, tmp_path, name, text, visits)

    return keeping


@pytest.fixture
def empty(tmp_path: Path) -> Iterator[Store]:
    """A store with a roster and no visit."""
    with Store.open(tmp_path / "book") as opened:
        opened.add_horses(ROSTER)
        yield opened


@pytest.fixture
def store(empty: Store, tmp_path: Path) -> Store:
    """A store with three visits: 1 Bramble in March, 2 and 3 Bramble and Sorrel in April."""
    keep(empty, tmp_path, "march.m4a", MARCH, [march_visit()])
    keep(empty, tmp_path, "april.m4a", APRIL, april_visits())
    return empty


@pytest.fixture
def vocabulary() -> Vocabulary:
    """A few words of the trade."""

    def entry(canonical: str, *spoken: str) -> Entry:
        return Entry(canonical, spoken, (), "common practice, no source", "findings.csv", 2)

    findings = (
        entry("white_line_disease", "seedy toe", "white line disease"),
        entry("thrush", "thrush", "thrushy"),
    )
    return Vocabulary({"findings": findings, "zones": (entry("sulcus", "central sulcus"),)})
