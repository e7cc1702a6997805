"""Real people: the readings and spoken card names of Debian's pocketsphinx-testdata, with their texts."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from tests.bench.hearing.figures import Figures
from tests.bench.hearing.filling import Job
from tests.bench.hearing.recognising import Listener
from tests.bench.hearing.terms import Terms

DATA = Path("/usr/share/pocketsphinx/test/data")
FOLDERS = ("librivox", "cards")
HOW_TO_GET_READINGS = "The real readings are missing: install Debian's pocketsphinx-testdata."


def readings(folder: str) -> Iterator[tuple[Path, str]]:
    """Each file and what is said in it."""
    (list_path,) = (DATA / folder).glob("*transcription")
    for text, stem in re.findall(r"^(.*)\((\S+)\)\s*$", list_path.read_text(encoding="utf-8"), re.MULTILINE):
        yield DATA / folder / f"{stem}.wav", re.sub(r"</?s>", " ", text)


def real_jobs() -> list[Job]:
    """What is to be heard for the rows of the readings; nothing where they are missing."""
    return [(path, ()) for folder in FOLDERS if DATA.is_dir() for path, _ in readings(folder)]


def real_figures(folder: str, listener: Listener) -> Figures:
    """Words alone: the readings have no facts, and none of the trade's words."""
    figures = Figures()
    for path, text in readings(folder):
        figures.add({"text": text}, listener.hear(path, []), None, Terms(frozenset(), frozenset()))
    return figures
