"""What the night review of the demo day takes: ``python -m tests.bench.evening``.

A scripted reviewer who knows what was said (``tests/using/review/test_demo_day.py``) answers everything that is asked
of the day, as it was heard once and is read and judged now. A row goes to ``results/evening.csv``.
"""

from __future__ import annotations

import tempfile
from pathlib import Path

from pipeline.reading import Reader
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.using.review.conftest import keep_the_demo
from tests.using.review.test_demo_day import worked_through

COLUMNS = ("answers", "keys", "wrong_before", "wrong_after")


def main() -> None:
    """Print the row and add it to the results."""
    reader = Reader(load_vocabulary())
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary) / "store"
        keep_the_demo(folder, reader)
        with worked_through(folder, reader) as evening:
            keys = sum(len(pressed) for pressed in evening.scripted.keys)
            rows = [(evening.keys.answered, keys, evening.wrong_before, evening.wrong_after)]
    print_rows(COLUMNS, rows)
    add_rows("evening", COLUMNS, rows)


if __name__ == "__main__":
    main()
