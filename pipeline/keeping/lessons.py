"""What is learned from corrections: mishearings of the trade's words, and names that are said for a horse."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from pipeline.errors import NotFoundError
from pipeline.keeping.database import insert_row, plain_errors, update_row
from pipeline.keeping.names import name_key
from pipeline.keeping.opened import OpenedStore, login_name, now
from pipeline.keeping.rows import as_json

if TYPE_CHECKING:
    from sqlite_utils import Database

LEARNED_NAME = "learned from a correction"
FORGOTTEN_NAME = "a learned name was forgotten"


class LessonStep(StrEnum):
    """What happened to a mishearing."""

    SEEN = "seen"
    LEARNED = "learned"
    FORGOTTEN = "forgotten"


@dataclass(frozen=True)
class WordLesson:
    """What the recogniser writes (``form``) where something of the trade was said: a class of words and its name."""

    name: str
    canonical: str
    form: str


@dataclass(frozen=True)
class LearnedName:
    """A name that is said for a horse, learned from a correction."""

    horse: str
    name: str


def write_lesson(database: Database, lesson: WordLesson, step: LessonStep, change: int | None) -> None:
    """Write down what happened to a mishearing, inside the caller's transaction."""
    row = {
        "at": now(),
        "who": login_name(),
        "what": step.value,
        "class": lesson.name,
        "canonical": lesson.canonical,
        "form": lesson.form,
        "change": change,
    }
    insert_row(database, "lessons", row)


class Lessons(OpenedStore):
    """What was learned, and how often a mishearing was seen. Every method raises StoreError."""

    def note_lesson(self, lesson: WordLesson, step: LessonStep, *, change: int | None = None) -> None:
        """Write down that a mishearing was seen (in ``change``), learned or forgotten."""
        with self._writing(None, "a lesson"):
            write_lesson(self._database, lesson, step, change)

    def learned_in(self, changes: Iterable[int]) -> list[WordLesson]:
        """The mishearings that were learned from these corrections."""
        sql = """SELECT DISTINCT class, canonical, form FROM lessons WHERE what = 'learned'
                 AND change IN (SELECT value FROM json_each(?)) ORDER BY id"""
        with plain_errors(self.folder):
            rows = self._database.execute(sql, [as_json(sorted(changes))]).fetchall()
        return [WordLesson(*row) for row in rows]

    def times_seen(self, lesson: WordLesson) -> int:
        """How often this mishearing was corrected, those corrections aside that were taken back."""
        sql = """SELECT count(*) FROM lessons WHERE (class, canonical, form) = (?, ?, ?) AND what = 'seen'
                 AND NOT EXISTS (SELECT 1 FROM changes WHERE changes.undoes = lessons.change)"""
        with plain_errors(self.folder):
            return int(self._database.execute(sql, [lesson.name, lesson.canonical, lesson.form]).fetchone()[0])

    def lesson_refused(self, lesson: WordLesson) -> bool:
        """Whether he took this mishearing out again: then it is learned only when he says so."""
        sql = "SELECT 1 FROM lessons WHERE (class, canonical, form) = (?, ?, ?) AND what = 'forgotten' LIMIT 1"
        with plain_errors(self.folder):
            found = self._database.execute(sql, [lesson.name, lesson.canonical, lesson.form]).fetchone()
        return found is not None

    def call_also(self, horse_id: int, name: str, *, who: str | None = None) -> bool:
        """Let a horse be called so too; False when a horse of the store is called so already. Raises NotFoundError."""
        with self._writing(who, LEARNED_NAME):
            if _is_called(self._database, name):
                return False
            also = [*_also_called(self._database, horse_id), name]
            update_row(self._database, "horses", horse_id, {"also_called": as_json(also)})
            return True

    def learned_names(self) -> list[LearnedName]:
        """The names that were learned from corrections and still count, oldest first."""
        sql = """SELECT DISTINCT horses.id, horses.name, said.value AS said FROM history
                 JOIN horses ON horses.id = history.in_row JOIN json_each(history.new) AS said
                 WHERE in_table = 'horses' AND in_column = 'also_called' AND why = :why
                 AND said.value NOT IN (SELECT value FROM json_each(history.old))
                 AND said.value IN (SELECT value FROM json_each(horses.also_called)) ORDER BY history.id"""
        with plain_errors(self.folder):
            rows = list(self._database.query(sql, {"why": LEARNED_NAME}))
        return [LearnedName(row["name"], row["said"]) for row in rows]

    def forget_name(self, name: str, *, who: str | None = None) -> list[LearnedName]:
        """Take a learned name out again; returns what was taken out, [] when no such name was learned."""
        gone = [learned for learned in self.learned_names() if name_key(learned.name) == name_key(name)]
        if not gone:
            return []
        with self._writing(who, FORGOTTEN_NAME):
            sql = (
                "SELECT id, also_called FROM horses WHERE EXISTS (SELECT 1 FROM json_each(also_called) WHERE value = ?)"
            )
            for learned in gone:
                for row in list(self._database.query(sql, [learned.name])):
                    left = [other for other in json.loads(row["also_called"]) if other != learned.name]
                    update_row(self._database, "horses", row["id"], {"also_called": as_json(left)})
        return gone

    def name_refused(self, horse_id: int, name: str) -> bool:
        """Whether this name was learned for the horse once and forgotten again."""
        sql = """SELECT old, new FROM history WHERE in_table = 'horses' AND in_row = ? AND in_column = 'also_called'
                 AND why = ?"""
        with plain_errors(self.folder):
            rows = list(self._database.query(sql, [horse_id, FORGOTTEN_NAME]))
        gone = {name_key(other) for row in rows for other in {*json.loads(row["old"])} - {*json.loads(row["new"])}}
        return name_key(name) in gone


def _is_called(database: Database, name: str) -> bool:
    sql = """SELECT 1 FROM horses WHERE name_key = :key
             OR EXISTS (SELECT 1 FROM json_each(also_called) WHERE name_key(value) = :key) LIMIT 1"""
    return database.execute(sql, {"key": name_key(name)}).fetchone() is not None


def _also_called(database: Database, horse_id: int) -> list[str]:
    row = database.execute("SELECT also_called FROM horses WHERE id = ?", [horse_id]).fetchone()
    if row is None:
        raise NotFoundError(f"There is no horse {horse_id} in the store.")
    return list(json.loads(row[0]))
