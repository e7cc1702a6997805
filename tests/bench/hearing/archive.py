"""A long archive taken in at once: hundreds of generated memos through the whole of ``ingest``.

``python -m tests.bench.hearing.archive FOLDER [--make N --voices DIR] [--device cuda]``. ``--make`` composes N memos
from the grammar (``tests.generator``, seed 20261126), each cut to its first sentences, speaks them by one synthetic
voice and keeps them as Opus at 24 kb/s. Without it, ``clinchbook ingest`` runs over the folder into a new store. Adds
to ``results/hearing_archive.csv``: memos, seconds of sound, of the clock and of the processor, and the clock's seconds
for a second of sound, loading included.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Sequence
from itertools import accumulate
from pathlib import Path

import av
import numpy as np

from pipeline.errors import ClinchbookError
from pipeline.vocabulary import load_vocabulary
from tests.bench.ending import ended
from tests.bench.hearing.conditions import read_wav
from tests.bench.hearing.noises import RATE
from tests.bench.hearing.speaking import Spoken, needed, speak
from tests.bench.hearing.speed import spent
from tests.bench.history import add_rows, print_rows
from tests.generator.memo import Composer

SEED = 20261126
WORDS = 28  # about ten seconds
VOICE = "slt"
COLUMNS = ("device", "memos", "kept", "sound_s", "wall_s", "cpu_s", "wall_per_s")


def texts(count: int) -> list[str]:
    """The beginnings of generated memos, whole sentences of about ten seconds."""
    composer = Composer(SEED, load_vocabulary())
    return [_beginning(composer.memo().text) for _ in range(count)]


def _beginning(text: str) -> str:
    sentences = [f"{sentence.strip('.')}." for sentence in text.split(". ")]
    words = accumulate(len(sentence.split()) for sentence in sentences)
    return " ".join(s for s, so_far in zip(sentences, words, strict=True) if so_far <= WORDS) or sentences[0]


def make(folder: Path, count: int, voices: Path | None) -> None:
    """Speak and encode what is not there yet; raises ClinchbookError without the voices."""
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as made:
        wanted = {
            folder / f"{number:04}.ogg": Spoken(text, VOICE, Path(made) / f"{number:04}.wav")
            for number, text in enumerate(texts(count))
            if not (folder / f"{number:04}.ogg").exists()
        }
        if wanted:
            speak(list(wanted.values()), needed(voices, folder))
        for path, spoken in wanted.items():
            encode(spoken.path, path)


def encode(wav: Path, path: Path) -> None:
    """A WAV file as Opus at 24 kb/s; the file appears only when it is whole."""
    part = path.with_suffix(".part")
    with av.open(str(part), "w", format="ogg") as out:
        stream = out.add_stream("libopus", rate=RATE, bit_rate=24_000, layout="mono")
        samples = (read_wav(wav) * 32767).astype("<i2")
        frame = av.AudioFrame.from_ndarray(np.ascontiguousarray(samples[None, :]), format="s16", layout="mono")
        frame.sample_rate = RATE
        for given in (frame, None):
            out.mux(stream.encode(given))
    part.replace(path)


def seconds_of(path: Path) -> float:
    """The length that the container declares."""
    with av.open(str(path)) as file:
        return (file.duration or 0) / av.time_base


def run(folder: Path, device: str) -> list[str]:
    """Take the folder in and measure; ends the bench when that fails. Raises ClinchbookError for an empty folder."""
    files = sorted(folder.glob("*.ogg"))
    if not files:
        raise ClinchbookError(f"There is no archive in {folder}: make it with --make 500 --voices DIR.")
    with tempfile.TemporaryDirectory() as made:
        environment = {**os.environ, "CLINCHBOOK_STORE": str(Path(made) / "store"), "CLINCHBOOK_DEVICE": device}
        took = spent([sys.executable, "-m", "pipeline.cli", "ingest", str(folder)], environment)
        kept = sum(path.is_file() for path in (Path(made) / "store").rglob("*.ogg"))
    sound = sum(map(seconds_of, files))
    figures = [f"{sound:.0f}", f"{took.wall_s:.1f}", f"{took.cpu_s:.1f}", f"{took.wall_s / sound:.4f}"]
    return [device, str(len(files)), str(kept), *figures]


def main(given: Sequence[str] | None = None) -> int:
    """Make the archive, or take it in and tell; 1, with one sentence, when something is missing."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.hearing.archive")
    parser.add_argument("folder", type=Path, metavar="FOLDER")
    parser.add_argument("--make", type=int, metavar="N", help="make N memos and take nothing in")
    parser.add_argument("--voices", type=Path, metavar="DIR", help="the folder of say.py")
    parser.add_argument("--device", choices=("cpu", "cuda"), default="cpu")
    chosen = parser.parse_args(given)
    if chosen.make:
        return ended(lambda: make(chosen.folder, chosen.make, chosen.voices))
    return ended(lambda: tell(run(chosen.folder, chosen.device)))


def tell(row: list[str]) -> None:
    """Print the row and put it behind the earlier ones."""
    print_rows(COLUMNS, [row])
    add_rows("hearing_archive", COLUMNS, [row])


if __name__ == "__main__":
    sys.exit(main())
