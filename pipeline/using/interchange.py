"""A record between its file and its models: written as JSON that any store writes alike, read with suspicion."""

from __future__ import annotations

import base64
import binascii
import hashlib
import json
import unicodedata
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory

from pydantic import ValidationError

from pipeline.errors import FileMissingError, RecordError
from pipeline.judging import cautions
from pipeline.keeping import KeptHorse, KeptVisit, Prefer, Store, Taken
from pipeline.keeping.names import name_key
from pipeline.keeping.record_file import FORMAT, VERSION, MemoOnFile, RecordFile
from pipeline.using.origin import DISCLAIMER, program_version
from pipeline.using.redaction import redacted_file

SCHEMA_NAME = f"{FORMAT}-{VERSION}.schema.json"
_LARGEST = 1 << 30  # bytes of a file; more is no record of a farrier's
_LONGEST_NAME = 200
_LAST_POSITION = 2**31 - 1


def schema_text() -> str:
    """The JSON Schema (draft 2020-12) of a record file, made from the models."""
    schema = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": f"clinchbook record, version {VERSION}",
        **{key: value for key, value in RecordFile.model_json_schema().items() if key != "title"},
    }
    return json.dumps(schema, ensure_ascii=False, indent=2) + "\n"


def record_file(
    store: Store,
    horses: Sequence[KeptHorse],
    visits: Sequence[KeptVisit],
    *,
    on: date,
    since: date | None = None,
    redact: bool = False,
    with_audio: bool = False,
) -> RecordFile:
    """The record of these horses and visits as it goes out on the day ``on``."""
    leaving = store.leaving(horses, visits, since)
    memos = [_with_cautions(memo) for memo in leaving.memos]
    if with_audio:
        memos = [_with_sound(store, memo, row) for memo, row in zip(memos, leaving.memo_rows, strict=True)]
    file = RecordFile(
        format="clinchbook-record",
        version=1,
        exported_on=on,
        clinchbook=program_version(),
        note=DISCLAIMER,
        since=since,
        horses=leaving.horses,
        memos=memos,
        history=leaving.history,
    )
    return redacted_file(file) if redact else file


def as_json(file: RecordFile) -> str:
    """The file's text."""
    return json.dumps(file.model_dump(mode="json"), ensure_ascii=False, indent=2, allow_nan=False) + "\n"


def take_in(store: Store, path: Path, prefer: Prefer = Prefer.ASK) -> Taken:
    """Take in the record in ``path``: all of it or nothing; what is kept already adds nothing.

    Raises FileMissingError, and RecordError for a file that is no record, is redacted, or is at odds with the store.
    """
    file = read_record(path)
    with _sounds(file, path.name) as sounds:
        return store.take_in(file, sounds, prefer=prefer, why=f"taken in from {printable(path.name)}")


def read_record(path: Path) -> RecordFile:
    """The record in ``path``, checked from end to end; errors as in ``take_in``."""
    text = _text(path)
    _check_kind(text, path.name)
    try:
        file = RecordFile.model_validate_json(text, strict=True)
        as_json(file).encode("utf-8")
    except ValidationError as error:
        raise RecordError(f"{path.name} is no record that can be taken in: {_first(error)}.") from error
    except (ValueError, RecursionError) as error:  # numbers that are none, halves of characters
        raise RecordError(f"{path.name} holds a number or a character that cannot be kept.") from error
    problem = _problem(file)
    if problem:
        raise RecordError(f"{path.name} cannot be taken in: {problem}.")
    return file


def printable(text: str) -> str:
    """``text`` without line ends and other signs that cannot be printed."""
    return "".join("\ufffd" if unicodedata.category(sign).startswith("C") else sign for sign in text)


def _with_cautions(memo: MemoOnFile) -> MemoOnFile:
    return memo.model_copy(update={"cautions": cautions(fact for visit in memo.visits for fact in visit.facts)})


def _with_sound(store: Store, memo: MemoOnFile, row: int) -> MemoOnFile:
    original = store.memo(row).original
    # What another owner's horse was told of stays here, and so does a recording that never came along.
    if not memo.whole or not original.is_file():
        return memo
    return memo.model_copy(update={"sound": base64.b64encode(original.read_bytes()).decode("ascii")})


def _text(path: Path) -> str:
    try:
        if path.stat().st_size > _LARGEST:
            raise RecordError(f"{path.name} is larger than any record (1 GiB).")
        return path.read_bytes().decode("utf-8-sig")
    except FileNotFoundError as error:
        raise FileMissingError(f"There is no file {path}.") from error
    except UnicodeDecodeError as error:
        raise RecordError(f"{path.name} is no record: it is no UTF-8 text.") from error
    except (OSError, ValueError) as error:
        raise RecordError(f"{path.name} cannot be read.") from error


def _check_kind(text: str, name: str) -> None:
    try:
        given = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise RecordError(f"{name} is no record: it is no JSON text, or it is cut off.") from error
    if not isinstance(given, dict) or given.get("format") != FORMAT:
        raise RecordError(f"{name} is no record that clinchbook exported with --format json.")
    version = given.get("version")
    if isinstance(version, int) and version > VERSION:
        raise RecordError(f"{name} was written by a later clinchbook; please update clinchbook.")


def _first(error: ValidationError) -> str:
    problem = error.errors(include_url=False)[0]
    where = " ".join(str(part + 1) if isinstance(part, int) else str(part) for part in problem["loc"])
    return printable(f"{where or 'the file'}: {problem['msg']}")[:300]


def _problem(file: RecordFile) -> str | None:
    if file.redacted:
        return "it is redacted, so it no longer says whose it is; ask for the whole record"
    return next((problem for check in _CHECKS for problem in check(file)), None)


def _horse_problems(file: RecordFile) -> Iterator[str]:
    seen = set()
    for horse in file.horses:
        texts = [
            horse.name,
            horse.owner or "",
            horse.place or "",
            *horse.also_called,
            *horse.other,
            *horse.other.values(),
        ]
        if not name_key(horse.name):
            yield "a horse has no name"
        if max(map(len, (horse.name, *horse.also_called))) > _LONGEST_NAME:
            yield "the name of a horse is too long"
        if any(unicodedata.category(sign) == "Cc" and sign not in "\n\t" for text in texts for sign in text):
            yield f"what it says of {printable(horse.name)} holds a character that cannot be printed"
        key = (name_key(horse.name), name_key(horse.place))
        if key in seen:
            yield f"it has {printable(horse.name)} twice"
        seen.add(key)


def _memo_problems(file: RecordFile) -> Iterator[str]:
    seen: set[str | None] = {None}
    for number, memo in enumerate(file.memos, start=1):
        sha256 = memo.memo.sha256
        if sha256 in seen or sha256 is None or len(sha256) != 64 or set(sha256) - set("0123456789abcdef"):
            yield f"memo {number} has no hash of its own"
        seen.add(sha256)
        if len({visit.position for visit in memo.visits}) < len(memo.visits):
            yield f"memo {number} has two visits at one place"
        if any(visit.of_horse is not None and visit.of_horse >= len(file.horses) for visit in memo.visits):
            yield f"memo {number} has a visit of a horse that the file does not have"
        facts = [fact for visit in memo.visits for fact in visit.facts]
        flags = [*memo.flags, *(flag for visit in memo.visits for flag in visit.flags)]
        spans = [*(fact.span for fact in facts), *(flag.span for flag in flags)]
        if any(not 0 <= start <= end <= _LAST_POSITION for start, end in spans):
            yield f"memo {number} has words outside its transcript"
        if memo.memo.seconds is not None and memo.memo.seconds < 0:
            yield f"memo {number} is shorter than nothing"
        if printable(memo.memo.path or "") != (memo.memo.path or ""):
            yield f"the file name of memo {number} holds a character that cannot be printed"


_CHECKS = (_horse_problems, _memo_problems)


@contextmanager
def _sounds(file: RecordFile, name: str) -> Iterator[list[Path | None]]:
    with TemporaryDirectory(prefix="clinchbook-") as folder:
        yield [_sound(memo, Path(folder), number, name) for number, memo in enumerate(file.memos, start=1)]


def _sound(memo: MemoOnFile, folder: Path, number: int, name: str) -> Path | None:
    if memo.sound is None:
        return None
    try:
        data = base64.b64decode(memo.sound, validate=True)
    except (binascii.Error, ValueError) as error:
        raise RecordError(f"{name} cannot be taken in: the recording of memo {number} is damaged.") from error
    if hashlib.sha256(data).hexdigest() != memo.memo.sha256:
        raise RecordError(f"{name} cannot be taken in: the recording of memo {number} is not the one that was heard.")
    ending = Path(memo.memo.path or "").suffix[:9]
    path = folder / f"{number}{ending if ending[1:].isalnum() else ''}"
    path.write_bytes(data)
    return path
