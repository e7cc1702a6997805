"""Version 1 of the tables. Never edited after release.

``words`` is one JSON column of ``memos``: the words of a memo are always read whole, with their transcript, and never
one by one, so a row a word would only make the store larger. Deleting is refused everywhere: nothing kept is lost.
Corrections are written down by triggers, whichever program makes them; ``pen`` says who holds the pen and why.
"""

from __future__ import annotations

_HORSES_AND_MEMOS = """
CREATE TABLE memos (
    id INTEGER PRIMARY KEY,
    given_id TEXT,
    sha256 TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    path TEXT,
    file_name TEXT NOT NULL,
    stored_path TEXT NOT NULL UNIQUE CHECK (
        stored_path GLOB 'originals/[0-9a-f][0-9a-f]/*' AND stored_path NOT GLOB '*..*'
    ),
    container TEXT,
    seconds REAL CHECK (seconds >= 0),
    recorded_at TEXT,
    recorded_from TEXT,
    kept_at TEXT NOT NULL,
    transcript TEXT NOT NULL,
    words TEXT NOT NULL CHECK (json_valid(words)),
    weights TEXT,
    vocabulary TEXT
) STRICT;

CREATE TABLE horses (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (name <> ''),
    name_key TEXT NOT NULL CHECK (name_key <> ''),
    owner TEXT,
    place TEXT,
    place_key TEXT NOT NULL,
    also_called TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(also_called)),
    other TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(other)),
    from_memo INTEGER REFERENCES memos (id),
    UNIQUE (name_key, place_key)
) STRICT;
"""

_VISITS_AND_FACTS = """
CREATE TABLE visits (
    id INTEGER PRIMARY KEY,
    memo INTEGER NOT NULL REFERENCES memos (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    horse INTEGER REFERENCES horses (id),
    horse_heard TEXT,
    heard_key TEXT,
    horse_match TEXT NOT NULL CHECK (horse_match IN ('known', 'new', 'unclear')),
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    notes TEXT NOT NULL DEFAULT '',
    UNIQUE (memo, position)
) STRICT;
CREATE INDEX visits_by_horse ON visits (horse, date);

CREATE TABLE facts (
    id INTEGER PRIMARY KEY,
    visit INTEGER NOT NULL REFERENCES visits (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    foot TEXT CHECK (foot IN ('LF', 'RF', 'LH', 'RH')),
    slot TEXT NOT NULL CHECK (slot <> ''),
    value ANY NOT NULL CHECK (typeof(value) IN ('text', 'real')),
    zone TEXT,
    status TEXT NOT NULL CHECK (status IN ('present', 'absent', 'suspected', 'resolved', 'history', 'planned')),
    severity TEXT CHECK (severity IN ('mild', 'moderate', 'severe')),
    confidence REAL NOT NULL CHECK (confidence BETWEEN 0 AND 1),
    flagged INTEGER NOT NULL CHECK (flagged IN (0, 1)),
    reasons TEXT NOT NULL CHECK (json_valid(reasons)),
    quote TEXT NOT NULL,
    start_s REAL,
    end_s REAL,
    span_start INTEGER NOT NULL,
    span_end INTEGER NOT NULL,
    match TEXT NOT NULL,
    rules TEXT NOT NULL CHECK (json_valid(rules)),
    CHECK (0 <= span_start AND span_start <= span_end),
    UNIQUE (visit, position)
) STRICT;
CREATE INDEX facts_by_value ON facts (slot, value, status);

CREATE TABLE flags (
    id INTEGER PRIMARY KEY,
    memo INTEGER NOT NULL REFERENCES memos (id),
    visit INTEGER REFERENCES visits (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    kind TEXT NOT NULL CHECK (kind <> ''),
    reason TEXT NOT NULL,
    quote TEXT NOT NULL,
    start_s REAL,
    end_s REAL,
    span_start INTEGER NOT NULL,
    span_end INTEGER NOT NULL
) STRICT;
CREATE INDEX flags_by_memo ON flags (memo, visit);
"""

_HISTORY = """
CREATE TABLE pen (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    who TEXT NOT NULL,
    why TEXT NOT NULL
) STRICT;
INSERT INTO pen VALUES (1, 'unknown', '');

CREATE TABLE history (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    who TEXT NOT NULL,
    in_table TEXT NOT NULL,
    in_row INTEGER NOT NULL,
    in_column TEXT NOT NULL,
    old ANY,
    new ANY,
    why TEXT NOT NULL
) STRICT;
"""

_INDEX_AND_VIEWS = """
CREATE VIRTUAL TABLE memo_words USING fts5 (transcript, content='memos', content_rowid='id');
CREATE VIRTUAL TABLE visit_words USING fts5 (notes, content='visits', content_rowid='id');
CREATE VIRTUAL TABLE fact_words USING fts5 (slot, value, zone, quote, content='facts', content_rowid='id');

CREATE TRIGGER memos_indexed AFTER INSERT ON memos BEGIN
    INSERT INTO memo_words (rowid, transcript) VALUES (new.id, new.transcript);
END;
CREATE TRIGGER visits_indexed AFTER INSERT ON visits BEGIN
    INSERT INTO visit_words (rowid, notes) VALUES (new.id, new.notes);
END;
CREATE TRIGGER visits_indexed_again AFTER UPDATE OF notes ON visits BEGIN
    INSERT INTO visit_words (visit_words, rowid, notes) VALUES ('delete', old.id, old.notes);
    INSERT INTO visit_words (rowid, notes) VALUES (new.id, new.notes);
END;
CREATE TRIGGER facts_indexed AFTER INSERT ON facts BEGIN
    INSERT INTO fact_words (rowid, slot, value, zone, quote)
    VALUES (new.id, new.slot, new.value, new.zone, new.quote);
END;
CREATE TRIGGER facts_indexed_again AFTER UPDATE OF slot, value, zone ON facts BEGIN
    INSERT INTO fact_words (fact_words, rowid, slot, value, zone, quote)
    VALUES ('delete', old.id, old.slot, old.value, old.zone, old.quote);
    INSERT INTO fact_words (rowid, slot, value, zone, quote)
    VALUES (new.id, new.slot, new.value, new.zone, new.quote);
END;

CREATE VIEW facts_in_full AS
SELECT facts.*, visits.date, visits.horse AS horse_id, visits.horse_match, visits.heard_key, visits.memo,
    coalesce(horses.name, visits.horse_heard) AS horse, horses.owner, horses.place, horses.place_key,
    memos.file_name
FROM facts
JOIN visits ON visits.id = facts.visit
JOIN memos ON memos.id = visits.memo
LEFT JOIN horses ON horses.id = visits.horse;

CREATE VIEW to_review AS
SELECT visit, date, horse, foot, slot, value, zone, status, reasons, quote FROM facts_in_full WHERE flagged = 1;
"""

# What a person may correct; every change of these is written into history.
_CORRECTABLE = {
    "memos": ("recorded_at", "recorded_from"),
    "horses": ("name", "name_key", "owner", "place", "place_key", "also_called", "other"),
    "visits": ("horse", "horse_match", "date", "notes"),
    "facts": (
        "foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons",
    ),
}  # fmt: skip
# What was said and where stays as it was.
_FIXED = {
    "memos": (
        "id", "given_id", "sha256", "path", "file_name", "stored_path", "container", "seconds", "kept_at", "transcript",
        "words", "weights", "vocabulary",
    ),
    "horses": ("id", "from_memo"),
    "visits": ("id", "memo", "position", "horse_heard", "heard_key"),
    "facts": ("id", "visit", "position", "quote", "start_s", "end_s", "span_start", "span_end", "match", "rules"),
    "flags": (
        "id", "memo", "visit", "position", "kind", "reason", "quote", "start_s", "end_s", "span_start", "span_end",
    ),
}  # fmt: skip


def _written_down(table: str, column: str) -> str:
    return f"""
CREATE TRIGGER {table}_{column}_written_down AFTER UPDATE OF {column} ON {table}
WHEN old.{column} IS NOT new.{column} BEGIN
    INSERT INTO history (at, who, in_table, in_row, in_column, old, new, why)
    SELECT strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), who, '{table}', old.id, '{column}', old.{column}, new.{column}, why
    FROM pen;
END;
"""


def _refused(table: str, event: str, name: str, sentence: str) -> str:
    return f"""
CREATE TRIGGER {table}_{name} BEFORE {event} ON {table} BEGIN SELECT RAISE(ABORT, '{sentence}'); END;
"""


def _never_replaced(table: str) -> str:
    # INSERT OR REPLACE deletes without asking the triggers of deletion, unless a program turns them on.
    return f"""
CREATE TRIGGER {table}_once BEFORE INSERT ON {table} WHEN EXISTS (SELECT 1 FROM {table} WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'nothing kept is replaced'); END;
"""


def _triggers() -> str:
    written = [_written_down(table, column) for table, columns in _CORRECTABLE.items() for column in columns]
    fixed = [
        _refused(table, f"UPDATE OF {', '.join(columns)}", "fixed", "what was said stays as it was")
        for table, columns in _FIXED.items()
    ]
    kept = [_refused(table, "DELETE", "kept", "nothing kept is deleted") for table in (*_FIXED, "history", "pen")]
    once = [_never_replaced(table) for table in (*_FIXED, "history")]
    history = _refused("history", "UPDATE", "fixed", "history is only added to")
    return "".join([*written, *fixed, *kept, *once, history])


VERSION_1 = _HORSES_AND_MEMOS + _VISITS_AND_FACTS + _HISTORY + _INDEX_AND_VIEWS + _triggers()
