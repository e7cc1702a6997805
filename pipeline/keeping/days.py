"""The days of the store: which have visits in them, and how much of each is doubted."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from pipeline.keeping.database import plain_errors
from pipeline.keeping.opened import OpenedStore

_DAYS = """
SELECT date, count(*) AS visits, sum(horse IS NULL) AS nameless, sum(
    (SELECT count(*) FROM facts JOIN memos ON memos.id = visits.memo WHERE facts.visit = visits.id AND facts.flagged = 1
        AND facts.stands = 1 AND (facts.reading IS NULL OR facts.reading = memos.reading))
) AS flagged
FROM visits WHERE stands = 1 AND date IN (
    SELECT DISTINCT date FROM visits WHERE stands = 1 AND date > :after AND date < :before
    ORDER BY date {order} LIMIT :most
) GROUP BY date ORDER BY date {order}
"""


@dataclass(frozen=True)
class DayOfVisits:
    """A day with its standing visits: how many, how many without a horse, and how many of their facts are flagged."""

    day: date
    visits: int
    nameless: int
    flagged: int


class Days(OpenedStore):
    """The visits of the store by their days."""

    def days(self, most: int, *, before: date | None = None, after: date | None = None) -> list[DayOfVisits]:
        """At most ``most`` days with visits in them, the newest first; with ``after`` those next after it come first.

        ``before`` and ``after`` themselves are left out.
        """
        asked = {"most": most, "before": str(before or "9999-99-99"), "after": str(after or "")}
        sql = _DAYS.format(order="ASC" if after else "DESC")
        with plain_errors(self.folder):
            rows = list(self._database.query(sql, asked))
        return [
            DayOfVisits(date.fromisoformat(row["date"]), row["visits"], row["nameless"], row["flagged"]) for row in rows
        ]
