"""Ten minutes of each noise as a memo: how many words and facts does a recogniser make of nothing said?"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import numpy as np

from pipeline.ingest import spoken_names
from pipeline.record import RosterHorse
from tests.bench.hearing.conditions import write_wav
from tests.bench.hearing.figures import core_seconds
from tests.bench.hearing.filling import Job
from tests.bench.hearing.making import small_talk
from tests.bench.hearing.noises import RATE, noise
from tests.bench.hearing.recognising import Listener
from tests.bench.hearing.running import Bench
from tests.bench.hearing.takes import NOISES, SEED

MINUTES = 10
NOISE_COLUMNS = ("noise", "minutes", "configuration", "device", "words", "facts", "unflagged", "core_s_per_s")
_DAY = "2026-03-02"
_ROSTER = [RosterHorse(name=name) for name in ("Bramble", "Hester", "Pumpkin", "Teasel")]


def noise_file(name: str, minutes: float, sound: Path) -> Path:
    """The noise as a file, made when it is not there; "voices" needs the small talk spoken."""
    path = sound / "noise" / f"{name}-{minutes:g}min.wav"
    if not path.exists():
        path.parent.mkdir(parents=True, exist_ok=True)
        made = noise(name, minutes * 60, SEED, small_talk(sound))
        write_wav(path, made * min(1.0, 0.98 / float(np.abs(made).max())), RATE)
    return path


def noise_files(minutes: float, sound: Path) -> list[tuple[str, Path]]:
    """Each noise with its file; voices only where small talk was spoken, since that needs voices."""
    names = [name for name in NOISES if name != "voices" or small_talk(sound)]
    return [(name, noise_file(name, minutes, sound)) for name in names]


def noise_jobs(sound: Path, minutes: float = MINUTES) -> list[Job]:
    """What is to be heard for the rows of the noises."""
    return [(path, tuple(spoken_names(_ROSTER))) for _, path in noise_files(minutes, sound)]


def noise_rows(bench: Bench, listeners: Sequence[Listener], minutes: float = MINUTES) -> list[list[str]]:
    """A row a noise and configuration."""
    rows = []
    for name, path in noise_files(minutes, bench.sound):
        for listener in listeners:
            heard = listener.hear(path, spoken_names(_ROSTER))
            facts = [fact for visit in bench.read(heard, path, _ROSTER, _DAY) for fact in visit.facts]
            unflagged = sum(not fact.flagged for fact in facts)
            rows.append([name, f"{minutes:g}", listener.ear.name, listener.ear.device, str(len(heard.transcript.words)),
                         str(len(facts)), str(unflagged), core_seconds(heard.work_s, minutes * 60)])  # fmt: skip
    return rows
