"""The command line under test, with a hearer that knows what was said and a reader of a few words."""

from __future__ import annotations

import wave
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path

import pytest
from typer.testing import CliRunner

from pipeline.cli import app
from pipeline.errors import NoSpeechError
from pipeline.hearing.intake import take_in
from pipeline.record import Fact, Flag, HorseMatch, Memo, RosterHorse, Status, Transcript, Visit, Word
from pipeline.vocabulary import Vocabulary

SAID = "Bramble. Thrush in the left hind."


@dataclass(frozen=True)
class Ended:
    """How a command ended."""

    code: int
    out: str
    err: str


Run = Callable[..., Ended]


@pytest.fixture
def run() -> Run:
    """Run the command line in this process: ``run("roster", "list", given=b"...")``."""

    def running(*arguments: str | Path, given: bytes | None = None) -> Ended:
        result = CliRunner().invoke(app, [str(argument) for argument in arguments], input=given)
        return Ended(result.exit_code, result.stdout, result.stderr)

    return running


@dataclass(frozen=True)
class FakeHeard:
    """What the fake hearer gives back."""

    memo: Memo
    transcript: Transcript
    flags: list[Flag] = field(default_factory=list)


@dataclass
class FakeHearer:
    """Hears the same words in every sound; ``heard`` tells how often it was asked. Files called silent hold none."""

    heard: list[tuple[str, tuple[str, ...]]] = field(default_factory=list)
    learned: list[str] = field(default_factory=list)

    def learn(self, vocabulary: Vocabulary) -> None:
        """Note the version of the words."""
        self.learned.append(vocabulary.version)

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> FakeHeard:
        """Check the file as the real one does and pretend to hear SAID."""
        self.heard.append((path.name, tuple(names)))
        with take_in(path) as memo:
            if "silent" in path.name:
                raise NoSpeechError(f"Nobody speaks in {path.name}.")
            day = recorded or date(2026, 3, 2)
            stamp = datetime(day.year, day.month, day.day, 9, 30)
            kept = Memo(path=str(path), sha256=memo.sha256, seconds=1.0, recorded_at=stamp, recorded_from="test")
        words, start = [], 0
        for number, text in enumerate(SAID.split()):
            start = SAID.index(text, start)
            span = (start, start + len(text))
            words.append(
                Word(text=text, start=span[0], end=span[1], start_s=number, end_s=number + 0.5, probability=0.9)
            )
        return FakeHeard(kept, Transcript(text=SAID, words=words))


class FakeReader:
    """Finds one thrush wherever the text says the word."""

    def read(self, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        """One visit: the horse is the first word of the text."""
        name = transcript.text.split(".")[0].strip()
        known = any(horse.name == name for horse in roster)
        start = transcript.text.lower().find("thrush")
        facts = []
        if start >= 0:
            begin, end = transcript.seconds_of(start, start + 6)
            facts = [
                Fact(
                    foot="LH",
                    slot="finding",
                    value="thrush",
                    status=Status.PRESENT,
                    quote=transcript.text[start : start + 6],
                    span=(start, start + 6),
                    start=begin,
                    end=end,
                    rules=["foot: named beside it"],
                )
            ]
        match = HorseMatch.KNOWN if known else HorseMatch.NEW
        return [Visit(horse=name, horse_match=match, date=day, facts=facts)]


@pytest.fixture
def hearer(monkeypatch: pytest.MonkeyPatch) -> FakeHearer:
    """Put the fake hearer and reader in place of the real ones; returns the hearer."""
    fake = FakeHearer()
    monkeypatch.setattr("pipeline.ingest.load_hearer", lambda settings, vocabulary: fake)
    monkeypatch.setattr("pipeline.ingest.load_reader", lambda vocabulary: FakeReader())
    return fake


MakeMemo = Callable[..., Path]


@pytest.fixture
def make_memo(tmp_path: Path) -> MakeMemo:
    """Write a short WAV whose bytes differ with ``seed``: ``make_memo("a.wav", seed=3)``."""

    def making(name: str, seed: int = 0, folder: Path = tmp_path / "memos") -> Path:
        folder.mkdir(parents=True, exist_ok=True)
        path = folder / name
        with wave.open(str(path), "wb") as sound:
            sound.setnchannels(1)
            sound.setsampwidth(2)
            sound.setframerate(16000)
            sound.writeframes(bytes([seed, 0]) * 1600)
        return path

    return making
