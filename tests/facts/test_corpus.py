"""The written corpora: open ones the reader was improved with, kept ones that nobody looked at while writing rules."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from pipeline.keeping.roster import read_roster
from pipeline.reading import Reader
from pipeline.record import Fact, HorseMatch, RosterHorse, Transcript, Visit
from tests.facts.scoring import Score, load_gold, score

ROOT = Path(__file__).resolve().parents[2]
CORPUS = ROOT / "tests" / "corpus"


def read_all(reader: Reader, paths: list[Path]) -> Score:
    pairs = []
    for gold in (memo for path in paths for memo in load_gold(path)):
        roster = [RosterHorse(name=name) for name in gold["roster"]]
        pairs.append((gold, reader.read(Transcript(text=gold["text"]), roster, date.fromisoformat(gold["date"]))))
    return score(pairs)


def test_open_corpus(reader: Reader) -> None:
    total = read_all(reader, sorted(CORPUS.glob("open_*.jsonl")))
    assert total.memos == 3332
    assert total.f1 >= 0.985
    assert total.horses / total.visits >= 0.985
    assert total.inverted <= 1


def test_kept_corpus(reader: Reader) -> None:
    total = read_all(reader, sorted(CORPUS.glob("kept_*.jsonl")))
    assert total.memos == 78
    assert total.f1 >= 0.97
    assert total.horses / total.visits >= 0.95
    assert total.inverted <= 2


def test_demo_scripts(reader: Reader) -> None:
    roster = read_roster(ROOT / "demo_audio" / "roster.csv")
    memos = load_gold(ROOT / "demo_audio" / "gold.jsonl")
    read = [reader.read(Transcript(text=m["text"]), roster, date.fromisoformat(m["date"])) for m in memos]
    total = score(zip(memos, read, strict=True))
    assert total.f1 >= 0.98


@pytest.mark.parametrize("path", sorted(CORPUS.glob("*.jsonl")), ids=lambda p: p.stem)
def test_gold_is_legal(path: Path) -> None:
    for memo in load_gold(path):
        for visit in memo["visits"]:
            for foot, slot, value, status, zone, severity in visit["facts"]:
                number = float(value) if isinstance(value, int) else value
                Fact(foot=foot, slot=slot, value=number, status=status, zone=zone, severity=severity)


def test_the_scorer_counts_what_is_wrong() -> None:
    gold = {"visits": [{"horse": "Bramble", "facts": [["LF", "finding", "thrush", "absent", None, None]]}]}
    visit = Visit(
        horse="Bramble",
        horse_match=HorseMatch.KNOWN,
        date=date(2026, 5, 12),
        facts=[Fact(foot="LF", slot="finding", value="thrush")],
    )
    total = score([(gold, [visit])])
    assert (total.right, total.gold, total.said, total.inverted, total.perfect) == (0, 1, 1, 1, 0)
