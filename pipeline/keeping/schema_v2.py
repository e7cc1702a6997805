"""Version 2 of the tables: corrections, readings and past states. Never edited after release.

A *change* is one decision of a person, or one reading again: all rows of ``history`` that it made name it. A *reading*
is what the rules of a day made of a memo; its facts and flags stay when a later reading takes over, and
``memos.reading`` says which one stands. A fact without a reading was entered by hand and stands beside any of them.
A visit or fact with a ``change`` was entered by that change; ``origin`` is the fact of an earlier
reading that was read from the same words.
``hearings`` holds the wordings of a memo that was heard more than once; ``memos`` has the one that counts.

``revision`` of a visit grows with whatever changes in it, so that a person cannot overwrite what he has not seen.
"""

from __future__ import annotations

_CHANGES = """
CREATE TABLE changes (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL CHECK (at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]:[0-9][0-9]*'),
    who TEXT NOT NULL CHECK (who <> ''),
    why TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (
        kind IN (
            'correct', 'accept', 'drop', 'restore', 'move', 'add', 'visit', 'new_visit', 'drop_visit', 'restore_visit',
            'assign', 'look', 'reread', 'undo'
        )
    ),
    memo INTEGER NOT NULL REFERENCES memos (id),
    visit INTEGER REFERENCES visits (id),
    fact INTEGER REFERENCES facts (id),
    flag INTEGER REFERENCES flags (id),
    undoes INTEGER UNIQUE REFERENCES changes (id),
    CHECK ((kind = 'undo') = (undoes IS NOT NULL))
) STRICT;
CREATE INDEX changes_by_memo ON changes (memo);
CREATE INDEX changes_by_visit ON changes (visit);
CREATE INDEX changes_by_hand ON changes (who);

ALTER TABLE pen ADD COLUMN change INTEGER REFERENCES changes (id);
ALTER TABLE history ADD COLUMN change INTEGER REFERENCES changes (id);
CREATE INDEX history_by_row ON history (in_table, in_row);
CREATE INDEX history_by_change ON history (change);
"""

_READINGS = """
CREATE TABLE hearings (
    id INTEGER PRIMARY KEY,
    memo INTEGER NOT NULL REFERENCES memos (id),
    number INTEGER NOT NULL CHECK (number >= 1),
    transcript TEXT NOT NULL,
    words TEXT NOT NULL CHECK (json_valid(words)),
    weights TEXT,
    UNIQUE (memo, number)
) STRICT;

CREATE TABLE readings (
    id INTEGER PRIMARY KEY,
    memo INTEGER NOT NULL REFERENCES memos (id),
    number INTEGER NOT NULL CHECK (number >= 1),
    hearing INTEGER NOT NULL CHECK (hearing >= 1),
    made_at TEXT NOT NULL,
    vocabulary TEXT,
    change INTEGER REFERENCES changes (id),
    CHECK ((number = 1) = (change IS NULL)),
    UNIQUE (memo, number)
) STRICT;
CREATE INDEX readings_again ON readings (memo) WHERE number > 1;
INSERT INTO readings (memo, number, hearing, made_at, vocabulary) SELECT id, 1, 1, kept_at, vocabulary FROM memos;

ALTER TABLE memos ADD COLUMN reading INTEGER NOT NULL DEFAULT 1 CHECK (reading >= 1);
ALTER TABLE memos ADD COLUMN hearing INTEGER NOT NULL DEFAULT 1 CHECK (hearing >= 1);
ALTER TABLE visits ADD COLUMN stands INTEGER NOT NULL DEFAULT 1 CHECK (stands IN (0, 1));
ALTER TABLE visits ADD COLUMN change INTEGER REFERENCES changes (id);
ALTER TABLE visits ADD COLUMN revision INTEGER NOT NULL DEFAULT 0 CHECK (revision >= 0);
ALTER TABLE facts ADD COLUMN stands INTEGER NOT NULL DEFAULT 1 CHECK (stands IN (0, 1));
ALTER TABLE facts ADD COLUMN settled INTEGER NOT NULL DEFAULT 0 CHECK (settled IN (0, 1));
ALTER TABLE facts ADD COLUMN reading INTEGER DEFAULT 1 CHECK (reading >= 1);
ALTER TABLE facts ADD COLUMN change INTEGER REFERENCES changes (id) CHECK (
    reading IS NOT NULL OR change IS NOT NULL
);
ALTER TABLE facts ADD COLUMN origin INTEGER REFERENCES facts (id);
CREATE INDEX facts_flagged ON facts (visit) WHERE flagged = 1;
CREATE INDEX facts_entered ON facts (change) WHERE change IS NOT NULL;
CREATE INDEX visits_let_go ON visits (memo) WHERE stands = 0;
CREATE INDEX visits_entered ON visits (change) WHERE change IS NOT NULL;
ALTER TABLE flags ADD COLUMN settled INTEGER NOT NULL DEFAULT 0 CHECK (settled IN (0, 1));
ALTER TABLE flags ADD COLUMN reading INTEGER NOT NULL DEFAULT 1 CHECK (reading >= 1);

CREATE TRIGGER memos_first_read AFTER INSERT ON memos BEGIN
    INSERT INTO readings (memo, number, hearing, made_at, vocabulary)
    VALUES (new.id, 1, 1, new.kept_at, new.vocabulary);
END;
CREATE TRIGGER memos_start AFTER INSERT ON memos WHEN new.reading <> 1 OR new.hearing <> 1 BEGIN
    SELECT RAISE(ABORT, 'a memo starts with its first reading');
END;
CREATE TRIGGER memos_read_again BEFORE UPDATE OF reading, hearing, vocabulary ON memos WHEN NOT EXISTS (
    SELECT 1 FROM readings
    WHERE memo = new.id AND number = new.reading AND hearing = new.hearing AND vocabulary IS new.vocabulary
) BEGIN SELECT RAISE(ABORT, 'there is no such reading of the memo'); END;
CREATE TRIGGER memos_heard_again BEFORE UPDATE OF transcript, words, weights, hearing ON memos
WHEN (old.transcript, old.words, old.weights, old.hearing) IS NOT (new.transcript, new.words, new.weights, new.hearing)
AND 2 <> (
    SELECT count(*) FROM hearings WHERE memo = new.id AND (
        (number = old.hearing AND (transcript, words, weights) IS (old.transcript, old.words, old.weights))
        OR (number = new.hearing AND (transcript, words, weights) IS (new.transcript, new.words, new.weights))
    )
) BEGIN SELECT RAISE(ABORT, 'what was said stays as it was'); END;
CREATE TRIGGER memos_indexed_again AFTER UPDATE OF transcript ON memos BEGIN
    INSERT INTO memo_words (memo_words, rowid, transcript) VALUES ('delete', old.id, old.transcript);
    INSERT INTO memo_words (rowid, transcript) VALUES (new.id, new.transcript);
END;
CREATE TRIGGER visits_heard_again BEFORE UPDATE OF horse_heard, heard_key ON visits WHEN NOT EXISTS (
    SELECT 1 FROM pen JOIN changes ON changes.id = pen.change WHERE changes.kind IN ('reread', 'undo')
) BEGIN SELECT RAISE(ABORT, 'what was said stays as it was'); END;
CREATE TRIGGER facts_stay_with_their_memo BEFORE UPDATE OF visit ON facts
WHEN (SELECT memo FROM visits WHERE id = old.visit) IS NOT (SELECT memo FROM visits WHERE id = new.visit)
BEGIN SELECT RAISE(ABORT, 'a fact stays with its memo'); END;
"""

_REVISIONS = """
CREATE TRIGGER visits_revised BEFORE UPDATE OF revision ON visits WHEN new.revision < old.revision
BEGIN SELECT RAISE(ABORT, 'a revision only grows'); END;
CREATE TRIGGER history_of_facts_revises AFTER INSERT ON history WHEN new.in_table = 'facts' BEGIN
    UPDATE visits SET revision = revision + 1 WHERE id = (SELECT visit FROM facts WHERE id = new.in_row);
    UPDATE visits SET revision = revision + 1 WHERE new.in_column = 'visit' AND id = new.old;
END;
CREATE TRIGGER history_of_visits_revises AFTER INSERT ON history WHEN new.in_table = 'visits' BEGIN
    UPDATE visits SET revision = revision + 1 WHERE id = new.in_row;
END;
CREATE TRIGGER history_of_flags_revises AFTER INSERT ON history WHEN new.in_table = 'flags' BEGIN
    UPDATE visits SET revision = revision + 1
    WHERE memo = (SELECT memo FROM flags WHERE id = new.in_row)
    AND coalesce((SELECT visit FROM flags WHERE id = new.in_row), id) = id;
END;
CREATE TRIGGER history_of_memos_revises AFTER INSERT ON history WHEN new.in_table = 'memos' BEGIN
    UPDATE visits SET revision = revision + 1 WHERE memo = new.in_row;
END;
CREATE TRIGGER facts_by_hand_revise AFTER INSERT ON facts WHEN new.reading IS NULL BEGIN
    UPDATE visits SET revision = revision + 1 WHERE id = new.visit;
END;
"""

_VIEWS = """
DROP VIEW to_review;
DROP VIEW facts_in_full;
CREATE VIEW facts_in_full AS
SELECT facts.*, visits.date, visits.horse AS horse_id, visits.horse_match, visits.heard_key, visits.memo,
    coalesce(horses.name, visits.horse_heard) AS horse, horses.owner, horses.place, horses.place_key,
    memos.file_name
FROM facts
JOIN visits ON visits.id = facts.visit
JOIN memos ON memos.id = visits.memo
LEFT JOIN horses ON horses.id = visits.horse
WHERE facts.stands = 1 AND visits.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading);

CREATE VIEW to_review AS
SELECT visit, date, horse, foot, slot, value, zone, status, reasons, quote FROM facts_in_full WHERE flagged = 1;
"""

# What a person, or a reading again, may change; every change of these is written into history.
_CORRECTABLE = {
    "memos": ("recorded_at", "recorded_from", "reading", "hearing"),
    "horses": ("name", "name_key", "owner", "place", "place_key", "also_called", "other"),
    "visits": ("horse", "horse_heard", "heard_key", "horse_match", "date", "notes", "stands"),
    "facts": (
        "visit", "position", "foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons",
        "stands", "settled",
    ),
    "flags": ("settled",),
}  # fmt: skip
# Written down since version 1, without naming the change.
_WRITTEN_DOWN_IN_1 = {
    "memos": ("recorded_at", "recorded_from"),
    "horses": ("name", "name_key", "owner", "place", "place_key", "also_called", "other"),
    "visits": ("horse", "horse_match", "date", "notes"),
    "facts": ("foot", "slot", "value", "zone", "status", "severity", "confidence", "flagged", "reasons"),
}
_FIXED = {
    "memos": ("id", "given_id", "sha256", "path", "file_name", "stored_path", "container", "seconds", "kept_at"),
    "visits": ("id", "memo", "position", "change"),
    "facts": (
        "id", "quote", "start_s", "end_s", "span_start", "span_end", "match", "rules", "reading", "change",
        "origin",
    ),
    "flags": (
        "id", "memo", "visit", "position", "kind", "reason", "quote", "start_s", "end_s", "span_start", "span_end",
        "reading",
    ),
}  # fmt: skip
_ONLY_ADDED_TO = ("changes", "readings", "hearings")
# What no second row may have: a program that says OR REPLACE would delete the first one without a trigger of deletion.
_UNIQUE = {
    "memos": (("sha256",), ("stored_path",)),
    "horses": (("name_key", "place_key"),),
    "visits": (("memo", "position"),),
    "facts": (("visit", "position"),),
    "changes": (("undoes",),),
    "readings": (("memo", "number"),),
    "hearings": (("memo", "number"),),
}


def _written_down(table: str, column: str) -> str:
    return f"""
CREATE TRIGGER {table}_{column}_written_down AFTER UPDATE OF {column} ON {table}
WHEN old.{column} IS NOT new.{column} BEGIN
    INSERT INTO history (at, who, in_table, in_row, in_column, old, new, why, change)
    SELECT coalesce((SELECT at FROM changes WHERE id = pen.change), strftime('%Y-%m-%dT%H:%M:%SZ', 'now')),
        who, '{table}', old.id, '{column}', old.{column}, new.{column}, why, change
    FROM pen;
END;
"""


def _refused(table: str, event: str, name: str, sentence: str) -> str:
    return f"""
CREATE TRIGGER {table}_{name} BEFORE {event} ON {table} BEGIN SELECT RAISE(ABORT, '{sentence}'); END;
"""


def _never_replaced(table: str) -> str:
    return f"""
CREATE TRIGGER {table}_once BEFORE INSERT ON {table} WHEN EXISTS (SELECT 1 FROM {table} WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'nothing kept is replaced'); END;
"""


def _never_displaced(table: str, columns: tuple[str, ...]) -> str:
    name = f"{table}_{'_and_'.join(columns)}"
    same = " AND ".join(f"{column} = new.{column}" for column in columns)
    taken = f"EXISTS (SELECT 1 FROM {table} WHERE id <> new.id AND {same})"
    sentence = f"{table} already holds another with this {' and '.join(columns)}"
    return f"""
CREATE TRIGGER {name}_once BEFORE INSERT ON {table} WHEN {taken} BEGIN SELECT RAISE(ABORT, '{sentence}'); END;
CREATE TRIGGER {name}_free BEFORE UPDATE OF {", ".join(columns)} ON {table} WHEN {taken}
BEGIN SELECT RAISE(ABORT, '{sentence}'); END;
"""


def _triggers() -> str:
    old = [
        f"DROP TRIGGER {table}_{column}_written_down;\n"
        for table, columns in _WRITTEN_DOWN_IN_1.items()
        for column in columns
    ]
    old += [f"DROP TRIGGER {table}_fixed;\n" for table in _FIXED]
    written = [_written_down(table, column) for table, columns in _CORRECTABLE.items() for column in columns]
    fixed = [
        _refused(table, f"UPDATE OF {', '.join(columns)}", "fixed", "what was said stays as it was")
        for table, columns in _FIXED.items()
    ]
    added = [_refused(table, "UPDATE", "fixed", "this is only added to") for table in _ONLY_ADDED_TO]
    kept = [_refused(table, "DELETE", "kept", "nothing kept is deleted") for table in _ONLY_ADDED_TO]
    once = [_never_replaced(table) for table in _ONLY_ADDED_TO]
    placed = [_never_displaced(table, columns) for table, uniques in _UNIQUE.items() for columns in uniques]
    return "".join([*old, *written, *fixed, *added, *kept, *once, *placed])


VERSION_2 = _CHANGES + _READINGS + _REVISIONS + _VIEWS + _triggers()
