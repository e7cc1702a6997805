"""The memos that the model is trained on, kept beside the bench so that training needs neither sound nor history.

``typed.jsonl.gz``: the open memos as read by earlier versions of the reader, each by one that had not been improved
with that memo, so that the errors are those of unseen talk. ``heard.jsonl.gz``: what the recogniser heard in the
hearing bench's tune takes, spoken from open memos by synthetic voices, and the visits that such a reader read there.
"""

from __future__ import annotations

import gzip
import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.record import Flag, Transcript, Visit, Word
from tests.bench.judging.heard import HeardTake
from tests.facts.scoring import load_gold

DATA = Path(__file__).resolve().parent / "data"
CORPUS = Path(__file__).resolve().parents[2] / "corpus"


@dataclass(frozen=True)
class PastReading:
    """An open memo as an earlier reader read it, and whether that reader is of late: what to expect of new memos."""

    gold: dict[str, Any]
    visits: list[Visit]
    fresh: bool = False


@dataclass(frozen=True)
class HeardReading:
    """A take with what a reader read in it, and whether that reader had not been improved with the memo."""

    take: HeardTake
    visits: list[Visit]
    fresh: bool = False


def open_memos() -> dict[str, dict[str, Any]]:
    """The open memos by their name."""
    return {gold["id"]: gold for path in sorted(CORPUS.glob("open_*.jsonl")) for gold in load_gold(path)}


def past_readings() -> Iterator[PastReading]:
    """Every open memo as a reader read it that did not know it yet."""
    memos = open_memos()
    with gzip.open(DATA / "typed.jsonl.gz", "rt", encoding="utf-8") as lines:
        for line in lines:
            told = json.loads(line)
            gold = told.get("gold") or memos[told["id"]]
            yield PastReading(gold, [Visit.model_validate(v) for v in told["visits"]], told.get("fresh", False))


def heard_readings() -> Iterator[HeardReading]:
    """What was heard in the tune takes, as a reader read it; ``fresh`` where that did not know the memo yet."""
    memos = open_memos()
    with gzip.open(DATA / "heard.jsonl.gz", "rt", encoding="utf-8") as lines:
        for line in lines:
            told = json.loads(line)
            flags = tuple(Flag.model_validate(flag) for flag in told["flags"])
            transcript = _transcript(told["words"])
            take = HeardTake(memos[told["id"]], told["voice"], told["condition"], transcript, flags)
            visits = [Visit.model_validate(visit) for visit in told["visits"]]
            yield HeardReading(take, visits, told.get("fresh", False))


def _transcript(rows: Iterable[list[Any]]) -> Transcript:
    words = [
        Word(
            text=text,
            start=start,
            end=start + len(text),
            start_s=start_s,
            end_s=end_s,
            probability=probability,
            heard=heard,
            support=support,
        )
        for text, start, start_s, end_s, probability, heard, support in rows
    ]
    text = ""
    for word in words:
        text += " " * (word.start - len(text)) + word.text
    return Transcript(text=text, words=words)


def write_readings(readings: Iterable[HeardReading]) -> int:
    """Keep what was heard and read in the takes for training; returns how many they are."""
    lines = []
    for reading in readings:
        take = reading.take
        words = [[w.text, w.start, w.start_s, w.end_s, round(w.probability, 4), w.heard, w.support]
                 for w in take.transcript.words]  # fmt: skip
        flags = [flag.model_dump(mode="json") for flag in take.flags]
        told = {"id": take.gold["id"], "voice": take.voice, "condition": take.condition,
                "fresh": reading.fresh}  # fmt: skip
        visits = [visit.model_dump(mode="json", exclude_defaults=True) for visit in reading.visits]
        lines.append(json.dumps({**told, "words": words, "flags": flags, "visits": visits}, ensure_ascii=False))
    _write(DATA / "heard.jsonl.gz", lines)
    return len(lines)


def add_past(corpus: Path, reader: Callable[[dict[str, Any]], Sequence[Visit]]) -> int:
    """Keep the readings of a corpus that the reader does not know yet beside the earlier ones; returns how many.

    The gold is kept with them, since such a corpus need not lie among the open ones.
    """
    with gzip.open(DATA / "typed.jsonl.gz", "rt", encoding="utf-8") as lines:
        kept = [line.rstrip("\n") for line in lines]
    known = {json.loads(line)["id"] for line in kept}
    new = [gold for gold in load_gold(corpus) if gold["id"] not in known]
    for gold in new:
        visits = [visit.model_dump(mode="json", exclude_defaults=True) for visit in reader(gold)]
        kept.append(json.dumps({"id": gold["id"], "fresh": True, "gold": gold, "visits": visits}, ensure_ascii=False))
    _write(DATA / "typed.jsonl.gz", kept)
    return len(new)


def _write(path: Path, lines: Iterable[str]) -> None:
    with path.open("wb") as file, gzip.GzipFile(fileobj=file, mode="wb", filename="", mtime=0) as packed:
        packed.write("".join(line + "\n" for line in lines).encode())
