"""The demo day heard by the real recogniser: real sound in ten formats, scored against its gold."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import WeightsError
from pipeline.hearing.recognise import Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.judging import judge
from pipeline.keeping.roster import read_roster
from pipeline.reading import Reader
from pipeline.vocabulary import load_vocabulary
from tests.facts.scoring import Score, load_gold, score

ROOT = Path(__file__).resolve().parents[2]
DEMO = ROOT / "demo_audio"


@pytest.fixture(scope="module")
def heard(reader: Reader) -> Score:
    recogniser = Recogniser(HearingSettings(), load_vocabulary())
    try:
        assert recogniser.version
    except WeightsError as error:
        pytest.skip(f"the packaged weights are not installed: {error}")
    roster = read_roster(DEMO / "roster.csv")
    memos = load_gold(DEMO / "gold.jsonl")
    pairs = []
    for memo in memos:
        sound = recogniser.hear(DEMO / memo["audio"], [horse.name for horse in roster])
        visits = judge(reader.read(sound.transcript, roster, date.fromisoformat(memo["date"])), sound.transcript)
        pairs.append((memo, visits))
    return score(pairs)


def test_the_demo_day_is_read_from_its_sound(heard: Score) -> None:
    assert heard.memos == 12
    assert heard.f1 >= 0.85
    assert heard.horses >= heard.visits - 2


def test_the_readme_tells_the_figure_that_is_measured(heard: Score) -> None:
    told = re.search(r"demo day from its sound[^|]*\|\s*([01]\.\d+)", (ROOT / "README.md").read_text(encoding="utf-8"))
    assert told is not None
    assert float(told.group(1)) == pytest.approx(heard.f1, abs=0.02)
