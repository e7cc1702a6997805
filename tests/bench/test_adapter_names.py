"""Names that are told apart by ear alone: where they come from, what sounds like them, the windows they are said in."""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

import pytest

from pipeline.errors import ClinchbookError
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter import __main__ as bench
from tests.bench.adapter.names import names_to_learn, names_windows, rivals_of
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.voices import held_out, readings
from tests.bench.adapter.windows import NAMES, Window

WORDS = [
    *(
        "Bertie",
        "Birdie",
        "Amber",
        "Ember",
        "Hanna",
        "Henna",
        "Tansy",
        "Tensy",
        "thrush",
        "walking",
        "tables",
        "candle",
    ),
    *("kindle", "Toronto", "USA", "ox"),
]
MEMO = {
    "id": "memo1",
    "roster": ["Pip", "Otter"],
    "text": "Pip, reset all round. He stood well. Then Otter, and Otter's fronts are a one.",
}


@pytest.fixture
def words(tmp_path: Path) -> Path:
    path = tmp_path / "words"
    path.write_text("\n".join(WORDS), encoding="utf-8")
    return path


def test_names_are_those_of_the_memos_and_words_that_the_trade_has_no_use_for(words: Path) -> None:
    assert sorted(names_to_learn(words, ["Pip"])) == [
        *(
            "Amber",
            "Bertie",
            "Birdie",
            "Candle",
            "Ember",
            "Hanna",
            "Henna",
            "Kindle",
            "Pip",
            "Tansy",
            "Tensy",
            "Toronto",
        )
    ]  # "thrush" is the trade's, "walking" and "tables" are inflected, "USA" and "ox" no names


@pytest.mark.parametrize(
    ("name", "rivals"),
    [
        ("Amber", ("Ember",)),  # Metaphone codes of the same letters, four of five letters the same
        ("Candle", ("Kindle",)),
        ("Toronto", None),
        ("Bert", None),  # part of another one
        ("Bertie", None),
    ],
)
def test_rivals_sound_alike_but_not_the_same(name: str, rivals: tuple[str, ...] | None) -> None:
    assert rivals_of(["Amber", "Ember", "Candle", "Kindle", "Toronto", "Bertie", "Bert"]).get(name) == rivals


def said_in(window: Window) -> list[str]:
    return [name for name in window.roster if name in window.text]


def windows(words: Path) -> Iterator[Window]:
    return names_windows([MEMO], names_to_learn(words, ["Amber"]), 40)


def test_windows_say_such_names_with_those_that_sound_like_them_beside_the_roster(words: Path) -> None:
    found = list(windows(words))
    assert len(found) == 40
    for window in found:
        assert window.kind == NAMES
        assert said_in(window)
        assert not {"Pip", "Otter"} & set(window.roster)
        assert not any(rival in said_in(window) for rival in window.rivals)
    alone = [w.rivals for w in found if "Amber" in said_in(w) and "Ember" not in said_in(w)]
    assert alone
    assert all("Ember" in rivals for rivals in alone)
    assert found == list(windows(words))  # nothing hangs on chance


def test_two_windows_are_the_memos_sentences_with_names_in_their_places(words: Path) -> None:
    texts = {window.text for window in windows(words)}
    of_memo = [text for text in texts if "He stood well." in text or "fronts are a one." in text]
    assert of_memo
    assert not any("Pip" in text or "Otter" in text for text in texts)


def test_rosters_of_the_prompts_have_some_of_what_sounds_alike(words: Path) -> None:
    prompts = Prompts(Path(weights_folder()), load_vocabulary(), ["Pip"])
    window = Window(NAMES, ("Amber, reset.",), ("Amber", "Toronto"), ("Ember",))
    shown = sum("Ember" in prompts.roster(window, random.Random(number)) for number in range(200))
    assert 50 <= shown <= 110  # two fifths, less where a roster is cut short


def test_of_windows_of_names_a_quarter_is_held_out(words: Path) -> None:
    said = [reading for reading in readings(list(windows(words))) if reading.voice != "kal16"]
    assert len(held_out(said)[NAMES]) == len([r for r in said if r.voice != "af_sarah"]) // 4


def test_words_that_cannot_be_read_are_told_in_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(ClinchbookError, match=r"^The words for names cannot be read from .*missing\.$"):
        bench.named_windows(tmp_path / "missing")


def test_too_few_names_that_sound_alike_are_told_in_a_sentence(tmp_path: Path) -> None:
    (tmp_path / "words").write_text("Toronto", encoding="utf-8")
    with pytest.raises(ClinchbookError, match=r"^Only 0 of the names sound like another one: give more words\.$"):
        list(names_windows([MEMO], names_to_learn(tmp_path / "words", ["Pip"]), 3))
