"""How well and how quickly text is read: ``python -m tests.bench.reading [open] [kept] [generator]``.

The open memos were used to improve the reader, the kept ones by nobody (of them only counts are told, never a text),
and the generator's are composed from the grammar: of these a horse counts as right when all of its memo's are. A row a
corpus goes to ``results/reading.csv``; milliseconds are those of one core, the reader being loaded.
"""

from __future__ import annotations

import argparse
import time
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from pipeline.judging.putting_right import put_right
from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary, load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.facts.scoring import Score, load_gold, score
from tests.generator.checking import check

CORPUS = Path(__file__).resolve().parents[1] / "corpus"
COLUMNS = ("corpus", "memos", "facts", "f1", "horses_right", "horses", "perfect", "inverted", "ms_a_memo")
SEED, COUNT = 31, 5000
Row = tuple[str | int, ...]


def written(prefix: str, vocabulary: Vocabulary) -> Row:
    """The figures of the corpora whose names begin so."""
    reader = Reader(vocabulary)
    memos = [memo for path in sorted(CORPUS.glob(f"{prefix}_*.jsonl")) for memo in load_gold(path)]
    read_memo(reader, memos[0])  # the first one takes what is made once for all
    began = time.process_time()
    pairs = [(memo, read_memo(reader, memo)) for memo in memos]
    return (prefix, *scored(score(pairs)), per_memo(time.process_time() - began, len(memos)))


def read_memo(reader: Reader, memo: dict[str, Any]) -> list[Visit]:
    """What the reader makes of a memo of gold, and what the second reader puts right of that."""
    roster, transcript = [RosterHorse(name=name) for name in memo["roster"]], Transcript(text=memo["text"])
    return put_right(reader.read(transcript, roster, date.fromisoformat(memo["date"])), transcript)


def scored(total: Score) -> Row:
    """A score in the order of COLUMNS, between the corpus and the milliseconds."""
    horses = (total.horses, total.visits)
    return total.memos, total.gold, f"{total.f1:.3f}", *horses, total.perfect, total.inverted


def generated(vocabulary: Vocabulary) -> Row:
    """The figures of the generator's memos; composing them takes a small share of the time."""
    began = time.process_time()
    tally = check(SEED, COUNT, vocabulary)
    took = time.process_time() - began
    right = tally.memos - len(tally.wrong_horses)
    told = (tally.memos, tally.said, f"{tally.f1:.4f}", right, tally.memos, tally.exact, "")
    return ("generator", *told, per_memo(took, tally.memos))


def per_memo(seconds: float, memos: int) -> str:
    """Milliseconds a memo, as they are told."""
    return f"{1000 * seconds / memos:.1f}"


CORPORA: dict[str, Callable[[Vocabulary], Row]] = {
    "open": lambda vocabulary: written("open", vocabulary),
    "kept": lambda vocabulary: written("kept", vocabulary),
    "generator": generated,
}


def main(given: Sequence[str] | None = None) -> None:
    """Print the table and add it to the results."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.reading", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("corpora", nargs="*", metavar="CORPUS", help=", ".join(CORPORA))
    named = parser.parse_args(given).corpora or list(CORPORA)
    if unknown := [name for name in named if name not in CORPORA]:
        parser.error(f"there is no corpus {unknown[0]}; there are {', '.join(CORPORA)}")
    vocabulary = load_vocabulary()
    rows = [CORPORA[name](vocabulary) for name in named]
    print_rows(COLUMNS, rows)
    add_rows("reading", COLUMNS, rows)


if __name__ == "__main__":
    main()
