"""A store of any size, made up: five farriers, twenty years, every horse about every six weeks.

Rows go in without the triggers, which are put back before the indexes are made whole; the store that comes out is one
that the program itself could have written, and ``Store.problems`` finds nothing wrong with it.
"""

from __future__ import annotations

import hashlib
import random
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path

from pipeline.keeping import Store

FIRST_DAY = date(2006, 1, 2)
LAST_DAY = date(2025, 12, 31)
STAY_DAYS = 3000
VISITS_A_HORSE = 46  # those inside the time of the book; a few horses too many, and the oldest visits are cut
PLACES = 80
NAMES = ("Bramble", "Sorrel", "Teasel", "Clover", "Fennel", "Juniper", "Larch", "Rowan", "Yarrow", "Thistle")
FEET = ("LF", "RF", "LH", "RH")
FINDINGS = (
    ("thrush", 30), ("flare", 25), ("crack", 10), ("white_line_separation", 10), ("bruise", 9),
    ("white_line_disease", 6), ("corn", 4), ("abscess", 3), ("underrun_heels", 6), ("laminitis", 1), ("puncture", 1),
    ("keratoma", 0.02),
)  # fmt: skip
ZONES = (None, "sulcus", "toe", "quarter", "medial_heel", "lateral_heel")
STATUSES = (("present", 70), ("absent", 15), ("suspected", 8), ("resolved", 7))
FILLERS = (
    "stood like a rock", "ground is soft", "owner has a new saddle", "kicks when the dog is near", "clenches held well",
    "farrier before me left the toes", "copper in the bucket", "grass came early", "shed the winter coat",
)  # fmt: skip
_TRIGGERS = ("facts", "visits", "memos", "horses", "flags")
FactRow = tuple[str | float | int | None, ...]


def make_store(folder: Path, visits: int, seed: int = 7, open_since: date = FIRST_DAY) -> None:
    """Make a store of so many visits with about twenty facts each in ``folder``, which must hold none yet.

    Of the visits before ``open_since`` nothing is doubtful.
    """
    Store.open(folder).close()
    chance = random.Random(seed)
    with closing(sqlite3.connect(folder / "clinchbook.db")) as connection:
        connection.executescript("PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF; PRAGMA cache_size=-200000;")
        triggers = _take_out_triggers(connection)
        horses = max(20, visits // VISITS_A_HORSE)
        _add_horses(connection, horses, chance)
        _add_visits(connection, horses, visits, chance, open_since)
        for table in ("memo_words", "visit_words", "fact_words"):
            connection.execute(f"INSERT INTO {table} ({table}) VALUES ('rebuild')")
        connection.execute("INSERT INTO fact_days SELECT * FROM fact_days_now ORDER BY 1, 2, 3, 4, 5, 6")
        connection.execute("INSERT INTO readings (memo, number, hearing, made_at) SELECT id, 1, 1, kept_at FROM memos")
        for sql in triggers:
            connection.execute(sql)
        connection.commit()


def _take_out_triggers(connection: sqlite3.Connection) -> list[str]:
    marks = ",".join("?" * len(_TRIGGERS))
    sql = f"SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND tbl_name IN ({marks})"
    found = connection.execute(sql, _TRIGGERS).fetchall()
    for name, _ in found:
        connection.execute(f"DROP TRIGGER {name}")
    return [text for _, text in found]


def _add_horses(connection: sqlite3.Connection, horses: int, chance: random.Random) -> None:
    def rows() -> Iterator[tuple[str | int, ...]]:
        for number in range(horses):
            name = f"{NAMES[number % len(NAMES)]} {number // len(NAMES)}"
            place = f"Yard {chance.randrange(PLACES)}"
            yield number + 1, name, name.casefold(), f"Owner {chance.randrange(400)}", place, place.casefold()

    sql = "INSERT INTO horses (id, name, name_key, owner, place, place_key) VALUES (?, ?, ?, ?, ?, ?)"
    connection.executemany(sql, rows())


def _add_visits(
    connection: sqlite3.Connection, horses: int, visits: int, chance: random.Random, open_since: date
) -> None:
    """The visits in the order of their days, each with its memo and its facts."""
    memo_sql = """INSERT INTO memos (id, sha256, file_name, stored_path, seconds, kept_at, transcript, words)
                  VALUES (?, ?, ?, ?, 42.0, ?, ?, '[]')"""
    visit_sql = """INSERT INTO visits (id, memo, position, horse, horse_heard, heard_key, horse_match, date, notes)
                   VALUES (?, ?, 0, ?, 'x', 'x', 'known', ?, ?)"""
    fact_sql = """INSERT INTO facts (visit, position, foot, slot, value, zone, status, severity, confidence, flagged,
                  reasons, quote, start_s, end_s, span_start, span_end, match, rules)
                  VALUES (?, ?, ?, ?, ?, ?, ?, ?, 0.9, ?, ?, ?, 1.0, 2.0, 0, ?, 'exact', '[]')"""
    for number, (day, horse) in enumerate(_calendar(horses, visits, chance), start=1):
        filler = chance.choice(FILLERS)
        facts, settled = _facts(chance), day < open_since
        transcript = f"{filler}. " + ". ".join(str(fact[6]) for fact in facts)
        digest = hashlib.sha256(str(number).encode()).hexdigest()
        stored = f"originals/{digest[:2]}/{digest}.m4a"
        connection.execute(memo_sql, (number, digest, f"memo{number}.m4a", stored, f"{day}T18:00:00+00:00", transcript))
        connection.execute(visit_sql, (number, number, horse, day.isoformat(), filler))
        connection.executemany(
            fact_sql,
            [
                (number, place, *fact[:6], *_doubt(bool(fact[7]) and not settled), *_quote(fact))
                for place, fact in enumerate(facts)
            ],
        )


def _calendar(horses: int, visits: int, chance: random.Random) -> list[tuple[date, int]]:
    """Days and horses: each horse stays in the book for some eight years and comes about every six weeks; some were
    there before the book began, and some will be when it ends."""
    found: list[tuple[date, int]] = []
    span = (LAST_DAY - FIRST_DAY).days
    for horse in range(1, horses + 1):
        gap = chance.choice((35, 42, 42, 49, 56))
        day = chance.randrange(-STAY_DAYS, span)
        last = min(day + STAY_DAYS, span)
        while day <= last:
            if day >= 0:
                found.append((FIRST_DAY + timedelta(days=day), horse))
            day += gap + chance.randrange(-7, 8)
    found.sort()
    return found[-visits:]


def _doubt(flagged: bool) -> tuple[int, str]:
    return int(flagged), '["an unsure word"]' if flagged else "[]"


def _quote(fact: FactRow) -> tuple[str, int]:
    return str(fact[6]), len(str(fact[6]))


def _facts(chance: random.Random) -> list[FactRow]:
    """About twenty facts: foot, slot, value, zone, status, severity, quote, flagged."""
    facts: list[FactRow] = []

    def say(foot: str | None, slot: str, value: str | float, zone: str | None = None, status: str = "present") -> None:
        severity = chance.choice(("mild", "moderate", "severe", None)) if slot == "finding" else None
        where = f"{foot or 'horse'} {zone or ''}".strip()
        said = f"{status} {slot} {value} {where}".replace("_", " ")
        facts.append((foot, slot, value, zone, status, severity, said, chance.random() < 0.08))

    size = chance.choice(("00", "0", "1", "1.5", "2"))
    kind = chance.choices(("plain", "rim", "egg_bar", "wide_web"), (70, 15, 5, 10))[0]
    work = chance.choices(("new_shoe", "reset", "trim"), (45, 25, 30))[0]
    for foot in FEET:
        say(foot, "work", work)
        if work == "new_shoe":
            say(foot, "shoe_size", size)
            say(foot, "nails", float(chance.choice((6, 6, 7, 8))))
    if work == "new_shoe":
        for foot in FEET[:2]:
            say(foot, "shoe_type", kind)
    for _ in range(chance.randrange(3, 7)):
        finding = chance.choices([name for name, _ in FINDINGS], [weight for _, weight in FINDINGS])[0]
        status = chance.choices([name for name, _ in STATUSES], [weight for _, weight in STATUSES])[0]
        say(chance.choice(FEET), "finding", finding, chance.choice(ZONES), status)
    for foot in FEET[:2]:
        say(foot, "tester", chance.choice(("none", "none", "mild", "moderate", "strong")), chance.choice(ZONES[2:4]))
        say(foot, "toe_angle", float(chance.randrange(45, 58)))
        say(foot, "toe_length", round(25.4 * chance.randrange(12, 16) / 4, 1))
    if chance.random() < 0.06:
        say(chance.choice(FEET), "shoe_state", "lost")
    say(None, "manner", chance.choice(("quiet", "quiet", "fidgety")))
    if chance.random() < 0.9:
        say(None, "next_visit_weeks", float(chance.choice((5, 6, 6, 7, 8))), None, "planned")
    if chance.random() < 0.08:
        say(chance.choice(FEET[:2]), "shoe_type", "egg_bar", None, "planned")
    return facts
