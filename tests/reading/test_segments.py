"""Cutting a memo into sentences and segments."""

from __future__ import annotations

from pipeline.reading.mentions import MentionFinder
from pipeline.reading.segments import split_segments
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import tokenize
from pipeline.vocabulary import Vocabulary


def cut(text: str, vocabulary: Vocabulary) -> list[tuple[int, str, str]]:
    """Sentence, delimiter and words of each segment."""
    tokens = tokenize(text)
    talk = Talk(tokens, tokens.lowers, MentionFinder(vocabulary).find(tokens))
    split_segments(talk)
    assert [s.index for s in talk.segments] == list(range(len(talk.segments)))
    return [(s.sentence, s.delimiter, " ".join(talk.words[s.start : s.end])) for s in talk.segments]


def test_commas_and_joiners_cut(vocabulary: Vocabulary) -> None:
    assert cut("Left hind has thrush, no flare and a corn, but no heat.", vocabulary) == [
        (0, "start", "left hind has thrush"),
        (0, ",", "no flare"),
        (0, "and", "a corn"),
        (0, ", but", "no heat"),
    ]


def test_each_sentence_starts_anew(vocabulary: Vocabulary) -> None:
    assert cut("Trimmed. Six weeks? Yes!", vocabulary) == [
        (0, "start", "trimmed"),
        (1, "start", "six weeks"),
        (2, "start", "yes"),
    ]


def test_a_joiner_inside_a_phrase_joins_nothing(vocabulary: Vocabulary) -> None:
    assert cut("Three and a half inches, near and off fore.", vocabulary) == [
        (0, "start", "three and a half inches"),
        (0, ",", "near and off fore"),
    ]


def test_fillers_are_no_segment_and_keep_the_joiner(vocabulary: Vocabulary) -> None:
    assert cut("Left front is fine, but, um, the right has thrush.", vocabulary) == [
        (0, "start", "left front is fine"),
        (0, ", but", "the right has thrush"),
    ]


def test_a_point_inside_a_number_ends_nothing(vocabulary: Vocabulary) -> None:
    assert cut("Angle 51.5 degrees.", vocabulary) == [(0, "start", "angle 51.5 degrees")]


def test_a_clause_of_its_own_has_a_verb(vocabulary: Vocabulary) -> None:
    tokens = tokenize("Trimmed the hinds, he was good, a little flare.")
    talk = Talk(tokens, tokens.lowers, MentionFinder(vocabulary).find(tokens))
    split_segments(talk)
    assert [s.joined_by(",") for s in talk.segments] == [False, True, True]


def test_nothing_said_is_no_segment(vocabulary: Vocabulary) -> None:
    for text in ("", ".", ", , .", "um, uh, er."):
        assert cut(text, vocabulary) == []
