"""Denied findings: this reader beside negspacy, a published NegEx implementation, on the written corpora.

``python -m tests.bench.negation [PREFIX …]`` (default: cues open kept; "cues" are NegEx's own, one a sentence).
The unit is a finding of a memo that gold has only denied or never denied; negspacy calls it denied when it negates
every mention, the reader when all its facts are absent.
Published for NegEx: specificity 94.5 %, sensitivity 77.8 % (Chapman et al. 2001, A simple algorithm for identifying
negated findings and diseases in discharge summaries, J Biomed Inform 34:301-310), on discharge summaries, not on this.
"""

from __future__ import annotations

import csv
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import spacy
from spacy.language import Language
from spacy.util import filter_spans

from pipeline.reading import Reader
from pipeline.reading.mentions import MentionFinder
from pipeline.reading.tokens import level, tokenize
from pipeline.record import RosterHorse, Status, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.facts.scoring import load_gold

CORPUS = Path(__file__).resolve().parents[1] / "corpus"
CUES = Path(__file__).resolve().parent / "negex_sentences.csv"
COLUMNS = ("corpus", "reader", "sensitivity", "denied", "specificity", "there")


@dataclass
class Counts:
    """How often a denied finding was called denied, and one that is there called there."""

    denied_right: int = 0
    denied: int = 0
    there_right: int = 0
    there: int = 0

    def count(self, is_denied: bool, said_denied: bool | None) -> None:
        """One finding; ``said_denied`` is None when it was not found at all."""
        if is_denied:
            self.denied += 1
            self.denied_right += said_denied is True
        else:
            self.there += 1
            self.there_right += said_denied is False

    def row(self, name: str) -> list[str]:
        """Name, sensitivity and specificity with their counts."""
        sensitivity, specificity = self.denied_right / self.denied, self.there_right / self.there
        return [name, f"{sensitivity:.3f}", f"{self.denied_right}/{self.denied}", f"{specificity:.3f}",
                f"{self.there_right}/{self.there}"]  # fmt: skip


def units(memo: dict[str, Any]) -> Iterator[tuple[str, bool]]:
    """Each finding of a memo that is only denied, or never denied, and which of the two."""
    senses: dict[str, set[bool]] = {}
    for visit in memo["visits"]:
        for _, slot, value, status, _, _ in visit["facts"]:
            if slot == "finding":
                senses.setdefault(value, set()).add(status == "absent")
    for value, sense in senses.items():
        if len(sense) == 1:
            yield value, sense.pop()


def memos(prefix: str) -> Iterator[dict[str, Any]]:
    """The memos of a corpus, or for "cues" one of each of NegEx's cues."""
    if prefix != "cues":
        for path in sorted(CORPUS.glob(f"{prefix}_*.jsonl")):
            yield from load_gold(path)
        return
    with CUES.open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(line for line in file if not line.startswith("#")):
            status = "absent" if row["denied"] == "yes" else "present"
            facts = [[None, "finding", row["finding"], status, None, None]]
            text = f"Bramble. {row['sentence']}"
            yield {"roster": ["Bramble"], "date": "2026-04-01", "text": text, "visits": [{"facts": facts}]}


def by_reader(reader: Reader, memo: dict[str, Any]) -> dict[str, bool]:
    """Finding to whether the reader has it only as absent."""
    roster = [RosterHorse(name=name) for name in memo["roster"]]
    visits = reader.read(Transcript(text=memo["text"]), roster, date.fromisoformat(memo["date"]))
    senses: dict[str, set[bool]] = {}
    for fact in (f for v in visits for f in v.facts if f.slot == "finding"):
        senses.setdefault(str(fact.value), set()).add(fact.status is Status.ABSENT)
    return {value: sense == {True} for value, sense in senses.items()}


def negation_pipeline() -> Language:
    """Blank English with sentences and negspacy's NegEx."""
    import_module("negspacy.negation")
    nlp = spacy.blank("en")
    nlp.add_pipe("sentencizer")
    nlp.add_pipe("negex", config={"ent_types": ["FINDING"]})
    return nlp


def by_negex(nlp: Language, finder: MentionFinder, text: str) -> dict[str, bool]:
    """Finding to whether negspacy negates every mention; the mentions are the vocabulary's, as the reader has them."""
    found = [m for m in finder.find(tokenize(text)) if m.get("findings")]
    doc = nlp.make_doc(level(text))
    spans = [spacy.tokens.Span(doc, m.start, m.end, label="FINDING") for m in found]
    doc.ents = tuple(filter_spans(spans))
    for _, component in nlp.pipeline:
        doc = component(doc)
    senses: dict[str, set[bool]] = {}
    for mention in found:
        span = next((e for e in doc.ents if e.start <= mention.start < e.end), None)
        if span is not None:
            senses.setdefault(mention.readings["findings"], set()).add(bool(span._.negex))
    return {value: sense == {True} for value, sense in senses.items()}


def main(prefixes: list[str]) -> int:
    """Print and append the table; 0 also when negspacy is not installed, which is said."""
    if find_spec("negspacy") is None:
        print("negspacy is not installed (pip install negspacy); nothing was compared.")
        return 0
    vocabulary = load_vocabulary()
    reader, finder, nlp = Reader(vocabulary), MentionFinder(vocabulary), negation_pipeline()
    rows = []
    for prefix in prefixes or ["cues", "open", "kept"]:
        ours, theirs = Counts(), Counts()
        for memo in memos(prefix):
            read, negated = by_reader(reader, memo), by_negex(nlp, finder, memo["text"])
            for value, denied in units(memo):
                ours.count(denied, read.get(value))
                theirs.count(denied, negated.get(value))
        rows += [[prefix, *ours.row("clinchbook")], [prefix, *theirs.row("negspacy")]]
    print_rows(COLUMNS, rows)
    add_rows("negation", COLUMNS, rows)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
