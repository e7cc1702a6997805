"""Version 5 of the tables: what was learned from corrections. Never edited after release.

``lessons`` is only added to: a mishearing seen once more (with the change that showed it), learned, or forgotten again.
It holds words of the trade and what was written instead of them, never a horse's name: names are learned on the horse.
"""

from __future__ import annotations

VERSION_5 = """
CREATE TABLE lessons (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    who TEXT NOT NULL,
    what TEXT NOT NULL CHECK (what IN ('seen', 'learned', 'forgotten')),
    class TEXT NOT NULL CHECK (class <> ''),
    canonical TEXT NOT NULL CHECK (canonical <> ''),
    form TEXT NOT NULL CHECK (form <> ''),
    change INTEGER
) STRICT;
CREATE INDEX lessons_by_form ON lessons (form);
CREATE TRIGGER lessons_fixed BEFORE UPDATE ON lessons
BEGIN SELECT RAISE(ABORT, 'lessons are only added to'); END;
CREATE TRIGGER lessons_kept BEFORE DELETE ON lessons
BEGIN SELECT RAISE(ABORT, 'lessons are only added to'); END;
CREATE TRIGGER lessons_once BEFORE INSERT ON lessons WHEN EXISTS (SELECT 1 FROM lessons WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'lessons are only added to'); END;
"""
