"""One long memo: the memory it takes, and whether words are lost or doubled where its stretches meet.

``python -m tests.bench.hearing.long FOLDER [--minutes N]``. The memos of an archive (``archive.py``) stand one behind
the other with a second's pause until N minutes (60) are full; the whole is heard as one memo, in a process that has
done nothing else. Adds to ``results/hearing_long.csv``: minutes, words said, their error rate, the longest run of words
lost and of words too many (a window lost or heard twice would be a long one), core seconds for a second of sound, and
the most memory held in MB before and while hearing.
"""

from __future__ import annotations

import argparse
import resource
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from pathlib import Path

import jiwer
import numpy as np

from pipeline.errors import ClinchbookError
from pipeline.hearing.decode import decode
from pipeline.hearing.intake import take_in
from pipeline.hearing.recognise import Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.vocabulary import load_vocabulary
from tests.bench.ending import ended
from tests.bench.hearing.archive import seconds_of, texts
from tests.bench.hearing.conditions import write_wav
from tests.bench.hearing.noises import RATE
from tests.bench.hearing.words import plain
from tests.bench.history import add_rows, print_rows

COLUMNS = (
    *("minutes", "words", "wer", "longest_lost", "longest_doubled"),
    *("cpu_per_s", "before_mb", "most_mb"),
)
_PAUSE_S = 1.0


def joined(folder: Path, minutes: float, out: Path) -> str:
    """Write the long memo to ``out`` and give its words; raises ClinchbookError when the archive is too short."""
    files = list(fitting(sorted(folder.glob("*.ogg")), minutes * 60))
    pause = np.zeros(int(RATE * _PAUSE_S))
    parts: list[np.ndarray[tuple[int, ...], np.dtype[np.float64]]] = []
    for path in files:
        with take_in(path) as memo:
            parts += [decode(memo, minutes).samples.astype(np.float64), pause]
    write_wav(out, np.concatenate(parts), RATE)
    said = texts(int(files[-1].stem) + 1)
    return " ".join(said[int(path.stem)] for path in files)


def fitting(files: Sequence[Path], seconds: float) -> Iterator[Path]:
    """The first files that fill so many seconds without passing them; raises ClinchbookError when they do not."""
    left = seconds
    for path in files:
        left -= seconds_of(path) + _PAUSE_S
        if left < 0:
            return
        yield path
    raise ClinchbookError(f"The archive lacks {left / 60:.0f} minutes: make it with --make 500 --voices DIR.")


def run(folder: Path, minutes: float) -> list[str]:
    """Hear the long memo and measure. Raises ClinchbookError for a short archive."""
    with tempfile.TemporaryDirectory() as made:
        memo = Path(made) / "long.wav"
        said = joined(folder, minutes, memo)
        recogniser = Recogniser(HearingSettings(max_minutes=minutes + 1), load_vocabulary())
        before, start = most_mb(), time.process_time()
        heard = recogniser.hear(memo).transcript.text
        took = time.process_time() - start
    words = jiwer.process_words(" ".join(plain(said)), " ".join(plain(heard)))
    lost, doubled = longest(words, "delete"), longest(words, "insert")
    figures = [f"{minutes:g}", str(len(plain(said))), f"{words.wer:.4f}", str(lost), str(doubled)]
    return [*figures, f"{took / (minutes * 60):.3f}", f"{before:.0f}", f"{most_mb():.0f}"]


def longest(words: jiwer.WordOutput, kind: str) -> int:
    """The longest run of words that are only said (``delete``) or only heard (``insert``)."""
    runs = [
        max(chunk.ref_end_idx - chunk.ref_start_idx, chunk.hyp_end_idx - chunk.hyp_start_idx)
        for chunk in words.alignments[0]
        if chunk.type == kind
    ]
    return max(runs, default=0)


def most_mb() -> float:
    """The most memory that this process has held so far (Linux counts in kB)."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main(given: Sequence[str] | None = None) -> int:
    """Hear and tell; 1, with one sentence, when something is missing."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.hearing.long")
    parser.add_argument("folder", type=Path, metavar="FOLDER", help="an archive made by tests.bench.hearing.archive")
    parser.add_argument("--minutes", type=float, default=60, metavar="N", help="of the long memo (default 60)")
    chosen = parser.parse_args(given)
    return ended(lambda: tell(run(chosen.folder, chosen.minutes)))


def tell(row: list[str]) -> None:
    """Print the row and put it behind the earlier ones."""
    print_rows(COLUMNS, [row])
    add_rows("hearing_long", COLUMNS, [row])


if __name__ == "__main__":
    sys.exit(main())
