"""Sentences of a heard memo that gave no fact but look as if they should have."""

from __future__ import annotations

import pytest

from pipeline.judging import judge
from pipeline.record import FlagKind, Transcript
from tests.judging.making import fact, heard, visit


def told(transcript: Transcript, *spans: tuple[int, int]) -> list[tuple[str, str]]:
    (seen,) = judge([visit(*(fact("work", "trim", span=span) for span in spans))], transcript)
    return [(flag.quote, flag.reason) for flag in seen.flags if flag.kind is FlagKind.NOT_UNDERSTOOD]


def spoken(text: str, sure: float = 0.95, **less: float) -> Transcript:
    return heard(*((word, less.get(word.strip(".,").lower(), sure)) for word in text.split()))


@pytest.mark.parametrize("sentence", ["Six.", "And the six there.", "Six and a half.", "About 54."])
def test_a_number_with_nothing_that_it_counts_is_asked_about(sentence: str) -> None:
    number = next(w for w in ("six", "54") if w in sentence.lower())
    found = told(spoken(f"Left fore trimmed. {sentence}"), (0, 17))
    assert found == [(sentence, f"Heard the number “{number}”, but not what it counts; please listen.")]


@pytest.mark.parametrize(
    "sentence", ["All four.", "Three of them.", "He stood well today.", "Back in six weeks or about that."]
)
def test_feet_talk_and_longer_sentences_are_passed_over(sentence: str) -> None:
    found = told(spoken(f"Left fore trimmed. {sentence}"), (0, 17))
    assert [reason for _, reason in found if "what it counts" in reason] == []


def test_a_word_hardly_heard_in_a_sentence_without_a_fact_is_asked_about() -> None:
    talk = spoken("Left fore trimmed. There was frush in it.", frush=0.49)
    reason = "“frush” was hard to hear, and nothing was read from these words; please listen."
    assert told(talk, (0, 17)) == [("There was frush in it.", reason)]
    assert told(spoken("Left fore trimmed. There was frush in it.", frush=0.5), (0, 17)) == []


def test_words_that_some_list_knows_the_name_and_little_words_are_passed_over() -> None:
    assert told(spoken("Left fore trimmed. That was Marigold.", that=0.1, marigold=0.1, was=0.1), (0, 17)) == []


def test_a_sentence_that_a_fact_or_a_flag_covers_is_asked_about_once() -> None:
    talk = spoken("Left fore trimmed. Six.")
    assert told(talk, (0, 17), (19, 23)) == []


def test_of_typed_text_nobody_is_asked_to_listen() -> None:
    reason = "The number “six” is said here, but nothing was read from it; was something missed?"
    assert told(Transcript(text="Left fore trimmed. Six."), (0, 17)) == [("Six.", reason)]


def test_the_flag_goes_to_the_visit_told_last_before_it_and_says_where_to_listen() -> None:
    talk = spoken("Left fore trimmed. Right hind trimmed. Six. Bye.")
    first, second = visit(fact("work", "trim", span=(0, 17))), visit(fact("work", "trim", "RH", span=(19, 37)))
    one, two = judge([first, second], talk)
    assert one.flags == []
    assert [(flag.span, flag.start, flag.end) for flag in two.flags] == [((39, 43), 3.0, 3.4)]
