"""Phrases without a gap: found longer and shorter alike, and just those that spaCy's general matcher finds."""

from __future__ import annotations

from random import Random

from spacy.matcher import PhraseMatcher
from spacy.tokens import Doc

from pipeline.reading.gapped import GAP
from pipeline.reading.phrases import Phrases
from pipeline.reading.tokens import form_tokens, language
from pipeline.vocabulary import Vocabulary


def phrases_of(*forms: str) -> Phrases:
    phrases = Phrases()
    for form in forms:
        phrases.add(form, form_tokens(form))
    return phrases


def placed(phrases: Phrases, words: list[str]) -> list[tuple[str, int, int]]:
    """Each form with its tokens ``[start, end)``."""
    found = phrases.find(words)
    assert all(literal == tuple(range(literal[0], end)) for _, end, literal in found)
    return [(form, literal[0], end) for form, end, literal in found]


def test_longer_and_shorter_ones_are_found() -> None:
    phrases = phrases_of("toe", "toe crack", "crack", "toe crack healed")
    said = ["a", "toe", "crack", "on", "the", "toe"]
    assert placed(phrases, said) == [("toe", 1, 2), ("toe crack", 1, 3), ("crack", 2, 3), ("toe", 5, 6)]
    assert placed(phrases, ["toe", "crack", "healed"])[-2:] == [("toe crack healed", 0, 3), ("crack", 1, 2)]
    assert placed(phrases, []) == []


def test_of_forms_with_the_same_words_the_last_is_told() -> None:
    assert placed(phrases_of("gonna", "gon na"), ["gon", "na"]) == [("gon na", 0, 2)]


def test_spacys_matcher_finds_the_same(vocabulary: Vocabulary) -> None:
    spoken = (form for name in vocabulary.classes for form in vocabulary.spoken(name) if GAP not in form)
    forms = {tuple(form_tokens(form)): form for form in sorted(spoken)}
    phrases, matcher = Phrases(), PhraseMatcher(language().vocab)
    for form_words, form in forms.items():
        phrases.add(form, form_words)
        matcher.add(form, [Doc(language().vocab, words=list(form_words))])
    chance, said = Random(5), 0
    for _ in range(300):
        words = [word for form in chance.choices(list(forms), k=12) for word in form]
        found = sorted(placed(phrases, words))
        doc = Doc(language().vocab, words=words)
        assert found == sorted((language().vocab.strings[key], start, end) for key, start, end in matcher(doc))
        said += len(found)
    assert said > 5000
