"""The memos that the model is trained on, kept beside the bench so that training needs neither sound nor history.

``typed.jsonl.gz``: the open memos as read by earlier versions of the reader, each by one that had not been improved
with that memo, so that the errors are those of unseen talk. ``heard.jsonl.gz``: what the recogniser heard in the
hearing bench's tune takes, spoken from open memos by synthetic voices, and the visits that such a reader read there.
With each reading goes what a second reader that did not know the memo makes of its facts (``python -m
tests.bench.second_reader --left-out`` writes that anew).
"""

from __future__ import annotations

import gzip
import json
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Flag, Status, Transcript, Visit, Word
from tests.bench.judging.heard import HeardTake
from tests.facts.scoring import load_gold

DATA = Path(__file__).resolve().parent / "data"
CORPUS = Path(__file__).resolve().parents[2] / "corpus"


# Of each fact of a reading, in order, in ten-thousandths: the chance of its status, of a plan, of an earlier time and
# of its foot, by a second reader that did not know the memo; nothing of a fact that it has no view of.
Seconds = Sequence[Sequence[int]]
_PARTS = 10_000
_PUT = (Status.PLANNED, Status.HISTORY)  # what a fact may be put right to
NO_SECONDS = (
    "Of some readings it is not known what a second reader makes of them that did not know the memo: "
    "python -m tests.bench.second_reader --left-out first."
)


def facts_of(visits: Iterable[Visit]) -> list[Fact]:
    """The facts of all visits, in order."""
    return [fact for visit in visits for fact in visit.facts]


def seconds_of(facts: Iterable[Fact], views: Mapping[int, View]) -> list[list[int]]:
    """What is kept of the views of these facts, by the fact's id."""
    return [_second(fact, views[id(fact)]) if id(fact) in views else [] for fact in facts]


def _second(fact: Fact, view: View) -> list[int]:
    statuses = (fact.status, *_PUT)
    return [round(_PARTS * chance) for chance in (*map(view.of_status, statuses), view.of_foot(fact.foot))]


def seconds_by_shipped(visits: Iterable[Visit], text: str) -> list[list[int]]:
    """The same by the second reader that is shipped, of a memo that it does not know."""
    facts = facts_of(visits)
    return seconds_of(facts, second_reader().views(Surroundings(text), facts))


def views_of(facts: Iterable[Fact], seconds: Seconds) -> dict[int, View]:
    """The views of these facts, by the fact's id, as far as they were kept."""
    return {id(fact): _view(fact, kept) for fact, kept in zip(facts, seconds, strict=True) if kept}


def _view(fact: Fact, kept: Sequence[int]) -> View:
    as_read, *put, foot = (part / _PARTS for part in kept)
    chances = {**dict(zip(_PUT, put, strict=True)), fact.status: as_read}
    statuses = [chances.get(status, 0.0) for status in STATUSES]
    return View((*statuses, 0.0), tuple(foot if one == fact.foot else 0.0 for one in OF_FEET))


def of_what_stands(read: Sequence[Fact], stands: Sequence[Fact], seconds: Seconds) -> Seconds:
    """The same chances with that of the status that stands, once facts were put right, in front."""
    return [
        kept if before.status is after.status else [kept[1 + _PUT.index(after.status)], *kept[1:]]
        for before, after, kept in zip(read, stands, seconds, strict=True)
    ]


@dataclass(frozen=True)
class PastReading:
    """An open memo as an earlier reader read it, and whether that reader is of late: what to expect of new memos."""

    gold: dict[str, Any]
    visits: list[Visit]
    fresh: bool = False
    second: Seconds = ()


@dataclass(frozen=True)
class HeardReading:
    """A take with what a reader read in it, and whether that reader had not been improved with the memo."""

    take: HeardTake
    visits: list[Visit]
    fresh: bool = False
    second: Seconds = ()


def all_have_seconds(readings: Iterable[PastReading | HeardReading]) -> bool:
    """Whether it is known of every fact what a second reader makes of it that did not know the memo."""
    return all(len(one.second) == len(facts_of(one.visits)) for one in readings)


def open_memos() -> dict[str, dict[str, Any]]:
    """The open memos by their name."""
    return {gold["id"]: gold for path in sorted(CORPUS.glob("open_*.jsonl")) for gold in load_gold(path)}


def past_readings() -> Iterator[PastReading]:
    """Every open memo as a reader read it that did not know it yet."""
    memos = open_memos()
    with gzip.open(DATA / "typed.jsonl.gz", "rt", encoding="utf-8") as lines:
        for line in lines:
            told = json.loads(line)
            gold = _gold_of(told, memos)
            visits = [Visit.model_validate(v) for v in told["visits"]]
            yield PastReading(gold, visits, told.get("fresh", False), told["second"])


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
            yield HeardReading(take, visits, told.get("fresh", False), told["second"])


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
    """Keep what was heard and read in the takes for training; returns how many they are.

    The shipped second reader knows these memos, so what others make of them is to be learnt (``NO_SECONDS``).
    """
    lines = []
    for reading in readings:
        take = reading.take
        words = [[w.text, w.start, w.start_s, w.end_s, round(w.probability, 4), w.heard, w.support]
                 for w in take.transcript.words]  # fmt: skip
        flags = [flag.model_dump(mode="json") for flag in take.flags]
        told = {"id": take.gold["id"], "voice": take.voice, "condition": take.condition,
                "fresh": reading.fresh}  # fmt: skip
        visits = [visit.model_dump(mode="json", exclude_defaults=True) for visit in reading.visits]
        told |= {"words": words, "flags": flags, "visits": visits, "second": reading.second}
        lines.append(json.dumps(told, ensure_ascii=False))
    _write(DATA / "heard.jsonl.gz", lines)
    return len(lines)


def add_past(corpus: Path, reader: Callable[[dict[str, Any]], Sequence[Visit]]) -> int:
    """Keep the readings of a corpus that the readers do not know yet beside the earlier ones; returns how many.

    The gold is kept with them, since such a corpus need not lie among the open ones.
    """
    with gzip.open(DATA / "typed.jsonl.gz", "rt", encoding="utf-8") as lines:
        kept = [line.rstrip("\n") for line in lines]
    known = {json.loads(line)["id"] for line in kept}
    new = [gold for gold in load_gold(corpus) if gold["id"] not in known]
    for gold in new:
        found = reader(gold)
        visits = [visit.model_dump(mode="json", exclude_defaults=True) for visit in found]
        second = seconds_by_shipped(found, gold["text"])
        told = {"id": gold["id"], "fresh": True, "gold": gold, "visits": visits, "second": second}
        kept.append(json.dumps(told, ensure_ascii=False))
    _write(DATA / "typed.jsonl.gz", kept)
    return len(new)


def renew_seconds(reader_of: Callable[[str], SecondReader]) -> None:
    """Keep with all readings what the second reader says that ``reader_of`` a memo's name, in the place of what was."""
    memos = open_memos()
    for name in ("typed", "heard"):
        path, lines = DATA / f"{name}.jsonl.gz", []
        with gzip.open(path, "rt", encoding="utf-8") as kept:
            for told in map(json.loads, kept):
                text = _transcript(told["words"]).text if "words" in told else _gold_of(told, memos)["text"]
                facts = facts_of(Visit.model_validate(visit) for visit in told["visits"])
                views = reader_of(told["id"]).views(Surroundings(text), facts)
                lines.append(json.dumps({**told, "second": seconds_of(facts, views)}, ensure_ascii=False))
        _write(path, lines)


def _gold_of(told: dict[str, Any], memos: Mapping[str, dict[str, Any]]) -> dict[str, Any]:
    """What was meant in a typed memo, which stands with it where it is not among the open ones."""
    found: dict[str, Any] = told.get("gold") or memos[told["id"]]
    return found


def _write(path: Path, lines: Iterable[str]) -> None:
    with path.open("wb") as file, gzip.GzipFile(fileobj=file, mode="wb", filename="", mtime=0) as packed:
        packed.write("".join(line + "\n" for line in lines).encode())
