"""Real weights on a spoken sentence: what was written wrong is put right by the sound, and nothing else is touched."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from pipeline.hearing.listening import ListeningPipeline, shortened, steps
from pipeline.hearing.recognise import Heard, Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.telling import TellingPipeline
from pipeline.hearing.wordings import Wordings
from pipeline.vocabulary import load_vocabulary
from tests.hearing.test_real_speech import DATA, needs_data

# "Both fronts, aluminum, size double aught. No, make that single aught. Leather pads with, um, oakum under them."
SPOKEN = Path(__file__).with_name("oakum.ogg")  # a synthetic voice: flite's slt, free of conditions


@pytest.fixture(scope="module", params=[False, True], ids=["as written", "weighed"])
def weighed(request: pytest.FixtureRequest) -> bool:
    """Whether the sound is weighed again."""
    return bool(request.param)


@pytest.fixture(scope="module")
def heard(weighed: bool) -> Heard:
    """The sentence with the shipped words, by the bare weights: with the adapter the word is heard right at once."""
    return Recogniser(HearingSettings(verify=weighed, adapter=False), load_vocabulary()).hear(SPOKEN, ["Marigold"])


def test_the_sound_puts_the_trades_word_right(heard: Heard, weighed: bool) -> None:
    assert ("oakum under them" in heard.transcript.text) == weighed


def test_the_replacement_can_be_seen_and_taken_back(heard: Heard, weighed: bool) -> None:
    instead = [word for word in heard.transcript.words if word.heard is not None]
    assert [word.text for word in instead] == (["oakum"] if weighed else [])
    assert all(word.support is not None and -7.8 <= word.support < 0 for word in instead)
    assert all(word.heard and "oakum" not in word.heard for word in instead)


def test_words_lie_in_their_text_and_in_order_of_time(heard: Heard) -> None:
    words = heard.transcript.words
    assert all(heard.transcript.text[word.start : word.end] == word.text for word in words)
    assert all(one.start_s <= other.start_s for one, other in pairwise(words))


@needs_data
def test_readings_of_another_kind_get_no_word_of_the_trade() -> None:
    """Real readings from a novel, 25 s in all, with a roster of ten: nothing in them is about hooves."""
    names = ["Marigold", "Nullarbor", "Otter", "Bramble", "Doris", "Sorrel", "Percy", "Juniper", "Tansy", "Quill"]
    recogniser = Recogniser(HearingSettings(), load_vocabulary())
    words = [
        w for path in sorted((DATA / "librivox").glob("*.wav")) for w in recogniser.hear(path, names).transcript.words
    ]
    assert len(words) > 60
    assert [(word.heard, word.text, word.support) for word in words if word.heard is not None] == []


@pytest.mark.parametrize(("frames", "expected"), [(0, 50), (1, 50), (200, 150), (3000, 1550)])
def test_the_silence_behind_a_stretch_is_weighed_for_a_second_only(frames: int, expected: int) -> None:
    features = np.zeros((80, 3000), dtype=np.float32)
    features[:, :frames] = 0.5
    assert steps(features) == expected


@pytest.mark.parametrize(("longest", "kept"), [(200, 1000), (1200, 1300), (1201, 1300), (2950, 3000), (3000, 3000)])
def test_the_encoder_sees_the_longest_stretch_and_a_second(longest: int, kept: int) -> None:
    features = np.zeros((2, 80, 3000), dtype=np.float32)
    features[0, :, :100] = features[1, :, :longest] = 0.5
    assert shortened(features).shape == (2, 80, kept)


class Letters:
    """A tokenizer of one piece a letter, as far as the listening pipeline asks."""

    sot_sequence = (1,)
    no_timestamps = 2

    def __init__(self) -> None:
        self.tokenizer = self

    def encode(self, text: str, add_special_tokens: bool = False) -> SimpleNamespace:
        return SimpleNamespace(ids=[ord(letter) for letter in text])

    def decode(self, tokens: Sequence[int]) -> str:
        return "".join(map(chr, tokens))


@pytest.mark.parametrize(
    ("written", "asked"),
    [
        ({1000: " Sedge is sound.", 3000: " never asked"}, [1000]),
        ({1000: " Sedge is sound." * 9, 3000: " Sedge is sound."}, [1000, 3000]),
        ({1000: " Sedge is sound." * 9, 3000: " Sedge is sound." * 9}, [1000, 3000]),
    ],
    ids=["said once", "over and over", "also with the silence"],
)
def test_what_is_written_over_and_over_is_heard_again_with_its_silence(
    written: dict[int, str], asked: list[int], monkeypatch: pytest.MonkeyPatch
) -> None:
    tokenizer, frames = Letters(), []

    def decoded(self: TellingPipeline, features: Any, *_: object) -> Any:
        frames.append(features.shape[2])
        self.english.append(features.shape[2] / 10_000)
        return None, [{"tokens": tokenizer.encode(written[features.shape[2]]).ids}]

    monkeypatch.setattr(TellingPipeline, "generate_segment_batched", decoded)
    monkeypatch.setattr("pipeline.hearing.listening._at_hand", lambda _: np.zeros((1, 1500, 4), dtype=np.float32))
    pipeline = ListeningPipeline(None, Wordings(load_vocabulary(), ["Sedge"]))
    features = np.zeros((1, 80, 3000), dtype=np.float32)
    features[0, :, :300] = 0.5
    _, (output,) = pipeline.generate_segment_batched(features, tokenizer, None)
    assert frames == asked
    assert tokenizer.decode(output["tokens"]) == written[asked[-1]]
    assert (pipeline.english, pipeline.replacements) == ([asked[-1] / 10_000], [[]])
