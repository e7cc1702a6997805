"""How much is still read when full stops and commas are misheard: ``python -m tests.bench.marks``.

Of the open memos a share of the stops is written as commas, of the commas as stops, always the same ones (a seed).
A row a share goes to ``results/marks.csv``.
"""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from random import Random

from pipeline.reading import Reader
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.bench.reading import CORPUS, Row, read_memo
from tests.facts.misheard_marks import mishear_marks
from tests.facts.scoring import Score, load_gold, score

COLUMNS = (
    "stops_as_commas",
    "commas_as_stops",
    "memos",
    "facts",
    "f1",
    "horses_right",
    "horses",
    "perfect",
    "inverted",
)
SEED = 7
SHARES = ((0.0, 0.0), (0.25, 0.0), (0.5, 0.0), (1.0, 0.0), (0.0, 0.1), (0.3, 0.1))


def misheard(reader: Reader, paths: Sequence[Path], seed: int, *, stops: float = 0.0, commas: float = 0.0) -> Score:
    """The score of the memos of these files with their marks misheard."""
    rng, pairs = Random(seed), []
    for memo in (memo for path in paths for memo in load_gold(path)):
        heard = mishear_marks(memo["text"], memo["roster"], rng, stops=stops, commas=commas)
        pairs.append((memo, read_memo(reader, {**memo, "text": heard})))
    return score(pairs)


def main(given: Sequence[str] | None = None) -> None:
    """Print the table and add it to the results."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.marks", description=(__doc__ or "").split("\n")[0])
    parser.parse_args(given)
    reader, paths = Reader(load_vocabulary()), sorted(CORPUS.glob("open_*.jsonl"))
    rows: list[Row] = []
    for stops, commas in SHARES:
        total = misheard(reader, paths, SEED, stops=stops, commas=commas)
        told = (total.memos, total.gold, f"{total.f1:.3f}", total.horses, total.visits, total.perfect, total.inverted)
        rows.append((f"{stops:g}", f"{commas:g}", *told))
    print_rows(COLUMNS, rows)
    add_rows("marks", COLUMNS, rows)


if __name__ == "__main__":
    main()
