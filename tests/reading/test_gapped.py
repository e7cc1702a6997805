"""Forms with a gap: which words they claim, and that spaCy's general matcher finds the very same."""

from __future__ import annotations

from random import Random
from typing import cast

import pytest
from spacy.matcher import Matcher
from spacy.tokens import Doc

from pipeline.reading.gapped import GAP, GappedForms
from pipeline.reading.tokens import Tokens, form_tokens, language, tokenize
from pipeline.vocabulary import Vocabulary

Place = tuple[str, tuple[int, ...], int]  # the form, the tokens that it claims and the one behind it

FOUND: dict[str, list[Place]] = {
    "the heels looked contracted": [("heels ... contracted", (1, 3), 4)],
    "heels contracted": [],
    "heels on both fronts look contracted": [("heels ... contracted", (0, 5), 6)],
    "heels on both of the fronts contracted": [],
    "heels long, contracted": [],
    "heels and frogs contracted": [],
    "heels low but contracted": [],
    "took one off and took it right off": [("took ... off", (0, 2), 3), ("took ... off", (4, 7), 8)],
    "took that one off it back on": [("took ... off ... on", (0, 3, 6), 7), ("took ... off", (0, 3), 4)],
}


def forms_of(*forms: str) -> GappedForms:
    gapped = GappedForms()
    for form in forms:
        gapped.add(form, form_tokens(form))
    return gapped


def places(gapped: GappedForms, tokens: Tokens) -> list[Place]:
    return sorted((form, literal, end) for form, end, literal in gapped.find(tokens))


@pytest.mark.parametrize("text", FOUND)
def test_a_form_claims_its_own_words_alone(text: str) -> None:
    gapped = forms_of("heels ... contracted", "took ... off", "took ... off ... on")
    assert places(gapped, tokenize(text)) == sorted(FOUND[text])


def test_a_gap_at_the_end_takes_one_to_four_words() -> None:
    found = places(forms_of("back to ..."), tokenize("Back to the other old grey mare"))
    assert found == [("back to ...", (0, 1), end) for end in (3, 4, 5, 6)]


def test_a_form_is_found_as_often_as_it_is_said() -> None:
    found = places(forms_of("took ... off"), tokenize("Took the left off. Took took one off off"))
    assert [(literal, end) for _, literal, end in found] == [
        ((0, 3), 4), ((5, 8), 9), ((5, 9), 10), ((6, 8), 9), ((6, 9), 10)
    ]  # fmt: skip


def with_spacy(forms: list[str], tokens: Tokens) -> list[Place]:
    """The same of spaCy's matcher, a gap being one to four tokens that are no punctuation, nor "and" nor "but"."""
    matcher = Matcher(language().vocab)
    for form in forms:
        gap = {"IS_PUNCT": False, "NORM": {"NOT_IN": ["and", "but"]}, "OP": "{1,4}"}
        matcher.add(form, [[gap if word == GAP else {"NORM": word} for word in form_tokens(form)]])
    aligned = cast(
        "list[tuple[int, int, int, list[int]]]",
        matcher(Doc(language().vocab, words=tokens.words), with_alignments=True),
    )
    found = set()
    for key, start, _, alignment in aligned:
        form = language().vocab.strings[key]
        words = form_tokens(form)
        literal = tuple(start + i for i, at in enumerate(alignment) if words[at] != GAP)
        found.add((form, literal, start + len(alignment)))
    return sorted(found)


def test_spacys_matcher_finds_the_same(vocabulary: Vocabulary) -> None:
    forms = sorted({form for name in vocabulary.classes for form in vocabulary.spoken(name) if GAP in form})
    assert len(forms) > 50
    gapped, chance = forms_of(*forms), Random(5)
    said = 0
    for _ in range(300):
        chosen = [chance.choice(forms).split() for _ in range(3)]
        between = [
            chance.choices(["the", "left", ",", "and", "one", "-", "hind"], k=chance.randrange(1, 6)) for _ in "123"
        ]
        words = [w for form, gap in zip(chosen, between, strict=True) for w in form for w in (gap if w == GAP else [w])]
        tokens = tokenize(" ".join(words))
        found = places(gapped, tokens)
        assert found == with_spacy(forms, tokens)
        said += len(found)
    assert said > 200
