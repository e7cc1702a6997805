"""``python -m tests.bench.judging``: what is flagged of the written corpora, read as text."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from pipeline.judging import judge
from pipeline.reading import Reader
from pipeline.record import RosterHorse, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.judging.outcomes import Tally, add_memo
from tests.facts.scoring import load_gold

CORPUS = Path(__file__).resolve().parents[2] / "corpus"


def tally_text(prefix: str) -> Tally:
    """Every memo of the corpora whose name begins with ``prefix``, read as typed text and judged."""
    vocabulary = load_vocabulary()
    reader, tally = Reader(vocabulary), Tally()
    for path in sorted(CORPUS.glob(f"{prefix}*.jsonl")):
        for gold in load_gold(path):
            transcript = Transcript(text=gold["text"])
            roster = [RosterHorse(name=name) for name in gold["roster"]]
            visits = judge(reader.read(transcript, roster, date.fromisoformat(gold["date"])), transcript)
            add_memo(tally, gold, visits, vocabulary, gold["text"])
    return tally


if __name__ == "__main__":
    for name in ("open_", "kept_"):
        print(tally_text(name).line(name.strip("_")))
