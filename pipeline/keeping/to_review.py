"""What a person still has to look at, and what became of what he looked at."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from pipeline.keeping import correcting, splitting
from pipeline.keeping.database import plain_errors
from pipeline.keeping.kept import KeptFact, KeptVisit
from pipeline.keeping.names import name_key
from pipeline.keeping.opened import OpenedStore
from pipeline.keeping.raw import built_memos
from pipeline.keeping.rows import kept_fact_of

SPOT_CHECK = "spot check"  # why a change of a fact was made that nobody had flagged

_STILL_DONE = "NOT EXISTS (SELECT 1 FROM changes AS later WHERE later.undoes = changes.id)"


@dataclass(frozen=True)
class SpotChecked:
    """How many fields without a flag were looked at, and how many of them were wrong."""

    looked_at: int
    wrong: int


class ToReview(OpenedStore):
    """What the review of an evening needs to know of the store."""

    def visits_since(self, day: date | None) -> list[KeptVisit]:
        """The standing visits of this day and all later ones, in the order in which they were kept; of None, none."""
        sql = "SELECT DISTINCT memo FROM visits WHERE date >= ? AND stands = 1 ORDER BY memo"
        if day is None:
            return []
        with plain_errors(self.folder):
            memos = [row["memo"] for row in self._database.query(sql, [day.isoformat()])]
            found = built_memos(self._database, self.folder, memos)
            return [visit for built in found for visit in built.visits if visit.stands and visit.visit.date >= day]

    def visits_numbered(self, numbers: Sequence[int]) -> list[KeptVisit]:
        """Those of these visits that stand, in their order."""
        sql = "SELECT DISTINCT memo FROM visits WHERE id IN (SELECT value FROM json_each(?)) ORDER BY memo"
        with plain_errors(self.folder):
            memos = [row["memo"] for row in self._database.query(sql, [json.dumps(list(numbers))])]
            found = {
                visit.id: visit for built in built_memos(self._database, self.folder, memos) for visit in built.visits
            }
        return [found[number] for number in numbers if number in found and found[number].stands]

    def days_back(self, days: int) -> date | None:
        """The first of the last ``days`` days up to the newest visit; None in a store without visits."""
        with plain_errors(self.folder):
            newest = self._database.execute("SELECT max(date) FROM visits WHERE stands = 1").fetchone()[0]
        return None if newest is None else date.fromisoformat(newest) - timedelta(days=days - 1)

    def visits_on(self, day: date) -> list[KeptVisit]:
        """The standing visits of one day, in the order in which they were kept."""
        sql = "SELECT DISTINCT memo FROM visits WHERE date = ? AND stands = 1 ORDER BY memo"
        with plain_errors(self.folder):
            memos = [row["memo"] for row in self._database.query(sql, [day.isoformat()])]
            found = built_memos(self._database, self.folder, memos)
            return [visit for built in found for visit in built.visits if visit.stands and visit.visit.date == day]

    def once_flagged(self, fact_ids: Iterable[int]) -> set[int]:
        """Those of these facts whose flag a person has answered."""
        sql = """SELECT DISTINCT in_row FROM history WHERE in_table = 'facts' AND in_column = 'flagged' AND old = 1
                 AND in_row IN (SELECT value FROM json_each(?))"""
        with plain_errors(self.folder):
            return {row["in_row"] for row in self._database.query(sql, [json.dumps(list(fact_ids))])}

    def part_asked(self, flag_id: int) -> tuple[int, int]:
        """Which words a flag asks about that suspects another horse, half-open in the transcript.

        Raises NotFoundError, and CorrectionError for a flag that asks something else.
        """
        with plain_errors(self.folder):
            part = splitting.part_of(self._database, correcting.flag_row(self._database, flag_id))
            return part.first, part.last

    def last_known(self, horse_id: int, before: date, visit_id: int) -> list[tuple[date, KeptFact]]:
        """What stands of the horse's last visit before this one, with its day; [] when there is none."""
        sql = """SELECT facts.*, facts.date AS day FROM facts_in_full AS facts WHERE facts.visit = (
                     SELECT id FROM visits WHERE horse = :horse AND stands = 1 AND id <> :visit
                     AND date < :day ORDER BY date DESC, id DESC LIMIT 1
                 ) ORDER BY position"""
        asked = {"horse": horse_id, "visit": visit_id, "day": before.isoformat()}
        with plain_errors(self.folder):
            return [(date.fromisoformat(row["day"]), kept_fact_of(row)) for row in self._database.query(sql, asked)]

    def spot_checked(self) -> SpotChecked:
        """The outcomes of all spot checks that were not taken back; one field on several feet counts once."""
        sql = f"""SELECT count(*) AS looked_at, coalesce(sum(wrong), 0) AS wrong FROM (
                      SELECT max(kind <> 'accept') AS wrong FROM changes
                      WHERE why = :why AND fact IS NOT NULL AND {_STILL_DONE} GROUP BY at, memo, who
                  )"""
        with plain_errors(self.folder):
            row = next(iter(self._database.query(sql, {"why": SPOT_CHECK})))
        return SpotChecked(int(row["looked_at"]), int(row["wrong"]))

    def times_answered(self, horse_id: int, heard: str) -> int:
        """In how many visits of this horse a person said that the name heard so was its name."""
        sql = """SELECT count(DISTINCT visits.id) FROM flags JOIN visits ON visits.id = flags.visit
                 WHERE flags.kind = 'horse' AND flags.settled = 1 AND visits.horse = ? AND name_key(flags.quote) = ?"""
        with plain_errors(self.folder):
            return int(self._database.execute(sql, [horse_id, name_key(heard)]).fetchone()[0])
