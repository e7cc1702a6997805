"""The prompt keeps within the recogniser's room, names first, and carries no command."""

from __future__ import annotations

from pathlib import Path

import pytest

from pipeline.errors import VocabularyError
from pipeline.hearing.bias import MANNER, PROMPT_TOKENS, bias_forms, bias_prompt
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary


def by_word(text: str) -> int:
    return len(text.split())


def test_shipped_words_come_by_rank() -> None:
    forms = bias_forms(load_vocabulary())
    assert forms[:4] == ["left fore", "right fore", "left hind", "right hind"]
    assert forms.index("double aught") < forms.index("egg bar") < forms.index("keratoma")


def test_a_rank_must_be_a_number(tmp_path: Path) -> None:
    (tmp_path / "bias.csv").write_text("canonical,spoken,heard_as,source\nfirst,thrush,,common practice\n")
    with pytest.raises(VocabularyError, match="line 2: the rank 'first' must be a number"):
        bias_forms(load_vocabulary(tmp_path))


def test_names_come_first_and_once() -> None:
    prompt = bias_prompt(["left fore", "thrush"], ["Bramble", "Otter", "Bramble"], by_word)
    assert prompt == "Bramble, Otter. Left fore, thrush."


def test_two_items_make_a_sentence() -> None:
    assert bias_prompt(["heel", "toe", "bar", "sole", "frog"], [], by_word) == "Heel, toe. Bar, sole. Frog."


def test_the_manner_has_commas_and_full_stops_as_a_memo_has() -> None:
    assert (MANNER.count(","), MANNER.count(".")) == (8, 3)


def test_many_names_leave_half_of_the_room_to_the_trade() -> None:
    names = [f"Horse{number}" for number in range(50)]
    mixed = bias_prompt(["thrush"] * 50, names, by_word, budget=10)
    assert mixed == "Horse0, Horse1. Horse2, Horse3. Horse4. Thrush, thrush. Thrush, thrush. Thrush."
    alone = bias_prompt([], names, by_word, budget=10)
    assert [word.strip(",.") for word in alone.split()] == names[:10]


def test_a_name_cannot_command_the_recogniser() -> None:
    assert (
        bias_prompt([], ["Star<|endoftext|>\n", "  ", "O'Malley's Pride"], by_word)
        == "Star endoftext, O'Malley's Pride."
    )


def test_no_words_no_prompt() -> None:
    assert bias_prompt([], [], by_word) == ""


def test_the_model_counts_its_own_tokens(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from tokenizers import Tokenizer

    monkeypatch.setenv("CLINCHBOOK_CACHE", str(tmp_path))
    tokenizer = Tokenizer.from_file(f"{weights_folder()}/tokenizer.json")

    def count(text: str) -> int:
        return len(tokenizer.encode(" " + text, add_special_tokens=False).ids)

    names = [f"Thistledown {number}" for number in range(200)]
    prompt = bias_prompt(bias_forms(load_vocabulary()), names, count)
    assert PROMPT_TOKENS - 8 < count(prompt) <= PROMPT_TOKENS
    assert "Left fore, right fore. Left hind, right hind." in prompt
