"""The command line in a process of its own, with a hearer that takes what was said from a table."""

from __future__ import annotations

import os
import random
import wave
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import cache
from importlib import import_module
from pathlib import Path
from unittest import mock

from typer.testing import CliRunner

from pipeline.cli import app
from pipeline.hearing.intake import take_in
from pipeline.hearing.recorded import recorded_at
from pipeline.reading import Reader
from pipeline.record import Flag, Memo, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.endurance.apart import run_apart

SAID = "Bramble. Left front, mild thrush in the sulcus, no heat. Six nails. Back in six weeks."
NOBODY = 65534


@dataclass(frozen=True)
class Ended:
    """How a command ended. ``trouble`` is not empty when it ended in no way a command may."""

    code: int
    out: str
    err: str
    trouble: str = ""

    def refused_with_a_sentence(self, *codes: int) -> bool:
        """Whether it ended with one of these codes and with plain sentences on stderr."""
        lines = self.err.strip().splitlines()
        plain = bool(lines) and all(line[:1].isupper() or line[:1] in "/(" for line in lines)
        return not self.trouble and self.code in codes and plain and "Traceback" not in self.err

    def told(self) -> str:
        """The ending in a few words."""
        return f"exit code {self.code}, “{self.err.strip()}”{self.trouble[-400:]}"


@dataclass(frozen=True)
class Heard:
    """What the hearer gives back."""

    memo: Memo
    transcript: Transcript
    flags: list[Flag] = field(default_factory=list)


class TableHearer:
    """Checks and dates a file as the recogniser does, and hears the same words in each."""

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> Heard:
        """The memo, and SAID."""
        with take_in(path) as memo:
            when = recorded_at(path.name, (), memo.modified_at, recorded)
            kept = Memo(
                path=str(path), sha256=memo.sha256, seconds=1, recorded_at=when.moment, recorded_from=when.source
            )
        return Heard(kept, Transcript(text=SAID), list(when.flags))


def wav(path: Path, number: int, frames: int = 8000) -> Path:
    """A short WAV of noise that no other number gives."""
    with wave.open(str(path), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(16000)
        sound.writeframes(random.Random(f"sound {number}").randbytes(2 * frames))
    return path


@cache
def loaded_reader() -> Reader:
    """The real reader, loaded once for all children, and with it what the commands import when they need it."""
    for name in ("reporting", "output", "daybook", "lines"):
        import_module(f"pipeline.cli.{name}")
    import_module("rich.progress")
    import_module("pipeline.judging")
    import_module("pipeline.using.search")
    import_module("pipeline.using.review.spot_checks")
    reader = Reader(load_vocabulary())
    reader.read(Transcript(text=SAID), [], date(2026, 3, 2))
    return reader


def command(*arguments: str | Path, given: bytes | None = None, as_nobody: bool = False) -> Ended:
    """Run ``clinchbook`` with these arguments in a child; ``as_nobody`` gives up all rights of root first."""

    reader = loaded_reader()

    def running() -> Ended:
        if as_nobody:
            os.setgroups([])
            os.setgid(NOBODY)
            os.setuid(NOBODY)
        with (
            mock.patch("pipeline.ingest.load_hearer", return_value=TableHearer()),
            mock.patch("pipeline.ingest.load_reader", return_value=reader),
        ):
            result = CliRunner().invoke(app, [str(argument) for argument in arguments], input=given)
        odd = result.exception if not isinstance(result.exception, SystemExit | None) else None
        return Ended(result.exit_code, result.stdout, result.stderr, repr(odd) if odd else "")

    ending = run_apart(running, seconds=120)
    if ending.trouble:
        return Ended(70, "", "", ending.trouble)
    ended: Ended = ending.value
    return ended
