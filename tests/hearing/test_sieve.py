"""What nobody said is left out and told; what was hardly made out is told with its words and seconds."""

from __future__ import annotations

import pytest

from pipeline.hearing.recognise import transcript_of
from pipeline.hearing.sieve import Segment, SpokenWord, made_up, plain, recites, repeats, sieve, unsure_stretches
from pipeline.record import FlagKind

PROMPT = "Bramble, left fore, right fore, left hind, right hind, both fronts, hinds, all four, thrush"


def segment(
    text: str,
    probability: float = 0.9,
    avg_logprob: float = -0.3,
    no_speech_prob: float = 0.01,
    compression_ratio: float = 1.3,
    start_s: float = 10.0,
) -> Segment:
    words = tuple(
        SpokenWord(f" {word}", start_s + 0.5 * index, start_s + 0.5 * index + 0.4, probability)
        for index, word in enumerate(text.split())
    )
    end_s = start_s + 0.5 * len(words)
    return Segment(words, start_s, end_s, avg_logprob, no_speech_prob, compression_ratio)


@pytest.mark.parametrize(
    ("made", "words"),
    [
        (segment("left fore", avg_logprob=-1.2, no_speech_prob=0.8), "does not sound like speech"),
        (segment("mumble", avg_logprob=-1.7), "hardly a word"),
        (segment("no heat in it", compression_ratio=2.6), "over and over"),
        (segment("six nails in six nails in six nails in six nails in"), "over and over"),
        (segment("hot hot hot hot hot hot"), "over and over"),
        (segment("Thanks for watching!"), "write into silence"),
        (segment("Thank you.", no_speech_prob=0.5), "write into silence"),
        (segment("right fore left hind right hind both fronts hinds"), "list of expected words"),
    ],
)
def test_what_nobody_said_is_left_out_and_told(made: Segment, words: str) -> None:
    said = segment("No thrush anywhere.", start_s=0)
    kept, flags = sieve([said, made], PROMPT)
    assert kept == [said]
    assert [flag.kind for flag in flags] == [FlagKind.UNCLEAR_SPEECH]
    assert words in flags[0].reason
    assert (flags[0].quote, flags[0].start, flags[0].end) == (made.text, made.start_s, made.end_s)


@pytest.mark.parametrize(
    "text",
    [
        "Thank you.",
        "Left fore, right fore and left hind are worn.",
        "No thrush, no thrush in the right either.",
        "Three degrees on the left fore, three degrees on the right fore, three on the hinds.",
        "Hot, hot, hot, careful.",
    ],
)
def test_what_a_farrier_says_is_kept(text: str) -> None:
    assert made_up(segment(text), PROMPT) is None


def test_recital_needs_nine_words_in_the_order_of_the_prompt() -> None:
    prompt = plain(PROMPT)
    assert recites("left fore right fore left hind right hind both", prompt)
    assert not recites("left fore right fore left hind right hind", prompt)
    assert not recites("left fore right fore right hind left hind both", prompt)
    assert not recites("left fore right fore left hind right hind both", "")


def test_a_run_of_doubtful_words_is_one_flag_with_its_slice() -> None:
    transcript = transcript_of(
        [segment("Bramble stood quiet"), segment("gray two at the walk", probability=0.3), segment("six nails each")]
    )
    (flag,) = unsure_stretches(transcript.text, transcript.words)
    assert flag.kind == FlagKind.UNCLEAR_SPEECH
    assert flag.quote == "gray two at the walk"
    assert transcript.text[slice(*flag.span)] == flag.quote
    assert (flag.start, flag.end) == (10.0, 12.4)


def test_two_doubtful_words_are_not_yet_a_stretch() -> None:
    transcript = transcript_of(
        [segment("stood quiet today"), segment("gray two", probability=0.35), segment("six nails each")]
    )
    assert unsure_stretches(transcript.text, transcript.words) == []


def test_words_are_slices_of_the_transcript() -> None:
    pieces = (
        SpokenWord(" Double", 0.0, 0.4, 0.9),
        SpokenWord("-aught,", 0.4, 0.8, 0.8),
        SpokenWord(" ", 0.8, 0.8, 0.1),
        SpokenWord(" six", 0.9, 0.8, 0.7),
    )
    transcript = transcript_of([Segment(pieces, 0, 1, -0.2, 0, 1)])
    assert transcript.text == "Double-aught, six"
    assert [transcript.text[word.start : word.end] for word in transcript.words] == ["Double", "-aught,", "six"]
    assert [word.text for word in transcript.words] == ["Double", "-aught,", "six"]
    assert all(word.end_s >= word.start_s for word in transcript.words)


@pytest.mark.parametrize(
    ("text", "over_and_over"),
    [
        ("Sedge is sound. " * 4, True),
        ("Seven, " * 6, True),
        ("Up first since he is the hard one, and he was sedated for it by the vet. " * 5, True),
        ("Left front six nails, right front six nails, left hind six nails, right hind six nails.", False),
        ("No, no, no, no thrush.", False),
    ],
)
def test_words_over_and_over(text: str, over_and_over: bool) -> None:
    assert repeats(text) is over_and_over
