"""Many memos as JSON lines: one request a line in, one record a line out, in order.

A request is ``{"id", "date", "roster", "text"}`` or the same with ``"audio"``; other keys are passed over.
"""

from __future__ import annotations

import datetime
import json
from collections.abc import Callable, Iterator
from pathlib import Path

from pydantic import BaseModel, ValidationError

from pipeline.cli.endings import exit_code_of, say
from pipeline.cli.output import print_json
from pipeline.cli.text_input import STDIN, read_bytes
from pipeline.errors import ClinchbookError, TextError, WeightsError
from pipeline.ingest import failed_record
from pipeline.record import FlagKind, MemoRecord, RosterHorse


class Request(BaseModel):
    """One line: a memo's id, its day (None: today, or the sound's own), the roster's names, and text or audio."""

    id: str | int | None = None
    date: datetime.date | None = None
    roster: list[str] = []
    text: str | None = None
    audio: str | None = None

    def horses(self) -> list[RosterHorse]:
        """The roster's names as horses; one without a name is none."""
        return [RosterHorse(name=name) for name in self.roster if name.strip()]

    def needed(self, key: str) -> str:
        """The text or the audio of the request. Raises TextError when the line has none."""
        value: str | None = getattr(self, key)
        if not value or not value.strip():
            raise TextError(f'The line has no "{key}".')
        return value


class Answerer:
    """Answers every line of a file with one object on stdout and every problem with one sentence on stderr."""

    def __init__(self, answer: Callable[[Request], MemoRecord], failure: FlagKind) -> None:
        self.answer = answer
        self.failure = failure

    def run(self, path: Path) -> int:
        """Answer all lines; returns the exit code, which is 0 only when every line was answered with a record."""
        problems: list[ClinchbookError] = []
        where = "stdin" if path == STDIN else path.name
        for number, raw in _numbered_lines(path):
            record, problem = self._answer_line(raw)
            if problem:
                say(f"{where} line {number}: {problem}")
                problems.append(problem)
            print_json(record.model_dump(mode="json"))
        if not problems:
            return 0
        return exit_code_of(problems)

    def _answer_line(self, raw: bytes) -> tuple[MemoRecord, ClinchbookError | None]:
        name: str | None = None
        try:
            given = _parse(_decoded(raw))
            name = _name_of(given)
            record = self.answer(_request(given))
        except WeightsError:  # no other line could be answered either
            raise
        except ClinchbookError as problem:
            failed = failed_record(problem, self.failure)
            return failed.model_copy(update={"id": name}), problem
        except UnicodeEncodeError:
            halved = TextError("The line holds half of a character, written as an escape.")
            return failed_record(halved, self.failure).model_copy(update={"id": name}), halved
        return record.model_copy(update={"id": name}), None


def _numbered_lines(path: Path) -> Iterator[tuple[int, bytes]]:
    for number, raw in enumerate(read_bytes(path).split(b"\n"), start=1):
        if raw.strip():
            yield number, raw


def _decoded(raw: bytes) -> str:
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise TextError("The line is not UTF-8 text.") from error


def _parse(line: str) -> dict[str, object]:
    try:
        given = json.loads(line)
    except (ValueError, RecursionError) as error:  # no JSON, a number of thousands of digits, nested too deep
        raise TextError("This is not one JSON object on one line.") from error
    if not isinstance(given, dict):
        raise TextError("This is not one JSON object on one line.")
    return given


def _name_of(given: dict[str, object]) -> str | None:
    name = given.get("id")
    return str(name) if isinstance(name, str | int) else None


def _request(given: dict[str, object]) -> Request:
    try:
        return Request.model_validate(given)
    except ValidationError as error:
        key = str(error.errors()[0]["loc"][0])
        raise TextError(f'The line\'s "{key}" is not of the kind that belongs there.') from error
