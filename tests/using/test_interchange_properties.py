"""Whatever a record says, it comes back to the byte; whatever a file holds, it is taken whole or refused."""

from __future__ import annotations

import json
import tempfile
from datetime import date
from pathlib import Path
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pipeline.errors import RecordError
from pipeline.keeping import Store
from pipeline.record import FEET, HORSE_SLOTS, NUMBER_SLOTS, WORDED_SLOTS, ZONES, HorseMatch, Severity, Status
from pipeline.using.export import Request, choice_of, export_all, export_horse
from pipeline.using.interchange import take_in

WHOLE = Request("json", choice_of(date(2026, 5, 12)))
TEXTS = st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=40)
SECONDS = st.none() | st.floats(0, 3600)
CALM = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])


@st.composite
def facts(draw: st.DrawFn) -> dict[str, Any]:
    """A fact of any slot as JSON values."""
    slot = draw(st.sampled_from(sorted({*WORDED_SLOTS, *NUMBER_SLOTS})))
    value = draw(st.sampled_from(WORDED_SLOTS[slot]) if slot in WORDED_SLOTS else st.floats(*NUMBER_SLOTS[slot]))
    start = draw(st.integers(0, 1000))
    return {
        "foot": None if slot in HORSE_SLOTS else draw(st.sampled_from([*FEET, None])),
        "slot": slot,
        "value": value,
        "zone": draw(st.none() | st.sampled_from(ZONES)),
        "status": draw(st.sampled_from([status.value for status in Status])),
        "severity": draw(st.none() | st.sampled_from([severity.value for severity in Severity])),
        "confidence": draw(st.floats(0, 1)),
        "flagged": draw(st.booleans()),
        "reasons": draw(st.lists(TEXTS, max_size=2)),
        "quote": draw(TEXTS),
        "start": draw(SECONDS),
        "end": draw(SECONDS),
        "span": [start, start + draw(st.integers(0, 100))],
    }


@st.composite
def records(draw: st.DrawFn) -> dict[str, Any]:
    """A record of a few horses and memos as JSON values."""
    names = draw(st.lists(TEXTS.filter(lambda text: text.strip() != ""), max_size=3, unique_by=lambda t: t.casefold()))
    horses = [
        {"name": f"{number} {name}", "owner": draw(st.none() | TEXTS), "place": draw(st.none() | TEXTS)}
        for number, name in enumerate(names)
    ]
    places = [None, *range(len(horses))]
    memos = []
    for number in range(draw(st.integers(0, 3))):
        visits = [
            {
                "horse": None,
                "horse_match": draw(st.sampled_from([match.value for match in HorseMatch])),
                "date": str(draw(st.dates(date(2000, 1, 1), date(2099, 12, 31)))),
                "facts": draw(st.lists(facts(), max_size=4)),
                "notes": draw(TEXTS),
                "of_horse": draw(st.sampled_from(places)),
                "position": position,
                "heard_as": draw(st.none() | TEXTS),
            }
            for position in range(draw(st.integers(1, 3)))
        ]
        memos.append(
            {
                "memo": {"path": "a.m4a", "sha256": f"{number}" * 64, "seconds": draw(SECONDS)},
                "transcript": draw(TEXTS),
                "visits": visits,
                "kept_at": "2026-05-12T10:00:00Z",
            }
        )
    return {
        "format": "clinchbook-record",
        "version": 1,
        "exported_on": "2026-05-12",
        "clinchbook": "0",
        "note": "",
        "horses": horses,
        "memos": memos,
    }


def taken(data: bytes, folder: Path, name: str) -> bytes:
    """What a new store exports after it took in ``data``."""
    path = folder / f"{name}.json"
    path.write_bytes(data)
    with Store.open(folder / name) as store:
        take_in(store, path)
        take_in(store, path)  # twice is once
        return export_all(store, WHOLE)


def refusal(store: Store, path: Path) -> str | None:
    """The sentence with which a file is refused, None when it is taken in."""
    try:
        take_in(store, path)
    except RecordError as error:
        return str(error)
    return None


@CALM
@given(records())
def test_what_was_taken_in_goes_out_and_in_and_out_the_same(record: dict[str, Any]) -> None:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        first = taken(json.dumps(record).encode("utf-8"), folder, "first")
        assert taken(first, folder, "second") == first
        given_facts = [len(visit["facts"]) for memo in record["memos"] for visit in memo["visits"]]
        kept_facts = [len(visit["facts"]) for memo in json.loads(first)["memos"] for visit in memo["visits"]]
        assert sorted(kept_facts) == sorted(given_facts)


@settings(CALM, max_examples=60)
@given(st.data())
def test_a_damaged_file_is_taken_whole_or_refused(store: Store, data: st.DataObject) -> None:
    record = bytearray(export_horse(store, "Bramble", WHOLE))
    for _ in range(data.draw(st.integers(1, 4))):
        place = data.draw(st.integers(0, len(record) - 1))
        record[place : place + data.draw(st.integers(0, 5))] = data.draw(st.binary(max_size=5))
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "damaged.json"
        path.write_bytes(bytes(record))
        with Store.open(Path(name) / "other") as other:
            refused = refusal(other, path)
            assert other.counts()["memos"] == (2 if refused is None else 0)
            assert refused is None or ("\n" not in refused and other.counts()["horses"] == 0)
            assert other.problems() == []
