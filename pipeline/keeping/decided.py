"""Facts that a person entered or dropped, with who decided it, when and why: no column of them tells it."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from pipeline.keeping.kept import KeptFact, KeptVisit

if TYPE_CHECKING:
    from sqlite_utils import Database

_ENTERED = """
SELECT facts.id, changes.id AS change, changes.at, changes.who, changes.why
FROM facts JOIN changes ON changes.id = facts.change
WHERE facts.id IN (SELECT value FROM json_each(?))
AND NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)
"""
# A reading carries a drop over from the fact of an earlier one; who dropped that one decided it. A fact that a reading
# set aside, because a person had entered it already, was dropped by nobody.
_DROPPED = """
WITH RECURSIVE same (id, earlier) AS (
    SELECT id, id FROM facts WHERE id IN (SELECT value FROM json_each(?))
    UNION SELECT same.id, facts.origin FROM same JOIN facts ON facts.id = same.earlier WHERE facts.origin IS NOT NULL
)
SELECT same.id, max(changes.id) AS change, changes.at, changes.who, changes.why FROM same
JOIN changes ON changes.fact = same.earlier AND changes.kind = 'drop'
WHERE NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id) GROUP BY same.id
"""


@dataclass(frozen=True)
class Decided:
    """One such fact of a visit: entered by hand, or ``dropped``."""

    at: datetime
    who: str
    why: str
    visit: KeptVisit
    fact: KeptFact
    dropped: bool


def decided(database: Database, visits: Iterable[KeptVisit]) -> list[Decided]:
    """The facts of these visits that a person entered or dropped, oldest decision first; one that he entered and
    dropped again is told twice."""
    found: list[tuple[int, Decided]] = []
    for visit in visits:
        by_hand = [fact for fact in (*visit.facts, *visit.dropped) if fact.by_hand]
        for facts, sql, dropped in ((by_hand, _ENTERED, False), (visit.dropped, _DROPPED, True)):
            if not facts:
                continue
            by_row = {fact.id: fact for fact in facts}
            for row in database.query(sql, [json.dumps(list(by_row))]):
                at = datetime.fromisoformat(row["at"])
                found.append((row["change"], Decided(at, row["who"], row["why"], visit, by_row[row["id"]], dropped)))
    return [one for _, one in sorted(found, key=lambda numbered: numbered[0])]
