-- Every horse, how often it was seen and when last.
SELECT horse, owner, place, visits, last_visit FROM the_horses ORDER BY last_visit DESC;

-- The visits of one horse, with what fitted no fact.
SELECT visit, date, notes FROM the_visits WHERE horse = 'Bramble' ORDER BY date;

-- Everything said of the left fore of one horse, newest first.
SELECT date, slot, value, zone, status, severity FROM the_facts
WHERE horse = 'Bramble' AND foot = 'LF' ORDER BY date DESC, fact;

-- Thrush that was seen, by month: what was denied or only suspected is not counted.
SELECT substr(date, 1, 7) AS month, count(DISTINCT horse_id) AS horses FROM findings
WHERE finding = 'thrush' AND status = 'present' GROUP BY month ORDER BY month;

-- How the feet of one horse answered the hoof testers.
SELECT date, foot, zone, answer FROM tester_answers WHERE horse = 'Bramble' ORDER BY date, foot;

-- Toe angles below 48 degrees.
SELECT date, horse, foot, value FROM measures
WHERE measure = 'toe_angle' AND value < 48 AND status = 'present' ORDER BY date, foot;

-- What was put on, foot by foot.
SELECT date, foot, work, shoe_size, shoe_type, nails, nail_size, pads FROM set_ups
WHERE horse = 'Bramble' ORDER BY date, foot;

-- What is planned.
SELECT date, horse, foot, slot, value FROM plans ORDER BY date, horse, foot, slot;

-- Lost shoes by horse.
SELECT horse, count(*) AS lost FROM lost_shoes GROUP BY horse_id ORDER BY lost DESC;

-- What nobody has looked at yet.
SELECT date, horse, foot, slot, value FROM the_facts WHERE flagged = 1 ORDER BY date;
