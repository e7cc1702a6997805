"""The user's own words in the store's folder."""

from __future__ import annotations

import os
import subprocess
import sys
from functools import partial
from pathlib import Path

import pytest

from pipeline.errors import NotFoundError, StoreBusyError, StoreError, VocabularyError
from pipeline.keeping.locking import alone
from pipeline.keeping.own_words import OwnWord, add_word, forget_word, own_words, vocabulary_with_own
from pipeline.vocabulary import load_vocabulary


def test_a_word_joins_and_is_out_again_once_forgotten(tmp_path: Path) -> None:
    word = OwnWord("findings", "thrush", "porridge frog")
    assert add_word(tmp_path, "findings", "thrush", "Porridge-frog") == word
    assert vocabulary_with_own(tmp_path).spoken("findings")["porridge frog"] == "thrush"
    assert own_words(tmp_path) == [word]
    assert forget_word(tmp_path, "porridge frog") == [word]
    assert vocabulary_with_own(tmp_path).version == load_vocabulary().version
    assert list((tmp_path / "words").iterdir()) == []


def test_the_file_has_the_vocabulary_s_columns(tmp_path: Path) -> None:
    add_word(tmp_path, "zones", "toe", "tip end")
    add_word(tmp_path, "zones", "heel", "hinder end")
    assert (tmp_path / "words" / "zones.csv").read_text(encoding="utf-8").splitlines() == [
        "canonical,spoken,heard_as,source",
        "toe,tip end,,own word",
        "heel,hinder end,,own word",
    ]
    assert [path.name for path in (tmp_path / "words").iterdir()] == ["zones.csv"]


def test_a_store_without_words_or_none_at_all_adds_nothing(tmp_path: Path) -> None:
    assert vocabulary_with_own(tmp_path / "nowhere").version == load_vocabulary().version
    assert own_words(tmp_path) == []
    assert list(tmp_path.iterdir()) == []


def test_adding_again_changes_nothing(tmp_path: Path) -> None:
    assert add_word(tmp_path, "findings", "thrush", "thrush") is None
    assert not (tmp_path / "words").exists()


@pytest.mark.parametrize(
    ("name", "canonical", "form", "said"),
    [
        ("ailments", "thrush", "the rot", "'ailments' is no class of words; known are asides, bias, "),
        ("findings", "rot", "the rot", "'rot' is no name among the findings; known are thrush, "),
        ("denials", "between", "nope", "'between' is no name among the denials; known are before, after, pseudo."),
        ("finding", "thrush", "the rot", "'finding' is no class of words. Did you mean findings?"),
        ("findings", "thrash", "the rot", "'thrash' is no name among the findings. Did you mean thrush?"),
        ("findings", "seedy toe", "old rot", "“seedy toe” is white_line_disease among the findings; say white_line_d"),
        ("findings", "corn", "thrush", "“thrush” has a meaning already: thrush among the findings."),
        ("findings", "thrush", "no", "“no” has a meaning already: "),
        ("findings", "thrush", "rot|no", "'rot|no' must be words of the small letters a to z, with single spaces."),
        (
            "findings",
            "thrush",
            "[old;bad] rot",
            "'[old;bad] rot' must be words of the small letters a to z, with single",
        ),
        ("findings", "thrush", "   ", "'' must be words of the small letters a to z, with single spaces."),
    ],
)
def test_what_cannot_be_added_is_one_sentence(tmp_path: Path, name: str, canonical: str, form: str, said: str) -> None:
    add_word(tmp_path, "findings", "corn", "pea mark")
    with pytest.raises(VocabularyError) as refused:
        add_word(tmp_path, name, canonical, form)
    assert str(refused.value).startswith(said)
    assert "\n" not in str(refused.value)
    assert own_words(tmp_path) == [OwnWord("findings", "corn", "pea mark")]


def test_two_meanings_for_one_own_word_are_refused(tmp_path: Path) -> None:
    add_word(tmp_path, "findings", "thrush", "the rot")
    with pytest.raises(VocabularyError, match="“the rot” has a meaning already: thrush among the findings"):
        add_word(tmp_path, "treatments", "iodine", "the rot")


@pytest.mark.parametrize(
    ("form", "why"), [("the rot", "see clinchbook words list"), ("Thrush", "one of clinchbook's words, which stay")]
)
def test_only_own_words_can_be_forgotten(tmp_path: Path, form: str, why: str) -> None:
    with pytest.raises(NotFoundError, match=why):
        forget_word(tmp_path, form)


def test_forgetting_one_form_leaves_the_others(tmp_path: Path) -> None:
    (tmp_path / "words").mkdir()
    lines = "canonical,spoken,heard_as,source\nthrush,the rot|porridge frog,,own word\n"
    (tmp_path / "words" / "findings.csv").write_text(lines, encoding="utf-8")
    forget_word(tmp_path, "the rot")
    assert own_words(tmp_path) == [OwnWord("findings", "thrush", "porridge frog")]


def test_alternatives_written_by_hand_are_forms_of_their_own(tmp_path: Path) -> None:
    (tmp_path / "words").mkdir()
    lines = "canonical,spoken,heard_as,source\nthrush,[porridge;gruel] [;old] frog,,own word\n"
    (tmp_path / "words" / "findings.csv").write_text(lines, encoding="utf-8")
    forget_word(tmp_path, "porridge old frog")
    left = ["porridge frog", "gruel frog", "gruel old frog"]
    assert own_words(tmp_path) == [OwnWord("findings", "thrush", form) for form in left]
    (tmp_path / "words" / "findings.csv").write_text(lines.replace("[;old", "[old"), encoding="utf-8")
    with pytest.raises(VocabularyError, match=r"In your own words .*findings.csv line 2: the brackets of "):
        own_words(tmp_path)


def test_a_mistake_made_by_hand_names_file_and_line(tmp_path: Path) -> None:
    (tmp_path / "words").mkdir()
    lines = "canonical,spoken,heard_as,source\nrot,the rot,,own word\n"
    (tmp_path / "words" / "findings.csv").write_text(lines, encoding="utf-8")
    with pytest.raises(VocabularyError, match=r"In your own words .*findings.csv line 2: 'rot' is no finding"):
        vocabulary_with_own(tmp_path)


def test_a_write_that_fails_leaves_the_words_as_they_were(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    add_word(tmp_path, "findings", "thrush", "the rot")

    def full(descriptor: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(StoreError, match="they stay as they were"):
        add_word(tmp_path, "findings", "thrush", "porridge frog")
    assert own_words(tmp_path) == [OwnWord("findings", "thrush", "the rot")]
    assert [path.name for path in (tmp_path / "words").iterdir()] == ["findings.csv"]


ADDING = """
import sys
from pathlib import Path
from pipeline.keeping.own_words import add_word
for number in range(int(sys.argv[3])):
    add_word(Path(sys.argv[1]), "findings", "thrush", f"{sys.argv[2]} number {number}")
"""


def test_two_programs_that_add_at_once_lose_nothing(tmp_path: Path) -> None:
    source = Path(__file__).resolve().parents[2]
    programs = [
        subprocess.Popen(
            [sys.executable, "-c", ADDING, str(tmp_path / "book"), who, "8"],
            env={**os.environ, "PYTHONPATH": str(source)},
        )
        for who in ("first", "second", "third")
    ]
    assert [program.wait(timeout=120) for program in programs] == [0, 0, 0]
    forms = {word.form for word in own_words(tmp_path / "book")}
    assert forms == {f"{who} number {number}" for who in ("first", "second", "third") for number in range(8)}


def test_a_store_that_is_held_refuses_words_with_a_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    add_word(tmp_path, "findings", "thrush", "porridge frog")
    monkeypatch.setattr("pipeline.keeping.own_words.alone", partial(alone, busy_s=0.05))
    with alone(tmp_path):
        with pytest.raises(StoreBusyError, match="Another program is writing"):
            add_word(tmp_path, "findings", "thrush", "the rot")
        with pytest.raises(StoreBusyError):
            forget_word(tmp_path, "porridge frog")
    assert [word.form for word in own_words(tmp_path)] == ["porridge frog"]
