"""Whether the marks are turned as a recogniser turns them, and how much of the open memos is read all the same."""

from __future__ import annotations

from pathlib import Path
from random import Random

import pytest

from pipeline.reading import Reader
from tests.bench.marks import SEED, misheard
from tests.facts.misheard_marks import mishear_marks

# Behind the others, in this order: the marks of what was there before are drawn as they were.
_OPENED_LAST = (
    "open_gor",
    "open_sed",
    "open_ald",
    "open_yar",
    "open_fen",
    "open_moy",
    "open_tam",
    "open_rud",
    "open_wen",
    "open_cam",
    "open_pel",
    "open_dov",
    "open_quo",
    "open_hex",
    "open_gil",
    "open_osk",
    "open_bru",
    "open_cor",
    "open_dux",
    "open_eld",
    "open_jub",
    "open_nim",
    "open_vex",
    "open_zor",
    "open_ked",
    "open_lum",
    "open_sil",
    "open_pax",
    "open_tev",
    "open_gow",
    "open_lin",
    "open_qua",
    "open_ros",
    "open_vim",
)
CORPUS = Path(__file__).resolve().parents[1] / "corpus"


@pytest.mark.parametrize(
    ("stops", "commas", "heard"),
    [
        (0.0, 0.0, "Reset, Tally. Hinds trimmed? I say so. Buck, sound."),
        (1.0, 0.0, "Reset, Tally, hinds trimmed, I say so, Buck, sound."),
        (0.0, 1.0, "Reset. Tally. Hinds trimmed? I say so. Buck. Sound."),
        (1.0, 1.0, "Reset. Tally, hinds trimmed, I say so, Buck. Sound."),
    ],
)
def test_marks_are_turned(stops: float, commas: float, heard: str) -> None:
    text = "Reset, Tally. Hinds trimmed? I say so. Buck, sound."
    assert mishear_marks(text, ["Tally", "Buck"], Random(1), stops=stops, commas=commas) == heard


def test_a_seed_turns_the_same_marks_again() -> None:
    text = "One. Two. Three, four, five. Six."
    once = mishear_marks(text, [], Random(3), stops=0.5, commas=0.5)
    assert once == mishear_marks(text, [], Random(3), stops=0.5, commas=0.5)
    assert once != text


def test_a_quarter_of_the_stops_heard_as_commas(reader: Reader) -> None:
    paths = sorted(
        CORPUS.glob("open_*.jsonl"),
        key=lambda path: (path.stem in _OPENED_LAST and _OPENED_LAST.index(path.stem) + 1, path.stem),
    )
    total = misheard(reader, paths, SEED, stops=0.25)
    assert total.memos == 3332
    assert total.f1 >= 0.98
    assert total.horses / total.visits >= 0.985
    assert total.inverted <= 8  # 6 when there were 1,222 memos; another memo more draws other marks in those behind it
