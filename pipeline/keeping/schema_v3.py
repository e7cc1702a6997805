"""Version 3 of the tables: what queries need. Never edited after release.

``fact_days`` holds every fact's slot, value, status and day in the order in which a search reads them, so that the
newest of two million come without sorting. Triggers keep it; it tells nothing that ``facts`` and ``visits`` do not.
The views under plain names are for any SQLite tool; ``said`` is their fact, and only what stands is in them.
"""

from __future__ import annotations

_INDEXES = """
CREATE INDEX visits_by_date ON visits (date) WHERE stands = 1;
CREATE INDEX visits_by_heard ON visits (heard_key) WHERE horse IS NULL;
CREATE INDEX visits_of_a_horse ON visits (horse, date) WHERE stands = 1;

CREATE TABLE fact_days (
    slot TEXT NOT NULL,
    value ANY NOT NULL,
    status TEXT NOT NULL,
    date TEXT NOT NULL,
    fact INTEGER NOT NULL,
    foot TEXT,
    PRIMARY KEY (slot, value, status, date, fact)
) STRICT, WITHOUT ROWID;
INSERT INTO fact_days (slot, value, status, date, fact, foot)
SELECT facts.slot, facts.value, facts.status, visits.date, facts.id, facts.foot
FROM facts JOIN visits ON visits.id = facts.visit
ORDER BY facts.slot, facts.value, facts.status, visits.date, facts.id;

CREATE TRIGGER facts_dated AFTER INSERT ON facts BEGIN
    INSERT INTO fact_days (slot, value, status, date, fact, foot)
    SELECT new.slot, new.value, new.status, date, new.id, new.foot FROM visits WHERE id = new.visit;
END;
CREATE TRIGGER facts_dated_again AFTER UPDATE OF visit, slot, value, status, foot ON facts BEGIN
    DELETE FROM fact_days WHERE fact = old.id AND slot = old.slot AND value = old.value AND status = old.status;
    INSERT INTO fact_days (slot, value, status, date, fact, foot)
    SELECT new.slot, new.value, new.status, date, new.id, new.foot FROM visits WHERE id = new.visit;
END;
CREATE TRIGGER facts_no_longer_dated AFTER DELETE ON facts BEGIN
    DELETE FROM fact_days WHERE fact = old.id AND slot = old.slot AND value = old.value AND status = old.status;
END;
CREATE TRIGGER visits_dated_again AFTER UPDATE OF date ON visits WHEN old.date <> new.date BEGIN
    DELETE FROM fact_days WHERE (slot, value, status, date, fact) IN (
        SELECT slot, value, status, old.date, id FROM facts WHERE visit = old.id
    );
    INSERT INTO fact_days (slot, value, status, date, fact, foot)
    SELECT slot, value, status, new.date, id, foot FROM facts WHERE visit = new.id;
END;
"""

_VIEWS = """
CREATE VIEW the_horses AS
SELECT id AS horse_id, name AS horse, owner, place, also_called,
    (SELECT count(*) FROM visits WHERE visits.horse = horses.id AND visits.stands = 1) AS visits,
    (SELECT min(date) FROM visits WHERE visits.horse = horses.id AND visits.stands = 1) AS first_visit,
    (SELECT max(date) FROM visits WHERE visits.horse = horses.id AND visits.stands = 1) AS last_visit
FROM horses;

CREATE VIEW the_visits AS
SELECT visits.id AS visit, visits.date, visits.horse AS horse_id, coalesce(horses.name, visits.horse_heard) AS horse,
    horses.owner, horses.place, visits.horse_match, visits.notes, memos.file_name AS memo, memos.transcript
FROM visits JOIN memos ON memos.id = visits.memo LEFT JOIN horses ON horses.id = visits.horse
WHERE visits.stands = 1;

CREATE VIEW the_facts AS
SELECT id AS fact, visit, date, horse_id, horse, owner, place, foot, slot, value, zone, status, severity, confidence,
    flagged, reasons, quote, start_s, end_s, file_name AS memo
FROM facts_in_full;

CREATE VIEW findings AS
SELECT fact, visit, date, horse_id, horse, owner, place, foot, value AS finding, zone, status, severity, flagged, quote
FROM the_facts WHERE slot = 'finding';

CREATE VIEW tester_answers AS
SELECT fact, visit, date, horse_id, horse, owner, place, foot, zone, value AS answer, status, flagged, quote
FROM the_facts WHERE slot = 'tester';

CREATE VIEW measures AS
SELECT fact, visit, date, horse_id, horse, owner, place, foot, slot AS measure, value,
    CASE WHEN slot IN ('toe_angle', 'heel_angle', 'wedge') THEN 'degrees' ELSE 'mm' END AS unit,
    status, flagged, quote
FROM the_facts
WHERE slot IN ('toe_angle', 'heel_angle', 'wedge', 'toe_length', 'heel_height', 'sole_depth', 'hoof_width');

CREATE VIEW set_ups AS
SELECT visit, date, horse_id, horse, owner, place, foot,
    max(value) FILTER (WHERE slot = 'work') AS work,
    max(value) FILTER (WHERE slot = 'shoe_size') AS shoe_size,
    max(value) FILTER (WHERE slot = 'shoe_type') AS shoe_type,
    max(value) FILTER (WHERE slot = 'shoe_material') AS shoe_material,
    max(value) FILTER (WHERE slot = 'nails') AS nails,
    max(value) FILTER (WHERE slot = 'nail_size') AS nail_size,
    group_concat(value, ', ') FILTER (WHERE slot = 'pad') AS pads,
    max(value) FILTER (WHERE slot = 'wedge') AS wedge_degrees,
    group_concat(value, ', ') FILTER (WHERE slot = 'packing') AS packing,
    group_concat(value, ', ') FILTER (WHERE slot = 'clips') AS clips,
    group_concat(value, ', ') FILTER (WHERE slot = 'traction') AS traction,
    max(flagged) AS flagged
FROM the_facts
WHERE status = 'present' AND foot IS NOT NULL AND slot IN (
    'work', 'shoe_size', 'shoe_type', 'shoe_material', 'nails', 'nail_size', 'pad', 'wedge', 'packing', 'clips',
    'traction'
)
GROUP BY visit, foot;

CREATE VIEW plans AS
SELECT fact, visit, date, horse_id, horse, owner, place, foot, slot, value, flagged, quote
FROM the_facts WHERE status = 'planned';

CREATE VIEW lost_shoes AS
SELECT fact, visit, date, horse_id, horse, owner, place, foot, flagged, quote
FROM the_facts WHERE slot = 'shoe_state' AND value = 'lost' AND status = 'present';
"""

VERSION_3 = _INDEXES + _VIEWS
