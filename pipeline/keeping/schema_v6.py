"""Version 6 of the tables: what stands of every fact, in the order in which it is searched and counted.

``fact_days`` is made anew: it holds only what stands, in one row with all that a count by month, foot, zone or horse
needs, so that counting reads no other table. ``month`` is 202603, ``day`` the day in it: a month is then one stretch
of the table and needs no sorting. Triggers keep it; ``fact_days_now`` says what belongs into it.
"""

from __future__ import annotations

_OLD = """
DROP TRIGGER facts_dated;
DROP TRIGGER facts_dated_again;
DROP TRIGGER facts_no_longer_dated;
DROP TRIGGER visits_dated_again;
DROP TABLE fact_days;
"""

_TABLE = """
CREATE TABLE fact_days (
    slot TEXT NOT NULL,
    value ANY NOT NULL,
    month INTEGER NOT NULL,
    day INTEGER NOT NULL,
    visit INTEGER NOT NULL,
    fact INTEGER NOT NULL,
    status TEXT NOT NULL,
    foot TEXT,
    zone TEXT,
    horse INTEGER,
    flagged INTEGER NOT NULL,
    PRIMARY KEY (slot, value, month, day, visit, fact)
) STRICT, WITHOUT ROWID;

CREATE VIEW fact_days_now AS
SELECT facts.slot, facts.value, CAST(substr(visits.date, 1, 4) || substr(visits.date, 6, 2) AS INTEGER) AS month,
    CAST(substr(visits.date, 9) AS INTEGER) AS day, facts.visit, facts.id AS fact, facts.status, facts.foot, facts.zone,
    visits.horse, facts.flagged
FROM facts JOIN visits ON visits.id = facts.visit JOIN memos ON memos.id = visits.memo
WHERE facts.stands = 1 AND visits.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading);

INSERT INTO fact_days SELECT * FROM fact_days_now ORDER BY slot, value, month, day, visit, fact;
"""


def _taken_out(slot: str, value: str, date: str, visit: str, fact: str) -> str:
    """The row of one fact goes: found by its whole key, however many facts there are of its value."""
    return f"""DELETE FROM fact_days WHERE slot = {slot} AND value = {value}
    AND month = CAST(substr({date}, 1, 4) || substr({date}, 6, 2) AS INTEGER)
    AND day = CAST(substr({date}, 9) AS INTEGER) AND visit = {visit} AND fact = {fact}"""


_KEYS = """SELECT slot, value, CAST(substr({date}, 1, 4) || substr({date}, 6, 2) AS INTEGER),
        CAST(substr({date}, 9) AS INTEGER), visit, facts.id"""
_OLD_DATE = "(SELECT date FROM visits WHERE id = old.visit)"

_TRIGGERS = f"""
CREATE TRIGGER facts_dated AFTER INSERT ON facts BEGIN
    INSERT INTO fact_days SELECT * FROM fact_days_now WHERE fact = new.id;
END;
CREATE TRIGGER facts_dated_again AFTER UPDATE OF visit, slot, value, zone, status, foot, flagged, stands ON facts BEGIN
    {_taken_out("old.slot", "old.value", _OLD_DATE, "old.visit", "old.id")};
    INSERT INTO fact_days SELECT * FROM fact_days_now WHERE fact = new.id;
END;
CREATE TRIGGER facts_no_longer_dated AFTER DELETE ON facts BEGIN
    {_taken_out("old.slot", "old.value", _OLD_DATE, "old.visit", "old.id")};
END;
CREATE TRIGGER visits_dated_again AFTER UPDATE OF date, horse, stands ON visits BEGIN
    DELETE FROM fact_days WHERE (slot, value, month, day, visit, fact) IN (
        {_KEYS.format(date="old.date")} FROM facts WHERE visit = old.id
    );
    INSERT INTO fact_days SELECT * FROM fact_days_now WHERE visit = new.id;
END;
CREATE TRIGGER visits_no_longer_dated BEFORE DELETE ON visits BEGIN
    DELETE FROM fact_days WHERE (slot, value, month, day, visit, fact) IN (
        {_KEYS.format(date="old.date")} FROM facts WHERE visit = old.id
    );
END;
CREATE TRIGGER memos_dated_again AFTER UPDATE OF reading ON memos WHEN old.reading <> new.reading BEGIN
    DELETE FROM fact_days WHERE (slot, value, month, day, visit, fact) IN (
        {_KEYS.format(date="visits.date")} FROM visits JOIN facts ON facts.visit = visits.id WHERE visits.memo = new.id
    );
    INSERT INTO fact_days SELECT * FROM fact_days_now WHERE visit IN (SELECT id FROM visits WHERE memo = new.id);
END;
"""

# The due list asks every horse's last visit for this one thing.
_INDEX = """
CREATE INDEX facts_of_the_next_visit ON facts (visit) WHERE slot = 'next_visit_weeks';
"""

VERSION_6 = _OLD + _TABLE + _TRIGGERS + _INDEX
