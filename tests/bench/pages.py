"""How long a page takes in a small store and in a large one: ``python -m tests.bench.pages --visits 20 20000``.

Eight visits a day, seven facts each, a horse every sixth week. The visits of the last day wait for the review, all
others have been reviewed; with ``--backlog`` every visit of the store still has a doubtful field. Times are medians in
milliseconds of the application alone, without a browser. Rows are added to ``results/pages.csv``.
"""

from __future__ import annotations

import argparse
import hashlib
import re
import statistics
import tempfile
import time
from collections.abc import Iterator
from datetime import date, datetime, timedelta
from pathlib import Path

from flask.testing import FlaskClient

from pipeline.keeping import Store, writing_down
from pipeline.page.app import make_app
from pipeline.page.desk import Desk
from pipeline.page.gate import Gate
from pipeline.record import FEET, Fact, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows

COLUMNS = ("visits", "backlog", "page", "median_ms")
A_DAY, HORSES, TIMES = 8, 336, 9
LAST = date(2026, 5, 12)
HOST = "127.0.0.1:8437"
TEXT = "Left front thrush in the sulcus. Size two all round, six nails in each. Six weeks."


def visit_of(number: int, day: date, doubtful: bool) -> Visit:
    """An ordinary visit."""
    doubt = {"flagged": doubtful, "confidence": 0.6 if doubtful else 0.95, "reasons": ["hard to hear"] * doubtful}
    facts = [
        Fact(foot=foot, slot="shoe_size", value="2", quote="Size two all round", span=(33, 51), start=3.0, end=4.5)
        for foot in FEET
    ]
    found = {"foot": "LF", "slot": "finding", "value": "thrush", "zone": "sulcus", "quote": TEXT[:31], "span": (0, 31)}
    facts.append(Fact.model_validate({**found, "start": 0.5, "end": 2.5, **doubt}))
    facts.append(Fact(foot="LF", slot="nails", value=6, quote="six nails", span=(53, 62), start=4.6, end=5.4))
    return Visit(horse=f"Horse {number % HORSES}", horse_match=HorseMatch.KNOWN, date=day, facts=facts)


def fill(folder: Path, visits: int, backlog: bool) -> None:
    """A store with that many visits, written in one transaction."""
    with Store.open(folder) as store:
        store.add_horses([RosterHorse(name=f"Horse {number}", place=f"Yard {number % 40}") for number in range(HORSES)])
        with store._writing("bench", "bench"):
            for number in range(visits):
                day = LAST - timedelta(days=(visits - 1 - number) // A_DAY)
                digest = hashlib.sha256(str(number).encode()).hexdigest()
                moment = datetime(day.year, day.month, day.day, 9, number % 60)
                memo = Memo(path="memo.wav", sha256=digest, seconds=8.0, recorded_at=moment, recorded_from="name")
                record = MemoRecord(memo=memo, transcript=TEXT, visits=[visit_of(number, day, backlog or day == LAST)])
                columns: dict[str, str | float | int | None] = {"kept_at": moment.isoformat()}
                stored = f"originals/{digest[:2]}/{digest}.wav"
                writing_down.write_memo(store._database, record, Transcript(text=TEXT), "memo.wav", stored, columns)


def measured(folder: Path) -> Iterator[tuple[str, float]]:
    """Each page's median time."""
    gate = Gate(frozenset({HOST}))
    client = make_app(Desk(folder, load_vocabulary(), gate, "Reviewer")).test_client()
    client.post("/enter", data={"token": gate.token or ""}, base_url=f"http://{HOST}")
    form = {"form_key": gate.form_key, "day": LAST.isoformat()}
    yield "begin the review of the day", timed(client, "POST", "/review", form)
    key = re.search(r'action="/review/(v(\d+)[^"]+)"', client.get("/review", base_url=f"http://{HOST}").text)
    assert key is not None
    pages = {
        "the next question": "/review",
        "one question": f"/review/{key.group(1)}",
        "the day": f"/day/{LAST.isoformat()}",
        "a visit": f"/visit/{key.group(2)}",
        "all days": "/days",
        "search, one horse": "/search?words=thrush&horse=Horse+3",
        "search, everything": "/search?words=thrush",
    }
    for name, path in pages.items():
        yield name, timed(client, "GET", path, None)
    yield "begin the review of all days", timed(client, "POST", "/review", {"form_key": gate.form_key})


def timed(client: FlaskClient, method: str, path: str, form: dict[str, str] | None) -> float:
    """The median in milliseconds; the first time is not counted."""
    took = []
    for _ in range(TIMES + 1):
        started = time.perf_counter()
        answer = client.open(path, method=method, data=form, base_url=f"http://{HOST}")
        took.append((time.perf_counter() - started) * 1000)
        assert answer.status_code in (200, 303), (path, answer.status_code)
    return statistics.median(took[1:])


def main() -> None:
    """Fill the stores, measure them, print a table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--visits", type=int, nargs="+", default=[20, 20_000])
    parser.add_argument("--backlog", action="store_true")
    asked = parser.parse_args()
    tables = []
    for visits in asked.visits:
        with tempfile.TemporaryDirectory() as place:
            fill(Path(place) / "store", visits, asked.backlog)
            tables.append(dict(measured(Path(place) / "store")))
    add_rows(
        "pages",
        COLUMNS,
        (
            (visits, "yes" if asked.backlog else "no", page, f"{ms:.1f}")
            for visits, table in zip(asked.visits, tables, strict=True)
            for page, ms in table.items()
        ),
    )
    print(f"{'ms, visits in the store':32}" + "".join(f"{visits:>10}" for visits in asked.visits))
    for name in tables[0]:
        print(f"{name:32}" + "".join(f"{table[name]:>10.1f}" for table in tables))


if __name__ == "__main__":
    main()
