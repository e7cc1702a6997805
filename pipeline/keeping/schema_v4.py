"""Version 4 of the tables: memos that wait, removals, and which store this is. Never edited after release.

``waiting`` is a list of things to do, not part of the record: a line goes when its memo is kept or a person drops it.
``removed`` says when something was removed and how much, never what. ``removing`` holds the hashes of recordings whose
files are still to go, and an empty one until the database has been rewritten: what an interrupted removal left to do.
``last_back_up`` is when the store was last saved and where to; a back-up itself holds that of the one before.
``partly_forgotten`` are memos of several horses of which one was removed: nobody may read it out of the words again.
"""

from __future__ import annotations

_TABLES = """
CREATE TABLE identity (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    store TEXT NOT NULL CHECK (length(store) = 32)
) STRICT;
INSERT INTO identity VALUES (1, lower(hex(randomblob(16))));

CREATE TABLE waiting (
    id INTEGER PRIMARY KEY,
    path TEXT NOT NULL UNIQUE CHECK (path <> ''),
    sha256 TEXT CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    day TEXT CHECK (day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    reason TEXT NOT NULL CHECK (reason <> ''),
    since TEXT NOT NULL,
    last_tried TEXT NOT NULL,
    tries INTEGER NOT NULL DEFAULT 1 CHECK (tries > 0)
) STRICT;

CREATE TABLE removed (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    memos INTEGER NOT NULL CHECK (memos >= 0),
    visits INTEGER NOT NULL CHECK (visits >= 0),
    facts INTEGER NOT NULL CHECK (facts >= 0),
    horses INTEGER NOT NULL CHECK (horses >= 0)
) STRICT;

CREATE TABLE last_back_up (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    at TEXT NOT NULL,
    place TEXT NOT NULL
) STRICT;

CREATE TABLE removing (sha256 TEXT NOT NULL UNIQUE) STRICT;

CREATE TABLE partly_forgotten (memo INTEGER PRIMARY KEY REFERENCES memos (id)) STRICT;
"""

_TRIGGERS = """
CREATE TRIGGER identity_fixed BEFORE UPDATE ON identity
BEGIN SELECT RAISE(ABORT, 'a store stays itself'); END;
CREATE TRIGGER identity_kept BEFORE DELETE ON identity
BEGIN SELECT RAISE(ABORT, 'a store stays itself'); END;
CREATE TRIGGER removed_fixed BEFORE UPDATE ON removed
BEGIN SELECT RAISE(ABORT, 'the notes of removals are only added to'); END;
CREATE TRIGGER removed_kept BEFORE DELETE ON removed
BEGIN SELECT RAISE(ABORT, 'the notes of removals are only added to'); END;
CREATE TRIGGER removed_once BEFORE INSERT ON removed WHEN EXISTS (SELECT 1 FROM removed WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'the notes of removals are only added to'); END;
CREATE TRIGGER partly_forgotten_fixed BEFORE UPDATE ON partly_forgotten
BEGIN SELECT RAISE(ABORT, 'the notes of removals are only added to'); END;
CREATE TRIGGER partly_forgotten_kept BEFORE DELETE ON partly_forgotten
BEGIN SELECT RAISE(ABORT, 'the notes of removals are only added to'); END;
"""

VERSION_4 = _TABLES + _TRIGGERS
