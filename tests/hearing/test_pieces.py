"""A tokenizer that lost a merge is mended, and a whole one is left as it is."""

from __future__ import annotations

import json
from pathlib import Path

from tokenizers import Tokenizer, models, pre_tokenizers

from pipeline.hearing.pieces import mended
from pipeline.hearing.weights import weights_folder


def _tokenizer(merges: list[tuple[str, str]]) -> Tokenizer:
    alphabet = sorted(pre_tokenizers.ByteLevel.alphabet())
    vocabulary = {piece: number for number, piece in enumerate([*alphabet, "Ġt", "he", "Ġthe"])}
    tokenizer = Tokenizer(models.BPE(vocab=vocabulary, merges=merges))
    tokenizer.pre_tokenizer = pre_tokenizers.ByteLevel(add_prefix_space=False)
    return tokenizer


def test_a_lost_first_merge_is_put_back_where_it_was() -> None:
    damaged = _tokenizer([("h", "e"), ("Ġt", "he")])
    assert damaged.encode(" the").tokens == ["Ġ", "t", "he"]
    assert mended(damaged).encode(" the").tokens == ["Ġthe"]
    assert json.loads(mended(damaged).to_str())["model"]["merges"][0] == ["Ġ", "t"]


def test_a_whole_one_is_left_alone() -> None:
    whole = _tokenizer([("Ġ", "t"), ("h", "e"), ("Ġt", "he")])
    assert mended(whole) is whole


def test_the_base_weights_write_the_toe_in_two_pieces() -> None:
    found = Tokenizer.from_file(str(Path(weights_folder("base")) / "tokenizer.json"))
    assert found.encode(" the toe", add_special_tokens=False).tokens == ["Ġ", "the", "Ġ", "to", "e"]  # as it came
    assert mended(found).encode(" the toe", add_special_tokens=False).tokens == ["Ġthe", "Ġtoe"]
