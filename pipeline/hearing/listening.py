"""The recogniser that listens again: what it wrote is weighed against the trade's words on the same encoded sound."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

import numpy as np
from ctranslate2 import Device, StorageView
from numpy.typing import NDArray

from pipeline.hearing.openings import is_named, opening_name
from pipeline.hearing.sieve import repeats
from pipeline.hearing.telling import TellingPipeline
from pipeline.hearing.verified import Replacement, replaced
from pipeline.hearing.weighing import Weighed, weigh
from pipeline.hearing.wordings import Proposal, Wordings

_WORD = re.compile(r"\s*\S+")
_FRAMES_A_STEP = 2  # of the sound, for one step of the encoder's output
_SPARE = 50  # steps of the silence behind a stretch, a second, that are heard with it
_LEAST_FRAMES = 1000  # ten seconds; whether shorter sound is heard as well without its silence was not measured
_AT_ONCE = 8  # texts in one go; more needs more memory
_LEAST = 1e-9
_NAMES_WEIGHED = 96  # texts; fewer would leave out the rivals of a name


class ListeningPipeline(TellingPipeline):
    """Decodes in batches as its base does, then weighs other wordings before the words get their seconds.

    ``replacements`` has one list for every stretch decoded, in order.
    """

    def __init__(self, model: Any, wordings: Wordings) -> None:
        super().__init__(model)
        self._wordings = wordings
        self.replacements: list[list[Replacement]] = []

    def generate_segment_batched(self, features: Any, tokenizer: Any, options: Any) -> Any:
        """The base's encoder output and texts, each text with the wordings that the sound bears out.

        The encoder sees the longest of these stretches and a second, not the half minute that it is filled up to: less
        work, and as good (facts F1 of 80 memos 0.893, with the whole half minute 0.888), but for some that then say
        the same words over and over; those are heard again with the silence (of 186 short memos 6, and then 1).
        """
        whole, features = features, shortened(features)
        encoded, outputs = super().generate_segment_batched(features, tokenizer, options)
        if features.shape != whole.shape and any(repeats(tokenizer.decode(output["tokens"])) for output in outputs):
            del self.english[-len(outputs) :]
            features = whole
            encoded, outputs = super().generate_segment_batched(features, tokenizer, options)
        for sound, heard, output in zip(_at_hand(encoded), features, outputs, strict=True):
            self.replacements.append(self._weighed(sound[: steps(heard)], output, tokenizer))
        return encoded, outputs

    def _weighed(self, sound: NDArray[np.float32], output: dict[str, Any], tokenizer: Any) -> list[Replacement]:
        def encode(text: str) -> list[int]:
            return list(tokenizer.tokenizer.encode(text, add_special_tokens=False).ids)

        def probabilities(texts: list[list[int]]) -> list[NDArray[np.float64]]:
            start = [*tokenizer.sot_sequence, tokenizer.no_timestamps]
            return [
                logs
                for at in range(0, len(texts), _AT_ONCE)
                for logs in self._logs(sound, start, texts[at:][:_AT_ONCE])
            ]

        words = _WORD.findall(tokenizer.decode(output["tokens"]))
        weighed = weigh(words, self._wordings.propose(words), encode, probabilities)
        before = "".join(words)
        text, done = replaced(words, weighed, encode)
        if not self.replacements and not is_named(text, self._wordings.names):

            def weighing(proposals: Sequence[Proposal]) -> list[Weighed]:
                return weigh(words, proposals, encode, probabilities, most=_NAMES_WEIGHED)

            opening = opening_name(words, self._wordings.names, weighing)
            text, done = replaced(words, [*weighed, opening], encode) if opening else (text, done)
        text = self._wordings.spelled(text)
        if text != before:
            output["tokens"] = encode(text)
        return done

    def _logs(self, sound: NDArray[np.float32], start: list[int], texts: list[list[int]]) -> list[NDArray[np.float64]]:
        """Log probabilities of the pieces of each text behind the sound of one stretch."""
        copies = StorageView.from_array(np.ascontiguousarray(np.repeat(sound[None], len(texts), axis=0)))
        found = self.model.model.align(copies, start, texts, [len(sound) * _FRAMES_A_STEP] * len(texts))
        return [np.log(np.maximum(np.asarray(item.text_token_probs, dtype=np.float64), _LEAST)) for item in found]


def _at_hand(encoded: Any) -> NDArray[np.float32]:
    """The encoder's output in the memory of the processor; that of a graphics card stays on the card."""
    return np.asarray(encoded if encoded.device == "cpu" else encoded.to_device(Device.cpu))


def shortened(features: NDArray[np.float32]) -> NDArray[np.float32]:
    """Without what all stretches (stretch, band, frame) are filled up with, but for a second; ten seconds at least."""
    frames = max(_LEAST_FRAMES, *(steps(stretch) * _FRAMES_A_STEP for stretch in features))
    return np.ascontiguousarray(features[:, :, : min(frames, features.shape[2])])


def steps(features: NDArray[np.float32]) -> int:
    """How many steps of the encoder's output hold the sound; the rest of the half minute is filled up with nothing."""
    filled = np.flatnonzero(features.any(axis=0))
    return (int(filled[-1]) + 1 if len(filled) else 0) // _FRAMES_A_STEP + _SPARE
