"""Tokens: a text split word by word is split as spaCy splits the whole of it."""

from __future__ import annotations

from random import Random

from pipeline.reading.tokens import language, level, tokenize
from pipeline.vocabulary import Vocabulary

ODD = (
    "don't", "(don't)", "cannot", "dont.", "gonna", "a.m.", "10am.", "e.g.,", "Mr.", "No.", "vs.", "I.", "LF,", "U.S.",
    "...", "é,", "etc.", "hind.Left", "o'clock", "'em", "'cause", "½", '3/8"', "1/2-inch", "51.5.", ":)", ":", "-", "(",
)  # fmt: skip


def assert_as_spacy_splits(text: str) -> None:
    """Hold every list of the tokens against what spaCy tells of the whole text."""
    tokens, doc = tokenize(text), language()(level(text))
    assert tokens.texts == [token.text for token in doc]
    assert tokens.lowers == [token.lower_ for token in doc]
    assert tokens.starts == [token.idx for token in doc]
    assert tokens.ends == [token.idx + len(token) for token in doc]
    assert tokens.marks == [token.is_punct for token in doc]
    assert tokens.little == [token.is_stop for token in doc]
    assert tokens.large == [token.text[:1].isupper() for token in doc]


def test_words_with_and_without_their_marks(vocabulary: Vocabulary) -> None:
    words = {word for name in vocabulary.classes for form in vocabulary.spoken(name) for word in form.split()}
    words = {*Random(7).sample(sorted(words), 800), *language().Defaults.stop_words, *ODD}
    marks = ("", ",", ".", "?", "!", ";", ":")
    said = [
        shape(word) + mark for word in sorted(words) for mark in marks for shape in (str.lower, str.title, str.upper)
    ]
    assert len(said) > 20000
    for start in range(0, len(said), 500):
        assert_as_spacy_splits(" ".join(said[start : start + 500]))


def test_words_in_any_order() -> None:
    chance = Random(3)
    plain = ("Left", "front", "thrush,", "Otter.", "No,", "none;", "okay?", "the", "hind", "is")
    for _ in range(1000):
        assert_as_spacy_splits(" ".join(chance.choice((*ODD, *plain)) for _ in range(chance.randrange(1, 12))))


def test_white_space_of_every_kind() -> None:
    for text in ("", " ", "  ", " left hind", "left hind ", "left  hind", "left\n\nhind.", "left\xa0hind", "a\tb"):
        assert_as_spacy_splits(text)


def test_offsets_are_those_of_the_text() -> None:
    tokens = tokenize("Didn't find any, left-hind.")
    assert [(tokens.text[a:b], a) for a, b in zip(tokens.starts, tokens.ends, strict=True)] == [
        ("Did", 0), ("n't", 3), ("find", 7), ("any", 12), (",", 15), ("left", 17), ("hind", 22), (".", 26)
    ]  # fmt: skip
