"""Version 8 of the tables: one visit may be taken apart where a second horse came in. Never edited after release.

Open questions go along with what they ask about, so that a flag may go to another visit of its memo, as a fact may;
``place`` of a change is the character of the memo from which on it took a visit apart, in the wording of its flag.
"""

from __future__ import annotations

VERSION_8 = """
ALTER TABLE changes ADD COLUMN place INTEGER CHECK (place >= 0);

DROP TRIGGER flags_fixed;
CREATE TRIGGER flags_fixed BEFORE UPDATE OF id, memo, position, kind, reason, quote, start_s, end_s, span_start,
span_end, reading ON flags BEGIN SELECT RAISE(ABORT, 'what was said stays as it was'); END;
CREATE TRIGGER flags_stay_with_their_memo BEFORE UPDATE OF visit ON flags
WHEN old.visit IS NOT new.visit
AND (old.visit IS NULL OR old.memo IS NOT (SELECT memo FROM visits WHERE id = new.visit))
BEGIN SELECT RAISE(ABORT, 'a flag stays with its memo'); END;
CREATE TRIGGER flags_visit_written_down AFTER UPDATE OF visit ON flags WHEN old.visit IS NOT new.visit BEGIN
    INSERT INTO history (at, who, in_table, in_row, in_column, old, new, why, change)
    SELECT coalesce((SELECT at FROM changes WHERE id = pen.change), strftime('%Y-%m-%dT%H:%M:%SZ', 'now')),
        who, 'flags', old.id, 'visit', old.visit, new.visit, why, change
    FROM pen;
END;

DROP TRIGGER history_of_flags_revises;
CREATE TRIGGER history_of_flags_revises AFTER INSERT ON history WHEN new.in_table = 'flags' BEGIN
    UPDATE visits SET revision = revision + 1
    WHERE memo = (SELECT memo FROM flags WHERE id = new.in_row)
    AND coalesce((SELECT visit FROM flags WHERE id = new.in_row), id) = id;
    UPDATE visits SET revision = revision + 1 WHERE new.in_column = 'visit' AND id = new.old;
END;
"""
