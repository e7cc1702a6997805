"""The demo day as it was heard once, read and judged anew: words and seconds are kept here, the sound is the demo's."""

from __future__ import annotations

import hashlib
import json
import shutil
from collections.abc import Callable, Iterator
from datetime import date, datetime
from pathlib import Path
from typing import Any

import pytest

from pipeline.errors import StoreError
from pipeline.judging import judge
from pipeline.keeping import Store
from pipeline.keeping.roster import read_roster
from pipeline.reading import Reader
from pipeline.record import Flag, FlagKind, Memo, MemoRecord, RosterHorse, Transcript, Visit, Word
from pipeline.using.review import Review
from pipeline.vocabulary import load_vocabulary

DEMO = Path(__file__).resolve().parents[3] / "demo_audio"
HEARD = Path(__file__).with_name("demo_heard.jsonl")
Keep = Callable[..., list[int]]


def no_disk(*given: object) -> None:
    """What fails when nothing more can be written."""
    raise StoreError("The disk is full.")


@pytest.fixture(scope="session")
def reader() -> Reader:
    return Reader(load_vocabulary())


def heard_memos() -> list[dict[str, Any]]:
    """The demo's memos as they were heard."""
    return [json.loads(line) for line in HEARD.read_text(encoding="utf-8").splitlines()]


def transcript_of(memo: dict[str, Any]) -> Transcript:
    """The words of a memo as they were heard."""
    text = memo["transcript"]
    words = [
        Word(text=text[start:end], start=start, end=end, start_s=start_s, end_s=end_s, probability=probability)
        for start, end, start_s, end_s, probability in memo["words"]
    ]
    return Transcript(text=text, words=words)


@pytest.fixture(scope="session")
def demo_folder(reader: Reader, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A store with the demo day in it; never changed."""
    folder = tmp_path_factory.mktemp("demo") / "store"
    keep_the_demo(folder, reader)
    return folder


def keep_the_demo(folder: Path, reader: Reader) -> None:
    """Make a store with the demo day in it, read and judged by today's rules."""
    with Store.open(folder) as store:
        roster = read_roster(DEMO / "roster.csv")
        store.add_horses(roster)
        for memo in heard_memos():
            transcript, original = transcript_of(memo), DEMO / memo["audio"]
            recorded = datetime.fromisoformat(memo["recorded_at"])
            visits = judge(reader.read(transcript, roster, recorded.date()), transcript)
            sound = Memo(
                path=str(original), sha256=hashlib.sha256(original.read_bytes()).hexdigest(), seconds=memo["seconds"],
                recorded_at=recorded, recorded_from="container",
            )  # fmt: skip
            flags = [Flag.model_validate(flag) for flag in memo["flags"]]
            record = MemoRecord(memo=sound, transcript=transcript.text, visits=visits, flags=flags)
            store.keep(record, transcript, original)


@pytest.fixture
def demo(demo_folder: Path, tmp_path: Path, reader: Reader) -> Iterator[Review]:
    """A review of the demo day, in a store of the test's own."""
    folder = tmp_path / "demo-store"
    shutil.copytree(demo_folder, folder)
    with Store.open(folder) as store:
        yield Review(store, load_vocabulary(), "Reviewer", reader)


@pytest.fixture
def yard(tmp_path: Path, reader: Reader) -> Iterator[Review]:
    """A review of a store with three horses and no memo yet."""
    with Store.open(tmp_path / "yard") as store:
        store.add_horses(
            [RosterHorse(name="Hester", place="Quince Farm"), RosterHorse(name="Rowan"), RosterHorse(name="Figaro")]
        )
        yield Review(store, load_vocabulary(), "Reviewer", reader)


def unclear_flag(transcript: Transcript, quote: str) -> Flag:
    """What hearing says of a stretch that it was unsure of."""
    span = transcript.text.index(quote), transcript.text.index(quote) + len(quote)
    start, end = transcript.seconds_of(*span)
    reason = "these words could not be made out with any certainty"
    return Flag(kind=FlagKind.UNCLEAR_SPEECH, reason=reason, quote=quote, span=span, start=start, end=end)


@pytest.fixture
def hear(tmp_path: Path, reader: Reader) -> Keep:
    """Keep a memo as if it had been heard, a word every half second; ``unsure`` words were hard to hear.

    ``unclear`` is a stretch that could not be made out; with ``guessed_day`` the memo's day is in doubt.
    """

    def hearing(
        review: Review,
        text: str,
        day: str = "2026-05-12",
        unsure: tuple[str, ...] = (),
        unclear: str = "",
        guessed_day: bool = False,
        read: Reader | None = None,
    ) -> list[int]:
        words, at = [], 0
        for number, said in enumerate(text.split()):
            at = text.index(said, at)
            words.append(
                Word(
                    text=said, start=at, end=at + len(said), start_s=number / 2, end_s=number / 2 + 0.4,
                    probability=0.2 if said.strip(".,") in unsure else 0.95,
                )
            )  # fmt: skip
            at += len(said)
        transcript = Transcript(text=text, words=words)
        flags = [unclear_flag(transcript, unclear)] if unclear else []
        visits: list[Visit] = judge(
            (read or reader).read(transcript, review.store.roster(), date.fromisoformat(day)), transcript, flags=flags
        )
        path = tmp_path / f"memo{len(review.store.memos())}.wav"
        path.write_bytes(f"{text}{day}".encode() * 20)
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        memo = Memo(path=str(path), sha256=digest, seconds=len(words) / 2)
        if guessed_day:
            flags.append(Flag(kind=FlagKind.DATE, reason="the day was taken from the file's time"))
        return review.store.keep(MemoRecord(memo=memo, transcript=text, visits=visits, flags=flags), transcript, path)

    return hearing
